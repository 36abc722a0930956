/**
 * What the plugin loads of the rooms below, in one module: the dev server loads it again when a figure, a relation or the site
 * itself was saved, without starting anew.
 */
export { bookPage, classScript, readBook, readPage, renderAnother, searchScript } from './book.ts';
export { FIGURES, LAZY, RELATIONS, WORDS } from './catalogue.ts';
export { diagnosticText } from './diagnostics.ts';
