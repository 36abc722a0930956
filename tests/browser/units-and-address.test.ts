/** The unit switch, the numbers in the address, and addresses that mean harm. */

import { describe, expect, inject, it } from 'vitest';
import { inDeep, some, these } from '../support/deep.ts';
import { beyond, type Page } from '../support/driven.ts';
import { needs } from '../support/engines.ts';
import {
  awake,
  beside,
  fieldIn,
  figure,
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

const METRIC_LENGTH = /\d\s(?:mm|µm)(?![\w·])/;
const INCH_LENGTH = /\d\s(?:in|thou|tenths|millionths)\b/;

describe('the unit switch', () => {
  it('changes every length on the page: sentences, results, formulas, figures, fields', async () => {
    for (const name of some(1, ['two-screws.html', 'one-screw.html', 'per-flat.html'])) {
      const { page } = await visit(name);
      const lengths = async () => {
        const q = page.locator('.q[data-shown=size], .q[data-shown=motion], [data-result], figure.live [data-says]');
        return (await q.allTextContents()).map((t) => t.replace(/\u00a0/g, ' '));
      };
      const metric = await lengths();
      await units(page, 'inch');
      for (const place of await page.locator('figure.live').all()) await shown(place);
      if ((await page.locator('[data-figure=motion-plot]').count()) > 0)
        await page.waitForFunction(
          () => !/µm|mm/.test(document.querySelector('[data-figure=motion-plot] [data-says]')?.textContent ?? ''),
        );
      const inch = await lengths();
      expect(inch.length).toBe(metric.length);
      let changed = 0;
      for (const [i, text] of inch.entries()) {
        expect(text, name).not.toMatch(METRIC_LENGTH);
        if (METRIC_LENGTH.test(metric[i] ?? '')) {
          expect(text, `${name}: ${metric[i]}`).toMatch(INCH_LENGTH);
          changed++;
        }
      }
      expect(changed, name).toBeGreaterThan(8);
      await units(page, 'both');
      const both = await page.locator('.q[data-shown=motion], .q[data-shown=size]').allTextContents();
      for (const text of both)
        expect(text.replace(/\u00a0/g, ' '), name).toMatch(/\d (?:mm|µm) \(.*\d (?:in|thou|tenths|millionths)\)$/);
      await units(page, 'metric');
      for (const place of await page.locator('figure.live').all()) await shown(place);
      // A figure that was out of view catches up once the browser has told it that it is seen.
      await expect.poll(lengths).toEqual(metric);
    }
  });

  it('says 87.50 µm is 3.445 thou, and a field’s bare number is then thou', inDeep, async () => {
    const { page } = await visit('per-flat.html');
    await units(page, 'inch');
    expect(await words(page.locator('#example-foot-flat [data-sym=Delta][data-result]'))).toBe('= 3.445 thou');
    await page.goto(`${inject('site')}why-fine-means-short.html`);
    await awake(page);
    const wanted = fieldIn(await shown(figure(page, 'thread-eaten')), /wanted stroke/i);
    expect(await wanted.inputValue()).toMatch(/^15\.748\d* thou$/);
    await type(wanted, '10');
    expect(await words(figure(page, 'thread-eaten').locator('[data-stage]'))).toContain('wanted stroke: 10.0 thou');
  });

  it('keeps the numbers themselves: there and back, each field reads as before', inDeep, async () => {
    const { page } = await visit('per-flat.html');
    const values = () =>
      page.locator('main input[type=text]').evaluateAll((all) => all.map((f) => (f as HTMLInputElement).value));
    const before = await values();
    for (const view of ['inch', 'both', 'inch', 'metric'] as const) await units(page, view);
    expect(await values()).toEqual(before);
  });

  it('is remembered after a reload and in other chapters, and can be undone there', async () => {
    const { page } = await visit('two-screws.html');
    await units(page, 'inch');
    await written(page);
    await page.reload();
    await awake(page);
    expect(await page.locator('.units input:checked').inputValue()).toBe('inch');
    await page.goto(`${inject('site')}per-flat.html`);
    await awake(page);
    expect(await page.locator('.units input:checked').inputValue()).toBe('inch');
    expect(await words(page.locator('#example-foot-flat [data-sym=Delta][data-result]'))).toBe('= 3.445 thou');
    await units(page, 'metric');
    expect((await written(page)).search).toBe('');
    await page.goto(`${inject('site')}one-screw.html`);
    await awake(page);
    expect(await page.locator('.units input:checked').inputValue()).toBe('metric');
  });

  it('works where storage is denied', inDeep, async (context) => {
    needs(context, 'first word');
    const opened = await visit('index.html', { fresh: true });
    await beyond(opened.page).addInitScript(() => {
      Object.defineProperty(window, 'localStorage', {
        get: () => {
          throw new DOMException('denied', 'SecurityError');
        },
      });
    });
    await opened.page.goto(`${inject('site')}two-screws.html`);
    await awake(opened.page);
    await units(opened.page, 'inch');
    expect(await words(opened.page.locator('.box.summary .q.now'))).toBe('3.445 thou');
  });
});

describe('the address', () => {
  it('carries what the reader changed and nothing else, and a reload or a copy of the link brings it back', async () => {
    const opened = await visit('two-screws.html');
    const { page } = opened;
    const section = await shown(figure(page, 'section'));
    await type(fieldIn(section, /thread C/i), '5/16-18');
    await type(fieldIn(section, /thread A/i), 'M8x1.25');
    await type(fieldIn(section, /turns/i), '-2');
    const url = await written(page);
    expect(Object.fromEntries(url.searchParams)).toEqual({
      'foot.A': 'M8×1.25',
      'foot.C': '5/16-18 UNC',
      'foot.n': '−2',
    });
    await page.reload();
    await awake(page);
    await shown(section);
    expect(await sentence(section)).toMatch(/^2 turns anticlockwise.* goes down 322\.\d µm/);
    const { page: copy } = await visit(`two-screws.html${url.search}`);
    expect(await sentence(await shown(figure(copy, 'section')))).toBe(await sentence(section));
  });

  it('means the same whatever units the next reader sees', inDeep, async () => {
    const { page } = await visit('why-fine-means-short.html?units=inch');
    const wanted = fieldIn(await shown(figure(page, 'thread-eaten')), /wanted stroke/i);
    await type(wanted, '10');
    const url = await written(page);
    expect(url.searchParams.get('reach.S_w')).toBe('254 µm');
    expect(url.searchParams.get('units')).toBe('inch');
    url.searchParams.delete('units');
    const { page: next } = await visit(`why-fine-means-short.html${url.search}`);
    expect(await fieldIn(figure(next, 'thread-eaten'), /wanted stroke/i).inputValue()).toBe('254 µm');
  });

  it('is clean again after “Chapter’s own numbers”, and so are fields, figures and sentences', inDeep, async () => {
    const { page } = await visit('two-screws.html?foot.A=M8x1.25&foot.n=3&opposite.A=M6&foot.lock=gives#see-it-move');
    const before = await sentence(await shown(figure(page, 'section')));
    const reset = page.getByRole('button', { name: /own numbers/ });
    await reset.click();
    await settled(page);
    await shown(figure(page, 'section'));
    expect(await sentence(figure(page, 'section'))).not.toBe(before);
    expect(await words(figure(page, 'section').locator('[data-read=perTurn]'))).toBe('+87.50 µm');
    expect(await fieldIn(figure(page, 'section'), /thread A/i).inputValue()).toBe('M10×1.5');
    const url = await written(page);
    expect(url.search).toBe('');
    expect(url.hash).toBe('#see-it-move');
    expect(await reset.isVisible()).toBe(false);
  });

  it('brings a wrong number back as it was typed, with its reason', async () => {
    const { page } = await visit('two-screws.html');
    const A = fieldIn(await shown(figure(page, 'section')), /thread A/i);
    await type(A, 'M8x1,2five');
    await written(page);
    await page.reload();
    await awake(page);
    expect(await A.inputValue()).toBe('M8x1,2five');
    expect(await beside(A)).toContain('The figures keep M10×1.5');
  });

  it('has a change that was made the moment before a reload, a link or Back', async () => {
    const { page } = await visit('two-screws.html');
    const section = await shown(figure(page, 'section'));
    const [A, turns] = [fieldIn(section, /thread A/i), fieldIn(section, /turns/i)];
    for (const [text, leave] of [
      ['M8x1.25', () => page.reload()],
      ['M12x1.75', () => page.goto(`${inject('site')}per-flat.html`).then(() => page.goBack())],
    ] as const) {
      // Folds are shut again when a page has been left.
      await shown(section);
      await A.fill(text);
      await turns.fill('-2');
      await turns.fill('3');
      await leave();
      await awake(page);
      expect(await A.inputValue()).toBe(text.replace('x', '×'));
      expect(await turns.inputValue()).toBe('3');
    }
  });

  it('stays that of the page when the reader goes back to an earlier place on it', inDeep, async () => {
    const { page } = await visit('two-screws.html');
    const turns = fieldIn(await shown(figure(page, 'section')), /turns/i);
    await page.evaluate(() => {
      location.hash = '#exercises';
    });
    await type(turns, '3');
    await page.goBack();
    await page.waitForFunction(() => location.hash === '');
    expect(await turns.inputValue()).toBe('3');
    expect((await written(page)).searchParams.get('foot.n')).toBe('3');
  });

  it('keeps the numbers in force beside a wrong text through a reload', inDeep, async () => {
    const { page } = await visit('two-screws.html');
    const section = await shown(figure(page, 'section'));
    const A = fieldIn(section, /thread A/i);
    await type(A, 'M12x1.75');
    const before = await sentence(section);
    await type(A, 'rubbish');
    await page.reload();
    await awake(page);
    expect(await A.inputValue()).toBe('rubbish');
    expect(await beside(A)).toContain('The figures keep M12×1.75');
    expect(await sentence(await shown(section))).toBe(before);
  });

  it('keeps what is not the page’s own', inDeep, async () => {
    const { page } = await visit('two-screws.html?course=b2&foot.A=M8');
    await type(fieldIn(await shown(figure(page, 'section')), /turns/i), '2');
    const url = await written(page);
    expect(url.searchParams.get('course')).toBe('b2');
  });
});

describe('a page that was left', () => {
  it('shows the units that it has when the reader goes back, though another tab changed them meanwhile', async () => {
    const { page, turnTo } = await visit('two-screws.html');
    await turnTo('per-flat.html');
    // As another tab keeps them.
    await page.evaluate(() => localStorage.setItem('notebook-units', 'inch'));
    await page.goBack();
    await awake(page);
    // A browser sets back what its reader chose once the page has loaded.
    await page.waitForFunction(() => document.readyState === 'complete');
    await settled(page);
    const search = (await written(page)).searchParams;
    const inForce = await page.evaluate(() => document.documentElement.dataset.units);
    expect(await page.locator('.units input:checked').inputValue()).toBe(inForce);
    // Where the page was opened anew they are those kept last; one that was kept whole has its own, and says so.
    expect(search.get('units')).toBe(inForce);
  });

  it('has its numbers again when a link of the book leads back to it, and only then', async () => {
    const { page, turnTo } = await visit('two-screws.html');
    const n = async () => fieldIn(await shown(figure(page, 'section')), /^turns/i);
    const follow = async (to: string) => {
      await page.evaluate((href) => {
        document.documentElement.setAttribute('data-left', '');
        [...document.querySelectorAll<HTMLAnchorElement>('a[href]')]
          .find((a) => a.getAttribute('href') === href)
          ?.click();
      }, to);
      await page.waitForSelector('html[data-awake]:not([data-left])');
      await awake(page);
    };
    const first = await (await n()).inputValue();
    await type(await n(), '3');
    await follow('per-flat.html');
    await follow('two-screws.html');
    expect(await (await n()).inputValue()).toBe('3');
    expect((await written(page)).search).toMatch(/\.n=3$/);
    expect(await words(page.locator('[data-tools]'))).toContain('What you set on this page is back.');
    // An address that is typed is the chapter, and one that carries a number is whole.
    await turnTo('two-screws.html');
    expect(await (await n()).inputValue()).toBe(first);
    await type(await n(), '2');
    await turnTo('two-screws.html?foot.A=M12x1.75');
    expect(await (await n()).inputValue()).toBe(first);
    await follow('per-flat.html');
    await follow('two-screws.html');
    expect((await written(page)).searchParams.get('foot.A')).toBe('M12×1.75');
    // The chapter’s own numbers leave nothing to come back.
    await page.getByRole('button', { name: 'Chapter’s own numbers' }).click();
    expect(await words(page.locator('[data-tools]'))).not.toContain('is back');
    await follow('per-flat.html');
    await follow('two-screws.html');
    expect((await written(page)).search).toBe('');
  });
});

describe('a hostile address', () => {
  const works = async (page: Page) => {
    const section = await shown(figure(page, 'section'));
    const reset = page.getByRole('button', { name: /own numbers/ });
    if (await reset.isVisible()) await reset.click();
    await settled(page);
    await type(fieldIn(await shown(section), /thread A/i), 'M12x1.5');
    await sentenceWith(section, 'the carried part goes up 43.75 µm');
    // A refusal may quote what the address said.
    const said = (await words(page.locator('body'))).replace(/“[^”]*”/g, '');
    expect(said).not.toMatch(/NaN|Infinity|undefined|\[object/);
  };
  const ATTACKS: readonly (readonly [string, string])[] = [
    ['markup in a thread', `?foot.A=${encodeURIComponent('<img src=x onerror=alert(1)>')}`],
    ['markup unencoded', '?foot.A=<img src=x onerror=alert(1)>&foot.n=<script>alert(1)</script>'],
    [
      'markup in every place',
      ['A', 'C', 'n', 'lock', 'arrangement']
        .map((k, i) => `${i ? '&' : '?'}foot.${k}=${encodeURIComponent('"><svg onload=alert(1)>')}`)
        .join(''),
    ],
    ['ten kilobytes', `?foot.A=${'M10x1.5%20'.repeat(500)}&foot.n=${'9'.repeat(5000)}`],
    ['NaN', '?foot.n=NaN'],
    ['Infinity', '?foot.n=Infinity&foot.C=Infinity'],
    ['a billion turns', '?foot.n=1e9'],
    ['turns beyond number', '?foot.n=1e999&psi=1e999&soft-lock.psi=-1e999'],
    ['unknown keys', '?nothing=1&foot.zzz=2&nope.A=M8&foot.=3&.A=4&foot.A.B=5'],
    [
      'names of every object',
      '?foot.__proto__=1&__proto__.A=M8&constructor.prototype=1&foot.constructor=M8&foot.toString=x',
    ],
    ['broken percent encoding', '?foot.A=%E0%A4%A&foot.n=%'],
    ['nul and control characters', '?foot.A=%00%01%1b%7f&foot.n=%00'],
    ['the same key many times', `?${'foot.A=M8&'.repeat(500)}foot.A=M6`],
    ['a choice that is none', '?foot.lock=maybe&foot.arrangement=__proto__&foot.arrangement=upside%20down'],
    ['units that are none', '?units=%3Cb%3E'],
    ['a nought and a negative pitch', '?foot.A=M10x0&foot.C=M10x-1'],
    ['a fragment that is no selector', '?foot.n=2#"]<img src=x onerror=alert(1)>'],
    ['a script address', '?foot.A=javascript:alert(1)#javascript:alert(1)'],
  ];
  const CHOSEN = ['markup in every place', 'turns beyond number', 'names of every object', 'the same key many times'];
  for (const [what, search] of these(
    ATTACKS,
    ATTACKS.filter(([name]) => CHOSEN.includes(name)),
  ))
    it(`with ${what} runs nothing and leaves the page at work`, async () => {
      // A dialog or an uncaught error fails the test by itself.
      const { page } = await visit(`two-screws.html${search}`);
      expect(await page.locator('main img, main script, main iframe').count()).toBe(0);
      expect(await page.locator('main [onload], main [onerror]').count()).toBe(0);
      const widths = await page.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
      expect(widths[0]).toBeLessThanOrEqual(widths[1] ?? 0);
      await works(page);
    });

  it('names what is wrong beside the field it was meant for', async () => {
    const { page } = await visit(`two-screws.html?foot.A=${encodeURIComponent('<b>M10</b>')}&foot.n=NaN`);
    const section = await shown(figure(page, 'section'));
    expect(await beside(fieldIn(section, /thread A/i))).toContain('Read “<b>M10</b>”');
    expect(await beside(fieldIn(section, /turns/i))).toContain('Read “NaN”, which is not a number');
  });
});
