/** Ablehnungen des Ausrichtens: Ebenen, Füße und die Kopplung mit drei Kugeln. */
import { asRead, listed, type Refusals, say } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

const ONE: Readonly<Record<Refusals['too-few-for-plane']['what'], string>> = {
  points: 'Punkt',
  readings: 'Ablesung',
  feet: 'Fuß',
};
const MANY: typeof ONE = { points: 'Punkte', readings: 'Ablesungen', feet: 'Füße' };
const many = (what: string): string => (MANY as Readonly<Record<string, string>>)[what] ?? what;

const numbers = (values: readonly number[]): string => values.map(asRead).join('; ');

export const LEVELLING_REFUSALS = {
  'net-lead-of-nought': () =>
    'Die Nettosteigung ist null, darum bewegt keine Zahl von Umdrehungen das Hubteil: Wähle Gewinde mit verschiedenen Steigungen.',
  'places-too-near': () =>
    'Die drei Stellen liegen weniger als 1 mm auseinander: Setze sie so weit auseinander, wie das Teil es erlaubt.',
  'places-in-line': () =>
    'Die drei Stellen liegen in einer Linie oder so fast, dass die Neigung quer dazu nicht zu finden ist: Rücke eine weit aus der Linie.',
  'too-few-for-plane': ({ count, what }) =>
    `Gelesen: ${count} ${count === 1 ? ONE[what] : MANY[what]}; eine Ebene braucht drei, die nicht in einer Linie liegen: Gib ${say(3 - count)} dazu.`,
  'place-past-bounds': ({ place, what, axis, value, most }) =>
    `Nummer ${place} (${many(what)}) hat ${axis} ${asRead(value)}; gib eine Zahl in Millimetern von −${most} bis ${most}.`,
  'plane-of-a-line': ({ count, what }) =>
    `Die ${count} ${many(what)} liegen in einer Linie oder so fast, dass die Neigung quer dazu nicht zu finden ist: Rücke eines weit aus der Linie.`,
  'foot-lead': ({ foot, lead }) =>
    `Fuß ${foot} hat eine Nettosteigung von ${asRead(lead)} mm je Umdrehung; sie muss ungleich null und innerhalb von 120 mm sein: Wähle Gewinde mit verschiedenen Steigungen.`,
  'foot-steps': ({ foot, steps, most }) =>
    `Fuß ${foot} hat ${asRead(steps)} Schritte je Umdrehung; gib eine ganze Zahl von 1 bis ${most}, etwa 6 für die Flächen eines Sechskants.`,
  'no-such-foot': ({ foot, feet }) =>
    `Ein Fuß ${foot}, der bleiben soll, ist nicht da; wähle einen von ${listed(feet)} oder lass die mittlere Höhe.`,
  'slopes-wanted': ({ q, r, most }) =>
    `Die gewünschten Neigungen sind ${asRead(q)} längs x und ${asRead(r)} längs y; zusammen dürfen sie höchstens ${asRead(most)} sein, das sind 100 mm je Meter.`,
  'plate-too-steep': ({ slope, most }) =>
    `Die Ablesungen ergeben eine Neigung von ${say(slope * 1e3, 3)} mm je Meter; eine Platte auf Füßen kann höchstens ${asRead(most * 1e3)} haben: Prüfe, ob du sie in einer anderen Einheit eingegeben hast.`,
  'steps-of-feet': ({ steps, feet }) =>
    `Gelesen: Schritte ${numbers(steps)} für ${feet} Füße; gib eine Zahl von Schritten für jeden Fuß, 0, wo er blieb.`,
  'weight-on-feet': ({ weight }) =>
    `Gelesen: ein Gewicht von ${asRead(weight)} N; gib eines über null und bis 10000000 N.`,
  'centre-of-gravity': ({ x, y }) =>
    `Gelesen: ein Schwerpunkt bei (${asRead(x)}; ${asRead(y)}); gib zwei Zahlen in Millimetern innerhalb von 100000.`,
  'feet-would-lift': ({ x, y, lifting }) =>
    `Mit dem Gewicht bei (${say(x)}; ${say(y)}) mm ${lifting.length === 1 ? 'höbe Fuß' : 'höben die Füße'} ${listed(lifting.map((f) => f.name))} ab, denn dort wären ${listed(lifting.map((f) => `${say(f.load)} N`))} nötig: Rücke das Gewicht in das Dreieck der Füße oder die Füße nach außen.`,
  'feet-not-three': ({ count }) => `Gelesen: ${count} Füße; eine Platte wird auf genau drei ausgerichtet: Gib drei.`,
  'feet-called-alike': ({ names }) =>
    `Zwei Füße haben denselben Namen (${listed(names)}); gib jedem Fuß seinen eigenen.`,
  'foot-past-its-travel': ({ foot, stands, most }) =>
    `Fuß ${foot} steht ${stands === undefined ? 'nirgends' : `${say(stands)} Umdrehungen`} von der Mitte seines Hubs, und seine Gewinde geben ${say(most)} Umdrehungen nach jeder Seite: Stelle ihn zurück oder gib ihm längere Gewinde.`,
  'turns-left-of-feet': ({ rooms, feet }) =>
    `Gelesen: übrige Umdrehungen ${rooms.map((r) => `${asRead(r.clockwise)} und ${asRead(r.anticlockwise)}`).join('; ')} für ${feet} Füße; gib jedem Fuß zwei Zahlen, die nicht unter null sind.`,
  'coupling-loose': () =>
    'Das Teil kann sich noch ein wenig bewegen, obwohl alle sechs Flanken anliegen; die Rillen halten es also nicht: Richte die Rillen auf eine gemeinsame Mitte, mit den Kugeln weit auseinander.',
  'coupling-load': ({ force, at }) =>
    `Gelesen: eine Last von (${numbers(force)}) N bei (${numbers(at)}) mm; gib Zahlen innerhalb von 10000000.`,
  'coupling-without-load': () => 'Keine Last ist gegeben; gib mindestens das Gewicht des Teils und wo es wirkt.',
  'balls-of-coupling': ({ count }) =>
    `Gelesen: ${count} Kugeln; diese Kopplung hat genau drei, jede in ihrem Prisma: Gib drei.`,
  'ball-of-coupling': ({ ball, centre, direction }) =>
    `Kugel ${ball} steht bei (${numbers(centre)}) mm mit ihrer Rille längs ${asRead(direction)} rad; gib Zahlen in Millimetern innerhalb von 100000 und einen Winkel von wenigen Umdrehungen.`,
  'vee-of-coupling': ({ ball, halfAngle }) =>
    `Das Prisma an Kugel ${ball} hat einen halben Winkel von ${say((halfAngle * 180) / Math.PI)}°; gib einen von 5° bis 85°, etwa 45°.`,
  'plate-weightless': () =>
    'Eine Platte, die nichts wiegt, schwingt nicht: Gib ihr Gewicht, mit dem, was darauf steht.',
  'plate-foot-lifts': ({ foot, force }) =>
    `Fuß ${foot} müsste ${say(force)} N tragen, er hebt also ab, und die Platte hat keine Ruhelage, um die sie schwingt: Rücke das Gewicht zwischen die Füße.`,
} satisfies Partial<RefusalWords>;
