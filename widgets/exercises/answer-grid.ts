/** All answers of a class at a glance: a row a student, a column a question, on paper and as CSV. */
import { GRID, gridColumn, NAME, QUESTION, STUDENT, workedFor } from '#words/classroom.ts';
import { spokenNumber } from '../engine/index.ts';
import { escapeText } from '../input/escape.ts';
import { csvRow } from './csv-row.ts';
import { answerText, askedUnit, type Item } from './exercise.ts';
import { langText } from './own-language.ts';
import type { PaperLine } from './paper.ts';
import type { Heading } from './paper-html.ts';
import { statedAnswer } from './stated-answer.ts';

/** What was set for one student. */
export interface SetPaper {
  readonly student: string;
  readonly lines: readonly PaperLine[];
}

/** How much an upright sheet holds beside the names, counted in columns of one letter. */
const MOST_ACROSS = 16;

const letters = ({ offered }: Item): string | undefined => offered?.right;
/** In a column of one unit the number is enough. */
const cell = (item: Item, withUnit: boolean): string => {
  const chosen = letters(item);
  if (chosen !== undefined) return chosen.length > 1 ? [...chosen].join(' ') : chosen;
  const text = answerText(item);
  const unit = askedUnit(item);
  return withUnit || unit === '' ? text : text.slice(0, text.length - unit.length).trimEnd();
};

/** The unit that all students are asked in, or undefined where they differ. */
const unitOf = (papers: readonly SetPaper[], at: number): string | undefined => {
  const units = new Set(papers.map(({ lines }) => (lines[at] ? askedUnit(lines[at].item) : '')));
  return units.size === 1 ? [...units][0] : undefined;
};

/** How many columns of one letter the widest answer of a column takes, five signs to each. */
const breadth = (papers: readonly SetPaper[], at: number, unit: string | undefined): number => {
  const signs = papers.map(({ lines }) => (lines[at] ? cell(lines[at].item, unit === undefined).length : 0));
  return Math.max(1, Math.max(...signs) / 5);
};

/** Columns in tables of like breadth, so that the last is no single column. */
const inTables = <C extends { readonly across: number }>(columns: readonly C[]): readonly (readonly C[])[] => {
  const total = columns.reduce((sum, { across }) => sum + across, 0);
  const tables = Math.ceil(total / MOST_ACROSS);
  const parts: C[][] = Array.from({ length: tables }, () => []);
  let sum = 0;
  for (const column of columns) {
    parts[Math.min(tables - 1, Math.floor(((sum + column.across / 2) / total) * tables))]?.push(column);
    sum += column.across;
  }
  return parts.filter((part) => part.length > 0);
};

/** `filled` is false for a grid to write a class’s answers into. */
export const gridSheet = (papers: readonly SetPaper[], { classCode, version }: Heading, filled = true): string => {
  const [first] = papers;
  if (!first) return '';
  const columns = first.lines.map((line, at) => {
    const unit = unitOf(papers, at);
    return { line, at, unit, across: breadth(papers, at, unit) };
  });
  const tables = inTables(columns).map((shown) => {
    const heads = shown.map(
      ({ at, unit }) => `<th scope="col">${gridColumn(at + 1)}${unit ? `<br>${escapeText(unit)}` : ''}</th>`,
    );
    const rows = papers.map(
      ({ student, lines }) =>
        `<tr><th scope="row">${escapeText(student)}</th>${shown
          .map(
            ({ at, unit }) =>
              `<td>${lines[at] && filled ? escapeText(cell(lines[at].item, unit === undefined)) : ''}</td>`,
          )
          .join('')}</tr>`,
    );
    const titles = shown.map(
      ({ line, at }) =>
        `${gridColumn(at + 1)} <span${langText(line.item.exercise)}>${escapeText(line.item.exercise.title)}</span>`,
    );
    return `<table><thead><tr><th scope="col">${STUDENT}</th>${heads.join('')}</tr></thead><tbody>${rows.join('')}</tbody></table><p class="grid-titles">${titles.join(' · ')}</p>`;
  });
  return `<section class="paper grid"><h2>${GRID}</h2><p class="paper-foot">${escapeText(workedFor(classCode, version))}</p>${tables.join('')}</section>`;
};

/** A column an item, its key and unit at the head. `filled` is false for a grid to type a class’s answers into. */
export const gridCsv = (papers: readonly SetPaper[], filled: boolean): string => {
  const keys = papers[0]?.lines.map(({ key }) => key) ?? [];
  const rows = papers.map(({ student, lines }) =>
    csvRow([
      student,
      ...lines.map(({ item }) =>
        filled ? (letters(item) ?? spokenNumber(`${statedAnswer(item).value} ${askedUnit(item)}`.trim())) : '',
      ),
    ]),
  );
  return `${[csvRow([NAME, ...keys]), csvRow([QUESTION, ...(papers[0]?.lines ?? []).map(({ item }) => item.exercise.title)]), ...rows].join('\r\n')}\r\n`;
};
