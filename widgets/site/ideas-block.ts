/**
 * The block ` ```ideas NAME: title `: a short test of ideas, asked before a route and after it. Items are parted by an empty line:
 *
 *   leads-add: The two leads add.          the name of the item, and the misconception that it finds
 *   Two right-hand threads … A turn moves  the question
 *   + the difference of their leads        the one right answer
 *   - the sum of their leads               what the misconception answers
 *   ~ nothing                              any other answer
 */

import { IDEAS_WITHOUT_SCRIPT } from '#words/ideas.ts';
import { shuffled } from '../exercises/offered.ts';
import { escapeText } from '../input/escape.ts';
import type { Diagnostics } from './diagnostics.ts';

interface IdeaItem {
  readonly name: string;
  readonly misconception: string;
  readonly question: string;
  readonly answers: readonly { readonly mark: string; readonly text: string }[];
}

export interface IdeasBlock {
  readonly kind: 'ideas';
  readonly route: string;
  readonly title: string;
  readonly items: readonly IdeaItem[];
}

export const readIdeasBlock = (
  route: string,
  title: string,
  body: string,
  firstLine: number,
  book: Diagnostics,
): IdeasBlock => {
  const items: IdeaItem[] = [];
  let line = firstLine;
  for (const part of body.split(/\n\s*\n/)) {
    const rows = part.split('\n').map((row) => row.trim());
    const [, name = '', misconception = ''] = /^([a-z][a-z0-9-]*): (.+)$/.exec(rows[0] ?? '') ?? [];
    const answers = rows
      .filter((row) => /^[+~-] /.test(row))
      .map((row) => ({ mark: row[0] ?? '', text: row.slice(2) }));
    const question = rows
      .slice(1)
      .filter((row) => row !== '' && !/^[+~-] /.test(row))
      .join(' ');
    const count = (mark: string) => answers.filter((a) => a.mark === mark).length;
    if (name === '' || question === '' || count('+') !== 1 || count('-') !== 1 || answers.length < 3)
      book.note(
        line,
        'An idea needs a line “name: misconception”, a question, one answer after +, one after - that follows from the misconception, and one more after ~.',
      );
    else if (items.some((item) => item.name === name)) book.note(line, `Two ideas are called “${name}”.`);
    items.push({ name, misconception, question, answers });
    line += rows.length + 1;
  }
  if (title === '') book.note(firstLine - 1, `The test “${route}” has no title; write “ideas ${route}: title”.`);
  return { kind: 'ideas', route, title, items };
};

const VALUES: Readonly<Record<string, string>> = { '+': 'right', '-': 'misconception', '~': 'other' };

export const renderIdeas = ({ route, title, items }: IdeasBlock): string =>
  `<section class="exercise ideas" data-ideas="${route}" aria-labelledby="ideas-${route}"><h3 id="ideas-${route}">${escapeText(title)}</h3>${items
    .map(({ name, misconception, question, answers }) => {
      const order = shuffled(answers.length, ['ideas', route, name]);
      return `<fieldset class="offered-field" data-idea="${name}" data-misconception="${escapeText(misconception)}"><legend>${escapeText(question)}</legend>${order
        .map((at) => {
          const { mark = '', text = '' } = answers[at] ?? {};
          return `<label><input type="radio" name="${route}-${name}" value="${VALUES[mark]}"><span>${escapeText(text)}</span></label>`;
        })
        .join('')}</fieldset>`;
    })
    .join('')}</section>`;

export const IDEAS_CLASS_PLACE = `<section class="exercise ideas-class" data-ideas-class><p data-without-script>${IDEAS_WITHOUT_SCRIPT}</p></section>`;
