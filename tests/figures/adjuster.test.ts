/** The figure of an adjuster: what holds and preloads it, what was assumed of it, and that all of it is in the picture. */
import { describe, expect, it } from 'vitest';
import { readAdjuster } from '../../widgets/assembly/adjuster/text.ts';
import { adjusterFigure } from '../../widgets/figures/adjuster/adjuster.ts';
import { picture, pointsOf, still } from '../support/figures.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const FOOT =
  'base = tapped block M10x1.5, 20 mm | turned = stud M10x1.5 20 mm, 3/8-16 UNC 20 mm | carried = cap 3/8-16 UNC, thread 20 mm';
const drawn = (text: string) =>
  picture(
    valueIn(
      still(adjusterFigure).draw({ threads: {}, values: { n: 0 }, choices: {}, texts: { adjuster: text } }, 'metric'),
    ),
  );
const path = (text: string, name: string): string =>
  drawn(text).querySelector(`[data-path="${name}"]`)?.getAttribute('d') ?? '';
const assumed = (text: string): string => drawn(text).querySelector('.figure-words')?.textContent ?? '';
const xs = (d: string): number[] => pointsOf(d).map(([x]) => x);

describe('what keeps the carried part from turning', () => {
  it.each([
    ['', true, true],
    [' | lock = post at 30 mm', true, false],
    [' | lock = key at 12 mm, clearance 0.1 mm', true, false],
    [' | lock = none', false, false],
    [' | lock = springs', false, false],
    [' | springs = 2 between base and carried, at 20 mm', false, false],
  ])('%s: a post is drawn %s, and said to be assumed %s', (row, isDrawn, said) => {
    expect(path(FOOT + row, 'guide') !== '').toBe(isDrawn);
    expect(assumed(FOOT + row).includes('that keeps the carried part')).toBe(said);
  });

  it('stands at its radius', () => {
    const scale = (text: string) => {
      const base = xs(path(text, 'base'));
      // The block is 27 mm wide.
      return (Math.max(...base) - Math.min(...base)) / 27;
    };
    const text = `${FOOT} | lock = post at 30 mm`;
    const post = xs(path(text, 'guide').split('Z')[0] ?? '');
    expect((150 - (Math.max(...post) + Math.min(...post)) / 2) / scale(text)).toBeCloseTo(30, 1);
  });
});

describe('springs', () => {
  const springs = (count: number, at = ', at 20 mm') =>
    path(`${FOOT} | springs = ${count} between base and carried${at}`, 'springs').split('M').slice(1);

  it('are drawn as many as are seen from the front, on both sides of the axis', () => {
    expect(springs(1)).toHaveLength(1);
    expect(springs(2)).toHaveLength(2);
    // Of three round the axis two stand behind one another.
    expect(springs(3)).toHaveLength(2);
    const [right, left] = springs(2).map((d) => xs(`M${d}`));
    expect(Math.min(...(right ?? []))).toBeGreaterThan(150);
    expect(Math.max(...(left ?? []))).toBeLessThan(150);
  });

  it('without a radius stand beside the parts, and that is said', () => {
    expect(springs(2, '')).toHaveLength(2);
    expect(assumed(`${FOOT} | springs = 2 between base and carried`)).toContain('from the axis');
    expect(assumed(`${FOOT} | springs = 2 between base and carried, at 20 mm`)).not.toContain('from the axis');
  });

  it('are left out where none are stated', () => expect(path(FOOT, 'springs')).toBe(''));
});

describe('the picture', () => {
  it.each([
    `${FOOT} | tip = ball 60 mm, stands 40 mm`,
    `${FOOT} | springs = 2 between base and carried, at 60 mm`,
    `${FOOT} | lock = post at 80 mm`,
    'base = tapped block M4x0.7, 6 mm | turned = screw M4x0.7, 12 mm | tip = ball 50 mm',
  ])('holds all of %s', (text) => {
    for (const name of ['base', 'turned', 'carried', 'tip', 'guide', 'springs'])
      for (const [x, y] of pointsOf(path(text, name))) {
        expect(x, name).toBeGreaterThanOrEqual(0);
        expect(x, name).toBeLessThanOrEqual(400);
        expect(y, name).toBeGreaterThanOrEqual(0);
        expect(y, name).toBeLessThanOrEqual(470);
      }
  });

  it('has a knob that goes from stop to stop', () => {
    const a = valueIn(readAdjuster(FOOT));
    const knob = drawn(FOOT).querySelector('[data-knob]');
    expect(Number(knob?.getAttribute('aria-valuemin'))).toBeCloseTo(a.anticlockwise.n, 2);
    expect(Number(knob?.getAttribute('aria-valuemax'))).toBeCloseTo(a.clockwise.n, 2);
  });
});

describe('sizes that were not stated', () => {
  it.each([
    [
      'plate',
      'base = screw M10x1.5, thread 30 mm | turned = double nut M10x1.5 15 mm, M8x1.25 15 mm, height 40 mm | carried = socket screw M8x1.25, thread 20 mm',
      ['thickness of the plate', 'width', 'diameter'],
    ],
    [
      'collar and neck',
      'base = tapped block M12x1.5, 16 mm | turned = spindle M12x1.5 20 mm, M8x1.25 20 mm | carried = nut M8x1.25, 12 mm',
      ['collar', 'neck', 'head', 'across flats'],
    ],
    ['cap', FOOT, ['carried part, diameter', 'carried part, height']],
  ])('%s are listed', (_, text, names) => {
    for (const name of names) expect(assumed(text)).toContain(name);
  });
});

describe('a phrase that is no size', () => {
  const refusal = (phrase: string) => reasonIn(readAdjuster(FOOT.replace('M10x1.5, 20 mm', `M10x1.5, ${phrase}`)));
  it.each([
    ['20 m', /as a length; write its unit/],
    ['20', /as a length; write its unit/],
    ['stainless', /is a material \(steel, /],
    ['headd 10 mm', /name a size with its unit/],
    ['count two', /count 2/],
  ])('%s is not called a thread', (phrase, says) => {
    expect(refusal(phrase)).toMatch(says);
    expect(refusal(phrase)).toContain('in the row of the base');
    expect(refusal(phrase)).not.toMatch(/threads per inch|designation/);
  });

  it.each([
    ['0.75 inches', 19.05],
    ['1-1/2 in', 38.1],
    ['20 millimetres', 20],
  ])('%s is a length', (phrase, mm) => {
    const a = valueIn(readAdjuster(FOOT.replace('M10x1.5, 20 mm', `M10x1.5, ${phrase}`)));
    expect(a.base.outer[0]?.to).toBeCloseTo(mm, 9);
  });

  it('a length directly behind a comma is one, and a decimal comma stays', () => {
    for (const row of ['M10x1.5,20 mm', 'M10x1,5,20 mm', 'M10x1,5 20 mm']) {
      const a = valueIn(readAdjuster(FOOT.replace('M10x1.5, 20 mm', row)));
      expect([a.A.thread.P, a.base.outer[0]?.to], row).toEqual([1.5, 20]);
    }
  });
});
