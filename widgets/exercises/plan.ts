/**
 * A course in lessons, from what the chapters state of themselves: the minutes they take, the chapters they need, what one can do after
 * them, and the exercises they have. Chapters stay in the order of the book and are parted where a lesson ends.
 */
import { bad, good, type Result } from '../engine/index.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'plan-lessons-odd': { readonly text: string; readonly most: number };
    'plan-minutes-odd': { readonly text: string; readonly least: number; readonly most: number };
    'plan-without-chapters': Readonly<Record<never, never>>;
  }
}

/** A chapter as it states itself. */
export interface CourseChapter {
  readonly slug: string;
  readonly number: number;
  readonly title: string;
  /** The language of its words, where that is not the edition’s. */
  readonly lang?: string;
  readonly minutes: number;
  /** Names of the chapters that it needs. */
  readonly needs: readonly string[];
  /** What its reader can do afterwards, a sentence each. */
  readonly outcomes: readonly string[];
  readonly exercises: readonly string[];
}

export interface LessonPart {
  readonly chapter: CourseChapter;
  readonly minutes: number;
  readonly from: 'whole' | 'begun' | 'carried on' | 'ended';
}
export interface Lesson {
  readonly number: number;
  readonly parts: readonly LessonPart[];
  readonly minutes: number;
}
export interface Plan {
  readonly lessons: readonly Lesson[];
  /** Minutes that find no room, and how many lessons would hold all. */
  readonly over: number;
  readonly enough: number;
  /** What of which chapter they are, in the order of the book. */
  readonly left: readonly { readonly chapter: CourseChapter; readonly minutes: number }[];
  /** Chapters of the plan whose needs are not in it. */
  readonly unmet: readonly { readonly chapter: CourseChapter; readonly needs: readonly CourseChapter[] }[];
}

const MOST_LESSONS = 200;
const SHORTEST = 15;
const LONGEST = 480;

/** Ten minutes of a chapter and less aren't put off to another day. */
const NOT_PARTED = 10;

export const readLessons = (text: string): Result<number> => {
  const n = /^\s*\d{1,4}\s*$/.test(text) ? Number(text) : Number.NaN;
  return n >= 1 && n <= MOST_LESSONS ? good(n) : bad('plan-lessons-odd', { text, most: MOST_LESSONS });
};
export const readMinutes = (text: string): Result<number> => {
  const n = /^\s*\d{1,4}\s*$/.test(text) ? Number(text) : Number.NaN;
  return n >= SHORTEST && n <= LONGEST ? good(n) : bad('plan-minutes-odd', { text, least: SHORTEST, most: LONGEST });
};

/** With everything that the chosen ones need, in the order of the book. */
export const withNeeds = (all: readonly CourseChapter[], chosen: ReadonlySet<string>): readonly CourseChapter[] => {
  const wanted = new Set<string>();
  const add = (slug: string) => {
    if (wanted.has(slug)) return;
    wanted.add(slug);
    for (const need of all.find((c) => c.slug === slug)?.needs ?? []) add(need);
  };
  for (const slug of chosen) add(slug);
  return all.filter((c) => wanted.has(c.slug));
};

export const planCourse = (
  all: readonly CourseChapter[],
  chosen: ReadonlySet<string>,
  count: number,
  minutes: number,
): Result<Plan> => {
  const chapters = all.filter((c) => chosen.has(c.slug));
  if (chapters.length === 0) return bad('plan-without-chapters', {});
  const lessons: { parts: LessonPart[]; left: number }[] = [];
  for (const chapter of chapters) {
    let rest = chapter.minutes;
    let begun = false;
    while (rest > 0) {
      let lesson = lessons.at(-1);
      // A scrap at the end of a lesson is no place to begin.
      if (!lesson || lesson.left <= 0 || (!begun && rest > lesson.left && lesson.left < NOT_PARTED)) {
        lesson = { parts: [], left: minutes };
        lessons.push(lesson);
      }
      const most = rest - lesson.left <= NOT_PARTED && lesson.parts.length === 0 ? rest : Math.min(rest, lesson.left);
      const taken = Math.min(most, minutes);
      rest -= taken;
      lesson.parts.push({
        chapter,
        minutes: taken,
        from: begun ? (rest > 0 ? 'carried on' : 'ended') : rest > 0 ? 'begun' : 'whole',
      });
      lesson.left -= taken;
      begun = true;
    }
  }
  const held = lessons.slice(0, count);
  const sum = (of: readonly { parts: readonly LessonPart[] }[]) =>
    of.reduce((total, { parts }) => total + parts.reduce((t, p) => t + p.minutes, 0), 0);
  return good({
    lessons: held.map(({ parts }, i) => ({ number: i + 1, parts, minutes: sum([{ parts }]) })),
    over: sum(lessons) - sum(held),
    enough: lessons.length,
    left: chapters.flatMap((chapter) => {
      const parts = lessons.slice(count).flatMap((lesson) => lesson.parts.filter((part) => part.chapter === chapter));
      return parts.length > 0 ? [{ chapter, minutes: sum([{ parts }]) }] : [];
    }),
    unmet: chapters.flatMap((chapter) => {
      const needs = all.filter((c) => chapter.needs.includes(c.slug) && !chosen.has(c.slug));
      return needs.length > 0 ? [{ chapter, needs }] : [];
    }),
  });
};
