/** A tablet, upright and on its side, as class rooms have them: pages fit it, what is tapped is large enough for a finger, and a finger works them. */
import { describe, expect, it } from 'vitest';
import { these } from '../support/deep.ts';
import { needs } from '../support/engines.ts';
import { cutOff, illLettered, outOfOrder, tooSmall, tooWide } from '../support/layout-checks.ts';
import {
  fieldIn,
  figure,
  pageNames,
  readThrough,
  sentence,
  settled,
  shown,
  useBrowser,
  words,
} from '../support/page.ts';

const { visit } = useBrowser();

const TABLETS = [
  { width: 820, height: 1180 },
  { width: 1180, height: 820 },
] as const;
/** The front page, a plot beside a section, a plan with tables, papers. */
const KINDS = ['index.html', 'two-screws.html', 'three-feet.html', 'class-material.html'];

describe('a tablet', () => {
  for (const name of these(pageNames(), KINDS))
    it(`${name} fits it both ways round, unfolded too`, async () => {
      const { page } = await visit(name, { viewport: TABLETS[0], hasTouch: true, fresh: true });
      await readThrough(page);
      for (const tablet of TABLETS) {
        await page.setViewportSize(tablet);
        await settled(page);
        const at = `${tablet.width} px wide`;
        expect.soft(await tooWide(page), at).toBe('');
        expect.soft(await tooSmall(page), at).toEqual([]);
        expect.soft(await cutOff(page), at).toEqual([]);
        expect.soft(await illLettered(page), at).toEqual([]);
        expect.soft(await outOfOrder(page), at).toEqual([]);
        await page.evaluate(() => {
          for (const fold of document.querySelectorAll<HTMLDetailsElement>('main details')) fold.open = true;
        });
        await settled(page);
        expect.soft(await tooWide(page), `${at}, unfolded`).toBe('');
        expect.soft(await tooSmall(page), `${at}, unfolded`).toEqual([]);
      }
    });

  for (const tablet of TABLETS)
    it(`${tablet.width} px wide is worked by taps: a fold, a step, a choice and the units`, async (context) => {
      needs(context, 'touch');
      const { page } = await visit('two-screws.html', { viewport: tablet, hasTouch: true, fresh: true });
      const place = await shown(figure(page, 'section'), true, false);
      await place.locator('[data-group=threads] > summary').tap();
      await settled(page);
      const A = fieldIn(place, /thread A/i);
      expect(await A.isVisible()).toBe(true);
      const before = await sentence(place);
      await place.getByRole('button', { name: 'thread A, base to turned part: next larger standard thread' }).tap();
      await settled(page);
      expect(await A.inputValue()).not.toBe('M10×1.5');
      expect(await sentence(place)).not.toBe(before);
      await place.locator('[data-group=arrangement] > summary').tap();
      await settled(page);
      await place.getByLabel('nested').tap();
      await settled(page);
      expect(await words(place.locator('[data-group=arrangement] [data-state]'))).toBe('nested');
      const metric = await sentence(place);
      await page.locator('.units label', { hasText: 'inch' }).first().tap();
      // What is out of the window follows once it comes back.
      await place.scrollIntoViewIfNeeded();
      await settled(page);
      expect(await sentence(place)).not.toBe(metric);
    });
});
