/** Wörter dessen, was sich bewegt, ohne dass jemand dreht. */
import { spokenNumber } from '../../../engine/index.ts';
import type * as En from '../../en/figures/drift-bars.ts';
import type { Same } from '../../same.ts';
import { chosen } from '../choices.ts';
import { manySteps, ofStep, oneStep } from '../steps.ts';

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Was sich bewegt, ohne dass jemand dreht',
  label: 'Was sich bewegt, ohne dass jemand dreht, neben einem Schritt des Paars',
  pair: (A, C) => `${spokenNumber(A)} mit ${spokenNumber(C)}`,
  bars: {
    tip: 'die Spitze sinkt ein',
    shank: 'ein Stahlschaft wird kürzer',
    room: (material) => `der Raum ändert sich, ${chosen('path', material)}`,
    hand: (material) => `eine warme Hand, ${chosen('path', material)}`,
    creep: 'ein gedrucktes Teil kriecht',
  },
  step: (step) => `Bewegung ${ofStep(step)}`,
  oneStep: (v) => `${oneStep(v.step)} von ${v.pair}: ${v.motion}`,
  bar: (v) => `${v.name}: ${v.motion}, ${v.steps} ${manySteps(v.step)}`,
  caption: (v) =>
    `Neben einem Schritt (${v.step}) von ${v.perStep} ist das Größte dies: ${v.largest}, ${v.motion}, also ${v.steps} ${manySteps(v.step)}.`,
  head: (step) => ['was sich bewegt', 'Bewegung', manySteps(step)],
};
