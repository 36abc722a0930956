/** Stiffness in series: one force through the chain, the gives added up. */
import { describe, expect, it } from 'vitest';
import {
  megapascals,
  mm,
  newtonsPerMillimetre,
  seriesStiffness,
  shankStiffness,
  twoInSeries,
} from '../../widgets/engine/index.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const PARTS = [
  { name: 'ball on seat', stiffness: 22900 },
  { name: 'shank', stiffness: 170000 },
  { name: 'base', stiffness: 1e6 },
];

describe('stiffness', () => {
  it('of a shank is what a bar of its core gives under one newton', () => {
    const { k_l } = valueIn(shankStiffness.of({ E_l: megapascals(210e3), d_3: mm(6.466), l: mm(40) }));
    const area = (Math.PI / 4) * 6.466 ** 2;
    const strain = 1 / area / 210e3;
    expect(k_l).toBeCloseTo(1 / (strain * 40), 6);
  });

  it('of a chain adds the gives, below the softest part, two by two or all at once', () => {
    const chain = valueIn(seriesStiffness(PARTS));
    const give = PARTS.reduce((sum, p) => sum + 100 / p.stiffness, 0);
    expect(100 / chain.stiffness).toBeCloseTo(give, 12);
    expect(chain.stiffness).toBeLessThan(22900);
    expect(chain.softest).toBe('ball on seat');
    expect(valueIn(seriesStiffness(PARTS.toReversed())).softest).toBe('ball on seat');
    // Of two parts alike the one named first is named.
    const alike = [100, 100].map((stiffness, i) => ({ name: `part ${i + 1}`, stiffness }));
    expect(valueIn(seriesStiffness(alike))).toMatchObject({
      stiffness: 50,
      softest: 'part 1',
      shares: [{ share: 0.5 }, {}],
    });
    expect(chain.shares.reduce((sum, s) => sum + s.share, 0)).toBeCloseTo(1, 12);
    const two = (a: number, b: number) =>
      valueIn(twoInSeries.of({ k_1: newtonsPerMillimetre(a), k_2: newtonsPerMillimetre(b) })).k_12;
    expect(two(two(22900, 170000), 1e6)).toBeCloseTo(chain.stiffness, 6);
  });

  it('is refused for an empty chain and for a part without stiffness', () => {
    expect(reasonIn(seriesStiffness([]))).toContain('No part was named');
    expect(reasonIn(seriesStiffness([{ name: 'base', stiffness: 0 }]))).toBe(
      'Stiffness of base: read 0; give a value above 0 and up to 1000000000000 N/mm.',
    );
    expect(reasonIn(seriesStiffness([{ name: 'base', stiffness: Number.NaN }]))).toContain('base');
    expect(reasonIn(seriesStiffness([...PARTS, { name: 'plate', stiffness: 1.01e12 }]))).toContain(
      'Stiffness of plate',
    );
    expect(valueIn(seriesStiffness([{ name: 'plate', stiffness: 1e12 }])).softest).toBe('plate');
  });
});
