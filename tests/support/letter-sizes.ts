/** At which widths, and in which states, the lettering of a page is asked for. */
import { expect } from 'vitest';
import type { Page } from './driven.ts';
import { crossedLetters, illLettered } from './layout-checks.ts';
import { settled } from './page.ts';

const SIZES = [
  { width: 1440, height: 900 },
  { width: 390, height: 844 },
];

/** A plan of heights has its numbers on its lines, as a map has; the names of the fields of a map of finds stand on its grid. */
const ON_LINES = ['levelling-plate', 'drawer'];

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

/** Letters of all drawings of a page that was read through: as they open and, where their scripts run, at both ends of what the first handle sets. */
export const expectGoodLettering = async (
  page: Page,
  ends: readonly ('least' | 'most')[] = ['most', 'least'],
): Promise<void> => {
  for (const size of SIZES) {
    await page.setViewportSize(size);
    for (const end of [undefined, ...ends]) {
      if (end !== undefined) await toEnd(page, end);
      await settled(page);
      const found = [...(await illLettered(page)), ...(await crossedLetters(page, ON_LINES))];
      expect.soft(found, `${size.width} px, ${end ?? 'as it opens'}`).toEqual([]);
    }
  }
};
