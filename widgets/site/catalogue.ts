/** Every figure by name, and the relations: what the site and the build ask of the rooms below. */
import { parseHTML } from 'linkedom';
import { RELATIONS } from '../engine/index.ts';
import type { Figure } from '../figures/kit/figure.ts';
import { lendDocument } from '../figures/kit/plots/document.ts';
import { LAZY } from '../figures/lazy.ts';

lendDocument(parseHTML('<!doctype html><html><body></body></html>').document);

export const FIGURES: ReadonlyMap<string, Figure> = new Map(LAZY.map((w) => [w.name, w]));

export { LAZY, RELATIONS };
