/** Wörter des Stellelements als Körper, mit dem Weg seiner Spitze darüber. */
import type * as En from '../../en/figures/jack-solid.ts';
import type { Same } from '../../same.ts';

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Das Stellelement als Körper, mit dem Weg seiner Spitze',
  drawing: 'Das Stellelement von der Seite und ein wenig von oben, darüber der Weg seiner Spitze, zu groß gezeichnet',
  knob: 'Stellteil, von oben',
  sliders: { round: 'herumsehen', above: 'von oben sehen', cut: 'aufschneiden' },
  degrees: (count) => `${count}°`,
  legend: { pushed: 'Weg der Spitze', quiet: 'ohne den Druck', nominal: 'gerade Solllinie' },
  turns: (count) => `${count} ${count === '1' ? 'Umdrehung' : 'Umdrehungen'}`,
  push: (force) => `Druck ${force}`,
  factor: {
    across: (times) => `× ${times} quer`,
    along: (times) => `× ${times} längs`,
  },
  working: (share) => `Der Weg wird gerechnet: ${share} % sind fertig.`,
  workingCaption: (turns) => `${turns} werden durchgerechnet; drehen lässt es sich schon, der Weg folgt.`,
  caption: (v) =>
    [
      v.beyond && `So weit wie ${v.beyond} ist nicht gerechnet, also steht es bei ${v.n}.`,
      v.push
        ? `Ein Druck von ${v.push} bewegt die Spitze um ${v.moves} zur Seite, und auf ${v.over} ist ihr Weg ${v.round} breit.`
        : `Nichts drückt von der Seite, und auf ${v.over} ist der Weg der Spitze ${v.round} breit.`,
      `Nach ${v.n}${v.back ? ' auf dem Hinweg' : ''} steht die Spitze ${v.aside} neben der Achse und ${v.way === 'level' ? 'auf ihrer Sollhöhe' : `${v.off} zu ${v.way === 'high' ? 'hoch' : 'tief'}`}.`,
      `Der Weg ist quer zur Achse ${v.across}-mal und längs ${v.along}-mal zu groß gezeichnet.`,
      v.stopped && `Die gezeichneten Teile haben nur ${v.stopped}.`,
    ]
      .filter(Boolean)
      .join(' '),
  rows: {
    moves: 'zur Seite durch den Druck',
    round: 'Breite des Wegs',
    along: 'jetzt in Richtung des Drucks',
    across: 'jetzt quer dazu',
    off: 'jetzt neben der Sollhöhe',
  },
  head: ['Umdrehungen', 'seitlich, in Richtung des Drucks', 'seitlich, quer dazu', 'Höhe daneben'],
  noneYet: { head: ['Umdrehungen'], rows: [['noch keine'], ['noch keine']] },
};
