/** Every widget by name, for the press. */
import { parseHTML } from 'linkedom';
import { lendDocument } from '../figures/kit/plots/document.ts';
import type { Widget } from '../figures/kit/widget.ts';
import { LAZY, PARTS } from '../figures/lazy.ts';

lendDocument(parseHTML('<!doctype html><html><body></body></html>').document);

export const WIDGETS: ReadonlyMap<string, Widget> = new Map(LAZY.map((w) => [w.name, w]));

export { LAZY, PARTS };
