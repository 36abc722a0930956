/** Ablehnungen einer Schublade mit Teilen. */
import { listed, quoted, spokenNumber } from '../../../engine/index.ts';
import type * as En from '../../en/refusals/drawer.ts';
import { inGerman } from '../lists.ts';

export const DRAWER: typeof En.DRAWER = {
  'drawer-too-long': ({ rows, characters, most }) =>
    `Gelesen: ${rows} Zeilen, ${characters} Zeichen; eine Schublade hat höchstens ${most}: Führe nur die Teile weniger Gewinde auf.`,
  'drawer-of-too-many-rows': ({ rows, most }) =>
    `Gelesen: ${rows} Zeilen; eine Schublade hat höchstens ${most}: Führe nur die Teile weniger Gewinde auf.`,
  'drawer-empty': () =>
    'Die Schublade ist leer: Schreibe ein Teil je Zeile, etwa Langmutter 3/8-16 UNC, 30 mm; oder Normteile metrisch.',
  'drawer-row-unread': ({ row, kinds }) =>
    `Gelesen: ${quoted(inGerman('hardware', row))}; eine Zeile beginnt mit der Art des Teils, ${listed(kinds.map((kind) => inGerman('hardware', kind)))}, oder ist Normteile metrisch, Normteile Zoll oder Normteile Adapter.`,
  'drawer-row-wrong': ({ row, because }, behind) =>
    `Die Zeile ${quoted(inGerman('hardware', row))} ist nicht zu gebrauchen. ${behind(because)}`,
  'drawer-of-too-many-stacks': ({ stacks, most }) =>
    `Diese Teile gehen auf ${stacks} Arten zusammen, und höchstens ${most} werden gerechnet: Führe weniger Teile desselben Gewindes auf.`,
  'drawer-without-stack': ({ tried, threads }) =>
    tried > 0
      ? `${tried} Arten, diese Teile zusammenzubauen, wurden versucht, und keine lässt einen Hub: Behalte weniger im Eingriff oder gib längere Muttern und Schrauben dazu.`
      : `Nichts in der Schublade geht zusammen: Ein Stellteil braucht ein Grundteil${threads.length > 0 ? ` und ein Hubteil mit seinen eigenen Gewinden, ${listed(threads.map(spokenNumber))}` : '; gib also einen Gewindebolzen, einen Adapter oder eine Schraube dazu'}.`,
  'drawer-without-two-threads': ({ like: [outside, inside] }) =>
    `Kein Teil der Schublade hat zwei Gewinde verschiedener Steigung, also bewegt sich nichts um deren Unterschied. Gib eines dazu, etwa diese Zeile: Adapter ${spokenNumber(outside)} außen 20 mm, ${spokenNumber(inside)} innen 20 mm.`,
  'drawer-search-stopped': ({ share }) => `Du hast die Suche angehalten, als ${Math.floor(100 * share)} % getan waren.`,
  'drawer-being-searched': ({ share }) => `Die Schublade wird durchsucht, ${Math.floor(100 * share)} % sind getan.`,
};
