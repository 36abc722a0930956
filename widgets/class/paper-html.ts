/** Papers and keys as HTML for print: black on white, a page for each student, no size of paper taken for granted. */
import { escapeText as escapeHtml } from '../shared/svg.ts';
import { acceptedText, answerText, askedUnit, askText } from './exercise.ts';
import type { PaperLine } from './paper.ts';
import { stepLines } from './steps-text.ts';

export interface Heading {
  readonly classCode: string;
  readonly version: string;
}

const foot = ({ classCode, version }: Heading, student: string): string =>
  `<p class="paper-foot">Class ${escapeHtml(classCode)} · ${escapeHtml(student)} · question bank ${escapeHtml(version)}</p>`;

export const studentSheet = (lines: readonly PaperLine[], student: string, heading: Heading): string =>
  `<section class="paper"><h2>Exercises: ${escapeHtml(student)}</h2><ol>${lines
    .map(
      ({ item }) =>
        `<li><p>${escapeHtml(item.question)} <span class="ask">${escapeHtml(askText(item))}</span></p><p class="blank">Answer: <span></span> ${escapeHtml(askedUnit(item))}</p></li>`,
    )
    .join('')}</ol>${foot(heading, student)}</section>`;

export const keySheet = (lines: readonly PaperLine[], student: string, heading: Heading): string =>
  `<section class="paper worked-key"><h2>Key: ${escapeHtml(student)}</h2><ol>${lines
    .map(
      ({ item }) =>
        `<li><p>${escapeHtml(item.question)}</p><ul>${stepLines(item)
          .map((line) => `<li>${escapeHtml(line)}</li>`)
          .join(
            '',
          )}</ul><p class="answer"><strong>${escapeHtml(answerText(item))}</strong>, accepted ${escapeHtml(acceptedText(item))}</p></li>`,
    )
    .join('')}</ol>${foot(heading, student)}</section>`;
