/** A finger on the glass, moved as the system moves one; the browser itself decides what of that is a scroll. Chromium’s protocol has it. */
import { beyond, type Page, type Point } from './driven.ts';

export const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true } as const;

/** Milliseconds after which a finger rests on what it can take, and some more. */
const RESTED = 400;

export const fingerOn = async (page: Page) => {
  const glass = await beyond(page).context().newCDPSession(beyond(page));
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd' | 'touchCancel', ...touchPoints: Point[]) =>
    glass.send('Input.dispatchTouchEvent', { type, touchPoints });
  const frame = () => page.evaluate(() => new Promise((done) => requestAnimationFrame(() => done(undefined))));
  const along = async (from: Point, by: Point, steps: number) => {
    for (let i = 1; i <= steps; i++) {
      await send('touchMove', { x: from.x + (by.x * i) / steps, y: from.y + (by.y * i) / steps });
      await frame();
    }
  };
  return {
    send,
    along,
    tap: async (at: Point) => {
      await send('touchStart', at);
      await send('touchEnd');
      await frame();
    },
    /** Down at a point, along, and up; `rests` before it moves if told to. */
    pull: async (from: Point, by: Point, { rests = false, steps = 10 } = {}) => {
      await send('touchStart', from);
      if (rests) await page.waitForTimeout(RESTED);
      await along(from, by, steps);
      await send('touchEnd');
      await frame();
    },
  };
};
