/**
 * A ring or an oval pulled across, as a flat spring.
 *
 * A quarter of an oval: half the straight across the pull h, an arc of radius R, half the straight along the pull v. By symmetry half the pull and an
 * unknown moment act where it is pulled; that section does not turn, which gives the moment, and the work gives the motion. With the sums over the quarter
 *   A0 = h + πR/2 + v,  A1 = h²/2 + πhR/2 + R² + v(h + R),  A2 = h³/3 + R(πh²/2 + 2hR + πR²/4) + v(h + R)²
 * of its length and of the arm of the pull, k = E I/(A2 − A1²/A0) and the moment under the pull is F A1/(2 A0). For h = v = 0: k = E I/(R³(π/4 − 2/π)), moment F R/π.
 * Across, both ends held against turning: by symmetry a ring gives at its middle alone, by E I/(R²(h + πR/4)) across and, turned there, by E I (1/A0 + (A1/A0)²/(A2 − A1²/A0)),
 * for v = 0. A row of n, 2R + t apart, gives n times the first, and every ring turns about the middle of the row.
 * Source: Castigliano’s theorem, thin ring on its centre line, derived here; the ring is a standard result (published example in the test). Hoop stretch takes off 0.4 % at
 * t/R = 0.1 and 1 % at 0.15. Units: mm, N, MPa.
 */
import { newtonsPerMillimetre, plain } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';

/** π/4 − 2/π */
const RING = Math.PI / 4 - 2 / Math.PI;

export const ringRate = relation({
  name: 'ring-rate',
  says: 'Rate of a thin ring pulled across a diameter.',
  takes: ['E_f', 'b_f', 't_f', 'R_f'],
  gives: { k_f: 'E_f*b_f*t_f^3/(12*R_f^3*(pi/4 - 2/pi))' },
  source: 'Castigliano’s theorem on the centre line; a standard result.',
  compute: ({ E_f, b_f, t_f, R_f }) => ({ k_f: newtonsPerMillimetre((E_f * b_f * t_f ** 3) / (12 * R_f ** 3 * RING)) }),
});

export const ringStrain = relation({
  name: 'ring-strain',
  says: 'Strain at the surface of a ring where it is pulled.',
  takes: ['t_f', 'u_f', 'R_f'],
  gives: { eps_f: 't_f*abs(u_f)/(2*pi*R_f^2*(pi/4 - 2/pi))' },
  source: 'Moment F R/π under the pull, strain M t/(2 E I), the pull by the rate of the ring.',
  compute: ({ t_f, u_f, R_f }) => ({ eps_f: plain((t_f * Math.abs(u_f)) / (2 * Math.PI * R_f ** 2 * RING)) }),
});

interface Oval {
  readonly R_f: number;
  readonly h_f: number;
  readonly v_f: number;
}
const sums = ({ R_f: R, h_f: h, v_f: v }: Oval) => {
  const a0 = h + (Math.PI * R) / 2 + v;
  const a1 = h ** 2 / 2 + (Math.PI * h * R) / 2 + R ** 2 + v * (h + R);
  const a2 = h ** 3 / 3 + R * ((Math.PI * h ** 2) / 2 + 2 * h * R + (Math.PI * R ** 2) / 4) + v * (h + R) ** 2;
  return { a0, a1, give: a2 - a1 ** 2 / a0 };
};
const A_0 = '(h_f + pi*R_f/2 + v_f)';
const A_1 = '(h_f^2/2 + pi*h_f*R_f/2 + R_f^2 + v_f*(h_f + R_f))';
const A_2 = '(h_f^3/3 + R_f*(pi*h_f^2/2 + 2*h_f*R_f + pi*R_f^2/4) + v_f*(h_f + R_f)^2)';

export const ovalRate = relation({
  name: 'oval-rate',
  says: 'Rate of an oval of two straights and two half rings, or of four quarter rings and four straights.',
  takes: ['E_f', 'b_f', 't_f', 'R_f', 'h_f', 'v_f'],
  gives: { k_f: `E_f*b_f*t_f^3/12/(${A_2} - ${A_1}^2/${A_0})` },
  source: 'Castigliano’s theorem over a quarter; derived here. Without straights it is the ring.',
  compute: (g) => ({ k_f: newtonsPerMillimetre((g.E_f * g.b_f * g.t_f ** 3) / 12 / sums(g).give) }),
});

export const ovalStrain = relation({
  name: 'oval-strain',
  says: 'Strain at the surface of an oval where it is pulled.',
  takes: ['t_f', 'u_f', 'R_f', 'h_f', 'v_f'],
  gives: { eps_f: `t_f*abs(u_f)*${A_1}/(4*${A_0}*(${A_2} - ${A_1}^2/${A_0}))` },
  source: 'Moment F A1/(2 A0) under the pull, strain M t/(2 E I); derived here.',
  compute: (g) => {
    const { a0, a1, give } = sums(g);
    return { eps_f: plain((g.t_f * Math.abs(g.u_f) * a1) / (4 * a0 * give)) };
  },
});

const ROUND_0 = '(h_f + pi*R_f/2)';
const ROUND_1 = '(h_f^2/2 + pi*h_f*R_f/2 + R_f^2)';
const ROUND_2 = '(h_f^3/3 + R_f*(pi*h_f^2/2 + 2*h_f*R_f + pi*R_f^2/4))';
const TURNED = `(1/${ROUND_0} + (${ROUND_1}/${ROUND_0})^2/(${ROUND_2} - ${ROUND_1}^2/${ROUND_0}))`;

export const ovalRowRateAcross = relation({
  name: 'oval-row-rate-across',
  says: 'Rate of a row of rings or ovals across its axis, in its own plane, both ends held.',
  takes: ['E_f', 'b_f', 't_f', 'R_f', 'h_f', 'n_r'],
  gives: {
    k_x: `E_f*b_f*t_f^3/12/(n_r*R_f^2*(h_f + pi*R_f/4) + (2*R_f + t_f)^2*n_r*(n_r^2 - 1)/12/${TURNED})`,
  },
  source:
    'Castigliano’s theorem over half a ring, its two halves side by side, the rings in series; joints between them do not bend; derived here.',
  compute: ({ E_f, b_f, t_f, R_f, h_f, n_r }) => {
    const { a0, a1, give } = sums({ R_f, h_f, v_f: 0 });
    const turned = 1 / a0 + (a1 / a0) ** 2 / give;
    const soft =
      n_r * R_f ** 2 * (h_f + (Math.PI * R_f) / 4) + ((2 * R_f + t_f) ** 2 * n_r * (n_r ** 2 - 1)) / 12 / turned;
    return { k_x: newtonsPerMillimetre((E_f * b_f * t_f ** 3) / 12 / soft) };
  },
});
