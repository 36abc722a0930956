/**
 * What is wished of an adjuster from the drawer, which stacks meet it, and where none does, why, and what would have to give way.
 *
 * A stack takes the coarsest divider at hand that makes its step fine enough, else the finest. One that misses a wish misses it by a ratio (a step
 * twice too coarse: 2); the nearest stacks miss by the least product of ratios. The best edge holds what nothing beats: no other has both a step as
 * fine and a stroke as long.
 */
import type { Stack } from './stacks.ts';

export interface Wish {
  /** At most, mm. */
  readonly step: number;
  /** At least, mm. */
  readonly stroke: number;
  /** At most, mm, at mid-range. */
  readonly height: number;
  /** At most; stacks without a price are let through where it is undefined. */
  readonly price: number | undefined;
}
export type WishName = keyof Wish;
const NAMES: readonly WishName[] = ['step', 'stroke', 'height', 'price'];

export type Order = 'finest step' | 'longest stroke' | 'lowest' | 'cheapest' | 'least drift';

/** A stack with a divider. */
export interface Choice {
  readonly stack: Stack;
  readonly divisions: number;
  readonly step: number;
}

/** A wish given up alone: how far it must go for some stack to pass. */
export interface Way {
  readonly wish: WishName;
  readonly to: number;
  readonly choice: Choice;
}

/** Turns that step and stroke ask for, against the turns that the thread of a stack allows. */
export interface Turns {
  readonly steps: number;
  readonly divisions: number;
  /** At least: a finer net lead asks for more. */
  readonly asked: number;
  readonly most: Choice;
  /** Its thread that ends first: lead, usable length, and what the turns asked would use up. */
  readonly lead: number;
  readonly usable: number;
  readonly needed: number;
}

export type Answer =
  | { readonly kind: 'found'; readonly rows: readonly Choice[] }
  | {
      readonly kind: 'nothing';
      readonly nearest: readonly Choice[];
      readonly ways: readonly Way[];
      /** Where step and stroke together ask for more thread than there is. */
      readonly turns: Turns | undefined;
    };

const NEAREST = 3;

export const stepOf = (stack: Stack, divisions: number): number => Math.abs(stack.Delta) / divisions;

/** The divider that a stack is used with. Dividers are counts of steps in a turn, at least one. */
const choose = (stack: Stack, dividers: readonly number[], step: number): Choice => {
  const rising = [...dividers].sort((a, b) => a - b);
  const divisions = rising.find((k) => stepOf(stack, k) <= step * (1 + 1e-9)) ?? (rising.at(-1) as number);
  return { stack, divisions, step: stepOf(stack, divisions) };
};

const amount = ({ stack, step }: Choice, name: WishName): number | undefined =>
  name === 'step' ? step : name === 'stroke' ? stack.stroke : name === 'height' ? stack.height : stack.price;

/** By what ratio a wish is missed; 1 where it is met, without bound where nothing is known. */
const missed = (choice: Choice, wish: Wish, name: WishName): number => {
  const [wanted, has] = [wish[name], amount(choice, name)];
  if (wanted === undefined) return 1;
  if (has === undefined) return Number.POSITIVE_INFINITY;
  if (name === 'stroke') return has >= wanted * (1 - 1e-9) ? 1 : wanted / has;
  return has <= wanted * (1 + 1e-9) ? 1 : has / Math.max(wanted, 1e-9);
};

export const misses = (choice: Choice, wish: Wish): WishName[] =>
  NAMES.filter((name) => missed(choice, wish, name) > 1);

/** The smaller the better. */
const RANK: Readonly<Record<Order, (c: Choice) => number>> = {
  'finest step': (c) => c.step,
  'longest stroke': (c) => -c.stack.stroke,
  lowest: (c) => c.stack.height,
  cheapest: (c) => c.stack.price ?? Number.POSITIVE_INFINITY,
  'least drift': (c) => (c.stack.growth === undefined ? Number.POSITIVE_INFINITY : Math.abs(c.stack.growth)),
};

/** Infinity less infinity is no order: two without a price are alike. */
const compare = (a: number, b: number): number => (a < b ? -1 : a > b ? 1 : 0);

export const answerWish = (stacks: readonly Stack[], dividers: readonly number[], wish: Wish, order: Order): Answer => {
  const choices = stacks.map((stack) => choose(stack, dividers, wish.step));
  const rank = RANK[order];
  const rows = choices
    .filter((c) => misses(c, wish).length === 0)
    .sort((a, b) => compare(rank(a), rank(b)) || compare(a.stack.height, b.stack.height));
  if (rows.length > 0) return { kind: 'found', rows };
  const total = (c: Choice) => NAMES.reduce((product, name) => product * missed(c, wish, name), 1);
  const nearest = choices.map((c) => [total(c), c] as const).sort((a, b) => compare(a[0], b[0]));
  return {
    kind: 'nothing',
    nearest: nearest.slice(0, NEAREST).map(([, c]) => c),
    ways: NAMES.flatMap((name) => wayOf(choices, wish, name)),
    turns: turnsOf(choices, dividers, wish),
  };
};

/** The least that one wish must give up, all others held. */
const wayOf = (choices: readonly Choice[], wish: Wish, name: WishName): Way[] => {
  let best: Way | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const choice of choices) {
    const failed = misses(choice, wish);
    if (failed.length !== 1 || failed[0] !== name) continue;
    const by = missed(choice, wish, name);
    const to = amount(choice, name);
    if (to !== undefined && by < least) {
      least = by;
      best = { wish: name, to, choice };
    }
  }
  return best ? [best] : [];
};

const turnsOf = (choices: readonly Choice[], dividers: readonly number[], wish: Wish): Turns | undefined => {
  const divisions = Math.max(...dividers);
  const steps = wish.stroke / wish.step;
  const asked = steps / divisions;
  const most = choices.reduce((best, c) => (c.stack.turns > best.stack.turns ? c : best));
  if (!(asked > most.stack.turns)) return undefined;
  const { limiting, leads, usable } = most.stack;
  const [lead, room] = [leads[limiting] ?? leads.A, usable[limiting] ?? usable.A];
  return { steps, divisions, asked, most, lead, usable: room, needed: asked * lead };
};

/** What nothing beats in step and stroke together, finest step first. */
export const bestEdge = (stacks: readonly Stack[], dividers: readonly number[]): Choice[] => {
  const finest = Math.max(...dividers);
  const all = stacks
    .map((stack): Choice => ({ stack, divisions: finest, step: stepOf(stack, finest) }))
    .sort((a, b) => compare(a.step, b.step) || compare(b.stack.stroke, a.stack.stroke));
  const edge: Choice[] = [];
  for (const c of all) if (c.stack.stroke > (edge.at(-1)?.stack.stroke ?? 0) * (1 + 1e-9)) edge.push(c);
  return edge;
};
