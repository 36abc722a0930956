/** Numbers as they stand in the engine's sentences: few digits, a true minus sign. */

/** Four significant digits unless told, for example −0.0833. */
export const say = (x: number, digits = 4): string => {
  const short = Number(Math.abs(x).toPrecision(digits));
  // Nobody reads exponents: a number below all that matters is said to be under it, a vast one is written out.
  const text =
    short !== 0 && short < 1e-6 ? 'under 0.000001' : short >= 1e21 ? 'more than any real one' : String(short);
  return x < 0 && text !== '0' ? `−${text}` : text;
};

/** A value just as it was read, for the sentence that refuses it: rounded it could look like one that is allowed. */
export const asRead = (x: unknown): string => {
  const text = String(x).slice(0, 40);
  return typeof x === 'number' ? text.replaceAll('-', '−') : text;
};

/** Several names in one sentence: A, B and C. */
export const listed = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
