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

/** Parts with a class, a coat, a knob and springs: the longest sheet that a reader is likely to make. */
const PARTS =
  'base = tapped block M10x1.5-6H, 20 mm, price 3.20 | turned = stud M10x1.5-6g 20 mm, 3/8-16 UNC-2A 20 mm, coat 3 µm, price 2.40 | carried = cap 3/8-16 UNC-2B, thread 20 mm, count 2 | tip = ball 8 mm | springs = 2 between base and carried, 12 N, 0.6 N/mm, at 15 mm, loses 8 % | divider = knob 50 | lock = key at 22 mm, clearance 0.1 mm';

describe('the sheet of parts that are stated', () => {
  it('is no higher on a desk than a figure may be, and says on paper which numbers are not the reader’s', async () => {
    const { page } = await visit(`design-sheet.html?mine.adjuster=${encodeURIComponent(PARTS)}&mine.s_w=20+µm`, {
      fresh: true,
      viewport: { width: 1440, height: 900 },
    });
    await readThrough(page);
    const place = figure(page, 'design-sheet');
    expect((await extents(page)).find(({ name }) => name === 'design-sheet')?.all ?? 9999).toBeLessThanOrEqual(TALLEST);
    const own = await words(place.locator('.own-numbers'));
    expect(own).toMatch(/^The chapter’s own numbers here: /);
    // What the reader stated, and what the parts rule over, is none of the chapter’s.
    expect(own.toLowerCase()).not.toMatch(/wanted step|one a row|stiffness of the lock/);
    expect(own.toLowerCase()).toContain('wanted stroke');
  });
});

describe('a load', () => {
  it('is typed in kilograms or pounds, and the field says what it weighs for as long as it stands', async () => {
    const { page } = await visit('design-sheet.html', { fresh: true });
    const place = await shown(figure(page, 'design-sheet'));
    const box = place.locator('[data-field=W_c]');
    await place
      .locator('details:has([data-field=W_c])')
      .first()
      .evaluate((e) => e.setAttribute('open', ''));
    const field = box.locator('input');
    await field.fill('5 kg');
    expect(await words(box.locator('.field-note'))).toBe('5 kg is a mass; it weighs 49.03 N, by g = 9.80665 m/s².');
    await field.blur();
    await settled(page);
    expect(await field.inputValue()).toBe('49.03325 N');
    expect(await words(box.locator('.field-note'))).toMatch(/^5 kg is a mass/);
    await field.fill('20 N');
    expect(await words(box.locator('.field-note'))).toBe('');
  });
});

describe('the sheets of drawings', () => {
  it('are offered for the parts that are there', async () => {
    const { page } = await visit('bench-card.html', { fresh: true });
    const place = await shown(figure(page, 'part-drawings'));
    const offered = () =>
      place.locator('[data-field=sheet] label:visible').evaluateAll((all) => all.map((e) => e.textContent));
    // Its springs are not drawn and its head is a hexagon: neither has a sheet.
    expect(await offered()).toEqual(['assembly', 'base', 'turned part', 'carried part', 'arm', 'post', 'foot']);
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
