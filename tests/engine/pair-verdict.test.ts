/** The judgement of a pair at its lines: gain, wall, cores, and what has to be bought. */

import { describe, expect, it } from 'vitest';
import { remarkText } from '#words/pair.ts';
import { type Candidate, type Filter, judge, mm, type PairRow, type Thread } from '../../widgets/engine/index.ts';
import { readThread } from '../../widgets/input/designation.ts';
import { valueIn } from '../support/results.ts';

const thread = (text: string): Thread => valueIn(readThread(text));
const candidate = (text: string): Candidate => ({
  thread: thread(text),
  series: 'own',
  owned: { right: true, left: true },
});

/** What the judgement looks at; the rest of a row does not matter to it. */
const verdict = (a: string, c: string, facts: Partial<PairRow> = {}, fails: readonly Filter[] = []) =>
  judge(
    { A: thread(a), C: thread(c), arrangement: 'in line', gain: 10, wall: undefined, toBuy: [], ...facts } as Omit<
      PairRow,
      'verdict'
    >,
    [candidate(a), candidate(c)],
    fails,
  );
const [A, C] = ['M10x1.5', '3/8-16 UNC'] as const;
const OWNED = { code: 'all-owned', values: {} };

describe('the words of a remark', () => {
  it('are short, with the sign and the names of what they speak of', () => {
    for (const [remark, text] of [
      [{ code: 'off-the-motion', values: { off: 12.003 } }, '+1200 % off the wanted motion'],
      [{ code: 'off-the-motion', values: { off: -0.4 } }, '−40 % off the wanted motion'],
      [{ code: 'misses', values: { filter: 'owned' } }, 'misses what you own'],
      [
        { code: 'touchy', values: { leadError: 0.001, ofMotion: 0.1 } },
        '0.1 % of lead error in one thread is 10 % of the motion',
      ],
      [{ code: 'thin-wall', values: {} }, 'thin wall, less than a pitch'],
      [{ code: 'one-core-weaker', values: {} }, 'one core is much weaker'],
      [{ code: 'left-hand-to-order', values: { threads: ['M10×1.5 LH'] } }, 'left-hand tools to order: M10×1.5 LH'],
      [{ code: 'to-buy', values: { threads: ['M10×1.5', '3/8-16 UNC'] } }, 'to buy: M10×1.5 and 3/8-16 UNC'],
      [{ code: 'all-owned', values: {} }, 'both in your drawer'],
    ] as const)
      expect(remarkText(remark)).toBe(text);
  });
});

describe('judge', () => {
  it('draws its lines at a gain of 25 and of 100, which are 2.5 % and 10 % of the motion', () => {
    expect(verdict(A, C, { gain: 25 })).toEqual({ grade: 'sound', remarks: [OWNED] });
    expect(verdict(A, C, { gain: 25.1 }).grade).toBe('with care');
    expect(verdict(A, C, { gain: 100 })).toEqual({
      grade: 'with care',
      remarks: [{ code: 'touchy', values: { leadError: 0.001, ofMotion: 0.1 } }, OWNED],
    });
    expect(verdict(A, C, { gain: 100.1 }).grade).toBe('delicate');
  });

  it('calls a sleeve thin whose wall is less than the pitch outside, and only a sleeve', () => {
    const wall = (limit: number) => ({ wall: { basic: mm(2), limit: mm(limit) } });
    expect(verdict('M16x1.5', A, { arrangement: 'nested', ...wall(1.5) }).grade).toBe('sound');
    expect(verdict('M16x1.5', A, { arrangement: 'nested', ...wall(1.49) })).toEqual({
      grade: 'with care',
      remarks: [{ code: 'thin-wall', values: {} }, OWNED],
    });
    expect(verdict('M16x1.5', A, wall(1.49)).grade).toBe('sound');
    expect(verdict('M16x1.5', A, { arrangement: 'nested' }).grade).toBe('sound');
  });

  it('calls one core much the weaker below half the other across, whichever it is, and not in a sleeve', () => {
    // Cores by hand: M10×1.5 has 8.16 mm, M20×2.5 16.93 mm, M20×3 16.32 mm, twice the first and a little less.
    for (const [a, c] of [
      ['M20x2.5', A],
      [A, 'M20x2.5'],
    ] as const) {
      expect(verdict(a, c).remarks[0]?.code).toBe('one-core-weaker');
      expect(verdict(a, c).grade).toBe('with care');
      expect(verdict(a, c, { arrangement: 'nested' }).grade).toBe('sound');
    }
    expect(verdict('M20x3', A).grade).toBe('sound');
  });

  it('tells left-hand tools to order from tools to buy; only the former ask for care', () => {
    expect(verdict(A, C, { toBuy: [thread(A), thread(C)] })).toEqual({
      grade: 'sound',
      remarks: [{ code: 'to-buy', values: { threads: ['M10×1.5', '3/8-16 UNC'] } }],
    });
    expect(verdict(A, C, { toBuy: [thread('M10x1.5 LH'), thread(C)] })).toEqual({
      grade: 'with care',
      remarks: [
        { code: 'left-hand-to-order', values: { threads: ['M10×1.5 LH'] } },
        { code: 'to-buy', values: { threads: ['3/8-16 UNC'] } },
      ],
    });
  });

  it('calls no pair sound that misses what was asked: it is the nearest, and the miss stands first', () => {
    expect(verdict(A, C, { off: 12.003 }, ['motion', 'owned'])).toEqual({
      grade: 'nearest',
      remarks: [
        { code: 'off-the-motion', values: { off: 12.003 } },
        { code: 'misses', values: { filter: 'owned' } },
        OWNED,
      ],
    });
    expect(verdict(A, C, { off: -0.4, gain: 200 }, ['motion'])).toMatchObject({ grade: 'nearest' });
    expect(verdict(A, C, { off: -0.4 }, ['motion']).remarks[0]?.values).toEqual({ off: -0.4 });
    expect(verdict(A, C, { off: 0.01 }, ['load'])).toMatchObject({ grade: 'nearest' });
  });

  it('lets no lesser remark better a delicate pair', () => {
    expect(verdict('M20x2.5', A, { gain: 200, toBuy: [thread('M10x1.5 LH')] })).toMatchObject({ grade: 'delicate' });
  });
});
