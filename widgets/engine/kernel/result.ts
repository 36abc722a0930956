/**
 * The one way the engine says no.
 *
 * Every reading and every relation gives either a value or a reason. A reason is one sentence for the
 * person at the screen: what was read, what is allowed, how to mend it. Nothing in the engine throws for
 * a reader's mistake; a throw is a programmer's mistake. Conditions are written as what is accepted and then
 * negated, so that NaN always lands on the side of the reason.
 */
export type Result<T> = Good<T> | Bad;

export interface Good<T> {
  readonly ok: true;
  readonly value: T;
}

export interface Bad {
  readonly ok: false;
  /** One sentence: what was read, what is allowed, how to mend it. */
  readonly reason: string;
  /** The symbol or field that caused it, where one did. */
  readonly field?: string;
}

export const good = <T>(value: T): Good<T> => ({ ok: true, value });

export const bad = (reason: string, field?: string): Bad =>
  field === undefined ? { ok: false, reason } : { ok: false, reason, field };

/** What was typed, shortened so that ten kilobytes of paste still make one readable sentence. */
export const quoted = (text: string): string => {
  const flat = [...text.slice(0, 200).replace(/\s+/g, ' ').trim()];
  return flat.length > 40 || text.length > 200
    ? `“${flat.slice(0, 32).join('')}…” (${text.length} characters)`
    : `“${flat.join('')}”`;
};
