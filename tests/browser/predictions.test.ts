/** Predict first: the answer is judged by its idea, a known slip is named, and the way round is always open. */

import { describe, expect, it } from 'vitest';
import { howMany, inDeep, some } from '../support/deep.ts';
import type { Locator } from '../support/driven.ts';
import { figure, settled, shown, units, useBrowser, words } from '../support/page.ts';

const { visit } = useBrowser();

const open = async (name: string) => {
  const { page } = await visit(name);
  const place = await shown(page.locator('.predict').first());
  return { page, place };
};
const predict = async (place: Locator, text: string): Promise<string> => {
  await place.locator('input').fill(text);
  await place.getByRole('button', { name: /prediction/ }).click();
  await settled(place.page());
  return words(place.locator('.verdict'));
};

describe('a prediction', () => {
  it('hides the answer until one is made, or until it is asked for', async () => {
    const { place } = await open('two-screws.html');
    expect(await place.locator('details').getAttribute('open')).toBeNull();
    expect(await place.locator('.reveal p').isVisible()).toBe(false);
    await place.locator('summary').click();
    expect(await place.locator('.reveal p').isVisible()).toBe(true);
    expect(await words(place.locator('.verdict'))).toBe('');
  });

  it('is judged right, near, the other way, or by the slip that leads to it', async () => {
    const { page, place } = await open('two-screws.html');
    for (const [text, verdict] of [
      ['87.5 µm', /^Yes: 87\.50 µm\.$/],
      ['87.5', /^Yes: 87\.50 µm\.$/],
      ['0.0875 mm', /^Yes: 87\.50 µm\.$/],
      ['88', /^Yes: 87\.50 µm\.$/],
      ['-87.5', /^Right amount, wrong direction: you said −87\.5 µm, it is 87\.50 µm\.$/],
      ['3.0875 mm', /You added the leads\. They would add/],
      ['1.5 mm', /That is thread A alone/],
      ['-1.5 mm', /That is thread A alone/],
      ['90.0', /rounded the inch pitch|not far off/],
      ['0', /^You said it does not move; it moves 87\.50 µm\.$/],
      ['100', /^You said 100 µm; it is 87\.50 µm\. You (?:rounded|took)|not far off\.$/],
      ['1 µm', /it is 87\.50 µm, 8[78] times more\.$/],
      ['20 mm', /it is 87\.50 µm, 230 times less\.$/],
    ] as const) {
      expect(await predict(place, text), text).toMatch(verdict);
      expect(await place.locator('input').getAttribute('aria-invalid')).toBe('false');
      expect(await place.locator('details').getAttribute('open')).not.toBeNull();
      const scale = await words(place.locator('.scale'));
      expect(scale).toContain('you: ');
      expect(scale).toContain('computed: 87.50 µm');
      expect(await place.locator('.scale').innerHTML()).not.toMatch(/NaN|Infinity/);
    }
    expect(await page.locator('.predict .verdict').first().getAttribute('role')).toBe('status');
  });

  it('covers what the figure under it says while that is its answer', async () => {
    const { page } = await visit('per-flat.html');
    const place = await shown(figure(page, 'divided-turn'));
    const told = place.locator('[data-told]').first();
    const says = place.locator('[data-says]');
    const all = async () => [
      await says.isVisible(),
      await told.isVisible(),
      await place.locator('.covered').isVisible(),
    ];
    expect(await all()).toEqual([false, false, true]);
    const answer = page.locator('.predict .reveal summary').first();
    await answer.click();
    expect(await all()).toEqual([true, true, false]);
    await answer.click();
    expect(await all()).toEqual([false, false, true]);
    // The bar of one flat, in per cent of that of one turn.
    const bar = page.locator('.predict').first();
    await bar.locator('input').first().fill('16.7');
    await bar.getByRole('button', { name: /prediction/ }).click();
    await answer.click();
    expect(await all()).toEqual([true, true, false]);
    await page.reload();
    expect(await says.isVisible()).toBe(true);
  });

  it('shows what goes, and where it was said to go', async () => {
    const { page } = await visit('three-parts.html');
    const place = await shown(page.locator('.predict').first());
    await place.locator('.way-picture rect').waitFor();
    expect(await place.locator('.way-picture rect').isVisible()).toBe(true);
    await place.getByLabel(/up$/).check();
    await place.getByRole('button', { name: /prediction/ }).click();
    expect(await place.locator('.way-picture rect').count()).toBe(2);
    expect(await place.locator('.way-picture rect').nth(1).isVisible()).toBe(true);
  });

  it('that can’t be read gives a sentence and shows nothing', inDeep, async () => {
    const { place } = await open('two-screws.html');
    for (const [text, verdict] of [
      ['', /^Nothing was typed/],
      ['a hair', /^Read “a hair”, which is not a number/],
      ['87 N', /in N; this takes mm/],
      ['NaN', /not a number/],
      ['1e300', /out of range for the net lead.*type a smaller one/],
      ['<img src=x onerror=alert(1)>', /not a number/],
      ['8'.repeat(10_240), /\(10240 characters\)/],
    ] as const) {
      expect(await predict(place, text), text.slice(0, 20)).toMatch(verdict);
      expect(await place.locator('input').getAttribute('aria-invalid')).toBe('true');
      expect(await place.locator('details').getAttribute('open')).toBeNull();
      expect(await place.locator('.scale').isVisible()).toBe(false);
    }
  });

  it('keeps the chapter’s own numbers whatever the reader changes, and follows the unit switch', inDeep, async () => {
    const { page } = await visit('two-screws.html?foot.A=M8x1.25');
    const place = await shown(page.locator('.predict').first());
    expect(await predict(place, '87.5')).toBe('Yes: 87.50 µm.');
    await units(page, 'inch');
    expect(await words(place.locator('.verdict'))).toBe('Yes: 3.445 thou.');
    expect(await words(place.locator('label'))).toContain('thou');
    expect(await predict(place, '3.445')).toBe('Yes: 3.445 thou.');
  });

  it('of 30° of a 1/4-28 names the slip for threads per inch taken the wrong way up', inDeep, async () => {
    const { place } = await open('inch-and-starts.html');
    expect(await predict(place, '-75.6')).toMatch(/^Yes/);
    expect(await predict(place, '75.6')).toMatch(/^Right amount, wrong direction/);
    expect(await predict(place, '0.907 mm')).toMatch(/That is a whole turn/);
    expect(await predict(place, '91.9 µm')).toMatch(/25\.4 the wrong way up/);
  });

  it('as a curve is drawn by keys and by presses; both stay, and what was thought is named', async () => {
    const { page } = await visit('preload-and-lock.html');
    const place = await shown(page.locator('.predict').first());
    const points = place.locator('[role=slider]');
    await points.first().waitFor();
    const send = place.getByRole('button', { name: /prediction/ });
    await send.click();
    expect(await words(place.locator('.verdict'))).toMatch(/^Set the points first/);
    // A spring that is stretched: from 30 N up to 48 N. The first four by keys, the others by the mouse.
    const box = (await place.locator('.curve-picture .frame').boundingBox()) ?? { x: 0, y: 0, width: 0, height: 0 };
    for (let i = 0; i < 7; i++) {
      if (i < 4) {
        await points.nth(i).focus();
        for (let k = 0; k < 4; k++) await page.keyboard.press('PageUp');
        for (let k = 0; k < 2 * i; k++) await page.keyboard.press('ArrowUp');
      } else {
        await page.mouse.move(box.x + (box.width * i) / 6 - (i === 6 ? 1 : 0), box.y + box.height * (0.5 - i / 20) + 1);
        await page.mouse.down();
        await page.mouse.up();
      }
    }
    expect(await points.nth(0).getAttribute('aria-valuetext')).toBe('30\u00a0N');
    await send.click();
    await settled(page);
    expect(await words(place.locator('.verdict'))).toMatch(
      /^The two differ most at 6 turns: you drew .* You stretched it\./,
    );
    for (const part of ['[data-yours]', '[data-answer]'])
      expect(await place.locator(part).getAttribute('d'), part).toMatch(/^M.*L/);
    expect(await place.locator('details').getAttribute('open')).not.toBeNull();
  });

  it('as a bar stands beside the known one, and a slip is named by its height', inDeep, async () => {
    const { page } = await visit('effort-and-feel.html');
    const place = await shown(page.locator('.predict').first());
    const field = place.locator('input[type=text]:visible');
    await field.waitFor();
    await field.fill('20');
    await place.getByRole('button', { name: /prediction/ }).click();
    await settled(page);
    expect(await words(place.locator('.verdict'))).toMatch(/You took a fifth of the plain screw/);
    expect(await place.locator('.bar-picture rect').count()).toBe(3);
  });

  it('every known slip of every prediction is named when it is made', async () => {
    let named = 0;
    for (const name of some(1, ['two-screws.html', 'one-screw.html', 'per-flat.html'])) {
      const { page } = await visit(name);
      const model = JSON.parse((await page.locator('#page-model').textContent()) ?? '{}') as {
        predictions: { answer: number; output: string; slips: { value: number; says: string }[] }[];
      };
      for (const [i, { slips }] of model.predictions.entries())
        for (const { value, says } of slips) {
          const place = page.locator('.predict').nth(i);
          // What is predicted on a picture is not typed.
          if ((await place.locator('input').count()) !== 1) continue;
          expect(await predict(place, `${value} mm`), `${name}: ${says}`).toContain(says);
          named++;
        }
    }
    expect(named).toBeGreaterThanOrEqual(howMany(4, 9));
  });
});
