/** What is printed for a class: sheets that are counted off, lines that read like a book, a grid of all answers. */

import fc from 'fast-check';
import { parseHTML } from 'linkedom';
import { describe, expect, it } from 'vitest';
import { toBase, UNITS } from '../../widgets/engine/index.ts';
import { gridCsv, gridSheet } from '../../widgets/exercises/answer-grid.ts';
import { drawItem } from '../../widgets/exercises/draw.ts';
import { answerText, type Item, readPicks } from '../../widgets/exercises/exercise.ts';
import { inOwnUnits } from '../../widgets/exercises/forms.ts';
import { judge } from '../../widgets/exercises/judge.ts';
import { paginate } from '../../widgets/exercises/paginate.ts';
import { choose, setPaper } from '../../widgets/exercises/paper.ts';
import { keySheet, studentSheet } from '../../widgets/exercises/paper-html.ts';
import { plainFormula, plainSign, withIndexes } from '../../widgets/exercises/plain-formula.ts';
import { readRoster } from '../../widgets/exercises/roster.ts';
import { algebraLines, stepLines } from '../../widgets/exercises/steps-text.ts';
import { BANK, EXERCISES } from '../support/bank.ts';
import { valueIn } from '../support/results.ts';

const heading = { classCode: '7B', version: BANK.version };
const counts = new Map(BANK.chapters.map((c) => [c.slug, 10]));
const set = (student: string, units?: 'mm' | 'inch') =>
  setPaper(choose(BANK, counts, '7B', { units }), '7B', student, BANK.version);
const LINES = set('Ada');

describe('paginate', () => {
  it('puts as many on a sheet as fit, in order, none twice, and one that is too high on a sheet of its own', () => {
    const on = (heights: readonly number[], room: number) => paginate(heights, room).map(({ places }) => places);
    expect(on([40, 50, 20, 100, 300, 10], 110)).toEqual([[0, 1, 2], [3], [4], [5]]);
    expect(on([], 100)).toEqual([[]]);
  });
  it('spreads them over no more sheets than they need, so that none is half empty beside a full one', () => {
    const sheets = paginate([30, 30, 30, 30], 100);
    expect(sheets.map(({ places }) => places)).toEqual([
      [0, 1],
      [2, 3],
    ]);
    for (const { left } of sheets) expect(left).toBeCloseTo(40, 3);
  });
  it('leaves nothing out and no sheet over full, whatever the heights', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 1, max: 100, noNaN: true }), { maxLength: 40 }), (heights) => {
        const sheets = paginate(heights, 100);
        expect(sheets.flatMap(({ places }) => places)).toEqual(heights.map((_, i) => i));
        for (const { places, left } of sheets) {
          const full = places.reduce((sum, i) => sum + (heights[i] ?? 0), 0);
          expect(full).toBeLessThanOrEqual(100);
          expect(left).toBeCloseTo(100 - full, 3);
        }
      }),
      { numRuns: 200 },
    );
  });
});

describe('a line of a key', () => {
  const all = (word: string) => /^[A-Za-z]/.test(word) && word !== 'deg' && word !== 'mm' && word !== 'pi';
  // The spelling of the engine, and how a book would print it in a line.
  for (const [formula, printed] of [
    ['abs(Delta)/k', '|Δ|/k'],
    ['d - 17*sqrt(3)/24*P', 'd − 17 × √3/24 × P'],
    ['sqrt(q_x^2 + r_y^2)', '√(q² + r²)'],
    ['-h*L*n', '−h × L × n'],
    ['theta/(360*deg)', 'θ/360°'],
    ['x_w*tan(phi_w)', 'x_w × tan(φ)'],
    ['atan(L/(pi*d_2))', 'arctan(L/(π × d_2))'],
    ['25.4*mm/tpi', '25.4\u00a0mm/tpi'],
  ] as const)
    it(`spells ${formula} as ${printed}`, () => expect(plainFormula(formula, all, plainSign)).toBe(printed));

  it('sets indexes low, and only those', () => {
    expect(withIndexes('Δ = h_C × L_C = 3 × ℓ_eA')).toBe('Δ = h<sub>C</sub> × L<sub>C</sub> = 3 × ℓ<sub>eA</sub>');
    expect(withIndexes('student_1 and a__b')).toBe('student_1 and a__b');
  });

  it('holds no spelling of the engine, in any exercise', () => {
    for (const exercise of EXERCISES)
      for (const student of ['Ada', 'Bob'])
        for (const line of algebraLines(drawItem(exercise, [student])))
          expect(line, exercise.id).not.toMatch(
            /\b(?:sqrt|abs|atan|asin|acos|phi|theta|Delta|mu|eta|deg)\b|(?<!E)\*|\^\(?\d|undefined|NaN/,
          );
  });

  it('ends in the unit asked', () => {
    for (const exercise of EXERCISES) {
      const item = drawItem(exercise, ['Ada']);
      if (item.offered || UNITS[exercise.unit].base !== 'mm') continue;
      expect(stepLines(item).at(-1), exercise.id).toMatch(new RegExp(`\\d\u00a0${exercise.unit}$`));
    }
  });

  it('takes no length, height or count that the question does not give', () => {
    // A word of the question that is a number to who knows the trade.
    const words: Readonly<Record<string, RegExp>> = {
      k: /hexagon/,
      q_e: /one diameter/i,
      beta_f: /screw|thread|sleeve/i,
      f: /\bits lock/i,
    };
    const untold = EXERCISES.flatMap(({ id, question, steps }) =>
      steps.flatMap(({ bind }) =>
        Object.entries(bind).flatMap(([symbol, value]) =>
          typeof value !== 'number' || value === 0 || words[symbol]?.test(question)
            ? []
            : [`${id}: ${symbol} = ${value}`],
        ),
      ),
    );
    expect(untold).toEqual([]);
  });
});

describe('a student’s sheets', () => {
  const sheets = parseHTML(
    `<body>${studentSheet(LINES, 'Ada', heading, {
      pages: [
        { places: [0, 1], more: 0 },
        { places: [2, 3, 4], more: 7.25 },
      ],
      large: true,
      marks: (id) => (id === LINES[0]?.exercise ? 3 : 1),
    })}</body>`,
  ).document;
  it('bear name, class, bank, marks and their number on each, and go on counting', () => {
    const each = [...sheets.querySelectorAll('.paper-page')];
    expect(each.length).toBe(2);
    for (const [i, sheet] of each.entries()) {
      const text = sheet.textContent ?? '';
      for (const said of [
        'Ada',
        'Date',
        '7B',
        BANK.version,
        `Page ${i + 1} of 2`,
        `of ${LINES.length + 2 * LINES.filter((l) => l.exercise === LINES[0]?.exercise).length}`,
      ])
        expect(text).toContain(said);
    }
    expect(each[1]?.querySelector('ol')?.getAttribute('start')).toBe('3');
    expect(each[0]?.textContent).toContain('3 marks');
    // What is left of the second sheet is room to work, and large print is the student’s own.
    expect(each[0]?.getAttribute('style')).toBeNull();
    expect(each[1]?.getAttribute('style')).toBe('--more:7.3mm');
    expect(sheets.querySelector('.paper[data-large]')).not.toBeNull();
  });
});

describe('a student who needs large print', () => {
  it('is told apart by the roster, with a unit or without, in any order, and known by the name alone', () => {
    const { students, units, large, notes } = valueIn(
      readRoster('Ada; large\nBob\nCid; inch; Large print\nDot\tgroß\tmm\nEve; larger'),
    );
    expect(students).toEqual(['Ada', 'Bob', 'Cid', 'Dot', 'Eve; larger']);
    expect([...large]).toEqual(['Ada', 'Cid', 'Dot']);
    expect([...units]).toEqual([
      ['Cid', 'inch'],
      ['Dot', 'mm'],
    ]);
    expect(notes.join(' ')).toMatch(/“larger” says nothing/);
  });
});

describe('a student who works in inches', () => {
  it('is told apart by the roster and known by the name alone', () => {
    const { students, units } = valueIn(readRoster('Ada; inch\nBob\nCid ;MM\nDot\tin\nAda; inch\nLovelace; Ada'));
    expect(students).toEqual(['Ada', 'Bob', 'Cid', 'Dot', 'Ada (2)', 'Lovelace; Ada']);
    expect([...units]).toEqual([
      ['Ada', 'inch'],
      ['Cid', 'mm'],
      ['Dot', 'inch'],
      ['Ada (2)', 'inch'],
    ]);
    // What stands behind a semicolon and is neither is told, not passed over.
    expect(valueIn(readRoster('Ada; inch\nX; cm')).notes.join(' ')).toMatch(/“cm” says nothing of how/);
    expect(valueIn(readRoster('Ada; inch\nBob')).notes).toEqual([]);
  });

  it('gets the same exercises with answers in thou and inches, which are judged and worked in them', () => {
    const lines = set('Ada', 'inch');
    expect(lines.map((l) => l.exercise)).toEqual(LINES.map((l) => l.exercise));
    for (const [i, { item }] of lines.entries()) {
      const metric = LINES[i]?.item as Item;
      const { unit } = item.exercise;
      expect(['µm', 'mm'].includes(unit) && item.exercise.kind !== 'wrong-line', item.exercise.id).toBe(false);
      // What is read off a picture is set on its marks, as the next test asks.
      if (item.offered || item.picture || unit === metric.exercise.unit || item.picks.join() !== metric.picks.join())
        continue;
      const base = (one: Item) => toBase({ amount: one.amount, unit: one.exercise.unit });
      expect(base(item)).toBeCloseTo(base(metric), 9);
      expect(judge(item, answerText(item)).kind, item.question).toBe('right');
      // Typed to more digits than asked: two digits of a millimetre are not two of an inch.
      const inMetric = `${metric.amount.toPrecision(6)} ${metric.exercise.unit}`;
      expect(judge(item, inMetric).kind, `${item.question} ${inMetric}`).toBe('right');
      expect(stepLines(item).at(-1)).toContain(answerText(item));
    }
    const [one] = EXERCISES;
    expect(one && inOwnUnits(one, undefined)).toBe(one);
  });

  it('reads inches off pictures: what is drawn stands on a mark of a rule or a dial in inches, and is what is worked with', () => {
    const pictured = EXERCISES.filter(({ picture }) => picture !== undefined);
    expect(pictured.length).toBeGreaterThan(10);
    for (const exercise of pictured) {
      const own = inOwnUnits(exercise, 'inch');
      for (const student of ['Ada', 'Bob', 'Cy']) {
        const { picture = '', picks } = drawItem(own, [student]);
        const numbers = readPicks(own, picks);
        if (!numbers.ok || !own.picture) throw new Error(exercise.id);
        const { shows, of } = own.picture;
        const inches = (numbers.value.scope[of] ?? 0) / 25.4;
        if (shows === 'dial') {
          // A thou where the motion is long, else a tenth of it.
          const division = picture.includes('>1 thou<') ? 1e-3 : 1e-4;
          const turned = Number(/data-hand="" d="[^"]*" transform="rotate\((-?[\d.]+)\)"/.exec(picture)?.[1]);
          expect((turned / 360) * 100 * division, exercise.id).toBeCloseTo(inches, 6);
          expect(inches / division - Math.round(inches / division), exercise.id).toBeCloseTo(0, 6);
          continue;
        }
        expect(picture, exercise.id).toContain('>inches</text>');
        const at = [...picture.matchAll(/<text x="([\d.]+)"[^>]*>([\d.]+)<\/text>/g)].map(([, x, n]) => [
          Number(x),
          Number(n),
        ]);
        const [[x0 = 0] = [], last = []] = [at[0], at.at(-1)];
        const perInch = ((last[0] ?? 0) - x0) / (last[1] ?? 0);
        const drawn =
          shows === 'bar'
            ? Number(/class="body" d="M20 16H([\d.]+)V/.exec(picture)?.[1])
            : Number([...picture.matchAll(/class="mark" d="M([\d.]+) /g)].at(-1)?.[1]);
        const long = shows === 'bar' ? inches : (numbers.value.scope[of === 'thread' ? 'P' : `P_${of}`] ?? 0) / 2.54;
        // Drawings keep two decimals of their own unit.
        expect(Math.abs((drawn - x0) / perInch - long), exercise.id).toBeLessThan(0.02 / perInch);
        if (shows === 'bar') expect(Math.abs(long * 100 - Math.round(long * 100)), exercise.id).toBeLessThan(1e-6);
      }
      for (const student of ['Ada', 'Bob'])
        expect(drawItem(exercise, [student]).picture).not.toMatch(/>inches<|>1 thou</);
    }
  });
});

describe('the grid of answers', () => {
  const papers = ['Ada', 'Bob', '=cmd()'].map((student) => ({ student, lines: set(student) }));
  const rows = (csv: string) =>
    csv
      .trimEnd()
      .split('\r\n')
      .map((row) => [...row.matchAll(/"((?:[^"]|"")*)"(?:,|$)/g)].map((m) => m[1] ?? ''));

  it('has a row a student and a cell an exercise, in parts that a sheet holds', () => {
    const { document } = parseHTML(`<body>${gridSheet(papers, heading)}</body>`);
    const tables = [...document.querySelectorAll('table')];
    for (const table of tables) {
      expect(table.querySelectorAll('tbody tr').length).toBe(3);
      // Upright, 180 mm are left of A4; letters of a grid are some 1.7 mm wide, and names have 40 mm.
      const across = [...table.querySelectorAll('thead th')].slice(1).map((_, i) => {
        const cells = [...table.querySelectorAll(`tbody tr > :nth-child(${i + 2})`)];
        return Math.max(8, ...cells.map((cell) => (cell.textContent?.length ?? 0) * 1.7));
      });
      expect(across.reduce((sum, one) => sum + one, 0)).toBeLessThan(155);
    }
    expect(document.querySelectorAll('tbody td').length).toBe(3 * LINES.length);
    expect(document.body.textContent).not.toMatch(/NaN|undefined/);
  });

  it('keeps a quiz of letters and a few numbers together in one table', () => {
    const chosen = LINES.filter(({ item }) => item.offered?.right.length === 1).slice(0, 11);
    const numbers = LINES.filter(({ item }) => !item.offered).slice(0, 2);
    const quiz = ['Ada', 'Bob'].map((student) => ({ student, lines: [...chosen, ...numbers] }));
    const { document } = parseHTML(`<body>${gridSheet(quiz, heading)}</body>`);
    expect(document.querySelectorAll('thead th').length).toBe(14);
  });

  it('as CSV gives back answers that count as right, and empty it holds none', () => {
    const [heads = [], , ada = [], , formula = []] = rows(gridCsv(papers, true));
    expect(heads.slice(1)).toEqual(LINES.map((l) => l.key));
    for (const [i, { item }] of LINES.entries()) expect(judge(item, ada[i + 1] ?? '').kind, heads[i + 1]).toBe('right');
    expect(formula[0]).toBe("'=cmd()");
    for (const row of rows(gridCsv(papers, false)).slice(2)) expect(row.slice(1).join('')).toBe('');
  });
});

describe('the key of a student', () => {
  it('gives every exercise its answer, and reasons stand elsewhere', () => {
    const { document } = parseHTML(`<body>${keySheet(LINES, 'Ada', heading)}</body>`);
    const answers = [...document.querySelectorAll('.answer strong')].map((a) => a.textContent?.replace(/\s/g, ''));
    expect(answers).toEqual(LINES.map(({ item }) => answerText(item).replace(/\s|_/g, '')));
  });
});
