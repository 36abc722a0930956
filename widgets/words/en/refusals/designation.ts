/** Why what was typed is no thread. */
import { LAST_NUMBER_SIZE, listed, quoted, type SymbolName, say, symbolFact } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';
import { nearSizes, offersOf } from '../designation.ts';

/** What a reader who is lost is shown. */
const EXAMPLES = 'M10×1.5, 3/8-16 or 12 mm × 1.1 mm';

const STANDARDS = {
  trapezoidal: 'a trapezoidal thread',
  pipe: 'a pipe thread, whose size is not its diameter and which may be tapered',
  whitworth: 'a Whitworth thread, whose flanks stand at 55°',
  association: 'a British Association (BA) thread, whose flanks stand at 47½°',
  round: 'a round or buttress thread',
  'root radius': 'a thread with a controlled root radius',
} as const;

const CLASSES = {
  metric: 'a metric screw takes one like 6g and a nut one like 6H',
  unified: 'a Unified screw takes 1A, 2A or 3A and a nut 1B, 2B or 3B',
  free: 'a screw takes one like 6g or 2A and a nut one like 6H or 2B',
} as const;

const range = (symbol: SymbolName): string => `from ${symbolFact(symbol).min} to ${symbolFact(symbol).max}`;

export const DESIGNATION = {
  'thread-too-long': ({ text, most }) =>
    `Read ${quoted(text)}; a designation is at most ${most} characters: write one thread, like ${EXAMPLES}.`,
  'thread-empty': () => `Nothing was typed; a thread is needed, for example ${EXAMPLES}.`,
  'two-threads': ({ text }) =>
    `Read ${quoted(text)}, which is two threads; this takes one: write the other in a field of its own.`,
  'thread-of-other-standard': ({ text, standard }) =>
    `Read ${quoted(text)}, ${STANDARDS[standard]}; this notebook draws parallel threads of the basic 60° form: write one like ${EXAMPLES}.`,
  'not-a-thread': ({ text }) => `Read ${quoted(text)}, which is not a thread designation: write one like ${EXAMPLES}.`,
  'pitch-or-tpi': ({ text }) =>
    `Read ${quoted(text)}, which leaves open whether a pitch or threads per inch are meant: write mm or tpi behind it.`,
  'both-hands': ({ text }) =>
    `Read ${quoted(text)}, both left and right hand; a thread has one: write LH or leave it out.`,
  'starts-unread': ({ text, most }) =>
    `Read ${quoted(text)}; a thread has 1 to ${most} starts, a whole number: write, for example, “2 starts”.`,
  'starts-twice': ({ text, made, written }) =>
    `Read ${quoted(text)}; Ph and P make ${made} starts, yet ${written} are written: write one of the two.`,

  'pitch-diameter-twice': ({ text, letter }) =>
    `Read ${quoted(text)}; ${letter} stands twice: write it once, with the smallest and the largest size found.`,
  'pitch-diameter-far-off': ({ text, letter, size, least, most }) =>
    `Read ${quoted(text)}; ${letter} ${say(size)} mm is no pitch diameter of this thread: give one from ${least.toFixed(3)} to ${most.toFixed(3)} mm.`,

  'diameter-out-of-range': ({ text, d }) =>
    `Read ${quoted(text)}, a diameter of ${say(d)} mm; one here is ${range('d')} mm: write one in that range.`,
  'tpi-out-of-range': ({ text, tpi }) =>
    `Read ${quoted(text)}, with ${say(tpi)} threads per inch; a thread here has ${range('tpi')}: write one like 3/8-16.`,
  'pitch-without-core': ({ text, d, P, most }) =>
    `Read ${quoted(text)}, a pitch of ${say(P)} mm, which leaves no core in a diameter of ${say(d)} mm: take a pitch of at most ${most} mm.`,
  'pitch-out-of-range': ({ text, P }) =>
    `Read ${quoted(text)}, a pitch of ${say(P)} mm; one here is ${range('P')} mm: write one in that range.`,
  'starts-out-of-range': ({ text, N }) =>
    `Read ${quoted(text)}, which makes ${say(N)} starts; a thread here has ${range('N')}: take a shorter lead.`,
  'lead-too-steep': ({ text, L, most }) =>
    `Read ${quoted(text)}, a lead of ${say(L)} mm; with this diameter and pitch it may be at most ${most} mm, a lead angle of 45° or ${symbolFact('L').max} mm: take fewer starts.`,
  'class-unfit': ({ text, written, of, kind }) => {
    const what =
      of === 'metric'
        ? 'a class of metric threads'
        : of === 'unified'
          ? 'a class of Unified threads'
          : 'not a tolerance class';
    return `Read ${quoted(text)}; ${quoted(written)} is ${what}, and ${CLASSES[kind]}: write one of those or leave it out.`;
  },

  'fine-and-coarse': ({ text }) =>
    `Read ${quoted(text)}; MF begins a fine thread, yet “coarse” is written: write one of the two.`,
  'pitch-unlike-its-word': ({ text, d, P, coarse, word, instead }) =>
    `Read ${quoted(text)}; the coarse pitch of M${d} is ${coarse} mm, so ${P} mm is not ${word}: write M${d}×${P} or M${d}×${instead}.`,
  'lead-not-of-pitches': ({ text }) =>
    `Read ${quoted(text)}; the lead Ph is a whole number of pitches P: write it like M16×Ph3P1.5.`,
  'lead-without-pitch': ({ text }) =>
    `Read ${quoted(text)}; Ph is the lead, and the pitch is needed as well: write both, like M16×Ph3P1.5.`,
  'no-coarse-pitch': ({ text, d, example }) =>
    `Read ${quoted(text)}; a diameter of ${d} mm has no coarse pitch in the series of ISO 261, ${nearSizes(d)}: write the pitch too, like M${d}×${example}.`,
  'fine-pitches': ({ text, d, pitches }) =>
    `Read ${quoted(text)}; M${d} has ${pitches.length} fine pitches in ISO 261, ${listed(pitches.map(String))} mm: write the one you mean, like M${d}×${pitches[0]}.`,
  'metric-and-inch': ({ text, d }) =>
    `Read ${quoted(text)}, a metric diameter with an inch series; a thread is one or the other: write M${d} with a pitch in millimetres, or an inch size like 3/8-16 UNC.`,
  'metric-rest-unread': ({ text }) =>
    `Read ${quoted(text)}; after the diameter comes one pitch in millimetres, then only class, starts or hand: write it like M10×1.5-6g LH.`,

  'inch-rest-unread': ({ text }) =>
    `Read ${quoted(text)}; after the size comes one pitch or number of threads per inch, then only series, class, starts or hand: write it like 3/8-16 UNC-2A LH.`,
  'inch-fraction-odd': ({ text }) =>
    `Read ${quoted(text)}; inch fractions are halves to sixty-fourths: write one like 3/8, or a decimal like 0.375.`,
  'number-size-and-length': ({ text }) =>
    `Read ${quoted(text)}; a number size goes with threads per inch: write it like #10-32.`,
  'number-size-beyond': ({ text }) =>
    `Read ${quoted(text)}; number sizes run from #0 to #${LAST_NUMBER_SIZE}: write the diameter of another in inches, like 0.242-20.`,
  'number-size-or-inches': ({ text, n, asNumber, asInches, series }) =>
    `Read ${quoted(text)}; #${n}-${asNumber} and ${n}-${asInches} both stand in ${series}: write one of the two.`,
  'inches-without-unit': ({ text, size, n, most }) =>
    `Read ${quoted(text)}; without a unit that would be ${size} in, and above ${most} in the unit has to be written: write M${n} or ${n} mm × 1.1 mm for millimetres, ${n} in-12 for inches.`,
  'series-with-free-thread': ({ text, series }) =>
    `Read ${quoted(text)}; the series ${series} goes with an inch size and threads per inch: write it like 3/8-16 UNC.`,
  'diameter-without-pitch': ({ text }) =>
    `Read ${quoted(text)}, a diameter without a pitch: write both, like 12 mm × 1.1 mm.`,
  'not-in-series': ({ text, series, label, size }) =>
    `Read ${quoted(text)}, which is not in ${series}: ${
      size
        ? `${size.label} has ${offersOf(size)} threads per inch, write one of these`
        : `${label} is not one of its sizes, so leave ${series} out and write the threads per inch`
    }.`,
  'size-without-tpi': ({ text, inch, metric }) =>
    `Read ${quoted(text)}, a size without threads per inch: write them too, like ${inch}${
      metric === undefined ? '' : `, or ${metric} for a metric thread`
    }.`,
} satisfies Partial<RefusalWords>;
