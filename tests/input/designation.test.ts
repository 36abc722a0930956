/**
 * Reading of designations: a table of what people type, a table of what is refused and why, and two properties: the
 * canonical form reads back as the same thread, and no text at all makes the reader throw or answer with a NaN.
 * Sizes expected here are worked by hand: 1 in = 25.4 mm, number sizes 0.060 + 0.013 n in, pitch 25.4/tpi mm.
 */

import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { diameters, fitOfThread, METRIC_SERIES, type Thread, UNIFIED_SERIES } from '../../widgets/engine/index.ts';
import { readThread } from '../../widgets/input/designation.ts';
import { reasonOf } from '../../widgets/words/reason.ts';
import { MANY, readOrSaid } from '../support/any-text.ts';
import { howMany, these } from '../support/deep.ts';

// A hundred thousand cases take seconds, and many where the processor is shared.
vi.setConfig({ testTimeout: 120_000 });

const read = (typed: string): Thread => {
  const result = readThread(typed);
  if (!result.ok) throw new Error(reasonOf(result));
  return result.value;
};

const sentenceOf = (typed: string): string => {
  const result = readThread(typed);
  if (result.ok) throw new Error(`${typed} was read as ${result.value.designation}`);
  return reasonOf(result);
};

type Row = readonly [typed: string, canonical: string, d: number, P: number, N?: number, h?: 1 | -1, cls?: string];

const METRIC: readonly Row[] = [
  ['M10x1.5', 'M10×1.5', 10, 1.5],
  ['M10×1,5', 'M10×1.5', 10, 1.5],
  ['M10X1.5', 'M10×1.5', 10, 1.5],
  ['m10x1.50', 'M10×1.5', 10, 1.5],
  ['  M 10 x 1.5  ', 'M10×1.5', 10, 1.5],
  ['M10 x 1.5 mm', 'M10×1.5', 10, 1.5],
  ['M10*1.5', 'M10×1.5', 10, 1.5],
  ['M10-1.5', 'M10×1.5', 10, 1.5],
  ['M10 – 1.5', 'M10×1.5', 10, 1.5],
  ['М10х1,5', 'M10×1.5', 10, 1.5], // Cyrillic letters
  ['Ｍ１０×１．５', 'M10×1.5', 10, 1.5], // full-width
  ['M\u00a010\u202f×\u00a01.5\u200b', 'M10×1.5', 10, 1.5],
  ['M10xP1.5', 'M10×1.5', 10, 1.5],
  ['M10', 'M10×1.5', 10, 1.5],
  ['M4', 'M4×0.7', 4, 0.7],
  ['M3.5', 'M3.5×0.6', 3.5, 0.6],
  ['M12x1', 'M12×1', 12, 1],
  ['M10x1.4', 'M10×1.4', 10, 1.4],
  ['M42x4.5', 'M42×4.5', 42, 4.5],
  ['M8x1.25-6g', 'M8×1.25-6g', 8, 1.25, 1, 1, '6g'],
  ['M8×1.25 - 6H', 'M8×1.25-6H', 8, 1.25, 1, 1, '6H'],
  ['M10-6g', 'M10×1.5-6g', 10, 1.5, 1, 1, '6g'],
  ['M10-3h3h', 'M10×1.5-3h3h', 10, 1.5, 1, 1, '3h3h'],
  ['M8x1.25-5g6g', 'M8×1.25-5g6g', 8, 1.25, 1, 1, '5g6g'],
  ['M8x1.25 6H/6g', 'M8×1.25-6H/6g', 8, 1.25, 1, 1, '6H/6g'],
  ['M8x1.25 class 6g', 'M8×1.25-6g', 8, 1.25, 1, 1, '6g'],
  ['M8x1.25 LH', 'M8×1.25 LH', 8, 1.25, 1, -1],
  ['M8x1.25-LH', 'M8×1.25 LH', 8, 1.25, 1, -1],
  ['M8x1.25LH', 'M8×1.25 LH', 8, 1.25, 1, -1],
  ['M8x1.25 left', 'M8×1.25 LH', 8, 1.25, 1, -1],
  ['M8x1.25, left hand', 'M8×1.25 LH', 8, 1.25, 1, -1],
  ['left-hand M8x1.25', 'M8×1.25 LH', 8, 1.25, 1, -1],
  ['M8x1.25 left-handed thread', 'M8×1.25 LH', 8, 1.25, 1, -1],
  ['M8x1.25-6g L.H.', 'M8×1.25-6g LH', 8, 1.25, 1, -1, '6g'],
  ['M8x1.25-6g-LH', 'M8×1.25-6g LH', 8, 1.25, 1, -1, '6g'],
  ['M8x1.25-LH-6g', 'M8×1.25-6g LH', 8, 1.25, 1, -1, '6g'],
  ['M8x1.25 RH', 'M8×1.25', 8, 1.25],
  ['M8x1.25 right hand', 'M8×1.25', 8, 1.25],
  ['M8x1.25 R.H.', 'M8×1.25', 8, 1.25],
  ['M16xPh3P1.5', 'M16×Ph3P1.5', 16, 1.5, 2],
  ['M16 x Ph 3 P 1.5', 'M16×Ph3P1.5', 16, 1.5, 2],
  ['m16ph3p1,5', 'M16×Ph3P1.5', 16, 1.5, 2],
  ['M16xPh1.5P1.5', 'M16×1.5', 16, 1.5],
  ['M16xPh3P1.5-6H LH', 'M16×Ph3P1.5-6H LH', 16, 1.5, 2, -1, '6H'],
  ['M16xPh3P1.5 (two starts)', 'M16×Ph3P1.5', 16, 1.5, 2],
  ['M16x1.5 2 start', 'M16×Ph3P1.5', 16, 1.5, 2],
  ['M16x1.5 2-start', 'M16×Ph3P1.5', 16, 1.5, 2],
  ['M16x1.5 two-start', 'M16×Ph3P1.5', 16, 1.5, 2],
  ['M16x1.5 double start', 'M16×Ph3P1.5', 16, 1.5, 2],
  ['M16x1.5 twin start', 'M16×Ph3P1.5', 16, 1.5, 2],
  ['M16x1.5, 3 starts', 'M16×Ph4.5P1.5', 16, 1.5, 3],
  ['M16x1.5 triple start', 'M16×Ph4.5P1.5', 16, 1.5, 3],
  ['M16x1.5 quadruple start LH', 'M16×Ph6P1.5 LH', 16, 1.5, 4, -1],
  ['M16x1.5 single start', 'M16×1.5', 16, 1.5],
  ['M30x1 12 starts', 'M30×Ph12P1', 30, 1, 12],
  ['M30x1 twelve-start', 'M30×Ph12P1', 30, 1, 12],
  ['M10x0.35 3 starts', 'M10×Ph1.05P0.35', 10, 0.35, 3],
];

const UNIFIED: readonly Row[] = [
  ['3/8-16', '3/8-16 UNC', 9.525, 1.5875],
  ['3/8-16 UNC', '3/8-16 UNC', 9.525, 1.5875],
  ['3/8-16unc', '3/8-16 UNC', 9.525, 1.5875],
  ['3/8-16-UNC', '3/8-16 UNC', 9.525, 1.5875],
  ['3/8"-16', '3/8-16 UNC', 9.525, 1.5875],
  ['3/8″–16', '3/8-16 UNC', 9.525, 1.5875],
  ['3/8 in - 16 tpi', '3/8-16 UNC', 9.525, 1.5875],
  ['3/8 inch 16 threads per inch', '3/8-16 UNC', 9.525, 1.5875],
  ['3/8 x 16', '3/8-16 UNC', 9.525, 1.5875],
  ['3⁄8-16', '3/8-16 UNC', 9.525, 1.5875],
  ['⅜-16', '3/8-16 UNC', 9.525, 1.5875],
  ['.375-16', '3/8-16 UNC', 9.525, 1.5875],
  ['0,375-16', '3/8-16 UNC', 9.525, 1.5875],
  ['0.375-16 UNC-2A', '3/8-16 UNC-2A', 9.525, 1.5875, 1, 1, '2A'],
  ['3/8-16 UNC2a', '3/8-16 UNC-2A', 9.525, 1.5875, 1, 1, '2A'],
  ['3/8-16-3B', '3/8-16 UNC-3B', 9.525, 1.5875, 1, 1, '3B'],
  ['3/8-16 UNC-2A/2B', '3/8-16 UNC-2A/2B', 9.525, 1.5875, 1, 1, '2A/2B'],
  ['3/8-16 UNC-2A-LH', '3/8-16 UNC-2A LH', 9.525, 1.5875, 1, -1, '2A'],
  ['3/8 UNC', '3/8-16 UNC', 9.525, 1.5875],
  ['3/8 UNF LH', '3/8-24 UNF LH', 9.525, 25.4 / 24, 1, -1],
  ['3/8-16 UN', '3/8-16 UNC', 9.525, 1.5875],
  ['1-1/4-7', '1-1/4-7 UNC', 31.75, 25.4 / 7],
  ['1 1/4-7', '1-1/4-7 UNC', 31.75, 25.4 / 7],
  ['1¼-7', '1-1/4-7 UNC', 31.75, 25.4 / 7],
  ['1-¼-7', '1-1/4-7 UNC', 31.75, 25.4 / 7],
  ['1½"-6', '1-1/2-6 UNC', 38.1, 25.4 / 6],
  ['½-13', '1/2-13 UNC', 12.7, 25.4 / 13],
  ['¼-20', '1/4-20 UNC', 6.35, 1.27],
  ['¾-16', '3/4-16 UNF', 19.05, 1.5875],
  ['⅝-11', '5/8-11 UNC', 15.875, 25.4 / 11],
  ['⅞-9', '7/8-9 UNC', 22.225, 25.4 / 9],
  ['#10-32', '#10-32 UNF', 4.826, 0.79375],
  ['# 10 - 32', '#10-32 UNF', 4.826, 0.79375],
  ['10-32 UNF', '#10-32 UNF', 4.826, 0.79375],
  ['10-32', '#10-32 UNF', 4.826, 0.79375],
  ['.190-32', '#10-32 UNF', 4.826, 0.79375],
  ['No. 8-36', '#8-36 UNF', 4.1656, 25.4 / 36],
  ['No 8-36', '#8-36 UNF', 4.1656, 25.4 / 36],
  ['№8-36', '#8-36 UNF', 4.1656, 25.4 / 36],
  ['number 8-36', '#8-36 UNF', 4.1656, 25.4 / 36],
  ['#0-80', '#0-80 UNF', 1.524, 0.3175],
  ['0-80', '#0-80 UNF', 1.524, 0.3175],
  ['10 UNF', '#10-32 UNF', 4.826, 0.79375],
  ['12-24', '#12-24 UNC', 5.4864, 25.4 / 24],
  ['1-8', '1-8 UNC', 25.4, 3.175],
  ['1-20', '1-20 UNEF', 25.4, 1.27],
  ['1-32', '1-32 UN', 25.4, 0.79375],
  ['1 UNEF', '1-20 UNEF', 25.4, 1.27],
  ['.151-32', '#7-32 UNS', 3.8354, 0.79375],
  ['1-1/2-4 UN', '1-1/2-4 UNS', 38.1, 6.35],
  ['1-72', '#1-72 UNF', 1.8542, 25.4 / 72],
  ['1-64', '#1-64 UNC', 1.8542, 0.396875],
  ['2-56', '#2-56 UNC', 2.1844, 25.4 / 56],
  ['1-14', '1-14 UNS', 25.4, 25.4 / 14],
  ['1-40', '#1-40 UNS', 1.8542, 0.635],
  ['1-24', '#1-24 UNS', 1.8542, 25.4 / 24],
  ['1-23', '1-23 UNS', 25.4, 25.4 / 23],
  ['6-5', '6 in-5', 152.4, 5.08],
  ['1 x 6', '1-6 UNS', 25.4, 25.4 / 6],
  ['1 in-40', '1 in-40 UNS', 25.4, 0.635],
  ['1.0-40', '1 in-40 UNS', 25.4, 0.635],
  ['7-32', '#7-32 UNS', 3.8354, 0.79375],
  ['3/8-20', '3/8-20 UN', 9.525, 1.27],
  ['3/8-21 UNS', '3/8-21 UNS', 9.525, 25.4 / 21],
  ['1-1/2-8 UN', '1-1/2-8 UN', 38.1, 3.175],
  ['.312-18', '5/16-18 UNC', 7.9375, 25.4 / 18],
  ['.313 in - 18', '5/16-18 UNC', 7.9375, 25.4 / 18],
  ['.3-20', '0.3-20 UNS', 7.62, 1.27],
  ['.311-18', '0.311-18 UNS', 7.8994, 25.4 / 18],
  ['17/64-20', '17/64-20 UNS', 6.746875, 1.27],
  ['1/4-20 NC', '1/4-20 UNC', 6.35, 1.27],
  ['1-3/4-5 UNC', '1-3/4-5 UNC', 44.45, 5.08],
  ['1-3/4-5', '1-3/4-5', 44.45, 5.08],
  ['2-4.5', '2 in-4.5', 50.8, 25.4 / 4.5],
  ['8 in-4', '8 in-4', 203.2, 6.35],
  ['3/8-16 2 start', '3/8-16 UNC 2-start', 9.525, 1.5875, 2],
  ['3/8-16 UNC double start -2A LH', '3/8-16 UNC-2A 2-start LH', 9.525, 1.5875, 2, -1, '2A'],
];

const FREE: readonly Row[] = [
  ['12 mm x 1.1 mm', '12 mm × 1.1 mm', 12, 1.1],
  ['12 x 1.1 mm', '12 mm × 1.1 mm', 12, 1.1],
  ['12 mm x 1,1', '12 mm × 1.1 mm', 12, 1.1],
  ['12mm×1.1mm', '12 mm × 1.1 mm', 12, 1.1],
  ['Ø12 x 1.1 mm', '12 mm × 1.1 mm', 12, 1.1],
  ['d 12 P 1.1', '12 mm × 1.1 mm', 12, 1.1],
  ['d=12, P=1.1', '12 mm × 1.1 mm', 12, 1.1],
  ['10 x 1.5', '10 mm × 1.5 mm', 10, 1.5],
  ['12-1.1', '12 mm × 1.1 mm', 12, 1.1],
  ['12 x 1', '12 mm × 1 mm', 12, 1],
  ['14 x 6', '14 mm × 6 mm', 14, 6],
  ['0.5 in x 1.1 mm', '0.5 in × 1.1 mm', 12.7, 1.1],
  ['1/2 in x 1.1 mm', '0.5 in × 1.1 mm', 12.7, 1.1],
  ['6.35 mm x 40 tpi', '6.35 mm × 40 tpi', 6.35, 0.635],
  ['0.25 in x 0.5 mm', '0.25 in × 0.5 mm', 6.35, 0.5],
  ['0.5 in x 0.05 in', '0.5 in × 0.05 in', 12.7, 1.27],
  ['0.5 x 0.05 in', '0.5 in × 0.05 in', 12.7, 1.27],
  ['12 mm x 1.1 mm LH', '12 mm × 1.1 mm LH', 12, 1.1, 1, -1],
  ['12 mm x 1.1 mm, 2 start, left', '12 mm × 1.1 mm 2-start LH', 12, 1.1, 2, -1],
  ['12 mm x 1.1 mm - 6g', '12 mm × 1.1 mm-6g', 12, 1.1, 1, 1, '6g'],
];

describe('readThread', () => {
  for (const [kind, rows] of [
    ['metric', METRIC],
    ['unified', UNIFIED],
    ['free', FREE],
  ] as const)
    describe(kind, () => {
      for (const [typed, canonical, d, P, N = 1, h = 1, cls] of rows)
        it(`reads “${typed}” as ${canonical}`, () => {
          const thread = read(typed);
          expect(thread.designation).toBe(canonical);
          expect(thread.kind).toBe(kind);
          expect(thread.d).toBeCloseTo(d, 10);
          expect(thread.P).toBeCloseTo(P, 10);
          expect([thread.N, thread.h, thread.toleranceClass]).toEqual([N, h, cls]);
          expect(thread.L).toBeCloseTo(N * P, 10);
          if (thread.tpi !== undefined) expect(thread.tpi * thread.P).toBeCloseTo(25.4, 10);
          expect(thread.tpi !== undefined).toBe(kind === 'unified' || typed.includes('tpi'));
        });
    });
});

describe('the designs of the notebook', () => {
  // Worked by hand: 25.4/16 − 1.5, 1.5 − 1.25, 25.4/36 − 0.7, and two pairs of common practice; µm a turn.
  for (const [a, b, net] of [
    ['M10×1.5', '3/8-16 UNC', 87.5],
    ['M8×1.25', 'M12×1.5', 250],
    ['M4×0.7', '8-36 UNF', 5.556],
    ['M8×1.25', '5/16-18', 161.1],
    ['10-32', 'M5×0.8', 6.25],
  ] as const)
    it(`${a} with ${b}: ${net} µm a turn`, () => {
      expect(Math.abs(Math.abs(read(b).L - read(a).L) * 1000 - net)).toBeLessThan(0.05);
    });
});

describe('words round a size', () => {
  it.each([
    ['8 mm x 20 thread per inch', '8 mm × 20 tpi'],
    ['8 mm x 20 threads per in', '8 mm × 20 tpi'],
    ['1/4-20 t.p.i', '1/4-20 UNC'],
    ['6 millimetre x 1', '6 mm × 1 mm'],
    ['#   10-32', '#10-32 UNF'],
    ['1/4-20 left-handed', '1/4-20 UNC LH'],
    ['1/4-20 lefthand', '1/4-20 UNC LH'],
    ['1/4-20 right', '1/4-20 UNC'],
    ['1/4-20 righthand', '1/4-20 UNC'],
    ['1/4-20  -  LH', '1/4-20 UNC LH'],
    ['M10x1.5 cl 6g', 'M10×1.5-6g'],
    ['M10x1.5 cl.6g', 'M10×1.5-6g'],
    ['M10  -  6g', 'M10×1.5-6g'],
    ['M4 thread', 'M4×0.7'],
    ['thread M4', 'M4×0.7'],
    ['M8x1.25-6g thread', 'M8×1.25-6g'],
    ['1/4-20 thread', '1/4-20 UNC'],
    ['3/8-24 UNF thread LH', '3/8-24 UNF LH'],
    ['12 mm x 1.1 mm thread', '12 mm × 1.1 mm'],
    ['M6 coarse', 'M6×1'],
    ['M6x1 coarse', 'M6×1'],
    ['M10 coarse pitch LH', 'M10×1.5 LH'],
    ['M6 fine', 'M6×0.75'],
    ['MF6', 'M6×0.75'],
    ['MF8x1', 'M8×1'],
    ['MF 8 x 1', 'M8×1'],
    ['mf10x1,25-6g', 'M10×1.25-6g'],
    ['M8x1 fine', 'M8×1'],
    ['M10x0.5 fine', 'M10×0.5'],
    ['UNC 1/4-20', '1/4-20 UNC'],
    ['UNF 10-32', '#10-32 UNF'],
    ['UNF No. 10-32', '#10-32 UNF'],
    ['UNF#10-32', '#10-32 UNF'],
    ['UNC-1/4-20', '1/4-20 UNC'],
    ['UNC1/4-20', '1/4-20 UNC'],
    ['UNF 1/4', '1/4-28 UNF'],
    ['UNEF .375-32 LH', '3/8-32 UNEF LH'],
    ['UN 1-1/2-8', '1-1/2-8 UN'],
    ['NF 10-32', '#10-32 UNF'],
    ['UNF 3/8-24-2A', '3/8-24 UNF-2A'],
    ['1/2-13 UNRC', '1/2-13 UNC'],
    ['1/2-13UNRC-2A', '1/2-13 UNC-2A'],
    ['1/4-28 UNRF', '1/4-28 UNF'],
    ['1/2-28 UNREF', '1/2-28 UNEF'],
    ['1/4-40 UNRS', '1/4-40 UNS'],
    ['1/4-20 UNR', '1/4-20 UNC'],
    ['UNRC 1/2-13', '1/2-13 UNC'],
    ['1/2 UNRC2A', '1/2-13 UNC-2A'],
  ])('are read however they are spelt: %s', (typed, written) => {
    expect(read(typed).designation).toBe(written);
  });
});

describe('notes', () => {
  const NOTED: readonly (readonly [typed: string, ...pieces: string[]])[] = [
    ['M10', 'the coarse pitch of M10 was taken, 1.5 mm'],
    ['M10-6g', 'the coarse pitch of M10 was taken, 1.5 mm'],
    ['M10x1.4', 'M10×1.4 is not in the series of ISO 261', '1.5, 1.25, 1 and 0.75 mm'],
    ['M9x1', 'nearest sizes of first and second choice are M8 and M10'],
    ['M42x4.5', 'holds M1.6 to M36'],
    ['3/8 UNC', 'those of UNC were taken, 16'],
    [
      '3/8-20',
      '3/8-20 is not in the series UNC, UNF or UNEF',
      'constant-pitch series UN',
      '16 (UNC), 24 (UNF) and 32 (UNEF)',
    ],
    ['1-1/2-8 UN', 'constant-pitch series UN', 'for 1-1/2 they have 6 (UNC)'],
    ['3/8-21', '3/8-21 is not in the series', '16 (UNC), 24 (UNF) and 32 (UNEF)'],
    ['.3-20', 'nearest sizes are 1/4 and 5/16'],
    ['1-3/4-5', 'end at 1-1/2 in'],
    ['.312-18', 'rounded size 5/16, 0.3125 in'],
    ['1-40', '“1” was read as the number size #1', 'write 1 in-40'],
    ['5-16', '“5” was read as 5 in', 'write #5-16'],
    ['10 x 1.5', 'read as 10 mm × 1.5 mm', 'written M10×1.5'],
    ['M16x1.5 2 start', '1.5 mm was read as the pitch', 'the lead is 3 mm'],
    ['M6 coarse', 'the coarse pitch of M6 was taken, 1 mm'],
    ['M6 fine', 'the one fine pitch of M6 was taken, 0.75 mm'],
    ['MF3', 'the one fine pitch of M3 was taken, 0.35 mm'],
    ['M10x0.5 fine', 'M10×0.5 is not in the series of ISO 261'],
    ['1/2-13 UNRC', 'UNRC was read as UNC', 'rounded root'],
    ['1/2 UNRC', 'UNRC was read as UNC', 'those of UNC were taken, 13'],
  ];
  for (const [typed, ...pieces] of NOTED)
    it(`says of “${typed}”: ${pieces[0]}`, () => {
      const notes = read(typed).notes.join(' ');
      for (const piece of pieces) expect(notes).toContain(piece);
    });

  it('are whole sentences, and absent where the designation is complete and standard', () => {
    for (const [typed] of NOTED) for (const note of read(typed).notes) expect(note).toMatch(/^[A-Z0-9#“].*\.$/);
    for (const row of [...METRIC_SERIES, ...UNIFIED_SERIES]) expect(read(row.designation).notes).toEqual([]);
    expect(read('M16xPh3P1.5').notes).toEqual([]);
    expect(read('1-8').notes).toEqual([]);
    expect(read('10-32').notes).toEqual([]);
  });

  it('do not offer another reading that leaves no core', () => {
    for (const typed of ['2-8', '1-14', '0-60']) expect(read(typed).notes.join(' ')).not.toContain('other reading');
  });
});

describe('readThread refuses', () => {
  const REFUSED: readonly (readonly [typed: string, ...pieces: string[]])[] = [
    ['', 'Nothing was typed', 'M10×1.5'],
    [' \t\n ', 'Nothing was typed'],
    ['\u200b', 'Nothing was typed'],
    ['M10x1.5'.repeat(1500), '(10500 characters)', 'at most 100 characters'],
    ['<img src=x onerror=alert(1)>', 'not a thread designation', '12 mm × 1.1 mm'],
    ['🔩', 'not a thread designation'],
    ['bolt', 'not a thread designation'],
    ['M', 'not a thread designation'],
    ['M10x0', 'a pitch of 0 mm', 'from 0.05 to 26 mm'],
    ['M10x-1.5', 'a pitch of −1.5 mm', 'from 0.05 to 26 mm'],
    ['M10x9', 'leaves no core in a diameter of 10 mm', 'at most 8.15 mm'],
    ['M100x30', 'a pitch of 30 mm', 'from 0.05 to 26 mm'],
    ['1/4-3', 'a pitch of 8.467 mm', 'leaves no core', 'at most 5.17 mm'],
    ['M10xNaN', 'one pitch in millimetres'],
    ['M10x1e9', 'one pitch in millimetres'],
    ['M10x1.5x3', 'one pitch in millimetres'],
    ['M10x1.5 bolt', 'only class, starts or hand'],
    ['3/8-1000000000', '1000000000 threads per inch', 'from 1 to 500'],
    ['3/8-1e9', 'number of threads per inch'],
    ['3/8-0', '0 threads per inch', 'from 1 to 500'],
    ['3/8--16', '−16 threads per inch'],
    ['12 mm x 0 tpi', '0 threads per inch'],
    ['M0.2x0.05', 'a diameter of 0.2 mm', 'from 0.3 to 400 mm'],
    ['M1000', 'a diameter of 1000 mm', 'from 0.3 to 400 mm'],
    ['0 mm x 1 mm', 'a diameter of 0 mm'],
    ['M9.3', 'no coarse pitch', 'M8 and M10', 'M9.3×1.5'],
    ['M11', 'no coarse pitch', 'M10 and M12'],
    ['M42', 'no coarse pitch', 'M1.6 to M36'],
    ['M0.5', 'no coarse pitch', 'M0.5×0.1'],
    ['M11 UNC', 'a metric diameter with an inch series', 'write M11 with a pitch'],
    ['M10 x 24 tpi', 'a metric diameter with an inch series'],
    ['M10 fine', 'M10 has 3 fine pitches in ISO 261, 1.25, 1 and 0.75 mm', 'like M10×1.25'],
    ['MF10', '3 fine pitches in ISO 261, 1.25, 1 and 0.75 mm'],
    ['M8 fine pitch', 'M8 has 2 fine pitches in ISO 261, 1 and 0.75 mm'],
    ['MF10x1.5', 'the coarse pitch of M10 is 1.5 mm, so 1.5 mm is not fine', 'M10×1.25'],
    ['M10x2 fine', '2 mm is not fine'],
    ['M10x1 coarse', 'the coarse pitch of M10 is 1.5 mm, so 1 mm is not coarse', 'write M10×1 or M10×1.5'],
    ['MF8x1 coarse', 'MF begins a fine thread'],
    ['M9 fine', 'no coarse pitch in the series of ISO 261', 'M8 and M10'],
    ['M10 extra fine', 'one pitch in millimetres'],
    ['thread', 'not a thread designation'],
    ['fine', 'not a thread designation'],
    ['UNC', 'not a thread designation'],
    ['UNC thread', 'not a thread designation'],
    ['12 mm x 8 thread', 'whether a pitch or threads per inch are meant'],
    ['UNC M10', 'a metric diameter with an inch series'],
    ['UNC 3/8-24', 'not in UNC', '16 (UNC), 24 (UNF) and 32 (UNEF)'],
    ['UNC 1/4-20 UNF', 'only series, class, starts or hand'],
    ['1/2-12 UNRC', 'not in UNC'],
    ['3/8-16 UNRX', 'only series, class, starts or hand'],
    ['M16xPh3', 'Ph is the lead', 'M16×Ph3P1.5'],
    ['m16ph12.5', 'Ph is the lead', 'M16×Ph3P1.5'],
    ['M16x1.5Ph3', 'one pitch in millimetres'],
    ['M16xPh3P1.5.2', 'one pitch in millimetres'],
    ['M16xPh3P2', 'whole number of pitches'],
    ['M16xPh3P0', 'whole number of pitches'],
    ['M16xPh0P1.5', 'whole number of pitches'],
    ['M16xPh3P1.5 3 starts', 'Ph and P make 2 starts, yet 3 are written'],
    ['M16xPh24P1.5', 'makes 16 starts', 'from 1 to 12'],
    ['M8 13 starts', '1 to 12 starts'],
    ['M8 0 starts', '1 to 12 starts'],
    ['M8 2.5 starts', '1 to 12 starts'],
    ['M8 many starts', '1 to 12 starts'],
    ['2 mm x 0.6 mm 12 starts', 'a lead of 7.2 mm', 'at most 5.05 mm', '45°'],
    ['M100x6 12 starts', 'a lead of 72 mm', 'at most 60 mm'],
    ['M8 LH RH', 'both left and right hand'],
    ['M8-2A', '“2A” is a class of Unified threads', '6g', '6H'],
    ['3/8-16-6g', '“6g” is a class of metric threads', '2A'],
    ['M8-6k', '“6k” is not a tolerance class'],
    ['M8-6H/6H', 'not a tolerance class'],
    ['M8-2g', 'not a tolerance class'],
    ['M8-2g6g', 'not a tolerance class'],
    ['M8-6g2g', 'not a tolerance class'],
    ['3/8-16 UNC-2A/3A', 'not a tolerance class'],
    ['3/8-16 UNC-2B/6g', 'not a tolerance class'],
    ['3/8-16-4A', '“4A” is not a tolerance class'],
    ['G1/4', 'pipe thread', '60° form'],
    ['Rp 1/2', 'pipe thread'],
    ['1/2 BSP', 'pipe thread'],
    ['1/4-18 NPT', 'pipe thread'],
    ['Tr10x2', 'trapezoidal thread', '60° form'],
    ['Tr10x2 LH', 'trapezoidal thread'],
    ['1/2-10 ACME', 'trapezoidal thread'],
    ['2BA', 'British Association'],
    ['0 BA', 'British Association'],
    ['BA 4', 'British Association'],
    ['W1/2', 'Whitworth thread'],
    ['W 1/2-12', 'Whitworth thread'],
    ['Rd40', 'round or buttress thread'],
    ['Rd 40x4', 'round or buttress thread'],
    ['S20x2', 'round or buttress thread'],
    ['S 20', 'round or buttress thread'],
    ['1/4 BSW', 'Whitworth thread', '55°'],
    ['1/4-26 BSF', 'Whitworth thread'],
    ['MJ10x1.5', 'controlled root radius'],
    ['3/8-16 UNJC', 'controlled root radius'],
    ['10', 'without threads per inch', '#10-24', 'M10 for a metric thread'],
    ['3/8', 'without threads per inch', 'like 3/8-16'],
    // Not 8-20, which would be read as a number size; and no metric thread where inches or a number were written.
    ['8 in', 'write them too, like 8 in-20.'],
    ['#8', 'write them too, like #8-32.'],
    ['3/8 UN', 'without threads per inch'],
    ['12 mm', 'a diameter without a pitch'],
    ['3/8-16 UNF', 'not in UNF', '16 (UNC), 24 (UNF) and 32 (UNEF)'],
    ['3/8-20 UNC', 'not in UNC', '16 (UNC)'],
    ['11/16 UNC', 'not in UNC', '24 (UNEF)'],
    ['0.3 UNC', 'not in UNC', '0.3 is not one of its sizes'],
    ['#7 UNC', 'not in UNC', '#7 is not one of its sizes'],
    ['1 UNC', '#1-64 and 1-8 both stand in UNC'],
    ['3/8-16 UNX', 'only series, class, starts or hand'],
    ['#14-20', 'from #0 to #12', '0.242-20'],
    ['#00-90', 'from #0 to #12'],
    ['#10 x 1 mm', 'goes with threads per inch'],
    ['#10 mm x 1', 'goes with threads per inch'],
    ['#10 x 0.05 in', 'goes with threads per inch'],
    ['1 x 0', '0 threads per inch'],
    ['1 x -23', '−23 threads per inch'],
    ['0 x 1.4', 'a pitch of 18.14 mm', 'leaves no core in a diameter of 1.524 mm'],
    ['11 UNC', 'not in UNC', '#11 is not one of its sizes'],
    ['12 mm x 1.1 mm UNC', 'the series UNC goes with an inch size'],
    ['7-5', 'leaves no core'],
    ['14 x 7', 'above 6 in the unit has to be written'],
    ['20-16', 'above 6 in the unit has to be written', '20 mm × 1.1 mm'],
    ['6.35 x 40', 'above 6 in the unit has to be written'],
    ['1/3-16', 'halves to sixty-fourths'],
    ['1/0-16', 'halves to sixty-fourths'],
    ['M10x1.5 M12x1.75', 'two threads'],
    ['M10x1.5 and 3/8-16', 'two threads'],
    ['M10x1.5 / 3/8-16 UNC', 'two threads'],
    ['M10x1.5 LH + 3/8-16 RH', 'two threads'],
    ['10-32; 8-36', 'two threads'],
  ];
  for (const [typed, ...pieces] of REFUSED)
    it(`“${typed.slice(0, 40)}”: ${pieces[0]}`, () => {
      const reason = sentenceOf(typed);
      for (const piece of pieces) expect(reason).toContain(piece);
      expect(reason).toMatch(/^(?:Read “|Nothing was typed; ).*[^.]\.$/);
      // One sentence: no full stop before the last but within what was typed or inside a number.
      expect(reason.replace(/“[^”]*”/g, '')).not.toMatch(/\.\s/);
      expect(reason).not.toMatch(/NaN(?!”)|Infinity|undefined/);
    });
});

const ROWS = [...METRIC_SERIES, ...UNIFIED_SERIES];
const CLASSES = { M: ['', '-6g', '-6H', '-5g6g', '-4H', '-6H/6g'], inch: ['', '-2A', '-3B', '-2A/2B'] };
const same = (thread: Thread) => ({ ...thread, notes: [] });

describe('the canonical form', () => {
  it('is what the series write, and reads back as the same thread with every hand, number of starts and class', () => {
    for (const row of ROWS)
      for (const cls of row.tpi === undefined ? CLASSES.M : CLASSES.inch)
        for (const hand of ['', ' LH'])
          for (const N of these([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12], [1, 2, 12])) {
            const typed = `${row.designation}${cls}${N === 1 ? '' : ` ${N}-start`}${hand}`;
            const result = readThread(typed);
            const most = Math.min(60, Math.PI * diameters(row).d2);
            expect(result.ok, typed).toBe(N * row.P <= most);
            if (!result.ok) continue;
            const thread = result.value;
            expect([thread.d, thread.P, thread.N, thread.h], typed).toEqual([row.d, row.P, N, hand === '' ? 1 : -1]);
            expect(thread.toleranceClass ?? '', typed).toBe(cls.slice(1));
            if (N === 1) expect(thread.designation).toBe(typed);
            expect(same(read(thread.designation)), thread.designation).toEqual(same(thread));
          }
  });

  it('of every row of the tables above reads back as the same thread', () => {
    for (const [typed] of [...METRIC, ...UNIFIED, ...FREE]) {
      const thread = read(typed);
      expect(same(read(thread.designation)), typed).toEqual(same(thread));
    }
  });

  const decimal = (most: number, places: number) =>
    fc.integer({ min: 1, max: most * 10 ** places }).map((i) => String(i / 10 ** places));
  const size = fc.oneof(
    decimal(40, 3).map((d) => `M${d}x`),
    decimal(40, 3).map((d) => `${d} mm x `),
    decimal(6, 4).map((d) => `${d} in x `),
    decimal(8, 4).map((d) => `${d}-`),
    fc.integer({ min: 0, max: 15 }).map((d) => `${d}-`),
    fc.integer({ min: 0, max: 12 }).map((d) => `#${d}-`),
    fc.integer({ min: 1, max: 512 }).map((d) => `${d}/64-`),
    fc.integer({ min: 1, max: 15 }).map((d) => `${d} in-`),
  );
  const pitch = fc.oneof(
    decimal(6, 3),
    decimal(6, 3).map((P) => `${P} mm`),
    fc.integer({ min: 1, max: 100 }).map(String),
    fc.integer({ min: 2, max: 100 }).map((n) => `${n / 2} tpi`),
    decimal(1, 3).map((P) => `${P} in`),
  );
  const ending = fc.constantFrom('', ' LH', ' 2-start', '-6g', '-2A', '-6g 3 start LH', '-2B 2-start LH');

  it('of any thread that is read at all reads back as the same thread', () => {
    let good = 0;
    fc.assert(
      fc.property(size, pitch, ending, (a, b, c) => {
        const result = readThread(`${a}${b}${c}`);
        if (!result.ok) return;
        good++;
        const again = read(result.value.designation);
        if (JSON.stringify(same(again)) !== JSON.stringify(same(result.value)))
          throw new Error(`${a}${b}${c} comes back as ${again.designation}`);
      }),
      { numRuns: howMany(2000, 50_000), seed: 8 },
    );
    expect(good).toBeGreaterThan(howMany(200, 5000));
  });
});

describe('any text', () => {
  const answered = (text: string) => {
    const result = readThread(text);
    if (!result.ok) {
      readOrSaid(result, text);
      return;
    }
    const { d, P, L, N, h } = result.value;
    const lengths = [d, P, L, diameters(result.value).d3].every((x) => Number.isFinite(x) && x > 0);
    if (!(lengths && Number.isInteger(N) && N >= 1 && N <= 12 && (h === 1 || h === -1)))
      throw new Error(`${JSON.stringify(text)} gives ${JSON.stringify(result.value)}`);
  };

  it('gets a thread or a sentence: arbitrary Unicode', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 70 }), answered), {
      numRuns: howMany(1500, 50_000),
      seed: 8,
    });
    fc.assert(fc.property(fc.string({ unit: 'grapheme', maxLength: 70 }), answered), {
      numRuns: howMany(700, 20_000),
      seed: 8,
    });
  });

  it('gets a thread or a sentence: the characters of designations in any order', () => {
    const letters = fc.constantFrom(
      ...'Mm0123456789.,x×*-–/#"½¼ pPhHUNCFEtpilLgAB'.split(''),
      ' LH',
      ' start',
      ' mm',
      ' in',
      ' fine',
      ' coarse',
      ' thread',
      'UNR',
      'UNC ',
    );
    fc.assert(
      fc.property(
        fc.array(letters, { maxLength: 24 }).map((parts) => parts.join('')),
        answered,
      ),
      { numRuns: howMany(2000, 20_000), seed: 8 },
    );
  });

  it('gets a thread or a sentence: good designations with one place spoilt', () => {
    const good = fc.constantFrom(...[...METRIC, ...UNIFIED, ...FREE].map(([typed]) => typed));
    const spoil = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 3 }),
      fc.constantFrom('', '-', 'x', '9', '/', ' ', 'e9', '\ud800'),
    );
    fc.assert(
      fc.property(good, fc.nat(40), fc.nat(3), spoil, (text, at, gone, put) =>
        answered(text.slice(0, at) + put + text.slice(at + gone)),
      ),
      MANY,
    );
  });

  it('is answered quickly at the worst length', () => {
    const before = process.cpuUsage().user;
    for (const c of ['-', ' ', '1', '1-', 'M1', '1/', 'l', ' l', '- ', 'ﷺ', '½', '1 1/', 'M1 ', ' thread', 'UNC '])
      for (let i = 0; i < 20; i++) answered(c.repeat(60).slice(0, 60 - i));
    expect((process.cpuUsage().user - before) / 1e3).toBeLessThan(1000);
  });
});

describe('pitch diameters as measured', () => {
  it.each([
    ['M10x1.5 d2 8.95', 'M10×1.5 d2 8.95', 8.95, undefined],
    ['M10x1.5-6H/6g d2 8,994 to 8,862 LH', 'M10×1.5-6H/6g d2 8.862–8.994 LH', 8.862, undefined],
    ['M10 d₂ = 8.9 – 8.95 mm, D2 9.1', 'M10×1.5 d2 8.9–8.95 D2 9.1', 8.9, 9.1],
    // 0.3344 in is 8.49376 mm.
    ['3/8-16 UNC D2 0.3344 in', '3/8-16 UNC D2 8.49376', undefined, 8.49376],
    [
      '12.7 mm x 1.27 mm-6H/6g 2-start D2 11.9-12.02 d2 11.875 LH',
      '12.7 mm × 1.27 mm-6H/6g 2-start d2 11.875 D2 11.9–12.02 LH',
      11.875,
      11.9,
    ],
  ] as const)('%s is %s', (typed, canonical, screw, nut) => {
    const thread = read(typed);
    expect(thread.designation).toBe(canonical);
    expect(thread.measured?.screw?.min).toBe(screw);
    expect(thread.measured?.nut?.min).toBe(nut);
    expect(read(canonical)).toEqual({ ...thread, notes: read(canonical).notes });
  });

  it.each([
    ['M10x1.5 d2 12', 'no pitch diameter of this thread'],
    ['M10x1.5 d2 8.9 d2 8.95', 'stands twice'],
    ['M10x1.5 d2', 'Read “M10x1.5 d2”'],
  ])('refuses %s: %s', (typed, says) => {
    expect(sentenceOf(typed)).toContain(says);
  });

  it('rule over the class for the pitch diameter, and leave the other diameters as they are', () => {
    const [plain, measured] = [fitOfThread(read('M10x1.5-6H/6g')), fitOfThread(read('M10x1.5-6H/6g d2 8.9 D2 9.1'))];
    if (!plain.ok || !measured.ok) throw new Error('no fit');
    expect(measured.value.clearance.pitch).toEqual({ least: 0.2, most: 0.2 });
    expect(measured.value.screw.major).toEqual(plain.value.screw.major);
    expect(measured.value.nut.minor).toEqual(plain.value.nut.minor);
  });
});
