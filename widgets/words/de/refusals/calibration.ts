/** Ablehnungen der Kalibrierung, und warum ein Teil ihrer Antwort nicht zu sagen ist. */
import { asRead, say } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

const WAY: Readonly<Record<string, string>> = { up: 'Hinweg', down: 'Rückweg' };

export const CALIBRATION_REFUSALS = {
  'lead-from-one-place': () =>
    'Beide Ablesungen stehen bei denselben Umdrehungen; eine Steigung braucht zwei Stellen, lies also eine Umdrehung weiter ab.',
  'slope-from-one-place': () =>
    'Alle drei Ablesungen stehen bei denselben Umdrehungen; ein Anstieg braucht mindestens zwei Stellen, lies also eine Umdrehung weiter ab.',
  'nominal-lead': ({ nominal }) =>
    `Gelesen: eine Soll-Nettosteigung von ${asRead(nominal)} mm je Umdrehung; gib eine ungleich null und innerhalb von 120 mm.`,
  'reading-past-bounds': ({ row, turns, reading }) =>
    `Zeile ${row} hat ${asRead(turns)} Umdrehungen und ${asRead(reading)} mm; gib zwei Zahlen unter einer Million und prüfe die Einheiten.`,
  'too-few-for-slope': () =>
    'Die Ablesungen sind zu wenige oder zu nah beieinander für einen Anstieg mit seiner Unsicherheit: Verteile sie über den Hub, mindestens drei.',
  'gap-hidden-in-slope': () =>
    'Die Umkehrspanne lässt sich nicht finden: Die Ablesungen der beiden Richtungen stehen an verschiedenen Stellen, darum sind Umkehrspanne und Anstieg nicht zu trennen; lies beide über dieselbe Strecke ab.',
  'too-few-each-way': ({ up, down }) =>
    `Die Umkehrspanne lässt sich nicht finden: Es gibt ${up} Ablesungen auf dem Hinweg und ${down} auf dem Rückweg; nimm mindestens drei von jedem.`,
  'hysteresis-one-way': ({ direction, reason }, behind) =>
    `Die Umkehrspanne lässt sich auf dem ${WAY[direction] ?? direction} nicht finden. ${behind(reason)}`,
  'wave-not-told': () =>
    'Der periodische Fehler lässt sich nicht finden: Die Ablesungen verteilen sich nicht über die Umdrehung oder sind zu wenige; lies an sechs oder mehr Stellen einer Umdrehung ab, über zwei Umdrehungen.',
  'nothing-read-twice': () =>
    'Die Wiederholbarkeit lässt sich nicht finden: Keine Stelle wurde zweimal aus derselben Richtung abgelesen; fahre noch einmal hin und zurück.',
  'no-readings-that-way': ({ direction }) =>
    `Auf dem ${WAY[direction] ?? direction} wurde nicht abgelesen, darum gibt es keine Korrektur dafür; fahre auch diesen Weg.`,
  'outside-readings': ({ turns, from, to }) =>
    `${say(turns)} Umdrehungen liegen außerhalb der Ablesungen, die von ${say(from)} bis ${say(to)} gehen; dort ist nichts bekannt. Bleibe darin oder lies weiter ab.`,
} satisfies Partial<RefusalWords>;
