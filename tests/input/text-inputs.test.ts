/** Lists typed as text: how a chapter declares one, and how its reading, note and canonical text go round. */
import { describe, expect, it } from 'vitest';
import { gather, readInput } from '../../widgets/assembly/numbers.ts';
import { TEXTS } from '../../widgets/input/texts.ts';
import { readInputLine } from '../../widgets/site/grammar.ts';
import { reasonIn, valueIn } from '../support/results.ts';

describe('a line with a list', () => {
  it('keeps commas, number sizes and a label', () => {
    expect(valueIn(readInputLine('taps = M4x0.7, #8-36 UNF, 3/8-16   # what is in the drawer'))).toEqual({
      kind: 'text',
      name: 'taps',
      label: 'what is in the drawer',
      start: 'M4x0.7, #8-36 UNF, 3/8-16',
    });
    expect(valueIn(readInputLine('series = coarse, UNC')).label).toBe('series you would buy from');
  });

  it('is refused where the chapter’s own list has a wrong entry, though a reader’s would be kept', () => {
    expect(reasonIn(readInputLine('taps = M4, M9'))).toContain('Left out: “M9”; the other one is kept.');
    expect(reasonIn(readInputLine('series = UNX'))).toContain('Read “UNX” as a series');
    expect(reasonIn(readInputLine('tapps = M4'))).toMatch(/not a symbol.*taps/);
  });
});

describe('a list as the reader types it', () => {
  const input = valueIn(readInputLine('taps = M4x0.7'));
  it('is kept as typed but for spaces, and reaches the widgets by name', () => {
    const value = valueIn(readInput(input, '  M8 ,  M9,\nfoo ', 'metric'));
    expect(value).toBe('M8 , M9; foo');
    expect(gather({ id: 'x', inputs: [input] }, new Map([['taps', value]])).texts).toEqual({ taps: 'M8 , M9; foo' });
  });

  it('notes what is left out, names each, and says why of the first', () => {
    expect(TEXTS.taps.note('M8, M9, foo')).toMatch(
      /^Left out: “M9”, “foo”; the other one is kept\. Read “M9”; a diameter of 9 mm has no coarse pitch/,
    );
    expect(TEXTS.taps.note('M8, M10')).toBe('');
    expect(reasonIn(readInput(input, 'foo', 'metric'))).toContain('“foo”');
    expect(valueIn(readInput(input, '', 'metric'))).toBe('');
  });
});
