/**
 * A printed spring designed backwards: from the force at the mark, the stretch, the room and the printer’s line to shapes that do it.
 *
 * The rate wanted is force over stretch. A strip is a whole count of lines thick. A meander is (m + 1) p long, with stubs of half a connector, and takes the free length or a part of it; its leg follows from the
 * rate, which falls as the leg grows. Rings and ovals stand in a row, each taking its share of the stretch: a ring’s radius follows from the rate; an oval is as high as the length lets it, and its straights follow. What does not
 * fit the room, leaves no gap to print, is strained past the limit, or sways more than a tenth, is left out. A strap lies across the axis, between two blocks, and is
 * as long as the rate asks for. The coil is a bought one of steel wire, beside them: eight wires wide, of the thinnest wire that fits the room and is not sheared too much.
 * Source: the relations of meander.ts, ring.ts, strip.ts and coil.ts. Units: mm, N, MPa.
 */
import { megapascals, mm, newtons, plain } from '../kernel/quantity.ts';
import { bad, good, type Result } from '../kernel/result.ts';
import { rootBetween } from '../numerics/invert.ts';
import { coilRate, coilShear } from './coil.ts';
import { meanderRateThick, meanderStrain } from './meander.ts';
import { ovalRate, ovalStrain } from './ring.ts';
import { strapRate, strapStrain } from './strip.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'spring-fills-no-length': { readonly length: number; readonly stretch: number };
    'spring-room-too-small': { readonly rate: number; readonly width: number; readonly free: number };
    'spring-overstrained': { readonly least: number; readonly limit: number };
  }
}

export interface SpringWish {
  /** Of one spring at the mark, N. */
  readonly force: number;
  /** From free to the mark, mm. */
  readonly stretch: number;
  /** Farthest that it is stretched beyond the mark, mm. */
  readonly beyond: number;
  /** Between its two ends at the mark, mm. */
  readonly length: number;
  /** Greatest width over all, mm. */
  readonly width: number;
  /** Printed height, across the bending, mm. */
  readonly height: number;
  /** MPa */
  readonly E: number;
  /** Width of one printed line, mm. */
  readonly line: number;
  /** Strain at the surface that is allowed while it is held. */
  readonly strain: number;
}

/** A spring by its centre lines, mm; `t` is the thickness of its strip that bends, or its wire. */
export interface MeanderForm {
  readonly shape: 'meander';
  /** Half waves, leg, connector, and the stub at each end. */
  readonly m: number;
  readonly L: number;
  readonly p: number;
  readonly stub: number;
  readonly t: number;
}
export interface OvalForm {
  readonly shape: 'ring' | 'oval';
  /** So many in a row. */
  readonly cells: number;
  readonly R: number;
  /** Half the straight across the pull; 0 for a ring. */
  readonly h: number;
  readonly t: number;
}
/** Across the axis, both ends kept parallel. */
export interface StrapForm {
  readonly shape: 'strap';
  readonly l: number;
  readonly t: number;
}
export interface CoilForm {
  readonly shape: 'coil';
  readonly turns: number;
  /** Mean diameter. */
  readonly D: number;
  readonly t: number;
}
export type SpringForm = MeanderForm | OvalForm | StrapForm | CoilForm;

interface Common {
  readonly lines: number;
  /** N/mm */
  readonly k: number;
  /** At its farthest. */
  readonly strain: number;
  readonly free: number;
  readonly width: number;
}
export type MeanderDesign = MeanderForm & Common;
export type OvalDesign = OvalForm & Common;
export type StrapDesign = StrapForm & Common;
export type SpringDesign = MeanderDesign | OvalDesign | StrapDesign;

/** A block at each end of a strap, which is clamped. */
export const STRAP_BLOCK = 5;

/** How long it is from end to end while nothing pulls it, without what holds it; of a coil with hooks as wide as it is (usual, from memory). */
export const freeLength = (f: SpringForm): number => {
  switch (f.shape) {
    case 'meander':
      return f.m * f.p + 2 * f.stub;
    case 'strap':
      return 0;
    case 'coil':
      return (f.turns + 1) * f.t + 2 * (f.D - f.t);
    default:
      return f.cells * (2 * f.R + f.t);
  }
};

/** How wide it is across its pull. */
export const acrossOf = (f: SpringForm): number => {
  switch (f.shape) {
    case 'meander':
      return f.L + f.t;
    case 'strap':
      return f.l + 2 * STRAP_BLOCK;
    case 'coil':
      return f.D + f.t;
    default:
      return 2 * (f.h + f.R) + f.t;
  }
};

const LINES = [2, 3, 4, 5, 6, 7, 8];
/** Shares of the free length that a meander takes; its ends reach over the rest. */
const FILLS = [1, 0.75, 0.5];
const HALF_WAVES = [2, 4, 6, 8, 10, 12, 14, 16, 18, 20];
const CELLS = [1, 2, 3, 4, 5, 6, 8, 10];
/** Between two legs at least so many lines of air, or they are printed together. */
const GAP = 2;
const SWAY = 0.1;
/** A ring thicker than a fifth of its radius is no thin ring. */
const THIN = 0.2;

/** Where a falling function meets a value; undefined where it does not within the bounds. */
const meets = (f: (x: number) => number, value: number, low: number, high: number): number | undefined =>
  low < high && f(low) >= value && f(high) <= value ? rootBetween((x) => f(x) - value, low, high) : undefined;

const valueOr = <T>(result: Result<T>, otherwise: T): T => (result.ok ? result.value : otherwise);

const meanders = (w: SpringWish, k: number, free: number, t: number, lines: number): MeanderDesign[] =>
  HALF_WAVES.flatMap((m) => {
    const p = free / (m + 1);
    if (!(p - t >= GAP * w.line)) return [];
    const rate = (L: number) =>
      valueOr(
        meanderRateThick.of({
          E_f: megapascals(w.E),
          b_f: mm(w.height),
          t_f: mm(t),
          m_f: plain(m),
          L_f: mm(L),
          p_f: mm(p),
        }),
        { k_f: 0 as never },
      ).k_f;
    // Past t/L = 0.2 the law was held against nothing.
    const L = meets(rate, k, 5 * t, w.width - t);
    if (L === undefined) return [];
    const u = w.stretch + w.beyond;
    const strain = meanderStrain.of({ t_f: mm(t), u_f: mm(u), m_f: plain(m), L_f: mm(L), p_f: mm(p) });
    if (!strain.ok || u / (m * L) > SWAY) return [];
    return [{ shape: 'meander', m, L, p, stub: p / 2, t, lines, k, strain: strain.value.eps_f, free, width: L + t }];
  });

const ovals = (w: SpringWish, k: number, free: number, t: number, lines: number): OvalDesign[] =>
  CELLS.flatMap((cells) => {
    const numbers = (R: number, h: number) => ({ t_f: mm(t), R_f: mm(R), h_f: mm(h), v_f: mm(0) });
    /** Of the whole row. */
    const rate = (R: number, h: number) =>
      valueOr(ovalRate.of({ E_f: megapascals(w.E), b_f: mm(w.height), ...numbers(R, h) }), { k_f: 0 as never }).k_f /
      cells;
    const u = (w.stretch + w.beyond) / cells;
    const built = (shape: OvalDesign['shape'], R: number | undefined, h: number | undefined): OvalDesign[] => {
      if (R === undefined || h === undefined || u > SWAY * 2 * (h + 2 * R)) return [];
      const strain = ovalStrain.of({ ...numbers(R, h), u_f: mm(u) });
      if (!strain.ok) return [];
      const { eps_f } = strain.value;
      const [length, width] = [cells * (2 * R + t), 2 * (h + R) + t];
      return [{ shape, cells, R, h, t, lines, k, strain: eps_f, free: length, width }];
    };
    // As high as the length lets it; the straights follow from the rate.
    const flat = (free / cells - t) / 2;
    const longest = (w.width - t) / 2 - flat;
    const ring = meets((R) => rate(R, 0), k, t / THIN, Math.min((w.width - t) / 2, flat));
    const h = flat >= t / THIN ? meets((half) => rate(flat, half), k, 0, longest) : undefined;
    return [...built('ring', ring, 0), ...built('oval', flat, h)];
  });

const straps = (w: SpringWish, k: number, t: number, lines: number): StrapDesign[] => {
  const rate = (l: number) =>
    valueOr(strapRate.of({ E_f: megapascals(w.E), b_f: mm(w.height), t_f: mm(t), l_m: mm(l) }), { k_f: 0 as never })
      .k_f;
  // Shorter than ten times its thickness it gives by shear and at its root, which the law leaves out.
  const l = meets(rate, k, 10 * t, w.width - 2 * STRAP_BLOCK);
  if (l === undefined) return [];
  const u = w.stretch + w.beyond;
  const strain = strapStrain.of({ t_f: mm(t), u_f: mm(u), l_m: mm(l) });
  if (!strain.ok || u / l > SWAY) return [];
  const form: StrapForm = { shape: 'strap', l, t };
  return [{ ...form, lines, k, strain: strain.value.eps_f, free: freeLength(form), width: acrossOf(form) }];
};

/** Wires that are sold, mm (common practice, no source). */
const WIRES = [0.4, 0.5, 0.63, 0.8, 1, 1.25, 1.6, 2, 2.5, 3.2];
const INDEX = 8;
/** Shear modulus of steel wire (published example of chapter and test) and the shear that any spring wire stands for good, MPa (from memory, on the safe side). */
const STEEL = { G: 81_370, shear: 500 };

export interface CoilDesign extends CoilForm {
  /** N/mm; MPa at its farthest. */
  readonly k: number;
  readonly shear: number;
  readonly free: number;
  readonly width: number;
  /** Shear modulus of its wire, MPa. */
  readonly G: number;
}

/** A bought coil of the same rate in the same room; undefined where none of these wires does it. */
export const designCoil = (w: SpringWish): CoilDesign | undefined => {
  const k = w.force / w.stretch;
  for (const t of WIRES) {
    const D = INDEX * t;
    const one = coilRate.of({ G_f: megapascals(STEEL.G), d_w: mm(t), D_w: mm(D), n_c: plain(1) });
    const sheared = coilShear.of({ F_k: newtons(w.force + k * w.beyond), d_w: mm(t), D_w: mm(D) });
    if (!one.ok || !sheared.ok) continue;
    const form: CoilForm = { shape: 'coil', turns: one.value.k_f / k, D, t };
    const [free, width, shear] = [freeLength(form), acrossOf(form), sheared.value.tau_f];
    if (form.turns >= 2 && shear <= STEEL.shear && free <= w.length - w.stretch && width <= w.width)
      return { ...form, k, shear, free, width, G: STEEL.G };
  }
  return undefined;
};

/** Every shape that does it, the least strained first. */
export const designSpring = (w: SpringWish): Result<readonly SpringDesign[]> => {
  const free = w.length - w.stretch;
  if (!(free > 4 * w.line && w.stretch > 0))
    return bad('spring-fills-no-length', { length: w.length, stretch: w.stretch });
  const k = w.force / w.stretch;
  const all = LINES.flatMap((lines) => {
    const t = lines * w.line;
    return [
      ...FILLS.flatMap((fill) => meanders(w, k, fill * free, t, lines)),
      ...ovals(w, k, free, t, lines),
      ...straps(w, k, t, lines),
    ];
  });
  if (all.length === 0) return bad('spring-room-too-small', { rate: k, width: w.width, free });
  const sound = all.filter((d) => d.strain <= w.strain * (1 + 1e-9)).sort((a, b) => a.strain - b.strain);
  if (sound.length === 0)
    return bad('spring-overstrained', { least: Math.min(...all.map((d) => d.strain)), limit: w.strain });
  return good(sound);
};
