/** Which part to improve: assemblies of errors whose effects are known by hand, one error or two at a time; no published table of such a jack was found. */
import { describe, expect, it } from 'vitest';
import { type Asked, type BuiltThread, EXACT, type Jack, runToEnd, whichPartRun } from '../../widgets/engine/index.ts';
import { howMany } from '../support/deep.ts';
import { foot, thread } from '../support/exact-jack.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const lead = (leadError: number): BuiltThread['screw'] => ({ ...EXACT, leadError });
const COUNT = howMany(40, 400);
const drawn = (jack: Jack, asked: Asked, { turns = [0, 0.25, 0.5, 0.75, 1], count = COUNT, seed = 3 } = {}) =>
  runToEnd(whichPartRun(jack, turns, { asked, count, seed }));

describe('which part to improve', () => {
  it('finds the one error there is, and half of it where that part is twice as good', () => {
    const found = valueIn(drawn(foot({ axes: { offset: 0.02, angle: 0, phase: 0 } }), 'place'));
    expect(found.ranks.map(({ part }) => part)).toEqual(['offset']);
    const [offset] = found.ranks;
    // The tip goes round at the offset; drawn evenly from none to all of it, 95 of 100 are below 0.95 of it.
    expect(offset?.alone).toBeCloseTo(0.02, 5);
    expect(found.sampled / 0.02).toBeGreaterThan(0.8);
    expect(found.sampled).toBeLessThan(0.02);
    expect((offset?.gains ?? 0) / found.sampled).toBeCloseTo(0.5, 3);
    // Bounds by the law of propagation: 2/√3 of the most; nothing is worse than the most.
    expect(found.statistical / 0.02).toBeCloseTo(2 / Math.sqrt(3), 3);
    expect(found.worst).toBeCloseTo(0.02, 5);
    expect(found.failed).toBe(0);
  });

  it('ranks two lead errors by what each does, and adds them at worst and by squares', () => {
    const jack = foot({ A: thread({ screw: lead(0.0004) }), C: { ...foot().C, screw: lead(0.0001) } });
    const turns = [0, 1, 4];
    const found = valueIn(drawn(jack, 'height', { turns }));
    // Over four turns: 4 × 1.5 × 0.0004 and 4 × 1.5875 × 0.0001.
    const [a, c] = [4 * 1.5 * 0.0004, 4 * 1.5875 * 0.0001];
    expect(found.ranks.map(({ part }) => part)).toEqual(['lead A', 'lead C']);
    expect(found.ranks[0]?.alone).toBeCloseTo(a, 5);
    expect(found.ranks[1]?.alone).toBeCloseTo(c, 5);
    expect(found.worst).toBeCloseTo(a + c, 5);
    expect(found.statistical).toBeCloseTo((2 * Math.hypot(a, c)) / Math.sqrt(3), 5);
    expect(found.errors.every((e) => e <= a + c + 1e-9)).toBe(true);
    // Another seed, other assemblies, the same ranking.
    const again = valueIn(drawn(jack, 'height', { turns, seed: 4 }));
    expect(again.ranks[0]?.part).toBe('lead A');
    expect(again.sampled).not.toBe(found.sampled);
    expect(valueIn(drawn(jack, 'height', { turns })).sampled).toBe(found.sampled);
  });

  it('leaves lead errors out of the place sideways, and the offset of the axes out of the height', () => {
    const axes = { offset: 0.02, angle: 0, phase: 0 };
    const jack = foot({ axes, A: thread({ screw: lead(0.0004) }) });
    const best = (asked: Asked) => valueIn(drawn(jack, asked, { count: 20 })).ranks[0]?.part;
    expect([best('place'), best('height')]).toEqual(['offset', 'lead A']);
  });

  it('says so where no assembly of such errors comes to rest', () => {
    expect(reasonIn(drawn(foot({ A: thread({ clearance: -0.01 }) }), 'height'))).toContain('clearance');
  });
});
