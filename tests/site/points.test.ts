/** The points at which derivations are checked: within bounds, the same for ever, and without a pattern among the symbols. */
import { describe, expect, it } from 'vitest';
import { SYMBOLS, type SymbolName, symbolFact } from '../../widgets/engine/index.ts';
import { pointAt } from '../../widgets/site/points.ts';

const EVERY = Object.keys(SYMBOLS) as SymbolName[];

describe('pointAt', () => {
  it('stays within the glossary’s bounds for every symbol, and whole where only whole numbers make sense', () => {
    for (let i = 0; i < 50; i++)
      for (const [name, value] of Object.entries(pointAt(EVERY, i))) {
        const { min, max, whole } = symbolFact(name as SymbolName);
        expect(value, name).toBeGreaterThanOrEqual(min);
        expect(value, name).toBeLessThanOrEqual(max);
        if (whole) expect(Number.isInteger(value), name).toBe(true);
      }
  });

  it('gives the same point every time', () => {
    expect(pointAt(['x_1', 'y_1'], 7)).toEqual(pointAt(['x_1', 'y_1'], 7));
  });

  it('sets three places in a line hardly ever, whatever order the symbols are asked for in', () => {
    for (const order of [
      ['x_1', 'y_1', 'x_2', 'y_2', 'x_3', 'y_3'],
      ['F_1', 'F_2', 'F_3', 'x_1', 'x_2', 'x_3', 'y_1', 'y_2', 'y_3'],
      ['p_z', 'q_x', 'x_1', 'r_y', 'y_1', 'x_2', 'y_2', 'x_3', 'y_3'],
    ] as const) {
      let flat = 0;
      for (let i = 0; i < 200; i++) {
        const { x_1 = 0, y_1 = 0, x_2 = 0, y_2 = 0, x_3 = 0, y_3 = 0 } = pointAt(order, i);
        const twice = (x_2 - x_1) * (y_3 - y_1) - (x_3 - x_1) * (y_2 - y_1);
        const longest = Math.max(Math.hypot(x_2 - x_1, y_2 - y_1), Math.hypot(x_3 - x_1, y_3 - y_1));
        if (Math.abs(twice) < 1e-3 * longest ** 2) flat++;
      }
      expect(flat).toBeLessThan(10);
    }
  });
});
