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
    post: (diameter, length) => `Stift ⌀${spokenNumber(String(diameter))} × ${spokenNumber(String(length))} mm`,
    arm: 'Arm am Stift',
    foot: 'Fußplatte des Stifts',
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
  springRoom: {
    fits: (clear, least, most, strain) =>
      `Die Federn passen: ${clear === '' ? 'Über' : `Sie bleiben von allem anderen ${clear} entfernt, und über`} den Hub sind sie um ${least} bis ${most} gespannt${strain === '' ? '' : `, was sie höchstens um ${strain} dehnt`}.`,
    folds: (length, room) =>
      `Die Federn passen nicht: Sie sind an der Marke ${length} lang, und zwischen ihren Haltern sind ${room}. Gib ihnen weniger Falten oder mehr Länge.`,
    gap: (wanted, is) =>
      `Die Federn passen nicht: Sie sind an der Marke für ${wanted} zwischen ihren Enden gezeichnet, und die zwei Teile können sie ${is} auseinander halten. Zeichne sie für diese Länge.`,
    slack: (turns, clockwise) =>
      `Die Federn werden ${turns} Umdrehungen ${clockwise ? 'im Uhrzeigersinn' : 'gegen den Uhrzeigersinn'} von der Mitte schlaff. Spanne sie an der Marke weiter.`,
    strain: (strain, limit) =>
      `Die Federn passen, aber am Ende des Hubs sind sie um ${strain} gedehnt; über Monate gehalten verträgt ein Druck etwa ${limit}. Nimm mehr Falten oder einen dünneren Streifen.`,
    part: (role, by, reaches) =>
      `Die Federn passen nicht: Das ${{ base: 'Grundteil', turned: 'Stellteil', carried: 'Hubteil' }[role]} reicht ${reaches} von der Achse und schnitte ${by} in sie hinein. Setze sie weiter außen oder drucke sie weniger hoch.`,
    eachOther: (width, room) =>
      `Die Federn passen nicht: Jede ist ${width} breit, und neben der nächsten sind ${room}. Nimm weniger, schmalere oder einen größeren Radius.`,
    above: (by) =>
      `Die Federn passen nicht: Ihre oberen Enden stehen ${by} über der Spitze und damit in der Platte, die darauf ruht. Halte sie tiefer.`,
    below: (by) => `Die Federn passen nicht: Ihre unteren Enden reichen ${by} unter das Grundteil. Halte sie höher.`,
  },
};
