/** The engine's one public entry. Everything outside widgets/engine imports from here. */

import {
  abbeError,
  cosineErrorFace,
  cosineErrorPoint,
  threeReadingLead,
  twoReadingDoubt,
  twoReadingLead,
} from './calibration/calibration.ts';
import { ballOnFlat, contactModulus, firstYield, veeForce, veeSink } from './contact/contact.ts';
import { logCreep, thermalGrowth, warming } from './contact/drift.ts';
import { ballInterference } from './contact/pressed-ball.ts';
import { shankStiffness, twoInSeries } from './contact/stiffness.ts';
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
} from './force/effort.ts';
import { forceChain, guideFriction, preloadForLife, preloadNeeded } from './force/force-chain.ts';
import { lockSlop, lockSlopMotion, lockStiffness, lockWindUp, stringStiffness, stringTorque } from './force/lock.ts';
import { jointShare, retainedForce, separationLoad, springForce } from './force/preload.ts';
import { effort, loadForTorque, loweringTorque, raisingTorque, slopeMetA, slopeMetC } from './force/slope-met.ts';
import type { AnyRelation } from './kernel/relation.ts';
import { footCorrection, oneFootLift, turnsFor, weightOnFeet } from './levelling/levelling.ts';
import { planeHeight, planeRises, planeTilt } from './levelling/plane.ts';
import { gain, netLead, netMotion, relativeMotion, slippedLead, turnedMotion, windUp } from './pair/differential.ts';
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
} from './pair/drunken-thread.ts';
import { engagementLeft, midMark, usableThread } from './pair/engagement.ts';
import {
  diameterEquivalent,
  leastRate,
  netLeadError,
  periodicSlope,
  positionError,
  rssLeadError,
  trueNetLead,
  worstLeadError,
} from './pair/lead-error.ts';
import { largestNutRoot, leastRoot, nestedWall, printedLines, thinSide } from './pair/nesting.ts';
import { divisionsFor, perAngle, perStep, stepsFor, wantedNetLead } from './pair/resolution.ts';
import { roundingError } from './pair/rounding.ts';
import { stroke, threadEaten, turnsAvailable } from './pair/travel.ts';
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
} from './play/play.ts';
import { liftFree, liftHeld } from './play/side-push.ts';
import { coreLoad } from './thread/core-load.ts';
import { shareOfThread, tapDrill } from './thread/tap-drill.ts';
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
} from './thread/thread.ts';
import { diameterStepMean, isoDeviationG, isoNutPitchTolerance, isoPitchTolerance } from './thread/tolerance-iso.ts';
import { unifiedAllowanceRule, unifiedPitchToleranceRule } from './thread/tolerance-unified.ts';
import { bestWire, overWires, pitchDiameterOverWires, wireSlope } from './thread/wires.ts';
import { ballLift, leverMotion, wedgeRise } from './ways/other-ways.ts';
import { leadForAngle, longArmFor, stepDown, wedgeFor } from './ways/step-down.ts';
import { ballPush, feltAtTip, leverBending, leverPush, pushBetweenBalls, wedgePush } from './ways/ways-under-load.ts';

export * from './calibration/calibration.ts';
export * from './calibration/practice-rig.ts';
export * from './calibration/readings.ts';
export * from './contact/contact.ts';
export * from './contact/drift.ts';
export * from './contact/pressed-ball.ts';
export * from './contact/stiffness.ts';
export * from './force/effort.ts';
export * from './force/even-friction.ts';
export * from './force/flanks.ts';
export * from './force/force-chain.ts';
export * from './force/lock.ts';
export * from './force/preload.ts';
export * from './force/slope-met.ts';
export * from './kernel/quantity.ts';
export * from './kernel/relation.ts';
export * from './kernel/result.ts';
export { asRead, listed, say } from './kernel/say.ts';
export * from './kernel/symbols.ts';
export * from './kernel/task.ts';
export * from './levelling/kinematic-coupling.ts';
export * from './levelling/levelling.ts';
export * from './levelling/levelling-room.ts';
export * from './levelling/plane.ts';
export * from './numerics/elliptic.ts';
export * from './numerics/line-fit.ts';
export * from './numerics/random.ts';
export * from './pair/differential.ts';
export * from './pair/drunken-thread.ts';
export * from './pair/engagement.ts';
export * from './pair/fraction.ts';
export * from './pair/lead-error.ts';
export * from './pair/nesting.ts';
export * from './pair/pair-catalogue.ts';
export * from './pair/pair-filters.ts';
export * from './pair/pair-row.ts';
export * from './pair/pair-search.ts';
export * from './pair/pair-short.ts';
export * from './pair/pair-verdict.ts';
export * from './pair/resolution.ts';
export * from './pair/rounding.ts';
export * from './pair/travel.ts';
export * from './play/play.ts';
export * from './play/play-batch.ts';
export * from './play/side-push.ts';
export * from './play/simulator.ts';
export * from './thread/core-load.ts';
export * from './thread/designated-limits.ts';
export * from './thread/fit.ts';
export * from './thread/series.ts';
export * from './thread/tap-drill.ts';
export * from './thread/thread.ts';
export * from './thread/tolerance.ts';
export * from './thread/tolerance-iso.ts';
export * from './thread/tolerance-unified.ts';
export * from './thread/wires.ts';
export * from './ways/other-ways.ts';
export * from './ways/step-down.ts';
export * from './ways/ways-under-load.ts';

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
