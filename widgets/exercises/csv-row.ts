import { SEPARATOR } from '#words/language.ts';
import { notFormula } from '../input/readings-table.ts';

/** A row of a CSV, every cell in quotes: a question may hold commas, an inch mark or a line break. */
export const csvRow = (cells: readonly string[]): string =>
  cells.map((c) => `"${notFormula(c).replace(/"/g, '""')}"`).join(SEPARATOR);
