/**
 * Showing one thing to a room: a figure or a worked example over the whole window in large type, its numbers still alive.
 * Arrow or page keys go to the next and the one before. What a room is to predict stays hidden until asked for: the results of an
 * example step by step, what is read off a figure all at once, to be hidden again before the next turn. Escape closes. Keys that a
 * field or a knob has use for stay theirs.
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
  SHOW_LARGE,
  SHOW_NEXT_STEP,
  SHOW_READINGS,
} from '#words/client.ts';
import { all, make, setText } from './dom.ts';
import { enlarge } from './enlarge.ts';

export const mountProjector = (root: HTMLElement, until: AbortSignal): void => {
  const shown = all(root, 'article > figure.live, article > .example');
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
    return element ? all(element, '.steps > li:not(.told)') : [];
  };
  const tell = () => {
    untold()[0]?.classList.add('told');
    offerStep();
  };
  const offerStep = () => {
    const done = untold().length === 0;
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

  const go = (next: number) => {
    const element = shown[next];
    if (!element) return;
    leave();
    at = next;
    element.classList.add('projected');
    for (const li of all(element, '.steps > li')) li.classList.remove('told');
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
    shrink = () => {};
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

  for (const [index, element] of shown.entries()) {
    const open = make('button', { type: 'button', class: 'plain project' }, SHOW_LARGE);
    open.addEventListener('click', () => {
      back = open;
      go(index);
    });
    // Beside the title of a calculation, in the foot of a figure.
    const title = element.querySelector(':scope > h3');
    if (title) title.after(open);
    else (element.querySelector('.foot-line') ?? element).append(open);
  }

  const press = (event: KeyboardEvent) => {
    if (at < 0 || event.ctrlKey || event.altKey || event.metaKey) return;
    if (event.key === 'Escape') return close();
    const busy =
      event.target instanceof Element && event.target.closest('input, textarea, select, [role=slider], details');
    if (busy) return;
    const way =
      event.key === 'ArrowRight' || event.key === 'PageDown'
        ? 1
        : event.key === 'ArrowLeft' || event.key === 'PageUp'
          ? -1
          : 0;
    if (event.key === 'ArrowDown') {
      tell();
      read(false);
    } else if (event.key === 'ArrowUp') read(true);
    else if (way !== 0) go(at + way);
    else return;
    event.preventDefault();
  };
  document.addEventListener('keydown', press, { signal: until });
  until.addEventListener('abort', close);
};
