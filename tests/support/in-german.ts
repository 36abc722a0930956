/** What the tests of the German edition ask of it. It is bundled in German (`german.ts`), so that one file is loaded and not six hundred. */
export { makeBank } from '../../widgets/exercises/bank.ts';
export { csvRow } from '../../widgets/exercises/csv-row.ts';
export { drawItem } from '../../widgets/exercises/draw.ts';
export { methodSheet, studentSheet } from '../../widgets/exercises/paper-html.ts';
export { qtiFiles } from '../../widgets/exercises/qti.ts';
export { fixed, grouped, numeral, show } from '../../widgets/input/format.ts';
export { inField, readWithSpread } from '../../widgets/input/spread.ts';
export { TEXTS } from '../../widgets/input/texts.ts';
export { FIGURES, readBook, readPage } from '../../widgets/site/site.ts';
