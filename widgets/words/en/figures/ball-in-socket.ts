/** Words of the ball in a hexagon socket. */
const VERDICTS = {
  loose: 'loose in every socket: glue it or use a sleeve',
  perhaps: 'loose in a wide socket: measure yours',
  presses: 'can be pressed',
  rests: 'stays on the rim: wider than you may press in',
} as const;

export const WORDS = {
  title: 'A ball in a hexagon socket',
  numbers: 'All balls near this socket',
  drawing: 'Socket and ball cut along the axis, to scale',
  inch: (size: string, inch: string) => `${size} (${inch} inch)`,
  fromTo: (from: string, to: string) => `${from} to ${to}`,
  none: '–',
  rim: 'rim',
  bottoms: 'none: it bottoms',
  facts: {
    flats: (key: number) => `socket for a ${key} mm key, across flats`,
    any: 'interference in any such socket',
    top: 'its top over the rim, laid on',
    measured: 'interference in yours',
    stands: 'stands out of yours, pressed',
    room: 'room under it',
  },
  verdicts: VERDICTS,
  head: (key: number) => ['ball', `least in a ${key} mm socket`, 'most', 'top over the rim, laid on', 'so'],
  caption: (v: {
    readonly ball: string;
    readonly key: number;
    readonly least: string;
    readonly most: string;
    readonly verdict: keyof typeof VERDICTS;
    readonly stands: string | undefined;
    readonly bottoms: boolean;
  }) =>
    `A ball of ${v.ball} in a ${v.key} mm socket interferes by ${v.least} to ${v.most}: it ${
      {
        loose: 'is loose in every one',
        perhaps: 'is loose in a wide one',
        presses: 'can be pressed in',
        rests: 'stays on the rim, since it is wider than you may press in',
      }[v.verdict]
    }. ${v.stands === undefined ? 'In yours it drops in' : `In yours, pressed so far, it stands ${v.stands} out${v.bottoms ? ' and bottoms' : ''}`}.`,
};
