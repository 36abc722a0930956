/**
 * The coil of round wire, for comparison: what is bought where a printed spring will not do.
 *
 * k = G d⁴/(8 D³ n), shear at the inside 8 F D K/(π d³) with K = (4C − 1)/(4C − 4) + 0.615/C (Wahl), C = D/d.
 * Source: the usual law of helical springs (any text on machine elements; published example in the test). A printed coil has its layers across the wire and is not for
 * flexing. Units: mm, N, MPa.
 */
import { megapascals, newtonsPerMillimetre } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { bad } from '../kernel/result.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'coil-too-tight': { readonly wire: number; readonly coil: number };
  }
}

export const coilRate = relation({
  name: 'coil-rate',
  says: 'Rate of a coil spring of round wire.',
  takes: ['G_f', 'd_w', 'D_w', 'n_c'],
  gives: { k_f: 'G_f*d_w^4/(8*D_w^3*n_c)' },
  source: 'Twist of the wire; the usual law of helical springs.',
  compute: ({ G_f, d_w, D_w, n_c }) => ({ k_f: newtonsPerMillimetre((G_f * d_w ** 4) / (8 * D_w ** 3 * n_c)) }),
});

export const coilShear = relation({
  name: 'coil-shear',
  says: 'Greatest shear stress in the wire of a coil spring, at the inside of the coil.',
  takes: ['F_k', 'd_w', 'D_w'],
  gives: { tau_f: '8*F_k*D_w/(pi*d_w^3)*((4*D_w/d_w - 1)/(4*D_w/d_w - 4) + 0.615*d_w/D_w)' },
  source: 'Twist with Wahl’s factor for curvature and direct shear.',
  refuses: ({ d_w, D_w }) => (D_w > 1.5 * d_w ? undefined : bad('coil-too-tight', { wire: d_w, coil: D_w })),
  compute: ({ F_k, d_w, D_w }) => {
    const C = D_w / d_w;
    return {
      tau_f: megapascals(((8 * F_k * D_w) / (Math.PI * d_w ** 3)) * ((4 * C - 1) / (4 * C - 4) + 0.615 / C)),
    };
  },
});
