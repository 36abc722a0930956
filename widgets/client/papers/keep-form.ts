/**
 * What is typed on the page for a class, kept with this tab’s own history: it is there again after Back or a reload, and gone with the tab. It goes
 * into no storage and into no link, since a roster is in it.
 */
import { all } from '../dom.ts';

/** A state that is larger is refused by some browsers. */
const MOST_KEPT = 500_000;
const KEPT = 'classForm';

type Kept = Readonly<Record<string, string | boolean>>;
type Field = HTMLInputElement | HTMLTextAreaElement;

const isField = (element: Element): element is Field =>
  element instanceof HTMLTextAreaElement || (element instanceof HTMLInputElement && element.type !== 'file');
const ticked = (field: Field): field is HTMLInputElement => field.type === 'checkbox' || field.type === 'radio';
const nameOf = (field: Field): string => field.id || `${field.name}=${field.value}`;

const keptBefore = (): Kept => {
  const state: unknown = history.state;
  if (typeof state !== 'object' || state === null || !(KEPT in state)) return {};
  const kept: unknown = state[KEPT];
  if (typeof kept !== 'object' || kept === null) return {};
  return Object.fromEntries(Object.entries(kept).filter(([, x]) => typeof x === 'string' || typeof x === 'boolean'));
};

export const keepForm = (places: readonly HTMLElement[], until: AbortSignal): void => {
  const fields = () => places.flatMap((place) => all(place, 'input, textarea').filter(isField));
  const kept = keptBefore();
  for (const field of fields()) {
    const before = kept[nameOf(field)];
    if (ticked(field)) {
      if (typeof before !== 'boolean' || before === field.checked) continue;
      field.checked = before;
      if (before) field.dispatchEvent(new Event('change', { bubbles: true }));
    } else if (typeof before === 'string') field.value = before;
  }
  const keep = () => {
    const now = Object.fromEntries(fields().map((f) => [nameOf(f), ticked(f) ? f.checked : f.value]));
    const size = Object.values(now).reduce((sum: number, x) => sum + (typeof x === 'string' ? x.length : 0), 0);
    if (size <= MOST_KEPT) history.replaceState({ ...history.state, [KEPT]: now }, '');
  };
  for (const place of places) place.addEventListener('change', keep, { signal: until });
};
