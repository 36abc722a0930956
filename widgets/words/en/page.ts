/** What stands round a chapter and on its blocks: masthead, ways on, headings, foot. */

export const NOTEBOOK = 'Differential screws, worked';
/** Above a page of an edition in another language that has not been translated; English pages need it not. */
export const NOT_TRANSLATED = 'This page is not translated yet; its text is English.';
export const TO_TEXT = 'To the text';
export const ALL_CHAPTERS = 'All chapters';
export const chapterNumber = (n: number): string => `Chapter ${n}`;
export const chapterOf = (n: number, count: number, title: string): string => `Chapter ${n} of ${count}: ${title}`;
/** The list beside the text: sections of the page, and ways to others. */
export const WAY = 'Sections and chapters';
export const SECTIONS = 'In this chapter';
export const chapterOfAll = (n: number, count: number): string => `Chapter ${n} of ${count}`;
export const NEIGHBOURS = 'Neighbouring chapters';
export const BACK_TO = 'Back to';
export const ON_TO = 'On to';
/** `licence` is the name of the licence, as a link. */
export const foot = (licence: string): string =>
  `Text and figures of the chapters: ${licence}. Code: MIT. Every result on this page is computed by the notebook’s engine and checked when it is built. A fine jack is not lifting gear; your shop’s rules, local codes and licensed practice come first.`;

/** For catalogues of teaching material. */
export const RESOURCE_TYPES = ['worked example', 'interactive figure', 'exercise'];
export const EDUCATIONAL_LEVEL = 'vocational training';

/** The heading of each kind of box; a note has none, nor have the doors of the front page. */
export const BOXES: Readonly<Record<'goal' | 'misconception' | 'caution' | 'summary' | 'note' | 'doors', string>> = {
  goal: 'What you will be able to do',
  misconception: 'A likely mistake',
  caution: 'Caution',
  summary: 'In short',
  note: '',
  doors: '',
};
export const TABLE = 'Table';
export const HOW_TO_READ = 'How to read it';
export const DERIVATION = 'Derivation';
/** What the steps of a derivation are folded under. */
export const whyLines = (steps: number): string => `Why? ${steps} steps`;
/** The columns of a worked example. */
export const CALCULATION = ['What', 'Formula', 'Numbers', 'Result'];
export const GIVEN_ABOVE = 'Numbers as above';
export const EXAMPLE_NUMBER = 'Example';
export const FIGURE_NUMBER = 'Figure';
/** As a figure or an example stands in its place and is cited; on a page without numbers by its kind alone. */
export const cited = (kind: string, number: string): string => (number === '' ? kind : `${kind}\u00a0${number}`);
export const equationNumber = (number: string): string => `equation\u00a0(${number})`;
/** Behind the name of a step that an earlier example has worked. */
export const workedIn = (example: string): string => `the formula of ${example}`;

export const predictionNumber = (n: number): string => `Prediction ${n}`;
export const PREDICT_FIRST = 'Predict first';
/** In place of what a figure says, which would be the answer. */
export const COVERED_UNTIL_PREDICTED = 'What it says is covered until you predict, open the answer or change a number.';
export const SHOW_ANSWER = 'Answer';

export const EXERCISE = 'Exercise';
/** What kind an exercise is, on its line. */
export const EXERCISE_KINDS = {
  number: 'find a number',
  picture: 'read a picture',
  choice: 'choose an answer',
  way: 'which way',
  flank: 'which flank',
  'wrong-line': 'find the wrong line',
  order: 'put in order',
  stack: 'choose from a drawer',
  table: 'judge a table',
} as const;
export const HINT = 'Hint';
export const WORKED_ANSWER = 'Answer';
/** Both are places in the page, or what stands in them. */
export const answerLine = (answer: string, accepted: string): string =>
  `Answer: ${answer}<span data-between>; accepted from ${accepted}</span>.`;

export const PAPERS = 'Papers';
export const PAPERS_WITHOUT_SCRIPT =
  'Papers are set by a script in your browser, which has not run. The exercises of the chapters can be printed with their pages.';
export const CLASSWORK_WITHOUT_SCRIPT = 'This is made by a script in your browser, which has not run.';
export const MIXED_REVIEW = 'Mixed review';

export const ONE_FILE_WITHOUT_SCRIPT =
  'This single file needs script to choose a page. The folder of pages works without script.';

/** Read without a network, at an address that this browser has no page of. */
export const NO_PAGE = {
  title: 'No such page',
  says: 'There is no network, and the copy of the notebook kept in this browser has no page at this address.',
  pages: 'The pages it has',
  /** In the one-file notebook; `{page}` is the name that was asked for. */
  unknown: 'The notebook has no page “{page}”; its pages are listed here.',
};

// The map of the chapters, and what helps to find the way.

export const takesMinutes = (minutes: number): string => `${minutes}\u00a0min`;
export const needsChapters = (numbers: readonly number[]): string => `after ${numbers.join(', ')}`;
export const SYMBOL = 'Symbol';
export const SYMBOL_NAME = 'Name';
export const UNIT = 'Unit';
export const FIRST_MET = 'Met first in';
/** A number has the unit “1”. */
export const symbolUnit = (unit: string): string => (unit === '1' ? 'a number' : unit);
export const metIn = (chapter: number, section: string | undefined): string =>
  `chapter ${chapter}${section === undefined ? '' : `, ${section}`}`;
/** Of a symbol in the index of the search: the name by which algebra is written, and where it is met. */
export const symbolFound = (name: string, met: string): string => `Written ${name}, met first in ${met}.`;

/** Behind a term in the index of the search: what else the trade looks for. */
export const alsoLookedFor = (words: string): string => `Also looked for as: ${words}.`;

/** A thread of a figure or example that says no more of it. */
export const threadLabel = (name: string): string =>
  name === 'A' ? 'thread A, base to turned part' : name === 'C' ? 'thread C, turned part to carried part' : 'thread';
/** A relation behind the line of a derivation that it holds for: by its name, or by what it says. */
export const relationCited = (name: string, _says: string): string => name.replace(/-/g, ' ');

export const ASK_CHECK = 'Check';
export const ASK_YES = 'Yes';
export const ASK_NO = 'No';
