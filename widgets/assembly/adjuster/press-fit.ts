/**
 * What the fit of a pressed ball carries. While it was pressed in, its seat gave way under the force of the press; it gives way again only under more. So the fit carries what
 * pressed it in, and that force is read at the press (yielding goes on only past the largest load so far; from memory). What dents the seat is beyond first yield and is not computed.
 */
import type { Adjuster } from './adjuster.ts';

export type PressFit =
  | { readonly kind: 'holds'; readonly force: number }
  /** Wider than its hexagon, but nobody has said how hard it was pressed. */
  | { readonly kind: 'not read'; readonly interference: number }
  /** No press fit: glue or a sleeve holds it. */
  | { readonly kind: 'loose'; readonly clearance: number };

/** Undefined where no ball is said to be pressed into anything. */
export const pressFitOf = ({ tip }: Adjuster): PressFit | undefined => {
  if (tip.kind !== 'ball') return undefined;
  if (tip.pressed !== undefined) return { kind: 'holds', force: tip.pressed };
  if (tip.hexagon === undefined) return undefined;
  const interference = tip.diameter - tip.hexagon;
  return interference > 0 ? { kind: 'not read', interference } : { kind: 'loose', clearance: -interference };
};
