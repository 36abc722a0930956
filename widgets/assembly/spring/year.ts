/** The log law of relaxation needs a first time, at which the force was read that it begins from. */

/** A minute after it was stretched, h. */
export const FIRST_READING = 1 / 60;
/** h */
export const YEAR = 365 * 24;
