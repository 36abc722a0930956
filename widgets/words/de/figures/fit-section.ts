/** Wörter des Schnitts mit der Einschraublänge jedes Gewindes. */
import { spokenNumber } from '../../../engine/index.ts';
import type * as En from '../../en/figures/fit-section.ts';
import type { Same } from '../../same.ts';
import { chosen } from '../choices.ts';

const turns = (count: string): string => `${count} ${count === '1,00' ? 'Umdrehung' : 'Umdrehungen'}`;
const setBy = (v: { readonly turns: string; readonly stroke: string; readonly thread: 'A' | 'C' }): string =>
  `${turns(v.turns)} und ${v.stroke} Hub, begrenzt durch Gewinde ${v.thread}`;

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Schnitt, Einschraublänge und Anschläge',
  head: ['Umdrehungen, im Uhrzeigersinn', 'Einschraublänge, Gewinde A', 'Einschraublänge, Gewinde C', 'Hubteil'],
  rows: { wall: 'Wand, Nennmaße', wallLimits: 'Wand, kleinste und größte in den Grenzmaßen' },
  turns,
  section: {
    label: (v) =>
      `Maßstäblicher Schnitt, ${chosen('arrangement', v.arrangement)}: ${spokenNumber(v.A)} im Grundteil, ${spokenNumber(v.C)} zum Hubteil`,
    parts: { base: 'Grundteil', turned: 'Stellteil', carried: 'Hubteil' },
    engaged: 'im Eingriff',
    knob: 'Stellteil, von oben',
  },
  lens: {
    label: 'Wand der Hülse, vergrößert: Gewinde A rechts, Gewinde C links',
    key: 'Wand: voll, aus Nennmaßen; gestrichelt, dünnste in den Grenzmaßen.',
  },
  plot: {
    label: 'Einschraublänge von Gewinde A und Gewinde C über den Umdrehungen, mit beiden Anschlägen',
    engaged: (most) => `Einschraublänge, höchstens ${most}`,
    across: 'Umdrehungen im Uhrzeigersinn vom Zusammenbau an (▲)',
    key: 'gepunktet: soll bleiben; schraffiert: Umdrehungen des Paars',
  },
  readout: {
    engaged: (thread) => `Einschraublänge, Gewinde ${thread}`,
    inDiameters: 'in Durchmessern, A und C',
    both: (a, c) => `${a} und ${c}`,
    stroke: 'Hub',
    clockwise: 'Umdrehungen übrig, im Uhrzeigersinn',
    anticlockwise: 'Umdrehungen übrig, gegen den Uhrzeigersinn',
    carried: 'Hubteil, vom Zusammenbau an',
    mark: (thread) => `Marke: ${thread} aus der Endlage zurückdrehen`,
  },
  caption: (v) => {
    const stopped =
      v.stopped === undefined ? '' : `Bis ${v.stopped.asked} Umdrehungen geht es nicht: ${v.stopped.why}. `;
    const range =
      v.range === 'none'
        ? `So zusammengebaut lässt es sich gar nicht drehen: im Uhrzeigersinn ${v.clockwise.why}, dagegen ${v.anticlockwise.why}; in der Mitte geben dieselben Gewinde ${setBy(v.best)}.`
        : `Im Uhrzeigersinn ${turns(v.clockwise.turns)} (dann: ${v.clockwise.why}); dagegen ${turns(v.anticlockwise.turns)} (dann: ${v.anticlockwise.why}): ${
            v.range === 'all'
              ? setBy(v.best)
              : `${turns(v.has.turns)} und ${v.has.stroke} Hub; in der Mitte zusammengebaut wären es ${setBy(v.best)}`
          }.`;
    return `${stopped}${range}${v.idle ? ' Die Steigungen sind gleich, darum steht das Hubteil still.' : ''}`;
  },
  wallUnknown: (why) => `Die Wand in den Grenzmaßen ist nicht bekannt: ${why}`,
  wall: (v) => {
    const classes = `${v.outside} außen und ${v.inside} innen`;
    return v.always
      ? `Die Wand ist ${v.nominal} aus Nennmaßen, und mit ${classes} zwischen ${v.least} und ${v.most}.`
      : `Die Wand ist ${v.nominal} aus Nennmaßen, aber mit ${classes} vielleicht nur ${v.least}: Manche Teile in den Grenzmaßen haben gar keine Wand.`;
  },
};
