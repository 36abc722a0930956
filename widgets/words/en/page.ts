/** What stands round a chapter and on its blocks: masthead, ways on, headings, foot. */

export const NOTEBOOK = 'Differential screws, worked';
export const TO_TEXT = 'To the text';
export const CHAPTERS = 'Chapters';
export const ALL_CHAPTERS = 'All chapters';
export const chapterNumber = (n: number): string => `Chapter ${n}`;
export const chapterOf = (n: number, count: number, title: string): string => `Chapter ${n} of ${count}: ${title}`;
export const NEIGHBOURS = 'Neighbouring chapters';
export const BACK_TO = 'Back to';
export const ON_TO = 'On to';
/** `licence` is the name of the licence, as a link. */
export const foot = (licence: string): string =>
  `Text and figures of the chapters: ${licence}. Code: MIT. Every result on this page is computed by the notebook’s engine and checked when it is built. A fine jack is not lifting gear; your shop’s rules, local codes and licensed practice come first.`;

/** For catalogues of teaching material. */
export const RESOURCE_TYPES = ['worked example', 'interactive figure', 'exercise'];
export const EDUCATIONAL_LEVEL = 'vocational training';

/** The heading of each kind of box; a note has none. */
export const BOXES: Readonly<Record<'goal' | 'misconception' | 'caution' | 'summary' | 'note', string>> = {
  goal: 'What you will be able to do',
  misconception: 'A likely mistake',
  caution: 'Caution',
  summary: 'In short',
  note: '',
};
export const TABLE = 'Table';
export const HOW_TO_READ = 'How to read it';
export const DERIVATION = 'Derivation';
export const WORKED_EXAMPLE = 'Worked example';

export const predictionNumber = (n: number): string => `Prediction ${n}`;
export const PREDICT_FIRST = 'Predict first';
export const SHOW_ANSWER = 'Show the answer';

export const EXERCISE = 'Exercise';
export const HINT = 'Hint';
export const WORKED_ANSWER = 'Worked answer';
/** Both are places in the page, or what stands in them. */
export const answerLine = (answer: string, accepted: string): string => `Answer: ${answer}; accepted from ${accepted}.`;

export const PAPERS = 'Papers';
export const PAPERS_WITHOUT_SCRIPT =
  'Papers are set by a script in your browser, which has not run. The exercises of the chapters can be printed with their pages.';
export const MIXED_REVIEW = 'Mixed review';

export const ONE_FILE_WITHOUT_SCRIPT =
  'This single file needs script to choose a page. The folder of pages reads without.';

/** Read without a network, at an address that this browser has no page of. */
export const NO_PAGE = {
  title: 'No such page',
  says: 'There is no network, and the copy of the notebook kept in this browser has no page at this address.',
  pages: 'The pages it has',
};
