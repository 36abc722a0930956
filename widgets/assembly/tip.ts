/** The ball at the tip and what it stands on, as number sets name them. */
import {
  at,
  CONTACT_MATERIALS,
  type ContactMaterial,
  contactModulus,
  good,
  megapascals,
  plain,
  quoted,
  type Result,
  said,
} from '../engine/index.ts';

export interface Tip {
  readonly ball: ContactMaterial;
  readonly seat: ContactMaterial;
  /** Contact modulus, MPa. */
  readonly E_s: number;
  /** Yield strength of whichever yields first, MPa. */
  readonly Y: number;
}

/** A hardened ball on the chosen material. */
export const tipOf = ({ choices }: { readonly choices: { readonly seat?: string } }): Result<Tip> => {
  const ball = at(CONTACT_MATERIALS, 0);
  const seat = CONTACT_MATERIALS.find((m) => m.name === choices.seat);
  if (!seat)
    return said(
      `Read ${quoted(choices.seat ?? '')}, which is not in the table: use ${CONTACT_MATERIALS.map((m) => m.name).join(', ')}.`,
    );
  const E = contactModulus.of({
    E_1: megapascals(ball.E),
    nu_1: plain(ball.nu),
    E_2: megapascals(seat.E),
    nu_2: plain(seat.nu),
  });
  return E.ok ? good({ ball, seat, E_s: E.value.E_s, Y: Math.min(ball.Y, seat.Y) }) : E;
};
