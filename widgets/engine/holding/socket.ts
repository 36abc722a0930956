/**
 * A ball on the mouth of a hexagon socket, and pressed into it: how high it sits, how far it stands out, and what is left under it.
 *
 * A ball wider than the socket rests on the middles of the six flats at the rim, where a circle of the width across flats s is inscribed:
 *   centre above the rim     h = √((D/2)² − (s/2)²)          no chamfer, nothing pressed flat
 *   top above the rim        p = D/2 + h − x                 x as far as it was pressed in
 *   room under the ball      g = t − (D − p)                 t depth of the socket
 * Widths across flats, depths and keys: ISO 4762 as printed in a supplier’s table (read; agrees with an open library of fasteners where both have a number). Older editions give
 * tighter widths for class 12.9 (from memory). Balls: a maker’s list of sizes (read), common millimetre sizes, and 21/64 inch, which
 * ISO 3290-1 lists too (from memory), since no other ball fits the socket of an M10. Units: mm.
 */
import { mm } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { bad } from '../kernel/result.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'ball-loose': { readonly ball: number; readonly socket: number };
    'ball-deeper-than-itself': { readonly out: number; readonly ball: number };
  }
}

export interface Socket {
  readonly screw: string;
  readonly key: number;
  /** Across the flats, least and greatest. */
  readonly flats: readonly [least: number, greatest: number];
  /** Least depth. */
  readonly depth: number;
}

export const SOCKETS: readonly Socket[] = [
  { screw: 'M3', key: 2.5, flats: [2.52, 2.58], depth: 1.3 },
  { screw: 'M4', key: 3, flats: [3.02, 3.08], depth: 2 },
  { screw: 'M5', key: 4, flats: [4.02, 4.095], depth: 2.5 },
  { screw: 'M6', key: 5, flats: [5.02, 5.14], depth: 3 },
  { screw: 'M8', key: 6, flats: [6.02, 6.14], depth: 4 },
  { screw: 'M10', key: 8, flats: [8.025, 8.175], depth: 5 },
  { screw: 'M12', key: 10, flats: [10.025, 10.175], depth: 6 },
];

export interface Ball {
  readonly diameter: number;
  /** As it is sold in inches. */
  readonly inch?: string;
}

export const BALLS: readonly Ball[] = [
  { diameter: 2.5 },
  { diameter: 3 },
  { diameter: 3.175, inch: '1/8' },
  { diameter: 3.5 },
  { diameter: 3.969, inch: '5/32' },
  { diameter: 4 },
  { diameter: 4.5 },
  { diameter: 4.763, inch: '3/16' },
  { diameter: 5 },
  { diameter: 5.5 },
  { diameter: 5.556, inch: '7/32' },
  { diameter: 6 },
  { diameter: 6.35, inch: '1/4' },
  { diameter: 6.5 },
  { diameter: 7 },
  { diameter: 7.144, inch: '9/32' },
  { diameter: 7.938, inch: '5/16' },
  { diameter: 8 },
  { diameter: 8.334, inch: '21/64' },
  { diameter: 8.731, inch: '11/32' },
  { diameter: 9 },
  { diameter: 9.525, inch: '3/8' },
  { diameter: 10 },
  { diameter: 10.319, inch: '13/32' },
  { diameter: 11.113, inch: '7/16' },
  { diameter: 12 },
  { diameter: 12.7, inch: '1/2' },
];

export const ballSeat = relation({
  name: 'ball-seat',
  says: 'Height of the centre of a ball over the rim of the hexagon socket that it rests on.',
  takes: ['D_b', 's_f'],
  gives: { h_b: 'sqrt((D_b/2)^2 - (s_f/2)^2)' },
  source: 'The ball touches the inscribed circle of the rim: Pythagoras.',
  refuses: ({ D_b, s_f }) => (D_b > s_f ? undefined : bad('ball-loose', { ball: D_b, socket: s_f })),
  compute: ({ D_b, s_f }) => ({ h_b: mm(Math.sqrt((D_b / 2) ** 2 - (s_f / 2) ** 2)) }),
});

export const ballStands = relation({
  name: 'ball-stands',
  says: 'How far a ball stands out of its socket, pressed in by a measured way.',
  takes: ['D_b', 'h_b', 'x_b'],
  gives: { p_o: 'D_b/2 + h_b - x_b' },
  source: 'Definition: radius and height of the centre, less the way it was pressed.',
  refuses: ({ D_b, h_b, x_b }) => {
    const out = D_b / 2 + h_b - x_b;
    return out > 0 ? undefined : bad('ball-deeper-than-itself', { out, ball: D_b });
  },
  compute: ({ D_b, h_b, x_b }) => ({ p_o: mm(D_b / 2 + h_b - x_b) }),
});

export const ballFloor = relation({
  name: 'ball-floor',
  says: 'Room between a ball and the bottom of its socket; nought or less, and it bottoms.',
  takes: ['t_k', 'D_b', 'p_o'],
  gives: { g_b: 't_k - (D_b - p_o)' },
  source: 'Definition: depth of the socket less what of the ball is inside.',
  compute: ({ t_k, D_b, p_o }) => ({ g_b: mm(t_k - (D_b - p_o)) }),
});
