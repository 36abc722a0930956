/** Every stack of a drawer of five hundred different parts, in processor time, and the longest step between two drawings of the page. */
import { runnerImport } from 'vite';

const THREADS = [
  ['M4', 'M5', 'M6', 'M8', 'M8x1', 'M10', 'M10x1.25', 'M12', 'M12x1.5', 'M16'],
  ['8-32 UNC', '10-32 UNF', '1/4-20 UNC', '5/16-18 UNC', '5/16-24 UNF', '3/8-16 UNC', '3/8-24 UNF', '1/2-13 UNC'],
].flat();
const SIZE = (thread) => (thread.startsWith('M') ? Number.parseFloat(thread.slice(1)) : 25.4 * sizeOf(thread));
const sizeOf = (thread) => {
  const [name] = thread.split('-');
  const [over, under] = name.split('/').map(Number);
  return under ? over / under : 0.06 + 0.013 * over;
};

/** Nuts and coupling nuts of every thread in several heights, and studs from each thread to its neighbours in size. */
const drawerOf = (count) => {
  const bySize = [...THREADS].sort((a, b) => SIZE(a) - SIZE(b));
  const rows = [];
  for (const thread of bySize)
    for (const share of [0.8, 1, 1.5, 2, 3]) rows.push(`nut ${thread}, ${(share * SIZE(thread)).toFixed(1)} mm`);
  for (let apart = 1; rows.length < count && apart < bySize.length; apart++)
    for (let i = 0; i + apart < bySize.length; i++)
      for (const long of [12, 16, 20, 25, 30])
        if (rows.length < count) rows.push(`stud ${bySize[i]} ${long} mm, ${bySize[i + apart]} ${long} mm`);
  return rows;
};

export const title = 'Drawer';

export const bench = async (line) => {
  const { module } = await runnerImport(`${import.meta.dirname}/../../widgets/assembly/drawer/stacks.ts`, {
    configFile: false,
    logLevel: 'error',
  });
  for (const count of [100, 500]) {
    const rows = drawerOf(count);
    const times = [];
    let longest = 0;
    let found;
    for (let i = 0; i < 5; i++) {
      const began = process.cpuUsage();
      const run = module.searchDrawer(rows.join('\n'), 0.8);
      for (;;) {
        const from = performance.now();
        const step = run.next();
        longest = Math.max(longest, performance.now() - from);
        if (!step.done) continue;
        found = step.value;
        break;
      }
      const spent = process.cpuUsage(began);
      times.push((spent.user + spent.system) / 1000);
    }
    const [, , median] = times.sort((a, b) => a - b);
    const said = found.ok ? `${found.value.tried} ways tried, ${found.value.stacks.length} can be built` : found.code;
    line(`${rows.length} parts (${said}), ms of processor, median of 5`, median.toFixed(0));
    line('  its longest single step, ms (other processes included)', longest.toFixed(1));
  }
};
