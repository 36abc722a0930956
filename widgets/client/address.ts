/**
 * The reader's numbers in the address: `?foot.A=M8x1.25&foot.n=2&units=inch`. Only what differs from the chapter's
 * own numbers is written. What is read is text for the fields and nothing more: names that the page does not
 * have are left alone, and values go through the same readers as typing does.
 */

import { formerNames, inPresentSign } from '../assembly/former-names.ts';
import { type NumberSet, writeValue } from '../assembly/numbers.ts';
import { quoted } from '../engine/index.ts';
import { UNIT_VIEWS, type UnitView } from '../input/format.ts';
import { isCarried } from '../input/texts.ts';
import { readStored, writeStored } from './storage.ts';
import type { Store } from './store.ts';

const KEPT_VIEW = 'notebook-units';

export const typedInAddress = (search: string): ((set: string, name: string) => string | undefined) => {
  const parameters = new URLSearchParams(search);
  return (set, name) => {
    const text = parameters.get(`${set}.${name}`);
    if (text !== null) return text;
    for (const former of formerNames(name)) {
      const old = parameters.get(`${set}.${former}`);
      if (old !== null) return inPresentSign(old);
    }
    return undefined;
  };
};

/** Whether an address carries numbers of a set, as one that somebody shared does. */
export const hasNumbers = (search: string): boolean =>
  [...new URLSearchParams(search).keys()].some((key) => key.includes('.'));

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
  return gone.length === 0
    ? ''
    : `The link states ${gone.slice(0, MOST_NAMED).map(quoted).join(', ')}${more > 0 ? ` and ${more} more` : ''}, for which this page has no field: look through the numbers below and type what is missing.`;
};

/** The unit view: the address first, then what the reader chose last, then metric. */
export const firstView = (search: string): UnitView => {
  const asked = new URLSearchParams(search).get('units') ?? readStored(KEPT_VIEW);
  return UNIT_VIEWS.find((v) => v === asked) ?? 'metric';
};

/** Storage may be denied; the switch then lasts as long as the address. */
export const rememberView = (view: UnitView): void => writeStored(KEPT_VIEW, view);

/**
 * The search part for the present state; empty where nothing differs from the chapter's own numbers. Always with metric units,
 * whatever the reader sees, so that a link means the same to the next reader.
 */
export const addressOf = (store: Store, search: string): string => {
  const parameters = new URLSearchParams(search);
  for (const [id, set] of store.sets)
    for (const { name } of set.inputs) {
      for (const former of formerNames(name)) parameters.delete(`${id}.${former}`);
      const field = store.field(id, name);
      const text =
        field === undefined || store.pristine(id, name)
          ? undefined
          : field.reason === undefined
            ? writeValue(field.input, field.value, 'metric')
            : field.text;
      // A list too long for a link is left out of it; its field says so.
      if (text === undefined || !isCarried(text)) parameters.delete(`${id}.${name}`);
      else parameters.set(`${id}.${name}`, text);
    }
  if (store.view() === 'metric') parameters.delete('units');
  else parameters.set('units', store.view());
  return parameters.toString();
};
