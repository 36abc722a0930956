/**
 * The thread series against reference rows (tests/reference/series.json, each with its source and whether it was read
 * or recalled), against the number-size rule, and against published basic pitch diameters by a path of their own.
 */

import { describe, expect, it } from 'vitest';
import {
  coarsePitch,
  diameters,
  inchesToMillimetres,
  LAST_UNIFIED_SIZE,
  METRIC_SERIES,
  METRIC_SIZES,
  mm,
  numberSize,
  pitchDiameter,
  standardPitches,
  UNIFIED_SERIES,
  UNIFIED_SIZES,
  unifiedSeries,
  unifiedSize,
} from '../../widgets/engine/index.ts';
import { reasonOf } from '../../widgets/words/reason.ts';
import reference from '../reference/series.json';

const ALL = [...METRIC_SERIES, ...UNIFIED_SERIES];

describe('METRIC_SERIES', () => {
  it('holds the reference rows of ISO 261, all of them and no other, in their order', () => {
    expect(
      METRIC_SERIES.map(({ designation, d, P, series, choice }) => ({ designation, d, P, series, choice })),
    ).toEqual(
      reference.iso_261.threads.map((row) => ({
        designation: row.designation.replace('x', '×'),
        d: row.major_mm,
        P: row.pitch_mm,
        series: row.series,
        choice: row.choice,
      })),
    );
  });

  it('rises in diameter, begins each size with its one coarse pitch and falls in pitch', () => {
    METRIC_SERIES.forEach((row, i) => {
      const next = METRIC_SERIES[i + 1];
      if (next === undefined) return;
      if (next.d === row.d) {
        expect(next.P, next.designation).toBeLessThan(row.P);
        expect(next.series, next.designation).toBe('fine');
        expect(next.choice, next.designation).toBe(row.choice);
      } else {
        expect(next.d, next.designation).toBeGreaterThan(row.d);
        expect(next.series, next.designation).toBe('coarse');
      }
    });
  });

  it('leaves no gap: a size is at most a quarter larger than the one below, and its coarse pitch never smaller', () => {
    METRIC_SIZES.forEach((d, i) => {
      const next = METRIC_SIZES[i + 1];
      if (next === undefined) return;
      expect(next / d, `M${d} to M${next}`).toBeLessThanOrEqual(1.25);
      expect(coarsePitch(next) ?? 0, `M${next}`).toBeGreaterThanOrEqual(coarsePitch(d) ?? Number.NaN);
    });
  });
});

describe('UNIFIED_SERIES', () => {
  it('holds the reference rows of ASME B1.1, all of them and no other, in their order', () => {
    expect(UNIFIED_SERIES.map(({ designation, d, tpi, series }) => ({ designation, d, tpi, series }))).toEqual(
      reference.unified.threads.map((row) => ({
        designation: row.designation,
        d: inchesToMillimetres(row.major_in),
        tpi: row.tpi,
        series: row.series,
      })),
    );
  });

  it('has a pitch of one inch over threads per inch', () => {
    for (const row of UNIFIED_SERIES) expect(row.P * (row.tpi ?? 0), row.designation).toBeCloseTo(25.4, 12);
  });

  it('rises in diameter, and in threads per inch from UNC to UNF to UNEF', () => {
    UNIFIED_SIZES.forEach(({ label, D, tpi }, i) => {
      const next = UNIFIED_SIZES[i + 1];
      if (next) expect(next.D, next.label).toBeGreaterThan(D);
      const counts = Object.values(tpi);
      expect(counts.length, label).toBeGreaterThan(0);
      expect(
        [...counts].sort((a, b) => a - b),
        label,
      ).toEqual(counts);
      expect(Object.keys(tpi), label).toEqual(['UNC', 'UNF', 'UNEF'].filter((s) => s in tpi));
    });
  });

  it('leaves no gap: every sixteenth from 1/4 to 1-1/2 and every number size of the trade', () => {
    const sixteenths = UNIFIED_SIZES.filter((s) => !s.label.startsWith('#')).map((s) => s.D * 16);
    expect(sixteenths).toEqual(Array.from({ length: 21 }, (_, i) => 4 + i));
    expect(UNIFIED_SIZES.flatMap((s) => (s.label.startsWith('#') ? [Number(s.label.slice(1))] : []))).toEqual([
      0, 1, 2, 3, 4, 5, 6, 8, 10, 12,
    ]);
    expect(UNIFIED_SIZES.at(-1)?.D).toBe(LAST_UNIFIED_SIZE);
  });
});

describe('both series', () => {
  it('repeat no designation', () => {
    expect(new Set(ALL.map((row) => row.designation)).size).toBe(ALL.length);
  });

  it('leave a core under every thread, at least half of the diameter', () => {
    for (const row of ALL) expect(diameters(row).d3 / row.d, row.designation).toBeGreaterThan(0.5);
  });
});

describe('numberSize', () => {
  // ASME B1.1 series, read in an article on US machine screw dimensions.
  for (const { n, D } of reference.number_sizes.rows)
    it(`#${n} is ${D} in`, () => {
      expect(numberSize(n)).toBe(D);
      expect(unifiedSize(D)?.label).toBe(`#${n}`);
    });
});

describe('finders', () => {
  it('coarsePitch gives the pitch that M10 alone implies, and nothing outside the series', () => {
    expect(coarsePitch(mm(10))).toBe(1.5);
    expect(coarsePitch(mm(1.6))).toBe(0.35);
    expect(coarsePitch(mm(9))).toBeUndefined();
    expect(coarsePitch(mm(Number.NaN))).toBeUndefined();
  });

  it('standardPitches gives coarse first, then fine', () => {
    expect(standardPitches(mm(10))).toEqual([1.5, 1.25, 1, 0.75]);
    expect(standardPitches(mm(10.01))).toEqual([]);
  });

  it('unifiedSize finds a size by its inches', () => {
    expect(unifiedSize(0.375)).toEqual({ label: '3/8', D: 0.375, tpi: { UNC: 16, UNF: 24, UNEF: 32 } });
    expect(unifiedSize(1.25)?.label).toBe('1-1/4');
    expect(unifiedSize(0.6875)?.tpi).toEqual({ UNEF: 24 });
    expect(unifiedSize(0.3)).toBeUndefined();
  });

  it('unifiedSeries names the series of every row, and finds every row by name', () => {
    for (const row of reference.unified.threads)
      expect(unifiedSeries(row.major_in, row.tpi), row.designation).toBe(row.series);
  });

  it('unifiedSeries knows the constant-pitch series UN by its ranges', () => {
    // ASME B1.1, series table (from memory).
    expect(unifiedSeries(0.375, 20)).toBe('UN');
    expect(unifiedSeries(0.375, 12)).toBeUndefined();
    expect(unifiedSeries(0.3125, 16)).toBeUndefined();
    expect(unifiedSeries(1.5, 8)).toBe('UN');
    expect(unifiedSeries(0.9375, 8)).toBeUndefined();
    expect(unifiedSeries(1.0625, 32)).toBeUndefined();
    expect(unifiedSeries(1, 14)).toBeUndefined();
    expect(unifiedSeries(1.4375, 6)).toBe('UN');
    expect(unifiedSeries(1.3125, 6)).toBeUndefined();
    expect(unifiedSeries(1.5, 28)).toBe('UN');
    expect(unifiedSeries(0.216, 20)).toBeUndefined();
    expect(unifiedSeries(2, 8)).toBeUndefined();
  });
});

/**
 * Where ridge and groove are equally wide: the crest is P/8 wide and each flank widens it by tan 30° a unit of depth,
 * so the ridge is P/2 wide at the depth (P/2 − P/8)/(2 tan 30°). ISO 68-1 geometry, without H.
 */
const whereRidgeEqualsGroove = (d: number, P: number): number =>
  d - (2 * (P / 2 - P / 8)) / (2 * Math.tan(Math.PI / 6));

describe('basic pitch diameter', () => {
  for (const row of reference.basic_pitch_diameters.iso_mm)
    it(`${row.designation}: ${row.value} mm (${row.obtained})`, () => {
      const thread = METRIC_SERIES.find((t) => t.d === row.d && t.P === row.P);
      expect(thread, 'is in the series').toBeDefined();
      expect(Math.abs(whereRidgeEqualsGroove(row.d, row.P) - row.value)).toBeLessThanOrEqual(0.0005 + 1e-9);
      if (thread) expect(diameters(thread).d2).toBeCloseTo(whereRidgeEqualsGroove(row.d, row.P), 12);
    });

  for (const row of reference.basic_pitch_diameters.unified_in)
    it(`${row.designation}: ${row.value} in (${row.obtained})`, () => {
      const size = unifiedSize(row.D);
      expect(Object.values(size?.tpi ?? {}), 'is in the series').toContain(row.tpi);
      const d2 = pitchDiameter.of({ d: inchesToMillimetres(row.D), P: mm(25.4 / row.tpi) });
      if (!d2.ok) throw new Error(reasonOf(d2));
      expect(Math.abs(d2.value.d_2 / 25.4 - row.value)).toBeLessThanOrEqual(0.00005 + 1e-9);
      expect(Math.abs(whereRidgeEqualsGroove(row.D, 1 / row.tpi) - row.value)).toBeLessThanOrEqual(0.00005 + 1e-9);
    });
});
