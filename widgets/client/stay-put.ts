/**
 * A − or + that is tapped again and again stays under the finger. What is said above it may take a line more or less than before; the page is then
 * scrolled by as much, so that the next tap meets the same button.
 */
import type { Store } from './store.ts';

/** What a press changes is drawn within this, ms. */
const DRAWN = 600;

export const mountStayPut = (root: HTMLElement, store: Store): void => {
  let pressed: { readonly button: HTMLElement; readonly top: number; readonly at: number } | undefined;
  root.addEventListener('pointerdown', ({ target }) => {
    const button = target instanceof Element ? target.closest<HTMLElement>('button.step') : null;
    pressed = button ? { button, top: button.getBoundingClientRect().top, at: performance.now() } : undefined;
  });
  // A reader who scrolls meanwhile goes where they want to.
  for (const leaves of ['wheel', 'touchmove', 'keydown'] as const)
    root.addEventListener(
      leaves,
      () => {
        pressed = undefined;
      },
      { passive: true },
    );
  store.onDrawn(() => {
    // After the words of all figures.
    queueMicrotask(() => {
      if (!pressed || performance.now() - pressed.at > DRAWN) return;
      const moved = pressed.button.getBoundingClientRect().top - pressed.top;
      if (Math.abs(moved) < 1) return;
      const scroller = pressed.button.closest('.projected') ?? document.scrollingElement;
      scroller?.scrollBy({ top: moved, behavior: 'instant' });
    });
  });
};
