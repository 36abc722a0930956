/** Was man von Grenzmaßen wissen soll. */
import type * as En from '../en/thread.ts';
import type { Same } from '../same.ts';

export const LIMITS_REMARKS: Same<typeof En.LIMITS_REMARKS> = {
  'position-f-from-memory':
    'Das Abmaß der Lage f ist aus dem Gedächtnis; vergleiche es mit der Norm, bevor Arbeit davon abhängt.',
  'no-standard-series': 'Das Gewinde steht in keiner Normreihe; seine Grenzmaße folgen der Norm, als stünde es darin.',
  'several-starts':
    'Die Normtabellen gelten für eingängige Gewinde; bei mehreren Gängen lassen Hersteller am Flankendurchmesser oft mehr zu (übliche Praxis, ohne Quelle).',
  'no-series-named':
    'Keine Unified-Reihe ist genannt; darum gilt eine Einschraublänge von neun Teilungen, wie für Sondergewinde.',
  'finer-than-tables': 'Die Tabellen der ASME B1.1 enden bei 80 Gängen je Zoll; darüber gelten ihre Formeln.',
};
