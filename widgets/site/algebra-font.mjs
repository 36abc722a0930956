/**
 * Makes the face of algebra: the characters that formulas use, of a face that knows how mathematics is set. Run again
 * (`npm run algebra-font`) when a formula gets a character that is not among them; a test tells.
 */
import { copyFileSync, readFileSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import subsetFont from 'subset-font';

const between = (first, last) =>
  Array.from({ length: last - first + 1 }, (_, i) => String.fromCodePoint(first + i)).join('');

/** Letters as they are written; a browser sets a single one by its leaning twin, which is added. */
export const CHARACTERS = `${between(0x20, 0x7e)}${between(0xa0, 0xff)}ΔαβγδεζηθικλμνξπρστυφχψωϑϕϵΣΩℓ∞↑↓∗∘−×·⋅±≈≤≥≠∣∥√′″–—…\u2009\u202f\u2061\u2062\u00af\u02c9\u0304\u203e`;
const LEANING = `${between(0x1d434, 0x1d467)}\u210e${between(0x1d6e2, 0x1d71b)}`;

const from = resolve(import.meta.dirname, '../../node_modules/@fontsource/stix-two-math');
const folder = resolve(import.meta.dirname, '../client/fonts');

if (process.argv[1] === import.meta.filename) {
  const whole = readFileSync(`${from}/files/stix-two-math-latin-400-normal.woff2`);
  writeFileSync(`${folder}/algebra.woff2`, await subsetFont(whole, CHARACTERS + LEANING, { targetFormat: 'woff2' }));
  copyFileSync(`${from}/LICENSE`, `${folder}/LICENSE`);
}
