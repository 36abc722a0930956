/**
 * Where the words of the marks stand, so that none lies on another or on a mark. Letters and marks keep their size on the screen while
 * the plan grows and shrinks, so a place must be free on a wide window and on a phone.
 */

import { type Point as Pixel, px } from '../kit/svg.ts';

/** Units of the plan that a pixel is, on a wide window and on a phone. */
const SCALES = [1, 1.35, 1.85] as const;
/** Half a mark, with the arrow round a foot, px. */
const HALF_MARK = { foot: 22, reading: 10, weight: 11 } as const;
/** Of letters 13 px high: width of one, and half the height of a line. */
const LETTER = 7.4;
const HALF_LINE = 8.5;

/** Words on words can’t be read; words on the rim of a mark still can. */
const WORDS_COUNT = 50;

/** From the mark to the middle of the words, px, and which end of them stands there. */
export interface LabelPlace {
  readonly across: number;
  readonly under: number;
  readonly anchor: 'start' | 'middle' | 'end';
}

/** What has words on the plan. */
export type Kind = 'foot' | 'reading' | 'weight';

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const candidatesOf = (kind: Kind): readonly LabelPlace[] => {
  const by = HALF_MARK[kind] + 10;
  const beside = HALF_MARK[kind] + 4;
  const below = [by, -by, 1.7 * by, -1.7 * by].map((under): LabelPlace => ({ across: 0, under, anchor: 'middle' }));
  const sides = [0, 0.8 * by, -0.8 * by, 1.6 * by, -1.6 * by, 2.4 * by, -2.4 * by].flatMap(
    (under): readonly LabelPlace[] => [
      { across: beside, under, anchor: 'start' },
      { across: -beside, under, anchor: 'end' },
    ],
  );
  return [...below, ...sides];
};

const labelBox = ([x, y]: Pixel, place: LabelPlace, words: string, scale: number): Box => {
  const width = words.length * LETTER * scale;
  const at = x + place.across * scale;
  const left = place.anchor === 'start' ? at : place.anchor === 'end' ? at - width : at - width / 2;
  const middle = y + place.under * scale;
  return { left, right: left + width, top: middle - HALF_LINE * scale, bottom: middle + HALF_LINE * scale };
};

const markBox = ([x, y]: Pixel, kind: Kind, scale: number): Box => {
  const half = HALF_MARK[kind] * scale;
  return { left: x - half, right: x + half, top: y - half, bottom: y + half };
};

const overlap = (a: Box, b: Box): number =>
  Math.max(0, Math.min(a.right, b.right) - Math.max(a.left, b.left)) *
  Math.max(0, Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top));

/** How much of a box stands out of the plan. */
const out = (box: Box, [width, height]: Pixel): number =>
  (Math.max(0, -box.left) + Math.max(0, box.right - width)) * (box.bottom - box.top) +
  (Math.max(0, -box.top) + Math.max(0, box.bottom - height)) * (box.right - box.left);

/** Marks whose letter a foot or the weight would cover, or another reading: their letter stands before their words. */
export const coveredOf = (
  handles: readonly { readonly key: string; readonly kind: Kind }[],
  pixels: readonly Pixel[],
): ReadonlySet<string> => {
  const covered = new Set<string>();
  for (const [i, handle] of handles.entries()) {
    if (handle.kind !== 'reading') continue;
    const [x, y] = pixels[i] ?? [0, 0];
    const near = handles.some((other, j) => {
      if (i === j || (other.kind === 'reading' && j > i)) return false;
      const [ox, oy] = pixels[j] ?? [0, 0];
      const reach = (HALF_MARK[other.kind] + HALF_MARK.reading) * (SCALES.at(-1) ?? 1);
      return Math.abs(ox - x) < reach && Math.abs(oy - y) < reach;
    });
    if (near) covered.add(handle.key);
  }
  return covered;
};

/** Words that stand already, from the middle of their line. */
export interface Standing {
  readonly pixel: Pixel;
  readonly place: LabelPlace;
  readonly words: string;
}

/** Words by the size of a pixel on a window a little narrower than wide. */
export const onWords = (a: Standing, b: Standing): boolean =>
  overlap(labelBox(a.pixel, a.place, a.words, SCALES[1]), labelBox(b.pixel, b.place, b.words, SCALES[1])) > 0;

/** Whether words stand within the plan, however large a pixel is. */
export const within = ({ pixel, place, words }: Standing, plan: Pixel): boolean =>
  SCALES.every((scale) => out(labelBox(pixel, place, words, scale), plan) === 0);

/** A place for the words of each mark, feet first: the first that is free, else the one that covers least. */
export const labelPlaces = (
  handles: readonly { readonly key: string; readonly kind: Kind; readonly words: string; readonly pixel: Pixel }[],
  standing: readonly Standing[],
  plan: Pixel,
): ReadonlyMap<string, LabelPlace> => {
  const rank = { foot: 0, reading: 1, weight: 2 } as const;
  const inOrder = [...handles].sort((a, b) => rank[a.kind] - rank[b.kind]);
  const found = new Map<string, LabelPlace>();
  const placed: Standing[] = [...standing];
  for (const one of inOrder) {
    const costOf = (place: LabelPlace): number =>
      SCALES.reduce((sum, scale) => {
        const box = labelBox(one.pixel, place, one.words, scale);
        const marks = handles
          .filter(({ key }) => key !== one.key)
          .reduce((all, other) => all + overlap(box, markBox(other.pixel, other.kind, scale)), 0);
        const words = placed.reduce(
          (all, other) => all + WORDS_COUNT * overlap(box, labelBox(other.pixel, other.place, other.words, scale)),
          0,
        );
        return sum + marks + words + WORDS_COUNT * out(box, plan);
      }, 0);
    const candidates = candidatesOf(one.kind).map((place) => ({ place, cost: costOf(place) }));
    const best = candidates.reduce((a, b) => (b.cost < a.cost - 1e-6 ? b : a));
    found.set(one.key, best.place);
    placed.push({ pixel: one.pixel, place: best.place, words: one.words });
  }
  return found;
};

/** As a drawing has it: the style that shifts the words with the size of a pixel. */
export const labelStyle = ({ across, under }: LabelPlace): string => `--across:${px(across)}px;--under:${px(under)}px`;
