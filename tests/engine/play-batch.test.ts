/** Batches of screws and nuts: moments against closed form, quantiles against their definition and published ones. */

import { describe, expect, it } from 'vitest';
import { mm } from '../../widgets/engine/index.ts';
import { asRead } from '../../widgets/engine/kernel/say.ts';
import { fillUniform, randomState } from '../../widgets/engine/numerics/random.ts';
import {
  type BatchLaw,
  LARGEST_BATCH,
  type PitchZones,
  type PlayBatch,
  type PlayBatchSettings,
  playBatch,
  playBatchRun,
} from '../../widgets/engine/play/play-batch.ts';
import { reasonOf } from '../../widgets/words/reason.ts';

const zones = (d2min: number, d2max: number, D2min: number, D2max: number): PitchZones => ({
  d2min: mm(d2min),
  d2max: mm(d2max),
  D2min: mm(D2min),
  D2max: mm(D2max),
});
// Pitch-diameter limits of M10×1.5 6g/6H (mm) and 3/8-16 2A/2B (in), from memory of the published tables.
const M10 = zones(8.862, 8.994, 9.026, 9.206);
const UNC = zones(0.3287 * 25.4, 0.3331 * 25.4, 0.3344 * 25.4, 0.3401 * 25.4);
const TAN30 = Math.tan(Math.PI / 6);

const settings = (more: Partial<PlayBatchSettings> = {}): PlayBatchSettings => ({
  threads: [M10, UNC],
  count: 200_000,
  seed: 11,
  law: { kind: 'uniform' },
  ...more,
});
const made = (more: Partial<PlayBatchSettings> = {}): PlayBatch => {
  const batch = playBatch(settings(more));
  if (!batch.ok) throw new Error(reasonOf(batch));
  return batch.value;
};
const figures = (batch: PlayBatch) => {
  if (batch.drawn === undefined) throw new Error('nothing goes together');
  return batch.drawn;
};
const said = (more: Partial<PlayBatchSettings>) => {
  const batch = playBatch(settings(more));
  return batch.ok ? 'accepted' : reasonOf(batch);
};

/** Sum over the four zones, each taken by `f` of its width in mm of play. */
const overZones = (threads: readonly PitchZones[], f: (width: number) => number) =>
  threads.reduce((s, t) => s + f((t.d2max - t.d2min) * TAN30) + f((t.D2max - t.D2min) * TAN30), 0);
const middleOf = (threads: readonly PitchZones[]) =>
  threads.reduce((s, t) => s + ((t.D2min + t.D2max - t.d2min - t.d2max) / 2) * TAN30, 0);

/** Variance of a standard normal law cut off at ±a: 1 − 2a φ(a)/(2Φ(a) − 1), with the integral by Simpson's rule. */
const cutVariance = (a: number) => {
  const steps = 400;
  const density = (x: number) => Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);
  let inside = 0;
  for (let i = 0; i <= steps; i++) {
    const weight = i === 0 || i === steps ? 1 : i % 2 ? 4 : 2;
    inside += weight * density(-a + (2 * a * i) / steps);
  }
  inside *= (2 * a) / steps / 3;
  return 1 - (2 * a * density(a)) / inside;
};

describe('playBatch, moments', () => {
  // The variance of a uniform zone of width w is w²/12; of a normal one (w/6Cp)², cut off at ±3Cp σ less than that.
  const LAWS: [string, BatchLaw, (w: number) => number][] = [
    ['uniform', { kind: 'uniform' }, (w) => w ** 2 / 12],
    ['normal, Cp 1', { kind: 'normal', Cp: 1, clipped: false }, (w) => (w / 6) ** 2],
    ['normal, Cp 1.33', { kind: 'normal', Cp: 1.33, clipped: false }, (w) => (w / 6 / 1.33) ** 2],
    ['normal, Cp 0.4, clipped', { kind: 'normal', Cp: 0.4, clipped: true }, (w) => (w / 2.4) ** 2 * cutVariance(1.2)],
  ];
  for (const [name, law, variance] of LAWS)
    for (const threads of [[M10], [M10, UNC]])
      it(`${name}, ${threads.length} thread(s): mean and variance are the closed form's within four standard errors`, () => {
        const batch = made({ law, threads });
        const drawn = figures(batch);
        const expected = overZones(threads, variance);
        expect(batch.together).toBe(200_000);
        expect(Math.abs(drawn.mean - middleOf(threads))).toBeLessThan(4 * Math.sqrt(expected / batch.count));
        // The kurtosis of a sum of these laws is at most 3, so the relative error of the variance is √(2/n) or less.
        expect(Math.abs(drawn.sd ** 2 / expected - 1)).toBeLessThan(4 * Math.sqrt(2 / batch.count));
      });

  it('the difference of two uniform diameters with equal zones has the triangle’s 5 % and 95 % points', () => {
    // Triangle of half-width w about the middle: P(below −w + x) = x²/2w², so x = w √0.1 at 5 %.
    const w = 0.1;
    const drawn = figures(made({ threads: [zones(8.8, 8.9, 9, 9.1)], count: 1_000_000 }));
    const from = 0.1 * TAN30;
    const x = w * Math.sqrt(0.1) * TAN30;
    const [low, median, high] = drawn.quantiles.map((q) => q.play);
    // Standard error of a quantile √(p(1 − p)/n)/density; the density there is x/w² and 1/w at the middle.
    const error = (p: number, density: number) => 4 * (Math.sqrt((p * (1 - p)) / 1e6) / density);
    expect(Math.abs((low ?? 0) - (from + x))).toBeLessThan(error(0.05, x / (w * TAN30) ** 2));
    expect(Math.abs((median ?? 0) - (from + w * TAN30))).toBeLessThan(error(0.5, 1 / (w * TAN30)));
    expect(Math.abs((high ?? 0) - (from + 2 * w * TAN30 - x))).toBeLessThan(error(0.05, x / (w * TAN30) ** 2));
  });
});

describe('playBatch, limits', () => {
  it('M10×1.5 with 3/8-16 may have 37.5 to 365.8 µm, and no uniform draw leaves that', () => {
    const batch = made();
    const drawn = figures(batch);
    expect(Math.round(batch.limits.least * 1e4) / 10).toBe(37.5);
    expect(Math.round(batch.limits.most * 1e4) / 10).toBe(365.8);
    expect(drawn.least).toBeGreaterThanOrEqual(batch.limits.least);
    expect(drawn.most).toBeLessThanOrEqual(batch.limits.most);
  });

  it('a clipped normal batch stays within the limits, an unclipped one of low capability does not', () => {
    const inside = figures(made({ law: { kind: 'normal', Cp: 0.33, clipped: true } }));
    const batch = made({ law: { kind: 'normal', Cp: 0.33, clipped: false } });
    const outside = figures(batch);
    expect(inside.most).toBeLessThanOrEqual(batch.limits.most);
    expect(inside.least).toBeGreaterThanOrEqual(batch.limits.least);
    expect(outside.most).toBeGreaterThan(batch.limits.most);
    expect(outside.histogram.to).toBe(outside.most);
  });

  it('counts pairs with interference and leaves them out', () => {
    // Equal zones of screw and nut: half of the pairs interfere, the rest have a triangle's half, mean w/3.
    const w = 0.1;
    const batch = made({ threads: [zones(9, 9 + w, 9, 9 + w)], count: 400_000 });
    expect(batch.together + batch.interfering).toBe(batch.count);
    expect(Math.abs(batch.interfering / batch.count - 0.5)).toBeLessThan(4 * Math.sqrt(0.25 / batch.count));
    expect(batch.limits.least).toBe(0);
    expect(Math.abs(figures(batch).mean - (w / 3) * TAN30)).toBeLessThan(1e-4);
    expect(figures(batch).least).toBeGreaterThanOrEqual(0);
  });

  it('a pair with interference in one thread does not go together, however loose the other', () => {
    const batch = made({ threads: [zones(9, 9, 9, 9.1), zones(9, 9.1, 9, 9.1)], count: 100_000 });
    expect(Math.abs(batch.interfering / batch.count - 0.5)).toBeLessThan(0.01);
  });

  it('zones of no width give one value, all in one bar', () => {
    const drawn = figures(made({ threads: [zones(9, 9, 9.1, 9.1)], count: 1000 }));
    expect(drawn.least).toBe(drawn.most);
    expect(drawn.least).toBeCloseTo(0.1 * TAN30, 8);
    expect(drawn.sd).toBeLessThan(1e-8);
    expect(drawn.quantiles.every((q) => q.play === drawn.least)).toBe(true);
    expect(drawn.histogram.counts.reduce((a, b) => a + b)).toBe(1000);
  });

  it('lets a nut of just the size of its screw go together, with no play, all in one bar', () => {
    const batch = made({ threads: [zones(9, 9, 9, 9)], count: 10, bars: 3 });
    expect(batch).toMatchObject({ together: 10, drawn: { least: 0, most: 0, mean: 0, sd: 0 } });
    expect([...figures(batch).histogram.counts]).toEqual([10, 0, 0]);
  });

  it('counts the loosest assembly in the last bar, beyond the limits too', () => {
    const law: BatchLaw = { kind: 'normal', Cp: 0.3, clipped: false };
    const batch = made({ count: 1000, law, bars: 7 });
    const { most, histogram } = figures(batch);
    expect(histogram.to).toBe(most);
    expect(most).toBeGreaterThan(batch.limits.most);
    expect(histogram.counts.reduce((sum, n) => sum + n, 0)).toBe(batch.together);
  });

  it('says so when nothing went together', () => {
    const batch = made({ threads: [zones(9, 9.1, 8.9, 9)], count: 3, law: { kind: 'normal', Cp: 10, clipped: true } });
    expect(batch).toMatchObject({ together: 0, interfering: 3, drawn: undefined });
  });
});

describe('playBatch, draw by draw', () => {
  it.each([
    ['one thread', [M10]],
    ['a pair', [M10, UNC]],
  ] as const)(
    'gives each assembly of %s its own draws in turn, nut and screw, over more than one block',
    (_, threads) => {
      const state = randomState(5);
      if (!state.ok) throw new Error(reasonOf(state));
      const count = 3000;
      const draws = new Float64Array(2 * threads.length * count);
      fillUniform(state.value, draws);
      const within = (min: number, max: number, k: number) => min + (max - min) * (draws[k] ?? Number.NaN);
      const plays = Array.from({ length: count }, (_, i) =>
        threads.reduce((sum, t, j) => {
          const k = 2 * (threads.length * i + j);
          return sum + (within(t.D2min, t.D2max, k) - within(t.d2min, t.d2max, k + 1)) * TAN30;
        }, 0),
      ).sort((a, b) => a - b);
      const batch = made({ threads, count, seed: 5, shares: [0, 2 / 3001, 0.5, 1] });
      const found = figures(batch);
      expect([batch.together, found.histogram.counts.length]).toEqual([count, 60]);
      expect(found.quantiles.map((q) => q.play)).toEqual(
        [plays[0], plays[1], ((plays[1499] ?? 0) + (plays[1500] ?? 0)) / 2, plays.at(-1)].map((v) =>
          expect.closeTo(v ?? Number.NaN, 7),
        ),
      );
      expect([found.least, found.most]).toEqual([found.quantiles[0]?.play, found.quantiles[3]?.play]);
      expect(found.histogram).toMatchObject({ from: batch.limits.least, to: batch.limits.most });
      const mean = plays.reduce((sum, v) => sum + v, 0) / count;
      expect(found.mean).toBeCloseTo(mean, 8);
      expect(found.sd).toBeCloseTo(Math.sqrt(plays.reduce((sum, v) => sum + (v - mean) ** 2, 0) / count), 8);
    },
  );
});

describe('playBatch, as a run', () => {
  it('is the same batch whole or in steps, and tells the share done', () => {
    const run = playBatchRun(settings());
    if (!run.ok) throw new Error(reasonOf(run));
    const shares: number[] = [];
    let step = run.value.next();
    for (; !step.done; step = run.value.next()) shares.push(step.value);
    expect(step.value).toEqual(made());
    expect(shares).toEqual([65_536 / 200_000, 131_072 / 200_000, 196_608 / 200_000, 1]);
  });

  it('pauses while a large batch is counted too, so that no step grows with the batch', () => {
    const pauses = (count: number) => {
      const run = playBatchRun(settings({ count }));
      if (!run.ok) throw new Error(reasonOf(run));
      return [...run.value].filter((share) => share === 1).length;
    };
    // The histogram alone pauses every 262 144 values, the quantiles besides.
    expect(pauses(200_000)).toBe(1);
    expect(pauses(1_000_000)).toBeGreaterThanOrEqual(4);
    expect(pauses(3_000_000)).toBeGreaterThanOrEqual(12);
  });

  it('is the same for the same seed and another for another', () => {
    expect(made()).toEqual(made());
    expect(figures(made({ seed: 12 })).mean).not.toBe(figures(made()).mean);
  });

  it('has every assembly in its histogram and its quantiles in order', () => {
    const drawn = figures(made({ shares: [0, 0.25, 0.5, 0.75, 1], bars: 17 }));
    expect(drawn.histogram.counts.length).toBe(17);
    expect(drawn.histogram.counts.reduce((a, b) => a + b)).toBe(200_000);
    const plays = drawn.quantiles.map((q) => q.play);
    expect(plays).toEqual(plays.toSorted((a, b) => a - b));
    expect(plays[0]).toBe(drawn.least);
    expect(plays[4]).toBe(drawn.most);
    // As many in the lower half of the bars as their quantiles say, to one bar.
    const { from, to, counts } = drawn.histogram;
    const bar = Math.floor((((plays[2] ?? 0) - from) / (to - from)) * 17);
    const below = counts.slice(0, bar).reduce((a, b) => a + b);
    expect(below).toBeLessThan(100_000);
    expect(below + (counts[bar] ?? 0)).toBeGreaterThan(100_000);
  });
});

describe('playBatch refuses', () => {
  it('a capability of nought, with the reason', () => {
    expect(said({ law: { kind: 'normal', Cp: 0, clipped: false } })).toBe(
      'Capability Cp: read 0; give a value from 0.1 to 10, because the spread is the zone divided by 6 Cp and a capability of zero is a spread without bound.',
    );
    for (const Cp of [-1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(said({ law: { kind: 'normal', Cp, clipped: true } })).toContain(`read ${asRead(Cp)};`);
  });

  it('more assemblies than any figure needs, and none', () => {
    for (const count of [0, -1, 1.5, LARGEST_BATCH + 1, Number.NaN])
      expect(said({ count })).toBe(
        `Number of assemblies: read ${asRead(count)}; give a whole number from 1 to 10000000, more would change no figure that can be measured.`,
      );
  });

  it('nuts that are all smaller than all screws, as interference', () => {
    expect(said({ threads: [M10, zones(9.1, 9.2, 8.9, 9)] })).toBe(
      'Thread 2 of the batch: every nut is smaller than every screw, which is interference throughout, so nothing goes together and there is no play; give an internal pitch diameter above 9.1 mm.',
    );
  });

  it('limits the wrong way round, limits that are no size, and other than one or two threads', () => {
    expect(said({ threads: [zones(9, 8.9, 9.1, 9.2)] })).toBe(
      'Thread 1 of the batch: a lower limit of pitch diameter is above its upper limit; give the smaller value as the lower one.',
    );
    expect(said({ threads: [zones(8.8, 8.9, 9.2, 9.1)] })).toContain('above its upper limit');
    expect(said({ threads: [zones(8.8, Number.NaN, 9.1, 9.2)] })).toBe(
      'Thread 1 of the batch: read NaN as a limit of pitch diameter; give a value from 0.1 mm to 400 mm.',
    );
    expect(said({ threads: [] })).toBe('Read 0 threads; a batch is of one thread or of the two of a pair.');
  });

  it('shares, bars and seeds out of range', () => {
    expect(said({ shares: [0.5, 1.5] })).toBe(
      'Share of the batch: read 1.5; give a number from 0 to 1, for example 0.95.',
    );
    expect(said({ bars: 0 })).toBe('Bars of the histogram: read 0; give a whole number from 1 to 1000.');
    expect(said({ bars: 1001 })).toContain('Bars of the histogram: read 1001;');
    expect(said({ shares: [-0.1] })).toContain('Share of the batch: read −0.1;');
    expect(said({ seed: -1 })).toContain('Seed: read −1;');
  });

  it('nothing at the bounds themselves', () => {
    for (const more of [
      { count: 1 },
      { count: LARGEST_BATCH },
      { law: { kind: 'normal', Cp: 0.1, clipped: true } },
      { law: { kind: 'normal', Cp: 10, clipped: true } },
      { bars: 1 },
      { bars: 1000 },
      { shares: [0, 1] },
      { threads: [zones(0.1, 0.1, 400, 400)] },
    ] as const)
      expect(playBatchRun(settings(more)).ok, JSON.stringify(more)).toBe(true);
    for (const wrong of [zones(0.099, 1, 2, 3), zones(1, 2, 3, 401)])
      expect(said({ threads: [wrong] })).toContain('as a limit of pitch diameter');
  });
});
