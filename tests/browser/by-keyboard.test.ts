/** Every figure worked from the keyboard alone: the chapter's own task, and whatever can be dragged. */
import { expect, it } from 'vitest';
import { howMany } from '../support/deep.ts';
import { doTasks } from '../support/do-tasks.ts';
import { keys, tabTo } from '../support/input-modes.ts';
import { figure, settled, shown, useBrowser } from '../support/page.ts';

const { visit } = useBrowser();

doTasks('keys alone', visit, keys, async (place, drag, _field, by) => {
  await tabTo(place, ({ name, role }) => role === 'slider' && name === drag, `“${drag}”`);
  for (let i = 0; i < Math.abs(by); i++) await place.page().keyboard.press(by > 0 ? 'ArrowUp' : 'ArrowDown');
});

it('moves every mark of the plan of a plate by keys alone', async () => {
  const { page } = await visit('three-feet.html');
  const place = await shown(figure(page, 'levelling-plate'));
  const marks = place.locator('[data-handle]');
  for (let i = 0; i < Math.min(await marks.count(), howMany(2, 100)); i++) {
    const mark = marks.nth(i);
    const [name, before] = [await mark.getAttribute('aria-label'), await mark.getAttribute('aria-valuetext')];
    await tabTo(place, (at) => at.name === name, `“${name}”`);
    await page.keyboard.press('Shift+ArrowRight');
    await settled(page);
    expect.soft(await mark.getAttribute('aria-valuetext'), name ?? '').not.toBe(before);
  }
});
