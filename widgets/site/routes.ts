/**
 * The map of the chapters, as a block of the front page: a line of words begins a route, and the lines under it name its chapters,
 * each with those that it needs. How long a chapter takes is estimated from it.
 *
 *   Pick a pair today: from the motion you want to two threads that fit.
 *   01-one-screw.md
 *   04-two-screws.md needs 01-one-screw.md
 */
import { needsChapters, takesMinutes } from '#words/page.ts';
import { escapeText } from '../input/escape.ts';
import { pageHref } from './chapter-href.ts';
import type { Diagnostics } from './diagnostics.ts';
import { langOf } from './foreign.ts';

interface Stop {
  readonly href: string;
  readonly needs: readonly string[];
  readonly line: number;
}
export interface Route {
  readonly title: string;
  readonly says: string;
  readonly stops: readonly Stop[];
}

const CHAPTER = /^(\S+\.md)(?:\s+needs\s+(.+))?$/;

export const readRoutes = (body: string, firstLine: number, book: Diagnostics): Route[] => {
  const routes: { title: string; says: string; stops: Stop[] }[] = [];
  for (const [i, raw] of body.split('\n').entries()) {
    const text = raw.trim();
    if (text === '') continue;
    const chapter = CHAPTER.exec(text);
    if (!chapter) {
      const [, title = text, says = ''] = /^([^:]*):\s*(.*)$/.exec(text) ?? [];
      routes.push({ title, says, stops: [] });
      continue;
    }
    const route = routes.at(-1);
    if (!route) {
      book.note(firstLine + i, 'This chapter stands on no route; begin one above it with a line of words.');
      continue;
    }
    const needs = chapter[2]?.split(/[,\s]+/).filter((name) => name !== '') ?? [];
    route.stops.push({ href: chapter[1] ?? '', needs, line: firstLine + i });
  }
  return routes;
};

/** What a map leads to, so that a dead link in it is found like any other. */
export const linksOfRoutes = (routes: readonly Route[]) =>
  routes.flatMap(({ stops }) =>
    stops.flatMap(({ href, needs, line }) => [href, ...needs].map((to) => ({ href: to, line, cites: false }))),
  );

export const ROUTES_PLACE = '<div data-routes></div>';

/** Puts the map in its place, which takes the chapters it names. */
export const withRoutes = (
  html: string,
  routes: readonly Route[],
  places: readonly {
    readonly slug: string;
    readonly title: string;
    readonly number: number | undefined;
    readonly foreign?: boolean;
  }[],
  rendered: ReadonlyMap<string, { readonly minutes: number }>,
): string => {
  if (!html.includes(ROUTES_PLACE)) return html;
  const placeOf = (href: string) => {
    const slug = pageHref(href).replace(/\.html$/, '');
    return places.find((place) => place.slug === slug);
  };
  const stop = ({ href, needs }: Stop): string => {
    const place = placeOf(href);
    if (!place) return '';
    const numbers = needs.flatMap((need) => placeOf(need)?.number ?? []);
    return (
      `<li data-chapter="${place.slug}"${place.number === undefined ? '' : ` value="${place.number}"`}><a href="${place.slug}.html"${langOf(place)}>${escapeText(place.title)}</a>` +
      `<span class="takes">${takesMinutes(rendered.get(place.slug)?.minutes ?? 0)}${numbers.length > 0 ? `, ${needsChapters(numbers)}` : ''}</span></li>`
    );
  };
  const map = routes
    .map(
      ({ title, says, stops }) =>
        `<section class="route"><h2>${escapeText(title)}</h2><p>${escapeText(says)}</p><ol>${stops.map(stop).join('')}</ol></section>`,
    )
    .join('');
  return html.replace(ROUTES_PLACE, () => `<div class="routes contents" data-routes>${map}</div>`);
};
