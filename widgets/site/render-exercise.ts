/** An exercise as it prints without script: one fixed item, its hint and its worked answer to be opened. */

import {
  answerLine,
  CLASSWORK_WITHOUT_SCRIPT,
  EXERCISE,
  EXERCISE_KINDS,
  HINT,
  MIXED_REVIEW,
  PAPERS,
  PAPERS_WITHOUT_SCRIPT,
  WORKED_ANSWER,
} from '#words/page.ts';
import { drawItem } from '../exercises/draw.ts';
import { acceptedText, answerText, askText } from '../exercises/exercise.ts';
import { withIndexes } from '../exercises/plain-formula.ts';
import { shownHtml } from '../exercises/shown-html.ts';
import { stepLines } from '../exercises/steps-text.ts';
import { escapeText } from '../input/escape.ts';
import type { Classwork } from './blocks.ts';
import type { ExerciseBlock } from './exercise-block.ts';
import { OWN } from './own-words.ts';
import type { Inline } from './passage.ts';
import { renderStep } from './render.ts';

/** The answer’s line with the places that the script fills anew. */
const answerPlaces = (answer: string, accepted: string): string => {
  const line = answerLine(`<strong data-answer>${answer}</strong>`, `<span data-accepted>${accepted}</span>`);
  // What is chosen has no interval.
  return answer !== '' && accepted === '' ? line.replace('data-between', 'data-between hidden') : line;
};

/** Folded to its title and kind, but for the first of a chapter; what is folded works without script. */
export const renderExercise = ({ exercise, lines }: ExerciseBlock, inline: Inline, open: boolean): string => {
  const { id, title, steps } = exercise;
  const item = drawItem(exercise, ['printed', id]);
  const bySteps = exercise.kind !== 'wrong-line' && exercise.kind !== 'order';
  const worked = !bySteps
    ? stepLines(item)
        .map((line) => `<li>${withIndexes(escapeText(line))}</li>`)
        .join('')
    : steps.map((step, i) => renderStep(step, i, item.outcomes[i], (why) => inline(why, lines[i] ?? 1))).join('');
  return (
    `<section class="exercise" id="exercise-${id}" data-exercise="${id}" data-picks="${item.picks.join(',')}" aria-labelledby="exercise-${id}-name">` +
    `<details class="whole"${open ? ' open' : ''}><summary><h3 id="exercise-${id}-name"><span class="tag"${OWN}>${EXERCISE}</span> ${escapeText(title)}</h3> <span class="kind"${OWN}>${EXERCISE_KINDS[exercise.kind ?? (exercise.picture ? 'picture' : 'number')]}</span></summary>` +
    `<p class="question"><span data-question>${escapeText(item.question)}</span> <span class="ask"${OWN}>${escapeText(askText(item))}</span></p><div data-shown>${shownHtml(item)}</div><div class="attempt"${OWN}></div>` +
    `<details class="hint"><summary${OWN}>${HINT}</summary><p data-hint>${escapeText(item.hint)}</p></details>` +
    `<details class="worked"><summary${OWN}>${WORKED_ANSWER}</summary><ol class="steps">${worked}</ol>${bySteps && exercise.kind !== undefined && exercise.kind !== 'choice' ? `<p class="decides" data-decides>${escapeText(item.decides ?? '')}</p>` : ''}<p class="answer">${answerPlaces(withIndexes(escapeText(answerText(item))), escapeText(acceptedText(item)))}</p></details></details></section>`
  );
};

/** Where papers are set and where exercises of all chapters are mixed; both need the script. */
export const PAPERS_PLACE = `<section class="papers"${OWN} data-papers aria-label="${PAPERS}"><p data-without-script>${PAPERS_WITHOUT_SCRIPT}</p></section>`;

/** Another part for a class, which the script of papers fills. */
export const classworkPlace = (part: Classwork): string =>
  `<div class="papers classwork"${OWN} data-classwork="${part}"><p data-without-script>${CLASSWORK_WITHOUT_SCRIPT}</p></div>`;

export const REVIEW_PLACE =
  `<section class="exercise" data-review hidden aria-label="${MIXED_REVIEW}"><p data-due></p><p class="box-name" data-from></p><p class="question"><span data-question></span> <span class="ask"${OWN}></span></p><div data-shown></div><div class="attempt"${OWN}></div>` +
  `<details class="hint"><summary${OWN}>${HINT}</summary><p data-hint></p></details><details class="worked"><summary${OWN}>${WORKED_ANSWER}</summary><ol class="steps"></ol><p class="answer">${answerPlaces('', '')}</p></details></section>`;
