/** Words of the limits of a screw and a nut. */

type Where = 'within' | 'below' | 'above';

interface Caption {
  readonly screwClass: string;
  readonly nutClass: string;
  readonly screwPitch: string;
  readonly nutPitch: string;
  readonly clearance: string;
  readonly fit: 'clear' | 'may bind' | 'never goes';
  readonly standard: string;
  /** Limits that are by formula, of all six. */
  readonly byFormula: readonly string[];
  /** Whether a pitch diameter is one that was measured. */
  readonly measured: boolean;
}

const FIT: Readonly<Record<Caption['fit'], string>> = {
  clear: 'any such nut goes on any such screw',
  'may bind': 'whether a nut goes on depends on the pieces',
  'never goes': 'no such nut goes on such a screw',
};

const comesFrom = (byFormula: readonly string[], standard: string, measured: boolean): string =>
  measured
    ? `The measured pitch diameters are as typed; the other limits are those of ${standard}.`
    : byFormula.length === 0
      ? `Every limit is the published one of ${standard}.`
      : byFormula.length === 6
        ? `Every limit is by the formulas and the rounding of ${standard}.`
        : `By formula and rounding: ${byFormula.join('; ')}; the rest from the published tables.`;

export const WORDS = {
  title: 'Limits of size of a screw and a nut',
  drawing: (thread: string) => `Screw and nut of ${thread} at their limits, to scale, the nut above the screw`,
  pitchLine: 'pitch line',
  nut: (cls: string) => `nut ${cls}`,
  screw: (cls: string) => `screw ${cls}`,
  lens: (times: number) => `One flank at the pitch line, magnified a further ${times} times: clearance least and most`,
  lensWords: (times: number) =>
    `One flank at the pitch line, ${times} times larger again; distances here are on the radius.`,
  levels: {
    nutLargest: 'nut, largest',
    nutSmallest: 'nut, smallest',
    screwLargest: 'screw, largest',
    screwSmallest: 'screw, smallest',
  },
  spans: { least: 'least', most: 'most' },
  limits: 'Limits of size',
  range: (low: string, high: string) => `${low} to ${high}`,

  screwAsClass: (cls: string) => `class ${cls} for the screw`,
  nutAsClass: (cls: string) => `class ${cls} for the nut`,
  everyday: (classes: readonly string[]) =>
    `No class was written, so the usual one was taken: ${classes.join(' and ')}.`,

  readout: {
    pitchLeast: 'clearance at the pitch diameter, least',
    pitchMost: 'clearance at the pitch diameter, most',
    major: 'over the crest of the screw, at least',
    minor: 'under the crest of the nut, at least',
    overlap: 'depth of thread shared, on the radius',
    hole: (share: string) => `hole for ${share} of thread`,
    lies: 'that hole is',
    drills: 'nearest drills',
  },
  lies: (lies: Where) => `${lies} the nut’s minor limits`,
  drill: (name: string, share: string) => `${name} (${share})`,
  noDrill: 'none within 2\u00a0%',

  caption: (v: Caption) =>
    `Class ${v.screwClass} in class ${v.nutClass}: pitch diameter of the screw ${v.screwPitch}, of the nut ${v.nutPitch}, so ${v.clearance} of clearance on the diameter; ${FIT[v.fit]}. ${comesFrom(v.byFormula, v.standard, v.measured)}`,

  head: ['diameter', 'least', 'greatest', 'tolerance', 'comes from'],
  diameters: {
    screwMajor: 'screw, major',
    screwPitch: 'screw, pitch',
    screwMinor: 'screw, minor',
    nutMajor: 'nut, major',
    nutPitch: 'nut, pitch',
    nutMinor: 'nut, minor',
  },
  noLimit: 'no limit',
  byTable: (standard: string) => `table, ${standard}`,
  byFormula: (standard: string) => `formula, ${standard}`,
  asMeasured: 'as measured',
  fromAbove: 'from the limits above',
};
