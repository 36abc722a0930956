/** Printed springs as they are asked for: in the order wished, with their force over the stroke and after a time, and their scatter. */
import { describe, expect, it } from 'vitest';
import { type SpringNumbers, springsOf } from '../../widgets/assembly/spring/spring-of.ts';
import { PLASTICS } from '../../widgets/engine/index.ts';
import { CHAPTERS } from '../support/chapters.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const VALUES: SpringNumbers['values'] = {
  F_k: 6,
  u_f: 2,
  S_w: 0.3,
  l_f: 40,
  w_f: 24,
  b_f: 10,
  w_l: 0.45,
  E_f: 2077,
  eps_m: 0.02,
  t_e: 0.1,
  q_r: 0.09,
  t: 999 / 60,
  N_f: 2,
  r_k: 15,
};
const asked = (choices: Partial<SpringNumbers['choices']> = {}, values: Partial<SpringNumbers['values']> = {}) =>
  springsOf({
    values: { ...VALUES, ...values },
    choices: { plastic: 'as measured', ranked: 'least strain', ...choices },
  });

describe('the springs that do it', () => {
  it.each([
    ['least strain', (s) => s.design.strain],
    ['least scatter', (s) => s.scatter.thicker],
    ['smallest', (s) => s.design.width * s.design.free],
  ] as const satisfies readonly (readonly [
    SpringNumbers['choices']['ranked'],
    (s: ReturnType<typeof found>[number]) => number,
  ])[])('stand by %s', (ranked, by) => {
    const ranks = found(ranked).map(by);
    expect(ranks.length).toBeGreaterThan(3);
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
    expect(new Set(ranks).size).toBeGreaterThan(1);
  });

  it('of one rank stand by their strain', () => {
    const all = found('smallest');
    for (const [i, s] of all.entries()) {
      const next = all[i + 1];
      if (next && next.design.width * next.design.free === s.design.width * s.design.free)
        expect(s.design.strain).toBeLessThanOrEqual(next.design.strain);
    }
  });

  it('all have the force at the mark, and half a stroke of their rate less and more at its ends', () => {
    const { springs, force } = valueIn(asked());
    // Hooke: the rate is the force over the stretch.
    expect(force.mark).toBe(6);
    for (const { design } of springs) expect(design.k).toBeCloseTo(6 / 2, 6);
    expect(force.least).toBeCloseTo(6 - 3 * 0.15, 6);
    expect(force.most).toBeCloseTo(6 + 3 * 0.15, 6);
  });

  it('lose the same share in each tenfold time, from a minute on', () => {
    // With the minute before, a thousand minutes: three tenfold times.
    expect(valueIn(asked()).force.later).toBeCloseTo(6 * (1 - 3 * 0.09), 9);
  });

  it('scatter with the cube of their thickness, whichever way the error is stated', () => {
    for (const t_e of [0.1, -0.1])
      for (const { design, scatter } of valueIn(asked({}, { t_e })).springs) {
        expect(scatter.thicker).toBeCloseTo((1 + 0.1 / design.t) ** 3 - 1, 9);
        expect(scatter.thinner).toBeCloseTo((1 - 0.1 / design.t) ** 3 - 1, 9);
      }
  });

  it('take modulus and loss of a plastic from its table, the middle of its range; of no other name', () => {
    for (const { name, E, loss } of PLASTICS) {
      const of = valueIn(asked({ plastic: name as SpringNumbers['choices']['plastic'] }, { eps_m: 0.05 }));
      expect(of.E).toBe(E[1]);
      expect(of.loss).toBeCloseTo((loss[0] + loss[1]) / 2, 12);
      expect(of.plastic?.name).toBe(name);
    }
    const own = valueIn(asked());
    expect([own.E, own.loss, own.plastic]).toEqual([2077, 0.09, undefined]);
    expect(reasonIn(asked({ plastic: 'toffee' as never }))).toMatch(/toffee.*PLA/s);
  });
});

it('the chapter on printed springs tells the range of PLA as the table has it, and how far a rate may be off for it', () => {
  const text = CHAPTERS.find(({ file }) => file.endsWith('22-printed-springs.md'))?.text ?? '';
  const [, least, most, off] =
    /printed PLA runs from (\d+) to (\d+) MPa.*?good to about \{\{! (\d+) %\}\}/s.exec(text) ?? [];
  const [low, middle, high] = PLASTICS.find(({ name }) => name === 'PLA')?.E ?? [0, 0, 0];
  expect([Number(least), Number(most)]).toEqual([low, high]);
  const worst = Math.max(high / middle - 1, 1 - low / middle);
  // Up to the next ten per cent.
  expect(Number(off)).toBe(10 * Math.ceil(10 * worst));
});

function found(ranked: SpringNumbers['choices']['ranked']) {
  return valueIn(asked({ ranked })).springs;
}
