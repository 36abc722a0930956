/**
 * A whole design worked through: the questions of all chapters asked of one pair. Every number is an engine's; a
 * question that has no answer for this design says why in its place, and the rest of the sheet stands.
 */

import { WORDS as ADJUSTER } from '#words/adjuster.ts';
import { WORDS } from '#words/figures/design-sheet.ts';
import { LINES } from '#words/figures/design-sheet-lines.ts';
import { flankText, threadVerdictText } from '#words/force.ts';
import { type Adjuster, hangsBelow, type Lock, partsOf, standing } from '../../assembly/adjuster/adjuster.ts';
import { lockStiffnessOf } from '../../assembly/adjuster/lock-stiffness.ts';
import { partsListOf } from '../../assembly/adjuster/parts-list.ts';
import { jointPlay, turnsLostIn } from '../../assembly/adjuster/play.ts';
import { springRoom } from '../../assembly/adjuster/spring-room.ts';
import { partsStated } from '../../assembly/adjuster/stated.ts';
import { type FitState, fitOf, fitStateOf } from '../../assembly/fit-state.ts';
import { pairOf } from '../../assembly/pair-of.ts';
import {
  bad,
  diameters,
  gain,
  good,
  handForce,
  lockSlopMotion,
  lockWindUp,
  mm,
  newtonMillimetres,
  type PairEffort,
  pairEffort,
  perAngle,
  perStep,
  plain,
  preloadVerdict,
  type Result,
  rad,
  type Thread,
  threadForces,
  windUp,
} from '../../engine/index.ts';
import { stepName as stepNameOf, stepsOf } from '../../input/dividers.ts';
import { numeral, show } from '../../input/format.ts';
import { type PartsList, readPartsList } from '../../input/parts-list.ts';
import { reasonOf } from '../../words/reason.ts';
import { roomSays } from '../kit/spring-room-says.ts';
import { afterYear } from './after-year.ts';
import { type Budget, type Entry, judgeBudget, leaveBeyond } from './budget.ts';
import { errorTerms } from './error-terms.ts';
import { AT, type Judge, type Judged, NOT_LOOKED_AT, newJudge } from './judge.ts';
import { HEIGHT, type Line, line, MOTION, range, SIZE, TURNS, words } from './lines.ts';
import { asStated, preloadOfSheet, type SheetNumbers } from './sheet-numbers.ts';
import { strengthOf } from './strength.ts';
import { contactOf, heatOf } from './tip-and-heat.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    'design-that-moves-nothing': Readonly<Record<never, never>>;
    /** What is turned: it carries the tip itself. */
    'sheet-of-one-thread': { readonly part: string };
  }
}

export interface Sheet extends Judged {
  readonly A: Thread;
  readonly C: Thread;
  /** The arrangement, or the parts by their kinds where it has no name here. */
  readonly called: string;
  /** What its reader calls it; empty where it has no name. */
  readonly name: string;
  /** Whether the parts are stated, which then rule over threads and lengths. */
  readonly fromParts: boolean;
  readonly Delta: number;
  readonly perStep: number;
  readonly stepName: string;
  readonly groups: readonly { readonly title: string; readonly lines: readonly Line[] }[];
  readonly fit: Result<FitState>;
  /** Undefined where the list can’t be read. */
  readonly parts: PartsList | undefined;
  readonly budget: Budget;
}

/** The sheet of parts that are stated, or of threads and lengths. */
export const workSheet = (numbers: SheetNumbers): Result<Sheet> => {
  const parts = partsStated(numbers.texts.adjuster);
  if (!parts) {
    const { arrangement } = numbers.choices;
    const ball = arrangement === 'one spindle, two nuts' ? {} : { ball: numbers.values.R };
    return sheetOf(numbers, fitStateOf({ ...numbers, ...ball }, 0), arrangement, undefined);
  }
  if (!parts.ok) return parts;
  const adjuster = parts.value;
  const { C } = adjuster;
  if (!C) return bad('sheet-of-one-thread', { part: adjuster.turned.kind });
  const fit = fitOf(adjuster, C, 0);
  const called = fit.arrangement ?? WORDS.ofParts(partsOf(adjuster).map((part) => part.kind));
  return sheetOf(asStated(numbers, adjuster, C), good(fit), called, adjuster);
};

const sheetOf = (
  numbers: SheetNumbers,
  state: Result<FitState>,
  called: string,
  stated: Adjuster | undefined,
): Result<Sheet> => {
  const pair = pairOf(numbers);
  if (!pair.ok) return pair;
  const { A, C, Delta } = pair.value;
  const v = numbers.values;
  const { divider } = numbers.choices;
  const k = stepsOf(divider, v.k_d);
  const stepName = stepNameOf(divider);
  if (Delta === 0) return bad('design-that-moves-nothing', {});
  const step = perStep.of({ Delta, k: plain(k) });
  if (!step.ok) return step;
  const judge = newJudge();
  const { check } = judge;
  const wantedStroke = Math.abs(v.S_w);
  const used = wantedStroke / Math.abs(Delta);

  const motion = motionLines(v.theta_h, Delta, step.value.s, k, stepName);
  check(step.value.s <= v.s_w, (view) =>
    LINES.motion.stepCheck({
      step: stepName,
      found: show(step.value.s, MOTION, view),
      wanted: show(v.s_w, MOTION, view),
    }),
  );

  const travel = [...travelLines(state, A, C, Delta, check, wantedStroke), ...heightLines(stated, v.H_w, judge)];
  const fit = fitLines(numbers, state, judge);
  const seat = seatOf(numbers, used, check);
  const later = afterYear(numbers, used, stated, judge);
  const play = playLines(state, stepName, k);
  const effort = effortOf(numbers, seat.forces, stated, judge);
  const key = keyOf(stated?.lock, C, effort.handed, judge);
  const room = stated && springRoom(stated);
  if (room) check(room.fits, (view) => roomSays(room, view));
  const strength = strengthOf(numbers, state, seat.forces, judge);
  const contact = contactOf(numbers, check);
  const heat = heatOf(numbers, stated, step.value.s, stepName, check);

  const stroke = state.ok ? state.value.adjuster.stroke : wantedStroke;
  const error = errorTerms(numbers, Delta, wantedStroke, stroke, judge);
  const fixed: readonly Entry[] = [
    ...(seat.seated ? [] : [play.term]),
    ...error.fixed,
    ...key.terms,
    ...effort.windUp,
    ...contact.terms,
    ...heat.terms,
  ];
  const budget = {
    ...judgeBudget(fixed, error.growing, v.e_w, judge),
    independent: error.independent,
    overAll: error.whole,
  };
  leaveBeyond(budget, { accuracy: v.e_w, wanted: wantedStroke, stroke }, judge);
  const typed = readPartsList(numbers.texts.parts);
  // Parts state their coats.
  for (const [key, at] of NOT_LOOKED_AT)
    if (!(stated && key === 'plating')) judge.leave(LINES.notLookedAt[key].name, LINES.notLookedAt[key].why, at);
  return good({
    A,
    C,
    called,
    name: stated?.name ?? '',
    fromParts: stated !== undefined,
    Delta,
    perStep: step.value.s,
    stepName,
    groups: [
      { title: WORDS.groups.motion, lines: motion },
      { title: WORDS.groups.travel, lines: travel },
      { title: WORDS.groups.fit, lines: [...fit, ...play.lines] },
      { title: WORDS.groups.preload, lines: [...seat.lines, ...later, ...strength] },
      { title: WORDS.groups.effort, lines: [...effort.lines, ...key.lines] },
      { title: WORDS.groups.tip, lines: [...contact.lines, ...heat.lines] },
    ],
    fit: state,
    parts: stated ? partsListOf(stated) : typed.ok ? typed.value : undefined,
    budget: { ...budget, seated: seat.seated },
    ...judge.found,
  });
};

const motionLines = (theta: number, Delta: number, s: number, k: number, stepName: string): Line[] => {
  const hand = perAngle.of({ Delta: mm(Delta), theta: rad(theta) });
  return [
    line(LINES.motion.perTurn, Delta, MOTION),
    line(LINES.motion.perStep(stepName, numeral(k)), s, MOTION),
    ...(hand.ok ? [line(LINES.motion.hand, hand.value.s, MOTION)] : []),
  ];
};

type Note = Judge['check'];

const travelLines = (
  state: Result<FitState>,
  A: Thread,
  C: Thread,
  Delta: number,
  check: Note,
  wanted: number,
): Line[] => {
  if (!state.ok) {
    check(false, () => reasonOf(state));
    return [words(LINES.travel.stroke, reasonOf(state))];
  }
  const { adjuster, A: sideA, C: sideC } = state.value;
  const G = gain.of({ L: mm(Math.max(A.L, C.L)), Delta: mm(Delta) });
  check(adjuster.stroke >= wanted, (view) =>
    LINES.travel.strokeCheck({ found: show(adjuster.stroke, MOTION, view), wanted: show(wanted, MOTION, view) }),
  );
  return [
    line(LINES.travel.usable('A'), sideA.usable, SIZE),
    line(LINES.travel.usable('C'), sideC.usable, SIZE),
    line(LINES.travel.turns, adjuster.turns, TURNS),
    line(LINES.travel.stroke, adjuster.stroke, MOTION),
    line(LINES.travel.wanted, wanted, MOTION),
    words(LINES.travel.stopsClockwise, ADJUSTER.stop(adjuster.clockwise)),
    words(LINES.travel.stopsAnticlockwise, ADJUSTER.stop(adjuster.anticlockwise)),
    line(LINES.travel.mark('A'), sideA.mark, TURNS),
    line(LINES.travel.mark('C'), sideC.mark, TURNS),
    ...(G.ok ? [line(LINES.travel.eaten, G.value.G, { shown: 'plain', digits: 3 })] : []),
  ];
};

/** From the bottom of the base to the top of the tip. Held against the height at most as the search in a drawer holds it: in the middle of the stroke. */
const heightLines = (stated: Adjuster | undefined, most: number, { check, leave }: Judge): Line[] => {
  if (!stated) {
    leave(LINES.height.name, LINES.height.noParts, AT.drawer);
    return [];
  }
  const { clockwise, anticlockwise } = stated;
  const at = (n: number) => standing(stated, n).height;
  const ends = [at(clockwise.n), at(anticlockwise.n)];
  const middle = at((clockwise.n + anticlockwise.n) / 2);
  check(middle <= most, (view) =>
    LINES.height.check({ found: show(middle, SIZE, view), wanted: show(most, SIZE, view) }),
  );
  const below = hangsBelow(stated);
  if (below > 0) leave(LINES.height.ground, (view) => LINES.height.hangs(show(below, SIZE, view)), AT.drawer);
  return [
    line(LINES.height.closed, Math.min(...ends), HEIGHT),
    line(LINES.height.middle, middle, HEIGHT),
    line(LINES.height.open, Math.max(...ends), HEIGHT),
  ];
};

const fitLines = ({ values, choices }: SheetNumbers, state: Result<FitState>, { check, leave }: Judge): Line[] => {
  if (!state.ok) {
    if (choices.arrangement !== 'nested') return [];
    leave(LINES.fit.wall, LINES.fit.refusedBefore, AT.wall);
    return [];
  }
  const { wall } = state.value;
  // Only a nested pair has one.
  if (wall === undefined) return [];
  if ('nominalOnly' in wall) {
    const why = wall.nominalOnly;
    leave(LINES.fit.wall, why, AT.wall);
    return [words(LINES.fit.wall, why)];
  }
  const least = values.t_l;
  check(wall.least >= least, (view) =>
    LINES.fit.wallCheck({ found: show(wall.least, SIZE, view), wanted: show(least, SIZE, view) }),
  );
  return [range(LINES.fit.wallRange, wall.least, wall.most, SIZE)];
};

/** From the record, coats and measured diameters counted. */
const playLines = (state: Result<FitState>, stepName: string, k: number): { lines: Line[]; term: Entry } => {
  const name = LINES.fit.playTerm;
  const unknown = (why: string) => ({ lines: [words(LINES.fit.play, why)], term: { name, why, at: AT.play } });
  if (!state.ok) return unknown(reasonOf(state));
  const { adjuster, A: sideA, C: sideC } = state.value;
  const [a, c] = [jointPlay(sideA), jointPlay(sideC)];
  if (!a.ok) return unknown(reasonOf(a));
  if (!c.ok) return unknown(reasonOf(c));
  const [A, C] = [a.value, c.value];
  if (!A.least.ok || !A.most.ok || !C.least.ok || !C.most.ok) return unknown(LINES.fit.binds);
  const lost = turnsLostIn(adjuster, 'most');
  return {
    term: { name, size: A.most.value + C.most.value },
    lines: [
      range(LINES.fit.playOf('A', A.limits), A.least.value, A.most.value, MOTION),
      range(LINES.fit.playOf('C', C.limits), C.least.value, C.most.value, MOTION),
      ...(lost === undefined
        ? []
        : [
            words(
              LINES.fit.lost,
              LINES.fit.lostText({
                turns: show(lost, { shown: 'turns', digits: 3 }, 'metric'),
                steps: numeral(lost * k, 3),
                step: stepName,
              }),
            ),
          ]),
    ],
  };
};

interface Seated {
  readonly seated: boolean;
  readonly forces: { readonly A: number; readonly C: number; readonly load: number } | undefined;
  readonly lines: readonly Line[];
}

const seatOf = (numbers: SheetNumbers, used: number, check: Note): Seated => {
  const refused = (reason: string): Seated => {
    check(false, () => reason);
    return { seated: false, forces: undefined, lines: [words(LINES.preload.preload, reason)] };
  };
  const preload = preloadOfSheet(numbers, used);
  if (!preload.ok) return refused(reasonOf(preload));
  const verdict = preloadVerdict(preload.value.given);
  if (!verdict.ok) return refused(reasonOf(verdict));
  const { A, C } = verdict.value;
  const seated = A.kind === 'seated' && C.kind === 'seated';
  const { margin } = preload.value.given;
  for (const [name, thread] of [
    ['A', A],
    ['C', C],
  ] as const)
    check(thread.kind === 'seated', () => threadVerdictText(name, thread, margin));
  const most = preload.value.given.load.most;
  const [spring] = verdict.value.springs;
  return {
    seated,
    forces: {
      ...threadForces(preload.value.given, 0, most),
      load: most + preload.value.given.weightCarried * preload.value.given.attitude,
    },
    lines: [
      ...(spring
        ? [
            line(LINES.preload.atStart, numbers.values.F_0, { shown: 'force', digits: 3 }),
            line(LINES.preload.rate, numbers.values.k_s, { shown: 'N/mm', digits: 3 }),
            range(LINES.preload.springForce, spring.least, spring.most, { shown: 'force', digits: 3 }),
          ]
        : [words(LINES.preload.spring, LINES.preload.none)]),
      ...(
        [
          ['A', A],
          ['C', C],
        ] as const
      ).map(([name, thread]) =>
        words(
          LINES.preload.thread(name),
          thread.kind === 'lets go'
            ? LINES.preload.touching[thread.kind]
            : LINES.preload.touching[thread.kind](flankText(name, thread.flank)),
        ),
      ),
    ],
  };
};

const effortOf = (
  numbers: SheetNumbers,
  forces: Seated['forces'],
  stated: Adjuster | undefined,
  judge: Judge,
): { lines: Line[]; windUp: Entry[]; handed: Handed | undefined } => {
  const { A, C } = numbers.threads;
  const { mu, r_h, kappa } = numbers.values;
  const { check, leave } = judge;
  const unknown = (why: string) => {
    leave(LINES.effort.bySelf, why, AT.effort);
    return {
      lines: [words(LINES.effort.effort, why)],
      windUp: [{ name: LINES.effort.windUpTerm, why, at: AT.windUp }],
      handed: undefined,
    };
  };
  if (!forces) return unknown(LINES.effort.forcesUnknown);
  const thread = (t: Thread) => ({ h: t.h, L: t.L, d2: diameters(t).d2, mu });
  const effort = pairEffort({ A: thread(A), C: thread(C), load: forces.load, onThread: { A: forces.A, C: forces.C } });
  if (!effort.ok) return unknown(reasonOf(effort));
  const e = effort.value;
  const rim = handForce.of({ M: newtonMillimetres(e.against.torque), r_h: mm(r_h) });
  check(e.selfLocking, () => (e.selfLocking ? LINES.effort.selfLocking : LINES.effort.notSelfLocking));
  if (rim.ok)
    leave(
      LINES.effort.rim,
      LINES.effort.rimUnlimited(show(rim.value.F_h, { shown: 'force', digits: 3 }, 'metric')),
      AT.hand,
    );
  // A number beside rows of parts says nothing of the lock that they make.
  const known = !stated || lockStiffnessOf(stated) !== undefined;
  const wound = known ? windUpOf(e, kappa, C) : LINES.effort.stiffnessUnknown[lockKind(stated.lock)];
  return {
    lines: [
      line(LINES.effort.against, e.against.torque, { shown: 'N·mm', digits: 3 }),
      line(LINES.effort.along, e.along.torque, { shown: 'N·mm', digits: 3 }),
      ...(rim.ok ? [line(LINES.effort.rim, rim.value.F_h, { shown: 'force', digits: 3 })] : []),
      line(LINES.effort.lock, Math.max(Math.abs(e.against.handed), Math.abs(e.along.handed)), {
        shown: 'N·mm',
        digits: 3,
      }),
      ...(known ? [line(LINES.effort.kappa, kappa, { shown: 'N·mm', digits: 3 })] : []),
      ...(typeof wound === 'number'
        ? [line(LINES.effort.windUpTurning, wound, MOTION)]
        : [words(LINES.effort.windUp, wound)]),
    ],
    windUp: [
      typeof wound === 'number'
        ? { name: LINES.effort.windUpTerm, size: wound }
        : { name: LINES.effort.windUpTerm, why: wound, at: AT.windUp },
    ],
    handed: [e.against.handed, e.along.handed],
  };
};

const lockKind = ({ kind }: Lock): 'post' | 'springs' | 'none' =>
  kind === 'key' || kind === 'post' ? 'post' : kind === 'springs' ? 'springs' : 'none';

/** Torques that thread C hands the lock, turning against the load and with it. */
type Handed = readonly [against: number, along: number];

/** What a key's clearance moves the tip by on reversal. Pressed to one side of its slot both ways, a key never crosses it. */
const keyOf = (
  lock: Lock | undefined,
  C: Thread,
  handed: Handed | undefined,
  { leave }: Judge,
): { readonly lines: Line[]; readonly terms: Entry[] } => {
  // Springs have no slot to be loose in.
  if (lock?.kind === 'springs') return { lines: [], terms: [] };
  if (lock?.kind !== 'key' && lock?.kind !== 'post') {
    leave(LINES.key.name, LINES.key.notStated, AT.key);
    return { lines: [], terms: [] };
  }
  const loose = lockSlopMotion.of({ L_C: C.L, g_k: mm(lock.clearance), r_k: mm(lock.radius) });
  if (!loose.ok) return { lines: [], terms: [{ name: LINES.key.term, why: reasonOf(loose), at: AT.key }] };
  const crosses = handed === undefined || handed[0] * handed[1] <= 0;
  const size = crosses ? loose.value.z_k : 0;
  return {
    lines: [crosses ? line(LINES.key.term, size, MOTION) : words(LINES.key.term, LINES.key.notCrossed)],
    terms: [{ name: LINES.key.term, size }],
  };
};

/** How far the carried part shifts when the sense of turning, and with it the torque on the lock, changes; or why not. */
const windUpOf = (e: PairEffort, kappa: number, C: Thread): number | string => {
  const at = (handed: number): Result<number> => {
    const psi = lockWindUp.of({ M_L: newtonMillimetres(handed), kappa: newtonMillimetres(kappa) });
    if (!psi.ok) return psi;
    const z = windUp.of({ h_C: plain(C.h), L_C: C.L, psi: psi.value.psi });
    return z.ok ? good(z.value.z_c) : z;
  };
  const [one, other] = [at(e.against.handed), at(e.along.handed)];
  return !one.ok ? reasonOf(one) : !other.ok ? reasonOf(other) : Math.abs(one.value - other.value);
};
