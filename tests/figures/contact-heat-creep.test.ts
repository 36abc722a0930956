/** Ball and seat, and the chart of drift, against the engine and against figures worked elsewhere. */

import { describe, expect, it } from 'vitest';
import type { Numbers } from '../../widgets/assembly/numbers.ts';
import { ballAndSeat } from '../../widgets/figures/ball-and-seat/ball-and-seat.ts';
import { driftBars } from '../../widgets/figures/drift-bars/drift-bars.ts';
import { readThread } from '../../widgets/input/designation.ts';
import { still } from '../support/figures.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const plainSpaces = (text: string) => text.replace(/\u00a0/g, ' ');
const tip = (rests: string, values: Numbers['values'] = {}, seat = 'hardened ball steel'): Numbers => ({
  threads: {},
  values: { F: 50, R: 3, beta_v: Math.PI / 4, R_c: 3, e_r: 7, ...values },
  choices: { rests, seat } as Numbers['choices'],
});
const centres = (svg: string) =>
  [...svg.matchAll(/class="seat-dot" cx="([\d.]+)" cy="([\d.]+)"/g)].map((m) => [Number(m[1]), Number(m[2])]);

describe('ball-and-seat', () => {
  it('says the approach of a 3 mm ball on steel under 50 N, 3.28 µm by Hertz, and no yield below 114 N', () => {
    expect(plainSpaces(still(ballAndSeat).caption(tip('on a flat'), 'metric'))).toContain(
      'sinks by 3.278 µm at a peak pressure of 2430 MPa',
    );
  });

  it('touches once on a flat, twice in vee, rollers and cone, mirrored and on the ball', () => {
    const count = { 'on a flat': 1, 'in a vee': 2, 'on two rollers': 2, 'in a cone': 2 };
    for (const [rests, n] of Object.entries(count)) {
      const dots = centres(valueIn(still(ballAndSeat).draw(tip(rests), 'metric')));
      expect(dots.length, rests).toBe(n);
      for (const [x = 0, y = 0] of dots) expect(Math.hypot(x - 160, y - 128), rests).toBeCloseTo(78, 1);
      if (n === 2) expect((dots[0]?.[0] ?? 0) + (dots[1]?.[0] ?? 0)).toBeCloseTo(320, 1);
    }
  });

  it('puts the contacts of a 60° vee 60° from straight down', () => {
    const [[x = 0, y = 0] = []] = centres(
      valueIn(still(ballAndSeat).draw(tip('in a vee', { beta_v: Math.PI / 6 }), 'metric')),
    );
    expect(Math.atan2(x - 160, y - 128)).toBeCloseTo(Math.PI / 3, 3);
  });

  it('gives no elastic figure past first yield, and says that it does not hold', () => {
    const soft = tip('on a flat', {}, 'aluminium 6061-T6');
    expect(plainSpaces(still(ballAndSeat).caption(soft, 'metric'))).toContain('past first yield, which came at 1.19 N');
    expect(valueIn(still(ballAndSeat).draw(soft, 'metric'))).toContain('not elastic');
  });

  it.each([
    ['rollers that run into each other', { e_r: 5 }, 'run into each other'],
    ['rollers too far apart', { e_r: 12.1 }, 'falls through'],
  ])('refuses %s', (_name, values, says) => {
    expect(reasonIn(still(ballAndSeat).draw(tip('on two rollers', values), 'metric'))).toContain(says);
  });
});

describe('drift-bars', () => {
  const drift = (A: string, C: string, values: Numbers['values'] = {}): Numbers => ({
    threads: { A: valueIn(readThread(A)), C: valueIn(readThread(C)) },
    values: {
      k_d: 50,
      F: 20,
      R: 3,
      l: 40,
      d_3: 3.1,
      Delta_T: 1,
      Delta_Tw: 8,
      t: 1 / 60,
      tau_w: 4 / 60,
      c_d: 0,
      t_0: 1 / 60,
      ...values,
    },
    choices: { divider: 'hexagon', seat: 'hardened ball steel', path: 'steel' },
  });
  const motions = (numbers: Numbers) =>
    still(driftBars)
      .table(numbers, 'metric')
      .rows.map((r) => plainSpaces(r[1] ?? ''));

  it('gives the figures of the chapter: tip, shank, room, hand', () => {
    // 20 N on a core of 3.1 mm, 40 mm long, E = 210 GPa: F l/(E A) = 0.505 µm.
    expect(motions(drift('M4x0.7', '8-36')).slice(0, 4)).toEqual(['1.78 µm', '0.505 µm', '0.460 µm', '0.814 µm']);
  });

  it('does not change with the pair, only what it is measured by does', () => {
    expect(motions(drift('M10x1.5', '3/8-16'))).toEqual(motions(drift('M4x0.7', '8-36')));
    expect(still(driftBars).table(drift('M10x1.5', '3/8-16'), 'metric').rows[2]?.[2]).toBe('0.0315');
    expect(still(driftBars).table(drift('M4x0.7', '8-36'), 'metric').rows[2]?.[2]).toBe('0.497');
  });

  it('adds creep with the logarithm of time', () => {
    const creep = (t: number) => motions(drift('M4x0.7', '8-36', { c_d: 0.004, t }))[4];
    // t/t0 = 9 and 99: one and two tenfold times.
    expect([creep(9 / 60), creep(99 / 60)]).toEqual(['4.00 µm', '8.00 µm']);
  });
});
