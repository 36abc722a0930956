/** The solid of one adjuster on its stage: how it is held, and a step of putting it together seen to be done. */
import type { Role } from '../../assembly/adjuster/part.ts';
import { springEnds } from '../../assembly/adjuster/spring-place.ts';
import { bodiesOf } from '../kit/solid/bodies.ts';
import { canvasOn } from '../kit/solid/canvas.ts';
import type { Lit, View } from '../kit/solid/shot.ts';
import { PICTURE } from '../kit/solid/view.ts';
import { BEGIN, between, type Pose, type Posed } from './pose.ts';
import type { State } from './state.ts';

export interface Live {
  pose: Pose;
  /** `over` puts what lies over the picture where this pose of it wants it. */
  readonly show: (s: State, pose: Posed, over: (pose: Posed) => void) => void;
  readonly drawn: () => boolean;
  readonly comes: () => boolean;
}

/** Half planes that a part is made of where the machine is slow. */
const COARSE = 24;
/** How long a step takes to be seen, ms. */
const PASSES = 500;
const lessMotion = (): boolean => window.matchMedia('(prefers-reduced-motion: reduce)').matches;

export const liveOn = (stage: HTMLElement, again: () => void): Live => {
  const canvas = canvasOn(stage, PICTURE, again);
  let shown: { readonly s: State; readonly pose: Posed } | undefined;
  /** A step is seen to be done, unless the reader wants less motion. */
  let passing: { readonly from: Posed; readonly since: number } | undefined;
  let stepShown: number | undefined;

  const live: Live = {
    pose: BEGIN,
    show: (s, pose, over) => {
      if (shown && stepShown !== live.pose.step && shown.s.adjuster === s.adjuster && !lessMotion())
        passing = { from: shown.pose, since: performance.now() };
      stepShown = live.pose.step;
      shown = { s, pose };
      canvas.show({
        of: s.adjuster,
        bodies: (net) => bodiesOf(s.adjuster, net === 'coarse' ? COARSE : undefined),
        view: () => {
          const t = passing ? Math.min(1, (performance.now() - passing.since) / PASSES) : 1;
          const now = passing && t < 1 ? between(passing.from, pose, t * t * (3 - 2 * t)) : pose;
          if (t >= 1) passing = undefined;
          return { view: viewOf(s, now), moves: passing !== undefined, over: () => over(now) };
        },
      });
    },
    drawn: canvas.drawn,
    comes: canvas.comes,
  };
  return live;
};

const NONE: Lit = { side: 0, from: 0, to: 0, aside: 0 };
/** As the picture takes it: all round, open on the right, the other flank on the right. */
const ASIDE = { 'all round': 0, lifted: 1, tipped: 2 } as const;

/** Which flanks of a part are lit: those that carry, where the two threads are engaged. */
export const litOf = (s: State, pose: Posed, role: Role): { A: Lit; C: Lit } => {
  const one = (thread: 'A' | 'C'): Lit => {
    const fitted = s.adjuster[thread];
    const flank = s.carrying.flank[thread];
    if (!fitted || !flank) return NONE;
    const lowerRole: Role = thread === 'A' ? 'base' : 'turned';
    const upperRole: Role = thread === 'A' ? 'turned' : 'carried';
    if (role !== lowerRole && role !== upperRole) return NONE;
    const { lower, upper } = fitted.joint;
    const [a, b] = [s.standing.at[lowerRole], s.standing.at[upperRole]];
    const from = Math.max(lower.from + a, upper.from + b);
    const to = Math.min(lower.to + a, upper.to + b);
    const shift = pose.at[role] - s.standing.at[role];
    // The pressed flank of the upper part looks down at the base; that of the lower part looks up.
    const side = (flank === 'pressed' ? -1 : 1) * (role === upperRole ? 1 : -1);
    return { side, from: from + shift, to: to + shift, aside: ASIDE[s.aside[thread] ?? 'all round'] };
  };
  return { A: one('A'), C: one('C') };
};

const viewOf = (s: State, pose: Posed): View => {
  const springs = springEnds(s.adjuster, pose);
  return {
    aim: pose.aim,
    cut: pose.cut,
    marked: pose.marked,
    place: (body) => {
      if (body.name === 'post') return { lift: 0, turns: 0 };
      if (body.name === 'spring' && springs)
        return { lift: springs.foot, turns: 0, stretch: Math.max(0.5, springs.head - springs.foot) };
      return { lift: pose.at[body.with] + (body.name === 'tip' ? pose.tipLift : 0), turns: pose.turns[body.with] };
    },
    lit: (body) => litOf(s, pose, body.with),
    // With the lock off the post and its arm hold nothing.
    shown: ({ name }) => (name === 'post' || name === 'arm' ? pose.locked : name === 'spring' ? pose.sprung : true),
  };
};
