/**
 * What a printer makes of a width: the offset read off a ladder of holes, and the width to draw for a clearance that is wanted.
 *
 * A hole prints narrower than it is drawn and an outside wider, by amounts that hardly depend on the width (common practice, no source), so one ladder of holes in rising widths
 * gives the first and a caliper on its outside the second. A piece of measured width w_n just goes into the rung drawn w_d:
 *   offset of holes       o_h = w_d − w_n       (at most: up to a step w_s less, since the piece does not go into the rung before)
 *   offset of outsides    o_u = w_p − w_d       (w_p as printed)
 *   hole to draw          w_d = w_n + c_n + o_h
 *   outside to draw       w_d = w_n − c_n − o_u
 * c_n is the clearance wanted, across, both sides together; below zero it presses. Source: definitions. Units: mm.
 */
import { mm } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { bad } from '../kernel/result.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'drawn-width-gone': { readonly width: number };
  }
}

export const rungWidth = relation({
  name: 'rung-width',
  says: 'Width of a rung of the ladder as drawn.',
  takes: ['w_n', 'w_s', 'i_r'],
  gives: { w_d: 'w_n + (i_r - 1)*w_s' },
  source: 'Definition: the first rung is drawn as wide as the piece, each next one a step wider.',
  compute: ({ w_n, w_s, i_r }) => ({ w_d: mm(w_n + (i_r - 1) * w_s) }),
});

export const holeOffset = relation({
  name: 'hole-offset',
  says: 'How much narrower than drawn a hole prints at most, from the first rung of a ladder that a measured piece goes into.',
  takes: ['w_d', 'w_n'],
  gives: { o_h: 'w_d - w_n' },
  source:
    'Definition: width drawn less width that goes in. The piece does not go into the rung before, so the true offset is at most one step less.',
  compute: ({ w_d, w_n }) => ({ o_h: mm(w_d - w_n) }),
});

export const outsideOffset = relation({
  name: 'outside-offset',
  says: 'How much wider than drawn an outside prints, from a caliper.',
  takes: ['w_p', 'w_d'],
  gives: { o_u: 'w_p - w_d' },
  source: 'Definition: width printed less width drawn.',
  compute: ({ w_p, w_d }) => ({ o_u: mm(w_p - w_d) }),
});

const gone = (width: number) => (width > 0 ? undefined : bad('drawn-width-gone', { width }));

export const drawnHole = relation({
  name: 'drawn-hole',
  says: 'Width to draw for a hole that a piece goes into with a clearance, across.',
  takes: ['w_n', 'c_n', 'o_h'],
  gives: { w_d: 'w_n + c_n + o_h' },
  source: 'The offset of holes, solved for the width drawn.',
  refuses: ({ w_n, c_n, o_h }) => gone(w_n + c_n + o_h),
  compute: ({ w_n, c_n, o_h }) => ({ w_d: mm(w_n + c_n + o_h) }),
});

export const drawnOutside = relation({
  name: 'drawn-outside',
  says: 'Width to draw for a printed outside that goes into a width with a clearance, across.',
  takes: ['w_n', 'c_n', 'o_u'],
  gives: { w_d: 'w_n - c_n - o_u' },
  source: 'The offset of outsides, solved for the width drawn.',
  refuses: ({ w_n, c_n, o_u }) => gone(w_n - c_n - o_u),
  compute: ({ w_n, c_n, o_u }) => ({ w_d: mm(w_n - c_n - o_u) }),
});
