/** How numbers, names and pasted text stand in the engine's sentences. */
import { describe, expect, it } from 'vitest';
import { quoted } from '../../widgets/engine/index.ts';
import { asRead, listed, say } from '../../widgets/engine/kernel/say.ts';

describe('say', () => {
  for (const [x, digits, text] of [
    [-0.083333, undefined, '−0.08333'],
    [87.5, undefined, '87.5'],
    [12345.6, undefined, '12350'],
    [12345.6, 2, '12000'],
    [0, undefined, '0'],
    [-0, undefined, '0'],
    [1e-6, undefined, '0.000001'],
    [9.994e-7, 3, 'under 0.000001'],
    [-5e-324, undefined, '−under 0.000001'],
    [1e20, undefined, '100000000000000000000'],
    [1e21, undefined, 'more than any real one'],
  ] as const)
    it(`writes ${x} to ${digits ?? 4} digits as ${text}`, () => expect(say(x, digits)).toBe(text));
});

describe('asRead', () => {
  it('keeps every digit of a number and gives it a true minus', () => {
    expect([-120.0000001, -0, 5e-7, Number.NaN, -1 / 0].map(asRead)).toEqual([
      '−120.0000001',
      '0',
      '0.0000005',
      'NaN',
      '−Infinity',
    ]);
  });

  it('has no exponent, however large or small the number', () => {
    expect([1e21, -1e200, 1e20].map(asRead)).toEqual([
      'more than 1000000000000',
      'less than −1000000000000',
      '100000000000000000000',
    ]);
    expect([-2.5e-8, 1e-12, 9e-13, -5e-324].map(asRead)).toEqual([
      '−0.000000025',
      '0.000000000001',
      'just above 0',
      'just below 0',
    ]);
  });

  it('leaves what is no number as it is, forty characters of it', () => {
    expect(asRead('3-4')).toBe('3-4');
    expect(asRead('x'.repeat(50))).toBe('x'.repeat(40));
    expect(asRead(undefined)).toBe('undefined');
  });
});

describe('listed', () => {
  it('joins names with commas and a last “and”', () => {
    expect([[], ['A'], ['A', 'B'], ['A', 'B', 'C']].map(listed)).toEqual(['', 'A', 'A and B', 'A, B and C']);
  });
});

describe('quoted', () => {
  it('keeps up to forty characters, and says of more how many there were', () => {
    const forty = 'x'.repeat(40);
    expect(quoted(forty)).toBe(`“${forty}”`);
    expect(quoted(`${forty}x`)).toBe(`“${'x'.repeat(32)}…” (41 characters)`);
    expect(quoted('🔩'.repeat(40))).toBe(`“${'🔩'.repeat(40)}”`);
    expect(quoted(' a\n\t b  ')).toBe('“a b”');
  });

  it('shows that there is more where a long blank hides it', () => {
    expect(quoted(`1.5${' '.repeat(300)}mm`)).toBe('“1.5…” (305 characters)');
  });
});
