/**
 * The work of putting an adjuster of the book together, as lines that can be done in one order only. What may as well be done sooner or later (gauging a
 * thread, stoning the base, pressing a ball in, measuring the height) is left out, so that an order asked of these has one right answer.
 */

import { type BuildStep, buildOrder } from '../assembly/adjuster/build-order.ts';
import { readAdjuster } from '../assembly/adjuster/text.ts';
import { bad, good, type Result } from '../engine/index.ts';
import { stepSaid } from '../figures/kit/build-steps.ts';
import type { Adjusters } from './adjusters.ts';

const FORCED: readonly BuildStep['do'][] = [
  'clean',
  'home',
  'back',
  'mark',
  'lock',
  'stretch',
  'zero',
  'turn',
  'reverse',
];
/** Both ways of turning may come first; one is asked. */
const once = (step: BuildStep, i: number, all: readonly BuildStep[]): boolean =>
  step.do !== 'turn' || all.findIndex((s) => s.do === 'turn') === i;

export const workInOrder = (name: string, adjusters: Adjusters): Result<readonly string[]> => {
  const text = adjusters.get(name);
  if (text === undefined) return bad('adjuster-unknown', { name, known: [...adjusters.keys()] });
  const adjuster = readAdjuster(text);
  if (!adjuster.ok) return adjuster;
  // Only names are taken, so what the bench can read does not matter here.
  const steps = buildOrder(adjuster.value, { eps_A: 0, eps_C: 0, theta_h: 0.02, e_g: 0.001, mu: 0.1 });
  if (!steps.ok) return steps;
  return good(
    steps.value
      .filter((step) => FORCED.includes(step.do))
      .filter(once)
      .map((step) => stepSaid(step, adjuster.value, 'metric').name),
  );
};
