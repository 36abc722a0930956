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

/** `says`: the fault as an answer to choose. `size`: what its size is of. */
export const FAULT_WORDS: Readonly<Record<Fault, { readonly says: string; readonly size: string }>> = {
  'lead error': { says: 'the lead of thread A is off', size: 'net lead off by' },
  wave: { says: 'thread A has a wave once a turn', size: 'wave to either side' },
  lean: { says: 'the two threads of the turned part lean to each other', size: 'angle between their axes' },
  'loose lock': { says: 'the lock is loose', size: 'the lock gives to either side' },
  'side push': { says: 'the work pushes from the side', size: 'push' },
  'gauge off its axis': { says: 'the indicator leans', size: 'the indicator leans by' },
  'warm hand': { says: 'a hand has warmed the jack', size: 'warmer by' },
  'worn flank': { says: 'a flank of thread A is worn', size: 'more play by' },
};

export const BENCH = {
  key: (seed: number, fault: Fault, size: string): string =>
    `Seed ${seed}: ${FAULT_WORDS[fault].says}; ${FAULT_WORDS[fault].size} ${size}.`,
};
