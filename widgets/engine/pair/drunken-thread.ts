/**
 * A pair with periodic errors turned: where it is, how fast it moves, where it stands still and runs backwards.
 *
 * Each thread adds a·sin 2π(n + φ) to the motion: a is the amplitude as measured on the motion of the part, φ the phase in
 * turns. So with flanks seated and the lock holding the carried part is at
 *   z(n) = nΔ + a_A S_A(n) + a_C S_C(n),   S(n) = sin 2π(n + φ) − sin 2πφ   (nought at nought; as in simulator.ts)
 * and moves per turn, the derivative,
 *   v(n) = Δ + 2π a_A cos 2π(n + φ_A) + 2π a_C cos 2π(n + φ_C).
 * Both waves have the same period, so they are one wave of amplitude
 *   a = √(a_A² + a_C² + 2 a_A a_C cos 2π(φ_C − φ_A)),
 * whose steepest slope 2πa lies between 2π|a_A − a_C| and 2π(a_A + a_C). Where 2πa > |Δ| the part runs backwards once in
 * every turn, for the share arccos(|Δ|/2πa)/π of it; the ends of that stretch are where it stands still.
 *
 * The wave of a helix is not that amplitude. Let the helix of a screw wave by a_s to either side once a turn and that of its
 * nut by a_n, both engaged all round, pressed along the axis and kept square. Turned by n from crest on crest, the gap between
 * them waves round the thread by |a_s − a_n e^{i2πn}|, and the screw rests where it is least, so it stands higher by
 *   z_w(n) = √(a_s² + a_n² − 2 a_s a_n cos 2πn),
 * which goes from |a_s − a_n| to a_s + a_n: of the waves the smaller comes through, and in a true nut none. Where a nut touches
 * in one place of the turn only, the whole wave does. Held sideways but free to tilt, a waving screw leans instead: a cos θ at the
 * pitch radius is a plane leaning by a_s/(d_2/2), and the tip goes round once a turn. That is so for a short engagement; over a length l
 * the flanks’ slope leaves up to t a_s l/d_2 of it. Free to go sideways, one flank can’t tell a wave from an axis beside its place:
 * a shift by a_s/tan 30° takes it up, whatever the length, and the screw neither rises nor leans. Friction of the flanks below 30° lets it.
 * Source: sum of two sines of one period (phasors); derivatives; derived here, and checked against the simulator.
 * Lengths mm, motion per turn mm, phases and rotation turns. z positive up, n positive clockwise seen from above.
 */
import { type Millimetres, mm, plain, rad, type Turns, turns } from '../kernel/quantity.ts';
import { outOfBounds, relation } from '../kernel/relation.ts';
import { bad, good, type Result } from '../kernel/result.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'no-periodic-error': Readonly<Record<string, never>>;
    'equal-leads-nothing-slower': Readonly<Record<string, never>>;
    'stretch-unread': { readonly from: number; readonly to: number; readonly share: number };
  }
}

const TWO_PI = 2 * Math.PI;

export const periodicError = relation({
  name: 'periodic-error',
  says: 'What the periodic errors of both threads add to the motion after n turns.',
  takes: ['n', 'a_A', 'phi_A', 'a_C', 'phi_C'],
  gives: {
    e_p: 'a_A*(sin(2*pi*(n + phi_A)) - sin(2*pi*phi_A)) + a_C*(sin(2*pi*(n + phi_C)) - sin(2*pi*phi_C))',
  },
  source:
    'One sine a turn of each thread, as measured on the motion, set to nought at the start; the two add in series.',
  compute: ({ n, a_A, phi_A, a_C, phi_C }) => ({ e_p: mm(wave(n, a_A, phi_A) + wave(n, a_C, phi_C)) }),
});

const wave = (n: number, a: number, phi: number): number => a * (Math.sin(TWO_PI * (n + phi)) - Math.sin(TWO_PI * phi));

export const localRate = relation({
  name: 'local-rate',
  says: 'Local rate: motion per turn at one point of the turn, with the periodic errors.',
  takes: ['Delta', 'n', 'a_A', 'phi_A', 'a_C', 'phi_C'],
  gives: { v_n: 'Delta + 2*pi*a_A*cos(2*pi*(n + phi_A)) + 2*pi*a_C*cos(2*pi*(n + phi_C))' },
  source: 'Derivative of the motion with its periodic errors.',
  compute: ({ Delta, n, a_A, phi_A, a_C, phi_C }) => ({
    v_n: mm(Delta + TWO_PI * (a_A * Math.cos(TWO_PI * (n + phi_A)) + a_C * Math.cos(TWO_PI * (n + phi_C)))),
  }),
});

export const jointAmplitude = relation({
  name: 'joint-amplitude',
  says: 'Amplitude of both periodic errors together at their phases: anything between their difference and their sum.',
  takes: ['a_A', 'a_C', 'phi_A', 'phi_C'],
  gives: { a_p: 'sqrt((a_A + a_C*cos(2*pi*(phi_C - phi_A)))^2 + (a_C*sin(2*pi*(phi_C - phi_A)))^2)' },
  source: 'Sum of two sines of the same period, by phasors.',
  compute: ({ a_A, a_C, phi_A, phi_C }) => {
    const apart = TWO_PI * (phi_C - phi_A);
    return { a_p: mm(Math.hypot(a_A + a_C * Math.cos(apart), a_C * Math.sin(apart))) };
  },
});

export const jointSlope = relation({
  name: 'joint-slope',
  says: 'Steepest motion per turn that a periodic error of this amplitude adds or takes away.',
  takes: ['a_p'],
  gives: { v_p: '2*pi*a_p' },
  source: 'Derivative of a sin(2πn).',
  compute: ({ a_p }) => ({ v_p: mm(TWO_PI * a_p) }),
});

export const mostPeriodic = relation({
  name: 'most-periodic',
  says: 'Periodic error, both threads together, at which the motion first stands still.',
  takes: ['Delta'],
  gives: { a_m: 'abs(Delta)/(2*pi)' },
  source: 'Net lead equal to the steepest slope of the periodic error.',
  compute: ({ Delta }) => ({ a_m: mm(Math.abs(Delta) / TWO_PI) }),
});

export const backwardRun = relation({
  name: 'backward-run',
  says: 'How far the carried part runs back in every turn, and for what share of the turn.',
  takes: ['Delta', 'v_p'],
  gives: {
    z_b: '(sqrt(v_p^2 - min(abs(Delta), v_p)^2) - abs(Delta)*acos(min(1, abs(Delta)/v_p)))/pi',
    q_b: 'acos(min(1, abs(Delta)/v_p))/pi',
  },
  source: 'Integral of the local rate between its two zeros; nought while the steepest slope is below the net lead.',
  refuses: ({ v_p }) => (v_p > 0 ? undefined : bad('no-periodic-error', {})),
  compute: ({ Delta, v_p }) => {
    const size = Math.min(Math.abs(Delta), v_p);
    // By the tangent, since a cosine near 1 knows little of its angle.
    const half = Math.atan2(Math.sqrt(v_p - size) * Math.sqrt(v_p + size), size);
    return { z_b: mm((v_p * sineLessCosine(half)) / Math.PI), q_b: plain(half / Math.PI) };
  },
});

/** sin x − x cos x for x ≥ 0: the series where the difference would lose its digits and come out below nought. */
const sineLessCosine = (x: number): number =>
  x < 0.05 ? x ** 3 / 3 - x ** 5 / 30 + x ** 7 / 840 : Math.sin(x) - x * Math.cos(x);

export const waveAllRound = relation({
  name: 'wave-all-round',
  says: 'Rise of a screw on the high spots, where its helix and that of its nut wave once a turn and touch all round.',
  takes: ['n', 'a_s', 'a_n'],
  // The rule of cosines without its difference, which would fall below nought by rounding where both waves are alike.
  gives: { z_w: 'sqrt((a_s - a_n)^2 + 4*a_s*a_n*sin(pi*n)^2)' },
  source: 'Highest point of the difference of two waves of one period, turned against each other; kept from tilting.',
  compute: ({ n, a_s, a_n }) => ({
    z_w: mm(Math.hypot(a_s - a_n, 2 * Math.sqrt(a_s * a_n) * Math.sin(Math.PI * n))),
  }),
});

export const waveThrough = relation({
  name: 'wave-through',
  says: 'The part of the waves of both helices that reaches the motion, engaged all round and kept from tilting: the smaller of the two.',
  takes: ['a_s', 'a_n'],
  gives: { a_w: 'min(a_s, a_n)' },
  source: 'Half of the way from the highest to the lowest rise of wave-all-round.',
  compute: ({ a_s, a_n }) => ({ a_w: mm(Math.min(a_s, a_n)) }),
});

export const waveLean = relation({
  name: 'wave-lean',
  says: 'Tilt of a screw whose helix waves once a turn, in an exact short nut in which it is free to tilt but not to go sideways.',
  takes: ['a_s', 'd_2'],
  gives: { tau: 'atan(2*a_s/d_2)' },
  source: 'A wave of one period round the pitch circle is a plane that leans.',
  compute: ({ a_s, d_2 }) => ({ tau: rad(Math.atan((2 * a_s) / d_2)) }),
});

export const waveShift = relation({
  name: 'wave-shift',
  says: 'Shift across of a screw whose helix waves once a turn, in an exact nut in which it is free to go sideways.',
  takes: ['a_s'],
  gives: { x_a: 'a_s*sqrt(3)' },
  source:
    'A flank that slopes by 30° rises by tan 30° of a shift, as a wave of one period round the axis; derived here.',
  compute: ({ a_s }) => ({ x_a: mm(a_s * Math.sqrt(3)) }),
});

/** A pair with its periodic errors, as seen along the turns. */
export interface DrunkenPair {
  readonly Delta: Millimetres;
  readonly a_A: Millimetres;
  readonly phi_A: Turns;
  readonly a_C: Millimetres;
  readonly phi_C: Turns;
}

/** Part of the turning, from one number of turns to a larger one. */
export interface Stretch {
  readonly from: Turns;
  readonly to: Turns;
}

/**
 * Below this share of the net lead the motion is called nearly standing. A convention of this notebook: at a tenth, ten
 * flats do the work of one.
 */
export const NEARLY_STANDS = plain(0.1);

/**
 * The stretches between two numbers of turns in which the local rate, counted along the net motion, is below `share` of the
 * net lead: 0 for running backwards, NEARLY_STANDS for standing as good as still. One a turn or none; those at the ends are
 * cut off there. A stretch that only touches (rate exactly at the limit) is left out.
 */
export const slowStretches = (pair: DrunkenPair, from: number, to: number, share = 0): Result<Stretch[]> => {
  const { Delta, a_A, phi_A, a_C, phi_C } = pair;
  const refusal = outOfBounds('Delta', Delta) ?? outOfBounds('n', from) ?? outOfBounds('n', to);
  if (refusal) return refusal;
  if (!(Math.abs(Delta) > 0)) return bad('equal-leads-nothing-slower', {});
  if (!(from <= to && share >= 0 && share < 1)) return bad('stretch-unread', { from, to, share });
  const joint = jointAmplitude.of({ a_A, a_C, phi_A, phi_C });
  if (!joint.ok) return joint;
  const steepest = TWO_PI * joint.value.a_p;
  const limit = (1 - share) * Math.abs(Delta);
  if (!(steepest > limit)) return good([]);
  const x = a_A * Math.cos(TWO_PI * phi_A) + a_C * Math.cos(TWO_PI * phi_C);
  const y = a_A * Math.sin(TWO_PI * phi_A) + a_C * Math.sin(TWO_PI * phi_C);
  // The wave falls steepest half a turn after it rises steepest; against a falling net motion its rise is what slows.
  const slowest = -Math.atan2(y, x) / TWO_PI + (Delta > 0 ? 0.5 : 0);
  const half = Math.acos(limit / steepest) / TWO_PI;
  const stretches: Stretch[] = [];
  for (let k = Math.ceil(from - half - slowest); k <= Math.floor(to + half - slowest); k++) {
    const stretch = {
      from: turns(Math.max(from, slowest + k - half)),
      to: turns(Math.min(to, slowest + k + half)),
    };
    if (stretch.to > stretch.from) stretches.push(stretch);
  }
  return good(stretches);
};
