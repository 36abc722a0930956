/**
 * The jack as built, held to what every other room of the engine says of it alone, and to statics worked by hand.
 * Each law is a limit: the other effects are switched off one by one.
 */
import { describe, expect, it } from 'vitest';
import {
  abbeError,
  EXACT,
  frictionAngle,
  gaugeOff,
  type Jack,
  keyRub,
  liftFree,
  liftFreeNut,
  liftHeld,
  mm,
  newtonMillimetres,
  newtons,
  plain,
  rad,
  raisingTorque,
  runJack,
  type Stand,
  tilt,
  waveLean,
  waveShift,
  waveThrough,
  wholeStiffness,
  windUp,
} from '../../widgets/engine/index.ts';
import { foot, STIFF, thread } from '../support/exact-jack.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const at = (jack: Jack, ...turns: number[]): readonly Stand[] => valueIn(runJack(jack, turns));
const joint = (stand: Stand | undefined, name: string) => {
  const found = stand?.joints.find((j) => j.joint === name);
  if (!found) throw new Error(`no joint ${name}`);
  return found;
};
const ONE_TURN = Array.from({ length: 49 }, (_, i) => i / 48);

/** A guide that holds the carried part across at one height and lets it tilt. */
const pivot = (height: number): NonNullable<Jack['guide']> => ({
  length: 0,
  middle: height,
  clearance: 0,
  radius: 8,
  stiffness: 1e9,
  mu: 0,
});
/** One that lets it neither across nor tilt. */
const slide: NonNullable<Jack['guide']> = { ...pivot(60), length: 60 };

describe('the jack returns to every law that stands alone', () => {
  it('carries the load through thread C, and load and weight through thread A (force chain)', () => {
    const [s] = at(foot({ weightTurned: 3 }), 0);
    expect(joint(s, 'C').axial).toBeCloseTo(50, 3);
    expect(joint(s, 'A').axial).toBeCloseTo(53, 3);
    expect(joint(s, 'A')).toMatchObject({ pressed: 1, pulled: 0 });
  });

  it('goes by the net lead, wherever nothing is off', () => {
    for (const s of at(foot(), 0, 0.3, 2, -1))
      expect([s.x, s.y, s.z - (at(foot(), 0)[0]?.z ?? 0)]).toEqual([0, 0, 0].map((x) => expect.closeTo(x, 7)));
  });

  it('neither leans nor leaves its axis where nothing pushes it sideways, with friction or without, and leans as soon as something does', () => {
    const ring = { outer: 15, inner: 12, stiffness: 1e6 };
    const mu = 0.15;
    for (const jack of [foot({ ring }), foot({ ring, A: thread({ mu }), C: { ...foot().C, mu } })]) {
      for (const s of at(jack, 0, 0.4, 1.3))
        for (const x of [s.x, s.y, s.tiltX, s.tiltY]) expect(Math.abs(x)).toBeLessThan(1e-9);
      expect(at({ ...jack, push: 0.1 }, 0)[0]?.tiltY ?? 0).toBeGreaterThan(1e-9);
    }
  });

  it('gives under the load by both threads in series', () => {
    const z = (load: number) => at(foot({ load }), 0)[0]?.z ?? 0;
    expect((z(20) - z(50)) / 30).toBeCloseTo(2 / STIFF, 8);
  });

  it('carries through both threads what its springs pull from base to carried part, more or less of it over the stroke (spring-force)', () => {
    const pulled = at(foot({ springs: { force: 12, rate: 2 } }), 0, 4);
    for (const [i, n] of [0, 4].entries()) {
      const pull = 12 + 2 * 0.0875 * n;
      expect(joint(pulled[i], 'C').axial).toBeCloseTo(50 + pull, 3);
      expect(joint(pulled[i], 'A').axial).toBeCloseTo(50 + pull, 3);
    }
    // Its pull keeps the flanks pressed where the load alone would let go.
    expect(joint(at(foot({ load: -10, springs: { force: 12, rate: 2 } }), 0)[0], 'C')).toMatchObject({
      pressed: 1,
      pulled: 0,
    });
    expect(joint(at(foot({ load: -10 }), 0)[0], 'C').pulled).toBe(1);
  });

  it('shifts by both plays where a drag takes the place of the load (turns lost)', () => {
    const [out, back] = at(foot({ load: 0, drag: 2 }), 1, 0.9);
    // Raised, the drag presses it towards the base; lowered, away from it.
    const lost = (back?.z ?? 0) - (out?.z ?? 0);
    expect(lost).toBeCloseTo((0.1 + 0.1) / Math.sqrt(3), 5);
  });

  it.each([
    ['screw', 0.001, 0, -0.0015],
    ['screw', 0, 0.001, 0],
    ['nut', 0.001, 0, 0],
    ['nut', 0, 0.001, -0.0015],
  ] as const)('counts the lead error of the part that passes through: %s, %f, %f', (through, screw, nut, perTurn) => {
    const A = thread({ through, screw: { ...EXACT, leadError: screw }, nut: { ...EXACT, leadError: nut } });
    const [start, end] = at(foot({ A }), 0, 1);
    expect((end?.z ?? 0) - (start?.z ?? 0)).toBeCloseTo(perTurn, 6);
  });

  it('carries at one end of the engagement where the leads differ, and not along it', () => {
    const A = thread({ screw: { ...EXACT, leadError: 0.001 } });
    expect(joint(at(foot({ A }), 0)[0], 'A').pressed).toBeCloseTo(1 / 3, 6);
  });

  it('lets through the smaller of two waves where nothing tilts (wave-through)', () => {
    // Without clearance and long, thread C ties the turned part to the guided one.
    const C = { ...foot().C, clearance: 0, engaged: 60, stiffness: 1e9 };
    const range = (screw: number, nut: number) => {
      const A = thread({ screw: { ...EXACT, wave: screw }, nut: { ...EXACT, wave: nut }, engaged: 2 });
      const z = at(foot({ A, C, guide: slide }), ...ONE_TURN).map((s) => s.z);
      return Math.max(...z) - Math.min(...z);
    };
    for (const [a, b] of [
      [0.005, 0],
      [0.005, 0.001],
      [0.005, 0.005],
    ] as const) {
      const through = valueIn(waveThrough.of({ a_s: mm(a), a_n: mm(b) })).a_w;
      // Off by what the flanks give, and by the places round the thread that can carry: 24.
      expect(Math.abs(range(a, b) - 2 * through)).toBeLessThan(2e-4);
    }
  });

  it('leans instead where it is held sideways, and the tip goes round (wave-lean)', () => {
    const wave = 0.0005;
    const A = thread({ screw: { ...EXACT, wave }, engaged: 0.2 });
    const C = { ...foot().C, clearance: 0, engaged: 30 };
    const run = at(foot({ A, C, guide: pivot(A.middle), load: 5 }), ...ONE_TURN);
    const { tau } = valueIn(waveLean.of({ a_s: mm(wave), d_2: mm(9.026) }));
    for (const s of run) expect(Math.hypot(s.tiltX, s.tiltY) / tau).toBeCloseTo(1, 1);
    const z = run.map((s) => s.z);
    expect(Math.max(...z) - Math.min(...z)).toBeLessThan(2e-5);
  });

  it('goes sideways instead where nothing holds it, and neither rises nor leans (wave-shift)', () => {
    const wave = 0.0005;
    const A = thread({ screw: { ...EXACT, wave } });
    const run = at(foot({ A, C: { ...foot().C, clearance: 0, engaged: 30 }, load: 5 }), ...ONE_TURN);
    const { x_a } = valueIn(waveShift.of({ a_s: mm(wave) }));
    for (const s of run) {
      expect(Math.hypot(s.x, s.y) / x_a).toBeCloseTo(1, 1);
      expect(Math.hypot(s.tiltX, s.tiltY)).toBeLessThan(1e-7);
    }
  });

  it('goes to the side where the flank of the screw stands high, which goes round with the hand (worked by hand)', () => {
    // A flank that faces down slopes up and outwards: with its crest at +x the screw is clear there, and slides to +x until it is seated all round.
    const x_a = 0.0005 * Math.sqrt(3);
    const side = (phase: number, n: number) => {
      const A = thread({ screw: { ...EXACT, wave: 0.0005, phase } });
      const s = at(foot({ A, C: { ...foot().C, clearance: 0, engaged: 30 }, load: 5 }), n)[0];
      return [(s?.x ?? 0) / x_a, (s?.y ?? 0) / x_a] as const;
    };
    for (const [phase, n, x, y] of [
      [0, 0, 1, 0],
      [0.25, 0, 0, 1],
      // Clockwise seen from above, a quarter turn takes +x to −y.
      [0, 0.25, 0, -1],
    ] as const) {
      const [ex, ey] = side(phase, n);
      // Off by the places round the thread that can carry: 24.
      expect(Math.hypot(ex - x, ey - y), `${phase} ${n}`).toBeLessThan(0.15);
    }
  });

  it('tilts in its clearance until both flanks touch (tilt, at the pitch diameter)', () => {
    // No load, and a push too small to bend a flank.
    const push = 0.5;
    const run = (height: number, over: Partial<Jack>) => at(foot({ load: 0, push, pushHeight: height, ...over }), 0)[0];
    const s = run(200, {
      guide: pivot(45),
      C: { ...foot().C, stiffness: 1e9 },
      A: thread({ clearance: 0, engaged: 60, stiffness: 1e9 }),
    });
    const { tau } = valueIn(tilt.of({ c: mm(0.1), l_e: mm(10), d: mm(8.494) }));
    expect(s?.tiltY ?? 0).toBeCloseTo(tau, 5);
  });

  /** A shank of steel between the threads of the Foot, and all else but solid. */
  const shank = { length: 20, middle: 32.5, diameter: 7.577, E: 210_000, G: 80_769 };
  const hard = (over: Partial<Jack> = {}) => {
    const wide = { engaged: 20, d2: 60, clearance: 0, stiffness: 1e9 };
    return foot({
      A: thread({ ...wide, middle: 12.5 }),
      C: { ...foot().C, ...wide, middle: 52.5 },
      tip: 60,
      load: 5,
      ...over,
    });
  };

  it('bends, shears and shortens in its shank as a cantilever does (beam)', () => {
    const Q = 3;
    const [rigid, bent] = [undefined, shank].map((of) => at(hard({ shank: of, push: Q }), 0)[0]);
    const { length: l, diameter: d, E, G } = shank;
    const [area, I, a] = [(Math.PI * d * d) / 4, (Math.PI * d ** 4) / 64, 60 - 42.5];
    // A push at the end of a rigid arm a beyond a cantilever l (Castigliano; any text on strength of materials).
    const bend = (Q * (l ** 3 / 3 + a * l * l + a * a * l)) / (E * I);
    expect((bent?.x ?? 0) - (rigid?.x ?? 0)).toBeCloseTo(bend + (Q * l) / (0.9 * G * area), 5);
    expect((bent?.tiltY ?? 0) - (rigid?.tiltY ?? 0)).toBeCloseTo((Q * ((l * l) / 2 + a * l)) / (E * I), 6);
    // Without friction the load also untwists it, by its torque on thread C, and that lets the tip down by thread C.
    const untwists = (5 * (1.5875 / (2 * Math.PI)) ** 2 * l) / (2 * G * I);
    expect((rigid?.z ?? 0) - (bent?.z ?? 0)).toBeCloseTo((5 * l) / (E * area) + untwists, 9);
  });

  it('twists its shank by the torque of thread C, and the tip goes along thread C, and the hand feels the same', () => {
    const mu = 0.15;
    const stands = (of: Jack['shank']) => {
      const C = { ...foot().C, mu, clearance: 0, stiffness: 1e9 };
      return at(foot({ A: thread({ mu }), C, shank: of, guide: slide }), 1)[0];
    };
    const [rigid, soft] = [stands(undefined), stands({ ...shank, E: 1e9, G: 80.769 })];
    const rho = valueIn(frictionAngle.of({ mu: plain(mu), beta_f: rad(Math.PI / 6) })).rho;
    const torque = (50 * 8.494 * Math.tan(Math.atan(1.5875 / (Math.PI * 8.494)) + rho)) / 2;
    const twist = (torque * 20) / ((80.769 * Math.PI * 7.577 ** 4) / 32);
    // Turned back by that, the screw end of the shank gives up so much of what it lifts.
    const lost = (rigid?.z ?? 0) - (soft?.z ?? 0);
    expect(lost / ((twist * 1.5875) / (2 * Math.PI))).toBeCloseTo(1, 1);
    expect((soft?.torque ?? 0) / (rigid?.torque ?? 1)).toBeCloseTo(1, 3);
  });

  it('comes back to the rigid turned part as its shank gets stiff', () => {
    const axes = { offset: 0.01, angle: 0.001, phase: 0 };
    const [rigid, stiff] = [undefined, { ...shank, E: 1e10, G: 1e10 }].map((of) =>
      at(foot({ axes, shank: of, push: 0.3 }), 0, 0.3, 1),
    );
    for (const [i, s] of (rigid ?? []).entries())
      for (const key of ['x', 'y', 'z', 'tiltX', 'tiltY', 'torque'] as const)
        expect(stiff?.[i]?.[key]).toBeCloseTo(s[key], 5);
  });

  it('is read off by a gauge beside the axis by offset times the change of its lean (Abbe)', () => {
    const angle = Math.PI / 1800;
    const run = at(foot({ axes: { offset: 0, angle, phase: 0 } }), ...ONE_TURN);
    // The lean goes round, so along the push it changes by twice the angle; 15 mm × 2 × 0.1° = 52.4 µm.
    expect(gaugeOff(run, 15)).toBeCloseTo(15 * 2 * angle, 5);
    expect(gaugeOff(run, -15)).toBeCloseTo(gaugeOff(run, 15), 12);
    expect(gaugeOff(run, 0)).toBe(0);
    // Half a turn on, the gauge itself has the whole of it, whichever way it stands (abbe-error).
    const { e_a } = valueIn(abbeError.of({ a_o: mm(15), theta_c: rad(2 * angle) }));
    expect(gaugeOff(run, 15) / e_a).toBeCloseTo(1, 4);
  });

  const lifts = (lifted: (Q: number) => boolean): number => {
    let [low, high] = [0, 100];
    for (let i = 0; i < 24; i++) {
      const middle = (low + high) / 2;
      if (lifted(middle)) high = middle;
      else low = middle;
    }
    return low;
  };

  it.each([
    [50, 15],
    [50, 40],
    [20, 15],
  ])('lifts a pressed flank at the push of lift-held and of lift-free: %f N, %f mm up', (load, y) => {
    // Thread A all but a solid joint, so that only thread C answers.
    const A = thread({ clearance: 0, engaged: 200, d2: 300, stiffness: 1e9 });
    const lifted = (upper: 'screw' | 'nut', guided: boolean) => {
      const C = { ...foot().C, upper, clearance: 2, stiffness: 1e4 };
      const jack = (push: number) =>
        foot({ A, C, load, push, pushHeight: C.middle + y, ...(guided ? { guide: pivot(C.middle) } : {}) });
      return lifts((Q) => joint(at(jack(Q), 0)[0], 'C').pressed < 1);
    };
    const of = { F: newtons(load), d_2: mm(8.494), l_e: mm(10), y: mm(y) };
    expect(lifted('screw', true) / valueIn(liftHeld.of(of)).Q_lh).toBeCloseTo(1, 2);
    expect(lifted('nut', true) / valueIn(liftHeld.of(of)).Q_lh).toBeCloseTo(1, 2);
    expect(lifted('screw', false) / valueIn(liftFree.of(of)).Q_lf).toBeCloseTo(1, 1);
    expect(lifted('nut', false) / valueIn(liftFreeNut.of(of)).Q_lf).toBeCloseTo(1, 1);
  });

  it('tips right over in its thread at the push of tips-over, where no other flank stops it', () => {
    const A = thread({ clearance: 0, engaged: 200, d2: 300, stiffness: 1e9 });
    // So much clearance that nothing of thread C stops the lean before it has tipped.
    const C = { ...foot().C, clearance: 30, stiffness: 1e6 };
    const over = (push: number) =>
      runJack(foot({ A, C, push, pushHeight: C.middle + 40, guide: pivot(C.middle) }), [0]);
    // F (r + l tan 30°/2)/y = 50 × 7.134/40; the flank that gives tips a little sooner.
    expect(lifts((Q) => !over(Q).ok) / ((50 * (4.247 + 5 * Math.tan(Math.PI / 6))) / 40)).toBeCloseTo(1, 1);
    expect(reasonIn(over(12))).toContain('tips in thread C');
  });

  it('takes the torque of two inclined planes, up and down (raising-torque)', () => {
    const mu = 0.15;
    const rho = valueIn(frictionAngle.of({ mu: plain(mu), beta_f: rad(Math.PI / 6) })).rho;
    const C = { ...foot().C, mu };
    const A = thread({ mu });
    const [up, down] = at(foot({ A, C }), 1, 0.5);
    const of = (d_2: number, L: number, sign: number) =>
      valueIn(raisingTorque.of({ F: newtons(50), d_2: mm(d_2), rho, zeta: rad(sign * Math.atan(L / (Math.PI * d_2))) }))
        .M_r;
    // The slope of a flank counts once more in its normal, by the square of the lead angle: 0.4 %.
    expect((up?.torque ?? 0) / (of(8.494, 1.5875, 1) + of(9.026, 1.5, -1))).toBeCloseTo(1, 2);
    expect((down?.torque ?? 0) / (of(8.494, 1.5875, -1) + of(9.026, 1.5, 1))).toBeCloseTo(1, 2);
  });

  it('winds up its lock by the torque of thread C, and the tip goes along thread C (wind-up)', () => {
    const kappa = 5000;
    const C = { ...foot().C, mu: 0.15 };
    const A = thread({ mu: 0.15 });
    const stands = (lock: Jack['lock']) => at(foot({ A, C, lock }), 1, 0.5);
    const soft = stands({ by: 'springs', kappa });
    const stiff = stands({ by: 'springs', kappa: 1e12 });
    for (const [i, s] of soft.entries()) {
      const psi = s.twist;
      const moved = valueIn(windUp.of({ h_C: plain(1), L_C: mm(1.5875), psi: rad(psi) })).z_c;
      expect(s.z - (stiff[i]?.z ?? 0)).toBeCloseTo(moved, 6);
      expect(Math.abs(psi)).toBeGreaterThan(0.003);
    }
    // Raised, thread C runs uphill and drags its part round clockwise.
    expect((soft[0]?.twist ?? 0) * (soft[1]?.twist ?? 0)).toBeLessThan(0);
  });

  it('sticks in thread C when the hand turns back, and turns with it as on thread A alone, until its lock is wound the other way', () => {
    // So soft a lock that the way between takes several steps of the hand.
    const kappa = 60;
    const C = { ...foot().C, mu: 0.15 };
    const A = thread({ mu: 0.15 });
    const back = Array.from({ length: 17 }, (_, i) => 1 - i / 32);
    const run = at(foot({ A, C, lock: { by: 'springs', kappa } }), 0.9, ...back);
    const [settled, ...after] = run.slice(1);
    if (!settled) throw new Error('no run');
    const { up, down } = { up: settled.twist, down: after.at(-1)?.twist ?? 0 };
    // Wound from the torque of one sense to that of the other (wind-up), each held by the thread alone.
    const rho = valueIn(frictionAngle.of({ mu: plain(0.15), beta_f: rad(Math.PI / 6) })).rho;
    const held = (sign: number) =>
      (50 * 8.494 * Math.tan(sign * Math.atan(1.5875 / (Math.PI * 8.494)) + rho)) / 2 / kappa;
    expect(Math.abs(up) / held(1)).toBeCloseTo(1, 2);
    expect(Math.abs(down) / held(-1)).toBeCloseTo(1, 2);
    for (const [i, s] of after.entries()) {
      const turned = (i + 1) / 32;
      const free = 2 * Math.PI * turned < Math.abs(down - up) * 0.98;
      const done = 2 * Math.PI * turned > Math.abs(down - up) * 1.02;
      // Stuck, it goes round with the hand and down by thread A; then it stands, and goes by the net lead.
      if (free) {
        expect(Math.abs(s.twist - up)).toBeCloseTo(2 * Math.PI * turned, 3);
        expect(s.z - settled.z - 0.0875 * turned).toBeCloseTo(1.5 * turned, 3);
      }
      if (done) expect(s.twist).toBeCloseTo(down, 5);
    }
    expect(after.filter((s) => Math.abs(s.twist - down) > 1e-3).length).toBeGreaterThan(3);
  });

  it('keeps its friction while the hand rests, and lets it go by degrees: torque between that of both senses', () => {
    const C = { ...foot().C, mu: 0.15 };
    const A = thread({ mu: 0.15 });
    const run = at(foot({ A, C }), 1, 1, 1 - 2e-9, 1 - 4e-9, 0.9);
    const hand = run.map((s, i) => (i < 2 ? s.torque : -s.torque));
    expect(hand[1]).toBeCloseTo(hand[0] ?? 0, 6);
    for (let i = 2; i < hand.length; i++) expect(hand[i]).toBeLessThan(hand[i - 1] ?? 0);
    const [up, down] = at(foot({ A, C }), 1, 0.5);
    expect(hand[4]).toBeCloseTo(-(down?.torque ?? 0), 3);
    expect(hand[0]).toBeCloseTo(up?.torque ?? 0, 6);
  });

  it('lets its key rub along the axis by the torque of thread C over its radius (key-rub)', () => {
    const [mu, mu_g, radius] = [0.15, 0.2, 8];
    const C = { ...foot().C, mu };
    const rho = valueIn(frictionAngle.of({ mu: plain(mu), beta_f: rad(Math.PI / 6) })).rho;
    const rise = (8.494 / 2) * Math.tan(rho + Math.atan(1.5875 / (Math.PI * 8.494)));
    const lock = { by: 'key', gap: 0, radius, height: 45, stiffness: 1e7, mu: mu_g } as const;
    // One key pushes sideways too: a guide without friction takes that.
    const [s] = at(foot({ C, lock, guide: slide }), 1);
    const carried = joint(s, 'C').axial;
    const rub = valueIn(keyRub.of({ mu_g: plain(mu_g), M_L: newtonMillimetres(carried * rise), r_k: mm(radius) })).F_kr;
    expect((carried - 50) / rub).toBeCloseTo(1, 1);
    expect(rub).toBeGreaterThan(1);
  });

  it('sinks into its seat by the approach of Hertz, and no more where it is turned (ball-on-flat)', () => {
    const z = (over: Partial<Jack>) => at(foot(over), 0, 1).map((s) => s.z);
    const ball = { radius: 3.175, modulus: 115_385 };
    // δ = (9 F²/(16 R E*²))^⅓, Johnson, Contact Mechanics, ch. 4 (from memory).
    const delta = Math.cbrt((9 * 50 ** 2) / (16 * ball.radius * ball.modulus ** 2));
    const [bare, seated] = [z({}), z({ ball })];
    for (const i of [0, 1]) expect((bare[i] ?? 0) - (seated[i] ?? 0)).toBeCloseTo(delta, 9);
    expect(z({ ball, load: 0, drag: 2 })).toEqual(z({ load: 0, drag: 2 }));
  });

  it('stands on its whole ring until the push of the text, and tips at the other (ring)', () => {
    const ring = { outer: 6.5, inner: 5.5, stiffness: 1e6 };
    const solid = {
      A: thread({ engaged: 300, d2: 300, stiffness: 1e9 }),
      C: thread({ L: 1.5875, engaged: 300, d2: 300, stiffness: 1e9, upper: 'nut' }),
    };
    const jack = (push: number) => foot({ ...solid, ring, load: 70, push, tip: 40, pushHeight: 40 });
    const whole = (Q: number): boolean => {
      const run = runJack(jack(Q), [0]);
      return run.ok && joint(run.value[0], 'ring').pressed === 1;
    };
    expect(lifts((Q) => !whole(Q))).toBeCloseTo((70 * (6.5 ** 2 + 5.5 ** 2)) / (4 * 6.5 * 40), 2);
    expect(lifts((Q) => !runJack(jack(Q), [0]).ok)).toBeCloseTo((70 * 6.5) / 40, 1);
    expect(reasonIn(runJack(jack(13), [0]))).toContain('the base tips on its ring');
  });

  it('swings its tip on a circle where the axes of its threads lean to each other', () => {
    const angle = Math.PI / 1800;
    const run = at(foot({ axes: { offset: 0, angle, phase: 0 }, tip: 60 }), ...ONE_TURN);
    for (const s of run) expect(Math.hypot(s.x, s.y)).toBeCloseTo(angle * (60 - 20), 4);
  });
});

describe('statics worked by hand', () => {
  it('holds the bracket on a pipe where the text says (guide with friction)', () => {
    // Beer & Johnston, Vector Mechanics: Statics, sample problem 8.4 (from memory): a bracket bears on a pipe 3 in. thick at two places 6 in. apart,
    // µ = 0.25; a load 12 in. from the middle of the pipe is just held by friction.
    const inch = 25.4;
    const held = (inches: number) => {
      // With clearance each end bears at one place, as in the text; an exact bore bears round half of itself and rubs 4/π times as much.
      const guide = { length: 6 * inch, middle: 45, clearance: 0.3, radius: 1.5 * inch, stiffness: 1e8, mu: 0.25 };
      const loose = thread({ L: 1.5875, upper: 'nut', clearance: 3, d2: 1, engaged: 0.2, middle: 45 });
      const run = at(foot({ A: thread({ clearance: 0 }), C: loose, guide, beside: inches * inch, load: 100 }), 1, 0.9);
      return joint(run[1], 'C').axial;
    };
    // Nearer, the thread still carries a part of it; further out the part hangs in its guide, and the thread goes down without it.
    expect(held(11.9)).toBeGreaterThan(0);
    expect(held(12.1)).toBe(0);
  });

  it('gives back the work of the hand as work on the load, friction and nothing else', () => {
    const C = { ...foot().C, mu: 0.15 };
    const A = thread({ mu: 0.15 });
    const run = at(foot({ A, C, drag: 3 }), 0, 1);
    const [start, end] = run;
    const work = 2 * Math.PI * (end?.torque ?? 0);
    const raised = 0.0875 + (end?.z ?? 0) - (start?.z ?? 0);
    // Friction at each thread: its push square to the flank, times the way along the helix.
    const rub = (L: number, d2: number, F: number) => {
      const slope = L / (Math.PI * d2);
      const normal = Math.hypot(1, slope, Math.tan(Math.PI / 6));
      const along = Math.hypot(Math.PI * d2, L);
      const way = Math.sign(L) / Math.hypot(1, slope);
      // F is what the flank bears along the axis less its own friction, so the push is found from both.
      return { normal, along, way, slope, F };
    };
    const lost = [rub(1.5, 9.026, 53), rub(1.5875, 8.494, 53)].map(({ normal, along, slope, F }, i) => {
      // Axial balance of a flank: N/normal·(1 ∓ µ normal sin λ) = F, minus where it climbs (thread C, raised).
      const sin = slope / Math.hypot(1, slope);
      const N = F / (1 + (i === 0 ? 1 : -1) * 0.15 * normal * sin);
      return 0.15 * N * normal * along;
    });
    expect(work).toBeCloseTo(53 * raised + lost.reduce((a, b) => a + b, 0), 2);
  });

  it('answers a push from any side alike, and a mirrored pair with a mirrored path', () => {
    const crooked = { offset: 0.02, angle: 0.001, phase: 0 };
    const right = at(foot({ axes: crooked }), 0, 0.25, 0.5);
    const left = at(foot({ A: thread({ h: -1 }), C: { ...foot().C, h: -1 }, axes: crooked }), 0, -0.25, -0.5);
    for (const [i, s] of right.entries()) {
      expect(left[i]?.x).toBeCloseTo(s.x, 8);
      expect(left[i]?.y).toBeCloseTo(-s.y, 8);
      expect(left[i]?.z).toBeCloseTo(s.z, 8);
    }
  });
});

describe('what can’t be built or run is refused with the part to change', () => {
  it('friction that locks it: a key so near the axis that its rub presses the thread more than it lets go', () => {
    // Axial balance: the thread carries F/(1 − µ_g·(d_2/2)·tan(λ + ρ)/r_k); where that bracket is none, no force raises it.
    const [mu, mu_g] = [0.4, 0.5];
    const rho = valueIn(frictionAngle.of({ mu: plain(mu), beta_f: rad(Math.PI / 6) })).rho;
    const locks = mu_g * (8.494 / 2) * Math.tan(rho + Math.atan(1.5875 / (Math.PI * 8.494)));
    const jack = (radius: number) =>
      foot({
        C: { ...foot().C, mu },
        guide: slide,
        lock: { by: 'key', gap: 0, radius, height: 45, stiffness: 1e7, mu: mu_g },
      });
    expect(joint(at(jack(1.5 * locks), 1)[0], 'C').axial / 50).toBeCloseTo(3, 0);
    expect(reasonIn(runJack(jack(0.9 * locks), [1]))).toContain('move the key further from the axis');
  });

  it('a coat thicker than the clearance allows, a lead error that fills the play, no lock', () => {
    expect(reasonIn(runJack(foot({ A: thread({ clearance: -0.004 }) }), [0]))).toContain(
      'Thread A has a clearance of −4 µm',
    );
    const long = thread({ clearance: 0.01, screw: { ...EXACT, leadError: 0.002 } });
    expect(reasonIn(runJack(foot({ C: { ...long, L: 1.5875 } }), [0]))).toContain('Thread C is off its lead by 20 µm');
    expect(reasonIn(runJack(foot({ lock: { by: 'springs', kappa: 0 } }), [0]))).toContain('goes round with the hand');
  });

  it('numbers that no part has', () => {
    expect(reasonIn(runJack(foot({ load: Number.NaN }), [0]))).toContain('load');
    expect(reasonIn(runJack(foot({ A: thread({ engaged: 0 }) }), [0]))).toContain('engaged');
  });
});

describe('the whole stiffness', () => {
  const ball = { radius: 3.175, modulus: 115_385 };
  const k_c = 2 * ball.modulus * Math.cbrt((3 * 50 * ball.radius) / (4 * ball.modulus));

  it('is that of the chain where all touches, and the ball gives most', () => {
    const found = wholeStiffness(foot({ ball, ring: { outer: 15, inner: 12, stiffness: 1e6 } }));
    if (!found) throw new Error('no load');
    const { chain, softest, solved, frequency } = valueIn(found);
    expect(1 / chain.stiffness / (2 / STIFF + 1e-6 + 1 / k_c)).toBeCloseTo(1, 6);
    expect(solved / chain.stiffness).toBeCloseTo(1, 3);
    expect(softest).toBe('ball');
    // A mass on a spring, its weight 50 N.
    expect(frequency).toBeCloseTo(Math.sqrt((solved * 1000) / (50 / 9.80665)) / (2 * Math.PI), 6);
  });

  it('has the shank in its chain, in series', () => {
    const shank = { length: 20, middle: 32.5, diameter: 7.577, E: 210_000, G: 80_769 };
    const found = wholeStiffness(foot({ ball, shank }));
    if (!found) throw new Error('no load');
    const { chain, solved } = valueIn(found);
    expect(1 / chain.stiffness / (2 / STIFF + 20 / (210_000 * (Math.PI / 4) * 7.577 ** 2) + 1 / k_c)).toBeCloseTo(1, 6);
    // The chain leaves out that thread C twists the shank: a thousandth.
    expect(solved / chain.stiffness).toBeCloseTo(0.9989, 4);
    // The same shank in plastic gives most.
    const soft = wholeStiffness(foot({ ball, shank: { ...shank, E: 2000, G: 800 } }));
    expect(soft && valueIn(soft).softest).toBe('shank');
  });

  it('is softer where a thread carries at one end only, and is none of a jack that carries nothing', () => {
    const A = thread({ stiffness: 1e4, screw: { ...EXACT, leadError: 0.002 } });
    const found = wholeStiffness(foot({ A, ball }));
    if (!found) throw new Error('no load');
    const { chain, solved, softest } = valueIn(found);
    expect(solved).toBeLessThan(0.9 * chain.stiffness);
    expect(softest).toBe('thread A');
    expect(wholeStiffness(foot({ load: 0, ball }))).toBeUndefined();
  });
});
