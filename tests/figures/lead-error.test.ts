/**
 * The figures of lead error and of the drunken thread against the engine: what is drawn is read back through the labels
 * that Plot wrote on the axes, and picture, sentence and table say the same.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Numbers } from '../../widgets/assembly/numbers.ts';
import {
  localRate,
  mm,
  netLead,
  newtons,
  plain,
  rssLeadError,
  simulate,
  turns,
  worstLeadError,
} from '../../widgets/engine/index.ts';
import type { Figure } from '../../widgets/figures/kit/figure.ts';
import { roundUp } from '../../widgets/figures/kit/plots/frame.ts';
import { FIGURES } from '../../widgets/site/catalogue.ts';
import { attribute, numbersOf, picture, pointsOf, still, textOf } from '../support/figures.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const named = (name: string): Figure => {
  const found = FIGURES.get(name);
  if (!found) throw new Error(`no widget ${name}`);
  return found;
};
const leadErrorFigure = named('lead-error');
const drunkenThread = named('drunken-thread');

const spaced = (text: string): string => text.replace(/\u00a0/g, ' ');
const drawn = (widget: Figure, numbers: Numbers): Document => picture(valueIn(still(widget).draw(numbers, 'metric')));

/** From a place in the picture to turns and mm, by the labels of the axes of the n-th plot, which are in µm. */
const rulers = (document: Document, plot: number) => {
  const chart = [...document.querySelectorAll('.plot-box')][plot];
  const ticks = (axis: 'x' | 'y') =>
    [
      ...(chart?.querySelectorAll(
        axis === 'y' ? '.chart g[text-anchor="end"] > text' : '.chart g:not([text-anchor]) > text',
      ) ?? []),
    ]
      // The frame has ticks on all four sides, and numbers on two.
      .filter((label) => label.textContent !== '')
      .map((label) => {
        const [, x, y] = /translate\(([\d.]+),([\d.]+)\)/.exec(label.getAttribute('transform') ?? '') ?? [];
        return { at: Number(axis === 'x' ? x : y), says: Number(label.textContent?.replace('−', '-')) };
      });
  const along = (axis: 'x' | 'y') => {
    const all = ticks(axis);
    const [first, last] = [all[0], all.at(-1)];
    if (!first || !last || all.length < 2) throw new Error('an axis without ticks');
    return (at: number) => first.says + ((at - first.at) * (last.says - first.says)) / (last.at - first.at);
  };
  const [x, y] = [along('x'), along('y')];
  return { n: x, z: (at: number) => y(at) / 1000, half: Math.abs(y(0.006) - y(0)) / 1000 };
};

const shape = (document: Document, name: string) => pointsOf(attribute(document, `[data-shape="${name}"]`, 'd'));
const dot = (document: Document, name: string): [number, number] => [
  Number(attribute(document, `[data-dot="${name}"]`, 'cx')),
  Number(attribute(document, `[data-dot="${name}"]`, 'cy')),
];

const FOOT = { A: 'M10x1.5', C: '3/8-16' };
const FINE = { A: 'M4x0.7', C: '8-36' };
const apart = { errors: 'independent' } as const;
const alike = { errors: 'the same error' } as const;

const leadsOf = ({ threads: { A, C } }: Numbers) => {
  if (!A || !C) throw new Error('no pair');
  return { L_A: A.L, L_C: C.L, h_A: plain(A.h), h_C: plain(C.h) };
};
const deltaOf = (numbers: Numbers) => valueIn(netLead.of(leadsOf(numbers))).Delta;

describe('lead-error', () => {
  const error = fc.integer({ min: -50, max: 50 }).map((i) => i / 10_000);
  const anyPair = fc.constantFrom(FOOT, FINE, { A: 'M12x1.5', C: 'M8x1.25' }, { A: 'M10x1.5 LH', C: 'M10x1.5' });

  it('draws the motion of the true leads less the nominal one, and the true net lead, by the labels of its axes', () => {
    fc.assert(
      fc.property(anyPair, error, error, fc.integer({ min: -40, max: 40 }), (pair, eps_A, eps_C, tenths) => {
        const n = tenths / 10;
        const numbers = numbersOf(pair, { eps_A, eps_C, n }, apart);
        const { L_A, L_C, ...hands } = leadsOf(numbers);
        // The long way: a net lead of threads that really have these leads.
        const real = valueIn(netLead.of({ ...hands, L_A: mm(L_A * (1 + eps_A)), L_C: mm(L_C * (1 + eps_C)) })).Delta;
        const document = drawn(leadErrorFigure, numbers);
        const [off, rate] = [rulers(document, 0), rulers(document, 1)];
        const unit = /in mm/.test(textOf(document, '.panel-name')) ? 1000 : 1;
        const rateUnit = /in mm/.test([...document.querySelectorAll('.panel-name')][1]?.textContent ?? '') ? 1000 : 1;
        const [x, y] = dot(document, 'off');
        expect(off.n(x)).toBeCloseTo(n, 3);
        expect(Math.abs(off.z(y) * unit - n * (real - deltaOf(numbers)))).toBeLessThan(off.half * unit);
        expect(Math.abs(rate.z(dot(document, 'rate')[1]) * rateUnit - real)).toBeLessThan(rate.half * rateUnit);
        for (const [px, py] of shape(document, 'off-real'))
          expect(Math.abs(off.z(py) * unit - off.n(px) * (real - deltaOf(numbers)))).toBeLessThan(
            1.1 * off.half * unit,
          );
      }),
      { numRuns: 25 },
    );
  });

  it('draws the worst case and the root-sum-square as bands, each with its own broken edge', () => {
    const numbers = numbersOf(FOOT, { eps_A: 0.001, eps_C: -0.002, n: 2 }, apart);
    const p = { ...leadsOf(numbers), eps_A: plain(0.001), eps_C: plain(-0.002), Delta: deltaOf(numbers) };
    const document = drawn(leadErrorFigure, numbers);
    const off = rulers(document, 0);
    for (const [name, eps] of [
      ['off-worst', valueIn(worstLeadError.of(p)).eps_w],
      ['off-rss', valueIn(rssLeadError.of(p)).eps_r],
    ] as const) {
      const reach = Math.max(...shape(document, name).map(([, y]) => Math.abs(off.z(y))));
      expect(reach).toBeCloseTo(4 * 0.0875 * eps, 4);
      // Both edges go through nought: opposite corners are opposite in both coordinates.
      const [[x0, y0] = [0, 0], [x1, y1] = [0, 0]] = shape(document, name);
      expect(off.n(x0) + off.n(x1)).toBeCloseTo(0, 3);
      expect(off.z(y0) + off.z(y1)).toBeCloseTo(0, 4);
    }
    const dashes = ['worst', 'rss', 'nominal'].map((k) =>
      attribute(document, `[data-shape="off-${k}"]`, 'stroke-dasharray'),
    );
    expect(new Set(dashes).size).toBe(3);
  });

  it('±0.1 % on the Foot: 3.53 % and 2.50 % in picture, sentence and table alike', () => {
    const numbers = numbersOf(FOOT, { eps_A: -0.001, eps_C: 0.001, n: 4 }, apart);
    const document = drawn(leadErrorFigure, numbers);
    expect(textOf(document, '[data-read="eps"]')).toBe('+3.53 %');
    expect(textOf(document, '[data-read="worst"]')).toBe('±3.53 %');
    expect(textOf(document, '[data-read="rss"]')).toBe('±2.50 %');
    expect(textOf(document, '[data-read="off"]')).toBe('+12.4 µm');
    expect(spaced(still(leadErrorFigure).caption(numbers, 'metric'))).toBe(
      'M10×1.5 with 3/8-16 UNC, thread A 0.1 % short, thread C 0.1 % long: a turn moves 90.59 µm instead of 87.50 µm, +3.53 %; after 4 turns the carried part is off by +12.4 µm. Errors of that size either way come to ±3.53 % at worst and ±2.50 % by root-sum-square (gains 17.14 and 18.14).',
    );
    const row = still(leadErrorFigure)
      .table(numbers, 'metric')
      .rows.find(([n]) => n === '4');
    expect(row?.map(spaced)).toEqual(['4', '350.0 µm', '362.4 µm', '+12.4 µm', '12.4 µm', '8.74 µm']);
  });

  it('linked, gives both threads the error of thread A and is not magnified, whatever stands in the other field', () => {
    const numbers = numbersOf(FINE, { eps_A: 0.003, eps_C: -0.001, n: 4 }, alike);
    const document = drawn(leadErrorFigure, numbers);
    expect(textOf(document, '[data-read="eps"]')).toBe('+0.300 %');
    expect(textOf(document, '[data-slider-text="eps_C"]')).toBe('+0.3 %');
    expect(spaced(still(leadErrorFigure).caption(numbers, 'metric'))).toContain(
      'both threads 0.3 % long, by the same share',
    );
    expect(spaced(still(leadErrorFigure).caption(numbers, 'metric'))).toContain(
      'The same error on both is not multiplied',
    );
    expect(textOf(document, '.legend')).toContain('worst case, if they were independent');
  });

  it('keeps its picture while the errors move within the scale, so that a drag only moves marks', () => {
    const at = (eps_A: number, n: number) =>
      still(leadErrorFigure).renderKey(numbersOf(FOOT, { eps_A, eps_C: 0.001, n }, apart), 'metric');
    expect(at(0.00105, 1)).toBe(at(0.00101, -3));
    expect(at(0.005, 1)).not.toBe(at(0.001, 1));
  });

  it('draws threads that are true to their leads as a line along nought', () => {
    const numbers = numbersOf(FOOT, { eps_A: 0, eps_C: 0, n: 1 }, apart);
    const document = drawn(leadErrorFigure, numbers);
    expect(new Set(shape(document, 'off-real').map(([, y]) => y)).size).toBe(1);
    expect(still(leadErrorFigure).caption(numbers, 'metric')).toContain('thread A without lead error');
  });

  it('refuses equal leads with the engine’s sentence', () => {
    expect(
      reasonIn(
        still(leadErrorFigure).draw(numbersOf({ A: 'M10', C: 'M10' }, { eps_A: 0, eps_C: 0, n: 1 }, apart), 'metric'),
      ),
    ).toBe(
      'The two leads are equal, so there is no net lead to compare the error with: choose threads whose leads differ.',
    );
  });
});

describe('drunken-thread', () => {
  const half = { a_A: 0.0005, phi_A: 0, a_C: 0.0005, phi_C: 0 };
  const amplitude = fc.integer({ min: 0, max: 40 }).map((i) => i / 1e4);
  const phase = fc.integer({ min: -20, max: 20 }).map((i) => i / 20);
  const anyPair = fc.constantFrom(FOOT, FINE, { A: '3/8-24', C: 'M6x1' }, { A: 'M6x1', C: '1/4-28' });

  it('draws where the simulator puts the carried part, and the slope of that, all along the curve', () => {
    fc.assert(
      fc.property(anyPair, amplitude, phase, amplitude, phase, (pair, a_A, phi_A, a_C, phi_C) => {
        const numbers = numbersOf(pair, { a_A, phi_A, a_C, phi_C, n: 0.7 });
        const { A, C } = numbers.threads;
        if (!A || !C) throw new Error('no pair');
        const document = drawn(drunkenThread, numbers);
        const [place, rate] = [rulers(document, 0), rulers(document, 1)];
        const points = shape(document, 'place-real');
        expect(points.length).toBeGreaterThan(150);
        const none = { turned: newtons(0), carried: newtons(0) };
        const moves = points.map(([x]) => place.n(x));
        const run = valueIn(
          simulate(
            {
              A: { h: A.h, L: A.L, play: mm(0), periodic: mm(a_A), phase: turns(phi_A) },
              C: { h: C.h, L: C.L, play: mm(0), periodic: mm(a_C), phase: turns(phi_C) },
              loads: { ...none, carried: newtons(10) },
              drags: none,
            },
            moves.map((n, i) => ({ kind: 'turn', turns: turns(n - (moves[i - 1] ?? 0)) })),
          ),
        );
        for (const [i, [, y]] of points.entries()) {
          // A place is rounded to a hundredth across as well as up.
          const slope = Math.abs(deltaOf(numbers)) + 2 * Math.PI * (a_A + a_C);
          expect(Math.abs(place.z(y) - (run.carried[i + 1] ?? 0))).toBeLessThan(place.half + 3e-5 * slope);
        }
        for (const [x, y] of shape(document, 'rate-real')) {
          const { v_n } = valueIn(
            localRate.of({
              Delta: deltaOf(numbers),
              n: turns(rate.n(x)),
              a_A: mm(a_A),
              phi_A: turns(phi_A),
              a_C: mm(a_C),
              phi_C: turns(phi_C),
            }),
          );
          expect(Math.abs(rate.z(y) - v_n)).toBeLessThan(rate.half + 1.3e-3 * (a_A + a_C));
        }
      }),
      { numRuns: 25 },
    );
  });

  it('hatches exactly where the drawn rate is below nought, and names it in words over every stretch', () => {
    const document = drawn(drunkenThread, numbersOf(FINE, { ...half, n: 0.5 }));
    const rate = rulers(document, 1);
    const d = attribute(document, '[data-shape="rate-back"]', 'd');
    const edges = [...d.matchAll(/M([\d.]+) [\d.]+H([\d.]+)/g)].map(([, a, b]) => [
      rate.n(Number(a)),
      rate.n(Number(b)),
    ]);
    expect(edges.length).toBe(2);
    for (const [x, y] of shape(document, 'rate-real')) {
      const n = rate.n(x);
      if (Math.abs(rate.z(y)) > 2 * rate.half)
        expect(edges.some(([a = 0, b = 0]) => n >= a && n <= b)).toBe(rate.z(y) < 0);
    }
    for (const panel of ['place', 'rate']) {
      const words = [0, 1, 2].map((i) => textOf(document, `[data-word="${panel}-${i}"]`));
      expect(words).toEqual(['runs back', 'runs back', '']);
    }
    // Two hatchings that differ in direction and spacing, not by colour alone.
    const patterns = [...document.querySelectorAll('pattern')].map((p) => [
      p.getAttribute('width'),
      p.getAttribute('patternTransform'),
    ]);
    expect(new Set(patterns.map(String)).size).toBe(2);
  });

  it('says “nearly stands” where it does and does not run back', () => {
    const numbers = numbersOf(FINE, { ...half, a_C: 0.00037, n: 0.5 });
    const document = drawn(drunkenThread, numbers);
    expect(attribute(document, '[data-shape="rate-back"]', 'd')).toBe('');
    expect(textOf(document, '[data-word="rate-0"]')).toBe('nearly stands');
    expect(spaced(still(drunkenThread).caption(numbers, 'metric'))).toContain(
      'just short of the net lead, so it nearly stands',
    );
    expect(spaced(still(drunkenThread).caption(numbers, 'metric'))).toMatch(
      /its rate is 0\.0\d+ µm a turn: it nearly stands\.$/,
    );
  });

  it('half a micrometre on each thread of the Fine foot: picture, sentence and table say it runs back', () => {
    const numbers = numbersOf(FINE, { ...half, n: 0.5 });
    const document = drawn(drunkenThread, numbers);
    expect(textOf(document, '[data-read="slowest"]')).toBe('−0.7276 µm');
    expect(textOf(document, '[data-read="here"]')).toBe('−0.7276 µm: runs back');
    expect(textOf(document, '[data-read="run"]')).toBe('0.07475 µm');
    expect(spaced(still(drunkenThread).caption(numbers, 'metric'))).toBe(
      'M4×0.7 with #8-36 UNF, 5.556 µm a turn, with periodic errors of amplitude 0.5 µm and 0.5 µm: at their phases together 1.000 µm, which changes the rate by up to 6.283 µm a turn, more than the net lead, so the carried part runs back 0.07475 µm over 15.5 % of every turn, first from 0.423 to 0.577 turns, and stands still at both ends of that stretch. At 0.5 turns it is at 2.778 µm and its rate is −0.7276 µm a turn: it runs back.',
    );
    const { rows } = still(drunkenThread).table(numbers, 'metric');
    expect(rows.find(([n]) => n === '0.5')?.map(spaced)).toEqual([
      '0.5',
      '2.778 µm',
      '0 µm',
      '2.778 µm',
      '−0.7276 µm',
      'runs back',
    ]);
    expect(
      rows
        .find(([n]) => n === '1')
        ?.map(spaced)
        .slice(3),
    ).toEqual(['5.556 µm', '11.84 µm', 'moves on']);
  });

  it('half a turn apart, equal waves cancel: no hatching, and a straight line', () => {
    const document = drawn(drunkenThread, numbersOf(FINE, { ...half, phi_C: 0.5, n: 1 }));
    expect(attribute(document, '[data-shape="place-back"]', 'd')).toBe('');
    expect(attribute(document, '[data-shape="place-slow"]', 'd')).toBe('');
    const [real, nominal] = [shape(document, 'place-real'), shape(document, 'place-nominal')];
    expect([real[0], real.at(-1)]).toEqual([nominal[0], nominal.at(-1)]);
    expect(textOf(document, '[data-read="slowest"]')).toBe('5.556 µm');
  });

  it('of a pair that clockwise turning lowers, runs back where it rises', () => {
    // M12×1.5 with M8×1.25: −250 µm a turn; 2π·50 µm = 314 µm.
    const numbers = numbersOf({ A: 'M12x1.5', C: 'M8x1.25' }, { a_A: 0.05, phi_A: 0, a_C: 0, phi_C: 0, n: 0 });
    const document = drawn(drunkenThread, numbers);
    const rate = rulers(document, 1);
    expect(rate.z(dot(document, 'rate')[1])).toBeGreaterThan(0.05);
    expect(textOf(document, '[data-read="here"]')).toBe('64.16 µm: runs back');
    expect(textOf(document, '[data-word="rate-1"]')).toBe('runs back');
  });

  it('refuses equal leads with the engine’s sentence', () => {
    expect(
      reasonIn(still(drunkenThread).draw(numbersOf({ A: 'M10', C: 'M10' }, { ...half, a_A: 0.001, n: 0 }), 'metric')),
    ).toBe('The two leads are equal, so there is no motion to be slower than: choose threads whose leads differ.');
  });
});

describe('roundUp', () => {
  it('is a round amount no smaller than the value and at most twice it, in the unit asked for', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e7 }), fc.constantFrom('µm', 'mm', 'thou', 'in'), (i, unit) => {
        const value = i / 1e5;
        const up = roundUp(value, unit);
        expect(up).toBeGreaterThanOrEqual(value * (1 - 1e-8));
        expect(up).toBeLessThan(2 * value);
      }),
    );
    expect(roundUp(0.0124, 'µm')).toBeCloseTo(0.015, 12);
    expect(roundUp(0.0124, 'thou') / 0.0254).toBeCloseTo(0.5, 12);
    expect(roundUp(0, 'µm')).toBe(0.001);
  });
});
