/** Papers and keys as HTML for print: black on white, a page for each student, no size of paper taken for granted. */
import { ANSWER, acceptedAs, keyOf, lettered, paperFoot, paperOf } from '#words/papers.ts';
import { withSizes } from '../figures/kit/svg.ts';
import { escapeText } from '../input/escape.ts';
import { acceptedText, answerText, askedUnit, askText, type Item } from './exercise.ts';
import { LETTERS } from './offered.ts';
import type { PaperLine } from './paper.ts';
import { stepLines } from './steps-text.ts';

export interface Heading {
  readonly classCode: string;
  readonly version: string;
}

const foot = ({ classCode, version }: Heading, student: string): string =>
  `<p class="paper-foot">${escapeText(paperFoot(classCode, student, version))}</p>`;

/** What stands between question and answer: the picture, and what is offered. Letters are text, so that a copy keeps them. */
export const shownHtml = ({ picture = '', offered }: Item): string =>
  `${picture === '' ? '' : `<div class="shown">${withSizes(picture)}</div>`}${
    offered
      ? `<ul class="offered">${offered.options
          .map(({ text }, i) => `<li>${escapeText(lettered(LETTERS[i] ?? '', text))}</li>`)
          .join('')}</ul>`
      : ''
  }`;

export const studentSheet = (lines: readonly PaperLine[], student: string, heading: Heading): string =>
  `<section class="paper"><h2>${escapeText(paperOf(student))}</h2><ol>${lines
    .map(
      ({ item }) =>
        `<li><p>${escapeText(item.question)} <span class="ask">${escapeText(askText(item))}</span></p>${shownHtml(item)}${
          item.exercise.shows
            ? '<p class="room"></p>'
            : `<p class="blank">${ANSWER} <span></span> ${escapeText(askedUnit(item))}</p>`
        }</li>`,
    )
    .join('')}</ol>${foot(heading, student)}</section>`;

export const keySheet = (lines: readonly PaperLine[], student: string, heading: Heading): string =>
  `<section class="paper worked-key"><h2>${escapeText(keyOf(student))}</h2><ol>${lines
    .map(
      ({ item }) =>
        `<li><p>${escapeText(item.question)}</p>${shownHtml(item)}<ul>${stepLines(item)
          .map((line) => `<li>${escapeText(line)}</li>`)
          .join(
            '',
          )}</ul><p class="answer"><strong>${escapeText(answerText(item))}</strong>${item.offered ? '' : `, ${escapeText(acceptedAs(acceptedText(item)))}`}</p></li>`,
    )
    .join('')}</ol>${foot(heading, student)}</section>`;
