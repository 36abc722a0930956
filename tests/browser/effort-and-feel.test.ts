/** The chapters on effort, friction and the hand in a browser: friction typed, dragged and turned by keys; nought allowed and above one refused; figures without script. */
import { describe, expect, it } from 'vitest';
import { inDeep } from '../support/deep.ts';
import {
  beside,
  fieldIn,
  figure,
  NARROW,
  sentence,
  sentenceWith,
  settled,
  shown,
  type,
  units,
  useBrowser,
  WIDE,
  words,
  written,
} from '../support/page.ts';

const EFFORT = 'effort-and-feel.html';
const FRICTION = 'how-much-friction.html';
const HAND = 'the-hand.html';
const { visit } = useBrowser();

describe('friction', () => {
  it(
    'is typed: nought shows the limit, above one is refused with the last good value kept, and the page recovers',
    inDeep,
    async () => {
      const { page } = await visit(EFFORT);
      const place = await shown(figure(page, 'torque-bars'));
      const mu = fieldIn(place, /^Coefficient of friction, both threads/);
      await sentenceWith(place, 'takes 324.4 N·mm');
      await type(mu, '0');
      await sentenceWith(place, 'takes 7.958 N·mm');
      expect(await place.locator('.piece.a-rub, .piece.c-rub').count()).toBe(1 + 1);
      await type(mu, '1.2');
      expect(await beside(mu)).toContain('Coefficient of friction: read 1.2; give a value from 0 to 1.');
      expect(await sentence(place)).toContain('7.958 N·mm');
      await type(mu, '0,3');
      expect(await beside(mu)).toBe('');
      await sentenceWith(place, 'takes 641.5 N·mm');
      expect((await written(page)).search).toContain('0.3');
    },
  );

  it('is set on the curve by keys and by pointer, and the bars below follow', async () => {
    const { page } = await visit(FRICTION);
    const place = await shown(figure(page, 'friction-curve'));
    await sentenceWith(place, 'at 0.15');
    const handle = place.getByRole('slider');
    await handle.focus();
    await page.keyboard.press('ArrowRight');
    await sentenceWith(place, 'at 0.16');
    expect(await handle.getAttribute('aria-valuenow')).toBe('0.16');
    expect(await handle.getAttribute('aria-valuetext')).toMatch(/^0\.16, raising takes/);
    await page.keyboard.press('Home');
    await sentenceWith(place, 'at 0, the pair takes 7.958');
    await page.keyboard.press('Shift+ArrowUp');
    await sentenceWith(place, 'at 0.1');
    const box = await place.locator('[data-plane]').boundingBox();
    if (!box) throw new Error('no plane');
    await page.mouse.move(box.x + box.width * 0.3, box.y + box.height * 0.5);
    await page.mouse.down();
    await page.mouse.move(Math.min(box.x + box.width * 2, WIDE.width - 2), box.y + box.height * 0.5, { steps: 4 });
    await page.mouse.up();
    await sentenceWith(place, 'at 0.4');
    await page.keyboard.press('PageUp');
    await sentenceWith(place, 'at 0.5');
    expect(await handle.evaluate((e) => e === document.activeElement)).toBe(true);
    const bars = await shown(figure(page, 'torque-bars'));
    await sentenceWith(bars, 'with friction 0.5');
  });
});

describe('the hand', () => {
  it('feels less at a longer key and jumps less with a stiffer one', async () => {
    const { page } = await visit(HAND);
    const place = await shown(figure(page, 'hand-force'));
    await sentenceWith(place, 'raising takes 16.22 N');
    await type(fieldIn(place, /^Radius at which/), '100');
    await sentenceWith(place, 'raising takes 3.244 N');
    await type(fieldIn(place, /^Twisting stiffness/), '50 N·m');
    await sentenceWith(place, 'so the hand decides: 1.04 µm');
    await type(fieldIn(place, /^Coefficient of friction, at rest/), '0.1');
    expect(await words(place.locator('[data-refusal]'))).toBe(
      'The coefficient of friction at rest is 0.1, below the 0.15 of sliding, so nothing sticks: give at least 0.15. The picture keeps the last numbers that can be drawn.',
    );
    await units(page, 'inch');
    await type(fieldIn(place, /^Coefficient of friction, at rest/), '0.2');
    expect(await words(place.locator('.hand-bars'))).toMatch(/thou|tenths|millionths/);
    expect(await words(place.locator('.hand-bars'))).not.toMatch(/µm/);
  });

  it('steps its own angle by half a degree', inDeep, async () => {
    const { page } = await visit(HAND);
    const place = await shown(figure(page, 'hand-force'));
    const theta = fieldIn(place, /^Repeatable hand angle/);
    await theta.focus();
    await page.keyboard.press('ArrowUp');
    await settled(page);
    expect(await theta.inputValue()).toBe('2°');
  });
});

describe('the pages', () => {
  it('follow the reader’s pair in the summary', inDeep, async () => {
    const { page } = await visit(EFFORT);
    const place = await shown(figure(page, 'torque-bars'));
    await type(fieldIn(place, /^Load/), '100 N');
    expect(await words(page.locator('.box.summary'))).toContain('162.2 N·mm raising, 154.0 N·mm lowering');
  });

  it('take a prediction and name the belief that finer turns lighter', inDeep, async () => {
    const { page } = await visit(EFFORT);
    const predict = page.locator('[data-predict]').first();
    // A fifth of the bar that stands there, in per cent.
    await predict.locator('#prediction-on-0').fill('20');
    await page.keyboard.press('Tab');
    await predict.getByRole('button', { name: 'Set my prediction' }).click();
    await settled(page);
    expect(await words(predict.locator('.verdict'))).toContain('a fifth of the plain screw’s torque');
  });

  it('read without script: pictures, sentences and tables of all three figures', inDeep, async () => {
    for (const [address, name, part] of [
      [EFFORT, 'torque-bars', '324.4 N·mm'],
      [FRICTION, 'friction-curve', 'below friction 0.025'],
      [HAND, 'hand-force', '16.22 N'],
    ] as const) {
      const { page } = await visit(address, { javaScriptEnabled: false });
      const place = figure(page, name);
      expect(await sentence(place)).toContain(part);
      expect(await place.locator('[data-stage] svg').count()).toBeGreaterThan(0);
      expect(await place.locator('[data-table] tbody tr').count()).toBeGreaterThan(1);
    }
  });

  it('do not scroll sideways on a narrow screen', inDeep, async () => {
    for (const [address, name] of [
      [EFFORT, 'torque-bars'],
      [FRICTION, 'friction-curve'],
      [HAND, 'hand-force'],
    ] as const) {
      const { page } = await visit(address, { viewport: NARROW });
      await shown(figure(page, name));
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
      ).toBe(0);
    }
  });
});
