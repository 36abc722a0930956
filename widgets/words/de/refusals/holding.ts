/** Ablehnungen der Teile, die halten: gedruckte Passungen, Klemmen, Presssitze, Kugel im Innensechskant, Grundteil. */
import { listed, say } from '../../../engine/index.ts';
import type * as En from '../../en/refusals/holding.ts';

const mm = (x: number): string => `${say(x)} mm`;
const degrees = (x: number): string => `${say((180 * x) / Math.PI)}°`;

export const HOLDING: typeof En.HOLDING = {
  'drawn-width-gone': ({ width }) =>
    `Es würde ${mm(width)} breit gezeichnet: Gib ein breiteres Stück, oder Abweichung und Spiel, die kleiner sind als es.`,
  'lip-locks': ({ angle, most }) =>
    `Eine Lippe, die um ${degrees(angle)} schräg steht, klemmt bei dieser Reibung: Stelle sie um weniger als ${degrees(most)} schräg.`,
  'hub-without-wall': ({ outside, bore }) =>
    `Eine Nabe von außen ${mm(outside)} hat keine Wand um eine Bohrung von ${mm(bore)}: Mache sie breiter.`,
  'ball-loose': ({ ball, socket }) =>
    `Eine Kugel von ${mm(ball)} fällt in einen Innensechskant von ${mm(socket)} und liegt auf keinem Rand: Nimm eine größere Kugel oder klebe sie ein.`,
  'ball-deeper-than-itself': ({ out, ball }) =>
    `Eine Kugel von ${mm(ball)}, so weit eingepresst, steht ${mm(out)} heraus, unter dem Rand: Presse sie weniger ein.`,
  'ring-inside-out': ({ outer, inner }) =>
    `Ein Ring von innen ${mm(inner)} und außen ${mm(outer)} hat keine Fläche: Mache den Innenradius kleiner.`,
  'foot-without-load': () => 'Ein Fuß, der nichts trägt, kippt bei jedem Druck: Gib eine Last über 0 N.',
  'foot-falls-over': ({ tip, radius }) =>
    `Eine Spitze in ${mm(tip)} Höhe auf einer Fläche mit Radius ${mm(radius)} fällt von selbst um: Mache die Fläche flacher oder die Spitze niedriger.`,
  'face-without-crown': () =>
    'Eine Fläche, die um nichts vorsteht, ist eben und hat keinen Radius: Gib eine Höhe über 0 mm.',
  'push-at-the-ground': () => 'Ein Druck am Boden kippt nichts: Gib eine Höhe über 0 mm.',
  'torque-of-no-friction': ({ torque, least }) =>
    `Gelesen: ${say(torque)} N·mm; ein Gewinde ohne Reibung bräuchte ${say(least)} N·mm, um diese Last zu heben: Prüfe Gewicht, Hebel und Drehsinn.`,
  'friction-without-load': () =>
    'Ohne Last reibt das Gewinde nichts, das abzulesen wäre: Hänge ein Gewicht über 0 N daran.',
  'clip-arm-short': ({ length, least }) =>
    `Ein Arm von ${mm(length)} Länge endet vor der Ecke des Sechskants: Mache ihn ${mm(least)} lang oder länger.`,
  'clip-limb-inside': ({ radius, least }) =>
    `Federn ${mm(radius)} neben der Achse stehen in den Armen der Klemme: Setze sie ${mm(least)} hinaus oder mehr.`,
  'knob-too-large': ({ marks, diameter, most }) =>
    `Ein Drehknopf mit ${marks} druckbaren Strichen wäre ${mm(diameter)} groß, mehr als ${mm(most)}: Nimm weniger Striche oder teile einen gekauften.`,
  'wall-below-line': ({ wall, line }) =>
    `Eine Wand von ${mm(wall)} ist dünner als die gedruckte Bahn von ${mm(line)} und käme nicht heraus: Mache das Teil größer.`,
  'socket-unknown': ({ name, known }) =>
    `Gelesen: ${name} als Schraube; bekannt sind Innensechskante von ${listed(known)}.`,
};
