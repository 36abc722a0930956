/** Papers and keys as HTML for print: black on white, a page for each student, no size of paper taken for granted. */
import { escapeText } from '../input/escape.ts';
import { acceptedText, answerText, askedUnit, askText } from './exercise.ts';
import type { PaperLine } from './paper.ts';
import { stepLines } from './steps-text.ts';

export interface Heading {
  readonly classCode: string;
  readonly version: string;
}

const foot = ({ classCode, version }: Heading, student: string): string =>
  `<p class="paper-foot">Class ${escapeText(classCode)} · ${escapeText(student)} · question bank ${escapeText(version)}</p>`;

export const studentSheet = (lines: readonly PaperLine[], student: string, heading: Heading): string =>
  `<section class="paper"><h2>Exercises: ${escapeText(student)}</h2><ol>${lines
    .map(
      ({ item }) =>
        `<li><p>${escapeText(item.question)} <span class="ask">${escapeText(askText(item))}</span></p><p class="blank">Answer: <span></span> ${escapeText(askedUnit(item))}</p></li>`,
    )
    .join('')}</ol>${foot(heading, student)}</section>`;

export const keySheet = (lines: readonly PaperLine[], student: string, heading: Heading): string =>
  `<section class="paper worked-key"><h2>Key: ${escapeText(student)}</h2><ol>${lines
    .map(
      ({ item }) =>
        `<li><p>${escapeText(item.question)}</p><ul>${stepLines(item)
          .map((line) => `<li>${escapeText(line)}</li>`)
          .join(
            '',
          )}</ul><p class="answer"><strong>${escapeText(answerText(item))}</strong>, accepted ${escapeText(acceptedText(item))}</p></li>`,
    )
    .join('')}</ol>${foot(heading, student)}</section>`;
