/**
 * Stiffness of a chain of parts: what the tip gives under load.
 *
 * Equation: parts in series share one force and add their give, 1/k = Σ 1/kᵢ; a shank gives F l/(E A), taken on
 * its core, A = π d3²/4. A contact is stiffer the harder it is pressed: take its stiffness at the working load
 * (contact.ts). An engaged thread gives with the parts beside it, δ = (0.5 d/A₃ + 0.33 d/A_N)/E, A_N = π d²/4: so it does where a screw sits in a tapped
 * part of the same metal, engaged for about a diameter or more; in a nut 0.4 stands for 0.33. A load W on it swings with √(k g/W)/2π, its own mass left out.
 * Source: Hooke’s law; elementary strength of materials; VDI 2230 for the thread (from memory). Units: N/mm, MPa, mm, N, Hz.
 */
import { hertz, mm, newtonsPerMillimetre } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { bad, good, type Result } from '../kernel/result.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'core-over-thread': { readonly core: number; readonly d: number };
    'nothing-swings': Record<string, never>;
    'chain-of-no-part': Record<string, never>;
    'part-stiffness': { readonly part: string; readonly stiffness: number };
  }
}

export const shankBends = relation({
  name: 'shank-bends',
  says: 'How far the end of a round shank that is held at its other end goes sideways under a push there.',
  takes: ['Q_y', 'l', 'E_l', 'd_3'],
  gives: { u_y: '64*Q_y*l^3/(3*pi*E_l*d_3^4)' },
  source:
    'Cantilever, Q l³/(3 E I) with I = π d⁴/64; bending only, a few per cent short where it is as short as three diameters.',
  compute: ({ Q_y, l, E_l, d_3 }) => ({ u_y: mm((64 * Q_y * l ** 3) / (3 * Math.PI * E_l * d_3 ** 4)) }),
});

export const shankStiffness = relation({
  name: 'shank-stiffness',
  says: 'Stiffness of a threaded shank along its axis, taken on its core.',
  takes: ['E_l', 'd_3', 'l'],
  gives: { k_l: 'E_l*pi*d_3^2/(4*l)' },
  source: 'Hooke’s law for a bar, k = E A/l.',
  compute: ({ E_l, d_3, l }) => ({ k_l: newtonsPerMillimetre((E_l * Math.PI * d_3 ** 2) / (4 * l)) }),
});

export const twoInSeries = relation({
  name: 'two-in-series',
  says: 'Stiffness of two parts in a chain, always below that of the softer one.',
  takes: ['k_1', 'k_2'],
  gives: { k_12: '1/(1/k_1 + 1/k_2)' },
  source: 'One force, added give: 1/k = 1/k1 + 1/k2.',
  compute: ({ k_1, k_2 }) => ({ k_12: newtonsPerMillimetre(1 / (1 / k_1 + 1 / k_2)) }),
});

export const threadStiffness = relation({
  name: 'thread-stiffness',
  says: 'Stiffness of an engaged thread along its axis, with the ends of screw and tapped part that give with it.',
  takes: ['E_l', 'd', 'd_3'],
  gives: { k_e: 'E_l/(0.5*d/(pi*d_3^2/4) + 0.33*d/(pi*d^2/4))' },
  source: 'VDI 2230, compliance of the engaged thread and of the tapped part, one metal (from memory).',
  refuses: ({ d, d_3 }) => (d_3 <= d ? undefined : bad('core-over-thread', { core: d_3, d })),
  compute: ({ E_l, d, d_3 }) => ({
    k_e: newtonsPerMillimetre(E_l / ((0.5 * d) / ((Math.PI * d_3 ** 2) / 4) + (0.33 * d) / ((Math.PI * d ** 2) / 4))),
  }),
});

/** Standard acceleration of free fall, mm/s² (exact by convention, 3rd CGPM, 1901). */
export const FREE_FALL = 9806.65;

export const loadFrequency = relation({
  name: 'load-frequency',
  says: 'Frequency at which a load swings up and down on the jack that carries it.',
  takes: ['k_12', 'W'],
  gives: { f_n: 'sqrt(g_n*k_12/W)/(2*pi)' },
  source: 'One mass on a spring: mechanics; standard acceleration of free fall 9.80665 m/s².',
  refuses: ({ W }) => (W >= 1e-3 ? undefined : bad('nothing-swings', {})),
  compute: ({ k_12, W }) => ({ f_n: hertz(Math.sqrt((k_12 * FREE_FALL) / W) / (2 * Math.PI)) }),
});

export interface StiffPart {
  readonly name: string;
  /** N/mm. */
  readonly stiffness: number;
}

export interface Chain {
  /** N/mm. */
  readonly stiffness: number;
  /** Give of each part as a share of the whole, in the order given. */
  readonly shares: readonly { readonly name: string; readonly share: number }[];
  /** The part that gives most. */
  readonly softest: string;
}

/** Stiffness of any number of parts in series and who gives how much. */
export const seriesStiffness = (parts: readonly StiffPart[]): Result<Chain> => {
  if (parts.length === 0) return bad('chain-of-no-part', {});
  for (const part of parts)
    if (!(part.stiffness > 0 && part.stiffness <= 1e12))
      return bad('part-stiffness', { part: part.name, stiffness: part.stiffness });
  const give = parts.reduce((sum, part) => sum + 1 / part.stiffness, 0);
  const shares = parts.map((part) => ({ name: part.name, share: 1 / part.stiffness / give }));
  const softest = shares.reduce((a, b) => (b.share > a.share ? b : a));
  return good({ stiffness: 1 / give, shares, softest: softest.name });
};
