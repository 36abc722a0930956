/** One number from others in any order, over the graph of all relations. */
import { describe, expect, it } from 'vitest';
import { solveAsked } from '../../widgets/assembly/backwards/ask.ts';
import { callsOf, chainTo, givenBy, RELATIONS, takenBy } from '../../widgets/engine/index.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const FOOT = ['A=M10x1.5', 'C=3/8-16 UNC'];

describe('what is found', () => {
  it.each([
    ['forwards, whatever the order', ['C=3/8-16 UNC', 'Delta', 'A=M10x1.5'], 'Delta', 0.0875, undefined],
    ['backwards from a known motion', ['n', ...FOOT, 'z_c=200 µm'], 'n', 16 / 7, 'z_c'],
    ['a lead from a wanted net lead', ['L_A', 'L_C=1.5875', 'h_A=1', 'h_C=1', 'Delta=100 µm'], 'L_A', 1.4875, 'Delta'],
    // ISO 724: d2 of M10 = 9.026 mm.
    ['a relation of one thread for it', ['d_2', 'thread=M10x1.5'], 'd_2', 10 - 0.6495190528383 * 1.5, undefined],
    ['a relation of one thread for either of a pair', ['L_A', 'P_A=1.5', 'N_A=2'], 'L_A', 3, undefined],
    ['a whole number', ['k', ...FOOT, 's=87.5 µm'], 'k', 1, 's'],
  ] as const)('%s', (_, words, unknown, value, from) => {
    const solved = valueIn(solveAsked(words));
    expect(solved.unknown).toBe(unknown);
    expect(solved.answers).toHaveLength(1);
    expect(solved.answers[0]?.value).toBeCloseTo(value, 9);
    expect(solved.backwardsFrom).toBe(from);
    expect(solved.chain.every(({ source }) => source.length > 10)).toBe(true);
  });

  it('two answers are both given', () => {
    const solved = valueIn(solveAsked(['Delta', 'k=6', 's=20 µm']));
    expect(solved.answers.map(({ value }) => value)).toEqual([expect.closeTo(-0.12, 9), expect.closeTo(0.12, 9)]);
  });

  it('with its ±: forwards, and backwards by the slope of the way back', () => {
    const forwards = valueIn(solveAsked(['z_c', 'Delta=87.5 µm ± 1 µm', 'n=2'])).answers[0];
    expect(forwards?.uncertainty?.standard).toBeCloseTo(2e-3 / Math.sqrt(3), 9);
    const back = valueIn(solveAsked(['n', ...FOOT, 'z_c=200 µm ± 2 µm'])).answers[0];
    expect(back?.uncertainty?.standard).toBeCloseTo(0.002 / Math.sqrt(3) / 0.0875, 6);
    expect(back?.uncertainty?.text).toBe('(2.286 ± 0.026)\u00a0turns');
  });

  it('a thread with a doubtful pitch moves all that comes from it', () => {
    const [answer] = valueIn(solveAsked(['z_t', 'A=M10x1.5 ± 3 µm', 'n=2'])).answers;
    expect(answer?.uncertainty?.standard).toBeCloseTo(0.006 / Math.sqrt(3), 9);
  });
});

describe('what is refused, with the closest that can be had', () => {
  it.each([
    [['n', 'k', ...FOOT], /one can be found from the others/],
    [FOOT, /Nothing is asked/],
    [['n', 'n=2'], /both known and asked for/],
    [['n', 'n2=2'], /“n2”/],
    [['n', ...FOOT, ...FOOT], /given twice/],
    [['n', ...FOOT], /comes nearest and still takes/],
    [['n', ...FOOT, 'z_c=200 N'], /200 N/],
    [['k', ...FOOT, 's=1 µm'], /the nearest is k = 88, which gives 0\.994318/],
    [['n', ...FOOT, 'Delta=100 µm', 'z_c=1 mm'], /contradicts itself.*87\.5\sµm by net-lead/],
    [['n', ...FOOT, 'z_c=200 µm ± 0'], /not above zero/],
  ] as const)('%j', (words, says) => {
    const reason = reasonIn(solveAsked(words));
    expect(reason).toMatch(says);
    expect(reason).toMatch(/^\S.*\.$/s);
  });

  it('knowns that agree contradict nothing', () => {
    expect(valueIn(solveAsked(['n', ...FOOT, 'Delta=87.5 µm', 'z_c=175 µm'])).answers[0]?.value).toBeCloseTo(2, 9);
  });
});

describe('the graph', () => {
  const calls = callsOf(RELATIONS);
  it('gives each chain in an order in which every call has what it takes', () => {
    const known = new Set(['P_A', 'N_A', 'P_C', 'N_C', 'h_A', 'h_C', 'n', 'k']);
    for (const wanted of ['z_c', 's', 'G_A', 'L_C'] as const) {
      const have = new Set(known);
      for (const call of chainTo(calls, known, wanted) ?? []) {
        for (const s of takenBy(call)) expect(have.has(s), `${wanted}: ${call.relation.name} takes ${s}`).toBe(true);
        for (const s of givenBy(call)) have.add(s);
      }
      expect(have.has(wanted)).toBe(true);
    }
  });
  it('walks no circle: what gives a symbol only by itself does not give it', () => {
    expect(chainTo(calls, new Set(['P']), 'd_2')).toBeUndefined();
  });
});
