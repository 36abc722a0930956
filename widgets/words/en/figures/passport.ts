/** Words of the passports of pieces. */
export const WORDS = {
  title: 'A passport for each piece',
  drawing: 'The design, cut, to scale',
  of: (design: string, lead: string) => `${design}: its threads give ${lead} a turn`,
  kind: (kind: string) => kind,
  piece: (name: string) => `piece ${name}`,
  pieceHead: 'piece',
  next: 'next',
  none: '–',
  add: 'Add a row for today',
  empty: 'No piece has a row yet: write one like 1, 2026-11-03: lead 88.7 µm.',
  rows: {
    lead: (piece: string) => `measured lead of piece ${piece}`,
    off: (piece: string) => `piece ${piece} off its threads`,
  },
  head: [
    'day',
    'measured lead',
    'off its threads',
    'since first',
    'wave, crest to trough',
    'hysteresis',
    'place',
    'wear',
    'note',
  ],
  caption: (
    pieces: number,
    worst: { readonly piece: string; readonly lead: string; readonly off: string; readonly day: string } | undefined,
  ) =>
    `${pieces === 1 ? '1 piece has' : `${pieces} pieces have`} a passport${worst ? `; farthest off its threads is ${worst.piece} with ${worst.lead} a turn, ${worst.off}, on ${worst.day}` : ''}.`,
};
