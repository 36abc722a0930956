/** A ± as people write it: its standard uncertainty, or one sentence. */
import { describe, expect, it } from 'vitest';
import { type Input, readField, writeField } from '../../widgets/assembly/numbers.ts';
import { type SymbolName, symbolFact } from '../../widgets/engine/index.ts';
import { UNIT_VIEWS } from '../../widgets/input/format.ts';
import { doubtOf } from '../../widgets/input/spread.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const field = (name: SymbolName): Input => {
  const { min, max, says } = symbolFact(name);
  return { kind: 'quantity', name, label: says, start: '', min, max };
};
const A: Input = { kind: 'thread', name: 'A', label: 'thread A', start: 'M10x1.5' };

describe('what is read', () => {
  it.each([
    ['L', '1.500 mm ± 2 µm', 1.5, 0.002 / Math.sqrt(3), Number.POSITIVE_INFINITY],
    ['L', '1.5 +/- 0.002', 1.5, 0.002 / Math.sqrt(3), Number.POSITIVE_INFINITY],
    ['L', '1,5 mm +- 0,002 mm', 1.5, 0.002 / Math.sqrt(3), Number.POSITIVE_INFINITY],
    ['F', '30 N ± 10 %', 30, 3 / Math.sqrt(3), Number.POSITIVE_INFINITY],
    ['eps_A', '0.1 % ± 0.02 %', 0.001, 0.0002 / Math.sqrt(3), Number.POSITIVE_INFINITY],
    ['psi', '1° ± 0.1°', Math.PI / 180, Math.PI / 1800 / Math.sqrt(3), Number.POSITIVE_INFINITY],
    ['F', '30 N ± 2 N, k = 2', 30, 1, Number.POSITIVE_INFINITY],
    ['F', '30 N ± 2 N (k=2)', 30, 1, Number.POSITIVE_INFINITY],
    ['L', '1.500 mm ± 3 µm, 9 readings', 1.5, 0.001, 8],
    ['L', '1.501; 1.499; 1.503 mm', 1.501, 0.002 / Math.sqrt(3), 2],
    ['F', '-0 + 1', Number.NaN, 0, 0],
  ] as const)('%s: %s', (name, text, value, u, freedom) => {
    const read = readField(field(name), text, 'metric');
    if (Number.isNaN(value)) return expect(read.ok).toBe(false);
    const held = valueIn(read);
    expect(held.value).toBeCloseTo(value, 12);
    const doubt = held.spread && doubtOf(held.spread);
    expect(doubt?.u).toBeCloseTo(u, 12);
    expect(doubt?.freedom).toBe(freedom);
  });

  it.each([
    ['n', '0 ± 0.02'],
    ['n', '2 ± 2'],
    ['eps_A', '0.01 % ± 0.05 %'],
    ['theta_i', '0.1° ± 1°'],
    ['F_lo', '-1 N ± 5 N'],
    ['Delta_T', '0.5 K ± 2 K'],
    ['c', '0.01 mm ± 0.03 mm'],
  ] as const)(
    '%s: %s, whose ± reaches over nought, where nought is a value like any other or the value itself',
    (name, text) => {
      expect(valueIn(readField(field(name), text, 'metric')).spread?.half).toBeGreaterThan(0);
    },
  );

  it('the limits of a class: M10×1.5-6g has a pitch diameter from 8.862 mm to 8.994 mm (ISO 965-2)', () => {
    const held = valueIn(readField(field('d_2'), 'M10x1.5-6g', 'metric'));
    expect(Number(held.value) - (held.spread?.half ?? 0)).toBeCloseTo(8.862, 3);
    expect(Number(held.value) + (held.spread?.half ?? 0)).toBeCloseTo(8.994, 3);
  });

  it('both sides of a fit for a clearance: 0.032 mm to 0.344 mm for M10×1.5-6H/6g (ISO 965-2: 9.026 to 9.206 in the nut)', () => {
    const held = valueIn(readField(field('c'), 'M10x1.5-6H/6g', 'metric'));
    expect(Number(held.value) - (held.spread?.half ?? 0)).toBeCloseTo(0.032, 3);
    expect(Number(held.value) + (held.spread?.half ?? 0)).toBeCloseTo(0.344, 3);
  });

  it('behind a thread it is the ± of its pitch', () => {
    const held = valueIn(readField(A, 'M10x1.5 ± 3 µm', 'metric'));
    expect(held.spread?.half).toBeCloseTo(0.003, 12);
    expect(writeField(A, held, 'metric')).toBe('M10×1.5 ± 3 µm');
  });
});

describe('what is written reads back as itself, in every view of units', () => {
  for (const [name, text] of [
    ['L', '1.5 mm ± 2 µm'],
    ['L', '30 mm ± 0.5 mm'],
    ['F', '30 N ± 10 %'],
    ['F', '30 N ± 2 N, k = 2'],
    ['w', '0.4 mm ± 1.5 µm, 12 readings'],
    ['n', '3 ± 0.02'],
    ['t', '24 h ± 1 h'],
    ['psi', '1° ± 0.1°'],
  ] as const)
    for (const view of UNIT_VIEWS)
      it(`${name}: ${text}, ${view}`, () => {
        const held = valueIn(readField(field(name), text, 'metric'));
        const again = valueIn(readField(field(name), writeField(field(name), held, view), view));
        expect(again.value).toBeCloseTo(Number(held.value), 6);
        expect(Math.abs((again.spread?.half ?? 0) / (held.spread?.half ?? 1) - 1)).toBeLessThan(1e-7);
        expect(again.spread?.k).toBe(held.spread?.k);
        expect(again.spread?.readings).toBe(held.spread?.readings);
        expect(again.spread?.share === undefined).toBe(held.spread?.share === undefined);
      });
});

describe('what is refused, in one sentence', () => {
  it.each([
    ['L', '1.5 mm ± 0', /not above zero/],
    ['L', '1.5 mm ± -2 µm', /not above zero/],
    ['L', '1.5 mm ± 3 mm', /± 1\.45.mm is the most here/],
    ['L', '1.5 mm ± 2 N', /N/],
    ['n', '2 ± 9', /larger than the number.*± 2.turns is the most/],
    ['n', '-2 ± 2.1', /larger than the number/],
    ['Delta', '87.5 µm ± 100 µm', /larger than the number.*± 87\.5.µm/],
    ['theta', '30° ± 31°', /larger than the number/],
    ['F', '30 N ± 31 N', /± 30.*N is the most/],
    ['F', '30 N ± 110 %', /is the most here/],
    ['L', '± 2 µm', /before its ±/],
    ['L', '1.5 mm ± 2 µm, often', /behind a ±/],
    ['L', '1.5 mm ± 2 µm, 1 reading', /two of them/],
    ['L', '1.5; ', /Nothing|number|empty/i],
    ['k', '6 ± 1', /counted and not measured/],
    ['d_2', 'M10x1.5', /only a class has limits/],
    ['t', '24 ± 1', /unit/],
  ] as const)('%s: %s', (name, text, words) => {
    const reason = reasonIn(readField(field(name), text, 'metric'));
    expect(reason).toMatch(words);
    expect(reason).toMatch(/^[A-Z].*\.$/s);
  });
});
