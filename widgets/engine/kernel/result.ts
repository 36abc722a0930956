/**
 * The one way the notebook says no.
 *
 * Every reading and every relation gives either a value or a refusal: a code with the values that the sentence for the reader
 * needs. The sentence itself (what was read, what is allowed, how to mend it) stands in the table of words of its language,
 * and `reasonOf` in widgets/words finds it. Nothing in the engine throws for
 * a reader's mistake; a throw is a programmer's mistake. Conditions are written as what is accepted and then
 * negated, so that NaN always lands on the side of the refusal.
 *
 * A file that refuses declares its codes beside the code that uses them:
 *
 *   declare module '../kernel/result.ts' {
 *     interface Refusals {
 *       'sleeve-without-wall': { readonly inside: string; readonly outside: string; readonly wall: number };
 *     }
 *   }
 *
 * A code without a sentence in the table, or a sentence without a code, does not compile.
 */
// biome-ignore lint/suspicious/noEmptyInterface: every file that refuses adds its codes to it
export interface Refusals {}

export type RefusalCode = keyof Refusals;

export type Result<T> = Good<T> | Bad;

export interface Good<T> {
  readonly ok: true;
  readonly value: T;
}

export interface Bad<K extends RefusalCode = RefusalCode> {
  readonly ok: false;
  readonly code: K;
  /** What the sentence quotes: numbers in base units, names, texts as they were read, or the refusal behind this one. */
  readonly values: Refusals[K];
  /** The symbol or field that caused it, where one did. */
  readonly field?: string;
}

export const good = <T>(value: T): Good<T> => ({ ok: true, value });

export const bad = <K extends RefusalCode>(code: K, values: Refusals[K], field?: string): Bad =>
  (field === undefined ? { ok: false, code, values } : { ok: false, code, values, field }) as Bad;
