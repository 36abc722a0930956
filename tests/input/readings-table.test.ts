import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  directionsFromOrder,
  MOST_ROWS,
  notFormula,
  parseReadings,
  toCsv,
} from '../../widgets/input/readings-table.ts';
import { growth, IN_STEP } from '../support/growth.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const pairs = (text: string, options?: Parameters<typeof parseReadings>[1]) =>
  valueIn(parseReadings(text, options)).rows.map((r) => [r.turns, Number((r.reading * 1e3).toFixed(9))]);

/** A reader of RFC 4180 written from the grammar alone, for the round trip. */
const readCsv = (text: string): string[][] => {
  const rows: string[][] = [];
  let [row, cell, quoted]: [string[], string, boolean] = [[], '', false];
  for (let i = 0; i < text.length; i++) {
    if (quoted) {
      if (text[i] !== '"') cell += text[i];
      else if (text[i + 1] === '"') {
        cell += '"';
        i++;
      } else quoted = false;
    } else if (text[i] === '"') quoted = true;
    else if (text[i] === ',') {
      row.push(cell);
      cell = '';
    } else if (text.startsWith('\r\n', i)) {
      rows.push([...row, cell]);
      [row, cell] = [[], ''];
      i++;
    } else cell += text[i];
  }
  return rows;
};

describe('parseReadings', () => {
  const EXPECTED = [
    [0, 0.5],
    [0.5, 44.25],
    [1, 88],
  ];

  it.each([
    ['commas', 'turns,reading (µm)\n0,0.5\n0.5,44.25\n1,88\n', 'comma', 'point'],
    ['semicolons and decimal commas', 'turns;reading (µm)\n0;0,5\n0,5;44,25\n1;88\n', 'semicolon', 'comma'],
    ['semicolons and points', 'turns;reading (µm)\n0;0.5\n0.5;44.25\n1;88', 'semicolon', 'point'],
    ['tabs, as pasted from a spreadsheet', 'turns\treading (µm)\r\n0\t0,5\r\n0,5\t44,25\r\n1\t88\r\n', 'tab', 'comma'],
    ['blanks', 'turns  reading (µm)\n0   0.5\n 0.5 44.25\n1 88', 'blank', 'point'],
    ['blanks and decimal commas', '0 0,5\n0,5 44,25\n1 88', 'blank', 'comma'],
    ['a comma and a blank', 'turns, reading (µm)\n0, 0.5\n0.5, 44.25\n1, 88', 'comma', 'point'],
    ['quoted cells with decimal commas', '"turns","reading (µm)"\n"0","0,5"\n"0,5","44,25"\n1,88', 'comma', 'comma'],
    ['a byte order mark and old line ends', '\uFEFFturns;reading (µm)\r0;0.5\r0.5;44.25\r1;88\r', 'semicolon', 'point'],
    ['blanks under a header, with decimal commas', 'turns reading (µm)\n0 0,5\n0,5 44,25\n1 88', 'blank', 'comma'],
    ['a tab at the end of lines', 'turns;reading (µm)\t\n0;0.5\t\n0.5;44.25\t\n1;88\t', 'semicolon', 'point'],
    ['blanks round quotes', ' "turns" ; "reading (µm)" \n "0" ; "0.5" \n"0.5" ;"44.25"\n1; "88"', 'semicolon', 'point'],
    ['an empty column between', 'turns;;reading (µm)\n0;;0.5\n0.5;;44.25\n1;;88', 'semicolon', 'point'],
    ['empty cells after two columns without names', '0;0.5;\n0.5;44.25;;\n1;88;', 'semicolon', 'point'],
    ['no header', '0;0.5\n0.5;44.25\n1;88', 'semicolon', 'point'],
    [
      'blank lines, remarks and empty spreadsheet rows',
      '# foot\n\nturns;reading (µm);\n0;0.5;\n;;\n0.5;44.25;\n\n1;88;\n;;\n',
      'semicolon',
      'point',
    ],
  ])('reads %s', (_, text, separator, decimalMark) => {
    const table = valueIn(parseReadings(text));
    expect(pairs(text)).toEqual(EXPECTED);
    expect(table.separator).toBe(separator);
    expect(table.decimalMark).toBe(decimalMark);
    expect(table.positionUnit).toBe('turns');
    expect(table.readingUnit).toBe('µm');
  });

  it('reads signed numbers parted by blanks, their commas being decimal marks', () => {
    expect(pairs('  -1  -0,5\n  −0,5  −44,25\n  +1  +88,5')).toEqual([
      [-1, -0.5],
      [-0.5, -44.25],
      [1, 88.5],
    ]);
  });

  it('finds the separator by the first twenty lines, whatever remarks hold further down', () => {
    const lines = Array.from({ length: 30 }, (_, i) => `${i},${2 * i},${i > 22 ? 'a; b\tc' : ''}`);
    expect(valueIn(parseReadings(['turns,reading (µm),remark', ...lines].join('\n')))).toMatchObject({
      separator: 'comma',
    });
  });

  it('takes marks of other kinds of file inside a table for what is written there', () => {
    const text = ['PK', '%PDF', '{\\rtf', '<html>', '{}'].map((remark, i) => `${i};1;${remark}`).join('\n');
    expect(pairs(`turns;reading (µm);remark\n${text}`)).toHaveLength(5);
  });

  it('passes over empty cells at the end of a header, whether the rows have them or not', () => {
    expect(pairs('turns;µm;;\n0;1\n1;2;;;')).toEqual([
      [0, 1],
      [1, 2],
    ]);
  });

  it('reads quotes doubled inside quotes', () => {
    const table = valueIn(parseReadings('turns;reading (µm);"say ""so"""\n0;1;"a ""b""; c"'));
    expect(table.notes).toEqual(['Left out: “say "so"”.']);
    expect(table.rows).toHaveLength(1);
  });

  it.each([
    ['turn', 1],
    ['rev', 1],
    ['revolutions', 1],
    ['x', 1],
    ['flat', 6],
    ['step', 6],
    ['divisions', 6],
    ['degree', 360],
    ['°', 360],
    ['screw  position ( flats )', 6],
    ['angle of knob (deg)', 360],
  ])('knows positions headed %s, %i to the turn', (head, perTurn) => {
    expect(pairs(`${head};my reading ( µm );up/down\n${perTurn};1;up`)).toEqual([[1, 1]]);
    const table = valueIn(parseReadings(`${head};µm;up/down\n${perTurn};1;down`));
    expect([table.directionFrom, table.rows[0]?.direction]).toEqual(['column', 'down']);
    expect(pairs(`my height;${head};side of approach\n1;${2 * perTurn};up`)).toEqual([[2, 1]]);
  });

  it('says none where no number has a fraction', () => {
    expect(valueIn(parseReadings('0;1\n1;88')).decimalMark).toBe('none');
  });

  it.each([
    ['turns;reading (mm)', '1;0.0875'],
    ['turns;reading (thou)', '1;3.4448818897638'],
    ['turns;reading [tenths]', '1;34.448818897638'],
    ['turns;reading/in', '1;0.0034448818897638'],
    ['revs;z (micron)', '1;87.5'],
    ['turns;reading (")', '1;0.0034448818897638'],
    ['flats;Indicator (µm)', '6;87.5'],
    ['position (flats);dial reading (um)', '6;87.5'],
    ['angle (°);gauge (μm)', '360;87.5'],
    ['degrees;µm', '360;87.5'],
    ['"reading, mm";"turns"', '0.0875;1'],
    ['TURNS;READING (MM)', '1;.0875'],
    ['turns;reading (mm)', '+1;8.75e-2'],
  ])('reads 87.5 µm at one turn from a header %s', (header, row) => {
    const [first] = pairs(`${header}\n${row}\n${row}`);
    expect(first?.[0]).toBeCloseTo(1, 12);
    expect(first?.[1]).toBeCloseTo(87.5, 8);
  });

  it('divides steps by what the reader says a turn has', () => {
    expect(pairs('steps;reading (µm)\n25;1\n100;2', { stepsPerTurn: 100 })).toEqual([
      [0.25, 1],
      [1, 2],
    ]);
    for (const stepsPerTurn of [1, 10_000]) expect(parseReadings('1;2', { stepsPerTurn }).ok).toBe(true);
    for (const stepsPerTurn of [1.5, 10_001])
      expect(reasonIn(parseReadings('1;2', { stepsPerTurn }))).toContain('from 1 to 10 000');
    expect(reasonIn(parseReadings('1;2', { stepsPerTurn: 0 }))).toBe(
      'Read 0 steps per turn; give a whole number from 1 to 10 000, such as 6.',
    );
  });

  it('takes units from the reader where the header has none, and says so', () => {
    const table = valueIn(parseReadings('n;z\n6;3\n12;4', { positionUnit: 'steps', readingUnit: 'thou' }));
    expect(table.rows[0]?.turns).toBe(1);
    expect(table.rows[0]?.reading).toBeCloseTo(0.0762, 12);
    expect(table.notes).toEqual([
      'The header names no unit for the positions; steps supposed.',
      'The header names no unit for the readings; thou supposed.',
    ]);
    expect(valueIn(parseReadings('0;1\n1;2')).notes).toEqual([
      'No header: positions in turns and readings in µm supposed.',
    ]);
  });

  it('reads the direction from a column in many spellings', () => {
    const table = valueIn(
      parseReadings('turns;reading (µm);direction\n0;0;up\n1;88;UP\n1;89;down\n0;1;−\n0;1;anticlockwise\n0;0;+'),
    );
    expect(table.directionFrom).toBe('column');
    expect(table.rows.map((r) => r.direction)).toEqual(['up', 'up', 'down', 'down', 'down', 'up']);
    expect(valueIn(parseReadings('0;1;up\n1;2;down')).rows.map((r) => r.direction)).toEqual(['up', 'down']);
  });

  it('takes the direction from the order where there is no column', () => {
    const table = valueIn(parseReadings('0;0\n1;88\n2;170\n2;171\n1;90\n0;3\n1;88'));
    expect(table.directionFrom).toBe('order');
    expect(table.rows.map((r) => r.direction)).toEqual(['up', 'up', 'up', 'up', 'down', 'down', 'up']);
  });

  it('keeps the line of the text with each row', () => {
    expect(valueIn(parseReadings('turns;µm\n\n0;1\n# pause\n1;2')).rows.map((r) => r.line)).toEqual([3, 5]);
  });

  it('leaves columns out that it does not know, and says which', () => {
    const table = valueIn(parseReadings('no.,turns,reading (µm),remark\n1,0,5,start\n2,1,90,"end, warm"'));
    expect(table.rows).toHaveLength(2);
    expect(table.notes).toEqual(['Left out: “no.” and “remark”.']);
  });

  it('refuses mixed decimal marks by line', () => {
    expect(reasonIn(parseReadings('turns;reading (µm)\n0.5;1\n1;2\n1,5;3'))).toBe(
      'Line 4 has a decimal comma (“1,5”) and line 2 a decimal point (“0.5”); use one mark throughout, and no thousands marks.',
    );
    expect(reasonIn(parseReadings('0;1.234,5\n1;2'))).toBe(
      'Line 1 has a decimal comma (“1.234,5”) and line 1 a decimal point (“1.234,5”); use one mark throughout, and no thousands marks.',
    );
    expect(reasonIn(parseReadings('0;1\n1;1,234,567'))).toBe(
      'Line 2: the reading “1,234,567” is not a number; correct or remove it and paste again.',
    );
  });

  it('refuses decimal commas between comma separators, and says what to do', () => {
    expect(reasonIn(parseReadings('turns,reading\n0,5,44,25\n1,0,88,0'))).toBe(
      'Line 2: “0,5,44,25” has 4 columns where there should be 2; if commas are decimal marks, part the columns by semicolons or tabs (and in the same way line 3); correct or remove it and paste again.',
    );
    expect(reasonIn(parseReadings('0,5,44,25\n1,0,88,0'))).toBe(
      'The first line has 4 columns and no names; two are needed, turns and readings (if commas are decimal marks, part the columns by semicolons or tabs), or name the columns like this: turns; reading (µm); direction.',
    );
  });

  it('names the lines with text, with nothing, and with odd directions', () => {
    expect(reasonIn(parseReadings('turns;µm\n0;1\n1;n/a\n2;3'))).toBe(
      'Line 3: the reading “n/a” is not a number; correct or remove it and paste again.',
    );
    expect(reasonIn(parseReadings('0;n/a\n1;2'))).toMatch(/^Line 1: the reading “n\/a” is not a number/);
    expect(reasonIn(parseReadings('turns;µm\n0;1\n1;\n2;3'))).toMatch(/^Line 3: the reading is missing;/);
    expect(reasonIn(parseReadings('turns;µm\n0;1\none;5\n2;3'))).toMatch(/^Line 3: the position “one” is not a number/);
    expect(reasonIn(parseReadings('turns;µm;direction\n0;1;up\n1;5;left'))).toMatch(
      /^Line 3: the direction “left” is not up or down;/,
    );
    for (const mark of [';', '\t'])
      expect(reasonIn(parseReadings(`0${mark}1\n5`))).toBe(
        'Line 2: “5” has 1 column where there should be 2; correct or remove it and paste again.',
      );
    expect(reasonIn(parseReadings('0,1\n5'))).toContain('Line 2: “5” has 1 column where there should be 2; if commas');
    expect(reasonIn(parseReadings('turns;µm\n0;1;;7'))).toContain('has 4 columns where there should be 2');
    expect(reasonIn(parseReadings('turns;µm;direction\n0;1'))).toContain('has 2 columns where there should be 3');
    expect(pairs('0;1e9\n1;8.75e1\n2;875E+02')).toEqual([
      [0, 1e9],
      [1, 87.5],
      [2, 87500],
    ]);
    expect(reasonIn(parseReadings('0;1\n1;1000000001'))).toContain('“1000000001” is not a number');
    const many = `turns;µm\n0;1\n${'x;y\n'.repeat(9)}`;
    expect(reasonIn(parseReadings(many))).toBe(
      'Line 3: the position “x” is not a number (and in the same way lines 4, 5, 6, 7, 8 and 3 more); correct or remove it and paste again.',
    );
    for (const wrong of ['NaN', 'Infinity', '0x10', '1e99', '1 000', '--1', '1.2.3', 'e5'])
      expect(parseReadings(`0;1\n1;${wrong}`).ok, wrong).toBe(false);
  });

  it('refuses a quote that is not closed', () => {
    expect(reasonIn(parseReadings('turns,reading (µm)\n0,"1\n1,2'))).toBe(
      'Line 2: “0,"1” opens a quote and does not close it; correct it and paste again.',
    );
  });

  it('refuses wrong units, missing columns, and two of a kind', () => {
    expect(reasonIn(parseReadings('turns;reading (kg)\n0;1'))).toBe(
      'The header gives “kg” as the unit of the readings; use mm, µm, in, thou, tenths or millionths, and name the columns like this: turns; reading (µm); direction.',
    );
    expect(reasonIn(parseReadings('position (mm);reading (µm)\n0;1'))).toBe(
      'The header gives “mm” as the unit of the positions; use turns, flats or °, and name the columns like this: turns; reading (µm); direction.',
    );
    expect(reasonIn(parseReadings('time;reading (µm)\n0;1'))).toBe(
      'The header “time | reading (µm)” has no column of positions known here; name the columns like this: turns; reading (µm); direction.',
    );
    expect(reasonIn(parseReadings('turns;weight\n0;1'))).toMatch(/has no column of readings known here; name/);
    expect(reasonIn(parseReadings('turns;flats;reading (µm)\n0;0;1'))).toBe(
      'The header has two columns of one kind, “turns” and “flats”: keep one position column and remove or rename the other.',
    );
    expect(reasonIn(parseReadings('turns;reading (N)\n0;1'))).toContain('gives “n” as the unit of the readings');
    expect(reasonIn(parseReadings('wear (°);reading (µm)\n0;1'))).toContain('no column of positions');
    expect(reasonIn(parseReadings('turns;wear (mm)\n0;1'))).toContain('no column of readings');
    expect(reasonIn(parseReadings('turns|reading\n0|1'))).toContain('known here, and nothing parts its columns; name');
    expect(reasonIn(parseReadings('weight;\n0;1'))).toContain('known here; name');
    expect(reasonIn(parseReadings('time reading (µm)\n0 1'))).toContain('known here; name');
    // A word that every object has must not pass for a unit or a name.
    expect(parseReadings('constructor;reading (µm)\n0;1').ok).toBe(false);
    expect(parseReadings('turns;reading (toString)\n0;1').ok).toBe(false);
  });

  it('refuses one column, a header alone, and nothing', () => {
    for (const text of ['0;1;5', '0;1;up;7', '5,'])
      expect(reasonIn(parseReadings(text))).toMatch(
        /^The first line has \d columns? and no names; two are needed, turns and readings, or/,
      );
    expect(reasonIn(parseReadings('1\n2\n3'))).toMatch(/^The first line has 1 column and no names; two are needed/);
    expect(reasonIn(parseReadings('turns;reading (µm)\n'))).toBe(
      'There is a header and no reading under it; paste the readings with it.',
    );
    for (const nothing of ['', ' \n\n', '\uFEFF', ';;;\n'])
      expect(reasonIn(parseReadings(nothing))).toBe(
        'Nothing was pasted; give two columns, turns and readings, with a line for each reading.',
      );
  });

  it.each([
    ['PK\u0003\u0004\u0014\u0000\u0006', 'a spreadsheet or another packed file'],
    ['%PDF-1.7 ...', 'a PDF file'],
    ['{\\rtf1\\ansi', 'a rich-text file'],
    ['<!DOCTYPE html><html>', 'a web page or XML file'],
    ['\n <?xml version="1.0"?>', 'a web page or XML file'],
    ['{"turns":[0,1]}', 'a JSON file'],
  ])('refuses a file of another kind: %j', (text, kind) => {
    expect(reasonIn(parseReadings(text))).toBe(
      `This looks like ${kind}, not a table of text: save the readings as CSV, or copy the columns and paste them here.`,
    );
  });

  it('refuses bytes that are no text, and pastes beyond all measure', () => {
    for (const text of ['0;1\n1;\u0000', '\uFFFDPNG\r\n', '\u0011\u0010;5'])
      expect(reasonIn(parseReadings(text))).toMatch(
        /^This holds characters that no text has, so it is some other file/,
      );
    for (const code of [8, 14, 31])
      expect(parseReadings(`0;1\n1;2${String.fromCharCode(code)}`).ok, `${code}`).toBe(false);
    for (const code of [9, 11, 12])
      expect(parseReadings(`0;1\n1;2${String.fromCharCode(code)}`).ok, `${code}`).toBe(true);
    expect(reasonIn(parseReadings('0;1\n'.repeat(MOST_ROWS + 1)))).toMatch(/^Read 250001 lines; at most 250000/);
  });

  it('takes ten times as long for ten times the rows, 100 000 of them', () => {
    const textOf = (rows: number) =>
      `turns;reading (µm);direction\r\n${Array.from(
        { length: rows },
        (_, i) => `${(i / 6).toFixed(4)};${(i * 14.583).toFixed(3)};${i % 2 === 0 ? 'up' : 'down'}`,
      ).join('\r\n')}`;
    const text = textOf(100_000);
    const few = textOf(10_000);
    expect(growth((size) => parseReadings(size === 10_000 ? few : text), 10_000)).toBeLessThan(IN_STEP);
    const { rows } = valueIn(parseReadings(text));
    expect(rows).toHaveLength(100_000);
    expect(rows.at(-1)).toMatchObject({ line: 100_001, direction: 'down' });
  });
});

describe('toCsv', () => {
  it('ends lines with CR LF and quotes only what must be (RFC 4180, section 2)', () => {
    expect(
      toCsv(
        ['a', 'b, c'],
        [
          [1.5, 'plain'],
          [-2, 'say "so"'],
          [Number.NaN, 'two\nlines'],
        ],
      ),
    ).toBe('a,"b, c"\r\n1.5,plain\r\n-2,"say ""so"""\r\n,"two\nlines"\r\n');
  });

  it('writes what begins like a formula as text, and signed numbers as they are', () => {
    const cells = ['=1+1', '+cmd()', '-2+3', '@sum', ' =1', '\t=1', "'a", '-0.5', '+12 µm', '-3e-4 N·mm', '−5', '-5°'];
    expect(cells.map(notFormula)).toEqual(cells.map((cell, i) => (i < 6 ? `'${cell}` : cell)));
    for (const plain of ['-0.55', '-3e4', '+2.5e+10 %', '-1e-12', 'x=1+1']) expect(notFormula(plain)).toBe(plain);
    expect(toCsv(['@head'], [['=HYPERLINK("x","y")']])).toBe(`'@head\r\n"'=HYPERLINK(""x"",""y"")"\r\n`);
  });

  it('writes decimal commas and semicolons when asked, and quotes a decimal comma between commas', () => {
    expect(toCsv(['t'], [[0.5]], { separator: ';', decimalMark: ',' })).toBe('t\r\n0,5\r\n');
    expect(toCsv(['t', 'z'], [[0.5, 1]], { decimalMark: ',' })).toBe('t,z\r\n"0,5",1\r\n');
  });

  it('comes back cell for cell through a reader of the grammar', () => {
    const cell = fc.oneof(fc.string({ maxLength: 12 }), fc.constantFrom('"', '""', ',', '\r\n', '\n', '', ' x '));
    const table = fc
      .integer({ min: 1, max: 4 })
      .chain((width) =>
        fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 5 }),
      );
    fc.assert(
      fc.property(table, ([header = [], ...rows]) => {
        expect(readCsv(toCsv(header, rows))).toEqual([header, ...rows].map((row) => row.map(notFormula)));
      }),
    );
  });

  it('gives readings that parse back the same in every style', () => {
    const rows = [
      [0, 0.125],
      [1 / 6, -14.583333333333334],
      [1e-7, 123456.789],
    ];
    for (const separator of [',', ';', '\t'] as const)
      for (const decimalMark of ['.', ','] as const) {
        const table = valueIn(parseReadings(toCsv(['turns', 'reading (mm)'], rows, { separator, decimalMark })));
        expect(table.rows.map((r) => [r.turns, r.reading])).toEqual(rows);
      }
  });
});

describe('directionsFromOrder', () => {
  it('calls the first by the first change, and a stand still by what was before', () => {
    expect(directionsFromOrder([3, 3, 2, 2, 5])).toEqual(['down', 'down', 'down', 'down', 'up']);
    expect(directionsFromOrder([1, 1, 2, 1])).toEqual(['up', 'up', 'up', 'down']);
    expect(directionsFromOrder([1, 1])).toEqual(['up', 'up']);
    expect(directionsFromOrder([])).toEqual([]);
  });
});
