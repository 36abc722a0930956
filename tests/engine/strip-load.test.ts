/** Stripping of threads, against a shear area of the handbooks and against the geometry of the ridge. */
import { describe, expect, it } from 'vitest';
import { megapascals, mm, stripNut, stripScrew } from '../../widgets/engine/index.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const INCH = 25.4;

describe('stripping', () => {
  it('of a 1/2-13 UNC screw has the shear area of the handbook: 0.779 square inches an inch engaged', () => {
    // Minor diameter of a 2B nut at most 0.434 in (11.0236 mm), pitch diameter of a 2A screw at least 0.4435 in; the area from memory.
    const { F_st } = valueIn(
      stripScrew.of({
        tau_a: megapascals(1),
        d_1: mm(11.0236),
        d_2: mm(0.4435 * INCH),
        P: mm(INCH / 13),
        l_e: mm(INCH),
      }),
    );
    expect(F_st / INCH ** 2).toBeCloseTo(0.779, 3);
  });

  it('cuts a ridge that is seven eighths of a pitch wide at the crests of the screw, and three quarters at those of the nut', () => {
    // ISO 68-1: flats of P/8 and P/4, flanks of 30°; so a nut is P − P/8 wide at d, a screw P − P/4 at D1.
    const P = 1.5;
    const H = (P * Math.sqrt(3)) / 2;
    const [d, d2, D1] = [10, 10 - (3 / 4) * H, 10 - (5 / 4) * H];
    const nut = valueIn(stripNut.of({ tau_a: megapascals(1), d: mm(d), D_2: mm(d2), P: mm(P), l_e: mm(P) }));
    expect(nut.F_sn / (Math.PI * d)).toBeCloseTo((7 / 8) * P, 9);
    const screw = valueIn(stripScrew.of({ tau_a: megapascals(1), d_1: mm(D1), d_2: mm(d2), P: mm(P), l_e: mm(P) }));
    expect(screw.F_st / (Math.PI * D1)).toBeCloseTo((3 / 4) * P, 9);
  });

  it('is refused where screw and nut do not reach each other', () => {
    expect(
      reasonIn(stripScrew.of({ tau_a: megapascals(60), d_1: mm(12), d_2: mm(9), P: mm(1.5), l_e: mm(10) })),
    ).toContain('no ridge');
  });
});
