/**
 * The chapters as they stand: no mistakes, everything a chapter teaches with is there, and each expected value is held
 * against the engine.
 */

import { parseHTML } from 'linkedom';
import { describe, expect, it } from 'vitest';
import type { Input } from '../../widgets/assembly/numbers.ts';
import { runSteps } from '../../widgets/assembly/steps.ts';
import { adjustersIn, withAdjuster } from '../../widgets/site/adjusters.ts';
import { expectationFault, startScope } from '../../widgets/site/blocks.ts';
import { bookPage } from '../../widgets/site/book.ts';
import { diagnosticText } from '../../widgets/site/diagnostics.ts';
import { isStepLine, readInputLine, readStepLine } from '../../widgets/site/grammar.ts';
import { reasonOf } from '../../widgets/words/reason.ts';
import { blocksOf, CHAPTERS, FOLDER, wholeBook } from '../support/chapters.ts';
import { valueIn } from '../support/results.ts';

const book = wholeBook();

const ASSETS = {
  scripts: ['assets/a.js'],
  style: { addresses: ['assets/a.css'] },
  icon: 'notebook.png',
  module: false,
};
const fresh = (slug: string): Document => parseHTML(bookPage(book, slug, ASSETS) ?? '').document;
/** Read once, since every test looks at it and a page is long. */
const read = new Map<string, Document>();
const page = (slug: string): Document => {
  const document = read.get(slug) ?? fresh(slug);
  read.set(slug, document);
  return document;
};
const pressedAs = (file: string): string => file.replace(/^chapters\/\d+-/, '').replace(/\.md$/, '');

const { adjusters } = adjustersIn(FOLDER);

describe('the chapters', () => {
  it('press without a mistake', () => {
    expect(book.mistakes.map(diagnosticText)).toEqual([]);
  });

  it('are a front page and then the numbered ones, numbered from 1 without a gap', () => {
    expect(book.places[0]?.slug).toBe('index');
    expect(book.places.filter((p) => p.kind === 'chapter').map((p) => p.number)).toEqual(CHAPTERS.map((_, i) => i + 1));
    expect(CHAPTERS.length).toBeGreaterThanOrEqual(3);
  });

  for (const { file, text } of CHAPTERS)
    describe(file, () => {
      // The page of class material teaches nothing of its own.
      const lesson = it.runIf(!/^```papers$/m.test(text));
      lesson(
        'has goal, prediction, derivation, figure, two worked examples, misconception and summary, each named as such',
        () => {
          const document = page(pressedAs(file));
          const named = (selector: string): string[] =>
            [...document.querySelectorAll(selector)].map((e) => e.textContent?.trim() ?? '');
          expect(named('.box.goal > .box-name')).toEqual(['What you will be able to do']);
          expect(named('.predict > .box-name')).toContain('Predict first');
          expect(named('.predict > .question').every((q) => q.length > 20)).toBe(true);
          expect(named('.derivation > h3').length).toBeGreaterThanOrEqual(1);
          expect(named('figure.live .caption').every((c) => c.length > 20)).toBe(true);
          expect(named('figure.live').length).toBeGreaterThanOrEqual(1);
          expect(named('.example > h3').length).toBeGreaterThanOrEqual(2);
          expect(named('.example > h3').every((h) => /^Example\s\d+\.\d+ /.test(h))).toBe(true);
          expect(named('.box.misconception > .box-name')).toContain('A likely mistake');
          expect(named('.box.summary > .box-name')).toEqual(['In short']);
        },
      );

      lesson('breaks its misconception in three moves: you may think, the numbers say, because', () => {
        const box = page(pressedAs(file)).querySelector('.box.misconception')?.textContent ?? '';
        const at = ['A likely mistake', 'The numbers say', 'Because'].map((words) => box.indexOf(words));
        expect(at).toEqual([...at].sort((a, b) => a - b));
        expect(at).not.toContain(-1);
      });

      lesson('asks for the prediction before the first figure shows the answer', () => {
        // A figure may come first only if it stands as it was put together, with nothing turned and so nothing told.
        const told = [...page(pressedAs(file)).querySelectorAll('.predict, figure.live')].filter(
          (e) => !/^At 0 turns/.test(e.querySelector('[data-says]')?.textContent ?? ''),
        );
        expect(told[0]?.tagName).toBe('SECTION');
      });

      it('gives every mark of MathML as many parts as the standard asks, which browsers report otherwise', () => {
        const parts = { msub: 2, msup: 2, mfrac: 2, mover: 2, munder: 2, mroot: 2, msubsup: 3, munderover: 3 };
        const document = page(pressedAs(file));
        for (const [tag, count] of Object.entries(parts))
          for (const mark of document.querySelectorAll(tag)) expect(mark.children.length, mark.outerHTML).toBe(count);
      });

      it('gives every prediction at least one named slip', () => {
        for (const p of book.rendered.get(pressedAs(file))?.model.predictions ?? [])
          expect((p.curve ?? p).slips.length).toBeGreaterThanOrEqual(1);
      });

      it('prints each figure as a picture with a sentence and a table of numbers', () => {
        for (const figure of page(pressedAs(file)).querySelectorAll('figure.live')) {
          expect(figure.querySelectorAll('[data-stage] svg').length).toBeGreaterThanOrEqual(1);
          expect(figure.querySelector('[data-says]')?.textContent).toMatch(/\d.*\.$/s);
          expect(figure.querySelector('[data-refusal]')?.textContent).toBe('');
          expect(figure.querySelectorAll('[data-table] tbody tr').length).toBeGreaterThanOrEqual(2);
        }
      });

      it('leaves no mark of the press, no NaN and no step without a result on the page', () => {
        const document = fresh(pressedAs(file));
        for (const data of document.querySelectorAll('script, style')) data.remove();
        const words = document.body.textContent ?? '';
        expect(words).not.toMatch(/\{\{|\}\}|:::|```|§|NaN|Infinity|undefined|\[object|waits for the one above/);
        for (const label of document.querySelectorAll('[aria-label]'))
          expect(label.getAttribute('aria-label')).not.toMatch(/NaN|undefined/);
      });

      it('says a slip in plain words, without marks that only prose understands', () => {
        for (const p of book.rendered.get(pressedAs(file))?.model.predictions ?? [])
          for (const { says } of p.slips) expect(says).not.toMatch(/\{\{|\$|\*|`/);
      });

      it('uses each id once and labels only what is there', () => {
        const document = page(pressedAs(file));
        // Hatchings are the same in every drawing of a widget, so either definition serves.
        const ids = [...document.querySelectorAll('article [id]:not(pattern)')].map((e) => e.id);
        expect(ids).toEqual([...new Set(ids)]);
        for (const e of document.querySelectorAll('[aria-labelledby]'))
          expect(document.getElementById(e.getAttribute('aria-labelledby') ?? '')).not.toBeNull();
      });

      lesson('has every digit of its worked examples from the engine', () => {
        // Read again here, line by line, so that a press that stopped checking would be found out.
        const sets = new Map<string, Input[]>();
        let checked = 0;
        for (const kind of ['example', 'figure', 'predict'])
          for (const { info, lines } of blocksOf(text, kind)) {
            const words = /^([^:]*?)(?: measured)?(?: fades)?(?::|$)/.exec(info)?.[1]?.trim().split(/\s+/) ?? [];
            const shared = words.includes('with');
            const set = words.at(-1) ?? '';
            if (!shared || !sets.has(set)) sets.set(set, sets.get(set) ?? []);
            for (const line of lines) {
              if (!/=|^adjuster /.test(line) || isStepLine(line.trim()) || /^slip |^> /.test(line)) continue;
              for (const each of valueIn(withAdjuster(line.trim(), adjusters))) {
                const input = readInputLine(each);
                if (input.ok) sets.get(set)?.push(input.value);
              }
            }
          }
        for (const { info, lines, opening } of blocksOf(text, 'example')) {
          const set = /^([^:]*?)(?: measured)?(?: fades)?(?::|$)/.exec(info)?.[1]?.trim().split(/\s+/).at(-1) ?? '';
          const steps = lines.flatMap((line) => {
            const read = isStepLine(line.trim()) ? readStepLine(line.trim()) : undefined;
            return read?.ok ? [read.value] : [];
          });
          const outcomes = runSteps(
            steps.map((s) => s.step),
            startScope(set, { sets, examples: new Map(), adjusters, measured: new Set(), spoilt: new Set() }),
          );
          for (const [i, step] of steps.entries()) {
            const outcome = outcomes[i];
            if (!outcome?.ok) throw new Error(`${file}:${opening}: ${outcome ? reasonOf(outcome) : 'no steps'}`);
            expect(expectationFault(step, outcome.value), `${file}:${opening}`).toBeUndefined();
            expect(Math.abs(outcome.value - step.expected.value)).toBeLessThanOrEqual(step.expected.half * 1.000001);
            checked++;
          }
        }
        expect(checked).toBeGreaterThanOrEqual(3);
      });
    });

  it('hold at least 40 expected values in worked examples and eight in sentences', () => {
    const text = CHAPTERS.map((c) => c.text).join('\n');
    const steps = blocksOf(text, 'example').flatMap((b) => b.lines.filter((l) => isStepLine(l.trim())));
    expect(steps.length).toBeGreaterThanOrEqual(40);
    expect(text.match(/\{\{[^!}]*=[^}]*\}\}/g)?.length).toBeGreaterThanOrEqual(8);
  });
});

describe('the pages', () => {
  it('link only to pages of the book, to headings that are there, and outside only in words', () => {
    let links = 0;
    for (const { slug } of book.places)
      for (const a of page(slug).querySelectorAll('a[href]')) {
        const href = a.getAttribute('href') ?? '';
        links++;
        if (/^https:\/\//.test(href)) continue;
        const [target = '', anchor] = href.replace(/\?[^#]*/, '').split('#');
        const there = page(target === '' ? slug : target.replace(/\.html(?:\?.*)?$/, ''));
        expect(there.querySelector('main'), `${slug}: ${href}`).not.toBeNull();
        if (anchor) expect(there.getElementById(anchor), `${slug}: ${href}`).not.toBeNull();
      }
    expect(links).toBeGreaterThan(15);
  });

  it('fetch nothing from elsewhere: every address of script, style, picture and icon is relative', () => {
    for (const { slug } of book.places)
      for (const e of page(slug).querySelectorAll('[src], link[href], image[href], use[href]')) {
        const address = e.getAttribute('src') ?? e.getAttribute('href') ?? '';
        expect(address, slug).not.toMatch(/^(?:[a-z]+:)?\/\/|^\//i);
      }
  });

  it('name the chapter in title, heading and contents alike', () => {
    for (const { slug, title, number } of book.places) {
      const document = page(slug);
      expect(document.querySelectorAll('h1').length, slug).toBe(1);
      expect(document.querySelector('h1')?.textContent, slug).toBe(title);
      if (number !== undefined) {
        expect(document.title).toContain(title);
        expect(page('index').querySelector(`.contents a[href="${slug}.html"]`)?.textContent).toBe(title);
      }
      expect(document.querySelector('meta[name=description]')?.getAttribute('content')?.length).toBeGreaterThan(40);
    }
  });

  it('have headings that go down one level at a time, so that they can be gone through by ear', () => {
    for (const { slug } of book.places) {
      const headings = [...page(slug).querySelectorAll('h1, h2, h3, h4')];
      for (const [i, heading] of headings.entries())
        expect(Number(heading.tagName[1]), `${slug}: ${heading.textContent}`).toBeLessThanOrEqual(
          Number(headings[i - 1]?.tagName[1] ?? 0) + 1,
        );
    }
  });
});
