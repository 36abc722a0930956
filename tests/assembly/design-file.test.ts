/** Files of designs: what is written reads back, and what of a strange file is taken or refused. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  DESIGN_FORMAT,
  DESIGN_VERSION,
  type Design,
  MOST_DESIGNS,
  nameOf,
  outOfUse,
  readDesigns,
  tooLong,
  writeDesigns,
} from '../../widgets/assembly/design-file.ts';
import { reasonOf } from '../../widgets/words/reason.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const FOOT: Design = {
  name: 'Foot, left rear',
  numbers: {
    A: 'M10×1.5',
    C: '3/8-16 UNC',
    arrangement: 'in line',
    X_A: '10 mm',
    mu: '0.15',
    t: '2 h',
    taps: 'M4, 8-36',
    n: '−2.5',
  },
};
const file = (designs: unknown, version: unknown = DESIGN_VERSION, format: unknown = DESIGN_FORMAT) =>
  JSON.stringify({ format, version, designs });

describe('writeDesigns and readDesigns', () => {
  it('keep the ± behind a number, and leave out one that its field would refuse', () => {
    const design = { name: 'Doubted', numbers: { A: 'M10×1.5 ± 3 µm', l_A: '20 mm ± 0.1 mm' } };
    expect(valueIn(readDesigns(writeDesigns([design])))).toEqual({ designs: [design], notes: [] });
    const wrong = { name: 'Wrong', numbers: { l_A: '20 mm ± 0' } };
    expect(valueIn(readDesigns(writeDesigns([wrong]))).designs[0]?.numbers).toEqual({});
  });

  it('read back what was written, every kind of number in it', () => {
    expect(valueIn(readDesigns(writeDesigns([FOOT])))).toEqual({ designs: [FOOT], notes: [] });
  });

  it('read a file of the documented form', () => {
    const text = `{ "format": "differential-screw-designs", "version": 1,
      "designs": [ { "name": "Foot", "numbers": { "A": "M10×1.5", "C": "3/8-16 UNC", "arrangement": "in line", "l_A": "20 mm" } } ] }`;
    expect(valueIn(readDesigns(text)).designs[0]?.numbers.l_A).toBe('20 mm');
  });

  it('still read usable lengths, and say that the sheet works them out where the lengths of the threads are missing', () => {
    const old = { name: 'Old', numbers: { A: 'M8', X_A: '10 mm', X_C: '12 mm' } };
    expect(valueIn(readDesigns(writeDesigns([old])))).toEqual({ designs: [old], notes: [] });
    expect(outOfUse(old)).toMatch(/^It states X_A and X_C, .* type the lengths of both screws and nuts there/);
    expect(outOfUse({ ...old, numbers: { ...old.numbers, l_A: '20 mm' } })).toMatch(
      /^It states X_C, .* nut of thread C/,
    );
    expect(outOfUse({ name: 'New', numbers: { A: 'M8', l_A: '20 mm', l_C: '20 mm' } })).toBe('');
  });

  it('keep markup in a name as text, on one line, cut at sixty characters', () => {
    expect(nameOf('  <img src=x\n onerror=alert(1)>  ')).toBe('<img src=x onerror=alert(1)>');
    expect([...nameOf('é'.repeat(500))].length).toBe(60);
  });

  const LEFT_OUT: [key: string, text: unknown, says: string][] = [
    ['A', 'M10x-1', 'A:'],
    ['arrangement', 'sideways', 'choose in line, nested'],
    ['X_A', '-4 mm', 'Usable length of thread A'],
    ['X_A', 'NaN', 'not a number'],
    ['mu', '5', 'Coefficient of friction'],
    ['t', '24', 'unit of time'],
    ['wings', '2', 'is not a number of this notebook'],
    ['__proto__x', '2', 'is not a number of this notebook'],
    ['n', 3, 'kept as text'],
  ];
  it.each(LEFT_OUT)('leave out %s = %j, say why, and keep the rest', (key, text, says) => {
    const { designs, notes } = valueIn(readDesigns(file([{ name: 'Foot', numbers: { C: 'M8', [key]: text } }])));
    expect(designs).toEqual([{ name: 'Foot', numbers: { C: 'M8' } }]);
    expect(notes[0]).toContain('Of “Foot” one number was left out');
    expect(notes[0]).toContain(says);
  });

  const REFUSED: [name: string, text: string, says: string][] = [
    ['half a file', writeDesigns([FOOT]).slice(0, 90), 'not JSON or is cut off'],
    ['a picture', '\u0089PNG\r\n', 'not JSON or is cut off'],
    ['JSON of another kind', '{"designs":[]}', 'JSON of another kind'],
    ['a bare list', '[]', 'JSON of another kind'],
    ['a newer version', file([], 4), 'reads versions up to 3'],
    ['a version that is none', file([], 'one'), 'The file says version one'],
    ['no version', `{"format":"${DESIGN_FORMAT}","designs":[]}`, 'The file says no version; this notebook reads'],
    ['no list', file({}), 'holds no list'],
    ['too many', file(Array.from({ length: MOST_DESIGNS + 1 }, () => FOOT)), `at most ${MOST_DESIGNS}`],
    ['a huge file', 'x'.repeat(2_000_001), 'has at most 2\u202f000\u202f000.'],
  ];
  it.each(REFUSED)('refuse %s in one sentence', (_name, text, says) => {
    expect(reasonIn(readDesigns(text))).toContain(says);
  });

  it('reads files of the first version as they were', () => {
    expect(valueIn(readDesigns(file([FOOT], 1))).designs).toEqual(valueIn(readDesigns(file([FOOT]))).designs);
  });

  it('leave out a design without numbers or name and read the others', () => {
    const { designs, notes } = valueIn(readDesigns(file([null, { name: '', numbers: {} }, FOOT])));
    expect(designs.map((d) => d.name)).toEqual([FOOT.name]);
    expect(notes).toEqual(['Design 1 was left out: it has no numbers.', '2 designs were left out in all.']);
  });

  it('of many numbers left out name the first and count them, in all the designs together', () => {
    const wings = Object.fromEntries(Array.from({ length: 12 }, (_, i) => [`wings${i}`, '2']));
    const { designs, notes } = valueIn(
      readDesigns(file(Array.from({ length: 40 }, (_, i) => ({ name: `d${i}`, numbers: { A: 'M8×1.25', ...wings } })))),
    );
    expect(designs.length).toBe(40);
    expect(notes).toEqual([
      '480 numbers were left out. The first, of “d0”: “wings0” is not a number of this notebook.',
    ]);
  });

  it('say of a file that is too large how large it is, before it is read', () => {
    expect(tooLong(50_000_000, 'bytes')).toMatchObject({
      code: 'design-file-too-long',
      values: { length: '50\u202f000\u202f000', of: 'bytes' },
    });
    // Any text that is short enough is so in bytes, whatever its letters.
    expect(tooLong(Buffer.byteLength('€'.repeat(2_000_000)), 'bytes')).toBeUndefined();
  });

  it('never throw, whatever JSON stands in the file', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        for (const text of [JSON.stringify(value), file(value), file([value]), file([{ name: 'x', numbers: value }])]) {
          const read = readDesigns(text);
          if (!read.ok) expect(reasonOf(read)).toMatch(/^[A-Z].{20,}\.$/s);
        }
      }),
    );
  });
});
