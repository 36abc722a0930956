/**
 * The whole state of a page in its address: `?foot.A=M8x1.25&foot.n=2&units=inch`. Whoever opens it has the same page, in a
 * browser that keeps nothing as in one that keeps designs and units of its own. So what is written is whatever differs from
 * what either of them would begin with: the chapter's own numbers in metric units, and the design and the units
 * kept in this browser.
 *
 * A text that was refused stands beside the last good value of its field, under the units in which it was typed:
 * `foot.A=M12x1.75&foot.A.metric=rubbish`.
 *
 * What is read is text for the fields and nothing more: names that the page does not have are left alone, and values go
 * through the same readers as typing does.
 */

import { linkWithoutUnits, withoutFields } from '#words/client.ts';
import { inTodaysNames } from '../assembly/design-use.ts';
import { type NumberSet, writeField } from '../assembly/numbers.ts';
import { isReading, markOf, type Readings, readingFields } from '../assembly/readings.ts';
import { quoted, symbolFact } from '../engine/index.ts';
import { UNIT_VIEWS, type UnitView } from '../input/format.ts';
import { readNumber } from '../input/quantity.ts';
import { splitSpread } from '../input/spread.ts';
import { isCarried } from '../input/texts.ts';
import { lastingDesignInUse } from './design-store.ts';
import { applyDesign } from './designs.ts';
import { readingMarked, readingsAt, readingsKey } from './kept-readings.ts';
import { storedText, writeStored } from './storage.ts';
import { createStore, type Field, type Store } from './store.ts';

const KEPT_VIEW = 'notebook-units';

const viewNamed = (text: string | null): UnitView | undefined => UNIT_VIEWS.find((v) => v === text);

/** Most names that one sentence lists. */
const MOST_NAMED = 3;

/**
 * What an address has for a set of this page under a name that the set does not have, in one sentence; empty where there is nothing.
 * An older link may state what is worked out today, and its reader should know that it is not in force.
 */
export const withoutField = (search: string, sets: ReadonlyMap<string, NumberSet>): string => {
  const gone = [...new URLSearchParams(search).keys()].filter((key) => {
    const [id = '', name] = key.split('.', 2);
    return name !== undefined && sets.get(id)?.inputs.every((input) => input.name !== name);
  });
  const more = gone.length - MOST_NAMED;
  return gone.length === 0 ? '' : withoutFields(gone.slice(0, MOST_NAMED).map(quoted), more);
};

/**
 * Stiffnesses of this page that an address has without a unit, which no page writes: their fields took N/mm once and take N/µm today, a thousand
 * times as much, so such a number is left out and its reader is told.
 */
const unitless = (parameters: URLSearchParams, sets: Iterable<NumberSet>): string[] =>
  [...sets].flatMap(({ id, inputs }) =>
    inputs
      .filter((input) => input.kind === 'quantity' && symbolFact(input.name).shown === 'N/µm')
      .map(({ name }) => `${id}.${name}`)
      .filter((key) => readNumber(splitSpread(parameters.get(key) ?? '')[0]).ok),
  );

/** What an address has without the unit that it needs, in one sentence; empty where there is nothing. */
export const withoutUnits = (search: string, sets: ReadonlyMap<string, NumberSet>): string => {
  const parameters = new URLSearchParams(search);
  const bare = unitless(parameters, sets.values()).map((key) => quoted(`${key}=${parameters.get(key)}`));
  return bare.length === 0 ? '' : linkWithoutUnits(bare.slice(0, MOST_NAMED), bare.length - MOST_NAMED);
};

/** The unit view: the address first, then what the reader chose last, then metric. */
const firstView = (search: string): UnitView =>
  viewNamed(new URLSearchParams(search).get('units')) ?? viewNamed(storedText(KEPT_VIEW)) ?? 'metric';

/** Storage may be denied; the switch then lasts as long as the address. */
export const rememberView = (view: UnitView): void => writeStored(KEPT_VIEW, view);

/** Under `both` a field takes what it takes under `metric`. */
const FIELD_VIEWS = ['metric', 'inch'] as const;
const fieldView = (view: UnitView) => (view === 'inch' ? 'inch' : 'metric');

const names = (sets: Iterable<NumberSet>) =>
  [...sets].flatMap(({ id, inputs }) => inputs.map(({ name }) => ({ id, name })));

/** Behind the name of a list that is too long for a link: which of the lists it is that a browser keeps. */
const MARK = 'kept';

/** The readings that a page opened anew begins with. */
const lastingReadings = (): Readings => readingsAt(readingsKey(lastingDesignInUse()?.name ?? ''));

/** The state that an address gives, in this browser; `kept` are the readings that a bare one brings back. */
export const openStore = (sets: readonly NumberSet[], search: string, kept: Readings = lastingReadings()): Store => {
  const parameters = new URLSearchParams(inTodaysNames(search, sets));
  for (const key of unitless(parameters, sets)) parameters.delete(key);
  const given = new Set(parameters.keys());
  const textOf = (key: string) =>
    given.has(key)
      ? (parameters.get(key) ?? undefined)
      : given.has(`${key}.${MARK}`)
        ? readingMarked(key, parameters.get(`${key}.${MARK}`) ?? '')
        : undefined;
  const store = createStore(sets, (id, name) => textOf(`${id}.${name}`), firstView(search));
  let carries = false;
  for (const { id, name } of names(sets)) {
    carries ||= given.has(`${id}.${name}`) || given.has(`${id}.${name}.${MARK}`);
    for (const view of FIELD_VIEWS) {
      const refused = textOf(`${id}.${name}.${view}`);
      if (refused === undefined) continue;
      carries = true;
      store.load(id, name, refused, view);
    }
  }
  // An address with numbers of its own is whole: neither the design in use nor a reading kept here is missing in it.
  if (carries) return store;
  const mine = lastingDesignInUse();
  if (mine) applyDesign(store, mine);
  putReadings(store, kept);
  return store;
};

type Places = readonly { readonly id: string; readonly name: string }[];

/** Puts texts into these fields, each under its key in an address; refused ones last, since a good one may be followed by another field. */
const putTexts = (store: Store, places: Places, texts: Readings): void => {
  for (const view of ['', ...FIELD_VIEWS] as const)
    for (const { id, name } of places) {
      const text = texts[view === '' ? `${id}.${name}` : `${id}.${name}.${view}`];
      if (text !== undefined) store.load(id, name, text, view === '' ? 'metric' : view);
    }
};

/** What stands in these fields where it differs from what the page begins with, each under its key in an address. */
const textsIn = (places: Places, fieldOf: Store['field'], view: UnitView, begun: Store): Readings => {
  const texts: Record<string, string> = {};
  for (const { id, name } of places) {
    const [field, first] = [fieldOf(id, name), begun.field(id, name)];
    if (!field || !first) continue;
    if (written(field) !== written(first)) texts[`${id}.${name}`] = written(field);
    if (field.reason !== undefined) texts[`${id}.${name}.${fieldView(view)}`] = field.text;
  }
  return texts;
};

/** Puts readings into their fields. */
export const putReadings = (store: Store, kept: Readings): void =>
  putTexts(store, readingFields(store.sets.values()), kept);

/** The readings of these fields where they differ from what the page begins with. */
export const readingsIn = (fieldOf: Store['field'], view: UnitView, begun: Store): Readings =>
  textsIn(readingFields(begun.sets.values()), fieldOf, view, begun);

/** The numbers with which a page was left, where they are not those that it begins with, and what it began with in their fields. */
export interface Left {
  readonly texts: Readings;
  readonly under: Readings;
}

export const leftIn = (store: Store): Left => {
  const begun = openStore([...store.sets.values()], '');
  const texts: Record<string, string> = {};
  const under: Record<string, string> = {};
  for (const place of names(store.sets.values())) {
    const [field, first] = [textsIn([place], store.field, store.view(), begun), begun.field(place.id, place.name)];
    if (!first || Object.keys(field).length === 0) continue;
    Object.assign(texts, field);
    under[`${place.id}.${place.name}`] = markOf(written(first));
  }
  return { texts, under };
};

/**
 * Puts them back into a page that was opened anew. A number stays away where the page begins with another than it did then, which
 * the design in use or the readings kept now give; the labels of those are returned.
 */
export const putLeft = (store: Store, { texts, under }: Left): { readonly back: number; readonly away: string[] } => {
  // Choices first: they say which of the others follow one another.
  const places = [...store.sets.values()].flatMap(({ id, inputs }) =>
    inputs
      .toSorted((a, b) => Number(b.kind === 'choice') - Number(a.kind === 'choice'))
      .flatMap(({ name, label }) => {
        const field = store.field(id, name);
        const key = `${id}.${name}`;
        const then = under[key];
        const told = ['', ...FIELD_VIEWS.map((view) => `.${view}`)].some((end) => texts[key + end] !== undefined);
        return field && told && then !== undefined ? [{ id, name, label, key, now: written(field), then }] : [];
      }),
  );
  const back = places.filter(({ now, then }) => markOf(now) === then);
  putTexts(store, back, texts);
  const away = places.filter((place) => !back.includes(place) && texts[place.key] !== place.now);
  return { back: back.length, away: away.map(({ label }) => label) };
};

/** What a field has in an address: each state of it is written once, since a key changes one of many. */
const texts = new WeakMap<Field, string>();
const written = (field: Field): string => {
  const text = texts.get(field) ?? writeField(field.input, field, 'metric');
  texts.set(field, text);
  return text;
};

/** The search part for the present state, in place of the present one; what in that is not the page's own stays. */
export const addressOf = (store: Store, search: string): string => {
  const parameters = new URLSearchParams(inTodaysNames(search, [...store.sets.values()]));
  const given = new Set(parameters.keys());
  const reading = (id: string, name: string) => isReading(store.sets.get(id), name);
  const kept = lastingReadings();
  const mine =
    lastingDesignInUse() || Object.keys(kept).length > 0 ? openStore([...store.sets.values()], '', kept) : undefined;
  for (const { id, name } of names(store.sets.values())) {
    const field = store.field(id, name);
    if (!field) continue;
    const put = (key: string, text: string | undefined) => {
      // A list too long for a link is left out of it; its field says so. What this browser keeps of it is named by a mark.
      const long = text !== undefined && !isCarried(text);
      const mark = long && reading(id, name) ? markOf(text) : undefined;
      if (mark !== undefined) parameters.set(`${key}.${MARK}`, mark);
      else if (given.has(`${key}.${MARK}`)) parameters.delete(`${key}.${MARK}`);
      if (text !== undefined && !long) parameters.set(key, text);
      else if (given.has(key)) parameters.delete(key);
    };
    // With metric units, whatever the reader sees.
    const value = written(field);
    const begun = mine?.field(id, name);
    const begins = begun === undefined || written(begun) === value;
    put(`${id}.${name}`, store.unchanged(id, name) && begins ? undefined : value);
    for (const view of FIELD_VIEWS)
      put(
        `${id}.${name}.${view}`,
        field.reason !== undefined && view === fieldView(store.view()) ? field.text : undefined,
      );
  }
  const view = store.view();
  if (view === 'metric' && view === firstView('')) parameters.delete('units');
  else parameters.set('units', view);
  return parameters.toString();
};
