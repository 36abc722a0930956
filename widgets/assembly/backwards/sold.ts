/** Sizes in which a thing is sold, so that an answer can name the nearest of them: balls by their diameter or radius, drills by the hole they make. */
import { BALLS, type Millimetres, mm, nearestDrills, type SymbolName } from '../../engine/index.ts';

export type SoldThing = 'balls' | 'drills';

/** A size with the name by which it is bought, where that is not the size itself. */
interface SoldSize {
  readonly size: number;
  readonly name?: string;
}

export interface Sold {
  readonly thing: SoldThing;
  /** The nearest to a size, one or more. */
  readonly near: (size: number) => readonly SoldSize[];
}

const inch = (fraction: string | undefined) => (fraction === undefined ? {} : { name: `${fraction} in` });

const balls = (per: number): Sold => ({
  thing: 'balls',
  near: (size) =>
    BALLS.map((ball) => ({ size: ball.diameter * per, ...inch(ball.inch) }))
      .toSorted((a, b) => Math.abs(a.size - size) - Math.abs(b.size - size))
      .slice(0, 2),
});

const DRILLS: Sold = {
  thing: 'drills',
  near: (size) => {
    const { metric, inch: other } = nearestDrills(mm(size) as Millimetres);
    return [metric, other].flatMap((drill) => (drill ? [{ size: drill.size, name: drill.name }] : []));
  },
};

/** By the symbol of the size. */
const BY_SYMBOL: Readonly<Partial<Record<SymbolName, Sold>>> = { D_b: balls(1), R: balls(0.5), d_t: DRILLS };
const BY_THING: Readonly<Record<SoldThing, Sold>> = { balls: balls(1), drills: DRILLS };

export const soldAs = (symbol: SymbolName): Sold | undefined => BY_SYMBOL[symbol];
export const soldThing = (thing: SoldThing | undefined): Sold | undefined => thing && BY_THING[thing];
