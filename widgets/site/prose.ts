/**
 * How easily the book reads: words that a second-language reader stumbles over, sentences that are too long, terms that
 * have one name each, and a symbol that stands in a sentence before the chapter has met it. Each fault names file, line and
 * the better word; each chapter has its counts. Nothing here is needed to build a page.
 */
import { isSymbol, relationNamed, symbolFact } from '../engine/index.ts';
import type { Diagnostic } from './diagnostics.ts';
import { OPEN_STEPS, splitComment } from './grammar.ts';

/** A run of words that a reader reads in one piece: a paragraph, a list item, a cell, a caption, a reason. */
export interface Piece {
  readonly line: number;
  readonly text: string;
  /** Out of the main line: a derivation is read by whoever asks why. */
  readonly folded: boolean;
  /** Meets symbols but says nothing: the body of a block’s line. */
  readonly code: boolean;
  /** Algebra that stands open: the line at which a derivation arrives, and the steps of a short one. */
  readonly algebra: boolean;
  /** The sections before it, by their headings. */
  readonly section: number;
}

/** The longest sentence that is let through. A value, a formula and a name in a code span count as one word each. */
export const LONGEST = 28;

/** Symbols that a reader has to know for the sentences and the open algebra of a chapter, and of one section of it. */
export const MOST_SYMBOLS = 12;
export const MOST_IN_VIEW = 8;

/** Words that are hard by idiom, age or place, and what to write. Lower case; a blank stands for any white space. */
const HARD: readonly (readonly [RegExp, string])[] = [
  [/\bn[oa]ughts?\b/i, 'zero'],
  [/\bbesides\b/i, 'also, or as well'],
  [/\bfarther\b/i, 'further'],
  [/\b(?:hence|thence|whence|thereby|whereby|therein)\b/i, 'so, or from that'],
  [/\bupon\b/i, 'on'],
  [/\b(?:lest|whilst|amid|beneath|betwixt)\b/i, 'so that … not; while; under'],
  [/\bbeforehand\b/i, 'before'],
  [/\bseldom\b/i, 'rarely'],
  [/\bhardly\b/i, 'almost not, or very little'],
  [/\bscarcely\b/i, 'almost not'],
  [/\blikewise\b/i, 'in the same way'],
  [/\b(?:askew|awry)\b/i, 'not square'],
  [/\ball but\b(?! one\b)/i, 'almost'],
  [/\bunlike hands\b/i, 'opposite hands'],
  [/\b(?:like|alike) hands?\b/i, 'the same hand'],
  [/\bthe other way about\b/i, 'the other way round'],
  [/\bin the mean\b/i, 'on average'],
  [/\bsave for\b/i, 'except'],
  [/\bnever hears? of\b/i, 'is not changed by'],
  [/\b(?:is|are|was) let down\b/i, 'runs downhill'],
  [/\bstirred\b/i, 'moved'],
  [/\bstands? off\b/i, 'is away from'],
  [/\b(?:dear|dearer|dearest)\b/i, 'expensive'],
  [/\bdoes not care\b/i, 'is not changed'],
  [/\bpays? (?:it |them )?back\b/i, 'say what happens'],
  [/\bthe belief\b/i, 'say which belief'],
  [/\bnobody’s\b/i, 'say who'],
  [/\b(?:befits?|betrays?|begets?|bids?|begs?)\b/i, 'a plainer verb'],
  [/\b(?:ought|shall)\b/i, 'must, should or will'],
  [/\bone would\b/i, 'you would'],
  [/\bbe it\b/i, 'whether it is'],
  [/\bnor\b/i, 'and … not'],
  [/\bwhat is more\b/i, 'also'],
  [/\bso be\b|\bas ever\b/i, 'as before'],
  [/\bundiminished\b/i, 'in full'],
  [/\bmarry\b|\bmarries\b|\bwedded\b/i, 'join'],
  [/\bcome(?:s)? to nothing\b/i, 'is zero'],
];

/** One term for one thing: the standard term of the trade, and the names that are not used beside it. */
const TERMS: readonly (readonly [RegExp, string])[] = [
  [/\bpitch difference\b|\bdifference of (?:the )?(?:pitches|leads)\b/i, 'net lead'],
  [/\bmotion per turn\b/i, 'net lead; local rate, at one point of the turn'],
  [/\bdrunk(?:en(?:ness)?|er)?\b/i, 'periodic error (“drunken” stands once, where it is explained)'],
  [/\bwander(?:s|ed|ing)?\b/i, 'periodic error, or varies'],
  [/\b(?:slop|slack|rattles?)\b/i, 'axial play, radial play; lost motion at the tip; clearance of a key or a fit'],
  [/\bfloats?\b/i, 'radial play of a thread, sideways play of the tip'],
  [/\beaten\b/i, 'used (usable thread length)'],
  [/\blength of thread to spend\b/i, 'usable thread length'],
  [/\b(?:top|middle) part\b/i, 'carried part; turned part'],
  [/\bfriction of the threads\b/i, 'coefficient of friction'],
  [/\bmotion wanted per step\b/i, 'wanted step'],
  [/\bangle (?:that )?a hand can set\b|\bangle of the hand\b/i, 'repeatable hand angle'],
  [/\bsteps in a turn\b/i, 'steps per turn'],
  [/\bengagement (?:that is )?kept\b/i, 'length of engagement'],
  [/\btrue lead(?: error)?\b|\bdesignated lead\b/i, 'lead error (stated, measured)'],
  [/\bengaged length\b|\bengagement length\b/i, 'length of engagement'],
  [/\blags?\b|\blagged\b/i, 'lost motion at the tip; hysteresis of readings'],
  [/\bnet (?:motion )?per turn\b/i, 'net lead'],
  [/\b(?:backlash|looseness)\b/i, 'axial play, radial play; lost motion at the tip'],
  [/\btongues?\b/i, 'key, or anti-rotation lock'],
  [/#\d+-\d+/, '10-32 UNF, without the #'],
  [/\bM\d+(?:\.\d+)?\s?x\s?\d/, 'the sign ×: M4×0.7'],
  [/\b(?:worked answer|show the answer|say it before)\b/i, 'Answer; Predict first'],
];

/** Where a hard word or a second term is right after all: the place it is explained, or what a reader may type. */
const ALLOWED: readonly (readonly [file: RegExp, text: RegExp])[] = [
  // With a periodic error it differs from point to point, and is no net lead.
  [/periodic-error\.md$|figures\/drunken-thread\.ts$/, /motion per turn/i],
  [/periodic-error\.md$/, /^The drunken thread$|\*\*drunken\*\*/],
  [/glossary\.md$/, /^\*\*Drunken thread\*\*/],
  [/words\/en\/designation\.ts$|refusals\/(?:adjuster|designation|exercises|typed-tables)\.ts$/, /#\d+-\d+|M\d+x/],
];

const VALUE = /\{\{.*?\}\}/gs;
const ALGEBRA = /\$([^$]*)\$/g;

/** What a sentence says, with a value, a formula or a name as one word. */
const spoken = (text: string): string =>
  text
    .replace(VALUE, '9')
    .replace(ALGEBRA, 'x')
    .replace(/`[^`]*`/g, 'name')
    .replace(/\[([^\]]*)\]\([^)]*\)/g, '$1')
    .replace(/\*+/g, '');

const wordsIn = (text: string): number => text.split(/\s+/).filter((w) => /[\p{L}\p{N}]/u.test(w)).length;

export const sentencesOf = (text: string): string[] =>
  spoken(text)
    .split(/(?<=[.!?…][”’)]?)\s+(?=\S)/)
    .map((s) => s.trim())
    .filter((s) => s !== '');

/** The symbols that stand in the algebra of a text. */
const symbolsIn = (text: string): string[] => [
  ...new Set([...text.matchAll(/[A-Za-z][A-Za-z0-9_]*/g)].map((m) => m[0]).filter(isSymbol)),
];
const algebraOf = (text: string): string => [...text.matchAll(ALGEBRA)].map((m) => m[1]).join(' ; ');

/** A chapter in its pieces, in the order in which it is read. */
export const piecesOf = (chapter: string): Piece[] => {
  const pieces: Piece[] = [];
  const lines = chapter.split('\n');
  let block: string | undefined;
  let section = 0;
  let steps: readonly number[] = [];
  let open: { line: number; text: string } | undefined;
  const close = (): void => {
    if (open !== undefined) pieces.push({ ...open, folded: false, code: false, algebra: false, section });
    open = undefined;
  };
  const add = (line: number, text: string, folded = false): void => {
    if (text.trim() !== '') pieces.push({ line, text: text.trim(), folded, code: false, algebra: false, section });
  };
  const meets = (line: number, text: string, folded: boolean): void => {
    const algebra = folded && (steps.length <= OPEN_STEPS + 1 || line === steps.at(-1));
    if (text.trim() !== '') pieces.push({ line, text, folded, code: true, algebra, section });
  };
  for (const [i, raw] of lines.entries()) {
    const at = i + 1;
    const fence = /^```(.*)$/.exec(raw)?.[1];
    if (fence !== undefined) {
      close();
      if (block === undefined) {
        block = fence;
        const end = lines.indexOf('```', at);
        steps = lines.flatMap((text, j) => (j >= at && j < end && text.trim() !== '' ? [j + 1] : []));
        add(at, /:\s(.*)$/.exec(fence)?.[1] ?? '', fence.startsWith('derivation'));
      } else block = undefined;
      continue;
    }
    if (block !== undefined) {
      const folded = block.startsWith('derivation');
      const says = /^(?:> |hint )(.*)$/.exec(raw)?.[1];
      const { body, comment } = splitComment(raw);
      const sentence = says === undefined && /^[A-Z]\S*\s+\S/.test(raw) && !/^[A-Z]\w* = |^[A-Z]_?\w*\s*=/.test(raw);
      const prose =
        says ?? (sentence || (open !== undefined && !/ = | # |->|^[a-z-]+(?:\(|$)/.test(raw)) ? raw : undefined);
      if (/^(?:predict|exercise)/.test(block) && prose !== undefined) {
        if (says !== undefined && !raw.startsWith('> ')) close();
        open = open === undefined ? { line: at, text: prose } : { line: open.line, text: `${open.text} ${prose}` };
        continue;
      }
      close();
      meets(at, body.replace(/^let /, ''), folded);
      for (const each of (comment ?? '').split(/(?:^|\s)#?!\s/))
        add(at, each.replace(/\s*\[[a-z0-9-]+\]$/, ''), folded);
      continue;
    }
    const line = raw.replace(/^\s*[-*]\s+/, '');
    if (raw.trim() === '' || raw.startsWith(':::') || raw.startsWith('|---')) {
      close();
      // What it says in short is read by itself, after all sections.
      if (raw.startsWith('::: summary')) section++;
    } else if (raw.startsWith('|')) {
      close();
      for (const cell of raw.split('|')) add(at, cell);
    } else if (raw.startsWith('#')) {
      close();
      section++;
      add(at, raw.replace(/^#+\s*/, ''));
    } else if (line !== raw && !/^\*[^*\s]/.test(raw) && !raw.startsWith('**')) {
      close();
      open = { line: at, text: line };
    } else
      open = open === undefined ? { line: at, text: raw } : { line: open.line, text: `${open.text} ${raw.trim()}` };
  }
  close();
  return pieces;
};

/**
 * The sentences in a table of words: what stands between its quotation marks, with each slot as one word, and what stands in the slots
 * themselves, which may be sentences again.
 */
const piecesOfTable = (source: string): Piece[] => {
  const pieces: Piece[] = [];
  let at = 0;
  const add = (from: number, text: string): void => {
    if (!/\s/.test(text.trim())) return;
    pieces.push({
      line: source.slice(0, from).split('\n').length,
      text,
      folded: false,
      code: false,
      algebra: false,
      section: 0,
    });
  };
  /** A text up to its closing mark; a slot of a template is read as code. */
  const quoted = (mark: string): void => {
    const from = at;
    let text = '';
    for (at++; at < source.length && source[at] !== mark; at++)
      if (source[at] === '\\') text += source[++at] ?? '';
      else if (mark === '`' && source.startsWith('${', at)) {
        text += '9';
        at += 2;
        code();
      } else text += source[at];
    add(from, text);
  };
  /** Code up to the bracket that closes it, or to the end. */
  const code = (): void => {
    for (let open = 0; at < source.length; at++) {
      const char = source[at] ?? '';
      const comment = /^(?:\/\/[^\n]*|\/\*[\s\S]*?\*\/)/.exec(
        source.slice(at, at + 2) === '//' || source.startsWith('/*', at) ? source.slice(at) : '',
      );
      if (comment) at += comment[0].length - 1;
      else if (char === "'" || char === '"' || char === '`') quoted(char);
      else if (char === '{') open++;
      else if (char === '}' && open-- === 0) return;
    }
  };
  code();
  return pieces;
};

const hardIn = (file: string, text: string): string[] =>
  [...HARD, ...TERMS].flatMap(([hard, better]) => {
    const found = hard.exec(text.replace(VALUE, '9').replace(/`[^`]*`|\]\([^)]*\)/g, 'name'))?.[0];
    if (found === undefined || ALLOWED.some(([where, what]) => where.test(file) && what.test(text))) return [];
    return [`“${found}”: write ${better}.`];
  });

/** A refusal has three parts, what was read, what is allowed and the remedy, so in a table each of them counts alone. */
const longIn = (text: string, table: boolean): string[] =>
  (table ? text.split(/[;:]\s/).flatMap(sentencesOf) : sentencesOf(text)).flatMap((sentence) => {
    const count = wordsIn(sentence);
    return count > LONGEST
      ? [`A sentence of ${count} words, from “${sentence.slice(0, 40)}…”: at most ${LONGEST}.`]
      : [];
  });

/** Words too common in the glossary to name a symbol. */
const COMMON = new Set(
  'thread part parts with along from that this under over between above which what their them after each other first second third plus where'.split(
    ' ',
  ),
);
const namedIn = (symbol: string, text: string): boolean => {
  if (!isSymbol(symbol)) return false;
  const lower = text.toLowerCase();
  return (
    symbolFact(symbol)
      .says.toLowerCase()
      .match(/[\p{L}’]{4,}/gu) ?? []
  ).some((word) => !COMMON.has(word) && lower.includes(word.replace(/s$/, '')));
};

/** The symbols that a line of a block brings to the page: those it names, and those of the relations it works. */
const broughtBy = (line: string): string[] => [
  ...symbolsIn(line.replace(/^slip\s/, '').replace(/[a-z0-9]+(?:-[a-z0-9]+)+/g, '')),
  ...(line.match(/[a-z0-9]+(?:-[a-z0-9]+)*/g) ?? []).flatMap((name) => {
    const relation = relationNamed(name);
    return relation ? [...relation.takes, ...Object.keys(relation.gives)] : [];
  }),
];

/** A sign that stands for two things in one chapter, where the second of them comes. */
const twiceUsed = (pieces: readonly Piece[]): { line: number; says: string }[] => {
  const first = new Map<string, string>();
  const faults: { line: number; says: string }[] = [];
  for (const { line, text, code } of pieces)
    for (const symbol of code ? broughtBy(text) : symbolsIn(algebraOf(text))) {
      if (!isSymbol(symbol)) continue;
      const { tex, says } = symbolFact(symbol);
      const other = first.get(tex) ?? symbol;
      first.set(tex, other);
      if (isSymbol(other) && other !== symbol) {
        faults.push({
          line,
          says: `${tex} is ${says} here and ${symbolFact(other).says} above: give one another sign.`,
        });
        first.set(tex, symbol);
      }
    }
  return faults;
};

/**
 * The symbols of the main line: what sentences and open algebra say, outside what is folded and the numbers of examples. One at
 * numbered places, x₁, x₂, x₃, counts once.
 */
const mainSymbols = (pieces: readonly Piece[]): string[] => [
  ...new Set(
    pieces.flatMap(({ text, folded, code, algebra }) =>
      (algebra ? symbolsIn(text) : folded || code ? [] : symbolsIn(algebraOf(text))).map((symbol) =>
        symbol.replace(/_\d$/, ''),
      ),
    ),
  ),
];
const sectionsOf = (pieces: readonly Piece[]): readonly (readonly Piece[])[] => {
  const sections: Piece[][] = [];
  for (const piece of pieces) {
    sections[piece.section] ??= [];
    sections[piece.section]?.push(piece);
  }
  return sections.filter((section) => section !== undefined);
};

/** Where a chapter, or a section, asks its reader to hold too many symbols at once. */
const crowded = (pieces: readonly Piece[]): { line: number; says: string }[] => [
  ...[mainSymbols(pieces)].flatMap((symbols) =>
    symbols.length > MOST_SYMBOLS
      ? [
          {
            line: 1,
            says: `${symbols.length} symbols in the main line, ${symbols.join(', ')}: at most ${MOST_SYMBOLS}. Divide the chapter, or say it in words.`,
          },
        ]
      : [],
  ),
  ...sectionsOf(pieces).flatMap((section) => {
    const symbols = mainSymbols(section);
    return symbols.length > MOST_IN_VIEW
      ? [
          {
            line: section[0]?.line ?? 1,
            says: `${symbols.length} symbols in one section, ${symbols.join(', ')}: at most ${MOST_IN_VIEW}. Divide it, or say it in words.`,
          },
        ]
      : [];
  }),
];

/** The sentences that are too long in any language. */
export const longSentences = (file: string, text: string): Diagnostic[] => {
  const isChapter = file.endsWith('.md');
  const pieces = isChapter ? piecesOf(text) : piecesOfTable(text);
  return pieces.flatMap(({ line, text: says, code }) =>
    code ? [] : longIn(says, !isChapter).map((long) => ({ file, line, says: long })),
  );
};

/** What is hard to read in a chapter, or in a table of words. */
export const proseFaults = (file: string, text: string): Diagnostic[] => {
  const met = new Set<string>();
  const isChapter = file.endsWith('.md');
  const pieces = isChapter ? piecesOf(text) : piecesOfTable(text);
  const twice = isChapter ? [...twiceUsed(pieces), ...crowded(pieces)].map((fault) => ({ file, ...fault })) : [];
  const hard = pieces.flatMap((piece) => {
    if (piece.code) {
      for (const symbol of symbolsIn(piece.text)) met.add(symbol);
      return [];
    }
    const symbols = isChapter ? symbolsIn(algebraOf(piece.text)) : [];
    const unmet = symbols.filter((s) => !met.has(s) && !namedIn(s, piece.text));
    for (const symbol of symbols) met.add(symbol);
    return [
      ...hardIn(file, piece.text),
      ...longIn(piece.text, !isChapter),
      ...unmet.map(
        (s) => `“${s}” is not met yet: say beside it what it is (${isSymbol(s) ? symbolFact(s).says : ''}).`,
      ),
    ].map((says) => ({ file, line: piece.line, says }));
  });
  return [...hard, ...twice];
};

export interface ProseCount {
  readonly words: number;
  readonly longest: number;
  readonly median: number;
  /** Symbols in the sentences and in the algebra that stands open. */
  readonly inMain: number;
  /** The most of them in one section. */
  readonly inView: number;
  /** Symbols anywhere: sentences, derivations, numbers and steps. */
  readonly inAll: number;
  /** What is set bold where it is explained, for the first time in the book. */
  readonly terms: readonly string[];
}

/** The counts of a chapter; `known` holds the terms of the chapters before it, and is given those of this one. */
export const countProse = (chapter: string, known: Set<string>): ProseCount => {
  const pieces = piecesOf(chapter);
  const said = pieces.filter((p) => !p.code);
  const lengths = said
    .flatMap((p) => sentencesOf(p.text))
    .map(wordsIn)
    .filter((n) => n > 0)
    .sort((a, b) => a - b);
  const distinct = (texts: readonly string[]): number => new Set(texts.flatMap(symbolsIn)).size;
  const main = said.filter((p) => !p.folded).map((p) => algebraOf(p.text));
  const terms = said
    .flatMap((p) => [...p.text.matchAll(/\*\*([^*]+)\*\*/g)].map((m) => (m[1] ?? '').toLowerCase()))
    .filter((term) => wordsIn(term) <= 4 && !known.has(term));
  for (const term of terms) known.add(term);
  return {
    words: lengths.reduce((a, b) => a + b, 0),
    longest: lengths.at(-1) ?? 0,
    median: lengths[Math.floor(lengths.length / 2)] ?? 0,
    inMain: mainSymbols(pieces).length,
    inView: Math.max(0, ...sectionsOf(pieces).map((section) => mainSymbols(section).length)),
    inAll: distinct([...main, ...pieces.filter((p) => p.code).map((p) => p.text)]),
    terms: [...new Set(terms)],
  };
};
