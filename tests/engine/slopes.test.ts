/** Slopes by differences against the derivatives that a general expression library makes of the same formulas. */
import { derivative } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { RELATIONS, type SymbolName, slopesOf, symbolFact } from '../../widgets/engine/index.ts';
import { pointAt, withoutUnits } from '../../widgets/site/points.ts';
import { howMany } from '../support/deep.ts';

/** The library has no derivative of these. */
const WITHOUT = /\b(min|max|log)\(/;

describe('the slope of a result', () => {
  it('is the derivative of its formula, for every continuous input', () => {
    let held = 0;
    for (const r of RELATIONS.filter((_, i) => i % howMany(18, 1) === 0))
      for (const [output, formula] of Object.entries(r.gives)) {
        if (formula === undefined || WITHOUT.test(formula)) continue;
        for (let i = 0; i < howMany(1, 20); i++) {
          const point = pointAt(r.takes, i);
          const xs = r.takes.map((s) => point[s] ?? 0);
          const law = (at: readonly number[]) => {
            const result = r.of(Object.fromEntries(r.takes.map((s, k) => [s, at[k]])));
            return result.ok ? result.value[output] : undefined;
          };
          const y = law(xs);
          for (const [k, s] of r.takes.entries()) {
            const fact = symbolFact(s as SymbolName);
            if (fact.whole || fact.shown === 'sense') continue;
            const us = xs.map((x, j) => (j === k ? 1e-3 * Math.abs(x) : 0));
            const slope = slopesOf(law, xs, us)?.[k];
            if (y === undefined || slope === undefined) continue;
            const exact = Number(derivative(formula, s).evaluate(withoutUnits(point)));
            // The last bits of the result, over the step of the difference, are all that may be left.
            const grain = (4e-10 * Math.abs(y)) / Math.max(1e-300, Math.abs(xs[k] ?? 0));
            // A ± has two digits: where a law turns within a thousandth of its input, four of its slope are enough.
            const scale = 2e-4 * Math.abs(exact) + 10 * grain;
            expect(
              Math.abs(slope - exact),
              `${r.name}: ${output} by ${s} at ${JSON.stringify(point)}`,
            ).toBeLessThanOrEqual(scale);
            held++;
          }
        }
      }
    expect(held).toBeGreaterThan(howMany(8, 20));
  });
});
