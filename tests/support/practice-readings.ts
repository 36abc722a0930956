/**
 * Readings of a differential screw of known faults, as a careful hand would take them with an indicator: what a fit must give back.
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

import {
  at,
  type Direction,
  type GaugeReading,
  type Millimetres,
  type Move,
  mm,
  type SimulatorSettings,
  simulate,
  type Turns,
  turns,
} from '../../widgets/engine/index.ts';
import { valueIn } from './results.ts';

export interface PracticeRun {
  /** Turns read over, from nought. */
  readonly out: Turns;
  /** Readings to a turn. */
  readonly stepsPerTurn: number;
  readonly runs: number;
  /** The finest the indicator is read to; left out: 0.1 µm. */
  readonly division?: Millimetres;
}

/** Turns by which each end is overrun beyond the motion lost there. */
const BEYOND = 0.25;

export const practiceReadings = (
  rig: SimulatorSettings,
  { out, stepsPerTurn, runs, division = mm(1e-4) }: PracticeRun,
): readonly GaugeReading[] => {
  const steps = Math.round(out * stepsPerTurn);
  const lead = Math.abs(rig.C.h * rig.C.L - rig.A.h * rig.A.L);
  const lost = lead > 0 ? (rig.A.play + rig.C.play + 2 * (rig.stick ?? 0)) / lead : 0;
  const over = BEYOND + lost;
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
  const motion = valueIn(simulate(rig, moves));
  const { reading, carried } = motion;
  // The indicator was set to nought where the run starts, not where the simulator did.
  const zero = at(carried, 2) - at(carried, 0);
  return read.map(({ place, move, direction }) => ({
    turns: turns(place),
    reading: mm(Math.round((at(reading, move) - zero) / division) * division + 0),
    direction,
  }));
};
