/**
 * The question bank as content packages of QTI 2.1 and 3.0 (see qti-item.ts) and as CSV. A package has a file an item, the pictures that items show, a
 * test, and imsmanifest.xml with what the package is (IEEE 1484.12.3, LOM): title, language, time, rights. The test draws one variant of each
 * exercise for each student, by a section an exercise with `selection select="1"`. Fixed instances only: no templates, whose support
 * differs from system to system.
 */

import { LANGUAGE } from '#words/language.ts';
import { BANK_TITLE, COLUMNS, LICENCE_SAYS, lettered, TEST_TITLE } from '#words/papers.ts';
import { escapeText as escapeXml } from '../input/escape.ts';
import { csvRow } from './csv-row.ts';
import { askedUnit, askText } from './exercise.ts';
import { LETTERS } from './offered.ts';
import { languageOf } from './own-language.ts';
import type { PaperLine } from './paper.ts';
import {
  identifierOf,
  imageOf,
  PLAIN_SCORING,
  type QtiVersion,
  qtiItem,
  SCHEMA,
  type Scoring,
  slipsText,
  writerOf,
  XML_HEAD,
} from './qti-item.ts';
import { standAlone } from './stand-alone.ts';
import { statedAnswer } from './stated-answer.ts';
import { stepLines } from './steps-text.ts';

export type { QtiVersion } from './qti-item.ts';

/** Minutes an exercise takes; our own estimate, as for chapters. */
const MINUTES = 4;

const LOM = 'http://ltsc.ieee.org/xsd/LOM';

const MANIFEST = {
  '2.1': {
    space:
      'xmlns="http://www.imsglobal.org/xsd/imscp_v1p1" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" xsi:schemaLocation="http://www.imsglobal.org/xsd/imscp_v1p1 http://www.imsglobal.org/xsd/qti/qtiv2p1/qtiv2p1_imscpv1p2_v1p0.xsd http://ltsc.ieee.org/xsd/LOM http://www.imsglobal.org/xsd/imsmd_loose_v1p3p2.xsd"',
    schema: 'QTIv2.1 Package',
    version: '1.0.0',
    item: 'imsqti_item_xmlv2p1',
    test: 'imsqti_test_xmlv2p1',
  },
  '3.0': {
    space:
      'xmlns="http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" xsi:schemaLocation="http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1 https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqtiv3p0_imscpv1p2_v1p0.xsd http://ltsc.ieee.org/xsd/LOM https://purl.imsglobal.org/spec/md/v1p3/schema/xsd/imsmd_loose_v1p3p2.xsd"',
    schema: 'QTI Package',
    version: '3.0.0',
    item: 'imsqti_item_xmlv3p0',
    test: 'imsqti_test_xmlv3p0',
  },
} as const;

/** What a thing is, its parts in the order of the standard. */
const lom = (title: string, minutes: number, language: string, rights = ''): string =>
  `<lom xmlns="${LOM}"><general><title><string language="${language}">${escapeXml(title)}</string></title><language>${language}</language></general>` +
  `<educational><typicalLearningTime><duration>PT${minutes}M</duration></typicalLearningTime></educational>` +
  `${rights === '' ? '' : `<rights><description><string language="${language}">${escapeXml(rights)}</string></description></rights>`}</lom>`;

/** Variants of one exercise, in the order in which they were drawn. */
const groupsOf = (lines: readonly PaperLine[]): readonly (readonly PaperLine[])[] => {
  const groups = new Map<string, PaperLine[]>();
  for (const line of lines) {
    const of = line.key.replace(/~.*$/, '');
    groups.set(of, [...(groups.get(of) ?? []), line]);
  }
  return [...groups.values()];
};

const TEST = 'test.xml';

const testOf = (lines: readonly PaperLine[], version: QtiVersion, { marks }: Scoring): string => {
  const e = writerOf(version);
  const root = version === '2.1' ? 'assessmentTest' : 'qti-assessment-test';
  const score = (identifier: string, value: string) =>
    e(
      'outcomeDeclaration',
      { identifier, cardinality: 'single', baseType: 'float' },
      e('defaultValue', {}, e('value', {}, value)),
    );
  const groups = groupsOf(lines);
  const most = groups.reduce((sum, [one]) => sum + (one ? marks(one.exercise) : 0), 0);
  const sections = groups.map((variants, i) =>
    e(
      'assessmentSection',
      { identifier: `section-${i + 1}`, title: variants[0]?.item.exercise.title ?? '', visible: 'true' },
      e('selection', { select: '1' }),
      ...variants.map(({ key }) =>
        e('assessmentItemRef', { identifier: `ref-${identifierOf(key)}`, href: `items/${identifierOf(key)}.xml` }),
      ),
    ),
  );
  return [
    `${XML_HEAD}<${root} ${SCHEMA[version]} identifier="test" title="${escapeXml(TEST_TITLE)}">`,
    score('SCORE', '0'),
    score('MAXSCORE', String(most)),
    e('testPart', { identifier: 'part', navigationMode: 'nonlinear', submissionMode: 'individual' }, ...sections),
    e(
      'outcomeProcessing',
      {},
      e('setOutcomeValue', { identifier: 'SCORE' }, e('sum', {}, e('testVariables', { variableIdentifier: 'SCORE' }))),
    ),
    `</${root}>`,
    '',
  ].join('\n');
};

const manifest = (lines: readonly PaperLine[], version: QtiVersion, bank: string): string => {
  const { space, schema, version: schemaVersion, item, test } = MANIFEST[version];
  const resources = lines.map((line) => {
    const id = identifierOf(line.key);
    const image = imageOf(line);
    return (
      `    <resource identifier="res-${id}" type="${item}" href="items/${id}.xml"><metadata>${lom(line.item.exercise.title, MINUTES, languageOf(line.item.exercise))}</metadata>` +
      `<file href="items/${id}.xml"/>${image === undefined ? '' : `<file href="${image}"/>`}</resource>`
    );
  });
  const needs = lines.map(({ key }) => `<dependency identifierref="res-${identifierOf(key)}"/>`).join('');
  return `${XML_HEAD}<manifest ${space} identifier="bank-${escapeXml(bank)}">
  <metadata><schema>${schema}</schema><schemaversion>${schemaVersion}</schemaversion>${lom(`${BANK_TITLE} ${bank}`, MINUTES * groupsOf(lines).length, LANGUAGE, LICENCE_SAYS)}</metadata>
  <organizations/>
  <resources>
    <resource identifier="res-test" type="${test}" href="${TEST}"><file href="${TEST}"/>${needs}</resource>
${resources.join('\n')}
  </resources>
</manifest>
`;
};

/** The files of a package by their path. */
export const qtiFiles = (
  lines: readonly PaperLine[],
  version: QtiVersion,
  bank: string,
  scoring: Scoring = PLAIN_SCORING,
): Readonly<Record<string, string>> =>
  Object.fromEntries([
    ['imsmanifest.xml', manifest(lines, version, bank)],
    [TEST, testOf(lines, version, scoring)],
    ...lines.flatMap((line): [string, string][] => {
      const image = imageOf(line);
      return [
        [`items/${identifierOf(line.key)}.xml`, qtiItem(line, version, scoring)],
        ...(image === undefined ? [] : [[image, standAlone(line.item.picture ?? '')] as [string, string]]),
      ];
    }),
  ]);

/** Columns: item, title, question, unit, answer, lowest and highest accepted, significant digits, hint, steps, slips. */
export const bankCsv = (lines: readonly PaperLine[]): string =>
  `${[
    csvRow(COLUMNS),
    ...lines.map(({ key, item }) => {
      const { offered } = item;
      const { value, low, high } = offered ? { value: offered.right, low: '', high: '' } : statedAnswer(item);
      return csvRow([
        key,
        item.exercise.title,
        [
          item.question,
          askText(item),
          ...(offered?.options.map(({ text }, i) => lettered(LETTERS[i] ?? '', text)) ?? []),
        ].join(' '),
        askedUnit(item),
        value,
        low,
        high,
        offered ? '' : String(item.exercise.digits),
        item.hint,
        stepLines(item).join(' | '),
        slipsText(item),
      ]);
    }),
  ].join('\r\n')}\r\n`;
