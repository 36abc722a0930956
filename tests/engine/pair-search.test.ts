/**
 * The search against one written here the slow way, thread by thread from designations, with its own pitches, walls and cores; against
 * pairs that are common practice; and against what it says when nothing is left.
 */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  catalogueOf,
  everyPair,
  FILTERS,
  type Filter,
  fractionText,
  gain,
  largestNutRoot,
  limitsOfSize,
  measurePairs,
  megapascals,
  mm,
  newtons,
  type PairRow,
  plain,
  SERIES_NAMES,
  type SeriesName,
  searchPairs,
  shortOfThread,
  stroke,
  type Thread,
  threadEaten,
  turns,
  turnsFor,
  type Wish,
  wantedNetLead,
} from '../../widgets/engine/index.ts';
import { readThread } from '../../widgets/input/designation.ts';
import { readThreadList } from '../../widgets/input/thread-list.ts';
import reference from '../reference/series.json';
import { howMany } from '../support/deep.ts';
import { valueIn } from '../support/results.ts';

const threads = (text: string) => valueIn(readThreadList(text)).threads;
const SHOP = threads(
  'M4x0.7, M5x0.8, M6x1, M8x1.25, M10x1.5, M12x1.5, M12x1.75, 8-32 UNC, 8-36 UNF, 10-24 UNC, 10-32 UNF, 1/4-20 UNC, 1/4-28 UNF, 5/16-18 UNC, 3/8-16 UNC, 3/8-24 UNF',
);
const STANDARD = catalogueOf();
const WITH_SHOP = catalogueOf(SHOP);

const ANY: Wish = {
  motion: mm(0.1),
  band: 0.1,
  dividers: [1],
  hands: 'either',
  arrangement: 'either',
  leastWall: mm(0),
  smallest: mm(0),
  largest: mm(400),
  series: SERIES_NAMES,
  owned: 'none',
  usable: 1,
  leastStroke: mm(0),
  load: newtons(0),
  stress: megapascals(100),
};

const found = (
  catalogue: typeof STANDARD,
  wish: Partial<Wish>,
  order?: Parameters<typeof searchPairs>[2],
  most?: number,
) => {
  const answer = valueIn(searchPairs(catalogue, { ...ANY, ...wish }, order, most));
  if (answer.kind !== 'found') throw new Error(`nothing: ${answer.most}`);
  return answer;
};
const nothing = (catalogue: typeof STANDARD, wish: Partial<Wish>) => {
  const answer = valueIn(searchPairs(catalogue, { ...ANY, ...wish }));
  if (answer.kind !== 'nothing') throw new Error(`found ${answer.hits.length}`);
  return answer;
};
const named = ({ A, C }: PairRow) => [A.designation, C.designation].sort().join(' with ');

// The slow way.

interface Plain {
  readonly name: string;
  readonly d: number;
  readonly P: number;
  readonly series: SeriesName | 'own';
  readonly core: number;
  readonly root: number;
  readonly bore: number;
  readonly right: boolean;
  readonly left: boolean;
}

const limitBy = (thread: Thread, classes: readonly string[]) => {
  for (const cls of classes) {
    const limits = limitsOfSize(thread, cls);
    if (limits.ok) return limits.value;
  }
  throw new Error(thread.designation);
};

const plainThread = (designation: string, series: Plain['series'], owned: readonly Thread[]): Plain => {
  const thread = valueIn(readThread(designation));
  const inch = /-(\d+) /.exec(`${designation} `);
  const P = inch ? 25.4 / Number(inch[1]) : Number(designation.split(/[x×]/)[1]);
  const screw = limitBy(thread, thread.kind === 'unified' ? ['2A'] : ['6g', '6h']);
  const nut = limitBy(thread, thread.kind === 'unified' ? ['2B'] : ['6H', '5H', '4H']);
  const mine = owned.filter((o) => Math.abs(o.d - thread.d) < 1e-6 && Math.abs(o.P - P) < 1e-6);
  return {
    name: designation,
    d: thread.d,
    P,
    series,
    core: thread.d - 1.2268693 * P,
    root: screw.side === 'external' ? screw.root.least : Number.NaN,
    bore: valueIn(largestNutRoot.of({ D_2: nut.pitch.max, P: mm(P) })).D_r,
    right: mine.some((o) => o.h === 1),
    left: mine.some((o) => o.h === -1),
  };
};

const slowCatalogue = (owned: readonly Thread[]): Plain[] => [
  ...reference.iso_261.threads.map((r) => plainThread(r.designation.replace('x', '×'), r.series as SeriesName, owned)),
  ...reference.unified.threads.map((r) => plainThread(r.designation, r.series as SeriesName, owned)),
];

/** Which filters a pair fails, each written out on its own. */
const fails = (a: Plain, b: Plain, unlike: boolean, w: Wish): Set<Filter> => {
  const set = new Set<Filter>();
  const net = unlike ? a.P + b.P : Math.abs(a.P - b.P);
  const steps = w.dividers.map((k) => net / k);
  if (!steps.some((s) => s >= w.motion * (1 - w.band) * (1 - 1e-10) && s <= w.motion * (1 + w.band) * (1 + 1e-10)))
    set.add('motion');
  if ((unlike && w.hands === 'same') || (!unlike && w.hands === 'opposite')) set.add('hand');
  const [big, small] = a.d > b.d ? [a, b] : [b, a];
  const wall = a.d === b.d ? Number.NEGATIVE_INFINITY : (big.root - small.bore) / 2;
  if (w.arrangement === 'nested' && !(wall > 0 && wall >= w.leastWall)) set.add('wall');
  if (Math.min(a.d, b.d) < w.smallest - 1e-9 || Math.max(a.d, b.d) > w.largest + 1e-9) set.add('size');
  for (const t of [a, b])
    if (!t.right && !t.left && t.series !== 'own' && !w.series.includes(t.series)) set.add('series');
  const both = unlike ? (a.right && b.left) || (a.left && b.right) : (a.right && b.right) || (a.left && b.left);
  const one = a.right || a.left || b.right || b.left;
  if ((w.owned === 'both' && !both) || (w.owned === 'one' && !one)) set.add('owned');
  const stroke = net * Math.min((w.usable * a.d) / a.P, (w.usable * b.d) / b.P);
  if (w.leastStroke > 0 && !(stroke >= w.leastStroke)) set.add('stroke');
  const area = (dia: number, bore = 0) => (Math.PI / 4) * (dia * dia - bore * bore);
  const least =
    w.arrangement === 'nested'
      ? Math.min(area(small.core), area(big.core, small.bore))
      : Math.min(area(a.core), area(b.core));
  if (w.load > 0 && !(w.stress * least >= w.load)) set.add('load');
  return set;
};

const slowPairs = (list: readonly Plain[]) =>
  list.flatMap((a, i) =>
    list
      .slice(i)
      .flatMap((b) =>
        [false, true]
          .filter((unlike) => unlike || Math.abs(a.P - b.P) > 1e-9)
          .map((unlike) => ({ a, b, unlike, net: unlike ? a.P + b.P : Math.abs(a.P - b.P) })),
      ),
  );

const SLOW = slowPairs(slowCatalogue(SHOP));

const aWish: fc.Arbitrary<Wish> = fc.record({
  motion: fc.constantFrom(0.00556, 0.02, 0.0875, 0.1, 0.16, 0.25, 0.3, 0.5, 1, 2.5, 5).map(mm),
  band: fc.constantFrom(0, 0.01, 0.1, 0.37, 1),
  dividers: fc.constantFrom([1], [1], [6], [4, 12], [6, 12, 50]),
  hands: fc.constantFrom('same', 'opposite', 'either'),
  arrangement: fc.constantFrom('in line', 'nested', 'either'),
  leastWall: fc.constantFrom(0, 0.33, 1.01).map(mm),
  smallest: fc.constantFrom(0, 3, 8).map(mm),
  largest: fc.constantFrom(8, 12.7, 36, 400).map(mm),
  series: fc.subarray([...SERIES_NAMES]),
  owned: fc.constantFrom('none', 'none', 'one', 'both'),
  usable: fc.constantFrom(0.5, 1, 1.7),
  leastStroke: fc.constantFrom(0, 0, 0.37, 1.234).map(mm),
  load: fc.constantFrom(0, 0, 1234, 4321).map(newtons),
  stress: fc.constantFrom(40, 100).map(megapascals),
});

describe('searchPairs', () => {
  it('looks at every pair that moves, no more and no less', () => {
    expect(STANDARD.candidates).toHaveLength(reference.iso_261.threads.length + reference.unified.threads.length);
    expect(STANDARD.exact).toBe(true);
    const answer = found(STANDARD, { band: 100 });
    expect(answer.pairs).toBe(SLOW.length);
    expect(answer.hits).toHaveLength(SLOW.length);
    expect(everyPair(STANDARD)).toEqual(answer.hits);
  });

  it('finds what the slow search finds, for any wish; where nothing, counts what each filter excludes', () => {
    fc.assert(
      fc.property(aWish, (wish) => {
        const answer = valueIn(searchPairs(WITH_SHOP, wish, 'nearest', 10));
        const judged = SLOW.map((p) => ({ ...p, fails: fails(p.a, p.b, p.unlike, wish) }));
        const passing = judged.filter((p) => p.fails.size === 0);
        if (answer.kind === 'found') {
          expect(answer.hits.length, JSON.stringify(wish)).toBe(passing.length);
          const offs = (net: number) => wish.dividers.map((k) => Math.abs(Math.log(net / k / wish.motion)));
          const distances = passing.map((p) => Math.min(...offs(p.net))).sort((x, y) => x - y);
          for (const [at, row] of answer.rows.entries()) {
            expect(Math.abs(Math.log1p(row.off))).toBeCloseTo(distances[at] ?? Number.NaN, 9);
            expect(Math.abs(row.Delta) / row.k).toBeCloseTo(row.step, 12);
            expect(wish.dividers).toContain(row.k);
          }
        } else {
          expect(passing.length, JSON.stringify(wish)).toBe(0);
          const counts = FILTERS.map((f) => judged.filter((p) => p.fails.has(f)).length);
          expect(FILTERS.map((f) => answer.excluded[f])).toEqual(counts);
          expect(answer.excluded[answer.most]).toBe(Math.max(...counts));
          const fewest = Math.min(...judged.filter((p) => p.fails.has(answer.most)).map((p) => p.fails.size));
          expect(answer.also).toHaveLength(fewest - 1);
          const alone = FILTERS.filter((f) => judged.some((p) => p.fails.size === 1 && p.fails.has(f)));
          expect(answer.ways.map((way) => way.filter)).toEqual(alone);
        }
      }),
      { numRuns: howMany(12, 400) },
    );
  });

  /** Check values of common practice and the notebook's own three designs. */
  for (const { pair, motion, exactly, micrometres, thou, gain } of [
    {
      pair: '5/16-18 UNC with M8×1.25',
      motion: 0.16,
      exactly: '29/180',
      micrometres: '161.1',
      thou: '6.34',
      gain: 8.76,
    },
    { pair: '#10-32 UNF with M5×0.8', motion: 0.006, exactly: '1/160', micrometres: '6.25', thou: '0.246', gain: 128 },
    {
      pair: '#8-36 UNF with M4×0.7',
      motion: 0.0056,
      exactly: '1/180',
      micrometres: '5.556',
      thou: '0.2187',
      gain: 127,
    },
    {
      pair: '3/8-16 UNC with M10×1.5',
      motion: 0.09,
      exactly: '7/80',
      micrometres: '87.50',
      thou: '3.445',
      gain: 18.14,
    },
  ])
    it(`finds ${pair}: ${micrometres} µm, ${thou} thou a turn`, () => {
      const { rows } = found(WITH_SHOP, { motion: mm(motion), hands: 'same', owned: 'both' });
      const row = rows.find((r) => named(r) === pair);
      if (!row) throw new Error(`not among ${rows.map(named).join('; ')}`);
      expect(fractionText(row.net)).toBe(exactly);
      const digits = (s: string) => s.replace('.', '').replace(/^0+/, '').length;
      expect((1000 * row.Delta).toPrecision(digits(micrometres))).toBe(micrometres);
      expect((row.Delta / 0.0254).toPrecision(digits(thou))).toBe(thou);
      expect(row.gain).toBeCloseTo(gain, 2);
      expect(row.off).toBeCloseTo(Number(micrometres) / 1e3 / motion - 1, 2);
      expect(row.toBuy).toEqual([]);
    });

  it('puts the sleeve outside and takes its wall at the limits: the Stop', () => {
    const { rows } = found(WITH_SHOP, {
      motion: mm(0.25),
      band: 0.001,
      arrangement: 'nested',
      owned: 'both',
      hands: 'same',
    });
    const stop = rows.find((r) => named(r) === 'M12×1.5 with M8×1.25');
    expect(stop?.A.designation).toBe('M12×1.5');
    expect(stop && fractionText(stop.net)).toBe('−1/4');
    expect(stop?.wall?.basic).toBeCloseTo(1.08, 2); // DOMAIN: 1.08 mm at basic sizes
    expect(stop?.wall?.limit).toBeLessThan(stop?.wall?.basic ?? 0);
    // M12×1.5-6g: d2 min 10.854 and root radius P/8; M8×1.25-6H: D2 max 7.348 (published tables) and a root of P/24.
    expect(stop?.wall?.limit).toBeCloseTo((10.854 - 0.616025 * 1.5 - 7.348 - 0.793857 * 1.25) / 2, 2);
    const thinner = found(WITH_SHOP, { motion: mm(0.25), arrangement: 'nested', leastWall: mm(0.79) });
    const thicker = found(WITH_SHOP, { motion: mm(0.25), arrangement: 'nested', leastWall: mm(0.81) });
    const has = (a: typeof thinner) => searchNames(a.hits).includes('M12×1.5 with M8×1.25');
    expect([has(thinner), has(thicker)]).toEqual([true, false]);
  });

  it('orders by what the maker cares about', () => {
    const rising = (xs: readonly number[]) => xs.every((x, i) => i === 0 || x >= (xs[i - 1] ?? 0) - 1e-9);
    const wish = { motion: mm(0.1), hands: 'same' } as const;
    expect(rising(found(STANDARD, wish, 'nearest').rows.map((r) => Math.abs(Math.log(r.Delta / 0.1))))).toBe(true);
    expect(rising(found(STANDARD, wish, 'gain').rows.map((r) => r.gain))).toBe(true);
    expect(rising(found(STANDARD, wish, 'size').rows.map((r) => r.size))).toBe(true);
    expect(rising(found(STANDARD, wish, 'stroke').rows.map((r) => -r.stroke))).toBe(true);
    const all = found(STANDARD, wish);
    const { gain, size, stroke } = measurePairs(STANDARD, all.hits, 1);
    expect(found(STANDARD, wish, 'gain').rows[0]?.gain).toBeCloseTo(Math.min(...gain), 12);
    expect(found(STANDARD, wish, 'size').rows[0]?.size).toBe(Math.min(...size));
    expect(found(STANDARD, wish, 'stroke').rows[0]?.stroke).toBeCloseTo(Math.max(...stroke), 12);
    expect(found(STANDARD, wish, 'gain', 3).rows).toHaveLength(3);
  });

  it('keeps a pair that lies on the very edge of the band', () => {
    for (const wish of [
      { motion: mm(0.0875), band: 0 },
      { motion: mm(0.07), band: 0.25 },
      { motion: mm(0.125), band: 0.3 },
    ])
      expect(searchNames(found(WITH_SHOP, { ...wish, hands: 'same' }).hits)).toContain('3/8-16 UNC with M10×1.5');
    expect(searchNames(found(WITH_SHOP, { motion: mm(0.07), band: 0.2499, hands: 'same' }).hits)).not.toContain(
      '3/8-16 UNC with M10×1.5',
    );
  });

  it('turns the shorter lead into the base in line, so that clockwise lifts; for unlike hands the left-hand one', () => {
    for (const row of found(STANDARD, { hands: 'same', arrangement: 'in line' }).rows) {
      expect(row.Delta).toBeGreaterThan(0);
      expect(row.A.L).toBeLessThan(row.C.L);
    }
    for (const row of found(STANDARD, { hands: 'opposite', motion: mm(3) }).rows) {
      expect([row.A.h, row.C.h]).toEqual([-1, 1]);
      expect(row.A.designation).toMatch(/ LH$/);
      expect(row.Delta).toBeGreaterThan(0);
      expect(row.verdict.remarks.map(({ code }) => code)).toContain('left-hand-to-order');
    }
  });

  it('uses the hands that are owned: a left-hand pair of taps makes the same motion', () => {
    const left = catalogueOf(threads('M10x1.5 LH, 3/8-16 UNC LH, M6'));
    const [row] = found(left, { motion: mm(0.0875), owned: 'both', hands: 'same' }).rows;
    expect([row?.A.h, row?.C.h]).toEqual([-1, -1]);
    expect(row && fractionText(row.net)).toBe('−7/80');
    expect(row?.toBuy).toEqual([]);
    // M6 is owned right-hand only: with it there is a pair of unlike hands, and no like one.
    expect(found(left, { motion: mm(2.5), band: 0.001, owned: 'both', hands: 'opposite' }).rows.map(named)).toEqual([
      'M10×1.5 LH with M6×1',
    ]);
    expect(nothing(left, { motion: mm(0.5), owned: 'both', hands: 'same' }).excluded.owned).toBeGreaterThan(20000);
  });

  it('takes threads that stand in no series, several starts and classes of the reader’s own', () => {
    const own = catalogueOf(threads('12 mm x 1.1 mm, M16xPh3P1.5, M12x1.5-8g'));
    expect(own.candidates).toHaveLength(STANDARD.candidates.length + 2);
    expect(found(own, { motion: mm(0.15), band: 0.001, owned: 'one', hands: 'same' }).rows.map(named)).toContain(
      '12 mm × 1.1 mm with M8×1.25',
    );
    expect(found(own, { motion: mm(1.5), band: 0.001, owned: 'both', hands: 'same' }).rows.map(named)).toContain(
      'M12×1.5-8g with M16×Ph3P1.5',
    );
    const rootOf = (c: typeof own) =>
      c.root[c.candidates.findIndex((x) => x.thread.d === 12 && x.thread.P === 1.5)] ?? 0;
    expect(rootOf(own)).toBeLessThan(rootOf(STANDARD));
  });

  it('stays right where a thread has so odd a pitch that common fractions are out of reach', () => {
    const odd = catalogueOf(threads('12 mm x 1.123456789 mm, 1/2-17'));
    expect(odd.exact).toBe(false);
    const answer = found(odd, { motion: mm(0.0875), band: 0.001, hands: 'same' });
    expect(searchNames(answer.hits, odd)).toContain('3/8-16 UNC with M10×1.5');
    expect(answer.pairs).toBe(new Set(everyPair(odd)).size);
    // 1.27 mm and 20 threads per inch are one lead, and no pair.
    const same = catalogueOf(threads('10 mm x 1.27 mm'));
    expect(searchNames(everyPair(same), same).filter((n) => n === '1/2-20 UNF with 10 mm × 1.27 mm')).toHaveLength(1);
  });

  it('counts a load on the core, and a bore against a sleeve', () => {
    // M10×1.5 with 3/8-16: the smaller core is 9.525 − 1.22687·1.5875 = 7.577 mm, 4509 N at 100 MPa.
    const [row] = found(WITH_SHOP, { motion: mm(0.0875), band: 0.001, owned: 'both', load: newtons(4500) }).rows;
    expect(row && named(row)).toBe('3/8-16 UNC with M10×1.5');
    expect(row?.carries).toBeCloseTo(4509, 0);
    expect(nothing(WITH_SHOP, { motion: mm(0.0875), band: 0.001, owned: 'both', load: newtons(4520) }).kind).toBe(
      'nothing',
    );
  });
});

const searchNames = (hits: Int32Array, c = WITH_SHOP): string[] =>
  Array.from(hits, (code) => {
    const n = c.candidates.length;
    const [i, j] = [Math.floor(code / 2 / n), (code >> 1) % n];
    return [c.candidates[i]?.thread.designation, c.candidates[j]?.thread.designation].sort().join(' with ');
  });

describe('an empty answer', () => {
  it('says which filter excludes the most and which pair lies nearest outside it', () => {
    const answer = nothing(WITH_SHOP, { motion: mm(0.003), band: 0.1, hands: 'same', owned: 'both' });
    expect(answer.most).toBe('motion');
    expect(answer.also).toEqual([]);
    expect(answer.nearest && named(answer.nearest)).toBe('#8-36 UNF with M4×0.7'); // the finest in the drawer
    expect(answer.excluded.motion).toBeGreaterThan(answer.excluded.owned);
  });

  it('measures nearness by the filter itself: the wall that lacks the least', () => {
    const answer = nothing(WITH_SHOP, {
      motion: mm(0.25),
      band: 1000 / 11,
      arrangement: 'nested',
      leastWall: mm(20),
      hands: 'either',
    });
    expect(answer.most).toBe('wall');
    // The thickest sleeve of the catalogue: its largest root over its smallest bore.
    const walls = (answer.nearest?.wall?.limit ?? 0) * 2;
    expect(walls).toBeCloseTo(Math.max(...WITH_SHOP.root) - Math.min(...WITH_SHOP.bore), 9);
  });

  it.each([
    ['the finest', 0.001, Math.min],
    ['the coarsest', 50, Math.max],
  ])('measures nearness by the motion: where all are off to one side, %s', (_, motion, end) => {
    // Leads of unlike hands add, so the two ends are twice the least and the largest lead.
    const answer = nothing(STANDARD, { motion: mm(motion), hands: 'opposite' });
    expect(answer.most).toBe('motion');
    expect(answer.nearest?.Delta).toBeCloseTo(2 * end(...STANDARD.candidates.map(({ thread }) => thread.L)), 9);
  });

  it.each([
    ['above all there are', 100, 200],
    ['below all there are', 0.1, 0.5],
    ['between two sizes', 5.85, 5.9],
  ])('measures nearness by the diameters, for bounds %s', (_, smallest, largest) => {
    const outside = (a: number, b: number) =>
      Math.max(0, smallest - Math.min(a, b)) + Math.max(0, Math.max(a, b) - largest);
    const sizes = STANDARD.candidates.map(({ thread }) => thread.d);
    const least = Math.min(...sizes.flatMap((a) => sizes.map((b) => outside(a, b))));
    const answer = nothing(STANDARD, {
      smallest: mm(smallest),
      largest: mm(largest),
      motion: mm(0.25),
      band: 1000 / 11,
    });
    expect(answer.most).toBe('size');
    expect(answer.also).toEqual([]);
    expect(outside(answer.nearest?.A.d ?? 0, answer.nearest?.C.d ?? 0)).toBeCloseTo(least, 9);
  });

  it('measures nearness by the stroke: where none is long enough, the longest', () => {
    const all = STANDARD.candidates.map(({ thread: { d, L } }) => ({ L, turns: d / L }));
    // Unlike hands: the leads add, for as many turns as the shorter of the two threads, one diameter long, has.
    const longest = Math.max(...all.flatMap((a) => all.map((c) => (a.L + c.L) * Math.min(a.turns, c.turns))));
    const answer = nothing(STANDARD, { leastStroke: mm(150), hands: 'opposite', motion: mm(1), band: 1000 / 11 });
    expect(answer.most).toBe('stroke');
    expect(answer.nearest?.stroke).toBeCloseTo(longest, 6);
  });

  it('names what else the nearest pair fails', () => {
    const answer = nothing(STANDARD, { motion: mm(0.001), band: 0.01, owned: 'both', hands: 'same' });
    expect([answer.most, ...answer.also].sort()).toEqual(['motion', 'owned']);
    expect(answer.nearest).toBeDefined();
  });
});

describe('several dividers at hand', () => {
  it('make one step out of different net leads, each row with the divider that comes nearest', () => {
    // Fine foot, 1/180 mm: 0.926 µm a flat, 0.463 µm a point of twelve. M8×1.25 and 1/4-20, 1/50 mm: 1.667 µm a point.
    const step = (motion: number, dividers: readonly number[]) =>
      found(WITH_SHOP, { motion: mm(motion), band: 0.15, dividers, owned: 'both', hands: 'same' }).rows.map((row) => [
        named(row),
        row.k,
        (1000 * row.step).toFixed(3),
        row.verdict.grade,
      ]);
    expect(step(0.0005, [6, 12])).toEqual([
      ['#8-32 UNC with M5×0.8', 12, '0.521', 'delicate'],
      ['#10-32 UNF with M5×0.8', 12, '0.521', 'delicate'],
      ['#8-36 UNF with M4×0.7', 12, '0.463', 'delicate'],
    ]);
    expect(step(0.0017, [4, 12])).toContainEqual(['1/4-20 UNC with M8×1.25', 12, '1.667', 'with care']);
    expect(nothing(WITH_SHOP, { motion: mm(0.0005), band: 0.15, dividers: [6], owned: 'both' }).kind).toBe('nothing');
  });
});

describe('a step and a stroke that no pair has together', () => {
  // 2 µm a flat and 2 mm of stroke, M4 to M16, 100 N: 1000 flats, 166.7 turns.
  const WISH = {
    motion: mm(0.002),
    band: 0.15,
    dividers: [6],
    hands: 'same',
    smallest: mm(4),
    largest: mm(16),
    leastStroke: mm(2),
    load: newtons(100),
  } as const;

  it('is told by the turns: the stroke over the net lead, against the thread with the most of them', () => {
    const short = shortOfThread(STANDARD, { ...ANY, ...WISH });
    // Of all threads from 4 to 16 mm, M16×1 has the most turns to a diameter: 16.
    expect(short?.thread.designation).toBe('M16×1');
    expect([short?.there, short?.turnsThere, short?.k]).toEqual([16, 16, 6]);
    const Delta = valueIn(wantedNetLead.of({ s_w: mm(0.002), k: plain(6) })).Delta_w;
    expect(short?.turns).toBeCloseTo(valueIn(turnsFor.of({ w: mm(2), Delta })).n, 9);
    expect(short?.steps).toBeCloseTo(1000, 9);
    const { G } = valueIn(gain.of({ L: mm(1), Delta }));
    expect(short?.needed).toBeCloseTo(valueIn(threadEaten.of({ w: mm(2), G })).X, 9);
    expect(short?.reach).toBeCloseTo(valueIn(stroke.of({ n_max: turns(16), Delta })).S, 9);
    // By hand: a lead of 0.8 mm would use up 2/0.012 × 0.8 = 133 mm, M16×1 167 mm.
    expect(short?.needed).toBeCloseTo(166.667, 3);
  });

  it('is no matter of the pair: even if every net lead there is were allowed, none makes the stroke at that step', () => {
    const { stroke: strokes, motion } = measurePairs(STANDARD, everyPair(STANDARD), 1);
    const most = Math.max(...strokes.map((S, at) => S / (motion[at] ?? 1)));
    for (const [stroke, largest] of [
      [0.2, 16],
      [0.23, 400],
      [0.41, 400],
      [0.43, 400],
    ] as const) {
      const short = shortOfThread(STANDARD, { ...ANY, ...WISH, largest: mm(largest), leastStroke: mm(stroke) });
      const turnsThere = largest === 16 ? 16 : most;
      expect(short !== undefined, `${stroke} ${largest}`).toBe(stroke / (0.012 * 1.15) > turnsThere);
    }
  });

  it('is not said where the divider, the threads or the stroke allow it', () => {
    const short = (wish: Partial<Wish>) => shortOfThread(STANDARD, { ...ANY, ...WISH, ...wish });
    expect(short({ dividers: [6, 100] })).toBeUndefined();
    expect(short({ leastStroke: mm(0) })).toBeUndefined();
    expect(short({ leastStroke: mm(0.1) })).toBeUndefined();
    expect(short({ usable: 15 })).toBeUndefined();
    expect(short({ dividers: [4, 12] })?.k).toBe(12);
    expect(shortOfThread(WITH_SHOP, { ...ANY, ...WISH, owned: 'both' })?.thread.designation).toBe('3/8-24 UNF');
    expect(short({ series: ['coarse'] })?.thread.designation).toBe('M16×2');
  });

  it('names what can give way alone, and the nearest step without the stroke; none of them is called sound', () => {
    const answer = nothing(STANDARD, WISH);
    const [way] = answer.ways;
    expect(answer.ways.map((w) => w.filter)).toEqual(['motion']);
    expect(way && named(way.row)).toBe('1/2-28 UNEF with 9/16-24 UNEF');
    expect(way?.row.stroke).toBeGreaterThan(2);
    expect(way?.row.verdict).toMatchObject({ grade: 'nearest' });
    expect(way?.row.verdict.remarks[0]).toEqual({
      code: 'off-the-motion',
      values: { off: expect.closeTo(25.4 / 24 / 0.012 - 25.4 / 28 / 0.012 - 1, 9) },
    });
    expect(answer.anyStroke && named(answer.anyStroke)).toBe('1/4-20 UNC with M8×1.25');
    expect(answer.anyStroke?.verdict.remarks.slice(0, 2)).toEqual([
      { code: 'off-the-motion', values: { off: expect.closeTo(0.67, 2) } },
      { code: 'misses', values: { filter: 'stroke' } },
    ]);
    // With a knob of 76 divisions the same pair is within the band, and only then judged.
    const [row] = found(STANDARD, { ...WISH, dividers: [76] }).rows;
    expect(row?.verdict.grade).not.toBe('nearest');
  });
});

describe('a wish that contradicts itself', () => {
  const refusal = (wish: Partial<Wish>) => searchPairs(STANDARD, { ...ANY, ...wish });
  it('is refused by the first that stands against it', () => {
    expect(refusal({ motion: mm(0) })).toEqual({ ok: false, code: 'wish-motion-outside', values: { perTurn: 0 } });
    expect(refusal({ motion: mm(Number.NaN) })).toMatchObject({ code: 'wish-motion-outside' });
    expect(refusal({ motion: mm(1), dividers: [6, 250] })).toMatchObject({
      code: 'wish-motion-outside',
      values: { perTurn: 250 },
    });
    expect(refusal({ dividers: [] })).toMatchObject({ code: 'wish-without-divider' });
    expect(refusal({ smallest: mm(10), largest: mm(8) })).toMatchObject({
      code: 'wish-sizes-crossed',
      values: { smallest: 10, largest: 8 },
    });
    expect(refusal({ band: -1 })).toMatchObject({ code: 'wish-band-outside', values: { band: -1 } });
    expect(refusal({ leastWall: mm(-1) })).toMatchObject({
      code: 'wish-below-nought',
      values: { what: 'leastWall', value: -1 },
    });
    expect(refusal({ load: newtons(Number.NaN) })).toMatchObject({
      code: 'wish-below-nought',
      values: { what: 'load' },
    });
    expect(refusal({ usable: 0 })).toMatchObject({ code: 'wish-usable-outside', values: { diameters: 0 } });
    expect(refusal({ stress: megapascals(0) })).toMatchObject({ code: 'wish-stress-outside', values: { stress: 0 } });
  });
});

describe('the judgement', () => {
  it('goes by the gain, and says what ordinary lead error makes of it', () => {
    const [fine] = found(WITH_SHOP, { motion: mm(1 / 180), band: 0.001, owned: 'both' }).rows;
    expect(fine?.verdict).toEqual({
      grade: 'delicate',
      remarks: [
        { code: 'touchy', values: { leadError: 0.001, ofMotion: expect.closeTo(0.127, 3) } },
        { code: 'all-owned', values: {} },
      ],
    });
    const [foot] = found(WITH_SHOP, { motion: mm(0.0875), band: 0.001, owned: 'both', hands: 'same' }).rows;
    expect(foot?.verdict).toEqual({ grade: 'sound', remarks: [{ code: 'all-owned', values: {} }] });
  });

  it('names what has to be bought, and a thin sleeve', () => {
    const rows = found(WITH_SHOP, { motion: mm(0.25), arrangement: 'nested', hands: 'same' }, 'nearest', 400).rows;
    const stop = rows.find((r) => named(r) === 'M12×1.5 with M8×1.25');
    expect(stop?.verdict.grade).toBe('with care');
    expect(stop?.verdict.remarks).toContainEqual({ code: 'thin-wall', values: {} });
    const bought = rows.find((r) => r.toBuy.length === 1);
    expect(bought?.verdict.remarks).toContainEqual({
      code: 'to-buy',
      values: { threads: [bought?.toBuy[0]?.designation] },
    });
  });
});
