/** The page round a chapter: head, masthead, contents, neighbours, foot. Works from a folder, a sub-path or a file. */

import { LANGUAGE } from '#words/language.ts';
import {
  ALL_CHAPTERS,
  BACK_TO,
  CHAPTERS,
  chapterNumber,
  chapterOf,
  EDUCATIONAL_LEVEL,
  foot,
  NEIGHBOURS,
  NOTEBOOK,
  ON_TO,
  RESOURCE_TYPES,
  TO_TEXT,
} from '#words/page.ts';
import { escapeText } from '../input/escape.ts';
import type { RenderedChapter } from './chapter.ts';
import { jsonForHtml } from './html.ts';
import { pagePolicy } from './policy.mjs';

export interface Place {
  readonly slug: string;
  readonly title: string;
  readonly goal: string;
  /** Chapter number, or undefined for the front page. */
  readonly number: number | undefined;
}

export interface Assets {
  /** Script addresses, relative to the page. */
  readonly scripts: readonly string[];
  /** Addresses of the style sheets, or their text for a page with these figures: a page that holds it is painted after one answer of a server. */
  readonly style: { readonly addresses: readonly string[] } | { text(figures: readonly string[]): string };
  readonly icon: string;
  /** A classic script runs from a file as well; the dev server serves modules, and adds scripts of its own that the policy would stop. */
  readonly module: boolean;
}

const LICENCE = '<a rel="license" href="https://creativecommons.org/licenses/by/4.0/">CC BY 4.0</a>';

export const pageHtml = (pressed: RenderedChapter, place: Place, all: readonly Place[], assets: Assets): string => {
  const at = all.findIndex((p) => p.slug === place.slug);
  const chapters = all.filter((p) => p.number !== undefined);
  const [before, after] = [all[at - 1], all[at + 1]];
  const title = place.number === undefined ? NOTEBOOK : `${pressed.title} · ${NOTEBOOK}`;
  const { style } = assets;
  const text = 'text' in style ? style.text(pressed.figures) : undefined;
  const script = (src: string) =>
    assets.module ? `<script type="module" src="${src}"></script>` : `<script defer src="${src}"></script>`;
  return `<!doctype html>
<html lang="${LANGUAGE}" data-units="metric">
<head>
<meta charset="utf-8">${assets.module ? '' : `\n${pagePolicy(text === undefined ? [] : [text])}`}
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escapeText(title)}</title>
<meta name="description" content="${escapeText(pressed.goal)}">
<meta name="color-scheme" content="light dark">
<link rel="icon" href="${assets.icon}">
${'addresses' in style ? style.addresses.map((href) => `<link rel="stylesheet" href="${href}">`).join('\n') : `<style>${text}</style>`}
${assets.scripts.map(script).join('\n')}
<script type="application/ld+json">${jsonForHtml(learningResource(pressed, place))}</script>
</head>
<body class="${place.number === undefined ? 'front' : 'chapter'}">
<a class="skip" href="#text">${TO_TEXT}</a>
<header class="masthead"><a class="home" href="index.html">${NOTEBOOK}</a><div class="tools" data-tools></div></header>
<nav class="chapters" aria-label="${CHAPTERS}"><details><summary>${place.number === undefined ? ALL_CHAPTERS : escapeText(chapterOf(place.number, chapters.length, place.title))}</summary><ol>${chapters
    .map(
      (p) =>
        `<li><a href="${p.slug}.html"${p.slug === place.slug ? ' aria-current="page"' : ''}>${escapeText(p.title)}</a></li>`,
    )
    .join('')}</ol></details></nav>
<main id="text" tabindex="-1">
<article>
${place.number === undefined ? '' : `<p class="number">${chapterNumber(place.number)}</p>`}
${pressed.html}
${place.number === undefined ? contents(all) : ''}
</article>
<nav class="neighbours" aria-label="${NEIGHBOURS}">${before ? `<a rel="prev" href="${before.slug}.html"><span>${BACK_TO}</span> ${escapeText(before.title)}</a>` : '<span></span>'}${
    after ? `<a rel="next" href="${after.slug}.html"><span>${ON_TO}</span> ${escapeText(after.title)}</a>` : ''
  }</nav>
</main>
<footer><p>${foot(LICENCE)}</p></footer>
<script type="application/json" id="page-model">${jsonForHtml(pressed.model)}</script>
</body>
</html>
`;
};

/** What the page is, in the terms of schema.org, for catalogues of teaching material. */
const learningResource = (pressed: RenderedChapter, place: Place) => ({
  '@context': 'https://schema.org',
  '@type': 'LearningResource',
  name: place.number === undefined ? NOTEBOOK : pressed.title,
  ...(place.number === undefined ? {} : { position: place.number, isPartOf: { '@type': 'Course', name: NOTEBOOK } }),
  teaches: pressed.goal,
  inLanguage: LANGUAGE,
  learningResourceType: RESOURCE_TYPES,
  educationalLevel: EDUCATIONAL_LEVEL,
  isAccessibleForFree: true,
  license: 'https://creativecommons.org/licenses/by/4.0/',
});

const contents = (all: readonly Place[]): string =>
  `<ol class="contents">${all
    .filter((p) => p.number !== undefined)
    .map((p) => `<li><a href="${p.slug}.html">${escapeText(p.title)}</a><p>${escapeText(p.goal)}</p></li>`)
    .join('')}</ol>`;
