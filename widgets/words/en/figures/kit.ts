/** The words of what figures share. */
import type { SigningPart } from '../../../engine/index.ts';

export const WORDS = {
  figure: { numbersBehind: 'Numbers', table: 'Table' },
  knob: {
    notTurned: 'not turned',
    turned: (v: { readonly count: number; readonly clockwise: boolean }) =>
      `${v.count} ${v.count === 1 ? 'turn' : 'turns'} ${v.clockwise ? 'clockwise' : 'anticlockwise'}`,
  },
  slider: { name: (label: string) => `${label}:` },
  dial: {
    faces: { thou: '1 thou', tenth: '1 tenth', micrometres: '10 µm', micrometre: '1 µm' },
    reading: (divisions: string, face: string) => `${divisions} divisions of ${face}`,
  },
  plot: {
    inUnit: (name: string, unit: string) => `${name}, in ${unit}`,
    across: 'turns, clockwise',
  },
};

/** The parts of the ± of a measured lead. */
export const SIGNING_PARTS: Readonly<Record<SigningPart, string>> = {
  fit: 'the scatter of the readings',
  gauge: 'the scale of the indicator',
  cosine: 'the tilt of the plunger',
  abbe: 'the plunger beside the axis',
  drift: 'the drift',
  repeat: 'the repeat of the indicator',
};

interface Whole {
  readonly lead: string;
  readonly U: string;
  readonly off: string;
  readonly below: boolean;
  readonly nominal: string;
  readonly stated: string;
  readonly matters: string;
  readonly largest: string;
}

const found = (v: Whole): string =>
  `The measured net lead is ${v.lead} ± ${v.U} a turn with all of the set-up, ${v.off} ${v.below ? 'below' : 'above'} the nominal ${v.nominal}`;

/** What a calibration found, as its figure and its certificate say it. */
export const FINDINGS = {
  correctionFile: 'correction-table.csv',
  lead: (lead: string, uncertainty: string) => `${lead} ± ${uncertainty} a turn`,
  verdict: {
    agrees: (v: Whole) => `${found(v)}: it agrees within that ± and the stated lead error of ${v.stated}.`,
    differs: (v: Whole) => `${found(v)}: it does not agree within that ± and the stated lead error of ${v.stated}.`,
    'not to be told': (v: Whole) =>
      `Whether it agrees can’t be told: the whole ± is ${v.U} a turn, more than the ${v.matters} that matter. Its largest part is ${v.largest}: make that smaller first.`,
  },
  untold: 'cannot be found',
  hysteresis: {
    name: 'hysteresis',
    value: (gap: string, uncertainty: string) => `${gap} ± ${uncertainty}`,
    says: (v: {
      readonly gap: string;
      readonly uncertainty: string;
      /** Turns lost, or undefined where the gap is against the sense of lost motion. */
      readonly lost: string | undefined;
      readonly slopesAgree: boolean;
    }) =>
      `Hysteresis between up and down is ${v.gap} ± ${v.uncertainty}, which is ${
        v.lost === undefined ? 'opposite to lost motion, so look for drift' : `${v.lost} turns lost on reversal`
      }.${v.slopesAgree ? '' : ' The two directions have different slopes, so one number does not describe the gap.'}`,
  },
  periodic: {
    name: 'periodic error',
    value: (amplitude: string, whole: string, significant: boolean) =>
      `${amplitude} to either side (${whole} crest to trough)${significant ? '' : ', no more than scatter'}`,
    says: (v: { readonly amplitude: string; readonly crest: string; readonly significant: boolean }) =>
      `The periodic error, once per turn, is ${v.amplitude} to either side, furthest up at ${v.crest} of a turn${
        v.significant ? '' : ', which is no more than scatter alone would give'
      }.`,
  },
  repeatability: {
    name: 'repeatability',
    value: (deviation: string, widest: string) => `${deviation}, widest ${widest}`,
    says: (deviation: string, widest: string) =>
      `A place read again from the same side repeats with a standard deviation of ${deviation}; the two readings furthest apart differ by ${widest}.`,
  },
  leftOver: {
    name: 'scatter',
    says: (scatter: string, freedom: number) =>
      `The scatter that is left is ${scatter}, standard deviation, with ${freedom} degrees of freedom.`,
  },
};
