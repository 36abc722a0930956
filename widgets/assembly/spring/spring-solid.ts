/**
 * The solid of a printed meander: its strip with square outer and rounded inner corners, a wedge at each end that slides into a slot, and the printed height.
 *
 * The strip is a ribbon of pairs of points, one on either side of its centre line, in order; outline and net follow from the same pairs. Where an
 * inner corner is rounded, every point of its arc is paired with the outer corner. mm, z up from the bed.
 */
import type { MeanderDesign } from '../../engine/index.ts';
import type { Mesh } from '../adjuster/solid.ts';
import { centreLines, type Place } from './spring-shape.ts';

type Pair = readonly [left: Place, right: Place];

const ARC = 6;
/** Of the wedges, in thicknesses: how long they widen, how long they stay wide, how wide to either side. */
const WEDGE = { flare: 1.5, straight: 1, half: 2 };

const unit = (a: Place, b: Place): Place => {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const length = Math.hypot(dx, dy);
  return [dx / length, dy / length];
};
const along = (p: Place, u: Place, by: number): Place => [p[0] + u[0] * by, p[1] + u[1] * by];
const leftOf = ([x, y]: Place): Place => [-y, x];

/** Pairs at a corner of the centre line: outer corner with each point of the inner arc. */
const corner = (p: Place, before: Place, after: Place, t: number, r: number): Pair[] => {
  const turnsLeft = before[0] * after[1] - before[1] * after[0] > 0;
  const side = turnsLeft ? 1 : -1;
  const [n1, n2] = [leftOf(before), leftOf(after)];
  // Right angles only: the two offsets meet at half a thickness along both normals.
  const miter = (s: number): Place => along(along(p, n1, (s * t) / 2), n2, (s * t) / 2);
  const [inner, outer] = [miter(side), miter(-side)];
  const centre = along(along(inner, n1, side * r), n2, side * r);
  const arc = Array.from({ length: ARC + 1 }, (_, i): Place => {
    const angle = ((Math.PI / 2) * i) / ARC;
    // From the point of touch with the first side to that with the second.
    return along(along(centre, n1, -side * r * Math.cos(angle)), n2, -side * r * Math.sin(angle));
  });
  return arc.map((q): Pair => (turnsLeft ? [q, outer] : [outer, q]));
};

const meanderPairs = (d: MeanderDesign): readonly Pair[] => {
  const { t, p } = d;
  const points = centreLines(d, 0)[0]?.points ?? [];
  const r = Math.min(t / 2, 0.45 * (p - t));
  const pairs: Pair[] = [];
  const wedge = (end: Place, out: Place): Pair[] => {
    const across = leftOf(out);
    const at = (far: number, half: number): Pair => {
      const middle = along(end, out, far * t);
      return [along(middle, across, half * t), along(middle, across, -half * t)];
    };
    return [at(0, 0.5), at(WEDGE.flare, WEDGE.half), at(WEDGE.flare + WEDGE.straight, WEDGE.half)];
  };
  const [first, second] = [points[0] as Place, points[1] as Place];
  // The lower wedge points down, so its left is the right of the strip.
  for (const [left, right] of wedge(first, unit(second, first)).reverse()) pairs.push([right, left]);
  for (let i = 1; i + 1 < points.length; i++) {
    const [a, b, c] = [points[i - 1], points[i], points[i + 1]] as [Place, Place, Place];
    pairs.push(...corner(b, unit(a, b), unit(b, c), t, r));
  }
  const [beforeLast, last] = [points.at(-2) as Place, points.at(-1) as Place];
  pairs.push(...wedge(last, unit(beforeLast, last)));
  return pairs;
};

/** The outline as it is seen from above, anticlockwise. */
export const meanderOutline = (d: MeanderDesign): readonly Place[] => {
  const pairs = meanderPairs(d);
  const sides = [...pairs.map(([, right]) => right), ...pairs.map(([left]) => left).reverse()];
  return sides.filter(([x, y], i) => {
    const [x0, y0] = sides.at(i - 1) as Place;
    return Math.hypot(x - x0, y - y0) > 1e-9;
  });
};

export const meanderSolid = (d: MeanderDesign, height: number): Mesh => {
  const pairs = meanderPairs(d);
  const positions: number[] = [];
  const known = new Map<string, number>();
  const point = ([x, y]: Place, z: number): number => {
    const key = `${x.toFixed(7)} ${y.toFixed(7)} ${z}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const index = positions.length / 3;
    positions.push(x, y, z);
    known.set(key, index);
    return index;
  };
  const triangles: number[] = [];
  const put = (a: number, b: number, c: number) => {
    if (a !== b && b !== c && c !== a) triangles.push(a, b, c);
  };
  const quad = (a: number, b: number, c: number, e: number) => {
    put(a, b, c);
    put(a, c, e);
  };
  const at = (i: number, z: number): [number, number] => {
    const [left, right] = pairs[i] as Pair;
    return [point(left, z), point(right, z)];
  };
  for (let i = 0; i + 1 < pairs.length; i++) {
    const [low, next] = [at(i, 0), at(i + 1, 0)];
    const [high, nextHigh] = [at(i, height), at(i + 1, height)];
    quad(high[0], high[1], nextHigh[1], nextHigh[0]);
    quad(low[1], low[0], next[0], next[1]);
    quad(low[1], next[1], nextHigh[1], high[1]);
    quad(next[0], low[0], high[0], nextHigh[0]);
  }
  const end = (i: number, first: boolean) => {
    const [low, high] = [at(i, 0), at(i, height)];
    if (first) quad(low[0], low[1], high[1], high[0]);
    else quad(low[1], low[0], high[0], high[1]);
  };
  end(0, true);
  end(pairs.length - 1, false);
  return { positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) };
};
