/** Words of the ranking of parts: which one to improve. */
import type { Asked, ImprovablePart } from '../../../engine/index.ts';

const PARTS: Readonly<Record<ImprovablePart, string>> = {
  'lead A': 'lead of thread A',
  'lead C': 'lead of thread C',
  waves: 'waves of the threads',
  offset: 'offset of the axes',
  angle: 'angle of the axes',
  guide: 'clearance of the guide',
  key: 'clearance of the key',
};

const ASKED: Readonly<Record<Asked, string>> = { height: 'off its height', place: 'off its place sideways' };

export const WORDS = {
  title: 'Which part to improve',
  histogram: (count: string) => `${count} assemblies, by how far the tip is off at most`,
  marks: { sampled: '95 of 100', statistical: 'statistical', worst: 'worst case' },
  ranking: 'What it takes off where one part is made twice as good',
  part: (part: ImprovablePart) => PARTS[part],
  working: 'Solving the assemblies …',
  workingCaption: (count: string) => `Solving ${count} assemblies; the ranking follows.`,
  nothing: 'nothing',
  caption: (v: {
    readonly asked: Asked;
    readonly count: string;
    readonly sampled: string;
    readonly statistical: string;
    readonly worst: string;
    readonly best: string | undefined;
    readonly gains: string;
    readonly differ: boolean;
  }) =>
    `Of ${v.count} assemblies, 95 in 100 are ${ASKED[v.asked]} by no more than ${v.sampled}; statistically it is ${v.statistical}, at worst ${v.worst}. ${
      v.best === undefined
        ? 'No part made twice as good takes anything off.'
        : `The ${v.best}, made twice as good, takes off most: ${v.gains}.`
    }${v.differ ? ' The two ways of reckoning differ by more than a tenth: the parts do not act one by one in proportion, so the drawn assemblies count.' : ''}`,
  head: ['part', 'alone at its most', 'takes off, made twice as good'],
  sums: {
    sampled: '95 of 100 assemblies',
    statistical: 'statistical, 95 %',
    worst: 'worst case',
    failed: 'did not go together',
  },
  noneYet: { head: ['part'], rows: [['none yet'], ['none yet']] },
};
