/** The names under which the fields of a figure are folded. */
export const GROUPS = {
  threads: 'Threads',
  arrangement: 'Arrangement',
  lengths: 'Lengths',
  head: 'Head',
  hand: 'Hand',
  turns: 'Turns',
  phases: 'Phases',
  pieces: 'Pieces',
  errors: 'Errors',
  friction: 'Friction',
  rubbing: 'Rubbing',
  load: 'Load',
  weight: 'Weight',
  side: 'Side force',
  spring: 'Spring',
  room: 'Room',
  guide: 'Guide',
  lock: 'Lock',
  margin: 'Stroke and margin',
  wanted: 'What is wanted',
  wishes: 'What else it must do',
  kinds: 'Kinds of pairs',
  drawer: 'Your drawer',
  order: 'Order of the list',
  batch: 'Batch',
  steps: 'Steps',
  readings: 'Readings',
  law: 'Law of time',
  need: 'What is needed',
  tip: 'Tip',
  seat: 'Seat',
  path: 'Parts in the path',
  warmth: 'Warmth',
  creep: 'Creep',
  sizes: 'Sizes of the other ways',
  prices: 'Prices',
  parts: 'Parts',
  feet: 'Feet',
  rounds: 'Rounds',
  vees: 'Vees',
  dial: 'Dial',
  play: 'Play',
  printer: 'What the printer does',
  clip: 'Clip',
  cap: 'Cap and post',
  plastic: 'Plastic',
  socket: 'Socket',
  base: 'Base',
  done: 'What is done',
  circumstances: 'How it was measured',
  setup: 'What the set-up adds',
} as const;

export type GroupName = keyof typeof GROUPS;

/** What the fields of a shut group hold: the first few of them, and how many more there are. */
export const stateOfGroup = (shown: readonly string[], more: number): string =>
  `${shown.join(', ')}${more > 0 ? `, ${more} more` : ''}`;
export const rowsOfList = (rows: number): string => `${rows} ${rows === 1 ? 'row' : 'rows'}`;
export const NOTHING_YET = 'nothing yet';
/** Said when a number in a shut group is refused: the group has been opened. */
export const openedFor = (group: string, reason: string): string => `${group}: ${reason}`;
