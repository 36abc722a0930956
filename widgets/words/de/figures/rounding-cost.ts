/** Wörter dessen, was frühes Runden kostet. */
import { spokenNumber } from '../../../engine/index.ts';
import type * as En from '../../en/figures/rounding-cost.ts';
import type { Same } from '../../same.ts';

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Was frühes Runden kostet',
  exactly: (sum) => `Genau: ${sum}`,
  bars: 'Balken der Nettosteigung',
  drawing: (A, C) =>
    `Nettosteigung von ${spokenNumber(A)} und ${spokenNumber(C)} mit zuerst gerundeten Steigungen, neben der genauen`,
  keptTo: 'gerundet auf',
  give: 'Nettosteigung daraus',
  offBy: 'daneben um',
  notRounded: 'nicht gerundet',
  nothingLost: 'nichts verloren',
  standsStill: 'steht still',
  caption: (exact, rounded, error) =>
    `Die genaue Nettosteigung ist ${exact}; auf ein tausendstel Millimeter gerundete Steigungen geben ${rounded} (${error}).`,
  head: ['Dezimalstellen eines Millimeters', 'Steigungen', 'Nettosteigung', 'Fehler'],
  exact: 'genau',
  none: 'keine',
};
