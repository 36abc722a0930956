/** Numbers as they stand in the engine's sentences: few digits, a true minus sign. */

/** What the engine says in words of its own; an edition in another language puts its own here before anything is said. */
export const SPOKEN = {
  /** The decimal mark. */
  point: '.' as string,
  /** Between the last two names of a list. */
  and: ' and ' as string,
  under: (size: string): string => `under ${size}`,
  moreThan: (size: string): string => `more than ${size}`,
  lessThan: (size: string): string => `less than ${size}`,
  vast: 'more than any real one' as string,
  aboveNought: 'just above 0' as string,
  belowNought: 'just below 0' as string,
  /** What was typed, and what stands for all of it where it is long. */
  quote: (text: string): string => `“${text}”`,
  characters: (count: number): string => `${count} characters`,
};

/** What another language must have of it. */
export type Spoken = typeof SPOKEN;

/** A number that is written with a point, with the decimal mark of the language. */
export const spokenNumber = (text: string): string =>
  SPOKEN.point === '.' ? text : text.replace(/(\d)\.(?=\d)/g, `$1${SPOKEN.point}`);

/** Four significant digits unless told, for example −0.0833. */
export const say = (x: number, digits = 4): string => {
  const short = Number(Math.abs(x).toPrecision(digits));
  // Nobody reads exponents: a number below all that matters is said to be under it, a vast one is written out.
  const text =
    short !== 0 && short < 1e-6
      ? SPOKEN.under(spokenNumber('0.000001'))
      : short >= 1e21
        ? SPOKEN.vast
        : spokenNumber(String(short));
  return x < 0 && text !== '0' ? `−${text}` : text;
};

/**
 * A value just as it was read, for the sentence that refuses it: rounded it could look like one that is allowed. A number that would
 * take an exponent is said to be beyond one that is read at a glance, and is that far from all that is allowed anywhere.
 */
export const asRead = (x: unknown): string => {
  const text = String(x).slice(0, 40);
  if (typeof x !== 'number') return text;
  if (!text.includes('e')) return spokenNumber(text.replaceAll('-', '−'));
  const size = Math.abs(x);
  if (size > 1) return x > 0 ? SPOKEN.moreThan(VAST) : SPOKEN.lessThan(`−${VAST}`);
  if (size < LEAST) return x > 0 ? SPOKEN.aboveNought : SPOKEN.belowNought;
  return spokenNumber(x.toFixed(12).replace(/0+$/, '').replace('-', '−'));
};

/** JavaScript writes exponents from 1e21 and below 1e-6; a sentence holds twelve digits on either side of the point. */
const VAST = '1000000000000';
const LEAST = 1e-12;

/** Several names in one sentence: A, B and C. */
export const listed = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')}${SPOKEN.and}${names.at(-1)}`;

/** What was typed, shortened so that ten kilobytes of paste still make one readable sentence. */
export const quoted = (text: string): string => {
  const flat = [...text.slice(0, 200).replace(/\s+/g, ' ').trim()];
  return flat.length > 40 || text.length > 200
    ? `${SPOKEN.quote(`${flat.slice(0, 32).join('')}…`)} (${SPOKEN.characters(text.length)})`
    : SPOKEN.quote(flat.join(''));
};
