/**
 * Calibration as a reader works it: typed, pasted and opened readings, readings of the bench handed over, a wrong unit asked about,
 * a hundred thousand rows, and the sheet that is printed.
 */

import { describe, expect, it } from 'vitest';
import { inDeep } from '../support/deep.ts';
import { beyond, type Locator, type Page } from '../support/driven.ts';
import { needs } from '../support/engines.ts';
import {
  beside,
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

/** The figure, in view and alive: its script comes when it is seen. */
const alive = async (page: Page, widget: 'calibration' | 'fault-bench' | 'certificate'): Promise<Locator> => {
  const place = await shown(figure(page, widget));
  await place.locator('.field:visible').first().waitFor();
  if (widget === 'calibration') await place.locator('[data-slider]').waitFor();
  await settled(page);
  return place;
};
const runs = (place: Locator): Locator => place.locator('.field[data-sym=runs] textarea');
const quantity = (place: Locator, name: string): Locator => place.locator(`.field[data-sym=${name}] input`);
const verdict = (place: Locator): Promise<string> => words(place.locator('.cal-verdict'));
const refusal = (place: Locator): Promise<string> => words(place.locator('[data-refusal]'));
const leadIn = (text: string): number => Number(/net lead (?:is|of) ([\d.]+) µm ±/.exec(text)?.[1]);

/** A logger's file: 100 000 rows up and down over 16 turns, 88.6 µm a turn, 2 µm of gap. */
const logged = (): string => {
  const rows = ['turns;reading (µm);direction'];
  for (let i = 0; i < 100_000; i++) {
    const up = i < 50_000;
    const n = ((up ? i : 100_000 - i) * 16) / 50_000;
    const z = n * 88.6 + Math.sin(2 * Math.PI * n) + (up ? 0 : 2) + ((i * 7919) % 13) / 13;
    rows.push(`${n.toFixed(5)};${z.toFixed(3)};${up ? 'up' : 'down'}`);
  }
  return rows.join('\n');
};

describe('readings typed and opened', () => {
  it('fits what is typed, with decimal commas, tabs and degrees, at every change', async () => {
    const { page } = await visit('calibrate.html');
    const place = await alive(page, 'calibration');
    expect(await verdict(place)).toMatch(/^Agrees\. The measured net lead is 88\.7\d* µm ± [\d.]+ µm a turn/);
    await type(runs(place), 'degrees\treading (mm)\n0\t0\n180\t0,0442\n360\t0,0884\n540\t0,1329\n720\t0,1771');
    expect(leadIn(await verdict(place))).toBeCloseTo(88.6, 0);
    expect(await place.locator('.cal-words .untold').count()).toBe(3);
    await type(quantity(place, 'eps_A'), '0');
    await type(quantity(place, 'eps_C'), '0');
    expect(await verdict(place)).toMatch(/^Does not agree\./);
    expect(await sentence(place)).toMatch(/^5 readings give a net lead of .* does not agree with the nominal/i);
  });

  it('opens a file, and the same file again after it was mended', inDeep, async () => {
    const { page } = await visit('calibrate.html');
    const place = await alive(page, 'calibration');
    const open = (text: string | Buffer, name = 'foot.csv') =>
      place.locator('[data-file]').setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });
    await open('turns;reading (µm)\n0;0\n1;soft\n2;177\n3;266');
    await page.waitForTimeout(200);
    expect(await beside(runs(place))).toMatch(/^Line 3: the reading “soft” is not a number; correct or remove it/);
    await open('turns;reading (µm)\n0;0\n1;88\n2;177\n3;266');
    await sentenceWith(place, '4 readings give');
    // Saved by an old spreadsheet: µ is a single byte there.
    await open(Buffer.from('turns;reading (µm)\n0;0\n1;88\n2;177\n3;266\n4;354', 'latin1'));
    await sentenceWith(place, '5 readings give');
    await open(Buffer.from([0x50, 0x4b, 3, 4, 0, 0, 0]), 'foot.xlsx');
    await page.waitForTimeout(200);
    expect(await beside(runs(place))).toMatch(/^This looks like a spreadsheet or another packed file, not a table/);
    expect(await sentence(place)).toMatch(/^5 readings give/);
  });

  const refused: readonly (readonly [string, RegExp])[] = [
    ['0 0\n1 88', /^Read 2 readings; a line takes two and its uncertainty one more: give at least three/],
    ['0 5\n1 5\n2 5\n3 5', /^All 4 readings are 0\.005, so nothing moved or nothing was read/],
  ];
  for (const [text, reason] of refused)
    it(`says of ${JSON.stringify(text)} what is wrong and keeps the last picture`, async () => {
      const { page } = await visit('calibrate.html');
      const place = await alive(page, 'calibration');
      await type(runs(place), text);
      expect(await refusal(place)).toMatch(reason);
      expect(await place.locator('.plot-marks .reading').count()).toBe(4);
    });

  it('answers mixed decimal marks beside the field', inDeep, async () => {
    const { page } = await visit('calibrate.html');
    const place = await alive(page, 'calibration');
    await type(runs(place), '0; 0\n1; 88,1\n2; 177.2');
    expect(await beside(runs(place))).toMatch(
      /^Line 2 has a decimal comma .* and line 3 a decimal point .* use one mark/,
    );
    expect(await verdict(place)).toMatch(/88\.7\d* µm/);
  });

  it('asks about a slope that a wrong unit would give, and takes the answer', async () => {
    const { page } = await visit('calibrate.html');
    const place = await alive(page, 'calibration');
    await type(runs(place), 'turns; reading (µm)\n0; 0\n1; 3.49\n2; 6.97\n3; 10.47');
    expect(await words(place.locator('.cal-ask p').first())).toMatch(/1\/25\.4: were readings in thou imported as µm/);
    await place.getByRole('button', { name: 'Yes: readings were in thou' }).click();
    await settled(page);
    expect(await place.locator('.cal-ask').count()).toBe(0);
    expect((await runs(place).inputValue()).split('\n').slice(0, 3)).toEqual([
      'turns; reading (thou); direction',
      '0; 0; up',
      '1; 3.49; up',
    ]);
    expect(leadIn(await verdict(place))).toBeCloseTo(88.6, 0);
  });
});

describe('a hundred thousand rows', () => {
  it(
    'are read from a paste and from a file without holding the page, and stay out of the address',
    inDeep,
    async () => {
      const { page } = await visit('calibrate.html');
      const place = await alive(page, 'calibration');
      const before = Date.now();
      await runs(place).evaluate((field, text) => {
        // Engines differ in what a script may put on a clipboard; what the page asks of a paste is this.
        const pasted = new ClipboardEvent('paste', { cancelable: true, bubbles: true });
        Object.defineProperty(pasted, 'clipboardData', { value: { getData: () => text } });
        field.dispatchEvent(pasted);
      }, logged());
      await sentenceWith(place, '100000 readings give');
      expect(Date.now() - before).toBeLessThan(20_000);
      expect(await verdict(place)).toMatch(/^Agrees\. The measured net lead is 88\.60?\d* µm/);
      expect(await words(place.locator('.cal-thinned'))).toMatch(/^\d+ of 100000 readings are drawn/);
      // The field shows the beginning, is locked, and says that a link does not carry the rest.
      expect((await runs(place).inputValue()).length).toBeLessThan(2000);
      expect(await runs(place).getAttribute('readonly')).not.toBeNull();
      expect(await beside(runs(place))).toMatch(/a link does not carry it/);
      expect((await written(page)).search).not.toContain('runs');

      // Changing another number asks for no new fit.
      const changed = Date.now();
      await type(quantity(place, 'eps_A'), '0.2 %');
      await sentenceWith(place, '100000 readings give');
      await type(quantity(place, 'n'), '3');
      expect(await words(place.locator('[data-read=nominal]'))).toBe('262.5 µm');
      expect(Date.now() - changed).toBeLessThan(3000);

      await place.getByRole('button', { name: 'Empty the field' }).click();
      await settled(page);
      expect(await runs(place).inputValue()).toBe('');
      expect(await beside(runs(place))).toMatch(/^Nothing was pasted/);
      await type(runs(place), '0 0\n1 88\n2 177');
      expect(await sentence(place)).toMatch(/^3 readings give/);

      await place
        .locator('[data-file]')
        .setInputFiles({ name: 'log.csv', mimeType: 'text/csv', buffer: Buffer.from(logged()) });
      await sentenceWith(place, '100000 readings give');
    },
  );
});

describe('the bench with a hidden fault', () => {
  it('hands what was noted to the calibration, which finds the lead of the jack', async () => {
    const { page } = await visit('calibrate.html?shop.n_s=6');
    const bench = await alive(page, 'fault-bench');
    for (const act of ['all', 'work', 'read-all', 'take']) {
      await bench.locator(`[data-act=${act}]`).focus();
      await page.keyboard.press('Enter');
      await settled(page);
    }
    expect(await words(bench.locator('[data-verdict]'))).toMatch(/^Taken over: 10 readings/);
    expect(await words(bench.locator('[data-told]'))).toMatch(/^10 readings with the work on/);
    // A check says beside its button what it found, and its row stands in the open table.
    await bench.locator('[data-act=block]').click();
    expect(await words(bench.locator('[data-told]'))).toMatch(/^Gauge block: .* a good jack: .* give or take/);
    expect(await bench.locator('.fault-bench-table tr', { hasText: 'gauge block' }).isVisible()).toBe(true);
    await bench.locator('[data-act=work]').click();
    expect(await sentence(bench)).not.toMatch(/work on/);
    const place = await alive(page, 'calibration');
    expect(await runs(place).inputValue()).toMatch(/^turns; reading \(µm\); direction\n0; 0; up\n/);
    expect(leadIn(await verdict(place))).toBeGreaterThan(70);
    // The address carries them, since they are few.
    expect((await written(page)).searchParams.get('shop.runs')).toMatch(/^turns; reading/);
  });
});

describe('the dial', () => {
  it('is set by slider keys and by the field, and follows the units', inDeep, async () => {
    const { page } = await visit('calibrate.html');
    const place = await alive(page, 'calibration');
    await place.locator('[data-slider=n]').focus();
    await page.keyboard.press('End');
    await settled(page);
    expect(await quantity(place, 'n').inputValue()).toBe('2');
    expect(await words(place.locator('[data-read=travel]'))).toBe('177.4 µm');
    await units(page, 'inch');
    expect(await words(place.locator('[data-read=travel]'))).toBe('6.986 thou');
    expect(await verdict(place)).not.toContain('µm');
  });
});

describe('the certificate', () => {
  it('is not printed in the chapter’s readings for those of a link, though nobody scrolled to it', async () => {
    const rows = Array.from({ length: 16 }, (_, i) => `${i / 4}; ${(22 * i + (i % 3) / 10).toFixed(1)}; up`);
    const runs = encodeURIComponent(['turns; reading (µm); direction', ...rows].join('\n'));
    const { page } = await visit(`calibrate.html?shop.runs=${runs}`);
    const sheet = figure(page, 'certificate');
    const printed = () =>
      page.evaluate(() => {
        window.dispatchEvent(new Event('beforeprint'));
        const place = document.querySelector<HTMLElement>('[data-figure=certificate]');
        const found = { notYet: place?.dataset.notYet ?? '', text: place?.textContent ?? '' };
        window.dispatchEvent(new Event('afterprint'));
        return found;
      });
    const soon = await printed();
    if (!/16, from 0/.test(soon.text)) expect(soon.notYet).toMatch(/had not taken your numbers yet/);
    await page.waitForFunction(
      () => document.querySelector<HTMLElement>('[data-figure=certificate]')?.dataset.awake === 'true',
    );
    const later = await printed();
    expect(later.notYet).toBe('');
    expect(later.text).toContain('16, from 0 to 3.75 turns');
    // What the chapter states of its own readings is not said of these.
    expect(later.text).not.toContain('Foot no. 1');
    expect(await sheet.evaluate((e) => e.getBoundingClientRect().top > innerHeight + 300)).toBe(true);
  });

  it('takes date and temperature from the reader, and refuses what is none', inDeep, async () => {
    const { page } = await visit('calibrate.html');
    const sheet = await alive(page, 'certificate');
    const field = (name: string): Locator => sheet.locator(`.field[data-sym=${name}] :is(input, textarea)`);
    expect(await sentence(sheet)).toMatch(/Not stated yet: date, temperature\.$/);
    await type(field('dated'), '3/31/2026');
    expect(await beside(field('dated'))).toMatch(/^Read “3\/31\/2026”, which is no day; write year, month and day/);
    // With dots, and then as it is kept.
    await type(field('dated'), '31.3.2026');
    expect(await words(sheet.locator('.certificate-page'))).toContain('2026-03-31');
    await type(field('warmth'), '20,5');
    expect(await sentence(sheet)).toMatch(/Everything asked for is stated\.$/);
    expect(await words(sheet.locator('.certificate-page'))).toContain('20.5 °C');
  });

  it('prints on one page, without what a button answered', async (context) => {
    needs(context, 'as printed');
    const { page } = await visit('calibrate.html', { fresh: true });
    const sheet = await alive(page, 'certificate');
    await sheet.locator('[data-act=passport]').click();
    const said = sheet.locator('[data-part=said]');
    expect(await words(said)).toMatch(/^A passport is kept with a design/);
    expect(await said.isVisible()).toBe(true);
    // A4 less its margins, 178 mm by 261 mm.
    await page.setViewportSize({ width: 673, height: 986 });
    await beyond(page).emulateMedia({ media: 'print' });
    await settled(page);
    const box = await sheet.boundingBox();
    expect(box?.height ?? 9999).toBeLessThanOrEqual(986);
    expect(await sheet.locator('.inputs').first().isVisible()).toBe(false);
    expect(await said.isVisible()).toBe(false);
    // Nothing was typed, and paper has no fields that would tell.
    const own = sheet.locator('.own-numbers');
    expect(await words(own)).toBe('All numbers of this sheet are the chapter’s own.');
    expect(await own.isVisible()).toBe(true);
    // All thirteen flats of both ways are on the paper.
    expect(await sheet.locator('.correction tbody tr:visible').count()).toBe(13);
  });
});

describe('on a phone', () => {
  it('nothing runs over the edge and what is pressed is at least 24 px', inDeep, async () => {
    const { page } = await visit('calibrate.html', { viewport: NARROW, hasTouch: true });
    for (const widget of ['calibration', 'fault-bench', 'certificate'] as const) {
      const place = await alive(page, widget);
      for (const target of await place.locator('button:visible, input[type=file]').all()) {
        const box = await target.boundingBox();
        expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(24);
      }
    }
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(NARROW.width);
  });
});
