/** Wörter des Bildes, das eine gedruckte Feder entwirft. */
import type * as En from '../../en/figures/printed-spring.ts';
import type { Same } from '../../same.ts';

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Eine gedruckte Feder, rückwärts entworfen',
  numbers: 'Formen, die es können',
  drawing: 'Die Feder maßstäblich, links frei und rechts bis zur Marke gespannt',
  free: 'frei',
  stretched: (force) => `an der Marke, ${force}`,
  room: (width, length) => `Platz: ${width} breit, ${length} lang an der Marke`,
  meander: (m, leg, connector, t, lines) =>
    `Mäander, ${m} halbe Wellen: Schenkel ${leg}, Steg ${connector}, ${t} dick (${lines} Bahnen)`,
  ovals: (cells, shape, high, wide, t, lines) =>
    `${cells === 1 ? (shape === 'ring' ? 'ein Ring' : 'ein Oval') : `${cells} ${shape === 'ring' ? 'Ringe' : 'Ovale'} in einer Reihe`}: ${high} hoch${shape === 'ring' ? '' : `, ${wide} breit`}, Mittellinien, ${t} dick (${lines} Bahnen)`,
  strap: (span, t, lines) => `Band: Spannweite ${span}, ${t} dick (${lines} Bahnen)`,
  coil: (turns, wire, mean) => `Schraubenfeder: ${turns} Windungen, Draht ${wire}, mittlerer Durchmesser ${mean}`,
  noParts: 'Gib unter Teile deine Teile an, dann steht hier, ob diese Feder zwischen ihnen Platz hat.',
  take: 'Unter die hier angegebenen Teile setzen:',
  by: (width, length) => `${width} mal ${length}`,
  strain: (strain, share) => `${strain}, ${share} % des Erlaubten`,
  both: (a, b) => `${a} und ${b}`,
  kappa: (kappa) => `${kappa} N·mm`,
  none: '–',
  files: {
    bought:
      'Eine Schraubenfeder wird gekauft: Es gibt nichts zu drucken. Ihre Zeichnung mit der Tabelle ihrer Daten steht bei denen deiner Teile.',
    say: 'Diese Feder, als Dateien in Millimetern, mit einem Keil an jedem Ende, der in eine Nut gleitet:',
    save: (kind) => `Die Feder als ${kind.toUpperCase()} speichern`,
    name: 'gedruckte-feder',
    force: (newtons) => `${newtons} N`,
    rate: (rate) => `${rate} N je mm`,
    check: '10 mm',
  },
  fromTo: (from, to) => `${from} bis ${to}`,
  left: (force, share) => `${force}, ${share}`,
  once: (once, repeated) => `${once} einmal, ${repeated} immer wieder`,
  lossIs: (from, to, standing) =>
    `${from} bis ${to} (${standing === 'assumption' ? 'eine Annahme' : 'um ein Blatt über gespritzten Kunststoff'})`,
  celsius: (degrees) => `unter ${degrees} °C`,
  first: {
    rate: 'Rate dieser Feder',
    strain: 'ihre Dehnung',
    width: 'ihre Breite',
    shear: 'Schubspannung in ihrem Draht, am weitesten',
  },
  facts: {
    overStroke: 'Kraft über den Hub',
    later: (time) => `Kraft übrig nach ${time}, gezählt ab einer Minute`,
    modulus: 'angenommener Elastizitätsmodul',
    loss: 'Verlust je Zehnfaches der Zeit, angenommen',
    spread: 'Elastizitätsmodul, von Hersteller zu Hersteller',
    lossSpread: 'Verlust je Zehnfaches der Zeit, Spanne',
    once: 'Dehnung, die er aushält',
    warm: 'halte sie',
  },
  list: (count, shown) =>
    `${count === 1 ? 'Eine Form kann es' : `${count} Formen können es`}${count > shown ? `; die ersten ${shown}` : ''}`,
  row: 'Diese Feder, als Zeile für deine eigenen Teile:',
  listHead: [
    'Form',
    'Breite mal freie Länge',
    'Rate',
    'Dehnung am weitesten',
    'Kraft, wenn dünner, dicker gedruckt',
    'als Verdrehsicherung, je Radiant',
  ],
  head: [
    'Form',
    'Breite',
    'freie Länge',
    'Rate',
    'Dehnung',
    'Kraft, wenn dünner gedruckt',
    'Kraft, wenn dicker gedruckt',
    'Rate quer',
    'als Verdrehsicherung, je Radiant',
  ],
  coilCaption: (v) =>
    `Gezeichnet: ${v.shape}, mit ${v.rate}. Ihr Draht ist mit ${v.shear} auf Schub beansprucht; vergleiche das mit dem, was sein Hersteller erlaubt. Stahl behält seine Kraft. ${v.count === 1 ? 'Eine gedruckte Form kann' : `${v.count} gedruckte Formen können`} dasselbe.`,
  caption: (v) =>
    `${v.count === 1 ? 'Eine Form kann' : `${v.count} Formen können`} es. Gezeichnet: ${v.shape}, mit ${v.rate}. Ihre Oberfläche ist um ${v.strain} von erlaubten ${v.limit} gedehnt; um den angegebenen Fehler dicker gedruckt, zieht sie ${v.thicker} mehr. Von ihrer Kraft bleiben ${v.later} nach ${v.time}.`,
};
