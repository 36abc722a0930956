/**
 * Exports, read back by a small reader of QTI written from the standard: the right value, both edges, just outside and each
 * known slip of every item. The structure is checked here against what the standard asks of an item and a package; no
 * schema is run.
 */
import { strFromU8, unzipSync } from 'fflate';
import { parseHTML } from 'linkedom';
import { describe, expect, it } from 'vitest';
import { zipped } from '../../widgets/class/package.ts';
import { type PaperLine, setBank } from '../../widgets/class/paper.ts';
import { bankCsv, type QtiVersion, qtiFiles } from '../../widgets/class/qti.ts';
import { BANK } from '../support/bank.ts';

const LINES = setBank(BANK, new Map(BANK.chapters.map((c) => [c.slug, 10])), 'export');

type Xml = ReturnType<typeof parseXml>;
const parseXml = (text: string) => {
  expect(text.startsWith('<?xml version="1.0" encoding="UTF-8"?>\n')).toBe(true);
  wellFormed(text);
  const { document } = parseHTML('<html></html>');
  const parser = new (document.defaultView as unknown as { DOMParser: typeof DOMParser }).DOMParser();
  return parser.parseFromString(text, 'text/xml').documentElement as Element;
};

/** Every tag that opens closes in its order; no bare & or <. */
const wellFormed = (text: string): void => {
  const open: string[] = [];
  for (const [, close = '', name = '', rest = ''] of text
    .replace(/<\?.*?\?>/, '')
    .matchAll(/<(\/?)([\w-]+)([^<>]*)>/g)) {
    if (close) expect(open.pop()).toBe(name);
    else if (!rest.endsWith('/')) open.push(name);
    if (!close)
      expect(
        rest
          .replace(/\s+[\w:-]+="[^"<&]*(?:&#?\w+;[^"<&]*)*"/g, '')
          .replace('/', '')
          .trim(),
      ).toBe('');
  }
  expect(open).toEqual([]);
  expect(text.replace(/&#?\w+;/g, '')).not.toContain('&');
};

/** In 3.0 every name has the prefix qti- and hyphens for capitals. */
const namesOf = (version: QtiVersion) => (name: string) =>
  version === '2.1' ? name : `qti-${name.replace(/[A-Z]/g, (c) => `-${c.toLowerCase()}`)}`;
const attributesOf = (version: QtiVersion) => (name: string) =>
  version === '2.1' ? name : name.replace(/[A-Z]/g, (c) => `-${c.toLowerCase()}`);

const kids = (e: Xml): Xml[] => [...e.children];

/** Checks the structure of an item and gives what it does with a response: its score. */
const readItem = (text: string, version: QtiVersion) => {
  const [tag, attribute] = [namesOf(version), attributesOf(version)];
  const root = parseXml(text);
  expect(root.tagName).toBe(tag('assessmentItem'));
  expect(root.getAttribute('xmlns')).toBe(
    version === '2.1' ? 'http://www.imsglobal.org/xsd/imsqti_v2p1' : 'http://www.imsglobal.org/xsd/imsqtiasi_v3p0',
  );
  expect(root.getAttribute('identifier')).toMatch(/^[A-Za-z_][\w.-]*$/);
  for (const name of ['title', 'adaptive', 'timeDependent']) expect(root.getAttribute(attribute(name))).toBeTruthy();
  // In this order, as the content model of an item has it.
  expect(kids(root).map((k) => k.tagName)).toEqual(
    ['responseDeclaration', 'outcomeDeclaration', 'itemBody', 'responseProcessing'].map(tag),
  );
  const [response, outcome, body, processing] = kids(root);
  if (!response || !outcome || !body || !processing) throw new Error('parts');
  for (const [declaration, id] of [
    [response, 'RESPONSE'],
    [outcome, 'SCORE'],
  ] as const) {
    expect(declaration.getAttribute('identifier')).toBe(id);
    expect(declaration.getAttribute('cardinality')).toBe('single');
    expect(declaration.getAttribute(attribute('baseType'))).toBe('float');
  }
  const correct = response.querySelector(`${tag('correctResponse')} > ${tag('value')}`)?.textContent ?? '';
  const entries = [...body.querySelectorAll(tag('textEntryInteraction'))];
  expect(entries.length).toBe(1);
  expect(entries[0]?.getAttribute(attribute('responseIdentifier'))).toBe('RESPONSE');
  expect(entries[0]?.parentElement?.tagName.toLowerCase()).toBe('p');
  const equal = processing.querySelector(`${tag('responseCondition')} > ${tag('responseIf')} > ${tag('equal')}`);
  if (!equal) throw new Error('equal');
  expect(equal.getAttribute(attribute('toleranceMode'))).toBe('absolute');
  expect(
    kids(equal as Xml).map((k) => k.tagName),
    'the correct value first',
  ).toEqual([tag('correct'), tag('variable')]);
  expect(equal.nextElementSibling?.tagName).toBe(tag('setOutcomeValue'));
  const [below = Number.NaN, above = Number.NaN] = (equal.getAttribute('tolerance') ?? '').split(' ').map(Number);
  expect(below > 0 && above > 0).toBe(true);
  const first = Number(correct);
  return {
    id: root.getAttribute('identifier') ?? '',
    stem: body.textContent?.replace(/\s+/g, ' ').trim() ?? '',
    correct,
    // The standard: true where the second lies in [first − tolerance 0, first + tolerance 1].
    score: (typed: string): number => Number(Number(typed) >= first - below && Number(typed) <= first + above),
  };
};

const edges = ({ item: { accepted } }: PaperLine) => {
  const text = (x: number) => x.toFixed(accepted.decimals);
  const step = 10 ** -accepted.decimals;
  return {
    inside: [text(accepted.low), text(accepted.high)],
    outside: [text(accepted.low - step), text(accepted.high + step)],
  };
};

for (const version of ['2.1', '3.0'] as const)
  describe(`the question bank as QTI ${version}`, () => {
    const files = qtiFiles(LINES, version, BANK.version);
    const back = unzipSync(zipped(files));

    it('comes back from its zip as it went in, with its manifest at the root', () => {
      expect(Object.keys(back).sort()).toEqual(Object.keys(files).sort());
      for (const [path, text] of Object.entries(files)) expect(strFromU8(back[path] ?? new Uint8Array())).toBe(text);
      expect(zipped(files)).toEqual(zipped(files));
    });

    it('has a manifest that lists each file once, by the type of its version', () => {
      const manifest = parseXml(files['imsmanifest.xml'] ?? '');
      expect(kids(manifest).map((k) => k.tagName)).toEqual(['metadata', 'organizations', 'resources']);
      const resources = [...manifest.querySelectorAll('resource')];
      expect(resources.map((r) => r.getAttribute('href')).sort()).toEqual(
        Object.keys(files)
          .filter((f) => f !== 'imsmanifest.xml')
          .sort(),
      );
      const type = version === '2.1' ? 'imsqti_item_xmlv2p1' : 'imsqti_item_xmlv3p0';
      for (const r of resources) {
        expect(r.getAttribute('type')).toBe(type);
        expect(r.querySelector('file')?.getAttribute('href')).toBe(r.getAttribute('href'));
        expect(r.getAttribute('identifier')).toMatch(/^[A-Za-z_][\w.-]*$/);
      }
      expect(new Set(resources.map((r) => r.getAttribute('identifier'))).size).toBe(resources.length);
    });

    it('scores 1 for the right value and both edges, 0 just outside, the other way and for each known slip', () => {
      let slips = 0;
      for (const line of LINES) {
        const path = Object.keys(files).find((f) => f === `items/item-${line.key.replace('#', '-')}.xml`) ?? '';
        const read = readItem(strFromU8(back[path] ?? new Uint8Array()), version);
        const { item } = line;
        const { inside, outside } = edges(line);
        for (const typed of [
          read.correct,
          String(item.amount),
          item.amount.toPrecision(item.exercise.digits),
          ...inside,
        ])
          expect(read.score(typed), `${line.key} ${typed}`).toBe(1);
        for (const typed of [...outside, String(-item.amount), '0', ''])
          expect(read.score(typed), `${line.key} ${typed}`).toBe(0);
        for (const { amount, says } of item.slips) {
          expect(read.score(String(amount)), `${line.key} ${says}`).toBe(0);
          expect(read.score(amount.toPrecision(item.exercise.digits)), `${line.key} ${says}`).toBe(0);
          slips++;
        }
        expect(read.stem).toContain(item.question.replace(/\s+/g, ' '));
        if (item.exercise.unit !== '1') expect(read.stem.endsWith(` ${item.exercise.unit}`)).toBe(true);
      }
      expect(LINES.length).toBeGreaterThanOrEqual(100);
      expect(slips).toBeGreaterThan(500);
    });
  });

describe('the question bank as CSV', () => {
  const rows = bankCsv(LINES)
    .trimEnd()
    .split('\r\n')
    .map((row) => [...row.matchAll(/"((?:[^"]|"")*)"(?:,|$)/g)].map((m) => (m[1] ?? '').replace(/""/g, '"')));

  it('has a row an item under its heads, ten cells each', () => {
    expect(rows.length).toBe(LINES.length + 1);
    for (const row of rows) expect(row.length).toBe(10);
  });
  it('states answer and interval, between which lie no slips', () => {
    for (const [i, line] of LINES.entries()) {
      const [key, , question = '', unit, answer, low, high] = rows[i + 1] ?? [];
      const { item } = line;
      expect(key).toBe(line.key);
      expect(question).toContain(item.question);
      expect(unit).toBe(item.exercise.unit === '1' ? '' : item.exercise.unit);
      expect(Math.abs(Number(answer) / item.amount - 1)).toBeLessThan(0.005);
      expect([low, high]).toEqual(edges(line).inside);
      const inside = (x: number) => x >= Number(low) && x <= Number(high);
      expect(inside(Number(answer)) && inside(item.amount)).toBe(true);
      for (const typed of edges(line).outside) expect(inside(Number(typed))).toBe(false);
      for (const { amount } of item.slips) expect(inside(amount)).toBe(false);
    }
  });
  it('shows what begins like a formula as text', () => {
    const [line] = LINES;
    if (!line) throw new Error('no line');
    expect(bankCsv([{ ...line, key: '=cmd()' }])).toContain(`\r\n"'=cmd()",`);
  });
  it('begins no cell of words with what a spreadsheet takes for a formula', () => {
    for (const row of rows) for (const at of [0, 1, 2, 8, 9]) expect(row[at]).not.toMatch(/^[=+@\t-]/);
  });
});
