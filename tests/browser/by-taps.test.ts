/**
 * Every figure worked by single taps alone: no dragging, no hovering, no key (WCAG 2.2, 2.5.7). The chapter's own task, and
 * whatever can be dragged.
 */
import { expect, it } from 'vitest';
import { howMany } from '../support/deep.ts';
import { doTasks } from '../support/do-tasks.ts';
import { taps } from '../support/input-modes.ts';
import { figure, NARROW, settled, shown, useBrowser, words } from '../support/page.ts';

const { visit } = useBrowser();

doTasks('single taps alone', visit, taps, (place, _drag, field, by) => taps(place).step(field, by));

it('moves every mark of the plan of a plate by tapping it and then where it is to go', async () => {
  const { page } = await visit('three-feet.html', { viewport: NARROW });
  const place = await shown(figure(page, 'levelling-plate'));
  const marks = place.locator('[data-handle]');
  const told = place.locator('[data-part=picked]');
  const plan = place.locator('.plate-plan');
  for (let i = 0; i < Math.min(await marks.count(), howMany(2, 100)); i++) {
    const mark = marks.nth(i);
    const [name, before] = [await mark.getAttribute('aria-label'), await mark.getAttribute('aria-valuetext')];
    await mark.locator('[data-mark]').click();
    await settled(page);
    expect.soft(await words(told)).toContain(`${name?.replace(/\u00a0/g, ' ')}: tap its new place`);
    expect.soft(await mark.getAttribute('aria-valuetext'), 'a tap alone moves nothing').toBe(before);
    const box = await plan.boundingBox();
    if (!box) throw new Error('no plan');
    await page.mouse.move(box.x + box.width * 0.42, box.y + box.height * (0.5 + 0.02 * i));
    await page.mouse.down();
    await page.mouse.up();
    await settled(page);
    expect.soft(await mark.getAttribute('aria-valuetext'), name ?? '').not.toBe(before);
    expect.soft(await words(told), 'nothing waits any more').toBe('');
    await page.evaluate(() => {
      for (const b of document.querySelectorAll('button')) if (/own numbers/.test(b.textContent ?? '')) b.click();
    });
    await settled(page);
  }
});

it('leaves a mark of the plan that is tapped twice where it is', async () => {
  const { page } = await visit('three-feet.html');
  const place = await shown(figure(page, 'levelling-plate'));
  const foot = place.locator('[data-handle="foot-2"]');
  const before = await foot.getAttribute('aria-valuetext');
  await foot.locator('[data-mark]').click();
  await foot.locator('[data-mark]').click();
  await settled(page);
  expect(await words(place.locator('[data-part=picked]'))).toBe('');
  const plan = await place.locator('.plate-plan').boundingBox();
  if (!plan) throw new Error('no plan');
  await page.mouse.move(plan.x + 12, plan.y + 12);
  await page.mouse.down();
  await page.mouse.up();
  await settled(page);
  expect(await foot.getAttribute('aria-valuetext')).toBe(before);
});
