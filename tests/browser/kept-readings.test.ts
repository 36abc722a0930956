/** What a reader measured and typed is there when they come back, and is never mixed with what a link brings. */
import { describe, expect, it } from 'vitest';
import { inDeep } from '../support/deep.ts';
import type { Page } from '../support/driven.ts';
import { awake, fieldIn, figure, shown, type, useBrowser, words, written } from '../support/page.ts';

const { visit } = useBrowser();

const RUNS = 'turns; reading (µm)\n0; 0\n1; 88\n2; 177\n3; 265';
const OTHERS = 'calibrate.html?shop.runs=turns%3B+reading+(%C2%B5m)%0A0%3B+0%0A1%3B+90%0A2%3B+180';
const runs = async (page: Page) => fieldIn(await shown(figure(page, 'calibration')), /^readings: turns/i);
const line = (page: Page, says: RegExp) => page.locator('.readings-kept', { hasText: says }).waitFor();
const press = (page: Page, name: string) => page.locator('.readings-kept').getByRole('button', { name }).click();
const kept = (page: Page) => line(page, /that you typed on this page are kept in this browser/);
const stored = (page: Page) => page.evaluate(() => localStorage.getItem('notebook-readings calibrate '));

describe('readings', () => {
  it('are there when the reader comes back, stand back for those of a link, and are emptied by one button, which can be taken back', async () => {
    const { page, turnTo } = await visit('calibrate.html');
    await type(await runs(page), RUNS);
    await kept(page);
    await turnTo('readings.html');
    await turnTo('calibrate.html');
    expect(await (await runs(page)).inputValue()).toBe(RUNS);
    await turnTo(OTHERS);
    await line(page, /keeps other readings of this page/);
    await type(await runs(page), 'turns; reading (µm)\n0; 0\n1; 91');
    await page.waitForTimeout(500);
    expect(JSON.parse((await stored(page)) ?? '')['shop.runs']).toBe(RUNS);
    await press(page, 'Put them back');
    await kept(page);
    expect(await (await runs(page)).inputValue()).toBe(RUNS);
    await press(page, 'Empty them');
    await line(page, /no longer kept/);
    expect(await stored(page)).toBe(null);
    expect(await (await runs(page)).inputValue()).toMatch(/^flats;/);
    await press(page, 'Put them back');
    await kept(page);
    expect(await (await runs(page)).inputValue()).toBe(RUNS);
  });

  it(
    'too long for a link come back with a reload, and a link to them says elsewhere that they do not',
    inDeep,
    async () => {
      const { page, from, turnTo } = await visit('calibrate.html', { fresh: true });
      const rows = [
        'turns; reading (µm)',
        ...Array.from({ length: 400 }, (_, i) => `${i / 40}; ${(i * 2.2).toFixed(1)}`),
      ];
      await type(await runs(page), rows.join('\n'));
      await kept(page);
      const link = await written(page);
      expect(link.searchParams.get('shop.runs.kept')).not.toBe(null);
      await page.reload();
      await awake(page);
      expect(await (await runs(page)).inputValue()).toBe(rows.join('\n'));
      const there = await visit(link.href.slice(from.length), { fresh: true });
      await line(there.page, /too long for it: they come back only in the browser/);
      // The chapter’s own numbers are shown when they are asked for, and nothing that was measured goes with it.
      await page.getByRole('button', { name: 'Chapter’s own numbers' }).click();
      await line(page, /keeps other readings/);
      await turnTo('calibrate.html');
      expect((await (await runs(page)).inputValue()).length).toBeGreaterThan(4000);
    },
  );

  it('of two tabs: each says that the other keeps others, and none is written over unasked', inDeep, async () => {
    const { page, from } = await visit('calibrate.html', { fresh: true });
    const other = await page.context().newPage();
    await other.goto(`${from}calibrate.html`);
    await awake(other);
    await type(await runs(page), RUNS);
    await kept(page);
    await line(other, /keeps other readings/);
    await type(await runs(other), 'turns; reading (µm)\n0; 0\n1; 91');
    await other.waitForTimeout(500);
    expect(JSON.parse((await stored(page)) ?? '')['shop.runs']).toBe(RUNS);
    await press(other, 'Keep these instead');
    await line(page, /keeps other readings/);
    expect(await (await runs(page)).inputValue()).toBe(RUNS);
    await other.close();
  });

  it('that the browser has no room for stay on the page, and it is said', inDeep, async () => {
    const { page } = await visit('heat-and-creep.html', { fresh: true });
    await page.evaluate(() => {
      Storage.prototype.setItem = () => {
        throw new Error('full');
      };
    });
    const log = (await shown(figure(page, 'settling-log'))).locator('textarea');
    await type(log, '1 min; 0; 20\n2 min; -0.1; 20\n5 min; -0.3; 20\n10 min; -0.4; 20');
    await line(page, /has no room for the readings/);
    expect(await words(log.locator('xpath=../..').locator('.field-note'))).toBe('');
    expect(await log.inputValue()).toContain('10 min; -0.4');
  });
});

describe('what was found on a piece', () => {
  it('goes from its readings into its certificate, by a button into its passport, and from there into levelling', async () => {
    const { page, turnTo } = await visit('from-your-parts.html');
    const panel = page.locator('.designs');
    await panel.locator('summary').click();
    await panel.getByLabel(/under the name/).fill('Riser');
    await panel.getByLabel(/taken from/).selectOption('riser');
    await panel.getByRole('button', { name: 'Keep' }).click();
    // Read up and down, as an indicator would show a piece that moves 88.4 µm a turn, with a hysteresis of 2 µm.
    await turnTo('calibrate.html');
    const places = [0, 0.25, 0.5, 0.75, 1, 1.25, 1.5, 1.75, 2];
    const row = (turns: number, way: string, off: number) => `${turns}; ${(-88.4 * turns + off).toFixed(2)}; ${way}`;
    await type(
      await runs(page),
      [
        'turns; reading (µm); direction',
        ...places.map((n) => row(n, 'up', 0)),
        ...places.toReversed().map((n) => row(n, 'down', 2)),
      ].join('\n'),
    );
    const sheet = await shown(figure(page, 'certificate'));
    const write = sheet.getByRole('button', { name: /into the passport/ });
    await write.click();
    expect(await words(sheet.locator('[data-part=said]'))).toMatch(/^The passport needs the mark of the piece/);
    await type(fieldIn(sheet, /^piece/i), 'Riser no. 2');
    await type(fieldIn(sheet, /^date/i), '2026-11-27');
    await write.click();
    expect(await words(sheet.locator('[data-part=said]'))).toMatch(
      /^Written into the passports of “Riser”: 2, 2026-11-27: lead 88\.4 ± [\d.]+ µm, hysteresis 2 ± [\d.]+ µm\.$/,
    );
    await turnTo('bench-card.html');
    const log = await shown(figure(page, 'passport'));
    expect(await words(log.locator('[data-stage]'))).toMatch(
      /piece 2.*2026-11-27.*88\.40\sµm ± .*\+1\.03 %.*2\.00\sµm ±/,
    );
    await turnTo('three-feet.html');
    expect(await words(await shown(figure(page, 'levelling-plate')))).toMatch(
      /Turned by the net lead that was measured: foot 2 88\.40\sµm ± [\d.]+\sµm \(2026-11-27\) a turn/,
    );
  });
});
