/** Words of the two waves that touch all round. */
export const WORDS = {
  title: 'Two waves that touch all round',
  unrolled:
    'The flank of the nut, filled, and that of the screw on it, once round and unrolled; the dot is where they touch',
  round: 'once round, unrolled',
  panel: 'The screw stands higher by',
  plan: 'Where the tip goes in a turn, from above, if the screw is free to tilt and if it is free to go sideways',
  tilts: 'the tip, if the screw tilts',
  goes: 'the tip, if it goes sideways',
  rows: {
    stands: 'stands higher at this place by',
    through: 'amplitude of the motion, if kept upright',
    lean: 'tilt, if free to tilt',
    tip: 'the tip, off the axis by that',
    shift: 'off the axis, if free to go sideways',
  },
  caption: (v: { readonly through: string; readonly tip: string; readonly shift: string }) =>
    `Kept upright, the motion waves with an amplitude of ${v.through}. If the screw is free to tilt in an exact nut, its tip goes round at ${v.tip} from the axis instead; if it is free to go sideways, at ${v.shift}.`,
  head: ['turns from where the waves fit best', 'higher by'],
};
