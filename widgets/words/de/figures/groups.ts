/** Die Namen, unter denen die Felder eines Bildes gefaltet sind. */
import type * as En from '../../en/figures/groups.ts';
import type { Same } from '../../same.ts';

export const GROUPS: Same<typeof En.GROUPS> = {
  threads: 'Gewinde',
  arrangement: 'Anordnung',
  lengths: 'Längen',
  head: 'Kopf',
  hand: 'Hand',
  turns: 'Umdrehungen',
  phases: 'Phasen',
  pieces: 'Stücke',
  errors: 'Fehler',
  friction: 'Reibung',
  rubbing: 'Weitere Reibung',
  load: 'Last',
  weight: 'Gewicht',
  side: 'Seitenkraft',
  spring: 'Feder',
  room: 'Platz',
  guide: 'Führung',
  lock: 'Verdrehsicherung',
  margin: 'Hub und Reserve',
  wanted: 'Was gewünscht ist',
  wishes: 'Was es sonst noch können muss',
  kinds: 'Arten von Paaren',
  drawer: 'Deine Schublade',
  order: 'Reihenfolge der Liste',
  batch: 'Los',
  steps: 'Schritte',
  readings: 'Ablesungen',
  law: 'Zeitgesetz',
  need: 'Was gebraucht wird',
  tip: 'Spitze',
  seat: 'Sitz',
  path: 'Teile im Kraftfluss',
  warmth: 'Wärme',
  creep: 'Kriechen',
  sizes: 'Maße der anderen Arten',
  prices: 'Preise',
  parts: 'Teile',
  feet: 'Füße',
  rounds: 'Runden',
  vees: 'Prismen',
  dial: 'Messuhr',
  play: 'Spiel',
  printer: 'Was der Drucker tut',
  clip: 'Klemme',
  cap: 'Kappe und Zapfen',
  plastic: 'Kunststoff',
  socket: 'Innensechskant',
  base: 'Grundteil',
  done: 'Erledigt',
  circumstances: 'Wie gemessen wurde',
  setup: 'Was der Aufbau dazugibt',
};
export type GroupName = keyof typeof En.GROUPS;

export const stateOfGroup: typeof En.stateOfGroup = (shown, more) =>
  `${shown.join(', ')}${more > 0 ? ` und ${more} weitere` : ''}`;
export const rowsOfList: typeof En.rowsOfList = (rows) => `${rows} ${rows === 1 ? 'Zeile' : 'Zeilen'}`;
export const NOTHING_YET = 'noch nichts';
export const openedFor: typeof En.openedFor = (group, reason) => `${group}: ${reason}`;
