/** What is to be made or bought for an adjuster: its parts with the counts and prices they state, and ball, springs, key or post where it has them. */
import { WORDS } from '#words/adjuster.ts';
import { type PartsList, totalled } from '../../input/parts-list.ts';
import { type Adjuster, type Lock, partsOf, type Springs, type Tip } from './adjuster.ts';
import type { Part } from './part.ts';
import { type Post, postOf } from './post.ts';

/** What has a line in a list of parts and a balloon on a drawing, in the order of both. */
export type Item =
  | { readonly kind: 'part'; readonly part: Part }
  | { readonly kind: 'ball'; readonly tip: Extract<Tip, { kind: 'ball' }> }
  | { readonly kind: 'springs'; readonly springs: Springs }
  | { readonly kind: 'lock'; readonly lock: Extract<Lock, { kind: 'key' | 'post' }>; readonly post: Post | undefined }
  /** The arm on the post, and the plate that holds it. */
  | { readonly kind: 'arm' | 'foot' };

export const itemsOf = (adjuster: Adjuster): readonly Item[] => {
  const { tip, springs, lock } = adjuster;
  const post = postOf(adjuster);
  const stated = lock.kind === 'key' || lock.kind === 'post';
  return [
    ...partsOf(adjuster).map((part): Item => ({ kind: 'part', part })),
    ...(tip.kind === 'ball' ? [{ kind: 'ball', tip } as const] : []),
    ...(springs ? [{ kind: 'springs', springs } as const] : []),
    ...(lock.kind === 'key' || lock.kind === 'post' ? [{ kind: 'lock', lock, post } as const] : []),
    ...(stated && post?.arm ? [{ kind: 'arm' } as const] : []),
    ...(stated && post?.foot ? [{ kind: 'foot' } as const] : []),
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
      return item.post
        ? WORDS.list.post(Number((2 * item.post.half).toFixed(2)), Number((item.post.top - item.post.low).toFixed(1)))
        : WORDS.list.lock[item.lock.kind];
    case 'arm':
    case 'foot':
      return WORDS.list[item.kind];
  }
};

const threadsOf = ({ below, above }: Part): readonly string[] =>
  [below, above].flatMap((end) => (end ? [end.thread.designation] : []));
