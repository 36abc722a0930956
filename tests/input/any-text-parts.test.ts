/**
 * A hundred thousand texts to each reader of parts, pieces and classes: adjusters, drawers, logs, passports, ±, wishes, and what a teacher types or
 * opens. Each gives a value with every number finite or one clear sentence, and never throws.
 */
import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { readAdjuster, tidyAdjuster } from '../../widgets/assembly/adjuster/text.ts';
import { readWish } from '../../widgets/assembly/backwards/wish.ts';
import { readDrawer } from '../../widgets/assembly/drawer/read-drawer.ts';
import { runToEnd, UNITS, type Unit } from '../../widgets/engine/index.ts';
import { gridCsv } from '../../widgets/exercises/answer-grid.ts';
import { ideasCsv, readIdeas } from '../../widgets/exercises/ideas.ts';
import { readLabPairs } from '../../widgets/exercises/lab.ts';
import { markGrid } from '../../widgets/exercises/mark.ts';
import { readMarks, readOwn, withOwn, writeOwn } from '../../widgets/exercises/own.ts';
import { choose, setPaper } from '../../widgets/exercises/paper.ts';
import { readLessons, readMinutes } from '../../widgets/exercises/plan.ts';
import { readPassports, tidyPassports } from '../../widgets/input/passports.ts';
import { readSettlingLog } from '../../widgets/input/settling-log.ts';
import { readClassLimits, readSpread, readWithSpread, spreadText } from '../../widgets/input/spread.ts';
import { readTitleBlock } from '../../widgets/input/title-block.ts';
import { reasonOf } from '../../widgets/words/reason.ts';
import { allFinite, anyText, isSentence, MANY, readOrSaid } from '../support/any-text.ts';
import { SMALL } from '../support/bank.ts';
import { howMany } from '../support/deep.ts';

vi.setConfig({ testTimeout: 900_000 });

const sound = (holds: boolean, text: unknown, value?: unknown): void => {
  if (!holds) throw new Error(`${JSON.stringify(text)} gives ${JSON.stringify(value)}`);
};
/** Every text to `check`, which tells whether it was taken; so many in a hundred must be, else the samples are none. */
const each = (texts: fc.Arbitrary<string>, least: number, check: (text: string) => boolean, runs = MANY): void => {
  let good = 0;
  fc.assert(
    fc.property(texts, (text) => {
      if (check(text)) good++;
    }),
    runs,
  );
  expect(good / runs.numRuns).toBeGreaterThan(least / 100);
};

const ADJUSTERS = [
  'base = tapped block M10x1.5-6H, 20 mm\nturned = stud M10x1.5-6g 20 mm, 3/8-16 UNC-2A 20 mm\ncarried = cap 3/8-16 UNC-2B, thread 20 mm\ntip = ball 6.35 mm',
  'base = coupling nut 3/8-16 UNC, 28.575 mm | turned = adapter 3/8-16 UNC external 15 mm, M10x1.5 internal 15 mm blind, body 18 mm, hexagon 17 mm | carried = socket screw M10x1.5, thread 20 mm, head 10 mm | lock = key at 12 mm, clearance 0.1 mm',
  'adjuster x\nbase = nut M8, 6 mm\nturned = screw M8 30 mm, head 7 mm, price 1.20, count 3\ntip = flat\ndivider = knob 50',
];
const ROWS = [
  '\n',
  ' | ',
  ', ',
  ' = ',
  'base = ',
  'tip = ',
  'M10x1.5',
  '3/8-16 UNC',
  ' mm',
  ' blind',
  'coat 8 µm',
  'nut ',
];

describe('any text of parts', () => {
  it('makes an adjuster of finite numbers, which its tidy form makes too, or says which row is wrong', () => {
    each(
      anyText(ADJUSTERS, ROWS),
      0.4,
      (text) => {
        const read = readOrSaid(readAdjuster(text), text);
        if (!read) return false;
        sound(allFinite(read), text, read);
        const again = readAdjuster(tidyAdjuster(text));
        sound(again.ok && JSON.stringify(again.value) === JSON.stringify(read), text, again);
        return true;
      },
      { ...MANY, numRuns: howMany(1000, 100_000) },
    );
  });

  it('makes a drawer, with a sentence for each row that is left out', () => {
    const typed = anyText(
      [
        'coupling nut 3/8-16 UNC, 28.575 mm, hexagon 14.3 mm, price 1.20, count 4\nadapter M10x1.5 external 20 mm, 3/8-16 UNC internal 20 mm blind',
        'stud M10x1.5 25 mm, 3/8-16 UNC 25 mm | socket screw M8, thread 20 mm, head 8 mm | tapped block M12x1.5, 16 mm',
      ],
      [
        ...ROWS,
        'count 2',
        '3 off',
        'hex bolt M12x20',
        'adaptor ',
        ' male',
        ' female 15 mm to ',
        'socket cap screw M12 20',
      ],
    );
    each(typed, 5, (text) => {
      const read = readOrSaid(runToEnd(readDrawer(text)), text);
      if (!read) return false;
      for (const why of read.wrong) sound(isSentence(reasonOf(why)), text, reasonOf(why));
      for (const { part } of Object.values(read.placed).flat()) sound(allFinite(part), text, part);
      return true;
    });
  });

  it('makes a title block, or says which row is none', () => {
    const typed = anyText(
      ['number = RS-01\ndate = 2026-03-31\ndrawn = Ada', 'tolerance=ISO 2768-m | revision = B'],
      [' = ', '\n', 'number', 'date'],
    );
    each(typed, 5, (text) => readOrSaid(readTitleBlock(text), text) !== undefined);
  });
});

describe('any text of a piece', () => {
  it('makes a log by time, or says which row is wrong', () => {
    const typed = anyText(
      ['1 h; -1.4 µm; 20.6\n2 h; -2.0; 20.8', '30 min; 0.1 thou | 3 d; 5'],
      ['; ', '\n', ' h', ' µm', '\t'],
    );
    each(typed, 5, (text) => {
      const read = readOrSaid(readSettlingLog(text), text);
      if (!read) return false;
      sound(allFinite(read) && read.every((r, i) => r.t >= (read[i - 1]?.t ?? Number.NEGATIVE_INFINITY)), text, read);
      return true;
    });
  });

  it('makes passports by piece and day, whose tidy form makes the same', () => {
    const typed = anyText(
      ['Jack 5, 2026-03-31: lead 1.4985 mm, wave 3 µm, place 2.5 turns, first day\nJack 6, 2026-04-01: wear 2 µm'],
      [': ', ', ', '\n', ' | ', 'lead ', 'wear ', ' µm', '2026-02-30'],
    );
    each(typed, 5, (text) => {
      const read = readOrSaid(readPassports(text), text);
      if (!read) return false;
      sound(allFinite(read), text, read);
      const again = readOrSaid(readPassports(tidyPassports(text)), text);
      sound(JSON.stringify(again) === JSON.stringify(read), text, again);
      return true;
    });
  });

  it('with a ± gives a value and a finite half-width above nought, or a sentence', () => {
    const typed = anyText(
      [
        '1.5 mm ± 2 µm',
        '20 +/- 5 %',
        '0.15 ± 0.02, k = 2',
        '87.5 µm ± 1 µm (5 readings)',
        '1.2; 1.3; 1.25 mm',
        'M10x1.5-6g',
        '3/8-16 UNC-2A',
      ],
      [' ± ', ' +/- ', ' %', ', k = ', ' readings', '; ', ' µm', ' in'],
    );
    const units = Object.keys(UNITS) as Unit[];
    fc.assert(
      fc.property(typed, fc.constantFrom('mm' as Unit, 'in' as Unit, '%' as Unit, ...units), (text, unit) => {
        const read = readOrSaid(readWithSpread(text, UNITS[unit].base, unit), text);
        if (read) {
          sound(allFinite(read) && read.spread.half > 0, text, read);
          const again = readSpread(
            spreadText(read.spread, unit).replace(/^\s*±\s*/, ''),
            read.value,
            UNITS[unit].base,
            unit,
          );
          sound(again.ok || isSentence(reasonOf(again)), text, again);
        }
        for (const symbol of ['d_2', 'D_2', 'c', 'n']) {
          const limits = readClassLimits(symbol, text);
          if (limits) sound(allFinite(readOrSaid(limits, text)), text, limits);
        }
        const wish = readOrSaid(readWish(text, UNITS[unit].base, unit), text);
        sound(allFinite(wish), text, wish);
      }),
      MANY,
    );
  });
});

describe('any text of a class', () => {
  const counts = new Map(SMALL.chapters.map((c) => [c.slug, 2]));
  const papers = ['Ada', 'Bob, "B"'].map((student) => ({
    student,
    lines: setPaper(choose(SMALL, counts, '7B'), '7B', student, SMALL.version),
  }));
  const key = papers[0]?.lines[0]?.key ?? '';

  it('is marked as a grid, with every score finite, or refused in a sentence', () => {
    const grid = gridCsv(papers, true);
    const typed = anyText(
      [grid, grid.replaceAll(',', ';'), `Name\t${key}\nAda\t3`],
      ['"', '""', ',', ';', '\t', '\n', key, 'Ada'],
    );
    each(
      typed,
      5,
      (text) => {
        const read = readOrSaid(
          markGrid(text, papers, () => 2, 0.5),
          text,
        );
        if (!read) return false;
        sound(
          read.students.every((s) => Number.isFinite(s.score) && s.score >= 0 && s.score <= read.most),
          text,
          read.students.map((s) => s.score),
        );
        return true;
      },
      { ...MANY, numRuns: howMany(1000, 100_000) },
    );
  });

  it('makes a teacher’s own bank that its own writing makes again, or is no such file', () => {
    const id = SMALL.chapters[0]?.exercises[0]?.id ?? '';
    const whole = writeOwn({
      hidden: ['x'],
      marks: { [id]: 3 },
      edits: {
        [id]: {
          title: 'T',
          question: 'Threads {A} and {C}, turned by {n}. How far?',
          hint: '',
          sizes: { n: '1 turn, 2 turns' },
        },
      },
    });
    const packed = JSON.stringify(JSON.parse(whole));
    const typed = anyText([packed, whole], ['"', '{', '}', ',', ':', 'null', '1', '[]', '"__proto__":', '{A}']);
    each(
      typed,
      2,
      (text) => {
        const read = readOrSaid(readOwn(text), text);
        if (!read) return false;
        const again = readOrSaid(readOwn(writeOwn(read)), text);
        sound(JSON.stringify(again) === JSON.stringify(read), text, again);
        sound(allFinite(withOwn(SMALL, read).chapters.length), text);
        return true;
      },
      { ...MANY, numRuns: howMany(1000, 100_000) },
    );
  });

  it('makes results on ideas that their own writing makes again, pairs for a bench, marks, lessons and minutes', () => {
    const ideas = ideasCsv([
      { route: 'turns', item: 'lead', misconception: 'adds, “both”', before: 'misconception', after: 'right' },
      { route: 'turns', item: 'hand', misconception: '=cmd', before: 'misconception' },
    ] as Parameters<typeof ideasCsv>[0]);
    each(anyText([ideas], ['"', ',', '\r\n', 'right', 'misconception', 'turns']), 5, (text) => {
      const read = readOrSaid(readIdeas(text), text);
      if (!read) return false;
      const again = readOrSaid(readIdeas(ideasCsv(read)), text);
      sound(again !== undefined && again.length === read.length, text, again);
      return true;
    });
    each(
      anyText(['M10x1.5 + 3/8-16', 'M12x1.5; M8x1.25\nM4x0.7 over 8-36 UNF'], [' + ', '; ', '\n', 'M8']),
      2,
      (text) => {
        const read = readOrSaid(readLabPairs(text), text);
        sound(allFinite(read), text, read);
        return read !== undefined;
      },
    );
    each(anyText(['3', '45', ' 12 '], [' ', '1', '90']), 5, (text) => {
      for (const reader of [readMarks, readLessons, readMinutes])
        sound(allFinite(readOrSaid(reader(text), text)), text);
      return readMinutes(text).ok || readMarks(text).ok;
    });
  });
});
