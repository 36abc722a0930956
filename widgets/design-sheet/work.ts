/**
 * A whole design worked through: the questions of all chapters asked of one pair. Every number is an engine's; a
 * question that has no answer for this design says why in its place, and the rest of the sheet stands.
 */
import {
  axialPlayA,
  axialPlayC,
  bad,
  ballOnFlat,
  diameters,
  firstYield,
  fitOfThread,
  gain,
  good,
  handForce,
  kelvins,
  leastRate,
  lockWindUp,
  megapascals,
  mm,
  newtonMillimetres,
  newtons,
  type PairEffort,
  type PreloadVerdict,
  pairEffort,
  perAngle,
  periodicSlope,
  perKelvin,
  perStep,
  plain,
  preloadVerdict,
  type Result,
  rad,
  rssLeadError,
  stroke,
  type Thread,
  thermalGrowth,
  thermalMaterial,
  threadForces,
  turnsAvailable,
  turnsLost,
  wallOfSleeve,
  windUp,
  worstLeadError,
} from '../engine/index.ts';
import { type Dress, numeral, show, type UnitView } from '../shared/format.ts';
import { stepName as stepNameOf, stepsOf } from '../shared/knob.ts';
import type { Numbers } from '../shared/numbers.ts';
import { pairOf } from '../shared/pair-of.ts';
import { preloadOf } from '../shared/preload-of.ts';
import { tipOf } from '../shared/tip.ts';

/** What the sheet says of one thing: a value and how it is dressed, words, or why there is no value. */
export interface Line {
  readonly name: string;
  readonly value?: { readonly amount: number; readonly dress: Dress };
  readonly to?: { readonly amount: number; readonly dress: Dress };
  readonly words?: string;
}

export interface Term {
  readonly name: string;
  /** mm, never negative. */
  readonly size: number;
}

export interface Check {
  readonly passed: boolean;
  readonly says: (view: UnitView) => string;
}

export interface Sheet {
  readonly A: Thread;
  readonly C: Thread;
  readonly Delta: number;
  readonly perStep: number;
  readonly stepName: string;
  readonly groups: readonly { readonly title: string; readonly lines: readonly Line[] }[];
  readonly budget: { readonly fixed: readonly Term[]; readonly growing: readonly Term[]; readonly seated: boolean };
  readonly checks: readonly Check[];
  readonly assumptions: readonly string[];
}

const MOTION: Dress = { shown: 'motion', digits: 4 };
const SIZE: Dress = { shown: 'size', digits: 4 };
const line = (name: string, amount: number, dress: Dress): Line => ({ name, value: { amount, dress } });
const range = (name: string, from: number, to: number, dress: Dress): Line => ({
  name,
  value: { amount: from, dress },
  to: { amount: to, dress },
});
const words = (name: string, text: string): Line => ({ name, words: text });

export const workSheet = (numbers: Numbers): Result<Sheet> => {
  const pair = pairOf(numbers);
  if (!pair.ok) return pair;
  const { A, C, Delta } = pair.value;
  const v = numbers.values;
  const divider = numbers.choices.divider ?? 'hexagon';
  const k = stepsOf(divider, v.k_d ?? 50);
  const stepName = stepNameOf(divider);
  if (Delta === 0)
    return bad(
      'The two leads are equal, so this design does not move what it carries: choose threads whose leads differ.',
    );
  const step = perStep.of({ Delta, k: plain(k) });
  if (!step.ok) return step;
  const checks: Check[] = [];
  const check = (passed: boolean, says: Check['says']) => void checks.push({ passed, says });
  const wantedStroke = Math.abs(v.S_w ?? 0);
  const used = wantedStroke / Math.abs(Delta);

  const motion = motionLines(numbers, Delta, step.value.s, k, stepName);
  if (v.s_w !== undefined)
    check(
      step.value.s <= v.s_w,
      (view) =>
        `One ${stepName} moves ${show(step.value.s, MOTION, view)}; ${show(v.s_w ?? 0, MOTION, view)} or less was wanted.`,
    );

  const travel = travelLines(numbers, Delta, check, wantedStroke);
  const fit = fitLines(numbers, check);
  const seat = seatOf(numbers, used, check);
  const play = playOf(A, C, Delta, stepName, k);
  const effort = effortOf(numbers, seat.forces, check);
  const contact = contactLines(numbers, check);
  const heat = heatLines(numbers, step.value.s, stepName);

  const error = errorTerms(numbers, Delta, wantedStroke, check);
  const fixed: Term[] = [
    ...(seat.seated ? [] : [{ name: 'play, on reversal', size: play.most }]),
    ...error.fixed,
    ...effort.windUp,
    ...heat.terms,
  ];
  return good({
    A,
    C,
    Delta,
    perStep: step.value.s,
    stepName,
    groups: [
      { title: 'Motion', lines: motion },
      { title: 'Travel', lines: travel },
      { title: 'Fit and play', lines: [...fit, ...play.lines] },
      { title: 'Preload', lines: seat.lines },
      { title: 'Effort and lock', lines: effort.lines },
      { title: 'Tip and heat', lines: [...contact, ...heat.lines] },
    ],
    budget: { fixed, growing: error.growing, seated: seat.seated },
    checks,
    assumptions: [
      'Net lead, travel, play and effort: the relations of the chapters, with their sources there.',
      'Limits of size: ISO 965-1 and ASME B1.1 by the classes written, or the everyday ones.',
      'Lead errors, friction, hand angle and lock stiffness are the numbers stated, not measured.',
      'Moduli, Poisson’s ratios and yield strengths of the materials are from memory; expansion as said in the chapter on heat.',
    ],
  });
};

const motionLines = (numbers: Numbers, Delta: number, s: number, k: number, stepName: string): Line[] => {
  const hand =
    numbers.values.theta_h === undefined
      ? undefined
      : perAngle.of({ Delta: mm(Delta), theta: rad(numbers.values.theta_h) });
  return [
    line('per turn, clockwise', Delta, MOTION),
    line(`per ${stepName} (${numeral(k)} a turn)`, s, MOTION),
    ...(hand?.ok ? [line('smallest a hand can set again', hand.value.s, MOTION)] : []),
  ];
};

type Note = (passed: boolean, says: Check['says']) => void;

const travelLines = (numbers: Numbers, Delta: number, check: Note, wanted: number): Line[] => {
  const { A, C } = numbers.threads as { A: Thread; C: Thread };
  const { X_A = 0, X_C = 0 } = numbers.values;
  const n = turnsAvailable.of({ X_A: mm(X_A), L_A: A.L, X_C: mm(X_C), L_C: C.L });
  if (!n.ok) return [words('turns available', n.reason)];
  const S = stroke.of({ n_max: n.value.n_max, Delta: mm(Delta) });
  const G = gain.of({ L: mm(Math.max(A.L, C.L)), Delta: mm(Delta) });
  if (!S.ok) return [words('stroke', S.reason)];
  check(
    S.value.S >= wanted,
    (view) =>
      `The threads give a stroke of ${show(S.value.S, MOTION, view)}; ${show(wanted, MOTION, view)} was wanted.`,
  );
  return [
    line('turns available', n.value.n_max, { shown: 'turns', digits: 3 }),
    line('stroke', S.value.S, MOTION),
    words('runs out first', X_A / A.L <= X_C / C.L ? 'thread A' : 'thread C'),
    ...(G.ok ? [line('thread eaten per unit of stroke', G.value.G, { shown: 'plain', digits: 3 })] : []),
  ];
};

const fitLines = (numbers: Numbers, check: Note): Line[] => {
  if (numbers.choices.arrangement !== 'nested') return [];
  const { A, C } = numbers.threads as { A: Thread; C: Thread };
  const [outside, inside] = [fitOfThread(A), fitOfThread(C)];
  if (!outside.ok) return [words('wall of the sleeve', outside.reason)];
  if (!inside.ok) return [words('wall of the sleeve', inside.reason)];
  const wall = wallOfSleeve(outside.value.screw, inside.value.nut);
  if (!wall.ok) {
    check(false, () => wall.reason);
    return [words('wall of the sleeve', wall.reason)];
  }
  const least = numbers.values.t_l ?? 0;
  check(
    wall.value.least >= least,
    (view) =>
      `The wall of the sleeve is ${show(wall.value.least, SIZE, view)} at its thinnest; at least ${show(least, SIZE, view)} was asked for.`,
  );
  return [range('wall of the sleeve, least to most', wall.value.least, wall.value.most, SIZE)];
};

const playOf = (A: Thread, C: Thread, Delta: number, stepName: string, k: number): { lines: Line[]; most: number } => {
  const [a, c] = [fitOfThread(A), fitOfThread(C)];
  if (!a.ok) return { lines: [words('play', a.reason)], most: 0 };
  if (!c.ok) return { lines: [words('play', c.reason)], most: 0 };
  const at = (end: 'least' | 'most') => {
    const jA = axialPlayA.of({ c_A: a.value.clearance.pitch[end] });
    const jC = axialPlayC.of({ c_C: c.value.clearance.pitch[end] });
    return jA.ok && jC.ok ? { j_A: jA.value.j_A, j_C: jC.value.j_C } : undefined;
  };
  const [least, most] = [at('least'), at('most')];
  if (!least || !most) return { lines: [words('play', 'At the tight end of the limits the threads bind.')], most: 0 };
  const lost = turnsLost.of({ ...most, Delta: mm(Delta) });
  return {
    most: most.j_A + most.j_C,
    lines: [
      range(`play of thread A, ${a.value.classes}`, least.j_A, most.j_A, MOTION),
      range(`play of thread C, ${c.value.classes}`, least.j_C, most.j_C, MOTION),
      ...(lost.ok
        ? [
            words(
              'lost on reversal without preload, at most',
              `${show(lost.value.n_j, { shown: 'turns', digits: 3 }, 'metric')}, ${numeral(lost.value.n_j * k, 3)} ${stepName}s`,
            ),
          ]
        : []),
    ],
  };
};

interface Seated {
  readonly seated: boolean;
  readonly forces: { readonly A: number; readonly C: number; readonly load: number } | undefined;
  readonly lines: readonly Line[];
}

const seatOf = (numbers: Numbers, used: number, check: Note): Seated => {
  const preload = preloadOf(numbers, used);
  const verdict: Result<PreloadVerdict> = preload.ok ? preloadVerdict(preload.value.given) : preload;
  if (!preload.ok || !verdict.ok) {
    const reason = preload.ok ? (verdict.ok ? '' : verdict.reason) : preload.reason;
    check(false, () => reason);
    return { seated: false, forces: undefined, lines: [words('preload', reason)] };
  }
  const { A, C } = verdict.value;
  const seated = A.kind === 'seated' && C.kind === 'seated';
  for (const thread of [A, C]) check(thread.kind === 'seated', () => thread.says);
  const most = preload.value.given.load.most;
  const spring = verdict.value.springs[0];
  return {
    seated,
    forces: {
      ...threadForces(preload.value.given, 0, most),
      load: most + preload.value.given.weightCarried * preload.value.given.attitude,
    },
    lines: [
      ...(spring
        ? [range('force of the spring over the stroke', spring.least, spring.most, { shown: 'force', digits: 3 })]
        : [words('spring', 'none')]),
      ...(
        [
          ['A', A],
          ['C', C],
        ] as const
      ).map(([name, thread]) =>
        words(`thread ${name}`, thread.kind === 'seated' ? `seated on its ${thread.flank} flanks` : thread.kind),
      ),
    ],
  };
};

const effortOf = (numbers: Numbers, forces: Seated['forces'], check: Note): { lines: Line[]; windUp: Term[] } => {
  const { A, C } = numbers.threads as { A: Thread; C: Thread };
  const { mu = 0.15, r_h, kappa } = numbers.values;
  if (!forces)
    return { lines: [words('effort', 'not worked out, since the forces on the threads are not known')], windUp: [] };
  const thread = (t: Thread) => ({ h: t.h, L: t.L, d2: diameters(t).d2, mu });
  const effort = pairEffort({ A: thread(A), C: thread(C), load: forces.load, onThread: { A: forces.A, C: forces.C } });
  if (!effort.ok) return { lines: [words('effort', effort.reason)], windUp: [] };
  const e = effort.value;
  const rim = r_h === undefined ? undefined : handForce.of({ M: newtonMillimetres(e.against.torque), r_h: mm(r_h) });
  check(e.selfLocking, () =>
    e.selfLocking
      ? 'The load can’t turn the part by itself.'
      : 'The load turns the part by itself: it needs a brake or more friction.',
  );
  const wound = kappa === undefined ? undefined : windUpOf(e, kappa, C);
  return {
    lines: [
      line('torque against the load', e.against.torque, { shown: 'N·mm', digits: 3 }),
      line('torque with the load', e.along.torque, { shown: 'N·mm', digits: 3 }),
      ...(rim?.ok ? [line('force of the hand at the rim', rim.value.F_h, { shown: 'force', digits: 3 })] : []),
      line('torque the lock must hold', Math.max(Math.abs(e.against.handed), Math.abs(e.along.handed)), {
        shown: 'N·mm',
        digits: 3,
      }),
      ...(typeof wound === 'number'
        ? [line('wind-up of the lock, turning round', wound, MOTION)]
        : wound
          ? [words('wind-up of the lock', wound)]
          : []),
    ],
    windUp: typeof wound === 'number' ? [{ name: 'wind-up of the lock, on reversal', size: wound }] : [],
  };
};

/** How far the carried part shifts when the sense of turning, and with it the torque on the lock, changes; or why not. */
const windUpOf = (e: PairEffort, kappa: number, C: Thread): number | string => {
  const at = (handed: number): Result<number> => {
    const psi = lockWindUp.of({ M_L: newtonMillimetres(handed), kappa: newtonMillimetres(kappa) });
    if (!psi.ok) return psi;
    const z = windUp.of({ h_C: plain(C.h), L_C: C.L, psi: psi.value.psi });
    return z.ok ? good(z.value.z_c) : z;
  };
  const [one, other] = [at(e.against.handed), at(e.along.handed)];
  return !one.ok ? one.reason : !other.ok ? other.reason : Math.abs(one.value - other.value);
};

const errorTerms = (
  numbers: Numbers,
  Delta: number,
  wanted: number,
  check: Note,
): { fixed: Term[]; growing: Term[] } => {
  const { A, C } = numbers.threads as { A: Thread; C: Thread };
  const { eps_A = 0, eps_C = 0, a_A = 0, a_C = 0, theta_h: theta } = numbers.values;
  const lead = { L_C: C.L, eps_C: plain(eps_C), L_A: A.L, eps_A: plain(eps_A), Delta: mm(Delta) };
  const worst = worstLeadError.of(lead);
  const rss = rssLeadError.of(lead);
  const slope = periodicSlope.of({ a_A: mm(a_A), a_C: mm(a_C) });
  const rate = slope.ok ? leastRate.of({ Delta: mm(Delta), v_p: slope.value.v_p }) : slope;
  if (rate.ok)
    check(rate.value.v_min > 0, (view) =>
      rate.value.v_min > 0
        ? `The motion never stalls: at its slowest it still makes ${show(rate.value.v_min, MOTION, view)} a turn.`
        : 'The periodic errors are steeper than the net lead: in part of every turn the motion stalls or runs back.',
    );
  const hand = theta === undefined ? undefined : perAngle.of({ Delta: mm(Delta), theta: rad(theta) });
  return {
    fixed: [
      ...(a_A + a_C > 0 ? [{ name: 'periodic error, both threads', size: a_A + a_C }] : []),
      ...(hand?.ok ? [{ name: 'what a hand can set', size: hand.value.s }] : []),
    ],
    growing: [
      ...(rss.ok ? [{ name: 'lead error over the stroke, root sum square', size: rss.value.eps_r * wanted }] : []),
      ...(worst.ok ? [{ name: 'lead error over the stroke, worst case', size: worst.value.eps_w * wanted }] : []),
    ],
  };
};

const contactLines = (numbers: Numbers, check: Note): Line[] => {
  const { R, F_hi = 0, W_c = 0 } = numbers.values;
  if (R === undefined) return [];
  const tip = tipOf(numbers);
  if (!tip.ok) return [words('contact at the tip', tip.reason)];
  const { seat, E_s, Y } = tip.value;
  const F = newtons(Math.max(0, F_hi + W_c));
  const hertz = ballOnFlat.of({ F, R: mm(R), E_s: megapascals(E_s) });
  const soft = firstYield.of({ R: mm(R), Y: megapascals(Y), E_s: megapascals(E_s) });
  if (!hertz.ok) return [words('contact at the tip', hertz.reason)];
  if (!soft.ok) return [words('contact at the tip', soft.reason)];
  const force = (x: number) => show(x, { shown: 'force', digits: 3 }, 'metric');
  check(
    F <= soft.value.F_y,
    () => `A ball of this size on ${seat.name} begins to dent at ${force(soft.value.F_y)}; it carries ${force(F)}.`,
  );
  return [
    ...(F <= soft.value.F_y
      ? [
          line('the tip sinks in by', hertz.value.delta, MOTION),
          line('peak pressure', hertz.value.p_0, { shown: 'MPa', digits: 3 }),
        ]
      : [words('the tip', 'dents its seat, so the elastic figures do not hold')]),
    line('first dent at', soft.value.F_y, { shown: 'force', digits: 3 }),
  ];
};

const heatLines = (numbers: Numbers, s: number, stepName: string): { lines: Line[]; terms: Term[] } => {
  const { l, Delta_T } = numbers.values;
  const material = thermalMaterial(numbers.choices.path ?? 'steel');
  if (l === undefined || Delta_T === undefined || !material.ok) return { lines: [], terms: [] };
  const growth = thermalGrowth.of({ alpha_T: perKelvin(material.value.alpha), l: mm(l), Delta_T: kelvins(Delta_T) });
  if (!growth.ok) return { lines: [words('growth by warmth', growth.reason)], terms: [] };
  const size = Math.abs(growth.value.Delta_l);
  return {
    lines: [line('grows with that warmth', size, MOTION), words('that is', `${numeral(size / s, 3)} ${stepName}s`)],
    terms: [{ name: 'warmth', size }],
  };
};
