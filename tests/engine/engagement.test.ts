/** Relations of one thread: what may be used up, what is engaged, where its middle is. */
import { describe, expect, it } from 'vitest';
import { engagementLeft, midMark, mm, plain, usableThread } from '../../widgets/engine/index.ts';
import { reasonIn, valueIn } from '../support/results.ts';

describe('steps of a worked example', () => {
  it('usable-thread and mid-mark give 10 mm and 3.33 turns for thread A of the Foot', () => {
    const { X } = valueIn(usableThread.of({ l_s: mm(20), q_e: plain(1), d: mm(10) }));
    expect(X).toBe(10);
    expect(valueIn(midMark.of({ X, L: mm(1.5) })).n_b.toFixed(2)).toBe('3.33');
  });
});

it('engaged is the nut, or what is left of the screw, and never less than nothing', () => {
  const left = (b: number, l: number, u: number) =>
    valueIn(engagementLeft.of({ b_s: mm(b), l_s: mm(l), u: mm(u) })).l_e;
  expect([left(8, 30, 0), left(8, 30, 22), left(8, 30, 26), left(8, 30, 31)]).toEqual([8, 8, 4, 0]);
});

it('a screw with nothing left to travel is refused', () => {
  expect(reasonIn(usableThread.of({ l_s: mm(10), q_e: plain(1), d: mm(10) }))).toContain('can’t keep 10 mm engaged');
});
