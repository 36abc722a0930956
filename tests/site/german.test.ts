/**
 * The German edition, without building it: its three chapters hold to the numbers of the English ones, say nothing in English, and read and write
 * a decimal comma. The whole edition is built where it is asked for, and once in a deep run (`tests/browser/german.test.ts`).
 */
import { readdirSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { parseHTML } from 'linkedom';
import { runnerImport } from 'vite';
import { beforeAll, describe, expect, it } from 'vitest';
import type * as Csv from '../../widgets/exercises/csv-row.ts';
import { drawItem } from '../../widgets/exercises/draw.ts';
import type { Exercise } from '../../widgets/exercises/exercise.ts';
import type * as Format from '../../widgets/input/format.ts';
import type * as Texts from '../../widgets/input/texts.ts';
import { inLanguage } from '../../widgets/site/language.mjs';
import { countProse, LONGEST } from '../../widgets/site/prose.ts';
import type * as Site from '../../widgets/site/site.ts';
import * as English from '../../widgets/site/site.ts';
import { englishIn } from '../support/english.ts';

const root = resolve(import.meta.dirname, '../..');
const load = async <Module>(file: string): Promise<Module> =>
  (
    await runnerImport<Module>(resolve(root, 'widgets', file), {
      configFile: false,
      logLevel: 'error',
      plugins: inLanguage('de'),
    })
  ).module;

const CHAPTERS = ['one-screw', 'inch-and-starts', 'three-parts'];
const ASSETS = { scripts: [], style: { addresses: [] }, icon: '', module: true };

interface Read {
  readonly document: Document;
  readonly mistakes: readonly unknown[];
  readonly model: {
    readonly exercises: readonly Exercise[];
    readonly predictions: Readonly<
      Record<string, { readonly answer: number; readonly slips: readonly { readonly value: number }[] }>
    >;
  };
}

const readAll = (site: Pick<typeof Site, 'readPage' | 'FIGURES'>): ReadonlyMap<string, Read> =>
  new Map(
    CHAPTERS.map((slug) => {
      const page = site.readPage(resolve(root, 'chapters'), slug, site.FIGURES, new Map(), ASSETS);
      const { document } = parseHTML(page?.html ?? '');
      const model = JSON.parse(document.querySelector('#page-model')?.textContent ?? '{}');
      return [slug, { document, model, mistakes: page?.mistakes ?? ['no page'] }];
    }),
  );

/** Every number that an example shows, its unit beside it, in the order of the page. */
const numbersOf = ({ document }: Read): string[] =>
  [...document.querySelectorAll('[data-example] .steps')].flatMap((steps) =>
    [...(steps.textContent ?? '').matchAll(/[−\d][\d.,]*/g)].map(([number]) => number.replace(',', '.')),
  );

describe('the German chapters', () => {
  let english: ReadonlyMap<string, Read>;
  let german: ReadonlyMap<string, Read>;
  beforeAll(async () => {
    english = readAll(English);
    german = readAll(await load<typeof Site>('site/site.ts'));
  });
  const both = (slug: string): readonly [Read, Read] => {
    const [en, de] = [english.get(slug), german.get(slug)];
    if (!en || !de) throw new Error(`There is no chapter ${slug}.`);
    return [en, de];
  };

  it.each(CHAPTERS)('%s is read without a mistake and says so in its lang', (slug) => {
    const [, de] = both(slug);
    expect(de.mistakes).toEqual([]);
    expect(de.document.documentElement?.getAttribute('lang')).toBe('de');
    expect(de.document.querySelector('article')?.hasAttribute('lang')).toBe(false);
  });

  it.each(CHAPTERS)('%s works its examples and predictions to the numbers of the English one', (slug) => {
    const [en, de] = both(slug);
    expect(numbersOf(de).length).toBeGreaterThan(10);
    expect(numbersOf(de)).toEqual(numbersOf(en));
    const answers = ({ model }: Read) =>
      Object.entries(model.predictions).map(([id, p]) => [id, p.answer, p.slips.map(({ value }) => value)]);
    expect(answers(de)).toEqual(answers(en));
  });

  it.each(CHAPTERS)('%s draws the same items of the bank from the same seeds', (slug) => {
    const [en, de] = both(slug);
    expect(de.model.exercises.map(({ id }) => id)).toEqual(en.model.exercises.map(({ id }) => id));
    for (const [i, exercise] of en.model.exercises.entries())
      for (const seed of ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h']) {
        const [one, other] = [exercise, de.model.exercises[i] ?? exercise].map((e) => drawItem(e, [seed, e.id]));
        const numbers = (item: typeof one) => item && [item.picks, item.amount, item.accepted, item.offered?.right];
        expect(numbers(other)).toEqual(numbers(one));
      }
  });

  it.each(CHAPTERS)('%s leaves no English outside what is marked as such', (slug) => {
    expect(englishIn(both(slug)[1].document)).toEqual([]);
  });
});

describe('German prose', () => {
  it('has no longer sentence than English', () => {
    const folder = resolve(root, 'chapters/de');
    for (const file of readdirSync(folder)) {
      const { longest } = countProse(readFileSync(resolve(folder, file), 'utf8'), new Set());
      expect(longest, file).toBeLessThanOrEqual(LONGEST);
    }
  });
});

describe('a decimal comma', () => {
  it('is written, and grouped as the trade does (DIN 1333: a thin space, no point)', async () => {
    const { numeral, show, grouped, fixed } = await load<typeof Format>('input/format.ts');
    expect(numeral(1.5875)).toBe('1,5875');
    expect(show(-0.125, { shown: 'motion' }, 'metric')).toBe('−125\u00a0µm');
    expect(show(1.5, { shown: 'size', digits: 4 }, 'both')).toBe('1,500\u00a0mm (0,05906\u00a0in)');
    expect(show(0.25, { shown: 'turns' }, 'metric')).toBe('0,25\u00a0Umdrehungen');
    expect(grouped(1234567)).toBe('1\u202f234\u202f567');
    expect(fixed(-2.5, 2)).toBe('−2,50');
  });

  it('stands in CSV, whose cells semicolons part', async () => {
    const { csvRow } = await load<typeof Csv>('exercises/csv-row.ts');
    expect(csvRow(['M10×1,5; LH', '-2.50', '3'])).toBe('"M10×1,5; LH";"-2,50";"3"');
  });

  it('is read like a point, in numbers, threads and lists', async () => {
    const { TEXTS } = await load<typeof Texts>('input/texts.ts');
    const taps = TEXTS.taps.read('M10x1,5; M8×1.25');
    expect(taps).toMatchObject({ ok: true });
    expect(TEXTS.taps.note('M10x1,5; M8×1.25; Unsinn')).toMatch(
      /^Ausgelassen: „Unsinn“; die anderen 2 werden behalten\. Gelesen: /,
    );
    expect(TEXTS.dividers.read('Sechskant; 50')).toMatchObject({ ok: true });
    expect(TEXTS.warmth.read('20,5 °C')).toEqual({ ok: true, value: '20.5 °C' });
  });
});
