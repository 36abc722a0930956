/**
 * The meander: a strip folded into m half waves, pulled along its axis.
 *
 * Centre lines: a stub s on the axis, half a leg L/2, a connector p, a whole leg, a connector on the other side, and so on, half a leg, a stub. A pull F
 * along the axis has the arm y everywhere, so by Castigliano the ends go apart by F/(E I) ∫ y² ds. A leg gives L³/12, a connector, all at
 * y = L/2, p L²/4: together J = m L² (L + 3p)/12 and k = E I/J. The moment is largest in the connectors, F L/2.
 * Both ends held against turning and against going sideways: the compliance by x, y and angle of the whole chain, inverted. With m even, by symmetry,
 *   J_y = m L²(L + 3p)/12,  J_x = W³/12 + m (m² + 2) L p²/12,  J_xy = −m p L (L + 2p)/8,  W = m p + 2 s:
 *   along E I J_x/(J_x J_y − J_xy²), across E I J_y/(J_x J_y − J_xy²).
 * Source: derived here; equal to a frame of finite elements of our own to ten digits. Of a real strip with square corners the corners do not bend. Take 0.19 t off every leg and
 * connector (fitted here to plane-stress finite elements of our own): then within 1.3 % to t/L = 0.15 and 3 % at 0.2; without it the law is 4 to 14 % too soft.
 * Legs sway like straps: keep the motion below a tenth of m L. Units: mm, N, MPa.
 */
import { newtonMillimetres, newtonsPerMillimetre, plain } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { type Bad, bad } from '../kernel/result.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'meander-all-corner': { readonly thickness: number; readonly least: number };
    'meander-odd': { readonly waves: number };
  }
}

/** What a square corner takes off each piece that meets it, in thicknesses. */
const CORNER = 0.19;

export const meanderRate = relation({
  name: 'meander-rate',
  says: 'Rate of a meander along its axis, its ends free to turn, by its centre lines.',
  takes: ['E_f', 'b_f', 't_f', 'm_f', 'L_f', 'p_f'],
  gives: { k_f: 'E_f*b_f*t_f^3/(m_f*L_f^2*(L_f + 3*p_f))' },
  source: 'Castigliano’s theorem on centre lines, bending only; derived here.',
  compute: ({ E_f, b_f, t_f, m_f, L_f, p_f }) => ({
    k_f: newtonsPerMillimetre((E_f * b_f * t_f ** 3) / (m_f * L_f ** 2 * (L_f + 3 * p_f))),
  }),
});

const corners = ({ t_f, L_f, p_f }: { readonly t_f: number; readonly L_f: number; readonly p_f: number }) =>
  Math.min(L_f, p_f) > CORNER * t_f ? undefined : bad('meander-all-corner', { thickness: t_f, least: CORNER * t_f });

export const meanderRateThick = relation({
  name: 'meander-rate-thick',
  says: 'Rate of a meander of real thickness with square corners, which do not bend.',
  takes: ['E_f', 'b_f', 't_f', 'm_f', 'L_f', 'p_f'],
  gives: { k_f: 'E_f*b_f*t_f^3/(m_f*(L_f - 0.19*t_f)^2*(L_f - 0.19*t_f + 3*(p_f - 0.19*t_f)))' },
  source:
    'The centre-line law, each piece shorter by 0.19 t; fitted here to plane-stress finite elements, within 1.3 % to t/L = 0.15.',
  refuses: corners,
  compute: ({ E_f, b_f, t_f, m_f, L_f, p_f }) => {
    const [L, p] = [L_f - CORNER * t_f, p_f - CORNER * t_f];
    return { k_f: newtonsPerMillimetre((E_f * b_f * t_f ** 3) / (m_f * L ** 2 * (L + 3 * p))) };
  },
});

export const meanderStrain = relation({
  name: 'meander-strain',
  says: 'Strain at the surface of a stretched meander, the same in every connector.',
  takes: ['t_f', 'u_f', 'm_f', 'L_f', 'p_f'],
  gives: { eps_f: '3*t_f*abs(u_f)/(m_f*L_f*(L_f + 3*p_f))' },
  source: 'Moment F L/2 in the connectors, strain M t/(2 E I); inner corners are rounded by half a thickness or more.',
  compute: ({ t_f, u_f, m_f, L_f, p_f }) => ({
    eps_f: plain((3 * t_f * Math.abs(u_f)) / (m_f * L_f * (L_f + 3 * p_f))),
  }),
});

const even = ({ m_f }: { readonly m_f: number }): Bad | undefined =>
  m_f % 2 === 0 ? undefined : bad('meander-odd', { waves: m_f });

interface Meander {
  readonly m_f: number;
  readonly L_f: number;
  readonly p_f: number;
  readonly e_f: number;
}
const sums = ({ m_f: m, L_f: L, p_f: p, e_f: s }: Meander) => {
  const y = (m * L ** 2 * (L + 3 * p)) / 12;
  const x = (m * p + 2 * s) ** 3 / 12 + (m * (m ** 2 + 2) * L * p ** 2) / 12;
  const xy = (m * p * L * (L + 2 * p)) / 8;
  return { x, y, free: x * y - xy ** 2 };
};

const J_X = '((m_f*p_f + 2*e_f)^3 + m_f*(m_f^2 + 2)*L_f*p_f^2)/12';
const J_Y = 'm_f*L_f^2*(L_f + 3*p_f)/12';
const J_FREE = `(${J_X}*${J_Y} - (m_f*p_f*L_f*(L_f + 2*p_f)/8)^2)`;

export const meanderRateHeld = relation({
  name: 'meander-rate-held',
  says: 'Rate of a meander along its axis, both ends held against turning and going sideways; an even count of half waves.',
  takes: ['E_f', 'b_f', 't_f', 'm_f', 'L_f', 'p_f', 'e_f'],
  gives: { k_f: `E_f*b_f*t_f^3/12*(${J_X})/${J_FREE}` },
  source: 'Compliance of the chain by motion and angle, inverted; centre lines, bending only; derived here.',
  refuses: even,
  compute: (g) => {
    const { x, free } = sums(g);
    return { k_f: newtonsPerMillimetre((((g.E_f * g.b_f * g.t_f ** 3) / 12) * x) / free) };
  },
});

export const meanderRateAcross = relation({
  name: 'meander-rate-across',
  says: 'Rate of a meander across its axis, in its own plane, both ends held; an even count of half waves.',
  takes: ['E_f', 'b_f', 't_f', 'm_f', 'L_f', 'p_f', 'e_f'],
  gives: { k_x: `E_f*b_f*t_f^3/12*(${J_Y})/${J_FREE}` },
  source: 'Compliance of the chain by motion and angle, inverted; centre lines, bending only; derived here.',
  refuses: even,
  compute: (g) => {
    const { y, free } = sums(g);
    return { k_x: newtonsPerMillimetre((((g.E_f * g.b_f * g.t_f ** 3) / 12) * y) / free) };
  },
});

export const springLock = relation({
  name: 'spring-lock',
  says: 'Stiffness against turning of springs parallel to the axis, by their rate across and by their pull.',
  takes: ['N_f', 'r_k', 'k_x', 'F_s', 'l_f'],
  gives: { kappa: 'N_f*r_k^2*(k_x + F_s/l_f)' },
  source:
    'Rate across and string stiffness at the radius; what each resists by its own twist is not counted; derived here.',
  refuses: ({ F_s }) => (F_s >= 0 ? undefined : bad('spring-without-pull', {})),
  compute: ({ N_f, r_k, k_x, F_s, l_f }) => ({ kappa: newtonMillimetres(N_f * r_k ** 2 * (k_x + F_s / l_f)) }),
});
