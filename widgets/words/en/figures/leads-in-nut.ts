/** Words of the screw in a nut of another lead. */
export const WORDS = {
  title: 'A screw in a nut of another lead',
  drawing:
    'Five turns of a screw in its nut, the gaps drawn much too large; the thick line is where it touches, the arrow is the load',
  far: 'away from the base',
  near: 'near the base',
  magnified: (play: string) => `gaps to one scale: beside the flank that touches, the gap is ${play}`,
  rows: { bare: 'play of an exact pair', left: 'play left' },
  caption: (v: {
    readonly deviation: string;
    readonly longer: boolean;
    readonly carries: 'all' | 'far' | 'near';
    readonly bare: string;
    readonly left: string;
  }) =>
    v.carries === 'all'
      ? `Both leads are alike: every turn carries, and the play is ${v.left}.`
      : `The screw is ${v.deviation} too ${v.longer ? 'long' : 'short'} for its nut, and the turn ${v.carries === 'near' ? 'nearest to the base' : 'furthest from the base'} carries alone. Of the play of ${v.bare}, ${v.left} are left.`,
  head: ['turn, from the far end', 'gap at the pressed flank', 'gap at the other'],
};
