/**
 * How long a page takes, estimated: reading at the pace of somebody who reads technical English as a second language, and
 * some minutes for whatever is to be done. Our own estimate; no source.
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

export const minutesFor = (tokens: readonly Token[], blocks: readonly Block[]): number => {
  const words = tokens
    .filter((token) => token.type === 'inline')
    .reduce((sum, token) => sum + token.content.split(/\s+/).length, 0);
  const minutes = words / WORDS_A_MINUTE + blocks.reduce((sum, { kind }) => sum + MINUTES[kind], 0);
  return Math.max(5, Math.round(minutes / 5) * 5);
};
