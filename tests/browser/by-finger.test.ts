/**
 * A finger on a phone: swiping down a page changes nothing on the way, wherever the swipe begins, and what can be dragged still
 * can be.
 */

import { describe, expect, it } from 'vitest';
import { inDeep, some, these } from '../support/deep.ts';
import type { Locator, Page, Point } from '../support/driven.ts';
import { needs } from '../support/engines.ts';
import { fingerOn, PHONE } from '../support/finger.ts';
import { figure, pageNames, readThrough, settled, shown, useBrowser, written } from '../support/page.ts';

const { visit } = useBrowser();

/** Whatever is dragged: it tells so to assistive technology, or by the mouse’s pointer. */
const CONTROLS = '[role=slider], [data-plane], [data-wish]';
/** A knob, a curve and a map, which every run tries; a deep run tries all pages. */
const KINDS = ['two-screws.html', 'how-much-friction.html', 'finding-a-pair.html'];
/** So many there are, so that none is overlooked. */
const AT_LEAST = 20;

/** Everything a reader could have changed. */
const numbersOf = (page: Page): Promise<string[]> =>
  page.evaluate(() => [
    ...[...document.querySelectorAll<HTMLInputElement>('main input, main textarea')].map((e) =>
      e.type === 'radio' ? `${e.checked}` : e.value,
    ),
    ...[...document.querySelectorAll('[role=slider]')].map(
      (e) => `${e.getAttribute('aria-label')} ${e.getAttribute('aria-valuetext')}`,
    ),
  ]);

/** Puts a control where a thumb finds it, and says where its middle is: of what is seen of it. */
const middle = (control: Locator): Promise<Point> =>
  control.evaluate(async (e) => {
    const frame = () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
    for (let i = 0; i < 2; i++) {
      scrollBy(0, e.getBoundingClientRect().top - 450);
      await frame();
    }
    const { left, right, top, height } = e.getBoundingClientRect();
    return { x: (Math.max(0, left) + Math.min(innerWidth, right)) / 2, y: top + height / 2 };
  });

describe('a swipe down the page', () => {
  /** How many controls were tried on each page. */
  const tried = new Map<string, number>();
  for (const name of these(pageNames(), KINDS))
    it(`${name}: that begins on what can be dragged scrolls, and changes no number and no address`, async (context) => {
      needs(context, 'protocol');
      const { page } = await visit(name, PHONE);
      await readThrough(page);
      const finger = await fingerOn(page);
      const address = page.url();
      const before = await numbersOf(page);
      let count = 0;
      for (const control of await page.locator(CONTROLS).all()) {
        if (!(await control.isVisible())) continue;
        const what = await control.evaluate((e) => e.getAttribute('aria-label') ?? e.outerHTML.slice(0, 60));
        const from = await middle(control);
        const top = await page.evaluate(() => scrollY);
        await finger.pull(from, { x: 0, y: -250 }, { steps: 6 });
        expect.soft((await page.evaluate(() => scrollY)) - top, what).toBeGreaterThan(150);
        expect.soft(await numbersOf(page), what).toEqual(before);
        count++;
      }
      expect((await written(page)).href).toBe(address);
      tried.set(name, count);
    });

  it('was tried on everything that can be dragged', (context) => {
    needs(context, 'protocol');
    if (tried.size < pageNames().length) context.skip('not every page was tried');
    expect([...tried.values()].reduce((sum, count) => sum + count, 0)).toBeGreaterThanOrEqual(AT_LEAST);
  });

  // The drawing and the finger race each other, which a busy machine decides by chance.
  it('stops no drawing that moves by itself', inDeep, async (context) => {
    needs(context, 'protocol');
    const { page } = await visit('turns-lost.html', { ...PHONE, reducedMotion: 'no-preference' });
    const place = await shown(figure(page, 'reversal-loop'));
    const knob = place.locator('[data-knob]');
    const from = await middle(knob);
    const finger = await fingerOn(page);
    await place.locator('[data-go=out]').evaluate((button: HTMLElement) => button.click());
    await finger.pull(from, { x: 0, y: -100 });
    const out = Number(await knob.getAttribute('aria-valuenow'));
    // It goes on, unless on a slow machine it has come to its end under the finger.
    await page.waitForFunction((from) => {
      const model = JSON.parse(document.querySelector('#page-model')?.textContent ?? '{}') as {
        sets: { inputs: { name: string; start: string }[] }[];
      };
      const end = model.sets.flatMap((s) => s.inputs).find((i) => i.name === 'n_o')?.start ?? '';
      const knob = document.querySelector('[data-figure=reversal-loop] [data-knob]');
      const now = Number(knob?.getAttribute('aria-valuenow'));
      return now > from || now >= Number.parseFloat(end);
    }, out);
  });
});

describe('a finger', () => {
  const open = async (address: string, widget: string, control: string) => {
    const { page } = await visit(address, PHONE);
    const place = await shown(figure(page, widget));
    const found = place.locator(control).first();
    const finger = await fingerOn(page);
    const at = await middle(found);
    const stage = place.locator('[data-stage]').first();
    const height = () => stage.evaluate((e) => e.getBoundingClientRect().top);
    const top = await height();
    return {
      page,
      finger,
      at,
      value: async () => {
        await settled(page);
        const told = found.locator('xpath=descendant-or-self::*[@role="slider"]');
        return Number(await told.first().getAttribute('aria-valuenow'));
      },
      /** How far the picture went under the finger; the page itself may scroll, to hold it there when lines above come or go. */
      scrolled: async () => top - (await height()),
    };
  };

  for (const [address, widget, control] of some(2, [
    ['how-much-friction.html', 'friction-curve', '[data-plane]'],
    ['lead-error.html', 'lead-error', '[data-slider=eps_A]'],
    ['preload-and-lock.html', 'force-chain', '[data-slider]'],
    ['which-flank.html', 'flanks-under-load', '[data-push]'],
  ] as const))
    it(`sets what runs sideways by a tap or a sideways pull: ${widget}`, async (context) => {
      needs(context, 'protocol');
      const { finger, at, value, scrolled } = await open(address, widget, control);
      await finger.tap({ x: at.x - 60, y: at.y });
      const tapped = await value();
      await finger.tap({ x: at.x + 60, y: at.y });
      expect(await value(), 'farther right').toBeGreaterThan(tapped);
      await finger.pull(at, { x: -90, y: 30 });
      expect(await value(), 'pulled to the left').toBeLessThan(tapped);
      expect(Math.abs(await scrolled())).toBeLessThan(6);
    });

  it(
    'puts back what it had pulled when the browser takes the pull away, or a second finger comes',
    inDeep,
    async (context) => {
      needs(context, 'protocol');
      const { page, finger, at, value } = await open('lead-error.html', 'lead-error', '[data-slider=eps_A]');
      const [before, numbers] = [await value(), await numbersOf(page)];
      for (const end of ['touchCancel', 'second'] as const) {
        await finger.send('touchStart', at);
        await finger.along(at, { x: 70, y: 0 }, 8);
        expect(await value(), 'pulled').not.toBe(before);
        const there = { x: at.x + 70, y: at.y };
        if (end === 'touchCancel') await finger.send('touchCancel');
        else {
          await finger.send('touchStart', there, { x: there.x, y: there.y + 90 });
          await finger.send('touchEnd');
        }
        expect(await value(), end).toBe(before);
        expect(await numbersOf(page), end).toEqual(numbers);
      }
    },
  );

  it('turns the knob by a pull that begins sideways, any way once it rests on it, and not by a tap', async (context) => {
    needs(context, 'protocol');
    const { finger, at, value, scrolled } = await open('two-screws.html', 'section', '[data-knob]');
    const before = await value();
    await finger.tap({ x: at.x, y: at.y - 55 });
    expect(await value(), 'tapped').toBe(before);
    // From twelve o’clock to the right is clockwise.
    await finger.pull({ x: at.x, y: at.y - 55 }, { x: 55, y: 30 });
    const pulled = await value();
    expect(pulled).toBeGreaterThan(before + 0.1);
    // From three o’clock down is clockwise too.
    await finger.pull({ x: at.x + 55, y: at.y }, { x: -20, y: 55 }, { rests: true });
    expect(await value()).toBeGreaterThan(pulled + 0.1);
    expect(Math.abs(await scrolled())).toBeLessThan(6);
  });

  it('drags the wish across the map by its line, and the map stays', inDeep, async (context) => {
    needs(context, 'protocol');
    const { page, finger, at, scrolled } = await open('finding-a-pair.html', 'pair-map', '[data-wish] .grip');
    const before = await numbersOf(page);
    await finger.tap(at);
    await settled(page);
    expect(await numbersOf(page), 'tapped').toEqual(before);
    await finger.pull(at, { x: 60, y: 10 });
    await settled(page);
    expect(await numbersOf(page)).not.toEqual(before);
    expect(Math.abs(await scrolled())).toBeLessThan(6);
  });
});
