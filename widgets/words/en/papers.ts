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

const UNIT_NAMES: Readonly<Record<string, string>> = { '°': 'degrees', '%': 'per cent', in: 'inches' };
export const ask = (unit: string, digits: number): string =>
  `Answer ${unit === '1' ? 'as a plain number' : `in ${UNIT_NAMES[unit] ?? unit}`}, to ${digits} significant digits.`;
export const backwardsTitle = (title: string): string => `${title}, backwards`;
/** Behind a question whose answer is told. */
export const showThat = (answer: string): string =>
  `Show that the answer is ${answer}: write each step with its reason.`;
export const fromTo = (low: string, high: string): string => `${low} to ${high}`;

export const rightAnswer = (answer: string, accepted: string): string =>
  `Right: ${answer.replace(/\.$/, '')}.${accepted === '' ? '' : ` Accepted: ${accepted}.`}`;
export const OTHER_WAY = 'The right amount, but the other way: look at the sign.';
export const slipMade = (says: string): string => `Not yet. ${says}`;
export const NOT_NOUGHT = 'Not yet: it is not zero.';
const size = (large: boolean): string => (large ? 'large' : 'small');
export const notFarOff = (large: boolean): string =>
  `Not yet, but near: a little too ${size(large)}. Did you round something on the way?`;
export const tooFarOff = (large: boolean, otherWay: boolean): string =>
  `Not yet: too ${size(large)}${otherWay ? ' an amount, and the other way' : ''}.`;

// One question that leads on, where no known slip fits.

/** Words for a count of steps. */
export const STEP_WORDS: readonly string[] = [
  'flat',
  'flats',
  'point',
  'points',
  'division',
  'divisions',
  'step',
  'steps',
];
export const leadsFromStep = (says: string, step: number, of: number): string =>
  `Did you stop too soon? That is the ${says}, line ${step} of ${of}.`;
export const leadsFromGiven = (says: string): string => `Did you leave it as it was given? That is the ${says}.`;
export const leadsByFactor = (what: string): string => `Did you ${what}?`;
/** Factors between a wrong answer and the right one that come of one thought. */
export const NAMED_FACTORS: readonly (readonly [factor: number, what: string])[] = [
  [2, 'double or halve something, such as a diameter for a radius, or a pitch that you counted twice'],
  [6, 'take turns for flats, or flats for turns'],
  [12, 'take turns for points, or points for turns'],
  [4, 'take turns for the sides of a square, or the other way round'],
  [Math.PI, 'leave out π, or put it in twice'],
  [2 * Math.PI, 'take turns for radians, or radians for turns'],
  [180 / Math.PI, 'take degrees for radians, or radians for degrees'],
  [360, 'take degrees for turns, or turns for degrees'],
];
export const leadsToStep = (says: string, only: boolean): string =>
  only ? `What goes into the ${says}, and in which unit?` : `What did you find for the ${says}? Check that first.`;

// A curve that is predicted.

export const curveAsked = (up: string, across: string): string => `Axes for a curve: ${up} against ${across}`;
export const CURVE_RIGHT = 'Yes: your points lie on the computed curve, as near as a hand draws.';
export const curveOff = (at: string, yours: string, right: string): string =>
  `The two differ most at ${at}: you drew ${yours}, it is ${right}.`;
export const curveTrend = (rises: number): string =>
  rises > 0
    ? 'The computed curve rises from end to end. What grows there?'
    : rises < 0
      ? 'The computed curve falls from end to end. What is used up there?'
      : 'The computed curve ends where it began. What comes back there?';
export const CURVE_BENDS =
  'Yours is straight, the computed one bends. Does each step really add as much as the one before?';
export const CURVE_STRAIGHT =
  'Yours bends, the computed one is straight. What would make one step differ from the next?';
export const CURVE_STARTS = 'Where does it begin? Think of the first point alone.';
export const curveAmount = (at: string): string =>
  `The shape is near. Work out the one point at ${at}: which numbers of the question go into it?`;

// Pictures off which a number is read: where the hands and marks stand, as the eye has it.

export const onDial = (division: string, rounds: string, face: string): string =>
  `A dial: the long hand points to ${division}, the small hand has passed ${rounds}. On its face: ${face}.`;
/** What the numbers of a rule count, written on it. */
export const RULED = { metric: 'millimetres', inch: 'inches' };
export const besideRule = (ridges: number, at: string, unit: string): string =>
  `A screw along a rule in ${unit}: one crest is marked at 0, the crest ${ridges} ridges further is marked at ${at}.`;

export const alongRule = (length: string, unit: string): string =>
  `A bar along a rule in ${unit}: it ends at ${length}.`;

// Tables of readings, and what is found in them.

export const FAULTS = {
  sound: 'nothing: it moves as its leads say',
  lead: 'the net lead is off',
  wave: 'a wave that comes again every turn',
  lost: 'motion is lost on reversal',
  drift: 'it drifts with time, as a stand does that gives way',
  misread: 'one reading was noted wrong',
} as const;
export type Fault = keyof typeof FAULTS;
/** To who takes it for the fault, though it is another. */
export const TABLE_SHOWS: Readonly<Record<Fault, string>> = {
  sound:
    'If nothing were wrong, every reading would be the turns times the net lead. Is it so at every turn, up and back?',
  lead: 'A wrong lead runs off evenly, more with every turn, and comes back over the same readings. Does this table?',
  wave: 'A wave is off within the turn and right again a whole turn later. Compare the readings a whole turn apart.',
  lost: 'Lost motion shows only where the turning has been reversed, and is the same at every turn of the way back. Is it here?',
  drift:
    'Drift grows with every reading taken, up and back alike, so the last reading is not the first. Is it so here?',
  misread: 'A reading noted wrong stands alone: its neighbours and its fellow a turn on are right. Is there one?',
};
/** What settles a table: turns and amounts as they are printed. */
export const TABLE_DECIDES = {
  sound: (v: { readonly reads: string; readonly should: string; readonly back: string }): string =>
    `At 2 turns it reads ${v.reads}, and the net lead gives ${v.should}. Back at 0 it reads ${v.back}.`,
  lead: (v: { readonly off: string; readonly half: string; readonly back: string }): string =>
    `At 2 turns it is off by ${v.off}, at 1 turn by half of that, ${v.half}. Back at 0 it reads ${v.back}.`,
  wave: (v: { readonly turns: string; readonly off: string; readonly later: string; readonly whole: string }): string =>
    `At ${v.turns} turns it is off by ${v.off}, and a turn later by ${v.later}. At a whole turn it is off by ${v.whole} only.`,
  lost: (v: { readonly up: string; readonly least: string; readonly most: string }): string =>
    `Up to 2 turns it is off by ${v.up} at most. On the way back it is off by ${v.least} to ${v.most} at every place.`,
  drift: (v: { readonly top: string; readonly last: string }): string =>
    `The last reading stands at the place of the first and is off by ${v.last}. At 2 turns it was off by ${v.top} already.`,
  misread: (v: { readonly turns: string; readonly off: string; readonly others: string }): string =>
    `At ${v.turns} turns, on the way up, it is off by ${v.off}. Every other reading is off by ${v.others} at most.`,
};
export const TABLE_NAME = 'Turned up to 2 turns, then back';
export const TURNS = 'turns';
export const READING = 'reading, µm';

// Stacks of a drawer.

/** To who takes a stack that gives something else. */
export const stackGives = (gives: string): string =>
  `That stack gives ${gives}. Which of its leads is subtracted from which?`;

// What is offered to choose from.

/** After the question, by the kind of exercise. */
export const ASK_OFFERED = {
  choice: 'Choose one answer.',
  way: 'Choose one.',
  flank: 'Choose one.',
  'wrong-line': 'One line is wrong; the lines after it are worked on from it. Which line is it?',
  order: 'Put the lines in order, the first one first.',
  stack: 'Choose one from the drawer.',
  table: 'What does the table show? Choose one.',
} as const;
export const lettered = (letter: string, text: string): string => `${letter}) ${text}`;
export const WAYS = ['up', 'down', 'not at all'] as const;
export const FLANKS = ['the pressed flank', 'the pulled flank', 'neither has to touch'] as const;
export const wayAsked = (found: string): string =>
  `Which sign has the ${found}? Plus is up, minus is down. Work it out with its sign first.`;
export const flankAsked = (found: string): string =>
  `Which sign has the ${found}? Plus presses the upper part towards the base. Work it out with its sign first.`;
/** What settles a sign, an order and a drawer. */
export const signDecides = (sign: number, means: string): string =>
  `The last result is ${sign > 0 ? 'positive' : sign < 0 ? 'negative' : 'zero'}: ${means}.`;
export const ORDER_DECIDES = 'Each line needs what the line before it leaves.';
export const othersGive = (give: readonly string[]): string => `The others give ${give.join(', ')}.`;
export const LINE_HOLDS = (before: boolean): string =>
  before
    ? 'This line holds. Does the next line take the right things from it?'
    : 'This line only carries on what stands above it. Is what it takes from above right?';
/** Two lines that stand the wrong way round. */
export const orderLeads = (first: string, then: string): string =>
  `“${first.replace(/\.$/, '')}” stands before “${then.replace(/\.$/, '')}”. Could you still do the second one well after the first?`;
export const chooseOne = (letters: string): string => `Choose one of ${letters}.`;
export const eachOnce = (letters: string): string => `Write each of ${letters} once, in order.`;

// Rosters, papers and keys.

/** `count` names stand more than once, the first of which is now called `first`, in quotes. */
export const namesTwice = (count: number, first: string): string =>
  `${count === 1 ? 'One name stands' : `${count} names stand`} in the list of students more than once; the later ones are numbered, ${first} and so on, so that no two students get one paper.`;
export const behindComma = (line: string): string =>
  `${line} has a comma, so all of it is the name. Put a semicolon before mm, inch or large.`;
export const unitNotTaken = (line: string, unit: string): string =>
  `${line}: ${unit} says nothing of how a student is asked, so all of it is the name. Behind a semicolon stand mm, inch or large.`;
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
  'known slips',
];
export const BANK_TITLE = 'Differential screws, question bank';
export const TEST_TITLE = 'Differential screws';
export const LICENCE_SAYS = 'CC BY 4.0, https://creativecommons.org/licenses/by/4.0/';
