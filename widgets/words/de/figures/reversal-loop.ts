/** Wörter der Schleife bei Umkehr. */
import type * as En from '../../en/figures/reversal-loop.ts';
import type { Same } from '../../same.ts';

const CASES = { loose: 'nur Reibung', loaded: 'mit der Last' };
const reading = (which: keyof typeof CASES): string => `Ablesung, ${CASES[which]}`;
const flank = (touches: number): string => (touches === 0 ? 'dazwischen' : touches > 0 ? 'Druckflanke' : 'Zugflanke');

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Ablesung über den Umdrehungen, hin und zurück',
  plot: 'Ablesung über den Umdrehungen',
  cases: CASES,
  yourTurning: 'dein Drehen',
  panel: (unit) => `Ablesung am Hubteil, in ${unit}`,
  loops: 'Die beiden Schleifen und dein Drehen',
  turnsClockwise: 'Umdrehungen, im Uhrzeigersinn',
  knob: 'Stellteil, von oben',
  back: 'Zurückdrehen',
  out: 'Hindrehen',
  clear: 'Dein Drehen löschen',
  turns: 'Umdrehungen',
  lostOnReversal: (turns) => `toter Gang ${turns} Umdrehungen`,
  reading,
  touching: 'Flanke, die anliegt',
  flanks: (A, C) => `A ${flank(A)}, C ${flank(C)}`,
  lost: 'toter Gang bei Umkehr',
  lostTurns: (turns) => `${turns} Umdrehungen`,
  inFlats: 'dasselbe in Flächen',
  caption: ({ wide, lost, flats, out, follows, load, loadedWide }) => {
    const when = follows
      ? `folgt das Hubteil bei Umkehr nach ${lost} Umdrehungen (${flats} Flächen)`
      : `folgt das Hubteil bei Umkehr in diesen ${out} Umdrehungen gar nicht, denn es bräuchte ${lost}`;
    const loaded =
      loadedWide === undefined
        ? 'liegen hin und zurück auf einer Linie, und nichts geht durch Spiel verloren'
        : `überwindet die Last die Reibung nicht, und die Schleife ist ${loadedWide} breit`;
    return `Mit Reibung allein ist die Schleife bis ${wide} breit, und ${when}. Mit ${load} darauf ${loaded}.`;
  },
  head: ['Richtung', 'Umdrehungen, im Uhrzeigersinn', reading('loose'), reading('loaded')],
  ways: { out: 'hin', back: 'zurück', again: 'wieder hin' },
};
