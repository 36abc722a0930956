/** What is said of designs that were read from a file or from this browser. */
import { clause } from './clause.ts';

/** `why` is the sentence that refuses the design or the number. */
export const designLeftOut = (nth: number, why: string): string => `Design ${nth} was left out: ${clause(why)}`;
export const designsLeftOut = (count: number): string => `${count} designs were left out in all.`;
export const numberLeftOut = (design: string, why: string): string => `Of “${design}” one number was left out: ${why}`;
export const numbersLeftOut = (count: number, design: string, why: string): string =>
  `${count} numbers were left out. The first, of “${design}”: ${why}`;

/** Threads whose usable length a design states, which its sheet works out by now. */
export const usableLengthStated = (threads: readonly string[]): string =>
  `It states ${threads.map((t) => `X_${t}`).join(' and ')}, usable length of thread, which the design sheet works out and does not take: type the lengths of ${threads.length === 1 ? `screw and nut of thread ${threads[0]}` : 'both screws and nuts'} there and keep the design again.`;
