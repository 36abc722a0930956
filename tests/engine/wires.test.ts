/** Three wires: published wires and measurements, the inverse, and the wire laid on the helicoid itself. */

import { describe, expect, it } from 'vitest';
import { bestWire, mm, overWires, pitchDiameterOverWires, rad, wireSlope } from '../../widgets/engine/index.ts';
import { reasonOf } from '../../widgets/words/reason.ts';
import reference from '../reference/wires.json' with { type: 'json' };

const best = (P: number) => {
  const result = bestWire.of({ P: mm(P) });
  return result.ok ? result.value.w_b : Number.NaN;
};
const over = (d_2: number, P: number, w_w: number) => {
  const result = overWires.of({ d_2: mm(d_2), P: mm(P), w_w: mm(w_w) });
  return result.ok ? result.value.M_w : reasonOf(result);
};
const expected = (id: string, name: string) => {
  const row = reference.examples.find((e) => e.id === id)?.expected.find((e) => e.name === name);
  if (!row) throw new Error(`${id} ${name}`);
  return row;
};

describe('best wire and measurement over wires', () => {
  it('agrees with a worked measurement of 7/16-14 over 0.045 in wires (source-read)', () => {
    const [m, w] = [expected('c2-three-wire-7_16-14', 'over_wires'), expected('c2-three-wire-7_16-14', 'best_wire')];
    const P = 25.4 / 14;
    const d2 = 25.4 * 0.4375 - 0.6495190528 * P;
    // Published to a thousandth: half of that.
    expect(Math.abs(Number(over(d2, P, 25.4 * 0.045)) / 25.4 - m.value)).toBeLessThan(0.0005);
    expect(Math.abs(best(P) / 25.4 - w.value)).toBeLessThan(0.0005);
    expect(expected('c2-three-wire-7_16-14', 'over_wires').unit).toBe('in');
  });

  it('gives the tabulated best wires to the last digit (from memory), but for tpi 10, printed one up', () => {
    const PITCH = { tpi20: 25.4 / 20, tpi13: 25.4 / 13, tpi10: 25.4 / 10, 'P1.0': 1, 'P1.25': 1.25, 'P1.5': 1.5 };
    for (const [name, P] of Object.entries(PITCH)) {
      const row = expected('c3-best-wire-table', name);
      const found = best(P) / (row.unit === 'in' ? 25.4 : 1);
      expect(Math.abs(found - row.value), name).toBeLessThan(0.000005 + 1e-9);
    }
  });

  it('touches at the pitch diameter, so that M = d2 + P √3/2', () => {
    for (const P of [0.5, 1.25, 3]) expect(over(20, P, best(P))).toBeCloseTo(20 + (P * Math.sqrt(3)) / 2, 9);
  });

  it('goes out and back', () => {
    const M = Number(over(7.188, 1.25, 0.8));
    const back = pitchDiameterOverWires.of({ M_w: mm(M), P: mm(1.25), w_w: mm(0.8) });
    expect(back.ok && back.value.d_2).toBeCloseTo(7.188, 12);
  });

  it('refuses a wire that sinks below the crests or rides on them', () => {
    // On P 1.5: 0.505181 × 1.5 = 0.7578, 1.010363 × 1.5 = 1.5155.
    expect(over(9.026, 1.5, 0.75)).toBe(
      'A wire of 0.75 mm sinks below the crests of a thread of 1.5 mm pitch: take one between 0.7578 and 1.516 mm, best 0.866 mm.',
    );
    expect(over(9.026, 1.5, 1.52)).toMatch(/^A wire of 1.52 mm rides on the crests of a thread of 1.5 mm pitch/);
    expect(typeof over(9.026, 1.5, 0.758)).toBe('number');
    expect(typeof over(9.026, 1.5, 1.515)).toBe('number');
    // At the lower end the wire is flush with the crest: M = d.
    expect(over(10 - 0.6495190528 * 1.5, 1.5, 0.7577723)).toBeCloseTo(10, 5);
    const back = pitchDiameterOverWires.of({ M_w: mm(10), P: mm(1.5), w_w: mm(0.5) });
    expect(back.ok || reasonOf(back)).toMatch(/^A wire of 0.5 mm sinks/);
  });

  it('allows the wires a published rule allows, 0.560 to 0.900 over threads per inch', () => {
    for (const share of [0.56, 0.9]) expect(typeof over(10, 1.27, share * 1.27)).toBe('number');
  });

  it('refuses a measurement less than the wires take up', () => {
    const back = pitchDiameterOverWires.of({ M_w: mm(1), P: mm(1.5), w_w: mm(0.866) });
    expect(back.ok || reasonOf(back)).toBe(
      'A measurement of 1 mm is less than the wires alone take up: measure again over all three wires.',
    );
  });
});

describe('wire-slope, what the slope of the wires adds', () => {
  const slope = (w: number, lambda: number) => {
    const result = wireSlope.of({ w_w: mm(w), lambda: rad(lambda) });
    return result.ok ? result.value.c_w : Number.NaN;
  };

  /**
   * Twice the distance of a wire from the axis plus one wire, found on the helicoid: the wire is a straight line at distance R
   * from the axis, sloped by γ; the flank z = Lφ/2π + P/4 + (r − d2/2) tan 30°. It touches when the least distance of the flank from
   * the line is w/2, and lies at the slope where R is least.
   */
  const onHelicoid = (d2: number, P: number, L: number, w: number): number => {
    const distance = (R: number, gamma: number, r: number, phi: number) => {
      const [x, y] = [r * Math.cos(phi) - R, r * Math.sin(phi)];
      const z = (L * phi) / (2 * Math.PI) + P / 4 + (r - d2 / 2) * Math.tan(Math.PI / 6);
      const along = y * Math.cos(gamma) + z * Math.sin(gamma);
      return Math.sqrt(x * x + y * y + z * z - along * along);
    };
    const golden = (f: (x: number) => number, a: number, b: number): number => {
      const g = (Math.sqrt(5) - 1) / 2;
      let [low, high] = [a, b];
      for (let i = 0; i < 60; i++) {
        const [p, q] = [high - g * (high - low), low + g * (high - low)];
        if (f(p) < f(q)) high = q;
        else low = p;
      }
      return (low + high) / 2;
    };
    const nearest = (R: number, gamma: number): number => {
      const atPhi = (phi: number) => {
        const r = golden((x) => distance(R, gamma, x, phi), d2 / 2 - P, d2 / 2 + P);
        return distance(R, gamma, r, phi);
      };
      return atPhi(golden(atPhi, -0.3, 0.3));
    };
    const touching = (gamma: number): number => {
      let [low, high] = [d2 / 2, d2 / 2 + P];
      for (let i = 0; i < 36; i++) {
        const R = (low + high) / 2;
        if (nearest(R, gamma) < w / 2) low = R;
        else high = R;
      }
      return (low + high) / 2;
    };
    const lambda = Math.atan(L / (Math.PI * d2));
    // The slope at which R is least lies close to the lead angle; a parabola through three slopes finds the least.
    const h = 0.2 * lambda;
    const [a, b, c] = [touching(lambda - h), touching(lambda), touching(lambda + h)];
    return 2 * (b - (a - c) ** 2 / (8 * (a - 2 * b + c))) + w;
  };

  it('is what a wire on the helicoid shows over the plain formula', () => {
    const rows = [
      { d2: 7.188, P: 1.25, L: 1.25, within: 0.1e-3 },
      { d2: 22.051, P: 3, L: 3, within: 0.2e-3 },
      { d2: 7.188, P: 1.25, L: 2.5, within: 1e-3 },
    ];
    for (const { d2, P, L, within } of rows) {
      const w = best(P);
      const extra = onHelicoid(d2, P, L, w) - Number(over(d2, P, w));
      const c = slope(w, Math.atan(L / (Math.PI * d2)));
      expect(Math.abs(extra - c), `d2 ${d2} L ${L}: ${extra} against ${c}`).toBeLessThan(within);
      expect(c).toBeGreaterThan(5 * within);
    }
  });

  it('is 1.66 µm on M8×1.25 with its best wire, four times that on two starts', () => {
    // 0.75 × 0.72169 × (1.25/(π 7.188))².
    expect(1000 * slope(best(1.25), Math.atan(1.25 / (Math.PI * 7.188)))).toBeCloseTo(1.6585, 3);
    expect(1000 * slope(best(1.25), Math.atan(2.5 / (Math.PI * 7.188)))).toBeCloseTo(6.634, 3);
  });

  it('gives the table of its header', () => {
    const TABLE = [
      [1, 0.0002],
      [2, 0.0009],
      [3, 0.0021],
      [4, 0.0037],
      [6, 0.0083],
      [10, 0.0233],
    ] as const;
    for (const [degrees, share] of TABLE)
      expect(Math.abs(slope(1, (degrees * Math.PI) / 180 - 1e-12) - share)).toBeLessThan(0.00005);
  });

  it('refuses lead angles over 10°', () => {
    expect(wireSlope.of({ w_w: mm(1), lambda: rad(Math.PI / 18) }).ok).toBe(true);
    const result = wireSlope.of({ w_w: mm(1), lambda: rad(0.2) });
    expect(result.ok || reasonOf(result)).toBe(
      'Read a lead angle of 11.46°; the one-term correction is good up to 10°: measure so steep a thread with balls or by projection.',
    );
  });
});
