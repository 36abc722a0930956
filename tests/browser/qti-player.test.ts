/** Items of the question bank in a player of QTI 3 that is not ours: right, at the edges, just outside, and each known slip. */
import { describe, expect, it } from 'vitest';
import { LETTERS } from '../../widgets/exercises/offered.ts';
import { setBank } from '../../widgets/exercises/paper.ts';
import { qtiFiles } from '../../widgets/exercises/qti.ts';
import { identifierOf } from '../../widgets/exercises/qti-item.ts';
import { BANK } from '../support/bank.ts';
import { howMany } from '../support/deep.ts';
import { needs } from '../support/engines.ts';
import { useBrowser } from '../support/page.ts';
import { qtiPlayer } from '../support/qti-player.ts';

const { visit } = useBrowser();

/** Every exercise of the book once. */
const ALL = setBank(BANK, new Map(BANK.chapters.map((c) => [c.slug, c.exercises.length])), 'player');
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
          if (right.length > 1) {
            const said = await play(xml, [[...right], [...right].toReversed()], 'ordered');
            expect(
              said.map(({ score }) => score),
              key,
            ).toEqual([1, 0]);
            continue;
          }
          const letters = [...LETTERS].slice(0, options.length);
          const said = await play(xml, letters);
          for (const [i, at] of letters.entries())
            expect(said[i], `${key} ${at}`).toEqual(
              at === right
                ? { score: 1, feedback: '' }
                : { score: 0, feedback: options[i]?.says ? `chose-${at}` : item.hint === '' ? '' : 'hint' },
            );
          continue;
        }
        const { low, high, decimals } = item.accepted;
        const step = 10 ** -decimals;
        const right = [item.amount, low, high];
        const outside = [low - step, high + step];
        const slips = item.slips.filter(({ amount }) => amount !== 0).map(({ amount }) => amount);
        const asked = [...right, ...outside, ...slips.slice(0, howMany(2, slips.length))];
        const said = await play(xml, asked);
        for (const [i, typed] of asked.entries())
          expect(said[i]?.score, `${key} ${typed}`).toBe(i < right.length ? 1 : 0);
        for (const [i, { feedback }] of said.slice(right.length + outside.length).entries())
          expect(feedback, `${key} ${slips[i]}`).toMatch(/^slip-|^other-way$/);
      }
    },
    howMany(60_000, 900_000),
  );
});
