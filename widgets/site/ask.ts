/**
 * Questions that lead from what is seen to its cause, in a block `ask`. Each has a check to make at the bench and two answers; an
 * answer with more indented lines under it is the next question, any other is a cause and links to where it is explained.
 *
 *   Does the jerk come at the same angle of every turn?
 *   check Mark the head with a pen and watch four turns.
 *   yes: The thread is damaged there: see [crooked threads](26-lead-error.md).
 *   no: Is it gone when you press the carried part down?
 *     check Press lightly, by hand, away from any load.
 *     yes: …
 *     no: …
 */
import { ASK_CHECK, ASK_NO, ASK_YES } from '#words/page.ts';
import type { Diagnostics } from './diagnostics.ts';
import type { Inline, Passage } from './passage.ts';

export interface Question {
  readonly question: Passage;
  readonly check: Passage;
  readonly yes: Asked;
  readonly no: Asked;
}
interface Cause {
  readonly cause: Passage;
}
export type Asked = Question | Cause;

interface Line extends Passage {
  readonly indent: number;
}

export const readAsk = (body: string, firstLine: number, book: Diagnostics): Asked | undefined => {
  const lines = body.split('\n').flatMap((raw, i): Line[] => {
    const text = raw.trim();
    return text === '' ? [] : [{ text, line: firstLine + i, indent: raw.length - raw.trimStart().length }];
  });
  const [first, ...rest] = lines;
  if (!first) {
    book.note(firstLine - 1, 'This block asks nothing; begin it with a question.');
    return undefined;
  }
  return readQuestion(first, rest, book);
};

/** A question and the lines under it, all indented alike or more. */
const readQuestion = (question: Passage, lines: readonly Line[], book: Diagnostics): Question | undefined => {
  const own = lines[0]?.indent ?? 0;
  const at = (mark: RegExp) => lines.findIndex((line) => line.indent === own && mark.test(line.text));
  const check = lines[at(/^check\s/)];
  const answer = (mark: RegExp, word: string): Asked | undefined => {
    const i = at(mark);
    const line = lines[i];
    if (!line) {
      book.note(question.line, `The question “${question.text}” has no answer “${word}: …” under it.`);
      return undefined;
    }
    const end = lines.findIndex((other, k) => k > i && other.indent <= own);
    const under = lines.slice(i + 1, end < 0 ? undefined : end);
    const passage = { text: line.text.replace(mark, ''), line: line.line };
    if (under.length > 0) return readQuestion(passage, under, book);
    if (!/\]\([^)]+\)/.test(passage.text))
      book.note(
        line.line,
        'This answer is a cause and must link to where it is explained, or be a question with lines indented under it.',
      );
    return { cause: passage };
  };
  if (!check)
    book.note(
      question.line,
      `The question “${question.text}” has no check; add a line “check …”, something to do at the bench.`,
    );
  for (const line of lines)
    if (line.indent === own && !/^(check\s|yes:|no:)/.test(line.text))
      book.note(line.line, `“${line.text}” is neither “check …” nor “yes: …” nor “no: …”.`);
  const [yes, no] = [answer(/^yes:\s*/, 'yes'), answer(/^no:\s*/, 'no')];
  return check && yes && no
    ? { question, check: { text: check.text.replace(/^check\s+/, ''), line: check.line }, yes, no }
    : undefined;
};

export const renderAsk = (asked: Asked, inline: Inline): string => `<div class="asked">${render(asked, inline)}</div>`;

const render = (asked: Asked, inline: Inline): string => {
  const set = ({ text, line }: Passage) => inline(text, line);
  if ('cause' in asked) return `<p class="cause">${set(asked.cause)}</p>`;
  const answer = (word: string, next: Asked) =>
    `<details class="ask"><summary>${word}</summary>${render(next, inline)}</details>`;
  return (
    `<p class="question">${set(asked.question)}</p><p class="check"><span class="tag">${ASK_CHECK}</span> ${set(asked.check)}</p>` +
    answer(ASK_YES, asked.yes) +
    answer(ASK_NO, asked.no)
  );
};
