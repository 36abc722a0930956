/** Two ways to work a figure without dragging, hovering or mixing them: keys alone, and single taps alone. */

import { LISTS } from '../../widgets/client/one-stop.ts';
import type { Hands } from './chapter-tasks.ts';
import type { Locator } from './driven.ts';
import { settled } from './page.ts';

/** A stop of Tab in a figure, as assistive technology would call it. */
interface Stop {
  readonly role: string;
  readonly name: string;
  readonly options: readonly string[];
  readonly value: string;
  /** Tab passes it over, and arrows come to it from the one of its list that is a stop. */
  readonly byArrow: boolean;
  /** Which list it is of; -1 for none. */
  readonly list: number;
}

/** The stops of a figure in their order, and which of them has the focus; `from`, if told, is given it first, or else the figure. */
const stopsOf = (place: Locator, from?: number): Promise<{ stops: Stop[]; at: number }> =>
  place.evaluate(
    (figure: HTMLElement, { start, LISTS }) => {
      const lists: Element[] = [];
      /** Of one list are those of one kind in one element: `client/one-stop.ts`. */
      const listOf = (e: Element): number => {
        const kind = LISTS.findIndex(([list, items]) => e.matches(items) && e.closest(list) !== null);
        const list = e.closest(LISTS[kind]?.[0] ?? 'none');
        if (!list) return -1;
        if (!lists.includes(list)) lists.push(list);
        return lists.indexOf(list) * LISTS.length + kind;
      };
      type Control = HTMLElement & { labels?: NodeListOf<HTMLLabelElement>; value?: string };
      const all = [
        ...figure.querySelectorAll<Control>('a[href], button, input, textarea, summary, [tabindex="0"]'),
      ].filter(
        (e) =>
          e.checkVisibility() &&
          (listOf(e) >= 0 || e.tabIndex >= 0) &&
          !e.matches(':disabled, [type=radio]:not(:checked)'),
      );
      if (start !== null) {
        figure.tabIndex = -1;
        (all[start] ?? figure).focus({ preventScroll: true });
      }
      const stops = all.map((e) => {
        const radios = e.matches('input[type=radio]') ? e.closest('fieldset')?.querySelectorAll('input') : undefined;
        return {
          role: e.getAttribute('role') ?? '',
          name: (e.getAttribute('aria-label') ?? e.labels?.[0]?.textContent ?? e.textContent ?? '').trim(),
          options: [...(radios ?? [])].map((radio) => radio.value),
          value: e.value ?? '',
          byArrow: e.tabIndex < 0,
          list: listOf(e),
        };
      });
      return { stops, at: all.indexOf(document.activeElement as Control) };
    },
    { start: from ?? null, LISTS },
  );

/** Tab to what is looked for, from a few stops before it or from the head of the figure; whole pages are tabbed through where access is asked. */
export const tabTo = async (place: Locator, found: (at: Stop) => boolean, what: string): Promise<void> => {
  const before = (await stopsOf(place)).stops;
  const wanted = before.findIndex(found);
  if (wanted >= 0) {
    const list = before[wanted]?.list ?? -1;
    const byTab = before[wanted]?.byArrow ? before.findIndex((stop) => stop.list === list && !stop.byArrow) : wanted;
    await stopsOf(place, byTab - 3);
    // A box that scrolls is a stop in some browsers.
    for (let i = 0; i < before.length + 6; i++) {
      const { stops, at } = await stopsOf(place);
      if (at === wanted) return;
      const along = list >= 0 && stops[at]?.list === list;
      await place.page().keyboard.press(!along ? 'Tab' : at < wanted ? 'ArrowDown' : 'ArrowUp');
    }
  }
  throw new Error(`Tab comes to no ${what}`);
};

/** The name of the shut group that a field or an option stands in, if it does. */
const shutGroupOf = (place: Locator, label: string): Promise<string | undefined> =>
  place.evaluate((figure: HTMLElement, wanted) => {
    const names = [...figure.querySelectorAll('details.group:not([open]) label')];
    const plain = (name: string) => name.replace(/ \(.*\)$/, '').toLowerCase();
    const at = names.find((e) => plain(e.textContent?.trim() ?? '') === plain(wanted));
    return at?.closest('details')?.querySelector('.group-name')?.textContent ?? undefined;
  }, label);

/** A field is found by its name; behind that it may say, in brackets, where its number is from. */
const plain = (name: string): string => name.replace(/ \(.*\)$/, '').toLowerCase();
const same = (a: string, b: string): boolean => plain(a) === plain(b);

export const keys = (place: Locator): Hands => {
  const { keyboard } = place.page();
  const unfold = async (label: string) => {
    const group = await shutGroupOf(place, label);
    if (group === undefined) return;
    await tabTo(place, ({ name, role }) => role === '' && name.startsWith(`${group} `), `group “${group}”`);
    await keyboard.press('Enter');
    await settled(place.page());
  };
  return {
    step: async (label, by) => {
      await unfold(label);
      await tabTo(place, ({ name, role }) => role === '' && same(name, label), `field “${label}”`);
      for (let i = 0; i < Math.abs(by); i++) await keyboard.press(by > 0 ? 'ArrowUp' : 'ArrowDown');
      await settled(place.page());
    },
    choose: async (option) => {
      await unfold(option);
      await tabTo(place, ({ options }) => options.includes(option), `choice of “${option}”`);
      // Not every browser goes round from the last to the first.
      for (let i = 0; i < 12; i++) {
        const { stops, at } = await stopsOf(place);
        const { options = [], value = '' } = stops[at] ?? {};
        const further = options.indexOf(option) - options.indexOf(value);
        if (further === 0) break;
        await keyboard.press(further > 0 ? 'ArrowDown' : 'ArrowUp');
        await settled(place.page());
      }
    },
    press: async (button) => {
      await tabTo(place, ({ name }) => name.startsWith(button), `button “${button}”`);
      await keyboard.press('Enter');
      await settled(place.page());
    },
  };
};

const unfoldByTap = async (place: Locator, label: string): Promise<void> => {
  const group = await shutGroupOf(place, label);
  if (group === undefined) return;
  const folds = place.locator('details.group > summary');
  // By the whole name: what other groups hold may say the same word.
  const names = await folds.evaluateAll((all) => all.map((e) => e.querySelector('.group-name')?.textContent ?? ''));
  await folds.nth(names.indexOf(group)).click();
  await settled(place.page());
};

export const taps = (place: Locator): Hands => ({
  step: async (label, by) => {
    await unfoldByTap(place, label);
    // A field of threads goes to the next one larger, every other a step more.
    const words =
      by > 0 ? /: (?:one step more|next larger standard thread)$/ : /: (?:one step less|next smaller standard thread)$/;
    const all = place.getByRole('button', { name: words });
    const names = await all.evaluateAll((found) => found.map((b) => b.getAttribute('aria-label') ?? ''));
    const at = names.findIndex((name) => same(name.replace(words, ''), label));
    if (at < 0) throw new Error(`no buttons beside “${label}”`);
    const { mouse } = place.page();
    await all.nth(at).scrollIntoViewIfNeeded();
    await settled(place.page());
    const box = await all.nth(at).boundingBox();
    if (!box) throw new Error(`the buttons beside “${label}” are not to be seen`);
    await mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    for (let i = 0; i < Math.abs(by); i++) {
      await mouse.down();
      await mouse.up();
      // Taps that come faster than the page draws may be counted as one.
      await settled(place.page());
    }
  },
  choose: async (option) => {
    await unfoldByTap(place, option);
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
