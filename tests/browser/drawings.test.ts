/**
 * The lettering of every drawing, in its opening state and at both ends of what its first handle sets: no letters on others or on an
 * arrowhead, none outside, none under 13 px, on a wide page and on a phone. And the colours of parts, which must differ in lightness.
 */
import { describe, expect, it } from 'vitest';
import { drawn } from '../support/deep.ts';
import type { Page } from '../support/driven.ts';
import { inChromium } from '../support/engines.ts';
import { illLettered } from '../support/layout-checks.ts';
import { pageNames, readThrough, settled, useBrowser } from '../support/page.ts';

const { visit } = useBrowser();

const SIZES = [
  { width: 1440, height: 900 },
  { width: 390, height: 844 },
];

/** Puts the first handle of every figure to an end: a slider there at once, a knob by whole turns until it stops or has made four. */
const toEnd = (page: Page, end: 'least' | 'most'): Promise<void> =>
  page.evaluate((end) => {
    for (const stage of document.querySelectorAll('[data-stage]')) {
      const handle = () => stage.querySelector('[role=slider]');
      const press = (key: string) => handle()?.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true }));
      if (!handle()?.matches('[data-knob]')) press(end === 'least' ? 'Home' : 'End');
      else for (let i = 0; i < (end === 'least' ? 8 : 4); i++) press(end === 'least' ? 'PageDown' : 'PageUp');
    }
  }, end);

describe('the lettering of drawings', () => {
  for (const name of drawn(3, pageNames()))
    it(
      `of ${name} stands free and is large enough, as it opens and at its ends, wide and narrow`,
      inChromium,
      async () => {
        const { page } = await visit(name, { fresh: true });
        await readThrough(page);
        for (const size of SIZES) {
          await page.setViewportSize(size);
          for (const end of [undefined, 'most', 'least'] as const) {
            if (end !== undefined) await toEnd(page, end);
            await settled(page);
            expect.soft(await illLettered(page), `${size.width} px, ${end ?? 'as it opens'}`).toEqual([]);
          }
        }
      },
    );
});

/** Relative luminance of a colour, by WCAG 2.2. */
const luminance = ([r, g, b]: readonly number[]): number =>
  [r, g, b].reduce((sum: number, v = 0, i) => {
    const share = v / 255;
    const linear = share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    return sum + linear * ([0.2126, 0.7152, 0.0722][i] ?? 0);
  }, 0);

describe('the colours of parts', () => {
  for (const colorScheme of ['light', 'dark'] as const)
    it(`differ from neighbour to neighbour by 1.6 : 1 in grey, ${colorScheme}`, inChromium, async () => {
      const { page } = await visit('two-screws.html', { colorScheme, fresh: true });
      const fills = await page.evaluate(() =>
        ['base', 'turned', 'carried'].map((role) => {
          const probe = document.createElement('i');
          probe.style.color = `var(--${role}-fill)`;
          document.body.append(probe);
          const { color } = getComputedStyle(probe);
          probe.remove();
          return (color.match(/[\d.]+/g) ?? []).slice(0, 3).map(Number);
        }),
      );
      const [base, turned, carried] = fills.map(luminance) as [number, number, number];
      expect((base + 0.05) / (turned + 0.05)).toBeGreaterThanOrEqual(1.6);
      expect((turned + 0.05) / (carried + 0.05)).toBeGreaterThanOrEqual(1.6);
    });
});
