import { lettered } from '#words/papers.ts';
import { withSizes } from '../figures/kit/svg.ts';
import { escapeText } from '../input/escape.ts';
import type { Item } from './exercise.ts';
import { LETTERS } from './offered.ts';
import { withIndexes } from './plain-formula.ts';

/** What stands between question and answer: the picture, and what is offered. Letters are text, so that a copy keeps them. */
export const shownHtml = ({ picture = '', offered }: Item): string =>
  `${picture === '' ? '' : `<div class="shown">${withSizes(picture)}</div>`}${
    offered
      ? `<ul class="offered">${offered.options
          .map(({ text }, i) => `<li>${withIndexes(escapeText(lettered(LETTERS[i] ?? '', text)))}</li>`)
          .join('')}</ul>`
      : ''
  }`;
