/** The words of the calibration. */
import type { Signed } from '../../../engine/index.ts';

type SignedVerdict = Signed['verdict'];
const AGREES: Readonly<Record<SignedVerdict, (nominal: string) => string>> = {
  agrees: (nominal) => `It agrees with the nominal ${nominal}.`,
  differs: (nominal) => `It does not agree with the nominal ${nominal}.`,
  'not to be told': (nominal) => `Whether it agrees with the nominal ${nominal} can’t be told.`,
};

export const WORDS = {
  /** The fold in the foot. */
  numbers: 'Findings, dial, corrections',
  title: 'Readings of an indicator against turns, fitted',
  legend: {
    up: 'read on the way up',
    down: 'read on the way down',
    line: 'straight line through all',
    modelUp: 'fitted with hysteresis and periodic error, up',
    modelDown: 'the same, down',
  },
  openFile: 'Open a file of readings',
  noReadings:
    'Your design has no readings yet: type or paste its own into the field, or open a file. “Chapter’s own numbers” shows those of the shop.',
  working: {
    note: (characters: string) => `Working through ${characters} characters of readings …`,
    caption: (characters: string) => `Working through ${characters} characters of readings.`,
  },
  thinned: (drawn: string, all: string) =>
    `${drawn} of ${all} readings are drawn, the extremes of each stretch; all are in the fit.`,
  verdict: { agrees: 'Agrees.', differs: 'Does not agree.', 'not to be told': 'Can’t be told.' },
  saveCorrections: 'Save the correction table as CSV',
  saveResiduals: 'Save readings with residuals',
  ask: {
    label: 'A question about the units',
    turn: 'Yes: turn the sign of the readings',
    steps: (ratio: string, own: string, steps: string) =>
      `The slope is ${ratio} times the nominal lead: are the steps per turn ${steps}, and not ${own} as stated?`,
    stepsYes: (steps: number) => `Yes: ${steps} steps per turn`,
    positions: (unit: string) => `Yes: positions were in ${unit === 'steps' ? 'flats' : unit}`,
    readings: (unit: string) => `Yes: readings were in ${unit}`,
  },
  panels: { readings: 'Indicator', residuals: 'Distance from the straight line' },
  slider: 'turns, on the way up',
  dial: 'Dial: measured motion at these turns',
  rows: { lead: 'measured net lead', whole: 'whole ± of it, 95 %', difference: 'minus the nominal' },
  readout: {
    refused: 'no correction',
    nominal: 'nominal motion',
    correction: 'correction',
    travel: 'measured motion, on the dial',
  },
  caption: (v: {
    readonly readings: string;
    readonly lead: string;
    readonly verdict: SignedVerdict;
    readonly U: string;
    readonly nominal: string;
    /** At the turns of the dial, or why nothing is known there. */
    readonly here: { readonly turns: string; readonly correction: string; readonly dial: string } | string;
  }) => {
    const dial =
      typeof v.here === 'string'
        ? v.here
        : `At ${v.here.turns} turns the correction is ${v.here.correction}; the dial stands at ${v.here.dial}.`;
    return `${v.readings} readings give a net lead of ${v.lead}, with the set-up ± ${v.U}. ${AGREES[v.verdict](v.nominal)} ${dial}`;
  },
  table: {
    head: ['turns', 'direction', 'readings', 'nominal motion', 'measured motion', 'correction'],
    noneYet: { head: ['turns'], row: 'none yet' },
    directions: { up: 'up', down: 'down' },
    more: (places: string) => `and ${places} more places, which “Save the correction table” holds`,
  },
  /** Names of the files that are saved. */
  files: { residuals: 'readings-with-residuals.csv' },
};
