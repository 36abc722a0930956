/**
 * Parts that hold: printed fits, clips, press fits, a ball in a socket, the base.
 *
 * Snap arms: P6, a printed arm of a web guide to snap fits (2026, read): h 1.6, lip 0.8, strain 2.5 % → length 8.76. P5, the worked example of a maker’s design guide to snap joints
 * (from memory): arm 19 × 9.5, tapered, thickness 3.28 at its root, strain 2 %, modulus 1815 MPa, friction 0.6, lip 30° → 32.5 N aside, 58.5 N to push on.
 * Sockets and balls: heights of fits.json worked apart from the engine, of ISO 4762 widths. Core of an annulus: D 30, d 20 → 5.4167 (a calculator of the web, read).
 */
import { describe, expect, it } from 'vitest';
import {
  BALLS,
  ballFloor,
  ballInterference,
  ballSeat,
  ballStands,
  convexRadius,
  convexRock,
  drawnHole,
  drawnOutside,
  frictionRead,
  holeOffset,
  megapascals,
  mm,
  newtonMillimetres,
  newtons,
  outsideOffset,
  plain,
  pressPressure,
  pressStrain,
  pressTorque,
  rad,
  ringFull,
  ringTips,
  SOCKETS,
  snapArm,
  snapForce,
  snapPush,
  snapStrain,
} from '../../widgets/engine/index.ts';
import { reasonIn, valueIn } from '../support/results.ts';

describe('a printed fit', () => {
  it('a piece that goes into the hole drawn by its own offset goes in with the clearance asked', () => {
    const { o_h } = valueIn(holeOffset.of({ w_d: mm(13.25), w_n: mm(12.9) }));
    expect(o_h).toBeCloseTo(0.35, 12);
    const { w_d } = valueIn(drawnHole.of({ w_n: mm(12.9), c_n: mm(0), o_h }));
    expect(w_d).toBeCloseTo(13.25, 12);
    // Printed, a hole loses its offset and an outside gains its own: what is left between them is the clearance.
    const { o_u } = valueIn(outsideOffset.of({ w_p: mm(10.12), w_d: mm(10) }));
    const hole = valueIn(drawnHole.of({ w_n: mm(8), c_n: mm(0.2), o_h })).w_d - o_h;
    const plug = valueIn(drawnOutside.of({ w_n: mm(hole), c_n: mm(0.1), o_u })).w_d + o_u;
    expect(hole - 8).toBeCloseTo(0.2, 12);
    expect(hole - plug).toBeCloseTo(0.1, 12);
  });
});

describe('a snap arm', () => {
  it('is as long as a published printed arm (P6), and strained by just what was allowed', () => {
    const l = valueIn(snapArm.of({ t_a: mm(1.6), y_a: mm(0.8), eps_m: plain(0.025) })).l_a;
    expect(Math.abs(l - 8.76)).toBeLessThan(0.005);
    expect(valueIn(snapStrain.of({ t_a: mm(1.6), y_a: mm(0.8), l_a: l })).eps_f).toBeCloseTo(0.025, 12);
  });
  it('pushes aside and on as in a design guide’s example (P5)', () => {
    const P = valueIn(
      snapForce.of({ b_a: mm(9.5), t_a: mm(3.28), E_f: megapascals(1815), eps_f: plain(0.02), l_a: mm(19) }),
    ).P_a;
    expect(Math.abs(P - 32.5)).toBeLessThan(0.1);
    const W = valueIn(
      snapPush.of({ m_a: plain(1), P_a: newtons(32.5), mu_f: plain(0.6), alpha_a: rad(Math.PI / 6) }),
    ).F_on;
    expect(Math.abs(W - 58.5)).toBeLessThan(0.1);
  });
  it('has the force of a beam held at one end, 3 E I y/l³', () => {
    const [b, t, l, y, E] = [6, 2, 14, 0.5, 2100];
    const { eps_f } = valueIn(snapStrain.of({ t_a: mm(t), y_a: mm(y), l_a: mm(l) }));
    const { P_a } = valueIn(snapForce.of({ b_a: mm(b), t_a: mm(t), E_f: megapascals(E), eps_f, l_a: mm(l) }));
    expect(P_a).toBeCloseTo((3 * E * ((b * t ** 3) / 12) * y) / l ** 3, 9);
  });
  it('locks where the lip is too steep for the friction, and says from where', () => {
    expect(
      reasonIn(snapPush.of({ m_a: plain(2), P_a: newtons(10), mu_f: plain(0.6), alpha_a: rad(Math.PI / 3) })),
    ).toContain('less than 59.0');
  });
});

describe('a press fit', () => {
  const pressure = (D: number, d: number, nu: number) =>
    valueIn(pressPressure.of({ E_f: megapascals(2000), eps_f: plain(0.004), d_k: mm(d), D_k: mm(D), nu_f: plain(nu) }))
      .p_k;
  it('is a thin ring, E ε (D − d)/d, where its wall is thin, and E ε/(1 + ν) without end', () => {
    expect(pressure(10.02, 10, 0.35) / (2000 * 0.004 * (0.02 / 10))).toBeCloseTo(1, 2);
    expect(pressure(500, 1, 0.35) / ((2000 * 0.004) / 1.35)).toBeCloseTo(1, 4);
  });
  it('balances the cut ring: hoop stress summed over the wall is pressure times bore', () => {
    const [D, d] = [18, 10];
    const p = pressure(D, d, 0.35);
    const hoop = (r: number) => ((p * d ** 2) / (D ** 2 - d ** 2)) * (1 + D ** 2 / (4 * r ** 2));
    const N = 4000;
    let sum = 0;
    for (let i = 0; i < N; i++) sum += (hoop(d / 2 + ((D - d) / 2) * ((i + 0.5) / N)) * (D - d)) / 2 / N;
    expect((2 * sum) / (p * d)).toBeCloseTo(1, 5);
    // At the bore the strain is the interference over the diameter.
    expect((hoop(d / 2) + 0.35 * p) / 2000).toBeCloseTo(0.004, 9);
    expect(valueIn(pressStrain.of({ I_k: mm(0.04), d_k: mm(10) })).eps_f).toBeCloseTo(0.004, 12);
  });
  it('holds a torque of friction times area times radius', () => {
    const M = valueIn(pressTorque.of({ mu_f: plain(0.3), p_k: megapascals(2), d_k: mm(10), b_k: mm(6) })).M_kn;
    expect(M).toBeCloseTo(0.3 * 2 * (Math.PI * 10 * 6) * 5, 9);
  });
  it('refuses a hub without a wall', () => {
    const flat = pressPressure.of({ E_f: megapascals(1), eps_f: plain(0), d_k: mm(10), D_k: mm(10), nu_f: plain(0) });
    expect(reasonIn(flat)).toContain('no wall');
  });
});

describe('a ball in a hexagon socket', () => {
  /** Ball, key; height of the centre over the rim of the narrowest and of the widest socket. */
  const HEIGHTS = [
    [3.175, 2.5, 0.9657, 0.9252],
    [3.969, 3, 1.288, 1.252],
    [4.763, 4, 1.277, 1.216],
    [5.556, 5, 1.19, 1.055],
    [6.35, 6, 1.01, 0.8098],
    [7.144, 6, 1.923, 1.826],
    [8.731, 8, 1.72, 1.533],
    [11.113, 10, 2.398, 2.234],
  ] as const;
  it.each(HEIGHTS)('%d in a %d mm socket rests from %d down to %d over the rim', (ball, key, most, least) => {
    const socket = SOCKETS.find((s) => s.key === key);
    expect(socket).toBeDefined();
    const heights = socket?.flats.map((s) => valueIn(ballSeat.of({ D_b: mm(ball), s_f: mm(s) })).h_b);
    expect(heights?.[0]).toBeCloseTo(most, 2);
    expect(heights?.[1]).toBeCloseTo(least, 2);
  });
  it('is loose in every socket where it has the width of the key', () => {
    for (const { key, flats } of SOCKETS)
      for (const s of flats) {
        expect(valueIn(ballInterference.of({ D_b: mm(key), s_f: mm(s) })).I_b).toBeLessThan(0);
        expect(reasonIn(ballSeat.of({ D_b: mm(key), s_f: mm(s) }))).toContain('drops into');
      }
  });
  it('touches the middle of each flat at the rim and nothing else: found again by nearest points of the hexagon', () => {
    const [D, s] = [6.35, 6.08];
    const h = valueIn(ballSeat.of({ D_b: mm(D), s_f: mm(s) })).h_b;
    for (let i = 0; i <= 200; i++) {
      // A point of one side of the rim, from corner to corner.
      const along = (s / Math.sqrt(3)) * (i / 200 - 0.5);
      const far = Math.hypot(s / 2, along, h);
      expect(far).toBeGreaterThanOrEqual(D / 2 - 1e-12);
      if (i === 100) expect(far).toBeCloseTo(D / 2, 12);
    }
  });
  it('stands out by radius and height less what it was pressed, with the rest of the depth under it', () => {
    const { p_o } = valueIn(ballStands.of({ D_b: mm(6.35), h_b: mm(0.9), x_b: mm(0.4) }));
    expect(p_o).toBeCloseTo(3.675, 12);
    expect(valueIn(ballFloor.of({ t_k: mm(4), D_b: mm(6.35), p_o })).g_b).toBeCloseTo(4 - (6.35 - 3.675), 12);
    expect(reasonIn(ballStands.of({ D_b: mm(6), h_b: mm(0.5), x_b: mm(5) }))).toContain('pressed so far');
  });
  it('balls that are sold in inches have their size', () => {
    for (const { diameter, inch } of BALLS) {
      if (inch === undefined) continue;
      const [top, bottom] = inch.split('/').map(Number) as [number, number];
      expect(Math.abs((25.4 * top) / bottom - diameter)).toBeLessThan(0.001);
    }
  });
});

describe('a foot on a plane', () => {
  it('stays down all round inside the core of its ring: D 30, d 20, published 5.4167', () => {
    const Q = valueIn(ringFull.of({ F: newtons(100), R_o: mm(15), R_i: mm(10), y_b: mm(50) })).Q_b;
    expect((Q * 50) / 100).toBeCloseTo(5.4167, 4);
  });
  it('tips over the outside of the ring, and never before it lifts', () => {
    const given = { F: newtons(70), R_o: mm(6.5), R_i: mm(5.5), y_b: mm(40) };
    expect(valueIn(ringFull.of(given)).Q_b).toBeCloseTo(4.88, 2);
    expect(valueIn(ringTips.of(given)).Q_tp).toBeCloseTo(11.375, 9);
  });
  it('rocks on a convex face as a rolled arc does, found by rolling it', () => {
    const rho = valueIn(convexRadius.of({ R_o: mm(6.5), s_c: mm(0.01) })).rho_h;
    expect(rho).toBeCloseTo(2112.505, 2);
    const { psi_b, u_y } = valueIn(convexRock.of({ Q_y: newtons(1), F: newtons(70), rho_h: rho, y_b: mm(40) }));
    expect(u_y).toBeCloseTo(psi_b * 40, 12);
    expect(psi_b).toBeCloseTo(0.000_275_7, 6);
    // Rolled by ψ, the arc touches ρ ψ away, and the tip stands y sin ψ − ρ (…): moments about the place of touch are level.
    const touch = rho * psi_b;
    const tip = { x: touch - rho * Math.sin(psi_b) + 40 * Math.sin(psi_b), z: rho - (rho - 40) * Math.cos(psi_b) };
    expect(70 * (touch - tip.x) - 1 * tip.z).toBeCloseTo(0, 3);
  });
  it('falls over where its tip is above the middle of its face', () => {
    const over = convexRock.of({ Q_y: newtons(0), F: newtons(1), rho_h: mm(30), y_b: mm(40) });
    expect(reasonIn(over)).toContain('falls over');
  });
});

describe('friction as it was measured', () => {
  it('gives back the friction with which the thread was raised', () => {
    const [F, d_2, L, mu] = [20, 9.026, 1.5, 0.17];
    const M = ((F * d_2) / 2) * Math.tan(Math.atan(mu / Math.cos(Math.PI / 6)) + Math.atan(L / (Math.PI * d_2)));
    expect(
      valueIn(frictionRead.of({ M_r: newtonMillimetres(M), F: newtons(F), d_2: mm(d_2), L: mm(L) })).mu,
    ).toBeCloseTo(mu, 9);
    expect(reasonIn(frictionRead.of({ M_r: newtonMillimetres(1), F: newtons(F), d_2: mm(d_2), L: mm(L) }))).toContain(
      'without friction',
    );
  });
});
