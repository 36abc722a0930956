/** A figure that stands under a prediction does not open on the very number that is asked for. */
import { describe, expect, it } from 'vitest';
import { type SymbolName, symbolFact } from '../../widgets/engine/index.ts';
import { formatOf, show } from '../../widgets/input/format.ts';
import { CHAPTERS, press } from '../support/chapters.ts';
import { picture } from '../support/figures.ts';

const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ').replace(/[−+]/g, '');

/** Chapters whose figure is of the very thing that is asked, so that no start of it would hide the number; each with the number. */
const STILL_SHOWN: Readonly<Record<string, readonly string[]>> = {
  '07-per-flat.md': ['14.58 µm'],
  '10-round-last.md': ['8.0 %'],
  '14-how-far-it-goes.md': ['577 µm'],
  '15-from-your-parts.md': ['87.50 µm'],
  '26-lead-error.md': ['3.53 %', '24.6 µm'],
  '27-periodic-error.md': ['5.64 µm'],
  '28-effort-and-feel.md': ['324.4 N·mm'],
};

describe('what is asked before it is shown', () => {
  for (const { file, text } of CHAPTERS)
    it(`is not read off the next figure: ${file}`, () => {
      const { html, model } = press(text, file);
      const document = picture(`<div>${html}</div>`);
      const blocks = [...document.querySelectorAll('[data-predict], [data-figure]')];
      const found: string[] = [];
      for (const [i, block] of blocks.entries()) {
        const prediction = model.predictions[Number(block.getAttribute('data-predict') ?? Number.NaN)];
        if (!prediction || prediction.curve || prediction.answer === 0) continue;
        const { answer, digits, output } = prediction;
        const right = plain(show(Math.abs(answer), formatOf(symbolFact(output as SymbolName), digits), 'metric'));
        // Whoever is still to answer sees what stands next, with what it says of itself.
        const next = blocks[i + 1];
        if (!next?.hasAttribute('data-figure')) continue;
        for (const part of next.querySelectorAll('[data-stage], [data-says]')) {
          const said = plain(part.textContent ?? '');
          const at = said.indexOf(right);
          if (at >= 0 && !/[\d.]/.test(said[at - 1] ?? '')) found.push(right);
        }
      }
      expect([...new Set(found)]).toEqual(STILL_SHOWN[file.split('/').at(-1) ?? ''] ?? []);
    });
});
