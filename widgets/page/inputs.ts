/** Fields for the reader's numbers, in place of the list of givens that the printed page has. */
import { symbolFact } from '../engine/index.ts';
import { CHOICES } from '../shared/choices.ts';
import type { Input } from '../shared/numbers.ts';
import { all, make, setText } from './dom.ts';
import type { Store } from './store.ts';

let serial = 0;

export const wakeInputs = (place: HTMLElement, store: Store): void => {
  const set = place.dataset.inputs ?? '';
  const names = (place.dataset.names ?? '').split(' ');
  const inputs = store.sets.get(set)?.inputs.filter((i) => names.includes(i.name)) ?? [];
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

interface Row {
  readonly element: HTMLElement;
  readonly refresh: () => void;
}

const typedRow = (set: string, input: Exclude<Input, { kind: 'choice' }>, store: Store): Row => {
  const id = `field-${++serial}`;
  const field = make('input', {
    id,
    type: 'text',
    autocomplete: 'off',
    spellcheck: 'false',
    autocapitalize: 'off',
    'aria-describedby': `${id}-note`,
    maxlength: '20000',
  });
  if (input.kind === 'quantity') field.inputMode = 'text';
  const note = make('p', { id: `${id}-note`, class: 'field-note', role: 'status' });
  const box = make('span', { class: 'field-box' }, field);
  if (input.kind === 'quantity') {
    const step = stepOf(set, input.name, store);
    const button = (sign: 1 | -1, face: string, says: string) => {
      const b = make('button', { type: 'button', class: 'step', 'aria-label': `${input.label}: ${says}` }, face);
      b.addEventListener('click', () =>
        store.put(set, input.name, (store.numbers(set).values[input.name] ?? 0) + sign * step()),
      );
      return b;
    };
    box.prepend(button(-1, '−', 'one step less'));
    box.append(button(1, '+', 'one step more'));
  }
  field.addEventListener('input', () => store.type(set, input.name, field.value));
  field.addEventListener('blur', () => store.tidy(set, input.name));
  field.addEventListener('keydown', (event) => {
    if (event.key === 'Enter') store.tidy(set, input.name);
    if (input.kind !== 'quantity' || (event.key !== 'ArrowUp' && event.key !== 'ArrowDown')) return;
    event.preventDefault();
    const step = stepOf(set, input.name, store)();
    store.put(set, input.name, (store.numbers(set).values[input.name] ?? 0) + (event.key === 'ArrowUp' ? step : -step));
  });
  const element = make(
    'div',
    { class: `field ${input.kind}`, 'data-sym': input.kind === 'thread' ? '' : input.name },
    make('label', { for: id }, capital(input.label)),
    box,
    note,
  );
  const refresh = () => {
    const now = store.field(set, input.name);
    if (!now) return;
    if (field.value !== now.text && !(document.activeElement === field && now.reason !== undefined))
      field.value = now.text;
    field.setAttribute('aria-invalid', String(now.reason !== undefined));
    element.classList.toggle('wrong', now.reason !== undefined);
    const kept = typeof now.value === 'object' ? now.value.designation : '';
    const notes = typeof now.value === 'object' ? now.value.notes.join(' ') : '';
    setText(
      note,
      now.reason === undefined
        ? notes
        : `${now.reason}${kept === '' ? ' The last good value stays in force.' : ` The figures keep ${kept}.`}`,
    );
  };
  return { element, refresh };
};

/** What one press of a button or arrow changes: a flat for turns, a round amount for the rest. */
const stepOf = (set: string, name: string, store: Store) => (): number => {
  const fact = symbolFact(name as Parameters<typeof symbolFact>[0]);
  if (fact.unit === 'turn') return 1 / (store.numbers(set).values.k ?? 6);
  if (fact.shown === 'degrees') return (Math.PI / 180) * (fact.says.includes('wind-up') ? 1 : 15);
  if (fact.whole) return 1;
  if (fact.unit === 'mm')
    return fact.shown === 'motion' ? (store.view() === 'inch' ? 0.00254 : 0.01) : store.view() === 'inch' ? 1.5875 : 1;
  return (fact.max - fact.min) / 20;
};

const choiceRow = (set: string, input: Extract<Input, { kind: 'choice' }>, store: Store): Row => {
  const { says, options } = CHOICES[input.name];
  const group = `choice-${++serial}`;
  const element = make('fieldset', { class: 'field choice' }, make('legend', {}, capital(says)));
  for (const option of options) {
    const radio = make('input', { type: 'radio', name: group, value: option });
    radio.addEventListener('change', () => store.type(set, input.name, option));
    element.append(make('label', {}, radio, make('span', {}, option)));
  }
  const note = make('p', { class: 'field-note', role: 'status' });
  element.append(note);
  return {
    element,
    refresh: () => {
      const now = store.field(set, input.name);
      for (const radio of all(element, 'input') as HTMLInputElement[]) radio.checked = radio.value === now?.value;
      setText(note, now?.reason ?? '');
    },
  };
};

const capital = (s: string): string => s.charAt(0).toUpperCase() + s.slice(1);
