/** Listen, die getippt werden, mit ihren deutschen Wörtern. */
import type { TypedEdge } from '../typed-words.ts';
import { LISTS } from './lists.ts';

export const TYPED: Readonly<Record<string, TypedEdge>> = LISTS;
