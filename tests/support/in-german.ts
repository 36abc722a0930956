/** What the tests of the German edition ask of it. It is bundled in German (`german.ts`), so that one file is loaded and not six hundred. */

export { readDrawer } from '../../widgets/assembly/drawer/read-drawer.ts';
export { readInput } from '../../widgets/assembly/numbers.ts';
export { gridCsv } from '../../widgets/exercises/answer-grid.ts';
export { makeBank } from '../../widgets/exercises/bank.ts';
export { csvRow } from '../../widgets/exercises/csv-row.ts';
export { drawItem } from '../../widgets/exercises/draw.ts';
export { labOf, readLabPairs } from '../../widgets/exercises/lab.ts';
export { readingsByStudent } from '../../widgets/exercises/lab-class.ts';
export { labSheet, rigRows, rigSheet } from '../../widgets/exercises/lab-html.ts';
export { judgeTable, typedTable } from '../../widgets/exercises/lab-typed.ts';
export { sizesKept, sizesShown } from '../../widgets/exercises/own.ts';
export { methodSheet, studentSheet } from '../../widgets/exercises/paper-html.ts';
export { qtiFiles } from '../../widgets/exercises/qti.ts';
export { readRoster } from '../../widgets/exercises/roster.ts';
export { fixed, grouped, numeral, show } from '../../widgets/input/format.ts';
export { inField, readWithSpread } from '../../widgets/input/spread.ts';
export { TEXTS } from '../../widgets/input/texts.ts';
export { wordsKept, wordsShown } from '../../widgets/input/typed-words.ts';
export { readInputLine } from '../../widgets/site/grammar.ts';
export { FIGURES, readBook, readPage } from '../../widgets/site/site.ts';
export { reasonOf } from '../../widgets/words/reason.ts';
