/** The Foot as a jack without an error: to be spoilt where a test asks what an error does. */
import { type BuiltThread, EXACT, type Jack } from '../../widgets/engine/index.ts';

/** Nearly rigid, N/mm. */
export const STIFF = 1e7;

export const thread = (over: Partial<BuiltThread> = {}): BuiltThread => ({
  h: 1,
  L: 1.5,
  d2: 9.026,
  engaged: 10,
  middle: 20,
  clearance: 0.1,
  upper: 'screw',
  through: 'screw',
  screw: EXACT,
  nut: EXACT,
  stiffness: STIFF,
  mu: 0,
  ...over,
});

/** Without friction, locked stiffly and loaded along its axis. */
export const foot = (over: Partial<Jack> = {}): Jack => ({
  A: thread(),
  C: thread({ L: 1.5875, d2: 8.494, middle: 45, upper: 'nut' }),
  lock: { by: 'springs', kappa: 1e9 },
  axes: { offset: 0, angle: 0, phase: 0 },
  tip: 60,
  load: 50,
  beside: 0,
  push: 0,
  pushHeight: 60,
  weightTurned: 0,
  drag: 0,
  ...over,
});
