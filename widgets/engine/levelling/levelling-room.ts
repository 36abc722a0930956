/**
 * Whether a plate can be levelled with the turns that its feet still have, and how the turning is shared where one foot
 * alone would run out of thread.
 *
 * The thread of a foot gives n_max turns in all. A foot that stands n from the middle of them, clockwise plus, can still go
 *   n_max/2 − n turns clockwise   and   n_max/2 + n anticlockwise,   of which whole steps count.
 * Level leaves the height of the plate free (levelling.ts). With a_i and b_i, how far foot i can still raise and lower the part,
 * and c_i its correction at one height, any height will do that is lifted by l from there, with
 *   max(−b_i − c_i) ≤ l ≤ min(a_i − c_i).
 * Where what was to stay does not allow the orders, the middle of that range is taken: it leaves the two feet that are nearest
 * to their ends equally far from them. Where the range is empty no height will do, and two feet say by how much.
 *
 * Source: geometry; each foot between two ends.
 * Units: mm, turns.
 */

import { at } from '../kernel/at.ts';
import { type Millimetres, mm } from '../kernel/quantity.ts';
import { bad, good, type Result } from '../kernel/result.ts';
import { type Foot, type Levelling, type LevellingJob, levelPlate } from './levelling.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'foot-past-its-travel': { readonly foot: string; readonly stands: number | undefined; readonly most: number };
    'turns-left-of-feet': { readonly rooms: readonly Room[]; readonly feet: number };
  }
}

/** Turns that a foot can still go either way. */
export interface Room {
  readonly clockwise: number;
  readonly anticlockwise: number;
}

/** What is in the way: the foot that should rise and the one that should sink, against one another. */
export interface TooFar {
  readonly rises: string;
  readonly sinks: string;
  /** How far they have to move against one another, and how far they can. */
  readonly asked: Millimetres;
  readonly there: Millimetres;
}

export type LevelledWithin =
  | { readonly kind: 'as asked'; readonly levelling: Levelling }
  /** What was to stay could not: the whole plate is lifted besides by `lift`, which is minus where it is lowered. */
  | { readonly kind: 'shared'; readonly levelling: Levelling; readonly lift: Millimetres; readonly short: string }
  /** `levelling` is what would be needed; no foot is to be turned by it. */
  | { readonly kind: 'too far'; readonly levelling: Levelling; readonly tooFar: TooFar };

/** Turns left either way of feet that stand so many turns from the middle of their travel, in the order of the feet. */
export const roomOfFeet = (
  feet: readonly Pick<Foot, 'name'>[],
  most: number,
  stands: readonly number[],
): Result<readonly Room[]> => {
  const rooms: Room[] = [];
  for (const [i, { name }] of feet.entries()) {
    const n = stands[i];
    if (!(n !== undefined && Math.abs(n) <= most / 2 + HAIR))
      return bad('foot-past-its-travel', { foot: name, stands: n, most: most / 2 });
    rooms.push({ clockwise: Math.max(0, most / 2 - n), anticlockwise: Math.max(0, most / 2 + n) });
  }
  return good(rooms);
};

/** A share of a turn that is rounding, not room. */
const HAIR = 1e-9;

/** What each foot is to be turned, within the turns it has. */
export const levelWithin = (job: LevellingJob, rooms: readonly Room[]): Result<LevelledWithin> => {
  if (
    !(
      rooms.length === job.feet.length &&
      rooms.every(({ clockwise, anticlockwise }) => clockwise >= 0 && anticlockwise >= 0)
    )
  )
    return bad('turns-left-of-feet', { rooms, feet: job.feet.length });
  const asked = levelPlate(job);
  if (!asked.ok) return asked;
  const { moves } = asked.value;
  const ends = job.feet.map((foot, i) => endsOf(foot, at(rooms, i)));
  const short = moves.find((move, i) => !within(move.wholeSteps, at(ends, i).steps));
  if (short === undefined) return good({ kind: 'as asked', levelling: asked.value });
  const lifts = moves.map((move, i) => {
    const { lowers, raises } = at(ends, i);
    return { name: move.name, least: -lowers - move.correction, most: raises - move.correction };
  });
  const sinks = lifts.reduce((a, b) => (b.least > a.least ? b : a));
  const rises = lifts.reduce((a, b) => (b.most < a.most ? b : a));
  const mean = moves.reduce((sum, move) => sum + move.correction, 0) / moves.length;
  if (sinks.least - rises.most > HAIR * Math.max(...job.feet.map((foot) => Math.abs(foot.Delta)))) {
    const [risesAt, sinksAt] = [lifts.indexOf(rises), lifts.indexOf(sinks)];
    return good({
      kind: 'too far',
      levelling: asked.value,
      tooFar: {
        rises: rises.name,
        sinks: sinks.name,
        asked: mm(at(moves, risesAt).correction - at(moves, sinksAt).correction),
        there: mm(at(ends, risesAt).raises + at(ends, sinksAt).lowers),
      },
    });
  }
  const lift = (sinks.least + rises.most) / 2;
  const shared = levelPlate({ ...job, keep: { kind: 'mean', lift: mean + lift } });
  return shared.ok ? good({ kind: 'shared', levelling: shared.value, lift: mm(lift), short: short.name }) : shared;
};

/** The ends of a foot in whole steps, and how far it can raise and lower the part to them. */
const endsOf = ({ Delta, k }: Foot, { clockwise, anticlockwise }: Room) => {
  const whole = (turns: number) => Math.floor(turns * k + HAIR);
  const steps = { clockwise: whole(clockwise), anticlockwise: whole(anticlockwise) };
  const far = (count: number) => (count * Math.abs(Delta)) / k;
  const [up, down] = Delta > 0 ? [steps.clockwise, steps.anticlockwise] : [steps.anticlockwise, steps.clockwise];
  return { steps, raises: far(up), lowers: far(down) };
};

const within = (steps: number, ends: Room): boolean => steps <= ends.clockwise && -steps <= ends.anticlockwise;
