/**
 * How stiff the lock of an adjuster is against turning, N·mm a radian: as its row states, else from its drawing. Springs by their row; a post and its arm as two cantilevers that share the
 * push at the post, where the carried part stands highest and the post is softest. The foot that holds the post and the slot’s face are taken as rigid, so a real one is softer.
 */
import {
  lockStiffness,
  megapascals,
  mm,
  newtons,
  newtonsPerMillimetre,
  type Result,
  shankBends,
  snapForce,
  snapStrain,
  twoInSeries,
} from '../../engine/index.ts';
import type { Adjuster } from './adjuster.ts';
import { lockOfSprings } from './drawn-springs.ts';
import { reach, widestStep } from './part.ts';
import { ARM_WALL, type Post, postOf } from './post.ts';

/** Young’s modulus of a steel rod, MPa (common value for steel, from memory). */
const STEEL = 210_000;

const worked = <T>(r: Result<T>): T | undefined => (r.ok ? r.value : undefined);

/** Of the post, pushed sideways where the arm is at its highest, N/mm. */
const postAcross = ({ half, free }: Post, modulus: number): number | undefined => {
  const push = 1;
  const bent = worked(shankBends.of({ Q_y: newtons(push), l: mm(free), E_l: megapascals(modulus), d_3: mm(2 * half) }));
  return bent && push / bent.u_y;
};

/** Of the arm in its plane, pushed at the post, N/mm: as narrow all along as at its end. */
const armAcross = (a: Adjuster, { x, half, arm }: Post, modulus: number): number | undefined => {
  if (!a.carried || !arm) return undefined;
  const [l_a, t_a] = [mm(Math.max(0.5, -x - reach(widestStep(a.carried)))), mm(2 * (half + ARM_WALL))];
  const y_a = mm(0.001);
  const strain = worked(snapStrain.of({ t_a, y_a, l_a }));
  const force =
    strain &&
    worked(snapForce.of({ b_a: mm(arm.high - arm.low), t_a, E_f: megapascals(modulus), eps_f: strain.eps_f, l_a }));
  return force && force.P_a / y_a;
};

const ofPost = (a: Adjuster): number | undefined => {
  const post = postOf(a);
  const { lock } = a;
  if (!post || (lock.kind !== 'key' && lock.kind !== 'post')) return undefined;
  const of = lock.steel ? STEEL : lock.modulus;
  const k_1 = of === undefined ? undefined : postAcross(post, of);
  if (k_1 === undefined) return undefined;
  const k_2 = post.arm ? lock.modulus && armAcross(a, post, lock.modulus) : Number.POSITIVE_INFINITY;
  if (k_2 === undefined) return undefined;
  const both = post.arm
    ? worked(twoInSeries.of({ k_1: newtonsPerMillimetre(k_1), k_2: newtonsPerMillimetre(k_2) }))?.k_12
    : newtonsPerMillimetre(k_1);
  return both && worked(lockStiffness.of({ k_g: both, r_k: mm(-post.x) }))?.kappa;
};

/** Undefined where neither a stiffness nor a drawing and its material are stated. */
export const lockStiffnessOf = (a: Adjuster): number | undefined =>
  a.lock.kind === 'springs'
    ? a.springs && lockOfSprings(a.springs)
    : a.lock.kind === 'key' || a.lock.kind === 'post'
      ? (a.lock.stiffness ?? ofPost(a))
      : undefined;
