/** The jack of the chapter on side pushes, as its numbers make it: what its shank adds, and what the page says of it. */
import { describe, expect, it } from 'vitest';
import { type JackNumbers, jackOf } from '../../widgets/assembly/jack-of.ts';
import { runJack } from '../../widgets/engine/index.ts';
import { startOf } from '../support/figure-numbers.ts';
import { valueIn } from '../support/results.ts';

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
    // Thread A ends 20 mm above the bench, thread C begins at 40; the core of 3/8-16 is 7.577 mm.
    expect(jack().shank).toMatchObject({ length: 20, middle: 30, diameter: expect.closeTo(7.577, 3) });
    expect(jack({ choices: { arrangement: 'nested' } }).shank).toBeUndefined();
    expect(jack({ values: { H_C: 25 } }).shank).toBeUndefined();
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

describe('springs of the jack as built', () => {
  it('press both threads by their pull, and are none where they pull with nothing', () => {
    expect(jack().springs).toBeUndefined();
    expect(jack({ values: { F_0: 30, k_s: 2 } }).springs).toEqual({ force: 30, rate: 2 });
  });
});
