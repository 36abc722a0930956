/**
 * A practice rig: readings of a differential screw of known faults, as a careful hand would take them with an indicator.
 *
 * One run: from nought up to `out` turns, reading at every step, a little beyond the end and back, reading again at
 * every step on the way down, a little beyond the start and up again. The little more takes up all lost motion before
 * the next reading counts, so each direction is read with its own flanks seated. Before the first reading the screw has been
 * brought up to nought from below.
 *
 * The motion is that of simulator.ts; its pushes and drags decide whether play shows. The indicator is set to nought at
 * the start and read to a `division`; noise is normal, of the stated deviation, one draw a reading (random.ts).
 * Units: mm, turns, N. The same settings and seed give the same readings.
 */

import { at } from '../kernel/at.ts';
import { type Millimetres, mm, type Turns, turns } from '../kernel/quantity.ts';
import { bad, good, type Result } from '../kernel/result.ts';
import { type Move, type SimulatorSettings, simulate } from '../play/simulator.ts';
import type { GaugeReading } from './calibration.ts';
import type { Direction } from './readings.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'practice-size': {
      readonly out: number;
      readonly stepsPerTurn: number;
      readonly runs: number;
      readonly most: number;
    };
    'practice-division': { readonly division: number };
    'practice-loses': { readonly turns: number };
  }
}

export interface PracticeRun {
  /** Turns read over, from nought. */
  readonly out: Turns;
  /** Readings to a turn. */
  readonly stepsPerTurn: number;
  readonly runs: number;
  /** The finest the indicator is read to; left out: 0.1 µm. */
  readonly division?: Millimetres;
}

/** More would be no practice; a real logger’s file is opened instead. */
const MOST_PRACTICE = 2000;

/** Turns by which each end is overrun beyond the motion lost there. */
const BEYOND = 0.25;

export const practiceReadings = (
  rig: SimulatorSettings,
  { out, stepsPerTurn, runs, division = mm(1e-4) }: PracticeRun,
): Result<readonly GaugeReading[]> => {
  const steps = Math.round(out * stepsPerTurn);
  const count = 2 * (steps + 1) * runs;
  if (!(steps >= 2 && runs >= 1 && count <= MOST_PRACTICE))
    return bad('practice-size', { out, stepsPerTurn, runs, most: MOST_PRACTICE });
  if (!(division > 0)) return bad('practice-division', { division });
  const lead = Math.abs(rig.C.h * rig.C.L - rig.A.h * rig.A.L);
  const lost = lead > 0 ? (rig.A.play + rig.C.play + 2 * (rig.stick ?? 0)) / lead : 0;
  const over = BEYOND + lost;
  if (!(over <= MOST_OVER)) return bad('practice-loses', { turns: lost });
  const step = 1 / stepsPerTurn;
  const turn = (by: number): Move => ({ kind: 'turn', turns: turns(by) });
  const moves: Move[] = [turn(-over), turn(over)];
  const read: { readonly place: number; readonly move: number; readonly direction: Direction }[] = [];
  const note = (i: number, direction: Direction) => read.push({ place: i * step, move: moves.length, direction });
  for (let run = 0; run < runs; run++) {
    note(0, 'up');
    for (let i = 1; i <= steps; i++) {
      moves.push(turn(step));
      note(i, 'up');
    }
    moves.push(turn(over), turn(-over));
    note(steps, 'down');
    for (let i = steps - 1; i >= 0; i--) {
      moves.push(turn(-step));
      note(i, 'down');
    }
    moves.push(turn(-over), turn(over));
  }
  const motion = simulate(rig, moves);
  if (!motion.ok) return motion;
  const { reading, carried } = motion.value;
  // The indicator was set to nought where the run starts, not where the simulator did.
  const zero = at(carried, 2) - at(carried, 0);
  return good(
    read.map(({ place, move, direction }) => ({
      turns: turns(place),
      reading: mm(Math.round((at(reading, move) - zero) / division) * division + 0),
      direction,
    })),
  );
};

const MOST_OVER = 500;
