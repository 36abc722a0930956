/** What stands on sheets, keys and grids for a class, and round them on the page. */

// Sheets.

export const pageOf = (page: number, pages: number): string => `Page ${page} of ${pages}`;
export const DATE = 'Date';
export const MARKS = 'Marks';
export const outOf = (marks: number): string => `of ${marks}`;
export const marksFor = (marks: number): string => (marks === 1 ? '1 mark' : `${marks} marks`);
export const NAME = 'Name';

// Keys.

export const HOW_WORKED = 'How each exercise is worked';
export const workedFor = (classCode: string, bank: string): string => `Class ${classCode} · question bank ${bank}`;
export const KNOWN_SLIPS = 'What a wrong answer tells';
export const HINT_WAS = 'Hint';

// The grid of answers.

export const GRID = 'Answers of all students';
export const STUDENT = 'Student';
export const QUESTION = 'Question';
export const gridColumn = (number: number): string => `${number}`;

// On the page.

export const LOOK = 'On the sheets';
export const ROOM_NAMES = { none: 'no room to work', some: 'room for some lines', much: 'room for a drawing' } as const;
export const LARGE_PRINT = 'large print for all';
export const PRINT_EMPTY_GRID = 'Print the empty grid';
export const PRINT_GRID = 'Print the answer grid';
export const PRINT_METHOD = 'Print how it is worked';
export const KEY_ON_ONE = 'keys small, in two columns: one page a student';
/** After a reload: what was set came of a bank that this page no longer holds. */
export const setWithOther = (was: string, now: string): string =>
  `These papers were set with question bank ${was}; this page holds ${now}, and the numbers would be others. Set the papers again, or first bring back your own exercises as they were then, by hand or by their file.`;
export const GRID_AS_CSV = 'Answer grid as CSV';
export const EMPTY_GRID_AS_CSV = 'Empty grid to fill in, as CSV';

// The lab.

export const labFor = (student: string): string => `Lab: measuring a differential screw. ${student}`;
export const PAIR_IS = 'Pair';
export const labPair = (A: string, C: string, net: string, flat: string): string =>
  `Your pair: thread A ${A}, thread C ${C}. By design a turn moves the carried part ${net}, and a flat ${flat}.`;
export const LAB_PROTOCOL = {
  title: 'How to measure',
  steps: [
    'Clamp the base. Put the weight on the carried part that it will carry in use.',
    'Stand the indicator square over the axis of the carried part, a little pressed in.',
    'Turn back by half a turn and forward to flat 0. Then all lost motion is taken up. Set the indicator to zero.',
    'Turn up flat by flat, and read at each of the thirteen places. If you turn too far, begin this way again.',
    'Go a quarter of a turn beyond the last place and back to it. Now read down, flat by flat.',
    'Go a quarter of a turn beyond flat 0 and forward again. Take both ways once more.',
    'Between readings keep your hand off the screw, so that it does not warm.',
  ],
};
/** Common practice, no source. */
export const LAB_CAUTION =
  'Keep fingers out from under the carried part and its weight. Block the weight before you change anything. The rules of your shop come first.';
export const LAB_TABLE = 'Readings';
export const FLAT_COLUMN = 'Flat';
export const EXPECTED = 'By design';
export const UP_RUN = (run: number): string => `Up ${run}`;
export const DOWN_RUN = (run: number): string => `Down ${run}`;
export const LAB_PLOT = 'Plot: up as ▲, down as ▽. The line is what the design gives.';
export const FLAT_STEP = 'flats';
export const expectedLine = (motion: string, flats: number): string =>
  `Squared paper with a straight line from zero to ${motion} at ${flats} flats.`;
export const CHECKS = {
  title: 'Five checks before you sign',
  list: [
    'Every reading of one way was approached from the same side.',
    'The gap was taken up before the first reading that counts.',
    'Back at flat 0 the indicator shows zero again, but for the lost motion.',
    'The hand was off the screw between readings, and the stand had time to cool.',
    'The plunger stands square to the face and over the axis.',
  ],
};
export const RESULTS = {
  title: 'Results',
  list: ['Measured motion of a turn:', 'Lost motion between up and down:', 'Largest distance from the line:'],
};
export const SIGN_OFF = {
  title: 'Signed',
  list: ['Measured by:', 'Indicator, and when it was checked:', 'Checked by:', 'Accepted, or what is to be done:'],
};
export const rigFor = (student: string): string => `Rig: ${student}`;
export const RIG_HEAD = (unit: string): string =>
  `A computed jack with one hidden fault. Its base is clamped. The work, a weight of 20 N, stands on its tip. An indicator over the tip shows, in ${unit}, at each flat:`;
/** Under the flats, and over the quarters. */
export const RIG_WAYS =
  'Each way begins a tenth of a turn or more beyond its first flat, so that what is lost on reversal is taken up before the first reading.';
export const RIG_QUARTERS =
  'A second indicator touches the tip from the side. It was set to zero before the work was put on. Then the work was taken off, and the turn was read over the tip again, up and down.';
export const LAB_FACTS = [
  'Measured motion of a turn:',
  'Lost motion:',
  'What is wrong with this rig, and how you see it:',
];
export const LAB_KEY = 'What the rigs hide';
export const HIDES = 'Hides';
export const RIG_GIVEN = 'Given to the rig';
export const FOUND_BY_FIT = 'Found by the fit';
export const QUARTERS_NAME = (unit: string): string => `One turn by quarters, in ${unit}`;
export const QUARTER_HEADS = [
  'Turns',
  'From the side, with the work on',
  'Over the tip, with the work off, up',
  'Over the tip, with the work off, down',
];
/** What is found at the bench without turning, each as it is printed. */
export const rigChecks = (v: {
  readonly is: string;
  readonly reads: string;
  readonly drift: string;
  readonly line: string;
}): readonly string[] => [
  `A gauge block of ${v.is} under the indicator reads ${v.reads}.`,
  `A hand held the jack for ten minutes, and nothing was turned. The reading went by ${v.drift}.`,
  `A pencil line runs down the carried part. After the head was turned on and back with the work on, the line stands ${v.line} aside.`,
];
export const LAB_PAIRS = 'Pairs in the class, one a line: thread A + thread C. Each student gets one of them.';
export const SET_LAB = 'Set the lab';
export const labSet = (students: number): string =>
  `The lab is set for ${students === 1 ? 'one student' : `${students} students`}. The first sheets stand below.`;
export const PRINT_LAB = 'Print the lab sheets';
export const PRINT_RIGS = 'Print the rigs';
export const PRINT_LAB_KEY = 'Print what they hide';
export const RIGS_AS_CSV = 'Readings of all rigs as CSV';
export const OPEN_RIG = 'The readings of the first rig in the chapter on calibration (a new tab)';
export const TYPED_READINGS =
  'Readings as typed from the sheet, one a line: flat; reading; up or down, for example 1; 14.6; up. Of a whole class, with the name before: Ada; 1; 14.6; up';
export const READINGS_IN = 'Readings without a unit are in';
export const RIG_COLUMNS = ['Student', 'Flat', 'Reading', 'Unit', 'Direction'] as const;
/** What a fit says of one student’s readings, each as it is printed. */
export const readingsJudged = (v: {
  readonly lead: string;
  readonly half: string;
  readonly design: string;
  readonly verdict: 'agrees' | 'differs' | 'too rough';
  readonly stray: { readonly flat: number; readonly way: 'up' | 'down' | undefined } | undefined;
  readonly swapped: boolean;
  readonly lost: string | undefined;
  readonly wave: string | undefined;
}): string =>
  [
    `A turn moves ${v.lead} ± ${v.half}. By design it is ${v.design}${v.verdict === 'too rough' ? '. A ± of more than a tenth of that tells nothing' : v.verdict === 'agrees' ? '; the two agree' : '; the two do not agree'}.`,
    ...(v.stray === undefined
      ? []
      : [
          `One reading lies far off the others: flat ${v.stray.flat}${v.stray.way ? `, ${v.stray.way}` : ''}. Look at it again.`,
        ]),
    ...(v.swapped ? ['The readings down lie ahead of those up, which no thread does: were the two swapped?'] : []),
    ...(v.lost === undefined ? [] : [`Lost motion between up and down: ${v.lost}.`]),
    ...(v.wave === undefined ? [] : [`Once a turn the motion is off by ± ${v.wave}.`]),
  ].join(' ');
export const OPEN_READINGS = 'These readings in the chapter on calibration (a new tab)';
export const TYPED_PAIR = 'Whose they are: a student of the list, or a pair. Not asked where each line has a name';
export const AS_ON_SHEET = 'the unit of the student’s sheet';
export const LAB_VERDICTS = { agrees: 'agrees', differs: 'does not agree', 'too rough': 'tells nothing' } as const;
/** Of a class’s readings: students that were judged, those that were not, and names that no student has. */
export const classJudged = (
  students: number,
  refused: number,
  unknown: readonly string[],
  missing: readonly string[],
): string =>
  [
    `The readings of ${students === 1 ? 'one student' : `${students} students`} are judged.`,
    ...(refused === 0 ? [] : [`Those of ${refused} more could not be; the table says why.`]),
    ...(unknown.length === 0 ? [] : [`Not on the list above: ${unknown.join(', ')}.`]),
    ...(missing.length === 0 ? [] : [`On the list, without readings: ${missing.join(', ')}.`]),
  ].join(' ');
export const CLASS_READINGS = 'Readings of the class';
export const READINGS_SAY = 'What the readings say';
export const CLASS_READINGS_CSV = 'These results as CSV';
export const CLASS_READINGS_HEADS = [
  'Student',
  'Pair',
  'Motion of a turn, µm',
  '±, µm',
  'By design, µm',
  'Verdict',
  'Lost motion, µm',
  'What the readings say',
] as const;
export const JUDGE_READINGS = 'Judge these readings';
export const FIRST_LAB = 'First lab sheet, rig and key';

// Marking.

export const FILLED_GRID = 'The filled grid: names down, exercises across, as the empty grid has them';
export const MARK_ANSWERS = 'Mark these answers';
export const HALF_FOR_SLIP = 'half the marks for a known slip';
export const SCORES_AS_CSV = 'Scores as CSV';
export const SCORE = 'Score';
export const OUT_OF = 'Out of';
export const EXERCISE_HEAD = 'Exercise';
export const TITLE_HEAD = 'Title';
export const RIGHT_HEAD = 'Right';
export const WRONG_HEAD = 'Wrong';
export const LEFT_HEAD = 'Left out';
export const MISSED_ITEMS = 'By exercise';
export const MISSED_SLIPS = 'By slip';
export const TIMES_HEAD = 'Times';
export const SLIP_HEAD = 'What it tells';
export const SCORES = 'Scores';
export const UNREAD_HEAD = 'Not read';
export const ANSWER_HEAD = 'Answer';
export const VERDICT_HEAD = 'Verdict';
export const ANSWER_KINDS = { right: 'right', wrong: 'wrong', unread: 'not read', left: 'left out' } as const;
export const ANSWERS_UNREAD = 'Answers that could not be read. Mend them in the grid, and mark again';
export const BY_ANSWER = 'By student, answer by answer';
export const marked = (
  students: number,
  unknown: readonly string[],
  missing: readonly string[],
  taken: readonly { readonly name: string; readonly student: string }[],
  unread: number,
): string =>
  [
    `${students === 1 ? 'One student is' : `${students} students are`} marked.`,
    ...(unread === 0
      ? []
      : [
          `${unread === 1 ? 'One answer' : `${unread} answers`} could not be read, and ${unread === 1 ? 'earns' : 'earn'} nothing yet.`,
        ]),
    ...taken.map(({ name, student }) => `“${name}” is taken for “${student}”.`),
    ...(unknown.length === 0 ? [] : [`Not in the list of students above: ${unknown.join(', ')}.`]),
    ...(missing.length === 0 ? [] : [`In the list of students, without a row in the grid: ${missing.join(', ')}.`]),
  ].join(' ');

// Exercises as a teacher wants them.

export const USED = 'is used';
export const MARKS_FIELD = 'Marks';
export const CHANGE_EXERCISE = 'Change words and sizes';
export const TITLE_FIELD = 'Title';
export const QUESTION_FIELD = 'Question; what stands in braces is drawn';
export const HINT_FIELD = 'Hint';
export const sizesField = (name: string): string => `Sizes for {${name}}, parted by commas`;
export const TAKE_CHANGE = 'Take the change';
export const TAKE_BACK = 'As it was';
export const changedNow = (title: string): string => `“${title}” is changed. Papers set from now on have it.`;
export const SAVE_OWN = 'Save these changes to a file';
export const OPEN_OWN = 'Open such a file';
const counted = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;
interface OwnCounts {
  readonly hidden: number;
  readonly edits: number;
  readonly marks: number;
  /** Exercises of a file that this bank lacks, or that their change no longer fits. */
  readonly unfit?: readonly string[];
}
const ownCounts = ({ hidden, edits, marks }: OwnCounts): string =>
  `${counted(hidden, 'exercise is', 'exercises are')} left out, ${counted(edits, 'is', 'are')} changed, ${counted(marks, 'has', 'have')} marks of its own`;
export const ownSays = (own: OwnCounts): string =>
  own.hidden + own.edits + own.marks === 0
    ? 'All exercises are as the chapters have them.'
    : `${ownCounts(own).replace(/have marks of its own$/, 'have marks of their own')}. This holds for papers set from now on. It stays in this tab; save it to a file to have it next time.`;
export const ownRead = (own: OwnCounts): string =>
  [
    `The file is read: ${ownCounts(own).replace(/have marks of its own$/, 'have marks of their own')}.`,
    ...(own.unfit?.length
      ? [`Not used, since this notebook has no such exercise or the change no longer fits it: ${own.unfit.join(', ')}.`]
      : []),
  ].join(' ');

// The plan of a course.

export const PLAN = 'Plan of the course';
export const LESSONS = 'Lessons';
export const MINUTES_A_LESSON = 'Minutes a lesson';
export const CHAPTERS_OF_PLAN = 'Chapters';
export const TAKE_NEEDS = 'Add what these chapters need';
export const REACH = 'I want to reach the chapter';
export const PLAN_WAY = 'Plan the way to it';
export const wayTakes = (title: string, chapters: number, minutes: number): string =>
  chapters === 1
    ? `“${title}” needs no other chapter. It takes ${minutes} minutes.`
    : `“${title}” needs ${chapters === 2 ? 'one chapter' : `${chapters - 1} chapters`} before it. That is ${minutes} minutes, itself included.`;
export const SET_PLAN = 'Set the plan';
export const PRINT_PLAN = 'Print the plan';
export const PLAN_AS_CSV = 'Plan as CSV';
export const LESSON_HEAD = 'Lesson';
export const CHAPTERS_TAKEN = 'Chapter';
export const MINUTES_HEAD = 'Minutes';
export const OUTCOMES_HEAD = 'What the student can do then';
export const PRACTISED_BY = 'Exercises';
export const partOf = (number: number, title: string, from: 'whole' | 'begun' | 'carried on' | 'ended'): string =>
  `${number} ${title}${from === 'whole' ? '' : `, ${from}`}`;
export const planSays = (plan: {
  readonly lessons: number;
  readonly over: number;
  readonly enough: number;
  readonly left: readonly { readonly chapter: string; readonly minutes: number; readonly begun: boolean }[];
  readonly unmet: readonly { readonly chapter: string; readonly needs: readonly string[] }[];
}): string =>
  [
    plan.over === 0
      ? `The chapters take ${plan.enough === 1 ? 'one lesson' : `${plan.enough} lessons`}.`
      : `${plan.over} minutes find no room; ${plan.enough} lessons would hold all.`,
    ...(plan.left.length === 0
      ? []
      : [
          `Left out, for homework or later: ${plan.left
            .map(({ chapter, minutes, begun }) => `${chapter} (${begun ? `the last ${minutes}` : minutes} minutes)`)
            .join('; ')}.`,
        ]),
    ...plan.unmet.map(
      ({ chapter, needs }) => `“${chapter}” needs ${needs.map((one) => `“${one}”`).join(' and ')} too.`,
    ),
  ].join(' ');

// The project.

export const WANTED_LEAD = 'Motion of a turn';
export const WHICH_TAPS = 'Taps at hand';
export const TAPS_NAMES = { metric: 'metric taps only', inch: 'inch taps only', either: 'both' } as const;
export const FIND_PAIRS = 'Find pairs';
export const PAIRS_FOR_PROJECT = 'Pairs for the project';
export const PRINT_PROJECT = 'Print the project';
export const NET_LEAD_HEAD = 'Pair';
export const PAIR_HEADS = ['Net lead', 'Gain', 'Stroke, one diameter of each used up'];
/** `off` is how far the nearest pair is from what was asked, in per cent, where it is no near one. */
export const projectPairsSay = (count: number, taps: string, sizes: string, off: string | undefined): string =>
  [
    ...(off === undefined ? [] : [`No pair is near: the nearest is ${off} % off.`]),
    `${count === 1 ? 'One pair' : `${count} pairs`}, the nearest first: ${taps}.`,
    `Searched: ${sizes}.`,
  ].join(' ');
export const SIZES_SEARCHED = {
  metric: 'the common metric sizes from M4 to M16, coarse and fine',
  inch: 'UNC and UNF from No. 8 to 5/8',
  either: 'the common metric sizes from M4 to M16, coarse and fine; UNC and UNF from No. 8 to 5/8',
} as const;

// The safety sheet: common practice, no source.

export const SAFETY = {
  title: 'Safety in the shop',
  first:
    'The rules of this shop, the instructor’s word and local codes come before this sheet. If you do not know, stop and ask.',
  groups: [
    {
      title: 'Before you begin',
      rules: [
        'Safety glasses on. Hair tied back; no rings, watch, scarf or loose sleeves near anything that turns.',
        'No gloves at a turning spindle or drill.',
        'You know where the emergency stop, the first-aid box and the extinguisher are.',
      ],
    },
    {
      title: 'Drilling, turning and cutting threads',
      rules: [
        'The work is clamped. You never hold it by hand under a drill.',
        'The chuck key is out of the chuck before the machine starts.',
        'Chips are taken away with a brush or hook, with the machine stopped. Never by hand, never with compressed air.',
        'A tap or die is turned back to break the chip, and is not forced. A broken tap is as sharp as glass.',
      ],
    },
    {
      title: 'Pressing, springs and loads',
      rules: [
        'A hardened ball can burst when it is pressed in. A shield stands between it and your face.',
        'A compressed spring is let go slowly, away from the face.',
        'A fine jack is an adjuster, not lifting gear. Heavy work is blocked; no hand goes under it.',
      ],
    },
  ],
  here: 'In this shop',
  blanks: ['Emergency number:', 'First aid is given by:', 'Machines I may use:', 'Further rules here:'],
  signed: 'Signed',
  says: 'I have read this sheet and the rules of the shop, and I asked about what I did not understand.',
  signatures: ['Name and date:', 'Instructor:'],
};
export const PRINT_SAFETY = 'Print the safety sheet';

// Files of questions.

export const VARIANTS = 'Variants of each exercise, of which a test draws one for each student';
export const SCORED_BY_HAND = '“show that” too, which a person scores';
