/** The head of a solid, by which a pointer turns it. */
import type { Adjuster } from '../../../assembly/adjuster/adjuster.ts';
import { type Role, reach, widestStep } from '../../../assembly/adjuster/part.ts';
import { type Aim, onPicture } from './view.ts';

/** A finger may miss it by so much, in picture units. */
const SLACK = 12;

/** Whether the pointer is on the widest step of the turned part; `place` is the picture on the page, `at` the heights of the parts, mm. */
export const isOnHead = (
  event: PointerEvent,
  place: Element,
  adjuster: Adjuster,
  { aim, at }: { readonly aim: Aim; readonly at: Readonly<Record<Role, number>> },
): boolean => {
  const box = place.getBoundingClientRect();
  const unit = aim.frame.width / box.width;
  const [x, y] = [(event.clientX - box.left) * unit, (event.clientY - box.top) * unit];
  const step = widestStep(adjuster.turned);
  const [middle, top] = onPicture(aim, [0, 0, at.turned + step.to]);
  const [, bottom] = onPicture(aim, [0, 0, at.turned + step.from]);
  return Math.abs(x - middle) < reach(step) * aim.scale + SLACK && y > top - SLACK && y < bottom + SLACK;
};
