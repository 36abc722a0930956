/** What the room of forces says of threads and parts. Lengths mm, forces N, as the engine holds them. */
import { type FlankName, type Part, say, type ThreadName, type ThreadVerdict } from '../../engine/index.ts';

export const PART_WORDS: Readonly<Record<Part, string>> = {
  base: 'the base',
  turned: 'the turned part',
  carried: 'the carried part',
};

/** Which way a hand turns, seen from above. */
export const SENSES = { clockwise: 'clockwise', anticlockwise: 'anticlockwise' } as const;

/** A flank with the part it belongs to. */
export const flankText = (thread: ThreadName, flank: FlankName): string =>
  `${flank} flank of ${PART_WORDS[thread === 'A' ? 'turned' : 'carried']}`;

/** Whether a thread stays seated with the margin asked. */
export const threadVerdictText = (thread: ThreadName, verdict: ThreadVerdict, margin: number): string => {
  switch (verdict.kind) {
    case 'seated':
      return `Thread ${thread}: the ${flankText(thread, verdict.flank)} touches over the whole stroke, with ${say(verdict.least)} N or more.`;
    case 'short of margin':
      return `Thread ${thread}: the ${flankText(thread, verdict.flank)} touches over the whole stroke, but only ${say(verdict.least)} N is left of the ${say(margin)} N to keep.`;
    case 'lets go':
      return `Thread ${thread}: the flanks open at ${say(verdict.n)} turns, the carried part at ${say(verdict.z_c)} mm, under a load of ${say(verdict.load)} N${verdict.load < 0 ? ' (pulling away from the base)' : ''}.`;
  }
};
