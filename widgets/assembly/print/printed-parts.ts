/** The printed parts that hold: clip, cap and post as they are drawn for a printer, and what the clip’s arms and the cap’s bore are strained by. */
import {
  drawnHole,
  good,
  megapascals,
  mm,
  newtons,
  plain,
  pressStrain,
  type Result,
  rad,
  snapArm,
  snapForce,
  snapPush,
  snapStrain,
} from '../../engine/index.ts';
import type { Part } from '../adjuster/part.ts';
import { clipPlate, LIP_BACK, type Printer } from './clip-plate.ts';
import type { Plate } from './plate.ts';
import { LADDER_QUANTITIES, type LadderValues, printerOf } from './printer-of.ts';
import { capPart, postPart } from './turned-prints.ts';

export const PRINTED_QUANTITIES = [
  ...LADDER_QUANTITIES,
  'w_l',
  'c_n',
  't_a',
  'l_a',
  'y_a',
  'alpha_a',
  'b_a',
  'r_k',
  't_f',
  'b_f',
  'E_f',
  'eps_m',
  'mu_f',
  'D_k',
  'b_k',
  'w_o',
  'c_o',
  'l_o',
  'd_o',
] as const;

type Values = LadderValues & Readonly<Record<(typeof PRINTED_QUANTITIES)[number], number>>;

export interface PrintedParts {
  readonly printer: Printer;
  readonly clip: Plate;
  /** Or why they would not come out; the clip does not depend on them. */
  readonly cap: Result<Part>;
  readonly post: Result<Part>;
  /** Of the hexagon in the clip, as it comes out. */
  readonly grip: number;
  readonly arm: {
    readonly strain: number;
    readonly least: number;
    readonly force: number;
    readonly on: number;
    /** Undefined where its lips hold until they break. */
    readonly off: number | undefined;
  };
  /** Round the cap’s bore, where it is pressed on. */
  readonly capStrain: number;
}

const ARMS = 2;

export const printedPartsOf = (v: Values): Result<PrintedParts> => {
  const read = printerOf(v);
  if (!read.ok) return read;
  const printer: Printer = { ...read.value.printer, line: v.w_l };
  const clip = clipPlate(
    {
      flats: v.w_n,
      clearance: v.c_n,
      arm: { length: v.l_a, thickness: v.t_a },
      lip: { reach: v.y_a, lean: v.alpha_a },
      height: v.b_a,
      radius: v.r_k,
      strip: { thickness: v.t_f, height: v.b_f },
    },
    printer,
  );
  if (!clip.ok) return clip;
  const cap = capPart({ flats: v.w_n, clearance: v.c_n, outside: v.D_k, depth: v.b_k }, printer);
  const post = postPart({ hole: v.w_o, clearance: v.c_o, length: v.l_o, screw: v.d_o }, printer);
  const strain = snapStrain.of({ t_a: mm(v.t_a), y_a: mm(v.y_a), l_a: mm(v.l_a) });
  if (!strain.ok) return strain;
  const least = snapArm.of({ t_a: mm(v.t_a), y_a: mm(v.y_a), eps_m: plain(v.eps_m) });
  if (!least.ok) return least;
  const { eps_f } = strain.value;
  const force = snapForce.of({ b_a: mm(v.b_a), t_a: mm(v.t_a), E_f: megapascals(v.E_f), eps_f, l_a: mm(v.l_a) });
  if (!force.ok) return force;
  const push = (lean: number) =>
    snapPush.of({ m_a: plain(ARMS), P_a: newtons(force.value.P_a), mu_f: plain(v.mu_f), alpha_a: rad(lean) });
  const [on, off] = [push(v.alpha_a), push(LIP_BACK)];
  if (!on.ok) return on;
  const mouth = drawnHole.of({ w_n: mm(v.w_n), c_n: mm(v.c_n), o_h: mm(0) });
  if (!mouth.ok) return mouth;
  const round = pressStrain.of({ I_k: mm(Math.max(0, -v.c_n)), d_k: mm(v.w_n) });
  if (!round.ok) return round;
  return good({
    printer,
    clip: clip.value,
    cap,
    post,
    grip: mouth.value.w_d,
    arm: {
      strain: eps_f,
      least: least.value.l_a,
      force: force.value.P_a,
      on: on.value.F_on,
      off: off.ok ? off.value.F_on : undefined,
    },
    capStrain: round.value.eps_f,
  });
};
