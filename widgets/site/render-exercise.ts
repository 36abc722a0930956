/** An exercise as it prints without script: one fixed item, its hint and its worked answer to be opened. */

import { drawItem } from '../exercises/draw.ts';
import { acceptedText, answerText, askText } from '../exercises/exercise.ts';
import { escapeText } from '../input/escape.ts';
import type { ExerciseBlock } from './exercise-block.ts';
import { type Inline, renderStep } from './render.ts';

export const renderExercise = ({ exercise, lines }: ExerciseBlock, inline: Inline): string => {
  const { id, title, steps } = exercise;
  const item = drawItem(exercise, ['printed', id]);
  const worked = steps
    .map((step, i) => renderStep(step, i, item.outcomes[i], (why) => inline(why, lines[i] ?? 1)))
    .join('');
  return (
    `<section class="exercise" data-exercise="${id}" data-picks="${item.picks.join(',')}" aria-labelledby="exercise-${id}-name">` +
    `<h3 id="exercise-${id}-name"><span class="tag">Exercise</span> ${escapeText(title)}</h3>` +
    `<p class="question"><span data-question>${escapeText(item.question)}</span> <span class="ask">${escapeText(askText(item))}</span></p><div class="attempt"></div>` +
    `<details class="hint"><summary>Hint</summary><p data-hint>${escapeText(item.hint)}</p></details>` +
    `<details class="worked"><summary>Worked answer</summary><ol class="steps">${worked}</ol><p class="answer">Answer: <strong data-answer>${escapeText(answerText(item))}</strong>; accepted from <span data-accepted>${escapeText(acceptedText(item))}</span>.</p></details></section>`
  );
};

/** Where papers are set and where exercises of all chapters are mixed; both need the script. */
export const PAPERS_PLACE =
  '<section class="papers" data-papers aria-label="Papers"><p data-without-script>Papers are set by a script in your browser, which has not run. The exercises of the chapters can be printed with their pages.</p></section>';

export const REVIEW_PLACE =
  '<section class="exercise" data-review hidden aria-label="Mixed review"><p class="box-name" data-from></p><p class="question"><span data-question></span> <span class="ask"></span></p><div class="attempt"></div>' +
  '<details class="hint"><summary>Hint</summary><p data-hint></p></details><details class="worked"><summary>Worked answer</summary><ol class="steps"></ol><p class="answer">Answer: <strong data-answer></strong>; accepted from <span data-accepted></span>.</p></details></section>';
