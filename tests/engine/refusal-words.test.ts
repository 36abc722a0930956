/** The sentences of refusals, whatever numbers they quote: one that can be read at a glance, whole, with no number spoilt. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { KERNEL } from '#words/refusals/kernel.ts';
import { NUMERICS } from '#words/refusals/numerics.ts';
import { PAIR } from '#words/refusals/pair.ts';
import { THREAD } from '#words/refusals/thread.ts';
import { mm, type Refusals, SYMBOLS, type SymbolName } from '../../widgets/engine/index.ts';

const TABLE = { ...KERNEL, ...NUMERICS, ...PAIR, ...THREAD };
type Code = keyof typeof TABLE;

/** The values of every code, made from any number and any symbol. */
const valuesOf = (x: number, symbol: SymbolName): { readonly [K in Code]: Refusals[K] } => {
  const wires = { wire: x, pitch: x, low: x, high: x, best: x };
  // A diameter or a pitch of a thread that was read is never below nought.
  const size = Math.abs(x);
  const thread = { designation: 'M10×1.5', P: mm(size), L: mm(size) };
  return {
    'symbol-missing': { symbol },
    'symbol-not-a-number': { symbol, read: 'many' },
    'symbol-not-a-hand': { symbol, read: x },
    'symbol-out-of-bounds': { symbol, read: x },
    'symbol-not-whole': { symbol, read: x },
    'output-without-bound': { symbol },
    'no-way-to': { symbol, relation: 'net-lead', missing: [symbol, 'h_A'] },
    'places-unlike-readings': { places: 3, readings: 4 },
    'rows-too-few': { rows: 2 },
    'row-not-numbers': { row: 1, x, y: x },
    'places-all-alike': { rows: 3, x },
    'readings-all-alike': { rows: 3, y: x },
    'level-not-a-share': { level: x },
    'freedom-out-of-range': { freedom: x },
    'seed-out-of-range': { seed: x },
    'equal-leads-no-gain': {},
    'equal-leads-no-relative-error': {},
    'equal-leads-nothing-slower': {},
    'no-periodic-error': {},
    'stretch-unread': { from: x, to: x, share: x },
    'division-without-motion': {},
    'step-without-motion': {},
    'thread-all-kept': { length: x, kept: x },
    'root-leaves-nothing': { pitch: x, d_2: x },
    'sleeve-without-wall': { inside: 'M10×1.5', outside: 'M12×1.75', wall: x, beyond: size },
    'wish-without-divider': {},
    'wish-motion-outside': { perTurn: x },
    'wish-band-outside': { band: x },
    'wish-sizes-crossed': { smallest: x, largest: x },
    'wish-below-nought': { what: 'leastWall', value: x },
    'wish-usable-outside': { diameters: x },
    'wish-stress-outside': { stress: x },
    'bore-takes-the-core': { bore: x, core: x },
    'pitch-leaves-no-core': { pitch: x, d: x, coarsest: x },
    'thread-leaves-no-hole': { share: x, pitch: x, d: x },
    'hole-not-below-thread': { hole: x, d: x },
    'hole-below-any-root': { hole: x, d: x, pitch: x },
    'iso-diameter-outside': { d: x },
    'iso-pitch-outside': { pitch: x },
    'iso-position-too-fine': { position: 'e', pitch: x, finest: 0.5 },
    'iso-grade-missing': { of: 'd', grade: 5, grades: ['4', '6', '8'] },
    'iso-grade-too-fine': { of: 'd2', grade: 8, pitch: x, finest: 0.8 },
    'iso-place-blank': { of: 'D2', grade: 8, pitch: x },
    'iso-class-unread': { read: '6k'.repeat(1000) },
    'diameter-step-falls': { low: x, high: x },
    'unified-diameter-outside': { D: x },
    'unified-pitch-outside': { tpi: x, finest: 200 },
    'unified-class-first-elsewhere': { cls: '1A' },
    'unified-class-on-metric': { cls: '2B', designation: 'M10×1.5' },
    'unified-class-unread': { read: '' },
    'limits-without-core': { designation: 'M2×1.7' },
    'fit-of-unlike-pitches': { screw: thread, nut: thread },
    'fit-of-unlike-hands': { screw: 'M10×1.5', nut: 'M10×1.5 LH' },
    'wire-rides-on-crests': wires,
    'wire-sinks-below-crests': wires,
    'over-wires-too-little': { measured: x },
    'lead-angle-too-steep': { lambda: x },
    'threads-pass-each-other': {},
  };
};

describe('the sentence of a refusal', () => {
  const number = fc.oneof(
    fc.double({ min: -1e12, max: 1e12, noNaN: true }),
    fc.double({ min: -10, max: 10, noNaN: true }),
    fc.constantFrom(0, 1, 2.5, 1e-9),
  );
  const symbols = Object.keys(SYMBOLS) as SymbolName[];

  it.each(Object.keys(TABLE) as Code[])('%s can be read at a glance', (code) => {
    fc.assert(
      fc.property(number, fc.constantFrom(...symbols), (x, symbol) => {
        const sentence = (TABLE[code] as (values: unknown) => string)(valuesOf(x, symbol)[code]);
        expect(sentence).toMatch(/^[A-Z].{20,}\.$/s);
        expect(sentence.length).toBeLessThanOrEqual(400);
        expect(sentence).not.toMatch(/NaN|undefined|object|\de[+-]?\d|[\s(]-\d/);
      }),
      { numRuns: 100 },
    );
  });
});
