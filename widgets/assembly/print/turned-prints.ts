/** Printed parts that are round about an axis: a cap that goes over a hexagon as a knob, and a post that guides the carried part. Both are parts like any other. mm. */
import { bad, drawnHole, drawnOutside, good, mm, type Result } from '../../engine/index.ts';
import type { Part, Step } from '../adjuster/part.ts';
import type { Printer } from './clip-plate.ts';

const FLOOR = 1.6;
/** Height of the foot of a post. */
export const POST_FOOT = 2.4;

const printed = (kind: string, outer: readonly Step[], bores: readonly Step[]): Part => ({
  role: 'turned',
  kind,
  outer,
  bores,
  below: undefined,
  above: undefined,
  sizes: [],
  grounded: false,
  material: 'plastic',
  coat: 0,
  price: undefined,
  count: 1,
});

/** Over a hexagon, open downwards; printed mouth up. */
export const capPart = (
  c: { readonly flats: number; readonly clearance: number; readonly outside: number; readonly depth: number },
  { holes, outsides, line }: Printer,
): Result<Part> => {
  const pocket = drawnHole.of({ w_n: mm(c.flats), c_n: mm(c.clearance), o_h: mm(holes) });
  if (!pocket.ok) return pocket;
  const outside = drawnOutside.of({ w_n: mm(c.outside), c_n: mm(0), o_u: mm(outsides) });
  if (!outside.ok) return outside;
  const [s, D] = [pocket.value.w_d, outside.value.w_d];
  const wall = D / 2 - s / Math.sqrt(3);
  if (!(wall >= line)) return bad('wall-below-line', { wall, line });
  const height = c.depth + FLOOR;
  return good(
    printed(
      'cap',
      [{ name: 'cap', from: 0, to: height, r: D / 2, shape: 'round' }],
      [{ name: 'bore', from: FLOOR, to: height, r: s / 2, shape: 'hexagon' }],
    ),
  );
};

/** A post that is held in a plate: a plain rod, printed or cut from one. */
export const rodPart = (diameter: number, length: number, material: 'plastic' | 'steel'): Part => ({
  ...printed('rod', [{ name: 'body', from: 0, to: length, r: diameter / 2, shape: 'round' }], []),
  sizes: [
    { name: 'height', value: length, stated: true, from: 0, to: length },
    { name: 'diameter', value: diameter, stated: true },
  ],
  material,
});

/** A foot to glue or screw down, a post that slides in a hole, a bore for a screw where it has one. */
export const postPart = (
  c: { readonly hole: number; readonly clearance: number; readonly length: number; readonly screw: number },
  { holes, outsides, line }: Printer,
): Result<Part> => {
  const post = drawnOutside.of({ w_n: mm(c.hole), c_n: mm(c.clearance), o_u: mm(outsides) });
  if (!post.ok) return post;
  const D = post.value.w_d;
  const bore = c.screw > 0 ? drawnHole.of({ w_n: mm(c.screw), c_n: mm(0), o_h: mm(holes) }) : undefined;
  if (bore && !bore.ok) return bore;
  const d = bore?.value.w_d ?? 0;
  const wall = (D - d) / 2;
  if (!(wall >= line)) return bad('wall-below-line', { wall, line });
  const foot = POST_FOOT;
  const height = foot + c.length;
  return good(
    printed(
      'post',
      [
        { name: 'collar', from: 0, to: foot, r: D, shape: 'round' },
        { name: 'body', from: foot, to: height, r: D / 2, shape: 'round' },
      ],
      d > 0 ? [{ name: 'bore', from: 0, to: height, r: d / 2, shape: 'round' }] : [],
    ),
  );
};
