/**
 * The figures of the chapter on fit, held against the engine by the coordinates in their pictures: bars and section to one scale, end
 * stops and engagement in the plot, the wall in its lens, the four limits of pitch diameter in theirs.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Numbers } from '../../widgets/assembly/numbers.ts';
import { limitsOfSize, nutLimits, screwLimits, wallOfSleeve } from '../../widgets/engine/index.ts';
import type { Figure } from '../../widgets/figures/kit/figure.ts';
import { profileEdge } from '../../widgets/figures/kit/limit-profile.ts';
import { FIGURES } from '../../widgets/site/catalogue.ts';
import { attribute, numbersOf, picture, pointsOf, still, textOf, thread } from '../support/figures.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const widget = (name: string): Figure => {
  const found = FIGURES.get(name);
  if (!found) throw new Error(`no widget ${name}`);
  return found;
};
const plain = (text: string): string => text.replace(/\u00a0/g, ' ');

describe('fit-section', () => {
  const fit = widget('fit-section');
  const foot = (values = {}, choices = {}, threads = {}): Numbers =>
    numbersOf(
      { A: 'M10x1.5', C: '3/8-16 UNC', ...threads },
      { n: 0, l_A: 20, b_A: 20, l_C: 20, b_C: 20, q_e: 1, ...values },
      { arrangement: 'in line', assembly: 'both at mid-range', ...choices },
    );
  const stop = (values = {}, choices = {}, threads = {}) =>
    foot(
      { l_A: 20, b_A: 16, l_C: 24, b_C: 12, ...values },
      { arrangement: 'nested', ...choices },
      { A: 'M12x1.5', C: 'M8x1.25', ...threads },
    );
  const drawing = (numbers: Numbers) => picture(valueIn(still(fit).draw(numbers, 'metric')));
  const height = (document: Document, shape: string) => {
    const y = pointsOf(attribute(document, `[data-shape="${shape}"]`, 'd')).map(([, y]) => y);
    return Math.max(...y) - Math.min(...y);
  };
  const says = (numbers: Numbers) => plain(still(fit).caption(numbers, 'metric'));

  it('draws the engaged lengths to the scale of the nuts they stand in', () => {
    for (const n of [-3, 0, 1.5, 3]) {
      const document = drawing(foot({ n }));
      const scale = height(document, 'nutA') / 20;
      expect(height(document, 'nutC') / scale).toBeCloseTo(20, 1);
      // A screws in by 1.5 a turn from 15; C out by 1.5875 from 20 − 10.475/2.
      expect(height(document, 'barA') / scale).toBeCloseTo(15 + 1.5 * n, 0.5);
      expect(height(document, 'barC') / scale).toBeCloseTo(20 - 10.475 / 2 - 1.5875 * n, 0.5);
    }
  });

  it('draws the section to the scale of the bars: 20 mm of base, and the major diameter of thread A across', () => {
    const document = drawing(foot());
    const scale = height(document, 'nutA') / 20;
    const turned = pointsOf(attribute(document, '[data-path="turned"]', 'd'));
    const base = pointsOf(attribute(document, '[data-path="base"]', 'd'));
    const top = Math.min(...base.map(([, y]) => y));
    const below = turned.filter(([, y]) => y > top + 1).map(([x]) => x);
    expect((Math.max(...below) - Math.min(...below)) / scale).toBeCloseTo(10, 1);
    const ys = base.map(([, y]) => y);
    expect((Math.max(...ys) - Math.min(...ys)) / scale).toBeCloseTo(20, 1);
  });

  it('shades the turns between the stops and no others', () => {
    for (const assembly of ['both at mid-range', 'A at mid-range, C home']) {
      const numbers = foot({}, { assembly });
      const document = drawing(numbers);
      // Worked by hand: A has 10 mm, half of it each way; C has 10.475 mm, which opens clockwise.
      const [A, C] = [10 / 1.5 / 2, 10.475 / 1.5875];
      const c = assembly === 'both at mid-range' ? [-C / 2, C / 2] : [0, C];
      const [low, high] = [Math.min(-A, c[0] ?? 0), Math.max(A, c[1] ?? 0)];
      const turns = Math.min(A, c[1] ?? 0) - Math.max(-A, c[0] ?? 0);
      const shaded = Number(attribute(document, '.free', 'width'));
      const lines = pointsOf(attribute(document, '.run.A .engaged', 'd')).concat(
        pointsOf(attribute(document, '.run.C .engaged', 'd')),
      );
      const x = lines.map(([x]) => x);
      const drawn = Math.max(...x) - Math.min(...x);
      expect(shaded / drawn, assembly).toBeCloseTo(turns / (high - low), 2);
    }
  });

  it('says what the engine finds of the Foot', () => {
    expect(says(foot())).toBe(
      'Clockwise 3.30 turns, until thread C has only its least engagement left; anticlockwise 3.30 turns, until thread C is home: 6.60 turns and 577 µm of stroke, set by thread C.',
    );
    expect(says(foot({}, { assembly: 'both screwed home' }))).toBe(
      'Assembled like this, it can’t turn at all: clockwise thread A is home, anticlockwise thread C is home; at mid-range the same threads give 6.60 turns and 577 µm of stroke, set by thread C.',
    );
    expect(says(foot({ n: 9 }))).toMatch(
      /^It does not go to 9 turns: thread C has only its least engagement left\. Clockwise/,
    );
  });

  it('lists the engagement over the travel, from one stop to the other', () => {
    const { rows } = still(fit).table(foot(), 'metric');
    expect(rows).toHaveLength(9);
    expect(rows.at(0)?.map(plain)).toEqual(['−3.30', '10.05 mm', '20.00 mm', '−288.7 µm']);
    expect(rows.at(4)?.map(plain)).toEqual(['0', '15.00 mm', '14.76 mm', '0 µm']);
    expect(rows.at(-1)?.map(plain)).toEqual(['3.30', '19.95 mm', '9.525 mm', '+288.7 µm']);
  });

  it('says and draws the wall of the Stop, nominal and at its thinnest', () => {
    expect(says(stop())).toContain(
      'The wall is 1.08 mm from basic sizes, and with 6g outside and 6H inside between 0.79 mm and 1.06 mm.',
    );
    const wall = valueIn(
      wallOfSleeve(valueIn(screwLimits(thread('M12x1.5'))).limits, valueIn(nutLimits(thread('M8x1.25'))).limits),
    );
    const document = drawing(stop());
    const length = (key: string) => {
      const x = [...attribute(document, `.wall-${key} .edges`, 'd').matchAll(/M(-?[\d.]+)/g)].map((m) => Number(m[1]));
      return (x[1] ?? 0) - (x[0] ?? 0);
    };
    expect(length('least') / length('nominal')).toBeCloseTo(wall.least / wall.nominal, 2);
    expect(plain(textOf(document, '.wall-nominal text'))).toBe('1.08 mm');
    expect(plain(textOf(document, '.wall-least text'))).toBe('0.79 mm');
  });

  it('takes the class of each thread from its designation', () => {
    expect(says(stop({}, {}, { A: 'M12x1.5-4h', C: 'M8x1.25-4H' }))).toContain('with 4h outside and 4H inside');
  });

  it('warns where the wall is there by name and gone within limits', () => {
    expect(says(stop({}, {}, { A: 'M12x1.25', C: 'M10x1.25' }))).toContain(
      'it may be only −0.04 mm: some parts within limits have no wall at all.',
    );
  });

  it('refuses a pair that does not nest, and lengths that keep nothing, in one sentence', () => {
    expect(reasonIn(still(fit).draw(stop({}, {}, { A: 'M12x1.75', C: 'M10x1.5' }), 'metric'))).toContain(
      'the wall between the threads of the sleeve would be −0.07 mm',
    );
    expect(still(fit).draw(foot({}, {}, { A: 'M12x1.75', C: 'M10x1.5' }), 'metric').ok).toBe(true);
    expect(reasonIn(still(fit).draw(foot({ b_C: 6 }), 'metric'))).toContain('its nut is 6 mm long');
  });
});

describe('thread-limits', () => {
  const limits = widget('thread-limits');
  const of = (text: string, q_t = 0.77): Numbers => numbersOf({ thread: text }, { q_t });

  it('sets the four limits of pitch diameter in the lens at distances of their own proportion', () => {
    for (const text of ['M10x1.5-6H/6g', '3/8-16 UNC-2B/2A', 'M4x0.7-6H/6g', 'M64x6-6H/8g']) {
      const document = picture(valueIn(still(limits).draw(of(text), 'metric')));
      const [screw, nut] = [valueIn(screwLimits(thread(text))).limits, valueIn(nutLimits(thread(text))).limits];
      const span = (key: string) => {
        const d = attribute(document, `.clear-${key} .span`, 'd');
        const [, from, to] = /M[\d.]+ (-?[\d.]+)V(-?[\d.]+)/.exec(d) ?? [];
        return Math.abs(Number(from) - Number(to));
      };
      const least = nut.pitch.min - screw.pitch.max;
      const most = nut.pitch.max - screw.pitch.min;
      expect(span('least') / span('most'), text).toBeCloseTo(least / most, 2);
    }
  });

  it('draws the flanks at 30° with ridge and groove alike at the pitch diameter', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 6, noNaN: true }), (P) => {
        const edge = profileEdge(
          { P, major: 20, pitch: 20 - 0.649519 * P, minor: 20 - 1.226869 * P, root: 'round' },
          -P,
          P,
        );
        const crossings: number[] = [];
        const r = 10 - 0.3247595 * P;
        for (const [i, [x, z]] of edge.entries()) {
          const [px, pz] = edge[i - 1] ?? [x, z];
          if (x !== px && (px - r) * (x - r) < 0) crossings.push(pz + ((r - px) * (z - pz)) / (x - px));
        }
        expect(crossings.map((z) => Number((z / P).toFixed(4)))).toEqual([-0.75, -0.25, 0.25, 0.75]);
        expect(Math.min(...edge.map(([x]) => x))).toBeCloseTo(10 - 0.6134345 * P, 5);
        expect(Math.max(...edge.map(([x]) => x))).toBeCloseTo(10, 9);
      }),
    );
  });

  it('lists the limits of the engine with where each came from', () => {
    const { rows } = still(limits).table(of('M10x1.5-6H/6g'), 'metric');
    expect(rows.slice(0, 6).map((row) => row.map(plain))).toEqual([
      ['screw, major', '9.732 mm', '9.968 mm', '236 µm', 'table, ISO 965-1'],
      ['screw, pitch', '8.862 mm', '8.994 mm', '132 µm', 'table, ISO 965-1'],
      ['screw, minor', 'no limit', '8.344 mm', '', 'table, ISO 965-1'],
      ['nut, major', '10.000 mm', 'no limit', '', 'table, ISO 965-1'],
      ['nut, pitch', '9.026 mm', '9.206 mm', '180 µm', 'table, ISO 965-1'],
      ['nut, minor', '8.376 mm', '8.676 mm', '300 µm', 'table, ISO 965-1'],
    ]);
    const inch = still(limits).table(of('3/8-16 UNC'), 'inch').rows;
    // ASME B1.1, table of limits, 3/8-16 UNC-2A and 2B (from memory).
    expect(inch.slice(0, 2).map((row) => row.slice(1, 3).map(plain))).toEqual([
      ['0.3643 in', '0.3737 in'],
      ['0.3287 in', '0.3331 in'],
    ]);
  });

  it('says formula for a thread that no table holds, and table for one that it does', () => {
    expect(still(limits).caption(of('M10x1.5'), 'metric')).toMatch(/Every limit is the published one of ISO 965-1\.$/);
    expect(still(limits).caption(of('12 mm x 1.1 mm'), 'metric')).toMatch(
      /By formula and rounding: screw, major; screw, pitch; screw, minor; nut, pitch; nut, minor; the rest from the published tables\.$/,
    );
    expect(still(limits).caption(of('M8x0.8'), 'metric')).toContain('By formula and rounding: screw, pitch');
    expect(valueIn(still(limits).draw(of('12 mm x 1.1 mm'), 'metric'))).toContain('is not in a standard series');
  });

  it('takes the classes written, the everyday ones where none are, and says so', () => {
    expect(still(limits).caption(of('M10x1.5-4H/4h'), 'metric')).toMatch(/^Class 4h in class 4H/);
    expect(valueIn(still(limits).draw(of('M10x1.5-7H'), 'metric'))).toContain('class 6g for the screw.');
    expect(valueIn(still(limits).draw(of('M10x1.5-6H/6g'), 'metric'))).not.toContain('everyday');
    expect(plain(still(limits).caption(of('M10x1.5-6H/6h'), 'metric'))).toContain('so 0 µm to 312 µm');
  });

  it('refuses a class that does not exist for the size, in one sentence', () => {
    expect(reasonIn(still(limits).draw(of('M8x1.25-9H/6g'), 'metric'))).toBe(
      'Read grade 9 for the pitch diameter of a nut; ISO 965-1 has grades 4, 5, 6, 7, 8 there: choose one of those.',
    );
    expect(reasonIn(still(limits).draw(of('8-36 UNF-1A'), 'metric'))).toContain(
      'exists only for UNC and UNF threads of 1/4 in',
    );
    expect(reasonIn(still(limits).draw(of('M4x0.35-6H/6e'), 'metric'))).toContain(
      'Read position e for a pitch of 0.35 mm',
    );
  });

  it('names the drills for the share of thread, and whether the hole is one for the class', () => {
    const text = plain(valueIn(still(limits).draw(of('M10x1.5'), 'metric')).replace(/<[^>]+>/g, ' ')).replace(
      / +/g,
      ' ',
    );
    expect(text).toContain('hole for 77.0 % of thread 8.500 mm that hole is within the nut’s minor limits');
    expect(text).toContain('8.5 mm (77.0 %)');
    const thin = plain(valueIn(still(limits).draw(of('M10x1.5', 0.5), 'metric')).replace(/<[^>]+>/g, ' ')).replace(
      / +/g,
      ' ',
    );
    expect(thin).toContain('above the nut’s minor limits');
  });

  it('shows the same limits as limitsOfSize for any class it is given', () => {
    for (const cls of ['4H', '5H', '6H', '7H', '6G', '8H']) {
      const nut = valueIn(limitsOfSize(thread('M10x1.5'), cls));
      const row = still(limits)
        .table(of(`M10x1.5-${cls}`), 'metric')
        .rows.at(4)
        ?.map(plain);
      expect(row?.slice(1, 3)).toEqual([`${nut.pitch.min.toFixed(3)} mm`, `${nut.pitch.max.toFixed(3)} mm`]);
    }
  });
});
