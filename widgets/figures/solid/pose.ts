/** How the solid is held: looked at, cut, pulled apart; and where that puts its parts. */
import { type Adjuster, standing } from '../../assembly/adjuster/adjuster.ts';
import { heightOf, type Part, type Role, reach, type Step } from '../../assembly/adjuster/part.ts';
import type { State } from './state.ts';
import { type Aim, aimAt, type Look } from './view.ts';

export interface Pose extends Look {
  /** Opening of the cut, degrees. */
  readonly cut: number;
  /** 0 together, 1 all threads clear of each other. */
  readonly apart: number;
}

export const BEGIN: Pose = { round: 15, above: 20, cut: 90, apart: 0 };

export interface Posed {
  readonly aim: Aim;
  readonly cut: number;
  /** Height of the lower end of each part over the bottom of the base, pulled apart. */
  readonly at: Readonly<Record<Role, number>>;
  /** The same at n = 0. */
  readonly home: Readonly<Record<Role, number>>;
  readonly turns: Readonly<Record<Role, number>>;
  /** Of the widest step of the turned part, by which a hand takes hold of it. */
  readonly headRadius: number;
}

/** Between threads that are pulled apart, mm. */
const CLEAR = 5;

export const widestOf = (part: Part): Step =>
  part.outer.reduce((best, o) => (reach(o) > reach(best) + 1e-9 ? o : best));

/** Height to which parts reach at most over the turns that are seen, mm. */
const rangeOf = (a: Adjuster): { bottom: number; top: number } => {
  const ends = [a.anticlockwise.n, a.clockwise.n].map((n) => standing(a, Math.max(-6, Math.min(6, n))));
  return {
    bottom: Math.min(0, ...ends.flatMap(({ at }) => [at.turned, at.carried])),
    top: Math.max(...ends.flatMap((s) => [s.height, s.at.turned + heightOf(a.turned)])),
  };
};

export const posed = ({ adjuster: a, standing: now, locked }: State, pose: Pose): Posed => {
  const start = standing(a, 0);
  const [liftA, liftC] = [start.engaged.A + CLEAR, a.C ? start.engaged.C + CLEAR : 0].map((x) => x * pose.apart) as [
    number,
    number,
  ];
  const lift = { base: 0, turned: liftA, carried: liftA + liftC };
  const { bottom, top } = rangeOf(a);
  const raised = (at: Readonly<Record<Role, number>>) => ({
    base: at.base,
    turned: at.turned + lift.turned,
    carried: at.carried + lift.carried,
  });
  const half = Math.max(...[a.base, a.turned, ...(a.carried ? [a.carried] : [])].flatMap((p) => p.outer.map(reach)));
  const guide = 0.14 * Math.max(a.A.thread.d, a.C?.thread.d ?? 0);
  return {
    aim: aimAt(pose, bottom, top + lift.carried, a.carried ? half + 4.2 * guide : half),
    cut: pose.cut,
    at: raised(now.at),
    home: raised(start.at),
    turns: { base: 0, turned: now.n, carried: locked ? 0 : now.n },
    headRadius: widestOf(a.turned).r,
  };
};
