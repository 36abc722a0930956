/** The numbers that the sheet asks for, and the preload case that they make. */
import { type Adjuster, type Fitted, springForce } from '../../assembly/adjuster/adjuster.ts';
import { lockStiffnessOf } from '../../assembly/adjuster/lock-stiffness.ts';
import { type PreloadOf, preloadOf } from '../../assembly/preload-of.ts';
import type { Result } from '../../engine/index.ts';
import type { NumbersOf } from '../kit/figure.ts';

export const SHEET_QUANTITIES = [
  'k_d',
  'S_w',
  's_w',
  'e_w',
  'l_A',
  'b_A',
  'l_C',
  'b_C',
  'q_e',
  'theta_h',
  't_l',
  'eps_A',
  'eps_C',
  'a_A',
  'a_C',
  'F_lo',
  'F_hi',
  'W_c',
  'F_0',
  'k_s',
  'F_g',
  'mu',
  'r_h',
  'kappa',
  'R',
  'l',
  'Delta_T',
  'sigma_a',
  'tau_a',
] as const;

export const SHEET_CHOICES = [
  'arrangement',
  'assembly',
  'divider',
  'periodic',
  'spring',
  'action',
  'attitude',
  'seat',
  'path',
] as const;

export type SheetNumbers = NumbersOf<
  'A' | 'C',
  (typeof SHEET_QUANTITIES)[number],
  (typeof SHEET_CHOICES)[number],
  'parts' | 'adjuster'
>;

/**
 * The numbers with those in place that parts state: threads, what a turn is divided by, the ball, the springs and their force where
 * the stroke begins, the stiffness of the lock, the step wanted. The rest of the fields stands.
 */
export const asStated = (numbers: SheetNumbers, adjuster: Adjuster, C: Fitted): SheetNumbers => {
  const { divider, divisions, tip, springs, A, keptDiameters } = adjuster;
  const F_0 = springForce(adjuster, adjuster.anticlockwise.n);
  const kappa = lockStiffnessOf(adjuster);
  return {
    ...numbers,
    threads: { A: A.thread, C: C.thread },
    values: {
      ...numbers.values,
      q_e: keptDiameters,
      ...(divisions !== undefined && { k_d: divisions }),
      ...(tip.kind === 'ball' && { R: tip.diameter / 2 }),
      ...(springs?.rate !== undefined && { k_s: springs.rate }),
      ...(F_0 !== undefined && { F_0 }),
      ...(kappa !== undefined && { kappa }),
      ...(adjuster.wantedStep !== undefined && { s_w: adjuster.wantedStep }),
    },
    choices: { ...numbers.choices, divider, ...(springs && { spring: springs.between }) },
  };
};

/** Over so many turns from the start. Weight of the turned part, side load and friction of the guide are not asked for. */
export const preloadOfSheet = ({ threads, values, choices }: SheetNumbers, to: number): Result<PreloadOf> =>
  preloadOf({ threads, values: { ...values, W_t: 0, Q_s: 0, mu_g: 0, M_L: 0, r_k: 1 }, choices }, to);
