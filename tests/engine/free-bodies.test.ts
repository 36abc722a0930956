/**
 * The force chain against three bodies that are cut free and let find their own places: flanks that only push, springs that pull or
 * push at their two ends, and gravity, in every attitude. Nothing of the engine is used to find where the bodies come to rest; which
 * flank touches is read off their places. z is up along the axis, away from the base; z forces here are positive up.
 */
import { describe, expect, it } from 'vitest';
import {
  flankUnder,
  forceChain,
  newtons,
  type Part,
  type PreloadSpring,
  threadForces,
} from '../../widgets/engine/index.ts';
import { valueIn } from '../support/results.ts';

/** Stiffness of a flank, N/mm, and half the play of each thread, mm. */
const FLANK = 1e5;
const HALF_PLAY = 0.05;
const WEIGHT = { turned: 0.6, carried: 8 };

/** What the flanks of a thread do to its upper part, N up, where that stands off the middle of its play: a wall below, one above. */
const wall = (off: number): number =>
  off < -HALF_PLAY ? FLANK * (-HALF_PLAY - off) : off > HALF_PLAY ? -FLANK * (off - HALF_PLAY) : 0;

/** What a spring of this force does to a part, N up: a pull is towards the other end, a push away from it. */
const springUpOn = (part: Part, { lower, upper, kind, force }: PreloadSpring): number => {
  if (part !== lower && part !== upper) return 0;
  const otherIsAbove = part === lower;
  return (kind === 'pull') === otherIsAbove ? force : -force;
};

/** How far the axis leans from the vertical, and the share of a weight along it that the engine is told. */
const ATTITUDES = [
  ['upright', 0, 1],
  ['leaning by 60°', Math.PI / 3, 0.5],
  ['on its side', Math.PI / 2, 0],
  ['upside down', Math.PI, -1],
] as const;

/** Where turned and carried part come to rest: each is moved in turn until the forces on it balance. */
const atRest = (springs: readonly PreloadSpring[], lean: number, pullAtTop: number) => {
  // The share of gravity along the axis, pointing down it where the axis stands upright.
  const along = Math.cos(lean);
  const upOnTurned = springs.reduce((sum, s) => sum + springUpOn('turned', s), 0) - WEIGHT.turned * along;
  const upOnCarried =
    springs.reduce((sum, s) => sum + springUpOn('carried', s), 0) - WEIGHT.carried * along + pullAtTop;
  const balance = (force: (z: number) => number): number => {
    let [low, high] = [-1, 1];
    for (let i = 0; i < 80; i++) {
      const middle = (low + high) / 2;
      if (force(middle) > 0) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  };
  // Both parts hang on the base through thread A alone.
  const turned = balance((z) => wall(z) + upOnTurned + upOnCarried);
  const relative = balance((z) => wall(z) + upOnCarried);
  return { A: turned, C: relative };
};

const touches = (off: number) =>
  off < -HALF_PLAY ? 'pressed' : off > HALF_PLAY ? 'pulled' : (undefined as 'pressed' | 'pulled' | undefined);

const PLACES: readonly (readonly [Part, Part])[] = [
  ['base', 'turned'],
  ['base', 'carried'],
  ['turned', 'carried'],
];

describe('forces across the threads', () => {
  for (const [attitude, lean, share] of ATTITUDES)
    for (const [lower, upper] of PLACES)
      for (const kind of ['pull', 'push'] as const)
        it(`${attitude}, a spring that would ${kind} between ${lower} and ${upper}: size, sign and flank are those of bodies cut free`, () => {
          for (const pullAtTop of [0, 20, -20]) {
            const spring: PreloadSpring = { lower, upper, kind, force: 30, rate: 2 };
            const rest = atRest([spring], lean, pullAtTop);
            const forces = threadForces(
              {
                h_A: 1,
                L_A: 1.5,
                h_C: 1,
                L_C: 1.5875,
                springs: [spring],
                weightTurned: WEIGHT.turned,
                weightCarried: WEIGHT.carried,
                attitude: share,
                load: { least: -pullAtTop, most: -pullAtTop },
                from: 0,
                to: 0,
                margin: 0,
              },
              0,
              -pullAtTop,
            );
            const towardsBase = (part: Part) => newtons(-springUpOn(part, spring));
            // The relation takes weights as they act along the axis upright, so it is asked there only.
            const related =
              share === 1
                ? valueIn(
                    forceChain.of({
                      F_o: newtons(-pullAtTop),
                      W_c: newtons(WEIGHT.carried),
                      W_t: newtons(WEIGHT.turned),
                      f_c: towardsBase('carried'),
                      f_t: towardsBase('turned'),
                    }),
                  )
                : undefined;
            for (const thread of ['A', 'C'] as const) {
              // What the lower part pushes up on the upper one is what the upper one presses down with.
              expect(forces[thread], thread).toBeCloseTo(wall(rest[thread]), 5);
              if (Math.abs(forces[thread]) > 1e-6)
                expect(flankUnder(forces[thread]), thread).toBe(touches(rest[thread]));
              else expect(touches(rest[thread])).toBeUndefined();
            }
            if (related) {
              expect(related.F_A).toBeCloseTo(wall(rest.A), 5);
              expect(related.F_C).toBeCloseTo(wall(rest.C), 5);
            }
          }
        });
});
