/**
 * What stands behind a result of a worked example, in a script that is fetched when it is first asked for: type another result and see
 * which number may give way; where it comes from; how sure it is. It keeps nothing: what is found goes into the fields, which the
 * address carries, and what stood there before is in the one button that brings it back.
 */
import {
  andGives,
  bareCounts,
  becomes,
  behind,
  CLOSE_BEHIND,
  COMES_FROM,
  canHave,
  cannot,
  cannotAtAll,
  coverage,
  DERIVED_AT,
  DOUBT,
  drawnDiffers,
  drawnLost,
  drawnSame,
  exactPitch,
  FROM_STEP,
  found,
  fromField,
  halveFirst,
  I_WANT,
  MEANS,
  NO_DOUBT,
  NOTHING_FITS,
  reaches,
  STATED,
  sourceIs,
  stays,
  TAKES,
  UNDOUBTED,
  undone,
  undoTo,
  upTo,
  WHERE_FROM,
  WHICH_GIVES_WAY,
} from '#words/backwards.ts';
import { chainOf } from '../../assembly/backwards/chain.ts';
import { doubtIn, type ResultDoubt } from '../../assembly/backwards/doubt.ts';
import { ofExample } from '../../assembly/backwards/question.ts';
import { type Asked, reaching } from '../../assembly/backwards/reach.ts';
import { type Choice, type GivesWay, waysTo } from '../../assembly/backwards/solve.ts';
import { fieldUnit, type Input, readField, writeField } from '../../assembly/numbers.ts';
import { runSteps, type Step } from '../../assembly/steps.ts';
import { relationNamed, symbolFact } from '../../engine/index.ts';
import { formatOf, numeral, show, type UnitView } from '../../input/format.ts';
import { readQuantity } from '../../input/quantity.ts';
import type { Spread } from '../../input/spread.ts';
import { showWithDoubt, trimmed } from '../../input/with-doubt.ts';
import type { PageModel } from '../../page/model.ts';
import { reasonOf } from '../../words/reason.ts';
import { all, make, setText } from '../dom.ts';
import type { Store } from '../store.ts';

export interface Example {
  readonly place: HTMLElement;
  readonly set: string;
  readonly steps: readonly Step[];
}

const asked = ({ set, steps }: Example, index: number, store: Store): Asked => ({
  set: store.sets.get(set) ?? { id: set, inputs: [] },
  numbers: store.numbers(set),
  steps,
  index,
});

const spreadsOf =
  ({ set }: Example, store: Store) =>
  (name: string): Spread | undefined =>
    store.field(set, name)?.spread;

const formatAt = (step: Step) => formatOf(symbolFact(step.as), step.digits);

/** Writes its ± under every result that has one; none where no number of the set has any. */
export const writeDoubts = (example: Example, store: Store): void => {
  for (const line of all(example.place, '[data-step]')) {
    const index = Number(line.dataset.step);
    const step = example.steps[index];
    const doubt = step && doubtIn(ofExample(asked(example, index, store)), spreadsOf(example, store), false);
    const old = line.querySelector<HTMLElement>(':scope > .doubt');
    if (!step || !doubt) {
      old?.remove();
      continue;
    }
    const text = showWithDoubt(doubt.value, doubt.U, formatAt(step), store.view());
    if (old) setText(old, text);
    else line.querySelector(':scope > .result')?.after(make('div', { class: 'doubt' }, text));
  }
};

interface Open {
  readonly refresh: () => void;
}
const open = new WeakMap<Element, Open>();

/** Opens what stands behind a result, or closes it. */
export const toggleBehind = (
  example: Example,
  line: HTMLElement,
  store: Store,
  model: PageModel,
  announce: (text: string) => void,
): void => {
  const result = line.querySelector<HTMLElement>('[data-result]');
  const there = line.querySelector(':scope > .behind');
  const index = Number(line.dataset.step);
  const step = example.steps[index];
  if (there || !step || !result) {
    there?.remove();
    result?.setAttribute('aria-expanded', 'false');
    return;
  }
  const panel = panelOf(example, index, step, store, model, announce, () => {
    panel.remove();
    result.setAttribute('aria-expanded', 'false');
    result.focus();
  });
  line.append(panel);
  result.setAttribute('aria-expanded', 'true');
  panel.querySelector('input')?.focus();
};

/** Brings what is open in an example up to its numbers. */
export const refreshBehind = ({ place }: Example): void => {
  for (const panel of all(place, '.behind')) open.get(panel)?.refresh();
};

let serial = 0;

const panelOf = (
  example: Example,
  index: number,
  step: Step,
  store: Store,
  model: PageModel,
  announce: (text: string) => void,
  close: () => void,
): HTMLElement => {
  const fact = symbolFact(step.as);
  const [short = ''] = fact.says.split(',');
  const id = `wish-${++serial}`;
  const unit = () => fieldUnit(step.as, store.view());
  const field = make('input', {
    id,
    type: 'text',
    autocomplete: 'off',
    spellcheck: 'false',
    'aria-describedby': `${id}-note`,
  });
  const note = make('p', { id: `${id}-note`, class: 'field-note', role: 'status' });
  const ask = make('button', { type: 'button' }, WHICH_GIVES_WAY);
  const ways = make('ul', { class: 'ways' });
  const back = make('button', { type: 'button', class: 'plain undo' });
  back.hidden = true;
  const chain = make('details', { class: 'where-from' }, make('summary', {}, WHERE_FROM), make('ol', {}));
  const sure = make('details', { class: 'how-sure' }, make('summary', {}, DOUBT), make('div', {}));
  const shut = make('button', { type: 'button', class: 'plain' }, CLOSE_BEHIND);
  const panel = make(
    'div',
    { class: 'behind', role: 'group', 'aria-label': behind(short) },
    make('div', { class: 'wish' }, make('label', { for: id }, `${I_WANT} ${short} =`), field, ask),
    note,
    ways,
    make('p', { class: 'after' }, back, shut),
    sure,
    chain,
  );
  /** What stood in the fields before the first number that was taken. */
  let before: { readonly input: Input; readonly text: string } | undefined;

  const now = () => {
    const outcome = runSteps(example.steps, store.scope(example.set))[index];
    return outcome?.ok ? outcome.value : undefined;
  };
  const take = (input: Input, choice: Choice) => {
    const field = store.field(example.set, input.name);
    if (before && before.input.name !== input.name) giveBack();
    before ??= { input, text: field?.text ?? '' };
    store.load(example.set, input.name, choice.text);
    // Its ± stays, where the number that was found can have it.
    const now = store.field(example.set, input.name);
    if (field?.spread && now) {
      const text = writeField(input, { value: now.value, spread: field.spread }, 'metric');
      if (readField(input, text, 'metric').ok) store.load(example.set, input.name, text);
    }
    setText(back, undoTo(named(input), before.text));
    back.hidden = false;
    const says = found(
      named(input),
      textOf(input, choice, store.view()),
      show(choice.gives, formatAt(step), store.view()),
      choice.digits,
    );
    setText(note, says);
    announce(says);
  };
  const giveBack = () => {
    if (!before) return;
    store.load(example.set, before.input.name, before.text, store.view() === 'inch' ? 'inch' : 'metric');
    const says = undone(named(before.input), before.text);
    before = undefined;
    back.hidden = true;
    setText(note, says);
    announce(says);
  };
  const solve = () => {
    const read = readQuantity(field.value, fact.unit, unit());
    field.setAttribute('aria-invalid', String(!read.ok));
    ways.replaceChildren();
    if (!read.ok) return setText(note, reasonOf(read));
    const all = waysTo(ofExample(asked(example, index, store)), read.value.value);
    if (!all.ok) return setText(note, reasonOf(all));
    setText(note, all.value.some(({ answers }) => answers.length > 0) ? '' : NOTHING_FITS);
    ways.append(...all.value.map((way) => wayItem(way, step, store.view(), (choice) => take(way.input, choice))));
  };
  ask.addEventListener('click', solve);
  field.addEventListener('keydown', (event) => {
    if (event.key !== 'Enter') return;
    event.preventDefault();
    solve();
  });
  back.addEventListener('click', () => {
    giveBack();
    field.focus();
  });
  shut.addEventListener('click', close);
  panel.addEventListener('keydown', (event) => {
    if (event.key !== 'Escape') return;
    event.stopPropagation();
    close();
  });

  const refresh = () => {
    chain.querySelector('ol')?.replaceChildren(...chainItems(example, index, store, model));
    sure.querySelector('div')?.replaceChildren(...doubtItems(example, index, step, store, false));
    window.clearTimeout(Number(sure.dataset.later));
    // Draws take a tenth of a second: after the frame, and only where they are looked at.
    if (sure.open)
      sure.dataset.later = String(
        window.setTimeout(() =>
          sure.querySelector('div')?.replaceChildren(...doubtItems(example, index, step, store, true)),
        ),
      );
  };
  sure.addEventListener('toggle', refresh);
  const value = now();
  if (value !== undefined) field.value = show(value, formatAt(step), store.view() === 'inch' ? 'inch' : 'metric');
  if (unit() !== '1') setText(note, bareCounts(unit()));
  field.select();
  refresh();
  open.set(panel, { refresh });
  return panel;
};

/** The first words of a label, which name it among the others of an example. */
const named = ({ label }: Input): string => label.split(',')[0] ?? label;

/** An answer as the reader’s units have it. */
const textOf = (input: Input, { text, value }: Choice, view: UnitView): string =>
  input.kind === 'quantity' && value !== undefined
    ? trimmed(show(value, formatOf(symbolFact(input.name), 6), view))
    : text;

/** What the sign of an answer means, where it has one. */
const meaning = (input: Input, { value }: Choice): string => {
  if (input.kind !== 'quantity' || value === undefined || value === 0) return '';
  const fact = symbolFact(input.name);
  if (fact.unit === 'turn' && input.name === 'n') return value > 0 ? MEANS.clockwise : MEANS.anticlockwise;
  if (fact.shown === 'motion' && fact.min < 0) return value > 0 ? MEANS.up : MEANS.down;
  return '';
};

const wayItem = (way: GivesWay, step: Step, view: UnitView, take: (choice: Choice) => void): HTMLElement => {
  const { input, answers, nearest, least, most } = way;
  const label = named(input);
  const result = (value: number) => show(value, formatAt(step), view);
  const bounds = input.kind === 'quantity' ? formatOf(symbolFact(input.name)) : undefined;
  const item = make('li', { 'data-way': input.name });
  const reach =
    least === undefined || most === undefined
      ? ''
      : result(least) === result(most)
        ? stays(result(least))
        : reaches(
            result(least),
            result(most),
            bounds && input.kind === 'quantity' ? show(input.min, bounds, view) : undefined,
            bounds && input.kind === 'quantity' ? show(input.max, bounds, view) : undefined,
          );
  const button = (choice: Choice) => {
    const b = make('button', { type: 'button' }, becomes(label, textOf(input, choice, view)));
    b.addEventListener('click', () => take(choice));
    const means = meaning(input, choice);
    return make(
      'p',
      {},
      b,
      ` ${[means, andGives(result(choice.gives)), choice.to === undefined ? '' : upTo(choice.to)].filter((t) => t !== '').join(', ')}`,
    );
  };
  if (answers.length > 0)
    item.append(
      make('p', {}, canHave(label, answers.length)),
      ...answers.map(button),
      ...(reach ? [make('p', { class: 'reach' }, `${capital(reach)}.`)] : []),
    );
  else if (nearest.length > 0) item.append(make('p', {}, cannot(label, reach)), ...nearest.map(button));
  else item.append(make('p', {}, cannotAtAll(label)));
  if (way.pitches && way.pitches.length > 0 && answers.length === 0)
    item.append(
      make(
        'p',
        { class: 'reach' },
        exactPitch(way.pitches.map((P) => trimmed(show(P, { shown: 'size', digits: 6 }, view)))),
      ),
    );
  return item;
};

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Each step that leads here, with where it is derived, its source and what it takes. */
const chainItems = (example: Example, index: number, store: Store, model: PageModel): HTMLElement[] =>
  chainOf(asked(example, index, store)).map(({ step, value, takes }) => {
    const relation = relationNamed(step.relation);
    const view = store.view();
    const [short = ''] = symbolFact(step.as).says.split(',');
    const derived = model.derived?.[step.relation] ?? model.met?.[step.as];
    const item = make(
      'li',
      {},
      make('b', {}, capital(short)),
      value === undefined ? '. ' : ` = ${show(value, formatAt(step), view)}. `,
      relation?.says ?? '',
      ' ',
    );
    if (derived) item.append(`${DERIVED_AT} `, make('a', { href: derived[0] }, derived[1]), '. ');
    if (relation) item.append(sourceIs(relation.source), ' ');
    item.append(`${TAKES} `);
    for (const [i, { name, value: taken, input, step: giver }] of takes.entries()) {
      const field = input === undefined ? undefined : store.field(example.set, input);
      const from = giver !== undefined ? FROM_STEP : field ? fromField(named(field.input)) : STATED;
      const met = model.met?.[name];
      const says = `${symbolFact(name).says.split(',')[0]} = ${show(taken, formatOf(symbolFact(name)), view)}`;
      item.append(i === 0 ? '' : '; ', met ? make('a', { href: met[0] }, says) : says, ` (${from})`);
    }
    item.append('.');
    return item;
  });

const doubtItems = (example: Example, index: number, step: Step, store: Store, draw: boolean): HTMLElement[] => {
  const of = asked(example, index, store);
  const spreads = spreadsOf(example, store);
  const doubt = doubtIn(ofExample(of), spreads, draw);
  if (!doubt) return [make('p', {}, NO_DOUBT)];
  const view = store.view();
  const format = formatAt(step);
  const size = (U: number) =>
    showWithDoubt(0, U, format, view)
      .replace(/^.*?± ?/, '')
      .replace(')', '');
  const bars = make('ul', { class: 'shares' }, ...doubt.parts.map((part) => shareItem(part, size)));
  const first = doubt.parts[0];
  const exact = reaching(of).filter(({ name }) => spreads(name) === undefined);
  return [
    make(
      'p',
      {},
      make('b', {}, showWithDoubt(doubt.value, doubt.U, format, view)),
      '. ',
      coverage(numeral(doubt.k, 3), doubt.freedom < 1e4 ? Math.floor(doubt.freedom) : undefined),
    ),
    ...drawnItem(doubt, step, view),
    make('p', {}, COMES_FROM),
    bars,
    ...(first ? [make('p', {}, halveFirst(named(first.input), size(doubt.U), size(doubt.halved)))] : []),
    ...(exact.length > 0 ? [make('p', { class: 'reach' }, UNDOUBTED(exact.map(named)))] : []),
  ];
};

const shareItem = ({ input, part, share }: ResultDoubt['parts'][number], size: (u: number) => string): HTMLElement =>
  make(
    'li',
    {},
    make('span', {}, named(input)),
    make(
      'span',
      { class: 'bar', 'aria-hidden': 'true' },
      make('span', { style: `width: ${(share * 100).toFixed(1)}%` }),
    ),
    make('span', {}, `${numeral(share * 100, 2)} %, u = ${part === 0 ? '0' : size(Math.abs(part))}`),
  );

const drawnItem = ({ drawn }: ResultDoubt, step: Step, view: UnitView): HTMLElement[] => {
  if (!drawn) return [];
  const [low, high] = [drawn.low, drawn.high].map((y) => show(y, formatOf(symbolFact(step.as), 4), view)) as [
    string,
    string,
  ];
  const says = drawn.differs ? drawnDiffers(low, high) : drawnSame(low, high);
  return [make('p', {}, drawn.lost > 0 ? `${says} ${drawnLost(`${numeral(drawn.lost * 100, 2)} %`)}` : says)];
};
