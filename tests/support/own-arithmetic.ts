/** Designations and quantities read without the engine, for answers worked out again by another way. */
import type { Item } from '../../widgets/exercises/exercise.ts';

export interface Screw {
  readonly d: number;
  readonly P: number;
  readonly L: number;
  readonly h: number;
  readonly tpi: number;
}
export const INCH = 25.4;
/** Reads a designation without the engine: metric with pitch, lead and pitch, fraction and number sizes. */
export const screw = (text: string): Screw => {
  const h = / LH$/.test(text) ? -1 : 1;
  const metric = /^M([\d.]+)x(?:Ph([\d.]+)P)?([\d.]+)/.exec(text);
  if (metric) {
    const P = Number(metric[3]);
    return { d: Number(metric[1]), P, L: metric[2] === undefined ? P : Number(metric[2]), h, tpi: INCH / P };
  }
  const inch = /^(?:(\d+)\/(\d+)|(\d+))-(\d+)/.exec(text);
  if (!inch) throw new Error(text);
  const tpi = Number(inch[4]);
  const d = inch[3] === undefined ? Number(inch[1]) / Number(inch[2]) : 0.06 + 0.013 * Number(inch[3]);
  return { d: d * INCH, P: INCH / tpi, L: INCH / tpi, h, tpi };
};
/** The number at the head of a text, a fraction too. */
export const value = (text: string): number => {
  const [, sign = '', value = ''] = /^([-−]?)([\d./]+)/.exec(text) ?? [];
  const [top = '', bottom = '1'] = value.split('/');
  return ((sign === '' ? 1 : -1) * Number(top)) / Number(bottom);
};

/** What was drawn from the pools of an item, as the author wrote it. */
export const drawn =
  ({ exercise, picks }: Item) =>
  (name: string): string => {
    const at = exercise.pools.findIndex((p) => p.input.name === name);
    const text = exercise.pools[at]?.options[picks[at] ?? 0];
    if (text === undefined) throw new Error(`no pool ${name}`);
    return text;
  };
