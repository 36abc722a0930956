/** Wörter der Werkbankkarte. */
import { spokenNumber } from '../../../engine/index.ts';
import type * as En from '../../en/figures/bench-card.ts';
import type { Same } from '../../same.ts';

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Die Reihenfolge der Arbeit, auf einer Karte',
  drawing: 'Maßstäblicher Schnitt, zusammengebaut',
  heading: (name) => `Werkbankkarte${name === '' ? '' : `: ${name}`}`,
  threads: (A, C, perTurn) =>
    `${spokenNumber(C === undefined ? A : `${A} und ${C}`)}; ${perTurn} je Umdrehung, im Uhrzeigersinn`,
  cautions:
    'Kein Hebezeug. Unterbaue schwere Werkstücke, halte Hände und Körper darunter weg und bleibe in der Last, die der Lieferant der Teile nennt. Die Regeln des Betriebs, örtliche Vorschriften und zugelassene Fachleute gehen vor.',
  signed: ['Stück', 'Datum', 'zusammengebaut von', 'geprüft von'],
  caption: (v) =>
    `${v.steps} Schritte. Gewinde A wird ${v.A} Umdrehungen aus der Endlage zurückgedreht${v.C === undefined ? '' : `, Gewinde C ${v.C}`}. ` +
    `${v.check === undefined ? 'Bis zu den Anschlägen ist kein Platz für einen ganzen Schritt; darum wird nur die Umkehr geprüft.' : `Die Messuhr lässt es gelten, wenn ${v.check.turns} ${String(v.check.turns) === '1' ? 'Umdrehung' : 'Umdrehungen'} ${v.check.clockwise ? 'im' : 'gegen den'} Uhrzeigersinn ${v.check.from} bis ${v.check.to} ${String(v.check.turns) === '1' ? 'ergibt' : 'ergeben'}.`} Eine Umkehr darf um ${v.reverse}${v.windsUnknown ? ' und um die Verdrehung der Sicherung, deren Steifigkeit nicht bekannt ist,' : ''} abweichen.`,
  rows: {
    turn: 'Hubteil geht je Umdrehung um',
    from: (turns) => `nach ${turns} Umdrehungen zeigt sie mindestens`,
    to: (turns) => `nach ${turns} Umdrehungen zeigt sie höchstens`,
    reverse: 'eine Umkehr darf abweichen um',
  },
  parts: { prepare: 'Gewinde und Flächen', build: 'Zusammenbauen', check: 'Mit der Messuhr prüfen' },
  done: (done, of) => `${done} von ${of} erledigt`,
  tick: (name) => `${name.replace(/\.$/, '')}: erledigt`,
  none: '–',
  head: ['Schritt', 'was', 'wie', 'zählen', 'Vorsicht'],
};
