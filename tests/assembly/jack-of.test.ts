/** The jack of the chapter on side pushes, as its numbers make it: what its shank adds, and what the page says of it. */
import { describe, expect, it } from 'vitest';
import { type JackNumbers, jackOf } from '../../widgets/assembly/jack-of.ts';
import { runJack } from '../../widgets/engine/index.ts';
import { startOf } from '../support/figure-numbers.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const start = startOf('pushed-jack').numbers as unknown as JackNumbers;
const jack = (over: { readonly values?: object; readonly choices?: object } = {}) =>
  valueIn(
    jackOf({
      ...start,
      values: { ...start.values, ...over.values },
      choices: { ...start.choices, ...over.choices },
    }),
  );

describe('the shank of the jack as built', () => {
  it('reaches from thread to thread, as thick as the thinner core, and is none where one thread lies inside the other', () => {
    // Thread A ends 20 mm above the bench, thread C begins at 36.2; the core of 3/8-16 is 7.577 mm.
    expect(jack().shank).toMatchObject({
      length: expect.closeTo(16.2, 9),
      middle: expect.closeTo(28.1, 9),
      diameter: expect.closeTo(7.577, 3),
    });
    expect(jack({ choices: { arrangement: 'nested' } }).shank).toBeUndefined();
  });

  it('adds about a tenth to what the push does, or less, as the page says', () => {
    for (const guided of ['in a guide', 'without a guide']) {
      const built = jack({ choices: { guided } });
      const moves = (shank: (typeof built)['shank']) => {
        const x = (push: number) => valueIn(runJack({ ...built, shank, push }, [0]))[0]?.x ?? 0;
        return x(2) - x(0);
      };
      const share = 1 - moves(undefined) / moves(built.shank);
      expect(share).toBeGreaterThan(0.01);
      expect(share).toBeLessThan(0.13);
    }
  });
});

describe('the lead errors of the jack as built', () => {
  it('are each of its own screw or nut', () => {
    const built = jack({ values: { eps_A: 1e-3, eps_nA: 2e-3, eps_C: 3e-3, eps_nC: 4e-3 } });
    const of = ({ screw, nut }: typeof built.A) => [screw.leadError, nut.leadError];
    expect([...of(built.A), ...of(built.C)]).toEqual([1e-3, 2e-3, 3e-3, 4e-3]);
  });
});

describe('parts of the jack as built that do not stand on each other', () => {
  it.each([
    [{ H_C: 26.4 }, 'thread C begins at 19 mm'],
    [{ H_t: 49 }, 'put the tip higher'],
    [{ R_i: 15 }, 'ring'],
  ])('are refused with the part to change: %o', (values, says) => {
    expect(reasonIn(jackOf({ ...start, values: { ...start.values, ...values } }))).toContain(says);
  });

  it('may lie inside each other where they are nested', () => {
    expect(jack({ values: { H_C: 24 }, choices: { arrangement: 'nested' } }).C.middle).toBe(24);
  });
});

describe('a jack as built that finds no rest', () => {
  const run = (values: object, choices: object = {}) =>
    runJack(
      jack({ values, choices }),
      Array.from({ length: 13 }, (_, i) => i / 24),
    );

  it('tips by friction alone, and so is locked by it and not by the push', () => {
    expect(reasonIn(run({ mu: 0.4, mu_g: 0.5, r_k: 1.5 }))).toContain('friction locks the jack');
    expect(reasonIn(run({ Q_y: 45 }, { guided: 'without a guide' }))).toContain('the base tips on its ring');
  });

  it('goes round with the hand where the springs of its lock are too soft', () => {
    expect(reasonIn(run({ kappa: 1 }, { keeper: 'springs' }))).toContain('make them stiffer');
  });
});

describe('springs of the jack as built', () => {
  it('press both threads by their pull, and are none where they pull with nothing', () => {
    expect(jack().springs).toBeUndefined();
    expect(jack({ values: { F_0: 30, k_s: 2 } }).springs).toEqual({ force: 30, rate: 2 });
  });
});
