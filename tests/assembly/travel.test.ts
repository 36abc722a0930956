/** Travel of the Foot with its lengths: against figures worked by hand, and against the relations that know one thread only. */
import { describe, expect, it } from 'vitest';
import { type Adjuster, standing } from '../../widgets/assembly/adjuster/adjuster.ts';
import { adjusterOf } from '../../widgets/assembly/adjuster/from-numbers.ts';
import { mm, stroke, turnsAvailable } from '../../widgets/engine/index.ts';
import type { OptionOf } from '../../widgets/input/choices.ts';
import { readThread } from '../../widgets/input/designation.ts';
import { valueIn } from '../support/results.ts';

const foot = (
  assembly: OptionOf<'assembly'>,
  A = 'M10x1.5',
  C = '3/8-16 UNC',
  arrangement: OptionOf<'arrangement'> = 'in line',
): Adjuster =>
  valueIn(
    adjusterOf({
      threads: { A: valueIn(readThread(A)), C: valueIn(readThread(C)) },
      values: { l_A: 20, b_A: 20, l_C: 20, b_C: 20, q_e: 1 },
      choices: { arrangement, assembly },
    }),
  );

describe('the Foot: threads 20 mm long, one diameter kept', () => {
  // Worked by hand: X_A = 20 − 10 = 10, 10/1.5 = 6.667 turns; X_C = 20 − 9.525 = 10.475, 10.475/1.5875 = 6.598 turns.
  it('gives 6.6 turns and 0.577 mm when both threads are put together at their middle', () => {
    const a = foot('both at mid-range');
    expect(a.turns).toBeCloseTo(10.475 / 1.5875, 9);
    expect(a.stroke.toFixed(3)).toBe('0.577');
    expect(a.best.limiting).toBe('C');
  });

  it('stops equally far each way: thread C runs out clockwise and comes home anticlockwise', () => {
    const a = foot('both at mid-range');
    expect(a.clockwise).toMatchObject({ at: 'C', bound: { kind: 'least engagement' } });
    expect(a.anticlockwise).toMatchObject({ at: 'C', bound: { kind: 'contact' } });
    expect(a.clockwise.n).toBeCloseTo(-a.anticlockwise.n, 9);
  });

  it('agrees with turns-available and stroke, which know nothing of where it was put together', () => {
    const n = valueIn(turnsAvailable.of({ X_A: mm(10), L_A: mm(1.5), X_C: mm(10.475), L_C: mm(1.5875) })).n_max;
    const a = foot('both screwed home');
    expect(a.best.turns).toBeCloseTo(n, 9);
    expect(a.best.stroke).toBeCloseTo(valueIn(stroke.of({ n_max: n, Delta: mm(0.0875) })).S, 9);
  });

  it('is locked solid when both threads are screwed home: A can only go out, C would have to go in', () => {
    const a = foot('both screwed home');
    expect(a.turns).toBeCloseTo(0, 9);
    for (const n of [a.anticlockwise.n, a.clockwise.n]) expect(Object.is(n, -0)).toBe(false);
  });

  it('has half its turns when only C was screwed home', () => {
    const a = foot('A at mid-range, C home');
    expect(a.turns).toBeCloseTo(10 / 1.5 / 2, 9);
    expect(a.anticlockwise.n).toBeCloseTo(0, 9);
  });

  it('stands at either stop when asked past it, and counts the turns left from where it stands', () => {
    const a = foot('both at mid-range');
    const half = 10.475 / 1.5875 / 2;
    const mid = standing(a, 0);
    expect([mid.engaged.A.toFixed(1), mid.engaged.C.toFixed(1)]).toEqual(['15.0', '14.8']);
    const home = standing(a, -99);
    expect(home.n).toBeCloseTo(-half, 9);
    expect(home.stopped).toBe(a.anticlockwise);
    expect(home.left.clockwise).toBeCloseTo(2 * half, 9);
    expect(home.motion.carried).toBeCloseTo(-0.0875 * half, 9);
    // Screwed home, C is engaged over its whole 20 mm, and A, which went the other way, over 15 mm less 1.5 mm a turn.
    expect(home.engaged.C).toBeCloseTo(20, 9);
    expect(home.engaged.A).toBeCloseTo(15 - 1.5 * half, 9);
    expect(standing(a, 2).out.A).toBeCloseTo(5 - 3, 9);
    expect(standing(a, 99).engaged.C).toBeCloseTo(9.525, 9);
    // A field keeps a millionth of a turn: asked for the stop as it is printed, no stop is met.
    for (const n of [half + 1e-6, -half - 1e-6]) expect(standing(a, n).stopped).toBeUndefined();
    expect(standing(a, half + 1e-4).stopped).toBe(a.clockwise);
  });
});

describe('hands and arrangements', () => {
  it('opposite hands screw both threads in together, so both home is an end of the full travel and no lock', () => {
    const a = foot('both screwed home', 'M10x1.5', 'M10x1.5 LH');
    expect(a.turns).toBeCloseTo(10 / 1.5, 9);
    expect(a.clockwise.n).toBeCloseTo(0, 9);
  });

  it('a shoulder above the carried nut turns the sense of thread C over', () => {
    const a = foot('both screwed home', 'M10x1.5', '3/8-16 UNC', 'one spindle, two nuts');
    expect(a.turns).toBeCloseTo(10.475 / 1.5875, 9);
    expect(a.clockwise.n).toBeCloseTo(0, 9);
  });
});
