/** Words of the printed parts that hold. */
export const WORDS = {
  title: 'Clip, cap and post',
  files: 'Files of these parts',
  drawing:
    'Clip from above round its hexagon, cap and post cut along their axis, to one scale, as drawn for the printer',
  clip: 'clip',
  cap: 'cap',
  post: 'post',
  coupon: 'test strip',
  refused: (part: string, why: string) => `No ${part}: ${why}`,
  never: 'its lips hold until they break',
  offsets: (holes: string, outsides: string) => `holes ${holes}, outsides ${outsides}`,
  facts: {
    strain: 'strain in an arm, lip pushed aside',
    allowed: 'strain allowed',
    least: 'least arm for what is allowed',
    on: 'push that puts it on',
    off: 'pull that takes it off',
    cap: 'strain held round the cap’s bore',
    offsets: 'put into the drawing',
  },
  save: (what: string, kind: string) => `Save the ${what} as ${kind.toUpperCase()}`,
  listHead: ['part', 'size', 'files, in millimetres'],
  note: 'The offsets read off the ladder are in every file but that of the test strip, which is printed as drawn to be measured. Print clip and test strip lying flat.',
  check: '10 mm',
  head: ['part', 'long', 'wide', 'high'],
  caption: (v: {
    readonly strain: string;
    readonly allowed: string;
    readonly again: string;
    readonly verdict: 'over' | 'once' | 'again';
    readonly on: string;
    readonly off: string | undefined;
  }) =>
    `Snapped on, the arms are strained by ${v.strain}: ${
      {
        over: `more than the ${v.allowed} allowed`,
        once: `enough for once, since ${v.allowed} is allowed, but not again and again, ${v.again}`,
        again: `they stand it again and again, up to ${v.again}`,
      }[v.verdict]
    }. It takes ${v.on} to push it on and ${v.off === undefined ? 'does not come off again' : `${v.off} to pull it off`}.`,
};
