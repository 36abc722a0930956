/**
 * The lettering of every drawing, in its opening state and at both ends of what its first handle sets: no letters on others or on an
 * arrowhead, none outside, none under 13 px, on a wide page and on a phone. And the colours of parts, which must differ in lightness.
 */
import { parseHTML } from 'linkedom';
import { describe, expect, it } from 'vitest';
import { CHAPTERS, FOLDER } from '../support/chapters.ts';
import { drawn } from '../support/deep.ts';
import { inChromium } from '../support/engines.ts';
import { german } from '../support/german.ts';
import { expectGoodLettering } from '../support/letter-sizes.ts';
import { pageNames, readThrough, useBrowser } from '../support/page.ts';

const { visit } = useBrowser();
const ASSETS = { scripts: [], style: { addresses: [] }, icon: '', module: true };
const slugOf = (page: string): string => page.replace(/\.html$/, '');
const isChapter = (slug: string): boolean => CHAPTERS.some(({ file }) => file.endsWith(`-${slug}.md`));

describe('the lettering of drawings', () => {
  for (const name of drawn(3, pageNames()))
    it(
      `of ${name} stands free and is large enough, as it opens and at its ends, wide and narrow`,
      inChromium,
      async () => {
        const { page } = await visit(name, { fresh: true });
        await readThrough(page);
        await expectGoodLettering(page);
      },
    );
});

describe('the lettering of German drawings, whose words are longer', () => {
  // Their still pictures in the page of the English edition, which has the same styles; the built edition with its scripts is asked in a deep run (german.test.ts).
  for (const name of drawn(
    4,
    pageNames().filter((page) => isChapter(slugOf(page))),
  ))
    it(`of ${name} stands free and is large enough, wide and narrow`, inChromium, async () => {
      const { readPage, FIGURES } = await german();
      const { html = '' } = readPage(FOLDER, slugOf(name), FIGURES, new Map(), ASSETS) ?? {};
      const { page } = await visit(name, { fresh: true });
      await page.evaluate((main) => {
        const place = document.querySelector('main');
        if (place) place.innerHTML = main;
      }, parseHTML(html).document.querySelector('main')?.innerHTML ?? '');
      await expectGoodLettering(page, []);
    });
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
