/**
 * Rounding a lead before the difference is taken. The error made on one lead stays whole in the net lead, so relative to it it is
 * multiplied by the gain: with Δ_r from the rounded leads, ε = (Δ_r − Δ)/Δ. Lengths mm, ε a plain number, positive where Δ_r is too large.
 */

import { plain } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { noNetLead } from './lead-error.ts';

export const roundingError = relation({
  name: 'rounding-error',
  says: 'Relative error of a net lead that was computed from rounded leads.',
  takes: ['Delta_r', 'Delta'],
  gives: { eps: '(Delta_r - Delta)/Delta' },
  source: 'Definition of a relative error.',
  refuses: noNetLead,
  compute: ({ Delta_r, Delta }) => ({ eps: plain((Delta_r - Delta) / Delta) }),
});
