/**
 * One adjuster from its rows to all that is derived from it. Means of processor time after a warm-up; each description is a new text, since
 * the last few that were read are kept. Solids are made once a part and only where they are shown, so they stand apart.
 */
import { runnerImport } from 'vite';

const RUNS = 1000;
/** Solids take a hundred times as long. */
const RUNS_OF_SOLIDS = 20;

const riser = (i) =>
  [
    `adjuster riser ${i}`,
    'base = coupling nut 3/8-16 UNC-2B, 28.575 mm',
    'turned = adapter 3/8-16 UNC-2A external 15 mm, M10x1.5-6H internal 15 mm blind, body 18 mm, hexagon 17 mm, coat 3 µm',
    'carried = socket screw M10x1.5-6g, thread 20 mm, head 10 mm',
    'tip = ball 8.334 mm in 8 mm hexagon, stands 4 mm',
    'springs = 2 between base and carried, 12 N, 0.6 N/mm, at 15 mm',
  ].join('\n');

export const title = 'One adjuster';

export const bench = async (line) => {
  const { module: m } = await runnerImport(`${import.meta.dirname}/adjuster-derived.ts`, {
    configFile: false,
    logLevel: 'error',
  });
  const read = (text) => {
    const result = m.readAdjuster(text);
    if (!result.ok) throw new Error(result.code);
    return result.value;
  };
  const steps = {
    'net lead, range, stops, stroke, mass, price': (_, text) => read(text),
    'where it stands at 9 places, force of the springs': (a) => {
      for (let i = 0; i < 9; i++) {
        const n = a.anticlockwise.n + (a.turns * i) / 8;
        m.standing(a, n);
        m.springForce(a, n);
      }
    },
    'play, turns lost, walls': (a) => {
      m.jointPlay(a.A);
      m.jointPlay(a.C);
      m.turnsLostIn(a, 'most');
      m.fitOf(a, a.C, 0);
    },
    'section of every part': (a) => {
      const crests = m.crestsOf(a);
      for (const part of m.partsOf(a)) m.sectionOf(part, 0.3, { crests: crests[part.role] });
    },
    'numbers for every chapter, list of parts': (a) => {
      m.numbersOfAdjuster(a);
      m.partsListOf(a);
    },
    'solid of every part': (a) => {
      const crests = m.crestsOf(a);
      for (const part of m.partsOf(a)) m.meshOf(part, { crests: crests[part.role] });
    },
  };
  // Time of the processor, since others want it too; a batch of runs, since its clock ticks in microseconds.
  const spent = Object.fromEntries(Object.keys(steps).map((name) => [name, 0]));
  for (const round of ['first', 'counted']) {
    const batch = Array.from({ length: RUNS }, (_, i) => ({ a: read(riser(`${round} ${i}`)), text: riser(i) }));
    for (const [name, step] of Object.entries(steps)) {
      const from = process.cpuUsage();
      const runs = name.startsWith('solid') ? batch.slice(0, RUNS_OF_SOLIDS) : batch;
      for (const { a, text } of runs) step(a, text);
      const { user, system } = process.cpuUsage(from);
      spent[name] = (user + system) / 1000 / runs.length;
    }
  }
  let sum = 0;
  for (const [name, ms] of Object.entries(spent)) {
    if (name.startsWith('solid')) line('all of it but solids, ms', sum.toFixed(3));
    line(`${name}, ms`, ms.toFixed(3));
    sum += ms;
  }
};
