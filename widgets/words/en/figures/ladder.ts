/** Words of the ladder of holes. */
export const WORDS = {
  title: 'A ladder of holes',
  name: 'ladder',
  drawing: 'The ladder from above, to scale, with the rung that takes the piece',
  takes: (width: string) => `takes it: ${width}`,
  files: 'The ladder as a file, in millimetres, printed as drawn:',
  save: (kind: string) => `Save the ladder as ${kind.toUpperCase()}`,
  check: '10 mm',
  fits: { tight: 'does not go in', goes: 'just goes in', loose: 'loose' },
  head: ['rung', 'drawn across its flats', 'the piece'] as const,
  offsets: { holes: 'draw holes wider by', outsides: 'outsides print wider by' },
  caption: (v: {
    readonly rung: number;
    readonly width: string;
    readonly piece: string;
    readonly holes: string;
    readonly step: string;
    readonly outsides: string;
  }) =>
    `Rung ${v.rung}, drawn ${v.width}, takes a piece of ${v.piece}. So draw holes wider by ${v.holes}; the true offset is that or up to ${v.step} less. Outsides print wider by ${v.outsides}.`,
};
