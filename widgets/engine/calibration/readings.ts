/** One reading of a run: where it was taken, what the indicator showed, and from which side the place was approached. */
import type { Millimetres, Turns } from '../kernel/quantity.ts';

/** How a place was approached: with the turns rising or falling. */
export type Direction = 'up' | 'down';

export interface ReadingRow {
  /** Line of the text it came from, counted from 1. */
  readonly line: number;
  readonly turns: Turns;
  readonly reading: Millimetres;
  readonly direction: Direction;
}

export type PositionUnit = 'turns' | 'steps' | '°';
