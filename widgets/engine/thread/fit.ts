/**
 * The fit a designation stands for: its screw in its nut, and the clearance that is left between the pieces.
 *
 * `M10×1.5-6H/6g` and `3/8-16 UNC-2B/2A` name both sides; a side that is left out has its everyday class
 * (designated-limits.ts). Lengths mm; clearances diametral, D2 − d2.
 */

import { type Millimetres, mm } from '../kernel/quantity.ts';
import { good, type Result } from '../kernel/result.ts';
import { nutLimits, screwLimits } from './designated-limits.ts';
import type { Thread } from './thread.ts';
import { clearanceOfPair, type ExternalLimits, type InternalLimits, type PairClearance } from './tolerance.ts';

export interface ThreadFit {
  readonly screw: ExternalLimits;
  readonly nut: InternalLimits;
  readonly clearance: PairClearance;
  /** Both classes, nut first, as drawings write them: `6H/6g`. */
  readonly classes: string;
  /** Whether a class was left out and the everyday one taken. */
  readonly assumed: boolean;
}

/** Screw and nut of a thread by its class, and the clearance between them. */
export const fitOfThread = (thread: Thread): Result<ThreadFit> => {
  let fit = known.get(thread);
  if (fit === undefined) {
    fit = worked(thread);
    known.set(thread, fit);
  }
  return fit;
};

/** Worked out once a thread: play, steps and drawings of a page ask for it on every frame of a drag. */
const known = new WeakMap<Thread, Result<ThreadFit>>();

const worked = (thread: Thread): Result<ThreadFit> => {
  const outside = screwLimits(thread);
  if (!outside.ok) return outside;
  const inside = nutLimits(thread);
  if (!inside.ok) return inside;
  const [screw, nut] = [outside.value.limits, inside.value.limits];
  const clearance = clearanceOfPair(screw, nut);
  if (!clearance.ok) return clearance;
  return good({
    screw,
    nut,
    clearance: clearance.value,
    classes: `${nut.cls}/${screw.cls}`,
    assumed: !(outside.value.stated && inside.value.stated),
  });
};

/** Which pieces of the zones meet: the largest screw in the smallest nut, both in the middle, or the other way. */
export type Pieces = 'tightest' | 'middling' | 'loosest';

/** Pitch-diameter clearance that these pieces leave; negative is interference. */
export const clearanceOfPieces = ({ clearance: { pitch } }: ThreadFit, pieces: Pieces): Millimetres =>
  pieces === 'tightest' ? pitch.least : pieces === 'loosest' ? pitch.most : mm((pitch.least + pitch.most) / 2);
