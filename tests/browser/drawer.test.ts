/** A drawer of several hundred parts in a browser: its search says how far it is, is ended by its button and taken up again, and nothing typed is lost. */
import { describe, expect, it } from 'vitest';
import { inChromium } from '../support/engines.ts';
import { fieldIn, figure, sentence, shown, type, useBrowser, words } from '../support/page.ts';

const { visit } = useBrowser();

const THREADS = ['M4', 'M5', 'M6', 'M8', 'M8x1', 'M10', 'M10x1.25', 'M12', 'M12x1.5', 'M16'];

/** Nuts of every thread in several heights, and studs from each thread to every larger one in many lengths: no two rows alike. */
const manyParts = (count: number): string => {
  const rows = THREADS.flatMap((thread) => [6, 8, 10, 14, 20].map((high) => `nut ${thread}, ${high} mm`));
  for (let long = 10; rows.length < count; long++)
    for (const [i, lower] of THREADS.entries())
      for (const upper of THREADS.slice(i + 1))
        if (rows.length < count) rows.push(`stud ${lower} ${long} mm, ${upper} ${long} mm`);
  return rows.join('\n');
};

describe('a drawer of 500 parts', () => {
  it('is searched in the background; its reader ends the search and takes it up again', inChromium, async () => {
    const { page } = await visit('from-your-parts.html', { fresh: true });
    const place = await shown(figure(page, 'drawer'));
    const field = fieldIn(place, /drawer|hardware/i).first();
    const before = await sentence(place);
    await type(field, manyParts(500));
    const button = place.locator('[data-act=search]');
    await expect.poll(() => button.isVisible()).toBe(true);
    await button.click();
    expect(await words(button)).toBe('Search again');
    expect(await place.textContent()).toMatch(/You stopped the search when \d+ % was done\./);
    // The field keeps what was typed, and the picture of before stands.
    expect((await field.inputValue()).split('\n')).toHaveLength(500);
    await button.click();
    await expect.poll(() => button.isVisible(), { timeout: 20_000 }).toBe(false);
    const after = await sentence(place);
    expect(after).not.toBe(before);
    expect(after).toContain('500');
  });
});
