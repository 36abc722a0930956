/**
 * What goes wrong round a page: storage, workers, scripts, fonts, tabs, the clock, files and links that are cut off. The page goes
 * on working, says one sentence where the reader needs it, and the reader’s other numbers stay.
 */
import { copyFileSync, mkdirSync, mkdtempSync, readdirSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, describe, expect, inject, it } from 'vitest';
import { writeDesigns } from '../../widgets/assembly/design-file.ts';
import { inDeep, some } from '../support/deep.ts';
import { beyond, type Page } from '../support/driven.ts';
import { needs } from '../support/engines.ts';
import {
  asFiles,
  awake,
  beside,
  fieldIn,
  figure,
  sentence,
  settled,
  shown,
  type,
  units,
  useBrowser,
  words,
  written,
} from '../support/page.ts';

const { visit } = useBrowser();

const panel = async (page: Page) => {
  const place = page.locator('.designs');
  if ((await place.getAttribute('open')) === null) await place.locator('summary').click();
  return place;
};
const status = (page: Page) => words(page.locator('.designs [role=status]'));
const listed = async (page: Page) => words(page.locator('.design-list'));
const keep = async (page: Page, name: string) => {
  const place = await panel(page);
  await place.getByLabel(/under the name/).fill(name);
  await place.getByLabel(/taken from/).selectOption('foot');
  await place.getByRole('button', { name: 'Keep' }).click();
};
const threadA = async (page: Page) => fieldIn(await shown(figure(page, 'section')), /^Thread A/i);

describe('storage that is full', () => {
  it('keeps designs and progress for the page, over what it holds already, and says so', async () => {
    const { page } = await visit('two-screws.html', { fresh: true });
    await keep(page, 'Before');
    await page.evaluate(() => {
      Storage.prototype.setItem = () => {
        throw new DOMException('full', 'QuotaExceededError');
      };
    });
    await keep(page, 'After');
    expect(await status(page)).toMatch(/would not keep the designs \(.*\)\. They last until the page is closed/);
    expect(await listed(page)).toMatch(/Before.*After/);
    expect(await words(page.locator('.designs summary'))).toBe('My design: After');
    await page.getByRole('button', { name: 'Remove Before' }).click();
    expect(await listed(page)).not.toContain('Before');
    const exercise = page.locator('[data-exercise]').first();
    await exercise.locator('input[type=text]').fill(await words(exercise.locator('[data-answer]')));
    await exercise.getByRole('button', { name: 'Check' }).click();
    expect(await words(page.locator('.progress'))).toMatch(/1 of \d+ solved.*This browser cannot keep it/);
    await units(page, 'inch');
    expect(await words(page.locator('.box.summary .q.now'))).toBe('3.445 thou');
  });
});

describe('storage that is denied', () => {
  it('leaves fields, designs, units and exercises at work for as long as the page is open', inDeep, async () => {
    const { page } = await visit('two-screws.html', { fresh: true });
    await page.evaluate(() =>
      Object.defineProperty(window, 'localStorage', {
        get: () => {
          throw new DOMException('denied', 'SecurityError');
        },
      }),
    );
    await type(await threadA(page), 'M12x1.5');
    await keep(page, 'Foot');
    expect(await status(page)).toContain('storage is full or switched off');
    expect(await words(page.locator('.designs summary'))).toBe('My design: Foot');
    await page.getByRole('button', { name: 'Chapter’s own numbers' }).click();
    await settled(page);
    expect(await (await threadA(page)).inputValue()).toBe('M10×1.5');
    expect(await words(page.locator('.designs summary'))).toBe('My designs');
    await page.locator('.design-list button').first().click();
    await settled(page);
    expect(await (await threadA(page)).inputValue()).toBe('M12×1.5');
    await units(page, 'inch');
    expect(await sentence(await shown(figure(page, 'section')))).toContain('1.722 thou');
  });
});

describe('a worker', () => {
  const drawWith = async (worker: string) => {
    const { page } = await visit('measured-parts.html?foot.n_a=40000', { fresh: true });
    const place = await shown(figure(page, 'play-batch'));
    await page.evaluate((kind) => {
      const later = window.setTimeout.bind(window);
      // A page’s patience of seconds, in a test of tenths.
      window.setTimeout = ((run: () => void, ms: number) => later(run, ms >= 2000 ? 150 : ms)) as typeof setTimeout;
      window.Worker = class {
        onmessage?: (event: unknown) => void;
        onerror?: (event: unknown) => void;
        constructor() {
          if (kind === 'blocked') throw new DOMException('blocked', 'SecurityError');
          if (kind === 'broken') later(() => this.onerror?.(new Event('error')), 20);
        }
        postMessage() {
          if (kind === 'killed') later(() => this.onmessage?.({ data: { share: 0.4 } }), 20);
        }
        terminate() {
          Object.assign(window, { ended: true });
        }
      } as unknown as typeof Worker;
    }, worker);
    await place.getByRole('button', { name: /^Draw/ }).click();
    await page.waitForFunction(() => /Drawn in/.test(document.querySelector('[data-batch="told"]')?.textContent ?? ''));
    return { page, place };
  };
  for (const kind of some(1, ['killed', 'broken', 'blocked']))
    it(`that is ${kind} leaves the batch to the page, which draws it to the end`, async () => {
      const { page, place } = await drawWith(kind);
      expect(await words(place.locator('[data-batch="told"]'))).toContain('in slices on the page');
      expect(await words(place.locator('[data-batch="drawn"]'))).toMatch(/^40\s000 assemblies drawn/);
      expect(await place.locator('[data-batch="stop"]').isVisible()).toBe(false);
      if (kind !== 'blocked') expect(await page.evaluate(() => 'ended' in window)).toBe(true);
    });
});

/** A copy of the notebook with some of its files missing, as an address. */
const folders: string[] = [];
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true });
});
const without = (files: RegExp): string => {
  const folder = mkdtempSync(join(tmpdir(), 'missing-'));
  folders.push(folder);
  mkdirSync(join(folder, 'assets'));
  for (const inside of ['', 'assets'])
    for (const entry of readdirSync(join(inject('folder'), inside), { withFileTypes: true }))
      if (entry.isFile() && !files.test(entry.name)) {
        // A linked page would be opened where it is linked to, with all its files beside it.
        const put = entry.name.endsWith('.html') ? copyFileSync : symlinkSync;
        put(join(inject('folder'), inside, entry.name), join(folder, inside, entry.name));
      }
  return pathToFileURL(`${folder}/`).href;
};

/** A page of files, whose address will be another folder’s. */
const ofFiles = () => visit(`${asFiles().slice('file:///'.length)}index.html`, { from: 'file:///', fresh: true });

/** The browser’s own word for a file that is not there; anything else stays a fault. */
const forgiveMissing = (faults: string[]) => {
  const other = faults.filter((f) => !/ERR_FILE_NOT_FOUND|download(?:able)? (?:font|failed)|Loading failed/.test(f));
  faults.splice(0, faults.length, ...other);
};

describe('files that are missing', () => {
  it('the page’s script: everything reads, every figure is a picture, and nothing looks alive that is not', async () => {
    const { page, faults } = await ofFiles();
    await page.goto(`${without(/^notebook-.*\.js$/)}two-screws.html`);
    await page.waitForSelector('footer');
    expect(await page.locator('html[data-awake]').count()).toBe(0);
    for (const svg of await page.locator('figure.live [data-stage] svg').all())
      expect(await svg.isVisible()).toBe(true);
    expect(await words(page.locator('#example-foot-turn [data-sym=Delta][data-result]'))).toBe('= 87.50 µm');
    expect(await page.locator('main button, main input').count()).toBe(0);
    forgiveMissing(faults);
  });

  it('a figure’s script: it keeps its picture and says so, and examples and other figures follow', inDeep, async () => {
    const { page, faults } = await ofFiles();
    await page.goto(`${without(/^motion-plot-/)}two-screws.html`);
    await awake(page);
    const plot = figure(page, 'motion-plot');
    await plot.scrollIntoViewIfNeeded();
    await page.waitForFunction(
      () => document.querySelector('[data-figure="motion-plot"] [data-refusal]')?.textContent !== '',
    );
    expect(await words(plot.locator('[data-refusal]'))).toBe(
      'The script of this figure did not load, so its picture keeps the chapter’s own numbers: reload the page to make it follow yours.',
    );
    expect(await plot.locator('svg').first().isVisible()).toBe(true);
    await type(await threadA(page), 'M12x1.75');
    expect(await sentence(figure(page, 'section'))).toContain('81.25 µm');
    forgiveMissing(faults);
  });

  it('its fonts: the text stands in those of the reader’s own, and nothing is too wide', inDeep, async () => {
    const { page, faults } = await ofFiles();
    await page.goto(`${without(/\.woff2$/)}two-screws.html`);
    await awake(page);
    await type(await threadA(page), 'M12x1.75');
    expect(await sentence(figure(page, 'section'))).toContain('81.25 µm');
    await page.evaluate(() => document.fonts.ready);
    const [wide, window] = await page.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
    expect(wide).toBeLessThanOrEqual(window ?? 0);
    forgiveMissing(faults);
  });
});

describe('two tabs', () => {
  it('that change one design: the later number stands, the other’s other numbers stay, and no page changes under its reader', async (context) => {
    needs(context, 'requests');
    const { page } = await visit('two-screws.html', { fresh: true });
    const mine = await threadA(page);
    await type(mine, 'M12x1.75');
    await keep(page, 'Foot');
    const other = await page.context().newPage();
    await other.goto(`${inject('site')}two-screws.html`);
    await awake(other);
    expect(await (await threadA(other)).inputValue()).toBe('M12×1.75');
    await type(await threadA(other), 'M8x1');
    await keep(other, 'Foot');
    expect(await mine.inputValue()).toBe('M12×1.75');
    await page.waitForFunction(() => document.querySelector('.designs summary')?.textContent === 'My design: Foot');
    const kept = JSON.parse((await page.evaluate(() => localStorage.getItem('notebook-designs'))) ?? '');
    expect(kept.designs.length).toBe(1);
    expect(kept.designs[0].numbers).toMatchObject({ A: 'M8×1', C: '3/8-16 UNC' });
    await other.getByRole('button', { name: 'Remove Foot' }).click();
    await page.waitForFunction(() => document.querySelector('.designs summary')?.textContent === 'My designs');
    expect(await listed(page)).toBe('None kept yet.');
    expect(await mine.inputValue()).toBe('M12×1.75');
    await other.close();
  });
});

describe('a clock that is wrong', () => {
  for (const [what, now] of some(1, [
    ['that is no time', Number.NaN],
    ['before any calendar', -8.64e15],
    ['at the end of time', 8.64e15],
  ] as const))
    it(`${what} and going backwards changes nothing a page does`, async () => {
      const { page } = await visit('two-screws.html', { fresh: true });
      await page.evaluate((start) => {
        let time = start;
        const back = () => (time > -8.64e15 ? --time : time);
        const Real = Date;
        window.Date = class extends Real {
          constructor(...given: [number]) {
            super(...((given.length > 0 ? given : [back()]) as [number]));
          }
          static override now = back;
        } as DateConstructor;
      }, now);
      await type(await threadA(page), 'M12x1.5');
      expect(await words(figure(page, 'section').locator('[data-read=perTurn]'))).toBe('+87.50 µm');
      expect((await written(page)).searchParams.get('foot.A')).toBe('M12×1.5');
      await keep(page, 'Foot');
      expect(await status(page)).toContain('“Foot” is kept in this browser.');
      const exercise = page.locator('[data-exercise]').first();
      const before = await exercise.getAttribute('data-picks');
      await exercise.getByRole('button', { name: 'New numbers' }).click();
      expect(await exercise.getAttribute('data-picks')).not.toBe(before);
    });
});

describe('a file of designs that is half written', () => {
  it('is refused in one sentence wherever it breaks off, and the kept ones stay', inDeep, async () => {
    const { page } = await visit('two-screws.html', { fresh: true });
    await keep(page, 'Foot');
    const place = await panel(page);
    const whole = writeDesigns([{ name: 'Other', numbers: { A: 'M8×1', C: 'M6' } }]);
    for (const share of some(2, [0.98, 0.3, 0, 0.6])) {
      await page.evaluate(() => {
        const said = document.querySelector('.designs [role=status]');
        if (said) said.textContent = '';
      });
      const buffer = Buffer.from(whole.slice(0, Math.floor(whole.length * share)));
      await place.locator('input[type=file]').setInputFiles({ name: 'd.json', mimeType: 'application/json', buffer });
      await page.waitForFunction(() => document.querySelector('.designs [role=status]')?.textContent !== '');
      expect(await status(page)).toMatch(/^Read “.*”.*, which is not JSON or is cut off; choose a file/);
      expect(await listed(page)).toMatch(/^FootIn use/);
    }
  });

  it(
    'in this browser’s storage is said to be unreadable, and left there until a design is kept over it',
    inDeep,
    async () => {
      const { page } = await visit('two-screws.html', { fresh: true });
      await page.evaluate(() => localStorage.setItem('notebook-designs', '{"format":"differential-screw-des'));
      await page.reload();
      await awake(page);
      await panel(page);
      expect(await listed(page)).toContain('What this browser kept of your designs can’t be read any more');
      await type(await threadA(page), 'M12x1.5');
      expect(await page.evaluate(() => localStorage.getItem('notebook-designs'))).toBe(
        '{"format":"differential-screw-des',
      );
      await keep(page, 'Foot');
      expect(await listed(page)).toMatch(/^FootIn use/);
    },
  );
});

describe('a link', () => {
  it('cut off within a number says so beside its field, and the numbers before it stand', inDeep, async () => {
    const whole = `?foot.n=2&foot.A=${encodeURIComponent('M12×1.5')}&foot.C=${encodeURIComponent('5/16-18 UNC')}`;
    for (const [cut, said] of some(1, [
      [whole.indexOf('-18'), 'Read “5/16”'],
      [whole.indexOf('%2F16') + 2, 'Read “5%2”'],
      [whole.indexOf('5%2F'), 'Nothing was typed'],
    ] as const)) {
      const { page } = await visit(`two-screws.html${whole.slice(0, cut)}`);
      const section = await shown(figure(page, 'section'));
      expect(await beside(fieldIn(section, /^Thread C/i)), whole.slice(0, cut)).toContain(said);
      expect(await beside(fieldIn(section, /^Thread C/i))).toContain('The figures keep 3/8-16 UNC.');
      expect(await fieldIn(section, /^Thread A/i).inputValue()).toBe('M12×1.5');
      expect(await sentence(section)).toContain('2 turns clockwise');
    }
  });
});

describe('a text that is too long', () => {
  it('is as wrong after a reload as it was when typed, though its beginning would be right', inDeep, async () => {
    const { page } = await visit('two-screws.html', { fresh: true });
    const A = await threadA(page);
    const long = `M8x1.25${' '.repeat(100)}and more`;
    await type(A, long);
    const said = await beside(A);
    expect(said).toContain('a designation is at most 100 characters');
    await written(page);
    await page.reload();
    await awake(page);
    expect(await (await threadA(page)).inputValue()).toBe(long);
    expect(await beside(await threadA(page))).toBe(said);
    expect(await words(figure(page, 'section').locator('[data-read=perTurn]'))).toBe('+87.50 µm');
  });
});

describe('a frame that forbids forms', () => {
  it('has predictions, exercises and designs that answer all the same, by the button and by Enter', async (context) => {
    needs(context, 'requests');
    const { page, faults } = await visit('index.html', { fresh: true });
    const body =
      '<!doctype html><iframe sandbox="allow-scripts allow-same-origin" width="1200" height="850" src="two-screws.html"></iframe>';
    await beyond(page).route(/in-a-frame/, (route) => route.fulfill({ contentType: 'text/html', body }));
    await page.goto(`${inject('site')}in-a-frame.html`);
    const inside = beyond(page).frameLocator('iframe');
    await inside.locator('html[data-awake]').waitFor();
    const prediction = inside.locator('.predict').first();
    await prediction.locator('input').fill('87.5 µm');
    await prediction.locator('input').press('Enter');
    expect(await words(prediction.locator('.verdict'))).toBe('Yes: 87.50 µm.');
    const exercise = inside.locator('[data-exercise]').first();
    await exercise.locator('input').fill('nonsense');
    await exercise.getByRole('button', { name: 'Check' }).click();
    expect(await words(exercise.locator('.verdict'))).toContain('nonsense');
    await inside.locator('.designs summary').click();
    await inside.locator('#design-name').fill('Foot');
    await inside.getByRole('button', { name: 'Keep' }).click();
    expect(await words(inside.locator('.designs [role=status]'))).toContain('“Foot” is kept in this browser.');
    // The browser warns of a frame like this one, and the page around it has no icon.
    faults.splice(0, faults.length, ...faults.filter((f) => !/allow-same-origin|404/.test(f)));
  });
});
