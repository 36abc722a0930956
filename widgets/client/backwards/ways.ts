/** What may give way for a wish: each input with what it would become, one press each. */
import {
  andBecomes,
  andGives,
  becomes,
  canHave,
  cannot,
  cannotAtAll,
  exactPitch,
  MEANS,
  reaches,
  STOCK,
  stays,
  together,
  upTo,
} from '#words/backwards.ts';
import type { Choice, GivesWay } from '../../assembly/backwards/solve.ts';
import type { Input } from '../../assembly/numbers.ts';
import { symbolFact } from '../../engine/index.ts';
import { formatOf, show, type UnitView } from '../../input/format.ts';
import { trimmed } from '../../input/with-doubt.ts';
import { make } from '../dom.ts';
import { capital } from './naming.ts';

/** An answer as the reader’s units have it. */
const textOf = (input: Input, { text, value }: Choice, view: UnitView): string =>
  input.kind === 'quantity' && value !== undefined
    ? trimmed(show(value, formatOf(symbolFact(input.name), 6), view))
    : text;

/** What would stand in the field, or in both. */
export const textIn = (
  { input, beside }: GivesWay,
  choice: Choice,
  view: UnitView,
  nameOf: (input: Input) => string,
): string => {
  const first = becomes(nameOf(input), textOf(input, choice, view));
  return beside && choice.beside !== undefined ? andBecomes(first, becomes(nameOf(beside), choice.beside)) : first;
};

/** What the sign of an answer means, where it has one. */
const meaning = (input: Input, { value }: Choice): string => {
  if (input.kind !== 'quantity' || value === undefined || value === 0) return '';
  const fact = symbolFact(input.name);
  if (fact.unit === 'turn' && input.name === 'n') return value > 0 ? MEANS.clockwise : MEANS.anticlockwise;
  if (fact.shown === 'motion' && fact.min < 0) return value > 0 ? MEANS.up : MEANS.down;
  return '';
};

/** `result` writes a value of what is asked. */
export const wayItem = (
  way: GivesWay,
  result: (value: number) => string,
  view: UnitView,
  nameOf: (input: Input) => string,
  take: (choice: Choice) => void,
): HTMLElement => {
  const { input, answers, nearest, stock } = way;
  // What is nought beside how far the result goes is nought.
  const reachOf = (y: number | undefined) =>
    y === undefined || Math.abs(y) > 1e-6 * Math.max(Math.abs(way.least ?? 0), Math.abs(way.most ?? 0)) ? y : 0;
  const [least, most] = [reachOf(way.least), reachOf(way.most)];
  const label = way.beside ? together(nameOf(input), nameOf(way.beside)) : nameOf(input);
  const bounds = input.kind === 'quantity' ? formatOf(symbolFact(input.name)) : undefined;
  const item = make('li', { 'data-way': way.beside ? `${input.name}-${way.beside.name}` : input.name });
  const reach =
    least === undefined || most === undefined
      ? ''
      : result(least) === result(most)
        ? stays(result(least))
        : reaches(
            result(least),
            result(most),
            input.kind === 'thread',
            bounds && input.kind === 'quantity'
              ? [show(input.min, bounds, view), show(input.max, bounds, view)]
              : undefined,
          );
  const button = (choice: Choice) => {
    const b = make('button', { type: 'button' }, textIn(way, choice, view, nameOf));
    b.addEventListener('click', () => take(choice));
    const says = [
      meaning(input, choice),
      andGives(result(choice.gives)),
      choice.sold ?? '',
      choice.to === undefined ? '' : upTo(choice.to),
    ];
    return make('p', {}, b, ` ${says.filter((t) => t !== '').join(', ')}`);
  };
  if (answers.length > 0)
    item.append(
      make('p', {}, canHave(label, answers.length)),
      ...answers.map(button),
      ...(reach ? [make('p', { class: 'reach' }, `${capital(reach)}.`)] : []),
    );
  else if (nearest.length > 0) item.append(make('p', {}, cannot(label, reach)), ...nearest.map(button));
  else item.append(make('p', {}, cannotAtAll(label)));
  if (stock && stock.choices.length > 0) item.append(make('p', {}, STOCK[stock.thing]), ...stock.choices.map(button));
  if (way.pitches && way.pitches.length > 0 && answers.length === 0)
    item.append(
      make(
        'p',
        { class: 'reach' },
        exactPitch(way.pitches.map((P) => trimmed(show(P, { shown: 'size', digits: 9 }, view)))),
      ),
    );
  return item;
};
