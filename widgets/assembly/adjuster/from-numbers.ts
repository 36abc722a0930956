/**
 * The adjuster of a reader who states two threads, an arrangement and perhaps a few lengths: written in words and read like any other,
 * so that there is one way from numbers to an adjuster. What is not stated the kinds of part assume.
 */
import type { Result, Thread } from '../../engine/index.ts';
import type { OptionOf } from '../../input/choices.ts';
import type { Adjuster } from './adjuster.ts';
import { readAdjuster } from './text.ts';

export type Arrangement = OptionOf<'arrangement'>;

/** Lengths in mm: l of a screw, b of a nut; q_e the engagement kept, in diameters. */
export interface StatedNumbers {
  readonly threads: Readonly<Record<'A' | 'C', Thread>>;
  readonly values?: Readonly<Partial<Record<'l_A' | 'b_A' | 'l_C' | 'b_C' | 'q_e', number>>>;
  readonly choices: { readonly arrangement: Arrangement; readonly assembly?: OptionOf<'assembly'> };
  /** Radius of a ball at the tip, mm. */
  readonly ball?: number;
}

export const adjusterOf = (numbers: StatedNumbers): Result<Adjuster> => readAdjuster(wordsOf(numbers));

/** Nine digits, as any length is written. */
const length = (x: number | undefined): string => (x === undefined ? '' : ` ${Number(x.toPrecision(9))} mm`);

const wordsOf = ({ threads, values = {}, choices, ball }: StatedNumbers): string => {
  const [A, C] = [threads.A.designation, threads.C.designation];
  const { l_A, b_A, l_C, b_C, q_e } = values;
  const [lA, bA, lC, bC] = [length(l_A), length(b_A), length(l_C), length(b_C)];
  const screw = lC === '' ? '' : `, thread${lC}`;
  const nut = bC === '' ? '' : `, thread${bC}`;
  const parts: Readonly<Record<Arrangement, readonly string[]>> = {
    'in line': [block(A, bA), `turned = stud ${A}${lA}, ${C}${lC}`, `carried = cap ${C}${nut}`],
    nested: [block(A, bA), `turned = sleeve ${A} external${lA}, ${C} internal${bC}`, `carried = spindle ${C}${screw}`],
    'one spindle, two nuts': [
      block(A, bA),
      // The nut leaves its thread downwards, so there must be room for it below.
      `turned = spindle ${A}${lA}, ${C}${lC}${b_C === undefined ? '' : `, neck${length(b_C + 0.1 * threads.C.d)}`}`,
      `carried = nut ${C}${bC === '' ? '' : `,${bC}`}`,
    ],
    'thread adapter': [
      `base = coupling nut ${A}${bA === '' ? '' : `,${bA}`}`,
      `turned = adapter ${A} external${lA}, ${C} internal${bC} blind`,
      `carried = socket screw ${C}${screw}`,
    ],
  };
  return [
    ...parts[choices.arrangement],
    ...(q_e === undefined ? [] : [`keep = ${Number(q_e.toPrecision(9))} diameters`]),
    ...(choices.assembly === undefined ? [] : [`assembled = ${choices.assembly}`]),
    ...(ball === undefined ? [] : [`tip = ball${length(2 * ball)}`]),
  ].join('\n');
};

const block = (A: string, bA: string): string => `base = tapped block ${A}${bA === '' ? '' : `,${bA}`}`;
