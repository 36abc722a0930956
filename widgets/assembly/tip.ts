/** The ball at the tip and what it stands on, as number sets name them. */
import {
  at,
  bad,
  CONTACT_MATERIALS,
  type ContactMaterial,
  contactModulus,
  good,
  megapascals,
  plain,
  type Result,
} from '../engine/index.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'seat-unknown': { readonly text: string; readonly seats: readonly string[] };
  }
}

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
  if (!seat) return bad('seat-unknown', { text: choices.seat ?? '', seats: CONTACT_MATERIALS.map((m) => m.name) });
  const E = contactModulus.of({
    E_1: megapascals(ball.E),
    nu_1: plain(ball.nu),
    E_2: megapascals(seat.E),
    nu_2: plain(seat.nu),
  });
  return E.ok ? good({ ball, seat, E_s: E.value.E_s, Y: Math.min(ball.Y, seat.Y) }) : E;
};
