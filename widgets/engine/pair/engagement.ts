/**
 * How much of a thread may be used up, what is engaged when it is backed out, and where its middle is. What bounds a whole adjuster follows
 * from its parts (widgets/assembly/adjuster).
 *
 * A thread has a screw of threaded length l that ends at a shoulder and a nut of length b whose face meets the shoulder when
 * the thread is home. Backed out by u from there, the engaged length is min(b, l − u). Thread runs from home, u = 0, until
 * the least engagement the maker accepts is left, u = X = l − kept. (Common practice, no source: keep about one diameter for steel
 * in steel under load, half of it for a light adjuster.) Lengths mm, n in turns.
 */

import { mm, turns } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { bad } from '../kernel/result.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'thread-all-kept': { readonly length: number; readonly kept: number };
  }
}

export const usableThread = relation({
  name: 'usable-thread',
  says: 'Usable length of a thread: the length of its screw minus the engagement to keep, counted in diameters.',
  takes: ['l_s', 'q_e', 'd'],
  gives: { X: 'l_s - q_e*d' },
  source: 'Geometry; what to keep is common practice, no source: one diameter for steel in steel under load.',
  refuses: ({ l_s, q_e, d }) => (l_s > q_e * d ? undefined : bad('thread-all-kept', { length: l_s, kept: q_e * d })),
  compute: ({ l_s, q_e, d }) => ({ X: mm(l_s - q_e * d) }),
});

export const engagementLeft = relation({
  name: 'engagement-left',
  says: 'Length of engagement of a thread that is backed out from home: never more than the nut, never less than zero.',
  takes: ['b_s', 'l_s', 'u'],
  gives: { l_e: 'max(0*mm, min(b_s, l_s - u))' },
  source: 'Geometry: overlap of screw and nut.',
  compute: ({ b_s, l_s, u }) => ({ l_e: mm(Math.max(0, Math.min(b_s, l_s - u))) }),
});

export const midMark = relation({
  name: 'mid-mark',
  says: 'Turns to back a thread out from home to the middle of its usable length.',
  takes: ['X', 'L'],
  gives: { n_b: 'X/(2*L)' },
  source: 'Geometry: half the usable length over the lead.',
  compute: ({ X, L }) => ({ n_b: turns(X / (2 * L)) }),
});
