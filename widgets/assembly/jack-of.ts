/**
 * The jack as built from the numbers of a chapter, and its runs, worked once and shared by the figures of a page.
 *
 * What the reader does not state is taken as follows, and a chapter says so: steel threads give by the relation thread-stiffness; between them the turned part
 * is a round shank of steel as thick as the thinner of both cores, which is too soft where it carries a hexagon, and rigid where one thread lies inside the other; the ball and its seat are
 * of hardened steel; guide, key and
 * bench give by the stiffnesses below, which are assumptions, and hardly show beside a lean. A short run is worked at once; a long one in slices,
 * and the figure draws again when it is done.
 */
import {
  type Asked,
  at,
  type Bad,
  bad,
  contactModulus,
  diameters,
  good,
  type Helix,
  type Jack,
  jackRun,
  megapascals,
  mm,
  plain,
  playAfterCoat,
  type Result,
  type Stand,
  type Thread,
  threadStiffness,
  type WhichPart,
  type WholeStiffness,
  whichPartRun,
  wholeStiffness,
} from '../engine/index.ts';
import type { OptionOf } from '../input/choices.ts';
import { heldWork } from './held-work.ts';

/** Young's modulus of steel, MPa, and Poisson's ratio (from memory); stiffness of guide, key and bench, N/mm (assumptions). */
const STEEL = 210_000;
const POISSON = 0.3;
const STEEL_SHEAR = STEEL / (2 * (1 + POISSON));
const GUIDE = 1e5;
const KEY = 1e5;
const BENCH = 1e6;

export const JACK_QUANTITIES = [
  'F',
  'Q_y',
  'y_b',
  'l_eA',
  'l_eC',
  'H_A',
  'H_C',
  'H_t',
  'c_mA',
  'c_mC',
  't_z',
  'eps_A',
  'eps_C',
  'eps_nA',
  'eps_nC',
  'a_s',
  'a_n',
  'e_o',
  'alpha_o',
  'l_g',
  'c_g',
  'H_g',
  'g_k',
  'r_k',
  'kappa',
  'F_0',
  'k_s',
  'mu',
  'mu_g',
  'R_o',
  'R_i',
  'R',
] as const;
export const JACK_CHOICES = ['arrangement', 'guided', 'keeper', 'longer_A', 'longer_C'] as const;

export interface JackNumbers {
  readonly threads: Readonly<Record<'A' | 'C', Thread>>;
  readonly values: Readonly<Record<(typeof JACK_QUANTITIES)[number], number>>;
  readonly choices: { readonly [K in (typeof JACK_CHOICES)[number]]: OptionOf<K> };
}

/** Those that change nothing as the choices stand. */
export const idleOfJack = ({ choices, values }: Pick<JackNumbers, 'choices' | 'values'>) => [
  ...(choices.guided === 'in a guide' ? [] : (['l_g', 'c_g', 'H_g'] as const)),
  ...(choices.keeper === 'a key' ? (['kappa'] as const) : (['g_k', 'r_k'] as const)),
  ...(values.F_0 > 0 ? [] : (['k_s'] as const)),
  ...(choices.guided === 'in a guide' || choices.keeper === 'a key' ? [] : (['mu_g'] as const)),
];

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    /** Heights above the bench, mm. */
    'built-threads-overlap': { readonly lower: number; readonly upper: number };
    'built-tip-inside': { readonly tip: number; readonly least: number };
  }
}

/** Why parts of these heights can’t stand on each other. */
const misfit = ({ values: v, choices }: JackNumbers): Bad | undefined => {
  const [endsA, beginsC, endsC] = [v.H_A + v.l_eA / 2, v.H_C - v.l_eC / 2, v.H_C + v.l_eC / 2];
  const apart = choices.arrangement === 'in line' || choices.arrangement === 'one spindle, two nuts';
  if (apart && !(beginsC >= endsA)) return bad('built-threads-overlap', { lower: endsA, upper: beginsC });
  if (!(v.H_t >= endsC)) return bad('built-tip-inside', { tip: v.H_t, least: endsC });
  return v.R_i < v.R_o ? undefined : bad('ring-inside-out', { outer: v.R_o, inner: v.R_i });
};

export const jackOf = (numbers: JackNumbers): Result<Jack> => {
  const wrong = misfit(numbers);
  if (wrong) return wrong;
  const { threads, values: v, choices } = numbers;
  const helix = (leadError: number, wave: number, phase: number): Helix => ({ leadError, wave, phase });
  const threadOf = (name: 'A' | 'C'): Result<Jack['A']> => {
    const thread = threads[name];
    const { d2, d3 } = diameters(thread);
    const clearance = name === 'A' ? v.c_mA : v.c_mC;
    // Asked only whether it goes together; the play itself follows from the clearance.
    const coated = playAfterCoat.of({ c: mm(clearance), t_z: mm(v.t_z) });
    if (!coated.ok) return coated;
    const stiff = threadStiffness.of({ E_l: megapascals(STEEL), d: thread.d, d_3: d3 });
    if (!stiff.ok) return stiff;
    return good({
      h: thread.h,
      L: thread.L,
      d2,
      engaged: name === 'A' ? v.l_eA : v.l_eC,
      middle: name === 'A' ? v.H_A : v.H_C,
      clearance: clearance - 4 * v.t_z,
      // A sleeve takes a spindle; else a cap or a nut stands on thread C.
      upper: name === 'C' && choices.arrangement !== 'nested' ? 'nut' : 'screw',
      through: choices[`longer_${name}`] === 'its nut' ? 'nut' : 'screw',
      // Crest on crest at the start, so that the waves begin where they pass on least.
      screw: helix(name === 'A' ? v.eps_A : v.eps_C, v.a_s, 0),
      nut: helix(name === 'A' ? v.eps_nA : v.eps_nC, v.a_n, 0),
      stiffness: stiff.value.k_e,
      mu: v.mu,
    });
  };
  const A = threadOf('A');
  if (!A.ok) return A;
  const C = threadOf('C');
  if (!C.ok) return C;
  const [from, to] = [v.H_A + v.l_eA / 2, v.H_C - v.l_eC / 2];
  const steel = { E_1: megapascals(STEEL), E_2: megapascals(STEEL), nu_1: plain(POISSON), nu_2: plain(POISSON) };
  const seat = contactModulus.of(steel);
  if (!seat.ok) return seat;
  return good({
    A: A.value,
    C: C.value,
    ring: { outer: v.R_o, inner: v.R_i, stiffness: BENCH },
    guide:
      choices.guided === 'in a guide'
        ? { length: v.l_g, middle: v.H_g, clearance: v.c_g, radius: 8, stiffness: GUIDE, mu: v.mu_g }
        : undefined,
    lock:
      choices.keeper === 'a key'
        ? { by: 'key', gap: v.g_k, radius: v.r_k, height: v.H_C, stiffness: KEY, mu: v.mu_g }
        : { by: 'springs', kappa: v.kappa },
    axes: { offset: v.e_o, angle: v.alpha_o, phase: 0 },
    shank:
      choices.arrangement !== 'nested' && to > from
        ? {
            length: to - from,
            middle: (from + to) / 2,
            diameter: Math.min(diameters(threads.A).d3, diameters(threads.C).d3),
            E: STEEL,
            G: STEEL_SHEAR,
          }
        : undefined,
    tip: v.H_t,
    ball: { radius: v.R, modulus: seat.value.E_s },
    load: v.F,
    beside: 0,
    push: v.Q_y,
    pushHeight: v.y_b,
    springs: v.F_0 > 0 ? { force: v.F_0, rate: v.k_s } : undefined,
    weightTurned: 0,
    drag: 0,
  });
};

/** The run with the push and the same without, at every turn asked for. */
export interface Runs {
  /** What they are of. */
  readonly key: string;
  readonly jack: Jack;
  readonly over: number;
  readonly back: boolean;
  readonly pushed: readonly Stand[];
  readonly quiet: readonly Stand[];
  /** How stiff it is as a whole; none of one that carries nothing. */
  readonly whole: WholeStiffness | undefined;
}

/** Heights off the nominal motion, from the start of the run, mm. */
export const heightsOff = (run: readonly Stand[]): number[] => run.map((s) => s.z - at(run, 0).z);

/** What is said of the path of the tip, mm: its shift sideways by the push at the start, its width, and the most that its height is off. */
export const pathOf = ({
  pushed,
  quiet,
}: Runs): { readonly moves: number; readonly round: number; readonly off: number } => {
  const [first, still] = [at(pushed, 0), at(quiet, 0)];
  const width = (of: 'x' | 'y') => {
    const values = pushed.map((s) => s[of]);
    return Math.max(...values) - Math.min(...values);
  };
  return {
    moves: Math.hypot(first.x - still.x, first.y - still.y),
    round: Math.max(width('x'), width('y')),
    off: Math.max(...heightsOff(pushed).map(Math.abs)),
  };
};

/** How far the tip goes from the axis at most, mm. */
export const reachOf = (run: readonly Stand[]): number => Math.max(...run.map((s) => Math.hypot(s.x, s.y)));

export type RunsFound = { readonly at: 'work'; readonly key: string } | { readonly at: 'end'; readonly runs: Runs };

/** Places in a turn; a run of more places than AT_ONCE is worked in slices. */
const PER_TURN = 24;
const AT_ONCE = 49;
/** A hundred turns have so many places; more turns are taken in longer steps. What is printed without a page has no time for so many. */
const MOST_PLACES = 2400;
const MOST_PRINTED = 48;

const held = heldWork<Runs>();

/** Tells a figure how far a long run has come and when it is done, for as long as its stage is on the page. */
export const whenRun = held.when;

/** The last run without a push, which stays the same while the push is tried at other sizes and heights. */
let lastQuiet: { readonly key: string; readonly run: readonly Stand[] } | undefined;

function* bothRuns(
  of: Pick<Runs, 'key' | 'jack' | 'over' | 'back'>,
  turns: readonly number[],
): Generator<number, Result<Runs>, void> {
  const { jack } = of;
  const half = function* (one: Jack, from: number): Generator<number, Result<readonly Stand[]>, void> {
    const run = jackRun(one, turns);
    for (;;) {
      const step = run.next();
      if (step.done) return step.value;
      yield from + step.value / 2;
    }
  };
  const still = { ...jack, push: 0, pushHeight: 0 };
  const key = JSON.stringify([still, turns]);
  const quiet = lastQuiet?.key === key ? good(lastQuiet.run) : yield* half(still, 0);
  if (!quiet.ok) return quiet;
  lastQuiet = { key, run: quiet.value };
  const pushed = jack.push === 0 ? quiet : yield* half(jack, 0.5);
  if (!pushed.ok) return pushed;
  yield 1;
  const whole = wholeStiffness(jack);
  if (whole && !whole.ok) return whole;
  return good({ ...of, pushed: pushed.value, quiet: quiet.value, whole: whole?.value });
}

/** The runs over this many turns clockwise, and back again if asked; where they take long, that they are at work. While a key is held, the last that were worked. */
export const runsOf = (jack: Jack, over: number, back: boolean): Result<RunsFound> => {
  const key = JSON.stringify([jack, over, back]);
  const most = typeof window === 'undefined' ? MOST_PRINTED : MOST_PLACES;
  const count = Math.min(most, Math.max(8, Math.round(PER_TURN * over)));
  const out = Array.from({ length: count + 1 }, (_, i) => (over * i) / count);
  const turns = back ? [...out, ...out.slice(0, -1).reverse()] : out;
  const result = held.of(key, () => bothRuns({ key, jack, over, back }, turns), turns.length <= AT_ONCE);
  if (result === undefined) return good({ at: 'work', key });
  return result.ok ? good({ at: 'end', runs: result.value }) : result;
};

/** Assemblies drawn from the errors of a jack, and which part to improve. */
export type WhichFound =
  | { readonly at: 'work'; readonly key: string }
  | { readonly at: 'end'; readonly key: string; readonly which: WhichPart };

const drawn = heldWork<WhichPart>();
export const whenDrawn = drawn.when;
/** Places in a turn at which each assembly is solved: enough for a wave once a turn. */
const PLACES = 6;
/** What is printed without a page has no time for more assemblies. */
const MOST_DRAWN = 16;

export const whichPartOf = (
  jack: Jack,
  over: number,
  draw: { readonly asked: Asked; readonly count: number; readonly seed: number },
): Result<WhichFound> => {
  const key = JSON.stringify([jack, over, draw]);
  // Over the first turn, which has every wave in it, and at the end, where a lead error is largest.
  const first = Math.min(over, 1);
  const turns = Array.from({ length: PLACES + 1 }, (_, i) => (first * i) / PLACES);
  if (over > first) turns.push(over);
  const count = typeof window === 'undefined' ? Math.min(draw.count, MOST_DRAWN) : draw.count;
  const result = drawn.of(key, () => whichPartRun(jack, turns, { ...draw, count }), false);
  if (result === undefined) return good({ at: 'work', key });
  return result.ok ? good({ at: 'end', key, which: result.value }) : result;
};
