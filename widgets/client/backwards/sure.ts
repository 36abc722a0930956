/** How sure a number is: its ±, what it comes from as a ranked bar, and whose ± to halve first. */
import {
  COMES_FROM,
  coverage,
  drawnDiffers,
  drawnLost,
  drawnSame,
  halveFirst,
  NO_DOUBT,
  UNDOUBTED,
} from '#words/backwards.ts';
import { type Drawn, drawsIn, type ResultDoubt } from '../../assembly/backwards/doubt.ts';
import type { Input } from '../../assembly/numbers.ts';
import { runInSlices } from '../../assembly/run-in-slices.ts';
import { grouped, type NumberFormat, numeral, show, type UnitView } from '../../input/format.ts';
import { showWithDoubt } from '../../input/with-doubt.ts';
import { make } from '../dom.ts';
import type { Store } from '../store.ts';
import { named } from './naming.ts';
import { doubtOfSubject, type Subject, spreadsIn } from './subject.ts';

/** Writes it into its place, and what draws say once they are done; gives what stops them. */
export const showDoubt = (into: HTMLElement, subject: Subject, store: Store): (() => void) => {
  const doubt = doubtOfSubject(subject, store);
  into.replaceChildren(...(doubt ? doubtItems(doubt, subject, store) : [make('p', {}, NO_DOUBT)]));
  if (!doubt) return () => {};
  const draws = drawsIn(subject.question(), spreadsIn(store, subject.set), doubt, subject.draws);
  return runInSlices(draws, (drawn) => {
    if (drawn) into.firstElementChild?.after(...drawnItem(drawn, subject.format, store.view()));
  });
};

const doubtItems = (doubt: ResultDoubt, subject: Subject, store: Store): HTMLElement[] => {
  const view = store.view();
  const { format } = subject;
  const size = (U: number) =>
    showWithDoubt(0, U, format, view)
      .replace(/^.*?± ?/, '')
      .replace(')', '');
  const spreads = spreadsIn(store, subject.set);
  const nameOf = (input: Input) => named(input, store.sets.get(subject.set)?.inputs);
  const first = doubt.parts[0];
  const exact = subject
    .question()
    .inputs.filter(({ kind, name }) => (kind === 'quantity' || kind === 'thread') && spreads(name) === undefined);
  return [
    make(
      'p',
      {},
      make('b', {}, showWithDoubt(doubt.value, doubt.U, format, view)),
      '. ',
      coverage(numeral(doubt.k, 3), doubt.freedom < 1e4 ? Math.floor(doubt.freedom) : undefined),
    ),
    make('p', {}, COMES_FROM),
    make('ol', { class: 'shares' }, ...doubt.parts.map((part) => shareItem(part, nameOf(part.input), size))),
    ...(first ? [make('p', {}, halveFirst(nameOf(first.input), size(doubt.U), size(doubt.halved)))] : []),
    ...(exact.length > 0 ? [make('p', { class: 'reach' }, UNDOUBTED(exact.map(nameOf)))] : []),
  ];
};

const shareItem = (
  { part, share }: ResultDoubt['parts'][number],
  name: string,
  size: (u: number) => string,
): HTMLElement =>
  make(
    'li',
    {},
    make('span', {}, name),
    make(
      'span',
      { class: 'bar', 'aria-hidden': 'true' },
      make('span', { style: `width: ${(share * 100).toFixed(1)}%` }),
    ),
    make('span', {}, `${numeral(share * 100, 2)} %, u = ${part === 0 ? '0' : size(Math.abs(part))}`),
  );

const drawnItem = (drawn: Drawn, { shown }: NumberFormat, view: UnitView): HTMLElement[] => {
  const [low, high] = [drawn.low, drawn.high].map((y) => show(y, { shown, digits: 4 }, view)) as [string, string];
  const says = (drawn.differs ? drawnDiffers : drawnSame)(grouped(drawn.count), low, high);
  return [make('p', {}, drawn.lost > 0 ? `${says} ${drawnLost(`${numeral(drawn.lost * 100, 2)} %`)}` : says)];
};
