/** Every widget by name, for the press. */
import { parseHTML } from 'linkedom';
import { LATE, PARTS } from './late.ts';
import { lendDocument } from './plots/document.ts';
import type { Widget } from './shared/widget.ts';

lendDocument(parseHTML('<!doctype html><html><body></body></html>').document);

export const WIDGETS: ReadonlyMap<string, Widget> = new Map(LATE.map((w) => [w.name, w]));

export { LATE, PARTS };
