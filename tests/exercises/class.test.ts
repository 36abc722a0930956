/** The work of a class beside its papers: marking, a teacher’s own exercises, the lab and its rigs, the plan of a course, pairs for the project. */

import { describe, expect, it } from 'vitest';
import { planSays, RIG_COLUMNS } from '#words/classroom.ts';
import { benchOf } from '../../widgets/assembly/bench/hidden-fault.ts';
import { calibrate } from '../../widgets/engine/index.ts';
import { gridCsv } from '../../widgets/exercises/answer-grid.ts';
import { csvRow } from '../../widgets/exercises/csv-row.ts';
import { answerText } from '../../widgets/exercises/exercise.ts';
import { FLATS, labOf, labPairOf, PLACES, readLabPairs } from '../../widgets/exercises/lab.ts';
import { readingsByStudent } from '../../widgets/exercises/lab-class.ts';
import { labKey, labSheet, readingsText, rigRows, rigSheet } from '../../widgets/exercises/lab-html.ts';
import { judgeTable, labVerdict, typedTable } from '../../widgets/exercises/lab-typed.ts';
import { answersOf, cellsOf, markGrid, scoresCsv } from '../../widgets/exercises/mark.ts';
import { edited, editOf, fitting, NO_OWN, readOwn, sizesKept, withOwn, writeOwn } from '../../widgets/exercises/own.ts';
import { choose, setPaper } from '../../widgets/exercises/paper.ts';
import { type CourseChapter, planCourse, withNeeds } from '../../widgets/exercises/plan.ts';
import { farOff, projectPairs } from '../../widgets/exercises/project-pairs.ts';
import { readRoster } from '../../widgets/exercises/roster.ts';
import { parseReadings } from '../../widgets/input/readings-table.ts';
import { BANK, EXERCISES } from '../support/bank.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const counts = new Map(BANK.chapters.map((c) => [c.slug, 2]));
const PAPERS = ['Ada', 'Bob, "B"', 'Cid'].map((student) => ({
  student,
  lines: setPaper(choose(BANK, counts, '7B'), '7B', student, BANK.version),
}));
const one = () => 1;

describe('a filled grid', () => {
  const [ada] = PAPERS;
  if (!ada) throw new Error('no papers');
  it('comes back from the answers of the key with full marks', () => {
    const { students, most, missing, unknown, slips } = valueIn(markGrid(gridCsv(PAPERS, true), PAPERS, one));
    expect(students.map((s) => s.score)).toEqual([most, most, most]);
    expect([missing, unknown, slips]).toEqual([[], [], []]);
  });
  it('is read with the titles or the numbers of the questions at its head too', () => {
    const [keys = '', titles = '', ...rows] = gridCsv(PAPERS, true).trimEnd().split('\r\n');
    const numbers = `Name,${ada.lines.map((_, i) => i + 1).join(',')}`;
    for (const head of [keys, titles, titles.toUpperCase(), numbers]) {
      const { students, most } = valueIn(markGrid([head, ...rows].join('\n'), PAPERS, one));
      expect(
        students.map((s) => s.score),
        head.slice(0, 60),
      ).toEqual([most, most, most]);
    }
  });
  it('counts what was missed by exercise and by slip, and gives a slip the share it is to have', () => {
    const at = ada.lines.findIndex(
      ({ item }) => !item.offered && item.slips.some((s) => s.rule !== undefined && s.amount !== 0),
    );
    const line = ada.lines[at];
    const slip = line?.item.slips.find((s) => s.rule !== undefined);
    if (!line || !slip) throw new Error('no slip');
    const cells = ada.lines.map(({ item }, i) =>
      i === at ? String(slip.amount) : i === at + 1 ? '' : (item.offered?.right ?? answerText(item)),
    );
    const text = [
      ['Name', ...ada.lines.map((l) => l.key)],
      ['Ada', ...cells],
      ['Zoe', '1'],
    ]
      .map((r) => r.join('\t'))
      .join('\n');
    const read = valueIn(markGrid(text, PAPERS, one, 0.5));
    expect(read.students[0]?.score).toBe(ada.lines.length - 1.5);
    expect(read.items[at]).toMatchObject({ right: 0, wrong: 1, left: 0 });
    expect(read.items[at + 1]).toMatchObject({ right: 0, wrong: 0, left: 1 });
    expect(read.slips[0]).toMatchObject({ key: line.key, count: 1 });
    expect(read.slips[0]?.says).toContain(slip.says);
    expect(read.unknown).toEqual(['Zoe']);
    expect(read.missing).toEqual(['Bob, "B"', 'Cid']);
    const csv = scoresCsv(read, {
      heads: ['Student', 'Exercise', 'Title', 'Right', 'Wrong', 'Left'],
      score: 'Score',
      of: 'Out of',
      says: 'Says',
      answers: ['Student', 'Exercise', 'Title', 'Answer', 'Verdict', 'Says'],
      kinds: { right: 'right', wrong: 'wrong', unread: 'not read', left: 'left out' },
    });
    // Who made which slip, and who left what out.
    expect(
      csv.split('\r\n').filter((row) => /^"Ada"[,;]"[^"]*"[,;]"[^"]*"[,;]"[^"]*"[,;]"wrong"/.test(row)),
    ).toHaveLength(1);
    expect(csv).toContain(slip.says);
    expect(csv.match(/"left out"/g)).toHaveLength(1);
    expect(cellsOf(csv)[1]?.slice(-2)).toEqual([String(ada.lines.length - 1.5), String(ada.lines.length)]);
  });
  it('of thirty students with odd names comes back whole, and no cell of their scores is a formula', () => {
    const odd = [
      'O’Brien "Bo"',
      'Müller; Kl. 7',
      '=SUM(A1:A9)',
      '+49 Tim',
      '-Ann',
      '@home',
      "'t Hooft",
      'Ada, Lady',
      'محمد',
      'שרה "x", y',
    ];
    const more = [
      '李雷',
      '\u202eevil',
      '= 1',
      '=HYPERLINK("x")',
      '-2+3',
      'a\tb',
      '"',
      '""',
      ';',
      ',',
      '--',
      '@',
      '+',
      '=',
      "'",
      'ﬁn',
      'Ǆ',
      'Zoë',
      'Ana',
      'Aña',
    ];
    const { students } = valueIn(readRoster([...odd, ...more].join('\n')));
    expect(students.length).toBe(30);
    const of = students.map((student) => ({
      student,
      lines: setPaper(choose(BANK, counts, '7B'), '7B', student, BANK.version),
    }));
    const read = valueIn(markGrid(gridCsv(of, true), of, one));
    expect(read.students.map((s) => [s.student, s.score])).toEqual(students.map((student) => [student, read.most]));
    expect([read.missing, read.unknown, read.taken, read.slips]).toEqual([[], [], [], []]);
    const csv = scoresCsv(read, {
      heads: ['Student', 'Exercise', 'Title', 'Right', 'Wrong', 'Unread', 'Left'],
      score: 'Score',
      of: 'Out of',
      says: 'Says',
      answers: ['Student', 'Exercise', 'Title', 'Answer', 'Verdict', 'Says'],
      kinds: { right: 'right', wrong: 'wrong', unread: 'not read', left: 'left out' },
    });
    const rows = cellsOf(csv);
    expect(rows.slice(1, 31).map(([name = '']) => name.replace(/^'(?=[=+\-@])/, ''))).toEqual([...students]);
    for (const cell of rows.flat()) expect(cell).not.toMatch(/^[=@]|^[+-](?!\d+(?:[.,]\d+)?(?:\s?\S{0,9})?$)/);
  });
  it('finds students whose names are written a little otherwise, where only one can be meant', () => {
    const of = ['Léa', 'O’Brien', 'Ana', 'Aña', 'Zoe'].map((student) => ({
      student,
      lines: setPaper(choose(BANK, counts, '7B'), '7B', student, BANK.version),
    }));
    const text = gridCsv(of, true)
      .replace('"Léa"', '"lea "')
      .replace('"O’Brien"', `"O'Brien"`)
      .replace('"Aña"', '"ANA"')
      .replace('"Ana"', '"aná"');
    const { students, most, taken, unknown, missing } = valueIn(markGrid(text, of, one));
    expect(students.map((s) => [s.student, s.score])).toEqual([
      ['Léa', most],
      ['O’Brien', most],
      ['Zoe', most],
    ]);
    expect(taken).toEqual([
      { name: 'lea', student: 'Léa' },
      { name: "O'Brien", student: 'O’Brien' },
    ]);
    expect(unknown.toSorted()).toEqual(['ANA', 'aná']);
    expect(missing).toEqual(['Ana', 'Aña']);
  });
  it('takes the words of what is offered, and counts what can’t be read apart from what is wrong', () => {
    const at = ada.lines.findIndex(({ item }) => item.exercise.kind === 'way');
    const number = ada.lines.findIndex(({ item }) => !item.offered);
    const { offered } = ada.lines[at]?.item ?? {};
    if (!offered || number < 0) throw new Error('no way');
    const words = offered.options['abc'.indexOf(offered.right)]?.text.toUpperCase() ?? '';
    const cells = ada.lines.map((_, i) => (i === at ? words : i === number ? 'nix' : ''));
    const text = [
      ['Name', ...ada.lines.map((l) => l.key)],
      ['Ada', ...cells],
    ]
      .map((r) => r.join('\t'))
      .join('\n');
    const read = valueIn(markGrid(text, PAPERS, one));
    expect(read.students[0]?.score).toBe(1);
    expect(read.items[number]).toMatchObject({ right: 0, wrong: 0, unread: 1, left: 0 });
    expect(answersOf(read).filter(({ kind }) => kind === 'unread')).toMatchObject([{ student: 'Ada', typed: 'nix' }]);
  });
  it('is read whatever parts its cells, quotes and line ends in them too', () => {
    expect(cellsOf('a;"b;\n""c"""\r\n1;2')).toEqual([
      ['a', 'b;\n"c"'],
      ['1', '2'],
    ]);
  });
  for (const [what, text, says] of [
    ['nothing', ' \n', /is empty/],
    ['no head', 'Ada', /names no exercise/],
    ['other papers', 'Name,no-such\nAda,3', /“no-such”|no-such/],
  ] as const)
    it(`with ${what} is refused with a sentence`, () => expect(reasonIn(markGrid(text, PAPERS, one))).toMatch(says));
});

describe('an exercise as a teacher wants it', () => {
  const exercise = EXERCISES.find((e) => e.id === 'pair-turned') ?? EXERCISES[0];
  if (!exercise) throw new Error('no exercise');
  const as = editOf(exercise);
  it('takes other words and sizes, and gives the bank another version', () => {
    const change = { ...as, title: 'Mine', sizes: { ...as.sizes, n: '1/2 turn, 3 turns' } };
    const now = valueIn(edited(exercise, change));
    expect(now.pools.find((p) => p.input.name === 'n')?.options).toEqual(['1/2 turn', '3 turns']);
    const own = { hidden: ['one-flat'], marks: { 'pair-turned': 3 }, edits: { 'pair-turned': change } };
    const bank = withOwn(BANK, own);
    expect(bank.version).not.toBe(BANK.version);
    expect(bank.version.startsWith(BANK.version)).toBe(true);
    const ids = bank.chapters.flatMap((c) => c.exercises.map((e) => `${e.id} ${e.title}`));
    expect(ids).toContain('pair-turned Mine');
    expect(ids.join()).not.toContain('one-flat');
    expect(withOwn(BANK, NO_OWN)).toBe(BANK);
    expect(valueIn(readOwn(writeOwn(own)))).toEqual(own);
  });
  for (const [what, change, says] of [
    ['a place that is not there', { question: `${as.question} {Q}` }, /\{Q\} is no place/],
    ['a place that is gone', { question: as.question.replace('{n}', 'some') }, /no longer tells \{n\}/],
    ['a size that is none', { sizes: { ...as.sizes, A: 'M10x1.5, potato' } }, /A size for \{A\}/],
    ['a size twice', { sizes: { ...as.sizes, n: '1 turn, 1 turn' } }, /twice/],
    ['no question', { question: ' ' }, /question is empty/],
    [
      'sizes for one item only',
      { sizes: Object.fromEntries(exercise.pools.map(({ input, options }) => [input.name, options[0] ?? ''])) },
      /make only one item, and a class needs at least 4/,
    ],
  ] as const)
    it(`with ${what} is refused with a sentence`, () =>
      expect(reasonIn(edited(exercise, { ...as, ...change }))).toMatch(says));
  it('takes sizes that semicolons part', () =>
    expect(sizesKept({ kind: 'thread', name: 'A' }, 'M8x1.25; M10x1.5, 3/8-16')).toBe('M8x1.25, M10x1.5, 3/8-16'));
  it('takes of a file what fits this bank, names the rest, and counts a change taken back by hand as none', () => {
    const file = {
      hidden: [exercise.id, 'gone-long-ago'],
      marks: { [exercise.id]: 1, 'gone-too': 3 },
      edits: { [exercise.id]: as, other: as },
    };
    const { own, unfit } = fitting(BANK, file);
    expect(own).toEqual({ hidden: [exercise.id], marks: {}, edits: {} });
    expect(unfit).toEqual(['gone-long-ago', 'gone-too', 'other']);
    const spoilt = { ...NO_OWN, edits: { [exercise.id]: { ...as, question: 'no place' } } };
    expect(fitting(BANK, spoilt)).toEqual({ own: NO_OWN, unfit: [exercise.id] });
    expect(withOwn(BANK, fitting(BANK, { ...NO_OWN, edits: { [exercise.id]: as } }).own).version).toBe(BANK.version);
  });
  it('from a file that is none is refused', () => {
    for (const text of ['', '{}', '[1]', '{"format":"other"}', 'null'])
      expect(reasonIn(readOwn(text))).toMatch(/no file of changed exercises/);
  });
});

describe('the lab', () => {
  const pairs = valueIn(readLabPairs('M10x1.5 + 3/8-16\nM12x1.75 + M10x1.5\n\n'));
  const labs = Array.from({ length: 24 }, (_, i) => valueIn(labOf(pairs, '7B', `student ${i}`, '1')));
  it('is the same whenever it is set, and another for another student', () => {
    expect(valueIn(labOf(pairs, '7B', 'student 3', '1'))).toEqual(labs[3]);
    expect(new Set(labs.map((lab) => JSON.stringify(lab.readings))).size).toBe(labs.length);
    expect(new Set(labs.map((lab) => lab.bench.hidden.fault)).size).toBeGreaterThanOrEqual(6);
    // The bench of the chapter has the same fault by the same seed.
    for (const { bench } of labs.slice(0, 5))
      expect(valueIn(benchOf(bench.adjuster, bench.seed)).hidden).toEqual(bench.hidden);
  });
  it('expects net lead times turns at each flat', () => {
    // By hand: 25.4/16 − 1.5 = 0.0875 mm a turn; twelve flats are two turns.
    const lab = labs.find((l) => l.pair.C.designation.startsWith('3/8'));
    expect(lab?.expected.length).toBe(PLACES);
    expect(lab?.expected.at(-1)).toBeCloseTo(0.175, 12);
    expect(lab?.flat).toBeCloseTo(0.0875 / FLATS, 12);
  });
  it('hides what a fit of its readings finds: the lead of a jack whose lead is off, and no other', () => {
    for (const lab of labs) {
      const { fault, size } = lab.bench.hidden;
      const fit = valueIn(calibrate(lab.readings, { nominal: lab.pair.Delta }));
      expect(lab.found).toBe(fit.lead);
      if (fault === 'lead error') expect(lab.truth / lab.pair.Delta - 1, lab.student).toBeCloseTo(size, 12);
      else expect(lab.truth).toBe(lab.pair.Delta);
      // What goes with time, with the gauge or aside shows in the slope too, which is what the sheet is to teach.
      if (fault === 'lead error' || fault === 'worn flank')
        expect(Math.abs(fit.lead - lab.truth), lab.student).toBeLessThan(0.01 * Math.abs(lab.pair.Delta));
    }
  });
  it('hands its readings to the chapter on calibration as they are', () => {
    for (const lab of labs.slice(0, 5)) {
      const { rows } = valueIn(parseReadings(readingsText(lab), { stepsPerTurn: FLATS }));
      expect(rows.length).toBe(lab.readings.length);
      for (const [i, row] of rows.entries()) expect(row.reading).toBeCloseTo(lab.readings[i]?.reading ?? Number.NaN, 9);
    }
  });
  it('takes readings as they stand on the sheet of who works in inches, and judges them as those in µm', () => {
    for (const lab of labs.slice(0, 5)) {
      const rows = rigRows(lab, 'inch').map(([, flat = '', reading = '', unit = '', way = '']) => ({
        flat,
        reading,
        unit,
        way,
      }));
      const bare = rows.map((r) => `${r.flat}; ${r.reading}; ${r.way}`).join('\n');
      const withUnit = rows.map((r) => `${r.flat}; ${r.reading} ${r.unit}; ${r.way}`).join('\n');
      const fits = [valueIn(typedTable(bare, 'thou')), valueIn(typedTable(withUnit, 'µm')), readingsText(lab)].map(
        (table) => valueIn(judgeTable(table, lab.pair.Delta)).lead,
      );
      expect(fits[0]).toBe(fits[1]);
      // A thousandth of a thou is the last digit of the sheet.
      expect(fits[0]).toBeCloseTo(fits[2] ?? Number.NaN, 4);
    }
    // A place said as an angle or in turns is that, and no flat of that number.
    for (const text of [
      '0°; 0; up\n60°; 14.6; up\n120 deg; 29.2; up\n180º; 43.8; up',
      '0 turns; 0; up\n0.5 turns; 43.8; up\n1 turn; 87.5; up',
    ])
      expect(valueIn(judgeTable(valueIn(typedTable(text, 'µm')), 0.0875)).lead).toBeCloseTo(0.0875, 3);
    expect(reasonIn(typedTable('0; 0; up\n60°; 14.6; up\n2; 29; up', 'µm'))).toMatch(
      /^Line 3 .* flats, an earlier one in degrees/,
    );
    expect(reasonIn(typedTable('0; 0 µm; up\n1; 0.8 thou; up', 'µm'))).toMatch(/Line 2 .* thou, an earlier one in µm/);
  });
  it('is not told to agree where a slip of the pen leaves no lead to tell, and the slip is named', () => {
    // 14.6 µm a flat, one way up and one down 3 µm behind; then 729 µm for 72.9 at flat 5.
    const up = [0, 1, 2, 3, 4, 5, 6].map((flat) => [flat, flat * 14.58, 'up'] as const);
    const down = [6, 5, 4, 3, 2, 1, 0].map((flat) => [flat, flat * 14.58 + 3, 'down'] as const);
    const judged = (rows: readonly (readonly [number, number, string])[]) => {
      const text = rows.map(([flat, read, way]) => `${flat}; ${read.toFixed(1)}; ${way}`).join('\n');
      return labVerdict(valueIn(judgeTable(valueIn(typedTable(text, 'µm')), 0.0875)), 0.0875);
    };
    expect(judged([...up, ...down])).toEqual({ verdict: 'agrees', stray: undefined, swapped: false });
    const slip = up.map((row) => (row[0] === 5 ? ([5, 729, 'up'] as const) : row));
    expect(judged([...slip, ...down])).toMatchObject({ verdict: 'too rough', stray: { flat: 5, way: 'up' } });
    const other = (way: string) => (way === 'up' ? 'down' : 'up');
    expect(judged([...up, ...down].map(([flat, read, way]) => [flat, read, other(way)])).swapped).toBe(true);
    expect(judged(up.map(([flat, read, way]) => [flat, 1.5 * read + (flat % 2), way])).verdict).toBe('differs');
  });
  it('takes the readings of a whole class in one table, name first, and those of one student without', () => {
    const [ada, ben] = [labs[0], labs[1]];
    if (!ada || !ben) throw new Error('no labs');
    const roster = [ada.student, 'Zoë', ben.student];
    const csv = [RIG_COLUMNS, ...rigRows(ada, 'metric'), ...rigRows(ben, 'inch')].map(csvRow).join('\r\n');
    const typed = readingsByStudent(csv, roster);
    expect(typed?.students.map(({ student }) => student)).toEqual([ada.student, ben.student]);
    expect(typed?.unknown).toEqual([]);
    for (const [i, lab] of [ada, ben].entries()) {
      expect(valueIn(labPairOf(pairs, '7B', lab.student, '1'))).toEqual(lab.pair);
      const table = valueIn(typedTable(typed?.students[i]?.text ?? '', 'µm'));
      expect(valueIn(judgeTable(table, lab.pair.Delta)).lead).toBeCloseTo(lab.found ?? Number.NaN, 4);
    }
    // As a class types it: without units, a name written a little otherwise, and one that is on no roster.
    const byHand = readingsByStudent('zoe; 0; 0; up\nZoë; 1; 14.6; up\nTom; 1; 14.6; up', roster);
    expect(byHand).toEqual({ students: [{ student: 'Zoë', text: '0; 0; up\n1; 14.6; up' }], unknown: ['Tom'] });
    // Divided by blanks alone, also where one name begins another.
    expect(readingsByStudent('Zoë 0 0 up\nZoë 1 14.6 µm up\nZoë B 1 14.6 up', ['Zoë', 'Zoë B'])).toEqual({
      students: [
        { student: 'Zoë', text: '0; 0; up\n1; 14.6 µm; up' },
        { student: 'Zoë B', text: '1; 14.6; up' },
      ],
      unknown: [],
    });
    expect(readingsByStudent('0; 0; up\n1; 14.6; up', roster)).toBeUndefined();
    expect(readingsByStudent('', roster)).toBeUndefined();
  });
  it('asks a student in inches in inches all through: a block of inches, and thou without tenths of one', () => {
    const heading = { classCode: '7B', version: '1' };
    for (const lab of labs) {
      const text = labSheet(lab, heading, 'inch') + rigSheet(lab, heading, 'inch');
      expect(text).not.toMatch(/\d (?:tenths|millionths|mm|µm)\b/);
      expect(text).toMatch(/and a flat [+−]\d+\.\d{3} thou/);
      const [, block = '', reads = ''] = /gauge block of (\S+) in under the indicator reads (\S+) in/.exec(text) ?? [];
      // 0.050 in is the smallest block of common inch sets (from memory); a reading is off by the same share as that of a millimetre.
      expect(Number(block)).toBe(0.05);
      expect(Number(reads) / 0.05).toBeCloseTo(lab.checks.block.reads, 3);
    }
  });
  it('stands on two sheets, on four in large print, and each says how many there are', () => {
    const [lab] = labs;
    if (!lab) throw new Error('no lab');
    const heading = { classCode: '7B', version: '1' };
    for (const [large, sheets] of [
      [false, 2],
      [true, 4],
    ] as const) {
      const html = labSheet(lab, heading, 'metric', large);
      expect(html.match(/class="paper-page"/g)).toHaveLength(sheets);
      expect(html.match(/Page \d of \d/g)).toEqual(
        Array.from({ length: sheets }, (_, i) => `Page ${i + 1} of ${sheets}`),
      );
      expect(html.includes('data-large')).toBe(large);
    }
  });
  it('prints sheet, rig and key without a number that is none', () => {
    const heading = { classCode: '7B', version: '1' };
    for (const lab of labs.slice(0, 8))
      for (const view of ['metric', 'inch'] as const) {
        const html = labSheet(lab, heading, view) + rigSheet(lab, heading, view) + labKey([lab], heading, () => view);
        expect(html).not.toMatch(/NaN|Infinity|undefined/);
        expect(rigSheet(lab, heading, view)).not.toContain(
          labKey([lab], heading, () => view).match(/class="words">([^<]*)/)?.[1] ?? '!',
        );
      }
  });
  for (const [what, text, says] of [
    ['nothing', ' ', /No pair is given/],
    ['one thread', 'M10x1.5', /is no pair/],
    ['no thread', 'M10x1.5 + potato', /Line 1 of the pairs/],
    ['two like leads', 'M10x1.5 + M10x1.5', /moves nothing/],
  ] as const)
    it(`with ${what} for pairs is refused with a sentence`, () => expect(reasonIn(readLabPairs(text))).toMatch(says));
});

describe('the plan of a course', () => {
  const chapter = (number: number, minutes: number, needs: readonly string[] = []): CourseChapter => ({
    slug: `c${number}`,
    number,
    title: `Chapter ${number}`,
    minutes,
    needs,
    outcomes: [`Do ${number}.`],
    exercises: [],
  });
  const book = [chapter(1, 60), chapter(2, 30, ['c1']), chapter(3, 50, ['c2']), chapter(4, 20)];
  it('fills lessons in order, none over its minutes but by a scrap, no minute lost', () => {
    const { lessons, over } = valueIn(planCourse(book, new Set(['c1', 'c2', 'c3', 'c4']), 10, 45));
    expect(over).toBe(0);
    expect(lessons.reduce((sum, l) => sum + l.minutes, 0)).toBe(160);
    for (const { minutes } of lessons) expect(minutes).toBeLessThanOrEqual(45);
    expect(lessons.flatMap((l) => l.parts.map((p) => p.chapter.number))).toEqual([1, 1, 2, 3, 3, 4]);
  });
  it('says what finds no room, how many lessons would do, and what is needed besides', () => {
    const plan = valueIn(planCourse(book, new Set(['c2', 'c3']), 1, 45));
    expect(plan.over).toBe(35);
    expect(plan.enough).toBe(2);
    // 30 and 50 minutes: the first lesson holds 30 and 15, so 35 of the second chapter are left.
    expect(plan.left.map(({ chapter: c, minutes }) => [c.slug, minutes])).toEqual([['c3', 35]]);
    const three = valueIn(planCourse(book, new Set(['c2', 'c3', 'c4']), 1, 45));
    const left = three.left.map(({ chapter: c, minutes }) => ({
      chapter: c.title,
      minutes,
      begun: minutes < c.minutes,
    }));
    expect(left.reduce((sum, { minutes }) => sum + minutes, 0)).toBe(three.over);
    expect(planSays({ lessons: 1, over: three.over, enough: three.enough, left, unmet: [] })).toContain(
      'Chapter 3 (the last 35 minutes); Chapter 4 (20 minutes).',
    );
    expect(plan.unmet.map(({ chapter: c, needs }) => [c.slug, needs.map((n) => n.slug)])).toEqual([['c2', ['c1']]]);
    expect(withNeeds(book, new Set(['c3'])).map((c) => c.slug)).toEqual(['c1', 'c2', 'c3']);
    expect(reasonIn(planCourse(book, new Set(), 1, 45))).toMatch(/No chapter is chosen/);
  });
});

describe('pairs for the project', () => {
  it('keep to the taps that there are, and find the one that both kinds give', () => {
    for (const row of valueIn(projectPairs(0.25, 'metric')))
      expect([row.A.kind, row.C.kind]).toEqual(['metric', 'metric']);
    for (const row of valueIn(projectPairs(0.2, 'inch')))
      expect([row.A.kind, row.C.kind]).toEqual(['unified', 'unified']);
    const names = valueIn(projectPairs(0.0875, 'either')).map((r) => [r.A.designation, r.C.designation].sort().join());
    // By hand: 25.4/16 − 1.5 = 0.0875.
    expect(names.join(' | ')).toContain('3/8-16 UNC');
    // M12×1.75 over M10×1.5 and M8×1.25 over M6×1: a quarter of a millimetre.
    expect(Math.abs(valueIn(projectPairs(0.25, 'metric'))[0]?.Delta ?? 0)).toBeCloseTo(0.25, 12);
    // By hand: M5×0.8 less M4×0.7 is 0.1.
    const [tenth] = valueIn(projectPairs(0.1, 'metric'));
    expect([tenth?.A.designation, tenth?.C.designation].sort()).toEqual(['M4×0.7', 'M5×0.8']);
  });
  it('of one net lead begin with coarse threads and with the longest stroke', () => {
    // Coarse pitches of ISO 261: M8×1.25, M10×1.5, M12×1.75, M14×2, M16×2; the three pairs of neighbours differ by a quarter.
    const names = valueIn(projectPairs(0.25, 'metric')).map((r) => [r.A.designation, r.C.designation].sort().join());
    expect(names.slice(0, 4)).toContain('M10×1.5,M12×1.75');
    for (const name of names.slice(0, 3)) expect(name).not.toContain('M4');
  });
  it('are of sizes that a shop has taps of, and are said to be far off where they are', () => {
    for (const wanted of [0.05, 0.1, 0.25, 0.5])
      for (const { A, C } of valueIn(projectPairs(wanted, 'metric')))
        for (const { d } of [A, C]) expect([7, 9, 11, 15]).not.toContain(d);
    expect(farOff(valueIn(projectPairs(0.25, 'metric')), 0.25)).toBeUndefined();
    expect(farOff(valueIn(projectPairs(0.07, 'metric')), 0.07)).toBeGreaterThan(0.1);
  });
});
