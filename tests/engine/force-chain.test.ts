/** The force chain as relations, against the simulation of whole cases in preload.ts and against springs cut free by hand. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  forceChain,
  guideFriction,
  hours,
  leastPreload,
  lockStiffness,
  lockWindUp,
  mm,
  newtonMillimetres,
  newtons,
  newtonsPerMillimetre,
  type PreloadCase,
  type PreloadSpring,
  plain,
  preloadForLife,
  preloadNeeded,
  preloadVerdict,
  relaxed,
  retainedForce,
  threadForces,
  withGuide,
} from '../../widgets/engine/index.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const FOOT: PreloadCase = {
  h_A: 1,
  L_A: 1.5,
  h_C: 1,
  L_C: 1.5875,
  springs: [],
  weightTurned: 0.6,
  weightCarried: 8,
  attitude: 1,
  load: { least: -20, most: 40 },
  from: 0,
  to: 6,
  margin: 5,
};
const PULL: PreloadSpring = { lower: 'base', upper: 'carried', kind: 'pull', force: 30, rate: 2 };

const chain = (F_o: number, f_c: number, f_t: number) =>
  valueIn(
    forceChain.of({
      F_o: newtons(F_o),
      W_c: newtons(8),
      W_t: newtons(0.6),
      f_c: newtons(f_c),
      f_t: newtons(f_t),
    }),
  );

describe('force-chain', () => {
  // A pull spring draws its upper end towards the base and its lower end away from it; a push spring the other way.
  it.each([
    ['base', 'carried', 'pull', 30, 0],
    ['base', 'carried', 'push', -30, 0],
    ['base', 'turned', 'pull', 0, 30],
    ['base', 'turned', 'push', 0, -30],
    ['turned', 'carried', 'pull', 30, -30],
    ['turned', 'carried', 'push', -30, 30],
  ] as const)(
    'agrees with the whole case for a spring between %s and %s that would %s',
    (lower, upper, kind, f_c, f_t) => {
      const given = { ...FOOT, springs: [{ lower, upper, kind, force: 30, rate: 2 }] };
      const { A, C } = threadForces(given, 0, -20);
      expect(chain(-20, f_c, f_t).F_C).toBeCloseTo(C, 12);
      expect(chain(-20, f_c, f_t).F_A).toBeCloseTo(A, 12);
    },
  );

  it('leaves thread C alone where the spring joins base and turned part, and thread A where it joins the other two', () => {
    expect(chain(-20, 0, 30).F_C).toBe(chain(-20, 0, 0).F_C);
    expect(chain(-20, 30, -30).F_A).toBeCloseTo(chain(-20, 0, 0).F_A, 12);
    expect(chain(-20, 0, 30).F_C).toBe(-12);
  });
});

describe('guide', () => {
  it('widens the range of the load by its friction, both ways', () => {
    const { given, friction } = valueIn(withGuide(FOOT, { side: 10, mu: 0.2 }));
    expect(friction).toBe(2);
    expect(given.load).toEqual({ least: -22, most: 42 });
    expect(valueIn(guideFriction.of({ mu_g: plain(0.2), Q_s: newtons(10) })).F_gf).toBe(2);
  });

  it('takes the weight too where the assembly lies on its side, and not where it stands on its head', () => {
    expect(valueIn(withGuide({ ...FOOT, attitude: 0 }, { side: 10, mu: 0.2 })).friction).toBeCloseTo(3.6, 12);
    expect(valueIn(withGuide({ ...FOOT, attitude: -1 }, { side: 10, mu: 0.2 })).friction).toBe(2);
    // Leaning by 30°: half of the weight across.
    const leaning = { ...FOOT, attitude: Math.cos(Math.PI / 6) };
    expect(valueIn(withGuide(leaning, { side: 0, mu: 0.2 })).friction).toBeCloseTo(0.8, 12);
  });

  it('refuses friction above one and a side load below nought', () => {
    expect(reasonIn(withGuide(FOOT, { side: 10, mu: 1.5 }))).toBe(
      'Coefficient of friction in the guide: read 1.5; give a value from 0 to 1.',
    );
    expect(reasonIn(withGuide(FOOT, { side: -1, mu: 0.2 }))).toContain('Side load on the guide: read −1 N');
    expect(valueIn(withGuide(FOOT, { side: 0, mu: 1 })).friction).toBe(0);
  });
});

describe('preload-needed and preload-for-life', () => {
  const needed = (mu: number, side: number) =>
    valueIn(preloadNeeded.of({ F_g: newtons(5), F_gf: newtons(mu * side), F_lo: newtons(-20), W_c: newtons(8) })).F_p;
  const life = (u: number, q: number) =>
    preloadForLife.of({
      F_p: newtons(needed(0.2, 10)),
      k_s: newtonsPerMillimetre(2),
      u_s: mm(u),
      q_r: plain(q),
      t: hours(24000),
      t_0: hours(1),
    });

  it('is what the search over the whole case asks of a spring between base and carried part', () => {
    const { given } = valueIn(withGuide({ ...FOOT, springs: [PULL] }, { side: 10, mu: 0.2 }));
    const found = valueIn(leastPreload(given));
    expect(found.governs).toMatchObject({ thread: 'C', n: 0, load: -22 });
    expect(found.force).toBeCloseTo(needed(0.2, 10), 9);
    // Turned the other way the carried part sinks and the spring slackens: the end of the stroke rules.
    const back = valueIn(leastPreload({ ...given, to: -6 }));
    expect(back.governs.n).toBe(-6);
    expect(back.force).toBeCloseTo(valueIn(life(-6 * 0.0875, 0)).F_0, 9);
  });

  it('leaves just the margin at the end of the life, a little less falls short', () => {
    const { F_0 } = valueIn(life(-6 * 0.0875, 0.06));
    const { F_t } = valueIn(retainedForce.of({ F_0: newtons(1), q_r: plain(0.06), t: hours(24000), t_0: hours(1) }));
    const old = (force: number) => {
      const spring = relaxed({ ...PULL, force }, F_t);
      const { given } = valueIn(withGuide({ ...FOOT, to: -6, springs: [spring] }, { side: 10, mu: 0.2 }));
      return valueIn(preloadVerdict(given)).C;
    };
    expect(old(F_0 + 1e-6).kind).toBe('seated');
    expect(old(F_0 - 1e-6).kind).toBe('short of margin');
  });

  it('says so where no spring is needed, nothing would be left, or the stroke alone does it', () => {
    const refused = (F_p: number, u: number, q: number) =>
      reasonIn(
        preloadForLife.of({
          F_p: newtons(F_p),
          k_s: newtonsPerMillimetre(2),
          u_s: mm(u),
          q_r: plain(q),
          t: hours(99),
          t_0: hours(1),
        }),
      );
    expect(refused(-3, 0, 0.1)).toBe(
      'Weight and load alone seat the threads here (−3 N needed from a spring), so no spring is needed.',
    );
    expect(refused(0, 0, 0.1)).toContain('no spring is needed');
    // Three newtons are just what 1.5 mm of stretch gives: the spring may start without any.
    const bare = { F_p: newtons(3), k_s: newtonsPerMillimetre(2), q_r: plain(0), t: hours(99), t_0: hours(1) };
    expect(valueIn(preloadForLife.of({ ...bare, u_s: mm(1.5) })).F_0).toBe(0);
    // Half is left after 99 h: ten newtons then take twenty, of which 7.5 mm of stretch gives fifteen.
    const half = { ...bare, F_p: newtons(10), q_r: plain(0.25), u_s: mm(7.5) };
    expect(valueIn(preloadForLife.of(half)).F_0).toBeCloseTo(5, 9);
    expect(refused(3, 0, 0.5)).toContain('nothing of the preload would be left');
    expect(refused(3, 5, 0)).toContain('take a softer one');
  });
});

describe('lock-stiffness', () => {
  it('winds up as a spring pushed at its radius gives way', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), fc.integer({ min: 10, max: 500 }), (k, r10) => {
        const r = r10 / 10;
        const { kappa } = valueIn(lockStiffness.of({ k_g: newtonsPerMillimetre(k), r_k: mm(r) }));
        const M = 0.01 * kappa;
        const { psi } = valueIn(lockWindUp.of({ M_L: newtonMillimetres(M), kappa }));
        // The force M/r moves the spring by M/r/k, an arc of psi at the radius.
        expect(psi * r).toBeCloseTo(M / r / k, 9);
      }),
    );
    expect(valueIn(lockStiffness.of({ k_g: newtonsPerMillimetre(4), r_k: mm(15) })).kappa).toBe(900);
  });
});
