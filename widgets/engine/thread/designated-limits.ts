/**
 * Limits of size from a designation alone: the class written in it, or the everyday class where none is.
 *
 * A designation may carry a class for the screw (`M10×1.5-6g`), for the nut (`M10×1.5-6H`), or for both (`M10×1.5-6H/6g`, ISO 965-1,
 * designation of a fit). Where the side asked for has none, the everyday class is taken: 6g and 6H, 2A and 2B. A pitch diameter that was
 * measured (`M10×1.5 d2 8.95`, D2 for the nut) stands in place of that of the class; the other diameters stay those of the class. Lengths mm.
 */

import { mm } from '../kernel/quantity.ts';
import { good, type Result } from '../kernel/result.ts';
import type { MeasuredZone, Thread } from './thread.ts';
import { type ExternalLimits, type InternalLimits, type Limits, limitsOfSize } from './tolerance.ts';
import { readIsoClass } from './tolerance-iso.ts';
import { isUnifiedClass } from './tolerance-unified.ts';

export interface Designated<L> {
  readonly limits: L;
  /** Whether the class was written; otherwise it is the everyday one. */
  readonly stated: boolean;
}

/** Limits of the screw of this designation. */
export const screwLimits = (thread: Thread): Result<Designated<ExternalLimits>> => onSide(thread, 'external');

/** Limits of the nut of this designation. */
export const nutLimits = (thread: Thread): Result<Designated<InternalLimits>> => onSide(thread, 'internal');

const onSide = <S extends Limits['side']>(
  thread: Thread,
  side: S,
): Result<Designated<Extract<Limits, { side: S }>>> => {
  const written = classOfSide(thread, side);
  const [usual, ...finer] = written === undefined ? everyday(thread, side) : ([written] as const);
  const first = limitsOfSize(thread, usual);
  const limits = first.ok ? first : (finer.map((cls) => limitsOfSize(thread, cls)).find(({ ok }) => ok) ?? first);
  if (!limits.ok) return limits;
  // A class of this side was asked for, so these are limits of this side.
  const ofClass = limits.value as Extract<Limits, { side: S }>;
  const measured = side === 'external' ? thread.measured?.screw : thread.measured?.nut;
  if (measured === undefined) return good({ limits: ofClass, stated: written !== undefined });
  const { min, max } = measured;
  const pitch = { min, max, tolerance: mm(max - min), basis: 'measured' } as const;
  return good({ limits: { ...ofClass, cls: measuredName(side, measured), pitch }, stated: true });
};

/** The class that a designation names for this side, if any. */
export const classOfSide = (thread: Thread, side: Limits['side']): string | undefined =>
  thread.toleranceClass?.split('/').find((cls) => sideOf(cls) === side);

/** Measured pitch diameters by the letters of ISO 965-1, as a designation has them: `d2 8.862–8.994`. */
export const measuredName = (side: Limits['side'], { min, max }: MeasuredZone): string => {
  const written = (x: number) => String(Number(x.toFixed(6)));
  return `${side === 'external' ? 'd2' : 'D2'} ${min === max ? written(min) : `${written(min)}–${written(max)}`}`;
};

/**
 * The everyday class, and those to take where the standard leaves its place blank for so fine a pitch. ISO 965-1 recommends 6h and 5H
 * up to M1.4, where 6g would leave too little and grade 6 of a nut is mostly blank (from memory).
 */
const everyday = (thread: Thread, side: Limits['side']): readonly [string, ...string[]] => {
  const screw = side === 'external';
  if (thread.kind === 'unified') return screw ? ['2A'] : ['2B'];
  if (thread.d <= 1.4) return screw ? ['6h'] : ['5H', '4H'];
  return screw ? ['6g'] : ['6H', '5H', '4H'];
};

const sideOf = (cls: string): Limits['side'] | undefined => {
  const unified = cls.toUpperCase();
  if (isUnifiedClass(unified)) return unified.endsWith('A') ? 'external' : 'internal';
  const read = readIsoClass(cls);
  return read.ok ? read.value.side : undefined;
};
