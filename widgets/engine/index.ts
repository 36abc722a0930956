/** The engine's one public entry. Everything outside widgets/engine imports from here. */

import {
  abbeError,
  cosineErrorFace,
  cosineErrorPoint,
  threeReadingLead,
  twoReadingDoubt,
  twoReadingLead,
} from './calibration.ts';
import { ballOnFlat, contactModulus, firstYield, veeForce, veeSink } from './contact.ts';
import { coreLoad } from './core-load.ts';
import { gain, netLead, netMotion, relativeMotion, slippedLead, turnedMotion, windUp } from './differential.ts';
import { logCreep, thermalGrowth, warming } from './drift.ts';
import {
  backwardRun,
  jointAmplitude,
  jointSlope,
  localRate,
  mostPeriodic,
  periodicError,
  waveAllRound,
  waveLean,
  waveThrough,
} from './drunken-thread.ts';
import {
  climbingTorque,
  collarMeanDiameter,
  collarTorque,
  coreShear,
  efficiency,
  frictionAngle,
  frictionlessTorque,
  handForce,
  nutFactorTorque,
  pairTorque,
  stickSlip,
  threadEfficiency,
  yieldingTorque,
} from './effort.ts';
import { engagementLeft, midMark, usableThread } from './engagement.ts';
import { forceChain, guideFriction, preloadForLife, preloadNeeded } from './force-chain.ts';
import {
  diameterEquivalent,
  leastRate,
  netLeadError,
  periodicSlope,
  positionError,
  rssLeadError,
  trueNetLead,
  worstLeadError,
} from './lead-error.ts';
import { footCorrection, oneFootLift, turnsFor, weightOnFeet } from './levelling.ts';
import { lockSlop, lockSlopMotion, lockStiffness, lockWindUp, stringStiffness, stringTorque } from './lock.ts';
import { largestNutRoot, leastRoot, nestedWall, printedLines, thinSide } from './nesting.ts';
import { ballLift, leverMotion, wedgeRise } from './other-ways.ts';
import { planeHeight, planeRises, planeTilt } from './plane.ts';
import {
  axialPlay,
  axialPlayA,
  axialPlayC,
  flankForces,
  offCentrePlay,
  pinTilt,
  pitchClearance,
  playAfterCoat,
  radialFloat,
  smallAngle,
  stepsLost,
  tilt,
  tipFloat,
  turnsLost,
} from './play.ts';
import { jointShare, retainedForce, separationLoad, springForce } from './preload.ts';
import { ballInterference } from './pressed-ball.ts';
import type { AnyRelation } from './relation.ts';
import { divisionsFor, perAngle, perStep, stepsFor, wantedNetLead } from './resolution.ts';
import { roundingError } from './rounding.ts';
import { liftFree, liftHeld } from './side-push.ts';
import { effort, loadForTorque, loweringTorque, raisingTorque, slopeMetA, slopeMetC } from './slope-met.ts';
import { leadForAngle, longArmFor, stepDown, wedgeFor } from './step-down.ts';
import { shankStiffness, twoInSeries } from './stiffness.ts';
import { shareOfThread, tapDrill } from './tap-drill.ts';
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
import { diameterStepMean, isoDeviationG, isoNutPitchTolerance, isoPitchTolerance } from './tolerance-iso.ts';
import { unifiedAllowanceRule, unifiedPitchToleranceRule } from './tolerance-unified.ts';
import { stroke, threadEaten, turnsAvailable } from './travel.ts';
import { ballPush, feltAtTip, leverBending, leverPush, pushBetweenBalls, wedgePush } from './ways-under-load.ts';
import { bestWire, overWires, pitchDiameterOverWires, wireSlope } from './wires.ts';

export * from './calibration.ts';
export * from './contact.ts';
export * from './core-load.ts';
export * from './designated-limits.ts';
export * from './designation.ts';
export * from './differential.ts';
export * from './drift.ts';
export * from './drunken-thread.ts';
export * from './effort.ts';
export * from './elliptic.ts';
export * from './engagement.ts';
export * from './even-friction.ts';
export * from './fit.ts';
export * from './flanks.ts';
export * from './force-chain.ts';
export * from './fraction.ts';
export * from './in-steps.ts';
export * from './kinematic-coupling.ts';
export * from './lead-error.ts';
export * from './levelling.ts';
export * from './levelling-room.ts';
export * from './levelling-table.ts';
export * from './line-fit.ts';
export * from './lock.ts';
export * from './nesting.ts';
export * from './other-ways.ts';
export * from './pair-catalogue.ts';
export * from './pair-filters.ts';
export * from './pair-row.ts';
export * from './pair-search.ts';
export * from './pair-short.ts';
export * from './pair-verdict.ts';
export * from './parts-list.ts';
export * from './plane.ts';
export * from './play.ts';
export * from './play-batch.ts';
export * from './practice-rig.ts';
export * from './preload.ts';
export * from './pressed-ball.ts';
export * from './quantity.ts';
export * from './random.ts';
export * from './readings-table.ts';
export * from './relation.ts';
export * from './resolution.ts';
export * from './result.ts';
export * from './rounding.ts';
export { listed } from './say.ts';
export * from './series.ts';
export * from './side-push.ts';
export * from './simulator.ts';
export * from './slope-met.ts';
export * from './step-down.ts';
export * from './stiffness.ts';
export * from './symbols.ts';
export * from './tap-drill.ts';
export * from './thread.ts';
export * from './thread-list.ts';
export * from './tolerance.ts';
export * from './tolerance-iso.ts';
export * from './tolerance-unified.ts';
export * from './travel.ts';
export * from './way-prices.ts';
export * from './ways-under-load.ts';
export * from './wires.ts';

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
  gain,
  perStep,
  perAngle,
  divisionsFor,
  stepsFor,
  turnsAvailable,
  stroke,
  threadEaten,
  wantedNetLead,
  roundingError,
  coreLoad,
  nestedWall,
  leastRoot,
  largestNutRoot,
  thinSide,
  printedLines,
  usableThread,
  engagementLeft,
  midMark,
  tapDrill,
  shareOfThread,
  diameterStepMean,
  isoPitchTolerance,
  isoNutPitchTolerance,
  isoDeviationG,
  unifiedPitchToleranceRule,
  unifiedAllowanceRule,
  bestWire,
  overWires,
  pitchDiameterOverWires,
  wireSlope,
  planeHeight,
  planeRises,
  planeTilt,
  footCorrection,
  turnsFor,
  oneFootLift,
  weightOnFeet,
  twoReadingLead,
  twoReadingDoubt,
  threeReadingLead,
  cosineErrorFace,
  cosineErrorPoint,
  abbeError,
  springForce,
  separationLoad,
  jointShare,
  retainedForce,
  forceChain,
  guideFriction,
  preloadNeeded,
  preloadForLife,
  lockSlop,
  lockSlopMotion,
  lockStiffness,
  stringStiffness,
  stringTorque,
  lockWindUp,
  frictionAngle,
  climbingTorque,
  yieldingTorque,
  slopeMetA,
  slopeMetC,
  raisingTorque,
  loweringTorque,
  pairTorque,
  effort,
  loadForTorque,
  frictionlessTorque,
  efficiency,
  threadEfficiency,
  collarMeanDiameter,
  collarTorque,
  handForce,
  nutFactorTorque,
  coreShear,
  stickSlip,
  contactModulus,
  ballOnFlat,
  firstYield,
  veeForce,
  veeSink,
  ballInterference,
  shankStiffness,
  twoInSeries,
  thermalGrowth,
  warming,
  logCreep,
  wedgeRise,
  leverMotion,
  ballLift,
  leadForAngle,
  stepDown,
  wedgeFor,
  longArmFor,
  wedgePush,
  leverPush,
  ballPush,
  pushBetweenBalls,
  feltAtTip,
  leverBending,
  pitchClearance,
  axialPlay,
  axialPlayA,
  axialPlayC,
  playAfterCoat,
  offCentrePlay,
  radialFloat,
  tilt,
  pinTilt,
  smallAngle,
  tipFloat,
  liftHeld,
  liftFree,
  flankForces,
  turnsLost,
  stepsLost,
  netLeadError,
  trueNetLead,
  positionError,
  worstLeadError,
  rssLeadError,
  periodicError,
  localRate,
  periodicSlope,
  leastRate,
  jointAmplitude,
  waveAllRound,
  waveThrough,
  waveLean,
  jointSlope,
  mostPeriodic,
  backwardRun,
  diameterEquivalent,
] as unknown as readonly AnyRelation[];

export const relationNamed = (name: string): AnyRelation | undefined => RELATIONS.find((r) => r.name === name);
