/**
 * The German edition, without building it: its three chapters hold to the numbers of the English ones, say nothing in English, and read and write
 * a decimal comma. The whole edition is built where it is asked for, and once in a deep run (`tests/browser/german.test.ts`).
 */
import { resolve } from 'node:path';
import { parseHTML } from 'linkedom';
import { beforeAll, describe, expect, it } from 'vitest';
import { makeBank } from '../../widgets/exercises/bank.ts';
import { drawItem } from '../../widgets/exercises/draw.ts';
import type { Exercise } from '../../widgets/exercises/exercise.ts';
import * as English from '../../widgets/site/site.ts';
import { inDeep, these } from '../support/deep.ts';
import { englishIn } from '../support/english.ts';
import { german } from '../support/german.ts';
import type * as InGerman from '../support/in-german.ts';
import { kept } from '../support/kept.ts';

const FOLDER = resolve(import.meta.dirname, '../../chapters');
const ALL = ['one-screw', 'inch-and-starts', 'three-parts'];
const CHAPTERS = these(ALL, ['one-screw']);
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

const readAll = (
  language: string,
  { readPage, FIGURES }: Pick<typeof InGerman, 'readPage' | 'FIGURES'>,
): ReadonlyMap<string, Read> =>
  new Map(
    CHAPTERS.map((slug) => {
      const page = kept(`page ${language} ${slug}`, () => readPage(FOLDER, slug, FIGURES, new Map(), ASSETS));
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

let inGerman: typeof InGerman;
beforeAll(async () => {
  inGerman = await german();
}, 120_000);

describe('the German chapters', () => {
  let english: ReadonlyMap<string, Read>;
  let germans: ReadonlyMap<string, Read>;
  beforeAll(() => {
    english = readAll('en', English);
    germans = readAll('de', inGerman);
  });
  const both = (slug: string): readonly [Read, Read] => {
    const [en, de] = [english.get(slug), germans.get(slug)];
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

  it.each(CHAPTERS)('%s makes the bank of the same version, so that a link to papers opens in both', (slug) => {
    const banks = both(slug).map(({ model: { exercises } }) => [{ slug, title: slug, exercises }]);
    expect(makeBank(banks[1] ?? []).version).toBe(makeBank(banks[0] ?? []).version);
  });

  it.each(CHAPTERS)('%s leaves no English outside what is marked as such', (slug) => {
    expect(englishIn(both(slug)[1].document)).toEqual([]);
  });
});

describe('the German book', () => {
  it.skipIf(inDeep.skip)('has the bank of the English one', () => {
    const [en, de] = [English.readBook(FOLDER, English.FIGURES), inGerman.readBook(FOLDER, inGerman.FIGURES)];
    expect(de.bank.version).toBe(en.bank.version);
    expect(de.mistakes).toEqual([]);
  });
});

describe('papers of a chapter that is not translated', () => {
  const words = { classCode: 'kurs', version: '1-0' };
  const PAIR = { id: 'pair', title: 'A pair', question: 'How far?', hint: 'Subtract.', lang: 'en-GB' };
  const item = { ...PAIR, pools: [], unit: 'µm', digits: 3, slips: [{ way: '2*L', says: 'Twice.' }] } as const;
  const exercise: Exercise = {
    ...item,
    steps: [{ relation: 'lead', output: 'L', bind: { P: 1.5, N: 1 }, as: 'L', digits: 4, why: 'One start.' }],
  };
  const lineOf = () => ({ key: 'pair', exercise: 'pair', item: inGerman.drawItem(exercise, ['a']) });

  it('say which of their words are English', () => {
    const lines = [lineOf()];
    const sheet = parseHTML(`<main>${inGerman.studentSheet(lines, 'Ada', words)}</main>`).document;
    expect(sheet.querySelector('li [lang="en-GB"]')?.textContent).toBe('How far?');
    expect(sheet.querySelector('.ask')?.textContent).toMatch(/^Antworte in µm/);
    expect(sheet.querySelector('.ask')?.closest('[lang]')).toBeNull();
    const method = inGerman.methodSheet([{ exercise, key: 'pair', of: 'pair' }], lines, words, {});
    const { document } = parseHTML(`<main>${method}</main>`);
    const english = [...document.querySelectorAll('[lang="en-GB"]')].map((e) => e.textContent);
    expect(english).toEqual(['A pair', 'How far?', 'One start.', 'Subtract.', 'Twice.']);
  });

  it.each(['2.1', '3.0'] as const)(
    'are items of QTI %s in English, with what the notebook says marked as German',
    (version) => {
      const { 'items/item-pair.xml': xml = '', 'imsmanifest.xml': manifest } = inGerman.qtiFiles(
        [lineOf()],
        version,
        '1-0',
      );
      expect(xml).toMatch(/<(?:qti-assessment-item|assessmentItem) [^>]*xml:lang="en-GB"/);
      expect(xml).toMatch(/How far\? <span xml:lang="de(?:-DE)?">Antworte in µm/);
      expect(xml).toMatch(/<p>Twice\.<\/p>/);
      expect(xml).toMatch(/<p xml:lang="de(?:-DE)?">Der richtige Betrag, aber die andere Richtung/);
      expect(manifest).toContain('<string language="en-GB">A pair</string></title><language>en-GB</language>');
    },
  );
});

describe('a decimal comma', () => {
  it('is written, and grouped as the trade does (DIN 1333: a thin space, no point)', () => {
    const { numeral, show, grouped, fixed } = inGerman;
    expect(numeral(1.5875)).toBe('1,5875');
    expect(show(-0.125, { shown: 'motion' }, 'metric')).toBe('−125\u00a0µm');
    expect(show(1.5, { shown: 'size', digits: 4 }, 'both')).toBe('1,500\u00a0mm (0,05906\u00a0in)');
    expect(show(0.25, { shown: 'turns' }, 'metric')).toBe('0,25\u00a0Umdrehungen');
    expect(grouped(1234567)).toBe('1\u202f234\u202f567');
    expect(fixed(-2.5, 2)).toBe('−2,50');
  });

  it('stands in CSV, whose cells semicolons part', () => {
    const { csvRow } = inGerman;
    expect(csvRow(['M10×1,5; LH', '-2.50', '3'])).toBe('"M10×1,5; LH";"-2,50";"3"');
  });

  it('stands on the sheets of the lab and in the grid, and what they give is read again', () => {
    const { csvRow, drawItem: draw, gridCsv, judgeTable, labOf, labSheet } = inGerman;
    const { readingsByStudent, readLabPairs, rigRows, rigSheet, typedTable } = inGerman;
    const pairs = readLabPairs('M8x1,25 + 5/16-18\nM12x1,75 + M10x1,5');
    if (!pairs.ok) throw new Error('no pairs');
    const lab = labOf(pairs.value, '7B', 'Ada', '1');
    if (!lab.ok) throw new Error('no lab');
    const heading = { classCode: '7B', version: '1-0' };
    for (const html of [labSheet(lab.value, heading, 'metric'), rigSheet(lab.value, heading, 'inch')]) {
      const { document } = parseHTML(`<html><body>${html}</body></html>`);
      expect(englishIn(document)).toEqual([]);
      expect(document.body.textContent).not.toMatch(/\d\.\d/);
    }
    const rows = rigRows(lab.value, 'metric');
    expect(new Set(rows.map((row) => row[4]))).toEqual(new Set(['auf', 'ab']));
    const typed = readingsByStudent(rows.map(csvRow).join('\r\n'), ['Ada'])?.students[0];
    const table = typedTable(typed?.text ?? '', 'µm');
    const fit = table.ok ? judgeTable(table.value, lab.value.pair.Delta) : table;
    expect(fit).toMatchObject({ ok: true });
    expect(fit.ok && fit.value.lead).toBeCloseTo(lab.value.found ?? Number.NaN, 4);
    const { exercises } = readAll('de', inGerman).get(CHAPTERS[0] ?? '')?.model ?? { exercises: [] };
    const lines = exercises.map((exercise) => ({
      key: exercise.id,
      exercise: exercise.id,
      item: draw(exercise, ['Ada']),
    }));
    expect(gridCsv([{ student: 'Ada', lines }], true)).not.toMatch(/\d\.\d/);
  });

  it('is read like a point, in numbers, threads and lists', () => {
    const { TEXTS, inField, readWithSpread } = inGerman;
    const taps = TEXTS.taps.read('M10x1,5; M8×1.25');
    expect(taps).toMatchObject({ ok: true });
    expect(TEXTS.taps.note('M10x1,5; M8×1.25; Unsinn')).toMatch(
      /^Ausgelassen: „Unsinn“; die anderen 2 werden behalten\. Gelesen: /,
    );
    expect(inField('1.5 mm ± 2 µm, 10 readings')).toBe('1,5 mm ± 2 µm, 10 Messwerte');
    const spread = readWithSpread('1,5 mm ± 2 µm, 10 Messwerte', 'mm', 'mm');
    expect(spread).toMatchObject({ ok: true, value: { value: 1.5, spread: { readings: 10 } } });
    expect(TEXTS.dividers.read('Sechskant; 50')).toMatchObject({ ok: true });
    expect(TEXTS.warmth.read('20,5 °C')).toEqual({ ok: true, value: '20.5 °C' });
  });
});
