/** Wörter der Kraftkette. */
import { spokenNumber } from '../../../engine/index.ts';
import type * as En from '../../en/figures/force-chain.ts';
import type { Same } from '../../same.ts';

const BARE = { base: 'Grundteil', turned: 'Stellteil', carried: 'Hubteil' } as const;

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Kraftkette durch die beiden Gewinde',
  slider: 'Stelle im Hub',
  place: (v) => `${v.turns}, Hubteil ${v.carried}, Feder ${v.spring ?? 'keine'}`,
  range: (least, most) => `${least} bis ${most}`,
  here: (forces, flank) =>
    `hier ${forces}: ${flank === undefined ? '✕ wechselt mit der Last die Flanke' : `${flank.pressed ? '▼' : '▲'} die ${flank.name} liegt an`}`,
  panel: (thread) => `Kraft über Gewinde ${thread}, in Newton`,
  across: 'Umdrehungen, im Uhrzeigersinn',
  legend: {
    loads: 'größte und kleinste Last',
    nought: 'null: darüber trägt die Druckflanke',
    margin: 'verlangte Reserve',
  },
  head: [
    'Umdrehungen, im Uhrzeigersinn',
    'Hubteil',
    'Feder',
    'Gewinde A, kleinste Last',
    'Gewinde A, größte Last',
    'Gewinde C, kleinste Last',
    'Gewinde C, größte Last',
  ],
  chart: {
    label: (thread) => `Kraft über Gewinde ${thread} in Newton über den Umdrehungen`,
  },
  section: {
    label: (v) =>
      `Schnitt der drei Teile hintereinander, ${spokenNumber(v.A)} unten und ${spokenNumber(v.C)} oben${v.spring ? `, mit einer Feder, die zwischen ${BARE[v.spring.lower]} und ${BARE[v.spring.upper]} ${v.spring.kind === 'pull' ? 'zieht' : 'drückt'}` : ''}`,
    weight: (force) => ['Gewicht', force],
    load: (force) => ['Last', force],
    loads: (least, most) => [`Last ${least}`, `bis ${most}`],
    parts: { base: 'Grundteil', turned: 'Stellteil', carried: 'Hubteil' },
  },
  caption: (A, C, spring) => `${A} ${C} ${spring}`,
  verdict: {
    seated: (v) => `Gewinde ${v.thread}: Die ${v.flank} liegt über den ganzen Hub an, mit ${v.least} oder mehr.`,
    'short of margin': (v) =>
      `Gewinde ${v.thread}: Die ${v.flank} liegt über den ganzen Hub an, aber von den verlangten ${v.margin} bleiben nur ${v.least}.`,
    'lets go': (v) =>
      `Gewinde ${v.thread}: Die Flanken öffnen sich bei ${v.turns}, das Hubteil bei ${v.carried}, unter ${v.load}.`,
  },
  rows: {
    carried: 'Hubteil, hier',
    spring: 'Feder, hier',
    least: (thread) => `Gewinde ${thread} hier, kleinste Last`,
    most: (thread) => `Gewinde ${thread} hier, größte Last`,
    needed: 'am Anfang nötige Federkraft',
  },
  noSpring: 'Keine Feder: Nur Gewicht und Last wirken auf die Gewinde.',
  spring: (v) => {
    const ends =
      v.ends === 'keep'
        ? 'Ihre Enden behalten ihren Abstand'
        : `Ihre Enden ${v.ends === 'part' ? 'gehen' : 'kommen'} über den Hub um ${v.motion} ${v.ends === 'part' ? 'auseinander' : 'näher'}`;
    const slack = v.slack === undefined ? '' : `, ohne Kraft ab ${v.slack}`;
    return `Zwischen ${BARE[v.lower]} und ${BARE[v.upper]}: ${ends}, darum geht ihre Kraft von ${v.from} bis ${v.to}${slack}.`;
  },
  least: ({ unreached, need }) => {
    const alone =
      unreached.length === 0
        ? ''
        : `Diese Feder, wie stark auch immer, tut nichts für Gewinde ${unreached.join(' und ')}: Dort wirken nur Gewicht und Last. `;
    const reached = (['A', 'C'] as const).filter((t) => !unreached.includes(t));
    const forWhom = unreached.length === 0 ? 'brauchen beide Gewinde' : `braucht Gewinde ${reached.join(' und ')}`;
    if (need === undefined) return `${alone}Am Anfang ${forWhom} keine Kraft von ihr.`;
    const by =
      need.by === undefined
        ? 'um etwas Zug zu behalten'
        : `bestimmt durch Gewinde ${need.by.thread} bei ${need.by.turns} unter ${need.by.load}`;
    const enough = need.enough ? `${need.has} sind genug` : `${need.has} sind darunter: mehr Vorspannung`;
    return `${alone}Am Anfang ${forWhom} ${need.force} von ihr, ${by}; ${enough}.`;
  },
  friction: (force) => `Die Reibung der Führung, ${force} nach jeder Seite, ist in den Lasten gezählt.`,
};
