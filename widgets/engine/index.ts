/** The engine's one public entry. Everything outside widgets/engine imports from here. */

import { gainA, gainC, netLead, netMotion, relativeMotion, slippedLead, turnedMotion, windUp } from './differential.ts';
import type { AnyRelation } from './relation.ts';
import { divisionsFor, perAngle, perStep, stepsFor } from './resolution.ts';
import {
  advance,
  lead,
  leadAngle,
  minorDiameter,
  onceRound,
  pitchDiameter,
  pitchFromTpi,
  rootDiameter,
  threadHeight,
  turnsFromAngle,
} from './thread.ts';
import { stroke, threadEaten, turnsAvailable } from './travel.ts';

export * from './differential.ts';
export * from './quantity.ts';
export * from './relation.ts';
export * from './resolution.ts';
export * from './result.ts';
export * from './symbols.ts';
export * from './thread.ts';
export * from './travel.ts';

/** Every relation, in teaching order. Chapters name them by `name`; the command line lists them. */
export const RELATIONS: readonly AnyRelation[] = [
  pitchFromTpi,
  lead,
  turnsFromAngle,
  advance,
  threadHeight,
  pitchDiameter,
  minorDiameter,
  rootDiameter,
  onceRound,
  leadAngle,
  turnedMotion,
  relativeMotion,
  netLead,
  netMotion,
  slippedLead,
  windUp,
  gainA,
  gainC,
  perStep,
  perAngle,
  divisionsFor,
  stepsFor,
  turnsAvailable,
  stroke,
  threadEaten,
] as unknown as readonly AnyRelation[];

export const relationNamed = (name: string): AnyRelation | undefined => RELATIONS.find((r) => r.name === name);
