/**
 * Rounding a lead before the difference is taken. The error made on one lead stays whole in the net lead, so relative to it it is
 * multiplied by the gain. h is the hand of thread C; for thread A the sign turns over. Lengths mm, eps a plain number.
 */
import { plain } from './quantity.ts';
import { relation } from './relation.ts';

export const roundingError = relation({
  name: 'rounding-error',
  says: 'Relative error of the net lead when the lead of thread C is rounded before the leads are subtracted.',
  takes: ['h_C', 'L_C', 'L_r', 'Delta'],
  gives: { eps: 'h_C*(L_r - L_C)/Delta' },
  source: 'Net lead with L_r for L_C, less the net lead, over the net lead: arithmetic.',
  refuses: ({ Delta }) =>
    Math.abs(Delta) > 0
      ? undefined
      : 'The two leads are equal, so there is no net lead for an error to be a share of: choose threads whose leads differ.',
  compute: ({ h_C, L_C, L_r, Delta }) => ({ eps: plain((h_C * (L_r - L_C)) / Delta) }),
});
