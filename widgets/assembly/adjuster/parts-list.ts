/** What is to be made or bought for an adjuster: its parts with the counts and prices they state, and ball, springs, key or post where it has them. */
import { WORDS } from '#words/adjuster.ts';
import { type PartsList, totalled } from '../../input/parts-list.ts';
import { type Adjuster, type Lock, partsOf, type Springs, type Tip } from './adjuster.ts';
import type { Part } from './part.ts';

/** What has a line in a list of parts and a balloon on a drawing, in the order of both. */
export type Item =
  | { readonly kind: 'part'; readonly part: Part }
  | { readonly kind: 'ball'; readonly tip: Extract<Tip, { kind: 'ball' }> }
  | { readonly kind: 'springs'; readonly springs: Springs }
  | { readonly kind: 'lock'; readonly lock: Extract<Lock, { kind: 'key' | 'post' }> };

export const itemsOf = (adjuster: Adjuster): readonly Item[] => {
  const { tip, springs, lock } = adjuster;
  return [
    ...partsOf(adjuster).map((part): Item => ({ kind: 'part', part })),
    ...(tip.kind === 'ball' ? [{ kind: 'ball', tip } as const] : []),
    ...(springs ? [{ kind: 'springs', springs } as const] : []),
    ...(lock.kind === 'key' || lock.kind === 'post' ? [{ kind: 'lock', lock } as const] : []),
  ];
};

export const countOf = (item: Item): number =>
  item.kind === 'part' ? item.part.count : item.kind === 'springs' ? item.springs.count : 1;

export const partsListOf = (adjuster: Adjuster): PartsList =>
  totalled(
    itemsOf(adjuster).map((item) => ({
      name: nameOf(item),
      count: countOf(item),
      price: item.kind === 'part' ? item.part.price : undefined,
    })),
  );

const nameOf = (item: Item): string => {
  switch (item.kind) {
    case 'part':
      return WORDS.list.part(item.part.kind, threadsOf(item.part));
    case 'ball':
      return WORDS.list.ball(item.tip.diameter);
    case 'springs':
      return WORDS.list.spring;
    case 'lock':
      return WORDS.list.lock[item.lock.kind];
  }
};

const threadsOf = ({ below, above }: Part): readonly string[] =>
  [below, above].flatMap((end) => (end ? [end.thread.designation] : []));
