/** The numbers that the sheet asks for, and the preload case that they make. */
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
  'parts'
>;

/** Over so many turns from the start. Weight of the turned part, side load and friction of the guide are not asked for. */
export const preloadOfSheet = ({ threads, values, choices }: SheetNumbers, to: number): Result<PreloadOf> =>
  preloadOf({ threads, values: { ...values, W_t: 0, Q_s: 0, mu_g: 0 }, choices }, to);
