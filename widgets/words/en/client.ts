/** What the script of a page says: buttons, labels, notes and verdicts. */

// Masthead and page.

export const LENGTHS_IN = 'Lengths in';
export const UNIT_FACES = { metric: 'mm, µm', inch: 'inch, thou', both: 'both' } as const;
export const OWN_NUMBERS = 'Chapter’s own numbers';
/** Of names in an address that this page has no field for; `more` are counted and not named. */
export const withoutFields = (names: readonly string[], more: number): string =>
  `The link states ${names.join(', ')}${more > 0 ? ` and ${more} more` : ''}, for which this page has no field: look through the numbers below and type what is missing.`;
/** Of stiffnesses in a link: what it states of them, and how many more. */
export const linkWithoutUnits = (stated: readonly string[], more: number): string =>
  `The link states ${stated.join(', ')}${more > 0 ? ` and ${more} more` : ''} without a unit, and this page keeps its own number: type what is meant with its unit, N/mm or N/µm.`;
/** Of what was left on the page: whether any of it is back, and the labels of what the page begins with otherwise by now. */
export const leftNumbers = (back: boolean, away: readonly string[]): string =>
  [
    back ? 'What you set on this page is back.' : '',
    away.length > 0 ? `Your design or your readings give others now for: ${away.join('; ')}.` : '',
  ]
    .join(' ')
    .trim();
export const FORMULA = 'Formula';

// The way through the book.

export const DONE = '✓ done';
/** Beside a section: some of its predictions and exercises are done. */
export const tasksOf = (done: number, all: number): string => `${done} of ${all}`;
export const I_HAVE_DONE_IT = 'I have done this chapter';
export const IN_PLACE = (chapter: string, section: string): string => `${chapter}, ${section}`;
export const continueAt = (place: string): string => `Continue: ${place}`;

export const SEARCH = 'Search';
/** What a search for a whole sentence leaves out. */
export const SMALL_WORDS: ReadonlySet<string> = new Set(
  [
    'a an and are as at be by can do does for from has have how i if in into',
    'is it its me my of on or so that the their them there they this to was we what',
    'when where which who why will with you your',
  ].flatMap((words) => words.split(' ')),
);
/** A word for one of what a word in the plural says. */
export const ONE_OF_MANY = (word: string): string => word.replace(/([^s])s$/, '$1');
export const SEARCH_MISSING = 'The index of the search did not come: reload the page.';
export const foundCount = (count: number): string => (count === 1 ? 'One place' : `${count} places`);
export const NOTHING_FOUND = (typed: string): string => `Nothing is found for “${typed.trim()}”.`;
export const TO_GLOSSARY = 'All terms and symbols';
/** Where a found section stands, what a found symbol stands for. */
export const FOUND_IN = (kind: 'section' | 'term' | 'symbol', page: string): string =>
  kind === 'term' ? 'a term' : page;

/** The card of a symbol. */
export const SYMBOL_CARD = 'What the symbol is';
export const symbolValue = (unit: string, value: string, where: string): string =>
  `Unit: ${unit}. ${where === '' ? 'Here' : where}: ${value}.`;
export const metFirst = (place: string): string => `Met first in ${place}`;
export const SYMBOLS_BY_KEYS = 'Arrow keys go to the other symbols.';

export const PRINTING = 'Printing';
export const ON_PAPER =
  'Print it to read, with only the answers that you have opened; as a worksheet, with questions and room for work; or with all answers.';
export const PRINT_THIS = 'Print this sheet only';
export const PRINT_TO_READ = 'Print to read';
export const PRINT_WORKSHEET = 'Print as a worksheet';
export const PRINT_WITH_ANSWERS = 'Print with all answers';
/** Blanks to be filled in by hand. */
export const WORKSHEET_HEAD = 'Name: ______________________________   Date: ______________';

export const PROJECTOR = 'Projector view';
export const SHOW_LARGE = 'Show large';
export const NEXT_STEP = 'Next step';
export const SHOW_NEXT_STEP = 'Show the next step';
export const SHOW_READINGS = 'Show the readings';
export const HIDE_READINGS = 'Hide the readings';
export const NEXT_ONE = 'The next one';
export const ONE_BEFORE = 'The one before';
export const CLOSE = 'Close';
export const CLOSE_PROJECTOR = 'Close the projector view';
export const placeOf = (n: number, count: number): string => `${n} of ${count}`;

// Figures and fields.

export const SCRIPT_MISSING =
  'The script of this figure did not load, so its picture keeps the chapter’s own numbers: reload the page to make it follow yours.';
/** On paper, in place of a picture. */
export const NOT_YET_YOURS =
  'This figure had not taken your numbers yet, so it was left out. Wait a second and print again.';
export const pictureKept = (reason: string): string =>
  `${reason} The picture keeps the last numbers that can be drawn.`;
export const SAVE_AS_CSV = 'Save as CSV';

export const stepTold = (label: string, says: string): string => `${label}: ${says}`;
export const SMALLER_THREAD = 'next smaller standard thread';
export const LARGER_THREAD = 'next larger standard thread';
export const STEP_LESS = 'one step less';
export const STEP_MORE = 'one step more';
/** Behind the reason of a refused text: what stays in force. */
export const goodValueKept = (reason: string): string => `${reason} The last good value is still used.`;
export const threadKept = (reason: string, thread: string): string => `${reason} The figures keep ${thread}.`;
export const EMPTY_FIELD = 'Empty the field';
export const goesOn = (characters: number): string => `… and so on, ${characters} characters in all`;

// Worked examples.

export const ASK_BEHIND = 'Ask behind this result: wish for another, where it comes from, how sure it is';

// Predictions.

export const SET_PREDICTION = 'Set my prediction';
const bareNumber = (unit: string): string => (unit === '1' ? '' : ` (a bare number counts as ${unit})`);
export const yourPrediction = (unit: string): string => `Your prediction${bareNumber(unit)}`;
/** `typed` is in quotes. */
export const beyondAny = (typed: string, says: string, tooLarge: boolean): string =>
  `Read ${typed}, which is out of range for the ${says} here: type a ${tooLarge ? 'smaller' : 'larger'} one.`;
export const predictedRight = (right: string): string => `Yes: ${right}.`;
export const predictedWrong = (yours: string, right: string): string => `You said ${yours}; it is ${right}.`;
export const predictedStill = (right: string): string => `You said it does not move; it moves ${right}.`;
export const predictedOtherWay = (yours: string, right: string): string =>
  `Right amount, wrong direction: you said ${yours}, it is ${right}.`;
export const predictedSlip = (yours: string, right: string, slip: string): string =>
  `You said ${yours}; it is ${right}. ${slip}`;
export const predictedOff = (yours: string, right: string, by: string): string =>
  `You said ${yours}; it is ${right}, ${by}.`;
export const THE_OTHER_WAY = 'the other way';
export const NOT_FAR_OFF = 'not far off';
export const overAMillionTimes = (less: boolean): string => `more than a million times ${less ? 'less' : 'more'}`;
export const timesAs = (times: string, less: boolean): string => `${times} times ${less ? 'less' : 'more'}`;
export const scaleOf = (yours: string, right: string): string =>
  `Your prediction ${yours} and the answer ${right} on a scale of ratios`;
export const yoursOnScale = (yours: string, onScale: boolean): string =>
  `you: ${yours}${onScale ? '' : ', off this scale'}`;
export const engineOnScale = (right: string): string => `computed: ${right}`;

// Predictions on a picture.

export const WAY_ASKED = 'Which way will it go?';
export const FLANK_ASKED = 'Which flank will touch?';
export const DIAL_ASKED = 'Where will the long hand stand, in divisions? Minus is anticlockwise.';
export const drawnWay = (way: string, yours: boolean): string => `${yours ? 'you' : 'computed'}: ${way}`;
export const drawnFlank = (flank: string, yours: boolean): string => `${yours ? 'you' : 'computed'}: ${flank}`;
export const CURVE_SET =
  'Set the seven points: tap or drag where each should stand. By keys, go from point to point and use the arrows.';
export const curvePoint = (at: string): string => `The point at ${at}`;
export const CURVE_KEY = 'Dashed, with points: yours. Full line: computed.';
export const NOTHING_DRAWN = 'Set the points first; the answer can also be opened without it.';
export const BAR_ASKED = (known: string): string => `How tall is your bar, in per cent of the bar “${known}”?`;
export const barYours = 'you';
export const barAnswer = 'computed';
export const NOTHING_CHOSEN = 'Choose one first; the answer can also be opened without it.';

// Exercises.

export const CHECK = 'Check';
export const ANOTHER_EXERCISE = 'Another exercise';
/** Puts the numbers of an exercise into the fields of a figure of its page. */
export const PUT_ON_FIGURE = 'See these numbers on the figure';
/** What the figure has no field for. */
export const notOnFigure = (without: readonly string[]): string => `The figure has no field for ${without.join('; ')}.`;
// Examples whose last steps the reader fills in.

export const FILL_IN = (says: string, unit: string): string =>
  `Fill in: ${says}${unit === '' || unit === '1' ? '' : `, in ${unit}`}`;
export const SHOW_STEP = 'Show this step';
export const blankFilled = (result: string): string => `Right: ${result}.`;
export const blankLeads = (says: string, otherWay: boolean): string =>
  otherWay
    ? 'The right amount, but the other way: look at the sign.'
    : `Not yet. What stands in the formula for the ${says}? Put in the results of the lines above, with their units.`;

/** How many exercises of all chapters wait to be asked again. */
export const dueSays = (count: number): string =>
  count === 0
    ? 'Nothing is due today.'
    : count === 1
      ? 'One exercise is due today.'
      : `${count} exercises are due today.`;
export const reviewDue = (count: number): string => `${dueSays(count)} Go to the mixed review.`;
export const NEW_NUMBERS = 'New numbers';
export const ANSWER_OFFERED = 'The answer stands below, folded. If you open it, this round does not count.';
export const COPIED = 'The answer was open, so this round does not count. Take new numbers and try again.';
export const SHOW_REST = 'Show the rest';
export const yourAnswer = (unit: string): string => `Your answer${bareNumber(unit)}`;
export const YOUR_CHOICE = 'Your answer';
export const YOUR_ORDER = 'Your order: move a line with its arrows';
export const earlier = (line: string): string => `Earlier: ${line}`;
export const later = (line: string): string => `Later: ${line}`;
export const movedTo = (line: string, place: number, of: number): string => `${line} Now ${place} of ${of}.`;
export const fromChapter = (title: string): string => `From the chapter “${title}”.`;
export const PROGRESS = 'Progress';
export const EXPORT_PROGRESS = 'Export progress';
export const ERASE_PROGRESS = 'Erase progress';
export const ERASE_ALL = 'Erase all of it?';
export const solvedOnce = (done: number, all: number, lasting: boolean): string =>
  `${done} of ${all} solved at least once. ${lasting ? 'This is kept in your browser only.' : 'This browser cannot keep it, so it lasts until the page is closed: save it to a file.'}`;

// Designs.

export const MY_DESIGNS = 'My designs';
export const myDesign = (name: string): string => `My design: ${name}`;
export const KEEP = 'Keep';
export const KEEP_UNDER = 'Keep the numbers of this page under the name';
export const TAKEN_FROM = 'taken from the figure or example';
export const SAVE_DESIGNS = 'Save all to a file';
export const OPEN_DESIGNS = 'Open a file of designs';
export const USE = 'Use';
export const IN_USE = 'In use';
export const REMOVE = 'Remove';
export const removeNamed = (name: string): string => `Remove ${name}`;
/** Beside the designs, where a link has brought an adjuster. */
export const LINKED = 'The adjuster of this page came with a link, so other chapters do not have it.';
export const KEEP_LINKED = 'Keep it as a design';
export const NONE_KEPT = 'None kept yet.';
export const nowShown = (name: string): string =>
  `The figures and examples that take its numbers now show “${name}”, here and in the other chapters.`;
export const removed = (name: string): string => `“${name}” is removed.`;
export const NAME_EMPTY = 'The name is empty; type one such as Foot, left rear.';
export const keptHere = (name: string): string => `“${name}” is kept in this browser.`;
/** Behind it: of which figure or example, and what. */
export const keptOf = (block: string, held: { readonly first: readonly string[]; readonly more: number }): string =>
  held.first.length === 0
    ? `${block} has nothing that a design keeps.`
    : `Kept of ${block}: ${held.first.join('; ')}${held.more === 0 ? '' : `; and ${held.more} more`}.`;
export const notKept = (blocks: readonly string[]): string =>
  blocks.length === 0 ? '' : `You also changed ${blocks.join(', ')}; that is not kept.`;
/** `file` is in quotes. */
export const fileUnread = (file: string): string => `${file} could not be read; choose it again.`;
export const designsRead = (count: number): string => `${count} ${count === 1 ? 'design was' : 'designs were'} read.`;

/** Under the fields of a figure, while a design is in use. */
export const fromDesign = (
  name: string,
  {
    filled,
    all,
    own,
    typed,
  }: { readonly filled: number; readonly all: number; readonly own: number; readonly typed: number },
): string =>
  `From your design “${name}”${all === 0 ? '' : all === 1 ? (filled === 0 ? ': nothing here' : ': the one number here') : `: ${filled === 0 ? 'none' : filled} of these ${all} numbers`}.${own === 0 ? '' : ` The chapter’s own: ${own}.`}${typed === 0 ? '' : ` Changed here: ${typed}.`}`;
/** In place of a tick, names of fields. */
export const restsOnChapter = (names: readonly string[]): string =>
  `This is no verdict on your design yet. It rests on numbers of the chapter: ${names.join('; ')}. Type yours.`;
/** On a printed sheet; names of fields. */
export const ownOnPaper = (names: readonly string[], all: boolean): string =>
  all ? 'All numbers of this sheet are the chapter’s own.' : `The chapter’s own numbers here: ${names.join('; ')}.`;
/** After the way back to the chapter’s own numbers. */
export const putAway = (name: string): string => `Your design “${name}” is put away, on the other pages too.`;
export const USE_AGAIN = 'Use it again';
export const FIELDS_FROM = {
  design: 'From your design',
  worked: 'Computed from your design',
  chapter: 'Not from it, so the chapter’s own',
  refused: 'In it, but outside the range of this field, so the chapter’s own',
  reader: 'Changed here',
} as const;

// Papers.

export const FIRST_SHEET = 'First sheet and its key';
export const LINK_TO_SET = 'Link to this set, without the list of students';
export const PRINT_SHEETS = 'Print the sheets';
export const PRINT_KEY = 'Print the key';
export const PAPER = 'Paper';
export const PRINTERS_SIZE = 'as the printer has it';
export const papersSet = (papers: number, exercises: number): string =>
  `${papers === 1 ? 'One paper is' : `${papers} papers are`} set, ${exercises} ${exercises === 1 ? 'exercise' : 'exercises'} each. The first stands below with its key; print for the rest.`;
export const papersSoFar = (count: number, all: number): string =>
  `${count} of ${all} papers so far; they can be printed when all are set.`;
export const fileHolds = (items: number): string => `The file holds ${items} ${items === 1 ? 'item' : 'items'}.`;
export const howMany = (most: number): string => `How many exercises of each chapter (0 to ${most})`;
export const ASKED_AS = 'Asked';
/** The forms of an exercise, by their names in a link. */
export const FORM_NAMES = {
  'as-written': 'as in the chapters',
  backwards: 'backwards, where they can be',
  'show-that': 'show that',
  mixed: 'mixed by lot',
} as const;
export const CLASS_CODE = 'Class code';
export const ROSTER =
  'Roster: a name or code a line; behind a semicolon, “inch” or “mm” for a student who works in it, and “large” for one who needs large print. It stays in this tab.';
export const SET_PAPERS = 'Set the papers';
export const questionBank = (version: string): string => `Question bank ${version}.`;
export const BANK_AS_QTI = 'Question bank as QTI 2.1';
export const AS_NEWER_QTI = 'as QTI 3.0';
export const AS_CSV = 'as CSV';
export const LINK_FILLED_IN = 'The set of the link is filled in; paste the list of students it was made for.';
