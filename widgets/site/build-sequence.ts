/**
 * The work of putting an adjuster of the book together, as rows of lines that can be done in one order only. What may as well be done sooner or later
 * (gauging a thread, stoning the base, pressing a ball in, marking, measuring the height) is left out. Of what may be done in any order among
 * itself (thread A or thread C, lock or springs, turning or reversing) a row has one, so that an order asked of its lines has one right answer.
 */

import { type BuildStep, buildOrder } from '../assembly/adjuster/build-order.ts';
import { readAdjuster } from '../assembly/adjuster/text.ts';
import { bad, good, type Result } from '../engine/index.ts';
import { stepSaid } from '../figures/kit/build-steps.ts';
import type { Adjusters } from './adjusters.ts';

/** What is done one after the other; of each place, one of its steps. */
const places = (joint: 'A' | 'C'): readonly ((step: BuildStep) => boolean)[] => [
  (step) => step.do === 'clean',
  (step) => step.do === 'home' && step.joint === joint,
  (step) => step.do === 'back' && step.joint === joint,
  (step) => step.do === 'lock' || step.do === 'stretch',
  (step) => step.do === 'zero',
  (step) => step.do === 'turn' || step.do === 'reverse',
];

/** Every way to take one of each place. */
const rowsOf = (choices: readonly (readonly string[])[]): readonly (readonly string[])[] =>
  choices.reduce<readonly (readonly string[])[]>(
    (rows, place) => rows.flatMap((row) => place.map((line) => [...row, line])),
    [[]],
  );

export const workInOrder = (name: string, adjusters: Adjusters): Result<readonly (readonly string[])[]> => {
  const text = adjusters.get(name);
  if (text === undefined) return bad('adjuster-unknown', { name, known: [...adjusters.keys()] });
  const adjuster = readAdjuster(text);
  if (!adjuster.ok) return adjuster;
  // Only names are taken, so what the bench can read does not matter here.
  const steps = buildOrder(adjuster.value, { eps_A: 0, eps_C: 0, theta_h: 0.02, e_g: 0.001, mu: 0.1 });
  if (!steps.ok) return steps;
  const said = (of: (step: BuildStep) => boolean): string[] =>
    steps.value.filter(of).map((step) => stepSaid(step, adjuster.value, 'metric').name);
  return good(
    (['A', 'C'] as const).flatMap((joint) =>
      rowsOf(
        places(joint)
          .map(said)
          .filter((lines) => lines.length > 0),
      ),
    ),
  );
};
