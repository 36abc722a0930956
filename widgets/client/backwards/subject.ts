/** What is asked: a result of an example or a number of a figure, as the one panel that opens behind either needs it. */
import { DRAWS, doubtIn, FEW_DRAWS, type ResultDoubt } from '../../assembly/backwards/doubt.ts';
import { ofExample, ofNumbers, type Question } from '../../assembly/backwards/question.ts';
import type { Asked } from '../../assembly/backwards/reach.ts';
import { soldThing } from '../../assembly/backwards/sold.ts';
import { fieldUnit, type Input, type NumberSet, type Numbers } from '../../assembly/numbers.ts';
import { runSteps, type Step } from '../../assembly/steps.ts';
import { type BaseUnit, symbolFact, UNITS, type Unit } from '../../engine/index.ts';
import type { Figure } from '../../figures/kit/figure.ts';
import type { Amount } from '../../figures/kit/readout.ts';
import { formatOf, type NumberFormat, type UnitView } from '../../input/format.ts';
import type { Spread } from '../../input/spread.ts';
import type { PageModel } from '../../page/model.ts';
import type { Store } from '../store.ts';
import { figureChain, stepChain } from './chain-items.ts';

export interface Example {
  readonly place: HTMLElement;
  readonly set: string;
  readonly steps: readonly Step[];
}

export interface AskedFigure {
  readonly place: HTMLElement;
  readonly figure: Figure;
  readonly set: string;
}

export interface Subject {
  readonly set: string;
  /** A few words that name it. */
  readonly short: string;
  readonly format: NumberFormat;
  readonly base: BaseUnit;
  /** In which a bare number counts. */
  readonly unit: () => Unit;
  readonly now: () => number | undefined;
  /** Asked anew for each search; one that may be broken off is told until when it works on. */
  readonly question: () => Question & { readonly until?: (end: number) => void };
  /** How often it is drawn where the first order may not hold. */
  readonly draws: number;
  readonly chain: () => HTMLElement[];
}

const numberSet = (store: Store, id: string): NumberSet => store.sets.get(id) ?? { id, inputs: [] };

export const spreadsIn =
  (store: Store, set: string) =>
  (name: string): Spread | undefined =>
    store.field(set, name)?.spread;

export const doubtOfSubject = (subject: Subject, store: Store): ResultDoubt | undefined =>
  doubtIn(subject.question(), spreadsIn(store, subject.set));

const firstWords = (text: string): string => text.split(',')[0] ?? text;

export const ofStep = (example: Example, index: number, step: Step, store: Store, model: PageModel): Subject => {
  const { set, steps } = example;
  const { says, unit } = symbolFact(step.as);
  const asked = (): Asked => ({ set: numberSet(store, set), numbers: store.numbers(set), steps, index });
  return {
    set,
    short: firstWords(says),
    format: formatOf(symbolFact(step.as), step.digits),
    base: unit,
    unit: () => fieldUnit(step.as, store.view()),
    now: () => {
      const outcome = runSteps(steps, store.scope(set))[index];
      return outcome?.ok ? outcome.value : undefined;
    },
    draws: DRAWS,
    question: () => ofExample(asked()),
    chain: () => stepChain(asked(), store, model),
  };
};

/** The numbers of a figure, by their keys. */
export const amountsAt = (figure: Figure, numbers: Numbers, view: UnitView): ReadonlyMap<string, Amount> => {
  const at = figure.at(numbers, view);
  return new Map(at.ok ? at.value.amounts().map((amount) => [amount.key, amount]) : []);
};

/** The reader’s numbers that a figure takes and that change something in it as the others stand. */
const inputsOf = ({ figure, set }: AskedFigure, store: Store): readonly Input[] => {
  const own = new Set<string>([...figure.threads, ...figure.quantities, ...figure.choices]);
  const idle = figure.idle(store.numbers(set));
  return numberSet(store, set).inputs.filter(({ name }) => own.has(name) && !idle.includes(name));
};

/** Thrown where a slice of work is over; see `worker`. */
export const REST = Symbol('rest');

interface Worker {
  readonly at: (numbers: Numbers, key: string) => number | undefined;
  /** Until when, by the clock of the page, it works on; then it throws `REST` in place of working a figure anew. */
  readonly until: (end: number) => void;
}

/**
 * Works a figure at other numbers, and keeps what it gave. All its numbers come of one working, so the ± of the second costs nothing
 * more than that of the first. A search over it may be broken off by `REST` and begun again in the next slice: as far as it had come
 * it has only to look up.
 */
export const worker = (figure: Figure): Worker => {
  const known = new Map<string, ReadonlyMap<string, Amount>>();
  let end = Number.POSITIVE_INFINITY;
  let worked = 0;
  return {
    at: (numbers, key) => {
      const at = JSON.stringify([numbers.values, numbers.threads, numbers.choices]);
      let found = known.get(at);
      if (!found) {
        if (worked > 0 && performance.now() > end) throw REST;
        worked++;
        found = amountsAt(figure, numbers, 'metric');
        known.set(at, found);
      }
      return found.get(key)?.value;
    },
    until: (next) => {
      end = next;
      worked = 0;
    },
  };
};

export const questionIn = (asked: AskedFigure, { key, name, sold }: Amount, store: Store, work: Worker): Question => ({
  ...ofNumbers(store.numbers(asked.set), inputsOf(asked, store), name, (numbers) => work.at(numbers, key)),
  sold: soldThing(sold),
});

export const ofAmount = (asked: AskedFigure, amount: Amount, store: Store, model: PageModel): Subject => {
  const { figure, set } = asked;
  const { shown } = amount.format;
  return {
    set,
    short: amount.name,
    format: amount.format,
    base: baseOf(shown),
    unit: () => unitOf(shown, store.view()),
    now: () => amountsAt(figure, store.numbers(set), 'metric').get(amount.key)?.value,
    draws: FEW_DRAWS,
    question: () => {
      const work = worker(figure);
      return { ...questionIn(asked, amount, store, work), until: work.until };
    },
    chain: () => figureChain(asked, amount, store, model),
  };
};

const baseOf = (shown: NumberFormat['shown']): BaseUnit => {
  switch (shown) {
    case 'size':
    case 'motion':
      return 'mm';
    case 'degrees':
      return 'rad';
    case 'turns':
      return 'turn';
    case 'force':
      return 'N';
    default:
      return Object.hasOwn(UNITS, shown) && shown !== 'percent' ? (UNITS[shown as Unit].base as BaseUnit) : '1';
  }
};

const unitOf = (shown: NumberFormat['shown'], view: UnitView): Unit => {
  const inch = view === 'inch';
  switch (shown) {
    case 'size':
      return inch ? 'in' : 'mm';
    case 'motion':
      return inch ? 'thou' : 'µm';
    case 'degrees':
      return '°';
    case 'percent':
      return '%';
    case 'turns':
      return 'turns';
    case 'force':
      return 'N';
    default:
      return Object.hasOwn(UNITS, shown) ? (shown as Unit) : '1';
  }
};
