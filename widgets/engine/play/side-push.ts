/**
 * A push from the side against a thread that an axial force presses on one flank: when the flank first lifts somewhere.
 *
 * Model: a rigid screw in a rigid nut whose touching flanks give a little, alike all round and all along the engaged length l. With
 * r = d_2/2, t = tan 30°, φ round the axis and z along it from the middle of the engagement, a shift across and a lean
 * close the flank by amounts in proportion to sin φ and to z·sin φ, so its axial load per area is
 *   w = 1 + sin φ·(b + a z)          (mean F; across it each flank also pushes t·w towards the axis)
 * Side force and moment about the middle of the engagement:
 *   F t b/2            and            F (r b/2 + t a l²/24)
 * The push Q acts at the height y. Two cases bound what a thread does:
 *   held: friction of the flanks, or a guide at their height, takes Q itself, and the screw leans only: b = r α, a = t α,
 *     α F (r² + t² l²/12)/2 = Q y, lifts where α (r + t l/2) = 1;
 *   free: the flanks alone take it: b = 2Q/(F t), a = 24 (Q y − r Q/t)/(F t l²), lifts where |b| + |a| l/2 = 1.
 * That is a screw that stands in its nut: the flanks push it inwards, as a ball in a cone. A nut that stands on its screw is pushed
 * outwards, t changes its sign, and y + r/t takes the place of y − r/t: free, it lifts at a smaller push; held, at the same.
 * Past that the lean grows by degrees until, held, all of the load stands on one place, at Q y = F (r + t l/2): the screw tips over. Friction in the moment, the give of the parts and play in
 * the guide are left out. Source: derived here; the tests spread the load over points of a ring and solve for its balance.
 * Units: N, mm.
 */
import { newtons } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { bad } from '../kernel/result.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'push-without-lever': Record<string, never>;
  }
}

export const liftHeld = relation({
  name: 'lift-held',
  says: 'Side push at which a pressed flank first lifts, where friction or a guide at the thread takes the side force.',
  takes: ['F', 'd_2', 'l_e', 'y'],
  gives: { Q_lh: 'F*(d_2^2/4 + l_e^2/36)/(2*y*(d_2/2 + l_e/(2*sqrt(3))))' },
  source: 'Balance of moments on flanks that give alike all round; derived in side-push.ts.',
  refuses: ({ y }) => (y > 0 ? undefined : bad('push-without-lever', {})),
  compute: ({ F, d_2, l_e, y }) => ({
    Q_lh: newtons((F * (d_2 ** 2 / 4 + l_e ** 2 / 36)) / (2 * y * (d_2 / 2 + l_e / (2 * Math.sqrt(3))))),
  }),
});

/** The push that lifts, the flanks alone taking the side force at this arm about the middle of the engagement. */
const liftAt = (F: number, l_e: number, arm: number) => newtons((F * l_e) / (Math.sqrt(3) * (2 * l_e + 12 * arm)));

export const liftFree = relation({
  name: 'lift-free',
  says: 'Side push at which a pressed flank first lifts, for a screw in its nut, where the slope of the flanks alone takes the side force.',
  takes: ['F', 'd_2', 'l_e', 'y'],
  gives: { Q_lf: 'F*l_e/(sqrt(3)*(2*l_e + 12*abs(y - sqrt(3)*d_2/2)))' },
  source: 'Balance of forces and moments on flanks that give alike all round, no friction; derived in side-push.ts.',
  compute: ({ F, d_2, l_e, y }) => ({
    Q_lf: liftAt(F, l_e, Math.abs(y - (Math.sqrt(3) * d_2) / 2)),
  }),
});

export const liftFreeNut = relation({
  name: 'lift-free-nut',
  says: 'The same for a nut that stands on its screw: its flanks push it outwards, so a smaller push lifts one.',
  takes: ['F', 'd_2', 'l_e', 'y'],
  gives: { Q_lf: 'F*l_e/(sqrt(3)*(2*l_e + 12*(y + sqrt(3)*d_2/2)))' },
  source:
    'Balance of forces and moments as in lift-free, with the slope of the flanks reversed; derived in side-push.ts.',
  compute: ({ F, d_2, l_e, y }) => ({
    Q_lf: liftAt(F, l_e, y + (Math.sqrt(3) * d_2) / 2),
  }),
});

export const tipsOver = relation({
  name: 'tips-over',
  says: 'Side push that tips a screw right over in a thread that an axial force presses, the side force held at the thread.',
  takes: ['F', 'd_2', 'l_e', 'y'],
  gives: { Q_o: 'F*(d_2/2 + l_e/(2*sqrt(3)))/y' },
  source:
    'All of the load on the last place that touches, at the end of the engagement: its push stands square to the flank and has this arm about the middle.',
  refuses: ({ y }) => (y > 0 ? undefined : bad('push-without-lever', {})),
  compute: ({ F, d_2, l_e, y }) => ({ Q_o: newtons((F * (d_2 / 2 + l_e / (2 * Math.sqrt(3)))) / y) }),
});
