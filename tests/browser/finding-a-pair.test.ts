/** The chapter on finding a pair in a browser: the list answers the reader’s wish and drawer, rows open in the figures, empty answers say why. */
import { describe, expect, it } from 'vitest';
import type { Figure } from '../../widgets/figures/kit/figure.ts';
import { inDeep, some } from '../support/deep.ts';
import {
  beside,
  fieldIn,
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

const PAGE = 'finding-a-pair.html';
const { visit } = useBrowser();

const opened = async (way?: Parameters<typeof visit>[1], search = '') => {
  const { page } = await visit(PAGE + search, way);
  const place = await shown(figure(page, 'pair-map'));
  await settled(page);
  return { page, place };
};
const rows = async (place: Awaited<ReturnType<typeof opened>>['place']) =>
  (await place.locator('.pair-list tbody th').allTextContents()).map((t) => t.trim());

describe('the list', () => {
  it('holds the pairs of the drawer for the wish, and follows both', async () => {
    const { page, place } = await opened();
    expect(await rows(place)).toEqual(['#8-32 UNC with M5×0.8', '#10-32 UNF with M5×0.8', 'M4×0.7 with #8-36 UNF']);
    expect(await words(place.locator('.pair-list tbody tr').last())).toContain('1/180 mm');
    await place.getByRole('radio', { name: 'anywhere' }).check();
    await settled(page);
    expect(await rows(place)).toHaveLength(8);
    await type(fieldIn(place, /^Wanted step/), '14.58');
    await place.getByRole('radio', { name: 'both you own' }).check();
    await settled(page);
    expect(await rows(place)).toContain('M10×1.5 with 3/8-16 UNC');
    await place.getByRole('radio', { name: 'longest stroke' }).check();
    await settled(page);
    const strokes = (await place.locator('.pair-list tbody td:nth-child(6)').allTextContents()).map(Number.parseFloat);
    expect([...strokes].sort((a, b) => b - a)).toEqual(strokes);
    expect((await written(page)).searchParams.get('search.order')).toBe('longest stroke');
  });

  it('opens a row in the figures of the second chapter, by keyboard', async () => {
    const { page, place } = await opened();
    await place.getByRole('link', { name: 'M4×0.7 with #8-36 UNF' }).focus();
    await page.keyboard.press('Enter');
    await page.waitForURL(/two-screws\.html\?/);
    await page.waitForSelector('html[data-awake]');
    expect(await sentence(await shown(figure(page, 'section')))).toContain('2.778 µm');
    expect(await fieldIn(figure(page, 'section'), /^Thread C/).inputValue()).toBe('#8-36 UNF');
  });

  it('rings on the map the row that is pointed at or focused', inDeep, async () => {
    const { place } = await opened();
    const at = () => place.locator('[data-ring]').getAttribute('cx');
    const before = await at();
    await place.getByRole('link', { name: 'M4×0.7 with #8-36 UNF' }).focus();
    expect(await at()).not.toBe(before);
    await place.locator('[data-row="0"]').hover();
    expect(await at()).toBe(before);
  });
});

describe('the drawer', () => {
  it('keeps the good threads and names the wrong ones', async () => {
    const { place } = await opened();
    const field = fieldIn(place, /^Taps and dies you own/);
    await type(field, 'M10, 3/8-16, M9, M10x9, Whitworth');
    const note = await beside(field);
    expect(note).toContain('Left out: “M9”, “M10x9”, “Whitworth”; the other 2 are kept.');
    expect(note).toContain('a diameter of 9 mm has no coarse pitch');
    await type(fieldIn(place, /^Wanted step/), '14.58 µm');
    expect(await rows(place)).toEqual(['M10×1.5 with 3/8-16 UNC']);
    await type(field, 'M9');
    expect(await field.getAttribute('aria-invalid')).toBe('true');
    expect(await rows(place)).toEqual(['M10×1.5 with 3/8-16 UNC']);
  });

  it('goes into the address and comes back from it, threads of no series too', inDeep, async () => {
    const { page, place } = await opened();
    await type(fieldIn(place, /^Taps and dies you own/), 'M8, 12 mm x 1.1 mm');
    await type(fieldIn(place, /^Wanted step/), '25');
    const { search } = await written(page);
    const again = await opened({}, search);
    expect(await fieldIn(again.place, /^Taps and dies you own/).inputValue()).toBe('M8, 12 mm x 1.1 mm');
    expect(await rows(again.place)).toEqual(['12 mm × 1.1 mm with M8×1.25']);
  });

  it('refuses an unknown series and keeps the last', inDeep, async () => {
    const { place } = await opened();
    const field = fieldIn(place, /^Series you would buy from/);
    await type(field, 'coarse, UNX');
    expect(await beside(field)).toContain('Read “UNX” as a series of threads');
    await type(field, 'coarse');
    expect(await beside(field)).toBe('');
  });
});

describe('an empty answer', () => {
  it('says which filter excludes the most and shows the nearest pair outside it', async () => {
    const { place } = await opened();
    await type(fieldIn(place, /^Wanted step/), '0.5');
    const says = await sentence(place);
    expect(says).toContain('No pair passes. The limit that excludes most is the wanted motion');
    expect(says).toContain('M4×0.7 with #8-36 UNF: 5.556 µm a turn');
    // The nearest of the drawer, and the one pair of that step, which has to be bought.
    expect(await rows(place)).toEqual(['M4×0.7 with #8-36 UNF', '#1-64 UNC with M2×0.4']);
    expect(await words(place.locator('.verdict-cell').first())).toMatch(/^nearest: \+85 % off the wanted motion/);
  });

  it('becomes three pairs where a finer divider is at hand', inDeep, async () => {
    const { page, place } = await opened();
    await type(fieldIn(place, /^Wanted step/), '0.5');
    await type(fieldIn(place, /^Other dividers at hand/), 'twelve points');
    await settled(page);
    expect(await rows(place)).toHaveLength(3);
    expect(await words(place.locator('.pair-list tbody tr').last())).toContain('0.4630 µm at 12');
    expect((await written(page)).searchParams.get('search.dividers')).toBe('twelve points');
    await type(fieldIn(place, /^Other dividers at hand/), 'octagon');
    expect(await beside(fieldIn(place, /^Other dividers at hand/))).toContain('Read “octagon” as a divider of a turn');
  });

  it('says that a step and a stroke exclude each other, on a narrow page too', inDeep, async () => {
    for (const viewport of some(1, [NARROW, undefined])) {
      const { page, place } = await opened(
        viewport ? { viewport } : {},
        '?search.s_w=2+µm&search.S_w=2+mm&search.drawer=anywhere&search.against=stroke',
      );
      expect(await sentence(place)).toContain('1000 steps, 167 turns at 6 steps per turn, with any pair');
      expect(await words(place.locator('.map'))).toContain('least stroke: 2 mm');
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
        viewport?.width ?? 1280,
      );
    }
  });

  it('refuses bounds that exclude each other in one sentence, and recovers', inDeep, async () => {
    const { place } = await opened();
    await type(fieldIn(place, /^Largest diameter/), '1.2 mm');
    expect(await words(place.locator('[data-refusal]'))).toContain('and nothing lies between them: exchange the two.');
    await type(fieldIn(place, /^Largest diameter/), '40 mm');
    expect(await words(place.locator('[data-refusal]'))).toBe('');
  });
});

describe('the map', () => {
  it('moves the wish where the dashed line is dragged, and the field with it', async () => {
    const { page, place } = await opened();
    await shown(place.locator('.map'));
    const grip = (await place.locator('[data-wish] .wish-head').boundingBox()) ?? { x: 0, y: 0, width: 0, height: 0 };
    await page.mouse.move(grip.x + grip.width / 2, grip.y + grip.height / 2);
    await page.mouse.down();
    await page.mouse.move(grip.x + grip.width / 2 + 150, grip.y + 40, { steps: 5 });
    await settled(page);
    await page.mouse.up();
    const wanted = Number.parseFloat(await fieldIn(place, /^Wanted step/).inputValue());
    expect(wanted).toBeGreaterThan(2);
    expect(wanted).toBeLessThan(20);
  });

  it('draws against gain, stroke, size and the two leads, in both units, on a narrow page too', inDeep, async () => {
    for (const viewport of some(1, [NARROW, undefined])) {
      const { page, place } = await opened(viewport ? { viewport } : {});
      for (const view of some(1, ['inch', 'metric'] as const)) {
        await units(page, view);
        for (const against of ['gain', 'stroke', 'size', 'the two leads']) {
          await place.getByRole('radio', { name: against, exact: true }).check();
          await settled(page);
          expect(await place.locator('.map').getAttribute('aria-label')).toContain(
            against === 'the two leads' ? 'shorter lead against longer lead' : `${against} against net lead`,
          );
          expect(await words(place.locator('.map'))).not.toMatch(/NaN|Infinity|undefined/);
        }
      }
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
        viewport?.width ?? 1280,
      );
    }
  });

  it('answers a change within a frame', async () => {
    const { page } = await opened();
    const times = await page.evaluate(() => {
      const widget = Object.values(window.notebookFigures?.['pair-map'] ?? {}).find(
        (w) => (w as Figure).name === 'pair-map',
      ) as Figure | undefined;
      if (!widget) throw new Error('no map');
      const numbers = (s_w: number) =>
        ({
          threads: {},
          values: { s_w, k: 1, q_w: 0.15, q_X: 1, t_l: 0, d_least: 0, d_most: 400, S_w: 0, F: 0, sigma_a: 100 },
          choices: {
            hands: 'either',
            drawer: 'anywhere',
            fitted: 'nested',
            against: 'gain',
            order: 'nearest motion',
          },
          texts: { taps: 'M4', series: 'all', dividers: '' },
        }) as Parameters<Figure['at']>[0];
      return Array.from({ length: 40 }, (_, i) => {
        const from = performance.now();
        const drawn = widget.at(numbers(0.1 + i / 1000), 'metric');
        if (drawn.ok) drawn.value.draw();
        return performance.now() - from;
      });
    });
    // The median, since the machine may be busy with other things.
    expect(times.sort((a, b) => a - b)[20]).toBeLessThan(16);
  });
});

describe('what rounding costs', () => {
  it('follows the threads, and says so where nothing is left to round', inDeep, async () => {
    const { page } = await visit('round-last.html');
    const place = await shown(figure(page, 'rounding-cost'));
    expect(await words(place.locator('.in-fractions'))).toBe('Exactly: 127/180 − 126/180 = 1/180 mm');
    expect(await sentence(place)).toContain('6.000 µm (+8.0 %)');
    await type(fieldIn(place, /^Thread A/), 'M10x1.5');
    await type(fieldIn(place, /^Thread C/), '3/8-16');
    expect(await words(place.locator('.in-fractions'))).toBe('Exactly: 127/80 − 120/80 = 7/80 mm');
    await type(fieldIn(place, /^Thread C/), 'M12x1.5');
    expect(await words(place.locator('[data-refusal]'))).toContain('have the same lead to the last digit');
  });
});

it('does not scroll sideways while a sentence has no number to say', inDeep, async () => {
  const { page } = await visit('round-last.html');
  const place = await shown(figure(page, 'rounding-cost'));
  const field = fieldIn(place, /^Thread C/);
  await place.getByRole('button', { name: /^thread C.*next smaller standard thread$/i }).click();
  await settled(page);
  expect(await words(place.locator('[data-refusal]'))).toContain('have the same lead to the last digit');
  expect(await words(page.locator('.q.refused').first())).toContain('The two leads are equal');
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(1280);
  await type(field, '8-36 UNF');
  expect(await page.locator('.q.refused').count()).toBe(0);
});

it('reads without script: map, list and judgements are on the page', inDeep, async () => {
  const { page } = await visit(PAGE, { javaScriptEnabled: false });
  const place = figure(page, 'pair-map');
  expect(await place.locator('.grain').count()).toBeGreaterThan(2);
  expect(await rows(place)).toHaveLength(3);
  expect(await sentence(place)).toContain('3 of 20\u202f342 pairs pass');
});
