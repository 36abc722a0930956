/** How numbers are written on a page: unit, digits, minus. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { symbolFact } from '../../widgets/engine/index.ts';
import {
  formatOf,
  grouped,
  type NumberFormat,
  numeral,
  show,
  showInFormula,
  UNIT_VIEWS,
  withSign,
} from '../../widgets/input/format.ts';

/** The space before a unit does not break; plain here for reading. */
const plainly = (text: string): string => text.replace(/\u00a0/g, ' ');

describe('numeral', () => {
  const cases: readonly (readonly [value: number, digits: number | undefined, text: string])[] = [
    [0, undefined, '0'],
    [-0, undefined, '0'],
    [0, 4, '0'],
    [1, undefined, '1'],
    [1, 4, '1.000'],
    [-1, 4, '−1.000'],
    [-0.0833333, 4, '−0.08333'],
    [87.5, 4, '87.50'],
    [87.5, undefined, '87.5'],
    [100, undefined, '100'],
    [1000, 4, '1000'],
    [123456, undefined, '123460'],
    // ties go up in size, as on paper, although their binary is a hair below
    [1.5875, 4, '1.588'],
    [-1.5875, 4, '−1.588'],
    [1.005, 3, '1.01'],
    [0.285, 2, '0.29'],
    [2.5, 1, '3'],
    [1.4375, 4, '1.438'],
    [14.5833333, 4, '14.58'],
    // rounding that lengthens the number
    [9.9996, 4, '10.00'],
    [0.99999, 4, '1.000'],
    [999.96, 4, '1000'],
    [99.99999, undefined, '100'],
    // tiny and large, never with an exponent
    [1e-7, undefined, '0.0000001'],
    [1.23456e-9, 3, '0.00000000123'],
    [1e-15, undefined, '0'],
    [-1e-15, 4, '0'],
    [1e9, undefined, '1000000000'],
    [1.5e21, undefined, '1500000000000000000000'],
    [-1e24, 2, '−999999999999999983222784'],
    // what is no number has a mark, and never gets so far on a page
    [Number.NaN, undefined, '?'],
    [Number.POSITIVE_INFINITY, 4, '?'],
  ];
  for (const [value, digits, text] of cases)
    it(`writes ${Object.is(value, -0) ? '−0' : value} to ${digits ?? 'its own'} digits as ${text}`, () => {
      expect(numeral(value, digits)).toBe(text);
    });

  it('never has an exponent, a bare hyphen or a trailing dot, and reads back within half a unit of its last digit', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e9, max: 1e9, noNaN: true }),
        fc.option(fc.integer({ min: 1, max: 8 }), { nil: undefined }),
        (value, digits) => {
          const text = numeral(value, digits);
          expect(text).toMatch(/^−?\d+(\.\d+)?$/);
          const back = Number(text.replace('−', '-'));
          const step =
            Math.abs(value) < 1e-11 ? 1e-11 : 10 ** (Math.floor(Math.log10(Math.abs(value))) + 1 - (digits ?? 5));
          expect(Math.abs(back - value)).toBeLessThanOrEqual(Math.max(0.5000001 * step, 1e-12));
        },
      ),
    );
  });
});

describe('show', () => {
  const SIZE: NumberFormat = { shown: 'size' };
  const MOTION: NumberFormat = { shown: 'motion' };
  const motion = (digits: number): NumberFormat => ({ shown: 'motion', digits });
  const cases: readonly (readonly [value: number, format: NumberFormat, metric: string, inch: string, both: string])[] =
    [
      [0, MOTION, '0 µm', '0 thou', '0 µm (0 thou)'],
      [0, SIZE, '0 mm', '0 in', '0 mm (0 in)'],
      [1.5875, SIZE, '1.5875 mm', '0.0625 in', '1.5875 mm (0.0625 in)'],
      [1.5875, { shown: 'size', digits: 4 }, '1.588 mm', '0.06250 in', '1.588 mm (0.06250 in)'],
      [0.01, SIZE, '0.01 mm', '0.0003937 in', '0.01 mm (0.0003937 in)'],
      [0.0875, motion(4), '87.50 µm', '3.445 thou', '87.50 µm (3.445 thou)'],
      [-0.0875, motion(4), '−87.50 µm', '−3.445 thou', '−87.50 µm (−3.445 thou)'],
      // a millimetre and above is written in mm
      [1, MOTION, '1 mm', '39.37 thou', '1 mm (39.37 thou)'],
      [0.99996, motion(4), '1.000 mm', '39.37 thou', '1.000 mm (39.37 thou)'],
      [0.9999, motion(4), '999.9 µm', '39.37 thou', '999.9 µm (39.37 thou)'],
      [-1.5, motion(4), '−1.500 mm', '−59.06 thou', '−1.500 mm (−59.06 thou)'],
      // a tenth of an inch and above in inches
      [2.54, MOTION, '2.54 mm', '0.1 in', '2.54 mm (0.1 in)'],
      [2.53, motion(4), '2.530 mm', '99.61 thou', '2.530 mm (99.61 thou)'],
      // a thou and above in thou
      [0.0254, MOTION, '25.4 µm', '1 thou', '25.4 µm (1 thou)'],
      [0.0253, motion(3), '25.3 µm', '9.96 tenths', '25.3 µm (9.96 tenths)'],
      // a tenth and above in tenths
      [0.00254, MOTION, '2.54 µm', '1 tenths', '2.54 µm (1 tenths)'],
      [0.00253, motion(3), '2.53 µm', '99.6 millionths', '2.53 µm (99.6 millionths)'],
      [0.0000254, MOTION, '0.0254 µm', '1 millionths', '0.0254 µm (1 millionths)'],
      [0.000926, motion(3), '0.926 µm', '36.5 millionths', '0.926 µm (36.5 millionths)'],
      [25.4, SIZE, '25.4 mm', '1 in', '25.4 mm (1 in)'],
    ];
  for (const [value, format, metric, inch, both] of cases)
    it(`writes a ${format.shown} of ${value} mm${format.digits ? ` to ${format.digits} digits` : ''} as ${metric}, ${inch}`, () => {
      expect([
        plainly(show(value, format, 'metric')),
        plainly(show(value, format, 'inch')),
        plainly(show(value, format, 'both')),
      ]).toEqual([metric, inch, both]);
    });

  it('writes what is no length the same in every view', () => {
    for (const view of UNIT_VIEWS) {
      expect(show(Math.PI / 6, { shown: 'degrees' }, view)).toBe('30°');
      expect(show(-Math.PI / 6, { shown: 'degrees', digits: 4 }, view)).toBe('−30.00°');
      expect(plainly(show(0.025, { shown: 'percent' }, view))).toBe('2.5 %');
      expect(plainly(show(1, { shown: 'turns' }, view))).toBe('1 turn');
      expect(plainly(show(-1, { shown: 'turns' }, view))).toBe('−1 turn');
      expect(plainly(show(6.597, { shown: 'turns', digits: 3 }, view))).toBe('6.60 turns');
      expect(plainly(show(200, { shown: 'force' }, view))).toBe('200 N');
      expect(plainly(show(320, formatOf(symbolFact('M')), view))).toBe('320 N·mm');
      expect(plainly(show(355, formatOf(symbolFact('Y')), view))).toBe('355 MPa');
      expect(plainly(show(2, formatOf(symbolFact('k_s')), view))).toBe('2 N/mm');
      expect(plainly(show(-1.5, formatOf(symbolFact('Delta_T')), view))).toBe('−1.5 K');
      expect(plainly(show(24, formatOf(symbolFact('t')), view))).toBe('24 h');
      expect(show(1, { shown: 'sense' }, view)).toBe('right');
      expect(show(-1, { shown: 'sense' }, view)).toBe('left');
      expect(show(17.142857, { shown: 'plain', digits: 4 }, view)).toBe('17.14');
    }
  });

  it('keeps the number and its unit on one line', () => {
    expect(show(0.0875, { shown: 'motion' }, 'both')).toBe('87.5\u00a0µm (3.4449\u00a0thou)');
  });

  it('has no exponent, NaN or undefined for any size, in any view', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.constantFrom('size', 'motion', 'degrees', 'percent', 'turns', 'force', 'plain', 'sense' as const),
        fc.constantFrom(...UNIT_VIEWS),
        (value, shown, view) => {
          expect(show(value, { shown: shown as NumberFormat['shown'] }, view)).not.toMatch(
            /\de[+-]?\d|NaN|Infinity|undefined|\?/,
          );
        },
      ),
    );
  });
});

describe('withSign', () => {
  it('puts a plus before what is above nought and leaves nought, however it came about, without a sign', () => {
    const signed = (z: number) => plainly(withSign(show(z, { shown: 'motion', digits: 3 }, 'both')));
    expect([0.0875, -0.0875, 0, 1e-18].map(signed)).toEqual([
      '+87.5 µm (3.44 thou)',
      '−87.5 µm (−3.44 thou)',
      '0 µm (0 thou)',
      '0 µm (0 millionths)',
    ]);
  });
});

describe('grouped', () => {
  it('sets whole numbers in threes that no line break parts', () => {
    expect([0, 999, 1000, 20342, 1e7].map(grouped)).toEqual([
      '0',
      '999',
      '1\u202f000',
      '20\u202f342',
      '10\u202f000\u202f000',
    ]);
  });
});

describe('showInFormula', () => {
  it('writes hands as ±1, turns without their word and negatives in brackets', () => {
    expect(showInFormula(1, { shown: 'sense' }, 'metric')).toBe('(+1)');
    expect(showInFormula(-1, { shown: 'sense' }, 'metric')).toBe('(−1)');
    expect(showInFormula(2.5, { shown: 'turns' }, 'metric')).toBe('2.5');
    expect(showInFormula(-0.5, { shown: 'turns' }, 'metric')).toBe('(−0.5)');
    expect(plainly(showInFormula(-0.0875, { shown: 'motion' }, 'inch'))).toBe('(−3.4449 thou)');
  });
  it('has one unit only where both are asked for', () => {
    expect(plainly(showInFormula(1.5, { shown: 'size' }, 'both'))).toBe('1.5 mm');
  });
});

describe('formatOf', () => {
  it('takes the kind from the glossary', () => {
    expect(formatOf(symbolFact('L_A'))).toEqual({ shown: 'size' });
    expect(formatOf(symbolFact('Delta'), 4)).toEqual({ shown: 'motion', digits: 4 });
    expect(formatOf(symbolFact('n'))).toEqual({ shown: 'turns' });
    expect(formatOf(symbolFact('F'))).toEqual({ shown: 'force' });
    expect(formatOf(symbolFact('G_A'))).toEqual({ shown: 'plain' });
    expect(formatOf(symbolFact('h_A'))).toEqual({ shown: 'sense' });
  });
  it('knows a unit for every quantity of the glossary that has one', async () => {
    const { SYMBOLS } = await import('../../widgets/engine/index.ts');
    const bare = Object.entries(SYMBOLS).filter(([, fact]) => fact.unit !== '1' && formatOf(fact).shown === 'plain');
    expect(bare.map(([name, fact]) => `${name} in ${fact.unit}`)).toEqual([]);
  });
});
