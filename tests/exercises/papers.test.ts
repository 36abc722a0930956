/** Papers: the same words give the same numbers for ever; whatever is pasted gives papers or a sentence. */
import { parseHTML } from 'linkedom';
import { describe, expect, it } from 'vitest';
import type { Result } from '../../widgets/engine/index.ts';
import { makeBank } from '../../widgets/exercises/bank.ts';
import type { Exercise } from '../../widgets/exercises/exercise.ts';
import { choose, paperParameters, readPaperLink, setPaper } from '../../widgets/exercises/paper.ts';
import { keySheet, studentSheet } from '../../widgets/exercises/paper-html.ts';
import { bankOrder } from '../../widgets/exercises/review.ts';
import { readClassCode, readRoster } from '../../widgets/exercises/roster.ts';
import { reasonOf } from '../../widgets/words/reason.ts';
import { BANK, SMALL } from '../support/bank.ts';
import { growth, IN_STEP } from '../support/growth.ts';
import { valueIn } from '../support/results.ts';

const heading = { classCode: '7B', version: BANK.version };
const counts = (n: number) => new Map(BANK.chapters.map((c) => [c.slug, n]));
const paper = (classCode: string, student: string, n = 1) =>
  setPaper(choose(BANK, counts(n), classCode), classCode, student, BANK.version);
const reason = (read: Result<unknown>): string => (read.ok ? '' : reasonOf(read));

describe('a paper', () => {
  it('has for ever the numbers it had when this was written', () => {
    // Printed once from this code: a change here breaks papers that are out in class rooms.
    expect(SMALL.version).toBe('1-f6d50c33b1');
    const picks = ['Ada', 'Émile', '017', '李'].map((student) =>
      setPaper(choose(SMALL, new Map([['pairs', 3]]), '7B'), '7B', student, '1-0').map(({ key, item }) =>
        [key, ...item.picks].join(' '),
      ),
    );
    expect(picks).toEqual([
      ['pair 2 2 0', 'pair#2 0 0 2', 'pair#3 1 2 1'],
      ['pair 1 0 1', 'pair#2 0 2 0', 'pair#3 2 2 2'],
      ['pair 0 1 2', 'pair#2 2 0 2', 'pair#3 0 2 1'],
      ['pair 0 1 0', 'pair#2 2 2 0', 'pair#3 2 1 0'],
    ]);
  });

  it('is the same whenever it is set, and another for another student, class or bank', () => {
    const text = (lines: ReturnType<typeof paper>) => lines.map((l) => l.item.question).join('\n');
    expect(text(paper('7B', 'Ada', 3))).toBe(text(paper('7B', 'Ada', 3)));
    expect(text(paper('7B', 'Ada', 3))).not.toBe(text(paper('7B', 'Bob', 3)));
    const other = setPaper(choose(BANK, counts(3), '7B'), '7B', 'Ada', '1-other');
    expect(text(other)).not.toBe(text(paper('7B', 'Ada', 3)));
    expect(choose(BANK, counts(1), '7B').map((p) => p.key)).toEqual(choose(BANK, counts(1), '7B').map((p) => p.key));
  });

  it('does not mix up a class and a student whose codes run together', () => {
    const one = setPaper(choose(SMALL, new Map([['pairs', 9]]), 'x'), 'ab', 'c', '1');
    const two = setPaper(choose(SMALL, new Map([['pairs', 9]]), 'x'), 'a', 'bc', '1');
    expect(one.map((l) => l.item.picks)).not.toEqual(two.map((l) => l.item.picks));
  });

  it('asks more of a chapter than it has by other numbers, none twice', () => {
    const lines = setPaper(choose(SMALL, new Map([['pairs', 10]]), '7B'), '7B', 'Ada', '1');
    expect(lines.map((l) => l.key)).toEqual(['pair', ...Array.from({ length: 9 }, (_, i) => `pair#${i + 2}`)]);
    for (const student of ['Ada', 'Bob', 'Cid', 'Dot', 'Eve', 'Fay']) {
      const questions = setPaper(choose(SMALL, new Map([['pairs', 10]]), '7B'), '7B', student, '1');
      expect(new Set(questions.map((l) => l.item.question)).size, student).toBe(10);
    }
  });

  it('is another one for each of thirty students of a class, of one chapter too', () => {
    for (const { slug } of BANK.chapters) {
      const places = choose(BANK, new Map([[slug, 4]]), '7B');
      const sets = Array.from({ length: 30 }, (_, i) =>
        setPaper(places, '7B', `Student ${i + 1}`, BANK.version)
          .map(({ key, item }) => [key, ...item.picks].join(' '))
          .join('\n'),
      );
      expect(new Set(sets).size, slug).toBe(30);
    }
  });

  it('prints question, unit, digits, class, student and bank version, and its key steps, answer and interval', () => {
    const lines = paper('7B', 'Ada');
    const sheet = parseHTML(`<body>${studentSheet(lines, 'Ada', heading)}</body>`).document;
    expect(sheet.querySelectorAll('.paper-page > ol > li').length).toBe(lines.length);
    expect(sheet.querySelector('.paper-foot')?.textContent).toBe(`Class 7B · Ada · question bank ${BANK.version}`);
    const asksNumber = lines.map(({ item }) => item.offered === undefined);
    for (const [i, li] of [...sheet.querySelectorAll('.paper-page > ol > li')].entries())
      if (asksNumber[i]) expect(li.textContent).toMatch(/significant digits/);
      else expect(li.querySelectorAll('.offered > li').length).toBeGreaterThan(1);
    const key = parseHTML(`<body>${keySheet(lines, 'Ada', heading)}</body>`).document;
    for (const [i, li] of [...key.querySelectorAll('.worked-key > ol > li')].entries())
      if (asksNumber[i])
        expect(li.querySelector('.answer')?.textContent).toMatch(/^[−\d.]+\S*\s?\S*, accepted [−\d.]+ to [−\d.]+/);
    expect(sheet.body.textContent).not.toContain('accepted');
  });

  it('is set for a hundred students with their keys in the time that so many single ones take', () => {
    const places = choose(BANK, counts(1), 'fast');
    const papers = (students: number): string => {
      let html = '';
      for (let i = 0; i < students; i++) {
        const lines = setPaper(places, 'fast', `student ${i}`, BANK.version);
        html += studentSheet(lines, `student ${i}`, heading) + keySheet(lines, `student ${i}`, heading);
      }
      return html;
    };
    expect(growth(papers, 10)).toBeLessThan(IN_STEP);
    expect(papers(50)).not.toMatch(/NaN|Infinity|undefined|\{\w+\}/);
  });
});

describe('the bank’s version', () => {
  it('follows from what decides numbers: it changes with a size, a slip or an order, and not with a word', () => {
    expect(makeBank(BANK.chapters).version).toBe(BANK.version);
    const [first, ...rest] = BANK.chapters;
    if (!first) throw new Error('no chapters');
    const withFirst = (edit: Partial<Exercise>) =>
      makeBank([{ ...first, exercises: first.exercises.map((e, i) => (i === 0 ? { ...e, ...edit } : e)) }, ...rest]);
    const [one] = first.exercises;
    expect(withFirst({ question: 'Anders gefragt?', title: 'Anders', hint: '', lang: 'de' }).version).toBe(
      BANK.version,
    );
    expect(withFirst({ slips: one?.slips.map((s) => ({ ...s, says: 'Anders.' })) ?? [] }).version).toBe(BANK.version);
    expect(withFirst({ slips: one?.slips.slice(1) ?? [] }).version).not.toBe(BANK.version);
    expect(withFirst({ digits: 4 }).version).not.toBe(BANK.version);
    const sizes = one?.pools.map((pool, i) => (i === 0 ? { ...pool, options: pool.options.slice(1) } : pool)) ?? [];
    expect(withFirst({ pools: sizes }).version).not.toBe(BANK.version);
    expect(makeBank([...rest, first]).version).not.toBe(BANK.version);
    expect(BANK.version).toMatch(/^1-[0-9a-f]{10}$/);
  });
});

describe('a roster', () => {
  it('is a name a line, spaces and accents made alike, empty lines left out', () => {
    const { students, notes } = valueIn(readRoster('  Ada  Lovelace \r\n\r\nE\u0301mile\n017\u200b\t'));
    expect(students).toEqual(['Ada Lovelace', 'Émile', '017']);
    expect(notes).toEqual([]);
  });
  it('numbers names that stand twice, without taking a name that is there', () => {
    const { students, notes } = valueIn(readRoster('Ann\nAnn\nBob\nAnn\nAnn (2)'));
    expect(students).toEqual(['Ann', 'Ann (3)', 'Bob', 'Ann (4)', 'Ann (2)']);
    expect(new Set(students).size).toBe(5);
    expect(notes.join()).toMatch(/^2 names stand in the list of students more than once/);
  });
  it('asks after what stands behind a comma, and leaves a name with a comma alone', () => {
    const { students, units, notes } = valueIn(readRoster('Lovelace, Ada\nIris, inch'));
    expect([students, units.size]).toEqual([['Lovelace, Ada', 'Iris, inch'], 0]);
    expect(notes.join()).toMatch(/“Iris, inch” has a comma.*Put a semicolon/);
    expect(valueIn(readRoster('Lovelace, Ada\nIris, Ines; inch')).notes).toEqual([]);
  });
  it('with markup in names gives sheets that show it as text', () => {
    const name = '<img src=x onerror=alert(1)> & "Co" </section>';
    const { students } = valueIn(readRoster(name));
    const html = studentSheet(paper('7B', students[0] ?? ''), students[0] ?? '', heading) + keySheet([], name, heading);
    const { document } = parseHTML(`<body>${html}</body>`);
    expect(document.querySelectorAll('img').length).toBe(0);
    expect(document.querySelector('h2')?.textContent).toBe(`Exercises: ${name}`);
  });
  for (const [what, text, says] of [
    ['nothing', ' \n \n', 'The list of students is empty'],
    ['5 000 lines', Array.from({ length: 5000 }, (_, i) => `s${i}`).join('\n'), 'has 5000 names; at most 1000'],
    ['10 kB on one line', 'x'.repeat(10_240), 'Line 1 of the list of students'],
  ] as const)
    it(`of ${what} is refused with a sentence`, () => expect(reason(readRoster(text))).toContain(says));
  it('takes 1000 names', () => {
    expect(valueIn(readRoster(Array.from({ length: 1000 }, () => 'Ann').join('\n'))).students.length).toBe(1000);
  });
});

describe('a class code', () => {
  it('is tidied, and refused where it is empty or long', () => {
    expect(valueIn(readClassCode(' 7B\tautumn '))).toBe('7B autumn');
    expect(reason(readClassCode(''))).toContain('is empty');
    expect(reason(readClassCode('x'.repeat(9999)))).toContain('at most 40 characters');
  });
});

describe('a link to papers', () => {
  const link = (change: Readonly<Record<string, string>> = {}) =>
    `?${new URLSearchParams({ ...paperParameters({ classCode: '7B & co', counts: counts(2) }, BANK.version), ...change })}`;
  it('brings back class and counts, and never holds the roster', () => {
    const read = readPaperLink(link(), BANK);
    if (!read?.ok) throw new Error('refused');
    expect(read.value.classCode).toBe('7B & co');
    expect([...read.value.counts]).toEqual([...counts(2)]);
    expect(readPaperLink('?units=inch', BANK)).toBeUndefined();
  });
  for (const [what, change, says] of [
    [
      'an unknown bank version',
      { bank: '1-feedbeef00' },
      'asks for the question bank “1-feedbeef00”; this notebook holds 1-',
    ],
    ['markup for a version', { bank: '<script>' }, 'asks for the question bank “<script>”'],
    ['an unknown chapter', { ask: 'no-such:3' }, 'no chapter with exercises'],
    ['nonsense for a count', { ask: 'one-screw:many' }, 'no chapter with exercises'],
    ['too large a count', { ask: 'one-screw:9999' }, 'at most 10'],
    ['an empty class', { class: '' }, 'class code is empty'],
  ] as const)
    it(`with ${what} is refused with a sentence`, () => {
      const read = readPaperLink(link(change), BANK);
      expect(read && reason(read)).toContain(says);
    });
});

describe('mixed review', () => {
  it('takes what was solved least, from another chapter than the last', () => {
    const ids = BANK.chapters.flatMap((c) => c.exercises.map((e) => e.id));
    const rare = ids[4] ?? '';
    const next = bankOrder(BANK, (id) => (id === rare ? 0 : 1), 'none', 0.99);
    expect(next.exercise.id).toBe(rare);
    for (let i = 0; i < 50; i++) expect(bankOrder(BANK, () => 0, 'two-screws', i / 50).slug).not.toBe('two-screws');
    const due = [ids[7] ?? '', ids[90] ?? ''];
    for (let i = 0; i < 20; i++) expect(due).toContain(bankOrder(BANK, () => 0, 'none', i / 20, due).exercise.id);
    expect(bankOrder(SMALL, () => 0, 'pairs', 1).exercise.id).toBe('pair');
  });
});
