/** Wörter der Kraft der Hand und des kleinsten Schritts, den sie macht. */
import type * as En from '../../en/figures/hand-force.ts';
import type { Same } from '../../same.ts';
import { ofStep, oneStep } from '../steps.ts';

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Kraft der Hand und der kleinste Schritt, den sie macht',
  plan: (v) =>
    `Von oben: Die Hand drückt mit ${v.force} bei einem Radius von ${v.radius}, ${v.sense}, um die Last zu heben`,
  bars: {
    step: (step, motion) => `${oneStep(step)}: ${motion}`,
    hand: (v) => `eine Hand, die auf ${v.angle} wiederholt: ${v.motion}, ${v.share} ${ofStep(v.step)}`,
    jump: (v) => `ein Sprung, höchstens ${v.angle}: ${v.motion}, ${v.share} ${ofStep(v.step)}`,
  },
  forces: (start, keep) => `Zum Anfahren: ${start}, zum Weiterdrehen: ${keep}`,
  caption: (v) => {
    const rules = {
      jump: `Der Sprung ist größer, darum ist ein Schritt ${v.jump} und nicht die ${v.hand}, welche die Hand einstellen könnte.`,
      hand: `Der Sprung von ${v.jump} ist kleiner, darum entscheidet die Hand: ${v.hand}.`,
      'hand alone': `Nichts haftet, darum entscheidet die Hand allein: ${v.hand}.`,
    }[v.decides];
    const lowering = v.lower.holds
      ? `losgelassen dreht die Last es zurück, und ${v.lower.force} müssen sie halten`
      : `Senken braucht ${v.lower.force}`;
    return `Bei einem Radius von ${v.radius} braucht Heben ${v.keep}, ${v.start} zum Anfahren; ${lowering}. ${rules}`;
  },
  head: [
    'Richtung',
    'Drehmoment zum Anfahren',
    'Drehmoment zum Weiterdrehen',
    'Kraft zum Anfahren',
    'Kraft zum Weiterdrehen',
    'Sprung, Winkel',
    'Sprung, Bewegung',
  ],
  toStart: (way) => `Kraft zum Anfahren, ${way}`,
  toKeep: (way) => `Kraft zum Weiterdrehen, ${way}`,
  jump: (way) => `Sprung, ${way}`,
  byHand: 'kleinste Bewegung der Hand',
  perStep: (step) => `Bewegung ${ofStep(step)}`,
  raising: (sense) => `heben, ${sense}`,
  lowering: (sense) => `senken, ${sense}`,
};
