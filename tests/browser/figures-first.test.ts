/**
 * Picture first: in every figure the picture and its chief fields are in one window, wide and on a phone, the whole figure is in one
 * window too while its groups are shut, and nothing is asked for that changes nothing. The groups say what they hold, and open where a
 * number in them is refused.
 */
import { describe, expect, it } from 'vitest';
import { drawn, inDeep, some } from '../support/deep.ts';
import type { Page } from '../support/driven.ts';
import { tooSmall } from '../support/layout-checks.ts';
import {
  awake,
  fieldIn,
  figure,
  pageNames,
  readThrough,
  sentence,
  settled,
  shown,
  type,
  useBrowser,
  words,
} from '../support/page.ts';

const { visit } = useBrowser();

const WINDOWS = [
  { width: 1440, height: 900 },
  { width: 390, height: 844 },
];

/** A whole figure on a desk, px: the rest of the window is for the text that it stands in. */
const TALLEST = 640.5;

interface Extent {
  readonly name: string;
  /** From the top of the picture to the end of its chief fields, and the whole figure. */
  readonly first: number;
  readonly all: number;
  readonly idle: readonly string[];
}

const extents = (page: Page): Promise<Extent[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('figure.live')].map((place) => {
      const boxes = ['.stage', '.chief'].flatMap((part) => {
        const box = place.querySelector(part)?.getBoundingClientRect();
        return box === undefined ? [] : [box];
      });
      const idle = (place.dataset.idle ?? '').split(' ');
      return {
        name: place.dataset.figure ?? '',
        first: Math.max(...boxes.map((b) => b.bottom)) - Math.min(...boxes.map((b) => b.top)),
        all: place.getBoundingClientRect().height,
        idle: [...place.querySelectorAll<HTMLElement>('[data-field]')]
          .filter((field) => idle.includes(field.dataset.field ?? '') && !field.hidden)
          .map((field) => field.dataset.field ?? ''),
      };
    }),
  );

describe('every figure', () => {
  for (const name of drawn(3, pageNames()))
    it(`${name}: picture and chief fields are in one window, wide and on a phone, and so is a whole figure where it is wide`, async () => {
      const { page } = await visit(name, { fresh: true, viewport: { width: 1440, height: 900 } });
      await page.evaluate(() => {
        const sheet = new CSSStyleSheet();
        sheet.replaceSync('* { content-visibility: visible !important }');
        document.adoptedStyleSheets.push(sheet);
      });
      await readThrough(page);
      for (const size of WINDOWS) {
        await page.setViewportSize(size);
        await settled(page);
        for (const found of await extents(page)) {
          // A list of files is read by scrolling on a phone, as its table is.
          if (found.name === 'part-files' && size.width < 1000) continue;
          const what = `${found.name} at ${size.width}`;
          expect.soft(found.first, `${what}: picture and chief fields`).toBeLessThanOrEqual(size.height);
          if (size.width > 1000) expect.soft(found.all, `${what}: all of it`).toBeLessThanOrEqual(TALLEST);
          expect.soft(found.idle, `${what}: idle, yet shown`).toEqual([]);
        }
        expect.soft(await tooSmall(page), `${name} at ${size.width}: targets under 24 px`).toEqual([]);
      }
    });
});

describe('the fields of a figure', () => {
  it('come and go with what makes them count', inDeep, async () => {
    const { page } = await visit('contact-heat-creep.html');
    const place = await shown(figure(page, 'ball-and-seat'));
    const angle = fieldIn(place, /half angle/i);
    const rollers = fieldIn(place, /rollers/i);
    expect(await angle.isVisible()).toBe(false);
    expect(await rollers.first().isVisible()).toBe(false);
    await place.getByLabel('in a vee').check();
    await settled(page);
    expect(await angle.isVisible()).toBe(true);
    expect(await rollers.first().isVisible()).toBe(false);
    await place.getByLabel('on two rollers').check();
    await settled(page);
    expect(await angle.isVisible()).toBe(false);
    expect(await rollers.count()).toBe(2);
    expect(await rollers.first().isVisible()).toBe(true);
  });

  it('are one stop of the Tab key each', async () => {
    const { page } = await visit('two-screws.html');
    const place = await shown(figure(page, 'section'));
    const stops = await place
      .locator('[data-inputs] button.step')
      .evaluateAll((all) => (all as HTMLElement[]).filter((b) => b.tabIndex >= 0).length);
    expect(stops).toBe(0);
  });

  it('tell in one line what they hold while they are shut, and follow', inDeep, async () => {
    const { page } = await visit('two-screws.html');
    const place = await shown(figure(page, 'section'), true, false);
    const group = place.locator('[data-group=threads]');
    expect(await words(group.locator('summary'))).toBe('Threads A M10×1.5, C 3/8-16 UNC');
    await group.locator('summary').click();
    await type(fieldIn(place, /thread C/i), 'M8x1.25');
    expect(await words(group.locator('[data-state]'))).toBe('A M10×1.5, C M8×1.25');
  });

  it('open by themselves where a number in them is refused from elsewhere, and it is said', async () => {
    const { page } = await visit('two-screws.html');
    const place = await shown(figure(page, 'section'), true, false);
    const group = place.locator('[data-group=threads]');
    expect(await group.getAttribute('open')).toBeNull();
    // What an example is given is folded where a figure above has it already.
    await page
      .locator('.example')
      .first()
      .evaluate((at) => {
        for (const fold of at.querySelectorAll('details')) fold.open = true;
      });
    await type(fieldIn(page.locator('.example').first(), /thread A/i), 'rubbish');
    await settled(page);
    expect(await group.getAttribute('open')).not.toBeNull();
    expect(await group.locator('.field-note').first().isVisible()).toBe(true);
    expect(await words(page.locator('.voice'))).toMatch(/^Threads: Read “rubbish”/);
    // Whoever shuts it has read it.
    await group.locator('summary').click();
    await settled(page);
    expect(await group.getAttribute('open')).toBeNull();
  });

  it('stand open where the address brings a refused number', inDeep, async () => {
    const { page } = await visit('two-screws.html?foot.A.metric=rubbish');
    const place = await shown(figure(page, 'section'), true, false);
    expect(await place.locator('[data-group=threads]').getAttribute('open')).not.toBeNull();
  });

  it('keep the picture in view on a phone while they are used, and let it go after', async () => {
    for (const name of some(1, ['two-screws.html', 'preload-and-lock.html'])) {
      const { page } = await visit(name, { fresh: true, viewport: { width: 390, height: 844 } });
      const place = await shown(page.locator('figure.live').first());
      const field = place.locator('.group input[type=text]').last();
      await field.focus();
      await field.evaluate((e) => e.scrollIntoView({ block: 'end' }));
      await settled(page);
      const seen = () =>
        place.locator('.stage').evaluate((stage) => {
          const box = stage.getBoundingClientRect();
          return Math.min(innerHeight, box.bottom) - Math.max(0, box.top);
        });
      expect(await seen(), name).toBeGreaterThan(250);
      const box = await field.boundingBox();
      const stage = await place.locator('.stage').boundingBox();
      if (!box || !stage) throw new Error('not to be seen');
      expect(box.y, `${name}: the field is not under the picture`).toBeGreaterThanOrEqual(stage.y + stage.height - 1);
      await field.evaluate((e: HTMLElement) => e.blur());
      await page.evaluate(() => document.body.dispatchEvent(new Event('pointerdown', { bubbles: true })));
      await settled(page);
      expect(await seen(), name).toBeLessThan(250);
    }
  });
});

describe('shown large', () => {
  it('a picture takes the window, and what is read off it waits until the room has said what it expects', async () => {
    const { page } = await visit('two-screws.html', { fresh: true, viewport: { width: 1440, height: 900 } });
    const place = await shown(figure(page, 'section'), true, false);
    const stage = place.locator('.stage');
    const before = await stage.boundingBox();
    await place.getByRole('button', { name: 'Show large' }).click();
    await page.locator('.projected').waitFor();
    await settled(page);
    const large = await stage.boundingBox();
    expect((large?.width ?? 0) * (large?.height ?? 0)).toBeGreaterThan(
      1.3 * (before?.width ?? 1) * (before?.height ?? 1),
    );
    expect((large?.y ?? 0) + (large?.height ?? 0), 'all of it in the window').toBeLessThanOrEqual(900);
    const says = place.locator('[data-says]');
    expect(await says.isVisible()).toBe(false);
    // By the key, and by the button.
    await page.keyboard.press('ArrowDown');
    expect(await says.isVisible()).toBe(true);
    await page.keyboard.press('ArrowUp');
    expect(await says.isVisible()).toBe(false);
    await page.getByRole('button', { name: 'Show the readings' }).click();
    expect(await says.isVisible()).toBe(true);
    expect(await sentence(place)).toContain('43.75 µm');
    // Turned there by its knob, which is where it seems to be.
    const knob = await stage.locator('[data-knob]').boundingBox();
    if (!knob) throw new Error('no knob');
    const [x, y] = [knob.x + knob.width / 2, knob.y + knob.height / 2];
    await page.mouse.move(x, y - knob.height * 0.3);
    await page.mouse.down();
    await page.mouse.move(x + knob.width * 0.3, y, { steps: 8 });
    await page.mouse.up();
    await settled(page);
    expect(await sentence(place)).toMatch(/^0\.7[0-9]* turns clockwise/);
    await page.keyboard.press('Escape');
    await awake(page);
    expect(await stage.getAttribute('style')).toBe(null);
    expect(await says.isVisible()).toBe(true);
  });
});
