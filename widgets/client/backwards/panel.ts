/**
 * What opens behind a number: type another and see what may give way; how sure it is; where it comes from. It keeps nothing: what is
 * found goes into the fields, which the address carries, and what stood there before is in the one button that brings it back.
 */
import {
  bareCounts,
  behind,
  CLOSE_BEHIND,
  DOUBT,
  found,
  I_WANT,
  NOTHING_FITS,
  undone,
  undoTo,
  WHERE_FROM,
  WHICH_GIVES_WAY,
} from '#words/backwards.ts';
import { type Choice, type GivesWay, seekers } from '../../assembly/backwards/solve.ts';
import { readWish } from '../../assembly/backwards/wish.ts';
import { type Input, readField, writeField } from '../../assembly/numbers.ts';
import { bad } from '../../engine/index.ts';
import { show, unitText } from '../../input/format.ts';
import { reasonOf } from '../../words/reason.ts';
import { make, setText } from '../dom.ts';
import type { Store } from '../store.ts';
import { named } from './naming.ts';
import { REST, type Subject } from './subject.ts';
import { showDoubt } from './sure.ts';
import { textIn, wayItem } from './ways.ts';

export interface Panel {
  readonly element: HTMLElement;
  /** Brings it up to the numbers. */
  readonly refresh: () => void;
}

let serial = 0;
/** So long the search for what may give way goes on before the page may draw. */
const SLICE = 8;

interface Before {
  readonly input: Input;
  readonly text: string;
}

export const panelFor = (
  subject: Subject,
  store: Store,
  announce: (text: string) => void,
  close: () => void,
): Panel => {
  const { set, short, format, unit } = subject;
  const id = `wish-${++serial}`;
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
  const element = make(
    'div',
    { class: 'asked-back', role: 'group', 'aria-label': behind(short) },
    make('div', { class: 'wish' }, make('label', { for: id }, `${I_WANT} ${short} =`), field, ask),
    note,
    ways,
    make('p', { class: 'after' }, back, shut),
    sure,
    chain,
  );
  const nameOf = (input: Input) => named(input, store.sets.get(set)?.inputs);
  const result = (value: number) => show(value, format, store.view());
  /** What stood in the fields before the first number that was taken. */
  let before: readonly Before[] = [];

  const put = (input: Input, text: string) => {
    const was = store.field(set, input.name);
    store.load(set, input.name, text);
    // Its ± stays, where the number that was found can have it.
    const now = store.field(set, input.name);
    if (!was?.spread || !now) return;
    const kept = writeField(input, { value: now.value, spread: was.spread }, 'metric');
    if (readField(input, kept, 'metric').ok) store.load(set, input.name, kept);
  };
  const take = (way: GivesWay, choice: Choice) => {
    const inputs = [way.input, ...(way.beside ? [way.beside] : [])];
    if (before.length > 0 && !sameNames(before, inputs)) giveBack();
    if (before.length === 0)
      before = inputs.map((input) => ({ input, text: store.field(set, input.name)?.text ?? '' }));
    put(way.input, choice.text);
    if (way.beside && choice.beside !== undefined) put(way.beside, choice.beside);
    setText(back, undoTo(before.map(({ input, text }) => [nameOf(input), text])));
    back.hidden = false;
    const says = found(textIn(way, choice, store.view(), nameOf), result(choice.gives), choice.digits);
    setText(note, says);
    announce(says);
  };
  const giveBack = () => {
    if (before.length === 0) return;
    for (const { input, text } of before)
      store.load(set, input.name, text, store.view() === 'inch' ? 'inch' : 'metric');
    const says = undone(before.map(({ input, text }) => [nameOf(input), text]));
    before = [];
    back.hidden = true;
    setText(note, says);
    announce(says);
  };
  /** The search in force; an older one stops. */
  let search = 0;
  const solve = () => {
    const read = readWish(field.value, subject.base, unit());
    field.setAttribute('aria-invalid', String(!read.ok));
    ways.replaceChildren();
    if (!read.ok) return setText(note, reasonOf(read));
    const question = subject.question();
    const all = seekers(question, read.value);
    if (!all.ok) return setText(note, reasonOf(all));
    setText(note, '');
    const own = ++search;
    const waiting = [...all.value];
    let can = false;
    const some = () => {
      if (own !== search) return;
      const until = performance.now() + SLICE;
      question.until?.(until);
      while (waiting[0] && performance.now() < until) {
        const way = attempt(waiting[0]);
        if (way === REST) break;
        waiting.shift();
        // A number that changes nothing here is no way, unless it has the wish already.
        if (!way || (way.answers.length === 0 && way.least === way.most)) continue;
        const item = wayItem(way, result, store.view(), nameOf, (choice) => take(way, choice));
        if (way.answers.length === 0) ways.append(item);
        else {
          item.dataset.can = '';
          ways.insertBefore(item, ways.querySelector(':scope > :not([data-can])'));
          can = true;
        }
      }
      if (waiting.length > 0) window.setTimeout(some);
      else if (ways.childElementCount === 0) setText(note, reasonOf(bad('result-fixed', { says: question.says })));
      else if (!can) setText(note, NOTHING_FITS);
    };
    some();
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
  element.addEventListener('keydown', (event) => {
    if (event.key !== 'Escape') return;
    event.stopPropagation();
    close();
  });

  let stopDraws = () => {};
  const refresh = () => {
    if (chain.open) chain.querySelector('ol')?.replaceChildren(...subject.chain());
    if (!sure.open) return;
    stopDraws();
    stopDraws = showDoubt(sure.querySelector('div') ?? sure, subject, store);
  };
  for (const fold of [sure, chain]) fold.addEventListener('toggle', refresh);
  const value = subject.now();
  if (value !== undefined) field.value = show(value, format, store.view() === 'inch' ? 'inch' : 'metric');
  if (unit() !== '1') setText(note, bareCounts(unitText(unit())));
  return { element, refresh };
};

/** What a search finds, or that it has to rest. */
const attempt = <T>(seek: () => T): T | typeof REST => {
  try {
    return seek();
  } catch (thrown) {
    if (thrown === REST) return REST;
    throw thrown;
  }
};

const sameNames = (before: readonly Before[], inputs: readonly Input[]): boolean =>
  before.length === inputs.length && before.every(({ input }, i) => input.name === inputs[i]?.name);
