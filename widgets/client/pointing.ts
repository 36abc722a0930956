/** Pointing at a quantity lights it wherever it stands on the page. */
import { all } from './dom.ts';

export const mountPointing = (root: HTMLElement): void => {
  let lit = '';
  const light = (symbol: string) => {
    if (symbol === lit) return;
    for (const place of all(root, '.lit')) place.classList.remove('lit');
    lit = symbol;
    if (symbol !== '') for (const place of all(root, `[data-sym="${CSS.escape(symbol)}"]`)) place.classList.add('lit');
  };
  const point = (event: Event) => {
    const at = event.target instanceof Element ? event.target.closest('[data-sym]') : null;
    light(at?.getAttribute('data-sym') ?? '');
  };
  root.addEventListener('pointerover', point);
  root.addEventListener('focusin', point);
};
