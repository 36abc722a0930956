/** The reader's designs in the masthead: use one on this page and the next, keep this page's numbers, take them along as a file. */

import {
  designsRead,
  fileUnread,
  IN_USE,
  KEEP,
  KEEP_LINKED,
  KEEP_UNDER,
  keptHere,
  keptOf,
  LINKED,
  MY_DESIGNS,
  myDesign,
  NAME_EMPTY,
  NONE_KEPT,
  notKept,
  nowShown,
  OPEN_DESIGNS,
  REMOVE,
  removed,
  removeNamed,
  SAVE_DESIGNS,
  TAKEN_FROM,
  USE,
} from '#words/client.ts';
import { withName } from '../assembly/adjuster/text.ts';
import { type Design, nameOf, outOfUse, readDesigns, tooLong } from '../assembly/design-file.ts';
import { asDesign, fillsOf } from '../assembly/design-use.ts';
import { type Input, writeField } from '../assembly/numbers.ts';
import { isReading } from '../assembly/readings.ts';
import { quoted, spokenNumber } from '../engine/index.ts';
import { saveFile } from '../figures/kit/save.ts';
import { isCarried } from '../input/texts.ts';
import { reasonOf } from '../words/reason.ts';
import { fieldsFrom } from './design-note.ts';
import {
  designInUse,
  keepDesigns,
  onDesignsChange,
  readDesignStore,
  removeDesign,
  shelfText,
  useDesign,
} from './design-store.ts';
import { all, make, setText, whenSent } from './dom.ts';
import type { Store } from './store.ts';

/** Puts a design's numbers into every field of the page that takes them. */
export const applyDesign = (store: Store, design: Design): void => {
  for (const [id, set] of store.sets)
    for (const [name, { text, emptied }] of fillsOf(design.numbers, set))
      if (!emptied || store.pristine(id, name)) store.load(id, name, text);
};

/** The good numbers of a set as a design keeps them: texts with metric units. */
export const numbersOf = (store: Store, id: string): Readonly<Record<string, string>> => {
  const numbers: Record<string, string> = {};
  for (const input of store.sets.get(id)?.inputs ?? []) {
    const field = store.field(id, input.name);
    if (!field || field.reason !== undefined) continue;
    const { value } = field;
    // Thousands of readings would fill the shelf; they are a measurement and no part of a design.
    if (typeof value === 'string' && !isCarried(value)) continue;
    numbers[input.name] = writeField(input, field, 'metric');
  }
  return asDesign(numbers);
};

/** `linked` is the address of a link that the page was opened by: no other page has its numbers. */
export const mountDesigns = (place: HTMLElement, store: Store, linked: string, until: AbortSignal): void => {
  if (store.sets.size === 0) return;
  const status = make('p', { class: 'field-note', role: 'status' });
  const list = make('ul', { class: 'design-list' });
  const name = make('input', { type: 'text', id: 'design-name', maxlength: '200', autocomplete: 'off' });
  const from = make('select', { id: 'design-from' });
  const shown = shownWith(store);
  for (const [id, blocks] of shown) from.append(make('option', { value: id }, setNamed(blocks)));
  // What the reader worked on last is what they mean to keep; a design that fills many sets at once says nothing of that.
  store.onChange((sets, view) => {
    const [only, ...more] = sets;
    if (only !== undefined && more.length === 0 && !view && shown.has(only)) from.value = only;
  });
  const keep = make('button', { type: 'submit' }, KEEP);
  const form = make(
    'form',
    { class: 'design-keep', novalidate: '' },
    make('label', { for: 'design-name' }, KEEP_UNDER),
    make('span', { class: 'field-box' }, name, keep),
    ...(shown.size > 1 ? [make('label', { for: 'design-from' }, TAKEN_FROM), from] : []),
  );
  const file = make('input', { type: 'file', id: 'design-file', accept: '.json,application/json' });
  const save = make('button', { type: 'button', class: 'plain' }, SAVE_DESIGNS);
  const summary = make('summary', {}, MY_DESIGNS);
  const panel = make(
    'details',
    { class: 'designs' },
    summary,
    make(
      'div',
      { class: 'design-panel' },
      list,
      form,
      make('div', { class: 'design-file' }, save, make('label', { for: 'design-file' }, OPEN_DESIGNS), file),
      status,
    ),
  );
  place.append(panel);

  const say = (text: string) => setText(status, text);
  const refresh = () => {
    const held = heldIn(list);
    const inUse = designInUse()?.name;
    setText(summary, inUse === undefined ? MY_DESIGNS : myDesign(inUse));
    const shelf = readDesignStore();
    const rows = (shelf.ok ? shelf.value : []).map((design) => {
      const use = make(
        'button',
        { type: 'button', class: 'plain', 'aria-pressed': String(design.name === inUse) },
        design.name === inUse ? IN_USE : USE,
      );
      use.addEventListener('click', () => {
        useDesign(design.name);
        applyDesign(store, design);
        say(`${nowShown(design.name)} ${outOfUse(design)}`.trim());
      });
      const remove = make('button', { type: 'button', class: 'plain', 'aria-label': removeNamed(design.name) }, REMOVE);
      remove.addEventListener('click', () => {
        const done = removeDesign(design.name);
        say(done.ok ? removed(design.name) : reasonOf(done));
      });
      return make('li', {}, make('span', {}, design.name), use, remove);
    });
    list.replaceChildren(...(rows.length > 0 ? rows : [make('li', {}, shelf.ok ? NONE_KEPT : reasonOf(shelf))]));
    save.disabled = rows.length === 0;
    // The list was made anew under the reader's keys: they go on in its place, or at the next thing if none is left.
    if (held) (rows[Math.min(held.row, rows.length - 1)]?.querySelectorAll('button')[held.button] ?? name).focus();
  };

  whenSent(form, () => {
    const called = nameOf(name.value);
    if (called === '') {
      say(NAME_EMPTY);
      name.focus();
      return;
    }
    const others = [...shown]
      .filter(([id]) => id !== from.value && changedHere(store, id))
      .map(([, [one]]) => shortName(one));
    const numbers = numbersOf(store, from.value);
    const parts = numbers.adjuster === undefined ? undefined : withName(numbers.adjuster, called);
    const { names, fault } = keepDesigns([
      { name: called, numbers: parts === undefined ? numbers : { ...numbers, adjuster: parts } },
    ]);
    if (names.length > 0) {
      useDesign(called);
      // Papers and files have the name from the parts, also on this page.
      if (parts !== undefined && parts !== numbers.adjuster) store.load(from.value, 'adjuster', parts);
    }
    const [one] = shown.get(from.value) ?? [];
    say(
      fault === ''
        ? [keptHere(called), keptOf(shortName(one), saidOf(store, from.value)), notKept(others)].join(' ').trim()
        : fault,
    );
  });

  save.addEventListener('click', () => saveFile(shelfText(), 'designs.json', 'application/json'));

  file.addEventListener('change', async () => {
    const chosen = file.files?.[0];
    if (!chosen) return;
    const long = tooLong(chosen.size, 'bytes');
    // A file may be gone, or no longer ours to read, by the time it is opened.
    const text = long === undefined ? await chosen.text().catch(() => undefined) : undefined;
    file.value = '';
    if (long !== undefined) return say(reasonOf(long));
    if (text === undefined) return say(fileUnread(quoted(chosen.name)));
    const read = readDesigns(text);
    if (!read.ok) return say(reasonOf(read));
    const { names, fault } = keepDesigns(read.value.designs);
    return say([designsRead(names.length), ...read.value.notes, fault].join(' ').trim());
  });

  onDesignsChange(refresh, until);
  refresh();

  const given = new URLSearchParams(linked);
  const came = [...shown.keys()].find((id) =>
    changedHere(store, id, (input) => isAdjuster(input) && given.has(`${id}.${input.name}`)),
  );
  if (came === undefined) return;
  const take = make('button', { type: 'button', class: 'plain' }, KEEP_LINKED);
  take.addEventListener('click', () => {
    panel.open = true;
    from.value = came;
    name.focus();
  });
  const offer = make('p', { class: 'field-note', role: 'status' }, LINKED, ' ', take);
  panel.before(offer);
  onDesignsChange(() => offer.remove(), until);
};

/** What makes an adjuster another one: its threads and its parts. */
const isAdjuster = ({ kind, name }: Input): boolean => kind === 'thread' || name === 'adjuster';

interface Block {
  /** As it is numbered on the page; empty where it has no number. */
  readonly tag: string;
  readonly title: string;
}

/** The sets of a page whose numbers a reader can change, each with the figures and examples that ask for them. */
const shownWith = (store: Store): ReadonlyMap<string, readonly Block[]> => {
  const shown = new Map<string, Block[]>();
  for (const id of store.sets.keys()) {
    const fields = all(document, `[data-inputs="${CSS.escape(id)}"]`);
    const blocks = new Set(fields.flatMap((field) => field.closest('figure, .example') ?? []));
    if (blocks.size > 0) shown.set(id, [...blocks].map(blockOf));
  }
  return shown;
};

const blockOf = (block: Element): Block => {
  const tag = block.querySelector('.tag')?.textContent?.trim() ?? '';
  const heading = block.matches('figure') ? block.getAttribute('aria-label') : block.querySelector('h3')?.textContent;
  return { tag, title: (heading ?? '').replace(tag, '').trim() };
};

const shortName = (block: Block | undefined): string =>
  block === undefined ? '' : block.tag === '' ? block.title : block.tag;

const setNamed = ([first, ...others]: readonly Block[]): string =>
  first === undefined
    ? ''
    : (first.tag === '' ? first.title : `${first.tag}: ${first.title}`) +
      (others.length > 0 ? ` (${others.map(shortName).join(', ')})` : '');

/** More of them would be read by nobody. */
const TOLD = 4;
const LONGEST_TOLD = 24;

/** What of a set is kept, said shortly: the first few with their values, the others counted. */
const saidOf = (store: Store, id: string): { readonly first: readonly string[]; readonly more: number } => {
  const kept = numbersOf(store, id);
  const told = (store.sets.get(id)?.inputs ?? []).flatMap(({ kind, name, label }) => {
    const text = kept[name];
    // How a picture is looked at is often a choice, and tells nobody which adjuster it is.
    return text === undefined || kind === 'choice'
      ? []
      : [text.length > LONGEST_TOLD ? label : `${label} ${spokenNumber(text)}`];
  });
  return { first: told.slice(0, TOLD), more: Math.max(0, told.length - TOLD) };
};

/** Whether the reader has changed what a design keeps of a set, or these fields of it, other than by the design in use. */
const changedHere = (store: Store, id: string, asked = (_: Input): boolean => true): boolean => {
  const set = store.sets.get(id);
  if (!set) return false;
  const kept = numbersOf(store, id);
  // Readings are kept without being asked (readings/readings.ts).
  const inputs = set.inputs.filter(
    (input) => asked(input) && kept[input.name] !== undefined && !isReading(set, input.name),
  );
  return fieldsFrom(designInUse()?.numbers ?? {}, set, inputs, store).reader.length > 0;
};

/** Which button of which row the reader's keys are at. */
const heldIn = (list: HTMLElement): { readonly row: number; readonly button: number } | undefined => {
  const row = [...list.children].findIndex((li) => li.contains(document.activeElement));
  const button = [...(list.children[row]?.querySelectorAll('button') ?? [])].findIndex((button) =>
    button.matches(':focus'),
  );
  return button < 0 ? undefined : { row, button };
};
