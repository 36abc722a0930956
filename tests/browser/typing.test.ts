/** A reader types numbers: everything that depends on them follows, and what can't be read says so beside its field. */

import { describe, expect, it } from 'vitest';
import { inDeep } from '../support/deep.ts';
import type { Page } from '../support/driven.ts';
import { beside, fieldIn, figure, sentence, settled, shown, type, useBrowser, words } from '../support/page.ts';

const { visit } = useBrowser();

const step = (page: Page, example: string, symbol: string) =>
  words(page.locator(`#example-${example} [data-sym="${symbol}"][data-result]`).first());
const drawn = (page: Page) => page.locator('[data-figure=section] [data-path=turned]').getAttribute('d');

describe('a designation', () => {
  it('is understood in many spellings, and section, example, sentence and plot all follow', async () => {
    const { page } = await visit('two-screws.html');
    const section = await shown(figure(page, 'section'));
    const [A, C] = [fieldIn(section, /thread A/i), fieldIn(section, /thread C/i)];
    const cases = [
      ['m8 x 1,25', '5/16-18', '161.1 µm'],
      ['M8×1.25-6g', '5/16 - 18 UNC', '161.1 µm'],
      ['M5', '10-32', '6.250 µm'],
      ['M5x0.8', '#10-32 UNF-2A', '6.250 µm'],
      ['12 mm x 1.1 mm', 'M10', '400.0 µm'],
      ['3/8-24', '0.375-16', '529.2 µm'],
      ['M10x1.5 left hand', 'M10', '3.000 mm'],
    ] as const;
    for (const [a, c, motion] of cases) {
      await type(A, a);
      await type(C, c);
      expect(await A.getAttribute('aria-invalid'), a).toBe('false');
      expect(await C.getAttribute('aria-invalid'), c).toBe('false');
      expect((await step(page, 'foot-turn', 'Delta')).replace('−', ''), `${a} ${c}`).toBe(`= ${motion}`);
      expect((await words(page.locator('.box.summary .q.now'))).replace('−', ''), `${a} ${c}`).toBe(motion);
      expect((await words(section.locator('[data-read=perTurn]'))).replace(/[+−]/, '')).toBe(motion);
    }
    // Left, the field is written in the one standard way.
    await A.blur();
    await settled(page);
    expect(await A.inputValue()).toBe('M10×1.5 LH');
  });

  it('redraws the section to the new threads', inDeep, async () => {
    const { page } = await visit('two-screws.html');
    const section = await shown(figure(page, 'section'));
    const before = await drawn(page);
    await type(fieldIn(section, /thread A/i), 'M12x1.5');
    expect(await drawn(page)).not.toBe(before);
    expect(await section.locator('svg.section').getAttribute('aria-label')).toContain('M12×1.5 in the base');
  });

  it('that was completed or is outside the series says so beside its field', inDeep, async () => {
    const { page } = await visit('two-screws.html');
    const A = fieldIn(await shown(figure(page, 'section')), /thread A/i);
    await type(A, 'M10');
    expect(await beside(A)).toContain('the coarse pitch of M10 was taken, 1.5 mm');
    await type(A, 'M10x1.4');
    expect(await beside(A)).toContain('M10×1.4 is not in the series of ISO 261');
  });

  it('that is wrong says why beside its field; the last good picture stays and is marked, other numbers stay', async () => {
    const { page } = await visit('two-screws.html');
    const section = await shown(figure(page, 'section'));
    const A = fieldIn(section, /thread A/i);
    await type(A, 'M8x1.25');
    const [before, said, other] = [
      await drawn(page),
      await sentence(section),
      await fieldIn(section, /thread C/i).inputValue(),
    ];
    await type(A, 'M8x1.2five');
    expect(await beside(A)).toMatch(/^Read “M8x1\.2five”.*The figures keep M8×1\.25\.$/);
    expect(await A.getAttribute('aria-invalid')).toBe('true');
    expect(await A.inputValue()).toBe('M8x1.2five');
    const described = await A.getAttribute('aria-describedby');
    expect(await words(page.locator(`[id="${described}"]`))).toContain('M8x1.2five');
    expect(await drawn(page)).toBe(before);
    expect(await sentence(section)).toBe(said);
    expect(await fieldIn(section, /thread C/i).inputValue()).toBe(other);
    // Marked in words, not by colour alone.
    const mark = await section.locator('[data-stage]').evaluate((stage) => getComputedStyle(stage, '::after').content);
    expect(mark).toMatch(/[a-z]{3,}/);
    // The same field of another block shows the same text and reason.
    await A.blur();
    await settled(page);
    expect(await A.inputValue()).toBe('M8x1.2five');
    // Mended, the mark goes.
    await type(A, 'M8x1.25');
    expect(await beside(A)).toBe('');
    expect(await section.evaluate((f) => f.classList.contains('last-good'))).toBe(false);
  });

  it('is refused in one sentence however hostile: nought, negative, a million threads, ten kilobytes, markup', async () => {
    const { page } = await visit('two-screws.html');
    const section = await shown(figure(page, 'section'));
    const A = fieldIn(section, /thread A/i);
    const before = await drawn(page);
    for (const [text, why] of [
      ['M10x0', /a pitch of 0 mm; one here is from 0\.05 to 26 mm/],
      ['M10x-1.5', /a pitch of −1\.5 mm/],
      ['M0x1', /a diameter of 0 mm/],
      ['3/8-1000000000', /1000000000 threads per inch/],
      ['3/8-0', /threads per inch/],
      ['M10x9', /leaves no core/],
      ['', /Nothing was typed/],
      ['   ', /Nothing was typed/],
      ['M10x1.5 M8x1.25', /two threads/],
      ['Tr10x2', /trapezoidal/],
      ['<img src=x onerror=alert(1)>', /not a thread designation/],
      ['M10x1.5'.repeat(1500), /\(10500 characters\); a designation is at most 100 characters/],
      ['\u202eM10x1.5', /./],
    ] as const) {
      await A.fill(text);
      await settled(page);
      expect(await A.getAttribute('aria-invalid'), text.slice(0, 40)).toBe('true');
      expect(await beside(A), text.slice(0, 40)).toMatch(why);
      expect((await beside(A)).length).toBeLessThan(330);
      expect(await drawn(page)).toBe(before);
      expect(await page.locator('main img').count()).toBe(0);
    }
  });
});

describe('what a step says of the chapter’s own numbers', () => {
  it('leaves with them and comes back with them; what holds for any numbers stays', async () => {
    const { page } = await visit('why-fine-means-short.html');
    // Numbers and steps that stood above are folded here.
    await page.locator('#example-travel details').evaluateAll((all) => {
      for (const fold of all as HTMLDetailsElement[]) fold.open = true;
    });
    const lines = page.locator('#example-travel .why');
    const said = async () => words(lines.filter({ hasText: 'Until the first of the two threads' }));
    expect(await said()).toContain('That is thread C.');
    const first = lines.first();
    const A = fieldIn(page.locator('#example-travel'), /^Thread A/i);
    // The longer lead is now in the base, so thread A runs out first.
    await type(A, 'M12x1.75');
    await page.waitForFunction(() => document.querySelector('#example-travel [data-own]')?.checkVisibility() === false);
    expect(await lines.locator('[data-own]:visible').count()).toBe(0);
    expect(await lines.filter({ hasText: 'Until the first of the two threads' }).isVisible()).toBe(true);
    expect(await first.isVisible()).toBe(true);
    await type(A, 'M10x1.5');
    await page.waitForFunction(() => document.querySelector('#example-travel [data-own]')?.checkVisibility() === true);
    expect(await lines.locator('[data-instead]:visible').count()).toBe(0);
  });

  it('has the relation’s own sentence in its place where it was all that was said', inDeep, async () => {
    const { page } = await visit('inch-and-starts.html');
    const line = page.locator('#example-inch-screw .why').nth(1);
    const own = line.locator('[data-own]');
    const instead = line.locator('[data-instead]');
    expect([await own.isVisible(), await instead.isVisible()]).toEqual([true, false]);
    await type(fieldIn(page.locator('#example-inch-screw'), /thread/i), 'M16x2');
    await instead.waitFor();
    expect(await own.isVisible()).toBe(false);
  });
});

describe('equal leads', () => {
  it('are said in words everywhere, and nothing is divided by nought', async () => {
    const { page } = await visit('two-screws.html?foot.C=M10x1.5');
    const section = await shown(figure(page, 'section'));
    expect(await sentence(section)).toContain('the leads are equal, so it will never move');
    expect(await words(page.locator('.box.summary .q.now'))).toBe('0 µm');
    await page.goto(page.url().replace(/two-screws.*/, 'per-flat.html?foot.C=M10x1.5'));
    await page.waitForSelector('html[data-awake]');
    await shown(figure(page, 'divided-turn'));
    expect(await words(figure(page, 'divided-turn').locator('[data-refusal]'))).toContain('The two leads are equal');
    await page.goto(page.url().replace(/per-flat.*/, 'why-fine-means-short.html?reach.C=M10x1.5'));
    await page.waitForSelector('html[data-awake]');
    await shown(figure(page, 'thread-eaten'));
    expect(await words(figure(page, 'thread-eaten').locator('[data-refusal]'))).toContain(
      'there is nothing to divide by',
    );
    expect(await step(page, 'travel', 'G_A')).toContain('there is nothing to divide by');
    const main = await words(page.locator('main'));
    expect(main).not.toMatch(/NaN|Infinity|undefined|∞/);
  });
});

describe('a quantity', () => {
  it('is read in any unit, kept in bounds with a sentence that names them, and written out when left', async () => {
    const { page } = await visit('why-fine-means-short.html');
    const eaten = await shown(figure(page, 'thread-eaten'));
    const wanted = fieldIn(eaten, /wanted stroke/i);
    for (const [text, says] of [
      ['0.4 mm', 'wanted stroke: 400 µm'],
      ['10 thou', 'wanted stroke: 254 µm'],
      ['1/64 in', 'wanted stroke: 397 µm'],
      ['400', 'wanted stroke: 400 µm'],
      ['0,4mm', 'wanted stroke: 400 µm'],
    ] as const) {
      await type(wanted, text);
      expect(await words(eaten.locator('[data-stage]')), text).toContain(says);
    }
    await wanted.press('Enter');
    await settled(page);
    expect(await wanted.inputValue()).toBe('400 µm');
    await type(wanted, '21 mm');
    expect(await beside(wanted)).toMatch(
      /^Read “21 mm”; .*goes from 0 µm to 20 mm here\. The last good value is still used\.$/,
    );
    await type(wanted, '3 N');
    expect(await beside(wanted)).toContain('in N; this takes mm, µm, in, thou');
    await type(wanted, '1'.repeat(10_240));
    expect(await beside(wanted)).toContain('(10240 characters)');
    expect(await words(eaten.locator('[data-stage]'))).toContain('wanted stroke: 400 µm');
  });

  it('of whole numbers refuses a part, and nought divisions', inDeep, async () => {
    const { page } = await visit('per-flat.html');
    const divided = await shown(figure(page, 'divided-turn'));
    await divided.getByText('knob', { exact: true }).click();
    const k = fieldIn(divided, /divisions/i);
    await type(k, '2.5');
    expect(await beside(k)).toContain('only whole numbers');
    for (const text of ['0', '-6', '1e9']) {
      await type(k, text);
      expect(await k.getAttribute('aria-invalid'), text).toBe('true');
    }
    await type(k, '35');
    expect(await sentence(divided)).toContain('one division of 35 is 2.500 µm');
  });
});

describe('pointing at a quantity', () => {
  it('lights it wherever it stands, and lets go when the pointer leaves', inDeep, async () => {
    const { page } = await visit('two-screws.html');
    const result = page.locator('#example-foot-turn [data-sym=Delta][data-result]');
    await shown(result);
    await result.hover();
    const lit = await page.locator('.lit').evaluateAll((all) => all.map((e) => e.getAttribute('data-sym')));
    expect(lit.length).toBeGreaterThan(3);
    expect([...new Set(lit)]).toEqual(['Delta']);
    await page.locator('h1').hover();
    expect(await page.locator('.lit').count()).toBe(0);
  });
});
