/**
 * Papers: which exercises a class gets, and each student's numbers. The class code chooses the exercises, the same for
 * all; class code, student, item and bank version choose the numbers.
 */
import { bad, good, type Result } from '../engine/index.ts';
import type { Bank, BankChapter } from './bank.ts';
import { drawItem } from './draw.ts';
import type { Exercise, Item } from './exercise.ts';
import { FORMS, type Form, inForm, inOwnUnits, type OwnUnits } from './forms.ts';
import { readClassCode } from './roster.ts';
import { pick, stateOf } from './seed.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'link-of-other-bank': { readonly asked: string; readonly held: string };
    'link-chapter-unknown': { readonly chapter: string };
    'link-form-unknown': { readonly form: string; readonly forms: readonly string[] };
    'link-asks-too-many': { readonly count: string; readonly most: number };
  }
}

/** How many exercises of a chapter. */
export type Counts = ReadonlyMap<string, number>;

export const MOST_OF_A_CHAPTER = 10;

export interface PaperLine {
  /** Identifies the item within the bank: `foot-turn` or, when it is asked a second time, `foot-turn#2`. */
  readonly key: string;
  /** The exercise of the bank that it comes of, whatever form it is asked in. */
  readonly exercise: string;
  readonly item: Item;
}

export interface Place {
  readonly exercise: Exercise;
  readonly key: string;
  /** The name of the exercise in the bank. */
  readonly of: string;
}

/** How exercises are asked. */
export interface Asked {
  readonly form?: Form;
  /** Only such as a machine can judge. */
  readonly judged?: boolean;
  readonly units?: OwnUnits | undefined;
}

/** The exercises of a paper in order. Asked for more than a chapter has, they come round again with other numbers. */
export const choose = (
  bank: Bank,
  counts: Counts,
  classCode: string,
  { form = 'as-written', judged = false, units }: Asked = {},
): Place[] =>
  bank.chapters.flatMap((chapter) =>
    chosen(chapter, counts.get(chapter.slug) ?? 0, classCode, bank.version).map(({ exercise, key }) => {
      const words = [classCode, chapter.slug, key, bank.version];
      const asked = inForm(inOwnUnits(exercise, units), form, words, judged);
      return { exercise: asked, key: key.replace(exercise.id, asked.id), of: exercise.id };
    }),
  );

const chosen = ({ slug, exercises }: BankChapter, count: number, classCode: string, version: string): Place[] => {
  const order = [...exercises];
  const state = stateOf(['order', classCode, slug, version]);
  for (let i = order.length - 1; i > 0; i--) {
    const j = pick(state, i + 1);
    const [a, b] = [order[i], order[j]];
    if (a && b) [order[i], order[j]] = [b, a];
  }
  return Array.from({ length: count }, (_, i) => i).flatMap((i) => {
    const exercise = order[i % order.length];
    const round = Math.floor(i / order.length) + 1;
    return exercise ? [{ exercise, key: round === 1 ? exercise.id : `${exercise.id}#${round}`, of: exercise.id }] : [];
  });
};

export const setPaper = (
  places: readonly Place[],
  classCode: string,
  student: string,
  version: string,
): PaperLine[] => {
  const used = new Map<string, Set<string>>();
  return places.map(({ exercise, key, of }) => {
    const taken = used.get(exercise.id) ?? new Set<string>();
    const item = drawItem(exercise, ['paper', classCode, student, key, version], taken);
    used.set(exercise.id, taken.add(item.picks.join(',')));
    return { key, exercise: of, item };
  });
};

/** How many variants of each exercise a bank holds at most, for a test to draw one of. */
export const MOST_VARIANTS = 10;

/**
 * Fixed instances for a question bank: so many of every exercise of these chapters, each in so many variants (`foot-turn`, `foot-turn~2`), all of
 * them different.
 */
export const setBank = (
  bank: Bank,
  counts: Counts,
  classCode: string,
  { form = 'as-written', judged = true }: Asked = {},
  variants = 1,
): PaperLine[] => {
  const places = choose(bank, counts, classCode, { form, judged });
  return setPaper(
    places.flatMap((place) =>
      Array.from({ length: variants }, (_, i) => ({ ...place, key: i === 0 ? place.key : `${place.key}~${i + 1}` })),
    ),
    classCode,
    'question bank',
    bank.version,
  );
};

/** What a link to the papers holds: everything but the roster. */
export interface PaperOrder {
  readonly classCode: string;
  readonly counts: Counts;
  readonly form?: Form;
}

export const paperParameters = (
  { classCode, counts, form = 'as-written' }: PaperOrder,
  version: string,
): Readonly<Record<string, string>> => ({
  class: classCode,
  ask: [...counts].flatMap(([slug, n]) => (n > 0 ? [`${slug}:${n}`] : [])).join(','),
  bank: version,
  ...(form === 'as-written' ? {} : { form }),
});

/** Reads a link; undefined where the address asks for no papers. */
export const readPaperLink = (search: string, bank: Bank): Result<PaperOrder> | undefined => {
  const parameters = new URLSearchParams(search);
  const [version, ask] = [parameters.get('bank'), parameters.get('ask')];
  if (version === null && ask === null) return undefined;
  if (version !== bank.version) return bad('link-of-other-bank', { asked: version ?? '', held: bank.version });
  const counts = new Map<string, number>();
  for (const part of (ask ?? '')
    .slice(0, 2000)
    .split(',')
    .filter((p) => p !== '')) {
    const [, slug = '', count = ''] = /^([a-z0-9-]+):(\d{1,4})$/.exec(part) ?? [];
    if (!bank.chapters.some((c) => c.slug === slug)) return bad('link-chapter-unknown', { chapter: slug || part });
    if (!(Number(count) <= MOST_OF_A_CHAPTER)) return bad('link-asks-too-many', { count, most: MOST_OF_A_CHAPTER });
    counts.set(slug, Number(count));
  }
  const classCode = readClassCode(parameters.get('class') ?? '');
  const asked = parameters.get('form') ?? 'as-written';
  const form = FORMS.find((known) => known === asked);
  if (form === undefined) return bad('link-form-unknown', { form: asked, forms: FORMS });
  return classCode.ok
    ? good({ classCode: classCode.value, counts, ...(form === 'as-written' ? {} : { form }) })
    : classCode;
};
