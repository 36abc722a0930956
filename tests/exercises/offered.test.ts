/**
 * Exercises that offer answers or lines, and those read off a picture: every item has one right answer, and that is found again by arithmetic of
 * its own or by reading the picture. A fixed sample at every run, ten thousand seeds in a deep one.
 */
import { parseHTML } from 'linkedom';
import { describe, expect, it } from 'vitest';
import { UNITS } from '../../widgets/engine/index.ts';
import { drawItem } from '../../widgets/exercises/draw.ts';
import { answerText, type Item } from '../../widgets/exercises/exercise.ts';
import { judge } from '../../widgets/exercises/judge.ts';
import { LETTERS } from '../../widgets/exercises/offered.ts';
import { type PaperLine, setPaper } from '../../widgets/exercises/paper.ts';
import { keySheet, studentSheet } from '../../widgets/exercises/paper-html.ts';
import { qtiFiles } from '../../widgets/exercises/qti.ts';
import { stepLines } from '../../widgets/exercises/steps-text.ts';
import { BANK, EXERCISES, mistakesOf, PAIR } from '../support/bank.ts';
import { howMany } from '../support/deep.ts';
import { ANSWERS, base, ownAnswer, LINES as WORKED } from '../support/own-answers.ts';
import { drawn, screw, value } from '../support/own-arithmetic.ts';

const SEEDS = howMany(60, 10_000);

const itemsOf = (id: string): Item[] => {
  const exercise = EXERCISES.find((e) => e.id === id);
  if (!exercise) throw new Error(id);
  return Array.from({ length: SEEDS }, (_, i) => drawItem(exercise, ['offered', String(i)]));
};
const textAt = (item: Item, letter: string): string => item.offered?.options[LETTERS.indexOf(letter)]?.text ?? '';
const ids = (kind: string) => EXERCISES.filter((e) => e.kind === kind).map((e) => e.id);
const L = (p: (name: string) => string, name: string) => screw(p(name)).L * screw(p(name)).h;

/** The amount in the unit asked, to be found among those offered. */
const CHOSEN: Readonly<Record<string, (p: (name: string) => string) => number>> = {
  'inch-turns-chosen': (p) => (-value(p('n')) / screw(p('thread')).tpi) * 25.4,
  'net-lead-chosen': (p) => 1000 * (screw(p('C')).L - screw(p('A')).L),
  'step-chosen': (p) => (1000 * Math.abs(screw(p('C')).L - screw(p('A')).L)) / value(p('k')),
};
/** Its sign is what is asked. */
const SIGNED: Readonly<Record<string, (p: (name: string) => string) => number>> = {
  'which-way-screw': (p) => -screw(p('thread')).h * value(p('n')),
  'pair-way': (p) => Math.round(1e9 * (L(p, 'C') - L(p, 'A'))) * value(p('n')),
  'flank-of-c': (p) => value(p('Q_pc')),
  'flank-of-a': (p) => value(p('Q_pt')) + value(p('Q_pc')),
};
/** What each line must give, in the unit in which it is printed. */
const LINES: Readonly<Record<string, (p: (name: string) => string) => number[]>> = {
  'screw-wrong-line': (p) => {
    const { P, L: lead, h } = screw(p('thread'));
    const n = value(p('theta')) / 360;
    return [P, lead, n, -h * lead * n];
  },
  'pair-wrong-line': (p) => {
    const [a, c] = [screw(p('A')).L, screw(p('C')).L];
    return [a, c, c - a, (c - a) * value(p('n'))];
  },
  'step-wrong-line': (p) => {
    const Delta = screw(p('C')).L - screw(p('A')).L;
    const s = Math.abs(Delta) / 6;
    return [Delta, s, value(p('w')) / 1000 / s];
  },
};
const SCALES: Readonly<Record<string, number>> = { µm: 1e-3, 'N/µm': 1e3, '°': Math.PI / 180, '%': 0.01 };
/** The result at the end of a printed line, in base units. */
const resultOf = (line: string): number => {
  const [, amount = '', unit = ''] = /= ([−\d.]+)\s*(\S*)$/.exec(line) ?? [];
  return Number(amount.replace('−', '-')) * (SCALES[unit] ?? 1);
};
/** In the unit asked. */
const ownOf = (item: Item): number => {
  const { id, unit } = item.exercise;
  return CHOSEN[id]?.(drawn(item)) ?? ownAnswer(id, UNITS[unit].factor, drawn(item)) ?? Number.NaN;
};
const linesOf = (item: Item): readonly number[] => {
  const p = drawn(item);
  return LINES[item.exercise.id]?.(p) ?? WORKED[item.exercise.id]?.((name) => base(p(name)), p) ?? [];
};

describe('what is chosen', () => {
  it('has an answer of its own here, whatever the kind', () => {
    for (const id of ids('choice')) expect(Object.keys({ ...CHOSEN, ...ANSWERS }), id).toContain(id);
    for (const id of [...ids('way'), ...ids('flank')]) expect(Object.keys({ ...SIGNED, ...ANSWERS }), id).toContain(id);
    for (const id of ids('wrong-line')) expect(Object.keys({ ...LINES, ...WORKED }), id).toContain(id);
    for (const id of [...ids('stack'), ...ids('table')]) expect(Object.keys(ANSWERS), id).toContain(id);
  });

  it.each(ids('choice'))('%s: of three answers or more one alone is right, in every place', (id) => {
    const places = new Set<string>();
    for (const item of itemsOf(id)) {
      const own = ownOf(item);
      const options = item.offered?.options ?? [];
      expect(options.length).toBeGreaterThanOrEqual(3);
      expect(new Set(options.map((o) => o.text)).size).toBe(options.length);
      const right = options.filter(({ text }) => Math.abs(value(text) / own - 1) < 0.005);
      expect(right, item.question).toHaveLength(1);
      expect(textAt(item, item.offered?.right ?? '')).toBe(right[0]?.text);
      // Each wrong one is met by what was probably thought.
      for (const option of options) expect(option.says === '').toBe(option === right[0]);
      places.add(item.offered?.right ?? '');
    }
    expect(places.size).toBeGreaterThanOrEqual(2);
  });

  it.each([...ids('way'), ...ids('flank')])('%s: the sign of what acts decides', (id) => {
    const rights = new Set<string>();
    for (const item of itemsOf(id)) {
      const sign = SIGNED[id]?.(drawn(item)) ?? ownOf(item);
      const own = Math.abs(sign) < 1e-12 ? 0 : sign;
      expect(item.offered?.right, item.question).toBe(own > 0 ? 'a' : own < 0 ? 'b' : 'c');
      rights.add(item.offered?.right ?? '');
      for (const letter of 'abc') expect(judge(item, letter).kind === 'right').toBe(letter === item.offered?.right);
    }
    expect(rights.size).toBeGreaterThanOrEqual(2);
  });
});

describe('a wrong line', () => {
  it.each(ids('wrong-line'))('%s: every line before it is right, and it is the first that is not', (id) => {
    const at = new Set<string>();
    for (const item of itemsOf(id)) {
      const own = linesOf(item);
      const lines = item.offered?.options.map((o) => o.text) ?? [];
      expect(lines).toHaveLength(own.length);
      const first = lines.findIndex((line, i) => Math.abs(resultOf(line) / (own[i] ?? 0) - 1) > 0.01);
      expect(LETTERS[first], lines.join('\n')).toBe(item.offered?.right);
      at.add(item.offered?.right ?? '');
      const made = item.exercise.slips[item.picks.at(-1) ?? 0]?.says ?? '';
      // A place in it is filled.
      expect(stepLines(item)[0]?.slice(0, 12), 'the key says what is wrong').toBe(made.slice(0, 12));
    }
    expect(at.size).toBeGreaterThanOrEqual(2);
  });
});

describe('an order', () => {
  /** Why one comes before the other, by the first words of the lines: common practice, no source. */
  const BEFORE = [
    [/^Clean/, /^Screw/],
    [/^Screw thread A/, /^Back thread A/],
    [/^Screw thread C/, /^Back thread C/],
    [/^(Screw|Back)/, /lock|spring|zero|^Turn|^Reverse/i],
    [/lock/, /zero|^Turn|^Reverse/i],
    [/zero/i, /^Turn|^Reverse/],
  ] as const;

  it('has the lines in the one order in which each can be done', () => {
    const seen = new Set<string>();
    for (const item of itemsOf('work-in-order')) {
      const right = [...(item.offered?.right ?? '')].map((at) => textAt(item, at));
      expect(new Set(right).size).toBe(5);
      for (const [first, then] of BEFORE)
        for (const [i, a] of right.entries())
          for (const [j, b] of right.entries())
            if (first.test(a) && then.test(b) && !then.test(a)) expect(i, `${a} / ${b}`).toBeLessThan(j);
      // Threads A and C may be screwed together in either order, so may lock and springs go on, and so may the readings be taken.
      for (const free of [/thread [AC]\b/, /\block\b|^Stretch/, /^Turn|^Reverse/])
        expect(new Set(right.flatMap((line) => free.exec(line)?.[0] ?? [])).size, right.join()).toBeLessThanOrEqual(1);
      expect(item.offered?.right).not.toBe('abcde');
      expect(judge(item, item.offered?.right ?? '').kind).toBe('right');
      const turned = [...(item.offered?.right ?? '')].reverse().join('');
      expect(judge(item, turned).says).toMatch(/stands before/);
      seen.add(right.join());
    }
    expect(seen.size).toBeGreaterThan(30);
  });
});

describe('a stack', () => {
  /** The texts of what an option names, by the inputs of the drawer. */
  const textsOf = (item: Item, text: string) => {
    const parts = text.split(' + ').map((part) => part.replace('×', 'x').replace(/^#/, ''));
    const names = item.exercise.drawer?.inputs.map((input) => input.name as string) ?? [];
    return (name: string) => parts[names.indexOf(name)] ?? drawn(item)(name);
  };

  it.each(ids('stack'))('%s: of those laid out one alone gives what is wanted', (id) => {
    const rights = new Set<string>();
    for (const item of itemsOf(id)) {
      const options = item.offered?.options ?? [];
      expect(new Set(options.map((o) => o.text)).size).toBe(4);
      const amounts = options.map((o) => ownAnswer(id, UNITS[item.exercise.unit].factor, textsOf(item, o.text)) ?? 0);
      const fits = amounts.filter((amount) => Math.abs(amount / item.amount - 1) < 0.02);
      expect(fits, item.question).toHaveLength(1);
      const at = amounts.indexOf(fits[0] ?? 0);
      expect(LETTERS[at]).toBe(item.offered?.right);
      // What is wanted stands in the question, as the right stack gives it.
      const told = [...item.question.matchAll(/(−?[\d.]+)/g)].map(([, n = '']) => Number(n.replace('−', '-')));
      expect(
        told.some((n) => Math.abs(n / (fits[0] ?? 0) - 1) < 0.006),
        item.question,
      ).toBe(true);
      for (const [i, option] of options.entries()) expect(option.says === '').toBe(i === at);
      rights.add(options[at]?.text ?? '');
    }
    expect(rights.size).toBeGreaterThanOrEqual(4);
  });
});

describe('a table of readings', () => {
  /** What every verdict would have to see, from the residuals as shares of the net lead. */
  const SEEN: Readonly<Record<string, (r: readonly number[]) => boolean>> = {
    sound: (r) => r.every((x) => Math.abs(x) < 0.01),
    lead: (r) =>
      Math.abs(r[8] ?? 0) > 0.05 && PLACES.every((n, i) => Math.abs((r[i] ?? 0) - ((r[8] ?? 0) / 2) * n) < 0.015),
    wave: (r) =>
      [0, 4, 8, 10, 12].every((i) => Math.abs(r[i] ?? 0) < 0.01) &&
      [1, 2, 3].every((i) => Math.abs((r[i] ?? 0) - (r[i + 4] ?? 0)) < 0.015) &&
      r.some((x) => Math.abs(x) > 0.04),
    lost: (r) =>
      r.slice(0, 9).every((x) => Math.abs(x) < 0.01) &&
      r.slice(9).every((x) => x > 0.05 && Math.abs(x - (r[9] ?? 0)) < 0.015),
    drift: (r) => Math.abs(r[12] ?? 0) > 0.15 && r.every((x, i) => Math.abs(x - ((r[12] ?? 0) / 12) * i) < 0.015),
    misread: (r) =>
      r.filter((x) => Math.abs(x) > 0.1).length === 1 && r.filter((x) => Math.abs(x) < 0.01).length === 12,
  };
  const PLACES = [0, 0.25, 0.5, 0.75, 1, 1.25, 1.5, 1.75, 2, 1.5, 1, 0.5, 0];

  it.each(ids('table'))('%s: shows one thing alone, whichever it is', (id) => {
    const rights = new Set<string>();
    for (const item of itemsOf(id)) {
      const rows = [...(item.picture ?? '').matchAll(/<th scope="row">([\d.]+)<\/th><td>([−\d.]+)</g)];
      expect(rows.map(([, n]) => Number(n))).toEqual(PLACES);
      const own = ownAnswer(id, 1e-3, drawn(item)) ?? Number.NaN;
      const residuals = rows.map(([, n, z = '']) => Number(z.replace('−', '-')) / own - Number(n));
      const seen = Object.keys(SEEN).filter((fault) => SEEN[fault]?.(residuals));
      expect(seen, item.picture).toHaveLength(1);
      expect(item.exercise.faults?.indexOf(seen[0] as never)).toBe(LETTERS.indexOf(item.offered?.right ?? '?'));
      for (const letter of LETTERS.slice(0, item.exercise.faults?.length))
        expect(judge(item, letter).kind === 'right').toBe(letter === item.offered?.right);
      // The worked answer ends with the readings that settle it: each amount in it is a reading, or what one is off by.
      const decides = stepLines(item).at(-1) ?? '';
      const readings = rows.map(([, , z = '']) => Number(z.replace('−', '-')));
      const known = [...readings, ...rows.map(([, n], i) => (readings[i] ?? 0) - own * Number(n)), own * 2];
      const told = [...decides.matchAll(/(−?[\d.]+)\u00a0µm/g)].map(([, x = '']) => Number(x.replace('−', '-')));
      expect(told.length, decides).toBeGreaterThanOrEqual(2);
      for (const x of told)
        expect(
          known.some((y) => Math.abs(Math.abs(x) - Math.abs(y)) < 0.11),
          `${x} of: ${decides}`,
        ).toBe(true);
      rights.add(seen[0] ?? '');
    }
    expect(rights.size).toBeGreaterThanOrEqual(4);
  });
});

describe('a picture', () => {
  const svgOf = (item: Item) => parseHTML(`<body>${item.picture}</body>`).document;
  /** Each picture once: ten thousand seeds draw some hundreds. */
  const picturesOf = (id: string) => new Map(itemsOf(id).map((item) => [item.picks.join(), item])).values();

  it.each(['pair-read-dial', 'flats-from-dial'])('%s: both hands of the dial show the motion', (id) => {
    for (const item of picturesOf(id)) {
      const picture = svgOf(item);
      const angle = (selector: string) =>
        Number(/rotate\(([-\d.]+)/.exec(picture.querySelector(selector)?.getAttribute('transform') ?? '')?.[1]);
      const rounds = Math.floor(angle('[data-rounds]') / 36 + 1e-6);
      const read = rounds * 100 + (angle('[data-hand]') % 360) / 3.6;
      expect(read / 1000, item.question).toBeCloseTo(value(drawn(item)('w')), 4);
      expect(item.question).not.toContain(drawn(item)('w'));
    }
  });

  it('read-rule: the second mark stands at ten pitches of the rule', () => {
    for (const item of picturesOf('read-rule')) {
      const document = svgOf(item);
      const xs = (selector: string) =>
        [...document.querySelectorAll(selector)].map((e) => Number(/M([\d.]+)/.exec(e.getAttribute('d') ?? '')?.[1]));
      const [zero = 0, tenth = 0] = xs('.mark');
      const ticks = xs('.tick');
      const millimetre = ((ticks.at(-1) ?? 0) - (ticks[0] ?? 0)) / ((ticks.length - 1) / 2);
      expect((tenth - zero) / millimetre / 10).toBeCloseTo(screw(drawn(item)('thread')).P, 2);
    }
  });
});

describe('on paper and in files', () => {
  const lines = (kind: string): PaperLine[] =>
    setPaper(
      EXERCISES.filter((e) => e.kind === kind).map((exercise) => ({ exercise, key: exercise.id, of: exercise.id })),
      '7B',
      'Ada',
      BANK.version,
    );

  it.each(['choice', 'way', 'flank', 'wrong-line', 'order', 'stack', 'table'])(
    '%s: letters on the sheet, the right ones in the key',
    (kind) => {
      for (const line of lines(kind)) {
        const heading = { classCode: '7B', version: '1' };
        const sheet = parseHTML(`<body>${studentSheet([line], 'Ada', heading)}</body>`).document;
        const offered = line.item.offered?.options ?? [];
        expect([...sheet.querySelectorAll('.offered li')].map((li) => li.textContent)).toEqual(
          // An index that is set low has lost its mark.
          offered.map(({ text }, i) => `${LETTERS[i]}) ${text.replaceAll('_', '')}`),
        );
        expect(sheet.querySelectorAll('.blank')).toHaveLength(1);
        const key = parseHTML(`<body>${keySheet([line], 'Ada', heading)}</body>`).document;
        expect(key.querySelector('.answer')?.textContent).toBe(answerText(line.item).replaceAll('_', ''));
        expect(judge(line.item, line.item.offered?.right ?? '').kind).toBe('right');
        expect(judge(line.item, line.item.offered?.right ?? '').says).toContain(line.item.decides ?? '');
        // Where the steps alone do not say which is right, the key ends with what settles it.
        if (kind !== 'choice' && kind !== 'wrong-line')
          expect(key.querySelector('.worked-key > ol > li > ul > li:last-child')?.textContent).toMatch(/[a-z].*\.$/);
      }
    },
  );

  it.each(['2.1', '3.0'] as const)('QTI %s: a response of letters, matched against the right ones', (version) => {
    for (const kind of ['choice', 'order'])
      for (const line of lines(kind)) {
        const text = qtiFiles([line], version, '1')[`items/item-${line.key}.xml`] ?? '';
        const declared = /<(?:qti-)?correct-?[rR]esponse>(.*?)<\/(?:qti-)?correct-?[rR]esponse>/s.exec(text)?.[1] ?? '';
        expect([...declared.matchAll(/value>(\w)</g)].map((m) => m[1]).join('')).toBe(line.item.offered?.right);
        expect(text).toContain(kind === 'order' ? '"ordered"' : '"single"');
        expect(text.match(/<(?:qti-)?simple-?[cC]hoice /g)).toHaveLength(line.item.offered?.options.length ?? 0);
      }
  });

  it('an exercise of the kinds is refused where it lacks what its kind needs', () => {
    const told = (from: string, to: string) => mistakesOf(PAIR.replace(from, to)).join('\n');
    expect(told('answer in µm', 'choose in µm')).toBe('');
    expect(told('answer in µm, 3 digits', 'which way')).toBe('');
    expect(told('answer in µm, 3 digits', 'find the wrong line')).toMatch(/names no line/);
    expect(told('answer in µm, 3 digits', 'put in order 9 lines of foot')).toMatch(/3 to 6 lines/);
    expect(told('answer in µm, 3 digits', 'put in order 5 lines of nobody')).toMatch(/nobody/);
    expect(told('answer', 'picture dial of A\nanswer')).toMatch(/a dial shows a pool of lengths/);
    expect(told('answer', 'picture clock of n\nanswer')).toMatch(/can’t be read/);
  });
});

describe('what is typed in letters', () => {
  const [item] = itemsOf('pair-way');
  if (!item) throw new Error('no item');
  it('may have a bracket or a capital, and is refused where it is none of them', () => {
    const right = item.offered?.right ?? '';
    for (const text of [right, ` ${right.toUpperCase()}) `]) expect(judge(item, text).kind).toBe('right');
    for (const text of ['', 'd', 'ab', '7', 'x'.repeat(5000)]) expect(judge(item, text).kind, text).toBe('unread');
  });
});
