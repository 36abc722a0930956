/** Lists of threads and of series as makers type them. */

import { describe, expect, it } from 'vitest';
import { LONGEST_LIST, readSeriesList, readThreadList } from '../../widgets/input/thread-list.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const names = (text: string) => valueIn(readThreadList(text)).threads.map((t) => t.designation);

describe('readThreadList', () => {
  it('parts threads at commas, semicolons and lines', () => {
    expect(names('M4x0.7, 8-36 UNF; M10\n3/8-16')).toEqual(['M4×0.7', '#8-36 UNF', 'M10×1.5', '3/8-16 UNC']);
    expect(names('')).toEqual([]);
    expect(names(' , ; ')).toEqual([]);
  });

  it('knows a decimal comma from a comma between threads', () => {
    expect(names('M10x1,5, M4x0,7')).toEqual(['M10×1.5', 'M4×0.7']);
    expect(names('M4x0.7,8-36 UNF')).toEqual(['M4×0.7', '#8-36 UNF']);
    expect(names('M4x0,7,10-32 UNF')).toEqual(['M4×0.7', '#10-32 UNF']);
    expect(names('M8,3/8-16,M6')).toEqual(['M8×1.25', '3/8-16 UNC', 'M6×1']);
  });

  it('keeps hands, classes and starts', () => {
    expect(names('M10x1.5-6g LH, 1/4-20 2 starts')).toEqual(['M10×1.5-6g LH', '1/4-20 UNC 2-start']);
  });

  it('keeps the good ones and names each wrong one: no coarse pitch, too coarse, not a thread', () => {
    const list = valueIn(readThreadList('M4, M9, M10x9, foo'));
    expect(list.threads.map((t) => t.designation)).toEqual(['M4×0.7']);
    expect(list.wrong.map((w) => w.typed)).toEqual(['M9', 'M10x9', 'foo']);
    expect(list.wrong.map((w) => w.why)).toMatchObject([
      { code: 'no-coarse-pitch', values: { d: 9 } },
      { code: 'pitch-without-core', values: { P: 9, d: 10 } },
      { code: 'not-a-thread', values: { text: ' foo' } },
    ]);
  });

  it('refuses a list without a single thread, and one that is too long', () => {
    expect(reasonIn(readThreadList('M9'))).toContain('has no coarse pitch');
    expect(reasonIn(readThreadList('M9, M11'))).toContain('None of the other 1 is a thread either.');
    expect(reasonIn(readThreadList('M4,'.repeat(LONGEST_LIST)))).toContain(
      `a list is at most ${LONGEST_LIST} characters`,
    );
    expect(reasonIn(readThreadList('M4,'.repeat(61)))).toBe(
      'Read 61 threads; a list holds at most 60: leave some out.',
    );
    expect(names('M4,'.repeat(60))).toHaveLength(60);
    expect(names('M4'.padEnd(LONGEST_LIST, ', '))).toEqual(['M4×0.7']);
    expect(reasonIn(readThreadList('M9'))).not.toContain('None of the other');
  });
});

describe('readSeriesList', () => {
  it('reads names in any case and order, and words for several', () => {
    expect(valueIn(readSeriesList('unf, Coarse'))).toEqual(['coarse', 'UNF']);
    expect(valueIn(readSeriesList('ISO fine'))).toEqual(['fine']);
    expect(valueIn(readSeriesList('metric; UNEF'))).toEqual(['coarse', 'fine', 'UNEF']);
    expect(valueIn(readSeriesList('all'))).toHaveLength(5);
    expect(valueIn(readSeriesList('none'))).toEqual([]);
    expect(valueIn(readSeriesList('ISO'))).toEqual(['coarse', 'fine']);
    expect(valueIn(readSeriesList('inch'))).toEqual(['UNC', 'UNF', 'UNEF']);
  });

  it('names an unknown series and lists those that are here', () => {
    expect(reasonIn(readSeriesList('coarse, UNX'))).toBe(
      'Read “UNX” as a series of threads, which is not one here: name coarse, fine, UNC, UNF and UNEF, or metric, inch, all, none.',
    );
    expect(reasonIn(readSeriesList('constructor'))).toContain('“constructor”');
    expect(reasonIn(readSeriesList('  '))).toContain('Nothing was typed');
    expect(reasonIn(readSeriesList('x'.repeat(1000)))).toContain('(1000 characters)');
    expect(reasonIn(readSeriesList('all'.padEnd(LONGEST_LIST + 1)))).toContain('name series');
    expect(valueIn(readSeriesList('all'.padEnd(LONGEST_LIST)))).toHaveLength(5);
    // A metric series has a word before it, an inch one has not.
    expect(reasonIn(readSeriesList('iso UNF'))).toContain('“iso UNF”');
    expect(valueIn(readSeriesList('metric coarse, iso 261; Unified'))).toEqual([
      'coarse',
      'fine',
      'UNC',
      'UNF',
      'UNEF',
    ]);
  });
});
