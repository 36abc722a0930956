/** Numbers as they stand in the engine's sentences: few digits, a true minus sign. */

/** Four significant digits unless told, for example −0.0833. */
export const say = (x: number, digits = 4): string => {
  const text = String(Number(Math.abs(x).toPrecision(digits)));
  return x < 0 && text !== '0' ? `−${text}` : text;
};

/** Several names in one sentence: A, B and C. */
export const listed = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
