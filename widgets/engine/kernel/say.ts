/** Numbers as they stand in the engine's sentences: few digits, a true minus sign. */

/** Four significant digits unless told, for example −0.0833. */
export const say = (x: number, digits = 4): string => {
  const short = Number(Math.abs(x).toPrecision(digits));
  // Nobody reads exponents: a number below all that matters is said to be under it, a vast one is written out.
  const text =
    short !== 0 && short < 1e-6 ? 'under 0.000001' : short >= 1e21 ? 'more than any real one' : String(short);
  return x < 0 && text !== '0' ? `−${text}` : text;
};

/**
 * A value just as it was read, for the sentence that refuses it: rounded it could look like one that is allowed. A number that would
 * take an exponent is said to be beyond one that is read at a glance, and is that far from all that is allowed anywhere.
 */
export const asRead = (x: unknown): string => {
  const text = String(x).slice(0, 40);
  if (typeof x !== 'number') return text;
  if (!text.includes('e')) return text.replaceAll('-', '−');
  const size = Math.abs(x);
  if (size > 1) return x > 0 ? `more than ${VAST}` : `less than −${VAST}`;
  if (size < LEAST) return x > 0 ? 'just above 0' : 'just below 0';
  return x.toFixed(12).replace(/0+$/, '').replace('-', '−');
};

/** JavaScript writes exponents from 1e21 and below 1e-6; a sentence holds twelve digits on either side of the point. */
const VAST = '1000000000000';
const LEAST = 1e-12;

/** Several names in one sentence: A, B and C. */
export const listed = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

/** What was typed, shortened so that ten kilobytes of paste still make one readable sentence. */
export const quoted = (text: string): string => {
  const flat = [...text.slice(0, 200).replace(/\s+/g, ' ').trim()];
  return flat.length > 40 || text.length > 200
    ? `“${flat.slice(0, 32).join('')}…” (${text.length} characters)`
    : `“${flat.join('')}”`;
};
