/**
 * The wall of a sleeve that carries one thread outside and another inside.
 *
 * Sources. Basic sizes: ISO 68-1 / ISO 724, root of the outer thread d3 = d − 17√3/24 P, major diameter of the inner one D.
 * Limits: ISO 965-1 and ASME B1.1 by way of tolerance.ts. With d3 the root of the outer thread and D that of the inner,
 *   wall = (d3 − D)/2, its thin side less by the offset e of the two axes.
 * No class limits either root on the side that thins the wall, so what stands here is what a sound tool cuts:
 *   outer root, least   the `least` root of tolerance.ts: smallest screw with the smallest root radius of the standard
 *   inner root, most    D2 max + 11/12 H, the reference limit of ASME B1.1 and B1.13M (from memory): the flat of P/8 worn to P/24
 * Lengths mm; a negative wall means that the threads cut through each other.
 */
import { type Millimetres, mm, plain } from '../kernel/quantity.ts';
import { relation } from '../kernel/relation.ts';
import { type Bad, bad, good, type Result } from '../kernel/result.ts';
import { diameters, type Thread } from '../thread/thread.ts';
import type { ExternalLimits, InternalLimits } from '../thread/tolerance.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'root-leaves-nothing': { readonly pitch: number; readonly d_2: number };
    'sleeve-without-wall': {
      readonly inside: string;
      readonly outside: string;
      readonly wall: number;
      /** The size of the thread outside, at its pitch, that leaves no wall as yet. */
      readonly beyond: number;
    };
  }
}

const ROOT3 = Math.sqrt(3);

export const nestedWall = relation({
  name: 'nested-wall',
  says: 'Wall between the thread outside a sleeve and the thread inside it, root to root.',
  takes: ['d_3A', 'd_C'],
  gives: { t_w: '(d_3A - d_C)/2' },
  source: 'Geometry: half the difference of two diameters; roots from ISO 68-1.',
  compute: ({ d_3A, d_C }) => ({ t_w: mm((d_3A - d_C) / 2) }),
});

export const leastRoot = relation({
  name: 'least-root',
  says: 'Least root of a metric screw: how deep the groove may go when its root radius is the smallest allowed.',
  takes: ['d_2', 'P'],
  gives: { d_3: 'd_2 - (sqrt(3)/2 - 1/4)*P' },
  source: 'Root radius 0.125 P: Machinery’s Handbook, 27th ed., p. 1794, minor diameter d2 min − 0.616025 P.',
  refuses: ({ d_2, P }) => (d_2 > (ROOT3 / 2 - 1 / 4) * P ? undefined : bad('root-leaves-nothing', { pitch: P, d_2 })),
  compute: ({ d_2, P }) => ({ d_3: mm(d_2 - (ROOT3 / 2 - 1 / 4) * P) }),
});

export const largestNutRoot = relation({
  name: 'largest-nut-root',
  says: 'Largest root of a nut thread to allow for: no class limits it, a good tap stays within this.',
  takes: ['D_2', 'P'],
  gives: { D_r: 'D_2 + 11*sqrt(3)/24*P' },
  source: 'ASME B1.1 and B1.13M, reference limit D2 max + 0.793857 P (from memory); ISO 965-1 sets none.',
  compute: ({ D_2, P }) => ({ D_r: mm(D_2 + ((11 * ROOT3) / 24) * P) }),
});

export const thinSide = relation({
  name: 'thin-side',
  says: 'Wall on its thin side, where the axes of the two threads are not in line.',
  takes: ['t_w', 'e_o'],
  gives: { t_s: 't_w - e_o' },
  source: 'Geometry: two circles with their centres apart; what one side loses the other gains.',
  compute: ({ t_w, e_o }) => ({ t_s: mm(t_w - e_o) }),
});

export const printedLines = relation({
  name: 'printed-lines',
  says: 'How many printed lines fit side by side in a wall.',
  takes: ['t_s', 'w_l'],
  gives: { m_l: 't_s/w_l' },
  source: 'Definition: wall over the width of one line.',
  compute: ({ t_s, w_l }) => ({ m_l: plain(t_s / w_l) }),
});

export interface NestedWall {
  /** From basic sizes. */
  readonly nominal: Millimetres;
  /** Thinnest and thickest that parts within their limits can have, axes coinciding; `least` may be negative. */
  readonly least: Millimetres;
  readonly most: Millimetres;
  /** The diameters behind them: root of the outer thread, root of the inner one. */
  readonly outer: { readonly nominal: Millimetres; readonly least: Millimetres; readonly most: Millimetres };
  readonly inner: { readonly nominal: Millimetres; readonly least: Millimetres; readonly most: Millimetres };
}

/** The wall of a sleeve, or a reason where even the basic sizes leave none. */
export const wallOfSleeve = (outside: ExternalLimits, inside: InternalLimits): Result<NestedWall> => {
  const [A, C] = [outside.thread, inside.thread];
  const refusal = nestingRefusal(A, C);
  if (refusal !== undefined) return refusal;
  const outer = { nominal: diameters(A).d3, least: outside.root.least, most: outside.root.design };
  const largest = largestNutRoot.of({ D_2: inside.pitch.max, P: C.P });
  if (!largest.ok) return largest;
  const inner = { nominal: C.d, least: inside.major.min, most: largest.value.D_r };
  const wall = (d3: Millimetres, D: Millimetres) => mm(Number(((d3 - D) / 2).toFixed(9)));
  return good({
    nominal: wall(outer.nominal, inner.nominal),
    least: wall(outer.least, inner.most),
    most: wall(outer.most, inner.least),
    outer,
    inner,
  });
};

/** Why thread C does not go inside a sleeve with thread A, or undefined where basic sizes leave a wall. */
export const nestingRefusal = (A: Thread, C: Thread): Bad | undefined => {
  const { d3 } = diameters(A);
  const wall = (d3 - C.d) / 2;
  if (wall > 0) return undefined;
  return bad('sleeve-without-wall', {
    inside: C.designation,
    outside: A.designation,
    wall,
    beyond: C.d + A.d - d3,
  });
};
