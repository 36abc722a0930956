/** Items of the question bank in a player of QTI 3 that is not ours: right, at the edges, just outside, and each known slip. */
import { describe, expect, it } from 'vitest';
import { setBank } from '../../widgets/exercises/paper.ts';
import { qtiFiles } from '../../widgets/exercises/qti.ts';
import { identifierOf } from '../../widgets/exercises/qti-item.ts';
import { BANK } from '../support/bank.ts';
import { howMany } from '../support/deep.ts';
import { needs } from '../support/engines.ts';
import { useBrowser } from '../support/page.ts';
import { qtiPlayer } from '../support/qti-player.ts';

const { visit } = useBrowser();

const ALL = setBank(BANK, new Map(BANK.chapters.map((c) => [c.slug, 3])), 'player');
const kindOf = ({ item }: (typeof ALL)[number]) => item.exercise.kind ?? (item.picture ? 'picture' : 'number');
const KINDS = [...new Set(ALL.map(kindOf))];
/** So many of each kind at every run, all of them in a deep one. */
const LINES = KINDS.flatMap((kind) => ALL.filter((line) => kindOf(line) === kind).slice(0, howMany(1, ALL.length)));

describe('a player of QTI 3', () => {
  it(
    'scores and answers items of every kind as the notebook does',
    async (context) => {
      needs(context, 'protocol');
      const { page } = await visit('glossary.html', { fresh: true, bypassCSP: true });
      const play = await qtiPlayer(page);
      const files = qtiFiles(LINES, '3.0', BANK.version);
      for (const line of LINES) {
        const { item, key } = line;
        // The player is given an item, not the package: a picture goes with it in its text.
        const xml = (files[`items/${identifierOf(key)}.xml`] ?? '').replace(
          /src="\.\.\/(images\/[^"]*)"/g,
          (_, file: string) => `src="data:image/svg+xml;base64,${Buffer.from(files[file] ?? '').toString('base64')}"`,
        );
        if (item.offered) {
          const { right, options } = item.offered;
          const order = right.length > 1;
          const all = [...right];
          const said = await play(xml, order ? all : right, order ? 'ordered' : 'single');
          expect(said, key).toMatchObject({ score: 1 });
          const wrong = order ? all.toReversed() : ['a', 'b', 'c'].find((at, i) => at !== right && i < options.length);
          expect(await play(xml, wrong, order ? 'ordered' : 'single'), key).toMatchObject({ score: 0 });
          continue;
        }
        const { low, high, decimals } = item.accepted;
        const step = 10 ** -decimals;
        for (const right of [item.amount, low, high]) expect((await play(xml, right)).score, `${key} ${right}`).toBe(1);
        for (const wrong of [low - step, high + step])
          expect((await play(xml, wrong)).score, `${key} ${wrong}`).toBe(0);
        const slips = item.slips.filter((slip) => slip.amount !== 0).slice(0, howMany(2, 99));
        for (const { amount } of slips) {
          const said = await play(xml, amount);
          expect(said.score, `${key} ${amount}`).toBe(0);
          expect(said.feedback, `${key} ${amount}`).toMatch(/^slip-|^other-way$/);
        }
      }
    },
    howMany(60_000, 900_000),
  );
});
