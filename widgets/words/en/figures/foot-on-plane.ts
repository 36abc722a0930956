/** Words of the foot that is pushed from the side. */
const VERDICTS = {
  stands: 'its ring presses all round',
  lifts: 'one side of its ring has lifted',
  tips: 'it tips over',
  slides: 'it slides away',
} as const;

export const WORDS = {
  title: 'A foot pushed from the side',
  drawing:
    'Foot on its ring from the side, to scale; the dashed arrow is the sum of load and push, the thick line the safe middle of the ring',
  core: 'safe middle',
  rim: 'rim',
  verdicts: VERDICTS,
  facts: {
    off: 'load meets the ground, off the axis',
    full: 'presses all round up to',
    tips: 'tips at',
    slides: 'slides at',
    radius: 'radius of the convex face',
    convex: 'on the convex face its tip goes aside',
  },
  head: ['what', 'amount'],
  caption: (v: {
    readonly push: string;
    readonly off: string;
    readonly verdict: keyof typeof VERDICTS;
    readonly convex: string | undefined;
    readonly proud: string;
  }) =>
    `Pushed by ${v.push}, the load meets the ground ${v.off} off the axis: ${VERDICTS[v.verdict]}. ${
      v.convex === undefined
        ? `On a face whose middle is ${v.proud} too high it has no place to rest.`
        : `On a face whose middle is ${v.proud} too high, the same push would move the tip ${v.convex} aside.`
    }`,
};
