/** Texts that a reader, a clipboard, a cut-off link or somebody who means harm may hand to a reader of texts, ten thousand a property and a hundred thousand in a deep run. */

import fc from 'fast-check';
import type { Result } from '../../widgets/engine/index.ts';
import { reasonOf } from '../../widgets/words/reason.ts';
import { howMany } from './deep.ts';

export const MANY = { numRuns: howMany(4000, 100_000), seed: 8 };

/** What breaks readers of any kind: nothing, markup, other scripts, halves of characters, names of every object, numbers that are none. */
const ODD = [
  '',
  ' ',
  '\n',
  '\0',
  '\u200b',
  '\u202e',
  '\ud800',
  '🔩',
  '½',
  '٣',
  '-',
  '−',
  '.',
  ',',
  ';',
  ':',
  '/',
  '"',
  "'",
  '<b>',
  '&amp;',
  '%',
  '=',
  '__proto__',
  'constructor',
  'NaN',
  'Infinity',
  '1e999',
  '-1e308',
  '1e-400',
  '9'.repeat(25),
];

/** Good texts with a place or two spoilt, their pieces in any order, and now and then any characters at all. */
export const anyText = (samples: readonly string[], pieces: readonly string[] = []): fc.Arbitrary<string> => {
  const piece = fc.constantFrom(...ODD, ...pieces, ...pieces, ...pieces, ...'0123456789');
  const spoilt = fc.tuple(fc.constantFrom(...samples), fc.nat(60), fc.nat(3), piece).map(([text, far, gone, put]) => {
    const at = far % (text.length + 1);
    return text.slice(0, at) + put + text.slice(at + gone);
  });
  return fc.oneof(
    { weight: 5, arbitrary: spoilt },
    { weight: 3, arbitrary: fc.array(piece, { maxLength: 9 }).map((p) => p.join('')) },
    {
      weight: 1,
      arbitrary: fc.tuple(spoilt, spoilt).map(([a, b]) => a.slice(0, a.length / 2) + b.slice(b.length / 2)),
    },
    { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 12 }) },
  );
};

/** One sentence that a reader can use, with nothing in it that a machine let slip, but for what it quotes. */
export const isSentence = (reason: string): boolean =>
  /^[A-Z“].{19,}[.!?]$/s.test(reason) &&
  reason.length <= 400 &&
  !/NaN|Infinity|undefined|null|\[object/.test(reason.replace(/“.*”/gs, ''));

/** The value of a reading; undefined where it was refused in a sentence, and a thrown fault where it was refused without one. */
export const readOrSaid = <T>(result: Result<T>, text: unknown): T | undefined => {
  if (result.ok) return result.value;
  if (!isSentence(reasonOf(result))) throw new Error(`${JSON.stringify(text)} is answered: ${reasonOf(result)}`);
  return undefined;
};

/** Every number in a value, however deep, is one that can be shown. */
export const allFinite = (value: unknown): boolean =>
  typeof value === 'number'
    ? Number.isFinite(value)
    : typeof value !== 'object' || value === null || Object.values(value).every(allFinite);
