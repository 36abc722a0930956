/** Why an exercise makes no item, a roster no class and a link no papers. */
import { listed, quoted } from '../../../engine/index.ts';
import type { RefusalWords } from '../../refusal-words.ts';

export const EXERCISES = {
  'step-without-result': ({ step, why }, behind) => `Step ${step} has no result: ${behind(why)}`,
  'no-answering-step': () => 'There is no step that answers it.',
  'answer-nought': () => 'The answer is zero.',
  'answer-of-odd-size': ({ amount, unit, least, most }) =>
    `The answer is ${amount} ${unit}; ask for it in a unit in which it is from ${least} to ${most}.`,
  'slip-gives-answer': ({ says }) => `The slip “${says}” gives the right answer, so nobody can tell it from that.`,
  'too-few-to-choose': () => 'There are fewer than three answers that differ; add a slip.',
  'formula-cut-off': ({ formula }) => `“${formula}” breaks off; something is missing at its end.`,
  'formula-bracket-open': ({ formula }) => `“${formula}” has a bracket that is never closed.`,
  'formula-name-unknown': ({ name }) => `“${name}” is not a number of this exercise and not a result of its steps.`,
  'formula-unread': ({ formula, from }) => `“${formula}” can’t be read from “${from}” on.`,
  'formula-without-value': ({ formula }) => `“${formula}” has no value with these numbers.`,

  'roster-empty': () =>
    'The list of students is empty; paste one name or code a line, and each gets a paper of its own.',
  'roster-too-long': ({ names, most }) =>
    `The list of students has ${names} names; at most ${most} papers are set at once: paste it in parts.`,
  'roster-line-too-long': ({ line, text, most }) =>
    `Line ${line} of the list of students, ${quoted(text)}, is longer than ${most} characters: shorten it, or put each name on a line of its own.`,
  'class-code-empty': () => 'The class code is empty; type one, for example 7B-autumn.',
  'class-code-too-long': ({ text, most }) =>
    `Read ${quoted(text)}; a class code has at most ${most} characters: shorten it.`,

  'link-of-other-bank': ({ asked, held }) =>
    `This link asks for the question bank ${quoted(asked)}; this notebook holds ${held}. Its papers would have other numbers: open the link with the notebook it was made with, or set new papers here.`,
  'link-chapter-unknown': ({ chapter }) =>
    `This link asks for exercises of ${quoted(chapter)}, which is no chapter with exercises: choose the chapters below.`,
  'link-asks-too-many': ({ count, most }) =>
    `This link asks for ${count} exercises of one chapter; at most ${most} are set: choose below.`,
  'link-form-unknown': ({ form, forms }) =>
    `The link asks for exercises ${quoted(form)}; the forms here are ${listed(forms)}: choose one below.`,
  'not-found-backwards': ({ name }) =>
    `${name} can’t be found from the answer; ask for a quantity that the steps take.`,
  'ideas-unread': ({ text, columns }) =>
    `Read ${quoted(text)}; a file of ideas begins with the line ${columns.join(',')}: take one that was saved from the page of ideas.`,
  'ideas-line-unread': ({ line, text }) =>
    `Line ${line}, ${quoted(text)}, is no answer of the test of ideas: save the file again from the page of ideas.`,

  'lab-pairs-empty': () => 'No pair is given; type one a line, for example M10×1.5 + 3/8-16.',
  'lab-pairs-many': ({ pairs, most }) => `There are ${pairs} pairs; at most ${most} are taken: shorten the list.`,
  'lab-pair-unread': ({ line, text }) =>
    `Line ${line} of the pairs, ${quoted(text)}, is no pair; write two threads with a plus between them, for example M10×1.5 + 3/8-16.`,
  'lab-pair-side': ({ line, why }, behind) => `Line ${line} of the pairs: ${behind(why)}`,
  'lab-pair-idle': ({ line, text }) =>
    `Line ${line} of the pairs, ${quoted(text)}, moves nothing: its two leads are alike. Choose two that differ.`,
  'lab-units-mixed': ({ line, unit, before }) =>
    `Line ${line} of the readings is in ${unit}, an earlier one in ${before}: write all in one unit.`,
  'grid-empty': () => 'The grid is empty; paste the filled grid, with its head, from the spreadsheet.',
  'grid-too-long': ({ characters, most }) =>
    `The grid has ${characters} characters; at most ${most} are read: paste it in parts.`,
  'grid-without-names': ({ text }) =>
    `The first line, ${quoted(text)}, names no exercise; begin with the head of the empty grid.`,
  'grid-keys-unknown': ({ keys }) =>
    `The grid names ${listed(keys.slice(0, 3).map(quoted))}, which these papers don’t have: set the same papers again, by their link, and paste it then.`,
  'own-marks-odd': ({ text, most }) => `Read ${quoted(text)}; marks are a whole number from 0 to ${most}.`,
  'own-place-unknown': ({ place, places }) =>
    `${place} is no place of this exercise; there are ${listed(places.map((one) => `{${one}}`))}.`,
  'own-place-missing': ({ place }) =>
    `The question no longer tells ${place}, which is drawn for each student: put it where it belongs.`,
  'own-size-unread': ({ name, why }, behind) => `A size for {${name}}: ${behind(why)}`,
  'own-sizes-twice': ({ name, size }) => `The sizes for {${name}} hold ${quoted(size)} twice; take one out.`,
  'own-items-few': ({ sound, tried, why }, behind) =>
    `With these sizes only ${sound} of ${tried} items are sound; choose others.${why ? ` One of the rest: ${behind(why)}` : ''}`,
  'own-draws-few': ({ draws, least }) =>
    `These sizes make only ${draws === 1 ? 'one item' : `${draws} items`}, and a class needs at least ${least}: give more sizes, parted by commas.`,
  'own-file-unread': () => 'This is no file of changed exercises; open one that was saved here.',
  'own-question-empty': () => 'The question is empty; write it, with its places in braces.',
  'plan-lessons-odd': ({ text, most }) => `Read ${quoted(text)}; there are from 1 to ${most} lessons.`,
  'plan-minutes-odd': ({ text, least, most }) => `Read ${quoted(text)}; a lesson has from ${least} to ${most} minutes.`,
  'plan-without-chapters': () => 'No chapter is chosen; tick those that the course takes.',
  'project-none': ({ taps }) =>
    `No pair with these taps (${taps}) comes near; ask for a larger motion, or take both kinds of taps.`,
} satisfies Partial<RefusalWords>;
