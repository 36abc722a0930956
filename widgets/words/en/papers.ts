/** What is said of exercises, of answers to them, and on papers, keys and files of questions. */

// Slips that fit any answer.

export const tenTimes = (why: string): string => `That is ten times too much: ${why}.`;
export const tenth = (why: string): string => `That is a tenth of it: ${why}.`;
export const thousandTimes = (why: string): string => `That is a thousand times too much: ${why}.`;
export const thousandth = (why: string): string => `That is a thousandth of it: ${why}.`;
export const INCHES_FOR_MILLIMETRES =
  'That is 25.4 times too much: you took millimetres for inches, or inches for millimetres.';
export const MILLIMETRES_FOR_INCHES =
  'That is 25.4 times too little: you took millimetres for inches, or inches for millimetres.';
export const POINT_MOVED = 'a decimal point has moved';
export const TENTHS_OF_THOU = 'a thou is ten tenths, and a decimal point moves easily';
export const LOOK_AT_PREFIX = 'look at the prefix of the unit';
export const LOOK_AT_UNIT = 'look at the unit, since a thou is a thousandth of an inch';

// What is asked, and what is said of an answer.

const UNIT_NAMES: Readonly<Record<string, string>> = { '°': 'degrees', '%': 'per cent' };
export const ask = (unit: string, digits: number): string =>
  `Answer ${unit === '1' ? 'as a plain number' : `in ${UNIT_NAMES[unit] ?? unit}`}, to ${digits} significant digits.`;
export const backwardsTitle = (title: string): string => `${title}, backwards`;
/** Behind a question whose answer is told. */
export const showThat = (answer: string): string =>
  `Show that the answer is ${answer}: write each step with its reason.`;
export const fromTo = (low: string, high: string): string => `${low} to ${high}`;

export const rightAnswer = (answer: string, accepted: string): string => `Right: ${answer}. Accepted: ${accepted}.`;
export const OTHER_WAY = 'The right amount, but the other way: look at the sign.';
export const slipMade = (says: string): string => `Not yet. ${says}`;
export const NOT_NOUGHT = 'Not yet: it is not zero.';
const size = (large: boolean): string => (large ? 'large' : 'small');
export const notFarOff = (large: boolean): string =>
  `Not yet, but near: a little too ${size(large)}. Did you round something on the way?`;
export const tooFarOff = (large: boolean, otherWay: boolean): string =>
  `Not yet: too ${size(large)}${otherWay ? ' an amount, and the other way' : ''}.`;

// Rosters, papers and keys.

/** `count` names stand more than once, the first of which is now called `first`, in quotes. */
export const namesTwice = (count: number, first: string): string =>
  `${count === 1 ? 'One name stands' : `${count} names stand`} in the roster more than once; the later ones are numbered, ${first} and so on, so that no two students get one paper.`;
export const paperOf = (student: string): string => `Exercises: ${student}`;
export const keyOf = (student: string): string => `Key: ${student}`;
export const paperFoot = (classCode: string, student: string, bank: string): string =>
  `Class ${classCode} · ${student} · question bank ${bank}`;
/** Before the place where an answer is written. */
export const ANSWER = 'Answer:';
export const acceptedAs = (accepted: string): string => `accepted ${accepted}`;

// Files of questions.

export const HOW_TO_TYPE =
  'Type the number alone, without its unit, with a point before the decimals and, where it is negative, a hyphen (-) for the minus.';
export const COLUMNS = [
  'item',
  'title',
  'question',
  'unit',
  'answer',
  'lowest accepted',
  'highest accepted',
  'digits',
  'hint',
  'steps',
];
