/**
 * Showing one thing to a room: a figure, a worked example, a derivation or a prediction over the whole window in large type, its numbers still
 * alive. Arrow or page keys go to the next and the one before, so a remote does. What a room is to predict stays hidden until asked for: the
 * results of an example and the lines of a derivation one by one, the answer of a prediction, what is read off a figure all at once. What was told
 * last can be hidden again, by the key with which a remote blacks the picture (a point, or b) too. Escape closes. Keys that a field or a knob has
 * use for stay theirs.
 */
import {
  CLOSE,
  CLOSE_PROJECTOR,
  HIDE_READINGS,
  NEXT_ONE,
  NEXT_STEP,
  ONE_BEFORE,
  PROJECTOR,
  placeOf,
  SHOW_NEXT_STEP,
  SHOW_READINGS,
} from '#words/client.ts';
import { all, make, setText } from '../dom.ts';
import { enlarge } from './enlarge.ts';

/** What is told line by line. */
const LINES = '.steps > li, .derivation li';

/** Gives what shows one of these to the room, and where the keys go back to when it closes. */
export const mountProjector = (
  root: HTMLElement,
  shown: readonly HTMLElement[],
  until: AbortSignal,
): ((index: number, from: HTMLElement) => void) => {
  let at = -1;
  let back: HTMLElement | undefined;
  const name = make('span', { class: 'projector-place' });
  const button = (face: string, says: string, act: () => void) => {
    const b = make('button', { type: 'button', 'aria-label': says }, face);
    b.addEventListener('click', act);
    return b;
  };
  const step = button(NEXT_STEP, SHOW_NEXT_STEP, () => tell());
  const readings = make('button', { type: 'button' }, SHOW_READINGS);
  readings.addEventListener('click', () => read(!shown[at]?.matches('.untold')));
  const onward = button('→', NEXT_ONE, () => go(at + 1));
  const bar = make(
    'div',
    { class: 'projector-bar', role: 'region', 'aria-label': PROJECTOR },
    button('←', ONE_BEFORE, () => go(at - 1)),
    name,
    onward,
    step,
    readings,
    button(CLOSE, CLOSE_PROJECTOR, () => close()),
  );
  bar.hidden = true;
  root.append(bar);

  const untold = (): HTMLElement[] => {
    const element = shown[at];
    return element ? all(element, LINES).filter((li) => !li.matches('.told')) : [];
  };
  const answer = () => shown[at]?.querySelector<HTMLDetailsElement>(':scope > .reveal') ?? undefined;
  const tell = () => {
    untold()[0]?.classList.add('told');
    const reveal = answer();
    if (reveal) reveal.open = true;
    offerStep();
  };
  const lastTold = (): Element | null | undefined => {
    const element = shown[at];
    if (element?.matches('figure')) return element.querySelector('[data-says]');
    return (element && all(element, LINES).findLast((li) => li.matches('.told'))) ?? answer();
  };
  /** Hides what was told last: a line, or the answer. */
  const hide = () => {
    const element = shown[at];
    if (element)
      all(element, LINES)
        .findLast((li) => li.matches('.told'))
        ?.classList.remove('told');
    const reveal = answer();
    if (reveal) reveal.open = false;
    offerStep();
  };
  const offerStep = () => {
    const done = untold().length === 0 && answer()?.open !== false;
    // The button goes away; the reader's keys go on beside it.
    if (done && document.activeElement === step) onward.focus();
    step.hidden = done;
  };

  /** Hides or shows what is read off a figure. */
  const read = (hide: boolean) => {
    const figure = shown[at];
    if (!figure?.matches('figure')) return;
    figure.classList.toggle('untold', hide);
    setText(readings, hide ? SHOW_READINGS : HIDE_READINGS);
  };
  let shrink = () => {};
  let unfold = () => {};

  const go = (next: number) => {
    const element = shown[next];
    if (!element) return;
    leave();
    at = next;
    element.classList.add('projected');
    for (const li of untold()) li.classList.remove('told');
    // Steps that the page folds, and an answer that it shows, are the room’s to ask for now.
    const folds = all(element, 'details').filter((d): d is HTMLDetailsElement => d instanceof HTMLDetailsElement);
    const turned = folds.filter((d) => (d.matches('.reveal') ? d.open : element.matches('.derivation') && !d.open));
    for (const d of turned) d.open = !d.open;
    unfold = () => {
      for (const d of turned) d.open = !d.open;
    };
    for (const other of root.children)
      if (other !== bar && !other.contains(element)) other.toggleAttribute('inert', true);
    for (const other of element.parentElement?.children ?? [])
      if (other !== element) other.toggleAttribute('inert', true);
    document.documentElement.classList.add('projecting');
    bar.hidden = false;
    offerStep();
    const pictured = element.matches('figure');
    readings.hidden = !pictured;
    if (pictured) {
      read(true);
      shrink = enlarge(element, bar);
    }
    setText(name, placeOf(next + 1, shown.length));
    element.scrollTop = 0;
    if (!bar.contains(document.activeElement)) onward.focus();
  };

  const leave = () => {
    shrink();
    unfold();
    shrink = unfold = () => {};
    for (const li of all(root, '.told')) li.classList.remove('told');
    for (const element of all(root, '.untold')) element.classList.remove('untold');
    for (const element of all(root, '.projected')) element.classList.remove('projected');
    for (const element of all(root, '[inert]')) element.removeAttribute('inert');
  };

  const close = () => {
    if (at < 0) return;
    leave();
    const last = shown[at];
    at = -1;
    bar.hidden = true;
    document.documentElement.classList.remove('projecting');
    last?.scrollIntoView({ block: 'start' });
    (back ?? last)?.focus();
  };

  const press = (event: KeyboardEvent) => {
    if (at < 0 || event.ctrlKey || event.altKey || event.metaKey) return;
    if (event.key === 'Escape') return close();
    const busy =
      event.target instanceof Element && event.target.closest('input, textarea, select, [role=slider], details');
    // A field of one line has no use for the keys of a remote that turn a page.
    if (busy && !(busy.matches('input') && event.key.startsWith('Page'))) return;
    const way =
      event.key === 'ArrowRight' || event.key === 'PageDown'
        ? 1
        : event.key === 'ArrowLeft' || event.key === 'PageUp'
          ? -1
          : 0;
    if (event.key === 'ArrowDown') {
      const element = shown[at];
      const more = untold().length > 0 || answer()?.open === false || element?.matches('.untold');
      tell();
      read(false);
      // A remote has no wheel: what is told comes into the window, and with nothing left to tell the window goes on down.
      if (!more) element?.scrollBy({ top: innerHeight / 2 });
      else lastTold()?.scrollIntoView({ block: 'nearest' });
    } else if (event.key === 'ArrowUp') {
      hide();
      read(true);
      if (shown[at]?.matches('figure')) shown[at]?.scrollTo({ top: 0 });
    } else if (event.key === '.' || event.key === 'b') {
      hide();
      read(!shown[at]?.matches('.untold'));
    } else if (way !== 0) go(at + way);
    else return;
    event.preventDefault();
  };
  document.addEventListener('keydown', press, { signal: until });
  until.addEventListener('abort', close);
  return (index, from) => {
    back = from;
    go(index);
  };
};
