/** The chapters on classes, fit and stroke in a browser: limits follow the class typed, the hexagon stops where the threads do, and the pages read without script. */
import { describe, expect, it } from 'vitest';
import { inDeep } from '../support/deep.ts';
import {
  beside,
  fieldIn,
  figure,
  NARROW,
  sentence,
  settled,
  shown,
  type,
  units,
  useBrowser,
  words,
} from '../support/page.ts';

const CLASSES = 'what-a-class-allows.html';
const FIT = 'does-it-fit.html';
const STROKE = 'how-far-it-goes.html';
const { visit } = useBrowser();

describe('limits of size', () => {
  it('follow the thread and the classes typed, in the units of the page', async () => {
    const { page } = await visit(CLASSES);
    const place = await shown(figure(page, 'thread-limits'));
    const field = fieldIn(place, /^Thread and fit/);
    expect(await sentence(place)).toContain('32 µm to 344 µm of clearance');
    await type(field, 'M10x1.5-4H/4h');
    expect(await sentence(place)).toContain('Class 4h in class 4H');
    await type(field, '3/8-16 UNC');
    await units(page, 'inch');
    // The switch stands at the top of the page; a figure out of view catches up when it comes back.
    await shown(place);
    await expect.poll(() => words(place.locator('.limits-table'))).toContain('0.3331 in');
    expect(await words(place.locator('.limits-table'))).not.toContain('mm');
    expect(await words(place.locator('.limits-notes'))).toContain('the usual one was taken');
  });

  it(
    'keep the last good picture and give one sentence for a class that does not exist, then recover',
    inDeep,
    async () => {
      const { page } = await visit(CLASSES);
      const place = await shown(figure(page, 'thread-limits'));
      const field = fieldIn(place, /^Thread and fit/);
      await type(field, '8-36 UNF-1A');
      expect(await words(place.locator('[data-refusal]'))).toBe(
        'Read class 1A, which exists only for UNC and UNF threads of 1/4 in and larger: take 2A or 3A here. The picture keeps the last numbers that can be drawn.',
      );
      expect(await place.locator('.limits-whole').count()).toBe(1);
      await type(field, 'M10x1.5-6Q');
      expect(await beside(field)).toContain('not a tolerance class');
      await type(field, 'M10x1.5-6H/6g');
      expect(await words(place.locator('[data-refusal]'))).toBe('');
    },
  );
});

describe('the section with the reader’s lengths', () => {
  it('stops the hexagon where a thread does: keys turn it to the stop and no farther', async () => {
    const { page } = await visit(STROKE);
    const place = await shown(figure(page, 'fit-section'));
    const knob = place.getByRole('slider');
    await knob.focus();
    for (let i = 0; i < 6; i++) {
      await page.keyboard.press('Shift+ArrowUp');
      await settled(page);
    }
    expect(Number(await knob.getAttribute('aria-valuenow'))).toBeCloseTo(3.3, 2);
    expect(await words(place.locator('[data-read="clockwise"]'))).toBe('0');
    expect(await words(place.locator('[data-read="carried"]'))).toContain('9.53 mm');
    expect(await sentence(place)).not.toContain('does not go to');
    await page.keyboard.press('Home');
    await settled(page);
    expect(await words(place.locator('[data-read="clockwise"]'))).toBe('3.30');
  });

  it('says that turns typed beyond the stop are not to be had', inDeep, async () => {
    const { page } = await visit(STROKE);
    const place = await shown(figure(page, 'fit-section'));
    await type(fieldIn(place, /^Turns/), '9');
    expect(await sentence(place)).toMatch(/^It does not go to 9 turns: thread C has only its least engagement left\./);
  });

  it('locks when both threads are screwed home', inDeep, async () => {
    const { page } = await visit(STROKE);
    const place = await shown(figure(page, 'fit-section'));
    await place.getByLabel('both screwed home').check();
    await settled(page);
    expect(await sentence(place)).toContain('it can’t turn at all');
  });

  it('refuses M10 inside M12×1.75 and draws it in line', async () => {
    const { page } = await visit(FIT);
    const place = await shown(figure(page, 'fit-section'));
    await type(fieldIn(place, /^Thread A/), 'M12x1.75');
    await type(fieldIn(place, /^Thread C/), 'M10');
    expect(await words(place.locator('[data-refusal]'))).toContain('would be −0.07 mm');
    await place.getByLabel('in line').check();
    await settled(page);
    expect(await words(place.locator('[data-refusal]'))).toBe('');
    expect(await place.locator('.wall-lens').count()).toBe(0);
  });

  it('hatches the cut parts of every figure, also where another figure is out of view', inDeep, async () => {
    const { page } = await visit(FIT);
    const ids = await page.evaluate(() => [...document.querySelectorAll('pattern[id]')].map((p) => p.id));
    expect(new Set(ids).size).toBe(ids.length);
    const fills = await page.evaluate(() =>
      [...document.querySelectorAll('[data-shape][fill]')].map(
        (e) => /url\(#(.+)\)/.exec(e.getAttribute('fill') ?? '')?.[1] ?? '',
      ),
    );
    for (const id of fills) expect(ids).toContain(id);
  });
});

describe('the pages', () => {
  it('read without script: numbers, pictures and steps are printed', inDeep, async () => {
    for (const [name, ...found] of [
      [CLASSES, '8.500 mm'],
      [FIT, '−0.07 mm', '1.08 mm'],
      [STROKE, '6.60 turns', '577 µm'],
    ] as const) {
      const { page } = await visit(name, { javaScriptEnabled: false });
      const text = await words(page.locator('main'));
      for (const number of found) expect(text).toContain(number);
      expect(await page.locator('figure svg').count()).toBeGreaterThanOrEqual(1);
    }
  });

  it('do not scroll sideways on a small screen', inDeep, async () => {
    for (const name of [CLASSES, FIT, STROKE]) {
      const { page } = await visit(name, { viewport: NARROW });
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    }
  });
});
