/**
 * The foot of the jack on its bench, pushed from the side.
 *
 * A ring of radii R_o and R_i under a load F is pressed by F/A (1 + …) where a moment Q y leans it; with A = π(R_o² − R_i²) and
 * I = π(R_o⁴ − R_i⁴)/4 its pressure falls to nothing at the edge when Q y = F I/(A R_o):
 *   Q_r = F (R_o² + R_i²)/(4 R_o y)         up to there the whole ring stays pressed
 *   Q_o = F R_o/y                           all of it on the edge: it tips
 *   Q_s = µ F                               it slides, where that is less (guide-friction)
 * A base that is crowned rolls on a radius ρ = R²/(2 s), s the rise of its edge over its middle, R the radius of the edge. A push Q at a height y that also
 * carries F tilts it by τ = Q y/(F (ρ − y)): the load wanders back under the place that rolls. That holds while the place stays within the edge, ρ τ ≤ R, and where ρ > y; lower
 * radii are no rest at all.
 * Source: pressure under an eccentrically loaded footing, the kern of a ring section (strength of materials; a text on foundations gives the same
 * (R_o² + R_i²)/(4 R_o)); rolling derived here. The bench and the base are taken to give alike all over. Units: mm, N, rad.
 */
import { mm, newtons, rad } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { type Bad, bad } from '../kernel/result.ts';
import { symbolFact } from '../kernel/symbols.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'ring-inside-out': { readonly outer: number; readonly inner: number };
    'base-without-crown': Record<string, never>;
    'crown-tips': { readonly radius: number; readonly height: number };
    'crown-past-edge': { readonly tilt: number };
  }
}

const insideOut = ({ R_o, R_i }: { readonly R_o: number; readonly R_i: number }): Bad | undefined =>
  R_i < R_o ? undefined : bad('ring-inside-out', { outer: R_o, inner: R_i });

export const ringFull = relation({
  name: 'ring-full',
  says: 'Side push up to which the whole ring under a base stays pressed on its bench.',
  takes: ['F', 'R_o', 'R_i', 'y_b'],
  gives: { Q_r: 'F*(R_o^2 + R_i^2)/(4*R_o*y_b)' },
  source: 'Kern of a ring section: strength of materials; derived in base-ring.ts.',
  refuses: insideOut,
  compute: ({ F, R_o, R_i, y_b }) => ({ Q_r: newtons((F * (R_o ** 2 + R_i ** 2)) / (4 * R_o * y_b)) }),
});

export const ringTips = relation({
  name: 'ring-tips',
  says: 'Side push that tips a base over the edge of its ring.',
  takes: ['F', 'R_o', 'y_b'],
  gives: { Q_o: 'F*R_o/y_b' },
  source: 'Moments about the edge.',
  compute: ({ F, R_o, y_b }) => ({ Q_o: newtons((F * R_o) / y_b) }),
});

export const crownRadius = relation({
  name: 'crown-radius',
  says: 'Radius on which a base rolls whose middle stands out from its edge by a little.',
  takes: ['R_o', 's_b'],
  gives: { rho_b: 'R_o^2/(2*s_b)' },
  source: 'Height of a shallow cap, s = R²/2ρ; within 1 % to s = R/7.',
  refuses: ({ R_o, s_b }) => (s_b >= 1e-6 && s_b <= R_o / 7 ? undefined : bad('base-without-crown', {})),
  compute: ({ R_o, s_b }) => ({ rho_b: mm(R_o ** 2 / (2 * s_b)) }),
});

export const crownTilt = relation({
  name: 'crown-tilt',
  says: 'Tilt of a crowned base that rolls under a side push.',
  takes: ['Q_k', 'F', 'y_b', 'rho_b'],
  gives: { tau: 'Q_k*y_b/(F*(rho_b - y_b))' },
  source: 'Moments about the place that rolls, small tilt; derived in base-ring.ts.',
  refuses: ({ Q_k, F, y_b, rho_b }) => {
    if (!(F > 0 && rho_b > y_b)) return bad('crown-tips', { radius: rho_b, height: y_b });
    const tilt = (Q_k * y_b) / (F * (rho_b - y_b));
    return tilt <= symbolFact('tau').max ? undefined : bad('crown-past-edge', { tilt });
  },
  compute: ({ Q_k, F, y_b, rho_b }) => ({ tau: rad((Q_k * y_b) / (F * (rho_b - y_b))) }),
});
