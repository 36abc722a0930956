/** What a table of another language must have: every word of the English one, with the same places to fill in. */

/** The shape of an English table with its texts left open. */
export type Same<T> = T extends string
  ? string
  : T extends boolean | number | bigint | null | undefined | RegExp
    ? T
    : T extends (...values: infer V) => infer R
      ? (...values: V) => Same<R>
      : { readonly [K in keyof T]: Same<T[K]> };
