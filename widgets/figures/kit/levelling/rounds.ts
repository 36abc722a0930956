/** From the reader's numbers to every round of levelling: readings, what to turn within the threads, what the turning should leave. */

import { partsStated } from '../../../assembly/adjuster/stated.ts';
import { pairOf } from '../../../assembly/pair-of.ts';
import {
  at,
  bad,
  type Foot,
  type FootCheck,
  type FootLoad,
  footLoads,
  good,
  type Kept,
  type LevelledWithin,
  type Levelling,
  type LevellingJob,
  levelWithin,
  mm,
  nextRound,
  type Place,
  type Point,
  plain,
  type Result,
  type Room,
  rad,
  readingsAfter,
  roomOfFeet,
  trueNetLead,
  turnsAvailable,
} from '../../../engine/index.ts';
import type { OptionOf } from '../../../input/choices.ts';
import { type FootName, readFeet, readReadings, readRounds, readStands } from '../../../input/levelling-table.ts';
import { lastOf, readPassports } from '../../../input/passports.ts';
import type { NumbersOf } from '../figure.ts';

declare module '../../../engine/kernel/result.ts' {
  interface Refusals {
    'passport-lead-far': { readonly foot: string; readonly lead: number; readonly nominal: number };
    'round-readings': { readonly round: number; readonly given: number; readonly places: number };
  }
}

export const QUANTITIES = ['k', 'X_A', 'X_C', 'eps', 'W', 'x_g', 'y_g'] as const;
export const TEXTS = ['feet', 'readings', 'rounds', 'stands', 'adjuster', 'passport'] as const;
export type Given = NumbersOf<'A' | 'C', (typeof QUANTITIES)[number], 'kept', (typeof TEXTS)[number]>;

export interface Round {
  readonly readings: readonly Point[];
  readonly levelling: Levelling;
  /** Whether the feet have the turns for it. Where they have not, none is turned. */
  readonly order: LevelledWithin;
  /** Turns from the middle of its stroke at which each foot stands, and those that it still has, before this round is turned. */
  readonly stands: readonly number[];
  readonly rooms: readonly Room[];
  /** What each foot did since the round before; none for the first. */
  readonly checks: readonly FootCheck[];
}

export interface MeasuredFoot {
  readonly name: string;
  readonly Delta: number;
  /** Its ±, where the passport has one. */
  readonly half: number | undefined;
  readonly day: string;
}

/** A foot that stands where its passport says it was left, in turns from the middle of its stroke. */
export interface PlacedFoot {
  readonly name: string;
  readonly turns: number;
  readonly day: string;
}

/** A measured lead so many times larger or smaller than that of the threads is not of this foot. */
const FAR = 1.5;

export interface PlateState {
  readonly feet: readonly Foot[];
  readonly kept: Kept;
  readonly Delta: number;
  /** Steps in a turn. */
  readonly k: number;
  /** Turns that the threads of a foot give in all. */
  readonly most: number;
  /** Whether these are those of parts that are stated. */
  readonly fromParts: boolean;
  /** Feet that are turned by the lead of their passport. */
  readonly measured: readonly MeasuredFoot[];
  /** Feet whose passport says where they stand, which the field of stands then does not. */
  readonly placed: readonly PlacedFoot[];
  readonly rounds: readonly Round[];
  readonly first: Round;
  /** The last round: what is drawn. */
  readonly now: Round;
  readonly weight: number;
  readonly centre: Place;
  readonly loads: Result<readonly FootLoad[]>;
}

/** Rounds that the field of rounds holds, and the first. */
export const MOST_ROUNDS = 9;

const keptOf = (choice: OptionOf<'kept'>): Kept =>
  choice === 'mean height' ? { kind: 'mean' } : { kind: 'foot', name: choice.replace('foot ', '') };

/** What drives each foot: its parts where they are stated, else two threads and what of them may be used up. */
const driveOf = ({ threads, values, texts }: Given): Result<Pick<PlateState, 'Delta' | 'k' | 'most' | 'fromParts'>> => {
  const parts = partsStated(texts.adjuster);
  if (parts) {
    if (!parts.ok) return parts;
    const { Delta, steps, turns } = parts.value;
    return good({ Delta, k: steps, most: turns, fromParts: true });
  }
  const pair = pairOf({ threads });
  if (!pair.ok) return pair;
  const { A, C, Delta } = pair.value;
  const most = turnsAvailable.of({ X_A: mm(values.X_A), L_A: A.L, X_C: mm(values.X_C), L_C: C.L });
  return most.ok ? good({ Delta, k: values.k, most: most.value.n_max, fromParts: false }) : most;
};

export const plateOf = (numbers: Given): Result<PlateState> => {
  const drive = driveOf(numbers);
  if (!drive.ok) return drive;
  const { Delta, k, most, fromParts } = drive.value;
  const { texts, values } = numbers;
  const places = readFeet(texts.feet);
  if (!places.ok) return places;
  const readings = readReadings(texts.readings);
  if (!readings.ok) return readings;
  const later = readRounds(texts.rounds);
  if (!later.ok) return later;
  const weight = values.W;
  const stood = readStands(texts.stands);
  if (!stood.ok) return stood;
  const entries = readPassports(texts.passport);
  if (!entries.ok) return entries;
  const feet: Foot[] = [];
  const measured: MeasuredFoot[] = [];
  for (const place of places.value) {
    const last = lastOf('lead', entries.value, place.name);
    if (last && !(last.value < FAR * Math.abs(Delta) && FAR * last.value > Math.abs(Delta)))
      return bad('passport-lead-far', { foot: place.name, lead: last.value, nominal: Math.abs(Delta) });
    // A passport has the size of the lead; its sense is that of the threads.
    const own = last ? mm(Math.sign(Delta) * last.value) : Delta;
    feet.push({ ...place, Delta: own, k });
    if (last) measured.push({ name: place.name, Delta: own, half: last.half, day: last.day });
  }
  const job: LevellingJob = { feet, readings: readings.value, keep: keptOf(numbers.choices.kept) };
  const placed = feet.flatMap(({ name }): PlacedFoot[] => {
    const last = lastOf('place', entries.value, name);
    return last ? [{ name, turns: last.value, day: last.day }] : [];
  });
  const stands = feet.map(({ name }) => placed.find((p) => p.name === name)?.turns ?? stood.value[name as FootName]);
  /** A round on these readings, of feet that stand where the rounds before have put them. */
  const roundOn = (points: readonly Point[], checks: readonly FootCheck[]): Result<Round> => {
    const rooms = roomOfFeet(feet, most, stands);
    if (!rooms.ok) return rooms;
    const order = levelWithin({ ...job, readings: points }, rooms.value);
    return order.ok
      ? good({
          readings: points,
          levelling: order.value.levelling,
          order: order.value,
          stands: [...stands],
          rooms: rooms.value,
          checks,
        })
      : order;
  };
  const opening = roundOn(readings.value, []);
  if (!opening.ok) return opening;
  const first = opening.value;
  const rounds = [first];
  let now = first;
  for (const [i, heights] of later.value.entries()) {
    if (!(heights.length === readings.value.length))
      return bad('round-readings', { round: i + 2, given: heights.length, places: readings.value.length });
    const read = readings.value.map((point, j) => ({ ...point, z: at(heights, j) }));
    const turned = stepsTurned(now);
    turned.forEach((steps, j) => {
      stands[j] = at(stands, j) + steps / k;
    });
    const next = nextRound({ ...job, readings: now.readings }, turned, read);
    if (!next.ok) return next;
    // Where the order could not be turned, whatever was done instead is no check of the feet.
    const then = roundOn(read, now.order.kind === 'too far' ? [] : next.value.checks);
    if (!then.ok) return then;
    now = then.value;
    rounds.push(now);
  }
  const centre = { x: values.x_g, y: values.y_g };
  return good({
    feet,
    kept: job.keep,
    Delta,
    k,
    most,
    fromParts,
    measured,
    placed,
    rounds,
    first,
    now,
    weight,
    centre,
    loads: footLoads(feet, weight, centre),
  });
};

/** What is turned in a round: its order, or nothing where the threads do not reach. */
const stepsTurned = ({ order, levelling }: Round): readonly number[] =>
  levelling.moves.map((move) => (order.kind === 'too far' ? 0 : move.wholeSteps));

/**
 * Whether more turning gains nothing: no foot is asked for a step, or only for the one step back that undoes its last. A
 * foot whose step is a little larger than designated would otherwise go to and fro for ever.
 */
export const endOf = (s: PlateState): 'level' | 'to and fro' | undefined => {
  if (s.now.order.kind === 'too far') return undefined;
  const asked = stepsTurned(s.now);
  if (asked.every((m) => m === 0)) return 'level';
  const before = s.rounds.at(-2);
  const last = before === undefined ? [] : stepsTurned(before);
  return asked.every((m, i) => m === 0 || (Math.abs(m) === 1 && last[i] === -m)) ? 'to and fro' : undefined;
};

/** Readings once the feet have been turned as the last round says, if they move more than designated by the share eps. */
export const turned = (s: PlateState, eps: number): Result<readonly Point[]> => {
  const feet: Foot[] = [];
  for (const foot of s.feet) {
    const real = trueNetLead.of({ Delta: mm(foot.Delta), eps: plain(eps) });
    if (!real.ok) return real;
    feet.push({ ...foot, Delta: real.value.Delta_e });
  }
  return readingsAfter(feet, stepsTurned(s.now), s.now.readings);
};

/** The eighth of the plan towards which the plate rises: nought is right, and they go round to the left, y being up the page. */
export const uphillEighth = (uphill: number): number => (Math.round(uphill / rad(Math.PI / 4)) + 8) % 8;
