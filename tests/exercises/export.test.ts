/**
 * Exports, read back and scored by a small player of QTI written from the standard: the right value, both edges, just outside and
 * each known slip of every item. The structure is checked here against what the standard asks of an item and a package; no
 * schema is run.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { parseHTML } from 'linkedom';
import { describe, expect, it } from 'vitest';
import { zipped } from '../../widgets/assembly/files/zipped.ts';
import { FORMS } from '../../widgets/exercises/forms.ts';
import { acceptedInterval, within } from '../../widgets/exercises/interval.ts';
import { judge } from '../../widgets/exercises/judge.ts';
import { type PaperLine, setBank } from '../../widgets/exercises/paper.ts';
import { bankCsv, type QtiVersion, qtiFiles } from '../../widgets/exercises/qti.ts';
import { identifierOf } from '../../widgets/exercises/qti-item.ts';
import { BANK } from '../support/bank.ts';
import { drawn, howMany } from '../support/deep.ts';

const COUNTS = new Map(BANK.chapters.map((c) => [c.slug, 10]));
/** A sample at every run, drawn by the seed; all of them in a deep one. */
const WHOLE = setBank(BANK, COUNTS, 'export');
/** What is refused or taken by its minus: one of them is always there. */
const BELOW_ZERO = WHOLE.find(({ item }) => item.offered === undefined && item.amount < -20 && item.amount % 1 !== 0);
const ALL = [...new Set([...drawn(60, WHOLE), ...(BELOW_ZERO ? [BELOW_ZERO] : [])])];
/** What asks a number; items of other kinds are read by themselves below. */
const LINES = ALL.filter(({ item }) => item.offered === undefined);
const OFFERED = ALL.filter(({ item }) => item.offered !== undefined);
/** Neither the manifest, nor the test, nor a picture. */
const itemPaths = (files: Readonly<Record<string, string>>) => Object.keys(files).filter((f) => f.startsWith('items/'));

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
  const names = kids(root).map((k) => k.tagName);
  expect(names.filter((name, at) => name !== names[at - 1])).toEqual(
    ['responseDeclaration', 'outcomeDeclaration', 'itemBody', 'responseProcessing', 'modalFeedback'].map(tag),
  );
  const [response, score, most] = kids(root);
  const body = root.querySelector(tag('itemBody'));
  const processing = root.querySelector(tag('responseProcessing'));
  if (!response || !score || !most || !body || !processing) throw new Error('parts');
  const rubric = body.querySelector(tag('rubricBlock'));
  expect(rubric?.getAttribute('view')).toBe('scorer tutor');
  const steps = rubric?.textContent ?? '';
  rubric?.remove();
  const feedback = new Map(
    [...root.querySelectorAll(tag('modalFeedback'))].map((f) => [
      f.getAttribute('identifier') ?? '',
      f.textContent ?? '',
    ]),
  );
  for (const [declaration, id] of [
    [response, 'RESPONSE'],
    [score, 'SCORE'],
    [most, 'MAXSCORE'],
  ] as const) {
    expect(declaration.getAttribute('identifier')).toBe(id);
    expect(declaration.getAttribute('cardinality')).toBe('single');
    expect(declaration.getAttribute(attribute('baseType'))).toBe('float');
  }
  const values = (of: Xml, part: string) =>
    [...of.querySelectorAll(`${tag(part)} > ${tag('value')}`)].map((v) => v.textContent ?? '');
  const [correct = '', ...others] = values(response, 'correctResponse');
  expect(others).toEqual([]);
  const entries = [...body.querySelectorAll(tag('textEntryInteraction'))];
  expect(entries.length).toBe(1);
  expect(entries[0]?.getAttribute(attribute('responseIdentifier'))).toBe('RESPONSE');
  expect(entries[0]?.parentElement?.tagName.toLowerCase()).toBe('p');
  return {
    id: root.getAttribute('identifier') ?? '',
    stem: body.textContent?.replace(/\s+/g, ' ').trim() ?? '',
    correct,
    highest: [score.getAttribute(attribute('normalMaximum')), ...values(most, 'defaultValue')].map(Number),
    steps,
    score: (typed: string, round?: (x: number) => number): number =>
      played(processing, typed, Number(values(score, 'defaultValue')[0]), version, round).score,
    /** What a student is shown after this. */
    says: (typed: string): string => {
      const said = played(processing, typed, 0, version).said;
      if (said !== '' && !feedback.has(said)) throw new Error(`nothing to say for ${said}`);
      return feedback.get(said) ?? '';
    },
  };
};

/** A float as the standard has it in a response: digits with a point, nothing beside them. */
const FLOAT = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/;

/**
 * What response processing leaves in SCORE, by the standard’s own rules: an operator of NULL is NULL, `and` is false where
 * anything is false, and the first branch that is true is taken. What the rules here do not know is an error, not a guess.
 */
const played = (
  processing: Xml,
  typed: string,
  start: number,
  version: QtiVersion,
  round: (x: number) => number = (x) => x,
): { readonly score: number; readonly said: string } => {
  const tag = namesOf(version);
  const float = (text: string) => (FLOAT.test(text) ? round(Number(text)) : null);
  const held = new Map<string, number | null>([
    ['RESPONSE', float(typed)],
    ['SCORE', start],
  ]);
  let said = '';
  const both = (e: Xml, rule: (a: number, b: number) => boolean): boolean | null => {
    if (e.children.length !== 2) throw new Error('two are compared');
    const [a, b] = kids(e).map(worth);
    return typeof a === 'number' && typeof b === 'number' ? rule(a, b) : null;
  };
  const worth = (e: Xml): number | boolean | null => {
    const id = e.getAttribute('identifier') ?? '';
    switch (e.tagName) {
      case tag('variable'):
        if (!held.has(id)) throw new Error(`no variable ${id}`);
        return held.get(id) ?? null;
      case tag('baseValue'):
        if (e.getAttribute(attributesOf(version)('baseType')) !== 'float' || !FLOAT.test(e.textContent ?? ''))
          throw new Error(`no float: ${e.textContent}`);
        return float(e.textContent ?? '');
      case tag('gte'):
        return both(e, (a, b) => a >= b);
      case tag('lte'):
        return both(e, (a, b) => a <= b);
      case tag('and'): {
        const all = kids(e).map(worth);
        return all.includes(false) ? false : all.includes(null) ? null : true;
      }
      case tag('or'): {
        const all = kids(e).map(worth);
        return all.includes(true) ? true : all.includes(null) ? null : false;
      }
      default:
        throw new Error(`this player has no rule for ${e.tagName}`);
    }
  };
  for (const condition of kids(processing)) {
    expect(condition.tagName).toBe(tag('responseCondition'));
    const branches = kids(condition);
    for (const [at, branch] of branches.entries()) {
      const last = at === branches.length - 1 && branch.tagName === tag('responseElse');
      if (!last && branch.tagName !== tag(at === 0 ? 'responseIf' : 'responseElseIf')) throw new Error('no branch');
      const [first, ...others] = kids(branch);
      const rules = last ? kids(branch) : others;
      if (!last && first && worth(first) !== true) continue;
      for (const rule of rules) {
        expect(rule.tagName).toBe(tag('setOutcomeValue'));
        const [value] = kids(rule);
        if (rule.getAttribute('identifier') === 'FEEDBACK') said = value?.textContent ?? '';
        else held.set(rule.getAttribute('identifier') ?? '', worth(value as Xml) as number | null);
      }
      break;
    }
  }
  return { score: held.get('SCORE') ?? Number.NaN, said };
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
    const paths = itemPaths(files);
    /** Files stand in the order of the lines; that each belongs to its line is seen from the question in it. */
    const itemOf = (line: PaperLine) =>
      readItem(strFromU8(back[paths[LINES.indexOf(line)] ?? ''] ?? new Uint8Array()), version);

    it('comes back from its zip as it went in, with its manifest at the root', () => {
      expect(Object.keys(back).sort()).toEqual(Object.keys(files).sort());
      for (const [path, text] of Object.entries(files)) expect(strFromU8(back[path] ?? new Uint8Array())).toBe(text);
      expect(zipped(files)).toEqual(zipped(files));
    });

    it('has a manifest that lists each file once, by the type of its version', () => {
      const manifest = parseXml(files['imsmanifest.xml'] ?? '');
      expect(kids(manifest).map((k) => k.tagName)).toEqual(['metadata', 'organizations', 'resources']);
      const resources = [...manifest.querySelectorAll('resource')];
      expect(resources.map((r) => r.getAttribute('href')).sort()).toEqual([...paths, 'test.xml'].sort());
      const carried = [...manifest.querySelectorAll('file')].map((f) => f.getAttribute('href'));
      expect(carried.sort(), 'every file of the package is listed').toEqual(
        Object.keys(files)
          .filter((f) => f !== 'imsmanifest.xml')
          .sort(),
      );
      for (const said of ['CC BY 4.0', 'PT4M', BANK.version]) expect(manifest.textContent).toContain(said);
      const type = version === '2.1' ? 'imsqti_item_xmlv2p1' : 'imsqti_item_xmlv3p0';
      for (const r of resources) {
        const isTest = r.getAttribute('href') === 'test.xml';
        expect(r.getAttribute('type')).toBe(isTest ? type.replace('item', 'test') : type);
        expect(r.querySelector('file')?.getAttribute('href')).toBe(r.getAttribute('href'));
        expect(r.getAttribute('identifier')).toMatch(/^[A-Za-z_][\w.-]*$/);
      }
      expect(new Set(resources.map((r) => r.getAttribute('identifier'))).size).toBe(resources.length);
    });

    it('scores 1 for the right value and both edges, 0 just outside, the other way and for each known slip', () => {
      let slips = 0;
      for (const line of LINES) {
        const read = itemOf(line);
        const { item } = line;
        const { inside, outside } = edges(line);
        // A player may keep its floats in 64 bits or in 32.
        for (const round of [(x: number) => x, Math.fround]) {
          for (const typed of [
            read.correct,
            String(item.amount),
            item.amount.toPrecision(item.exercise.digits),
            item.amount.toPrecision(item.exercise.digits + 2),
            item.amount.toExponential(item.exercise.digits),
            ...inside,
          ])
            expect(read.score(typed, round), `${line.key} ${typed}`).toBe(1);
          for (const typed of [...outside, String(-item.amount), '0', ''])
            expect(read.score(typed, round), `${line.key} ${typed}`).toBe(0);
        }
        for (const { amount, says } of item.slips) {
          expect(read.score(String(amount)), `${line.key} ${says}`).toBe(0);
          expect(read.score(amount.toPrecision(item.exercise.digits)), `${line.key} ${says}`).toBe(0);
          slips++;
        }
        expect(read.stem).toContain(item.question.replace(/\s+/g, ' '));
        if (item.exercise.unit !== '1') expect(read.stem.endsWith(` ${item.exercise.unit}`)).toBe(true);
      }
      expect(LINES.length).toBeGreaterThanOrEqual(howMany(15, 25));
      expect(slips).toBeGreaterThan(150);
    });

    it('says to each known slip, with either sign, what the page says to it, to the other way so, and else the hint', () => {
      for (const line of LINES) {
        const read = itemOf(line);
        const { item } = line;
        const same = (a: string, b: string) => a.replace(/\s+/g, ' ') === b.replace(/\s+/g, ' ');
        expect(read.says(read.correct)).toBe('');
        expect(read.says(String(-item.amount))).toMatch(/other way/);
        for (const { amount } of item.slips.filter((slip) => slip.amount !== 0))
          for (const typed of [amount, -amount]) {
            // A slip may be the right amount the other way; turned round it is right.
            if (within(typed, item.accepted)) continue;
            // Slips that lie on one another are told apart by neither: one of those that fit is said.
            const fits = item.slips.filter(
              (s) =>
                s.amount !== 0 &&
                [typed, -typed].some((x) => within(x, acceptedInterval(s.amount, item.exercise.digits))),
            );
            const said = read.says(String(typed));
            expect(
              fits.some(({ says }) => same(says, said)) || /other way/.test(said),
              `${line.key} ${typed}: ${said}`,
            ).toBe(true);
          }
        expect(same(read.says('0'), item.hint)).toBe(true);
        expect(read.steps.replace(/\s/g, '')).toContain(String(item.exercise.steps.length > 0 ? '=' : ''));
      }
    });

    it('gives a known slip the share of the marks that a teacher wants, and the right answer all of them', () => {
      const some = LINES.slice(0, 12);
      const scored = qtiFiles(some, version, BANK.version, { marks: () => 4, forSlip: 0.5 });
      for (const [i, line] of some.entries()) {
        const read = readItem(scored[itemPaths(scored)[i] ?? ''] ?? '', version);
        expect(read.highest).toEqual([4, 4]);
        expect(read.score(read.correct)).toBe(4);
        expect(read.score(String(-line.item.amount))).toBe(2);
        for (const { amount } of line.item.slips.filter((s) => s.amount !== 0))
          expect(read.score(String(amount))).toBe(2);
        expect(read.score('0')).toBe(0);
      }
    });

    it('has a test that draws one variant of each exercise, all variants different', () => {
      const variants = setBank(
        BANK,
        new Map([
          ['one-screw', 3],
          ['two-screws', 2],
        ]),
        'export',
        {},
        4,
      );
      const packed = qtiFiles(variants, version, BANK.version);
      const tag = namesOf(version);
      const test = parseXml(packed['test.xml'] ?? '');
      const sections = [...test.querySelectorAll(tag('assessmentSection'))];
      expect(sections.length).toBe(5);
      for (const section of sections) {
        expect(section.querySelector(tag('selection'))?.getAttribute('select')).toBe('1');
        const refs = [...section.querySelectorAll(tag('assessmentItemRef'))].map((r) => r.getAttribute('href') ?? '');
        expect(refs.length).toBe(4);
        const texts = refs.map((href) => packed[href]?.replace(/identifier="item-[^"]*"/, '') ?? href);
        expect(new Set(texts).size, refs.join()).toBe(4);
      }
      expect(test.querySelector(tag('testVariables'))).not.toBeNull();
    });

    it('takes a negative answer, such as −416.67, rounded to three digits or written to four decimals, and gives 0 for a unit, a comma or a long minus', () => {
      const line = LINES.find(({ item }) => Math.abs(item.amount) > 20 && item.amount < 0 && item.amount % 1 !== 0);
      if (!line) throw new Error('no negative answer');
      const read = itemOf(line);
      const { amount, exercise } = line.item;
      // To a hundredth of it, whatever number is drawn.
      for (const typed of [amount.toPrecision(3), amount.toFixed(2), amount.toFixed(4)])
        expect(read.score(typed), typed).toBe(1);
      const text = amount.toFixed(2);
      for (const typed of [`${text} ${exercise.unit}`, text.replace('.', ','), text.replace('-', '−')]) {
        expect(read.score(typed), typed).toBe(0);
        // The notebook’s own fields take all three, so the question must say what it takes here.
        expect(judge(line.item, typed).kind, typed).toBe('right');
      }
      for (const said of [/unit/, /point/, /hyphen/]) expect(read.stem).toMatch(said);
    });

    it('states the highest score of each item, and reaches it', () => {
      for (const line of LINES) {
        const read = itemOf(line);
        expect(read.highest).toEqual([1, 1]);
        expect(read.score(read.correct)).toBe(1);
      }
    });

    it('keeps an exercise asked a second time apart from one whose name ends alike', () => {
      const [line] = LINES;
      if (!line) throw new Error('no line');
      const keys = ['foot-turn', 'foot-turn#2', 'foot-turn-2', 'foot-turn#12', 'foot-turn#1', 'foot-turn-12'];
      const packed = qtiFiles(
        keys.map((key) => ({ ...line, key })),
        version,
        BANK.version,
      );
      expect(itemPaths(packed).length).toBe(keys.length);
      const ids = Object.entries(packed).flatMap(([path, text]) =>
        path === 'imsmanifest.xml'
          ? [...parseXml(text).querySelectorAll('resource')].map((r) => r.getAttribute('identifier'))
          : path.startsWith('items/')
            ? [readItem(text, version).id]
            : [],
      );
      expect(new Set(ids).size).toBe(2 * keys.length + 1);
    });
  });

describe('identifiers', () => {
  it.each(FORMS)('are all different in a package of every exercise, asked “%s”', (form) => {
    const lines = setBank(BANK, COUNTS, 'export', { form }, 2);
    const names = lines.map(({ key }) => identifierOf(key).toLowerCase());
    // Files of two names that differ in capitals alone are one on many a machine.
    expect(new Set(names).size).toBe(lines.length);
    expect(lines.length).toBe(BANK.chapters.length * 20);
    for (const name of names) expect(name).toMatch(/^[a-z_][\w.-]*$/);
  });

  it('of the parts of a test are all different too', () => {
    const test = parseXml(qtiFiles(ALL, '2.1', BANK.version)['test.xml'] ?? '');
    const ids = [test, ...test.querySelectorAll('testPart, assessmentSection, assessmentItemRef')].map((e) =>
      e.getAttribute('identifier'),
    );
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.length).toBeGreaterThan(ALL.length);
  });
});

/** A reader of XML that is not ours. The published schemas are not at hand here, so it is asked for well-formed files alone. */
const XMLLINT = spawnSync('xmllint', ['--version']).error === undefined;
describe(`a package read by xmllint${XMLLINT ? '' : ' (left out: xmllint is not installed)'}`, () => {
  it.skipIf(!XMLLINT).each(['2.1', '3.0'] as const)('is well-formed as QTI %s, pictures too', (version) => {
    const folder = mkdtempSync(join(tmpdir(), 'qti-'));
    try {
      const files = Object.entries(qtiFiles(ALL, version, BANK.version)).map(([path, text]) => {
        const file = join(folder, path.replaceAll('/', '-'));
        writeFileSync(file, text);
        return file;
      });
      const read = spawnSync('xmllint', ['--noout', ...files], { encoding: 'utf8' });
      expect(read.stderr).toBe('');
      expect(read.status).toBe(0);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});

describe('an item with answers to choose from or to put in order', () => {
  for (const version of ['2.1', '3.0'] as const)
    it(`states the right one in QTI ${version}, and offers each once`, () => {
      expect(OFFERED.length).toBeGreaterThan(4);
      const files = qtiFiles(OFFERED, version, BANK.version);
      const tag = namesOf(version);
      const texts = Object.entries(files).filter(([path]) => path.startsWith('items/'));
      expect(texts.length).toBe(OFFERED.length);
      for (const [i, { item }] of OFFERED.entries()) {
        const root = parseXml(texts[i]?.[1] ?? '');
        const choices = [...root.querySelectorAll(tag('simpleChoice'))].map((c) => c.getAttribute('identifier') ?? '');
        expect(choices.length).toBe(item.offered?.options.length);
        expect(new Set(choices).size).toBe(choices.length);
        const right = [...root.querySelectorAll(`${tag('correctResponse')} > ${tag('value')}`)].map(
          (v) => v.textContent,
        );
        expect(right.length).toBe(item.offered?.right.length);
        for (const name of right) expect(choices).toContain(name);
      }
    });
});

describe('the question bank as CSV', () => {
  const rows = bankCsv(LINES)
    .trimEnd()
    .split('\r\n')
    .map((row) => [...row.matchAll(/"((?:[^"]|"")*)"(?:,|$)/g)].map((m) => (m[1] ?? '').replace(/""/g, '"')));

  it('has a row an item under its heads, eleven cells each', () => {
    expect(rows.length).toBe(LINES.length + 1);
    for (const row of rows) expect(row.length).toBe(11);
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
