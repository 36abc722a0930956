/** The chapters on preload, its strength and the lock, worked in the browser: choices, slider, typing, wrong input, units, without script. */

import { describe, expect, it } from 'vitest';
import { inDeep } from '../support/deep.ts';
import type { Locator } from '../support/driven.ts';
import {
  beside,
  fieldIn,
  figure,
  NARROW,
  sentence,
  sentenceWith,
  settled,
  shown,
  type,
  units,
  useBrowser,
  words,
} from '../support/page.ts';

/** Where each figure stands. */
const PAGES = {
  'force-chain': 'preload-and-lock.html',
  'spring-days': 'spring-strength.html',
  'lock-error': 'the-lock.html',
};
const { visit } = useBrowser();

const chain = async (): Promise<Locator> => {
  const { page } = await visit(PAGES['force-chain']);
  const place = await shown(figure(page, 'force-chain'));
  // The plots' own script has come when the picture answers.
  for (let i = 0; i < 100; i++) {
    // A page that comes back scrolls to where it was, away from what has the focus.
    // Drawn anew when its script arrives, so it is taken in one go.
    await page.evaluate(() => {
      const slider = document.querySelector<HTMLElement>('[data-slider="n"]');
      slider?.scrollIntoView({ block: 'center' });
      slider?.focus();
    });
    await settled(page);
    await page.keyboard.press('End');
    await settled(page);
    if ((await place.locator('[data-slider="n"]').getAttribute('aria-valuenow')) === '6') break;
    await page.waitForTimeout(50);
  }
  return place;
};
const choose = async (place: Locator, option: string): Promise<void> => {
  await place.getByRole('radio', { name: option, exact: true }).check();
  await settled(place.page());
};
const verdict = (place: Locator, thread: 'A' | 'C'): Promise<string> =>
  words(place.locator(`[data-verdict="${thread}"]`));

describe('force chain', () => {
  it('changes both verdicts as the spring is moved from part to part', async () => {
    const place = await chain();
    expect(await verdict(place, 'C')).toContain('✕ Thread C: the flanks open at 0 turns');
    await choose(place, 'base and carried');
    expect(await verdict(place, 'C')).toContain('✓ Thread C: the pressed flank of the carried part touches');
    expect(await verdict(place, 'A')).toContain('✓ Thread A: the pressed flank of the turned part touches');
    await choose(place, 'turned and carried');
    expect(await verdict(place, 'A')).toContain('✕ Thread A: the flanks open');
    expect(await sentence(place)).toContain('its ends move apart by 9.53 mm');
  });

  it('goes along the stroke by arrow keys and by dragging, and the spring shortens on the way', async () => {
    const place = await chain();
    const page = place.page();
    const slider = place.locator('[data-slider="n"]');
    const coils = () => place.locator('[data-path="coils"]').getAttribute('d');
    await slider.focus();
    await page.keyboard.press('Home');
    await settled(page);
    const before = await coils();
    await page.keyboard.press('ArrowRight');
    await settled(page);
    expect(Number(await slider.getAttribute('aria-valuenow'))).toBeCloseTo(1 / 6, 3);
    expect(await coils()).not.toBe(before);
    await slider.scrollIntoViewIfNeeded();
    const box = await slider.boundingBox();
    if (!box) throw new Error('no slider');
    await page.mouse.move(box.x + 2, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.up();
    await settled(page);
    expect(Number(await slider.getAttribute('aria-valuenow'))).toBeCloseTo(3, 0);
    expect(await words(place.locator('[data-slider-text="n"]'))).toMatch(
      /^3 turns, carried part \+263 µm, spring 21\.0 N$/,
    );
  });

  it('says what is wrong with loads the wrong way about and keeps the picture', inDeep, async () => {
    const place = await chain();
    await type(fieldIn(place, /Least load/), '50');
    expect(await words(place.locator('[data-refusal]'))).toContain(
      'The least load, 50.0 N, is above the most, 40.0 N: give the smaller first',
    );
    await expect(place.locator('.chain-section').count()).resolves.toBe(1);
    await type(fieldIn(place, /Least load/), '-20');
    expect(await words(place.locator('[data-refusal]'))).toBe('');
  });

  it('fits a narrow screen', inDeep, async () => {
    for (const [name, address] of Object.entries(PAGES)) {
      const { page } = await visit(address, { viewport: NARROW });
      await shown(figure(page, name));
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(NARROW.width);
    }
  });
});

describe('spring over days', () => {
  it('does not take a time without its unit', inDeep, async () => {
    const { page } = await visit(PAGES['spring-days']);
    const place = await shown(figure(page, 'spring-days'));
    const life = fieldIn(place, 'End of life');
    await type(life, '100');
    expect(await beside(life)).toContain('Read “100” without a unit of time, and the law needs one');
    await type(life, '100 d');
    await sentenceWith(place, 'After 100 d');
  });

  it('refuses a spring that starts below what must be left, and fits two readings', async () => {
    const { page } = await visit(PAGES['spring-days']);
    const place = await shown(figure(page, 'spring-days'));
    await sentenceWith(place, 'As stated: 30.0 N');
    await type(fieldIn(place, /Force when new/), '12 N');
    await page.waitForTimeout(50);
    await place.locator('[data-refusal]:not(:empty)').waitFor();
    expect(await words(place.locator('[data-refusal]'))).toContain('below the 19.0 N that must be left');
    await choose(place, 'fitted to two readings');
    await sentenceWith(place, 'Fitted to two readings');
  });
});

describe('lock', () => {
  it('follows the pair and the units', inDeep, async () => {
    const { page } = await visit(PAGES['lock-error']);
    const place = await shown(figure(page, 'lock-error'));
    await type(fieldIn(place, /Thread A/), 'M4x0.7');
    await type(fieldIn(place, /Thread C/), '8-36 UNF');
    expect(await sentenceWith(place, '3.88 flats')).toContain('µm');
    await units(page, 'inch');
    await shown(place);
    expect(await sentenceWith(place, 'tenths')).not.toContain('µm');
  });
});

describe('without script', () => {
  it('prints pictures, verdicts and tables', inDeep, async () => {
    for (const [name, address] of Object.entries(PAGES)) {
      const { page } = await visit(address, { javaScriptEnabled: false });
      const place = figure(page, name);
      expect(await place.locator('[data-stage] svg').count()).toBeGreaterThan(0);
      expect(await sentence(place)).toMatch(/\d.*\.$/);
      expect(await place.locator('[data-table] tbody tr').count()).toBeGreaterThan(2);
      if (name === 'force-chain') expect(await verdict(place, 'A')).toContain('the flanks open at 5.53 turns');
    }
  });
});
