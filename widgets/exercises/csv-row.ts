import { DECIMAL_MARK, SEPARATOR } from '#words/language.ts';
import { notFormula } from '../input/readings-table.ts';

/** A number that was written with a point, as the spreadsheets of the language read it. */
const inCsv = (cell: string): string => (/^[+\-−]?\d+\.\d+$/.test(cell) ? cell.replace('.', DECIMAL_MARK) : cell);

/** A row of a CSV, every cell in quotes: a question may hold commas, an inch mark or a line break. */
export const csvRow = (cells: readonly string[]): string =>
  cells.map((c) => `"${notFormula(inCsv(c)).replace(/"/g, '""')}"`).join(SEPARATOR);
