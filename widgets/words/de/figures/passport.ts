/** Wörter der Pässe der Stücke. */
import type * as En from '../../en/figures/passport.ts';
import type { Same } from '../../same.ts';
import { partKind } from '../kinds.ts';

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Ein Pass für jedes Stück',
  drawing: 'Der Entwurf, geschnitten, maßstäblich',
  of: (design, lead) => `${design}: Seine Gewinde geben ${lead} je Umdrehung`,
  kind: partKind,
  piece: (name) => `Stück ${name}`,
  pieceHead: 'Stück',
  next: 'nächste',
  none: '–',
  add: 'Eine Zeile für heute anfügen',
  empty: 'Noch kein Stück hat eine Zeile: Schreibe eine wie 1, 2026-11-03: Steigung 88,7 µm.',
  rows: {
    lead: (piece) => `gemessene Steigung von Stück ${piece}`,
    off: (piece) => `Stück ${piece} weicht von seinen Gewinden ab um`,
  },
  head: [
    'Tag',
    'gemessene Steigung',
    'neben seinen Gewinden',
    'seit dem ersten',
    'Welle, von Berg zu Tal',
    'Hysterese',
    'Stelle',
    'Verschleiß',
    'Bemerkung',
  ],
  caption: (pieces, worst) =>
    `${pieces === 1 ? '1 Stück hat' : `${pieces} Stücke haben`} einen Pass${worst ? `; am weitesten neben seinen Gewinden liegt ${worst.piece} mit ${worst.lead} je Umdrehung, ${worst.off}, am ${worst.day}` : ''}.`,
};
