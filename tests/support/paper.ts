/** Pages on paper: printed into a file (ISO 32000), and what that came to. */
import { inflateSync } from 'node:zlib';
import { beyond, type Page } from './driven.ts';
import { engine } from './engines.ts';

/** In inches. */
const SIZES = { A4: [8.27, 11.69], Letter: [8.5, 11] } as const;
/** The driver sends Firefox inches where the standard has centimetres. */
const AS_TAKEN = 2.54;

export interface Sheet {
  /** In points. */
  readonly width: number;
  readonly height: number;
}

/** Prints a page, on the size of sheet that its own styles ask for if they do, and gives the sheets. */
export const print = async (page: Page, size: keyof typeof SIZES = 'A4'): Promise<Sheet[]> => {
  const [width, height] = SIZES[size];
  const asked = (inches: number) => `${inches * (engine() === 'firefox' ? AS_TAKEN : 1)}in`;
  return sheetsOf(await beyond(page).pdf({ width: asked(width), height: asked(height), preferCSSPageSize: true }));
};

/** Engines pack the objects of a file, each in its own way. */
const sheetsOf = (pdf: Buffer): Sheet[] => {
  const text = pdf.toString('latin1');
  const packed = [...text.matchAll(/\bstream\r?\n/g)].map(({ index, 0: { length } }) => {
    const start = index + length;
    return unpacked(pdf.subarray(start, text.indexOf('endstream', start)));
  });
  const boxes = [text, ...packed]
    .join('\n')
    .matchAll(/\/Type\s*\/Page\b(?:(?!\/Type\s*\/Page)[\s\S])*?\/MediaBox\s*\[([^\]]*)\]/g);
  return [...boxes].map(([, box = '']) => {
    const [left = 0, bottom = 0, right = 0, top = 0] = box.trim().split(/\s+/).map(Number);
    return { width: right - left, height: top - bottom };
  });
};

const unpacked = (bytes: Buffer): string => {
  try {
    return inflateSync(bytes).toString('latin1');
  } catch {
    // A picture or a font, packed otherwise.
    return '';
  }
};
