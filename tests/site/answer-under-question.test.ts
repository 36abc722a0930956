/** A figure that stands under a prediction does not open on the very number that is asked for. */
import { describe, expect, it } from 'vitest';
import { type SymbolName, symbolFact } from '../../widgets/engine/index.ts';
import { formatOf, show } from '../../widgets/input/format.ts';
import { CHAPTERS, press } from '../support/chapters.ts';
import { picture } from '../support/figures.ts';

/** As the styles of predictions cover it. */
const COVERED = '[data-says], .readout, [data-told]';

const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ').replace(/[−+]/g, '');

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
        // What a figure that waits covers is read once the answer is open.
        const waits = next.getAttribute('data-waits') === block.getAttribute('data-predict');
        if (waits) for (const covered of next.querySelectorAll(COVERED)) covered.remove();
        for (const part of next.querySelectorAll('[data-stage], [data-says]')) {
          const said = plain(part.textContent ?? '');
          const at = said.indexOf(right);
          if (at >= 0 && !/[\d.]/.test(said[at - 1] ?? '')) found.push(right);
        }
      }
      expect([...new Set(found)]).toEqual([]);
    });
});
