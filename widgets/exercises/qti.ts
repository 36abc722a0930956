/**
 * Items as QTI, written from the standards: 1EdTech (IMS) Question and Test Interoperability 2.1 (2012), assessmentItem with
 * textEntryInteraction, float; and QTI 3.0 (2022), the same in its qti- names. Content packages carry one file an item and
 * imsmanifest.xml. An answer is right from the lowest to the highest value accepted, by `gte` and `lte`: not every program that
 * reads QTI minds the tolerance of `equal`, and one that does not would take the one exact number alone.
 * What is chosen is a choiceInteraction, what is put in order an orderInteraction; both are right where the response matches. Items with a picture are
 * no part of these files: packages would have to carry it, and not every system shows one.
 * Fixed instances only: no templates, whose support differs from system to system.
 */

import { LANGUAGE } from '#words/language.ts';
import { COLUMNS, HOW_TO_TYPE, lettered } from '#words/papers.ts';
import { escapeText as escapeXml } from '../input/escape.ts';
import { csvRow } from './csv-row.ts';
import { askedUnit, askText } from './exercise.ts';
import { LETTERS, type Offered } from './offered.ts';
import type { PaperLine } from './paper.ts';
import { statedAnswer } from './stated-answer.ts';
import { stepLines } from './steps-text.ts';

export type QtiVersion = '2.1' | '3.0';

const HEAD = '<?xml version="1.0" encoding="UTF-8"?>\n';
const XSI = 'xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance"';

const SCHEMA = {
  '2.1': `xmlns="http://www.imsglobal.org/xsd/imsqti_v2p1" ${XSI} xsi:schemaLocation="http://www.imsglobal.org/xsd/imsqti_v2p1 http://www.imsglobal.org/xsd/qti/qtiv2p1/imsqti_v2p1.xsd"`,
  '3.0': `xmlns="http://www.imsglobal.org/xsd/imsqtiasi_v3p0" ${XSI} xsi:schemaLocation="http://www.imsglobal.org/xsd/imsqtiasi_v3p0 https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqti_asiv3p0_v1p0.xsd"`,
} as const;

/**
 * An NCName: it begins with a letter and holds letters, digits, hyphens and `_`. Names of exercises hold no `_`, so it marks the
 * second asking of one (`turn#2`) apart from an exercise that is called so (`turn-2`).
 */
const identifier = (key: string): string => `item-${key.replace('#', '_')}`;

const item21 = ({ key, item }: PaperLine): string => {
  const { value, low, high } = statedAnswer(item);
  return `${HEAD}<assessmentItem ${SCHEMA['2.1']} identifier="${identifier(key)}" title="${escapeXml(item.exercise.title)}" adaptive="false" timeDependent="false" xml:lang="${LANGUAGE}">
  <responseDeclaration identifier="RESPONSE" cardinality="single" baseType="float">
    <correctResponse><value>${value}</value></correctResponse>
  </responseDeclaration>
  <outcomeDeclaration identifier="SCORE" cardinality="single" baseType="float" normalMaximum="1">
    <defaultValue><value>0</value></defaultValue>
  </outcomeDeclaration>
  <outcomeDeclaration identifier="MAXSCORE" cardinality="single" baseType="float">
    <defaultValue><value>1</value></defaultValue>
  </outcomeDeclaration>
  <itemBody>
    <p>${escapeXml(item.question)} ${escapeXml(askText(item))} ${HOW_TO_TYPE}</p>
    <p><textEntryInteraction responseIdentifier="RESPONSE" expectedLength="12"/> ${escapeXml(askedUnit(item))}</p>
  </itemBody>
  <responseProcessing>
    <responseCondition>
      <responseIf>
        <and>
          <gte><variable identifier="RESPONSE"/><baseValue baseType="float">${low}</baseValue></gte>
          <lte><variable identifier="RESPONSE"/><baseValue baseType="float">${high}</baseValue></lte>
        </and>
        <setOutcomeValue identifier="SCORE"><baseValue baseType="float">1</baseValue></setOutcomeValue>
      </responseIf>
    </responseCondition>
  </responseProcessing>
</assessmentItem>
`;
};

const item30 = ({ key, item }: PaperLine): string => {
  const { value, low, high } = statedAnswer(item);
  return `${HEAD}<qti-assessment-item ${SCHEMA['3.0']} identifier="${identifier(key)}" title="${escapeXml(item.exercise.title)}" adaptive="false" time-dependent="false" xml:lang="${LANGUAGE}">
  <qti-response-declaration identifier="RESPONSE" cardinality="single" base-type="float">
    <qti-correct-response><qti-value>${value}</qti-value></qti-correct-response>
  </qti-response-declaration>
  <qti-outcome-declaration identifier="SCORE" cardinality="single" base-type="float" normal-maximum="1">
    <qti-default-value><qti-value>0</qti-value></qti-default-value>
  </qti-outcome-declaration>
  <qti-outcome-declaration identifier="MAXSCORE" cardinality="single" base-type="float">
    <qti-default-value><qti-value>1</qti-value></qti-default-value>
  </qti-outcome-declaration>
  <qti-item-body>
    <p>${escapeXml(item.question)} ${escapeXml(askText(item))} ${HOW_TO_TYPE}</p>
    <p><qti-text-entry-interaction response-identifier="RESPONSE" expected-length="12"/> ${escapeXml(askedUnit(item))}</p>
  </qti-item-body>
  <qti-response-processing>
    <qti-response-condition>
      <qti-response-if>
        <qti-and>
          <qti-gte><qti-variable identifier="RESPONSE"/><qti-base-value base-type="float">${low}</qti-base-value></qti-gte>
          <qti-lte><qti-variable identifier="RESPONSE"/><qti-base-value base-type="float">${high}</qti-base-value></qti-lte>
        </qti-and>
        <qti-set-outcome-value identifier="SCORE"><qti-base-value base-type="float">1</qti-base-value></qti-set-outcome-value>
      </qti-response-if>
    </qti-response-condition>
  </qti-response-processing>
</qti-assessment-item>
`;
};

/** In 3.0 every name has the prefix qti- and hyphens for capitals, and attributes have the hyphens. */
const hyphened = (name: string): string => name.replace(/[A-Z]/g, (c) => `-${c.toLowerCase()}`);

const offeredItem = ({ key, item }: PaperLine, { options, right }: Offered, version: QtiVersion): string => {
  const e = (name: string) => (version === '2.1' ? name : `qti-${hyphened(name)}`);
  const a = (name: string) => (version === '2.1' ? name : hyphened(name));
  const element = (name: string, attributes: Readonly<Record<string, string>>, inside = '') => {
    const written = Object.entries(attributes)
      .map(([k, v]) => ` ${a(k)}="${escapeXml(v)}"`)
      .join('');
    return inside === '' ? `<${e(name)}${written}/>` : `<${e(name)}${written}>${inside}</${e(name)}>`;
  };
  const order = right.length > 1;
  const schema = SCHEMA[version];
  const outcome = (identifier: string, value: string) =>
    element(
      'outcomeDeclaration',
      { identifier, cardinality: 'single', baseType: 'float', normalMaximum: '1' },
      element('defaultValue', {}, element('value', {}, value)),
    );
  const interaction = element(
    order ? 'orderInteraction' : 'choiceInteraction',
    { responseIdentifier: 'RESPONSE', shuffle: 'false', ...(order ? {} : { maxChoices: '1' }) },
    element('prompt', {}, escapeXml(`${item.question} ${askText(item)}`)) +
      options.map(({ text }, i) => element('simpleChoice', { identifier: LETTERS[i] ?? '' }, escapeXml(text))).join(''),
  );
  const score = element('setOutcomeValue', { identifier: 'SCORE' }, element('baseValue', { baseType: 'float' }, '1'));
  const rule =
    element(
      'match',
      {},
      element('variable', { identifier: 'RESPONSE' }) + element('correct', { identifier: 'RESPONSE' }),
    ) + score;
  return `${HEAD}<${e('assessmentItem')} ${schema} identifier="${identifier(key)}" title="${escapeXml(item.exercise.title)}" ${a('adaptive')}="false" ${a('timeDependent')}="false" xml:lang="${LANGUAGE}">
  ${element(
    'responseDeclaration',
    { identifier: 'RESPONSE', cardinality: order ? 'ordered' : 'single', baseType: 'identifier' },
    element('correctResponse', {}, [...right].map((at) => element('value', {}, at)).join('')),
  )}
  ${outcome('SCORE', '0')}
  ${outcome('MAXSCORE', '1')}
  ${element('itemBody', {}, interaction)}
  ${element('responseProcessing', {}, element('responseCondition', {}, element('responseIf', {}, rule)))}
</${e('assessmentItem')}>
`;
};

const MANIFEST = {
  '2.1': {
    space:
      'xmlns="http://www.imsglobal.org/xsd/imscp_v1p1" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" xsi:schemaLocation="http://www.imsglobal.org/xsd/imscp_v1p1 http://www.imsglobal.org/xsd/qti/qtiv2p1/qtiv2p1_imscpv1p2_v1p0.xsd"',
    schema: 'QTIv2.1 Package',
    version: '1.0.0',
    type: 'imsqti_item_xmlv2p1',
  },
  '3.0': {
    space:
      'xmlns="http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" xsi:schemaLocation="http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1 https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqtiv3p0_imscpv1p2_v1p0.xsd"',
    schema: 'QTI Package',
    version: '3.0.0',
    type: 'imsqti_item_xmlv3p0',
  },
} as const;

const manifest = (lines: readonly PaperLine[], version: QtiVersion, bank: string): string => {
  const { space, schema, version: schemaVersion, type } = MANIFEST[version];
  const resources = lines
    .map(({ key }) => {
      const id = identifier(key);
      return `    <resource identifier="res-${id}" type="${type}" href="items/${id}.xml"><file href="items/${id}.xml"/></resource>`;
    })
    .join('\n');
  return `${HEAD}<manifest ${space} identifier="bank-${escapeXml(bank)}">
  <metadata><schema>${schema}</schema><schemaversion>${schemaVersion}</schemaversion></metadata>
  <organizations/>
  <resources>
${resources}
  </resources>
</manifest>
`;
};

/** The files of a package by their path. */
export const qtiFiles = (
  lines: readonly PaperLine[],
  version: QtiVersion,
  bank: string,
): Readonly<Record<string, string>> => {
  const item = (line: PaperLine): string =>
    line.item.offered ? offeredItem(line, line.item.offered, version) : version === '2.1' ? item21(line) : item30(line);
  return Object.fromEntries([
    ['imsmanifest.xml', manifest(lines, version, bank)],
    ...lines.map((line): [string, string] => [`items/${identifier(line.key)}.xml`, item(line)]),
  ]);
};

/** Columns: item, title, question, unit, answer, lowest and highest accepted, significant digits, hint, steps. */
export const bankCsv = (lines: readonly PaperLine[]): string => {
  return `${[
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
      ]);
    }),
  ].join('\r\n')}\r\n`;
};
