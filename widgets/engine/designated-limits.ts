/**
 * Limits of size from a designation alone: the class written in it, or the everyday class where none is.
 *
 * A designation may carry a class for the screw (`M10×1.5-6g`), for the nut (`M10×1.5-6H`), or for both (`M10×1.5-6H/6g`). Which
 * everyday class is taken stands in `usualClasses` of tolerance.ts: 6g and 6H, 2A and 2B. Lengths mm.
 */
import { bad, good, type Result } from './result.ts';
import type { Thread } from './thread.ts';
import { type ExternalLimits, type InternalLimits, limitsOfSize, usualClasses } from './tolerance.ts';
import { readIsoClass } from './tolerance-iso.ts';
import { isUnifiedClass } from './tolerance-unified.ts';

type Side = 'external' | 'internal';
const WORD = { external: 'screw', internal: 'nut' } as const;

export interface Designated<L> {
  readonly limits: L;
  /** Whether the class was written; otherwise it is the everyday one. */
  readonly stated: boolean;
}

/** Limits of the screw of this designation. `strict` refuses a designation that carries a class of the nut only. */
export const screwLimits = (thread: Thread, strict = false): Result<Designated<ExternalLimits>> => {
  const read = designated(thread, 'external', strict);
  if (!read.ok) return read;
  const { limits, stated } = read.value;
  return limits.side === 'external' ? good({ limits, stated }) : wrongSide(thread, 'external');
};

/** Limits of the nut of this designation. `strict` refuses a designation that carries a class of the screw only. */
export const nutLimits = (thread: Thread, strict = false): Result<Designated<InternalLimits>> => {
  const read = designated(thread, 'internal', strict);
  if (!read.ok) return read;
  const { limits, stated } = read.value;
  return limits.side === 'internal' ? good({ limits, stated }) : wrongSide(thread, 'internal');
};

const designated = (thread: Thread, side: Side, strict: boolean) => {
  const written = thread.toleranceClass?.split('/') ?? [];
  const own = written.find((cls) => sideOf(cls) === side);
  if (own === undefined && written.length > 0 && strict) return wrongSide(thread, side);
  const cls = own ?? usualClasses(thread, side)[0] ?? EVERYDAY[side][thread.kind === 'unified' ? 1 : 0];
  const limits = limitsOfSize(thread, cls);
  return limits.ok ? good({ limits: limits.value, stated: own !== undefined }) : limits;
};

/** Tried where no class exists for the thread, so that the reader gets the standard's own reason. */
const EVERYDAY = { external: ['6g', '2A'], internal: ['6H', '2B'] } as const;

const sideOf = (cls: string): Side | undefined => {
  const unified = cls.toUpperCase();
  if (isUnifiedClass(unified)) return unified.endsWith('A') ? 'external' : 'internal';
  const read = readIsoClass(cls);
  return read.ok ? read.value.side : undefined;
};

const wrongSide = (thread: Thread, side: Side) => {
  const [own, other] = side === 'external' ? (['screw', 'nut'] as const) : (['nut', 'screw'] as const);
  const examples = EVERYDAY[side].join(' or ');
  return bad(
    `${thread.designation} carries a class of the ${other}, and this is the ${own}: a ${WORD[side]} takes one like ${examples}; write that, or leave the class out.`,
  );
};
