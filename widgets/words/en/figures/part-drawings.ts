/** Words of the drawings that go to the shop. */
const PARTS = { base: 'base', turned: 'turned part', carried: 'carried part' } as const;

type Pair = readonly string[];
/** A blind thread: what it has, and what is usual. */
interface Doubtful {
  readonly thread: string;
  readonly runOut: Pair | undefined;
  readonly wall: Pair | undefined;
}
const doubtText = ({ thread, runOut, wall }: Doubtful): string =>
  `${runOut ? ` Caution: beyond ${thread} the tap has ${runOut[0]} to run out in, and ${runOut[1]} is usual. Take a bottoming tap and count the turns, shorten the thread, or leave more material under it.` : ''}${
    wall ? ` Caution: the hole of ${thread} leaves a wall of ${wall[0]}; less than ${wall[1]} may break out.` : ''
  }`;

const BETWEEN = {
  'base and carried': 'base to carried part',
  'base and turned': 'base to turned part',
  'turned and carried': 'turned to carried part',
} as const;

export const WORDS = {
  title: 'Drawings for the shop',
  scroller: 'The sheet at its true size; scroll to see all of it',
  part: (role: keyof typeof PARTS, kind: string) => `${PARTS[role]}: ${kind}`,
  material: (name: string) => name,
  assembly: 'assembly',
  adjuster: 'adjuster',
  ball: 'ball',
  spring: (between: keyof typeof BETWEEN, all: readonly string[]) =>
    `spring, ${BETWEEN[between]}${all.length > 0 ? `; all: ${all.join(', ')}` : ''}`,
  lock: (kind: 'key' | 'post', radius: string) => `${kind}, ${radius} from the axis`,
  /** What locks the carried part where no key or post is drawn. */
  locked: {
    none: 'No lock: the carried part turns.',
    assumed: 'No lock is stated, so none is drawn.',
    springs: 'The springs lock the carried part.',
  },
  drill: (size: string) => `tap drill ⌀${size}`,
  drilled: (depth: string) => `drilled ${depth} deep, 118°`,
  runOut: (has: string, usual: string) => `run-out ${has} (usual: ${usual})`,
  wall: (has: string, least: string) => `wall left ${has} (least: ${least})`,
  socket: (flats: string, depth: string) => `(socket AF ${flats} × ${depth})`,
  depth: (thread: string, depth: string) => `${thread} × ${depth}`,
  through: (thread: string) => `${thread}, through`,
  usual: (thread: string, usual: string) => `${thread} (${usual})`,
  assumed: (size: string) => `(${size})`,
  flats: (size: string) => `AF ${size}`,
  square: (size: string) => `□${size}`,
  round: (size: string) => `⌀${size}`,
  check: '100 mm on a print at true size',
  notes: ['Edges broken 0.2 to 0.5, threads countersunk.', 'In brackets: not stated, drawn with a usual size.'],
  stroke: (stroke: string, turns: string) => `Stroke ${stroke} in ${turns} turns.`,
  /** What has a sheet besides the three parts. */
  other: { spring: 'spring', arm: 'arm on the post', post: 'post', foot: 'plate that holds the post', knob: 'knob' },
  printNotes: ['Printed lying as drawn on its flat side.', 'Lines of strips are dimensioned at their middle.'],
  data: {
    title: 'Data of one spring',
    meander: (waves: number) => `meander, ${waves} half waves`,
    leg: (x: string) => `leg ${x}`,
    connector: (x: string) => `connector ${x}`,
    strip: (x: string) => `strip ${x} thick`,
    strap: 'strap between two blocks',
    span: (x: string) => `span ${x}`,
    ring: (cells: number, shape: 'ring' | 'oval') => `${cells} ${shape}${cells === 1 ? '' : 's'} in a row`,
    radius: (x: string) => `mean radius ${x}`,
    straight: (x: string) => `straight ${x}`,
    wire: (x: string) => `wire ⌀${x}`,
    mean: (x: string) => `mean diameter ${x}`,
    outside: (x: string) => `outside diameter ${x}`,
    turns: (x: string) => `${x} turns that work`,
    free: (x: string) => `free ${x} between holds`,
    mark: (x: string, force: string) => `at ${x}: ${force}`,
    between: (least: string, most: string) => `over the stroke ${least} to ${most}`,
    rate: (x: string) => `rate ${x}`,
    modulus: (x: string) => `modulus ${x}`,
    count: (n: number) => `${n} needed`,
    steel: 'spring steel wire',
    hexagon: (flats: string) => `hexagon AF ${flats} through`,
    opening: (x: string, y: string) => `opening ${x} × ${y}`,
    slot: (x: string, y: string) => `slot ${x} × ${y}`,
    hole: (x: string) => `hole ⌀${x} through`,
    apart: (x: string) => `${x} from centre to centre`,
    marks: (n: number) => `${n} marks in the rim`,
  },
  block: {
    name: 'name',
    number: 'number',
    date: 'date',
    revision: 'revision',
    tolerance: 'general tolerance',
    drawn: 'drawn by',
    material: 'material',
    scale: 'scale',
    units: 'units',
    paper: 'paper',
    sheet: 'sheet',
    projection: 'first angle',
  },
  sheet: (i: number, of: number) => `${i} of ${of}`,
  list: ['item', 'count', 'name', 'material'] as const,
  files: 'This sheet as a file:',
  save: (kind: string) => `Save this sheet as ${kind.toUpperCase()}`,
  head: ['sheet', 'what', 'scale', 'dimensions'],
  caption: (v: {
    readonly what: string;
    readonly paper: string;
    readonly scale: string;
    readonly stated: number;
    readonly assumed: number;
    readonly listed: number;
    readonly doubtful: readonly Doubtful[];
  }) =>
    `${v.what} on ${v.paper}, ${v.scale}: ${
      v.listed > 0
        ? `${v.listed} numbers lead to the list of parts`
        : `${v.stated} ${v.stated === 1 ? 'size' : 'sizes'} as stated${v.assumed > 0 ? `, ${v.assumed} in brackets` : ''}`
    }.${v.doubtful.map(doubtText).join('')}`,
};
