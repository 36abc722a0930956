/**
 * Three feet under a plate, as a reader works it: by keys alone and by pointer, with what is typed wrong answered in one
 * sentence, and the numbers carried by the address.
 */

import { describe, expect, it } from 'vitest';
import { inDeep, these } from '../support/deep.ts';
import type { Locator, Page } from '../support/driven.ts';
import { needs } from '../support/engines.ts';
import { fingerOn } from '../support/finger.ts';
import {
  beside,
  figure,
  NARROW,
  sentence,
  settled,
  shown,
  type,
  units,
  useBrowser,
  words,
  written,
} from '../support/page.ts';

const { visit } = useBrowser();

/** The figure, in view and alive: its script comes when it is seen. */
const plate = async (page: Page, widget = 'levelling-plate'): Promise<Locator> => {
  const place = await shown(figure(page, widget));
  await place.locator('textarea').first().waitFor();
  if (widget === 'levelling-plate') await place.locator('[data-act][aria-disabled]').first().waitFor();
  else await settled(page);
  return place;
};
const list = (place: Locator, name: 'feet' | 'readings' | 'rounds' | 'passport'): Locator =>
  place.locator(`.field[data-sym=${name}] textarea`);
const quantity = (place: Locator, name: string): Locator => place.locator(`.field[data-sym=${name}] input`);
const turns = async (place: Locator): Promise<string[]> =>
  (await place.locator('.turn-table td.turn').allTextContents()).map((text) => text.trim());
const tilts = async (place: Locator): Promise<number[]> =>
  (await place.locator('.rounds-table tbody td:nth-child(2)').allTextContents()).map((text) => Number.parseFloat(text));
const handle = (place: Locator, key: string): Locator => place.locator(`[data-handle="${key}"]`);
const middleOf = async (place: Locator): Promise<{ x: number; y: number }> => {
  const box = await place.locator('[data-mark]').boundingBox();
  if (!box) throw new Error('no box');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
};

describe('a plate levelled by keys alone', () => {
  it('types new readings, turns what is asked, comes level in two rounds, and goes back', async () => {
    // With threads long enough for four turns and more, so that foot 1 can stay.
    const { page } = await visit('three-feet.html?plate.X_A=20+mm&plate.X_C=20+mm');
    const place = await plate(page);
    expect(await turns(place)).toEqual(['leave it', '8 flats clockwise', '4 flats anticlockwise']);

    await list(place, 'readings').focus();
    await page.keyboard.press('Control+A');
    await page.keyboard.type('40, 20: 0\n200, 20: -240 µm\n40, 160: 0.21 mm');
    await settled(page);
    // −1.5 µm a mm over 240 mm is 360 µm: 24.7 flats; C lacks 360/2 − 270 = −90 µm: 6.2 flats.
    expect(await turns(place)).toEqual(['leave it', '25 flats clockwise', '6 flats anticlockwise']);

    await place.locator('[data-act=turn]').focus();
    await page.keyboard.press('Enter');
    await settled(page);
    // These feet move a tenth less: 24.69 − 25 × 0.9 is 2.2 flats, −6.17 + 6 × 0.9 is −0.8 of one.
    expect(await turns(place)).toEqual(['leave it', '2 flats clockwise', '1 flat anticlockwise']);
    await page.keyboard.press('Enter');
    await settled(page);
    expect(await turns(place)).toEqual(['leave it', 'leave it', 'leave it']);
    const [first = 0, second = 0, third = 0] = await tilts(place);
    expect(second).toBeLessThan(0.15 * first);
    expect(third).toBeLessThan(0.5 * second);
    expect(await place.locator('[data-act=turn]').getAttribute('aria-disabled')).toBe('true');
    expect(await page.evaluate(() => document.activeElement?.getAttribute('data-act'))).toBe('turn');
    expect((await list(place, 'rounds').inputValue()).split('\n')).toHaveLength(2);

    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await settled(page);
    expect(await tilts(place)).toHaveLength(2);

    // One flat is a sixth of a turn: 25 clockwise and 6 back are in the passports then, and the rounds begin anew.
    await place.locator('[data-act=places]').click();
    await settled(page);
    expect(await list(place, 'passport').inputValue()).toMatch(
      /^1, \d{4}-\d\d-\d\d: place 0 turns\n2, \d{4}-\d\d-\d\d: place 4\.1667 turns\n3, \d{4}-\d\d-\d\d: place -1 turns$/,
    );
    expect(await list(place, 'rounds').inputValue()).toBe('');
    expect(await tilts(place)).toHaveLength(1);
    expect(await turns(place)).toEqual(['leave it', '2 flats clockwise', '1 flat anticlockwise']);
    expect(await words(place.locator('[data-part=said]'))).toMatch(/^Written into the passports, dated today\./);
  });

  it(
    'moves feet, readings and weight by arrow keys: a millimetre, with Shift ten, and the fields follow',
    inDeep,
    async () => {
      const { page } = await visit('three-feet.html');
      const place = await plate(page);
      await handle(place, 'foot-2').focus();
      await page.keyboard.press('ArrowRight');
      await page.keyboard.press('Shift+ArrowUp');
      await settled(page);
      expect(await list(place, 'feet').inputValue()).toBe('1: 0, 0\n2: 241, 10\n3: 120, 180');
      expect(await handle(place, 'foot-2').getAttribute('aria-valuetext')).toBe('x 241\u00a0mm, y 10\u00a0mm');
      await handle(place, 'reading-3').focus();
      await page.keyboard.press('ArrowLeft');
      await page.keyboard.press('ArrowDown');
      await settled(page);
      expect(await list(place, 'readings').inputValue()).toBe(
        '40, 20: 0 µm\n200, 20: −84 µm\n200, 160: 14 µm\n39, 159: 94 µm',
      );
      await handle(place, 'weight').focus();
      for (let i = 0; i < 12; i++) await page.keyboard.press('Shift+ArrowLeft');
      await settled(page);
      expect(await quantity(place, 'x_g').inputValue()).toBe('10 mm');
      expect(await sentence(place)).toMatch(
        /foot 2 would lift, since −\d.* N would be needed there: move the weight inside/,
      );
      expect(await words(place.locator('.lifts'))).toMatch(/^With the weight at/);
    },
  );

  it('turns a real next round as it is typed, and tells each foot what it did', async () => {
    const { page } = await visit('three-feet.html');
    const place = await plate(page);
    await type(list(place, 'rounds'), '0; -2; 3; 5');
    expect(await tilts(place)).toHaveLength(2);
    expect(await sentence(place)).toMatch(
      /^Round 2: .* Moved minus asked, since the round before: A 0 µm|^Round 2: .*Moved minus asked/,
    );
    await type(list(place, 'rounds'), '');
    expect(await tilts(place)).toHaveLength(1);
  });
});

describe('a plate that leans more than its feet have turns', () => {
  it(
    'is not ordered to be turned: table, plan, sentence and button say so; with longer threads it is',
    inDeep,
    async () => {
      const { page } = await visit(
        'three-feet.html?plate.A=M8x1.25&plate.C=1/4-20+UNC&plate.feet=0,+0;+160,+0;+80,+140&plate.readings=20,+20:+0;+140,+20:+-620;+80,+120:+410&plate.X_A=12+mm&plate.X_C=13.65+mm',
      );
      const place = await plate(page);
      expect(await turns(place)).toEqual(['wait', 'too far', 'too far']);
      expect(await sentence(place)).toMatch(/71\.1 turns; .* Turn no foot yet\./);
      expect(await words(place.locator('[data-part=room]'))).toMatch(/Turn no foot yet\./);
      expect(await place.locator('[data-act=turn]').getAttribute('aria-disabled')).toBe('true');
      expect(await words(handle(place, 'foot-2').locator('[data-under]'))).toBe('too far');
      await type(quantity(place, 'X_A'), '150 mm');
      await type(quantity(place, 'X_C'), '150 mm');
      expect(await turns(place)).toEqual(['leave it', '248 flats clockwise', '178 flats anticlockwise']);
    },
  );
});

describe('a plate levelled by pointer', () => {
  it('drags a foot to where the pointer leaves it, and the numbers follow', async () => {
    const { page } = await visit('three-feet.html');
    const place = await plate(page);
    await place.locator('.plate-plan').scrollIntoViewIfNeeded();
    const a = await middleOf(handle(place, 'foot-1'));
    const b = await middleOf(handle(place, 'foot-2'));
    const perMm = (b.x - a.x) / 240;
    await page.mouse.move(b.x, b.y);
    await page.mouse.down();
    await page.mouse.move(b.x - 20 * perMm, b.y - 11 * perMm, { steps: 4 });
    await page.mouse.move(b.x - 40 * perMm, b.y - 22 * perMm, { steps: 4 });
    await page.mouse.up();
    await settled(page);
    const [, row = ''] = (await list(place, 'feet').inputValue()).split('\n');
    const [, x, y] = /^2: (\d+), (\d+)$/.exec(row) ?? [];
    expect(Math.abs(Number(x) - 200)).toBeLessThanOrEqual(1);
    expect(Math.abs(Number(y) - 22)).toBeLessThanOrEqual(1);
    expect(await page.evaluate(() => document.activeElement?.getAttribute('data-handle'))).toBe('foot-2');
  });

  it('drags a mark with a finger that rests on it first, and does not scroll the page under it', async (context) => {
    needs(context, 'protocol');
    const { page } = await visit('three-feet.html', { viewport: NARROW, hasTouch: true, isMobile: true });
    const place = await plate(page);
    const a = await middleOf(handle(place, 'foot-1'));
    const b = await middleOf(handle(place, 'foot-2'));
    const perMm = (b.x - a.x) / 240;
    const { x, y } = await middleOf(handle(place, 'foot-3'));
    const topOf = async () => (await place.locator('.plate-plan').boundingBox())?.y ?? Number.NaN;
    const top = await topOf();
    const finger = await fingerOn(page);
    await finger.pull({ x, y }, { x: 20 * perMm, y: 40 * perMm }, { rests: true, steps: 8 });
    await settled(page);
    const [, , row = ''] = (await list(place, 'feet').inputValue()).split('\n');
    const [, cx, cy] = /^3: (\d+), (\d+)$/.exec(row) ?? [];
    expect(Math.abs(Number(cx) - 140)).toBeLessThanOrEqual(2);
    expect(Math.abs(Number(cy) - 140)).toBeLessThanOrEqual(2);
    // The page may shift by a line of text that wraps elsewhere, and the browser makes up for it; the plan stays in its place.
    expect(Math.abs((await topOf()) - top)).toBeLessThanOrEqual(6);
  });

  it(
    'works with a finger on a phone: buttons and marks are at least 24 px, nothing runs over the edge',
    inDeep,
    async (context) => {
      needs(context, 'touch');
      const { page } = await visit('three-feet.html', { viewport: NARROW, hasTouch: true });
      const place = await plate(page);
      await place.locator('[data-act=turn]').tap();
      await settled(page);
      expect(await tilts(place)).toHaveLength(2);
      for (const target of await place.locator('.reach, [data-act]').all()) {
        const box = await target.boundingBox();
        expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(24);
      }
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(NARROW.width);
    },
  );
});

describe('the address', () => {
  it('carries feet, readings and rounds, and a visitor sees the same', inDeep, async () => {
    const first = await visit('three-feet.html');
    const place = await plate(first.page);
    await type(list(place, 'feet'), '1: 0, 0; 2: 10 in, 0; 3: 5 in, 7 in');
    await place.locator('[data-act=turn]').click();
    const address = await written(first.page);
    const second = await visit(`three-feet.html${address.search}`);
    const again = await plate(second.page);
    expect(await list(again, 'feet').inputValue()).toBe('1: 0, 0\n2: 10 in, 0\n3: 5 in, 7 in');
    expect(await list(again, 'rounds').inputValue()).toBe(await list(place, 'rounds').inputValue());
    expect(await sentence(again)).toBe(await sentence(place));
  });

  it('follows the units of the page', inDeep, async () => {
    const { page } = await visit('three-feet.html');
    const place = await plate(page);
    await units(page, 'inch');
    expect(await words(place.locator('.turn-table'))).toMatch(/\+4\.84 thou/);
    expect(await turns(place)).toEqual(['leave it', '8 flats clockwise', '4 flats anticlockwise']);
  });
});

describe('bad input', () => {
  const cases: readonly (readonly ['feet' | 'readings' | 'rounds' | 'passport', string, RegExp])[] = [
    [
      'feet',
      '0, 0; 240, 0; 480, 0',
      /^The 3 feet stand in a line, or so nearly .*: move one far off the line\. The last good value is still used/,
    ],
    ['feet', '0, 0; 240, 0', /^Read 2 feet; a plate is levelled on exactly three: give three rows, like 1: 0, 0\./],
    ['feet', '1: 0, 0; 1: 240, 0; 3: 120, 180', /^Two feet are called 1; call them 1, 2 and 3\./],
    ['feet', '1: 0, 0; 2: 240; 3: 120, 180', /^Row 2 of the feet reads “2: 240”; give x and y, like 1: 0, 0\./],
    [
      'readings',
      '40, 20: 0; 200, 20: -84',
      /^Read 2 readings; a plane needs three that are not in a line: add 1 more\./,
    ],
    ['readings', '0, 0: 1; 50, 50: 2; 100, 100: 3; 150, 150: 9', /^The 4 readings stand in a line/],
    ['readings', '40, 20: 0; 200, 20: soft; 40, 160: 1', /^Row 2 of the readings: Read “soft”, which is not a number/],
    [
      'readings',
      '40, 20; 200, 20: 1; 40, 160: 1',
      /^Row 1 of the readings reads “40, 20”; give x, y and the reading, like 40, 20: −3 µm\./,
    ],
    ['rounds', '1; 2; x; 4', /^Round 2: Read “x”, which is not a number/],
  ];
  // One of each list.
  for (const [name, text, reason] of these(
    cases,
    cases.filter((_, i) => i % 4 === 0),
  ))
    it(`answers ${name} “${text}” beside the field and keeps the last good picture`, async () => {
      const { page } = await visit('three-feet.html');
      const place = await plate(page);
      const before = await turns(place);
      await type(list(place, name), text);
      expect(await beside(list(place, name))).toMatch(reason);
      expect(await turns(place)).toEqual(before);
      expect(await list(place, name).getAttribute('aria-invalid')).toBe('true');
    });

  it(
    'says in the figure when a round has too few readings, and when the readings were typed in another unit',
    inDeep,
    async () => {
      const { page } = await visit('three-feet.html');
      const place = await plate(page);
      await type(list(place, 'rounds'), '1; 2; 3');
      expect(await words(place.locator('[data-refusal]'))).toMatch(
        /^Round 2 has 3 readings for 4 places; give one for each place, in the same order, or take that row away\. The picture keeps/,
      );
      await type(list(place, 'rounds'), '');
      expect(await words(place.locator('[data-refusal]'))).toBe('');
      await type(list(place, 'readings'), '40, 20: 0 mm; 200, 20: -84 mm; 40, 160: 3 mm');
      expect(await words(place.locator('[data-refusal]'))).toMatch(/^The readings give a tilt of .* another unit/);
    },
  );
});

describe('three balls in three vees', () => {
  it('presses all six flanks, opens one under a large side force, and says when the grooves leave the part loose', async () => {
    const { page } = await visit('staying-on-three-feet.html');
    const place = await plate(page, 'vee-coupling');
    expect(await sentence(place)).toMatch(/^All six flanks push, so the part is held/);
    await type(quantity(place, 'F_l'), '60 N');
    expect(await sentence(place)).toMatch(/would have to pull .* N: it opens.*A flank can’t pull/);
    expect(await place.locator('.vee-bars .open').count()).toBeGreaterThan(0);
    await type(quantity(place, 'F_l'), '0 N');
    expect(await sentence(place)).toMatch(/^All six flanks push/);
    await place.getByLabel('all one way').check();
    await settled(page);
    expect(await sentence(place)).toMatch(/^The part can still move a little/);
    expect(await place.locator('.vees .push').count()).toBe(0);
  });
});
