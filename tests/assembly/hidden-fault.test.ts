/**
 * The bench with a hidden fault: each fault leaves evidence by which a rule of the trade, worked here from the readings alone, finds it, and of no
 * fault is there evidence of another. The rule knows the nominal net lead, the play of a good jack and the scatter of the indicators.
 */
import { describe, expect, it } from 'vitest';
import type { Adjuster } from '../../widgets/assembly/adjuster/adjuster.ts';
import { readAdjuster } from '../../widgets/assembly/adjuster/text.ts';
import { growthPerKelvin } from '../../widgets/assembly/adjuster/warm-growth.ts';
import {
  type Bench,
  type BenchReading,
  benchOf,
  type Checks,
  checksOf,
  FAULTS,
  type Fault,
  readingsOf,
  SCATTER,
} from '../../widgets/assembly/bench/hidden-fault.ts';
import { keyLine } from '../../widgets/assembly/bench/key-line.ts';
import { at, type Result } from '../../widgets/engine/index.ts';
import { reasonOf } from '../../widgets/words/reason.ts';
import { some } from '../support/deep.ts';

const value = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(reasonOf(result));
  return result.value;
};
const FOOT = value(
  readAdjuster(
    'base = tapped block M10x1.5, 20 mm | turned = stud M10x1.5 20 mm, 3/8-16 UNC 20 mm | carried = cap 3/8-16 UNC, thread 20 mm | tip = ball 6.35 mm',
  ),
);
const RISER = value(
  readAdjuster(
    'base = coupling nut 3/8-16 UNC, 28.575 mm | turned = adapter 3/8-16 UNC external 15 mm, M10x1.5 internal 15 mm blind, body 18 mm, hexagon 17 mm | carried = socket screw M10x1.5, thread 20 mm, head 10 mm | tip = ball 8.334 mm in 8 mm hexagon, stands 4 mm',
  ),
);
/** Quarters of two turns. */
const PLACES = Array.from({ length: 9 }, (_, i) => i / 4);

interface Seen {
  readonly loaded: readonly BenchReading[];
  readonly free: readonly BenchReading[];
  readonly checks: Checks;
}
const seen = (bench: Bench): Seen => ({
  loaded: value(readingsOf(bench, PLACES, true)),
  free: value(readingsOf(bench, PLACES, false)),
  checks: value(checksOf(bench)),
});

const mean = (xs: readonly number[]) => xs.reduce((sum, x) => sum + x, 0) / xs.length;
const range = (xs: readonly number[]) => Math.max(...xs) - Math.min(...xs);
/** Up against down at one place, in the middle of the run. */
const loop = (rows: readonly BenchReading[]) => {
  const one = (direction: string) => mean(rows.filter((r) => r.direction === direction).map((r) => r.height));
  return Math.abs(one('down') - one('up'));
};

/** As an experienced hand goes: what is quick to see first. */
const diagnosed = ({ loaded, free, checks }: Seen, { adjuster: { Delta }, play }: Bench): Fault | undefined => {
  const side = loaded.filter((r) => r.direction === 'up').map((r) => r.side);
  if (checks.line > 0.02) return 'loose lock';
  if (Math.abs(checks.drift) > 6 * SCATTER.height) return 'warm hand';
  if (Math.abs(checks.block.reads - checks.block.is) > 0.005 * checks.block.is) return 'gauge off its axis';
  if (range(side) > 20 * SCATTER.side) return 'lean';
  if (Math.abs(mean(side)) > 10 * SCATTER.side) return 'side push';
  if (loop(free) > 1.5 * (play.A + play.C)) return 'worn flank';
  const off = loaded.filter((r) => r.direction === 'up').map((r) => r.height - Delta * r.turns);
  // At whole turns a wave is where it was; what is left there is the lead.
  const perTurn = (at(off, 8) - at(off, 0)) / 2;
  if (Math.abs(perTurn) > 0.02 * Math.abs(Delta)) return 'lead error';
  return range(off) > 8 * SCATTER.height ? 'wave' : undefined;
};

const found = (adjuster: Adjuster, fault: Fault, seed: number): Fault | undefined => {
  const bench = value(benchOf(adjuster, seed, [fault]));
  return diagnosed(seen(bench), bench);
};

const SEEDS = Array.from({ length: 200 }, (_, i) => 7 * i + 1);

describe.each(FAULTS)('a bench with this fault: %s', (fault) => {
  it('leaves evidence that names it', () => {
    // The jack as built takes a second for each that it is asked.
    const few = fault === 'lean' || fault === 'side push' ? 1 : 6;
    for (const a of [FOOT, RISER])
      for (const seed of some(few, SEEDS)) expect(`${seed} ${found(a, fault, seed)}`).toBe(`${seed} ${fault}`);
  });
});

describe('benchOf', () => {
  it('draws every fault, and the same for the same seed', () => {
    const drawn = Array.from({ length: 80 }, (_, seed) => value(benchOf(FOOT, seed)).hidden);
    expect(new Set(drawn.map(({ fault }) => fault))).toEqual(new Set(FAULTS));
    expect(value(benchOf(FOOT, 11)).hidden).toEqual(drawn[11]);
    const bench = value(benchOf(FOOT, 11));
    expect(value(readingsOf(bench, PLACES, true))).toEqual(value(readingsOf(bench, PLACES, true)));
  });

  it('is read up and down, from nought', () => {
    const rows = value(readingsOf(value(benchOf(FOOT, 3)), PLACES, true));
    expect(rows.map((r) => r.turns)).toEqual([...PLACES, ...[...PLACES].reverse()]);
    expect(at(rows, 0).height).toBe(0);
  });

  it('has turned back for good before the first reading of a way, so that the highest place is off by what the others are', () => {
    const flats = Array.from({ length: 13 }, (_, i) => i / 6);
    const rows = value(readingsOf(value(benchOf(FOOT, 3, ['side push'])), flats, true));
    const lost = flats.map((_, i) => at(rows, 25 - i).height - at(rows, i).height);
    const middle = lost.toSorted((a, b) => a - b)[6] ?? 0;
    expect(Math.abs(middle)).toBeGreaterThan(4 * SCATTER.height);
    for (const one of lost) expect(Math.abs(one - middle)).toBeLessThan(5 * SCATTER.height);
  });

  it('refuses a jack of one thread, and a run without places', () => {
    const plain = value(
      readAdjuster('base = tapped block M10x1.5, 20 mm | turned = screw M10x1.5 20 mm, head 6 mm | tip = flat'),
    );
    expect(benchOf(plain, 1)).toMatchObject({ ok: false, code: 'bench-one-thread' });
    expect(readingsOf(value(benchOf(FOOT, 1)), [0], true)).toMatchObject({ ok: false, code: 'bench-places' });
  });

  it('refuses more readings than a paper has room for', () => {
    const bench = value(benchOf(FOOT, 1, ['wave']));
    expect(value(readingsOf(bench, PLACES, true, 44))).toHaveLength(792);
    expect(readingsOf(bench, PLACES, true, 45)).toMatchObject({ ok: false, code: 'bench-places' });
  });

  it('warms as parts do: towards the growth of the whole, most of it first, and not past it', () => {
    // Newton’s law of cooling.
    for (const a of [FOOT, RISER]) {
      const whole = growthPerKelvin(a) ?? 0;
      for (const seed of some(6, SEEDS)) {
        const bench = value(benchOf(a, seed, ['warm hand']));
        const share = value(checksOf(bench)).drift / (whole * bench.hidden.size);
        expect(share).toBeGreaterThan(0.5);
        expect(share).toBeLessThan(1);
      }
    }
  });

  it('tells a teacher the seed, the fault and its size in one line', () => {
    for (const fault of FAULTS) {
      const line = keyLine(value(benchOf(FOOT, 5, [fault])), 'metric');
      expect(line).toMatch(/^Seed 5: .*\d.*\.$/);
      expect(line).not.toContain('NaN');
    }
  });
});
