/**
 * What a key asks of the browser, counted and not timed, so that a busy machine says the same: no new address and nothing stored while keys
 * come, no layout that a script waits for, and of a picture only what differs. What these cost is measured by `npm run bench -- frames`.
 */
import { expect, it } from 'vitest';
import type { Page } from '../support/driven.ts';
import { figure, shown, useBrowser } from '../support/page.ts';

const { visit } = useBrowser();

/** One of each kind: a knob, a slider under plots, fields beside a drawing, a sheet, bars, a loop with a knob. */
const FIGURES: readonly (readonly [page: string, widget: string, control: string])[] = [
  ['two-screws.html', 'section', '[role="slider"]'],
  ['lead-error.html', 'lead-error', '[role="slider"]'],
  ['tip-and-base.html', 'ball-in-socket', '.field.quantity input'],
  ['design-sheet.html', 'design-sheet', '.field.quantity input'],
  ['heat-and-creep.html', 'drift-bars', '.field.quantity input'],
  ['turns-lost.html', 'reversal-loop', '[role="slider"]'],
];
const KEYS = 8;

interface Counted {
  readonly addresses: number;
  readonly stored: number;
  readonly measured: readonly string[];
  /** Elements made anew in pictures, and how many stand in them. */
  readonly made: number;
  readonly stand: number;
}

const count = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const counted = { addresses: 0, stored: 0, measured: [] as string[], made: 0 };
    Object.assign(window, { counted });
    const replace = history.replaceState;
    history.replaceState = (...given) => {
      counted.addresses++;
      replace.apply(history, given);
    };
    const { setItem } = Storage.prototype;
    Storage.prototype.setItem = function (...given) {
      counted.stored++;
      setItem.apply(this, given);
    };
    const measures = (of: object, names: readonly string[]) => {
      for (const name of names) {
        const known = Object.getOwnPropertyDescriptor(of, name);
        if (!known) continue;
        const told = (work: (...given: unknown[]) => unknown) =>
          function (this: unknown, ...given: unknown[]) {
            counted.measured.push(name);
            return work.apply(this, given);
          };
        Object.defineProperty(of, name, {
          ...known,
          ...(known.get ? { get: told(known.get) } : { value: told(known.value) }),
        });
      }
    };
    measures(Element.prototype, [
      ...['getBoundingClientRect', 'getClientRects', 'clientWidth', 'clientHeight', 'scrollWidth', 'scrollHeight'],
      'scrollIntoView',
    ]);
    measures(HTMLElement.prototype, ['offsetWidth', 'offsetHeight', 'offsetTop', 'offsetLeft', 'innerText']);
    measures(SVGGraphicsElement.prototype, ['getBBox', 'getCTM', 'getScreenCTM']);
    measures(SVGTextContentElement.prototype, ['getComputedTextLength', 'getSubStringLength']);
    for (const stage of document.querySelectorAll('[data-stage]'))
      new MutationObserver((changes) => {
        for (const { addedNodes } of changes)
          for (const node of addedNodes)
            if (node instanceof Element) counted.made += 1 + node.querySelectorAll('*').length;
      }).observe(stage, { childList: true, subtree: true });
  });

const counted = (page: Page): Promise<Counted> =>
  page.evaluate(() => ({
    ...(window as unknown as { counted: Omit<Counted, 'stand'> }).counted,
    stand: document.querySelectorAll('[data-stage] *').length,
  }));

/** A key, and then a frame, so many times; the longest from one to the next, ms. */
const press = (page: Page, key: string, times: number): Promise<number> =>
  page.evaluate(
    async ({ key, times }) => {
      let longest = 0;
      for (let i = 0; i < times; i++) {
        const from = performance.now();
        document.activeElement?.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }));
        await new Promise((drawn) => requestAnimationFrame(() => setTimeout(drawn)));
        longest = Math.max(longest, performance.now() - from);
      }
      return longest;
    },
    { key, times },
  );

/** Numbers that have not changed for so long are at rest, ms: on a machine that takes as long over a frame, keys can't follow one another. */
const REST = 150;
const TRIES = 3;

for (const [name, widget, control] of FIGURES)
  it(`of ${widget} is a frame, and the address follows when the keys have rested`, async (context) => {
    for (let tried = 0; ; tried++) {
      const { page, close } = await visit(name, { fresh: true });
      const place = await shown(figure(page, widget), true, false);
      const before = await page.evaluate(() => location.href);
      await place.locator(control).first().focus();
      await page.waitForTimeout(400);
      await count(page);
      const longest = await press(page, 'ArrowUp', KEYS);
      const { addresses, stored, measured, made, stand } = await counted(page);
      await page.waitForFunction((was) => location.href !== was, before);
      await close();
      if (longest >= REST && tried < TRIES - 1) continue;
      if (longest >= REST) context.skip('this machine takes too long over a frame');
      expect({ addresses, stored, measured: [...new Set(measured)] }).toEqual({
        addresses: 0,
        stored: 0,
        measured: [],
      });
      expect(made, `elements made anew, of ${stand}`).toBeLessThan(0.1 * KEYS * stand);
      return;
    }
  });
