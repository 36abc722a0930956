/** What a reader states for the title block of a drawing, a field a row: `number = RS-01`. */
import { bad, good, type Result } from '../engine/index.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'title-row-unread': { readonly row: string; readonly fields: readonly string[] };
    'title-field-twice': { readonly field: string };
    'title-too-long': { readonly field: string; readonly most: number };
  }
}

export const TITLE_FIELDS = ['number', 'date', 'revision', 'tolerance', 'drawn'] as const;
type Field = (typeof TITLE_FIELDS)[number];
export type TitleBlock = Readonly<Record<Field, string>>;

/** The cells of a title block are this wide. */
const MOST = 34;

export const readTitleBlock = (text: string): Result<TitleBlock> => {
  const found: Partial<Record<Field, string>> = {};
  for (const row of text.split(/[|\n]/)) {
    const typed = row.replace(/\s+/g, ' ').trim();
    if (typed === '') continue;
    const [, name = '', value = ''] = /^([A-Za-z]+) ?= ?(.*)$/.exec(typed) ?? [];
    const field = TITLE_FIELDS.find((f) => f === name.toLowerCase());
    if (!field) return bad('title-row-unread', { row: typed.slice(0, 60), fields: TITLE_FIELDS });
    if (found[field] !== undefined) return bad('title-field-twice', { field });
    if (value.length > MOST) return bad('title-too-long', { field, most: MOST });
    found[field] = value;
  }
  return good(Object.fromEntries(TITLE_FIELDS.map((f) => [f, found[f] ?? ''])) as Record<Field, string>);
};
