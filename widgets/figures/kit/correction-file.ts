/** The correction table as a file, every step of it. */

import { FINDINGS } from '#words/figures/kit.ts';
import { DECIMAL_MARK, SEPARATOR } from '#words/language.ts';
import type { Calibrated } from '../../assembly/calibration-of.ts';
import { correctionsBySteps, correctionTable } from '../../engine/index.ts';
import { toCsv } from '../../input/readings-table.ts';
import { saveFile } from './save.ts';

/** More rows than that serve nobody: then every second, third … step is written. */
const MOST_IN_FILE = 20_000;

export const correctionCsv = (c: Calibrated): string => {
  const found = correctionsBySteps(c.calibration.model, c.stepsPerTurn, c.setUp, MOST_IN_FILE);
  if (!found.ok) return '';
  const { header, rows } = correctionTable(found.value.rows);
  return toCsv(header, rows, { separator: SEPARATOR, decimalMark: DECIMAL_MARK });
};

export const saveCorrections = (c: Calibrated): void =>
  saveFile(correctionCsv(c), FINDINGS.correctionFile, 'text/csv;charset=utf-8');
