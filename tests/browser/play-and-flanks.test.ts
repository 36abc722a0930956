/** The chapters of play worked as a reader works it: load dragged through nought, turned out and back, a batch built and stopped. */

import { describe, expect, it } from 'vitest';
import { inDeep } from '../support/deep.ts';
import type { Locator, Page } from '../support/driven.ts';
import {
  asFiles,
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

const { visit } = useBrowser();
/** Where each figure stands. */
const PAGES = {
  'flanks-under-load': 'which-flank.html',
  'reversal-loop': 'turns-lost.html',
  'play-batch': 'measured-parts.html',
};
const FORCE = 'Force on the carried part, towards the base is plus';

const open = async (
  widget: keyof typeof PAGES,
  address = PAGES[widget],
  way = {},
): Promise<{ page: Page; place: Locator }> => {
  const { page } = await visit(address, way);
  const place = await shown(figure(page, widget));
  if (widget !== 'flanks-under-load') {
    await shown(place);
  }
  return { page, place };
};
const read = (place: Locator, key: string): Promise<string> => words(place.locator(`[data-read="${key}"]`));

describe('flanks-under-load', () => {
  it('dragged through nought changes sides thread by thread, and field, sentence and marks follow', async () => {
    const { page, place } = await open('flanks-under-load');
    const track = place.locator('[data-push]');
    await track.scrollIntoViewIfNeeded();
    const box = await track.boundingBox();
    if (!box) throw new Error('no track');
    // The track runs from −20 N at 20 to 20 N at 380 of 400.
    const at = (Q: number) => box.x + (box.width * (20 + ((Q + 20) / 40) * 360)) / 400;
    const y = box.y + box.height * 0.77;
    await page.mouse.move(at(8), y);
    await page.mouse.down();
    const seats: string[] = [];
    for (const Q of [4, -2.5, -9]) {
      await page.mouse.move(at(Q), y, { steps: 4 });
      await settled(page);
      seats.push(`${await read(place, 'turned')} / ${await read(place, 'relative')}`);
    }
    await page.mouse.up();
    expect(seats.map((s) => [...s.matchAll(/(pressed|pulled) flank of the (\w+)/g)].map((m) => m[0]))).toEqual([
      ['pressed flank of the turned', 'pressed flank of the carried'],
      ['pressed flank of the turned', 'pulled flank of the carried'],
      ['pulled flank of the turned', 'pulled flank of the carried'],
    ]);
    expect(
      Number.parseFloat(
        await fieldIn(place, FORCE)
          .inputValue()
          .then((text) => text.replace('−', '-')),
      ),
    ).toBeCloseTo(-9, 0);
    expect(await place.locator('[data-path="A-upper-contact"]').getAttribute('d')).not.toBe('');
    expect(await place.locator('[data-path="A-lower-contact"]').getAttribute('d')).toBe('');
    expect((await written(page)).searchParams.get('foot.Q_pc')).toMatch(/^[-−](8\.9|9|9\.1) N$/);
  });

  it('answers keys, field and buttons alike', inDeep, async () => {
    const { page, place } = await open('flanks-under-load');
    const track = place.locator('[data-push]');
    await track.focus();
    for (const key of ['Home', 'ArrowRight', 'PageUp', 'Shift+ArrowUp']) await page.keyboard.press(key);
    await settled(page);
    expect(await track.getAttribute('aria-valuenow')).toBe('-9');
    expect(await track.getAttribute('aria-valuetext')).toContain('thread C: the pulled flank');
    await type(fieldIn(place, FORCE), '-5 N');
    expect(await sentence(place)).toContain(
      'across thread C the pulled flank of the carried part touches; with 0 N across thread A neither flank has to touch',
    );
    await place.getByRole('button', { name: `${FORCE}: one step more` }).click();
    await settled(page);
    // A step goes to the next round number, so that nought is always on the way.
    expect(await track.getAttribute('aria-valuenow')).toBe('-4');
  });

  it('calls a measured clearance below nought interference and keeps the picture', inDeep, async () => {
    const { page, place } = await open('flanks-under-load');
    await place.getByRole('radio', { name: 'as measured' }).check();
    await settled(page);
    expect(await words(place.locator('[data-gap="C-lower"]'))).toBe('open by');
    await type(fieldIn(place, 'Thread C, clearance if measured'), '-0.05 mm');
    expect(await words(place.locator('[data-refusal]'))).toContain('which is interference');
    expect(await place.locator('[data-path="A-screw"]').getAttribute('d')).not.toBe('');
  });
});

describe('reversal-loop', () => {
  it('draws what is turned: out, back past the play, and the loaded reading comes home while the other stays', async () => {
    const { page, place } = await open('reversal-loop');
    await place.getByRole('button', { name: 'Turn out' }).click();
    await settled(page);
    expect(await read(place, 'loose-reading')).toBe('+350.0 µm');
    await place.getByRole('button', { name: 'Turn back' }).click();
    await settled(page);
    expect(await read(place, 'loaded-reading')).toBe('0 µm');
    // Both plays are left over: (201.7 µm) where the pieces are middling.
    expect(await read(place, 'loose-reading')).toBe('+201.7 µm');
    const trail = await place.locator('[data-trail="loose"]').getAttribute('d');
    expect((trail ?? '').split('L').length).toBeGreaterThan(100);
    await place.getByRole('button', { name: 'Clear your turning' }).click();
    await settled(page);
    expect(await read(place, 'loose-reading')).toBe('0 µm');
  });

  it('is turned by keys a flat at a time, in either units', inDeep, async () => {
    const { page, place } = await open('reversal-loop');
    await place.locator('[data-knob]').focus();
    for (let i = 0; i < 3; i++) await page.keyboard.press('ArrowUp');
    await settled(page);
    expect(await read(place, 'turns')).toBe('0.5000');
    expect(await read(place, 'loaded-reading')).toBe('+43.75 µm');
    await units(page, 'inch');
    await shown(place);
    expect(await read(place, 'loaded-reading')).toBe('+1.722 thou');
  });

  it('opens when the load is less than the friction', inDeep, async () => {
    const { place } = await open('reversal-loop');
    expect(await sentenceWith(place, 'nothing is lost')).toContain('2.30 turns');
    await type(fieldIn(place, 'Friction that holds the carried part'), '10 N');
    await sentenceWith(place, 'the load does not overcome the friction');
  });
});

describe('play-batch', () => {
  /** Starts the batch and waits for its word; the longest task of the page meanwhile, in ms, by the browser's own count. */
  const build = async (page: Page, place: Locator): Promise<{ told: string; longest: number }> => {
    await page.evaluate(() => {
      const w = window as unknown as { longTasks: number[] };
      w.longTasks = [];
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries()) w.longTasks.push(entry.duration);
      }).observe({ type: 'longtask' });
    });
    await place.locator('[data-batch="start"]').click();
    await place.locator('[data-batch="told"]', { hasText: 'Drawn in' }).waitFor();
    const longest = await page.evaluate(() => Math.max(0, ...(window as unknown as { longTasks: number[] }).longTasks));
    return { told: await words(place.locator('[data-batch="told"]')), longest };
  };
  const result = (place: Locator): Promise<string[]> => place.locator('.batch-result td').allTextContents();

  it('draws a million beside the page where it is served and in slices where it is a file, to the same figures', async () => {
    const served = await open('play-batch', PAGES['play-batch'], { fresh: true });
    const there = await build(served.page, served.place);
    expect(there.told).toMatch(/^Drawn in [\d.]+ s, beside the page\.$/);
    expect(await sentence(served.place)).toContain('1\u202f000\u202f000 assemblies drawn');
    const filed = await open('play-batch', PAGES['play-batch'], { from: asFiles(), fresh: true });
    const here = await build(filed.page, filed.place);
    expect(here.told).toMatch(/^Drawn in [\d.]+ s, in slices on the page\.$/);
    expect(await result(filed.place)).toEqual(await result(served.place));
    // The slices: none near the fifty milliseconds from which a browser calls a task long, but for the final drawing.
    expect(here.longest, 'longest task in slices, ms').toBeLessThan(150);
    expect(there.longest, 'longest task beside the worker, ms').toBeLessThan(150);
  });

  it('shows progress, stops when told to, and draws again', async () => {
    const { page, place } = await open('play-batch', PAGES['play-batch'], { from: asFiles() });
    await type(fieldIn(place, 'Assemblies to draw'), '10000000');
    await place.locator('[data-batch="start"]').click();
    const bar = place.locator('progress');
    await page.waitForFunction(() => (document.querySelector('progress')?.value ?? 0) > 0);
    expect(await bar.isVisible()).toBe(true);
    await place.locator('[data-batch="stop"]').click();
    expect(await words(place.locator('[data-batch="told"]'))).toContain('Stopped');
    expect(await bar.isVisible()).toBe(false);
    expect(await sentence(place)).toContain('has not been drawn yet');
    await type(fieldIn(place, 'Assemblies to draw'), '50000');
    await build(page, place);
    expect(await sentence(place)).toContain('50\u202f000 assemblies drawn');
  });

  it('stops by itself when the numbers change under it', inDeep, async () => {
    const { page, place } = await open('play-batch', PAGES['play-batch'], { from: asFiles() });
    await type(fieldIn(place, 'Assemblies to draw'), '10000000');
    await place.locator('[data-batch="start"]').click();
    await type(fieldIn(place, 'Seed, any whole number'), '7');
    await place.locator('[data-batch="told"]', { hasText: 'numbers changed' }).waitFor();
    expect(await page.locator('progress').isVisible()).toBe(false);
  });

  it('bounds the number of assemblies and the capability, each with its reason', inDeep, async () => {
    const { place } = await open('play-batch');
    const count = fieldIn(place, 'Assemblies to draw');
    await type(count, '1e9');
    expect(await beside(count)).toContain('because more would change no figure that can be measured');
    const Cp = fieldIn(place, 'Capability');
    await type(Cp, '0');
    expect(await beside(Cp)).toContain('a capability of zero is a spread without bound');
  });

  it('gives the same seed the same batch from a link', inDeep, async () => {
    const { place } = await open('play-batch', `${PAGES['play-batch']}?foot.n_s=11&foot.n_a=5000`);
    const first = await result(place);
    expect(
      await open('play-batch', `${PAGES['play-batch']}?foot.n_s=11&foot.n_a=5000`).then((o) => result(o.place)),
    ).toEqual(first);
    expect(
      await open('play-batch', `${PAGES['play-batch']}?foot.n_s=12&foot.n_a=5000`).then((o) => result(o.place)),
    ).not.toEqual(first);
  });
});

describe('the chapters', () => {
  it('says interference in the worked example where the nut is smaller', inDeep, async () => {
    const { page } = await visit(PAGES['play-batch']);
    const example = page.locator('#example-measured');
    await example.scrollIntoViewIfNeeded();
    await type(fieldIn(example, /pitch diameter of the nut/i), '8.9 mm');
    expect(await words(example.locator('[data-result]').first())).toContain('which is interference');
  });

  it('works its examples from the classes typed into a designation', inDeep, async () => {
    const { page } = await visit(PAGES['reversal-loop']);
    const example = page.locator('#example-foot-tight');
    await example.scrollIntoViewIfNeeded();
    // Nominal fits of position h and H touch at the tightest: no clearance, no play.
    await type(fieldIn(example, /thread A/i), 'M10x1.5-6H/6h');
    expect(await words(example.locator('[data-result]').nth(1))).toBe('= 0 µm');
  });

  it('reads without script: every figure a picture, no dead buttons of the batch', inDeep, async () => {
    for (const [name, address] of Object.entries(PAGES)) {
      const { page } = await visit(address, { javaScriptEnabled: false, viewport: NARROW });
      expect(await figure(page, name).locator('svg').count()).toBeGreaterThanOrEqual(1);
      if (name === 'play-batch') expect(await page.locator('[data-batch="controls"]').isVisible()).toBe(false);
    }
  });
});
