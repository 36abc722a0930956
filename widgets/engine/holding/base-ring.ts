/**
 * A foot on a plane: on a ring it stays down, tips or slides; on a convex face it rocks.
 *
 * Load F along the axis, push Q from the side at the height y over the plane, which moves the line of the load out by e = Q y/F. A ring R_o outside and R_i inside presses
 * all round while e stays in the core of its area, (R_o² + R_i²)/(4 R_o); it tips where e reaches R_o; it slides where Q reaches μ F, which comes before it tips if y < R_o/μ.
 * A face that stands proud by s_c in the middle of R_o is a ball of radius ρ = (R_o² + s_c²)/(2 s_c). Rolled by ψ it touches ρ ψ away and its tip, which carries F, is moved by y ψ:
 * F (ρ − y) ψ = Q y. Where the tip is higher than ρ it falls over. Small ψ.
 * Source: core of an annulus (read in two texts), balance of moments; derived here. Heads that are convex: common practice, no source. Units: mm, N, rad.
 */
import { mm, newtons, rad } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { bad } from '../kernel/result.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'ring-inside-out': { readonly outer: number; readonly inner: number };
    'foot-without-load': Record<never, never>;
    'foot-falls-over': { readonly tip: number; readonly radius: number };
    'face-without-crown': Record<never, never>;
    'push-at-the-ground': Record<never, never>;
  }
}

const lever = (y: number) => (y > 0 ? undefined : bad('push-at-the-ground', {}));

export const lineOfLoad = relation({
  name: 'line-of-load',
  says: 'How far off the axis the load of a foot meets the ground under a push from the side.',
  takes: ['Q_y', 'y_b', 'F'],
  gives: { e_l: 'Q_y*y_b/F' },
  source: 'The sum of load and push points there.',
  refuses: ({ F }) => (F > 0 ? undefined : bad('foot-without-load', {})),
  compute: ({ Q_y, y_b, F }) => ({ e_l: mm((Q_y * y_b) / F) }),
});

export const ringFull = relation({
  name: 'ring-full',
  says: 'Side push up to which a ring under a foot presses on its plane all round.',
  takes: ['F', 'R_o', 'R_i', 'y_b'],
  gives: { Q_b: 'F*(R_o^2 + R_i^2)/(4*R_o*y_b)' },
  source: 'Core of an annulus: (R_o² + R_i²)/(4 R_o).',
  refuses: ({ R_o, R_i, y_b }) => (R_i < R_o ? lever(y_b) : bad('ring-inside-out', { outer: R_o, inner: R_i })),
  compute: ({ F, R_o, R_i, y_b }) => ({ Q_b: newtons((F * (R_o ** 2 + R_i ** 2)) / (4 * R_o * y_b)) }),
});

export const ringTips = relation({
  name: 'ring-tips',
  says: 'Side push that tips a foot over the outside of its ring.',
  takes: ['F', 'R_o', 'y_b'],
  gives: { Q_tp: 'F*R_o/y_b' },
  source: 'Balance of moments about the outside of the ring.',
  refuses: ({ y_b }) => lever(y_b),
  compute: ({ F, R_o, y_b }) => ({ Q_tp: newtons((F * R_o) / y_b) }),
});

export const footSlides = relation({
  name: 'foot-slides',
  says: 'Side push that slides a foot on its plane.',
  takes: ['F', 'mu'],
  gives: { Q_sl: 'mu*F' },
  source: 'Coulomb friction.',
  compute: ({ F, mu }) => ({ Q_sl: newtons(mu * F) }),
});

export const convexRadius = relation({
  name: 'convex-radius',
  says: 'Radius of a convex face, from how far its middle stands proud of its rim.',
  takes: ['R_o', 's_c'],
  gives: { rho_h: '(R_o^2 + s_c^2)/(2*s_c)' },
  source: 'Sagitta of a circle.',
  refuses: ({ s_c }) => (s_c > 0 ? undefined : bad('face-without-crown', {})),
  compute: ({ R_o, s_c }) => ({ rho_h: mm((R_o ** 2 + s_c ** 2) / (2 * s_c)) }),
});

export const convexRock = relation({
  name: 'convex-rock',
  says: 'How far a foot with a convex face rocks under a side push, and how far its tip goes sideways.',
  takes: ['Q_y', 'F', 'rho_h', 'y_b'],
  gives: { psi_b: 'Q_y*y_b/(F*(rho_h - y_b))', u_y: 'Q_y*y_b^2/(F*(rho_h - y_b))' },
  source: 'Balance of moments about the place of touch, small angles; derived in base-ring.ts.',
  refuses: ({ F, rho_h, y_b }) =>
    !(F > 0)
      ? bad('foot-without-load', {})
      : rho_h > y_b
        ? undefined
        : bad('foot-falls-over', { tip: y_b, radius: rho_h }),
  compute: ({ Q_y, F, rho_h, y_b }) => {
    const psi = (Q_y * y_b) / (F * (rho_h - y_b));
    return { psi_b: rad(psi), u_y: mm(psi * y_b) };
  },
});
