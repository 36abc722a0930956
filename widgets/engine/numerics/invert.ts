/**
 * Where a function of one number takes a wanted value: every place within stated bounds, or the nearest it comes to.
 *
 * The bounds are walked on a grid that is even near the value in force and by ratio over wide ranges, as fine as the
 * function asks for; between neighbours where the
 * difference changes sign the place is closed in by Brent’s method (R. P. Brent, Algorithms for Minimization without
 * Derivatives, 1973, ch. 4): inverse quadratic and secant steps, which take their slope from the function itself, and halving where they
 * leave the bracket. A dip or a hump that turns before it gets there is followed to its turn by golden section (ch. 5), so
 * that two answers close together, and one that only touches, are found. Where the function has no value the edge of that
 * region is closed in by halving and counts as a grid point. A change of sign over a pole is no answer.
 *
 * Where nothing is found the law is followed from its least and its most value towards the places beside them, since near a pole it goes
 * on beyond what the grid shows.
 *
 * Two answers closer than the grid between which the function turns twice are missed: about a hundred places over the bounds.
 */

/** A function that may have no value. */
export type Law = (x: number) => number | undefined;

export interface LawPoint {
  readonly x: number;
  readonly y: number;
}

export interface Answer extends LawPoint {
  /** The far end where every place from `x` to here gives the wanted value. */
  readonly to?: number;
  /** To how many digits of its scale the law gives the wanted value again. */
  readonly digits: number;
}

export interface Inversion {
  /** By rising x. */
  readonly answers: readonly Answer[];
  /** The place whose value is nearest to the wanted one; undefined where the law has no value anywhere. */
  readonly nearest: LawPoint | undefined;
  /** What the law reaches within the bounds, as far as the grid tells. */
  readonly least: number | undefined;
  readonly most: number | undefined;
}

export interface Bounds {
  readonly min: number;
  readonly max: number;
  /** Only whole numbers count. */
  readonly whole?: boolean;
  /** The value in force, about which the grid is finer. */
  readonly about?: number;
}

/** Each finer grid has the places of the one before. How many places, even over the bounds, by ratio towards nought on either side, and close about the value in force on either side. */
interface Fineness {
  readonly even: number;
  readonly byRatio: number;
  readonly close: number;
}
/** A law that stays the same on this is not moved by its number. */
const PROBE: Fineness = { even: 7, byRatio: 8, close: 3 };
/** A law that rises or falls throughout on this has one answer at most, and is asked no more. */
const COARSE: Fineness = { even: 28, byRatio: 16, close: 6 };
const FINE: Fineness = { even: 56, byRatio: 32, close: 10 };
/** Digits that every answer should hold; see `digitsOf`. */
const FULL = 12;
/** A law that is itself worked by steps holds fewer, which the answer says; over a jump there are none. */
const FEWEST = 9;

/**
 * A root between two ends of which f has different signs: the one of the last two ends where f is the smaller. Where f has no value on
 * the way the bracket is given up.
 */
export const rootBetween = (f: Law, low: number, high: number): number | undefined => {
  let [a, b] = [low, high];
  let [fa, fb] = [f(a), f(b)];
  if (fa === undefined || fb === undefined || fa > 0 === fb > 0) return fa === 0 ? a : fb === 0 ? b : undefined;
  let [c, fc, d, e] = [a, fa, b - a, b - a];
  for (let i = 0; i < 200; i++) {
    if (fb > 0 === fc > 0) [c, fc, d, e] = [a, fa, b - a, b - a];
    if (Math.abs(fc) < Math.abs(fb)) [a, b, c, fa, fb, fc] = [b, c, b, fb, fc, fb];
    const least = 2 * Number.EPSILON * Math.abs(b) + Number.MIN_VALUE;
    const half = (c - b) / 2;
    if (Math.abs(half) <= least || fb === 0) return b;
    if (Math.abs(e) >= least && Math.abs(fa) > Math.abs(fb)) {
      const s = fb / fa;
      let p: number;
      let q: number;
      if (a === c) [p, q] = [2 * half * s, 1 - s];
      else {
        const [u, v] = [fa / fc, fb / fc];
        p = s * (2 * half * u * (u - v) - (b - a) * (v - 1));
        q = (u - 1) * (v - 1) * (s - 1);
      }
      if (p > 0) q = -q;
      else p = -p;
      if (2 * p < Math.min(3 * half * q - Math.abs(least * q), Math.abs(e * q))) [e, d] = [d, p / q];
      else [d, e] = [half, half];
    } else [d, e] = [half, half];
    [a, fa] = [b, fb];
    b += Math.abs(d) > least ? d : half > 0 ? least : -least;
    fb = f(b);
    if (fb === undefined) return undefined;
  }
  return b;
};

/** The places that are asked first: even, by ratio from either bound towards nought, and close about the value in force. */
const gridOf = ({ min, max, whole, about }: Bounds, { even, byRatio, close }: Fineness): number[] => {
  const xs = [min, max];
  for (let i = 1; i < even; i++) xs.push(min + (max - min) * (i / even));
  const wide = Math.max(Math.abs(min), Math.abs(max));
  const least = min > 0 ? min : max < 0 ? -max : 1e-9 * wide;
  for (let i = 0; i < byRatio; i++) {
    const size = least * (wide / least) ** (i / byRatio);
    xs.push(size, -size);
  }
  xs.push(0);
  if (about !== undefined)
    for (let i = 0; i < close; i++) {
      const off = (Math.abs(about) || 1e-3 * wide) * 2 ** -i;
      xs.push(about - off, about, about + off);
    }
  const inside = xs.filter((x) => x >= min && x <= max).map((x) => (whole ? Math.round(x) : x));
  const sorted = [...new Set(inside)].sort((p, q) => p - q);
  return whole ? sorted : withEnds(sorted);
};

/** With a place close inside either end, which tells a law that turns before it gets there. */
const withEnds = (grid: readonly number[]): number[] => {
  const close = (end: number | undefined, next: number | undefined): number[] =>
    end === undefined || next === undefined ? [] : [end + (next - end) / 64];
  const [first, last] = [close(grid[0], grid[1]), close(grid.at(-1), grid.at(-2))];
  return [...grid.slice(0, 1), ...first, ...grid.slice(1, -1), ...last, ...grid.slice(-1)];
};

/** Whether a law has a value all over a grid, and rises or falls from each place to the next. */
const goesOneWay = (f: Law, grid: readonly number[]): boolean => {
  let way = 0;
  for (const [i, x] of grid.entries()) {
    const [y, last] = [f(x), i === 0 ? undefined : f(grid[i - 1] as number)];
    if (y === undefined) return false;
    if (last === undefined) continue;
    const sign = Math.sign(y - last);
    if (sign === 0 || (way !== 0 && sign !== way)) return false;
    way = sign;
  }
  return true;
};

/** As fine as the law asks for. */
const gridFor = (f: Law, bounds: Bounds): readonly number[] => {
  const probe = gridOf(bounds, PROBE);
  const first = f(probe[0] ?? bounds.min);
  if (first !== undefined && probe.every((x) => f(x) === first)) return probe;
  const coarse = gridOf(bounds, COARSE);
  return goesOneWay(f, coarse) ? coarse : gridOf(bounds, FINE);
};

/** Halves towards the edge of where the law has a value; `good` has one, `bare` has none. */
const edgeOf = (f: Law, good: number, bare: number): LawPoint | undefined => {
  let [inside, outside] = [good, bare];
  for (let i = 0; i < 60 && inside !== outside; i++) {
    const middle = (inside + outside) / 2;
    if (middle === inside || middle === outside) break;
    if (f(middle) === undefined) outside = middle;
    else inside = middle;
  }
  const y = f(inside);
  return y === undefined ? undefined : { x: inside, y };
};

/** Places ever closer to an edge, the closest first: towards one a law often runs off steeply, and turns before it. */
const beforeEdge = (f: Law, good: number, edge: LawPoint): LawPoint[] =>
  [1 / 64, 1 / 16, 1 / 4].flatMap((share) => {
    const x = edge.x + share * (good - edge.x);
    const y = f(x);
    return y === undefined ? [] : [{ x, y }];
  });

const GOLDEN = (3 - Math.sqrt(5)) / 2;

/** The least of |f| between a and b, which begins at m, by golden section; a change of sign on the way is met and given back. */
const turnOf = (f: Law, a: number, m: number, b: number): LawPoint | undefined => {
  const at = (x: number): LawPoint | undefined => {
    const y = f(x);
    return y === undefined ? undefined : { x, y };
  };
  let best = at(m);
  if (!best) return undefined;
  const sign = best.y > 0;
  let [low, high] = [a, b];
  for (let i = 0; i < 60; i++) {
    const { x } = best;
    const right = high - x > x - low;
    const next = at(right ? x + GOLDEN * (high - x) : x - GOLDEN * (x - low));
    if (!next || next.x === x) break;
    if (next.y === 0 || next.y > 0 !== sign) return next;
    if (Math.abs(next.y) < Math.abs(best.y)) {
      if (right) low = x;
      else high = x;
      best = next;
    } else if (right) high = next.x;
    else low = next.x;
  }
  return best;
};

/** Digits of the scale to which the law gives the wanted value again, at most 16. */
const digitsOf = (off: number, scale: number): number =>
  off === 0 ? 16 : Math.max(0, Math.min(16, Math.floor(-Math.log10(Math.abs(off) / scale))));

/** Every place within the bounds where the law gives `wish`, and the nearest it comes to. */
export const invert = (law: Law, wish: number, bounds: Bounds): Inversion => {
  const known = new Map<number, number | undefined>();
  const value: Law = (x) => {
    if (known.has(x)) return known.get(x);
    const y = law(x);
    const finite = y !== undefined && Number.isFinite(y) ? y : undefined;
    known.set(x, finite);
    return finite;
  };
  const off: Law = (x) => {
    const y = value(x);
    return y === undefined ? undefined : y - wish;
  };
  const grid = gridFor(value, bounds);
  const met = (): readonly LawPoint[] => [...known].flatMap(([x, y]) => (y === undefined ? [] : [{ x, y }]));
  const spanOf = (places: readonly LawPoint[]) => {
    const ys = places.map(({ y }) => y);
    return { least: Math.min(...ys), most: Math.max(...ys) };
  };
  const whole = 10 ** -FULL * Math.abs(wish);
  const inGrid = bounds.whole ? wholeRoots(off, grid, whole) : roots(off, grid);
  if (met().length === 0) return { answers: [], nearest: undefined, least: undefined, most: undefined };
  const { least: low, most: high } = spanOf(met());
  const scaleAt = (x: number): number => Math.abs(wish) || Math.abs(steepness(value, x) * x) || high - low || 1;
  const answersOf = (found: readonly Found[]): readonly Answer[] =>
    found.flatMap(({ x: there, to }): Answer[] => {
      const scale = scaleAt(there);
      const full = Math.abs(off(there) ?? 0) <= 10 ** -FULL * scale;
      const x = full || bounds.whole || to !== undefined ? there : polished(off, there, bounds);
      const y = value(x);
      if (y === undefined) return [];
      const digits = digitsOf(y - wish, scale);
      // As far as the places of a double beside this one let it: a step of the last bit of x changes y by this much.
      const grain = 8 * Number.EPSILON * Math.abs(steepness(value, x) * x);
      if (digits < FEWEST && !(Math.abs(y - wish) <= grain)) return [];
      return [{ x, y, digits, ...(to === undefined ? {} : { to }) }];
    });
  const shown = answersOf(inGrid);
  const answers = shown.length > 0 || bounds.whole ? shown : answersOf(beyondGrid(off, grid));
  const places = met();
  return {
    answers,
    nearest: places.reduce((a, b) => (nearer(b, a, wish, bounds.about) ? b : a)),
    ...spanOf(places),
  };
};

/** Of two that come equally near, the one nearer to the value in force. */
const nearer = (p: LawPoint, q: LawPoint, wish: number, about = 0): boolean => {
  const [a, b] = [Math.abs(p.y - wish), Math.abs(q.y - wish)];
  return a < b || (a === b && Math.abs(p.x - about) < Math.abs(q.x - about));
};

/** A slope by differences, on whichever side there is a value. */
const steepness = (f: Law, x: number): number => {
  const step = 1e-6 * (Math.abs(x) || 1);
  const y = f(x) ?? 0;
  for (const [a, b] of [
    [x - step, x + step],
    [x, x + step],
    [x - step, x],
  ] as const) {
    const [p, q] = [a === x ? y : f(a), b === x ? y : f(b)];
    if (p !== undefined && q !== undefined) return (q - p) / (b - a);
  }
  return 0;
};

interface Found {
  readonly x: number;
  readonly to?: number;
}

const roots = (off: Law, grid: readonly number[]): Found[] => {
  // Edges of where the law has a value stand among the grid.
  const places: (LawPoint | undefined)[] = [];
  for (const [i, x] of grid.entries()) {
    const y = off(x);
    const before = grid[i - 1];
    const last = before === undefined ? undefined : off(before);
    if (before !== undefined && (y === undefined) !== (last === undefined)) {
      const [good, bare] = y === undefined ? [before, x] : [x, before];
      const edge = edgeOf(off, good, bare);
      const close = edge ? beforeEdge(off, good, edge) : [];
      if (y === undefined) places.push(...close.toReversed(), edge, undefined);
      else places.push(undefined, edge, ...close);
    }
    places.push(y === undefined ? undefined : { x, y });
  }
  const found: Found[] = [];
  const between = (p: LawPoint, q: LawPoint): void => {
    const x = rootBetween(off, p.x, q.x);
    if (x === undefined) return;
    // Towards a pole the difference grows; towards an answer it does not.
    const y = off(x);
    if (y !== undefined && Math.abs(y) <= Math.max(Math.abs(p.y), Math.abs(q.y))) found.push({ x });
  };
  for (let i = 0; i < places.length; i++) {
    const [p, q, r] = [places[i - 1], places[i], places[i + 1]];
    if (!q) continue;
    if (q.y === 0) {
      const first = found.at(-1);
      if (p?.y === 0 && first) found[found.length - 1] = { x: first.x, to: q.x };
      else found.push({ x: p && r?.y === 0 ? flatTo(off, q.x, p.x) : q.x });
      const last = found.at(-1);
      if (last?.to !== undefined && r && r.y !== 0) found[found.length - 1] = { x: last.x, to: flatTo(off, q.x, r.x) };
    } else if (p && p.y !== 0 && p.y > 0 !== q.y > 0) between(p, q);
    if (!p || !r || q.y === 0) continue;
    // Where the law stays as it is there is nothing to follow.
    const turns = Math.abs(q.y) <= Math.abs(p.y) && Math.abs(q.y) <= Math.abs(r.y) && !(q.y === p.y && q.y === r.y);
    if (!turns || p.y > 0 !== q.y > 0 || r.y > 0 !== q.y > 0) continue;
    const turn = turnOf(off, p.x, q.x, r.x);
    if (!turn) continue;
    if (turn.y !== 0 && turn.y > 0 !== q.y > 0) {
      between(p, turn);
      between(turn, r);
    } else found.push({ x: turn.x });
  }
  return apart(found);
};

/** Places of a double to either side of an answer among which the best is taken, where it does not hold all digits. */
const BESIDE = 4;

/** Of the doubles beside an answer the one at which the law comes nearest, since rounding within the law leaves the last of them open. */
const polished = (off: Law, x: number, { min, max }: Bounds): number => {
  const step = Math.max(Number.EPSILON * Math.abs(x), Number.MIN_VALUE) / 2;
  let [best, least] = [x, Math.abs(off(x) ?? Number.POSITIVE_INFINITY)];
  for (let i = -BESIDE; i <= BESIDE; i++) {
    const place = x + i * step;
    const y = place < min || place > max ? undefined : off(place);
    if (y !== undefined && Math.abs(y) < least) [best, least] = [place, Math.abs(y)];
  }
  return best;
};

/**
 * Places beyond what the grid shows. From the place of the largest and of the smallest difference towards the one beside it, by halving,
 * while the law goes on the way it went: it comes to a pole, on whose far side it starts again from the other end, or it turns, which
 * `roots` has followed.
 */
const beyondGrid = (off: Law, grid: readonly number[]): Found[] => {
  const places = grid.flatMap((x) => {
    const y = off(x);
    return y === undefined ? [] : [{ x, y }];
  });
  const found: Found[] = [];
  for (const sign of [1, -1]) {
    const end = places.reduce<LawPoint | undefined>((a, b) => (a && sign * a.y >= sign * b.y ? a : b), undefined);
    // The wish lies beyond this end of what was met.
    if (!end || sign * end.y >= 0) continue;
    const i = grid.indexOf(end.x);
    for (const beside of [grid[i - 1], grid[i + 1]]) {
      if (beside === undefined) continue;
      let [high, low] = [end, beside];
      for (let k = 0; k < 60; k++) {
        const middle = (high.x + low) / 2;
        const y = off(middle);
        if (y !== undefined && sign * y >= 0) {
          const x = rootBetween(off, high.x, middle);
          if (x !== undefined) found.push({ x });
          break;
        }
        if (y !== undefined && sign * y > sign * high.y) high = { x: middle, y };
        else if (y !== undefined && sign * y >= sign * (off(beside) ?? y)) break;
        else low = middle;
      }
    }
  }
  return apart(found);
};

/** How far from `flat`, where the wish is met, towards `other`, where it is not, it is met still. */
const flatTo = (off: Law, flat: number, other: number): number => {
  let [inside, outside] = [flat, other];
  for (let i = 0; i < 60; i++) {
    const middle = (inside + outside) / 2;
    if (middle === inside || middle === outside) break;
    if (off(middle) === 0) inside = middle;
    else outside = middle;
  }
  return inside;
};

/** The same answer met from two sides is one. */
const apart = (found: readonly Found[]): Found[] =>
  [...found]
    .sort((a, b) => a.x - b.x)
    .filter(({ x }, i, all) => {
      const last = all[i - 1];
      return !last || x - (last.to ?? last.x) > 1e-9 * Math.abs(x) + Number.MIN_VALUE;
    });

/** Whole numbers: between neighbours of the grid the last two beside a change of sign are closed in. */
const wholeRoots = (off: Law, grid: readonly number[], hair: number): Found[] => {
  const hits = (y: number | undefined): boolean => y !== undefined && Math.abs(y) <= hair;
  const found = new Set<number>();
  for (const [i, x] of grid.entries()) {
    const y = off(x);
    if (hits(y)) found.add(x);
    const before = grid[i - 1];
    const last = before === undefined ? undefined : off(before);
    if (before === undefined || last === undefined || y === undefined || last > 0 === y > 0) continue;
    let [a, b] = [before, x];
    while (b - a > 1) {
      const middle = Math.floor((a + b) / 2);
      const there = off(middle);
      if (there === undefined) break;
      if (there > 0 === last > 0) a = middle;
      else b = middle;
    }
    for (const end of [a, b]) if (hits(off(end))) found.add(end);
  }
  return [...found].sort((a, b) => a - b).map((x) => ({ x }));
};
