/**
 * Where each part is held while the adjuster is put together, a step of its order of work at a time: the picture after step i shows what
 * that step did. Heights over the bottom of the base in mm, turns clockwise.
 */
import { type Adjuster, type Fitted, standing } from '../../../assembly/adjuster/adjuster.ts';
import { type BuildStep, buildOrder } from '../../../assembly/adjuster/build-order.ts';
import { positionOut } from '../../../assembly/adjuster/joint.ts';
import type { Role } from '../../../assembly/adjuster/part.ts';

export interface Held {
  readonly at: Readonly<Record<Role, number>>;
  readonly turns: Readonly<Record<Role, number>>;
  /** How far the ball is still above its seat. */
  readonly tipLift: number;
  readonly locked: boolean;
  readonly marked: boolean;
  readonly sprung: boolean;
}

/** Between parts that are not yet joined, mm. */
export const CLEAR = 5;
const SHOWN: readonly BuildStep['do'][] = ['ball', 'ball-set', 'home', 'back', 'mark', 'lock', 'stretch', 'height'];
/** Readings are checked on the card; the picture shows only what is put where. */
const NO_BENCH = { eps_A: 0, eps_C: 0, theta_h: 0, e_g: 0, mu: 0.1 };

export const stepsOf = (a: Adjuster): readonly BuildStep[] => {
  const order = buildOrder(a, NO_BENCH);
  return order.ok ? order.value.filter((step) => SHOWN.includes(step.do)) : [];
};

type Place = 'away' | 'home' | 'in place';

const positionAt = (fitted: Fitted, place: Place, engaged: number): number =>
  place === 'away' ? fitted.start + engaged + CLEAR : place === 'home' ? positionOut(fitted.joint, 0) : fitted.start;

/** Turns clockwise of the upper part from where it was put together: it climbs as it is screwed out. */
const turnsAt = (fitted: Fitted, position: number): number =>
  // A joint opens as its upper part turns against its hand.
  -(position - fitted.start) / (fitted.thread.h * fitted.thread.L);

export const heldAfter = (a: Adjuster, steps: readonly BuildStep[], count: number): Held => {
  const done = steps.slice(0, count);
  const place = (joint: 'A' | 'C'): Place => {
    const last = done.filter((s) => (s.do === 'home' || s.do === 'back') && s.joint === joint).at(-1);
    return last === undefined ? 'away' : last.do === 'home' ? 'home' : 'in place';
  };
  const did = (what: BuildStep['do']) => done.some((s) => s.do === what);
  const start = standing(a, 0);
  const u = positionAt(a.A, place('A'), start.engaged.A);
  const v = a.C ? positionAt(a.C, place('C'), start.engaged.C) : 0;
  const turned = turnsAt(a.A, u);
  return {
    at: { base: 0, turned: u, carried: u + v },
    turns: { base: 0, turned, carried: a.C ? turned + turnsAt(a.C, v) : 0 },
    tipLift: steps.some((s) => s.do === 'ball' || s.do === 'ball-set') && !did('ball') && !did('ball-set') ? CLEAR : 0,
    locked: did('lock'),
    marked: did('mark'),
    sprung: did('stretch'),
  };
};
