/**
 * The forms of one exercise, from its one definition: asked as it is written; asked backwards, the answer told and one of its numbers to be
 * found; and “show that”, the answer told and the way to it asked.
 */
import { backwardsTitle } from '#words/papers.ts';
import { readInput } from '../assembly/numbers.ts';
import { runSteps } from '../assembly/steps.ts';
import { bad, good, invert, type Result, toBase, type Unit } from '../engine/index.ts';
import {
  answerText,
  askable,
  type Exercise,
  filled,
  type Item,
  itemAt,
  type Pool,
  readPicks,
  slipsOfAny,
} from './exercise.ts';
import { acceptedInterval } from './interval.ts';
import { asRuled, type Picture } from './picture.ts';
import { pick, stateOf } from './seed.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'not-found-backwards': { readonly name: string };
  }
}

export const FORMS = ['as-written', 'backwards', 'show-that', 'mixed'] as const;
export type Form = (typeof FORMS)[number];

const made = new WeakMap<Exercise, { readonly find: Exercise | undefined; readonly show: Exercise }>();

/** The other forms of an exercise; the same objects whenever they are asked for, since their items are kept by them. */
export const formsOf = (exercise: Exercise): { readonly find: Exercise | undefined; readonly show: Exercise } => {
  const known = made.get(exercise);
  if (known) return known;
  const { backwards, ...rest } = exercise;
  const find: Exercise | undefined = backwards && {
    ...rest,
    id: `${exercise.id}-backwards`,
    title: backwardsTitle(exercise.title),
    question: backwards.question,
    unit: backwards.unit,
    digits: backwards.digits,
    slips: [],
    asItem: (picks) => (find ? foundItem(exercise, find, backwards.name, picks) : bad('no-answering-step', {})),
  };
  const show: Exercise = {
    ...rest,
    id: `${exercise.id}-show`,
    slips: [],
    shows: true,
    asItem: (picks) => {
      const item = itemAt(exercise, picks);
      return item.ok
        ? good({
            ...item.value,
            exercise: show,
          })
        : item;
    },
  };
  const forms = { find, show };
  made.set(exercise, forms);
  return forms;
};

/**
 * An item asked backwards. What is told is the answer as it is printed, so what is to be found is worked from that, and not from the
 * option that was drawn; of several values the one nearest to that option.
 */
const foundItem = (exercise: Exercise, form: Exercise, name: string, picks: readonly number[]): Result<Item> => {
  const forward = itemAt(exercise, picks);
  const numbers = readPicks(exercise, picks);
  if (!forward.ok) return forward;
  if (!numbers.ok) return numbers;
  const { scope, texts } = numbers.value;
  const input = exercise.pools.find((pool) => pool.input.name === name)?.input;
  const drawn = scope[name];
  if (input?.kind !== 'quantity' || drawn === undefined) return bad('not-found-backwards', { name });
  const told = toBase({ amount: Number(forward.value.amount.toPrecision(exercise.digits)), unit: exercise.unit });
  const outcomes = (x: number) => runSteps(exercise.steps, { ...scope, [name]: x });
  const law = (x: number) => {
    const last = outcomes(x).at(-1);
    return last?.ok ? last.value : undefined;
  };
  const [answer] = invert(law, told, { min: input.min, max: input.max, about: drawn }).answers.toSorted(
    (a, b) => Math.abs(a.x - drawn) - Math.abs(b.x - drawn),
  );
  if (!answer) return bad('not-found-backwards', { name });
  const amount = askable(answer.x, form.unit, form.digits);
  if (!amount.ok) return amount;
  return good({
    exercise: form,
    picks,
    question: filled(form.question, { ...texts, answer: answerText(forward.value) }),
    hint: forward.value.hint,
    outcomes: outcomes(answer.x),
    amount: amount.value,
    accepted: acceptedInterval(amount.value, form.digits),
    slips: slipsOfAny(amount.value, form.unit),
  });
};

/** An exercise in the form asked for, by lot where that is mixed; one that can’t be turned round stays as it is written. */
export const inForm = (exercise: Exercise, form: Form, words: readonly string[], judged: boolean): Exercise => {
  const { find, show } = formsOf(exercise);
  // What is chosen or put in order has nothing to find backwards, and no line to show.
  if (form === 'as-written' || exercise.kind !== undefined) return exercise;
  if (form === 'backwards') return find ?? exercise;
  if (form === 'show-that') return judged ? exercise : show;
  const all = [exercise, ...(find ? [find] : []), ...(judged ? [] : [show])];
  return all[pick(stateOf(['form', ...words]), all.length)] ?? exercise;
};

/** The units in which a student works, as a roster says them behind a name. */
export type OwnUnits = 'mm' | 'inch';

const IN_UNITS: Readonly<Record<OwnUnits, Partial<Record<Unit, Unit>>>> = {
  mm: { thou: 'µm', tenths: 'µm', in: 'mm' },
  inch: { µm: 'thou', mm: 'in' },
};
const inUnits = new WeakMap<Exercise, Map<OwnUnits, Exercise>>();

/** What is read off a picture, set on its marks. */
const onInchMarks = ({ input, options }: Pool, picture: Picture): Pool =>
  input.name !== picture.of || picture.shows === 'rule'
    ? { input, options }
    : {
        input,
        options: options.map((option) => {
          const read = readInput(input, option, 'metric');
          return read.ok && typeof read.value === 'number'
            ? `${Number((asRuled(picture, read.value, 'inch') / 25.4).toFixed(6))} in`
            : option;
        }),
      };

/**
 * The same exercise with its answer asked in the student’s own unit, and its picture ruled in it; what is told stays as stock is
 * sold.
 */
export const inOwnUnits = (exercise: Exercise, units: OwnUnits | undefined): Exercise => {
  if (units === undefined || exercise.kind === 'wrong-line') return exercise;
  const unit = IN_UNITS[units][exercise.unit];
  const picture = units === 'inch' ? exercise.picture : undefined;
  if (unit === undefined && picture === undefined) return exercise;
  const known = inUnits.get(exercise) ?? new Map<OwnUnits, Exercise>();
  inUnits.set(exercise, known);
  const turned: Exercise = known.get(units) ?? {
    ...exercise,
    ...(unit && { unit }),
    ...(picture && { ruled: 'inch', pools: exercise.pools.map((pool) => onInchMarks(pool, picture)) }),
  };
  known.set(units, turned);
  return turned;
};
