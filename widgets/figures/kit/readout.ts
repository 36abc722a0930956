/**
 * What is read off beside a picture, each number or word under its name. A number stands as what it is and how it is written, so that the
 * page can ask it backwards and say its ±.
 */
import type { SoldThing } from '../../assembly/backwards/sold.ts';
import { escapeText } from '../../input/escape.ts';
import { type NumberFormat, show, type UnitView, withSign } from '../../input/format.ts';

/** A number of a figure; its key is the same at all numbers of the reader. */
export interface Amount {
  readonly key: string;
  readonly name: string;
  readonly value: number;
  readonly format: NumberFormat;
  /** Where its own list says the rest of its name. */
  readonly short?: string;
  /** What is sold in sizes of its own, where this number is its size. */
  readonly sold?: SoldThing;
  /** The relations that it follows, where the figure works it by a function that holds them and asks none. */
  readonly by?: readonly string[];
  /** Whether a plus is written, because the sign says a way. */
  readonly signed: boolean;
}

export const amount = (
  key: string,
  name: string,
  value: number,
  shown: NumberFormat['shown'],
  digits?: number,
  signed = false,
): Amount => ({ key, name, value, format: digits === undefined ? { shown } : { shown, digits }, signed });

/** The same, with its plus. */
export const signedAmount = (
  key: string,
  name: string,
  value: number,
  shown: NumberFormat['shown'],
  digits?: number,
): Amount => amount(key, name, value, shown, digits, true);

/** A number that is worked by a function which holds these relations. */
export const following = (of: Amount, ...by: readonly string[]): Amount => ({ ...of, by });

/** Words, or several numbers in one text. */
type Words = readonly [key: string, name: string, value: string] | readonly [name: string, value: string];
export type Row = Amount | Words;

export const isAmount = (row: Row): row is Amount => !Array.isArray(row);

const amountText = ({ value, format, signed }: Amount, view: UnitView): string => {
  const text = show(value, format, view);
  return signed ? withSign(text) : text;
};

/** Its name and what stands beside it. */
export const rowTexts = (row: Row, view: UnitView): readonly [name: string, text: string] =>
  isAmount(row) ? [row.name, amountText(row, view)] : row.length === 2 ? row : [row[1], row[2]];

export const readoutHtml = (rows: readonly Row[], view: UnitView): string =>
  rows.length === 0 ? '' : `<dl class="readout">${rows.map((row) => rowHtml(row, view)).join('')}</dl>`;

const rowHtml = (row: Row, view: UnitView): string => {
  if (isAmount(row))
    return `<div class="${row.key}"><dt>${escapeText(row.short ?? row.name)}</dt><dd data-read="${row.key}"><span data-result="${row.key}">${escapeText(amountText(row, view))}</span></dd></div>`;
  if (row.length === 2) return `<div><dt>${escapeText(row[0])}</dt><dd>${escapeText(row[1])}</dd></div>`;
  const [key, name, value] = row;
  return `<div class="${key}"><dt>${escapeText(name)}</dt><dd data-read="${key}">${escapeText(value)}</dd></div>`;
};
