/** The order in which an adjuster is put together, and what the indicator must show then. */
import { describe, expect, it } from 'vitest';
import { standing } from '../../widgets/assembly/adjuster/adjuster.ts';
import { type BuildStep, buildOrder } from '../../widgets/assembly/adjuster/build-order.ts';
import { readAdjuster } from '../../widgets/assembly/adjuster/text.ts';
import { stepSaid } from '../../widgets/figures/kit/build-steps.ts';
import { valueIn } from '../support/results.ts';

const RISER = [
  'base = coupling nut 3/8-16 UNC, 28.575 mm',
  'turned = adapter 3/8-16 UNC external 15 mm, M10x1.5 internal 15 mm blind, body 18 mm, hexagon 17 mm',
  'carried = socket screw M10x1.5, thread 20 mm, head 10 mm',
  'tip = ball 8.334 mm in 8 mm hexagon, stands 4 mm',
  'springs = 2 between base and carried, 12 N, 0.6 N/mm, at 15 mm',
];
const BENCH = { eps_A: 0.001, eps_C: 0.001, theta_h: (1.5 * Math.PI) / 180, e_g: 0.001, mu: 0.15 };
const adjuster = (rows: readonly string[]) => valueIn(readAdjuster(rows.join('\n')));
const order = (rows: readonly string[], bench = BENCH) => valueIn(buildOrder(adjuster(rows), bench));
const only = <D extends BuildStep['do']>(steps: readonly BuildStep[], name: D) =>
  steps.filter((s): s is Extract<BuildStep, { do: D }> => s.do === name);

describe('the order of work', () => {
  const steps = order(RISER);

  it('gauges before it presses, presses before it screws, and marks before it locks', () => {
    expect(steps.map((s) => s.do)).toEqual([
      'gauge',
      'gauge',
      'clean',
      'stone',
      'ball',
      'home',
      'back',
      'home',
      'back',
      'mark',
      'lock',
      'stretch',
      'height',
      'zero',
      'turn',
      'turn',
      'reverse',
    ]);
  });

  it('has the counts worked by hand', () => {
    // The socket screw is 5 mm longer than its blind thread, so 5 mm stand free when it is home and 7.5 when it is out 2.5.
    // 3/8-16: 5.475 mm usable, half of it in turns of 1.5875 mm; M10×1.5: 5 mm, half in turns of 1.5 mm. Six flats a turn.
    const [A, C] = only(steps, 'back');
    expect(A?.turns).toBeCloseTo(2.7375 / 1.5875, 9);
    expect(A?.steps).toBeCloseTo((6 * 2.7375) / 1.5875, 9);
    expect(A?.gap).toBeCloseTo(2.7375, 9);
    expect(C?.turns).toBeCloseTo(2.5 / 1.5, 9);
    expect(C?.gap).toBeCloseTo(7.5, 9);
    expect(only(steps, 'home').map((s) => s.engaged)).toEqual([15, 15]);
    expect(only(steps, 'ball')[0]?.interference).toBeCloseTo(0.334, 12);
    expect(only(steps, 'stretch')[0]?.stretch).toBeCloseTo(12 / 0.6, 9);
    expect(only(steps, 'height')[0]?.height).toBeCloseTo(66.8125 + 4, 9);
  });

  it('gauges by the limits of the classes', () => {
    // ISO 965-2, M10 6H/6g: pitch diameters 8.862 to 8.994 and 9.026 to 9.206.
    const M10 = only(steps, 'gauge')[1];
    expect(M10?.limits).toMatchObject({ screw: { min: 8.862, max: 8.994 }, nut: { min: 9.026, max: 9.206 } });
  });

  it('tells the play of the pieces as they are: measured diameters and coats, not the classes alone', () => {
    const play = (rows: readonly string[]) => only(order(rows), 'reverse')[0]?.play;
    const block = (nut: string, screw: string, coat = '') => [
      `base = tapped block ${nut}, 20 mm`,
      `turned = screw ${screw} 20 mm, head 6 mm${coat}`,
      'tip = flat',
    ];
    // Half of the square root of a third of the clearance, each flank: 0.1 mm of it is 0.0577 mm of play.
    expect(play(block('M10x1.5 D2 9.1', 'M10x1.5 d2 9.0'))).toBeCloseTo(0.1 / Math.sqrt(3), 6);
    const [bare, coated] = [
      play(block('M10x1.5-6H', 'M10x1.5-6g')),
      play(block('M10x1.5-6H', 'M10x1.5-6g', ', coat 5 µm')),
    ];
    // ISO 965-1: 32 µm of clearance at least; 5 µm of coat take 20 µm of it.
    expect(bare).toBeCloseTo(0.032 / Math.sqrt(3), 6);
    expect(coated).toBeCloseTo(0.012 / Math.sqrt(3), 6);
    const gauge = only(order(block('M10x1.5-6H', 'M10x1.5-6g', ', coat 5 µm')), 'gauge')[0];
    expect(gauge?.limits?.screw.max).toBeCloseTo(8.994 + 0.02, 6);
  });

  it('lets a reading pass by lead errors, hand and indicator at their worst, and no farther', () => {
    const [clockwise] = only(steps, 'turn');
    // 1.667 turns to the stop: one whole turn, −87.5 µm; leads of 1.5875 and 1.5 mm at 0.1 % are 3.0875 µm a turn.
    expect(clockwise?.turns).toBe(1);
    const room = 0.0030875 + 2 * ((0.0875 * 1.5) / 360 + 0.001);
    expect(clockwise?.go.min).toBeCloseTo(-0.0875 - room, 9);
    expect(clockwise?.go.max).toBeCloseTo(-0.0875 + room, 9);
    const reversed = only(steps, 'reverse')[0];
    expect((reversed?.go ?? 0) - (reversed?.lock ?? 0)).toBeCloseTo(2 * ((0.0875 * 1.5) / 360 + 0.001), 12);
  });

  it('never turns past a stop, for any divider', () => {
    for (const divider of ['hexagon', 'square', 'twelve points', 'knob 7', 'knob 100']) {
      const rows = [...RISER, `divider = ${divider}`];
      const a = adjuster(rows);
      for (const { turns } of only(order(rows), 'turn')) expect(standing(a, turns).stopped).toBeUndefined();
    }
  });

  it('leaves out what a plain screw has not', () => {
    const plain = order([
      'base = tapped block M10x1.5, 20 mm',
      'turned = screw M10x1.5 20 mm, head 6 mm',
      'tip = flat',
    ]);
    expect(plain.map((s) => s.do)).not.toContain('lock');
    expect(only(plain, 'back').map((s) => s.joint)).toEqual(['A']);
    // Its one lead, at 0.1 %.
    const [turn] = only(plain, 'turn');
    expect((turn?.go.max ?? 0) - (turn?.go.min ?? 0)).toBeCloseTo(
      2 * (Math.abs(turn?.turns ?? 0) * 1.5 * 0.001 + 2 * ((1.5 * 1.5) / 360 + 0.001)),
      9,
    );
  });
});

describe('the gap that the caliper checks', () => {
  const foot = (screw: number) => [
    'base = coupling nut M10x1.5, 30 mm',
    'turned = adapter M10x1.5 external 20 mm, 3/8-16 UNC internal 20 mm blind, body 24 mm, hexagon 17 mm',
    `carried = screw 3/8-16 UNC, thread ${screw} mm, head 6 mm`,
    'tip = flat',
  ];
  const counts = (rows: readonly string[]) => {
    const steps = order(rows);
    const [homes, backs] = [only(steps, 'home'), only(steps, 'back')];
    return { homes, backs, height: only(steps, 'height')[0]?.height ?? Number.NaN };
  };
  // Laid end to end: nut, gap, body, gap, head.
  const endToEnd = (gaps: readonly (number | undefined)[]) =>
    30 + (gaps[0] ?? Number.NaN) + 24 + (gaps[1] ?? Number.NaN) + 6;

  it('is between head and body where the screw is longer than its hole, and some is free at home', () => {
    const { homes, backs, height } = counts(foot(25));
    // 25 mm of screw in 20 mm of thread: it stops on the last thread, 5 mm before its head would.
    expect(homes.map((s) => s.gap)).toEqual([expect.closeTo(0, 9), expect.closeTo(5, 9)]);
    const [A, C] = backs;
    expect(C?.gap).toBeCloseTo(5 + (C?.turns ?? 0) * (25.4 / 16), 9);
    expect(A?.gap).toBeCloseTo((A?.turns ?? 0) * 1.5, 9);
    expect(endToEnd(backs.map((s) => s.gap))).toBeCloseTo(height, 9);
  });
  it('is nothing at home where the screw is shorter than its hole, and then the turns alone make it', () => {
    const { homes, backs, height } = counts(foot(18));
    expect(homes.map((s) => s.gap)).toEqual([expect.closeTo(0, 9), expect.closeTo(0, 9)]);
    expect(backs[1]?.gap).toBeCloseTo((backs[1]?.turns ?? 0) * (25.4 / 16), 9);
    expect(endToEnd(backs.map((s) => s.gap))).toBeCloseTo(height, 9);
  });
  it('is of thread A too: a screw on the floor of a blind base, and one that stands on the ground', () => {
    for (const base of [
      'tapped block M10x1.5 15 mm blind, height 30 mm',
      'tapped block M10x1.5, 15 mm, on the ground',
    ]) {
      const steps = order([`base = ${base}`, 'turned = screw M10x1.5 20 mm, head 6 mm', 'tip = flat']);
      const [[home], [back], [height]] = [only(steps, 'home'), only(steps, 'back'), only(steps, 'height')];
      expect(home?.gap).toBeCloseTo(5, 9);
      expect(back?.gap).toBeCloseTo(5 + (back?.turns ?? 0) * 1.5, 9);
      expect((base.includes('blind') ? 30 : 15) + (back?.gap ?? Number.NaN) + 6).toBeCloseTo(height?.height ?? 0, 9);
    }
  });
  it('is below the head where a nut runs up to it', () => {
    // The neck is longer than the thread, so home is under the head, not on the collar.
    const rows = [
      'base = tapped block M12x1.75, 16 mm',
      'turned = spindle M12x1.75 24 mm, M10x1.5 20 mm, neck 6 mm, head 8 mm',
      'carried = nut M10x1.5, 15 mm',
      'tip = flat',
    ];
    const a = adjuster(rows);
    const [home, back] = [only(order(rows), 'home')[1], only(order(rows), 'back')[1]];
    expect(a.C?.joint.home).toBe('to');
    expect(home?.gap).toBeCloseTo(0, 9);
    expect(back?.gap).toBeCloseTo((back?.turns ?? 0) * 1.5, 9);
  });
});

describe('what the lock allows on reversal', () => {
  const reverse = (lock: string, springs = RISER.at(-1) ?? '') =>
    only(order([...RISER.slice(0, -1), springs, lock]), 'reverse')[0];

  it('is in the limit of the reversal: the clearance of a key by the lead of thread C, 1.5 mm × 0.1 mm over 2π × 12 mm', () => {
    const still = reverse('lock = key at 12 mm, clearance 0.1 mm', 'springs = none');
    expect(still?.lock).toBeCloseTo((1.5 * 0.1) / (2 * Math.PI * 12), 9);
    const bare = reverse('lock = none', 'springs = none');
    expect(bare?.lock).toBe(0);
    expect((still?.go ?? 0) - (bare?.go ?? 0)).toBeCloseTo(0.0019894, 6);
  });

  it('grows by the wind-up under the springs, less with a stiffer key', () => {
    // F d₂/2 (tan(ρ + λ) + tan(ρ − λ)), over the stiffness, by the lead of thread C.
    const d2 = 10 - (3 * Math.sqrt(3) * 1.5) / 8;
    const [rho, lambda] = [Math.atan(0.15 / Math.cos(Math.PI / 6)), Math.atan(1.5 / (Math.PI * d2))];
    const torque = 6 * d2 * (Math.tan(rho + lambda) + Math.tan(rho - lambda));
    const gap = (1.5 * 0.1) / (2 * Math.PI * 12);
    const give = (kappa: number) => gap + (1.5 * torque) / (2 * Math.PI * kappa);
    expect(reverse('lock = key at 12 mm, clearance 0.1 mm, stiffness 5000 N·mm')?.lock).toBeCloseTo(give(5000), 7);
    expect(reverse('lock = key at 12 mm, clearance 0.1 mm, stiffness 20000 N·mm')?.lock).toBeCloseTo(give(20000), 7);
  });

  it('is not known where the row states no stiffness and no material: only the clearance is in the limit, and that is told', () => {
    const bare = reverse('lock = key at 12 mm, clearance 0.1 mm');
    expect(bare?.windsUnknown).toBe(true);
    expect(bare?.lock).toBeCloseTo((1.5 * 0.1) / (2 * Math.PI * 12), 9);
    expect(stepSaid(bare as never, adjuster(RISER), 'metric').count).toContain(
      'as much more as the lock winds up. That is not known',
    );
    // Without springs nothing winds it up; with a stiffness it is in the limit.
    expect(reverse('lock = key at 12 mm, clearance 0.1 mm', 'springs = none')?.windsUnknown).toBe(false);
    const stated = reverse('lock = key at 12 mm, clearance 0.1 mm, stiffness 5000 N·mm');
    expect(stated?.windsUnknown).toBe(false);
    expect(stepSaid(stated as never, adjuster(RISER), 'metric').count).not.toContain('not known');
  });
});
