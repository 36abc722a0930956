/** The head is turned by every means there is, and what the dial reads is what the engine says. */

import { describe, expect, it } from 'vitest';
import { mm, netLead, plain } from '../../widgets/engine/index.ts';
import { readThread } from '../../widgets/input/designation.ts';
import { inDeep } from '../support/deep.ts';
import type { Locator, Page } from '../support/driven.ts';
import { inChromium } from '../support/engines.ts';
import {
  beside,
  fieldIn,
  figure,
  sentence,
  sentenceWith,
  settled,
  shown,
  type,
  useBrowser,
  words,
} from '../support/page.ts';
import { valueIn } from '../support/results.ts';

const { visit } = useBrowser();

const Delta = (a: string, c: string): number => {
  const [A, C] = [valueIn(readThread(a)), valueIn(readThread(c))];
  return valueIn(netLead.of({ h_A: plain(A.h), L_A: mm(A.L), h_C: plain(C.h), L_C: mm(C.L) })).Delta;
};
const FOOT = Delta('M10x1.5', '3/8-16');

/** The motion on the figure’s readout, in µm. */
const reading = async (section: Locator): Promise<number> => {
  const text = await words(section.locator('[data-read=carried]'));
  const value = Number(text.replace('−', '-').replace('+', '').split(' ')[0]);
  return text.endsWith('mm') ? value * 1000 : value;
};
const turnsIn = async (section: Locator): Promise<number> =>
  Number((await fieldIn(section, /turns/i).inputValue()).replace('−', '-'));
const open = async (): Promise<{ page: Page; section: Locator; knob: Locator }> => {
  const { page } = await visit('two-screws.html?foot.n=1');
  const section = await shown(figure(page, 'section'));
  return { page, section, knob: section.locator('[data-knob]') };
};

/** Takes hold of the knob at twelve o’clock and goes round by this many turns. */
const drag = async (page: Page, knob: Locator, turns: number): Promise<void> => {
  const box = await knob.boundingBox();
  if (!box) throw new Error('no knob');
  const [cx, cy, r] = [box.x + box.width / 2, box.y + box.height / 2, 0.33 * box.width];
  await page.mouse.move(cx, cy - r);
  await page.mouse.down();
  const steps = Math.ceil(Math.abs(turns) * 10);
  for (let i = 1; i <= steps; i++) {
    const a = (2 * Math.PI * turns * i) / steps;
    await page.mouse.move(cx + r * Math.sin(a), cy - r * Math.cos(a));
  }
  await page.mouse.up();
  await settled(page);
};

describe('the knob', () => {
  it('dragged round once and a half clockwise adds one turn and a half', async () => {
    const { page, section, knob } = await open();
    await drag(page, knob, 1.5);
    expect(Math.abs((await turnsIn(section)) - 2.5)).toBeLessThan(0.02);
    const n = await turnsIn(section);
    expect(Math.abs((await reading(section)) - n * FOOT * 1000)).toBeLessThan(0.051);
    expect(await knob.getAttribute('aria-valuetext')).toMatch(/^2\.\d+ turns clockwise$/);
    expect(Number(await knob.getAttribute('aria-valuenow'))).toBeCloseTo(n, 2);
    expect(await sentence(section)).toContain('turns clockwise: the turned part goes down');
  });

  it('dragged back through nought goes the other way, and stops at the end of the drawing', inDeep, async () => {
    const { page, section, knob } = await open();
    await drag(page, knob, -2);
    expect(Math.abs((await turnsIn(section)) + 1)).toBeLessThan(0.02);
    expect(await reading(section)).toBeLessThan(-80);
    await drag(page, knob, -5);
    expect(await turnsIn(section)).toBe(-4);
    expect(await reading(section)).toBeCloseTo(-350, 1);
    expect(await words(section.locator('[data-refusal]'))).toBe('');
  });

  it('by arrow keys goes a flat, with Shift a turn, by Page keys a turn, and Home back to nought', async () => {
    const { page, section, knob } = await open();
    await knob.focus();
    const presses = [
      ['Home', 0],
      ['ArrowUp', 1 / 6],
      ['ArrowRight', 2 / 6],
      ['ArrowDown', 1 / 6],
      ['ArrowLeft', 0],
      ['ArrowLeft', -1 / 6],
      ['Shift+ArrowUp', 5 / 6],
      ['PageUp', 11 / 6],
      ['PageDown', 5 / 6],
      ['Home', 0],
    ] as const;
    for (const [key, turns] of presses) {
      await page.keyboard.press(key);
      await settled(page);
      expect(await turnsIn(section), key).toBeCloseTo(turns, 5);
      expect(await reading(section), key).toBeCloseTo(turns * FOOT * 1000, 1);
    }
    for (let i = 0; i < 6; i++) await page.keyboard.press('ArrowUp');
    await settled(page);
    expect(await fieldIn(section, /turns/i).inputValue()).toBe('1');
    // It is still the knob that has the focus.
    expect(await knob.evaluate((k) => k === document.activeElement)).toBe(true);
  });

  it('keeps the focus while its keys change what is drawn, and the page does not scroll', inDeep, async () => {
    const { page, knob } = await open();
    await knob.focus();
    const before = await page.evaluate(() => scrollY);
    for (const key of ['ArrowDown', 'PageDown', 'Home']) await page.keyboard.press(key);
    await settled(page);
    expect(Math.abs((await page.evaluate(() => scrollY)) - before)).toBeLessThan(3);
  });

  it('rolled with the wheel goes a flat each notch, and the page stays', async () => {
    const { page, section, knob } = await open();
    await knob.hover();
    const before = await page.evaluate(() => scrollY);
    await page.mouse.wheel(0, -100);
    await settled(page);
    expect(await turnsIn(section)).toBeCloseTo(7 / 6, 5);
    await page.mouse.wheel(0, 100);
    await settled(page);
    await page.mouse.wheel(0, 100);
    await settled(page);
    expect(await turnsIn(section)).toBeCloseTo(5 / 6, 5);
    expect(Math.abs((await page.evaluate(() => scrollY)) - before)).toBeLessThan(3);
  });

  it(
    'leaves a swipe down the page to the page: how a finger turns it is tried where fingers are',
    inChromium,
    async () => {
      const { knob } = await open();
      expect(await knob.evaluate((k) => getComputedStyle(k).touchAction)).toMatch(/\bpan-y\b/);
    },
  );
});

describe('without the knob', () => {
  it('the number field turns it', inDeep, async () => {
    const { section } = await open();
    const n = fieldIn(section, /turns/i);
    for (const [text, turns] of [
      ['2', 2],
      ['1/2', 0.5],
      ['−1.25', -1.25],
      ['-3,5', -3.5],
    ] as const) {
      await type(n, text);
      expect(Math.abs((await reading(section)) - turns * FOOT * 1000), text).toBeLessThan(0.0501);
    }
    await type(n, '5');
    expect(await beside(n)).toContain('goes from −4 turns to 4 turns here');
  });

  it('the buttons beside the field turn it by a flat, and six of them make exactly a turn', inChromium, async () => {
    const { page, section } = await open();
    const [less, more] = [
      section.getByRole('button', { name: /one step less/ }),
      section.getByRole('button', { name: /one step more/ }),
    ];
    for (let i = 0; i < 6; i++) await more.click();
    await settled(page);
    expect(await fieldIn(section, /turns/i).inputValue()).toBe('2');
    expect(await reading(section)).toBeCloseTo(2 * FOOT * 1000, 1);
    for (let i = 0; i < 12; i++) await less.click();
    await settled(page);
    expect(await fieldIn(section, /turns/i).inputValue()).toBe('0');
    // At the end of the drawing they stop.
    await type(fieldIn(section, /turns/i), '−3.5');
    for (let i = 0; i < 5; i++) await less.click();
    await settled(page);
    expect(await fieldIn(section, /turns/i).inputValue()).toBe('−4');
  });

  it('arrow keys in the field do the same', inDeep, async () => {
    const { page, section } = await open();
    const n = fieldIn(section, /turns/i);
    await n.focus();
    for (let i = 0; i < 3; i++) await page.keyboard.press('ArrowUp');
    await settled(page);
    expect(await n.inputValue()).toBe('1.5');
  });
});

describe('turning one figure', () => {
  it('turns every other that shares its numbers, and the worked example', inChromium, async () => {
    const { page, section } = await open();
    await type(fieldIn(section, /turns/i), '3');
    expect(await words(page.locator('#example-foot-turn [data-sym=z_c][data-result]'))).toBe('= 262.5 µm');
    const plot = await shown(figure(page, 'motion-plot'));
    await sentenceWith(plot, 'At 3 turns it is at +262.5 µm');
  });

  it('by angle leaves a round number of degrees in its field', inDeep, async () => {
    const { page } = await visit('one-screw.html');
    const ramp = await shown(figure(page, 'ramp'));
    await ramp.locator('[data-knob]').focus();
    await page.keyboard.press('ArrowUp');
    await settled(page);
    expect(await fieldIn(ramp, /angle/i).inputValue()).toBe('60°');
    expect(await words(ramp.locator('[data-read=carried]'))).toBe('−250.0 µm');
    await ramp.getByRole('button', { name: /one step more/ }).click();
    await settled(page);
    expect(await fieldIn(ramp, /angle/i).inputValue()).toBe('75°');
  });

  it('with the lock giving moves the carried part with thread A', inDeep, async () => {
    const { page, section } = await open();
    await section.getByText('gives', { exact: true }).click();
    await settled(page);
    expect(await reading(section)).toBeCloseTo(-1500, 0);
    expect(await sentence(section)).toContain('its lock gives way, so thread A alone moves it');
  });

  it(
    'in another arrangement moves the same, and a spindle that does not fit says so and keeps the picture',
    inDeep,
    async () => {
      const { page, section } = await open();
      await section.getByText('one spindle, two nuts', { exact: true }).click();
      await settled(page);
      expect(await reading(section)).toBeCloseTo(FOOT * 1000, 1);
      const before = await section.locator('[data-path=turned]').getAttribute('d');
      await section.getByText('nested', { exact: true }).click();
      await settled(page);
      expect(await words(section.locator('[data-refusal]'))).toMatch(
        /3\/8-16 UNC does not go inside M10×1\.5.*The picture keeps the last numbers that can be drawn\.$/,
      );
      expect(await section.locator('[data-path=turned]').getAttribute('d')).toBe(before);
      expect(await section.evaluate((f) => f.classList.contains('stale'))).toBe(true);
      await type(fieldIn(section, /thread A/i), 'M12x1.5');
      await type(fieldIn(section, /thread C/i), 'M8x1.25');
      expect(await words(section.locator('[data-refusal]'))).toBe('');
      expect(await reading(section)).toBeCloseTo(-250, 1);
    },
  );
});
