/** Fields for the reader's numbers, in place of the list of givens that the printed page has. */

import {
  EMPTY_FIELD,
  goesOn,
  goodValueKept,
  LARGER_THREAD,
  SMALLER_THREAD,
  STEP_LESS,
  STEP_MORE,
  stepTold,
  threadKept,
} from '#words/client.ts';
import type { Input } from '../assembly/numbers.ts';
import { type SymbolName, symbolFact } from '../engine/index.ts';
import { CHOICES, choiceSays, optionText } from '../input/choices.ts';
import { stepsOf } from '../input/dividers.ts';
import { nextStep } from '../input/next-step.ts';
import { longestOf, TEXTS, type TextName, textSays } from '../input/texts.ts';
import { neighbourOf } from '../input/thread-step.ts';
import { weightNote } from '../input/weight.ts';
import { all, make, setText } from './dom.ts';
import type { Field, Store } from './store.ts';

let serial = 0;

export const mountInputs = (place: HTMLElement, store: Store): void => {
  const set = place.dataset.inputs ?? '';
  const names = (place.dataset.names ?? '').split(' ');
  const all = store.sets.get(set)?.inputs ?? [];
  const inputs = names.flatMap((name) => all.find((input) => input.name === name) ?? []);
  if (inputs.length === 0) return;
  const rows = inputs.map((input) =>
    input.kind === 'choice' ? choiceRow(set, input, store) : typedRow(set, input, store),
  );
  place.replaceChildren(...rows.map((r) => r.element));
  const refresh = () => {
    for (const row of rows) row.refresh();
  };
  refresh();
  store.onChange((sets) => {
    if (sets.has(set)) refresh();
  });
};

/** A label that the chapter gives is in its language, among fields in that of the edition. */
const writtenIn = ({ kind, name, label }: Input): { readonly lang?: string } => {
  const lang = document.querySelector('article')?.lang;
  const own = kind === 'quantity' ? symbolFact(name).says : kind === 'text' ? textSays(name) : label;
  return lang && label !== own ? { lang } : {};
};

interface Row {
  readonly element: HTMLElement;
  readonly refresh: () => void;
}

const typedRow = (set: string, input: Exclude<Input, { kind: 'choice' }>, store: Store): Row => {
  const id = `field-${++serial}`;
  const list = input.kind === 'text' ? rowsOf(input.name) : undefined;
  const field: HTMLInputElement | HTMLTextAreaElement = make(list === undefined ? 'input' : 'textarea', {
    id,
    ...(list === undefined ? { type: 'text' } : { rows: String(list) }),
    autocomplete: 'off',
    spellcheck: 'false',
    autocapitalize: 'off',
    'aria-describedby': `${id}-note`,
  });
  if (input.kind === 'quantity') field.inputMode = 'text';
  const note = make('p', { id: `${id}-note`, class: 'field-note', role: 'status' });
  const box = make('span', { class: 'field-box' }, field);
  const go = stepBy(set, input, store);
  if (go) {
    const button = (sign: 1 | -1, face: string, says: string) => {
      // No stop for Tab: the arrow keys in the field do the same, and a field is one stop.
      const b = make(
        'button',
        { type: 'button', class: 'step', tabindex: '-1', 'aria-label': stepTold(input.label, says) },
        face,
      );
      b.addEventListener('click', () => go(sign));
      return b;
    };
    const words =
      input.kind === 'thread' ? ([SMALLER_THREAD, LARGER_THREAD] as const) : ([STEP_LESS, STEP_MORE] as const);
    box.prepend(button(-1, '−', words[0]));
    box.append(button(1, '+', words[1]));
  }
  const long =
    input.kind === 'text' && longestOf(input.name) > MOST_SHOWN ? longText(field, set, input.name, store) : undefined;
  if (long) box.append(long.empty);
  else field.maxLength = MOST_SHOWN;
  /** What was said of a load in kilograms or pounds, for as long as that load stands. */
  let weighed: { readonly value: number; readonly says: string } | undefined;
  field.addEventListener('input', () => {
    if (field.readOnly) return;
    const { value } = field;
    store.type(set, input.name, value);
    const says = input.kind === 'quantity' && symbolFact(input.name).unit === 'N' ? weightNote(value) : '';
    weighed = says === '' ? undefined : { value: Number(store.field(set, input.name)?.value), says };
    refresh();
  });
  field.addEventListener('blur', () => store.tidy(set, input.name));
  const keyed: HTMLElement = field;
  keyed.addEventListener('keydown', (event) => {
    if (event.key === 'Enter' && list === undefined) store.tidy(set, input.name);
    if (!go || (event.key !== 'ArrowUp' && event.key !== 'ArrowDown')) return;
    event.preventDefault();
    go(event.key === 'ArrowUp' ? 1 : -1);
  });
  const element = make(
    'div',
    { class: `field ${input.kind}`, 'data-field': input.name, 'data-sym': input.kind === 'thread' ? '' : input.name },
    make('label', { for: id, ...writtenIn(input) }, capital(input.label)),
    box,
    note,
  );
  let last: Field | undefined;
  const refresh = () => {
    const now = store.field(set, input.name);
    if (!now || now === last) return;
    last = now;
    const part = long?.partOf(now.text) ?? now.text;
    if (field.value !== part && (field.readOnly || !(document.activeElement === field && now.reason !== undefined)))
      field.value = part;
    const invalid = String(now.reason !== undefined);
    if (field.getAttribute('aria-invalid') !== invalid) field.setAttribute('aria-invalid', invalid);
    // In a shut fold nobody would read why; once, since whoever shuts it again has read it.
    if (now.reason !== undefined && !element.classList.contains('wrong'))
      element.closest('details.more')?.setAttribute('open', '');
    element.classList.toggle('wrong', now.reason !== undefined);
    const kept = typeof now.value === 'object' ? now.value.designation : '';
    const left = input.kind === 'text' && now.reason === undefined ? TEXTS[input.name].note(String(now.value)) : '';
    // The field is left with newtons in it, of nine digits.
    const stands = weighed && Math.abs(Number(now.value) / weighed.value - 1) < 1e-7;
    const notes = typeof now.value === 'object' ? now.value.notes.join(' ') : stands ? weighed?.says : left;
    element.classList.toggle('partly', left !== '');
    setText(
      note,
      now.reason === undefined ? (notes ?? '') : kept === '' ? goodValueKept(now.reason) : threadKept(now.reason, kept),
    );
  };
  return { element, refresh };
};

/** Characters a field holds; a longer text is shown by its first lines and can't be edited here. */
const MOST_SHOWN = 20_000;
const LINES_SHOWN = 8;

/**
 * A field whose text may be far longer than a field can hold without freezing: what is pasted goes past the field, which
 * then shows how it begins and is locked until it is emptied.
 */
const longText = (field: HTMLInputElement | HTMLTextAreaElement, set: string, name: TextName, store: Store) => {
  const empty = make('button', { type: 'button', class: 'plain' }, EMPTY_FIELD);
  empty.hidden = true;
  empty.addEventListener('click', () => {
    field.readOnly = false;
    field.value = '';
    store.type(set, name, '');
    field.focus();
  });
  const paste = (event: Event) => {
    const text = event instanceof ClipboardEvent ? (event.clipboardData?.getData('text/plain') ?? '') : '';
    // A locked field takes a paste as a whole new list.
    if (text.length <= MOST_SHOWN && !(field.readOnly && text !== '')) return;
    event.preventDefault();
    store.type(set, name, text);
  };
  field.addEventListener('paste', paste);
  let known: { readonly text: string; readonly part: string } | undefined;
  return {
    empty,
    partOf: (text: string): string => {
      const locked = text.length > MOST_SHOWN;
      field.readOnly = locked;
      empty.hidden = !locked;
      if (!locked) return text;
      if (known?.text !== text) {
        const lines = text
          .slice(0, MOST_SHOWN)
          .split('\n', LINES_SHOWN)
          .map((line) => line.slice(0, 200));
        known = { text, part: `${lines.join('\n')}\n${goesOn(text.length)}` };
      }
      return known.part;
    },
  };
};

/** One step of a field, up or down, as its buttons and arrow keys take it; undefined where there are no steps. */
const stepBy = (set: string, input: Exclude<Input, { kind: 'choice' }>, store: Store) => {
  if (input.kind === 'text') return undefined;
  if (input.kind === 'thread')
    return (sign: 1 | -1): void => {
      const thread = store.numbers(set).threads[input.name];
      if (thread) store.type(set, input.name, neighbourOf(thread, sign).designation);
    };
  const step = stepOf(set, input.name, store);
  return (sign: 1 | -1): void =>
    store.put(set, input.name, nextStep(store.numbers(set).values[input.name] ?? 0, step(), sign));
};

/** Rows of a field that takes a list with one entry a row. */
const rowsOf = (name: TextName): number | undefined => {
  const fact = TEXTS[name];
  return 'rows' in fact ? fact.rows : undefined;
};

/** What one press of a button or arrow changes: a flat for turns, a round amount for the rest. */
const stepOf = (set: string, name: string, store: Store) => (): number => {
  const fact = symbolFact(name as SymbolName);
  if (fact.step === 'tenth') return tenthOf(store.numbers(set).values[name as SymbolName] ?? 0.001);
  // A hundredth of a millimetre is a tenth of a thou in the inch view.
  if (fact.step !== undefined) return fact.step * (fact.unit === 'mm' && store.view() === 'inch' ? 0.254 : 1);
  if (fact.unit === 'turn') {
    const { values, choices } = store.numbers(set);
    const { k = 6, k_d = 50 } = values;
    return 1 / (choices.divider === undefined ? k : stepsOf(choices.divider, k_d));
  }
  const field = store.field(set, name)?.input;
  const range = field?.kind === 'quantity' ? field.max - field.min : fact.max - fact.min;
  // A field of half a radian or so is for how finely a hand sets, a wide one for turning.
  if (fact.shown === 'degrees') return (Math.PI / 180) * (range < 0.6 ? 0.5 : 15);
  if (fact.whole) return 1;
  // Fields that span no more than this are for errors, not for motions.
  if (fact.shown === 'percent' && range <= 0.1) return 1e-4;
  if (fact.shown === 'motion' && range <= 0.1) return store.view() === 'inch' ? 0.000254 : 0.0001;
  if (fact.unit === 'mm' && fact.shown !== 'motion' && range > 2) return store.view() === 'inch' ? 1.5875 : 1;
  if (fact.unit === 'mm') return store.view() === 'inch' ? 0.00254 : 0.01;
  return Number((range / 20).toPrecision(1));
};

/** About a tenth of a motion that may be a micrometre as well as a millimetre. */
const tenthOf = (value: number): number => {
  const digit = 10 ** Math.floor(Math.log10(Math.abs(value) * (1 + 1e-9)));
  return Math.abs(value) / digit < 2 ? digit / 10 : digit / 2;
};

const choiceRow = (set: string, input: Extract<Input, { kind: 'choice' }>, store: Store): Row => {
  const { options } = CHOICES[input.name];
  const says = choiceSays(input.name);
  const group = `choice-${++serial}`;
  const element = make(
    'fieldset',
    { class: 'field choice', 'data-field': input.name },
    make('legend', {}, capital(says)),
  );
  for (const option of options) {
    const radio = make('input', { type: 'radio', name: group, value: option, autocomplete: 'off' });
    radio.addEventListener('change', () => store.type(set, input.name, option));
    element.append(make('label', {}, radio, make('span', {}, optionText(input.name, option))));
  }
  const note = make('p', { class: 'field-note', role: 'status' });
  element.append(note);
  let last: Field | undefined;
  return {
    element,
    refresh: () => {
      const now = store.field(set, input.name);
      if (now === last) return;
      last = now;
      for (const radio of all(element, 'input') as HTMLInputElement[]) radio.checked = radio.value === now?.value;
      setText(note, now?.reason ?? '');
    },
  };
};

const capital = (s: string): string => s.charAt(0).toUpperCase() + s.slice(1);
