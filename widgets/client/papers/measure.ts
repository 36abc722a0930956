/**
 * Which exercises of a student stand on each sheet: each item is laid out once at the width of the paper, out of sight, and the sheets are
 * counted off by the heights. Paper that the printer decides on is taken as narrow as A4 and as short as Letter, so that either holds it.
 */
import type { Item } from '../../exercises/exercise.ts';
import { paginate } from '../../exercises/paginate.ts';
import type { PaperLine } from '../../exercises/paper.ts';
import {
  asked,
  type Heading,
  type Marks,
  type Room,
  type SheetLook,
  studentSheet,
} from '../../exercises/paper-html.ts';
import { all, make } from '../dom.ts';

/** Within the margins that the styles give a sheet (18 mm and 16 mm), mm; ISO 216 A4 and ANSI/ASME Y14.1 A (Letter). */
const WITHIN = {
  A4: { width: 210 - 32, height: 297 - 36 },
  Letter: { width: 215.9 - 32, height: 279.4 - 36 },
} as const;
/** Browsers round here and there; so much of a sheet stays free, mm. */
const SPARE = 6;
/** What is left of a sheet is room to work, up to so much for each exercise, mm. */
const MOST_MORE = 60;
/** Some milliseconds of layout. */
const AT_ONCE = 30;
const PX_PER_MM = 96 / 25.4;

export interface Measure {
  /** Lays out what was not yet laid out, so many in one go: each look at a height has the page laid out anew. */
  readonly learn: (lines: readonly PaperLine[]) => Generator<void, void, void>;
  readonly pagesOf: (lines: readonly PaperLine[]) => NonNullable<SheetLook['pages']>;
  readonly end: () => void;
}

export const measureFor = (
  paper: string,
  room: Room,
  large: boolean,
  marks: Marks,
  heading: Heading,
  names: readonly string[],
): Measure => {
  const { width, height } =
    paper === 'A4' || paper === 'Letter' ? WITHIN[paper] : { width: WITHIN.A4.width, height: WITHIN.Letter.height };
  const box = make('div', {
    class: 'papers-measure',
    'aria-hidden': 'true',
    style: `width:${width}mm`,
    'data-room': room,
  });
  document.body.append(box);
  // Head and foot of the longest name, which no other is higher than.
  const longest = names.reduce((a, b) => (b.length > a.length ? b : a), '');
  box.innerHTML = studentSheet([], longest, heading, { large });
  const chrome = box.querySelector('.paper-page')?.getBoundingClientRect().height ?? 0;
  box.innerHTML = `<section class="paper"${large ? ' data-large' : ''}><div class="paper-page"><ol></ol></div></section>`;
  const list = box.querySelector('ol') ?? box;
  const within = (height - SPARE) * PX_PER_MM - chrome;
  const heights = new Map<Item, number>();
  return {
    *learn(lines) {
      const fresh = [
        ...new Map(lines.filter(({ item }) => !heights.has(item)).map((line) => [line.item, line])).values(),
      ];
      for (let from = 0; from < fresh.length; from += AT_ONCE) {
        const some = fresh.slice(from, from + AT_ONCE);
        list.innerHTML = some.map(({ item, exercise }) => asked(item, marks(exercise))).join('');
        for (const [i, li] of all(list, ':scope > li').entries()) {
          const item = some[i]?.item;
          if (item) heights.set(item, li.getBoundingClientRect().height);
        }
        yield;
      }
    },
    pagesOf: (lines) =>
      paginate(
        lines.map(({ item }) => heights.get(item) ?? 0),
        within,
      ).map(({ places, left }) => ({
        places,
        more: room === 'none' ? 0 : Math.min(MOST_MORE, left / PX_PER_MM / Math.max(1, places.length)),
      })),
    end: () => box.remove(),
  };
};
