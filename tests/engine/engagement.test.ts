/** Engagement, end stops and the mid-range mark: against the Foot worked by hand, and against a walk along the thread. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  engagedAt,
  engagementLeft,
  type Joint,
  jointOf,
  midMark,
  mm,
  outAt,
  plain,
  standAt,
  stroke,
  travelOfPair,
  turnsAvailable,
  usableThread,
} from '../../widgets/engine/index.ts';
import { readThread } from '../../widgets/input/designation.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const joint = (text: string, screw: number, nut: number, kept: number, at: 'home' | 'middle' = 'middle', name = 'A') =>
  valueIn(jointOf(valueIn(readThread(text)), mm(screw), mm(nut), kept, at, name));

const foot = (at: 'home' | 'middle', atC = at): [Joint, Joint] => [
  joint('M10x1.5', 20, 20, 1, at),
  joint('3/8-16 UNC', 20, 20, 1, atC, 'C'),
];

describe('the Foot: threads 20 mm long, one diameter kept', () => {
  // Worked by hand: X_A = 20 − 10 = 10, 10/1.5 = 6.667 turns; X_C = 20 − 9.525 = 10.475, 10.475/1.5875 = 6.598 turns.
  it('gives 6.6 turns and 0.577 mm when both threads are put together at their middle', () => {
    const travel = valueIn(travelOfPair(...foot('middle'), 1));
    expect(travel.turns.toFixed(1)).toBe('6.6');
    expect(travel.turns).toBeCloseTo(10.475 / 1.5875, 12);
    expect(travel.stroke.toFixed(3)).toBe('0.577');
    expect(travel.best).toEqual({ turns: travel.turns, stroke: travel.stroke, limiting: 'C' });
  });

  it('stops equally far each way: thread C runs out clockwise and comes home anticlockwise', () => {
    const travel = valueIn(travelOfPair(...foot('middle'), 1));
    expect(travel.clockwise).toMatchObject({ thread: 'C', end: 'least engagement' });
    expect(travel.anticlockwise).toMatchObject({ thread: 'C', end: 'home' });
    expect(travel.clockwise.n).toBeCloseTo(-travel.anticlockwise.n, 12);
  });

  it('agrees with turns-available and stroke, which know nothing of where it was put together', () => {
    const n = valueIn(turnsAvailable.of({ X_A: mm(10), L_A: mm(1.5), X_C: mm(10.475), L_C: mm(1.5875) })).n_max;
    const S = valueIn(stroke.of({ n_max: n, Delta: mm(0.0875) })).S;
    const travel = valueIn(travelOfPair(...foot('middle'), 1));
    expect(travel.turns).toBeCloseTo(n, 12);
    expect(travel.stroke).toBeCloseTo(S, 12);
  });

  it('is locked solid when both threads are screwed home: A can only go out, C would have to go in', () => {
    const travel = valueIn(travelOfPair(...foot('home'), 1));
    expect([travel.turns, travel.stroke, travel.clockwise.n]).toEqual([0, 0, 0]);
    // Minus nought would print as a number that is not there.
    expect(Object.is(travel.anticlockwise.n, -0)).toBe(false);
    expect(travel.clockwise).toMatchObject({ thread: 'A', end: 'home' });
    expect(travel.anticlockwise).toMatchObject({ thread: 'C', end: 'home' });
    expect(travel.best.turns.toFixed(1)).toBe('6.6');
  });

  it('has half its turns when only C was screwed home', () => {
    const travel = valueIn(travelOfPair(...foot('middle', 'home'), 1));
    expect(travel.turns).toBeCloseTo(10 / 1.5 / 2, 12);
    expect(travel.anticlockwise.n).toBe(0);
  });

  it('keeps 15.0 and 14.8 mm engaged at the mark, and at a stop the least', () => {
    const [A, C] = foot('middle');
    const travel = valueIn(travelOfPair(A, C, 1));
    const mid = standAt(A, C, travel, 0);
    expect([mid.engaged.A.toFixed(1), mid.engaged.C.toFixed(1)]).toEqual(['15.0', '14.8']);
    const end = standAt(A, C, travel, 99);
    expect(end.stopped).toBe(travel.clockwise);
    expect(end.engaged.C).toBeCloseTo(9.525, 12);
    expect(end.left.clockwise).toBe(0);
    expect(end.motion).toBeCloseTo(travel.stroke / 2, 12);
  });

  it('stands at either stop when asked past it, and counts the turns left from where it stands', () => {
    const [A, C] = foot('middle');
    const travel = valueIn(travelOfPair(A, C, 1));
    const half = 10.475 / 1.5875 / 2;
    const home = standAt(A, C, travel, -99);
    expect(home).toMatchObject({ n: -half, stopped: travel.anticlockwise });
    expect(home.left.anticlockwise).toBe(0);
    expect(home.left.clockwise).toBeCloseTo(2 * half, 12);
    expect(home.motion).toBeCloseTo(-0.0875 * half, 12);
    // Screwed home, C is engaged over its whole 20 mm, and A, which went the other way, over 15 mm less 1.5 mm a turn.
    expect(home.engaged.C).toBeCloseTo(20, 12);
    expect(home.engaged.A).toBeCloseTo(15 - 1.5 * half, 12);
    const turned = standAt(A, C, travel, 2);
    expect(turned.left.clockwise).toBeCloseTo(half - 2, 12);
    expect(turned.left.anticlockwise).toBeCloseTo(half + 2, 12);
    expect(turned.out.A).toBeCloseTo(5 - 3, 12);
    expect(turned.out.C).toBeCloseTo(10.475 / 2 + 2 * 1.5875, 12);
    // A field keeps a millionth of a turn: asked for the stop as it is printed, no stop is met.
    for (const n of [half + 1e-6, -half - 1e-6]) expect(standAt(A, C, travel, n).stopped).toBeUndefined();
    expect(standAt(A, C, travel, half + 1e-4).stopped).toBe(travel.clockwise);
    expect(standAt(A, C, travel, -half - 1e-4).stopped).toBe(travel.anticlockwise);
  });
});

describe('hands and arrangements', () => {
  it('opposite hands screw both threads in together, so both home is an end of the full travel and no lock', () => {
    const [A, C] = [joint('M10x1.5', 20, 20, 1, 'home'), joint('M10x1.5 LH', 20, 20, 1, 'home', 'C')];
    const travel = valueIn(travelOfPair(A, C, 1));
    expect(travel.turns).toBeCloseTo(10 / 1.5, 12);
    expect(travel.clockwise.n).toBe(0);
  });

  it('a shoulder above the carried nut turns the sense of thread C over', () => {
    const travel = valueIn(travelOfPair(...foot('home'), -1));
    expect(travel.turns).toBeCloseTo(10.475 / 1.5875, 12);
    expect(travel.clockwise.n).toBe(0);
  });

  it('is mirrored when both hands are: clockwise and anticlockwise change places', () => {
    const right = valueIn(travelOfPair(...foot('middle', 'home'), 1));
    const left = valueIn(
      travelOfPair(joint('M10x1.5 LH', 20, 20, 1), joint('3/8-16 UNC LH', 20, 20, 1, 'home', 'C'), 1),
    );
    expect(left.clockwise.n).toBeCloseTo(-right.anticlockwise.n, 12);
    expect(left.anticlockwise.n).toBeCloseTo(-right.clockwise.n, 12);
  });

  it('neither thread ever passes home or its least engagement between the stops, and one is at its end at each stop', () => {
    const lengths = fc.integer({ min: 12, max: 60 });
    const at = fc.constantFrom('home' as const, 'middle' as const);
    const thread = fc.constantFrom('M10x1.5', '3/8-16', 'M8x1.25 LH', 'M6x1', '10 mm x 1.1 mm 2 start');
    fc.assert(
      fc.property(
        thread,
        thread,
        lengths,
        lengths,
        at,
        at,
        fc.constantFrom(1 as const, -1 as const),
        (a, c, l, b, i, j, opens) => {
          const [A, C] = [joint(a, l, b, 0.7, i), joint(c, b, l, 0.7, j, 'C')];
          const travel = valueIn(travelOfPair(A, C, opens));
          for (let k = 0; k <= 20; k++) {
            const n = travel.anticlockwise.n + (travel.turns * k) / 20;
            for (const [one, run] of [
              [A, travel.A],
              [C, travel.C],
            ] as const) {
              expect(outAt(one, run, n)).toBeGreaterThan(-1e-9);
              expect(outAt(one, run, n)).toBeLessThan(run.usable + 1e-9);
              expect(engagedAt(one, run, n)).toBeGreaterThan(one.kept - 1e-9);
            }
          }
          for (const stop of [travel.clockwise, travel.anticlockwise]) {
            const [one, run] = stop.thread === 'A' ? [A, travel.A] : [C, travel.C];
            expect(outAt(one, run, stop.n)).toBeCloseTo(stop.end === 'home' ? 0 : run.usable, 9);
          }
        },
      ),
    );
  });
});

describe('a nut shorter than its screw', () => {
  it('stays wholly engaged until the end of the screw comes to it', () => {
    const at = (u: number) => valueIn(engagementLeft.of({ b_s: mm(8), l_s: mm(20), u: mm(u) })).l_e;
    expect([0, 12, 13, 19, 25].map(at)).toEqual([8, 8, 7, 1, 0]);
  });

  it('travels by the length of the screw, not by that of the nut', () => {
    const travel = valueIn(travelOfPair(joint('M8x1.25', 30, 8, 1), joint('M8x1', 30, 8, 1, 'middle', 'C'), 1));
    expect(travel.A.usable).toBe(22);
    expect(travel.turns).toBeCloseTo(22 / 1.25, 12);
    expect(travel.best.limiting).toBe('A');
    expect(travel.best.stroke).toBeCloseTo((22 / 1.25) * 0.25, 12);
  });
});

describe('steps of a worked example', () => {
  it('usable-thread and mid-mark give 10 mm and 3.33 turns for thread A of the Foot', () => {
    const { X } = valueIn(usableThread.of({ l_s: mm(20), q_e: plain(1), d: mm(10) }));
    expect(X).toBe(10);
    expect(valueIn(midMark.of({ X, L: mm(1.5) })).n_b.toFixed(2)).toBe('3.33');
  });
});

describe('what can’t be built is refused', () => {
  const M10 = valueIn(readThread('M10x1.5'));
  it('a nut shorter than the engagement to be kept', () => {
    expect(reasonIn(jointOf(M10, mm(20), mm(8), 1, 'middle', 'A'))).toBe(
      'Thread A is to keep 10 mm engaged, but its nut is 8 mm long: lengthen the nut, or keep less.',
    );
  });
  it('a screw with nothing left to travel', () => {
    expect(reasonIn(jointOf(M10, mm(10), mm(12), 1, 'middle', 'C'))).toBe(
      'Thread C is to keep 10 mm engaged of a screw 10 mm long, which leaves nothing to travel: lengthen the screw, or keep less.',
    );
    expect(reasonIn(usableThread.of({ l_s: mm(10), q_e: plain(1), d: mm(10) }))).toContain('can’t keep 10 mm engaged');
  });
  it('lengths that are no lengths', () => {
    expect(reasonIn(jointOf(M10, mm(Number.NaN), mm(12), 1, 'middle', 'A'))).toContain('longer than nothing');
    expect(reasonIn(jointOf(M10, mm(20), mm(12), Number.NaN, 'middle', 'A'))).toContain('keep');
    for (const [screw, nut] of [
      [0, 12],
      [20, 0],
      [-20, 12],
      [20, -12],
      [1 / 0, 12],
      [20, 1 / 0],
    ] as const)
      expect(reasonIn(jointOf(M10, mm(screw), mm(nut), 0, 'middle', 'A')), `${screw} ${nut}`).toBe(
        'Thread A needs a screw and a nut longer than nothing: give both lengths.',
      );
    expect(reasonIn(jointOf(M10, mm(20), mm(12), -0.1, 'middle', 'A'))).toContain('is to keep −1 mm engaged');
  });
  it('but not a nut that is engaged to its last thread, nor one of which nothing need be kept', () => {
    expect(valueIn(jointOf(M10, mm(20), mm(10), 1, 'middle', 'A'))).toMatchObject({ kept: 10, out: 5 });
    expect(valueIn(jointOf(M10, mm(20), mm(10), 0, 'middle', 'A'))).toMatchObject({ kept: 0, out: 10 });
  });
  it('in thread C as in thread A', () => {
    const [A, C] = foot('middle');
    expect(reasonIn(travelOfPair(A, { ...C, nut: mm(0) }, 1))).toContain('Thread C needs a screw and a nut');
    expect(reasonIn(travelOfPair({ ...A, nut: mm(0) }, C, 1))).toContain('Thread A needs a screw and a nut');
    expect(reasonIn(travelOfPair(A, { ...C, out: mm(-0.1) }, 1))).toContain('Thread C is put together −0.1 mm out');
    expect(valueIn(travelOfPair({ ...A, out: mm(10) }, C, 1)).A).toMatchObject({ usable: 10, to: 10 / 1.5 });
  });
  it('an assembly outside the thread', () => {
    const A = { ...foot('middle')[0], out: mm(11) };
    expect(reasonIn(travelOfPair(A, foot('middle')[1], 1))).toBe(
      'Thread A is put together 11 mm out from home; it may stand from 0 to 10 mm out: begin within that.',
    );
  });
});
