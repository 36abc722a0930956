/** Warum ein Gewinde, seine Grenzmaße, sein Kernloch oder seine Drähte nicht so sein können. */
import { type IsoDiameter, quoted, say, spokenNumber, type Thread } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

const ISO_DIAMETERS: Readonly<Record<IsoDiameter, string>> = {
  d: 'den Außendurchmesser einer Schraube',
  d2: 'den Flankendurchmesser einer Schraube',
  D1: 'den Kerndurchmesser einer Mutter',
  D2: 'den Flankendurchmesser einer Mutter',
};

const mm4 = (x: number): string => spokenNumber(String(Number(x.toFixed(4))));
const n = (x: number): string => spokenNumber(String(x));
const both = (of: 'P' | 'L', a: Pick<Thread, 'P' | 'L'>, b: Pick<Thread, 'P' | 'L'>): string =>
  `${mm4(a[of])} und ${mm4(b[of])} mm`;

const wireBetween = ({ low, high, best }: { readonly low: number; readonly high: number; readonly best: number }) =>
  `Nimm einen zwischen ${say(low)} und ${say(high)} mm, am besten ${say(best)} mm.`;

export const THREAD = {
  'threads-pass-each-other': () =>
    'Diese Durchmesser lassen keinen Gang, in dem sich Schraube und Mutter treffen: Prüfe, welcher der Schraube und welcher der Mutter gehört.',
  'bore-takes-the-core': ({ bore, core }) =>
    `Eine Bohrung von ${say(bore)} mm nimmt den ganzen Kern von ${say(core)} mm weg: Nimm eine kleinere Bohrung.`,
  'pitch-leaves-no-core': ({ pitch, d, coarsest }) =>
    `Eine Teilung von ${say(pitch)} mm ist für einen Durchmesser von ${say(d)} mm zu grob und lässt keinen Kern: Nimm eine Teilung unter ${say(coarsest, 3)} mm.`,

  'thread-leaves-no-hole': ({ share, pitch, d }) =>
    `Ein Gewinde von ${say(100 * share)} % bei einer Teilung von ${say(pitch)} mm bräuchte in ${say(d)} mm ein Loch ohne Größe: Nimm weniger Gewinde oder eine feinere Teilung.`,
  'hole-not-below-thread': ({ hole, d }) =>
    `Ein Loch von ${say(hole)} mm ist nicht kleiner als das Gewinde von ${say(d)} mm, darum ist nichts zu schneiden: Nimm einen kleineren Bohrer.`,
  'hole-below-any-root': ({ hole, d, pitch }) =>
    `Ein Loch von ${say(hole)} mm ist zu klein für ein Gewinde von ${say(d)} mm mit einer Teilung von ${say(pitch)} mm: Der Gewindebohrer schnitte unter den Grund jedes Gewindes; nimm einen größeren Bohrer.`,

  'iso-diameter-outside': ({ d }) =>
    `Gelesen: ein Durchmesser von ${say(d, 6)} mm; ISO 965-1 gibt Toleranzen über 0,99 mm und bis 355 mm: Wähle einen darin oder ein Gewinde ohne Toleranzklasse.`,
  'iso-pitch-outside': ({ pitch }) =>
    `Gelesen: eine Teilung von ${say(pitch, 6)} mm; ISO 965-1 gibt Toleranzen für Teilungen von 0,2 mm bis 8 mm: Wähle eine darin oder ein Gewinde ohne Toleranzklasse.`,
  'iso-position-too-fine': ({ position, pitch, finest }) =>
    `Gelesen: die Lage ${position} für eine Teilung von ${say(pitch, 6)} mm; ISO 965-1 gibt sie ab ${n(finest)} mm: Nimm für ein so feines Gewinde die Lage g oder h.`,
  'iso-grade-missing': ({ of, grade, grades }) =>
    `Gelesen: der Grad ${grade} für ${ISO_DIAMETERS[of]}; ISO 965-1 hat dort die Grade ${grades.join(', ')}: Wähle einen davon.`,
  'iso-grade-too-fine': ({ of, grade, pitch, finest }) =>
    `Gelesen: der Grad ${grade} für ${ISO_DIAMETERS[of]} bei einer Teilung von ${say(pitch, 6)} mm; ISO 965-1 lässt diese Stelle leer, der Grad beginnt bei einer Teilung von ${n(finest)} mm: Wähle einen feineren Grad.`,
  'iso-place-blank': ({ of, grade, pitch }) =>
    `Gelesen: der Grad ${grade} für ${ISO_DIAMETERS[of]} bei einer Teilung von ${say(pitch, 6)} mm; ISO 965-1 lässt diese Stelle über 22,4 und bis 45 mm leer: Wähle einen feineren Grad.`,
  'iso-class-unread': ({ read }) =>
    `Gelesen: ${quoted(read)} als Toleranzklasse; eine metrische Schraube bekommt einen Grad und e, f, g oder h, wie 6g oder 5g6g; eine metrische Mutter einen Grad und G oder H, wie 6H: Schreibe eine davon.`,
  'diameter-step-falls': ({ low, high }) =>
    `Eine Stufe von ${say(low, 6)} mm bis ${say(high, 6)} mm steigt nicht: Gib das untere Ende zuerst.`,

  'unified-diameter-outside': ({ D }) =>
    `Gelesen: ein Durchmesser von ${say(D, 5)} in; ASME B1.1 gibt Toleranzen von #0 (0,06 in) bis 6 in: Wähle einen darin oder ein Gewinde ohne Toleranzklasse.`,
  'unified-pitch-outside': ({ tpi, finest }) =>
    `Gelesen: ${say(tpi, 5)} Gänge je Zoll; die Regeln der ASME B1.1 gelten hier von 4 bis ${n(finest)}: Wähle ein Gewinde darin oder eines ohne Toleranzklasse.`,
  'unified-class-first-elsewhere': ({ cls }) =>
    `Gelesen: die Toleranzklasse ${cls}, die es nur für UNC- und UNF-Gewinde ab 1/4 in gibt: Nimm hier ${cls.endsWith('A') ? '2A oder 3A' : '2B oder 3B'}.`,
  'unified-class-on-metric': ({ cls, designation }) =>
    `Gelesen: die Toleranzklasse ${cls} für ${spokenNumber(designation)}; das ist eine für Unified-Gewinde: Nimm ${cls.endsWith('A') ? '6g' : '6H'} für ein metrisches.`,
  'unified-class-unread': ({ read }) =>
    `Gelesen: ${quoted(read)} als Toleranzklasse; eine Unified-Schraube bekommt 1A, 2A oder 3A und eine Unified-Mutter 1B, 2B oder 3B: Schreibe eine davon.`,
  'limits-without-core': ({ designation }) =>
    `${spokenNumber(designation)} hat bei seiner Teilung keinen Kern mehr, darum hat es keine Grenzmaße: Wähle eine feinere Teilung.`,

  'fit-of-unlike-pitches': ({ screw, nut }) =>
    `${spokenNumber(screw.designation)} und ${spokenNumber(nut.designation)} haben verschiedene Teilung oder Steigung (Teilung ${both('P', screw, nut)}, Steigung ${both('L', screw, nut)}), darum lässt sich eines nicht in das andere schrauben: Wähle eine Mutter mit Teilung und Steigung der Schraube.`,
  'fit-of-unlike-hands': ({ screw, nut }) =>
    `${spokenNumber(screw)} und ${spokenNumber(nut)} sind entgegengesetzt gängig, darum lässt sich eines nicht in das andere schrauben: Wähle eine Mutter mit der Gangrichtung der Schraube.`,

  'wire-rides-on-crests': ({ wire, pitch, ...wires }) =>
    `Ein Draht von ${say(wire)} mm liegt auf den Spitzen eines Gewindes mit ${say(pitch)} mm Teilung: ${wireBetween(wires)}`,
  'wire-sinks-below-crests': ({ wire, pitch, ...wires }) =>
    `Ein Draht von ${say(wire)} mm sinkt unter die Spitzen eines Gewindes mit ${say(pitch)} mm Teilung: ${wireBetween(wires)}`,
  'over-wires-too-little': ({ measured }) =>
    `Eine Messung von ${say(measured, 5)} mm ist weniger, als die Drähte allein einnehmen: Miss noch einmal über alle drei Drähte.`,
  'lead-angle-too-steep': ({ lambda }) =>
    `Gelesen: ein Steigungswinkel von ${say((lambda * 180) / Math.PI)}°; die Korrektur mit einem Glied taugt bis 10°: Miss ein so steiles Gewinde mit Kugeln oder im Profilprojektor.`,
} satisfies Partial<RefusalWords>;
