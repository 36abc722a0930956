import { describe, expect, it } from 'vitest';
import { readCall } from '../../widgets/site/grammar.ts';
import { nearest } from '../../widgets/site/near.ts';
import { reasonIn } from '../support/results.ts';

describe('nearest', () => {
  it('finds a name with a letter too many, too few, another or two swapped', () => {
    const names = ['net-lead', 'net-motion', 'per-step', 'section'];
    for (const [typed, meant] of [
      ['nett-lead', 'net-lead'],
      ['net-moton', 'net-motion'],
      ['per-stpe', 'per-step'],
      ['sektion', 'section'],
      ['Per-Step', 'per-step'],
    ] as const)
      expect(nearest(typed, names), typed).toBe(meant);
  });
  it('guesses nothing that is far off', () => {
    expect(nearest('banana', ['net-lead', 'section'])).toBeUndefined();
    expect(nearest('', ['L', 'P'])).toBeUndefined();
    expect(nearest('l', ['L', 'P'])).toBe('L');
    expect(nearest('x'.repeat(1e5), ['net-lead'])).toBeUndefined();
  });
});

describe('a step of a chapter', () => {
  it('that names no relation is answered with the one that was meant', () => {
    expect(reasonIn(readCall('net-leed'))).toMatch(/did you mean net-lead\?/);
    expect(reasonIn(readCall('per-step -> Delt'))).toMatch(/did you mean Delta\?|kept as/);
    expect(reasonIn(readCall('zzzzzzzz-zzzz'))).toMatch(/npm run ask lists them/);
  });
});
