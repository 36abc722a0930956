/** Every figure by name, the relations and a few words: what the site and the build ask of the rooms below. */

import { parseHTML } from 'linkedom';
import { LANGUAGE } from '#words/language.ts';
import { NO_PAGE, ONE_FILE_WITHOUT_SCRIPT } from '#words/page.ts';
import { RELATIONS } from '../engine/index.ts';
import type { Figure } from '../figures/kit/figure.ts';
import { lendDocument } from '../figures/kit/plots/document.ts';
import { LAZY } from '../figures/lazy.ts';

lendDocument(parseHTML('<!doctype html><html><body></body></html>').document);

export const FIGURES: ReadonlyMap<string, Figure> = new Map(LAZY.map((w) => [w.name, w]));

/** Words of the two files that the build writes without the site. */
export const WORDS = { language: LANGUAGE, noPage: NO_PAGE, withoutScript: ONE_FILE_WITHOUT_SCRIPT };

export { LAZY, RELATIONS };
