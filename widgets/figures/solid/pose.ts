/** How the solid is held: looked at, cut, pulled apart; and where that puts its parts. */
import { type Adjuster, standing } from '../../assembly/adjuster/adjuster.ts';
import { heightOf, type Role, widestStep } from '../../assembly/adjuster/part.ts';
import { extentsOf } from '../kit/adjuster-extras.ts';
import { CLEAR, type Held, heldAfter, stepsOf } from '../kit/solid/assembling.ts';
import { type Aim, aimAt, type Look, SEEN_TURNS } from '../kit/solid/view.ts';
import type { State } from './state.ts';

export interface Pose extends Look {
  /** Opening of the cut, degrees. */
  readonly cut: number;
  /** 0 together, 1 all threads clear of each other. */
  readonly apart: number;
  /** How many steps of putting it together are done; undefined while it stands whole. */
  readonly step: number | undefined;
}

export const BEGIN: Pose = { round: 15, above: 20, cut: 90, apart: 0, step: undefined };

/** Where the parts are, pulled apart or not, and how that is looked at. */
export interface Posed extends Held {
  readonly aim: Aim;
  readonly cut: number;
  /** Of the widest step of the turned part, by which a hand takes hold of it. */
  readonly headRadius: number;
  /** Whether it stands as it works, nothing apart. */
  readonly whole: boolean;
}

export const posed = (state: State, pose: Pose): Posed =>
  pose.step === undefined ? whole(state, pose) : inHand(state.adjuster, pose, pose.step);

/** While it is put together, every step seen at one scale. */
const inHand = (a: Adjuster, pose: Pose, step: number): Posed => {
  const steps = stepsOf(a);
  const held = heldAfter(a, steps, step);
  const first = heldAfter(a, steps, 0);
  const top = a.carried ? first.at.carried + heightOf(a.carried) : first.at.turned + heightOf(a.turned);
  const room = extentsOf(a, SEEN_TURNS);
  return {
    ...held,
    aim: aimAt(pose, room.bottom, top + a.tip.stands + first.tipLift, Math.max(room.left, room.half)),
    cut: pose.cut,
    headRadius: widestStep(a.turned).r,
    whole: false,
  };
};

const whole = ({ adjuster: a, standing: now, locked }: State, pose: Pose): Posed => {
  const start = standing(a, 0);
  const [liftA, liftC] = [start.engaged.A + CLEAR, a.C ? start.engaged.C + CLEAR : 0].map((x) => x * pose.apart) as [
    number,
    number,
  ];
  const lift = { base: 0, turned: liftA, carried: liftA + liftC };
  const { bottom, top, left, half } = extentsOf(a, SEEN_TURNS);
  const raised = (at: Readonly<Record<Role, number>>) => ({
    base: at.base,
    turned: at.turned + lift.turned,
    carried: at.carried + lift.carried,
  });
  return {
    aim: aimAt(pose, bottom, top + lift.carried, Math.max(left, half)),
    cut: pose.cut,
    at: raised(now.at),
    turns: { base: 0, turned: now.n, carried: locked ? 0 : now.n },
    headRadius: widestStep(a.turned).r,
    whole: pose.apart === 0,
    tipLift: 0,
    locked,
    marked: true,
    sprung: true,
  };
};

const mixed = (a: number, b: number, t: number): number => a + (b - a) * t;
const mixedRoles = (a: Posed['at'], b: Posed['at'], t: number): Posed['at'] => ({
  base: mixed(a.base, b.base, t),
  turned: mixed(a.turned, b.turned, t),
  carried: mixed(a.carried, b.carried, t),
});

/** Between two ways of holding it: 0 the first, 1 the second. */
export const between = (a: Posed, b: Posed, t: number): Posed => ({
  ...b,
  aim: { ...b.aim, scale: mixed(a.aim.scale, b.aim.scale, t), middle: mixed(a.aim.middle, b.aim.middle, t) },
  at: mixedRoles(a.at, b.at, t),
  turns: mixedRoles(a.turns, b.turns, t),
  tipLift: mixed(a.tipLift, b.tipLift, t),
});
