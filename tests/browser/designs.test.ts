/** The reader’s own designs in a browser: kept, used from chapter to chapter, taken along as a file, and not lost. */

import { describe, expect, it } from 'vitest';
import { inDeep, some } from '../support/deep.ts';
import { beyond, type Page } from '../support/driven.ts';
import { needs } from '../support/engines.ts';
import {
  awake,
  fieldIn,
  figure,
  NARROW,
  saved,
  sentence,
  sentenceWith,
  shown,
  type,
  useBrowser,
  words,
  written,
} from '../support/page.ts';
import { print } from '../support/paper.ts';

const { visit } = useBrowser();

const openPanel = async (page: Page) => {
  const panel = page.locator('.designs');
  if ((await panel.getAttribute('open')) === null) await panel.locator('summary').click();
  return panel;
};
const status = (page: Page) => words(page.locator('.designs [role=status]'));
const keep = async (page: Page, name: string, from: string) => {
  const panel = await openPanel(page);
  await panel.getByLabel(/under the name/).fill(name);
  await panel.getByLabel(/taken from/).selectOption(from);
  await panel.getByRole('button', { name: 'Keep' }).click();
};
const offer = async (page: Page, name: string, text: string) => {
  const panel = await openPanel(page);
  await panel
    .locator('input[type=file]')
    .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
  await page.waitForFunction(() => (document.querySelector('.designs [role=status]')?.textContent ?? '') !== '');
};

describe('a design', () => {
  it('is taken from what was worked on last', inDeep, async () => {
    const { page } = await visit('design-sheet.html');
    const from = () => page.locator('#design-from').inputValue();
    expect(await from()).not.toBe('other');
    await type(fieldIn(await shown(figure(page, 'design-sheet', 1)), /^thread A/i), 'M12x1.25');
    await page.waitForFunction(() => document.querySelector<HTMLSelectElement>('#design-from')?.value === 'other');
    await type(fieldIn(await shown(figure(page, 'design-sheet')), /^thread A/i), 'M12x1.25');
    await page.waitForFunction(() => document.querySelector<HTMLSelectElement>('#design-from')?.value === 'mine');
  });

  it('is taken from a figure by its name, says what was kept of it and what was changed besides, on a panel as wide as its words', async () => {
    const { page } = await visit('from-your-parts.html');
    const panel = await openPanel(page);
    const wide = (await panel.locator('.design-panel').boundingBox())?.width ?? 0;
    expect(wide).toBeGreaterThan(320);
    const named = await panel.locator('#design-from option').allTextContents();
    expect(named[0]).toMatch(/^Figure\s15\.1: .+ \(Figure\s15\.2\)$/);
    await type(fieldIn(await shown(figure(page, 'drawer')), /wanted step/i), '20 µm');
    await keep(page, 'Clip', 'clip-shift');
    expect(await status(page)).toMatch(
      /Kept of Example\s15\.1: .*M8×1\.25.* You also changed Figure\s15\.3; that is not kept\.$/,
    );
  });

  it('kept in one chapter is shown in the figures of the next, survives a reload, and the chapter’s own numbers come back', async () => {
    const { page } = await visit('two-screws.html');
    const section = await shown(figure(page, 'section'));
    await type(fieldIn(section, /thread A/i), 'M12x1.5');
    await type(fieldIn(section, /thread C/i), 'M8');
    await keep(page, 'Rear stop', 'foot');
    expect(await status(page)).toContain('“Rear stop” is kept in this browser.');
    await page.goto(page.url().replace(/two-screws.*/, 'per-flat.html'));
    const divided = await shown(figure(page, 'divided-turn'));
    expect(await sentence(divided)).toContain('M12×1.5 with M8×1.25: 250.0 µm a turn');
    await page.reload();
    expect(await sentence(await shown(figure(page, 'divided-turn')))).toContain('250.0 µm a turn');
    expect(await words(page.locator('.designs summary'))).toBe('My design: Rear stop');
    await page.getByRole('button', { name: 'Chapter’s own numbers' }).click();
    await sentenceWith(await shown(divided), 'M10×1.5 with 3/8-16 UNC: 87.50 µm a turn');
    expect((await written(page)).search).toBe('');
  });

  it('stands back where a link carries numbers of its own', inDeep, async () => {
    const { page } = await visit('two-screws.html');
    await keep(page, 'Foot', 'foot');
    await page.goto(page.url().replace(/two-screws.*/, 'per-flat.html?foot.A=M8x1.25&foot.C=5/16-18'));
    expect(await sentence(await shown(figure(page, 'divided-turn')))).toContain('161.1 µm a turn');
  });

  it('is offered of an adjuster that came with a link, taken from its figure; no other number and no reload has the offer', async () => {
    const { page, turnTo } = await visit('two-screws.html?foot.A=M12x1.75&foot.C=M8');
    const offer = page.getByRole('button', { name: 'Keep it as a design' });
    await offer.click();
    expect(await page.locator('#design-from').inputValue()).toBe('foot');
    await page.keyboard.type('From a colleague');
    await page.keyboard.press('Enter');
    expect(await status(page)).toContain('“From a colleague” is kept');
    expect(await offer.count()).toBe(0);
    await turnTo('per-flat.html');
    expect(await sentence(await shown(figure(page, 'divided-turn')))).toMatch(/^.*M12×1\.75 with M8×1\.25/);
    await turnTo('design-sheet.html?other.A=M16x1.5');
    await offer.click();
    expect(await page.locator('#design-from').inputValue()).toBe('other');
    await turnTo('per-flat.html?foot.k=12');
    expect(await offer.count()).toBe(0);
    await turnTo('per-flat.html?foot.A=M8');
    expect(await offer.count()).toBe(1);
    await page.reload();
    await awake(page);
    expect(await offer.count()).toBe(0);
  });

  it('grows from chapter to chapter under one name', inDeep, async () => {
    const { page } = await visit('two-screws.html');
    await keep(page, 'Foot', 'foot');
    await page.goto(page.url().replace(/two-screws.*/, 'why-fine-means-short.html'));
    await keep(page, 'Foot', 'reach');
    const kept = JSON.parse((await page.evaluate(() => localStorage.getItem('notebook-designs'))) ?? '');
    expect(kept.designs.length).toBe(1);
    expect(Object.keys(kept.designs[0].numbers)).toEqual(
      expect.arrayContaining(['A', 'C', 'arrangement', 'X_A', 'S_w']),
    );
  });

  it('goes to a file and comes back from it elsewhere, name and all', async () => {
    const there = await visit('two-screws.html');
    await keep(there.page, 'Foot <b>left</b>', 'foot');
    const button = there.page.getByRole('button', { name: 'Save all to a file' });
    const text = (await saved(there.page, () => button.click())).bytes.toString('utf8');
    expect(JSON.parse(text)).toMatchObject({ format: 'differential-screw-designs', version: 3 });
    const here = await visit('per-flat.html', { fresh: true });
    await offer(here.page, 'designs.json', text);
    expect(await status(here.page)).toBe('1 design was read.');
    expect(await words(here.page.locator('.design-list li span'))).toBe('Foot <b>left</b>');
    expect(await here.page.locator('.design-list b').count()).toBe(0);
  });

  it(
    'of a file with many unknown names are read with one short sentence; a huge file is not read',
    inDeep,
    async () => {
      const { page } = await visit('two-screws.html');
      const wings = Object.fromEntries(Array.from({ length: 12 }, (_, i) => [`wings${i}`, '2']));
      const designs = Array.from({ length: 40 }, (_, i) => ({ name: `d${i}`, numbers: { A: 'M8×1.25', ...wings } }));
      await offer(page, 'many.json', JSON.stringify({ format: 'differential-screw-designs', version: 1, designs }));
      expect(await status(page)).toMatch(/^40 designs were read\. 480 numbers were left out\. .*wings0/);
      expect((await status(page)).length).toBeLessThan(250);
      await page.locator('.designs [role=status]').evaluate((e) => e.replaceChildren());
      await offer(page, 'huge.json', ' '.repeat(7_000_000));
      expect(await status(page)).toMatch(/^The file has 7\s000\s000 bytes/);
    },
  );

  it('of a newer notebook in this browser is left as it is, and it is said why none is kept', inDeep, async () => {
    const { page } = await visit('two-screws.html');
    const newer = '{"format":"differential-screw-designs","version":99,"designs":[{"name":"Foot"}]}';
    await page.evaluate((text) => localStorage.setItem('notebook-designs', text), newer);
    await page.reload();
    await keep(page, 'Mine', 'foot');
    expect(await status(page)).toContain('newer notebook');
    expect(await page.evaluate(() => localStorage.getItem('notebook-designs'))).toBe(newer);
  });

  it('of a bad file is refused in one sentence, and what was kept stays', async () => {
    const { page } = await visit('two-screws.html');
    await keep(page, 'Foot', 'foot');
    await offer(page, 'half.json', '{"format": "differential-screw-designs", "vers');
    await page.waitForFunction(() =>
      /not JSON/.test(document.querySelector('.designs [role=status]')?.textContent ?? ''),
    );
    expect(await page.locator('.design-list li').count()).toBe(1);
  });

  it('that storage will not keep lasts for the page and says so', inDeep, async () => {
    const { page } = await visit('two-screws.html');
    await page.evaluate(() => {
      Storage.prototype.setItem = () => {
        throw new DOMException('full', 'QuotaExceededError');
      };
    });
    await keep(page, 'Foot', 'foot');
    expect(await status(page)).toContain('would not keep the designs');
    expect(await words(page.locator('.design-list li span'))).toBe('Foot');
  });

  it('kept in one tab shows in the other, and neither undoes the other’s', async () => {
    const { page } = await visit('two-screws.html', { fresh: true });
    const other = await page.context().newPage();
    await other.goto(page.url());
    await other.waitForSelector('html[data-awake]');
    await keep(page, 'One', 'foot');
    await keep(other, 'Two', 'foot');
    await page.waitForFunction(() => document.querySelectorAll('.design-list li').length === 2);
    expect((await page.locator('.design-list li span').allTextContents()).sort()).toEqual(['One', 'Two']);
    await other.close();
  });

  it('without a name is asked for one; a half-written shelf does no harm', inDeep, async () => {
    const { page } = await visit('two-screws.html');
    await page.evaluate(() => localStorage.setItem('notebook-designs', '{"format":"differential-screw-des'));
    await page.reload();
    await keep(page, '   ', 'foot');
    expect(await status(page)).toContain('The name is empty');
    await keep(page, 'Foot', 'foot');
    expect(await status(page)).toContain('“Foot” is kept in this browser.');
  });
});

describe('a design kept on the sheet', () => {
  it('is itself in every chapter, and each says under its fields what came from it and what is its own', async () => {
    const { page } = await visit('design-sheet.html');
    await shown(figure(page, 'design-sheet'));
    await keep(page, 'Shop foot', 'mine');
    expect(await status(page)).toContain('“Shop foot” is kept in this browser.');
    const sentenceOn = async (name: string, widget: string): Promise<string> => {
      await page.goto(page.url().replace(/[^/]*$/, name));
      return sentence(await shown(figure(page, widget)));
    };
    // A hexagon: six steps in a turn wherever they are asked for, not the fifty divisions of the knob it has not.
    expect(await sentenceOn('per-flat.html', 'divided-turn')).toContain('one flat of 6 is 14.58');
    expect(await sentenceOn('finding-a-pair.html', 'pair-map')).toMatch(/of 90\.0+ µm a turn/);
    expect(await sentenceOn('three-feet.html', 'levelling-plate')).toContain('foot 2: 8 flats clockwise');
    // The readings of the shop are of another piece.
    expect(await sentenceOn('calibrate.html', 'calibration')).toContain('Your design has no readings yet');
    // 0.3 mm of stroke at 87.5 µm a turn.
    await page.goto(page.url().replace(/[^/]*$/, 'preload-and-lock.html'));
    const chain = await shown(figure(page, 'force-chain'));
    expect(Number.parseFloat(await chain.locator('.field[data-sym=n_w] input').inputValue())).toBeCloseTo(24 / 7, 4);
    // All that its verdict rests on was kept on the sheet.
    expect(await chain.getAttribute('data-borrowed')).toBeNull();
    const note = chain.locator('.design-note');
    expect(await words(note.locator('summary'))).toMatch(/^From your design “Shop foot”: \d+ of these \d+ numbers\./);
    await note.locator('summary').click();
    expect(await words(note)).toMatch(/Computed from your design: wanted stroke, in turns clockwise\./);
    expect(await words(note)).toMatch(/Not from it, so the chapter’s own: .*side load/);
    for (const link of some(3, [
      'two-screws',
      'play-and-flanks',
      'does-it-fit',
      'lead-error',
      'effort-and-feel',
      'contact-heat-creep',
      'other-ways',
    ])) {
      await page.goto(page.url().replace(/[^/]*$/, `${link}.html`));
      await page.locator('.design-note summary').first().waitFor({ state: 'attached' });
      expect(await page.locator('.design-note:not([hidden])').count(), link).toBeGreaterThan(0);
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth), link).toBeLessThanOrEqual(0);
    }
    await page.getByRole('button', { name: 'Chapter’s own numbers' }).click();
    expect(await page.locator('.design-note:not([hidden])').count()).toBe(0);
  });

  it(
    'is read from an address of old, in which the divisions of the knob were called as the steps of a turn are',
    inDeep,
    async () => {
      const { page } = await visit('design-sheet.html?mine.k=35&mine.divider=knob&mine.w=0.25+mm');
      const sheet = await shown(figure(page, 'design-sheet'));
      expect(await words(sheet.locator('.sheet'))).toContain('(35 a turn)');
      const search = (await written(page)).searchParams;
      expect([search.get('mine.k'), search.get('mine.k_d'), search.get('mine.S_w')]).toEqual([null, '35', '250 µm']);
    },
  );
});

describe('the design sheet', () => {
  it('follows its fields, names the check that fails, and keeps the last good sheet where a field is wrong', async () => {
    const { page } = await visit('design-sheet.html');
    const sheet = await shown(figure(page, 'design-sheet'));
    expect(await words(sheet.locator('.sheet-verdict'))).toBe('14 of 14 judged passed; 17 not judged.');
    await type(fieldIn(sheet, /wanted step/i), '10 um');
    expect(await words(sheet.locator('.sheet-verdict'))).toBe('13 of 14 judged passed; 17 not judged.');
    expect(await words(sheet.locator('.checks .failed'))).toContain(
      'One flat moves 14.58 µm; 10.00 µm or less was wanted.',
    );
    await type(fieldIn(sheet, /^Thread C/), 'M10x-1');
    expect(await words(sheet.locator('.sheet-title'))).toContain('3/8-16 UNC');
    await type(fieldIn(sheet, /^Thread C/), 'M8x1.5');
    expect(await words(sheet.locator('[data-refusal]'))).toContain('two leads are equal');
  });

  it('prints on a page of its own, A4 and Letter, without its fields', inDeep, async (context) => {
    needs(context, 'as printed');
    const { page } = await visit('design-sheet.html', { fresh: true });
    await shown(figure(page, 'design-sheet'));
    await beyond(page).emulateMedia({ media: 'print' });
    expect(await figure(page, 'design-sheet').locator('.inputs').first().isVisible()).toBe(false);
    // With all that stands on it, not the drawn sheet alone: the longest is that of stated parts, under a line of its own numbers.
    const parts =
      'base = nut 3/8-16 UNC, 8.3344 mm, price 0.40\nturned = adapter 3/8-16 UNC external 14 mm, M10x1.5 internal 15 mm blind, body 18 mm, price 1.90\ncarried = socket screw M10, thread 20 mm, price 0.30\nlock = key at 12 mm, clearance 0.1 mm\nsprings = 2 between base and carried, 12 N, 0.6 N/mm, at 15 mm';
    for (const query of ['', `?mine.adjuster=${encodeURIComponent(parts)}`])
      for (const size of ['A4', 'Letter'] as const) {
        const { page: own } = await visit(`design-sheet.html${query}`, { fresh: true });
        await shown(figure(own, 'design-sheet'));
        await own.evaluate(() => {
          window.print = () => undefined;
        });
        await figure(own, 'design-sheet').getByRole('button', { name: 'Print this sheet only' }).click();
        expect(await print(own, size), `${size} ${query}`).toHaveLength(1);
      }
  });

  it('leaves what follows it to the next sheet of paper', inDeep, async (context) => {
    needs(context, 'as printed');
    const { page } = await visit('design-sheet.html', { fresh: true });
    await shown(figure(page, 'design-sheet'));
    // The sheet and one short heading.
    await page.evaluate(() => {
      const own = document.querySelector('figure.design-sheet');
      const next = document.createElement('h2');
      next.textContent = 'What follows';
      own?.after(next);
      for (const other of document.body.querySelectorAll('*'))
        if (other !== own && other !== next && !other.contains(own) && !own?.contains(other)) other.remove();
    });
    for (const size of ['A4', 'Letter'] as const) expect(await print(page, size)).toHaveLength(2);
    // The heading alone would find room under it, on a page of the same margins.
    await page.evaluate(() => {
      const { style } = document.querySelector<HTMLElement>('figure.design-sheet') ?? document.body;
      style.setProperty('break-after', 'auto');
      style.setProperty('page', 'auto');
    });
    expect(await print(page)).toHaveLength(1);
  });

  it('says which number of an older link has no field here', inDeep, async () => {
    const { page } = await visit('design-sheet.html?mine.X_A=8+mm');
    await shown(figure(page, 'design-sheet'));
    expect(await words(page.locator('[data-tools] [role=status]').filter({ hasText: 'The link' }))).toContain(
      '“mine.X_A”',
    );
  });

  it('fits a phone without scrolling sideways', inDeep, async () => {
    const { page } = await visit('design-sheet.html', { viewport: NARROW });
    await shown(figure(page, 'design-sheet'));
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(NARROW.width);
  });
});
