/** Words of the figure that designs a printed spring. */
export const WORDS = {
  title: 'A printed spring, designed backwards',
  numbers: 'Shapes that do it',
  drawing: 'The spring to scale, free on the left and stretched to the mark on the right',
  free: 'free',
  stretched: (force: string) => `at the mark, ${force}`,
  room: (width: string, length: string) => `room: ${width} wide, ${length} long at the mark`,
  meander: (m: number, leg: string, connector: string, t: string, lines: number) =>
    `meander, ${m} half waves: leg ${leg}, connector ${connector}, ${t} thick (${lines} lines)`,
  ovals: (cells: number, shape: 'ring' | 'oval', high: string, wide: string, t: string, lines: number) =>
    `${cells === 1 ? `one ${shape}` : `${cells} ${shape}s in a row`}: ${high} high${shape === 'ring' ? '' : `, ${wide} wide`}, centre lines, ${t} thick (${lines} lines)`,
  strap: (span: string, t: string, lines: number) => `strap: span ${span}, ${t} thick (${lines} lines)`,
  coil: (turns: string, wire: string, mean: string) => `coil of ${turns} turns, wire ${wire}, mean diameter ${mean}`,
  noParts: 'State your parts under Parts, and it is said here whether this spring has its room among them.',
  take: 'Put among the parts that are stated here:',
  by: (width: string, length: string) => `${width} by ${length}`,
  strain: (strain: string, share: string) => `${strain}, ${share} % of what is allowed`,
  both: (a: string, b: string) => `${a} and ${b}`,
  kappa: (kappa: string) => `${kappa} N·mm`,
  none: '–',
  files: {
    bought:
      'A coil is bought: there is nothing to print. Its drawing with the table of its data is among those of your parts.',
    say: 'This spring, as files in millimetres, with a wedge at each end that slides into a slot:',
    save: (kind: string) => `Save the spring as ${kind.toUpperCase()}`,
    name: 'printed-spring',
    force: (newtons: string) => `${newtons} N`,
    rate: (rate: string) => `${rate} N per mm`,
    check: '10 mm',
  },
  fromTo: (from: string, to: string) => `${from} to ${to}`,
  left: (force: string, share: string) => `${force}, ${share}`,
  once: (once: string, repeated: string) => `${once} once, ${repeated} repeatedly`,
  lossIs: (from: string, to: string, standing: 'one moulded sheet' | 'assumption') =>
    `${from} to ${to} (${standing === 'assumption' ? 'an assumption' : 'round one sheet of moulded plastic'})`,
  celsius: (degrees: string) => `below ${degrees} °C`,
  first: {
    rate: 'rate of this spring',
    strain: 'its strain',
    width: 'its width',
    shear: 'shear stress in its wire, at its farthest',
  },
  facts: {
    overStroke: 'force over the stroke',
    later: (time: string) => `force left after ${time}, counted from a minute on`,
    modulus: 'Young’s modulus taken',
    loss: 'lost per tenfold time, taken',
    spread: 'modulus, from maker to maker',
    lossSpread: 'lost per tenfold time, span',
    once: 'strain it stands',
    warm: 'keep it',
  },
  list: (count: number, shown: number) =>
    `${count === 1 ? 'One shape does it' : `${count} shapes do it`}${count > shown ? `; the first ${shown}` : ''}`,
  row: 'This spring, as a row for your own parts:',
  listHead: [
    'shape',
    'width by free length',
    'rate',
    'strain at its farthest',
    'force if printed thinner, thicker',
    'as a lock, a radian',
  ],
  head: [
    'shape',
    'width',
    'free length',
    'rate',
    'strain',
    'force if printed thinner',
    'force if printed thicker',
    'rate across',
    'as a lock, a radian',
  ],
  coilCaption: (v: { readonly shape: string; readonly rate: string; readonly shear: string; readonly count: number }) =>
    `Drawn is a ${v.shape}, of ${v.rate}. Its wire is sheared by ${v.shear}; compare that with what its maker allows. Steel keeps its force. ${v.count === 1 ? 'One printed shape does' : `${v.count} printed shapes do`} the same.`,
  caption: (v: {
    readonly count: number;
    readonly shape: string;
    readonly rate: string;
    readonly strain: string;
    readonly limit: string;
    readonly thicker: string;
    readonly later: string;
    readonly time: string;
  }) =>
    `${v.count === 1 ? 'One shape does' : `${v.count} shapes do`} it. Drawn is a ${v.shape}, of ${v.rate}. Its surface is strained by ${v.strain} of ${v.limit} allowed; printed thicker by the error stated, it pulls ${v.thicker} more. Of its force ${v.later} are left after ${v.time}.`,
};
