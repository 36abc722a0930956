/** How an assembly stands, and what that makes of the weights of its parts. */
import type { OptionOf } from '../input/choices.ts';

export type Attitude = OptionOf<'attitude'>;

/** Share of a weight along the axis, towards the base is plus. */
export const ATTITUDES: Readonly<Record<Attitude, number>> = { upright: 1, 'on its side': 0, 'upside down': -1 };
