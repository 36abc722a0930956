/** Papers and keys as HTML for print: black on white, a page for each student, no size of paper taken for granted. */
import {
  DATE,
  HINT_WAS,
  HOW_WORKED,
  KNOWN_SLIPS,
  MARKS,
  marksFor,
  outOf,
  pageOf,
  workedFor,
} from '#words/classroom.ts';
import { ANSWER, acceptedAs, keyOf, paperFoot, paperOf } from '#words/papers.ts';
import { relationNamed } from '../engine/index.ts';
import { escapeText } from '../input/escape.ts';
import { acceptedText, answerText, askedUnit, askText, type Item } from './exercise.ts';
import { langText } from './own-language.ts';
import type { PaperLine, Place } from './paper.ts';
import { withIndexes } from './plain-formula.ts';
import { shownHtml } from './shown-html.ts';
import { algebraLines } from './steps-text.ts';

export interface Heading {
  readonly classCode: string;
  readonly version: string;
}

/** How much room there is to work under each exercise. */
export const ROOMS = ['none', 'some', 'much'] as const;
export type Room = (typeof ROOMS)[number];

export type Marks = (exercise: string) => number;
const ONE_EACH: Marks = () => 1;

/** Students of a class share many items, and their papers are written in one go: what an item comes to is kept with it. */
const keptWith = <T>(write: (item: Item) => T): ((item: Item) => T) => {
  const known = new WeakMap<Item, T>();
  return (item) => {
    const kept = known.get(item) ?? write(item);
    known.set(item, kept);
    return kept;
  };
};

/** One exercise as it is asked. */
export const asked = (item: Item, marks: number): string => {
  const { question, rest } = askedParts(item);
  return `<li><p>${question} <span class="marks">${marksFor(marks)}</span></p>${rest}</li>`;
};
const askedParts = keptWith((item) => ({
  question: `<span${langText(item.exercise)}>${escapeText(item.question)}</span> <span class="ask">${escapeText(askText(item))}</span>`,
  rest: `${shownHtml(item)}${
    item.exercise.shows
      ? '<p class="room"></p>'
      : `<p class="work"></p><p class="blank">${ANSWER} <span></span> ${escapeText(askedUnit(item))}</p>`
  }`,
}));

export interface SheetLook {
  readonly marks?: Marks;
  readonly pages?: readonly { readonly places: readonly number[]; readonly more: number }[];
  /** In large print. */
  readonly large?: boolean;
}

/**
 * A student’s sheets. `pages` says which exercises stand on each of them, as they were found to fit, and how much room to work each gets beside
 * its own, mm; without it all stand on one, which breaks where the paper ends.
 */
export const studentSheet = (
  lines: readonly PaperLine[],
  student: string,
  { classCode, version }: Heading,
  { marks = ONE_EACH, pages, large = false }: SheetLook = {},
): string => {
  const own = (line: PaperLine) => marks(line.exercise);
  const total = lines.reduce((sum, line) => sum + own(line), 0);
  const on = pages ?? [{ places: lines.map((_, i) => i), more: 0 }];
  const sheets = on.map(({ places, more }, page) => {
    const name = escapeText(paperOf(student));
    return (
      `<div class="paper-page"${more > 0 ? ` style="--more:${more.toFixed(1)}mm"` : ''}><div class="page-head">${page === 0 ? `<h2>${name}</h2>` : `<p class="page-name">${name}</p>`}` +
      `<p>${DATE} <span class="line"></span></p><p>${MARKS} <span class="line short"></span> ${outOf(total)}</p><p>${pageOf(page + 1, on.length)}</p></div>` +
      `<ol start="${(places[0] ?? 0) + 1}">${places.map((i) => (lines[i] ? asked(lines[i].item, own(lines[i])) : '')).join('')}</ol>` +
      `<p class="paper-foot">${escapeText(paperFoot(classCode, student, version))}</p></div>`
    );
  });
  return `<section class="paper"${large ? ' data-large' : ''}>${sheets.join('')}</section>`;
};

/** The worked answers of one student: algebra, numbers, answer. The reasons stand once for the class, in `methodSheet`. */
export const keySheet = (lines: readonly PaperLine[], student: string, { classCode, version }: Heading): string =>
  `<section class="paper worked-key"><div class="key-head"><h2>${escapeText(keyOf(student))}</h2><p class="paper-foot">${escapeText(paperFoot(classCode, student, version))}</p></div><ol>${lines
    .map(({ item }) => workedItem(item))
    .join('')}</ol></section>`;

const workedItem = keptWith((item) => {
  const lines = algebraLines(item).map((line) => `<li>${withIndexes(escapeText(line))}</li>`);
  const accepted = item.offered ? '' : `, ${escapeText(acceptedAs(acceptedText(item)))}`;
  return `<li><p${langText(item.exercise)}>${escapeText(item.exercise.title)}</p><ul>${lines.join('')}</ul><p class="answer"><strong>${withIndexes(escapeText(answerText(item)))}</strong>${accepted}</p></li>`;
});

/** The formulas of each exercise’s steps as the press sets them, by the name of the exercise. */
export type Methods = Readonly<Record<string, readonly string[]>>;

/** Once for the class: the question as it is asked, each step with its reason and formula, the hint, and what slips tell. */
export const methodSheet = (
  places: readonly Place[],
  lines: readonly PaperLine[],
  { classCode, version }: Heading,
  methods: Methods,
  marks: Marks = ONE_EACH,
): string =>
  `<section class="paper method"><h2>${HOW_WORKED}</h2><p class="paper-foot">${escapeText(workedFor(classCode, version))}</p><ol>${places
    .map(({ exercise, of }, i) => {
      const item = lines[i]?.item;
      const lang = langText(exercise);
      const steps = exercise.steps.map((step, at) => {
        const why = step.why ?? relationNamed(step.relation)?.says ?? '';
        const reason = escapeText(why.replace(/\{\{!?\s*(.*?)\s*\}\}/g, '$1').replace(/[*$`]/g, ''));
        return `<li><span${step.why === undefined ? '' : lang}>${reason}</span> ${methods[of]?.[at] ?? ''}</li>`;
      });
      const slips = [...new Set((item?.slips ?? []).flatMap(({ says, rule }) => (rule === undefined ? [] : [says])))];
      const ask = item?.exercise.shows ? ` ${escapeText(askText(item))}` : '';
      return (
        `<li><p><strong${lang}>${escapeText(exercise.title)}</strong>, ${marksFor(marks(of))}. <span${lang}>${escapeText(item?.question ?? '')}</span>${ask}</p>` +
        (exercise.kind === 'order' ? '' : `<ol class="method-steps">${steps.join('')}</ol>`) +
        (exercise.hint === '' ? '' : `<p>${HINT_WAS}: <span${lang}>${escapeText(item?.hint ?? '')}</span></p>`) +
        (slips.length === 0
          ? ''
          : `<p>${KNOWN_SLIPS}:</p><ul${lang}>${slips.map((says) => `<li>${escapeText(says)}</li>`).join('')}</ul>`) +
        '</li>'
      );
    })
    .join('')}</ol></section>`;
