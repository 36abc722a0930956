/**
 * Pitch diameter over three wires.
 *
 * Source: NIST (NBS) Handbook H28, appendix on three-wire measurement, from memory; Machinery's Handbook, measuring screw threads, from memory.
 * Half-angle α = 30°, wire w, pitch P, lead angle λ, all lengths mm:
 *   best wire, touching at the pitch diameter   w = P/(2 cos α) = 0.57735 P
 *   over wires                                  M = d2 + w (1 + 1/sin α) − P/2 · cot α = d2 + 3 w − 0.86603 P
 * The wires lie along the groove and not square to the axis, which pushes them out by c = (w/2) tan²λ cos α cot α more; M above leaves
 * it out, so that d2 is read too large by c:
 *   λ        1°       2°       3°       4°       6°       10°
 *   c/w      0.0002   0.0009   0.0021   0.0037   0.0083   0.0233
 * 1.7 µm on M8×1.25 (3.17°, w 0.72 mm), 6.6 µm on a two-start one. A wire must stand proud of the crest, w > 7√3/24 P = 0.505 P, and touch the
 * straight flank below it, w < 7√3/12 P = 1.010 P, on a crest flat of P/8. Measuring force and the flattening of the wires are left out.
 */
import { mm } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { type Bad, bad } from '../kernel/result.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'wire-rides-on-crests': WireMisfit;
    'wire-sinks-below-crests': WireMisfit;
    'over-wires-too-little': { readonly measured: number };
    'lead-angle-too-steep': { readonly lambda: number };
  }
}

interface WireMisfit {
  readonly wire: number;
  readonly pitch: number;
  /** Wires between these two measure the pitch diameter. */
  readonly low: number;
  readonly high: number;
  readonly best: number;
}

const ALPHA = Math.PI / 6;
const COT = 1 / Math.tan(ALPHA);
const ROOT3 = Math.sqrt(3);

/** How much M exceeds d2. */
const overPitch = (w: number, P: number): number => w * (1 + 1 / Math.sin(ALPHA)) - (P / 2) * COT;

const misfit = ({ w_w, P }: { readonly w_w: number; readonly P: number }): Bad | undefined => {
  const [low, high] = [((7 * ROOT3) / 24) * P, ((7 * ROOT3) / 12) * P];
  if (w_w > low && w_w < high) return undefined;
  const values = { wire: w_w, pitch: P, low, high, best: P / (2 * Math.cos(ALPHA)) };
  return w_w > low ? bad('wire-rides-on-crests', values) : bad('wire-sinks-below-crests', values);
};

export const bestWire = relation({
  name: 'best-wire',
  says: 'Best wire for a 60° thread: it touches the flanks at the pitch diameter, where an error of the angle does not count.',
  takes: ['P'],
  gives: { w_b: 'P/(2*cos(30*deg))' },
  source: 'NBS Handbook H28, three-wire measurement (from memory).',
  compute: ({ P }) => ({ w_b: mm(P / (2 * Math.cos(ALPHA))) }),
});

export const overWires = relation({
  name: 'over-wires',
  says: 'Measurement over three wires, without the slope of the wires.',
  takes: ['d_2', 'P', 'w_w'],
  gives: { M_w: 'd_2 + w_w*(1 + 1/sin(30*deg)) - P/2/tan(30*deg)' },
  source: 'NBS Handbook H28, three-wire measurement (from memory); the lead-angle term is left out, see wire-slope.',
  refuses: misfit,
  compute: ({ d_2, P, w_w }) => ({ M_w: mm(d_2 + overPitch(w_w, P)) }),
});

export const pitchDiameterOverWires = relation({
  name: 'pitch-diameter-over-wires',
  says: 'Pitch diameter from a measurement over three wires, without the slope of the wires.',
  takes: ['M_w', 'P', 'w_w'],
  gives: { d_2: 'M_w - w_w*(1 + 1/sin(30*deg)) + P/2/tan(30*deg)' },
  source: 'NBS Handbook H28, three-wire measurement (from memory); the lead-angle term is left out, see wire-slope.',
  refuses: (inputs) =>
    misfit(inputs) ??
    (inputs.M_w > overPitch(inputs.w_w, inputs.P) ? undefined : bad('over-wires-too-little', { measured: inputs.M_w })),
  compute: ({ M_w, P, w_w }) => ({ d_2: mm(M_w - overPitch(w_w, P)) }),
});

export const wireSlope = relation({
  name: 'wire-slope',
  says: 'What the slope of the wires adds to the measurement, and to the pitch diameter found if it is left out.',
  takes: ['w_w', 'lambda'],
  gives: { c_w: 'w_w/2*tan(lambda)^2*cos(30*deg)/tan(30*deg)' },
  source:
    'NBS Handbook H28, three-wire measurement, first term in the lead angle (from memory); checked in the tests on the helicoid.',
  refuses: ({ lambda }) => (lambda <= Math.PI / 18 ? undefined : bad('lead-angle-too-steep', { lambda })),
  compute: ({ w_w, lambda }) => ({ c_w: mm((w_w / 2) * Math.tan(lambda) ** 2 * Math.cos(ALPHA) * COT) }),
});
