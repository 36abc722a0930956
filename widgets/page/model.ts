/** What the site writes into a page as data and the browser reads again: all that a page is beside its text. */
import type { NumberSet } from '../assembly/numbers.ts';
import type { Step } from '../assembly/steps.ts';
import type { Curve } from '../exercises/curve.ts';
import type { Exercise } from '../exercises/exercise.ts';

export interface PageModel {
  readonly sets: readonly NumberSet[];
  readonly examples: readonly { readonly id: string; readonly set: string; readonly steps: readonly Step[] }[];
  readonly live: readonly LiveValue[];
  readonly predictions: readonly Prediction[];
  readonly exercises: readonly Exercise[];
  /** Where each symbol of the page is met first in the book, as a link and its words; unknown while chapters are being written. */
  readonly met?: Readonly<Record<string, readonly [href: string, words: string]>>;
  /** Where each relation of the page’s examples and figures is derived, by its name, as a link and its words. */
  readonly derived?: Readonly<Record<string, readonly [href: string, words: string]>>;
  /** On a page that sets papers or mixes exercises of the whole book, the script that has them (class-data.ts). */
  readonly classData?: string;
}

/** A sentence's value that follows the reader's numbers. */
export interface LiveValue {
  readonly set: string;
  readonly steps: readonly Step[];
}

/** A question asked before the answer is shown. */
export interface Prediction {
  /** Predicted on a picture: by the sign of the answer, by where a dial will stand, as a bar beside one that is known, or as a curve. */
  readonly on?: 'way' | 'flank' | 'dial' | 'bar' | 'curve';
  /** What a bar stands beside. */
  readonly beside?: { readonly value: number; readonly says: string };
  readonly curve?: Curve;
  /** Steps in a turn and the motion of a turn, for who predicts in flats or turns. */
  readonly turn?: { readonly steps: number; readonly motion?: number };
  /** The symbol of the answer. */
  readonly output: string;
  readonly answer: number;
  readonly digits: number;
  readonly slips: readonly Slip[];
}

/** A known wrong way: what it gives, and what to say to it. */
export interface Slip {
  readonly value: number;
  readonly says: string;
}
