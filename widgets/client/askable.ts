/** Results that can be asked, by a tap or by keys: those of an example and those of a figure. */
import { ASK_BEHIND } from '#words/client.ts';
import { all } from './dom.ts';

const resultsIn = (place: HTMLElement) => all(place, '[data-result]');

/** Marks results that were written anew; a reader who was at one of them is there still. */
export const markResults = (place: HTMLElement): void => {
  const results = resultsIn(place);
  const stop = results.some(({ tabIndex }) => tabIndex === 0);
  for (const [i, result] of results.entries())
    if (!result.hasAttribute('role'))
      for (const [name, value] of Object.entries({
        role: 'button',
        tabindex: i === 0 && !stop ? '0' : '-1',
        'aria-expanded': 'false',
        title: ASK_BEHIND,
      }))
        result.setAttribute(name, value);
};

/**
 * One of the results is a stop for Tab, and arrow keys go on to the others, so that a page of examples is no obstacle to those who
 * pass it by keys.
 */
export const mountAskable = (place: HTMLElement, ask: (result: HTMLElement) => void): void => {
  const resultOf = ({ target }: Event) =>
    target instanceof Element ? target.closest<HTMLElement>('[data-result]') : null;
  markResults(place);
  place.addEventListener('click', (event) => {
    const result = resultOf(event);
    if (result) ask(result);
  });
  place.addEventListener('keydown', (event) => {
    const result = resultOf(event);
    if (!result || event.altKey || event.ctrlKey || event.metaKey) return;
    const way = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
    if (event.key === 'Enter' || event.key === ' ') ask(result);
    else if (way !== undefined) {
      const results = resultsIn(place);
      const next = results[results.indexOf(result) + way];
      if (!next) return;
      for (const other of results) other.tabIndex = other === next ? 0 : -1;
      next.focus();
    } else return;
    event.preventDefault();
  });
};
