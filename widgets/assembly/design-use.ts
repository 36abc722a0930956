/**
 * What a kept design says to the fields of a page, and what of a page's fields a design keeps.
 *
 * A design's numbers stand under the names they have in the chapters, so a field takes the number of its own name. A design that is
 * described by its parts (`adjuster`) says its threads and lengths from these. Four things are worked out on the way:
 *
 *   k        steps in a turn, from what the turn is divided by: 6, 4, 12, or the divisions of the knob. A design keeps what it is
 *            divided by and never the count, since two such numbers could say two things
 *   n_w      turns for the stroke wanted, S_w/|Delta|
 *   X_A, X_C usable lengths, from lengths of screw and nut and the engagement kept
 *   F        the load of an adjuster whose parts are asked for: the larger of the most and the least load at its tip, with its
 *            weight. Elsewhere the same sign is the load on a thread, a ball or a vee, and W the weight on all feet together
 *
 * Readings, places, counts of turns and times belong to the example they were taken for: the first reading of one
 * chapter is nothing to the first reading of the next. They are neither kept nor filled in.
 */

import { mm, type SymbolName, symbolFact, type Thread, turnsFor } from '../engine/index.ts';
import { CHOICES } from '../input/choices.ts';
import { readThread } from '../input/designation.ts';
import { dividerOf, stepsOf } from '../input/dividers.ts';
import { splitSpread } from '../input/spread.ts';
import { NO_PARTS, NO_READINGS } from '../input/texts.ts';
import type { Adjuster } from './adjuster/adjuster.ts';
import { holdingNumbers, numbersOfAdjuster, springPlaceNumbers } from './adjuster/as-numbers.ts';
import { adjusterOf } from './adjuster/from-numbers.ts';
import { partsStated } from './adjuster/stated.ts';
import { ATTITUDES } from './attitude.ts';
import { formerNames, inPresentSign, presentOption, RENAMED } from './former-names.ts';
import { type Input, mayBeNone, type NumberSet, readField, writeQuantity } from './numbers.ts';
import { pairOf } from './pair-of.ts';

type Texts = Readonly<Record<string, string>>;

/** What one field is given. */
export interface Fill {
  readonly text: string;
  /** Whether the design holds it under another name or names, from which it was worked out. */
  readonly worked: boolean;
  /** Emptied, since what stands there is of the chapter's own piece and not of this design; what the reader typed stays. */
  readonly emptied?: true;
}

/** What a page states of the one piece that it measured, and how it stands empty. */
const OF_ONE_PIECE: Readonly<Record<string, string>> = {
  runs: NO_READINGS,
  piece: '',
  gauge: '',
  method: '',
  passport: '',
};

const OF_ONE_EXAMPLE: ReadonlySet<string> = new Set<SymbolName>([
  // Readings and where they were taken.
  ...(['z_1', 'z_2', 'z_3', 'n_1', 'n_2', 'n_3', 'd_2', 'D_2'] as const),
  ...(['x_1', 'y_1', 'x_2', 'y_2', 'x_3', 'y_3', 'x_s', 'y_s', 'x_d', 'y_d'] as const),
  // Where the reader has turned to, how far a run goes, which run.
  ...(['n', 'theta', 'n_o', 'n_h', 'w', 'n_s'] as const),
  // End of a spring's life in one chapter and a minute in the hand in another; the load on a thread, a ball, a vee.
  ...(['t', 't_0', 'F'] as const),
]);

/** A thread called just that stands beside a pair for another part, such as the screw that drives a wedge. */
const ofAnotherPart = (name: string, names: (name: string) => boolean): boolean => name === 'thread' && names('A');

/** A design of any age under the names of today. */
const todays = (old: Texts): Texts => {
  const numbers: Record<string, string> = { ...old };
  for (const [was, is, meant] of RENAMED) {
    const text = old[was];
    if (text === undefined || !meant(old)) continue;
    // What stands under the name of today was kept later.
    numbers[is] ??= text;
    delete numbers[was];
  }
  return { ...numbers, ...dividerFor(numbers) };
};

/** What a turn is divided by, where only its steps are told. */
const dividerFor = (numbers: Texts): Texts => {
  const k = numbers.divider === undefined ? amount(numbers, 'k') : undefined;
  if (k === undefined) return {};
  const divider = dividerOf(k);
  return divider === 'knob' ? { divider, k_d: writeQuantity('k_d', k, 'metric') } : { divider };
};

/** The numbers of a page as a design keeps them. */
export const asDesign = (kept: Texts): Texts => {
  const numbers: Record<string, string> = { ...kept, ...dividerFor(kept) };
  delete numbers.k;
  for (const [name, empty] of Object.entries(OF_ONE_PIECE))
    if (numbers[name] === empty && name !== 'passport') delete numbers[name];
  // The stroke is one number of the design, whether it was given as motion or in turns; these only tell its sense beside it.
  const net = netLeadIn(numbers);
  const n_w = amount(numbers, 'n_w');
  if (net !== undefined && n_w !== undefined) numbers.S_w ??= writeQuantity('S_w', Math.abs(n_w * net), 'metric');
  return Object.fromEntries(
    Object.entries(numbers).filter(
      ([name]) => !OF_ONE_EXAMPLE.has(name) && !ofAnotherPart(name, (n) => numbers[n] !== undefined),
    ),
  );
};

/** What a design puts into the fields of a set: only texts that the field takes. */
export const fillsOf = (design: Texts, set: NumberSet): ReadonlyMap<string, Fill> =>
  new Map([...offersOf(design, set)].filter(([, offer]) => offer.taken));

/** What a design has for the fields of a set, also what a field does not take because it is outside its bounds. */
export const offersOf = (design: Texts, set: NumberSet): ReadonlyMap<string, Fill & { readonly taken: boolean }> => {
  const own = todays(design);
  const ofParts = numbersOfParts(own);
  const rest = ofParts ? Object.fromEntries(Object.entries(own).filter(([name]) => !OF_THREADS.test(name))) : own;
  const has = (name: string) => set.inputs.some((input) => input.name === name);
  const holding = ofParts && has('w_n') ? holdingNumbersIn(own) : undefined;
  const sprung = ofParts && has('N_f') ? springPlaceIn(own) : undefined;
  const numbers: Texts = { ...rest, ...ofParts, ...holding, ...sprung };
  const offers = new Map<string, Fill & { readonly taken: boolean }>();
  const described = has('adjuster');
  // Half a design beside half a chapter would be an adjuster that nobody has. A page that asks for the parts themselves has it whole.
  if (ofParts && !described && isMore(ofParts, has)) return offers;
  const load = described ? loadIn(numbers) : undefined;
  const plain = ofParts !== undefined && has('C') && ofParts.C === undefined;
  for (const input of set.inputs) {
    const { name } = input;
    if (name === 'r_k' && sprung && sprung.r_k === undefined) continue;
    if (plain && OF_THREADS.test(name)) continue;
    if (mayBeNone(input) && numbers.adjuster === undefined && numbers.A !== undefined) {
      // Parts of an earlier design would rule over the threads of this one.
      offers.set(name, { text: NO_PARTS, worked: true, taken: true });
      continue;
    }
    const carried = load?.[name];
    if (carried !== undefined) {
      offers.set(name, { text: carried, worked: true, taken: readField(input, carried, 'metric').ok });
      continue;
    }
    if (OF_ONE_EXAMPLE.has(name) || ofAnotherPart(name, (n) => has(n) || numbers[n] !== undefined)) continue;
    const ofPiece = has('runs') || name === 'passport';
    const empty = ofPiece && numbers.A !== undefined ? OF_ONE_PIECE[name] : undefined;
    if (empty !== undefined && numbers[name] === undefined) {
      offers.set(name, { text: empty, worked: true, taken: true, emptied: true });
      continue;
    }
    const worked = workedOut(numbers, name);
    const text = worked ?? numbers[name];
    if (text === undefined) continue;
    offers.set(name, {
      text,
      worked: text !== own[name],
      taken: readField(input, text, 'metric').ok,
    });
  }
  // A knob with other divisions than its own would be another knob.
  const divider = offers.get('divider');
  if (divider && numbers.divider === 'knob' && has('k_d') && offers.get('k_d')?.taken !== true)
    offers.set('divider', { ...divider, taken: false });
  return offers;
};

const workedOut = (numbers: Texts, name: string): string | undefined => {
  if (name === 'k') {
    const { divider } = numbers;
    const k = divider === undefined ? undefined : stepsOf(divider, amount(numbers, 'k_d') ?? Number.NaN);
    return k === undefined || Number.isNaN(k) ? undefined : writeQuantity('k', k, 'metric');
  }
  if (name === 'n_w') {
    const [net, S_w] = [netLeadIn(numbers), amount(numbers, 'S_w')];
    const n =
      net === undefined || S_w === undefined ? undefined : turnsFor.of({ w: mm(S_w), Delta: mm(Math.abs(net)) });
    return n?.ok
      ? writeQuantity('n_w', (amount(numbers, 'n_w') ?? 1) < 0 ? -n.value.n : n.value.n, 'metric')
      : undefined;
  }
  if (name === 'X_A') return usable(numbers, 'A');
  if (name === 'X_C') return usable(numbers, 'C');
  return undefined;
};

/** The load that a design carries at its tip, and which way it acts; undefined where the design states none. */
const loadIn = (numbers: Texts): Texts | undefined => {
  const F_hi = amount(numbers, 'F_hi');
  if (F_hi === undefined) return undefined;
  const attitude = CHOICES.attitude.options.find((option) => option === numbers.attitude);
  const weight = (amount(numbers, 'W_c') ?? 0) * (attitude ? ATTITUDES[attitude] : 0);
  const [most, least] = [F_hi + weight, (amount(numbers, 'F_lo') ?? F_hi) + weight];
  const load = Math.abs(least) > Math.abs(most) ? least : most;
  return {
    F: writeQuantity('F', Math.abs(load), 'metric'),
    pull: CHOICES.pull.options[load < 0 ? 1 : 0],
  };
};

/** What parts say of threads and lengths: beside them no number of an earlier design stands. */
const OF_THREADS = /^(?:[AC]|[lbXj]_[AC]|c_m[AC]|arrangement|assembly|pieces)$/;

/** What a design says that is described by its parts; it stands over numbers of its own. */
const numbersOfParts = (numbers: Texts): Texts | undefined => {
  const described = numbers.adjuster === undefined ? undefined : partsStated(numbers.adjuster);
  return described?.ok ? numbersOfAdjuster(described.value) : undefined;
};

const holdingNumbersIn = ({ adjuster = NO_PARTS }: Texts): Texts | undefined => {
  const described = partsStated(adjuster);
  return described?.ok ? holdingNumbers(described.value) : undefined;
};

const springPlaceIn = ({ adjuster = NO_PARTS }: Texts): Texts | undefined => {
  const described = partsStated(adjuster);
  return described?.ok ? springPlaceNumbers(described.value) : undefined;
};

/** Whether a set is of a pair, or of an arrangement, that a design of parts is not: a plain screw has no thread C, a double nut is none of the arrangements. */
const isMore = (ofParts: Texts, has: (name: string) => boolean): boolean =>
  (has('C') && ofParts.C === undefined) || (has('arrangement') && ofParts.arrangement === undefined);

/** The adjuster that the threads and lengths of a design make, where it has them all; one described by its parts has said its numbers already. */
const adjusterIn = (numbers: Texts): Adjuster | undefined => {
  if (numbers.adjuster !== undefined && numbers.adjuster !== NO_PARTS) return undefined;
  const [A, C] = [threadIn(numbers, 'A'), threadIn(numbers, 'C')];
  const [l_A, b_A, l_C, b_C] = [
    amount(numbers, 'l_A'),
    amount(numbers, 'b_A'),
    amount(numbers, 'l_C'),
    amount(numbers, 'b_C'),
  ];
  const q_e = amount(numbers, 'q_e');
  if (!A || !C || l_A === undefined || b_A === undefined || l_C === undefined || b_C === undefined || q_e === undefined)
    return undefined;
  const arrangement = CHOICES.arrangement.options.find((option) => option === numbers.arrangement) ?? 'in line';
  const made = adjusterOf({ threads: { A, C }, values: { l_A, b_A, l_C, b_C, q_e }, choices: { arrangement } });
  return made.ok ? made.value : undefined;
};

/** From the adjuster that the lengths make; a design without all of them has its own number, if any. */
const usable = (numbers: Texts, thread: 'A' | 'C'): string | undefined => {
  const adjuster = adjusterIn(numbers);
  const fitted = thread === 'A' ? adjuster?.A : adjuster?.C;
  return fitted && writeQuantity(`X_${thread}`, fitted.usable, 'metric');
};

const threadIn = (numbers: Texts, name: string): Thread | undefined => {
  const read = readThread(splitSpread(numbers[name] ?? '')[0]);
  return read.ok ? read.value : undefined;
};

const netLeadIn = (numbers: Texts): number | undefined => {
  const [A, C] = [threadIn(numbers, 'A'), threadIn(numbers, 'C')];
  const pair = A && C ? pairOf({ threads: { A, C } }) : undefined;
  return pair?.ok && pair.value.Delta !== 0 ? pair.value.Delta : undefined;
};

/** What a turn moves by the threads of a design, mm with its sense; undefined where it has not both. */
export const netLeadOf = (design: Texts): number | undefined => {
  const own = todays(design);
  return netLeadIn({ ...own, ...numbersOfParts(own) });
};

/** A quantity of a design, if it holds a good one. */
const amount = (numbers: Texts, name: SymbolName): number | undefined => {
  const { says, min, max } = symbolFact(name);
  const input: Input = { kind: 'quantity', name, label: says, start: '', min, max };
  const read = readField(input, numbers[name] ?? '', 'metric');
  return read.ok && typeof read.value.value === 'number' ? read.value.value : undefined;
};

/** The search part of an address with the names of today: links made before a name was changed go on meaning what they meant. */
export const inTodaysNames = (search: string, sets: readonly NumberSet[]): string => {
  const parameters = new URLSearchParams(search);
  let changed = false;
  for (const { id, inputs } of sets) {
    const has = (name: string) => inputs.some((input) => input.name === name);
    for (const { name } of inputs)
      for (const former of formerNames(name)) {
        const text = parameters.get(`${id}.${former}`);
        if (text === null) continue;
        parameters.delete(`${id}.${former}`);
        if (!parameters.has(`${id}.${name}`)) parameters.set(`${id}.${name}`, inPresentSign(text));
        changed = true;
      }
    for (const { name, kind } of inputs) {
      const text = kind === 'choice' ? parameters.get(`${id}.${name}`) : null;
      if (text === null || presentOption(name, text) === text) continue;
      parameters.set(`${id}.${name}`, presentOption(name, text));
      changed = true;
    }
    for (const [was, is] of RENAMED) {
      const text = has(is) && !has(was) ? parameters.get(`${id}.${was}`) : null;
      if (text === null) continue;
      parameters.delete(`${id}.${was}`);
      if (!parameters.has(`${id}.${is}`)) parameters.set(`${id}.${is}`, text);
      changed = true;
    }
  }
  return changed ? `?${parameters}` : search;
};
