/**
 * Every relation of the engine against its own formula, read by a general expression library: the formula is
 * evaluated with units, so a length added to a number or a formula that no longer says what `compute`
 * does is found here. Bad input of every kind gives a sentence, never a NaN.
 */
import fc from 'fast-check';
import { evaluate } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { outOfBounds, RELATIONS, type SymbolName, symbolFact } from '../../widgets/engine/index.ts';
import { inBase, withUnits } from '../../widgets/press/points.ts';
import { admissible } from '../support/points.ts';

describe('every relation', () => {
  it('has a name of its own, a sentence and a source', () => {
    expect(new Set(RELATIONS.map((r) => r.name)).size).toBe(RELATIONS.length);
    for (const r of RELATIONS) {
      expect(r.name, r.name).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
      expect(r.says, r.name).toMatch(/^[A-Z].*\.$/s);
      expect(r.source.length, r.name).toBeGreaterThan(15);
    }
  });

  for (const r of RELATIONS)
    describe(r.name, () => {
      it('computes what its formula says, in value and in dimension', () => {
        fc.assert(
          fc.property(admissible(r.takes), (inputs) => {
            const result = r.of(inputs);
            if (!result.ok) return;
            for (const [symbol, formula] of Object.entries(r.gives)) {
              if (formula === undefined) continue;
              const evaluated = evaluate(formula, withUnits(inputs));
              const { unit } = symbolFact(symbol as SymbolName);
              const value = inBase(evaluated, unit);
              if (typeof value !== 'number') throw new Error(`${symbol} = ${formula} is no ${unit}`);
              const scale = Math.max(1e-5, Math.abs(value), ...Object.values(inputs).map((x) => Math.abs(x) * 1e-3));
              expect(
                Math.abs((result.value[symbol] ?? Number.NaN) - value),
                `${symbol} at ${JSON.stringify(inputs)}`,
              ).toBeLessThan(1e-9 * scale);
            }
          }),
        );
      });

      it('gives a finite result or a reason for any input at all', () => {
        const anything = fc.record(
          Object.fromEntries(
            r.takes.map((s) => [
              s,
              fc.oneof(fc.double(), fc.constantFrom(0, -1, 1e9, Number.NaN, undefined, '1', null)),
            ]),
          ),
        );
        fc.assert(
          fc.property(anything, (inputs) => {
            const result = r.of(inputs);
            if (result.ok) for (const value of Object.values(result.value)) expect(Number.isFinite(value)).toBe(true);
            else expect(result.reason).toMatch(/^[A-Z].{20,}\.$/s);
          }),
        );
      });

      it('refuses each input just outside its bounds, naming it', () => {
        for (const s of r.takes) {
          const { min, max, says } = symbolFact(s);
          for (const value of [min - 1e-3 * (max - min), max + 1e-3 * (max - min), Number.NaN, undefined]) {
            const refusal = outOfBounds(s, value);
            expect(refusal?.field).toBe(s);
            expect(refusal?.reason.toLowerCase()).toContain(says.toLowerCase());
          }
        }
      });
    });
});
