/** The chapter of the five ways in a browser: prices typed, left out and wrong; the wish changed by keys; phone, print and no script. */
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
  words,
  written,
} from '../support/page.ts';

const PAGE = 'other-ways.html';
const { visit } = useBrowser();

describe('the five ways', () => {
  it('take the reader’s prices; one left out is said and the rest stands; a wrong one is refused and the last kept', async () => {
    const { page } = await visit(PAGE);
    const place = await shown(figure(page, 'other-ways'));
    const prices = fieldIn(place, /^Your prices/);
    await sentenceWith(place, 'cheapest of those priced the lever at 9.50. No price is given for the squeezed balls');
    await type(prices, 'plain screw: 2 × 10; wedge: 3');
    await sentenceWith(
      place,
      'cheapest of those priced the wedge at 3. No price is given for the lever, the squeezed balls and the differential screw; the rest holds.',
    );
    expect(await words(place.locator('[data-way="plain screw"]'))).toContain('20');
    expect(await words(place.locator('[data-way="lever"]'))).toContain('no price given');
    expect(await words(place.locator('[data-way="lever"]'))).toContain('3.02 N·mm');
    await type(prices, 'wedge: dear');
    expect(await beside(prices)).toContain('“wedge”: ');
    expect(await sentence(place)).toContain('the wedge at 3.');
    await type(prices, 'gear: 5');
    expect(await beside(prices)).toContain('Left out: “gear”');
    await type(prices, '');
    await sentenceWith(place, 'No price is given for any of them; the rest holds.');
    expect(await beside(prices)).toBe('');
  });

  it('follow the wish by keys, and the summary with it', inDeep, async () => {
    const { page } = await visit(PAGE);
    const place = await shown(figure(page, 'other-ways'));
    const wish = fieldIn(place, /^Wanted step/);
    await type(wish, '2 µm');
    await sentenceWith(place, 'the plain screw, wedge, lever and differential screw do it');
    expect(await words(page.locator('.box.summary'))).toContain('For your wanted step, a turn must move 480.0 µm');
    const height = fieldIn(place, /^Allowed height/);
    await height.focus();
    for (let i = 0; i < 3; i++) await page.keyboard.press('ArrowDown');
    await settled(page);
    expect(Number.parseFloat(await height.inputValue())).toBeLessThan(40);
    await type(height, '20 mm');
    await sentenceWith(place, 'the plain screw, wedge and lever do it');
    expect(await words(place.locator('[data-way="differential screw"]'))).toContain('✗ too high');
    expect((await written(page)).search).toContain('20');
  });

  it('refuse a pair without a difference in words and keep the last picture', inDeep, async () => {
    const { page } = await visit(PAGE);
    const place = await shown(figure(page, 'other-ways'));
    await sentenceWith(place, 'do it');
    await type(fieldIn(place, /^Pair: thread C/), 'M8x1.5');
    expect(await words(place.locator('[data-refusal]'))).toContain('The two leads of the pair are equal');
    expect(await place.locator('svg.way').count()).toBe(5);
  });

  it('show inches where asked', inDeep, async () => {
    const { page } = await visit(PAGE);
    const place = await shown(figure(page, 'other-ways'));
    await sentenceWith(place, 'do it');
    await units(page, 'inch');
    // The switch stands at the top of the page; a figure out of view catches up when it comes back.
    await shown(place);
    await sentenceWith(place, 'millionths for 1.5°');
    expect(await words(place.locator('.five-ways'))).not.toMatch(/\d (?:µm|mm)/);
  });
});

describe('the page', () => {
  it('takes a prediction and names the belief that the same motion takes the same torque', inDeep, async () => {
    const { page } = await visit(PAGE);
    const predict = page.locator('[data-predict]').first();
    // As tall as the bar of the Foot, in per cent.
    await predict.locator('#prediction-on-0').fill('101');
    await page.keyboard.press('Tab');
    await predict.getByRole('button', { name: 'Set my prediction' }).click();
    await settled(page);
    expect(await words(predict.locator('.verdict'))).toContain('their friction is not the same');
  });

  it(
    'stands the five at one scale, side by side over their numbers, and under each other on a phone without scrolling sideways',
    inDeep,
    async () => {
      for (const [viewport, rows] of [
        [undefined, 1],
        [NARROW, 3],
      ] as const) {
        const { page } = await visit(PAGE, viewport ? { viewport } : {});
        const place = await shown(figure(page, 'other-ways'));
        await sentenceWith(place, 'do it');
        const pictures = await place.locator('svg.way').evaluateAll((all) =>
          all.map((svg) => ({
            top: Math.round(svg.getBoundingClientRect().top),
            scale: svg.getBoundingClientRect().width / (svg as SVGSVGElement).viewBox.baseVal.width,
          })),
        );
        expect(new Set(pictures.map((p) => p.top)).size).toBe(rows);
        for (const { scale } of pictures) expect(scale / (pictures[0]?.scale ?? 0)).toBeCloseTo(1, 2);
        expect(
          await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
        ).toBe(0);
      }
    },
  );

  it('reads without script: pictures, sentence and table', inDeep, async () => {
    const { page } = await visit(PAGE, { javaScriptEnabled: false });
    const place = figure(page, 'other-ways');
    expect(await sentence(place)).toContain('the wedge, lever and differential screw do it');
    expect(await place.locator('svg.way').count()).toBe(5);
    expect(await place.locator('[data-table] tbody tr').count()).toBe(5);
  });
});
