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
import { capital, named } from './naming.ts';

/** An answer as the reader’s units have it. */
const textOf = (input: Input, { text, value }: Choice, view: UnitView): string =>
  input.kind === 'quantity' && value !== undefined
    ? trimmed(show(value, formatOf(symbolFact(input.name), 6), view))
    : text;

/** What would stand in the field, or in both. */
export const textIn = ({ input, beside }: GivesWay, choice: Choice, view: UnitView): string => {
  const first = becomes(named(input), textOf(input, choice, view));
  return beside && choice.beside !== undefined ? andBecomes(first, becomes(named(beside), choice.beside)) : first;
};

/** What is named as giving way. */
const nameOf = ({ input, beside }: Pick<GivesWay, 'input' | 'beside'>): string =>
  beside ? together(named(input), named(beside)) : named(input);

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
  take: (choice: Choice) => void,
): HTMLElement => {
  const { input, answers, nearest, least, most, stock } = way;
  const label = nameOf(way);
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
    const b = make('button', { type: 'button' }, textIn(way, choice, view));
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
