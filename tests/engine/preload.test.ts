/** Preload: forces on both threads against an independent stack of free bodies, verdicts and least preload by search. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { threadVerdictText } from '#words/force.ts';
import {
  at,
  fitRetention,
  hours,
  invert,
  jointShare,
  leastPreload,
  mm,
  type Newtons,
  type NewtonsPerMillimetre,
  newtons,
  newtonsPerMillimetre,
  type Part,
  type PreloadCase,
  type PreloadSpring,
  partMotion,
  plain,
  preloadVerdict,
  relaxed,
  retainedForce,
  springAt,
  springForce,
  threadForces,
  timeToFall,
} from '../../widgets/engine/index.ts';
import { mechanicsRow } from '../support/mechanics.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const spring = (lower: Part, upper: Part, kind: 'push' | 'pull', force = 20, rate = 2): PreloadSpring => ({
  lower,
  upper,
  kind,
  force,
  rate,
});
/** The Foot, M10×1.5 with 3/8-16 UNC: 87.5 µm a turn. */
const foot = (over: Partial<PreloadCase> = {}): PreloadCase => ({
  h_A: 1,
  L_A: 1.5,
  h_C: 1,
  L_C: 25.4 / 16,
  springs: [],
  weightTurned: 0.5,
  weightCarried: 1,
  attitude: 1,
  load: { least: 0, most: 50 },
  from: 0,
  to: 5,
  margin: 0,
  ...over,
});

describe('ends of a spring', () => {
  it('move with their parts: base not at all, turned part by its lead, carried part by the net lead', () => {
    expect(partMotion('base', 3, foot())).toBe(0);
    expect(partMotion('turned', 3, foot())).toBe(-4.5);
    expect(partMotion('carried', 3, foot())).toBeCloseTo(0.2625, 12);
    for (const part of ['base', 'turned', 'carried'] as const)
      for (const h of [1, -1] as const) expect(partMotion(part, 0, foot({ h_A: h, h_C: h }))).toBe(0);
  });

  it('load a push spring as they near and a pull spring as they part', () => {
    // Clockwise the turned part sinks 1.5 mm a turn towards the base, the carried part rises 0.0875 mm.
    expect(springAt(spring('base', 'turned', 'push'), 1, foot())).toBeCloseTo(20 + 2 * 1.5, 12);
    expect(springAt(spring('base', 'turned', 'pull'), 1, foot())).toBeCloseTo(20 - 2 * 1.5, 12);
    expect(springAt(spring('base', 'carried', 'pull'), 1, foot())).toBeCloseTo(20 + 2 * 0.0875, 12);
    expect(springAt(spring('turned', 'carried', 'pull'), 1, foot())).toBeCloseTo(20 + 2 * 1.5875, 12);
    expect(springAt(spring('turned', 'carried', 'push'), 1, foot())).toBeCloseTo(20 - 2 * 1.5875, 12);
  });

  it('have no force once slack', () => {
    expect(springAt(spring('base', 'turned', 'pull'), 7, foot())).toBe(0);
    expect(reasonIn(springForce.of({ F_0: newtons(20), k_s: newtonsPerMillimetre(2), u_s: mm(-11) }))).toContain(
      'no force left after 10 mm',
    );
    expect(valueIn(springForce.of({ F_0: newtons(20), k_s: newtonsPerMillimetre(2), u_s: mm(-10) })).F_s).toBe(0);
  });
});

describe('which thread a spring seats', () => {
  // Where the spring is, and on which flanks it seats A and C: + pressed, − pulled, 0 not at all.
  const PLACES = [
    [spring('base', 'turned', 'pull'), 1, 0],
    [spring('base', 'turned', 'push'), -1, 0],
    [spring('base', 'carried', 'pull'), 1, 1],
    [spring('base', 'carried', 'push'), -1, -1],
    [spring('turned', 'carried', 'pull'), 0, 1],
    [spring('turned', 'carried', 'push'), 0, -1],
    [spring('carried', 'turned', 'push'), 0, 1],
    [spring('carried', 'base', 'push'), 1, 1],
  ] as const;

  it.each(PLACES)('%o seats A %i and C %i', (s, A, C) => {
    const weightless = foot({ springs: [s], weightTurned: 0, weightCarried: 0 });
    const forces = threadForces(weightless, 0, 0);
    expect(forces.A).toBeCloseTo(20 * A, 12);
    expect(forces.C).toBeCloseTo(20 * C, 12);
  });

  it('balances every part: threads, springs, weights and load sum to nought', () => {
    const parts = fc.constantFrom<Part>('base', 'turned', 'carried');
    const springs = fc.array(
      fc.record({
        lower: parts,
        upper: parts,
        kind: fc.constantFrom<'push' | 'pull'>('push', 'pull'),
        force: fc.double({ min: 0, max: 50, noNaN: true }),
        rate: fc.double({ min: 0.01, max: 5, noNaN: true }),
      }),
      { maxLength: 3 },
    );
    fc.assert(
      fc.property(
        springs,
        fc.double({ min: -3, max: 3, noNaN: true }),
        fc.double({ min: -90, max: 90, noNaN: true }),
        (list, n, W) => {
          const given = foot({ springs: list.filter((s) => s.lower !== s.upper), attitude: -0.5 });
          const { A, C } = threadForces(given, n, W);
          // Cut below the carried part, then below the turned part: everything above must be held there.
          const held = { carried: -W + 0.5 * 1, turned: 0.5 * 0.5 };
          for (const s of given.springs) {
            const F = springAt(s, n, given) * (s.kind === 'push' ? 1 : -1);
            if (s.upper !== 'base') held[s.upper] += F;
            if (s.lower !== 'base') held[s.lower] -= F;
          }
          expect(C + held.carried).toBeCloseTo(0, 9);
          expect(A - C + held.turned).toBeCloseTo(0, 9);
        },
      ),
    );
  });
});

describe('preloadVerdict', () => {
  it('leaves thread C to the load where the spring is between base and turned part', () => {
    const verdict = valueIn(
      preloadVerdict(foot({ springs: [spring('base', 'turned', 'push', 60, 2)], load: { least: -10, most: 20 } })),
    );
    expect(verdict.A.kind).toBe('seated');
    expect(verdict.C.kind).toBe('lets go');
    expect(threadVerdictText('C', verdict.C, 1)).toBe(
      'Thread C: the flanks open at 0 turns, the carried part at 0 mm, under a load of −1 N (pulling away from the base).',
    );
  });

  it('is held by weight upright, by nothing on its side, on the pulled flanks upside down', () => {
    const still = { load: { least: 0, most: 0 } };
    expect(valueIn(preloadVerdict(foot(still))).A).toMatchObject({ kind: 'seated', flank: 'pressed', least: 1.5 });
    const lying = valueIn(preloadVerdict(foot({ ...still, attitude: 0 }))).A;
    expect(lying).toEqual({ kind: 'lets go', n: 0, z_c: 0, load: 0 });
    expect(valueIn(preloadVerdict(foot({ ...still, attitude: -1 }))).C).toMatchObject({ flank: 'pulled', least: 1 });
  });

  it('finds the place along the stroke where a weakening spring lets a thread go', () => {
    // Pull spring base to turned part: 20 N, losing 3 N a turn clockwise; load from −5 N, weights 1.5 N.
    const given = foot({
      springs: [spring('base', 'turned', 'pull')],
      load: { least: -5, most: -5 },
      to: 6,
    });
    const { A } = valueIn(preloadVerdict(given));
    // 20 − 3n + 1.5 − 5 = 0 at n = 5.5
    expect(A.kind).toBe('lets go');
    if (A.kind !== 'lets go') return;
    expect(A.n).toBeCloseTo(5.5, 12);
    expect(A.load).toBe(-5);
    expect(A.z_c).toBeCloseTo(5.5 * 0.0875, 12);
    expect(threadForces(given, A.n, A.load).A).toBeCloseTo(0, 12);
    expect(valueIn(preloadVerdict({ ...given, to: 5.4 })).A.kind).toBe('seated');
    expect(valueIn(preloadVerdict({ ...given, to: 5.5 })).A).toMatchObject({ kind: 'lets go', n: 5.5, load: -5 });
  });

  it('agrees with a fine sweep over stroke and load, springs anywhere and slack in part', () => {
    const tenths = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((i) => i / 10);
    const parts = fc.constantFrom<Part>('base', 'turned', 'carried');
    const anySpring = fc.record({
      lower: parts,
      upper: parts,
      kind: fc.constantFrom<'push' | 'pull'>('push', 'pull'),
      force: tenths(0, 20),
      rate: tenths(0, 2).map((rate) => rate + 0.01),
    });
    const STEPS = 240;
    fc.assert(
      fc.property(
        fc.array(anySpring, { minLength: 1, maxLength: 3 }),
        tenths(-30, 30),
        tenths(0, 20),
        tenths(-6, 6),
        tenths(-6, 6),
        (springs, least, width, from, to) => {
          const given = foot({
            springs: springs.filter((s) => s.lower !== s.upper),
            load: { least, most: least + width },
            from,
            to,
          });
          const verdict = valueIn(preloadVerdict(given));
          for (const thread of ['A', 'C'] as const) {
            const bare = Array.from(
              { length: STEPS + 1 },
              (_, i) => threadForces(given, from + ((to - from) * i) / STEPS, 0)[thread],
            );
            const low = Math.min(...bare) + least;
            const high = Math.max(...bare) + least + width;
            const v = verdict[thread];
            // A flank pressed by no more than the rounding of the sweep may be called either.
            if (Math.min(Math.abs(low), Math.abs(high)) < 1e-9) continue;
            if (v.kind === 'lets go') {
              expect(Math.abs(threadForces(given, v.n, v.load)[thread])).toBeLessThan(1e-9);
              expect(v.load).toBeGreaterThanOrEqual(least - 1e-9);
              expect(v.load).toBeLessThanOrEqual(least + width + 1e-9);
              expect((v.n - from) * (v.n - to)).toBeLessThanOrEqual(1e-9);
              // Nothing lets go earlier along the travel.
              for (let i = 0; i < 40; i++) {
                if (Math.abs(v.n - from) < 1e-9) break;
                const force = threadForces(given, from + ((v.n - from) * i) / 40, 0)[thread];
                expect(force > -least - 1e-9 || force < -(least + width) + 1e-9).toBe(true);
              }
            } else {
              expect(low * high).toBeGreaterThan(0);
              const seen = low > 0 ? { least: low, most: high } : { least: -high, most: -low };
              expect(v.flank).toBe(low > 0 ? 'pressed' : 'pulled');
              // The sweep misses a kink by half a step at most, 3 springs of 2 N/mm moved by 1.6 mm a turn.
              expect(Math.abs(v.least - seen.least)).toBeLessThan(0.25);
              expect(Math.abs(v.most - seen.most)).toBeLessThan(0.25);
              expect(v.least).toBeLessThan(seen.least + 1e-9);
              expect(v.most).toBeGreaterThan(seen.most - 1e-9);
            }
          }
        },
      ),
      { numRuns: 400 },
    );
  });

  it('counts the slack of a spring from where the travel starts, either way round', () => {
    const slack = (from: number, to: number) =>
      valueIn(preloadVerdict(foot({ from, to, springs: [spring('base', 'turned', 'pull', 3)] }))).springs[0];
    // 3 N less 3 N a turn clockwise: slack at one turn.
    expect(slack(-2, 3)).toEqual({ least: 0, most: 9, slackFrom: 1 });
    expect(slack(3, -2)).toEqual({ least: 0, most: 9, slackFrom: 3 });
    expect(slack(-2, 0.5)).toEqual({ least: 1.5, most: 9 });
    // With no force left at the very end, or none yet at the start, it is slack there.
    expect(slack(-2, 1)).toEqual({ least: 0, most: 9, slackFrom: 1 });
    expect(slack(1, -2)).toEqual({ least: 0, most: 9, slackFrom: 1 });
  });

  it('finds the place between the turns at which one spring and then another goes slack, either way round', () => {
    // Slack at 1 and at 2 turns: 15 − 9n, then 12 − 6n, less the 4 N pull: lets go at 4/3 turns.
    const two = [spring('base', 'turned', 'pull', 12, 4), spring('base', 'turned', 'pull', 3, 2)];
    for (const springs of [two, two.toReversed()]) {
      const pulled = foot({ springs, weightTurned: 0, weightCarried: 0, load: { least: -4, most: -4 } });
      const forth = valueIn(preloadVerdict({ ...pulled, from: 0, to: 5 })).A;
      expect(forth.kind === 'lets go' && forth.n).toBeCloseTo(4 / 3, 12);
      // Coming back from five turns both are slack and the load holds the pulled flanks until there.
      const back = valueIn(preloadVerdict({ ...pulled, from: 5, to: 0 })).A;
      expect(back.kind === 'lets go' && back.n).toBeCloseTo(4 / 3, 12);
    }
  });

  it('tells by the force at the end of its life whether a relaxing spring still does', () => {
    const s = spring('base', 'carried', 'pull', 30, 0.5);
    const given = foot({ springs: [s], load: { least: -20, most: 0 }, attitude: 0, margin: 2 });
    const { F_t } = valueIn(retainedForce.of({ F_0: newtons(30), q_r: plain(0.1), t: hours(9999), t_0: hours(1) }));
    expect(valueIn(preloadVerdict(given)).C.kind).toBe('seated');
    expect(valueIn(preloadVerdict({ ...given, springs: [relaxed(s, F_t / 30)] })).C.kind).toBe('lets go');
  });

  it('says when the margin is not met and where a spring goes slack', () => {
    const verdict = valueIn(
      preloadVerdict(foot({ load: { least: 0, most: 0 }, margin: 5, springs: [spring('base', 'turned', 'pull', 3)] })),
    );
    expect(verdict.C.kind).toBe('short of margin');
    expect(threadVerdictText('C', verdict.C, 5)).toBe(
      'Thread C: the pressed flank of the carried part touches over the whole stroke, but only 1 N is left of the 5 N to keep.',
    );
    expect(verdict.springs[0]).toEqual({ least: 0, most: 3, slackFrom: 1 });
  });

  it('takes a flank pressed by the margin for seated, and one pressed by nothing for let go', () => {
    const still = { load: { least: 0, most: 0 } };
    expect(valueIn(preloadVerdict(foot({ ...still, margin: 1 }))).C.kind).toBe('seated');
    expect(valueIn(preloadVerdict(foot({ ...still, margin: 1.001 }))).C.kind).toBe('short of margin');
    // One newton of weight and one newton of pull leave nought, on the pressed flanks and, upside down, on the pulled.
    expect(valueIn(preloadVerdict(foot({ load: { least: -1, most: 0 } }))).C).toMatchObject({
      kind: 'lets go',
      n: 0,
      load: -1,
    });
    const hung = valueIn(preloadVerdict(foot({ attitude: -1, load: { least: 0, most: 1 } }))).C;
    expect(hung).toMatchObject({ kind: 'lets go', n: 0, z_c: 0, load: 1 });
    expect(valueIn(preloadVerdict(foot({ attitude: -1, load: { least: 0, most: 0.999 } }))).C.kind).toBe('seated');
  });

  it('refuses each number out of bounds by its name, and takes the bounds', () => {
    for (const [wrong, field] of [
      [{ h_A: 0 as 1 }, 'h_A'],
      [{ L_A: 0 }, 'L_A'],
      [{ h_C: 0 as 1 }, 'h_C'],
      [{ L_C: 61 }, 'L_C'],
      [{ from: -601 }, 'n'],
      [{ to: 601 }, 'n'],
      [{ margin: -1 }, 'F'],
      [{ springs: [spring('base', 'turned', 'push', -1)] }, 'F_0'],
      [{ springs: [spring('base', 'turned', 'push', 1, 0)] }, 'k_s'],
    ] as const) {
      expect(preloadVerdict(foot(wrong)), field).toMatchObject({ ok: false, field });
      expect(leastPreload({ ...foot({ springs: [spring('base', 'turned', 'push')] }), ...wrong }).ok, field).toBe(
        false,
      );
    }
    for (const [wrong, says] of [
      [{ weightTurned: -1 }, 'Weight of the turned part: read −1'],
      [{ weightTurned: 1.01e5 }, 'Weight of the turned part'],
      [{ weightCarried: -1 }, 'Weight of the carried part'],
      [{ weightCarried: 1.01e5 }, 'Weight of the carried part'],
      [{ attitude: 1.01 }, 'upright'],
      [{ attitude: -1.01 }, 'upright'],
      [{ load: { least: -1.01e5, most: 0 } }, 'Outside load'],
      [{ load: { least: 0, most: 1.01e5 } }, 'Outside load'],
    ] as const)
      expect(reasonIn(preloadVerdict(foot(wrong)))).toContain(says);
    expect(
      preloadVerdict(foot({ weightTurned: 1e5, weightCarried: 0, attitude: -1, load: { least: -1e5, most: 1e5 } })).ok,
    ).toBe(true);
    expect(preloadVerdict(foot({ weightTurned: 0, weightCarried: 1e5, load: { least: 20, most: 20 } })).ok).toBe(true);
  });

  it('refuses a spring with both ends on one part, a load range the wrong way about and a bad attitude', () => {
    expect(reasonIn(preloadVerdict(foot({ springs: [spring('turned', 'turned', 'push')] })))).toBe(
      'Spring 1 has both ends on the turned part, so it presses nothing: name two different parts.',
    );
    expect(reasonIn(preloadVerdict(foot({ load: { least: 5, most: -5 } })))).toContain('give the least first');
    expect(reasonIn(preloadVerdict(foot({ attitude: 2 })))).toContain('1 upright');
    expect(reasonIn(preloadVerdict(foot({ springs: [spring('base', 'turned', 'push', -1)] })))).toContain('Spring 1:');
    expect(reasonIn(preloadVerdict(foot({ weightCarried: Number.NaN })))).toContain('Weight of the carried part');
    expect(reasonIn(preloadVerdict(foot({ from: Number.NaN })))).toContain('not a number');
  });
});

describe('leastPreload', () => {
  it.each([
    spring('base', 'carried', 'pull'),
    spring('base', 'carried', 'push'),
    spring('turned', 'carried', 'push'),
    spring('base', 'turned', 'pull'),
  ])('is just enough for %o: a little less and a thread it reaches falls short', (s) => {
    const given = foot({ springs: [s], load: { least: -12, most: 30 }, margin: 4, to: 4 });
    const least = valueIn(leastPreload(given));
    const at = (force: number) => valueIn(preloadVerdict({ ...given, springs: [{ ...s, force }] }));
    const reached = (['A', 'C'] as const).filter((t) => !least.unreached.includes(t));
    for (const thread of reached) expect(at(least.force + 1e-9)[thread].kind).toBe('seated');
    expect(reached.some((thread) => at(least.force - 0.01)[thread].kind !== 'seated')).toBe(true);
    expect(least.governs.thread).toBeDefined();
  });

  it('is worked by hand where nothing turns: the load, the margin and the other spring', () => {
    const loaded = (springs: readonly PreloadSpring[], which: number) =>
      valueIn(
        leastPreload(
          foot({ springs, weightTurned: 0, weightCarried: 0, load: { least: -12, most: 30 }, margin: 4, to: 0 }),
          which,
        ),
      );
    const carried = spring('base', 'carried', 'pull');
    // 12 N pull off the base and 4 N are to be left; a spring that lifts thread A by 5 N asks for as much more.
    expect(loaded([carried], 0)).toMatchObject({ force: 16, governs: { thread: 'A', n: 0, load: -12 }, unreached: [] });
    expect(loaded([spring('base', 'turned', 'pull', 5), carried], 1)).toMatchObject({
      force: 16,
      governs: { thread: 'C', n: 0, load: -12 },
    });
    expect(loaded([spring('base', 'turned', 'push', 5), carried], 1)).toMatchObject({
      force: 21,
      governs: { thread: 'A', n: 0, load: -12 },
    });
    // Pushed off the base, the pulled flanks carry: 30 N of load and 4 N.
    const pushed = loaded([spring('base', 'carried', 'push')], 0);
    expect(pushed).toMatchObject({ force: 34, governs: { n: 0, load: 30 }, unreached: [] });
    // 20 N on both threads already leaves 8 N.
    expect(loaded([spring('base', 'turned', 'pull', 5), carried], 0)).toMatchObject({
      force: 0,
      governs: { thread: undefined },
      unreached: ['C'],
    });
    const between = loaded([spring('turned', 'carried', 'pull')], 0);
    expect(between).toMatchObject({ force: 16, unreached: ['A'] });
    expect(reasonIn(leastPreload(foot({ springs: [carried] }), 1))).toContain('Read spring 2 of 1');
  });

  it('says that a spring between turned part and base seats one thread only', () => {
    expect(valueIn(leastPreload(foot({ springs: [spring('base', 'turned', 'push')] }))).unreached).toEqual(['C']);
    expect(leastPreload(foot())).toMatchObject({ ok: false, code: 'no-such-spring', values: { spring: 1, count: 0 } });
  });

  it('never asks for less than keeps the spring from going slack', () => {
    const given = foot({ springs: [spring('base', 'turned', 'pull', 0, 2)], load: { least: 500, most: 500 } });
    const least = valueIn(leastPreload(given));
    expect(least.force).toBeCloseTo(2 * 1.5 * 5, 12);
    // Slack comes last of all at the end of the travel, five turns clockwise.
    expect(least.governs).toEqual({ thread: undefined, n: 5, load: 500 });
  });
});

describe('a preloaded joint', () => {
  /** The outside load that leaves no force between the faces, by the share of a load asked backwards. */
  const partsAt = (joint: Record<'F_0', Newtons> & Record<'k_b' | 'k_m', NewtonsPerMillimetre>): number => {
    const left = (F_x: number) => {
      const shared = jointShare.of({ ...joint, F_x: newtons(F_x) });
      return shared.ok ? shared.value.F_m : undefined;
    };
    return at(invert(left, 0, { min: 0, max: 1e6 }).answers, 0).x;
  };
  it('parts at the published separation load', () => {
    const row = mechanicsRow('e1-joint-separation');
    const { value, within } = row.value('separation_load');
    const parts = partsAt({
      F_0: newtons(row.input('preload_N')),
      k_b: newtonsPerMillimetre(row.input('kb_N_per_mm')),
      k_m: newtonsPerMillimetre(row.input('km_N_per_mm')),
    });
    expect(Math.abs(parts - value)).toBeLessThan(within);
  });

  it('shares a load a quarter to three quarters where the members are three times the bolt', () => {
    const row = mechanicsRow('e3-joint-rule-C-quarter'); // derived row: a check of the form
    const joint = {
      F_0: newtons(row.input('preload_N')),
      k_b: newtonsPerMillimetre(1e5),
      k_m: newtonsPerMillimetre(3e5),
    };
    const { F_b, F_m } = valueIn(jointShare.of({ ...joint, F_x: newtons(row.input('external_N')) }));
    expect(F_b).toBeCloseTo(row.value('bolt_force').value, 9);
    expect(F_m).toBeCloseTo(row.value('clamp_force').value, 9);
    expect((F_b - joint.F_0) / row.input('external_N')).toBeCloseTo(row.value('bolt_share').value, 12);
    expect(partsAt(joint)).toBeCloseTo(row.value('separation_load').value, 6);
    // Twice the preload on equal stiffnesses is where the faces just part.
    const even = { F_0: newtons(1000), k_b: newtonsPerMillimetre(1e5), k_m: newtonsPerMillimetre(1e5) };
    expect(valueIn(jointShare.of({ ...even, F_x: newtons(2000) }))).toEqual({ F_b: 2000, F_m: 0 });
    expect(reasonIn(jointShare.of({ ...joint, F_x: newtons(6000) }))).toBe(
      'The faces separate at 5333 N, below the load of 6000 N: give more preload or less load.',
    );
  });

  it('parts at the preload itself where the spring is soft', () => {
    const soft = { F_0: newtons(20), k_b: newtonsPerMillimetre(1), k_m: newtonsPerMillimetre(1e6) };
    expect(partsAt(soft)).toBeCloseTo(20, 3);
  });
});

describe('a relaxing spring', () => {
  const law = { F_0: newtons(30), q_r: plain(0.1), t_0: hours(1) };

  it('loses the same share in each tenfold time', () => {
    const at = (t: number) => valueIn(retainedForce.of({ ...law, t: hours(t) })).F_t;
    expect(at(0)).toBe(30);
    expect(at(9)).toBeCloseTo(27, 12);
    expect(at(99)).toBeCloseTo(24, 12);
    expect(at(999)).toBeCloseTo(21, 12);
    expect(reasonIn(retainedForce.of({ ...law, q_r: plain(0.9), t: hours(1e5) }))).toContain('nothing of the preload');
    // Half lost per tenfold time: nothing is left after 99 h counted from one hour, a good part counted from ten.
    expect(retainedForce.of({ ...law, q_r: plain(0.5), t: hours(101) }).ok).toBe(false);
    expect(valueIn(retainedForce.of({ ...law, q_r: plain(0.5), t: hours(99) })).F_t).toBe(0);
    expect(retainedForce.of({ ...law, q_r: plain(0.5), t: hours(101), t_0: hours(10) }).ok).toBe(true);
  });

  it('is fitted back from two of its own readings', () => {
    const at = (t: number) => ({ t, F: valueIn(retainedForce.of({ ...law, t_0: hours(2), t: hours(t) })).F_t });
    const fit = valueIn(fitRetention(at(2), at(50), 2));
    expect(fit.F_0).toBeCloseTo(30, 9);
    expect(fit.q_r).toBeCloseTo(0.1, 12);
  });

  it('is refused where readings long before the starting time would have it lose more than it has', () => {
    expect(fitRetention({ t: 1, F: 20 }, { t: 10, F: 19 }, 1e4)).toMatchObject({
      ok: false,
      code: 'relaxes-past-all',
      values: { t_0: 1e4, first: 1, second: 10 },
      field: 't_0',
    });
    // All of it lost in the first tenfold time, 9 h after the start: neither less nor more.
    expect(valueIn(fitRetention({ t: 0, F: 20 }, { t: 9, F: 0 }, 1)).q_r).toBeCloseTo(1, 12);
    expect(fitRetention({ t: 0, F: 20 }, { t: 8.99, F: 0 }, 1)).toMatchObject({ ok: false, field: 't_0' });
    // The earlier starting time that is asked for always helps, even where the second reading is nought.
    for (const F of [19, 10, 0]) {
      const { q_r } = valueIn(fitRetention({ t: 1, F: 20 }, { t: 10, F }, 1));
      expect(q_r).toBeLessThanOrEqual(1);
    }
    // Moments after a start as late as the field takes it, the digits of the forces still tell one loss from another.
    const early = { t: 1e-9, F: 20 };
    expect(reasonIn(fitRetention(early, { t: 2e-9, F: 19 }, 1e6))).toContain('is too late');
    expect(valueIn(fitRetention(early, { t: 2e-9, F: 20 }, 1e6))).toMatchObject({ F_0: 20, q_r: 0 });
  });

  it('tells when the force has fallen to what is needed, and that it lasts where it does', () => {
    const falls = valueIn(timeToFall(law, 24));
    expect(falls.kind).toBe('falls');
    if (falls.kind === 'falls') expect(falls.t).toBeCloseTo(99, 6);
    expect(valueIn(timeToFall(law, 5)).kind).toBe('lasts');
    // A hundred years are 876600 h: 5.9427 decades after the first hour.
    expect(valueIn(timeToFall({ ...law, t_0: 1 }, 30 * (1 - 0.5942))).kind).toBe('falls');
    expect(valueIn(timeToFall({ ...law, t_0: 1 }, 30 * (1 - 0.5943))).kind).toBe('lasts');
    expect(valueIn(timeToFall({ ...law, q_r: 0 }, 29)).kind).toBe('lasts');
    expect(valueIn(timeToFall(law, 30))).toEqual({ kind: 'falls', t: 0 });
    for (const [wrong, needed, field] of [
      [{ F_0: -1 }, 0, 'F_0'],
      [{ q_r: 1.1 }, 24, 'q_r'],
      [{ t_0: 0 }, 24, 't_0'],
      [{}, -1, 'F_t'],
    ] as const)
      expect(timeToFall({ ...law, ...wrong }, needed), field).toMatchObject({ ok: false, field });
    expect(reasonIn(timeToFall(law, 31))).toBe(
      'A preload of 30 N is below the 31 N needed from the start: give a stronger spring.',
    );
  });

  it('refuses readings out of order, a growing force and a law without its starting time', () => {
    expect(reasonIn(fitRetention({ t: 5, F: 20 }, { t: 5, F: 19 }, 1))).toContain('not later than the first');
    expect(reasonIn(fitRetention({ t: 5, F: 20 }, { t: 50, F: 21 }, 1))).toContain('a relaxing spring only loses');
    expect(reasonIn(fitRetention({ t: 5, F: 20 }, { t: 50, F: 19 }, 0))).toContain('Starting time of the log law');
    expect(reasonIn(fitRetention({ t: 5, F: 0 }, { t: 50, F: 0 }, 1))).toContain('nothing to relax');
    expect(valueIn(fitRetention({ t: 5, F: 20 }, { t: 50, F: 20 }, 1))).toMatchObject({ F_0: 20, q_r: 0 });
    for (const [first, second, t_0, field] of [
      [{ t: -1, F: 20 }, { t: 50, F: 19 }, 1, 't'],
      [{ t: 5, F: 20 }, { t: 1e7, F: 19 }, 1, 't'],
      [{ t: 5, F: 20 }, { t: 50, F: 19 }, 0, 't_0'],
      [{ t: 5, F: 1e6 }, { t: 50, F: 19 }, 1, 'F_t'],
      [{ t: 5, F: 20 }, { t: 50, F: -1 }, 1, 'F_t'],
    ] as const)
      expect(fitRetention(first, second, t_0), field).toMatchObject({ ok: false, field });
    expect(relaxed(spring('base', 'turned', 'push', 30, 2), 0.5)).toMatchObject({ force: 15, rate: 1 });
  });
});
