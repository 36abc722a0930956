/**
 * Keeps readings as they are typed, for this page and the design in use, and says so in one quiet line. What came with a link is not
 * mixed with them: where this browser keeps other readings of the page, nothing is written over them until the reader says which are to stay.
 */
import {
  EMPTY_THEM,
  emptied,
  keptHere,
  keptOthers,
  notInLink,
  PUT_BACK,
  TAKE_THESE,
  tooLongToKeep,
  typedBefore,
} from '#words/readings.ts';
import { lengthOf, MOST_KEPT, markOf, type Readings, readingFields } from '../../assembly/readings.ts';
import { grouped } from '../../input/format.ts';
import { openStore, putReadings, readingsIn } from '../address.ts';
import { designInUse, keepDesigns, onDesignsChange } from '../design-store.ts';
import { all, make } from '../dom.ts';
import { readingsAt, readingsKey } from '../kept-readings.ts';
import { onlyHeld, readStored, writeStored } from '../storage.ts';
import type { Field, Store } from '../store.ts';

/** How long typing must rest before it is stored, ms: a long list is not written anew with every letter. */
const REST = 300;

const readingsNow = (store: Store): ReadonlyMap<string, Field> =>
  fieldsByKey(
    store,
    readingFields(store.sets.values()).map(({ id, name }) => store.field(id, name)),
  );
/** By key, of fields in their order on the page. */
const fieldsByKey = (store: Store, fields: readonly (Field | undefined)[]): ReadonlyMap<string, Field> =>
  new Map(
    readingFields(store.sets.values()).flatMap(({ id, name }, i) => {
      const field = fields[i];
      return field ? [[`${id}.${name}`, field]] : [];
    }),
  );

const none = (readings: Readings): boolean => Object.keys(readings).length === 0;
const same = (a: Readings, b: Readings): boolean =>
  Object.keys(a).length === Object.keys(b).length && Object.entries(a).every(([key, text]) => b[key] === text);

export const mountReadings = (
  root: HTMLElement,
  store: Store,
  /** Fields of readings as they were when the page opened, before anything was typed. */
  first: readonly (Field | undefined)[],
  /** The address that the page was opened by. */
  search: string,
  until: AbortSignal,
): void => {
  const sets = [...store.sets.values()];
  const opened = fieldsByKey(store, first);
  const line = make('p', { class: 'readings-kept', role: 'status' });

  const bare = () => openStore(sets, '', {});
  const inFields = (fields: ReadonlyMap<string, Field>, begun = bare()) =>
    withoutPassport(readingsIn((set, name) => fields.get(`${set}.${name}`), store.view(), begun));
  const stored = (design: string) => readingsAt(readingsKey(design), readStored);
  const own = () => sets.every(({ id, inputs }) => inputs.every(({ name }) => store.pristine(id, name)));
  /** The passports of pieces are a number of the design itself, so that every page has the same ones. */
  const withoutPassport = (readings: Readings): Readings =>
    owner === '' ? readings : Object.fromEntries(Object.entries(readings).filter(([key]) => !/\.passport\b/.test(key)));

  let owner = designInUse()?.name ?? '';
  let kept = stored(owner);
  let last = opened;
  /** Whether the page shows others than are kept. */
  let apart = !none(kept) && !same(inFields(opened), kept);
  /** What was emptied last, until the page is left. */
  let gone: Readings = {};

  const button = (says: string, act: () => void) => {
    const made = make('button', { type: 'button', class: 'plain' }, says);
    made.addEventListener('click', act);
    return made;
  };
  /** Whether the link names a list that it can’t carry and this browser does not keep. */
  let missing = [...new URLSearchParams(search)].some(([key, mark]) => {
    const field = key.endsWith('.kept') ? opened.get(key.slice(0, -'.kept'.length)) : undefined;
    return field !== undefined && markOf(String(field.value)) !== mark;
  });
  /** Readings that were typed before this design was in use. */
  const earlier = () => (owner !== '' && none(kept) ? stored('') : {});

  const say = () => {
    const held = line.contains(document.activeElement);
    const parts: (Node | string)[] = [];
    const before = earlier();
    if (missing) parts.push(notInLink);
    else if (apart) parts.push(keptOthers(owner), ' ', button(PUT_BACK, putBack), ' ', button(TAKE_THESE, take));
    else if (lengthOf(inFields(last)) > MOST_KEPT) parts.push(tooLongToKeep(grouped(MOST_KEPT)));
    else if (!none(kept)) parts.push(keptHere(owner, !onlyHeld(readingsKey(owner))), ' ', button(EMPTY_THEM, empty));
    else if (!none(gone))
      parts.push(
        emptied,
        ' ',
        button(PUT_BACK, () => bringBack(gone)),
      );
    else if (!none(before))
      parts.push(
        typedBefore(owner),
        ' ',
        button(PUT_BACK, () => bringBack(before)),
      );
    line.hidden = parts.length === 0;
    line.replaceChildren(...parts);
    const of = [kept, gone, before, inFields(last)].find((one) => !none(one)) ?? {};
    const block = blockOf(root, Object.keys(of)[0] ?? [...last.keys()][0] ?? '');
    if (parts.length > 0 && block && block.nextElementSibling !== line) block.after(line);
    if (held) line.querySelector('button')?.focus();
  };

  const keep = (readings: Readings) => {
    if (lengthOf(readings) > MOST_KEPT) return;
    kept = readings;
    writeStored(readingsKey(owner), none(readings) ? '' : JSON.stringify(readings));
  };

  const keepPassport = (now: ReadonlyMap<string, Field>) => {
    if (owner === '') return;
    for (const [key, field] of now) {
      const before = last.get(key);
      if (!key.endsWith('.passport') || field.reason !== undefined || field.value === before?.value) continue;
      // One that came with a link is not this design’s own.
      if ((designInUse()?.numbers.passport ?? '') !== before?.value) continue;
      keepDesigns([{ name: owner, numbers: { passport: String(field.value) } }]);
    }
  };

  let resting = 0;
  const storeAll = () => {
    window.clearTimeout(resting);
    resting = 0;
    const now = readingsNow(store);
    if ([...now].every(([key, field]) => last.get(key) === field)) return;
    keepPassport(now);
    missing = false;
    last = now;
    // The chapter’s own numbers were asked for: what was measured is not taken back with them.
    if (!none(kept) && own()) apart = true;
    if (!apart) {
      gone = {};
      keep(inFields(now));
    }
    say();
  };
  store.onWrite(() => {
    if (resting === 0) resting = window.setTimeout(storeAll, REST);
  });
  for (const moment of ['pagehide', 'visibilitychange']) window.addEventListener(moment, storeAll, { signal: until });

  /** Puts every reading as a page opened anew would have it with these. */
  const show = (readings: Readings) => {
    const begun = bare();
    const shown = inFields(readingsNow(store), begun);
    for (const key of Object.keys(shown)) {
      const [id = '', name = ''] = key.split('.');
      const first = begun.field(id, name);
      if (first) store.load(id, name, first.text, begun.view());
    }
    putReadings(store, readings);
    last = readingsNow(store);
    apart = false;
  };
  const bringBack = (readings: Readings) => {
    show(readings);
    gone = {};
    keep(readings);
    say();
  };
  const putBack = () => bringBack(kept);
  const take = () => {
    apart = false;
    last = readingsNow(store);
    keep(inFields(last));
    say();
  };
  const empty = () => {
    gone = kept;
    show({});
    keep({});
    say();
  };

  // Another tab keeps others, or another design is in use.
  window.addEventListener(
    'storage',
    ({ key }) => {
      if (key !== readingsKey(owner) && key !== null) return;
      storeAll();
      kept = stored(owner);
      apart = !none(kept) && !same(inFields(last), kept);
      say();
    },
    { signal: until },
  );
  onDesignsChange(() => {
    const next = designInUse()?.name ?? '';
    if (next === owner) return;
    storeAll();
    const [from, before] = [owner, readingsNow(store)];
    owner = next;
    kept = stored(owner);
    // By then its numbers stand in the fields, if they were asked for.
    queueMicrotask(() => {
      last = readingsNow(store);
      const untouched = [...last].every(([key, field]) => before.get(key) === field);
      if (!none(kept) && owner !== '') show(kept);
      else if (none(kept) && owner !== '' && untouched && !apart) {
        // What is on the page was kept under a name: its readings are those of this design now.
        keep(inFields(last));
        if (from === '') writeStored(readingsKey(''), '');
      }
      apart = !none(kept) && !same(inFields(last), kept);
      say();
    });
  }, until);
  say();
};

/** The figure or example that asks for the field of this key. */
const blockOf = (root: HTMLElement, key: string): Element | undefined => {
  const [id = '', name = ''] = key.split('.');
  const place = all(root, `[data-inputs="${CSS.escape(id)}"]`).find((one) =>
    (one.dataset.names ?? '').split(' ').includes(name),
  );
  return place?.closest('figure, .example') ?? place;
};
