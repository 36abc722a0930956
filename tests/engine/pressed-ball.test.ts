/** A ball in a hexagon socket: its interference across the flats. */
import { expect, it } from 'vitest';
import { ballInterference, mm } from '../../widgets/engine/index.ts';
import { valueIn } from '../support/results.ts';

it('a 6.35 mm ball in a 6 mm socket, common practice, stands 0.35 mm over at most, and less in a wide socket', () => {
  const over = (flats: number) => valueIn(ballInterference.of({ D_b: mm(6.35), s_f: mm(flats) })).I_b;
  expect(over(6)).toBeCloseTo(0.35, 12);
  expect(over(6.14)).toBeCloseTo(0.21, 12);
  expect(over(6.4)).toBeCloseTo(-0.05, 12);
});
