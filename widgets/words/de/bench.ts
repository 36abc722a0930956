/** Wörter der Prüfbank mit verstecktem Fehler, auf der Seite und auf Laborblättern. */
import type * as En from '../en/bench.ts';
import type { Same } from '../same.ts';

export const FAULT_WORDS: Same<typeof En.FAULT_WORDS> = {
  'lead error': {
    says: 'die Steigung von Gewinde A stimmt nicht',
    size: 'Nettosteigung falsch um',
    shows:
      'Eine falsche Steigung gibt bei jeder Umdrehung gleich viel dazu, kommt auf dem Rückweg wieder und lässt ein Endmaß richtig.',
    look: 'Vergleiche eine ganze Umdrehung mit der Nettosteigung.',
  },
  wave: {
    says: 'Gewinde A hat eine Welle je Umdrehung',
    size: 'Welle nach jeder Seite',
    shows: 'Eine Welle kommt mit jeder Umdrehung wieder, und die Spitze schwenkt nicht zur Seite.',
    look: 'Vergleiche die Viertel einer Umdrehung miteinander.',
  },
  lean: {
    says: 'die beiden Gewinde des Stellteils stehen schräg zueinander',
    size: 'Winkel zwischen ihren Achsen',
    shows: 'Eine Schiefstellung schwenkt die Spitze zur Seite, einmal je Umdrehung.',
    look: 'Lies die Messuhr quer zur Achse bei jedem Viertel ab.',
  },
  'loose lock': {
    says: 'die Verdrehsicherung ist lose',
    size: 'die Sicherung gibt nach jeder Seite nach um',
    shows: 'Eine lose Verdrehsicherung lässt das Hubteil mitdrehen, wo du zurückdrehst: Sein Bleistiftstrich wandert.',
    look: 'Drehe mit aufgelegtem Werkstück zurück und beobachte den Bleistiftstrich.',
  },
  'side push': {
    says: 'das Werkstück drückt von der Seite',
    size: 'Druck',
    shows: 'Ein Seitendruck hält die Spitze auf einer Seite, rundum um gleich viel.',
    look: 'Lies die Messuhr quer zur Achse ab, mit und ohne Werkstück.',
  },
  'gauge off its axis': {
    says: 'die Messuhr steht schräg',
    size: 'die Messuhr steht schräg um',
    shows: 'Eine schräge Messuhr zeigt ein Endmaß falsch an.',
    look: 'Prüfe die Messuhr, bevor du ihr glaubst.',
  },
  'warm hand': {
    says: 'eine Hand hat das Stellelement erwärmt',
    size: 'wärmer um',
    shows: 'Wärme bewegt die Anzeige, während sich nichts dreht.',
    look: 'Nimm die Hände weg und warte.',
  },
  'worn flank': {
    says: 'eine Flanke von Gewinde A ist abgenutzt',
    size: 'mehr Spiel um',
    shows:
      'Eine abgenutzte Flanke gibt mehr Spiel. Es zeigt sich ohne Werkstück und schließt sich unter dem Werkstück.',
    look: 'Nimm das Werkstück ab und miss noch einmal hinauf und hinunter.',
  },
};

export const TAKEN_FOR: typeof En.TAKEN_FOR = {
  'lead error': {
    'gauge off its axis':
      'Du hast der Messuhr geglaubt. Eine schräge ändert jede Ablesung um denselben Anteil, wie eine falsche Steigung.',
    'warm hand':
      'Du hast Zeit für Umdrehungen gehalten. Eine falsche Steigung kommt beim Zurückdrehen wieder; Wärme läuft mit der Uhr weiter.',
  },
  'gauge off its axis': {
    'lead error': 'Du gibst der Messuhr die Schuld für das Gewinde. Sie zeigt ein Endmaß richtig an.',
  },
  wave: {
    lean: 'Du hältst jede Welle in der Höhe für einen periodischen Fehler des Gewindes. Eine Schiefstellung macht auch eine und schwenkt dazu die Spitze.',
  },
  lean: {
    wave: 'Du hältst eine Welle in der Höhe für eine Schiefstellung. Die Spitze schwenkte nicht zur Seite.',
    'side push':
      'Du hältst eine Spitze, die danebensteht, für eine, die schwenkt. Eine Schiefstellung geht mit dem Kopf herum; dies bleibt auf einer Seite.',
  },
  'side push': {
    lean: 'Du hältst eine Spitze, die schwenkt, für eine gedrückte. Ein Druck bleibt auf einer Seite; dies geht mit dem Kopf herum.',
  },
  'loose lock': {
    'worn flank':
      'Du hältst Spiel für eine lose Verdrehsicherung. Was nur ohne Werkstück verloren geht, liegt zwischen den Flanken.',
  },
  'worn flank': {
    'loose lock':
      'Du hältst jeden toten Gang für Spiel. Das Werkstück schließt das Spiel; was darunter noch fehlt, fehlt, weil das Hubteil mitdreht.',
  },
  'warm hand': {
    'lead error': 'Du hast Umdrehungen für Zeit gehalten. Die Anzeige steht still, während sich nichts dreht.',
    'gauge off its axis': 'Du hast Umdrehungen für Zeit gehalten. Die Anzeige steht still, während sich nichts dreht.',
  },
};

export const BENCH: Same<typeof En.BENCH> = {
  key: (seed, fault, size) => `Startzahl ${seed}: ${FAULT_WORDS[fault].says}; ${FAULT_WORDS[fault].size} ${size}.`,
};
