/**
 * One item as QTI, written from the standards: 1EdTech (IMS) Question and Test Interoperability 2.1 (2012) and 3.0 (2022), which has the
 * same in its qti- names. What is typed is a textEntryInteraction, float; what is chosen a choiceInteraction, what is put in order an
 * orderInteraction, what is shown an extendedTextInteraction that a person scores. A number is right from the lowest to the highest value accepted,
 * by `gte` and `lte`: not every program that reads QTI minds the tolerance of `equal`, and one that does not would take the one exact
 * number alone. A known slip, of either sign, has its own feedback; where none fits, the hint is shown. The worked steps stand in a
 * rubricBlock for the scorer.
 */

import { LANGUAGE } from '#words/language.ts';
import { HOW_TO_TYPE, lettered, OTHER_WAY } from '#words/papers.ts';
import { escapeText as escapeXml } from '../input/escape.ts';
import { answerText, askedUnit, askText, type Item } from './exercise.ts';
import { acceptedInterval } from './interval.ts';
import { LETTERS, type Offered } from './offered.ts';
import { languageOf, saidByChapter } from './own-language.ts';
import type { PaperLine } from './paper.ts';
import { withIndexes } from './plain-formula.ts';
import { statedAnswer } from './stated-answer.ts';
import { stepLines } from './steps-text.ts';

export type QtiVersion = '2.1' | '3.0';

/** What a known slip still earns, as a share of the marks, and the marks of each exercise. */
export interface Scoring {
  readonly marks: (exercise: string) => number;
  readonly forSlip: number;
}
export const PLAIN_SCORING: Scoring = { marks: () => 1, forSlip: 0 };

export const XML_HEAD = '<?xml version="1.0" encoding="UTF-8"?>\n';
const XSI = 'xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance"';

export const SCHEMA = {
  '2.1': `xmlns="http://www.imsglobal.org/xsd/imsqti_v2p1" ${XSI} xsi:schemaLocation="http://www.imsglobal.org/xsd/imsqti_v2p1 http://www.imsglobal.org/xsd/qti/qtiv2p1/imsqti_v2p1.xsd"`,
  '3.0': `xmlns="http://www.imsglobal.org/xsd/imsqtiasi_v3p0" ${XSI} xsi:schemaLocation="http://www.imsglobal.org/xsd/imsqtiasi_v3p0 https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqti_asiv3p0_v1p0.xsd"`,
} as const;

/**
 * An NCName: it begins with a letter and holds letters, digits, hyphens, points and `_`. Names of exercises hold no `_` and no point, so `_` marks the
 * second asking of one (`turn#2`) apart from an exercise that is called so (`turn-2`), and a point a variant of it (`turn~3`).
 */
export const identifierOf = (key: string): string => `item-${key.replace('#', '_').replace('~', '.')}`;

/** In 3.0 every name has the prefix qti- and hyphens for capitals, and attributes have the hyphens; HTML keeps its names. */
const HTML = new Set(['p', 'ul', 'ol', 'li', 'img', 'div', 'span']);
const hyphened = (name: string): string => name.replace(/[A-Z]/g, (c) => `-${c.toLowerCase()}`);

/** Writes elements in the names of a version. */
export const writerOf = (version: QtiVersion) => {
  const element = (
    name: string,
    attributes: Readonly<Record<string, string>>,
    ...inside: readonly string[]
  ): string => {
    const tag = version === '2.1' || HTML.has(name) ? name : `qti-${hyphened(name)}`;
    const written = Object.entries(attributes)
      .map(([k, v]) => ` ${version === '2.1' ? k : hyphened(k)}="${escapeXml(v)}"`)
      .join('');
    const content = inside.join('');
    return content === '' ? `<${tag}${written}/>` : `<${tag}${written}>${content}</${tag}>`;
  };
  return element;
};
export type Element = ReturnType<typeof writerOf>;

/** What the edition says in an item that stands in another language. */
const inEdition = ({ exercise: { lang } }: Item): Readonly<Record<string, string>> =>
  lang === undefined ? {} : { 'xml:lang': LANGUAGE };
const edition = (e: Element, item: Item, text: string): string =>
  text === '' || item.exercise.lang === undefined ? escapeXml(text) : e('span', inEdition(item), escapeXml(text));

/** What an item shows of its answer after a try. */
interface Said {
  readonly identifier: string;
  readonly says: string;
}

/** The edges of an amount as the standard’s floats have them. */
const bounds = ({ low, high, decimals }: { low: number; high: number; decimals: number }) => ({
  low: low.toFixed(decimals),
  high: high.toFixed(decimals),
});

const float = (e: Element, value: string): string => e('baseValue', { baseType: 'float' }, value);
const response = (e: Element): string => e('variable', { identifier: 'RESPONSE' });
const within = (e: Element, { low, high }: { low: string; high: string }): string =>
  e('and', {}, e('gte', {}, response(e), float(e, low)), e('lte', {}, response(e), float(e, high)));
const negated = ({ low, high }: { low: string; high: string }) => {
  const turned = (x: string) => (x.startsWith('-') ? x.slice(1) : /^0*\.?0*$/.test(x) ? x : `-${x}`);
  return { low: turned(high), high: turned(low) };
};

const setScore = (e: Element, marks: number): string =>
  e('setOutcomeValue', { identifier: 'SCORE' }, float(e, String(Math.round(marks * 1000) / 1000)));
const setFeedback = (e: Element, identifier: string): string =>
  e('setOutcomeValue', { identifier: 'FEEDBACK' }, e('baseValue', { baseType: 'identifier' }, identifier));

/** Right, the other way, each slip, and whatever else, in this order: the first that fits is said. */
interface Case {
  readonly test: string;
  readonly said: Said | undefined;
  readonly marks: number;
}

const conditions = (e: Element, cases: readonly Case[], otherwise: Said | undefined): string => {
  const act = ({ said, marks }: Omit<Case, 'test'>) =>
    (marks > 0 ? setScore(e, marks) : '') + (said ? setFeedback(e, said.identifier) : '');
  return e(
    'responseProcessing',
    {},
    e(
      'responseCondition',
      {},
      ...cases
        .map((one) => ({ ...one, act: act(one) }))
        .filter((one) => one.act !== '')
        .map(({ test, act: does }, i) => e(i === 0 ? 'responseIf' : 'responseElseIf', {}, test, does)),
      otherwise ? e('responseElse', {}, act({ said: otherwise, marks: 0 })) : '',
    ),
  );
};

const numberCases = (e: Element, item: Item, marks: number, forSlip: number) => {
  const { low, high } = statedAnswer(item);
  const right = { low, high };
  const { digits } = item.exercise;
  const slips = item.slips
    .filter(({ amount }) => amount !== 0)
    .map(({ amount, says }, i) => ({
      said: { identifier: `slip-${i + 1}`, says },
      at: bounds(acceptedInterval(amount, digits)),
    }));
  const other: Said = { identifier: 'other-way', says: OTHER_WAY };
  return {
    cases: [
      { test: within(e, right), said: undefined, marks },
      { test: within(e, negated(right)), said: other, marks: marks * forSlip },
      ...slips.map(({ said, at }) => ({
        test: e('or', {}, within(e, at), within(e, negated(at))),
        said,
        marks: marks * forSlip,
      })),
    ],
    said: [other, ...slips.map(({ said }) => said)],
  };
};

const offeredCases = (
  e: Element,
  { options, right }: Offered,
  marks: number,
  slips: ReadonlySet<string>,
  forSlip: number,
) => {
  const wrong = options.flatMap(({ says }, i) => {
    const at = LETTERS[i] ?? '';
    return right.length > 1 || right === at || says === '' ? [] : [{ identifier: `chose-${at}`, says, at }];
  });
  return {
    cases: [
      { test: e('match', {}, response(e), e('correct', { identifier: 'RESPONSE' })), said: undefined, marks },
      ...wrong.map(({ identifier, says, at }) => ({
        test: e('match', {}, response(e), e('baseValue', { baseType: 'identifier' }, at)),
        said: { identifier, says },
        marks: slips.has(says) ? marks * forSlip : 0,
      })),
    ],
    said: wrong,
  };
};

const LINES_TO_SHOW = '8';

const interactionOf = (e: Element, { item }: PaperLine, picture: string): string => {
  const { offered, exercise } = item;
  const stem = `${escapeXml(item.question)} ${edition(e, item, askText(item))}`.trim();
  if (exercise.shows)
    return `${e('p', {}, stem)}${picture}${e('extendedTextInteraction', { responseIdentifier: 'RESPONSE', expectedLines: LINES_TO_SHOW })}`;
  if (!offered)
    return `${e('p', {}, `${stem} ${edition(e, item, HOW_TO_TYPE)}`)}${picture}${e('p', {}, e('textEntryInteraction', { responseIdentifier: 'RESPONSE', expectedLength: '12' }), ` ${escapeXml(askedUnit(item))}`)}`;
  const order = offered.right.length > 1;
  return `${picture}${e(
    order ? 'orderInteraction' : 'choiceInteraction',
    { responseIdentifier: 'RESPONSE', shuffle: 'false', ...(order ? {} : { maxChoices: '1' }) },
    e('prompt', {}, stem),
    ...offered.options.map(({ text }, i) =>
      e('simpleChoice', { identifier: LETTERS[i] ?? '', ...inEdition(item) }, escapeXml(text)),
    ),
  )}`;
};

/** The picture beside the item, as a file of the package, or as a table in its text. */
export const imageOf = ({ key, item: { picture } }: PaperLine): string | undefined =>
  picture?.startsWith('<svg') ? `images/${identifierOf(key)}.svg` : undefined;

const pictureIn = (e: Element, line: PaperLine): string => {
  const { picture } = line.item;
  if (picture === undefined) return '';
  const file = imageOf(line);
  if (file === undefined) return e('div', {}, picture.replace(/ class="[^"]*"/g, ''));
  const says = /aria-label="([^"]*)"/.exec(picture)?.[1] ?? '';
  // It is escaped already where it stands in the picture.
  return `<p><img src="../${file}" alt="${says}"/></p>`;
};

export const qtiItem = (line: PaperLine, version: QtiVersion, { marks: marksOf, forSlip }: Scoring): string => {
  const e = writerOf(version);
  const { key, item } = line;
  const { offered, exercise } = item;
  const marks = marksOf(line.exercise);
  const order = offered !== undefined && offered.right.length > 1;
  const byHand = exercise.shows === true;
  const { cases, said } = byHand
    ? { cases: [], said: [] }
    : offered
      ? offeredCases(e, offered, marks, new Set(item.slips.map(({ says }) => says)), forSlip)
      : numberCases(e, item, marks, forSlip);
  const hint: Said | undefined = byHand || item.hint === '' ? undefined : { identifier: 'hint', says: item.hint };
  const feedback = [...said, ...(hint ? [hint] : [])];
  const values = offered ? [...offered.right] : [statedAnswer(item).value];
  const declared = e(
    'responseDeclaration',
    {
      identifier: 'RESPONSE',
      cardinality: order ? 'ordered' : 'single',
      baseType: byHand ? 'string' : offered ? 'identifier' : 'float',
    },
    byHand ? '' : e('correctResponse', {}, ...values.map((value) => e('value', {}, value))),
  );
  const outcome = (identifier: string, value: string) =>
    e(
      'outcomeDeclaration',
      {
        identifier,
        cardinality: 'single',
        baseType: 'float',
        ...(identifier === 'SCORE' ? { normalMaximum: String(marks), normalMinimum: '0' } : {}),
      },
      e('defaultValue', {}, e('value', {}, value)),
    );
  const body = (content: string) => (version === '3.0' ? e('contentBody', {}, content) : content);
  const steps = [...stepLines(item), answerText(item)]
    .map((text) => e('li', {}, withIndexes(escapeXml(text))))
    .join('');
  const rubric = e(
    'rubricBlock',
    { view: 'scorer tutor', ...(version === '3.0' ? { use: 'scoring' } : {}) },
    body(e('ol', {}, steps)),
  );
  const shownBack = feedback.map(({ identifier, says }) =>
    e(
      'modalFeedback',
      { outcomeIdentifier: 'FEEDBACK', identifier, showHide: 'show' },
      body(e('p', saidByChapter(item, says) ? {} : inEdition(item), escapeXml(says))),
    ),
  );
  const title = escapeXml(exercise.title);
  const root = version === '2.1' ? 'assessmentItem' : 'qti-assessment-item';
  const timed = version === '2.1' ? 'timeDependent' : 'time-dependent';
  return [
    `${XML_HEAD}<${root} ${SCHEMA[version]} identifier="${identifierOf(key)}" title="${title}" adaptive="false" ${timed}="false" xml:lang="${languageOf(exercise)}">`,
    declared,
    outcome('SCORE', '0'),
    outcome('MAXSCORE', String(marks)),
    ...(feedback.length > 0
      ? [e('outcomeDeclaration', { identifier: 'FEEDBACK', cardinality: 'single', baseType: 'identifier' })]
      : []),
    e('itemBody', {}, rubric, interactionOf(e, line, pictureIn(e, line))),
    ...(byHand ? [] : [conditions(e, cases, hint)]),
    ...shownBack,
    `</${root}>`,
    '',
  ].join('\n');
};

/** In words, for the CSV: each known wrong answer and what to say to it. */
export const slipsText = ({ offered, slips, exercise }: Item): string =>
  offered
    ? offered.options
        .flatMap(({ text, says }, i) => (says === '' ? [] : [`${lettered(LETTERS[i] ?? '', text)}: ${says}`]))
        .join(' | ')
    : slips
        .filter(({ amount }) => amount !== 0)
        .map(({ amount, says }) => {
          const { low, high } = bounds(acceptedInterval(amount, exercise.digits));
          return `${low} … ${high}: ${says}`;
        })
        .join(' | ');
