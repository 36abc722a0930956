/** Feet, readings and rounds as typed: what is read, what is refused and in which words, what is written back. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  readFeet,
  readReadings,
  readRounds,
  writeFeet,
  writeReadings,
  writeRounds,
} from '../../widgets/input/levelling-table.ts';
import { reasonOf } from '../../widgets/words/reason.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const FEET = [
  { name: '1', x: 0, y: 0 },
  { name: '2', x: 240, y: 0 },
  { name: '3', x: 120, y: 180.5 },
];

describe('readFeet', () => {
  const ways = [
    '1: 0, 0; 2: 240, 0; 3: 120, 180.5',
    '3 = 120, 180.5; 1 = 0, 0; 2 = 240, 0',
    'foot 1 0, 0; foot 2: 240, 0; foot 3(120, 180.5)',
    // The letters of older notebooks.
    'A: 0, 0; B: 240, 0; C: 120, 180.5',
    'A 0, 0\nB 240, 0\nC 120, 180.5',
    '0, 0\n240, 0\n120, 180,5',
    '0 0; 240 0; 120 180,5',
    'foot A: (0, 0); foot B: (240, 0); foot C: (120, 180.5)',
    'c = 120, 180.5; b = 240, 0; a = 0, 0',
    'A: 0 mm, 0 mm; B: 24 cm, 0'.replace('24 cm', '240 mm').concat('; C: 120\t180.5;\n'),
    '0,0; 240,0; 120,180.5',
    'foot  A:0, 0; foot  B(240, 0); foot  C=120, 180.5',
    '0 mm\t0 mm; 240 mm\t0 mm; 120 mm\t180.5 mm',
  ];
  for (const text of ways)
    it(`reads “${text.replace(/\n/g, '⏎')}”`, () => {
      expect(valueIn(readFeet(text))).toEqual(FEET);
    });

  it('takes inches where they are typed', () => {
    expect(valueIn(readFeet('0, 0; 10 in, 0; 5 in, 7 1/2 in')).map((f) => [f.x, f.y])).toEqual([
      [0, 0],
      [254, 0],
      [127, 190.5],
    ]);
  });

  const refused: readonly (readonly [string, string])[] = [
    ['', 'Read 0 feet; a plate is levelled on exactly three: give three rows, like 1: 0, 0.'],
    ['0, 0; 1, 1', 'Read 2 feet; a plate is levelled on exactly three: give three rows, like 1: 0, 0.'],
    ['0, 0; 9, 0; 0, 9; 9, 9', 'Read 4 feet; a plate is levelled on exactly three: give three rows, like 1: 0, 0.'],
    ['2: 0, 0; B: 9, 0; 3: 0, 9', 'Two feet are called 2; call them 1, 2 and 3.'],
    ['A: 0, 0; B: 9, 0; D: 0, 9', 'One foot is called D; call them 1, 2 and 3.'],
    ['1: 0, 0; 2: 9, 0; 4: 0, 9', 'One foot is called 4; call them 1, 2 and 3.'],
    [
      'A: 0, 0; B: nine, 0; C: 0, 9',
      'Row 2 of the feet reads “B: nine, 0”; read “nine”, which is not a number: write one like 1.5, 1,5 or 3/8.',
    ],
    [
      'A: 0, 0; B: 9 N, 0; C: 0, 9',
      'Row 2 of the feet reads “B: 9 N, 0”; read “9 N”, in N; this takes mm, µm, in, thou, tenths, millionths.',
    ],
    [
      'A: 0, 0; B: 9, nine; C: 0, 9',
      'Row 2 of the feet reads “B: 9, nine”; read “nine”, which is not a number: write one like 1.5, 1,5 or 3/8.',
    ],
    ['A: 0, 0; B: 9,; C: 0, 9', 'Row 2 of the feet reads “B: 9,”; give x and y, like 1: 0, 0.'],
    ['A: 0, 0; B: 1, 2, 3; C: 0, 9', 'Row 2 of the feet reads “B: 1, 2, 3”; give x and y, like 1: 0, 0.'],
    ['A: 0, 0; B: 9; C: 0, 9', 'Row 2 of the feet reads “B: 9”; give x and y, like 1: 0, 0.'],
    ['0, 0; 1e9, 0; 0, 9', 'Row 2 of the feet reads “1e9, 0”; read “1e9”; give a length from −10 m to 10 m.'],
    [
      '0, 0; 50, 50; 100, 100',
      'The 3 feet stand in a line, or so nearly that the tilt across it cannot be found: move one far off the line.',
    ],
    [
      '5, 5; 5, 5; 5, 5',
      'The 3 feet stand in a line, or so nearly that the tilt across it cannot be found: move one far off the line.',
    ],
  ];
  for (const [text, reason] of refused)
    it(`refuses “${text}”`, () => {
      expect(reasonIn(readFeet(text))).toBe(reason);
    });
});

describe('readReadings', () => {
  const want = [
    { x: 40, y: 20, z: expect.closeTo(0.0125, 12) },
    { x: 200, y: 20, z: expect.closeTo(-0.084, 12) },
    { x: 40, y: 160, z: expect.closeTo(0.094, 12) },
  ];
  const ways = [
    '40, 20: 12.5 µm; 200, 20: −84 µm; 40, 160: 94 µm',
    '40, 20: 12,5\n200, 20: -84\n40, 160: 94',
    '40, 20, 12.5; 200, 20, -84; 40, 160, 94',
    '40\t20\t12,5\n200\t20\t-84\n40\t160\t94',
    '40 20 12.5\n200 20 -84\n40 160 94',
    '40,20: 0.0125 mm; 200,20: -0.084 mm; 40,160 = 94um',
    '(40, 20) : 12.5; (200, 20) : -84; (40, 160) : 94',
  ];
  for (const text of ways)
    it(`reads “${text.replace(/\n/g, '⏎').replace(/\t/g, '⇥')}”`, () => {
      expect(valueIn(readReadings(text))).toEqual(want);
    });

  it('takes thou and tenths', () => {
    const [first, second] = valueIn(readReadings('0, 0: 1 thou; 4 in, 0: -5 tenths; 0, 4 in: 0'));
    expect(first?.z).toBeCloseTo(0.0254, 12);
    expect(second).toEqual({ x: expect.closeTo(101.6, 9), y: 0, z: expect.closeTo(-0.0127, 12) });
  });

  const refused: readonly (readonly [string, string])[] = [
    ['', 'Read 0 readings; a plane needs three that are not in a line: add 3 more.'],
    ['1, 2: 3', 'Read 1 reading; a plane needs three that are not in a line: add 2 more.'],
    ['1, 2: 3; 9, 9: 3', 'Read 2 readings; a plane needs three that are not in a line: add 1 more.'],
    [
      '0, 0: 1; 1, 1: 2; 2, 2: 3',
      'The 3 readings stand in a line, or so nearly that the tilt across it cannot be found: move one far off the line.',
    ],
    ['0, 0,; 1, 0: 2; 0, 1: 3', 'Row 1 of the readings reads “0, 0,”; give x, y and the reading, like 40, 20: −3 µm.'],
    [
      '0, 0, 7: 1; 1, 0: 2; 0, 1: 3',
      'Row 1 of the readings reads “0, 0, 7: 1”; give x, y and the reading, like 40, 20: −3 µm.',
    ],
    ['0, 0; 1, 0: 2; 0, 1: 3', 'Row 1 of the readings reads “0, 0”; give x, y and the reading, like 40, 20: −3 µm.'],
    ['0, 0: 1; 1: 2; 0, 1: 3', 'Row 2 of the readings reads “1: 2”; give x, y and the reading, like 40, 20: −3 µm.'],
    [
      '0, 0: 1; 1, 0: 2: 3; 0, 1: 3',
      'Row 2 of the readings reads “1, 0: 2: 3”; give x, y and the reading, like 40, 20: −3 µm.',
    ],
    ['0, 0: 1; 1, 0: 2; 0, 1: ', 'Row 3 of the readings: Nothing was typed; a number is needed, for example 1.5.'],
    [
      '0, 0: 1; 1, 0: NaN; 0, 1: 1',
      'Row 2 of the readings: Read “NaN”, which is not a number: write one like 1.5, 1,5 or 3/8.',
    ],
    ['0, 0: 1; 1, 0: 1e12; 0, 1: 1', 'Row 2 of the readings: Read “1e12”; give a length from −10 m to 10 m.'],
    [
      Array.from({ length: 21 }, (_, i) => `${i}, ${i * i}: 0`).join(';'),
      'Read 21 readings; 20 is the limit here: a few, far apart, are as good.',
    ],
  ];
  for (const [text, reason] of refused)
    it(`refuses “${text.slice(0, 60)}”`, () => {
      expect(reasonIn(readReadings(text))).toBe(reason);
    });

  it('takes the last of what it allows: twenty readings, ten metres, six hundred characters', () => {
    const twenty = Array.from({ length: 20 }, (_, i) => `${i}, ${i * i}: 0`).join(';');
    expect(valueIn(readReadings(twenty))).toHaveLength(20);
    expect(valueIn(readReadings('-10000, 0: 0; 10000, 0: -10000 mm; 0, 10000: 10000 mm'))[1]).toEqual({
      x: 1e4,
      y: 0,
      z: -1e4,
    });
    expect(reasonIn(readReadings('-10000.1, 0: 0; 9, 0: 0; 0, 9: 0'))).toContain('a length from −10 m to 10 m');
    const padded = '0, 0: 0; 9, 0: 0; 0, 9: 0';
    expect(readReadings(padded.padEnd(600)).ok).toBe(true);
    expect(reasonIn(readReadings(padded.padEnd(601)))).toContain('600 characters is the limit');
    expect(reasonIn(readFeet('0, 0; 9, 0; 0, 9'.padEnd(601)))).toContain('600 characters is the limit');
  });

  it('gives one sentence for ten thousand characters of anything', () => {
    for (const text of ['banana '.repeat(1500), '1, 2: 3; '.repeat(1200)])
      expect(reasonIn(readReadings(text))).toMatch(
        /^Read “.*…” \(10\d* characters\); 600 characters is the limit here: leave some rows out\.$/,
      );
  });
});

describe('readRounds', () => {
  it('reads rows of readings, parted by semicolons, commas or blanks; nothing is no round', () => {
    const um = (...heights: number[]) => heights.map((z) => expect.closeTo(z / 1000, 12));
    expect(valueIn(readRounds(' '))).toEqual([]);
    expect(valueIn(readRounds('3; −1; 0,5; 2\n1 0 0 -1'))).toEqual([um(3, -1, 0.5, 2), um(1, 0, 0, -1)]);
    expect(valueIn(readRounds('3,  −1,  0,5,  2'))).toEqual([um(3, -1, 0.5, 2)]);
    expect(valueIn(readRounds('3, -1, 0.5, 2 | 0.001 mm; 0; 0; 1 µm;'))).toEqual([um(3, -1, 0.5, 2), um(1, 0, 0, 1)]);
  });
  it('names the round that can’t be read, counting the first readings as the first', () => {
    expect(reasonIn(readRounds('1; 2; 3\n1; two; 3'))).toBe(
      'Round 3: Read “two”, which is not a number: write one like 1.5, 1,5 or 3/8.',
    );
    expect(reasonIn(readRounds('1; 1e12; 3'))).toBe('Round 2: Read “1e12”; give a length from −10 m to 10 m.');
    expect(reasonIn(readRounds('1;; 3'))).toBe('Round 2: Nothing was typed; a number is needed, for example 1.5.');
    expect(valueIn(readRounds(Array(8).fill('1; 2; 3').join('|')))).toHaveLength(8);
    expect(reasonIn(readRounds('1; 2; 3'.padEnd(601)))).toContain('600 characters is the limit');
    expect(reasonIn(readRounds(Array(9).fill('1; 2; 3').join('|')))).toBe(
      'Read 9 rounds; 8 are kept here: put the last readings first and begin again.',
    );
  });
});

describe('what is written', () => {
  const place = fc.integer({ min: -9_999_999, max: 9_999_999 }).map((v) => v / 1000);
  it('reads back as itself', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(place, place, place), { minLength: 3, maxLength: 8 }), (rows) => {
        const points = rows.map(([x, y, z]) => ({ x, y, z: z / 1e4 }));
        const back = readReadings(writeReadings(points));
        if (back.ok) expect(back.value).toEqual(points.map((p) => ({ x: p.x, y: p.y, z: expect.closeTo(p.z, 7) })));
        else expect(reasonOf(back)).toMatch(/stand in a line/);
      }),
    );
    expect(valueIn(readFeet(writeFeet(FEET)))).toEqual(FEET);
    // What rounding leaves of a nought is written as nought; a nanometre is still written.
    expect(writeReadings([{ x: 1e-9, y: 1e-6, z: -1e-12 }])).toBe('0, 0.000001: 0 µm');
    expect(
      writeRounds([
        [0.0012345, -0.05],
        [0, 0.1],
      ]),
    ).toBe('1.2; −50\n0; 100');
    expect(valueIn(readRounds(writeRounds([[0.0012, -0.05]])))).toEqual([
      [0.0012, -0.05].map((z) => expect.closeTo(z, 9)),
    ]);
  });
});
