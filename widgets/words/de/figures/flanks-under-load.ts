/** Wörter der Flanken unter Last. */
import { spokenNumber } from '../../../engine/index.ts';
import type * as En from '../../en/figures/flanks-under-load.ts';
import type { Same } from '../../same.ts';

const PARTS = { A: ['Grundteil', 'Stellteil'], C: ['Stellteil', 'Hubteil'] } as const;

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Flanken zweier Gewinde unter Last',
  touches: (flank) => `die ${flank} liegt an`,
  neither: 'keine Flanke muss anliegen',
  panel: (thread, designation) =>
    `Gewinde ${thread}, ${spokenNumber(designation)}: ${PARTS[thread][1]} auf ${PARTS[thread][0]}`,
  panelLabel: (thread) => `Gewinde ${thread}, maßstäblicher Schnitt, und beide Flanken eines Gangs vergrößert`,
  lens: {
    name: {
      pressed: (thread) => ['Druckflanke', PARTS[thread][1]],
      pulled: (thread) => ['Zugflanke', PARTS[thread][1]],
    },
    open: 'offen um',
    closed: 'liegt an',
  },
  track: {
    title: 'Höhe des Hubteils über der Kraft darauf, in N, zum Grundteil hin ist plus',
    label: 'Kraft auf das Hubteil, zum Grundteil hin ist plus',
    changes: (thread) => `${thread} wechselt`,
    text: (v) => `${v.force}; Gewinde A: ${v.A}; Gewinde C: ${v.C}`,
  },
  readout: {
    across: { A: 'über Gewinde A', C: 'über Gewinde C' },
    forceAndFlank: (force, touching) => `${force}, ${touching}`,
    carried: 'Hubteil, von der Mitte',
    play: (thread) => `Spiel von Gewinde ${thread}`,
    magnify: 'die Lupen vergrößern die Schnitte',
    times: (count) => `${count}-mal`,
  },
  caption: (v) => {
    const where =
      v.off === undefined
        ? 'in der Mitte seines Spiels'
        : `${v.off.motion} ${v.off.above ? 'über' : 'unter'} der Mitte seines Spiels`;
    const order =
      v.changes === undefined
        ? 'beide Gewinde wechseln die Flanke zusammen, wenn die Kraft durch null geht'
        : `C wechselt die Flanke bei ${v.changes.C} und A bei ${v.changes.A}`;
    return `Mit ${v.C.force} über Gewinde C: ${v.C.touching}; mit ${v.A.force} über Gewinde A: ${v.A.touching}. Das Hubteil steht ${where}. Von Ende zu Ende gezogen bewegt die Kraft es um ${v.all}, und ${order}.`;
  },
  table: {
    head: ['was', 'erstens', 'zweitens', 'drittens'],
    thread: (v) => [
      `Gewinde ${v.thread}, ${spokenNumber(v.designation)}, ${v.from}`,
      `Flankenspiel ${v.clearance}`,
      `Axialspiel ${v.play}`,
      `Radialspiel ${v.float}`,
    ],
    step: (v) => [`Kraft ${v.from} bis ${v.to}`, `A: ${v.A}`, `C: ${v.C}`, `Hubteil bei ${v.carried}`],
  },
};
