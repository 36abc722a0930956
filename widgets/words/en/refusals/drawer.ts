/** Refusals of a drawer of parts. */
import { listed, quoted } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

export const DRAWER: RefusalWords<
  | 'drawer-too-long'
  | 'drawer-of-too-many-rows'
  | 'drawer-empty'
  | 'drawer-row-unread'
  | 'drawer-row-wrong'
  | 'drawer-of-too-many-stacks'
  | 'drawer-without-stack'
  | 'drawer-without-two-threads'
  | 'drawer-being-searched'
  | 'drawer-search-stopped'
> = {
  'drawer-too-long': ({ rows, characters, most }) =>
    `Read ${rows} rows, ${characters} characters; a drawer has at most ${most}: list the parts of a few threads only.`,
  'drawer-of-too-many-rows': ({ rows, most }) =>
    `Read ${rows} rows; a drawer has at most ${most}: list the parts of a few threads only.`,
  'drawer-empty': () =>
    'The drawer is empty: write a part a line, such as coupling nut 3/8-16 UNC, 30 mm; or standard metric.',
  'drawer-row-unread': ({ row, kinds }) =>
    `Read ${quoted(row)}; a row begins with the kind of part, ${listed(kinds)}, or is standard metric, standard inch or standard adapters.`,
  'drawer-row-wrong': ({ row, because }, behind) => `The row ${quoted(row)} can’t be used. ${behind(because)}`,
  'drawer-of-too-many-stacks': ({ stacks, most }) =>
    `These parts go together in ${stacks} ways, and at most ${most} are worked out: list fewer parts of the same thread.`,
  'drawer-without-stack': ({ tried, threads }) =>
    tried > 0
      ? `${tried} ways of putting these parts together were tried, and none leaves a stroke: keep less engagement, or add longer nuts and screws.`
      : `Nothing in the drawer goes together: a turned part needs a base${threads.length > 0 ? ` and a carried part with its own threads, ${listed(threads)}` : ', so add a stud, an adapter or a screw'}.`,
  'drawer-without-two-threads': ({ like: [outside, inside] }) =>
    `No part of the drawer has two threads of different leads, so nothing moves by their difference. Add one, such as this row: adapter ${outside} external 20 mm, ${inside} internal 20 mm.`,
  'drawer-search-stopped': ({ share }) => `You stopped the search when ${Math.floor(100 * share)} % was done.`,
  'drawer-being-searched': ({ share }) => `The drawer is being searched, ${Math.floor(100 * share)} % is done.`,
};
