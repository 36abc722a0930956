/**
 * The jack as built after n turns of its run: its adjuster, where the tip is, and by how much the path is drawn too large. The adjuster has the
 * threads, lengths of engagement and ball that are stated; what stands between and round them is as its kind of part assumes.
 */
import { type Adjuster, type Standing, standing } from '../../assembly/adjuster/adjuster.ts';
import { adjusterOf } from '../../assembly/adjuster/from-numbers.ts';
import {
  heightsOff,
  JACK_CHOICES,
  JACK_QUANTITIES,
  jackOf,
  pathOf,
  type Runs,
  reachOf,
  runsOf,
} from '../../assembly/jack-of.ts';
import { at, good, type Result, type Stand } from '../../engine/index.ts';
import { extentsOf } from '../kit/adjuster-extras.ts';
import { factorFor } from '../kit/factor.ts';
import type { NumbersOf } from '../kit/figure.ts';
import { type Aim, aimAt, type Look, SEEN_TURNS, type Vector } from '../kit/solid/view.ts';

export const QUANTITIES = [...JACK_QUANTITIES, 'n_o', 'n'] as const;
export const CHOICES = [...JACK_CHOICES, 'turning'] as const;
export type Given = NumbersOf<'A' | 'C', (typeof QUANTITIES)[number], (typeof CHOICES)[number], never>;

/** The tip: across the axis, along the push and square to it, and off the nominal height, mm. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly off: number;
}

/** What the run gives, once it is worked. */
export interface Path {
  readonly pushed: readonly Place[];
  readonly quiet: readonly Place[];
  /** Turns at each place of both. */
  readonly turns: readonly number[];
  readonly now: Place;
  readonly moves: number;
  readonly round: number;
  /** By how much it is drawn too large, across the axis and along it. */
  readonly across: number;
  readonly along: number;
}

export interface State {
  readonly adjuster: Adjuster;
  readonly standing: Standing;
  /** Turns, no more than the run has, and what was asked. */
  readonly n: number;
  readonly asked: number;
  readonly over: number;
  readonly back: boolean;
  readonly push: number;
  /** Height of the push as a share of that of the tip. */
  readonly pushedAt: number;
  readonly path: Path | undefined;
}

/** As wide and as high as the path may be drawn, in heights of the adjuster. */
const WIDE = 0.2;
const HIGH = 0.3;
/** Between the tip and the lowest place of the path. */
const GAP = 0.06;

export const stateOf = (numbers: Given): Result<State> => {
  const jack = jackOf(numbers);
  if (!jack.ok) return jack;
  const drawn = drawnOf(numbers);
  if (!drawn.ok) return drawn;
  const adjuster = drawn.value;
  const { n: asked, n_o: over, H_t, y_b, Q_y } = numbers.values;
  const back = numbers.choices.turning === 'there and back';
  const found = runsOf(jack.value, over, back);
  if (!found.ok) return found;
  const n = Math.max(0, Math.min(over, asked));
  return good({
    adjuster,
    standing: standing(adjuster, n),
    n,
    asked,
    over,
    back,
    push: Q_y,
    pushedAt: Math.min(1, y_b / H_t),
    path:
      found.value.at === 'end' ? pathDrawn(found.value.runs, Math.min(n, found.value.runs.over), adjuster) : undefined,
  });
};

/** Each thread long enough to be engaged as stated in the middle of its travel; where such parts don't go together, of lengths that their kinds assume. */
const drawnOf = ({ threads, values: v, choices }: Given): Result<Adjuster> => {
  const parts = { threads, choices: { arrangement: choices.arrangement }, ball: v.R };
  const q_e = 0.5 * Math.min(v.l_eA / threads.A.d, v.l_eC / threads.C.d);
  const [lA, lC] = [2 * v.l_eA - q_e * threads.A.d, 2 * v.l_eC - q_e * threads.C.d];
  const stated = adjusterOf({
    ...parts,
    values: { l_A: lA, b_A: Math.max(lA, v.H_A + v.l_eA / 2), l_C: lC, b_C: lC, q_e },
  });
  return stated.ok ? stated : adjusterOf(parts);
};

/** The nominal motion of the whole run is drawn so high, whatever the path turns out to be. */
const alongOf = (adjuster: Adjuster, over: number): number =>
  factorFor(Math.max(Math.abs(adjuster.Delta * over), 1e-7), HIGH * standing(adjuster, 0).height);

const pathDrawn = (runs: Runs, n: number, adjuster: Adjuster): Path => {
  const { over, back } = runs;
  const places = (run: readonly Stand[]): Place[] => {
    const off = heightsOff(run);
    return run.map(({ x, y }, i) => ({ x, y, off: at(off, i) }));
  };
  const pushed = places(runs.pushed);
  const tall = standing(adjuster, 0).height;
  const far = Math.max(reachOf(runs.pushed), reachOf(runs.quiet));
  const across = factorFor(Math.max(far, 1e-7), WIDE * tall);
  const { moves, round } = pathOf(runs);
  return {
    pushed,
    quiet: places(runs.quiet),
    turns: runs.pushed.map((s) => s.n),
    now: placeAt(pushed, n / over, back),
    moves,
    round,
    across,
    along: alongOf(adjuster, over),
  };
};

/** After this share of the way out, between the two places that were solved. */
const placeAt = (places: readonly Place[], share: number, back: boolean): Place => {
  const last = (back ? (places.length + 1) / 2 : places.length) - 1;
  const i = Math.min(last - 1, Math.floor(share * last));
  const t = share * last - i;
  const [p, q] = [at(places, i), at(places, i + 1)];
  return { x: p.x + (q.x - p.x) * t, y: p.y + (q.y - p.y) * t, off: p.off + (q.off - p.off) * t };
};

/** Top of the tip at the highest place of the run, and from where heights of the path are drawn, mm over the bottom of the base. */
const groundOf = ({ adjuster, over }: State): { readonly tip: number; readonly zero: number } => {
  const tip = Math.max(standing(adjuster, 0).height, standing(adjuster, over).height);
  const sinks = Math.min(0, adjuster.Delta * over) * alongOf(adjuster, over);
  return { tip, zero: tip + GAP * standing(adjuster, 0).height - sinks };
};

/** A place of the tip after so many turns, where it is drawn, mm. */
export const drawnAt = (s: State, { x, y, off }: Place, turns: number): Vector => {
  const { across = 0, along = 0 } = s.path ?? {};
  return [across * x, across * y, groundOf(s).zero + along * (s.adjuster.Delta * turns + off)];
};
export const AXIS: Place = { x: 0, y: 0, off: 0 };

/** Room for the parts and the path over them, whether it is there yet or not. */
export const aimOf = (s: State, look: Look): Aim => {
  const { bottom, half } = extentsOf(s.adjuster, SEEN_TURNS);
  const tall = standing(s.adjuster, 0).height;
  const high = Math.abs(s.adjuster.Delta * s.over) * alongOf(s.adjuster, s.over);
  return aimAt(look, bottom, groundOf(s).tip + 1.5 * GAP * tall + high, Math.max(half, WIDE * tall));
};
