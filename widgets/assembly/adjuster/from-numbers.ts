/**
 * The adjuster of a reader who states two threads, an arrangement and perhaps a few lengths: written in words and read like any other,
 * so that there is one way from numbers to an adjuster. What is not stated the kinds of part assume.
 */
import type { Result, Thread } from '../../engine/index.ts';
import type { OptionOf } from '../../input/choices.ts';
import { designationOfSide } from '../../input/designation-sides.ts';
import { type Adjuster, assemble } from './adjuster.ts';
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

export const adjusterOf = (numbers: StatedNumbers): Result<Adjuster> => {
  const read = readAdjuster(adjusterWords(numbers));
  if (!read.ok) return read;
  // A designation says a pitch as it should be; moved within its ± it is another.
  const { A, C } = numbers.threads;
  const same = (nominal: number | undefined, P: number) => nominal === undefined || Math.abs(nominal - P) <= 1e-12 * P;
  return same(read.value.A.thread.P, A.P) && same(read.value.C?.thread.P, C.P)
    ? read
    : assemble({ ...read.value, pitches: { A: A.P, C: C.P } });
};

/** Nine digits, as any length is written. */
const length = (x: number | undefined): string => (x === undefined ? '' : ` ${Number(x.toPrecision(9))} mm`);

export const adjusterWords = ({ threads, values = {}, choices, ball }: StatedNumbers): string => {
  // Each end states its own side of the thread.
  const [sA, nA] = [designationOfSide(threads.A, 'external'), designationOfSide(threads.A, 'internal')];
  const [sC, nC] = [designationOfSide(threads.C, 'external'), designationOfSide(threads.C, 'internal')];
  const { l_A, b_A, l_C, b_C, q_e } = values;
  const [lA, bA, lC, bC] = [length(l_A), length(b_A), length(l_C), length(b_C)];
  const screw = lC === '' ? '' : `, thread${lC}`;
  const nut = bC === '' ? '' : `, thread${bC}`;
  const parts: Readonly<Record<Arrangement, readonly string[]>> = {
    'in line': [block(nA, bA), `turned = stud ${sA}${lA}, ${sC}${lC}`, `carried = cap ${nC}${nut}`],
    nested: [
      block(nA, bA),
      `turned = sleeve ${sA} external${lA}, ${nC} internal${bC}`,
      `carried = spindle ${sC}${screw}`,
    ],
    'one spindle, two nuts': [
      block(nA, bA),
      // The nut leaves its thread downwards, so there must be room for it below.
      `turned = spindle ${sA}${lA}, ${sC}${lC}${b_C === undefined ? '' : `, neck${length(b_C + 0.1 * threads.C.d)}`}`,
      `carried = nut ${nC}${bC === '' ? '' : `,${bC}`}`,
    ],
    'thread adapter': [
      `base = coupling nut ${nA}${bA === '' ? '' : `,${bA}`}`,
      `turned = adapter ${sA} external${lA}, ${nC} internal${bC} blind`,
      `carried = socket screw ${sC}${screw}`,
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
