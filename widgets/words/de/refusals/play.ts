/** Ablehnungen des Spiels: Flankenspiele, Lose und der Simulator. */
import { asRead, type Refusals, say } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

type Settings<K extends 'simulated-thread-range' | 'simulated-range'> = Readonly<
  Record<Refusals[K]['what'], readonly [name: string, unit: string]>
>;

const OF_A_THREAD: Settings<'simulated-thread-range'> = {
  lead: ['Steigung', ' mm'],
  play: ['Axialspiel', ' mm'],
  'lead error': ['Relativer Steigungsfehler', ''],
  'periodic error': ['Periodischer Fehler', ' mm'],
  phase: ['Phase des periodischen Fehlers', ' Umdrehungen'],
};

const OF_ALL: Settings<'simulated-range'> = {
  'load on turned': ['Last auf das Stellteil', ' N'],
  'load on carried': ['Last auf das Hubteil', ' N'],
  'drag on turned': ['Reibung am Stellteil', ' N'],
  'drag on carried': ['Reibung am Hubteil', ' N'],
  'lock slip': ['Mitdrehen, der Anteil der Drehung, den das Hubteil mitmacht', ''],
  'wind-up': ['Verdrehung der Sicherung', ' rad'],
  stick: ['Nachlauf vor dem Gleiten', ' mm'],
  slip: ['Nachlauf nach dem Gleiten, der nicht größer sein kann als davor', ' mm'],
  noise: ['Rauschen der Messuhr', ' mm'],
};

interface Range {
  readonly value: number;
  readonly min: number;
  readonly max: number;
}
const outside = (name: string, { value, min, max }: Range, unit: string): string =>
  `${name}: gelesen ${asRead(value)}; gib einen Wert von ${asRead(min)} bis ${asRead(max)}${unit}.`;

export const PLAY_REFUSALS = {
  'thread-interference': ({ clearance, thread }) =>
    `${thread === undefined ? 'Das Gewinde' : `Gewinde ${thread}`} hat ein Flankenspiel von ${say(clearance)} mm, das ist Übermaß: Die Schraube ist größer als die Mutter und geht nicht hinein, darum gibt es kein Spiel; gib 0 mm oder mehr.`,
  'coat-over-clearance': ({ coat, clearance }) =>
    `Eine Schicht von ${say(1000 * coat)} µm nimmt ${say(4000 * coat)} µm vom Flankendurchmesser, mehr als das Flankenspiel von ${say(1000 * clearance)} µm; die Teile gehen also nicht zusammen: Gib eine dünnere Schicht oder mehr Spiel.`,
  'lead-over-clearance': ({ deviation, clearance }) =>
    `Eine Steigungsabweichung von ${say(1000 * Math.abs(deviation))} µm nimmt ${say(1732.0508 * Math.abs(deviation), 4)} µm vom Flankendurchmesser, und das Flankenspiel ist nur ${say(1000 * clearance)} µm. Die Teile klemmen, bevor sie so weit eingeschraubt sind: Nimm weniger Einschraublänge oder gib mehr Spiel.`,
  'screw-off-middle': ({ off, most }) =>
    `Die Schraube steht ${say(off)} mm neben der Mitte, mehr als ihre Flanken erlauben: Bei diesem Spiel berühren sie sich bei ${say(most)} mm; gib das oder weniger.`,
  'tilt-no-small-angle': ({ tilt }) =>
    `Mit so viel Spiel über eine so kurze Einschraublänge käme ein Winkel von ${say((tilt * 180) / Math.PI, 3)}° heraus, der nicht klein ist und keine Passung: Gib weniger Spiel oder eine längere Einschraublänge.`,
  'tilt-of-nought': () => 'Eine Schräge von null hat keinen Fehler des kleinen Winkels: Gib einen Winkel über 0°.',
  'play-never-taken-up': () =>
    'Die beiden Steigungen sind gleich, darum nimmt keine Zahl von Umdrehungen das Spiel auf: Wähle Gewinde mit verschiedenen Steigungen.',
  'push-without-lever': () =>
    'Ein Druck in der Mitte der Einschraublänge hat keinen Hebel, die Schraube zu kippen: Gib eine Höhe über 0 mm.',
  'batch-of-threads': ({ count }) => `Gelesen: ${count} Gewinde; ein Los hat ein Gewinde oder die beiden eines Paars.`,
  'batch-count': ({ count, most }) =>
    `Zahl der Stücke: gelesen ${asRead(count)}; gib eine ganze Zahl von 1 bis ${most}, mehr würde keine messbare Ziffer ändern.`,
  'batch-capability': ({ Cp }) =>
    `Fähigkeit Cp: gelesen ${asRead(Cp)}; gib einen Wert von 0,1 bis 10, denn die Streuung ist die Toleranz geteilt durch 6 Cp, und eine Fähigkeit von null wäre eine grenzenlose Streuung.`,
  'batch-bars': ({ bars }) => `Balken des Histogramms: gelesen ${asRead(bars)}; gib eine ganze Zahl von 1 bis 1000.`,
  'batch-share': ({ share }) => `Anteil am Los: gelesen ${asRead(share)}; gib eine Zahl von 0 bis 1, etwa 0,95.`,
  'batch-limit': ({ thread, value }) =>
    `Gewinde ${thread} des Loses: gelesen ${asRead(value)} als Grenzmaß des Flankendurchmessers; gib einen Wert von 0,1 mm bis 400 mm.`,
  'batch-limits-crossed': ({ thread }) =>
    `Gewinde ${thread} des Loses: Ein Mindestmaß des Flankendurchmessers ist über seinem Höchstmaß; gib den kleineren Wert als Mindestmaß.`,
  'batch-all-interfere': ({ thread, least }) =>
    `Gewinde ${thread} des Loses: Jede Mutter ist kleiner als jede Schraube, überall Übermaß; nichts geht zusammen, und es gibt kein Spiel. Gib innen einen Flankendurchmesser über ${asRead(least)} mm.`,
  'simulated-hand': ({ thread, h }) =>
    `Gangrichtung von Gewinde ${thread}: gelesen ${asRead(h)}; sie ist 1 für ein Rechtsgewinde und −1 für ein Linksgewinde.`,
  'simulated-negative-play': ({ thread, play }) =>
    `Axialspiel von Gewinde ${thread}: gelesen ${asRead(play)} mm; ein negatives Spiel ist Übermaß, das sich gar nicht dreht: Gib 0 mm oder mehr.`,
  'simulated-thread-range': ({ thread, what, ...range }) => {
    const [name, unit] = OF_A_THREAD[what];
    return outside(`${name} von Gewinde ${thread}`, range, unit);
  },
  'simulated-range': ({ what, ...range }) => {
    const [name, unit] = OF_ALL[what];
    return outside(name, range, unit);
  },
  'too-many-moves': ({ count, most }) =>
    `Gelesen: ${count} Bewegungen; höchstens ${most} werden gefahren, schon tausend auf jede Spalte eines Diagramms: Nimm gröbere.`,
  'move-turns': ({ move, turns, most }) =>
    `Bewegung ${move}: gelesen ${asRead(turns)} Umdrehungen; eine Bewegung dreht um eine Zahl von −${most} bis ${most}.`,
  'move-load': ({ move, load, most }) =>
    `Bewegung ${move}: gelesen eine Last von ${asRead(load)} N; eine Last ist eine Zahl von −${most} bis ${most} N.`,
  'moves-too-long': ({ turns, most, pieces }) =>
    `Gelesen: Bewegungen von zusammen ${Math.round(turns)} Umdrehungen; mit periodischem Fehler werden höchstens ${most} gefahren, denn jede Umdrehung wird in ${pieces} Stücken gerechnet: Nimm weniger Umdrehungen.`,
} satisfies Partial<RefusalWords>;
