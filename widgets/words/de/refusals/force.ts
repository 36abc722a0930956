/** Ablehnungen der Kräfte: Kraftaufwand, Vorspannung und Verdrehsicherung. */
import { asRead, say } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';
import { PART_WORDS } from '../force.ts';

export const FORCE_REFUSALS = {
  'thread-jams': () =>
    'Steigungswinkel und Reibungswinkel erreichen zusammen einen rechten Winkel, darum klemmt das Gewinde, und kein Drehmoment dreht es: Nimm eine feinere Steigung oder weniger Reibung.',
  'thread-along-axis': () =>
    'Das Gewinde steht fast längs der Achse, darum hat sein Drehmoment keine Grenze: Nimm eine feinere Steigung.',
  'torque-below-frictionless': ({ torque, frictionless }) =>
    `Ein Drehmoment von ${say(torque)} N·mm ist nicht über dem reibungsfreien von ${say(frictionless)} N·mm, darum gibt es keinen Wirkungsgrad: Nimm das Drehmoment, das die Last gegen sich bewegt.`,
  'no-thread-efficiency': () =>
    'Ein Gewinde braucht einen Steigungswinkel über null und, mit dem Reibungswinkel zusammen, unter einem rechten Winkel: Gib einen wie 3°.',
  'collar-without-ring': () =>
    'Ein Ring braucht einen Außendurchmesser über null und einen Innendurchmesser, der nicht größer ist: Gib etwa 9 mm und 0 mm für eine flache Spitze.',
  'nothing-sticks': () =>
    'Das Drehmoment zum Anfahren ist unter dem zum Weiterdrehen, darum haftet nichts: Gib eines zum Anfahren, das mindestens so groß ist.',
  'jump-of-turns': () =>
    'Ein solcher Sprung wäre Tausende von Umdrehungen: Gib eine steifere Hand und Passfeder oder Drehmomente, die sich weniger unterscheiden.',
  'effort-thread': ({ thread, reason }, reasonOf) => `Gewinde ${thread}: ${reasonOf(reason)}`,
  'effort-thread-jams': ({ thread }) =>
    `Gewinde ${thread}: Steigungswinkel und Reibungswinkel erreichen zusammen einen rechten Winkel, darum klemmt es: Nimm eine feinere Steigung oder weniger Reibung.`,
  'effort-load': ({ load }) =>
    `Last längs der Achse: gelesen ${asRead(load)}; gib einen Wert von −100000 N bis 100000 N.`,
  'effort-without-load': () =>
    'Last längs der Achse: gelesen 0 N; ohne Last ist kein Kraftaufwand zu verteilen: Gib eine wie 50 N.',
  'effort-collar': ({ torque }) =>
    `Drehmoment unter dem Bund oder der Spitze: gelesen ${asRead(torque)}; gib einen Wert von 0 bis 10000000 N·mm.`,
  'key-locks': ({ radius }) =>
    `Eine Passfeder ${say(radius)} mm neben der Achse reibt so stark, dass sie das Hubteil festhält, was die Hand auch tut: Rücke sie weiter hinaus oder mache sie glatter.`,
  'effort-equal-leads': () =>
    'Die beiden Steigungen sind gleich, darum steht das Hubteil still, und kein Drehen bewegt die Last: Wähle Gewinde mit verschiedenen Steigungen.',
  'springs-drive-part': () =>
    'Die Federn allein treiben das Teil gegen seine Last: Gib die Kräfte auf die Gewinde, welche die Last übrig lässt.',
  'plain-screw-jams': () =>
    'Steigungswinkel und Reibungswinkel erreichen zusammen einen rechten Winkel, darum klemmt das Gewinde: Nimm eine feinere Steigung oder weniger Reibung.',
  'plain-screw-without-load': () =>
    'Last längs der Achse: gelesen 0 N; ohne Last gibt es keinen Kraftaufwand: Gib eine wie 50 N.',
  'no-uphill': () =>
    'Die beiden Steigungen sind gleich, darum hebt kein Drehen die Last, und es gibt kein Bergauf: Wähle Gewinde mit verschiedenen Steigungen.',
  'slope-jams': () =>
    'Anstieg und Reibungswinkel erreichen zusammen einen rechten Winkel, darum klemmt das Gewinde, und kein Drehmoment dreht es: Nimm eine feinere Steigung oder weniger Reibung.',
  'load-without-torque': () =>
    'Eine Last, die zum Heben kein Drehmoment braucht, sagt nichts über andere Lasten: Gib eine Last und das Drehmoment über null, das sie hebt.',
  'torque-of-lowering': () =>
    'Das Drehmoment ist unter null, das senkt und drückt nicht: Gib das Drehmoment zum Heben.',
  'no-spring-needed': ({ force }) =>
    `Gewicht und Last allein drücken hier die Gewinde an (nötig von einer Feder: ${say(force)} N), darum braucht es keine Feder.`,
  'preload-gone-in-life': () =>
    'Nach diesem Gesetz bliebe nichts von der Vorspannung: Verlange eine kürzere Lebensdauer oder einen kleineren Verlust.',
  'stretch-alone-does': () =>
    'Die Dehnung über den Hub allein gibt mehr als nötig, darum darf die Feder ohne Kraft beginnen: Nimm eine weichere.',
  'lock-gap': ({ gap, radius }) =>
    `Ein Spiel von ${say(gap)} mm bei einem Radius von ${say(radius)} mm hält nichts: Halte es auf höchstens dem halben Radius.`,
  'spring-without-pull': () =>
    'Eine Feder ohne Zug hält nichts durch ihren Zug: Gib die Kraft, mit der sie gespannt ist, über 0 N.',
  'lock-winds-up': () =>
    'Die Sicherung würde sich um mehr als eine halbe Umdrehung verdrehen, das ist keine: Gib eine steifere oder weniger Drehmoment.',
  'lock-equal-leads': () =>
    'Die beiden Steigungen sind gleich, darum gleicht kein Drehen aus, was die Sicherung tut: Wähle Gewinde mit verschiedenen Steigungen.',
  'spring-slack': ({ after }) =>
    `Die Feder müsste drücken, wo sie nur ziehen kann: Nach ${say(after)} mm hat sie keine Kraft mehr. Gib ihr am Anfang mehr Kraft.`,
  'faces-part': ({ at, load }) =>
    `Die Flächen trennen sich bei ${say(at)} N, unter der Last von ${say(load)} N: Gib mehr Vorspannung oder weniger Last.`,
  'preload-gone': () =>
    'Nach diesem Gesetz bliebe nichts von der Vorspannung: Verlange eine kürzere Zeit oder gib einen kleineren Verlust.',
  'no-such-spring': ({ spring, count }) => `Gelesen: Feder ${spring} von ${count}: Nenne eine, die es gibt.`,
  'second-reading-earlier': ({ first, second }) =>
    `Die zweite Ablesung, bei ${say(second)} h, ist nicht später als die erste, bei ${say(first)} h: Gib zwei Ablesungen zu verschiedenen Zeiten, die frühere zuerst.`,
  'force-grew': ({ first, second }) =>
    `Die Kraft wuchs von ${say(first)} N auf ${say(second)} N, und eine nachlassende Feder verliert nur: Prüfe, welche Ablesung zuerst kam.`,
  'nothing-to-relax': () =>
    'Beide Ablesungen sind 0 N, darum lässt nichts nach: Gib Ablesungen einer belasteten Feder.',
  'relaxes-past-all': ({ share, t_0, first, second }) =>
    `Durch diese Ablesungen verlöre das Gesetz ${say(100 * share, 3)} % je Zehnfaches der Zeit, mehr als die 100 %, die es gibt. Seine Anfangszeit von ${say(t_0)} h ist zu spät für Ablesungen bei ${say(first)} h und ${say(second)} h: Gib eine frühere oder prüfe die Ablesungen.`,
  'preload-below-need': ({ preload, needed }) =>
    `Eine Vorspannung von ${say(preload)} N ist unter den ${say(needed)} N, die von Anfang an nötig sind: Gib eine stärkere Feder.`,
  'weight-of-part': ({ part, weight }) =>
    `Gewicht (${PART_WORDS[part]}): gelesen ${asRead(weight)}; gib einen Wert von 0 N bis 100000 N.`,
  'weight-along-axis': ({ share }) =>
    `Anteil des Gewichts längs der Achse: gelesen ${asRead(share)}; er ist 1 aufrecht, 0 auf der Seite, −1 kopfüber.`,
  'outside-load': ({ least, most }) =>
    `Äußere Last: gelesen von ${asRead(least)} bis ${asRead(most)}; gib die kleinste zuerst, beide von −100000 N bis 100000 N, zum Grundteil hin positiv.`,
  'spring-on-one-part': ({ spring, part }) =>
    `Feder ${spring} hat beide Enden am selben Teil (${PART_WORDS[part]}), darum drückt sie nichts: Nenne zwei verschiedene Teile.`,
  'spring-of-chain': ({ spring, reason }, reasonOf) => `Feder ${spring}: ${reasonOf(reason)}`,
} satisfies Partial<RefusalWords>;
