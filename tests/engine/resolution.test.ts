/** Counting in steps: what can’t be counted is refused, and the least that can is not. */
import { describe, expect, it } from 'vitest';
import { divisionsFor, mm, perAngle, rad, stepsFor } from '../../widgets/engine/index.ts';
import { reasonIn, valueIn } from '../support/results.ts';

describe('counting in steps', () => {
  it('0.1 mm at 12.5 µm a step is 8 steps up, and 8 steps down for 0.1 mm down', () => {
    expect(valueIn(stepsFor.of({ w: mm(0.1), s: mm(0.0125) })).m).toBeCloseTo(8, 12);
    expect(valueIn(stepsFor.of({ w: mm(-0.1), s: mm(0.0125) })).m).toBeCloseTo(-8, 12);
  });

  it('87.5 µm a turn is 35 divisions of 2.5 µm, for a pair that runs either way', () => {
    for (const Delta of [0.0875, -0.0875])
      expect(valueIn(divisionsFor.of({ Delta: mm(Delta), v: mm(0.0025) })).m).toBeCloseTo(35, 12);
  });

  it('an angle turned back moves as much the other way', () => {
    expect(valueIn(perAngle.of({ Delta: mm(0.36), theta: rad(-Math.PI / 180) })).s).toBeCloseTo(-0.001, 12);
  });

  for (const step of [0, -0.0125]) {
    it(`a step or a division of ${step} mm counts nothing, and is refused`, () => {
      expect(reasonIn(stepsFor.of({ w: mm(0.1), s: mm(step) }))).toContain('motion per step must be more than zero');
      expect(reasonIn(divisionsFor.of({ Delta: mm(0.0875), v: mm(step) }))).toContain(
        'motion per division must be more than zero',
      );
    });
  }
});
