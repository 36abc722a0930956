/** Words of the bench with a hidden fault, on the page and on lab sheets. */

type Fault =
  | 'lead error'
  | 'wave'
  | 'lean'
  | 'loose lock'
  | 'side push'
  | 'gauge off its axis'
  | 'warm hand'
  | 'worn flank';

interface FaultWords {
  /** As an answer to choose. */
  readonly says: string;
  /** What its size is of. */
  readonly size: string;
  /** What this fault shows, and no other. */
  readonly shows: string;
  /** Where to look next, without its name. */
  readonly look: string;
}

export const FAULT_WORDS: Readonly<Record<Fault, FaultWords>> = {
  'lead error': {
    says: 'the lead of thread A is off',
    size: 'net lead off by',
    shows:
      'A wrong lead adds the same amount at every turn, comes back on the way down, and leaves a gauge block true.',
    look: 'Compare one whole turn with the net lead.',
  },
  wave: {
    says: 'thread A has a wave once a turn',
    size: 'wave to either side',
    shows: 'A wave comes back with every turn, and the tip does not swing sideways.',
    look: 'Compare the quarters of a turn with each other.',
  },
  lean: {
    says: 'the two threads of the turned part lean to each other',
    size: 'angle between their axes',
    shows: 'A lean swings the tip sideways, once a turn.',
    look: 'Read the indicator across the axis at every quarter.',
  },
  'loose lock': {
    says: 'the lock is loose',
    size: 'the lock gives to either side',
    shows: 'A loose lock lets the carried part turn along where you turn back: its pencil line moves.',
    look: 'Turn back with the work on, and watch the pencil line.',
  },
  'side push': {
    says: 'the work pushes from the side',
    size: 'push',
    shows: 'A push holds the tip to one side, by the same amount all round.',
    look: 'Read the indicator across the axis with the work on and off.',
  },
  'gauge off its axis': {
    says: 'the indicator leans',
    size: 'the indicator leans by',
    shows: 'A leaning indicator reads a gauge block wrong.',
    look: 'Check the indicator before you believe it.',
  },
  'warm hand': {
    says: 'a hand has warmed the jack',
    size: 'warmer by',
    shows: 'Heat moves the reading while nothing turns.',
    look: 'Take your hands off, and wait.',
  },
  'worn flank': {
    says: 'a flank of thread A is worn',
    size: 'more play by',
    shows: 'A worn flank gives more play, which shows with the work off and closes with it on.',
    look: 'Take the work off, and read up and down again.',
  },
};

/** What was probably thought, by what was said and what it is: faults that are taken for each other. */
export const TAKEN_FOR: Readonly<Partial<Record<Fault, Readonly<Partial<Record<Fault, string>>>>>> = {
  'lead error': {
    'gauge off its axis':
      'You believed the indicator. One that leans changes every reading by one share, just as a wrong lead does.',
    'warm hand': 'You took time for turns. A wrong lead comes back when you turn back; heat goes on with the clock.',
  },
  'gauge off its axis': {
    'lead error': 'You blamed the indicator for what the thread does. It reads a gauge block right.',
  },
  wave: {
    lean: 'You took every wave in the height for a periodic error of the thread. A lean makes one too, and swings the tip as well.',
  },
  lean: {
    wave: 'You took a wave in the height for a lean. The tip did not swing sideways.',
    'side push':
      'You took a tip that stands aside for one that swings. A lean goes round with the head; this stays on one side.',
  },
  'side push': {
    lean: 'You took a tip that swings for one that is pushed. A push stays on one side; this goes round with the head.',
  },
  'loose lock': {
    'worn flank': 'You took play for a loose lock. What is lost only with the work off lies between flanks.',
  },
  'worn flank': {
    'loose lock':
      'You took every lost motion for play. The work closes play; what is still lost under it is lost where the carried part turns along.',
  },
  'warm hand': {
    'lead error': 'You took turns for time. The reading stands still while nothing turns.',
    'gauge off its axis': 'You took turns for time. The reading stands still while nothing turns.',
  },
};

export const BENCH = {
  key: (seed: number, fault: Fault, size: string): string =>
    `Seed ${seed}: ${FAULT_WORDS[fault].says}; ${FAULT_WORDS[fault].size} ${size}.`,
};
