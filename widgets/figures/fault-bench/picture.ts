/** The jack between its two indicators: one along the axis over the tip, one across it beside the tip. */
import { WORDS } from '#words/figures/fault-bench.ts';
import { type Adjuster, standing } from '../../assembly/adjuster/adjuster.ts';
import { heightOf } from '../../assembly/adjuster/part.ts';
import { springEnds } from '../../assembly/adjuster/spring-place.ts';
import { show, type UnitView, withSign } from '../../input/format.ts';
import { extentsOf } from '../kit/adjuster-extras.ts';
import { type Held, heldAfter, stepsOf } from '../kit/solid/assembling.ts';
import { type Body, bodiesOf } from '../kit/solid/bodies.ts';
import type { Net, View } from '../kit/solid/shot.ts';
import { stillHtml, stillOf } from '../kit/solid/still.ts';
import { type Aim, aimAt, type Frame, onPicture } from '../kit/solid/view.ts';
import { px } from '../kit/svg.ts';
import type { Desk } from './desk.ts';
import { readingAt, type State } from './state.ts';

export const PICTURE: Frame = { width: 520, height: 470, axis: 200 };
const LOOK = { round: 15, above: 14 };
/** Of the height of the jack, left free over it for the indicator. */
const OVER = 0.3;
const COARSE = 24;

interface Pose extends Held {
  readonly aim: Aim;
  readonly together: boolean;
}

export const bodies = (a: Adjuster, net: Net): readonly Body[] => bodiesOf(a, net === 'coarse' ? COARSE : undefined);

/** A loose lock lets the carried part come round where the head is turned back. */
const slipped = (s: State, { direction, work }: Desk): number =>
  s.bench.hidden.fault === 'loose lock' && work && direction === 'down' ? -s.checks.line / (2 * Math.PI) : 0;

export const poseOf = (s: State, desk: Desk): Pose => {
  const { adjuster: a } = s;
  const steps = stepsOf(a);
  const together = desk.step >= steps.length;
  const first = heldAfter(a, steps, 0);
  const { bottom, top, left, half } = extentsOf(a, 1);
  const apart = (a.carried ? first.at.carried + heightOf(a.carried) : top) + a.tip.stands + first.tipLift;
  const high = together ? top + OVER * (top - bottom) : apart;
  const aim = aimAt(LOOK, bottom, high, Math.max(left, half), PICTURE);
  if (!together) return { ...heldAfter(a, steps, desk.step), aim, together };
  return {
    at: s.standing.at,
    turns: { base: 0, turned: s.n, carried: slipped(s, desk) },
    tipLift: 0,
    locked: true,
    marked: true,
    sprung: desk.work,
    aim,
    together,
  };
};

const NOT_LIT = { A: { side: 0, from: 0, to: 0 }, C: { side: 0, from: 0, to: 0 } } as const;

export const viewOf = (s: State, pose: Pose): View => {
  const springs = springEnds(s.adjuster, pose);
  return {
    aim: pose.aim,
    cut: 0,
    marked: pose.marked,
    lit: () => NOT_LIT,
    place: (body) => {
      if (body.name === 'post') return { lift: 0, turns: 0 };
      if (body.name === 'spring' && springs)
        return { lift: springs.foot, turns: 0, stretch: Math.max(0.5, springs.head - springs.foot) };
      return { lift: pose.at[body.with] + (body.name === 'tip' ? pose.tipLift : 0), turns: pose.turns[body.with] };
    },
    shown: ({ name }) => (name === 'post' || name === 'arm' ? pose.locked : name === 'spring' ? pose.sprung : true),
  };
};

export const drawnStill = (s: State, desk: Desk): string => {
  const pose = poseOf(s, desk);
  return stillHtml(stillOf(s.adjuster, pose, pose.aim, pose.turns, { guided: pose.locked, sprung: pose.sprung }));
};

const DIAL = 40;
/** One round of a hand, mm. */
const ROUND = 0.1;

const dialHtml = (x: number, y: number, reading: number, name: string, view: UnitView, round: number): string => {
  const turn = (reading / round) % 1;
  const marks = Array.from({ length: 10 }, (_, i) => {
    const t = (2 * Math.PI * i) / 10;
    return `M${px(x + (DIAL - 6) * Math.sin(t))} ${px(y - (DIAL - 6) * Math.cos(t))}L${px(x + DIAL * Math.sin(t))} ${px(y - DIAL * Math.cos(t))}`;
  }).join('');
  return (
    `<circle class="fault-bench-dial" cx="${px(x)}" cy="${px(y)}" r="${DIAL}"/><path class="fault-bench-marks" d="${marks}"/>` +
    `<path class="fault-bench-hand" d="M${px(x)} ${px(y)}L${px(x + (DIAL - 9) * Math.sin(2 * Math.PI * turn))} ${px(y - (DIAL - 9) * Math.cos(2 * Math.PI * turn))}"/><circle class="fault-bench-hub" cx="${px(x)}" cy="${px(y)}" r="3"/>` +
    `<text class="clear" x="${px(x + DIAL + 10)}" y="${px(y)}" dy="-0.15em">${name}</text><text class="clear value" x="${px(x + DIAL + 10)}" y="${px(y)}" dy="1.1em">${withSign(show(reading, { shown: 'motion', digits: 4 }, view === 'both' ? 'metric' : view))}</text>`
  );
};

/** The indicators stand at the jack once it stands together. */
export const overlayHtml = (s: State, desk: Desk, view: UnitView): string => {
  const { aim, together } = poseOf(s, desk);
  if (!together) return '';
  const { height, side } = readingAt(desk.work ? s.loaded : s.free, s.place, desk.direction);
  const top = standing(s.adjuster, s.n).height;
  const [x, y] = onPicture(aim, [0, 0, top]);
  const reach = s.adjuster.tip.kind === 'ball' ? (s.adjuster.tip.diameter / 2) * aim.scale : 0;
  const dial = { x, y: DIAL + 6 };
  const beside = { x: PICTURE.width - 214, y: y + reach };
  return (
    `<path class="fault-bench-stem" d="M${px(dial.x)} ${px(dial.y + DIAL)}V${px(y)}"/>${dialHtml(dial.x, dial.y, height, WORDS.along, view, ROUND)}` +
    `<path class="fault-bench-stem" d="M${px(beside.x - DIAL)} ${px(beside.y)}H${px(x + reach)}"/>${dialHtml(beside.x, beside.y, side, WORDS.across, view, 10 * ROUND)}`
  );
};
