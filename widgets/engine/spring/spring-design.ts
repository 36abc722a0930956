/**
 * A printed spring designed backwards: from the force at the mark, the stretch, the room and the printer’s line to shapes that do it.
 *
 * The rate wanted is force over stretch. A strip is a whole count of lines thick. A meander is (m + 1) p long, with stubs of half a connector, and takes the free length or a part of it; its leg follows from the
 * rate, which falls as the leg grows. Rings and ovals stand in a row, each taking its share of the stretch: a ring’s radius follows from the rate; an oval is as high as the length lets it, and its straights follow. What does not
 * fit the room, leaves no gap to print, is strained past the limit, or sways more than a tenth, is left out.
 * Source: the relations of meander.ts and ring.ts. Units: mm, N, MPa.
 */
import { megapascals, mm, plain } from '../kernel/quantity.ts';
import { bad, good, type Result } from '../kernel/result.ts';
import { rootBetween } from '../numerics/invert.ts';
import { meanderRateThick, meanderStrain } from './meander.ts';
import { ovalRate, ovalStrain } from './ring.ts';

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

interface Common {
  readonly t: number;
  readonly lines: number;
  /** N/mm */
  readonly k: number;
  /** At its farthest. */
  readonly strain: number;
  readonly free: number;
  readonly width: number;
}
export interface MeanderDesign extends Common {
  readonly shape: 'meander';
  readonly m: number;
  readonly L: number;
  readonly p: number;
  readonly stub: number;
}
export interface OvalDesign extends Common {
  readonly shape: 'ring' | 'oval';
  /** So many in a row. */
  readonly cells: number;
  readonly R: number;
  /** Half the straight across the pull; 0 for a ring. */
  readonly h: number;
}
export type SpringDesign = MeanderDesign | OvalDesign;

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

/** Every shape that does it, the least strained first. */
export const designSpring = (w: SpringWish): Result<readonly SpringDesign[]> => {
  const free = w.length - w.stretch;
  if (!(free > 4 * w.line && w.stretch > 0))
    return bad('spring-fills-no-length', { length: w.length, stretch: w.stretch });
  const k = w.force / w.stretch;
  const all = LINES.flatMap((lines) => {
    const t = lines * w.line;
    return [...FILLS.flatMap((fill) => meanders(w, k, fill * free, t, lines)), ...ovals(w, k, free, t, lines)];
  });
  if (all.length === 0) return bad('spring-room-too-small', { rate: k, width: w.width, free });
  const sound = all.filter((d) => d.strain <= w.strain * (1 + 1e-9)).sort((a, b) => a.strain - b.strain);
  if (sound.length === 0)
    return bad('spring-overstrained', { least: Math.min(...all.map((d) => d.strain)), limit: w.strain });
  return good(sound);
};
