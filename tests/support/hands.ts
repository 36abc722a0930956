/** Two ways to work a figure without dragging, hovering or mixing them: keys alone, and single taps alone. */
import type { Locator } from 'playwright-core';
import type { Hands } from './chapter-tasks.ts';
import { settled } from './page.ts';

/** What has the focus, as assistive technology would call it. */
const focused = (
  place: Locator,
): Promise<{ inside: boolean; role: string; name: string; options: string[]; value: string }> =>
  place.evaluate((figure) => {
    const e = document.activeElement as
      | (HTMLElement & { labels?: NodeListOf<HTMLLabelElement>; value?: string })
      | null;
    const inside = e !== null && e !== figure && figure.contains(e);
    const radios = e?.matches('input[type=radio]') ? e.closest('fieldset')?.querySelectorAll('input') : undefined;
    return {
      inside,
      role: e?.getAttribute('role') ?? '',
      name: (e?.getAttribute('aria-label') ?? e?.labels?.[0]?.textContent ?? e?.textContent ?? '').trim(),
      options: [...(radios ?? [])].map((radio) => radio.value),
      value: e?.value ?? '',
    };
  });

/** Tab from the head of the figure until something there is what is looked for. */
export const tabTo = async (
  place: Locator,
  found: (at: Awaited<ReturnType<typeof focused>>) => boolean,
  what: string,
): Promise<void> => {
  const { keyboard } = place.page();
  await place.evaluate((figure: HTMLElement) => {
    figure.tabIndex = -1;
    figure.focus({ preventScroll: true });
  });
  for (let i = 0; i < 250; i++) {
    await keyboard.press('Tab');
    const at = await focused(place);
    if (!at.inside) break;
    if (found(at)) return;
  }
  throw new Error(`Tab comes to no ${what}`);
};

const same = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();

export const keys = (place: Locator): Hands => {
  const { keyboard } = place.page();
  return {
    step: async (label, by) => {
      await tabTo(place, ({ name, role }) => role === '' && same(name, label), `field “${label}”`);
      for (let i = 0; i < Math.abs(by); i++) await keyboard.press(by > 0 ? 'ArrowUp' : 'ArrowDown');
      await settled(place.page());
    },
    choose: async (option) => {
      await tabTo(place, ({ options }) => options.includes(option), `choice of “${option}”`);
      for (let i = 0; i < 12 && (await focused(place)).value !== option; i++) await keyboard.press('ArrowDown');
      await settled(place.page());
    },
    press: async (button) => {
      await tabTo(place, ({ name }) => name.startsWith(button), `button “${button}”`);
      await keyboard.press('Enter');
      await settled(place.page());
    },
  };
};

export const taps = (place: Locator): Hands => ({
  step: async (label, by) => {
    // A field of threads goes to the next one larger, every other a step more.
    const words =
      by > 0 ? /: (?:one step more|next larger standard thread)$/ : /: (?:one step less|next smaller standard thread)$/;
    const all = place.getByRole('button', { name: words });
    const names = await all.evaluateAll((found) => found.map((b) => b.getAttribute('aria-label') ?? ''));
    const at = names.findIndex((name) => same(name.replace(words, ''), label));
    if (at < 0) throw new Error(`no buttons beside “${label}”`);
    const { mouse } = place.page();
    await all.nth(at).scrollIntoViewIfNeeded();
    const box = await all.nth(at).boundingBox();
    if (!box) throw new Error(`the buttons beside “${label}” are not to be seen`);
    await mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    for (let i = 0; i < Math.abs(by); i++) {
      await mouse.down();
      await mouse.up();
    }
    await settled(place.page());
  },
  choose: async (option) => {
    await place
      .locator('fieldset label')
      .filter({ hasText: new RegExp(`^${option}$`) })
      .first()
      .click();
    await settled(place.page());
  },
  press: async (button) => {
    await place.getByRole('button', { name: button }).first().click();
    await settled(place.page());
  },
});
