/** A result of a worked example is asked backwards, told where it comes from and how sure it is: by keys, by taps, in a narrow window, by a link. */
import { describe, expect, it } from 'vitest';
import { inDeep } from '../support/deep.ts';
import type { Page } from '../support/driven.ts';
import { fieldIn, figure, NARROW, settled, shown, type, useBrowser, words, written } from '../support/page.ts';

const { visit } = useBrowser();

const foot = (page: Page) => page.locator('#example-foot-turn');
const result = (page: Page, symbol: string) => foot(page).locator(`[data-sym="${symbol}"][data-result]`).first();

describe('another result', () => {
  it('is typed by keys; what may give way stands there, one press takes it, one brings it back, and the link carries it', async () => {
    const { page } = await visit('two-screws.html?foot.n=1');
    await foot(page).scrollIntoViewIfNeeded();
    await foot(page).locator('[data-result][tabindex="0"]').focus();
    for (let i = 0; i < 5; i++) await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    const behind = foot(page).locator('.asked-back');
    await behind.waitFor();
    await page.keyboard.type('175 µm');
    await page.keyboard.press('Enter');
    const turns = behind.locator('[data-way=n] button').first();
    expect(await words(turns)).toBe('turns = 2 turns');
    await expect.poll(() => words(behind.locator('[data-way=A]'))).toMatch(/cannot: .*nearest/i);
    await turns.focus();
    await page.keyboard.press('Enter');
    await settled(page);
    expect(await words(result(page, 'z_c'))).toBe('= 175.0 µm');
    const link = await written(page);
    expect(link.searchParams.get('foot.n')).toBe('2');
    const other = await visit(`two-screws.html${link.search}`);
    expect(await words(result(other.page, 'z_c'))).toBe('= 175.0 µm');
    await behind.locator('.undo').focus();
    await page.keyboard.press('Enter');
    await settled(page);
    expect(await words(result(page, 'z_c'))).toBe('= 87.50 µm');
    expect((await written(page)).searchParams.get('foot.n')).toBe('1');
    await page.keyboard.press('Escape');
    expect(await behind.count()).toBe(0);
    expect(await page.evaluate(() => document.activeElement?.getAttribute('data-sym'))).toBe('z_c');
  });

  it('is typed by taps in a narrow window, which it does not widen; one that none can give has the nearest', async () => {
    const { page } = await visit('two-screws.html?foot.n=1', { viewport: NARROW });
    await result(page, 'Delta').scrollIntoViewIfNeeded();
    await result(page, 'Delta').click();
    const behind = foot(page).locator('.asked-back');
    await behind.locator('input').fill('0.1 mm');
    await behind.locator('.wish button').click();
    await expect.poll(() => words(behind.locator('[data-way=A]'))).toMatch(/gives .*own with a pitch of 1\.4875 mm/);
    await behind.locator('[data-way=C] button').first().click();
    await settled(page);
    expect(await words(behind.locator('.field-note'))).toMatch(/^Now thread C = /);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(NARROW.width);
  });

  it('that can’t be read says so beside its field', inDeep, async () => {
    const { page } = await visit('two-screws.html?foot.n=1');
    await result(page, 'z_c').click();
    const behind = foot(page).locator('.asked-back');
    for (const [text, says] of [
      ['quick', /“quick”/],
      ['3 N', /3 N/],
      ['175 µm ± 2 µm', /leave the ± out here/],
      ['175 µm and 2 turns', /more than one wish/],
      ['?', /what the result is to be/],
      ['', /Nothing was typed/],
    ] as const) {
      await behind.locator('input').fill(text);
      await behind.locator('.wish button').click();
      expect(await words(behind.locator('.field-note'))).toMatch(says);
      expect(await behind.locator('input').getAttribute('aria-invalid')).toBe('true');
      expect(await behind.locator('.ways li').count()).toBe(0);
    }
  });

  it('says where it comes from, each step with a link to where it is derived', async () => {
    const { page } = await visit('two-screws.html?foot.n=1');
    await result(page, 'z_c').click();
    const chain = foot(page).locator('.where-from');
    await chain.locator('summary').click();
    await chain.locator('li').nth(3).waitFor();
    expect(await chain.locator('li').count()).toBe(4);
    expect(await words(chain.locator('li').nth(1))).toMatch(
      /^Net lead = 87\.50 µm.*equation \(\d+\.\d\).*Source: Two helices/,
    );
    expect(await chain.locator('li a').first().getAttribute('href')).toMatch(/^two-screws\.html#/);
  });
});

describe('a number of a figure', () => {
  it('printed in a picture is asked under the picture and its fields, which stay where they are', async () => {
    const { page } = await visit('design-sheet.html');
    const sheet = await shown(figure(page, 'design-sheet'));
    const field = fieldIn(sheet, /wanted step/i);
    const before = await field.boundingBox();
    await sheet.locator('details:has([data-result=stroke]) > summary').click();
    await sheet.locator('[data-result=stroke]').click();
    const behind = sheet.locator('.asked-back');
    await behind.waitFor();
    const [box, after] = [await behind.boundingBox(), await field.boundingBox()];
    expect(after?.x).toBe(before?.x);
    expect(box?.y ?? 0).toBeGreaterThan((after?.y ?? Number.NaN) + (after?.height ?? 0));
  });

  it('is asked by keys, gives way and comes back; its ± stands under it', async () => {
    const { page } = await visit('two-screws.html?foot.n=2%20±%200.01&foot.A=M10x1.5%20±%201%20µm');
    const section = await shown(figure(page, 'section'));
    const carried = section.locator('[data-result=carried]');
    await section.locator('.doubt').first().waitFor();
    expect(await words(carried.locator('xpath=..'))).toMatch(/^\+175\.0 µm\s?\(175\.0 ± 2\.5\) µm$/);
    await section.locator('[data-result][tabindex="0"]').focus();
    for (let i = 0; i < 2; i++) await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    const behind = section.locator('.asked-back');
    await behind.waitFor();
    await page.keyboard.type('200 µm');
    await page.keyboard.press('Enter');
    await behind.locator('[data-way=n] button').click();
    await settled(page);
    expect(await words(carried)).toBe('+200.0 µm');
    await behind.locator('.undo').click();
    await settled(page);
    expect(await words(carried)).toBe('+175.0 µm');
    await behind.locator('.how-sure summary').click();
    await expect.poll(() => words(behind.locator('.shares li').first())).toMatch(/thread A ?84 %/);
    await behind.locator('.where-from summary').click();
    await expect.poll(() => words(behind.locator('.where-from'))).toMatch(/equation \(.*Source: Two helices/);
    await page.keyboard.press('Escape');
    expect(await behind.count()).toBe(0);
  });
});

describe('a ± behind a number', () => {
  it('gives every result its own, in the link too, with what it comes from', async () => {
    const { page } = await visit('two-screws.html?foot.n=1');
    const section = await shown(figure(page, 'section'));
    await type(fieldIn(section, /turns/i), '2 ± 0.01');
    await type(fieldIn(section, /thread A/i), 'M10x1.5 ± 1 µm');
    await foot(page).locator('.doubt').first().waitFor();
    await settled(page);
    // z = n Δ: 2 × 1 µm and 87.5 µm × 0.01, both flat, doubled: 2 √(2² + 0.875²)/√3 = 2.5.
    expect(await words(foot(page).locator('[data-step="5"] > .doubt'))).toBe('(175.0 ± 2.5) µm');
    const link = await written(page);
    expect(link.searchParams.get('foot.n')).toBe('2 ± 0.01');
    const other = await visit(`two-screws.html${link.search}`);
    await foot(other.page).locator('.doubt').first().waitFor();
    expect(await words(foot(other.page).locator('[data-step="5"] > .doubt'))).toBe('(175.0 ± 2.5) µm');
    await result(other.page, 'z_c').click();
    const sure = foot(other.page).locator('.how-sure');
    await sure.locator('summary').click();
    await expect
      .poll(() => words(sure))
      .toMatch(/k = 2\.00.*thread A ?84 %.*turns ?16 %.*Halve the ± of thread A first/s);
  });

  it('that is wrong says so beside its field, and the last good value stays', inDeep, async () => {
    const { page } = await visit('two-screws.html?foot.n=1');
    const section = await shown(figure(page, 'section'));
    const turns = fieldIn(section, /turns/i);
    for (const text of ['2 ± 0', '2 ± 9', '2 ± 3 N', '± 1', '2 ± 0.1, many readings', '2 ± 0.1, 1 reading']) {
      await type(turns, text);
      expect(await turns.getAttribute('aria-invalid'), text).toBe('true');
    }
    expect(await foot(page).locator('.doubt').count()).toBe(0);
  });
});

it('without script a result is plain text', async () => {
  const { page } = await visit('two-screws.html', { javaScriptEnabled: false });
  expect(await result(page, 'z_c').getAttribute('role')).toBe(null);
  expect(await words(result(page, 'z_c'))).toBe('= 43.75 µm');
});
