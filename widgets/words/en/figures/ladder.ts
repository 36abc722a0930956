/** Words of the ladder coupon. */
export const WORDS = {
  title: 'A ladder of holes',
  name: 'ladder coupon',
  drawing: 'The coupon from above, to scale, with the rung that takes the piece',
  takes: (width: string) => `takes it: ${width}`,
  files: 'The coupon as a file, in millimetres, printed as drawn:',
  save: (kind: string) => `Save the coupon as ${kind.toUpperCase()}`,
  check: '10 mm',
  fits: { tight: 'does not go in', goes: 'just goes in', loose: 'loose' },
  head: ['rung', 'drawn across its flats', 'the piece'] as const,
  offsets: { holes: 'draw holes by', outsides: 'outsides print by' },
  caption: (v: {
    readonly rung: number;
    readonly width: string;
    readonly piece: string;
    readonly holes: string;
    readonly half: string;
    readonly outsides: string;
  }) =>
    `Rung ${v.rung}, drawn ${v.width}, takes a piece of ${v.piece}. So draw holes ${v.holes}, within ${v.half} either way; outsides print ${v.outsides}.`,
};
