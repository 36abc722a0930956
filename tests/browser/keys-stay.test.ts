/** Where the reader’s keys are when the button they pressed goes away or is made anew: beside it, never at the head of the page. */

import { describe, expect, it } from 'vitest';
import { inDeep } from '../support/deep.ts';
import type { Page } from '../support/driven.ts';
import { settled, type, useBrowser, words } from '../support/page.ts';

const { visit } = useBrowser();

/** What has the focus: its words, its label, or its own name. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const at = document.activeElement as HTMLInputElement;
    return at === document.body
      ? 'nothing'
      : at.getAttribute('aria-label') || at.value || at.id || at.textContent || at.tagName;
  });
const pressOn = async (page: Page, place: ReturnType<Page['locator']>): Promise<void> => {
  await place.focus();
  await page.keyboard.press('Enter');
  await settled(page);
};

describe('the keys stay', () => {
  it('at the units when “Chapter’s own numbers” has done its work', async () => {
    const { page } = await visit('two-screws.html?foot.n=3');
    await pressOn(page, page.getByRole('button', { name: 'Chapter’s own numbers' }));
    expect(await focused(page)).toBe('metric');
  });

  it('in the list of designs when one is used or removed, and at the name when none is left', inDeep, async () => {
    const { page } = await visit('two-screws.html', { fresh: true });
    await page.locator('.designs summary').click();
    for (const name of ['One', 'Two']) {
      await page.getByLabel(/under the name/).fill(name);
      await page.getByRole('button', { name: 'Keep' }).click();
    }
    const use = page.locator('.design-list li').first().getByRole('button').first();
    await pressOn(page, use);
    expect(await focused(page)).toBe('In use');
    expect(await use.evaluate((e) => e === document.activeElement)).toBe(true);
    await pressOn(page, page.getByRole('button', { name: 'Remove One' }));
    expect(await focused(page)).toBe('Remove Two');
    await page.keyboard.press('Enter');
    await settled(page);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('design-name');
  });

  it('on the projector’s bar after the last step', async () => {
    const { page } = await visit('two-screws.html');
    await page.locator('.example .project').first().click();
    const step = page.getByRole('button', { name: 'Show the next step' });
    await step.focus();
    for (let i = 0; i < 20 && (await step.isVisible()); i++) await page.keyboard.press('Enter');
    expect(await focused(page)).toBe('The next one');
    await page.keyboard.press('Escape');
  });

  it('on the line of progress when it is erased', inDeep, async () => {
    const { page } = await visit('two-screws.html', { fresh: true });
    const exercise = page.locator('[data-exercise]').first();
    await type(exercise.locator('input[type=text]'), await words(exercise.locator('[data-answer]')));
    await exercise.getByRole('button', { name: 'Check' }).click();
    const erase = page.locator('.progress').getByRole('button', { name: 'Erase' });
    await erase.focus();
    await page.keyboard.press('Enter');
    await page.keyboard.press('Enter');
    expect(await focused(page)).toBe('Progress');
  });
});
