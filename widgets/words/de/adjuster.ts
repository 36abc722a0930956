/** Wörter eines Stellelements: Anschläge, Teile und was angenommen wurde. */
import { spokenNumber } from '../../engine/index.ts';
import type * as En from '../en/adjuster.ts';
import type { Same } from '../same.ts';
import { partKind } from './kinds.ts';

export const WORDS: Same<typeof En.WORDS> = {
  list: {
    part: (kind, threads) => `${partKind(kind)} ${threads.map(spokenNumber).join(', ')}`,
    ball: (mm) => `Kugel ${spokenNumber(String(mm))} mm`,
    spring: 'Feder',
    lock: { key: 'Passfeder', post: 'Stift' },
  },
  stop: ({ at, bound }) =>
    at === 'base and carried'
      ? 'das Hubteil trifft das Grundteil'
      : bound.kind === 'least engagement'
        ? `Gewinde ${at} hat nur noch seine kleinste Einschraublänge`
        : bound.lower === 'ground'
          ? 'sein Ende steht auf dem Boden'
          : `Gewinde ${at} ist ganz eingeschraubt`,
  stopMark: ({ at, bound }, count) =>
    at === 'base and carried'
      ? `Teile treffen sich, ${count}`
      : bound.kind === 'least engagement'
        ? `${at} am kleinsten Eingriff, ${count}`
        : bound.lower === 'ground'
          ? `am Boden, ${count}`
          : `${at} ganz drin, ${count}`,
};
