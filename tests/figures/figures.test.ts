/**
 * Every widget for any numbers a reader could type: a picture, a sentence and a table without a hole in them, or one
 * sentence that says why not. Then each drawing held against the engine by the coordinates in it.
 */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Numbers } from '../../widgets/assembly/numbers.ts';
import { gain, mm, netLead, plain, type Result, threadEaten, turnsAvailable } from '../../widgets/engine/index.ts';
import type { Figure } from '../../widgets/figures/kit/figure.ts';
import { tableCsv, tableHtml } from '../../widgets/figures/kit/figure-parts.ts';
import { show, type UnitView } from '../../widgets/input/format.ts';
import { FIGURES } from '../../widgets/site/catalogue.ts';
import { reasonOf } from '../../widgets/words/reason.ts';
import { TASKS } from '../support/chapter-tasks.ts';
import { howMany } from '../support/deep.ts';
import { startOf } from '../support/figure-numbers.ts';
import {
  anyNumbers,
  anyThread,
  anyView,
  attribute,
  numbersOf,
  picture,
  pointsOf,
  still,
  textOf,
  turnOf,
} from '../support/figures.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const widget = (name: string): Figure => {
  const found = FIGURES.get(name);
  if (!found) throw new Error(`no widget ${name}`);
  return found;
};

// numeral() writes what is no number as a question mark by itself; one after a word ends a question.
const HOLE = /NaN|Infinity|undefined|null|\[object|(?<!\p{L})\?|\d[eE][+-]\d/u;

const Delta = ({ threads: { A, C } }: Numbers): number => {
  if (!A || !C) throw new Error('no pair');
  return valueIn(netLead.of({ h_A: plain(A.h), L_A: A.L, h_C: plain(C.h), L_C: C.L })).Delta;
};

const motion = (z: number, view: UnitView = 'metric', digits = 4): string =>
  show(z, { shown: 'motion', digits }, view).replace(/\u00a0/g, ' ');

/** The numbers with which the book opens a figure, one of them drawn anew. */
const oneChanged = (w: Figure): fc.Arbitrary<Numbers> => {
  const { numbers } = startOf(w.name);
  return fc.tuple(anyNumbers(w), fc.nat(w.quantities.length - 1)).map(([any, i]) => {
    const name = w.quantities[i];
    const value = name === undefined ? undefined : any.values[name];
    return name === undefined || value === undefined
      ? numbers
      : { ...numbers, values: { ...numbers.values, [name]: value } };
  });
};

describe('every figure', () => {
  it('has a task that a reader does with it', () => {
    const without = [...FIGURES.keys()].filter((name) => !TASKS.some(({ widget }) => widget === name));
    expect(
      without,
      'without a task: say in tests/support/chapter-tasks.ts what its chapter asks of the reader',
    ).toEqual([]);
  });

  it('is known by one name and has a title, and takes only inputs that exist', async () => {
    const { isSymbol } = await import('../../widgets/engine/index.ts');
    const { isChoice } = await import('../../widgets/input/choices.ts');
    for (const [name, w] of FIGURES) {
      expect(w.name).toBe(name);
      expect(w.title.length).toBeGreaterThan(8);
      for (const q of w.quantities) expect(isSymbol(q), `${name}: ${q}`).toBe(true);
      for (const c of w.choices) expect(isChoice(c), `${name}: ${c}`).toBe(true);
    }
    expect(FIGURES.size).toBeGreaterThanOrEqual(5);
  });

  for (const w of FIGURES.values())
    describe(w.name, () => {
      it('draws, says and lists without a hole, or gives one sentence, for any numbers in any view', () => {
        let drawn = 0;
        const soundFor = (given: fc.Arbitrary<Numbers>) =>
          fc.property(given, anyView, (numbers, view) => {
            const result: Result<string> = still(w).draw(numbers, view);
            if (!result.ok) {
              expect(reasonOf(result)).toMatch(/^[A-Z#\d].{15,}\.$/s);
              expect(reasonOf(result)).not.toMatch(HOLE);
            } else {
              drawn++;
              // An address has a question mark of its own.
              expect(result.value.replace(/ href="[^"]*"/g, '')).not.toMatch(HOLE);
              expect(result.value).toMatch(/<svg|class="refusal"/);
              for (const svg of result.value.match(/<svg[^>]*>/g) ?? [])
                expect(svg).toMatch(/aria-label="[^"]+"|aria-hidden="true"|role="slider"/);
            }
            const says = still(w).caption(numbers, view);
            expect(says).toMatch(/^[A-Z#\d(].{15,}\.$/s);
            expect(says).not.toMatch(HOLE);
            const { head, rows } = still(w).table(numbers, view);
            if (result.ok) expect(rows.length).toBeGreaterThanOrEqual(1);
            for (const row of rows) {
              expect(row.length).toBe(head.length);
              for (const cell of row) expect(cell).not.toMatch(HOLE);
            }
            // What is drawn follows from what the outline names and the numbers; the same numbers, the same picture.
            expect(still(w).renderKey(numbers, view)).toBe(still(w).renderKey(structuredClone(numbers), view));
          });
        const sound = soundFor(anyNumbers(w));
        const many = (numRuns: number) => ({ numRuns, interruptAfterTimeLimit: howMany(8000, 120_000) });
        fc.assert(sound, many(howMany(8, 400)));
        // Some figures refuse most of what chance gives them, which costs little.
        if (drawn <= 3) fc.assert(sound, many(howMany(40, 80)));
        // Where all of the numbers must suit each other, chance hardly ever draws: then those of the book, each changed by itself.
        if (drawn <= 3) fc.assert(soundFor(oneChanged(w)), many(howMany(12, 24)));
        expect(drawn).toBeGreaterThan(3);
      });

      it('shows no metric unit in the inch view and no inch unit in the metric view', () => {
        fc.assert(
          fc.property(anyNumbers(w), (numbers) => {
            for (const [view, foreign] of [
              ['metric', /\d\u00a0(?:in|thou|tenths|millionths)\b/],
              ['inch', /\d\u00a0(?:mm|µm)(?![\w·])/],
            ] as const) {
              const drawn = still(w).draw(numbers, view);
              const words = [still(w).caption(numbers, view), drawn.ok ? drawn.value : ''].join(' ');
              expect(words, view).not.toMatch(foreign);
            }
          }),
          { numRuns: howMany(3, 200), interruptAfterTimeLimit: howMany(5000, 60_000) },
        );
      });

      it('is never drawn without the threads it names', () => {
        if (w.threads.length === 0) return;
        const none: Numbers = { threads: {}, values: {}, choices: {}, texts: {} };
        expect(() => valueIn(still(w).draw(none, 'metric'))).toThrow(/thread|without its (?:A|B|thread)\./);
      });
    });
});

describe('section', () => {
  const section = widget('section');
  const ARRANGEMENTS = ['in line', 'nested', 'one spindle, two nuts'] as const;
  const drawing = (numbers: Numbers, n: number, view: UnitView = 'metric'): Document =>
    picture(valueIn(still(section).draw({ ...numbers, values: { n } }, view)));
  const path = (document: Document, name: string) => pointsOf(attribute(document, `[data-path="${name}"]`, 'd'));

  /** Picture units per millimetre, from the crests of the turned part inside the base: its major diameter there is d_A. */
  const scaleOf = (document: Document, d: number): number => {
    const [low, high] = rangeOf(document);
    const xs = path(document, 'turned')
      .filter(([, y]) => y > low && y < high)
      .map(([x]) => x);
    return (Math.max(...xs) - Math.min(...xs)) / d;
  };
  /** From top to bottom of the base’s thread, in picture coordinates. */
  const rangeOf = (document: Document): [number, number] => {
    // The first two shapes of the base are its two sides; other shapes (a bridge) lie lower.
    const first = attribute(document, '[data-path="base"]', 'd').split('Z')[0];
    const ys = pointsOf(first).map(([, y]) => y);
    return [Math.min(...ys), Math.max(...ys)];
  };

  const PAIRS = [
    ['M10x1.5', '3/8-16', 'in line'],
    ['M10x1.5 LH', 'M10x1.5', 'in line'],
    ['M12x1.5', 'M8x1.25', 'nested'],
    ['3/8-24', 'M6x1', 'one spindle, two nuts'],
    ['M16x2 2 start', 'M16x1.5 LH', 'in line'],
  ] as const;

  for (const [a, c, arrangement] of PAIRS)
    describe(`${a} with ${c}, ${arrangement}`, () => {
      const numbers = numbersOf({ A: a, C: c }, {}, { arrangement, lock: 'holds' });
      const { A } = numbers.threads;
      if (!A) throw new Error('no thread A');
      const start = drawing(numbers, 0);
      const scale = scaleOf(start, A.d);

      it('is to scale: ridges of thread A stand one pitch apart', () => {
        const [low, high] = rangeOf(start);
        const crest = Math.max(
          ...path(start, 'turned')
            .filter(([, y]) => y > low && y < high)
            .map(([x]) => x),
        );
        const ys = path(start, 'turned')
          .filter(([x, y]) => Math.abs(x - crest) < 0.02 && y > low + 1 && y < high - 1)
          .map(([, y]) => y)
          .sort((p, q) => p - q);
        // Two corners to a crest, so every second spacing pairs up.
        expect(ys.length).toBeGreaterThan(4);
        for (let i = 2; i < ys.length; i++) expect((ys[i] ?? 0) - (ys[i - 2] ?? 0)).toBeCloseTo(A.P * scale, 1);
      });

      it('holds the base and the ridges of thread A still in space while it is turned', () => {
        // Outside the core of thread A only: a sleeve has thread C inside.
        const xs = path(start, 'base').map(([x]) => x);
        const axis = (Math.min(...xs) + Math.max(...xs)) / 2;
        const core = 0.45 * (A.d - 1.3 * A.P) * scale;
        const inBase = (document: Document) => {
          const [low, high] = rangeOf(document);
          return path(document, 'turned')
            .filter(([x, y]) => y > low + 0.5 && y < high - 0.5 && Math.abs(x - axis) > core)
            .map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`)
            .sort();
        };
        const still = inBase(start);
        expect(still.length).toBeGreaterThan(8);
        for (const n of [-3, -0.7, 1 / 6, 2.5, 4]) {
          const now = drawing(numbers, n);
          expect(path(now, 'base')).toEqual(path(start, 'base'));
          const points = inBase(now);
          expect(points.length).toBe(still.length);
          // A coordinate is rounded to a hundredth, so a tenth may fall either way.
          for (const [i, point] of points.entries()) {
            const [x = 0, y = 0] = point.split(' ').map(Number);
            const [x0 = 0, y0 = 0] = (still[i] ?? '').split(' ').map(Number);
            expect(Math.hypot(x - x0, y - y0)).toBeLessThan(0.2);
          }
        }
      });

      it('shifts the carried part, every point of it, by the net motion at the scale of the picture', () => {
        for (const n of [-4, -1.3, 0.5, 1, 3.25]) {
          const [before, after] = [path(start, 'carried'), path(drawing(numbers, n), 'carried')];
          expect(after.length).toBe(before.length);
          for (const [i, [x, y]] of before.entries()) {
            const [x1, y1] = after[i] ?? [0, 0];
            expect(x1).toBeCloseTo(x, 1);
            expect(Math.abs(y - y1 - n * Delta(numbers) * scale), `n = ${n}`).toBeLessThan(0.05 + 0.002 * Math.abs(n));
          }
        }
      });

      it('carries the turned part’s ends down by lead A a turn, right hand', () => {
        const bottom = (document: Document) => Math.max(...path(document, 'turned').map(([, y]) => y));
        for (const n of [-2, 1, 3]) {
          const down = bottom(drawing(numbers, n)) - bottom(start);
          expect(down / scale).toBeCloseTo(n * A.h * A.L, 1);
        }
      });

      it('says, lists and shows one and the same motion', () => {
        for (const view of ['metric', 'inch'] as const)
          for (const n of [-2, 0, 1, 3]) {
            const now = { ...numbers, values: { n } };
            const z = n * Delta(numbers);
            const read = textOf(drawing(numbers, n, view), '[data-read="carried"]');
            expect(read.replace('+', '')).toBe(motion(z, view));
            expect(read.startsWith('+')).toBe(z > 0);
            if (z !== 0)
              expect(
                still(section)
                  .caption(now, view)
                  .replace(/\u00a0/g, ' '),
              ).toContain(motion(Math.abs(z), view));
            const row = still(section)
              .table(now, view)
              .rows.find((r) => r[0] === String(n).replace('-', '−'));
            expect(row?.[3]?.replace(/\u00a0/g, ' ')).toBe(read);
          }
      });

      it('turns the dial’s hand by the net motion and the knob by the turns', () => {
        for (const n of [-1.5, 0.25, 2]) {
          const now = drawing(numbers, n);
          const division = Number(/([\d]+) µm/.exec(textOf(now, '.dial .division'))?.[1]) / 1000;
          expect(turnOf(attribute(now, '[data-hand]', 'transform'))).toBeCloseTo(
            ((n * Delta(numbers)) / division) * 3.6,
            1,
          );
          expect(turnOf(attribute(now, '[data-turn]', 'transform'))).toBeCloseTo(n * 360, 1);
          expect(still(section).caption({ ...numbers, values: { n } }, 'metric')).toMatch(/divisions of \d+ µm/);
        }
      });
    });

  it('says of equal leads that it never will move, without dividing', () => {
    const says = still(section).caption(
      numbersOf({ A: 'M10', C: 'M10' }, { n: 2 }, { arrangement: 'in line', lock: 'holds' }),
      'metric',
    );
    expect(says).toContain('the leads are equal, so it will never move');
    expect(says).toContain('the carried part stays');
  });

  it('moves the carried part by thread A alone where the lock gives', () => {
    const numbers = numbersOf({ A: 'M10x1.5', C: '3/8-16' }, { n: 1 }, { arrangement: 'in line', lock: 'gives' });
    expect(textOf(picture(valueIn(still(section).draw(numbers, 'metric'))), '[data-read="carried"]')).toBe('−1.500 mm');
  });

  it('refuses a spindle that does not go inside, naming both threads and the wall', () => {
    const numbers = numbersOf({ A: 'M12x1.75', C: 'M10x1.5' }, { n: 0 }, { arrangement: 'nested', lock: 'holds' });
    expect(reasonIn(still(section).draw(numbers, 'metric'))).toMatch(
      /M10×1\.5 does not go inside M12×1\.75.*wall.*−0\.07/,
    );
  });

  it('draws every arrangement or says why, for any pair and any turns it has room for', () => {
    fc.assert(
      fc.property(
        anyThread,
        anyThread,
        fc.constantFrom(...ARRANGEMENTS),
        fc.integer({ min: -24, max: 24 }),
        (A, C, arrangement, flats) => {
          const numbers: Numbers = {
            threads: { A, C },
            values: { n: flats / 6 },
            choices: { arrangement, lock: 'holds' },
            texts: {},
          };
          const drawn = still(section).draw(numbers, 'metric');
          if (!drawn.ok) {
            expect(arrangement).toBe('nested');
            return;
          }
          // Nothing leaves the paper by more than a line. Read from the text: a fine thread has thousands of corners.
          const [, width, height] = /class="section" viewBox="0 0 (\d+) (\d+)"/.exec(drawn.value) ?? [];
          const label = `${A.designation} ${C.designation} ${arrangement} ${flats}`;
          for (const [, name, d] of drawn.value.matchAll(
            /data-path="(base|turned|carried|guide)"[^>]*? d="([^"]*)"/g,
          )) {
            const points = pointsOf(d);
            const off = points.find(([x, y]) => !(x > -2 && x < Number(width) + 2 && y > -2 && y < Number(height) + 2));
            expect(off, `${name} of ${label}`).toBeUndefined();
          }
        },
      ),
      { numRuns: howMany(40, 400) },
    );
  });
});

describe('ramp', () => {
  const ramp = widget('ramp');
  const draw = (text: string, degrees: number) =>
    picture(valueIn(still(ramp).draw(numbersOf({ thread: text }, { theta: (degrees * Math.PI) / 180 }), 'metric')));

  it('has a ramp as high as the lead on a foot as long as once round, both at one scale', () => {
    for (const text of ['1/4-28', 'M16xPh3P1.5', 'M10x1.5 LH', 'M64x6']) {
      const numbers = numbersOf({ thread: text }, { theta: 0 });
      const { thread } = numbers.threads;
      if (!thread) throw new Error('no thread');
      const [[x0, y0] = [0, 0], [x1, y1] = [0, 0]] = pointsOf(attribute(draw(text, 0), '.ramp-line:not(.other)', 'd'));
      const d2 = thread.d - 0.649519 * thread.P;
      expect(Math.abs(y1 - y0) / Math.abs(x1 - x0)).toBeCloseTo(thread.L / (Math.PI * d2), 3);
      // A right-hand ramp rises to the right, a left-hand one to the left.
      expect(Math.sign((x1 - x0) * (y0 - y1))).toBe(thread.h);
    }
  });

  it('lets the point walk up the ramp by its share of a turn', () => {
    for (const text of ['1/4-28', 'M10x1.5 LH'])
      for (const degrees of [0, 30, 90, 359, -90, 750]) {
        const document = draw(text, degrees);
        const [[x0, y0] = [0, 0], [x1, y1] = [0, 0]] = pointsOf(attribute(document, '.ramp-line:not(.other)', 'd'));
        const [cx, cy] = ['cx', 'cy'].map((c) => Number(attribute(document, '[data-walk="ramp"]', c)));
        const share = (((degrees / 360) % 1) + 1) % 1;
        const [left, right] = [Math.min(x0, x1), Math.max(x0, x1)];
        expect(cx).toBeCloseTo(left + share * (right - left), 1);
        // On the ramp's own line.
        expect(cy).toBeCloseTo(y0 + (((cx ?? 0) - x0) * (y1 - y0)) / (x1 - x0), 1);
      }
  });

  it('reads 75.60 µm down for 30° of 1/4-28 in picture, sentence and table alike', () => {
    expect(textOf(draw('1/4-28', 30), '[data-read="carried"]')).toBe('−75.60 µm');
    const numbers = numbersOf({ thread: '1/4-28' }, { theta: Math.PI / 6 });
    expect(
      still(ramp)
        .caption(numbers, 'metric')
        .replace(/\u00a0/g, ' '),
    ).toContain('moves down 75.60 µm');
    expect(
      still(ramp)
        .table(numbers, 'metric')
        .rows.find(([a]) => a === '30°')?.[2]
        ?.replace(/\u00a0/g, ' '),
    ).toBe('−75.60 µm');
  });
});

describe('divided-turn', () => {
  const divided = widget('divided-turn');
  const numbers = (a: string, c: string, divider: string, k = 50, n = 0.5) =>
    numbersOf({ A: a, C: c }, { n, k_d: k, theta_h: 0.026 }, { divider } as never);

  it('lays the net lead out in as many equal steps as the divider has', () => {
    for (const [divider, steps] of [
      ['hexagon', 6],
      ['square', 4],
      ['twelve points', 12],
      ['knob', 50],
    ] as const) {
      const document = picture(valueIn(still(divided).draw(numbers('M10x1.5', '3/8-16', divider), 'metric')));
      const xs = [...document.querySelectorAll('.rung')].map(
        (r) => pointsOf(r.getAttribute('d'))[0]?.[0] ?? Number.NaN,
      );
      expect(xs.length).toBe(steps + 1);
      const bar =
        attribute(document, '.bar', 'd')
          .match(/[\d.]+/g)
          ?.map(Number) ?? [];
      expect([xs[0], xs.at(-1)]).toEqual([bar[0], bar.at(-1)]);
      for (let i = 1; i < xs.length; i++)
        expect((xs[i] ?? 0) - (xs[i - 1] ?? 0)).toBeCloseTo(((xs.at(-1) ?? 0) - (xs[0] ?? 0)) / steps, 1);
    }
  });

  it('says one flat of the Foot is 14.58 µm, in picture, sentence and table', () => {
    const foot = numbers('M10x1.5', '3/8-16', 'hexagon');
    expect(
      textOf(picture(valueIn(still(divided).draw(foot, 'metric'))), '.keys [data-sym="s"], text[data-sym="s"]'),
    ).toContain('one flat: 14.58 µm');
    expect(
      still(divided)
        .caption(foot, 'metric')
        .replace(/\u00a0/g, ' '),
    ).toContain('one flat of 6 is 14.58 µm');
    expect(
      still(divided)
        .table(foot, 'metric')
        .rows[1]?.[2]?.replace(/\u00a0/g, ' '),
    ).toContain('14.58 µm');
  });

  it('refuses equal leads in words', () => {
    expect(reasonIn(still(divided).draw(numbers('M10', 'M10', 'hexagon'), 'metric'))).toContain(
      'The two leads are equal',
    );
  });
});

describe('thread-eaten', () => {
  const eaten = widget('thread-eaten');
  it('draws what is used and what there is at one scale', () => {
    fc.assert(
      fc.property(anyThread, anyThread, fc.integer({ min: 1, max: 200 }), (A, C, tenths) => {
        const w = tenths / 10;
        const numbers: Numbers = {
          threads: { A, C },
          values: { S_w: mm(w), X_A: mm(10), X_C: mm(12) },
          choices: {},
          texts: { adjuster: 'none' },
        };
        const drawn = still(eaten).draw(numbers, 'metric');
        const D = Delta(numbers);
        if (D === 0) {
          expect(reasonIn(drawn)).toContain('leads are equal');
          return;
        }
        const document = picture(valueIn(drawn));
        const width = (selector: string) => Number(attribute(document, selector, 'width'));
        const uses = (L: number) =>
          valueIn(threadEaten.of({ w: mm(w), G: plain(valueIn(gain.of({ L: mm(L), Delta: mm(D) })).G) })).X;
        const scale = width('.eaten.turned .have') / 10;
        // The longest bar fills the picture; the shortest is still seen.
        const bar = (length: number) => Math.max(1.5, length * scale);
        expect(width('.eaten.carried .have')).toBeCloseTo(12 * scale, 0);
        for (const [selector, length] of [
          ['.eaten.turned .uses', uses(A.L)],
          ['.eaten.carried .uses', uses(C.L)],
          ['.wanted .uses, .wanted rect', w],
        ] as const)
          expect(Math.abs(width(selector) - bar(length)), selector).toBeLessThan(
            0.05 + 0.006 * (length / 10) * (1 + 1 / scale),
          );
        expect(document.querySelectorAll('.over').length).toBe(Number(uses(A.L) > 10) + Number(uses(C.L) > 12));
        // Never by colour alone.
        expect((textOf(document, 'body').match(/more than there is/g) ?? []).length).toBe(
          document.querySelectorAll('.over').length,
        );
      }),
      { numRuns: howMany(25, 250) },
    );
  });

  it('says which thread runs out first and after how many turns', () => {
    const numbers = {
      ...numbersOf({ A: 'M10x1.5', C: '3/8-16' }, { S_w: 0.4, X_A: 10, X_C: 10.475 }),
      texts: { adjuster: 'none' },
    };
    const { n_max } = valueIn(turnsAvailable.of({ X_A: mm(10), L_A: mm(1.5), X_C: mm(10.475), L_C: mm(1.5875) }));
    expect(n_max).toBeCloseTo(6.598, 3);
    expect(still(eaten).caption(numbers, 'metric')).toContain('Thread C runs out first, after 6.60 turns');
  });
});

describe('motion-plot', () => {
  const plot = widget('motion-plot');
  it('puts each mark on the curve that Plot drew, at both ends and in the middle', () => {
    for (const [a, c] of [
      ['M10x1.5', '3/8-16'],
      ['M12x1.5', 'M8x1.25'],
      ['M10 LH', 'M10'],
    ] as const)
      for (const n of [-4, 0, 1.5, 4]) {
        const document = picture(valueIn(still(plot).draw(numbersOf({ A: a, C: c }, { n }), 'metric')));
        for (const mark of document.querySelectorAll('[data-mark]')) {
          const [panel = '', key = ''] = mark.getAttribute('data-mark')?.split('-') ?? [];
          const box = [...document.querySelectorAll('.plot-box')][panel === 'wide' ? 0 : 1];
          const line = box?.querySelector(`.curve.${key} path, path.curve.${key}`);
          const [[x0, y0] = [0, 0], [x1, y1] = [0, 0]] = pointsOf(line?.getAttribute('d'));
          const share = (n + 4) / 8;
          expect(Number(mark.getAttribute('cx')), `${panel} ${key} ${n}`).toBeCloseTo(x0 + share * (x1 - x0), 0);
          expect(Number(mark.getAttribute('cy')), `${panel} ${key} ${n}`).toBeCloseTo(y0 + share * (y1 - y0), 0);
        }
      }
  });

  it('says where the carried part stands, as the table does', () => {
    const numbers = numbersOf({ A: 'M10x1.5', C: '3/8-16' }, { n: 3 });
    const words = still(plot)
      .caption(numbers, 'metric')
      .replace(/\u00a0/g, ' ');
    expect(words).toContain('At 3 turns it is at +262.5 µm');
    expect(
      still(plot)
        .table(numbers, 'metric')
        .rows.find(([n]) => n === '3')
        ?.at(-1)
        ?.replace(/\u00a0/g, ' '),
    ).toBe('262.5 µm');
  });
});

describe('tableHtml and tableCsv', () => {
  it('write any cell as text', () => {
    const table = { head: ['a,b', 'c'], rows: [['<b>"x"</b>', 'line\nbreak']] };
    expect(tableHtml(table)).not.toContain('<b>');
    expect(picture(tableHtml(table)).querySelector('td')?.textContent).toBe('<b>"x"</b>');
    expect(tableCsv(table)).toBe('"a,b",c\r\n"<b>""x""</b>","line\nbreak"\r\n');
    expect(tableCsv({ head: ['part'], rows: [['=cmd()'], ['−5 µm']] })).toBe("part\r\n'=cmd()\r\n−5 µm\r\n");
  });
});
