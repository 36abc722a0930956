/**
 * The two flanks of a thread, named so that no picture and no attitude changes the name.
 *
 * One sign for every axial force and every joint: plus presses the upper part towards the base. Of a thread’s upper part the
 * flank that faces the base touches under plus: its *pressed* flank. The other touches under minus: its *pulled* flank. The upper
 * part is the turned part in thread A and the carried part in thread C. Touching or open is a state, not a name. Motions
 * stay positive away from the base.
 */
export type FlankName = 'pressed' | 'pulled';

/** The flank that a force across a thread makes touch; none where there is no force. */
export const flankUnder = (force: number): FlankName | undefined =>
  force > 0 ? 'pressed' : force < 0 ? 'pulled' : undefined;
