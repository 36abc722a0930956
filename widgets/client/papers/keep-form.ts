/**
 * What is typed on the page for a class, and which of its forms were sent, kept with this tab: after Back, a reload or a way back by a link the same
 * is there again, set as it was, and it is gone with the tab. It goes into no link and no storage that outlasts the tab, since a roster is in it.
 */
import { all } from '../dom.ts';
import { tabText, writeTab } from '../storage.ts';

/** A state that is larger is refused by some browsers. */
const MOST_KEPT = 500_000;
const KEPT = 'classForm';

type Kept = Readonly<Record<string, string | boolean>>;
type Field = HTMLInputElement | HTMLTextAreaElement;

const isField = (element: Element): element is Field =>
  element instanceof HTMLTextAreaElement || (element instanceof HTMLInputElement && element.type !== 'file');
const ticked = (field: Field): field is HTMLInputElement => field.type === 'checkbox' || field.type === 'radio';
const nameOf = (field: Field): string => field.id || `${field.name}=${field.value}`;

const KEY = 'notebook-class-form';

const asKept = (kept: unknown): Kept =>
  typeof kept !== 'object' || kept === null
    ? {}
    : Object.fromEntries(Object.entries(kept).filter(([, x]) => typeof x === 'string' || typeof x === 'boolean'));

/** As this place in the tab’s history has it; a place that is new, since a link led to it, as the tab has it. */
const keptBefore = (fromTab: boolean): Kept => {
  const state: unknown = history.state;
  if (typeof state === 'object' && state !== null && KEPT in state) return asKept(state[KEPT]);
  if (!fromTab) return {};
  try {
    return asKept(JSON.parse(tabText(KEY)));
  } catch {
    return {};
  }
};

/** The bank whose numbers the papers on the page had. */
const BANK = 'of bank';
const SENT = 'sent ';
const SEND = 'button[type=submit]';

/**
 * `linked`: the address asks for papers of its own, which stand over those that the tab had. `bank` is its version now. Where what was set had the numbers of another, nothing is set in its place, and `ofOther` is told which it was.
 */
export const keepForm = (
  places: readonly HTMLElement[],
  until: AbortSignal,
  linked: boolean,
  bank: () => string,
  ofOther: (version: string) => void,
): void => {
  const fields = () => places.flatMap((place) => all(place, 'input, textarea').filter(isField));
  const kept = keptBefore(!linked);
  for (const field of fields()) {
    const before = kept[nameOf(field)];
    if (ticked(field)) {
      if (typeof before !== 'boolean' || before === field.checked) continue;
      field.checked = before;
      if (before) field.dispatchEvent(new Event('change', { bubbles: true }));
    } else if (typeof before === 'string') field.value = before;
  }
  const forms = places.flatMap((place) => all(place, 'form').filter((form) => form instanceof HTMLFormElement));
  const sent = new Set<HTMLFormElement>();
  let of = bank();
  const keep = () => {
    const now: Record<string, string | boolean> = Object.fromEntries(
      fields().map((f) => [nameOf(f), ticked(f) ? f.checked : f.value]),
    );
    if (sent.size > 0) now[BANK] = of;
    for (const [i, form] of forms.entries()) if (sent.has(form)) now[`${SENT}${i}`] = true;
    const size = Object.values(now).reduce((sum: number, x) => sum + (typeof x === 'string' ? x.length : 0), 0);
    if (size > MOST_KEPT) return;
    history.replaceState({ ...history.state, [KEPT]: now }, '');
    writeTab(KEY, JSON.stringify(now));
  };
  const formOf = (event: Event) =>
    forms.find((form) => event.target instanceof Node && form.contains(event.target)) ?? undefined;
  for (const place of places) {
    place.addEventListener(
      'change',
      (event) => {
        // What is set no longer answers to the form, and what hangs on the class no longer to the class.
        const changed = formOf(event);
        if (changed === forms[0]) sent.clear();
        else if (changed) sent.delete(changed);
        keep();
      },
      { signal: until },
    );
    const whenSent = (event: Event) => {
      const form = formOf(event);
      if (!form || (event.type === 'click' && !(event.target as Element).closest(SEND))) return;
      sent.add(form);
      of = bank();
      keep();
    };
    // A press on the button sends; a script sends without one.
    for (const kind of ['click', 'submit']) place.addEventListener(kind, whenSent, { signal: until });
  }
  const again = forms.filter((_, i) => kept[`${SENT}${i}`] === true);
  if (again.length === 0) return;
  if (kept[BANK] === bank()) for (const form of again) form.requestSubmit();
  else ofOther(String(kept[BANK]));
};
