/**
 * The page's one state: the reader's numbers and the unit view. Everything on the page is drawn from here and
 * nothing else holds a number. Changes are told once per frame.
 */

import { followersOf, STATED_OF } from '../assembly/linked.ts';
import {
  asWritten,
  fieldUnit,
  gather,
  type Held,
  type Input,
  type NumberSet,
  type Numbers,
  readField,
  readInput,
  scopeOf,
  type Value,
  withUnit,
  writeField,
  writeQuantity,
  writeValue,
} from '../assembly/numbers.ts';
import { runInSlices } from '../assembly/run-in-slices.ts';
import { spokenNumber, symbolFact, UNITS } from '../engine/index.ts';
import type { UnitView } from '../input/format.ts';
import { LONGEST_TEXT } from '../input/quantity.ts';
import { inField, type Spread } from '../input/spread.ts';
import { aheadOf, longestOf, MOST_CARRIED } from '../input/texts.ts';
import { wordsKept, wordsShown } from '../input/typed-words.ts';
import { reasonOf } from '../words/reason.ts';

export interface Field {
  readonly input: Input;
  /** What stands in the field. */
  readonly text: string;
  /** The last good value. */
  readonly value: Value;
  /** The ± that stands behind it. */
  readonly spread?: Spread | undefined;
  /** Why the text is not in force, where it is not. */
  readonly reason: string | undefined;
}

export interface Store {
  readonly sets: ReadonlyMap<string, NumberSet>;
  readonly field: (set: string, name: string) => Field | undefined;
  readonly numbers: (set: string) => Numbers;
  readonly scope: (set: string) => Record<string, number>;
  readonly view: () => UnitView;
  readonly setView: (view: UnitView) => void;
  readonly type: (set: string, name: string, text: string) => void;
  /** Puts in a text that was written under these units; an address or a design holds values with metric ones. */
  readonly load: (set: string, name: string, text: string, as?: UnitView) => void;
  /** Sets a quantity, kept within its field's bounds. */
  readonly put: (set: string, name: string, value: number) => void;
  /** Writes the field's good value out in full where its text was good, as a field does when it is left. */
  readonly tidy: (set: string, name: string) => void;
  readonly reset: () => void;
  /** Whether a field's value in force is the chapter's own. */
  readonly unchanged: (set: string, name: string) => boolean;
  /** Whether a field holds the chapter's own value and no other text. */
  readonly pristine: (set: string, name: string) => boolean;
  /** Told at once, before the reader can do anything else: for what must know that something changed, such as what keeps the address. */
  readonly onWrite: (listener: () => void) => void;
  /** `sets` are those that changed; `view` tells whether the units did. */
  readonly onChange: (listener: Listener) => void;
  /** Told of the same after those, once their frame has been drawn where that takes long: for words and numbers that may follow the picture. */
  readonly onDrawn: (listener: Listener) => void;
  /** Tells them now what they wait for. */
  readonly catchUp: () => void;
}

/** What words and numbers may take of the frame of their picture, ms. */
const SHORT = 8;
/** Those that take longer rest while change comes upon change sooner than this, as of a key that is held, and are never behind for more than the longest, ms. */
const REST = 200;
const LONGEST = 600;

type Listener = (sets: ReadonlySet<string>, view: boolean) => void;

export const createStore = (
  sets: readonly NumberSet[],
  typed: (set: string, name: string) => string | undefined,
  firstView: UnitView,
): Store => {
  const byId = new Map(sets.map((s) => [s.id, s]));
  const fields = new Map<string, Field>();
  const key = (set: string, name: string) => `${set}.${name}`;
  const starts = new Map<string, Field>();
  const writers: (() => void)[] = [];
  const listeners: Listener[] = [];
  const followers: Listener[] = [];
  const dirty = new Set<string>();
  let view = firstView;
  let viewDirty = false;
  let told = false;
  let asked = false;
  /** What the followers took the last time, ms. */
  let lasted = 0;
  /** What they have not been told yet, since when, and when the last change before was drawn. */
  let untold: { readonly sets: Set<string>; view: boolean; readonly since: number } | undefined;
  let drawnBefore = Number.NEGATIVE_INFINITY;
  let resting = 0;
  /** A long text is taken once it has been read; what its field is given meanwhile takes its place. */
  const readings = new Map<string, () => void>();
  const stopReading = (set: string, name: string) => {
    readings.get(key(set, name))?.();
    readings.delete(key(set, name));
  };

  const start = (set: NumberSet, input: Input): Field => {
    const value = ownValue(set.id, input);
    return { input, text: shownIn(input, writeValue(input, value, view)), value, reason: undefined };
  };

  const tellFollowers = () => {
    if (!untold) return;
    const { sets, view: viewChanged } = untold;
    untold = undefined;
    const since = performance.now();
    for (const follower of followers) follower(sets, viewChanged);
    lasted = performance.now() - since;
  };
  const announce = () => {
    if (!told) {
      told = true;
      queueMicrotask(() => {
        told = false;
        for (const writer of writers) writer();
      });
    }
    if (asked) return;
    asked = true;
    requestAnimationFrame(() => {
      asked = false;
      const sets = new Set(dirty);
      const viewChanged = viewDirty;
      dirty.clear();
      viewDirty = false;
      for (const listener of listeners) listener(sets, viewChanged);
      const now = performance.now();
      untold ??= { sets: new Set(), view: false, since: now };
      for (const set of sets) untold.sets.add(set);
      untold.view ||= viewChanged;
      const inOneGo = now - drawnBefore < REST;
      drawnBefore = now;
      window.clearTimeout(resting);
      // A frame more costs more than words that take no time; longer ones wait for a timer, which comes after the frame that is being made.
      if (lasted < SHORT) tellFollowers();
      else
        resting = window.setTimeout(
          tellFollowers,
          inOneGo ? Math.max(0, Math.min(REST, untold.since + LONGEST - now)) : 0,
        );
    });
  };

  const write = (set: string, field: Field) => {
    fields.set(key(set, field.input.name), field);
    dirty.add(set);
    announce();
  };

  const follow = (set: string, name: string) => {
    for (const { leader, follower } of followersOf(name, (choice) => fields.get(key(set, choice))?.value)) {
      const [first, field] = [fields.get(key(set, leader)), fields.get(key(set, follower))];
      if (typeof first?.value !== 'number' || field?.input.kind !== 'quantity') continue;
      const { min, max } = field.input;
      const value = Math.min(max, Math.max(min, first.value));
      write(set, { ...field, value, text: spokenNumber(writeQuantity(follower, value, view)), reason: undefined });
    }
  };

  /** Of each state of a field: many ask, and a key changes one of them. */
  const known = new WeakMap<Field, boolean>();
  const unchanged = (id: string, name: string) => {
    const [field, first] = [fields.get(key(id, name)), starts.get(key(id, name))];
    if (!field || !first || field === first) return true;
    const before = known.get(field);
    if (before !== undefined) return before;
    const now = field.spread === undefined && same(field.value, first.value);
    known.set(field, now);
    return now;
  };

  /** Readings of the reader's own are no longer those of which the chapter states how they were taken. */
  const forgetStated = (set: string, name: string) => {
    if (unchanged(set, name)) return;
    for (const stated of STATED_OF[name] ?? []) {
      const field = fields.get(key(set, stated));
      if (field && field.text !== '' && field.reason === undefined && unchanged(set, stated))
        write(set, { ...field, text: '', value: '', spread: undefined });
    }
  };

  const retype = (set: string, name: string, text: string) => {
    const field = fields.get(key(set, name));
    if (!field) return;
    const shown = text.slice(0, mostKept(field.input));
    const read = readField(field.input, keptWords(field.input, text), view);
    if (!read.ok) return write(set, { ...field, text: shown, reason: reasonOf(read) });
    const value = asWritten(field.input, read.value.value);
    const first = read.value.value;
    // What was supposed of a thread is said until its field is left, when it stands written out.
    const noted = typeof value === 'object' && typeof first === 'object' ? { ...value, notes: first.notes } : value;
    write(set, {
      ...field,
      text: shown,
      value: noted,
      spread: spreadAsWritten(field.input, read.value),
      reason: undefined,
    });
    follow(set, name);
    forgetStated(set, name);
  };

  const tidy = (set: string, name: string) => {
    const field = fields.get(key(set, name));
    if (!field || field.reason !== undefined) return;
    const noted = typeof field.value === 'object' && field.value.notes.length > 0;
    const value = noted ? asWritten(field.input, field.value) : field.value;
    const text = writeField(field.input, { value, spread: field.spread }, view);
    write(set, { ...field, value, text: shownIn(field.input, text) });
  };

  const load = (set: string, name: string, text: string, as: UnitView) => {
    const input = fields.get(key(set, name))?.input;
    if (!input) return;
    const alike = input.kind !== 'quantity' || fieldUnit(input.name, as) === fieldUnit(input.name, view);
    retype(set, name, alike ? text : withUnit(input, text, as));
    tidy(set, name);
  };

  for (const set of sets)
    for (const input of set.inputs) {
      const first = start(set, input);
      starts.set(key(set.id, input.name), first);
      fields.set(key(set.id, input.name), first);
      const text = typed(set.id, input.name);
      if (text !== undefined) load(set.id, input.name, text, 'metric');
    }
  // Once all fields stand, whatever their order.
  for (const set of sets) for (const { name } of set.inputs) forgetStated(set.id, name);

  return {
    sets: byId,
    catchUp: tellFollowers,
    field: (set, name) => fields.get(key(set, name)),
    numbers: (id) => numbersOf(byId, fields, key, id),
    scope: (id) => scopeOf(numbersOf(byId, fields, key, id)),
    view: () => view,
    setView: (next) => {
      if (next === view) return;
      view = next;
      viewDirty = true;
      for (const [id, set] of byId)
        for (const input of set.inputs)
          if (input.kind === 'quantity' && symbolFact(input.name).unit === 'mm') {
            const field = fields.get(key(id, input.name));
            // A text that was refused is read anew: a bare number in it now counts in the other unit.
            if (field?.reason !== undefined) retype(id, input.name, field.text);
            tidy(id, input.name);
          }
      announce();
    },
    type: (set, name, text) => {
      stopReading(set, name);
      const input = fields.get(key(set, name))?.input;
      const ahead = input?.kind === 'text' ? aheadOf(input.name, keptWords(input, text)) : undefined;
      if (ahead)
        readings.set(
          key(set, name),
          runInSlices(ahead, () => retype(set, name, text)),
        );
      else retype(set, name, text);
    },
    load: (set, name, text, as = 'metric') => {
      stopReading(set, name);
      load(set, name, text, as);
    },
    put: (set, name, value) => {
      const field = fields.get(key(set, name));
      if (field?.input.kind !== 'quantity') return;
      const { min, max } = field.input;
      // A grid in the field's own unit, so that a drag leaves 120° in it and not 120.0000095°.
      const { factor } = UNITS[fieldUnit(field.input.name, 'metric')];
      const kept = Math.min(max, Math.max(min, Number((value / factor).toFixed(6)) * factor));
      const held = asWritten(field.input, kept);
      write(set, {
        ...field,
        value: held,
        spread: spreadAsWritten(field.input, { ...field, value: held }),
        reason: undefined,
      });
      tidy(set, name);
      follow(set, name);
    },
    tidy,
    reset: () => {
      for (const [id, set] of byId)
        for (const input of set.inputs) {
          stopReading(id, input.name);
          write(id, start(set, input));
        }
    },
    unchanged,
    pristine: (id, name) => fields.get(key(id, name))?.reason === undefined && unchanged(id, name),
    onWrite: (writer) => void writers.push(writer),
    onChange: (listener) => void listeners.push(listener),
    onDrawn: (listener) => void followers.push(listener),
  };
};

/** What a field shows: in the words and with the decimal mark of the language, where links and files have English words and a point. */
const shownIn = (input: Input, text: string): string =>
  input.kind === 'text'
    ? wordsShown(input.name, text)
    : inField(input.kind === 'thread' ? wordsShown('thread', text) : text);

/** The same the other way: what was typed, as links and files have it. */
const keptWords = (input: Input, text: string): string =>
  input.kind === 'text' ? wordsKept(input.name, text) : input.kind === 'thread' ? wordsKept('thread', text) : text;

/** The chapter's own value of an input: read once, since every writing of an address may ask for it. */
const ownValues = new WeakMap<Input, Value>();
const ownValue = (set: string, input: Input): Value => {
  let value = ownValues.get(input);
  if (value === undefined) {
    const read = readInput(input, input.start, 'metric');
    if (!read.ok) throw new Error(`${set}.${input.name}: ${reasonOf(read)}`);
    value = asWritten(input, read.value);
    ownValues.set(input, value);
  }
  return value;
};

/** A ± that its own writing gives back; see `asWritten`. None where it would reach past what the number can be. */
const spreadAsWritten = (input: Input, held: Held): Spread | undefined => {
  if (held.spread === undefined) return undefined;
  const read = readField(input, writeField(input, held, 'metric'), 'metric');
  return read.ok ? read.value.spread : undefined;
};

/**
 * A refused list stays whole, since its reader gets it back from here. Of a text on one line so much stays as is longer than any the field takes:
 * it is refused again when a reload or a link brings it back.
 */
const mostKept = (input: Input): number =>
  input.kind === 'text' && longestOf(input.name) > MOST_CARRIED
    ? Number.POSITIVE_INFINITY
    : Math.max(MOST_CARRIED, (input.kind === 'text' ? longestOf(input.name) : LONGEST_TEXT) + 1);

const same = (a: Value, b: Value): boolean =>
  a === b ||
  (typeof a === 'object' &&
    typeof b === 'object' &&
    JSON.stringify({ ...a, notes: [] }) === JSON.stringify({ ...b, notes: [] }));

const numbersOf = (
  sets: ReadonlyMap<string, NumberSet>,
  fields: ReadonlyMap<string, Field>,
  key: (s: string, n: string) => string,
  id: string,
): Numbers => {
  const set = sets.get(id) ?? { id, inputs: [] };
  const values = new Map<string, Value>();
  for (const input of set.inputs) {
    const field = fields.get(key(id, input.name));
    if (field) values.set(input.name, field.value);
  }
  return gather(set, values);
};
