/** Ablehnungen gedruckter Federn. */
import { listed, say } from '../../../engine/index.ts';
import type * as En from '../../en/refusals/spring.ts';

const mm = (x: number): string => `${say(x)} mm`;
const percent = (x: number): string => `${say(100 * x)} %`;

export const SPRING: typeof En.SPRING = {
  'coupon-without-sag': () =>
    'Das Gewicht biegt den Streifen um nichts, darum folgt kein Elastizitätsmodul: Lies eine Bewegung über 0 mm ab.',
  'strip-without-thickness': () =>
    'Dem Streifen bliebe keine Dicke: Gib einen Fehler, der kleiner ist, als der Streifen dick ist.',
  'meander-all-corner': ({ thickness, least }) =>
    `Ein Streifen von ${mm(thickness)} Dicke lässt nichts zwischen seinen Ecken: Mache Schenkel und Stege länger als ${mm(least)}.`,
  'meander-odd': ({ waves }) =>
    `Gelesen: ${waves} halbe Wellen; an beiden Enden gehalten gilt dieses Gesetz für eine gerade Zahl: Gib eine gerade.`,
  'coil-too-tight': ({ wire, coil }) =>
    `Draht von ${mm(wire)} lässt sich nicht auf ${mm(coil)} wickeln: Gib einen Windungsdurchmesser über dem Anderthalbfachen des Drahts.`,
  'plastic-unknown': ({ name, known }) => `Gelesen: ${name} als Kunststoff; bekannt sind ${listed(known)}.`,
  'spring-fills-no-length': ({ length, stretch }) =>
    `Einer Feder von ${mm(length)} Länge, um ${mm(stretch)} gedehnt, bleibt frei keine Länge: Gib ihr mehr Länge oder weniger Dehnung.`,
  'spring-room-too-small': ({ rate, width, free }) =>
    `Keine Form mit ${say(rate)} N/mm passt in ${mm(width)} mal ${mm(free)}: Gib ihr mehr Platz, mehr Weg für dieselbe Kraft oder dünnere Bahnen.`,
  'spring-overstrained': ({ least, limit }) =>
    `Jede Form, die passt, ist um ${percent(least)} oder mehr gedehnt, und ${percent(limit)} sind erlaubt: Gib ihr mehr Platz oder weniger Weg.`,
  'no-spring-of-shape': ({ shape, others }) =>
    `Von der Form „${shape}“ kann es keine in diesem Platz bei dieser Dehnung: Wähle ${listed(others)}, oder gib mehr Platz.`,
};
