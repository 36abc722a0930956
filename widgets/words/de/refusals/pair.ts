/** Warum zwei Gewinde kein Paar, keine Bewegung oder keinen Weg geben, und warum ein Wunsch sich widerspricht. */
import { asRead, type Refusals, say, spokenNumber } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

const WISHES: Readonly<
  Record<Refusals['wish-below-nought']['what'], { readonly name: string; readonly unit: string }>
> = {
  leastWall: { name: 'kleinste Wand', unit: 'mm' },
  leastStroke: { name: 'Hub', unit: 'mm' },
  load: { name: 'Last', unit: 'N' },
};

export const PAIR = {
  'equal-leads-no-gain': () =>
    'Die beiden Steigungen sind gleich, darum bewegt Drehen das Hubteil nicht, und es gibt nichts, wodurch man teilt: Wähle Gewinde mit verschiedenen Steigungen.',
  'equal-leads-no-relative-error': () =>
    'Die beiden Steigungen sind gleich, darum gibt es keine Nettosteigung, mit der sich der Fehler vergleichen ließe: Wähle Gewinde mit verschiedenen Steigungen.',
  'equal-leads-nothing-slower': () =>
    'Die beiden Steigungen sind gleich, darum gibt es keine Bewegung, die langsamer wäre: Wähle Gewinde mit verschiedenen Steigungen.',
  'no-periodic-error': () =>
    'Ohne periodischen Fehler läuft nichts zurück: Gib mindestens einem Gewinde eine Amplitude über null.',
  'stretch-unread': ({ from, to, share }) =>
    `Gelesen: Umdrehungen von ${asRead(from)} bis ${asRead(to)} und ein Anteil von ${asRead(share)}; gib die kleinere Zahl zuerst und einen Anteil von 0 bis unter 1.`,
  'division-without-motion': () => 'Die Bewegung je Skalenteil muss über null sein: Gib eine wie 0,001 mm.',
  'step-without-motion': () =>
    'Die Bewegung je Schritt muss über null sein: Gib sie ohne Vorzeichen, für Gewinde mit verschiedenen Steigungen.',

  'thread-all-kept': ({ length, kept }) =>
    `Ein Gewinde von ${say(length)} mm Länge kann nicht ${say(kept)} mm im Eingriff behalten und sich noch bewegen: Mache es länger oder behalte weniger.`,

  'root-leaves-nothing': ({ pitch, d_2 }) =>
    `Eine Teilung von ${say(pitch)} mm lässt nichts unter einem Flankendurchmesser von ${say(d_2)} mm: Nimm eine feinere Teilung.`,
  'sleeve-without-wall': ({ inside, outside, wall, beyond }) =>
    `${spokenNumber(inside)} geht nicht in ${spokenNumber(outside)} hinein: Die Wand zwischen den Gewinden wäre ${wall < 0 ? '−' : ''}${spokenNumber(Math.abs(wall).toFixed(2))} mm; ineinander muss Gewinde A bei dieser Teilung größer sein als ${spokenNumber((Math.ceil(10 * beyond) / 10).toFixed(1))} mm, oder wähle hintereinander.`,

  'wish-without-divider': () => 'Gelesen: keine Teilung; gib mindestens eine Zahl von Schritten je Umdrehung, etwa 6.',
  'wish-motion-outside': ({ perTurn }) =>
    `Gelesen: ${say(perTurn)} mm als gewünschte Nettosteigung; gib mehr als null und höchstens 200 mm.`,
  'wish-band-outside': ({ band }) =>
    `Gelesen: ${say(band)} als Anteil, um den ein Paar danebenliegen darf; gib 0 bis 100, etwa 0,1 für ein Zehntel nach jeder Seite.`,
  'wish-sizes-crossed': ({ smallest, largest }) =>
    `Gelesen: ein kleinster Durchmesser von ${say(smallest)} mm und ein größter von ${say(largest)} mm, und dazwischen liegt nichts: Vertausche die beiden.`,
  'wish-below-nought': ({ what, value }) =>
    `Gelesen: ${say(value)} ${WISHES[what].unit} (${WISHES[what].name}); gib null oder mehr.`,
  'wish-usable-outside': ({ diameters }) =>
    `Gelesen: ${say(diameters)} Durchmesser nutzbares Gewinde; gib mehr als null, etwa 1.`,
  'wish-stress-outside': ({ stress }) =>
    `Gelesen: ${say(stress)} MPa als erlaubte Spannung; gib mehr als null, etwa 100.`,
} satisfies Partial<RefusalWords>;
