/** What is to be made or bought for an adjuster: its parts with the counts and prices they state, and ball, springs, key or post where it has them. */
import { WORDS } from '#words/adjuster.ts';
import { type PartLine, type PartsList, totalled } from '../../input/parts-list.ts';
import { type Adjuster, partsOf } from './adjuster.ts';
import type { Part } from './part.ts';

export const partsListOf = (adjuster: Adjuster): PartsList => {
  const { tip, springs, lock } = adjuster;
  const unpriced = (name: string, count: number): PartLine => ({ name, count, price: undefined });
  return totalled([
    ...partsOf(adjuster).map(
      (part): PartLine => ({ name: WORDS.list.part(part.kind, threadsOf(part)), count: part.count, price: part.price }),
    ),
    ...(tip.kind === 'ball' ? [unpriced(WORDS.list.ball(tip.diameter), 1)] : []),
    ...(springs ? [unpriced(WORDS.list.spring, springs.count)] : []),
    ...(lock.kind === 'key' || lock.kind === 'post' ? [unpriced(lock.kind, 1)] : []),
  ]);
};

const threadsOf = ({ below, above }: Part): readonly string[] =>
  [below, above].flatMap((end) => (end ? [end.thread.designation] : []));
