/** Where a number comes from, a line for each relation: what it is, where it is derived, its source, and what it takes. */
import { DERIVED_AT, FROM_STEP, fromField, STATED, sourceIs, TAKES, WORKED_HERE } from '#words/backwards.ts';
import { chainOf } from '../../assembly/backwards/chain.ts';
import type { Asked } from '../../assembly/backwards/reach.ts';
import { linksTo, traced } from '../../assembly/backwards/traced.ts';
import { relationNamed, type SymbolName, symbolFact } from '../../engine/index.ts';
import type { Figure } from '../../figures/kit/figure.ts';
import type { Amount } from '../../figures/kit/readout.ts';
import { formatOf, show } from '../../input/format.ts';
import type { PageModel } from '../../page/model.ts';
import { make } from '../dom.ts';
import type { Store } from '../store.ts';
import { capital, named } from './naming.ts';

interface Taken {
  readonly name: SymbolName;
  readonly value: number;
  /** The reader’s number it comes from. */
  readonly input?: string | undefined;
  readonly worked: boolean;
}

export const stepChain = (asked: Asked, store: Store, model: PageModel): HTMLElement[] =>
  chainOf(asked).map(({ step, value, takes }) =>
    chainItem(
      step.relation,
      value === undefined ? [] : [[step.as, value, step.digits]],
      takes.map(({ name, value: taken, input, step: giver }) => ({
        name,
        value: taken,
        input,
        worked: giver !== undefined,
      })),
      asked.set.id,
      store,
      model,
      step.as,
    ),
  );

export const figureChain = (
  { figure, set }: { readonly figure: Figure; readonly set: string },
  { key, by = [] }: Pick<Amount, 'key' | 'by'>,
  store: Store,
  model: PageModel,
): HTMLElement[] => {
  const numbers = store.numbers(set);
  const { result, calls } = traced(() => {
    const at = figure.at(numbers, 'metric');
    return at.ok ? at.value.amounts().find((amount) => amount.key === key)?.value : undefined;
  });
  // Where the figure says which relations it follows, no others that it asked besides are told.
  const own = by.length === 0 ? calls : calls.filter(({ relation }) => by.includes(relation.name));
  const links = linksTo(own, result ?? 0, store.sets.get(set) ?? { id: set, inputs: [] }, numbers);
  if (links.length === 0 && by.length > 0)
    return by.map((name) =>
      chainItem(name, [], [], set, store, model, Object.keys(relationNamed(name)?.gives ?? {})[0] as SymbolName),
    );
  if (links.length === 0) return [make('li', {}, WORKED_HERE)];
  return links.map(({ relation, gives, takes }) =>
    chainItem(
      relation.name,
      gives.map(({ name, value }) => [name, value, undefined]),
      takes.map(({ name, value, input, worked }) => ({ name, value, input, worked: worked === true })),
      set,
      store,
      model,
      gives[0]?.name,
    ),
  );
};

const chainItem = (
  name: string,
  gives: readonly (readonly [symbol: SymbolName, value: number, digits: number | undefined])[],
  takes: readonly Taken[],
  set: string,
  store: Store,
  model: PageModel,
  symbol: SymbolName | undefined,
): HTMLElement => {
  const relation = relationNamed(name);
  const view = store.view();
  const says = (s: SymbolName) => symbolFact(s).says.split(',')[0] ?? '';
  const derived = model.derived?.[name] ?? (symbol === undefined ? undefined : model.met?.[symbol]);
  const item = make('li', {});
  if (gives.length === 0 && symbol !== undefined) item.append(make('b', {}, capital(says(symbol))), '. ');
  for (const [i, [s, value, digits]] of gives.entries())
    item.append(
      i === 0 ? '' : ', ',
      make('b', {}, i === 0 ? capital(says(s)) : says(s)),
      ` = ${show(value, formatOf(symbolFact(s), digits ?? 4), view)}`,
    );
  if (gives.length > 0) item.append('. ');
  item.append(relation?.says ?? '', ' ');
  if (derived) item.append(`${DERIVED_AT} `, make('a', { href: derived[0] }, derived[1]), '. ');
  if (relation) item.append(sourceIs(relation.source), ' ');
  if (takes.length === 0) return item;
  item.append(`${TAKES} `);
  for (const [i, { name: taken, value, input, worked }] of takes.entries()) {
    const field = input === undefined ? undefined : store.field(set, input);
    const from = worked ? FROM_STEP : field ? fromField(named(field.input, store.sets.get(set)?.inputs)) : STATED;
    const met = model.met?.[taken];
    const text = `${says(taken)} = ${show(value, formatOf(symbolFact(taken)), view)}`;
    item.append(i === 0 ? '' : '; ', met ? make('a', { href: met[0] }, text) : text, ` (${from})`);
  }
  item.append('.');
  return item;
};
