/**
 * What of an adjuster is made besides its three parts: its springs, the arm, the post and its foot that lock the carried part, a knob with its marks. All are printed but a post of steel. Each is one solid, from which its files and its drawing are made.
 * Where the printer was not measured it prints as drawn. mm.
 */
import { good, type Result } from '../../engine/index.ts';
import { type Adjuster, standing } from '../adjuster/adjuster.ts';
import { type Part, reach, type Step, widestStep } from '../adjuster/part.ts';
import { ARM_WALL, FOOT_WALL, type Post, postOf } from '../adjuster/post.ts';
import { flatFormOf, springAt } from '../adjuster/spring-place.ts';
import { springPlate } from '../spring/spring-plate.ts';
import type { Printer } from './clip-plate.ts';
import { knobPlate } from './knob-plate.ts';
import { hexagon, type Place, type Plate } from './plate.ts';
import { POST_FOOT, postPart, rodPart } from './turned-prints.ts';

export type PrintName = 'spring' | 'arm' | 'post' | 'foot' | 'knob';
export interface Print {
  readonly name: PrintName;
  readonly count: number;
  /** A rod cut from steel, so nothing for a printer. */
  readonly steel?: true;
  readonly shape: { readonly plate: Plate } | { readonly part: Part };
}

const AS_DRAWN: Printer = { holes: 0, outsides: 0, line: 0.45 };
/** Across, on a hexagon that a print slides on (common practice, no source). */
const SLIDES = 0.2;
/** Across, of the hole that a post is glued in (common practice, no source). */
const GLUED = 0.1;

/** A spring as it lies on the bed: nothing pulls it. */
const springPrint = (a: Adjuster): Plate | undefined => {
  const spring = springAt(a, standing(a, 0));
  return spring && springPlate({ ...spring.drawn, stretch: 0 });
};

const circle = (r: number, [x, y]: Place, from: number, to: number): Place[] => {
  const steps = Math.max(8, Math.ceil((Math.abs(to - from) / Math.PI) * 24));
  return Array.from({ length: steps + 1 }, (_, i): Place => {
    const angle = from + ((to - from) * i) / steps;
    return [x + r * Math.cos(angle), y + r * Math.sin(angle)];
  });
};

/** What a print slides over a step by. */
const openingOf = ({ shape, r }: Step): readonly Place[] => {
  if (shape === 'round') return circle(r + SLIDES / 2, [0, 0], 0, 2 * Math.PI).slice(0, -1);
  if (shape === 'hexagon') return hexagon(2 * r + SLIDES);
  const side = r + SLIDES / 2;
  return [
    [side, side],
    [-side, side],
    [-side, -side],
    [side, -side],
  ];
};

/** Round the axis and round the post, joined by tangents that touch both. */
const keyhole = (boss: number, end: number, far: number, longer: number): readonly Place[] => {
  const lean = Math.acos(Math.max(-1, Math.min(1, (boss - end) / far)));
  return [
    ...circle(boss, [0, 0], Math.PI + lean, Math.PI - lean + 2 * Math.PI),
    ...circle(end, [-far - longer, 0], Math.PI - lean, Math.PI + lean),
  ];
};

/** The plate round the foot of the base, with the hole that the post is glued in. */
const footPlate = ({ x, half }: Post, { round, high }: NonNullable<Post['foot']>): Plate => ({
  outline: keyhole(reach(round) + FOOT_WALL, half + FOOT_WALL, -x, 0),
  holes: [openingOf(round), circle(half + GLUED / 2, [x, 0], 0, 2 * Math.PI).slice(0, -1)],
  height: high,
});

/** The arm that goes on the carried part and along the post: a slot for it, longer along the radius, so that it holds the turning alone. */
const armPlate = (a: Adjuster, post: Post & { readonly arm: NonNullable<Post['arm']> }, carried: Part): Plate => {
  const step = widestStep(carried);
  const clearance = a.lock.kind === 'key' || a.lock.kind === 'post' ? a.lock.clearance : 0;
  const [boss, slot] = [reach(step) + ARM_WALL, post.half + clearance / 2];
  const end = slot + ARM_WALL;
  const far = -post.x;
  const longer = 0.5;
  return {
    outline: keyhole(boss, end, far, longer),
    holes: [
      openingOf(step),
      [
        ...circle(slot, [-far + longer, 0], -Math.PI / 2, Math.PI / 2),
        ...circle(slot, [-far - longer, 0], Math.PI / 2, (3 * Math.PI) / 2),
      ],
    ],
    height: post.arm.high - post.arm.low,
  };
};

/** Each that it has, or why one does not come out. */
export const printsOf = (a: Adjuster): readonly Result<Print>[] => {
  const found: Result<Print>[] = [];
  const { springs, lock, carried, turned, divisions } = a;
  const spring = flatFormOf(springs?.drawn?.form) && springPrint(a);
  if (spring) found.push(good({ name: 'spring', count: springs?.count ?? 1, shape: { plate: spring } }));
  const post = lock.kind === 'key' || lock.kind === 'post' ? postOf(a) : undefined;
  const steel = post && 'steel' in lock && lock.steel === true;
  const rod = (half: number, length: number): Result<Print> =>
    good({
      name: 'post',
      count: 1,
      shape: { part: rodPart(2 * half, length, steel ? 'steel' : 'plastic') },
      ...(steel && { steel: true as const }),
    });
  if (post && carried) {
    if (post.arm)
      found.push(good({ name: 'arm', count: 1, shape: { plate: armPlate(a, { ...post, arm: post.arm }, carried) } }));
    if (post.foot) {
      const { foot, half, top } = post;
      found.push(good({ name: 'foot', count: 1, shape: { plate: footPlate(post, foot) } }));
      found.push(rod(half, top));
    } else if (steel) found.push(rod(post.half, post.top - post.low));
    else {
      const length = post.top - post.low - POST_FOOT;
      const stands = postPart({ hole: 2 * post.half, clearance: 0, length, screw: 0 }, AS_DRAWN);
      found.push(stands.ok ? good({ name: 'post', count: 1, shape: { part: stands.value } }) : stands);
    }
  }
  const held = turned.outer.find(({ shape }) => shape === 'hexagon');
  if (a.divider === 'knob' && divisions !== undefined && held) {
    const knob = knobPlate({ flats: 2 * held.r, clearance: SLIDES, marks: divisions }, AS_DRAWN);
    found.push(knob.ok ? good({ name: 'knob', count: 1, shape: { plate: knob.value } }) : knob);
  }
  return found;
};

/** Length, width and height of a print. */
export const boxOf = ({ shape }: Print): readonly [number, number, number] => {
  if ('part' in shape) {
    const wide = 2 * Math.max(...shape.part.outer.map(reach));
    return [wide, wide, shape.part.outer.at(-1)?.to ?? 0];
  }
  const spans = [0, 1].map((k) => {
    const along = shape.plate.outline.map((c) => c[k] as number);
    return Math.max(...along) - Math.min(...along);
  }) as [number, number];
  return [...spans, shape.plate.height];
};
