/** The chapters of lead error and periodic error worked as a reader works it: slid by pointer and keys, linked, mistyped, without script. */

import { describe, expect, it } from 'vitest';
import { inDeep } from '../support/deep.ts';
import type { Locator } from '../support/driven.ts';
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
  written,
} from '../support/page.ts';

const { visit } = useBrowser();
const PAGES = { 'lead-error': 'lead-error.html', 'drunken-thread': 'periodic-error.html' };

const open = async (widget: keyof typeof PAGES, address = PAGES[widget], way = {}) => {
  const { page } = await visit(address, way);
  const place = await shown(figure(page, widget));
  await settled(page);
  return { page, place };
};

const rail = (place: Locator, name: string): Locator => place.locator(`[data-slider="${name}"]`);
const read = (place: Locator, key: string): Promise<string> => words(place.locator(`[data-read="${key}"]`));
const press = async (place: Locator, name: string, ...keys: string[]): Promise<void> => {
  await rail(place, name).focus();
  for (const key of keys) await place.page().keyboard.press(key);
  await settled(place.page());
};
/** Marks the drawn axes, to see later whether they were drawn anew. */
const markAxes = (place: Locator) =>
  place
    .locator('.chart')
    .first()
    .evaluate((e) => e.setAttribute('data-seen', 'yes'));
const axesKept = (place: Locator) =>
  place
    .locator('.chart')
    .first()
    .evaluate((e) => e.getAttribute('data-seen') === 'yes');

describe('lead-error', () => {
  it('slides by keys: field, sentence and drawing follow, the axes stay, the slider keeps the focus', async () => {
    const { page, place } = await open('lead-error');
    await markAxes(place);
    const before = await place.locator('[data-shape="off-real"]').getAttribute('d');
    await press(place, 'eps_A', 'ArrowLeft', 'ArrowLeft');
    expect(await fieldIn(place, 'Lead error of thread A').inputValue()).toBe('−0.12 %');
    expect(await sentence(place)).toContain('thread A 0.12 % short, thread C 0.1 % long');
    expect(await read(place, 'eps')).toBe('+3.87 %');
    expect(await place.locator('[data-shape="off-real"]').getAttribute('d')).not.toBe(before);
    expect(await axesKept(place)).toBe(true);
    expect(await page.evaluate(() => document.activeElement?.getAttribute('data-slider'))).toBe('eps_A');
    expect(await rail(place, 'eps_A').getAttribute('aria-valuetext')).toBe('−0.12\u00a0%');
    await press(place, 'eps_A', 'PageDown', 'Home');
    expect(await fieldIn(place, 'Lead error of thread A').inputValue()).toBe('−0.5 %');
    // The scale had to grow: drawn anew, with the focus still on the slider.
    expect(await page.evaluate(() => document.activeElement?.getAttribute('data-slider'))).toBe('eps_A');
  });

  it('slides by pointer, also while the scale under it is drawn anew', inDeep, async () => {
    const { page, place } = await open('lead-error');
    const box = await rail(place, 'eps_C').boundingBox();
    if (!box) throw new Error('no rail');
    await page.mouse.move(box.x + box.width * 0.6, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width * 0.8, box.y + box.height / 2, { steps: 4 });
    await settled(page);
    expect(await fieldIn(place, 'Lead error of thread C').inputValue()).toBe('0.3 %');
    await page.mouse.move(box.x + box.width + 50, box.y + 80, { steps: 4 });
    await settled(page);
    expect(await fieldIn(place, 'Lead error of thread C').inputValue()).toBe('0.5 %');
    await page.mouse.up();
    await page.mouse.move(box.x, box.y);
    await settled(page);
    expect(await fieldIn(place, 'Lead error of thread C').inputValue()).toBe('0.5 %');
  });

  it('linked, either error takes the other with it, by slider, field and button, and is not magnified', async () => {
    const { page, place } = await open('lead-error');
    await place.getByLabel('the same error').check();
    await settled(page);
    await settled(page);
    const [a, c] = [fieldIn(place, 'Lead error of thread A'), fieldIn(place, 'Lead error of thread C')];
    expect([await a.inputValue(), await c.inputValue()]).toEqual(['−0.1 %', '−0.1 %']);
    expect(await read(place, 'eps')).toBe('−0.100 %');
    await press(place, 'eps_C', 'End');
    expect([await a.inputValue(), await c.inputValue()]).toEqual(['0.5 %', '0.5 %']);
    expect(await read(place, 'eps')).toBe('+0.500 %');
    await type(c, '0.2');
    await settled(page);
    expect(await a.inputValue()).toBe('0.2 %');
    expect(await read(place, 'eps')).toBe('+0.200 %');
    await place.getByRole('button', { name: 'lead error of thread A: one step more' }).click();
    await settled(page);
    await settled(page);
    expect([await a.inputValue(), await c.inputValue()]).toEqual(['0.21 %', '0.21 %']);
    expect(await sentence(place)).toContain('The same error on both is not multiplied');
    await place.getByLabel('independent').check();
    await press(place, 'eps_A', 'Home');
    expect([await a.inputValue(), await c.inputValue()]).toEqual(['−0.5 %', '0.21 %']);
  });

  it(
    'linked, carries the error over while the pair can’t be drawn, and before the figure is seen',
    inDeep,
    async () => {
      const { page } = await visit(PAGES['lead-error']);
      const place = figure(page, 'lead-error');
      const [a, c] = [fieldIn(place, 'Lead error of thread A'), fieldIn(place, 'Lead error of thread C')];
      await place.evaluate((at) => {
        for (const fold of at.querySelectorAll('details')) fold.open = true;
      });
      await type(fieldIn(place, /^Thread C/), 'M10x1.5');
      await place.getByLabel('the same error').check();
      await type(a, '0.3');
      await settled(page);
      expect(await c.inputValue()).toBe('0.3 %');
      expect((await written(page)).searchParams.get('foot.eps_C')).toBe('0.3 %');
    },
  );

  it('keeps the last good numbers and says why a field is not in force', inDeep, async () => {
    const { place } = await open('lead-error');
    const field = fieldIn(place, 'Lead error of thread A');
    for (const [text, reason] of [
      ['banana', 'is not a number'],
      ['3', 'goes from −0.5 % to 0.5 % here'],
      ['2 mm', 'in mm; this takes %'],
    ] as const) {
      await type(field, text);
      expect(await beside(field)).toContain(reason);
      expect(await read(place, 'eps')).toBe('+3.53 %');
    }
    await type(fieldIn(place, /^Thread C/), 'M10x1.5');
    expect(await words(place.locator('[data-refusal]'))).toContain('The two leads are equal');
    expect(await place.locator('.chart').count()).toBe(2);
  });

  it('carries link and errors in the address, and follows the unit switch', inDeep, async () => {
    const { page, place } = await open(
      'lead-error',
      `${PAGES['lead-error']}?foot.errors=the+same+error&foot.eps_A=0.3+%25&foot.eps_C=0.3+%25`,
    );
    expect(await read(place, 'eps')).toBe('+0.300 %');
    await units(page, 'inch');
    // The switch is at the top of the page; out of view nothing is drawn.
    await shown(place);
    await settled(page);
    expect(await read(place, 'real')).toBe('3.455 thou');
    expect(await words(place.locator('.panel-name').first())).toContain('in thou');
    await press(place, 'eps_A', 'Home');
    expect((await written(page)).searchParams.get('foot.eps_C')).toBe('−0.5 %');
  });
});

describe('drunken-thread', () => {
  it('slides the amplitudes until it stops running back; hatching and words go, the axes stay', async () => {
    const { place } = await open('drunken-thread');
    expect(await words(place.locator('[data-word="rate-0"]'))).toBe('runs back');
    expect(await read(place, 'slowest')).toBe('−0.7276 µm');
    await markAxes(place);
    await press(place, 'a_A', 'ArrowLeft', 'ArrowLeft', 'ArrowLeft', 'ArrowLeft');
    expect(await fieldIn(place, 'Amplitude of thread A').inputValue()).toBe('0.42 µm');
    expect(await axesKept(place)).toBe(true);
    await press(place, 'a_A', 'Home');
    expect(await place.locator('[data-shape="place-back"]').getAttribute('d')).toBe('');
    expect(await place.locator('[data-shape="place-slow"]').getAttribute('d')).toBe('');
    expect(await words(place.locator('[data-word="rate-0"]'))).toBe('');
    expect(await sentence(place)).toContain('so it never stands still');
  });

  it(
    'half a turn of phase cancels equal waves; the turns walk the marks and name what it does there',
    inDeep,
    async () => {
      const { place } = await open('drunken-thread');
      const x = () => place.locator('[data-dot="rate"]').getAttribute('cx');
      const before = await x();
      await press(place, 'n', 'PageUp', 'PageUp');
      expect(await x()).not.toBe(before);
      expect(await read(place, 'here')).toMatch(/: moves on$/);
      await press(place, 'phi_C', 'End');
      expect(await fieldIn(place, 'Phase of thread C').inputValue()).toBe('0.5');
      expect(await read(place, 'slowest')).toBe('5.556 µm');
      expect(await read(place, 'run')).toBe('0 µm');
    },
  );

  it('steps its small fields by small steps', inDeep, async () => {
    const { page, place } = await open('drunken-thread');
    await place.getByRole('button', { name: 'amplitude of thread C: one step more' }).click();
    await place.getByRole('button', { name: 'phase of thread A: one step less' }).click();
    await settled(page);
    expect(await fieldIn(place, 'Amplitude of thread C').inputValue()).toBe('0.6 µm');
    expect(await fieldIn(place, 'Phase of thread A').inputValue()).toBe('−0.05');
  });
});

describe('the pages', () => {
  it('fit 360 px without scrolling sideways, with targets of 24 px', inDeep, async () => {
    const { page, place } = await open('drunken-thread', PAGES['drunken-thread'], { viewport: NARROW });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    for (const box of await rail(place, 'a_A').evaluateAll((all) => all.map((e) => e.getBoundingClientRect().height)))
      expect(box).toBeGreaterThanOrEqual(24);
  });

  it('read without script: pictures, sentences and tables stand, sliders do not', inDeep, async () => {
    for (const [widget, address] of Object.entries(PAGES)) {
      const { page } = await visit(address, { javaScriptEnabled: false });
      const place = figure(page, widget);
      expect(await place.locator('.chart').count()).toBe(2);
      expect(await place.locator('.sliders').isVisible()).toBe(false);
      expect((await sentence(place)).length).toBeGreaterThan(80);
    }
  });
});
