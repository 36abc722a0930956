/**
 * What a symbol is: pointing at it, tapping it or coming to it by keys shows its name, unit, value here and where it was met first.
 * One symbol of the page is a stop for Tab; the arrow keys go on from it to all others, so that a page full of algebra is no
 * obstacle to those who pass it by keys. Enter goes to where it was met, Escape closes.
 */
import { metFirst, SYMBOL_CARD, SYMBOLS_BY_KEYS, symbolValue } from '#words/client.ts';
import { symbolUnit } from '#words/page.ts';
import { fieldUnit } from '../assembly/numbers.ts';
import { runSteps } from '../assembly/steps.ts';
import { isSymbol, type SymbolName, symbolFact } from '../engine/index.ts';
import { formatOf, show } from '../input/format.ts';
import type { PageModel } from '../page/model.ts';
import { make } from './dom.ts';
import type { Store } from './store.ts';

/** A pointer that only passes over a symbol asks nothing, ms. */
const REST = 250;
/** Time to reach the card with the pointer, ms. */
const LEAVE = 300;
const PLACES = 'main math [data-sym]';

export const mountSymbolCards = (
  root: HTMLElement,
  model: PageModel,
  store: Store,
  announce: (text: string) => void,
  until: AbortSignal,
): void => {
  const card = make('div', { class: 'symbol-card', role: 'note', 'aria-label': SYMBOL_CARD });
  card.hidden = true;
  root.append(card);
  let at: Element | undefined;
  let timer = 0;

  const symbols = () => [...root.querySelectorAll<MathMLElement>(PLACES)].filter((place) => place.checkVisibility());
  /** The one that Tab comes to. */
  const makeStop = (place: MathMLElement | undefined) => {
    for (const other of root.querySelectorAll(`${PLACES}[tabindex="0"]`))
      if (other !== place) other.setAttribute('tabindex', '-1');
    place?.setAttribute('tabindex', '0');
  };
  // Whether it is to be seen is asked of its folds, since asking the browser would have the whole page laid out.
  const first = [...root.querySelectorAll<MathMLElement>(PLACES)].find(
    (place) => !place.closest('details:not([open])'),
  );
  if (!first) return;
  makeStop(first);

  const hide = () => {
    window.clearTimeout(timer);
    if (!card.hidden) card.hidden = true;
    at = undefined;
  };
  const showAt = (place: Element) => {
    window.clearTimeout(timer);
    const name = place.getAttribute('data-sym') ?? '';
    if (!isSymbol(name) || at === place) return;
    at = place;
    const value = valueAt(place, name, model, store);
    const unit = symbolUnit(fieldUnit(name, store.view() === 'inch' ? 'inch' : 'metric'));
    const met = model.met?.[name];
    card.replaceChildren(
      make('p', { class: 'symbol-name' }, mathOf(place), ' ', symbolFact(name).says),
      make('p', {}, value === undefined ? unit : symbolValue(unit, value.text, value.where)),
      ...(met ? [make('p', {}, make('a', { href: met[0] }, metFirst(met[1])))] : []),
    );
    card.hidden = false;
    const box = place.getBoundingClientRect();
    const { width, height } = card.getBoundingClientRect();
    const left = Math.max(8, Math.min(box.left, document.documentElement.clientWidth - width - 8));
    const below = box.bottom + 6 + height < innerHeight || box.top < height + 6;
    card.style.left = `${left + scrollX}px`;
    card.style.top = `${(below ? box.bottom + 6 : box.top - height - 6) + scrollY}px`;
  };
  const later = (act: () => void, ms: number) => {
    window.clearTimeout(timer);
    timer = window.setTimeout(act, ms);
  };

  const symbolOf = (event: Event): MathMLElement | undefined => {
    const place = event.target instanceof Element ? event.target.closest<MathMLElement>('[data-sym]') : null;
    return place?.closest('main math') ? place : undefined;
  };
  root.addEventListener('pointerover', (event) => {
    if (event.pointerType !== 'mouse') return;
    const place = symbolOf(event);
    if (place) later(() => showAt(place), REST);
    else if (event.target instanceof Element && card.contains(event.target)) window.clearTimeout(timer);
    else if (!card.hidden && document.activeElement !== at) later(hide, LEAVE);
  });
  root.addEventListener('click', (event) => {
    const place = symbolOf(event);
    if (place) {
      makeStop(place);
      place.focus({ preventScroll: true });
      showAt(place);
    } else if (!(event.target instanceof Element && card.contains(event.target))) hide();
  });
  root.addEventListener('focusin', (event) => {
    const place = symbolOf(event);
    if (place) {
      showAt(place);
      announce(`${card.textContent ?? ''} ${SYMBOLS_BY_KEYS}`);
    } else if (!(event.target instanceof Element && card.contains(event.target))) hide();
  });
  root.addEventListener('keydown', (event) => {
    if (event.key === 'Escape' && !card.hidden) {
      const back = card.contains(document.activeElement) ? (at as MathMLElement | undefined) : undefined;
      back?.focus();
      hide();
      return;
    }
    const place = symbolOf(event);
    if (!place || event.altKey || event.ctrlKey || event.metaKey) return;
    if (event.key === 'Enter') card.querySelector('a')?.focus();
    else {
      const way = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key] ?? 0;
      const every = symbols();
      const next = way === 0 ? undefined : every[every.indexOf(place) + way];
      if (way === 0) return;
      if (next) {
        makeStop(next);
        next.focus();
      }
    }
    event.preventDefault();
  });
  window.addEventListener('resize', hide, { signal: until });
  store.onChange(hide);
};

/** The sign alone, as it stands there. */
const mathOf = (place: Element): Element => {
  const math = document.createElementNS('http://www.w3.org/1998/Math/MathML', 'math');
  const sign = place.cloneNode(true) as Element;
  sign.removeAttribute('tabindex');
  sign.removeAttribute('data-sym');
  math.append(sign);
  return math;
};

/** What the symbol is worth where it stands: in its example or figure, or else in the first of the page that has it. */
const valueAt = (
  place: Element,
  name: SymbolName,
  model: PageModel,
  store: Store,
): { text: string; where: string } | undefined => {
  const example = place.closest<HTMLElement>('[data-example]');
  const examples = [...model.examples].sort(
    (a, b) => Number(b.id === example?.dataset.example) - Number(a.id === example?.dataset.example),
  );
  for (const { id, set, steps } of examples) {
    const outcome = runSteps(steps, store.scope(set)).find((_, i) => steps[i]?.as === name);
    const value = outcome?.ok ? outcome.value : store.scope(set)[name];
    if (value === undefined) continue;
    const digits = steps.find((step) => step.as === name)?.digits;
    const title = document.querySelector(`[data-example="${CSS.escape(id)}"] .tag`)?.textContent ?? '';
    return { text: show(value, formatOf(symbolFact(name), digits), store.view()), where: title };
  }
  for (const { id } of model.sets) {
    const value = store.scope(id)[name];
    if (value === undefined) continue;
    const title = document.querySelector(`figure[data-set="${CSS.escape(id)}"] .tag`)?.textContent ?? '';
    return { text: show(value, formatOf(symbolFact(name)), store.view()), where: title };
  }
  return undefined;
};
