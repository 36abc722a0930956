/**
 * A chapter: Markdown in, a checked page body and the model for the browser out.
 *
 * Plain CommonMark with tables, plus: fenced blocks (blocks.ts), values in braces (inline.ts), algebra between
 * dollar signs, and boxes opened by `::: goal`, `misconception`, `caution`, `summary`, `note`, `more TITLE` for an aside that is folded, and `doors` on the front; a part of a long page is folded by `:::: part What is in it`. Raw HTML is not taken.
 */

import createMarkdownIt, { type MarkdownIt, type StateInline, type Token } from 'markdown-it';
import anchor from 'markdown-it-anchor';
import container from 'markdown-it-container';
import { BOXES, TABLE } from '#words/page.ts';
import type { Figure } from '../figures/kit/figure.ts';
import { escapeText } from '../input/escape.ts';
import type { LiveValue, PageModel, Prediction } from '../page/model.ts';
import { type Adjusters, NO_ADJUSTERS } from './adjusters.ts';
import { renderAsk } from './ask.ts';
import { asSet, type Block, blockMeant, type Declared, isBlock, readBlock } from './blocks.ts';
import { pageHref } from './chapter-href.ts';
import { derivation } from './derivation.ts';
import { createDiagnostics, type Diagnostic, type Diagnostics } from './diagnostics.ts';
import { typesetEquation } from './expression.ts';
import { firstSentence } from './first-sentence.ts';
import { type Asked, askedBy } from './giving-away.ts';
import { renderInline } from './inline.ts';
import { minutesFor } from './minutes.ts';
import { didYouMean } from './near.ts';
import { CITES, createNumbering, type Numbering, numberOf } from './numbering.ts';
import type { Inline } from './passage.ts';
import { renderExample, renderFigure, renderPrediction, type WorkedBefore } from './render.ts';
import { classworkPlace, PAPERS_PLACE, REVIEW_PLACE, renderExercise } from './render-exercise.ts';

/** A link as the author wrote it; one without words cites by number. */
export interface Link {
  readonly href: string;
  readonly line: number;
  readonly cites: boolean;
}

export interface RenderedChapter {
  readonly title: string;
  /** The goal box as plain text, for contents and metadata. */
  readonly goal: string;
  readonly html: string;
  readonly model: PageModel;
  /** The figures that stand on the page, each once. */
  readonly figures: readonly string[];
  /** The relations that its examples and figures ask. */
  readonly relations: readonly string[];
  readonly anchors: readonly string[];
  /** The sections in order, by their anchors. */
  readonly sections: readonly { readonly id: string; readonly title: string }[];
  /** What figures, examples and equations are cited as, by their anchors. */
  readonly labels: ReadonlyMap<string, string>;
  /** How long it takes to work through, estimated. */
  readonly minutes: number;
  readonly links: readonly Link[];
  readonly mistakes: readonly Diagnostic[];
  /** The map of the chapters, on the page that has it. */
  readonly routes: readonly Route[];
  /** Whether the page sets papers or mixes exercises of the whole book. */
  readonly needsBank: boolean;
  /** Whether anything on the page is gathered from the whole book, beyond what chapters are called. */
  readonly needsBook: boolean;
}

import { IDEAS_CLASS_PLACE, renderIdeas } from './ideas-block.ts';
import { renderMoved } from './moved.ts';
import { linksOfRoutes, ROUTES_PLACE, type Route } from './routes.ts';
import { SYMBOLS_PLACE } from './symbols-met.ts';

/** A number followed by a length, angle or force unit, standing bare in prose. */
const BARE_FIGURE =
  /(?:\d[\d.,]*|\d+\/\d+)[ \u00a0]?(?:µm|μm|mm|thou\b|tenths?\b|millionths?\b|in\b|inch(?:es)?\b|°|%|N\b|N·m\b)/;

/** Blocks that are gathered from all chapters; routes need no more of them than their outlines. */
const OF_THE_BOOK: readonly Block['kind'][] = ['papers', 'review', 'symbols'];

/** One chapter at work. */
interface Work {
  readonly number: number | undefined;
  readonly blocks: Map<Token, Block>;
  readonly declared: Declared;
  readonly live: LiveValue[];
  readonly predictions: Prediction[];
  readonly numbering: Numbering;
  readonly workedBefore: WorkedBefore;
  /** Sets whose numbers stand on the page already. */
  readonly shown: Set<string>;
  /** The prediction that no figure has followed yet. */
  asked: Asked | undefined;
  /** Links inside blocks, which the text of the chapter does not show. */
  readonly links: Link[];
  readonly book: Diagnostics;
  /** Lines before the text being parsed, where it is the caption or question of a block. */
  base: number;
}

/** Title, goal and minutes alone, as other pages name a chapter, for a small share of what rendering it takes. */
export const outlineOf = (text: string): Pick<RenderedChapter, 'title' | 'goal' | 'minutes'> => {
  const tokens = markdown(newWork('', NO_ADJUSTERS)).parse(text, {});
  return { title: headingText(tokens, 'h1') ?? '', goal: boxText(tokens, 'goal'), minutes: minutesFor(tokens) };
};

export const renderChapter = (
  file: string,
  text: string,
  figures: ReadonlyMap<string, Figure>,
  adjusters: Adjusters = NO_ADJUSTERS,
  number = numberOf(file),
): RenderedChapter => {
  const work = newWork(file, adjusters, number);
  const { book } = work;
  const md = markdown(work);
  const tokens = md.parse(text, {});
  readBlocks(tokens, work, figures);
  const swallows = checkClosed(tokens, text.split('\n'), book);
  const open = book.mistakes.filter(({ line, says }) => line === swallows && UNCLOSED.test(says));
  checkProse(tokens, book);
  // Before they are turned into links between pages, so that a mistake quotes what the author wrote.
  const links = linksIn(tokens);
  const html = md.renderer.render(tokens, md.options, {});
  const blocks = [...work.blocks.values()];
  const title = headingText(tokens, 'h1');
  if (title === undefined) book.note(1, 'The chapter has no title; begin it with a line “# Title”.');
  return {
    title: title ?? file,
    goal: boxText(tokens, 'goal'),
    html,
    model: {
      sets: [...work.declared.sets.keys()].map((id) => asSet(id, work.declared)),
      examples: [...work.declared.examples.values()].map(({ id, set, steps }) => ({ id, set, steps })),
      live: work.live,
      predictions: work.predictions,
      exercises: blocks.flatMap((b) => (b.kind === 'exercise' ? [b.exercise] : [])),
    },
    figures: [...new Set(blocks.flatMap((b) => (b.kind === 'figure' ? [b.figure.name] : [])))],
    relations: [
      ...new Set(
        blocks.flatMap((b) =>
          b.kind === 'figure' ? b.relations : b.kind === 'example' ? b.steps.map(({ relation }) => relation) : [],
        ),
      ),
    ],
    anchors: [
      ...headings(tokens).map(({ id }) => id),
      ...work.numbering.labels.keys(),
      ...blocks.flatMap((b) => (b.kind === 'exercise' ? [`exercise-${b.exercise.id}`] : [])),
    ],
    sections: headings(tokens).filter(({ tag }) => tag === 'h2'),
    labels: work.numbering.labels,
    minutes: minutesFor(tokens),
    links: [...links, ...work.links, ...blocks.flatMap((b) => (b.kind === 'routes' ? linksOfRoutes(b.routes) : []))],
    mistakes:
      swallows === undefined ? book.mistakes : [...book.mistakes.filter(({ line }) => line < swallows), ...open],
    needsBank: blocks.some((b) => b.kind === 'papers' || b.kind === 'review'),
    routes: blocks.flatMap((b) => (b.kind === 'routes' ? b.routes : [])),
    needsBook: blocks.some((b) => OF_THE_BOOK.includes(b.kind)),
  };
};

const newWork = (file: string, adjusters: Adjusters, number?: number): Work => ({
  number,
  blocks: new Map(),
  declared: { sets: new Map(), examples: new Map(), adjusters, measured: new Set(), spoilt: new Set() },
  live: [],
  predictions: [],
  numbering: createNumbering(number),
  workedBefore: new Map(),
  shown: new Set(),
  asked: undefined,
  links: [],
  book: createDiagnostics(file),
  base: 0,
});

/**
 * Boxes that are folded to the line that stands behind their name, and what is said where it is missing: a part of a long page under its
 * heading, and a reference that the main line does not need. Paper has them open.
 */
const FOLDS = {
  part: 'This part does not say what is in it; write “:::: part What is in it”.',
  more: 'Say behind “::: more” what is folded: “::: more What each row says”.',
} as const;
const isFold = (name: string): name is keyof typeof FOLDS => Object.hasOwn(FOLDS, name);
const foldSays = (token: Token | undefined, name: keyof typeof FOLDS): string =>
  (token?.info ?? '').trim().slice(name.length).trim();

/** Letters and numbers of a heading; signs between them become one stroke. */
const anchorOf = (heading: string): string =>
  heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '');

const markdown = (work: Work): MarkdownIt => {
  const md = createMarkdownIt({ html: false, typographer: true, quotes: '“”‘’' });
  md.use(anchor, { tabIndex: false, slugify: anchorOf });
  for (const [name, heading] of Object.entries(BOXES))
    md.use(container, name, {
      render: (tokens: Token[], i: number) =>
        tokens[i]?.nesting === 1
          ? `<aside class="box ${name}">${heading === '' ? '' : `<p class="box-name">${heading}</p>`}\n`
          : '</aside>\n',
    });
  for (const name of Object.keys(FOLDS).filter(isFold))
    md.use(container, name, {
      render: (tokens: Token[], i: number) =>
        tokens[i]?.nesting === 1
          ? `<details class="${name}"><summary>${escapeText(foldSays(tokens[i], name))}</summary>\n`
          : '</details>\n',
    });
  md.inline.ruler.before('escape', 'braces', delimited('{{', '}}', 'value'));
  md.inline.ruler.before('escape', 'dollars', delimited('$', '$', 'algebra'));
  // A value inside a paragraph knows how many line breaks stand before it; here it learns its line in the file.
  md.core.ruler.after('inline', 'lines', (state) => {
    let row = 0;
    for (const [i, token] of state.tokens.entries()) {
      // The empty corner of a table heads nothing.
      const [inside, close] = [state.tokens[i + 1], state.tokens[i + 2]];
      if (token.type === 'th_open' && inside?.content === '' && close) token.tag = close.tag = 'td';
      // A cell of a table does not know its line; its row does.
      if (token.map) row = token.map[0];
      else if (token.type === 'inline') token.map = [row, row + 1];
      for (const child of token.children ?? [])
        if (child.type === 'value' || child.type === 'algebra')
          child.meta = { line: lineOf(child) + (token.map?.[0] ?? 0) + 1 + work.base };
    }
  });
  const code = md.renderer.rules.fence;
  md.renderer.rules.fence = (tokens, i, options, env, self) => {
    const token = tokens[i];
    const block = token && work.blocks.get(token);
    if (!block) return token && isBlock(token.info) ? '' : (code?.(tokens, i, options, env, self) ?? '');
    const inline = (text: string, line: number) => {
      work.base = line - 1;
      const tokens = md.parseInline(text, {});
      checkProse(tokens, work.book, work.base);
      work.links.push(...linksIn(tokens).map((link) => ({ ...link, line: link.line + work.base })));
      const html = md.renderer.render(tokens, md.options, {});
      work.base = 0;
      return html;
    };
    return renderBlock(block, work, (token.map?.[0] ?? 0) + 1, inline);
  };
  md.renderer.rules.value = (tokens, i) => {
    const token = tokens[i];
    return token ? renderInline(token.content, lineOf(token), work.declared, work.live, work.book) : '';
  };
  md.renderer.rules.algebra = (tokens, i) => {
    const token = tokens[i];
    const content = token?.content ?? '';
    try {
      return typesetEquation(content);
    } catch (error) {
      work.book.note(
        token ? lineOf(token) : 1,
        `“${content}” is not algebra that can be set: ${(error as Error).message}.`,
      );
      return '';
    }
  };
  md.renderer.rules.link_open = (tokens, i, options, _env, self) => {
    tokens[i]?.attrSet('href', pageHref(String(tokens[i]?.attrGet('href') ?? '')));
    // A link without words of its own is a citation, and takes the number of what it leads to.
    if (tokens[i + 1]?.type === 'link_close') tokens[i]?.attrSet('class', CITES);
    return self.renderToken(tokens, i, options);
  };
  md.renderer.rules.table_open = () =>
    `<div class="table-scroll" tabindex="0" role="group" aria-label="${TABLE}"><table>\n`;
  md.renderer.rules.table_close = () => '</table></div>\n';
  return md;
};

/** The line a value token carries: within its paragraph at first, in the file once the block is known. */
const lineOf = (token: Token): number => Number((token.meta as { line?: number } | null)?.line ?? 0);

/** An inline rule for text between two marks on one paragraph; what stands between is not Markdown. */
const delimited =
  (open: string, close: string, type: string) =>
  (state: StateInline, silent: boolean): boolean => {
    if (!state.src.startsWith(open, state.pos)) return false;
    const end = state.src.indexOf(close, state.pos + open.length);
    if (end < 0) return false;
    if (!silent) {
      const token = state.push(type, '', 0);
      token.content = state.src.slice(state.pos + open.length, end);
      token.meta = { line: state.src.slice(0, state.pos).split('\n').length - 1 };
    }
    state.pos = end + close.length;
    return true;
  };

/** What a picture shows is said under it; how it is read and worked is folded. Both are set, each from its own sentences. */
const captionOf = (text: string, line: number, inline: Inline): { says: string; more: string } => {
  const { says, more } = firstSentence(text);
  return { says: inline(says, line), more: more === '' ? '' : inline(more, line) };
};

const renderBlock = (block: Block, work: Work, opening: number, inline: Inline): string => {
  switch (block.kind) {
    case 'derivation':
      return derivation(block.body, block.line, block.title, work.book, inline, work.numbering.equation);
    case 'example': {
      const above = work.shown.has(block.set);
      work.shown.add(block.set);
      return renderExample(block, work.declared, inline, work.numbering.example(block.id), work.workedBefore, above);
    }
    case 'figure': {
      const { asked } = work;
      work.asked = undefined;
      work.shown.add(block.set);
      return renderFigure(
        block,
        work.declared,
        captionOf(block.caption, opening, inline),
        work.numbering.figure(block.figure.name),
        asked,
      );
    }
    case 'exercise':
      return renderExercise(block, inline, block === [...work.blocks.values()].find((b) => b.kind === 'exercise'));
    case 'ask':
      return renderAsk(block.ask, inline);
    case 'moved':
      return renderMoved(block.moved, inline);
    case 'routes':
      return ROUTES_PLACE;
    case 'ideas':
      return renderIdeas(block);
    case 'ideas-class':
      return IDEAS_CLASS_PLACE;
    case 'symbols':
      return SYMBOLS_PLACE;
    case 'papers':
      return PAPERS_PLACE;
    case 'review':
      return REVIEW_PLACE;
    case 'classwork':
      return classworkPlace(block.part);
    case 'predict':
      work.predictions.push({
        ...(block.on && { on: block.on }),
        ...(block.beside && { beside: block.beside }),
        ...(block.curve && { curve: block.curve }),
        ...(block.turn && { turn: block.turn }),
        output: block.output,
        answer: block.answer,
        digits: block.digits,
        slips: block.slips,
      });
      work.asked = askedBy(block, work.predictions.length - 1);
      return renderPrediction(
        block,
        work.predictions.length - 1,
        inline(block.question.text, block.question.line),
        inline(block.reveal.text, block.reveal.line),
      );
  }
};

const readBlocks = (tokens: readonly Token[], work: Work, figures: ReadonlyMap<string, Figure>): void => {
  for (const token of tokens) {
    if (token.type !== 'fence') continue;
    const line = (token.map?.[0] ?? 0) + 2;
    const meant = blockMeant(token.info);
    if (meant !== undefined) work.book.note(line - 1, `“${token.info.trim()}” is no block; did you mean “${meant}”?`);
    if (!isBlock(token.info)) continue;
    const block = readBlock(token.info, token.content, line, work.declared, figures, work.book);
    if (block) work.blocks.set(token, block);
  }
};

/**
 * A block or box that is never closed swallows the rest of the chapter, so it is said where it opens. Gives the line of the first block that
 * does so: whatever else is said from there on is said of lines that it has swallowed, or of what they held.
 */
const checkClosed = (tokens: readonly Token[], lines: readonly string[], book: Diagnostics): number | undefined => {
  let opened: number | undefined;
  const swallowed = (line: number, says: string) => {
    opened ??= line;
    book.note(line, says);
  };
  /** The boxes that are open where the reading has come to. */
  const open: Token[] = [];
  for (const token of tokens) {
    if (/^container_.*_close$/.test(token.type)) open.pop();
    if (/^container_.*_open$/.test(token.type)) {
      // Only a box with more colons can hold another: the first ::: inside closes it, whichever box that was meant for.
      const around = open.at(-1);
      if (around && around.markup.length <= token.markup.length)
        book.note(
          (around.map?.[0] ?? 0) + 1,
          `This box is still open where another opens in line ${(token.map?.[0] ?? 0) + 1}; end it before that with a line :::.`,
        );
      open.push(token);
      const [, name = ''] = /^container_(.*)_open$/.exec(token.type) ?? [];
      if (isFold(name) && foldSays(token, name) === '') book.note((token.map?.[0] ?? 0) + 1, FOLDS[name]);
    }
    const [from, to] = token.map ?? [0, 0];
    const closed = (line: number, mark: string): boolean => (lines[line] ?? '').replace(/[>\s]/g, '').startsWith(mark);
    if (token.type === 'fence' && !(to - 1 > from && closed(to - 1, token.markup)))
      swallowed(from + 1, `This block is never closed; end it with a line ${token.markup}.`);
    // Another block opens within this one, so it runs on to the end of that.
    const within =
      token.type === 'fence' && token.markup === '```'
        ? token.content.split('\n').findIndex((line) => /^```\w/.test(line))
        : -1;
    if (within >= 0)
      swallowed(
        from + 1,
        `This block is still open where another opens in line ${from + within + 2}; end it before that with a line ${token.markup}.`,
      );
    if (/^container_.*_open$/.test(token.type) && !closed(to, ':::'))
      book.note(from + 1, 'This box is never closed; end it with a line :::.');
  }
  return opened;
};

const UNCLOSED = /^This block is (?:never closed|still open)/;

const BOX_NAMES = [...Object.keys(BOXES), ...Object.keys(FOLDS)];

/** Finds figures typed by hand, and marks that were meant for the press and would be printed as they stand. */
const checkProse = (tokens: readonly Token[], book: Diagnostics, base = 0): void => {
  /** A box that opened under no known word: its ::: is no mistake of its own. */
  let misspelt = false;
  for (const token of tokens)
    for (const { child, line } of placed(token)) {
      const note = (says: string) => book.note(line + base, says);
      if (child.type === 'image')
        note(
          'Pictures from files are not taken; a figure is drawn by the notebook: write a block “figure NAME SET: caption”.',
        );
      if (child.type !== 'text') continue;
      const loose = /\{\{|\}\}/.exec(child.content);
      if (loose) note(`“${loose[0]}” has no partner in this paragraph; a value stands between {{ and }}.`);
      const [tag] = /<\/?[a-z][a-z0-9]*(?:\s[^<>]*)?\/?>/i.exec(child.content) ?? [];
      if (tag)
        note(
          `“${tag}” would be printed as it stands, since HTML is not taken; write Markdown, or \`${tag}\` for the characters.`,
        );
      const bare = BARE_FIGURE.exec(child.content);
      // A reason that states a number is told as one already.
      if (bare && !loose && !book.mistakes.some((known) => known.line === line + base))
        note(
          `“${bare[0]}” is typed by hand; write {{ ${bare[0]} }} for a given quantity, {{ example.symbol = value }} for a result, or {{! ${bare[0]} }} for a name.`,
        );
      const box = /^:::+\s*(\S*)/.exec(child.content);
      if (box?.[1])
        note(
          `“::: ${box[1]}” opens no box${didYouMean(box[1], BOX_NAMES, `; the boxes are ${BOX_NAMES.join(', ')}, and each closes with :::.`)}`,
        );
      else if (box && !misspelt) note('This line ::: closes no box; take it away, or open a box above it.');
      if (box) misspelt = box[1] !== '';
    }
};

/** The pieces of a paragraph with the line each stands on. */
const placed = (token: Token): { child: Token; line: number }[] => {
  let line = (token.map?.[0] ?? 0) + 1;
  return (token.children ?? []).map((child) => {
    if (child.type === 'softbreak' || child.type === 'hardbreak') line++;
    return { child, line };
  });
};

const headings = (tokens: readonly Token[]): { tag: string; id: string; title: string }[] =>
  tokens.flatMap((token, i) =>
    token.type === 'heading_open'
      ? [{ tag: token.tag, id: String(token.attrGet('id')), title: tokens[i + 1]?.content ?? '' }]
      : [],
  );

const headingText = (tokens: readonly Token[], tag: string): string | undefined => {
  const at = tokens.findIndex((t) => t.type === 'heading_open' && t.tag === tag);
  return at < 0 ? undefined : tokens[at + 1]?.content;
};

/** The text of the first box of this name, marks removed. */
const boxText = (tokens: readonly Token[], name: string): string => {
  const from = tokens.findIndex((t) => t.type === `container_${name}_open`);
  if (from < 0) return '';
  const to = tokens.findIndex((t) => t.type === `container_${name}_close`);
  return tokens
    .slice(from, to)
    .flatMap((t) => t.children ?? [])
    .map((t) =>
      t.type === 'softbreak'
        ? ' '
        : t.type === 'value'
          ? t.content.replace(/^!?\s*(now\s+)?/, '').trim()
          : t.type === 'text' || t.type === 'code_inline'
            ? t.content
            : '',
    )
    .join('')
    .trim();
};

const linksIn = (tokens: readonly Token[]): Link[] =>
  tokens.flatMap((token) => {
    const pieces = placed(token);
    return pieces.flatMap(({ child, line }, i) =>
      child.type === 'link_open'
        ? [{ href: String(child.attrGet('href') ?? ''), line, cites: pieces[i + 1]?.child.type === 'link_close' }]
        : [],
    );
  });
