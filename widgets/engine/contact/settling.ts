/**
 * What moves by itself, judged from the reader’s own readings: settling, creep, or the warmth of the room.
 *
 * Readings z of one place that nobody turned, at times t after the setting, with the temperature T or without. Fitted by least squares:
 *   still      z = a
 *   settling   z = a + s (1 − e^(−t/τ))       dies out: flanks embed, grease is squeezed out
 *   creeping   z = a + c log₁₀(1 + t/t_0)      as much in each tenfold time (log-law.ts): printed parts, leather, glue
 * each also with + w (T − mean T), where the temperature was read and went up or down. τ is sought on a scale of time, from the first time read to the last.
 * Which law the readings speak for is told by the least AICc = n ln(Σr²/n) + 2p + 2p(p + 1)/(n − p − 1), p the unknowns with the scatter; laws within 2 of it
 * are not told apart. Where each threshold comes from:
 *   least scatter   the last digit that the readings have, d: a rounded reading has d/√12 (JCGM 100:2008, F.2.2.1); unstated, a tenth of a micrometre (assumption)
 *   warmth          a room that stays within the last digit of its thermometer tells nothing of warmth; unstated, a tenth of a kelvin (assumption)
 *   2 in AICc       the usual rule of that criterion (below)
 *   INDEPENDENT     columns of a fit of which so little is left beside the others can’t be told apart (assumption; it only spares fits without an answer)
 * Source: Akaike’s criterion as corrected by Hurvich & Tsai, Biometrika 76 (1989), and the difference of 2, Burnham & Anderson, Model Selection (2002), all from
 * memory; the laws: handbooks on bolted joints and on creep, from memory. Checked on readings made by each law. Units: mm, h, K.
 */
import { at } from '../kernel/at.ts';
import { bad, good, type Result } from '../kernel/result.ts';
import { leastSquares } from '../numerics/least-squares.ts';
import { studentT } from '../numerics/line-fit.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'settling-too-few': { readonly readings: number; readonly least: number };
    'settling-no-time': Record<string, never>;
    'settling-out-of-range': { readonly row: number };
  }
}

export interface SettlingReading {
  /** Hours after the setting. */
  readonly t: number;
  readonly z: number;
  /** °C, in every row or in none. */
  readonly T?: number | undefined;
  /** Half a unit of the last digit of the reading, mm, and of the temperature, K, where they are known. */
  readonly half?: number | undefined;
  readonly halfT?: number | undefined;
}

export type SettlingKind = 'still' | 'settling' | 'creeping';

export interface SettlingLaw {
  readonly kind: SettlingKind;
  readonly a: number;
  /** What settles in all, or creeps in a tenfold time, mm; nought where still. */
  readonly amount: number;
  /** Hours; of settling. */
  readonly tau: number;
  /** mm a kelvin, and its ± of 95 %; undefined where warmth is not in the law. */
  readonly heat: { readonly perKelvin: number; readonly half: number } | undefined;
  readonly scatter: number;
  readonly AICc: number;
}

export interface SettlingFound {
  readonly best: SettlingLaw;
  /** Other kinds that the readings speak for nearly as well. */
  readonly rivals: readonly SettlingKind[];
  /** Whether warmth is in the law that is best. */
  readonly T_mean: number | undefined;
  /** Motion yet to come from the last reading to ten times its time, at the mean temperature, mm; the largest of best and rivals. */
  readonly toCome: number;
  /** Last digit of the readings, mm: less than that is neither scatter nor motion. */
  readonly digit: number;
}

export const LEAST_SETTLING_READINGS = 6;
/** Last digits where none are known, mm and K (assumptions). */
const DIGIT = 1e-4;
const DIGIT_T = 0.1;
const INDEPENDENT = 0.05;
const NEARLY = 2;
const TAUS = 40;

/** The law at a time, at the mean temperature. */
export const settledAt = (law: SettlingLaw, t: number, t_0: number): number =>
  law.a +
  (law.kind === 'settling'
    ? law.amount * -Math.expm1(-t / law.tau)
    : law.kind === 'creeping'
      ? law.amount * Math.log10(1 + t / t_0)
      : 0);

export const judgeSettling = (rows: readonly SettlingReading[], t_0: number): Result<SettlingFound> => {
  if (!(rows.length >= LEAST_SETTLING_READINGS))
    return bad('settling-too-few', { readings: rows.length, least: LEAST_SETTLING_READINGS });
  for (const [i, { t, z, T }] of rows.entries())
    if (!(t >= 0 && t <= 1e6 && Math.abs(z) <= 1e3 && (T === undefined || Math.abs(T) <= 200)))
      return bad('settling-out-of-range', { row: i + 1 });
  const times = rows.map(({ t }) => t);
  const [last, first] = [Math.max(...times), Math.min(...times)];
  if (!(last > first && t_0 > 0)) return bad('settling-no-time', {});
  const z = rows.map((row) => row.z);
  const warm = rows.every(({ T }) => T !== undefined) ? rows.map(({ T }) => T ?? 0) : undefined;
  const T_mean = warm && warm.reduce((sum, T) => sum + T, 0) / warm.length;
  const finest = (halves: readonly (number | undefined)[], otherwise: number) => {
    const known = halves.flatMap((half) => (half !== undefined && half > 0 ? [2 * half] : []));
    return known.length > 0 ? Math.min(...known) : otherwise;
  };
  const digit = finest(
    rows.map(({ half }) => half),
    DIGIT,
  );
  const still = finest(
    rows.map(({ halfT }) => halfT),
    DIGIT_T,
  );
  const heats =
    warm && T_mean !== undefined && Math.max(...warm) - Math.min(...warm) > still * (1 + 1e-9)
      ? [undefined, warm.map((T) => T - T_mean)]
      : [undefined];
  const start = Math.max(Math.min(...times.filter((t) => t > 0)), last * 1e-5);
  const taus = Array.from({ length: TAUS + 1 }, (_, i) => start * (last / start) ** (i / TAUS));
  const fitted = fittedTo(z, digit / Math.sqrt(12));
  const laws = heats.flatMap((heat) => [
    ...fitted('still', undefined, heat, 0),
    ...fitted(
      'creeping',
      times.map((t) => Math.log10(1 + t / t_0)),
      heat,
      0,
    ),
    ...least(
      taus.flatMap((tau) =>
        fitted(
          'settling',
          times.map((t) => -Math.expm1(-t / tau)),
          heat,
          tau,
        ),
      ),
    ),
  ]);
  const [best] = least(laws);
  if (!best) return bad('settling-no-time', {});
  const rivals = (['still', 'settling', 'creeping'] as const).filter(
    (kind) => kind !== best.kind && laws.some((law) => law.kind === kind && law.AICc <= best.AICc + NEARLY),
  );
  const near = laws.filter((law) => law.AICc <= best.AICc + NEARLY);
  const yet = near.map((law) => settledAt(law, 10 * last, t_0) - settledAt(law, last, t_0));
  return good({
    best,
    rivals,
    T_mean,
    toCome: yet.reduce((most, x) => (Math.abs(x) > Math.abs(most) ? x : most), 0),
    digit,
  });
};

const least = (laws: readonly SettlingLaw[]): readonly SettlingLaw[] => {
  const [first] = laws;
  return first ? [laws.reduce((a, b) => (b.AICc < a.AICc ? b : a), first)] : [];
};

/** The law fitted to these readings, or none where its columns can’t be told apart; their scatter is never taken for less than this. */
const fittedTo =
  (z: readonly number[], least: number) =>
  (
    kind: SettlingKind,
    column: readonly number[] | undefined,
    heat: readonly number[] | undefined,
    tau: number,
  ): readonly SettlingLaw[] => {
    const n = z.length;
    const columns = [z.map(() => 1), ...(column ? [column] : []), ...(heat ? [heat] : [])];
    const fit = leastSquares(columns, z);
    if (!fit || fit.freedom < 1 || fit.independence < INDEPENDENT) return [];
    const unknowns = columns.length + 1 + (kind === 'settling' ? 1 : 0);
    if (n - unknowns - 1 < 1) return [];
    const squares = Math.max(fit.sumOfSquares, n * least ** 2);
    const scatter = Math.sqrt(squares / fit.freedom);
    const j = columns.length - 1;
    const t = studentT(0.95, fit.freedom);
    return [
      {
        kind,
        a: at(fit.coefficients, 0),
        amount: column ? at(fit.coefficients, 1) : 0,
        tau,
        heat:
          heat && t.ok
            ? { perKelvin: at(fit.coefficients, j), half: t.value * scatter * Math.sqrt(at(at(fit.inverse, j), j)) }
            : undefined,
        scatter,
        AICc: n * Math.log(squares / n) + 2 * unknowns + (2 * unknowns * (unknowns + 1)) / (n - unknowns - 1),
      },
    ];
  };
