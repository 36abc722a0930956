/**
 * The page's one state: the reader's numbers and the unit view. Everything on the page is drawn from here and
 * nothing else holds a number. Changes are told once per frame.
 */

import {
  fieldUnit,
  gather,
  type Input,
  type NumberSet,
  type Numbers,
  readInput,
  scopeOf,
  type Value,
  writeQuantity,
  writeValue,
} from '../assembly/numbers.ts';
import { runInSlices } from '../assembly/run-in-slices.ts';
import { type SymbolName, symbolFact, UNITS } from '../engine/index.ts';
import type { UnitView } from '../input/format.ts';
import { LONGEST_TEXT } from '../input/quantity.ts';
import { aheadOf, longestOf, MOST_CARRIED } from '../input/texts.ts';

export interface Field {
  readonly input: Input;
  /** What stands in the field. */
  readonly text: string;
  /** The last good value. */
  readonly value: Value;
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
  /** Puts in a text written with metric units, as an address or a design holds it. */
  readonly load: (set: string, name: string, text: string) => void;
  /** Sets a quantity, kept within its field's bounds. */
  readonly put: (set: string, name: string, value: number) => void;
  /** Writes the field's good value out in full where its text was good, as a field does when it is left. */
  readonly tidy: (set: string, name: string) => void;
  readonly reset: () => void;
  /** Whether a field holds the chapter's own value. */
  readonly pristine: (set: string, name: string) => boolean;
  /** `sets` are those that changed; `view` tells whether the units did. */
  readonly onChange: (listener: Listener) => void;
  /** Told of the same once the frame with the change has been drawn: for words and numbers that may follow the picture. */
  readonly onDrawn: (listener: Listener) => void;
}

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
  const listeners: Listener[] = [];
  const followers: Listener[] = [];
  const dirty = new Set<string>();
  let view = firstView;
  let viewDirty = false;
  let asked = false;
  /** A long text is taken once it has been read; what its field is given meanwhile takes its place. */
  const readings = new Map<string, () => void>();
  const stopReading = (set: string, name: string) => {
    readings.get(key(set, name))?.();
    readings.delete(key(set, name));
  };

  const start = (set: NumberSet, input: Input): Field => {
    const read = readInput(input, input.start, 'metric');
    if (!read.ok) throw new Error(`${set.id}.${input.name}: ${read.reason}`);
    return { input, text: writeValue(input, read.value, view), value: read.value, reason: undefined };
  };

  const announce = () => {
    if (asked) return;
    asked = true;
    requestAnimationFrame(() => {
      asked = false;
      const sets = new Set(dirty);
      const viewChanged = viewDirty;
      dirty.clear();
      viewDirty = false;
      for (const listener of listeners) listener(sets, viewChanged);
      // A timer comes after the frame that is being made.
      window.setTimeout(() => {
        for (const follower of followers) follower(sets, viewChanged);
      });
    });
  };

  const write = (set: string, field: Field) => {
    fields.set(key(set, field.input.name), field);
    dirty.add(set);
    announce();
  };

  const retype = (set: string, name: string, text: string, as: UnitView) => {
    const field = fields.get(key(set, name));
    if (!field) return;
    const read = readInput(field.input, text, as);
    const shown = text.slice(0, mostKept(field.input));
    write(
      set,
      read.ok
        ? { ...field, text: shown, value: read.value, reason: undefined }
        : { ...field, text: shown, reason: read.reason },
    );
  };

  const tidy = (set: string, name: string) => {
    const field = fields.get(key(set, name));
    if (field && field.reason === undefined) write(set, { ...field, text: writeValue(field.input, field.value, view) });
  };

  for (const set of sets)
    for (const input of set.inputs) {
      const first = start(set, input);
      starts.set(key(set.id, input.name), first);
      fields.set(key(set.id, input.name), first);
      const text = typed(set.id, input.name);
      if (text !== undefined) {
        retype(set.id, input.name, text, 'metric');
        tidy(set.id, input.name);
      }
    }

  return {
    sets: byId,
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
          if (input.kind === 'quantity' && symbolFact(input.name).unit === 'mm') tidy(id, input.name);
      announce();
    },
    type: (set, name, text) => {
      stopReading(set, name);
      const input = fields.get(key(set, name))?.input;
      const ahead = input?.kind === 'text' ? aheadOf(input.name, text) : undefined;
      if (ahead)
        readings.set(
          key(set, name),
          runInSlices(ahead, () => retype(set, name, text, view)),
        );
      else retype(set, name, text, view);
    },
    load: (set, name, text) => {
      stopReading(set, name);
      retype(set, name, text, 'metric');
      tidy(set, name);
    },
    put: (set, name, value) => {
      const field = fields.get(key(set, name));
      if (field?.input.kind !== 'quantity') return;
      const { min, max } = field.input;
      // A grid in the field's own unit, so that a drag leaves 120° in it and not 120.0000095°.
      const { factor } = UNITS[fieldUnit(field.input.name, 'metric')];
      const kept = Math.min(max, Math.max(min, Number((value / factor).toFixed(6)) * factor));
      write(set, {
        ...field,
        value: kept,
        text: writeQuantity(field.input.name as SymbolName, kept, view),
        reason: undefined,
      });
    },
    tidy,
    reset: () => {
      for (const [id, set] of byId)
        for (const input of set.inputs) {
          stopReading(id, input.name);
          write(id, start(set, input));
        }
    },
    pristine: (id, name) => {
      const [field, first] = [fields.get(key(id, name)), starts.get(key(id, name))];
      return !field || !first || (field.reason === undefined && same(field.value, first.value));
    },
    onChange: (listener) => void listeners.push(listener),
    onDrawn: (listener) => void followers.push(listener),
  };
};

/** Longer than any text the field takes: what is left of a cut text is refused again when a reload or a link brings it back. */
const mostKept = (input: Input): number =>
  Math.max(MOST_CARRIED, (input.kind === 'text' ? longestOf(input.name) : LONGEST_TEXT) + 1);

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
