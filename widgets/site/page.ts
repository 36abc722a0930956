/** The page round a chapter: head, masthead, contents, neighbours, foot. Works from a folder, a sub-path or a file. */

import { LANGUAGE } from '#words/language.ts';
import {
  ALL_CHAPTERS,
  BACK_TO,
  chapterNumber,
  chapterOf,
  chapterOfAll,
  EDUCATIONAL_LEVEL,
  foot,
  NEIGHBOURS,
  NOT_TRANSLATED,
  NOTEBOOK,
  ON_TO,
  RESOURCE_TYPES,
  SECTIONS,
  TO_TEXT,
  takesMinutes,
  WAY,
} from '#words/page.ts';
import { escapeText } from '../input/escape.ts';
import type { RenderedChapter } from './chapter.ts';
import { langOf } from './foreign.ts';
import { jsonForHtml } from './html.ts';
import { pagePolicy } from './policy.mjs';

export interface Place {
  readonly slug: string;
  readonly title: string;
  readonly goal: string;
  /** A help is a page beside the chapters: symptoms, glossary. */
  readonly kind: 'front' | 'chapter' | 'help';
  /** Chapter number; undefined for a page that is no chapter. */
  readonly number: number | undefined;
  /** Whether its text stands in the language in which the notebook is written, which is not that of the edition. */
  readonly foreign?: boolean;
}

export interface Assets {
  /** Script addresses, relative to the page. */
  readonly scripts: readonly string[];
  /** Addresses of the style sheets, or their text for a page with these figures: a page that holds it is painted after one answer of a server. */
  readonly style: { readonly addresses: readonly string[] } | { text(figures: readonly string[]): string };
  readonly icon: string;
  /** The script of the index of the search, where there is one. */
  readonly search?: string;
  /** The script of what the page for a class needs. */
  readonly classData?: string;
  /** A classic script runs from a file as well; the dev server serves modules, and adds scripts of its own that the policy would stop. */
  readonly module: boolean;
  /** The same notebook in other languages: each by its own name, and the folder of its pages seen from this page. */
  readonly editions?: readonly { readonly language: string; readonly name: string; readonly folder: string }[];
}

/** Notebook and page at the head of every sheet of paper, where the engine has boxes in the margin. */
const running = ({ kind, number, title }: Place): string => {
  const box = (where: string, says: string) => {
    const escaped = says.replace(/[^\p{L}\p{N} ,.()-]/gu, (sign) => `\\${sign.codePointAt(0)?.toString(16)} `);
    return `@${where}{content:"${escaped}";font:8.5pt Label,sans-serif}`;
  };
  const page = kind === 'front' ? '' : box('top-right', `${number === undefined ? '' : `${number}  `}${title}`);
  return `@page{${box('top-left', NOTEBOOK)}${page}}`;
};

const titleOf = (p: Place): string =>
  p.foreign ? `<span${langOf(p)}>${escapeText(p.title)}</span>` : escapeText(p.title);

const LICENCE = '<a rel="license" href="https://creativecommons.org/licenses/by/4.0/">CC BY 4.0</a>';

export const pageHtml = (pressed: RenderedChapter, place: Place, all: readonly Place[], assets: Assets): string => {
  // Helps stand beside the book, not in its order.
  const order = all.filter((p) => p.kind !== 'help');
  const at = order.findIndex((p) => p.slug === place.slug);
  const [before, after] = at < 0 ? [order[0], undefined] : [order[at - 1], order[at + 1]];
  const title = place.kind === 'front' ? NOTEBOOK : `${pressed.title} · ${NOTEBOOK}`;
  const { style } = assets;
  // Where papers are set, their styles count among those of figures.
  const styled = [...pressed.figures, ...(pressed.needsBank ? ['papers'] : [])];
  const text = 'text' in style ? `${style.text(styled)}${running(place)}` : undefined;
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
<body class="${place.kind}" data-page="${place.slug}">
<a class="skip" href="#text">${TO_TEXT}</a>
<header class="masthead"><a class="home" href="index.html">${NOTEBOOK}</a>${editionLinks(assets, place)}<div class="tools" data-tools${assets.search === undefined ? '' : ` data-search="${assets.search}"`}></div></header>
${way(pressed, place, all)}
<main id="text" tabindex="-1">
<article${langOf(place)}>
${place.foreign ? `<p class="untranslated" lang="${LANGUAGE}">${NOT_TRANSLATED}</p>` : ''}${place.number === undefined ? '' : `<p class="number">${chapterNumber(place.number)} · ${takesMinutes(pressed.minutes)}</p>`}
${pressed.html}
${place.kind === 'front' && pressed.routes.length === 0 ? contents(all) : ''}
</article>
<nav class="neighbours" aria-label="${NEIGHBOURS}">${before ? `<a rel="prev" href="${before.slug}.html"><span>${BACK_TO}</span> ${titleOf(before)}</a>` : '<span></span>'}${
    after ? `<a rel="next" href="${after.slug}.html"><span>${ON_TO}</span> ${titleOf(after)}</a>` : ''
  }</nav>
</main>
<footer><p>${foot(LICENCE)}</p></footer>
<script type="application/json" id="page-model">${jsonForHtml(pressed.model)}</script>
</body>
</html>
`;
};

/** To the same page in other languages. */
const editionLinks = ({ editions = [] }: Assets, { slug }: Place): string =>
  editions
    .map(
      ({ language, name, folder }) =>
        `<a class="edition" rel="alternate" lang="${language}" hreflang="${language}" href="${folder}${slug}.html">${name}</a>`,
    )
    .join('');

/**
 * The way: where the reader is, the sections of the page, all chapters and the helps. It stands beside the text where there is room,
 * and is folded above it where there is none.
 */
const way = (pressed: RenderedChapter, place: Place, all: readonly Place[]): string => {
  const chapters = all.filter((p) => p.kind === 'chapter');
  const link = (p: Place) =>
    `<li data-chapter="${p.slug}"><a href="${p.slug}.html"${langOf(p)}${p.slug === place.slug ? ' aria-current="page"' : ''}>${escapeText(p.title)}</a></li>`;
  const list = `<ol>${chapters.map(link).join('')}</ol>`;
  const helps = all.filter((p) => p.kind === 'help');
  const helping = helps.length > 0 ? `<ul class="helps">${helps.map(link).join('')}</ul>` : '';
  const nav = (inside: string) => `<nav class="chapters" aria-label="${WAY}">${inside}</nav>`;
  if (place.kind === 'front') return nav(`<details><summary>${ALL_CHAPTERS}</summary>${list}${helping}</details>`);
  const here =
    place.number === undefined
      ? titleOf(place)
      : escapeText(chapterOf(place.number, chapters.length, '\u0000')).replace('\u0000', titleOf(place));
  const sections = pressed.sections
    .map(({ id, title }) => `<li data-section="${id}"><a href="#${id}"${langOf(place)}>${escapeText(title)}</a></li>`)
    .join('');
  return nav(
    `<details class="way"><summary>${here}</summary>` +
      `<p class="here">${place.number === undefined ? '' : `<span>${chapterOfAll(place.number, chapters.length)}</span> `}<a href="#text"${langOf(place)}>${escapeText(place.title)}</a></p>` +
      (sections === '' ? '' : `<ol class="sections" aria-label="${SECTIONS}">${sections}</ol>`) +
      `<details class="all-chapters"><summary>${ALL_CHAPTERS}</summary>${list}</details>${helping}</details>`,
  );
};

/** What the page is, in the terms of schema.org, for catalogues of teaching material. */
const learningResource = (pressed: RenderedChapter, place: Place) => ({
  '@context': 'https://schema.org',
  '@type': 'LearningResource',
  name: place.kind === 'front' ? NOTEBOOK : pressed.title,
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
    .map((p) => `<li${langOf(p)}><a href="${p.slug}.html">${escapeText(p.title)}</a><p>${escapeText(p.goal)}</p></li>`)
    .join('')}</ol>`;
