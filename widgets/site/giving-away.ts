/**
 * What a figure would give away: where one stands next under a prediction and says the very number that is asked for, it waits, and what it says is
 * covered until the answer is open (`figure-page` and its styles). Printed with answers it is open as well; on a worksheet it stays covered.
 */
import { symbolFact } from '../engine/index.ts';
import { formatOf, show } from '../input/format.ts';
import type { Prediction } from '../page/model.ts';

/** A prediction that no figure has followed yet. */
export interface Asked {
  readonly index: number;
  /** Its answer as a figure would write it, without a sign; empty where no number is asked for. */
  readonly right: string;
}

/** What stands between tags, spaces and signs evened out. */
const plain = (text: string): string =>
  text
    .replace(/<[^>]*>/g, ' ')
    .replace(/[\u00a0\u202f]/g, ' ')
    .replace(/[−+]/g, '');

export const askedBy = (
  { answer, digits, output, curve }: Pick<Prediction, 'answer' | 'digits' | 'output'> & { readonly curve?: unknown },
  index: number,
): Asked => ({
  index,
  right:
    curve || answer === 0
      ? ''
      : plain(
          show(Math.abs(answer), formatOf(symbolFact(output as Parameters<typeof symbolFact>[0]), digits), 'metric'),
        ),
});

export const saysNumber = (html: string, right: string): boolean => {
  const said = plain(html);
  for (let at = said.indexOf(right); right !== '' && at >= 0; at = said.indexOf(right, at + 1))
    if (!/[\d.,]/.test(said[at - 1] ?? '')) return true;
  return false;
};
