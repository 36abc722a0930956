/**
 * A printed spring as a plate, free or stretched: the one shape that its figure, the pictures of an adjuster, drawings and files are made from.
 *
 * x across, y along the pull, mm; y = 0 where the lower part holds it. A straight reaches from there to the folds, and as far at the upper end, and beyond each hold a
 * wedge keeps it in a slot. A meander has square outer and rounded inner corners; stretched, its connectors keep their length and its legs lean. A row of rings or ovals is joined by
 * necks, which of rings are two thicknesses wide and stiffen them a little (not counted); stretched, a ring is drawn longer by the stretch and narrower by 0.918 of it.
 * A strap lies along x between two blocks, the inner one at x = 0, and bends into an S; its inner block stands higher by the stretch.
 */
import { type CoilForm, freeLength, type SpringForm, STRAP_BLOCK } from '../../engine/index.ts';
import type { Place, Plate } from '../print/plate.ts';

/** A spring that is flat; a coil is none. */
export type FlatForm = Exclude<SpringForm, CoilForm>;

export interface Drawn {
  readonly form: FlatForm;
  /** As printed, across the plane of the plate. */
  readonly high: number;
  readonly stretch: number;
  /** Straight between hold and folds, at each end; not less than nought. */
  readonly reach: number;
}

/** Of the wedges, in thicknesses: how long they widen, how long they stay wide, how wide to either side. */
const WEDGE = { flare: 1.5, straight: 1, half: 2 };
/** How far a spring stands beyond what holds it. */
export const beyondHold = ({ t }: FlatForm): number => (WEDGE.flare + WEDGE.straight) * t;
/** Of an arc that a printer makes, a quarter of it in so many pieces; a small picture needs fewer. */
const FINE = 6;

export const springPlate = (d: Drawn, pieces = FINE): Plate => {
  const { form } = d;
  if (form.shape === 'meander') return meanderPlate({ ...d, form }, pieces);
  if (form.shape === 'strap') return strapPlate({ ...d, form }, pieces);
  return ringPlate({ ...d, form }, 2 * pieces);
};

/** Straight at each end of a spring that is so long between its holds while nothing pulls it; below nought where its folds are longer than that. */
export const reachOf = (form: FlatForm, between: number): number =>
  form.shape === 'strap' ? 0 : (between - freeLength(form)) / 2;

type Of<F> = Omit<Drawn, 'form'> & { readonly form: F };

const wedgeAt = (y: number, out: 1 | -1, t: number): readonly Place[] => [
  [t / 2, y],
  [WEDGE.half * t, y + out * WEDGE.flare * t],
  [WEDGE.half * t, y + out * (WEDGE.flare + WEDGE.straight) * t],
];
const mirrored = (half: readonly Place[]): Place[] => [...half, ...[...half].reverse().map(([x, y]): Place => [-x, y])];

const unit = (a: Place, b: Place): Place => {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const length = Math.hypot(dx, dy);
  return [dx / length, dy / length];
};
const leftOf = ([x, y]: Place): Place => [-y, x];

/** A strip along a line, its left and its right side in order; inner corners rounded, outer ones square. */
const sidesOf = (line: readonly Place[], t: number, r: number, pieces: number): readonly [Place[], Place[]] => {
  const sides: [Place[], Place[]] = [[], []];
  for (let i = 1; i + 1 < line.length; i++) {
    const [a, b, c] = [line[i - 1], line[i], line[i + 1]] as [Place, Place, Place];
    const [before, after] = [unit(a, b), unit(b, c)];
    const [n1, n2] = [leftOf(before), leftOf(after)];
    const turn = Math.atan2(before[0] * after[1] - before[1] * after[0], before[0] * after[0] + before[1] * after[1]);
    const bisector: Place = [n1[0] + n2[0], n1[1] + n2[1]];
    const over = 1 + n1[0] * n2[0] + n1[1] * n2[1];
    const off = (by: number): Place => [b[0] + (by * bisector[0]) / over, b[1] + (by * bisector[1]) / over];
    const inner = turn > 0 ? 1 : -1;
    const centre = off(inner * (t / 2 + r));
    const arc = Array.from({ length: pieces + 1 }, (_, k): Place => {
      const angle = (turn * k) / pieces;
      const [x, y] = [
        n1[0] * Math.cos(angle) - n1[1] * Math.sin(angle),
        n1[0] * Math.sin(angle) + n1[1] * Math.cos(angle),
      ];
      return [centre[0] - inner * r * x, centre[1] - inner * r * y];
    });
    sides[inner === 1 ? 0 : 1].push(...arc);
    sides[inner === 1 ? 1 : 0].push(off(-(inner * t) / 2));
  }
  return sides;
};

const meanderPlate = (
  { form, high, stretch, reach }: Of<Extract<FlatForm, { shape: 'meander' }>>,
  pieces: number,
): Plate => {
  const { m, L, p, stub, t } = form;
  const lean = stretch / m;
  const line: Place[] = [[0, 0]];
  let [y, side] = [reach + stub, 1];
  line.push([0, y]);
  y += lean / 2;
  for (let i = 0; i < m; i++) {
    line.push([(side * L) / 2, y], [(side * L) / 2, y + p]);
    y += p + (i < m - 1 ? lean : lean / 2);
    side = -side;
  }
  const top = y + stub + reach;
  line.push([0, y], [0, top]);
  const [left, right] = sidesOf(line, t, Math.min(t / 2, 0.45 * (p - t)), pieces);
  const flip = (points: readonly Place[]): Place[] => points.map(([x, z]): Place => [-x, z]);
  return {
    outline: [
      ...[...wedgeAt(0, -1, t)].reverse(),
      ...right,
      ...wedgeAt(top, 1, t),
      ...flip(wedgeAt(top, 1, t)).reverse(),
      ...left.reverse(),
      ...flip(wedgeAt(0, -1, t)),
    ],
    holes: [],
    height: high,
  };
};

/** Sideways over lengthening of a ring that is pulled across: (2/π − ½)/(π/4 − 2/π). */
const NARROWS = 0.918;

const ringPlate = ({ form, high, stretch, reach }: Of<Extract<FlatForm, { R: number }>>, pieces: number): Plate => {
  const { cells, R, h, t } = form;
  const each = stretch / cells;
  const [up, out] = [R + each / 2, R - (NARROWS * each) / 2];
  const [stem, neck] = [t / 2, Math.max(h, t)];
  const arc = (grown: number, middle: number): Place[] =>
    Array.from({ length: 2 * pieces + 1 }, (_, i): Place => {
      const angle = -Math.PI / 2 + (Math.PI * i) / (2 * pieces);
      return [h + (out + grown) * Math.cos(angle), middle + (up + grown) * Math.sin(angle)];
    });
  /** Half the height of a ring from outside, at x. */
  const rise = (x: number): number =>
    (up + t / 2) * Math.sqrt(Math.max(0, 1 - (Math.max(0, x - h) / (out + t / 2)) ** 2));
  const middles = Array.from({ length: cells }, (_, cell) => reach + (cell + 0.5) * (2 * up + t));
  // Up the right side: each ring from its lower joint to its upper one, where the outline goes straight on to the next.
  const sides = middles.flatMap((middle, cell): Place[] => {
    const [low, high_] = [cell === 0 ? stem : neck, cell === cells - 1 ? stem : neck];
    return [
      [low, middle - rise(low)],
      ...arc(t / 2, middle).filter(([x, y]) => x > (y < middle ? low : high_)),
      [high_, middle + rise(high_)],
    ];
  });
  const top = 2 * reach + cells * (2 * up + t);
  return {
    outline: mirrored([...[...wedgeAt(0, -1, t)].reverse(), ...sides, ...wedgeAt(top, 1, t)]),
    holes: middles.map((middle) => mirrored(arc(-t / 2, middle))),
    height: high,
  };
};

/** Blocks so high, in thicknesses; at least as high as they are long, for a screw through them. */
const blockOf = (t: number): number => Math.max(STRAP_BLOCK, 3 * t);

const strapPlate = ({ form, high, stretch }: Of<Extract<FlatForm, { shape: 'strap' }>>, pieces: number): Plate => {
  const { l, t } = form;
  const half = blockOf(t) / 2;
  const r = Math.min(t / 2, half - t / 2);
  const steps = 4 * pieces;
  /** The S of a beam whose ends stay parallel, from the inner block, higher by the stretch, to the outer one. */
  const bent = (share: number): number => stretch * (1 - share ** 2 * (3 - 2 * share));
  const side = (sign: 1 | -1): Place[] => {
    const fillet = (x: number, y: number, way: 1 | -1): Place[] =>
      Array.from({ length: pieces + 1 }, (_, i): Place => {
        const angle = ((Math.PI / 2) * i) / pieces;
        return [x + way * r * (1 - Math.sin(angle)), y + sign * (t / 2 + r * (1 - Math.cos(angle)))];
      });
    const [from, to] = [STRAP_BLOCK, STRAP_BLOCK + l];
    const along = Array.from({ length: steps + 1 }, (_, i): Place => {
      const x = from + r + ((l - 2 * r) * i) / steps;
      return [x, bent((x - from) / l) + (sign * t) / 2];
    });
    // Arcs end level with the strip, which has hardly bent so near a block.
    return [...fillet(from, stretch, 1).reverse(), ...along.slice(1, -1), ...fillet(to, 0, -1)];
  };
  const end = 2 * STRAP_BLOCK + l;
  return {
    outline: [
      [0, stretch - half],
      [STRAP_BLOCK, stretch - half],
      ...side(-1),
      [end - STRAP_BLOCK, -half],
      [end, -half],
      [end, half],
      [end - STRAP_BLOCK, half],
      ...side(1).reverse(),
      [STRAP_BLOCK, stretch + half],
      [0, stretch + half],
    ],
    holes: [],
    height: high,
  };
};
