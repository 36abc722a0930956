/** Small relations of the pair as built, each against a sum by hand or a published value. */
import { describe, expect, it } from 'vitest';
import {
  diameters,
  isoDeviationG,
  keyRub,
  lastingDent,
  loadFrequency,
  megapascals,
  mm,
  newtonMillimetres,
  newtons,
  newtonsPerMillimetre,
  plain,
  playAfterLead,
  rad,
  shankBends,
  shankStiffness,
  strapRate,
  strapRateEdgewise,
  thickestCoat,
  threadStiffness,
  tipCircle,
  tipsOver,
  waveShift,
} from '../../widgets/engine/index.ts';
import { readThread } from '../../widgets/input/designation.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const thread = (text: string) => valueIn(readThread(text));

describe('what is on the threads', () => {
  it('a coat of 8 µm fills the allowance of position g at pitch 1.5 (ISO 965-1: es = −32 µm)', () => {
    const es = valueIn(isoDeviationG.of({ P: mm(1.5) })).es_g;
    // The table has −0.032, the formula −0.0315.
    expect(valueIn(thickestCoat.of({ c: mm(0.032) })).t_zm).toBeCloseTo(0.008, 12);
    expect(Math.abs(es)).toBeCloseTo(0.032, 2);
  });

  it('10 µm of lead deviation take 10 µm of play and 17 µm of clearance', () => {
    const j = (c: number, d: number) => valueIn(playAfterLead.of({ c: mm(c), delta_L: mm(d) })).j;
    expect(j(0.1, 0) - j(0.1, 0.01)).toBeCloseTo(0.01, 12);
    expect(j(0.1, -0.01)).toBeCloseTo(j(0.1 - 0.01 * Math.sqrt(3), 0), 12);
    expect(reasonIn(playAfterLead.of({ c: mm(0.01), delta_L: mm(0.01) }))).toContain('jam before');
  });

  it('a wave of 0.5 µm is taken up by 0.87 µm of shift, whatever the size of the thread', () => {
    expect(valueIn(waveShift.of({ a_s: mm(0.0005) })).x_a).toBeCloseTo(0.000866, 6);
  });
});

describe('axes and pushes', () => {
  it('0.1° between the axes swings a tip 40 mm up by 140 µm, side to side', () => {
    const { r_c } = valueIn(tipCircle.of({ e_o: mm(0), alpha_o: rad(Math.PI / 1800), y: mm(40) }));
    expect(2 * r_c).toBeCloseTo(0.14, 3);
  });

  it('a screw without length tips like a ring of its pitch circle', () => {
    const of = (l: number) => valueIn(tipsOver.of({ F: newtons(50), d_2: mm(8.494), l_e: mm(l), y: mm(15) })).Q_o;
    expect(of(0.1)).toBeCloseTo((50 * 4.247) / 15, 0);
    // r + l tan 30°/2 = 4.247 + 2.887 = 7.134; 50 × 7.134/15 = 23.8.
    expect(of(10)).toBeCloseTo(23.8, 1);
  });

  it('the key of the Stop rubs by 2.1 and 4.1 N under 83.9 and 165.9 N·mm', () => {
    const rub = (M: number) => valueIn(keyRub.of({ mu_g: plain(0.2), M_L: newtonMillimetres(M), r_k: mm(8) })).F_kr;
    expect(rub(83.9)).toBeCloseTo(2.1, 1);
    expect(rub(-165.9)).toBeCloseTo(4.1, 1);
  });
});

describe('what gives', () => {
  it('an engaged M10 in steel gives by the compliances of VDI 2230 (from memory)', () => {
    const { d3 } = diameters(thread('M10x1.5'));
    const k = valueIn(threadStiffness.of({ E_l: megapascals(210_000), d: mm(10), d_3: d3 })).k_e;
    const area = (d: number) => (Math.PI * d * d) / 4;
    expect(1 / k).toBeCloseTo((5 / area(d3) + 3.3 / area(10)) / 210_000, 15);
    // Never as stiff as half a diameter of its own core.
    expect(k).toBeLessThan(valueIn(shankStiffness.of({ E_l: megapascals(210_000), d_3: d3, l: mm(5) })).k_l);
  });

  it('a shank bends as the curvature of a cantilever sums up, and counts its length by the cube and its core by the fourth power', () => {
    const of = (l: number, d: number) =>
      valueIn(shankBends.of({ Q_y: newtons(2), l: mm(l), E_l: megapascals(210_000), d_3: mm(d) })).u_y;
    // Curvature Q (l − x)/(E I) at x turns all that is beyond; summed by the midpoint rule.
    const [l, I, steps] = [20, (Math.PI * 7.577 ** 4) / 64, 2000];
    let sum = 0;
    for (let i = 0; i < steps; i++) {
      const x = (l * (i + 0.5)) / steps;
      sum += (((2 * (l - x)) / (210_000 * I)) * (l - x) * l) / steps;
    }
    expect(of(l, 7.577) / sum).toBeCloseTo(1, 6);
    expect(of(40, 7.577) / of(20, 7.577)).toBeCloseTo(8, 9);
    expect(of(20, 5) / of(20, 10)).toBeCloseTo(16, 9);
  });

  it('a weight swings as on a spring that it stretches by g/ω²', () => {
    const f = valueIn(loadFrequency.of({ k_12: newtonsPerMillimetre(20_600), W: newtons(19.6133) })).f_n;
    // A mass of 2 kg on 20.6 N/µm: √(20.6e6/2)/2π.
    expect(f).toBeCloseTo(Math.sqrt(20.6e6 / 2) / (2 * Math.PI), 6);
    expect(reasonIn(loadFrequency.of({ k_12: newtonsPerMillimetre(1), W: newtons(0) }))).toContain('nothing swings');
  });

  it('a strap pushed edgewise is the strap that bends, turned, less its shear', () => {
    const of = { E_f: megapascals(2000), l_m: mm(20) };
    const flat = valueIn(strapRate.of({ ...of, b_f: mm(8), t_f: mm(1.2) })).k_f;
    const edge = valueIn(strapRateEdgewise.of({ ...of, b_f: mm(8), t_f: mm(1.2) })).k_f;
    // Two at 10 mm: 690 and about 20 000 N·mm a radian; without shear 31 000.
    expect(2 * flat * 100).toBeCloseTo(691, 0);
    expect((2 * edge * 100) / 20_000).toBeCloseTo(1, 2);
    const slim = { ...of, l_m: mm(800), b_f: mm(8), t_f: mm(1.2) };
    expect(
      valueIn(strapRateEdgewise.of(slim)).k_f / valueIn(strapRate.of({ ...slim, b_f: mm(1.2), t_f: mm(8) })).k_f,
    ).toBeCloseTo(1, 2);
  });

  it('a ball dents aluminium by nothing at first yield and by micrometres at 50 N', () => {
    const dent = (F: number) =>
      lastingDent.of({ F: newtons(F), R: mm(3), Y: megapascals(276), E_s: megapascals(57_978), nu_2: plain(0.33) });
    expect(valueIn(dent(2)).z_y).toBeLessThan(3e-5);
    expect(valueIn(dent(5)).z_y).toBeGreaterThan(5e-5);
    expect(valueIn(dent(50)).z_y).toBeGreaterThan(0.002);
    expect(valueIn(dent(50)).z_y).toBeLessThan(0.004);
    expect(reasonIn(dent(1))).toContain('hold from');
  });
});
