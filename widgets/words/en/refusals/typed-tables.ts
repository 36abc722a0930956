/** Why a table that was typed or pasted can’t be read: feet and their readings, and readings of a run. */
import { asRead, listed, quoted, type Refusals } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';
import { clause } from '../clause.ts';

const SAVE_OR_COPY = 'save the readings as CSV, or copy the columns and paste them here.';
const NAME_LIKE = 'name the columns like this: turns; reading (µm); direction.';
const COMMAS = 'if commas are decimal marks, part the columns by semicolons or tabs';

const FILES = {
  packed: 'a spreadsheet or another packed file',
  pdf: 'a PDF file',
  rtf: 'a rich-text file',
  xml: 'a web page or XML file',
  json: 'a JSON file',
} as const;

const COLUMNS = { position: 'position', reading: 'reading', direction: 'direction' } as const;

const columns = (count: number): string => `${count} ${count === 1 ? 'column' : 'columns'}`;

const faultOf = (fault: Refusals['line-unread']['fault']): string => {
  switch (fault.kind) {
    case 'width':
      return `${quoted(fault.text)} has ${columns(fault.columns)} where there should be ${fault.wanted}${fault.commas ? `; ${COMMAS}` : ''}`;
    case 'missing':
      return `the ${COLUMNS[fault.column]} is missing`;
    case 'no number':
      return `the ${COLUMNS[fault.column]} ${quoted(fault.cell)} is not a number`;
    case 'no direction':
      return `the direction ${quoted(fault.cell)} is not up or down`;
  }
};

/** The lines that are wrong as the first is; a few are named and the rest are counted. */
const likewise = (others: readonly number[], more: number): string => {
  if (others.length === 0) return '';
  const names = others.map(String);
  return ` (and in the same way ${others.length + more === 1 ? 'line' : 'lines'} ${more > 0 ? `${names.join(', ')} and ${more} more` : listed(names)})`;
};

export const TYPED_TABLES = {
  'rows-too-long': ({ text, most }) =>
    `Read ${quoted(text)}; ${most} characters is the limit here: leave some rows out.`,
  'length-beyond': ({ text }) => `Read ${quoted(text)}; give a length from −10 m to 10 m.`,
  'foot-row-unread': ({ row, text, why }, behind) =>
    `Row ${row} of the feet reads ${quoted(text)}; ${why ? clause(behind(why)) : 'give x and y, like 1: 0, 0.'}`,
  'listed-feet-not-three': ({ feet }) =>
    `Read ${feet} feet; a plate is levelled on exactly three: give three rows, like 1: 0, 0.`,
  'foot-twice': ({ name }) => `Two feet are called ${name}; call them 1, 2 and 3.`,
  'foot-of-other-name': ({ name }) => `One foot is called ${name}; call them 1, 2 and 3.`,
  'stand-unread': ({ foot, why }, behind) => `Foot ${foot}: ${behind(why)}`,
  'stand-beyond': ({ foot, text, most }) =>
    `Foot ${foot}: Read ${quoted(text)}; give its turns from the middle of the stroke, at most ${most}.`,
  'reading-row-unread': ({ row, text, why }, behind) =>
    `Row ${row} of the readings reads ${quoted(text)}; ${why ? clause(behind(why)) : 'give x, y and the reading, like 40, 20: −3 µm.'}`,
  'reading-unread': ({ row, why }, behind) => `Row ${row} of the readings: ${behind(why)}`,
  'too-many-readings': ({ readings, most }) =>
    `Read ${readings} readings; ${most} is the limit here: a few, far apart, are as good.`,
  'too-many-rounds': ({ rounds, most }) =>
    `Read ${rounds} rounds; ${most} are kept here: put the last readings first and begin again.`,
  'round-unread': ({ round, why }, behind) => `Round ${round}: ${behind(why)}`,

  'steps-in-turn-odd': ({ steps }) =>
    `Read ${asRead(steps)} steps per turn; give a whole number from 1 to 10 000, such as 6.`,
  'table-too-long': ({ characters, most }) =>
    `Read ${characters} characters; at most ${most} are taken: leave some readings out.`,
  'table-of-other-kind': ({ file }) => `This looks like ${FILES[file]}, not a table of text: ${SAVE_OR_COPY}`,
  'table-not-text': () => `This holds characters that no text has, so it is some other file: ${SAVE_OR_COPY}`,
  'table-empty': () => 'Nothing was pasted; give two columns, turns and readings, with a line for each reading.',
  'too-many-lines': ({ lines, most }) => `Read ${lines} lines; at most ${most} are taken: leave some readings out.`,
  'quote-unclosed': ({ line, text }) =>
    `Line ${line}: ${quoted(text)} opens a quote and does not close it; correct it and paste again.`,
  'decimal-marks-mixed': ({ comma, point }) =>
    `Line ${comma.line} has a decimal comma (${quoted(comma.cell)}) and line ${point.line} a decimal point (${quoted(point.cell)}); use one mark throughout, and no thousands marks.`,
  'line-unread': ({ line, fault, others, more }) =>
    `Line ${line}: ${faultOf(fault)}${likewise(others, more)}; correct or remove it and paste again.`,
  'header-alone': () => 'There is a header and no reading under it; paste the readings with it.',
  'column-twice': ({ column, first, second }) =>
    `The header has two columns of one kind, ${quoted(first)} and ${quoted(second)}: keep one ${COLUMNS[column]} column and remove or rename the other.`,
  'position-unit-unknown': ({ unit }) =>
    `The header gives ${quoted(unit)} as the unit of the positions; use turns, flats or °, and ${NAME_LIKE}`,
  'reading-unit-unknown': ({ unit }) =>
    `The header gives ${quoted(unit)} as the unit of the readings; use mm, µm, in, thou, tenths or millionths, and ${NAME_LIKE}`,
  'column-missing': ({ header, column, unparted }) =>
    `The header ${quoted(header)} has no column of ${column === 'position' ? 'positions' : 'readings'} known here${
      unparted ? ', and nothing parts its columns' : ''
    }; ${NAME_LIKE}`,
  'columns-without-names': ({ width, commas }) =>
    `The first line has ${columns(width)} and no names; two are needed, turns and readings${commas ? ` (${COMMAS})` : ''}, or ${NAME_LIKE}`,
} satisfies Partial<RefusalWords>;
