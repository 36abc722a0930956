/** The language of these words, as pages and files name it. */
export const LANGUAGE = 'en-GB';
/** The language of chapters that are not translated. */
export const WRITTEN_IN = 'en-GB';
/** The folder of chapters in this language, in that of the others; a chapter that is not in it is taken as it was written. */
export const CHAPTERS = '';
/** Between the cells of a file for a spreadsheet, which in this language are read so. */
export const SEPARATOR = ',';
/** In the numbers of such a file. */
export const DECIMAL_MARK = '.';
/** Units that have a name rather than a sign. */
export const UNIT_WORDS = { tenths: 'tenths', millionths: 'millionths', turns: 'turns', turn: 'turn', d: 'd' } as const;
/** Behind a ±: how many readings it is of. */
export const READINGS = 'readings';
/** The sense of a thread, as a number that a page shows. */
export const SENSE = { right: 'right', left: 'left' } as const;
