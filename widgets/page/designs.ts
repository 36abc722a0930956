/** The reader's designs in the masthead: use one on this page and the next, keep this page's numbers, take them along as a file. */
import { quoted } from '../engine/index.ts';
import { type Design, nameOf, readDesigns, writeDesigns } from '../shared/design-file.ts';
import { readInput, writeValue } from '../shared/numbers.ts';
import { saveFile } from '../shared/save.ts';
import { isCarried } from '../shared/texts.ts';
import { make, setText, whenSent } from './dom.ts';
import { designInUse, designs, keepDesign, onShelfChange, readShelf, removeDesign, useDesign } from './shelf.ts';
import type { Store } from './store.ts';

/** Puts a design's numbers into every field of the page that has their name and takes their value. */
export const applyDesign = (store: Store, design: Design): void => {
  for (const [id, set] of store.sets)
    for (const input of set.inputs) {
      const text = design.numbers[input.name];
      if (text === undefined || !readInput(input, text, 'metric').ok) continue;
      store.load(id, input.name, text);
    }
};

/** The good numbers of a set as a design keeps them: texts with metric units. */
const numbersOf = (store: Store, id: string): Record<string, string> => {
  const numbers: Record<string, string> = {};
  for (const input of store.sets.get(id)?.inputs ?? []) {
    const field = store.field(id, input.name);
    if (!field || field.reason !== undefined) continue;
    const { value } = field;
    // Thousands of readings would fill the shelf; they are a measurement and no part of a design.
    if (typeof value === 'string' && !isCarried(value)) continue;
    numbers[input.name] = writeValue(input, value, 'metric');
  }
  return numbers;
};

export const wakeDesigns = (place: HTMLElement, store: Store, until: AbortSignal): void => {
  if (store.sets.size === 0) return;
  const status = make('p', { class: 'field-note', role: 'status' });
  const list = make('ul', { class: 'design-list' });
  const name = make('input', { type: 'text', id: 'design-name', maxlength: '200', autocomplete: 'off' });
  const from = make('select', { id: 'design-from' });
  for (const id of store.sets.keys()) from.append(make('option', { value: id }, id.replace(/-/g, ' ')));
  const keep = make('button', { type: 'submit' }, 'Keep');
  const form = make(
    'form',
    { class: 'design-keep', novalidate: '' },
    make('label', { for: 'design-name' }, 'Keep the numbers of this page under the name'),
    make('span', { class: 'field-box' }, name, keep),
    ...(store.sets.size > 1 ? [make('label', { for: 'design-from' }, 'taken from the figure or example'), from] : []),
  );
  const file = make('input', { type: 'file', id: 'design-file', accept: '.json,application/json' });
  const save = make('button', { type: 'button', class: 'plain' }, 'Save all to a file');
  const summary = make('summary', {}, 'My designs');
  const panel = make(
    'details',
    { class: 'designs' },
    summary,
    make(
      'div',
      { class: 'design-panel' },
      list,
      form,
      make(
        'div',
        { class: 'design-file' },
        save,
        make('label', { for: 'design-file' }, 'Open a file of designs'),
        file,
      ),
      status,
    ),
  );
  place.append(panel);

  const say = (text: string) => setText(status, text);
  const refresh = () => {
    const inUse = designInUse()?.name;
    setText(summary, inUse === undefined ? 'My designs' : `My design: ${inUse}`);
    const rows = designs().map((design) => {
      const use = make(
        'button',
        { type: 'button', class: 'plain', 'aria-pressed': String(design.name === inUse) },
        design.name === inUse ? 'In use' : 'Use',
      );
      use.addEventListener('click', () => {
        useDesign(design.name);
        applyDesign(store, design);
        refresh();
        say(
          `The figures and examples that take its numbers now show “${design.name}”, here and in the other chapters.`,
        );
      });
      const remove = make(
        'button',
        { type: 'button', class: 'plain', 'aria-label': `Remove ${design.name}` },
        'Remove',
      );
      remove.addEventListener('click', () => {
        const done = removeDesign(design.name);
        refresh();
        say(done.ok ? `“${design.name}” is removed.` : done.reason);
      });
      return make('li', {}, make('span', {}, design.name), use, remove);
    });
    const shelf = readShelf();
    list.replaceChildren(...(rows.length > 0 ? rows : [make('li', {}, shelf.ok ? 'None kept yet.' : shelf.reason)]));
    save.disabled = rows.length === 0;
  };

  whenSent(form, () => {
    const called = nameOf(name.value);
    if (called === '') {
      say('The name is empty; type one such as Foot, left rear.');
      name.focus();
      return;
    }
    const done = keepDesign({ name: called, numbers: numbersOf(store, from.value) });
    useDesign(called);
    refresh();
    say(done.ok ? `“${called}” is kept in this browser.` : done.reason);
  });

  save.addEventListener('click', () => saveFile(writeDesigns(designs()), 'designs.json', 'application/json'));

  file.addEventListener('change', async () => {
    const chosen = file.files?.[0];
    if (!chosen) return;
    // A file may be gone, or no longer ours to read, by the time it is opened.
    const text = await chosen.text().catch(() => undefined);
    file.value = '';
    if (text === undefined) return say(`${quoted(chosen.name)} could not be read; choose it again.`);
    const read = readDesigns(text);
    if (!read.ok) return say(read.reason);
    const faults = read.value.designs.map(keepDesign).flatMap((done) => (done.ok ? [] : [done.reason]));
    refresh();
    const count = read.value.designs.length;
    return say(
      [
        `${count} ${count === 1 ? 'design was' : 'designs were'} read.`,
        ...read.value.notes,
        ...faults.slice(0, 1),
      ].join(' '),
    );
  });

  onShelfChange(refresh, until);
  refresh();
};
