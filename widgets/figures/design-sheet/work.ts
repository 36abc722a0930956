/**
 * A whole design worked through: the questions of all chapters asked of one pair. Every number is an engine's; a
 * question that has no answer for this design says why in its place, and the rest of the sheet stands.
 */

import { flankText, threadVerdictText } from '#words/force.ts';
import type { Arrangement } from '../../assembly/assembly-layout.ts';
import { type FitState, fitStateOf, whyStopped } from '../../assembly/fit-state.ts';
import { pairOf } from '../../assembly/pair-of.ts';
import {
  axialPlayA,
  axialPlayC,
  diameters,
  fitOfThread,
  gain,
  good,
  handForce,
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
  said,
  type Thread,
  threadForces,
  turnsLost,
  windUp,
} from '../../engine/index.ts';
import { stepName as stepNameOf, stepsOf } from '../../input/dividers.ts';
import { numeral, show } from '../../input/format.ts';
import { type PartsList, readPartsList } from '../../input/parts-list.ts';
import { reasonOf } from '../../words/reason.ts';
import { type Budget, type Entry, judgeBudget } from './budget.ts';
import { errorTerms } from './error-terms.ts';
import { AT, type Judge, type Judged, NOT_LOOKED_AT, newJudge } from './judge.ts';
import { type Line, line, MOTION, range, SIZE, TURNS, words } from './lines.ts';
import { preloadOfSheet, type SheetNumbers } from './sheet-numbers.ts';
import { contactOf, heatOf } from './tip-and-heat.ts';

export interface Sheet extends Judged {
  readonly A: Thread;
  readonly C: Thread;
  readonly arrangement: Arrangement;
  readonly Delta: number;
  readonly perStep: number;
  readonly stepName: string;
  readonly groups: readonly { readonly title: string; readonly lines: readonly Line[] }[];
  readonly fit: Result<FitState>;
  /** Radius of the ball at the tip, mm. */
  readonly ball: number;
  /** Undefined where the list can’t be read. */
  readonly parts: PartsList | undefined;
  readonly budget: Budget;
  readonly assumptions: readonly string[];
}

export const workSheet = (numbers: SheetNumbers): Result<Sheet> => {
  const pair = pairOf(numbers);
  if (!pair.ok) return pair;
  const { A, C, Delta } = pair.value;
  const v = numbers.values;
  const { divider, arrangement } = numbers.choices;
  const k = stepsOf(divider, v.k_d);
  const stepName = stepNameOf(divider);
  if (Delta === 0)
    return said(
      'The two leads are equal, so this design does not move what it carries: choose threads whose leads differ.',
    );
  const step = perStep.of({ Delta, k: plain(k) });
  if (!step.ok) return step;
  const judge = newJudge();
  const { check } = judge;
  const wantedStroke = Math.abs(v.S_w);
  const used = wantedStroke / Math.abs(Delta);

  const motion = motionLines(v.theta_h, Delta, step.value.s, k, stepName);
  check(
    step.value.s <= v.s_w,
    (view) =>
      `One ${stepName} moves ${show(step.value.s, MOTION, view)}; ${show(v.s_w, MOTION, view)} or less was wanted.`,
  );

  const state = fitStateOf(numbers, 0);
  const travel = travelLines(state, A, C, Delta, check, wantedStroke);
  const fit = fitLines(numbers, state, judge);
  const seat = seatOf(numbers, used, check);
  const play = playOf(A, C, Delta, stepName, k);
  const effort = effortOf(numbers, seat.forces, judge);
  const contact = contactOf(numbers, check);
  const heat = heatOf(numbers, step.value.s, stepName, check);

  const error = errorTerms(numbers, Delta, wantedStroke, judge);
  const fixed: readonly Entry[] = [
    ...(seat.seated ? [] : [play.term]),
    ...error.fixed,
    ...effort.windUp,
    ...contact.terms,
    ...heat.terms,
  ];
  const budget = { ...judgeBudget(fixed, error.growing, v.e_w, judge), independent: error.independent };
  const parts = readPartsList(numbers.texts.parts);
  for (const [name, why, at] of NOT_LOOKED_AT) judge.leave(name, why, at);
  return good({
    A,
    C,
    arrangement,
    Delta,
    perStep: step.value.s,
    stepName,
    groups: [
      { title: 'Motion', lines: motion },
      { title: 'Travel', lines: travel },
      { title: 'Fit and play', lines: [...fit, ...play.lines] },
      { title: 'Preload', lines: seat.lines },
      { title: 'Effort and lock', lines: effort.lines },
      { title: 'Tip and heat', lines: [...contact.lines, ...heat.lines] },
    ],
    fit: state,
    ball: v.R,
    parts: parts.ok ? parts.value : undefined,
    budget: { ...budget, seated: seat.seated },
    ...judge.found,
    assumptions: [
      'Net lead, travel, play and effort: the relations of the chapters, with their sources there.',
      'Limits of size: ISO 965-1 and ASME B1.1 by the classes written, or the everyday ones.',
      'Lead errors, friction, hand angle and lock stiffness are the numbers stated, not measured.',
      'Moduli, Poisson’s ratios and yield strengths of the materials are from memory; expansion as said in the chapter on heat.',
    ],
  });
};

const motionLines = (theta: number, Delta: number, s: number, k: number, stepName: string): Line[] => {
  const hand = perAngle.of({ Delta: mm(Delta), theta: rad(theta) });
  return [
    line('per turn, clockwise', Delta, MOTION),
    line(`per ${stepName} (${numeral(k)} a turn)`, s, MOTION),
    ...(hand.ok ? [line('smallest a hand can set again', hand.value.s, MOTION)] : []),
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
    return [words('stroke', reasonOf(state))];
  }
  const { travel, mark } = state.value;
  const G = gain.of({ L: mm(Math.max(A.L, C.L)), Delta: mm(Delta) });
  check(
    travel.stroke >= wanted,
    (view) =>
      `The threads give a stroke of ${show(travel.stroke, MOTION, view)}; ${show(wanted, MOTION, view)} was wanted.`,
  );
  return [
    line('usable length of thread A', travel.A.usable, SIZE),
    line('usable length of thread C', travel.C.usable, SIZE),
    line('turns between the stops', travel.turns, TURNS),
    line('stroke', travel.stroke, MOTION),
    words('stops it clockwise', whyStopped(travel.clockwise)),
    words('stops it anticlockwise', whyStopped(travel.anticlockwise)),
    line('mark: back A out from home', mark.A, TURNS),
    line('mark: back C out from home', mark.C, TURNS),
    ...(G.ok ? [line('thread eaten per unit of stroke', G.value.G, { shown: 'plain', digits: 3 })] : []),
  ];
};

const fitLines = ({ values, choices }: SheetNumbers, state: Result<FitState>, { check, leave }: Judge): Line[] => {
  if (choices.arrangement !== 'nested') return [];
  if (!state.ok) {
    leave('wall of the sleeve', 'the pair is refused before', AT.wall);
    return [];
  }
  const { wall } = state.value;
  // Only a nested pair has one.
  if (wall === undefined) return [];
  if ('nominalOnly' in wall) {
    const why = wall.nominalOnly;
    leave('wall of the sleeve', why, AT.wall);
    return [words('wall of the sleeve', why)];
  }
  const least = values.t_l;
  check(
    wall.least >= least,
    (view) =>
      `The wall of the sleeve is ${show(wall.least, SIZE, view)} at its thinnest; at least ${show(least, SIZE, view)} was asked for.`,
  );
  return [range('wall of the sleeve, least to most', wall.least, wall.most, SIZE)];
};

const playOf = (A: Thread, C: Thread, Delta: number, stepName: string, k: number): { lines: Line[]; term: Entry } => {
  const [a, c] = [fitOfThread(A), fitOfThread(C)];
  const name = 'play, on reversal';
  const unknown = (why: string) => ({ lines: [words('play', why)], term: { name, why, at: AT.play } });
  if (!a.ok) return unknown(reasonOf(a));
  if (!c.ok) return unknown(reasonOf(c));
  const at = (end: 'least' | 'most') => {
    const jA = axialPlayA.of({ c_A: a.value.clearance.pitch[end] });
    const jC = axialPlayC.of({ c_C: c.value.clearance.pitch[end] });
    return jA.ok && jC.ok ? { j_A: jA.value.j_A, j_C: jC.value.j_C } : undefined;
  };
  const [least, most] = [at('least'), at('most')];
  if (!least || !most) return unknown('At the tight end of the limits the threads bind.');
  const lost = turnsLost.of({ ...most, Delta: mm(Delta) });
  return {
    term: { name, size: most.j_A + most.j_C },
    lines: [
      range(`play of thread A, ${a.value.classes}`, least.j_A, most.j_A, MOTION),
      range(`play of thread C, ${c.value.classes}`, least.j_C, most.j_C, MOTION),
      ...(lost.ok
        ? [
            words(
              'lost on reversal without preload, at most',
              `${show(lost.value.n_j, { shown: 'turns', digits: 3 }, 'metric')}, ${numeral(lost.value.n_j * k, 3)} ${stepName}s`,
            ),
          ]
        : []),
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
    return { seated: false, forces: undefined, lines: [words('preload', reason)] };
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
        ? [range('force of the spring over the stroke', spring.least, spring.most, { shown: 'force', digits: 3 })]
        : [words('spring', 'none')]),
      ...(
        [
          ['A', A],
          ['C', C],
        ] as const
      ).map(([name, thread]) =>
        words(
          `thread ${name}`,
          thread.kind === 'lets go'
            ? thread.kind
            : `the ${flankText(name, thread.flank)} touches${thread.kind === 'seated' ? '' : `, ${thread.kind}`}`,
        ),
      ),
    ],
  };
};

/** Worked out at the start of the stroke, where the chapter on effort has it. */
const WIND_UP = 'wind-up of the lock, on reversal under most load';

const effortOf = (
  numbers: SheetNumbers,
  forces: Seated['forces'],
  judge: Judge,
): { lines: Line[]; windUp: Entry[] } => {
  const { A, C } = numbers.threads;
  const { mu, r_h, kappa } = numbers.values;
  const { check, leave } = judge;
  const unknown = (why: string) => {
    leave('whether the load turns the part by itself', why, AT.effort);
    return { lines: [words('effort', why)], windUp: [{ name: WIND_UP, why, at: AT.windUp }] };
  };
  if (!forces) return unknown('not worked out, since the forces on the threads are not known');
  const thread = (t: Thread) => ({ h: t.h, L: t.L, d2: diameters(t).d2, mu });
  const effort = pairEffort({ A: thread(A), C: thread(C), load: forces.load, onThread: { A: forces.A, C: forces.C } });
  if (!effort.ok) return unknown(reasonOf(effort));
  const e = effort.value;
  const rim = handForce.of({ M: newtonMillimetres(e.against.torque), r_h: mm(r_h) });
  check(e.selfLocking, () =>
    e.selfLocking
      ? 'The load can’t turn the part by itself.'
      : 'The load turns the part by itself: it needs a brake or more friction.',
  );
  if (rim.ok)
    leave(
      'force of the hand at the rim',
      `${show(rim.value.F_h, { shown: 'force', digits: 3 }, 'metric')}, and no limit to it is asked for`,
      AT.hand,
    );
  const wound = windUpOf(e, kappa, C);
  return {
    lines: [
      line('torque against the load', e.against.torque, { shown: 'N·mm', digits: 3 }),
      line('torque with the load', e.along.torque, { shown: 'N·mm', digits: 3 }),
      ...(rim.ok ? [line('force of the hand at the rim', rim.value.F_h, { shown: 'force', digits: 3 })] : []),
      line('torque the lock must hold', Math.max(Math.abs(e.against.handed), Math.abs(e.along.handed)), {
        shown: 'N·mm',
        digits: 3,
      }),
      ...(typeof wound === 'number'
        ? [line('wind-up of the lock, turning round', wound, MOTION)]
        : [words('wind-up of the lock', wound)]),
    ],
    windUp: [typeof wound === 'number' ? { name: WIND_UP, size: wound } : { name: WIND_UP, why: wound, at: AT.windUp }],
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
