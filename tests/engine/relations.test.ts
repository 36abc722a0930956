/**
 * Every relation of the engine against its own formula, read by a general expression library: the formula is
 * evaluated with units, so a length added to a number or a formula that no longer says what `compute`
 * does is found here. Bad input of every kind gives a sentence, never a NaN.
 */

import fc from 'fast-check';
import { evaluate } from 'mathjs';
import { describe, expect, it } from 'vitest';
import {
  type AnyRelation,
  gain,
  mm,
  outOfBounds,
  RELATIONS,
  type SymbolName,
  symbolFact,
} from '../../widgets/engine/index.ts';
import { inBase, pointAt, withUnits } from '../../widgets/site/points.ts';
import { reasonOf } from '../../widgets/words/reason.ts';
import { howMany } from '../support/deep.ts';
import { admissible, anywhere, corners } from '../support/points.ts';
import { reasonIn } from '../support/results.ts';

/** Numbers that come of a slip of the keyboard, of a division or of another program. */
const ODD = [0, -0, -1, 1e9, 5e-324, -5e-324, Number.MIN_VALUE * 2 ** 40, 1e308, Number.NaN, 1 / 0, -1 / 0];

/** Loads that may come out below nought though a load that is given may not: a foot that would lift. */
const SIGNED = new Set(['weight-on-feet']);

/** Finite all of it and of the sign its symbol has, or one sentence. */
const answered = (r: AnyRelation, inputs: Readonly<Record<string, unknown>>): void => {
  const result = r.of(inputs);
  const at = () => `${r.name} at ${JSON.stringify(inputs)}: ${JSON.stringify(result)}`;
  if (!result.ok) {
    if (!/^[A-Z].{20,}\.$/s.test(reasonOf(result)) || reasonOf(result).length > 400) throw new Error(at());
    // A number below nought has a true minus.
    if (/[\s(]-\d/.test(reasonOf(result))) throw new Error(at());
    return;
  }
  for (const name of Object.keys(r.gives)) {
    const value = result.value[name];
    if (value === undefined || !Number.isFinite(value)) throw new Error(at());
    if (symbolFact(name as SymbolName).min >= 0 && !(value >= 0) && !SIGNED.has(r.name)) throw new Error(at());
  }
};

describe('why a number can’t stand for a symbol', () => {
  const REASONS = [
    ['k', 6.5, 'Steps per turn: read 6.5; only whole numbers count here, give one from 1 to 10000.'],
    ['k', 0, 'Steps per turn: read 0; give a value from 1 to 10000.'],
    ['h', 0, 'Hand: read 0; it is 1 for a right-hand thread and −1 for a left-hand one.'],
    ['h', '1', 'Hand: read 1, which is not a number; give one from −1 to 1.'],
    ['n', -601, 'Turns, clockwise seen from above: read −601 turns; give a value from −600 turns to 600 turns.'],
    ['phi_w', (61 * Math.PI) / 180, 'Angle of the wedge: read 61°; give a value from 0° to 60°.'],
    ['phi_w', Number.MAX_VALUE, 'Angle of the wedge: read more than 1000000000000°; give a value from 0° to 60°.'],
    ['P', 2.54e303, 'Pitch: read more than 1000000000000 mm; give a value from 0.05 mm to 26 mm.'],
    [
      'Delta',
      -120.5,
      'Net lead, the motion of the carried part per turn: read −120.5 mm; give a value from −120 mm to 120 mm.',
    ],
    ['P', undefined, 'Pitch is missing: give a number from 0.05 mm to 26 mm.'],
    [
      'n_a',
      2e7,
      'Assemblies to draw: read 20000000; give a value from 1 to 10000000, because more would change no figure that can be measured.',
    ],
  ] as const;
  for (const [symbol, value, reason] of REASONS)
    it(`${symbol} = ${value}`, () => {
      const refusal = outOfBounds(symbol, value);
      expect(refusal?.field).toBe(symbol);
      expect(refusal && reasonOf(refusal)).toBe(reason);
    });

  it('whole numbers and both hands stand', () => {
    for (const [symbol, value] of [
      ['k', 1],
      ['k', 10000],
      ['h', 1],
      ['h', -1],
    ] as const)
      expect(outOfBounds(symbol, value)).toBeUndefined();
  });

  it('an answer past all numbers is refused by its name', () => {
    expect(gain.of({ L: mm(1.5), Delta: mm(5e-324) })).toEqual({
      ok: false,
      code: 'output-without-bound',
      values: { symbol: 'G' },
    });
  });
});

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
          { seed: 8 },
        );
      });

      it('has an answer somewhere in its box', () => {
        const points = Array.from({ length: 200 }, (_, i) => pointAt(r.takes, i));
        expect(points.some((point) => r.of(point).ok)).toBe(true);
      });

      it('gives a finite result or a reason all over its box: corners, bounds, noughts of either sign, near nought', () => {
        for (const corner of corners(r.takes)) answered(r, corner);
        fc.assert(
          fc.property(anywhere(r.takes), (inputs) => answered(r, inputs)),
          { numRuns: howMany(300, 10_000), seed: 8 },
        );
      });

      it('takes a nought of either sign for the same', () => {
        for (const s of r.takes.filter((s) => symbolFact(s).min <= 0 && symbolFact(s).shown !== 'sense'))
          for (let i = 0; i < 10; i++) {
            const [plus, minus] = [0, -0].map((zero) => r.of({ ...pointAt(r.takes, i), [s]: zero }));
            if (!plus?.ok || !minus?.ok) expect(minus && reasonIn(minus), s).toBe(plus && reasonIn(plus));
            else
              for (const [name, value] of Object.entries(plus.value)) expect(minus.value[name] === value, s).toBe(true);
          }
      });

      it('gives a finite result or a reason for any input at all', () => {
        const anything = fc.record(
          Object.fromEntries(
            r.takes.map((s) => [s, fc.oneof(fc.double(), fc.constantFrom<unknown>(...ODD, undefined, '1', null, {}))]),
          ),
        );
        fc.assert(
          fc.property(anything, anywhere(r.takes), fc.nat(r.takes.length), (odd, inputs, kept) => {
            answered(r, odd);
            // With only the first few odd, so that the odd ones are not all hidden behind the first refusal.
            answered(r, { ...odd, ...Object.fromEntries(Object.entries(inputs).slice(kept)) });
          }),
          { seed: 8 },
        );
      });

      it('refuses each input just outside its bounds, naming it, and takes the bounds themselves', () => {
        const good = pointAt(r.takes, 0);
        for (const s of r.takes) {
          const { min, max, says } = symbolFact(s);
          const past = [min, max].map((bound) => 1e-12 * Math.max(1e-300, Math.abs(bound)));
          for (const value of [min - (past[0] ?? 0), max + (past[1] ?? 0), Number.NaN, 1 / 0, -1 / 0, undefined]) {
            const refusal = r.of({ ...good, [s]: value });
            expect(refusal, `${s} = ${value}`).toMatchObject({ ok: false, field: s });
            expect(reasonIn(refusal).toLowerCase()).toContain(says.toLowerCase());
          }
          for (const value of [min, max]) expect(outOfBounds(s, value), `${s} = ${value}`).toBeUndefined();
        }
      });
    });
});
