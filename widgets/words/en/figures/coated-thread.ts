/** Words of the ridge with its coat. */
export const WORDS = {
  title: 'A coat on a thread',
  drawing:
    'A ridge of the screw in the groove of its nut, with its coat; the thick line touches, and the gap on the other side is the play',
  left: (play: string) => `play ${play}`,
  coat: (thick: string) => `coat ${thick}`,
  rows: { bare: 'play of the bare thread', left: 'play with the coat', most: 'thickest coat that goes together' },
  caption: (v: { readonly coat: string; readonly bare: string; readonly left: string; readonly most: string }) =>
    `With a coat of ${v.coat} on the screw, ${v.left} of the ${v.bare} of play are left. At ${v.most} none is left.`,
  head: ['coat', 'play left'],
};
