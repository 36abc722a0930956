/** Was zu den Fragen nach Vorstellungen gesagt wird, vor und nach einem Weg, und was eine Klasse noch denkt. */
import type * as En from '../en/ideas.ts';
import type { Same } from '../same.ts';

export const KEEP_BEFORE = 'Behalten als vor dem Weg';
export const KEEP_AFTER = 'Behalten als nach dem Weg';
export const ideasOpen: typeof En.ideasOpen = (open) =>
  open === 1 ? 'Eine Frage hat noch keine Antwort.' : `${open} Fragen haben noch keine Antwort.`;
export const KEPT_BEFORE =
  'Im Browser behalten. Geh jetzt den Weg durch und komm wieder her. Danach wird gesagt, was du dachtest.';
export const IDEA_SAYS: Same<typeof En.IDEA_SAYS> = {
  right: 'Richtig.',
  misconception: 'Nicht so. Viele denken das:',
  other: 'Nicht so.',
};
export const ideaWas: typeof En.ideaWas = (before) =>
  before === undefined ? '' : before === 'right' ? 'Vor dem Weg: richtig.' : 'Vor dem Weg: nicht so.';
export const ideasKept: typeof En.ideasKept = (before, after, of) =>
  `Richtig vor dem Weg: ${before} von ${of}. Richtig danach: ${after} von ${of}.`;
export const IDEAS_AS_CSV = 'Speichern, was ich dachte, als CSV';
export const IDEAS_ERASE = 'Neu beginnen';
export const IDEAS_FILES = 'Dateien der Klasse (CSV)';
export const IDEAS_READ = 'Was die Klasse denkt';
export const ideasOf: typeof En.ideasOf = (files, refused) =>
  `${files === 1 ? 'Eine Datei ist' : `${files} Dateien sind`} gelesen${refused === 0 ? '' : `, ${refused} abgelehnt`}. Was die meisten noch glauben, steht zuerst.`;
export const IDEAS_HEADS: Same<typeof En.IDEAS_HEADS> = [
  'Vorstellung',
  'Vertreten vorher',
  'Vertreten nachher',
  'Richtig vorher',
  'Richtig nachher',
  'Urteil',
];
export const heldBy: typeof En.heldBy = (held, of) => (of === 0 ? '–' : `${held} von ${of}`);
export const IDEA_VERDICT: Same<typeof En.IDEA_VERDICT> = {
  remains: 'bleibt',
  gone: 'weg',
  unheld: 'nicht vertreten',
  open: 'nach dem Weg noch nicht gefragt',
};
export const IDEAS_WITHOUT_SCRIPT = 'Um die Dateien einer Klasse zu lesen, braucht es JavaScript.';
