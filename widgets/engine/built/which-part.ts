/**
 * Which part of a jack to improve: assemblies drawn from what each part may be off, each solved, and the same again with one part twice as good.
 *
 * Every error of the jack that is given is taken as the most that its part may have. Errors that have a sign are drawn evenly from minus to
 * plus that; amplitudes, offsets, angles and clearances evenly from none to that, with any phase. What is asked for is how far the tip is off at most over
 * the turns: its height off the nominal motion, or its place off the axis, beside that of the same jack without these errors.
 *   sampled       the value that 95 of 100 assemblies stay below (quantile.ts)
 *   statistical   root of the sum of squares of what each part alone does at its most, times 2/√3: the law of propagation for bounds (propagate.ts)
 *   worst         the plain sum of them, or all parts at their most together where that is more; never less than what was drawn
 *   ranking       by how much the sampled value falls where one part is drawn from half its spread, the same chances otherwise
 * Friction is left out here: it shifts all assemblies much alike, and the runs without it are the quick ones.
 * Sampling needs neither independence of effect nor straightness; where it and the statistical value differ by more than a tenth, the parts
 * bear on each other, or one rectangular part rules. Source: JCGM 101:2008 for sampling; JCGM 100:2008 for propagation; derived here.
 */
import { bad, good, type Result } from '../kernel/result.ts';
import { combined, flat } from '../numerics/propagate.ts';
import { quantileOfSorted } from '../numerics/quantile.ts';
import { randomState, uniform } from '../numerics/random.ts';
import { type Helix, type Jack, jackRun, type Stand } from './jack.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'built-none-together': { readonly count: number };
  }
}

export type ImprovablePart = 'lead A' | 'lead C' | 'waves' | 'offset' | 'angle' | 'guide' | 'key';
export const IMPROVABLE: readonly ImprovablePart[] = ['lead A', 'lead C', 'waves', 'offset', 'angle', 'guide', 'key'];

export type Asked = 'height' | 'place';

export interface PartRank {
  readonly part: ImprovablePart;
  /** What this part alone does at its most, mm. */
  readonly alone: number;
  /** How much the sampled value falls where it is twice as good, mm; below nought is chance. */
  readonly gains: number;
}

export interface WhichPart {
  readonly asked: Asked;
  /** What each assembly is off, in rising order, mm. */
  readonly errors: readonly number[];
  readonly sampled: number;
  readonly statistical: number;
  readonly worst: number;
  /** Best first; parts that may be off by nothing are left out. */
  readonly ranks: readonly PartRank[];
  /** Assemblies that could not be put together or came to no rest. */
  readonly failed: number;
}

/** Where each error of an assembly lies within its spread, from 0 to 1 or −1 to 1, and its phases in turns. */
interface Draw {
  readonly share: Readonly<Record<ImprovablePart, number>>;
  readonly phases: readonly [number, number, number, number];
}

const NONE: Draw = {
  share: { 'lead A': 0, 'lead C': 0, waves: 0, offset: 0, angle: 0, guide: 0, key: 0 },
  phases: [0, 0, 0, 0],
};

const isSigned = (part: ImprovablePart): boolean => part === 'lead A' || part === 'lead C';

/** The jack whose errors are these shares of the stated ones. */
const drawnJack = (jack: Jack, { share, phases }: Draw): Jack => {
  const helix = (of: Helix, lead: number, phase: number): Helix => ({
    leadError: of.leadError * lead,
    wave: of.wave * share.waves,
    phase,
  });
  const { A, C, guide, lock, axes } = jack;
  return {
    ...jack,
    A: {
      ...A,
      mu: 0,
      screw: helix(A.screw, share['lead A'], phases[0]),
      nut: helix(A.nut, share['lead A'], phases[1]),
    },
    C: {
      ...C,
      mu: 0,
      screw: helix(C.screw, share['lead C'], phases[2]),
      nut: helix(C.nut, share['lead C'], phases[3]),
    },
    guide: guide && { ...guide, mu: 0, clearance: guide.clearance * share.guide },
    lock: lock.by === 'key' ? { ...lock, mu: 0, gap: lock.gap * share.key } : lock,
    axes: { ...axes, offset: axes.offset * share.offset, angle: axes.angle * share.angle },
  };
};

const spreadOf = (jack: Jack, part: ImprovablePart): number => {
  const { A, C, guide, lock, axes } = jack;
  switch (part) {
    case 'lead A':
      return Math.abs(A.screw.leadError) + Math.abs(A.nut.leadError);
    case 'lead C':
      return Math.abs(C.screw.leadError) + Math.abs(C.nut.leadError);
    case 'waves':
      return A.screw.wave + A.nut.wave + C.screw.wave + C.nut.wave;
    case 'offset':
      return axes.offset;
    case 'angle':
      return axes.angle;
    case 'guide':
      return guide?.clearance ?? 0;
    case 'key':
      return lock.by === 'key' ? lock.gap : 0;
  }
};

/** How far the tip of one run is off at most, beside the run without errors. */
const errorOf = (asked: Asked, run: readonly Stand[], exact: readonly Stand[]): number => {
  const [first, exactFirst] = [run[0], exact[0]];
  if (!first || !exactFirst) return 0;
  return run.reduce((most, stand, i) => {
    const beside = exact[i];
    if (!beside) return most;
    const off =
      asked === 'height'
        ? Math.abs(stand.z - first.z - (beside.z - exactFirst.z))
        : Math.hypot(stand.x - beside.x, stand.y - beside.y);
    return Math.max(most, off);
  }, 0);
};

/** The assemblies solved at these turns, `count` of them by this seed. Yields the share done. */
export function* whichPartRun(
  jack: Jack,
  turns: readonly number[],
  { asked, count, seed }: { readonly asked: Asked; readonly count: number; readonly seed: number },
): Generator<number, Result<WhichPart>, void> {
  const state = randomState(seed);
  if (!state.ok) return state;
  const next = () => uniform(state.value);
  const exact = yield* solved(drawnJack(jack, NONE), turns, 0);
  if (!exact.ok) return exact;
  const parts = IMPROVABLE.filter((part) => spreadOf(jack, part) > 0);
  const steps = (count + 1) * (parts.length + 1) + 2;
  let done = 0;
  const error = function* (draw: Draw): Generator<number, number | undefined, void> {
    const run = yield* solved(drawnJack(jack, draw), turns, done / steps);
    done++;
    return run.ok ? errorOf(asked, run.value, exact.value) : undefined;
  };
  // Alone, at its most: a signed error at its plus, waves with their crests apart.
  const alone = new Map<ImprovablePart, number>();
  for (const part of parts) {
    const found = yield* error({ share: { ...NONE.share, [part]: 1 }, phases: [0, 0.5, 0, 0.5] });
    alone.set(part, found ?? 0);
  }
  // All at their most together, the leads both ways.
  let together = 0;
  for (const sign of [1, -1]) {
    const share = Object.fromEntries(IMPROVABLE.map((part) => [part, part === 'lead C' ? sign : 1]));
    const found = yield* error({ share: share as Draw['share'], phases: [0, 0.5, 0, 0.5] });
    together = Math.max(together, found ?? 0);
  }
  const errors: number[] = [];
  const halved = new Map<ImprovablePart, number[]>(parts.map((part) => [part, []]));
  let failed = 0;
  for (let i = 0; i < count; i++) {
    const share = Object.fromEntries(
      IMPROVABLE.map((part) => [part, isSigned(part) ? 2 * next() - 1 : next()]),
    ) as Record<ImprovablePart, number>;
    const phases = [next(), next(), next(), next()] as const;
    const whole = yield* error({ share, phases });
    if (whole === undefined) {
      failed++;
      continue;
    }
    errors.push(whole);
    for (const part of parts) {
      const better = yield* error({ share: { ...share, [part]: share[part] / 2 }, phases });
      halved.get(part)?.push(better ?? whole);
    }
  }
  if (errors.length === 0) return bad('built-none-together', { count });
  errors.sort((a, b) => a - b);
  const sampled = quantileOfSorted(errors, 0.95);
  const ranks = parts
    .map((part) => ({
      part,
      alone: alone.get(part) ?? 0,
      gains:
        sampled -
        quantileOfSorted(
          (halved.get(part) ?? []).sort((a, b) => a - b),
          0.95,
        ),
    }))
    .sort((a, b) => b.gains - a.gains);
  return good({
    asked,
    errors,
    sampled,
    statistical:
      2 *
      combined(
        ranks.map(() => 1),
        ranks.map(({ alone: most }) => flat(most).u),
      ),
    worst: Math.max(
      together,
      errors.at(-1) ?? 0,
      ranks.reduce((sum, rank) => sum + rank.alone, 0),
    ),
    ranks,
    failed,
  });
}

/** Places round each joint: half of those of a single run, since hundreds are solved. */
const AROUND = 12;

/** One run, as steps that all give the same share. */
function* solved(
  jack: Jack,
  turns: readonly number[],
  share: number,
): Generator<number, Result<readonly Stand[]>, void> {
  const run = jackRun(jack, turns, AROUND);
  for (;;) {
    const step = run.next();
    if (step.done) {
      yield share;
      return step.value;
    }
  }
}
