/**
 * How long a page takes, estimated: reading at the pace of somebody who reads technical English as a second language, and
 * some minutes for whatever is to be done. Readings that are taken and typed one by one, and designs of a reader's own parts, take as long as the reading does. Our
 * own estimate; no source.
 */
import type { Token } from 'markdown-it';
import type { Block } from './blocks.ts';

const WORDS_A_MINUTE = 120;
const MINUTES: Readonly<Record<Block['kind'], number>> = {
  figure: 2,
  predict: 2,
  example: 2,
  derivation: 2,
  exercise: 4,
  papers: 0,
  review: 0,
  ideas: 4,
  'ideas-class': 0,
  classwork: 0,
  ask: 0,
  routes: 0,
  moved: 0,
  symbols: 0,
};

/** Figures that are not only turned and read: what their reader types or does at the bench, beyond the two minutes of any. */
const AT_THE_FIGURE: Readonly<Record<string, number>> = {
  calibration: 8,
  'fault-bench': 8,
  certificate: 5,
  'levelling-plate': 8,
  'settling-log': 5,
  adjuster: 5,
  drawer: 5,
  'printed-spring': 5,
  ladder: 5,
  'design-sheet': 10,
  'bench-card': 10,
  passport: 5,
};

const isKind = (word: string): word is Block['kind'] => Object.hasOwn(MINUTES, word);

/** Of the block with this line behind its fence: other pages tell the minutes of a chapter that has not been read whole. */
const minutesOf = (info: string): number => {
  const [kind = '', name = ''] = info.trim().split(/[\s:]+/);
  return isKind(kind) ? MINUTES[kind] + (kind === 'figure' ? (AT_THE_FIGURE[name] ?? 0) : 0) : 0;
};

export const minutesFor = (tokens: readonly Token[]): number => {
  const words = tokens
    .filter((token) => token.type === 'inline')
    .reduce((sum, token) => sum + token.content.split(/\s+/).length, 0);
  const minutes =
    words / WORDS_A_MINUTE +
    tokens.filter(({ type }) => type === 'fence').reduce((sum, { info }) => sum + minutesOf(info), 0);
  return Math.max(5, Math.round(minutes / 5) * 5);
};
