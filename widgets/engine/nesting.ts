/**
 * Nesting: the turned part is a sleeve, thread A outside and thread C inside it, and what is left between them has to be a wall.
 *
 * Basic sizes: wall = (d3_A − d_C)/2, from the rounded root of A (d3 = d − 17√3/24 P, ISO 68-1 with root radius H/6) to the major diameter of C.
 * At the limits: the root of A as deep as its class and the least root allow (tolerance.ts), and the bore thread at the largest
 * pitch diameter of its class with its root cut to a flat of P/24, D2_max + 11√3/24 P (Unified practice, from memory: no class sets
 * a limit there, the tap does). Lengths mm; a negative wall means that the threads cut into each other.
 */
import { type Millimetres, megapascals, mm, newtons, plain } from './quantity.ts';
import { relation } from './relation.ts';
import { diameters, type Thread } from './thread.ts';
import { limitsOfSize, usualClasses } from './tolerance.ts';

const ROOT3 = Math.sqrt(3);

export const nestedWall = relation({
  name: 'nested-wall',
  says: 'Wall of the sleeve between its two threads, at basic sizes; below nought the threads cut into each other.',
  takes: ['d_A', 'P_A', 'd_C'],
  gives: { t_n: '(d_A - 17*sqrt(3)/24*P_A - d_C)/2' },
  source: 'Geometry on the ISO 68-1 design profile: half of core of thread A less major diameter of thread C.',
  refuses: ({ d_A, P_A }) =>
    d_A - ((17 * ROOT3) / 24) * P_A > 0
      ? undefined
      : `A pitch of ${Number(P_A.toPrecision(4))} mm leaves no core in a diameter of ${Number(d_A.toPrecision(4))} mm: take a finer pitch for thread A.`,
  compute: ({ d_A, P_A, d_C }) => ({ t_n: mm((d_A - ((17 * ROOT3) / 24) * P_A - d_C) / 2) }),
});

export const coreLoad = relation({
  name: 'core-load',
  says: 'Load that the core of a thread carries at a stated stress; a sleeve has a bore through it.',
  takes: ['sigma_a', 'd_3', 'd_o'],
  gives: { F_a: 'sigma_a*pi/4*(d_3^2 - d_o^2)' },
  source: 'Stress is force over area; the core is the least section (no bending, no stress raised at the root).',
  refuses: ({ d_3, d_o }) =>
    d_o < d_3
      ? undefined
      : `A bore of ${Number(d_o.toPrecision(4))} mm leaves nothing of a core of ${Number(d_3.toPrecision(4))} mm: take a smaller bore.`,
  compute: ({ sigma_a, d_3, d_o }) => ({
    F_a: newtons(megapascals(sigma_a) * (Math.PI / 4) * (d_3 ** 2 - d_o ** 2)),
  }),
});

export const wantedNetLead = relation({
  name: 'wanted-net-lead',
  says: 'Motion per turn to look for, from the motion wanted per step and the steps in a turn.',
  takes: ['s_w', 'k'],
  gives: { Delta_w: 's_w*k' },
  source: 'Definition: k equal steps make a turn.',
  compute: ({ s_w, k }) => ({ Delta_w: mm(s_w * plain(k)) }),
});

/** The deepest that the root of this thread may reach as a screw, by its class or by the everyday one; basic where no class exists. */
export const leastRoot = (thread: Thread, cls = usualClasses(thread, 'external')[0]): Millimetres => {
  const limits = cls === undefined ? undefined : limitsOfSize(thread, cls);
  return limits?.ok && limits.value.side === 'external' ? limits.value.root.least : diameters(thread).d3;
};

/** The widest that this thread may be cut into a bore, by its class or by the everyday one; basic where no class exists. */
export const widestBore = (thread: Thread, cls = usualClasses(thread, 'internal')[0]): Millimetres => {
  const limits = cls === undefined ? undefined : limitsOfSize(thread, cls);
  return limits?.ok && limits.value.side === 'internal'
    ? mm(Math.max(thread.d, limits.value.pitch.max + ((11 * ROOT3) / 24) * thread.P))
    : thread.d;
};
