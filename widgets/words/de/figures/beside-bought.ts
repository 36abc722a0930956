/** Wörter eines Stellelements neben einer gekauften Feingewindeschraube. */
import { spokenNumber } from '../../../engine/index.ts';
import type * as En from '../../en/figures/beside-bought.ts';
import type { Same } from '../../same.ts';

const WHAT = { screw: 'Schraube schert ab', nut: 'Mutter schert aus', core: 'Kern', body: 'Wand der Mutter' };
/** Neben einem Balken ist wenig Platz. */
const SHORT = { screw: 'Schraube schert', nut: 'Mutter schert', core: 'Kern', body: 'Wand' };
const FIRST = {
  screw: 'das Gewinde der Schraube',
  nut: 'das Gewinde der Mutter',
  core: 'der Kern',
  body: 'die Wand um die Mutter',
};

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Neben der Schraube, die du sonst kaufen würdest',
  none: '–',
  ask: 'frage den Hersteller',
  passes: 'besteht',
  fails: 'fällt durch',
  bars: 'Was jedes Gewinde und der Sitz der Kugel tragen, und die Last',
  press: 'Kugel, Presssitz',
  load: (load) => `Last ${load}`,
  carries: (joint, what) => `${joint}, ${SHORT[what]}`,
  carriesOver: (joint, thread, what, engaged) =>
    `Gewinde ${joint}, ${spokenNumber(thread)}: ${WHAT[what]}${what === 'core' || what === 'body' ? '' : `, über ${engaged}`}`,
  rows: {
    perTurn: 'Bewegung je Umdrehung',
    perStep: (step, count) => `Bewegung je ${step}, ${count} auf eine Umdrehung`,
    byHand: 'Bewegung für den wiederholbaren Handwinkel',
    stroke: 'Hub',
    height: 'Höhe, in der Mitte',
    piece: 'Preis für eines',
    set: (count) => `Preis für einen Satz von ${count}`,
  },
  ofOwn: (what) => `${what}, dein Stellelement`,
  ofBought: (what) => `${what}, die gekaufte Schraube`,
  listHead: (thread) => ['was', 'dein Stellelement', `gekauft, ${spokenNumber(thread)}`],
  head: ['was', 'dein Stellelement', 'gekauft', 'Urteil'],
  caption: (v) =>
    `Eine Umdrehung des Stellelements bewegt ${v.finer}-mal weniger als eine der gekauften Schraube; diese geht ${v.farther}-mal so weit. ` +
    `Zuerst versagt ${v.thread === undefined ? 'der Presssitz der Kugel' : `${FIRST[v.thread.what]} von Gewinde ${v.thread.joint}`}, bei ${v.carries}: ${v.holds ? 'Es hält' : 'Es hält nicht'} die Last von ${v.load}.` +
    (v.saved === undefined
      ? ''
      : ` Ein Satz von ${v.saved.set} kostet ${spokenNumber(v.saved.own)}, von den gekauften ${spokenNumber(v.saved.bought)}.`),
};
