/** Lists that a reader types, by their names: in English their words are those that links and chapters keep. */
import type { TypedEdge } from '../typed-words.ts';

export const TYPED: Readonly<Record<string, TypedEdge>> = {};
