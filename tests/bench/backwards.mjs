/** A result asked backwards and the ± of all results of one example: means of processor time after a warm-up. */
import { runnerImport } from 'vite';

const RUNS = 40;

export const title = 'A result asked backwards, and every number with its ±';

export const bench = async (line) => {
  const { module } = await runnerImport(`${import.meta.dirname}/backwards-timed.ts`, {
    configFile: false,
    logLevel: 'error',
  });
  for (const [name, work] of Object.entries({
    'all ways to another result, ms': module.solve,
    'all ways to another number of a figure, ms': module.solveFigure,
    '± of five results, ms': module.batch,
    '± over the design sheet, ms': module.overSheet,
  })) {
    for (let i = 0; i < RUNS; i++) work(i);
    const from = process.cpuUsage();
    for (let i = 0; i < RUNS; i++) work(i);
    const { user, system } = process.cpuUsage(from);
    line(name, ((user + system) / 1000 / RUNS).toFixed(3));
  }
};
