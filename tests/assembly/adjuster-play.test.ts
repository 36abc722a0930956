/** Play of the joints of an adjuster: from classes, from measured diameters and with coats, in the record, in its figure and in every chapter. */
import { describe, expect, it } from 'vitest';
import type { Adjuster } from '../../widgets/assembly/adjuster/adjuster.ts';
import { numbersOfAdjuster } from '../../widgets/assembly/adjuster/as-numbers.ts';
import { jointPlay, turnsLostIn } from '../../widgets/assembly/adjuster/play.ts';
import { readAdjuster } from '../../widgets/assembly/adjuster/text.ts';
import { fitOfThread } from '../../widgets/engine/index.ts';
import { adjusterFigure } from '../../widgets/figures/adjuster/adjuster.ts';
import { readThread } from '../../widgets/input/designation.ts';
import { still } from '../support/figures.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const text = (nut: string, screw: string, more = '') =>
  `base = tapped block ${nut}, 20 mm${more} | turned = stud ${screw} 20 mm, 3/8-16 UNC-2A 20 mm | carried = cap 3/8-16 UNC-2B, thread 20 mm`;
const read = (description: string): Adjuster => valueIn(readAdjuster(description));
const playA = (description: string) => valueIn(jointPlay(read(description).A));
const micrometres = (mm: number) => Number((1000 * mm).toFixed(2));

/** M10×1.5-6H/6g: d2 8.862 to 8.994, D2 9.026 to 9.206 mm (tables of ISO 965-2, from memory); axial play is the clearance over the root of three. */
describe('play of a joint', () => {
  it('is that of the limits in the tables', () => {
    const play = playA(text('M10x1.5-6H', 'M10x1.5-6g'));
    expect(play.limits).toBe('6H/6g');
    expect(play.assumed).toBe(false);
    expect(micrometres(valueIn(play.least))).toBeCloseTo(32 / Math.sqrt(3), 1);
    expect(micrometres(valueIn(play.most))).toBeCloseTo(344 / Math.sqrt(3), 1);
  });

  it('takes the everyday class where none is written, and says so', () => {
    const play = playA(text('M10x1.5', 'M10x1.5'));
    expect(play).toMatchObject({ limits: '6H/6g', assumed: true });
  });

  it('loses four times each coat on the diameter', () => {
    const bare = playA(text('M10x1.5-6H', 'M10x1.5-6g'));
    const coated = playA(text('M10x1.5-6H', 'M10x1.5-6g', ', coat 3 µm'));
    expect(micrometres(valueIn(bare.most)) - micrometres(valueIn(coated.most))).toBeCloseTo(12 / Math.sqrt(3), 1);
    // 8 µm take the whole allowance of 32 µm; 9 µm let the tightest pieces bind and leave the loosest loose.
    const both = playA(text('M10x1.5-6H', 'M10x1.5-6g', ', coat 9 µm'));
    expect(both.least.ok).toBe(false);
    expect(micrometres(valueIn(both.most))).toBeCloseTo(308 / Math.sqrt(3), 1);
  });

  it('is one number where both ends were measured, whatever the coat that was on them', () => {
    const play = playA(text('M10x1.5 D2 9.1', 'M10x1.5 d2 8.95', ', coat 5 µm'));
    expect(play.measured).toBe(true);
    expect(micrometres(valueIn(play.least))).toBeCloseTo(150 / Math.sqrt(3), 1);
    expect(valueIn(play.most)).toBe(valueIn(play.least));
  });

  it('costs turns on reversal: both plays over the net lead', () => {
    const a = read(text('M10x1.5-6H', 'M10x1.5-6g'));
    const sum = [a.A, a.C].reduce((s, f) => s + (f ? valueIn(valueIn(jointPlay(f)).most) : 0), 0);
    expect(turnsLostIn(a, 'most')).toBeCloseTo(sum / 0.0875, 9);
  });

  it.each([
    ['a class behind a comma', 'M10x1.5, 6H', 'M10x1.5-6g'],
    ['a measured diameter behind the length', 'M10x1.5-6H', 'M10x1.5-6g'],
  ])('reads %s', (_, nut, screw) => {
    expect(playA(text(nut, screw)).limits).toBe('6H/6g');
    const behind = read(text('M10x1.5', 'M10x1.5').replace('stud M10x1.5 20 mm', 'stud M10x1.5 20 mm, d2 8.9 to 8.95'));
    expect(behind.A.thread.measured?.screw).toEqual({ min: 8.9, max: 8.95 });
    expect(behind.A.usable).toBeCloseTo(10, 9);
  });
});

describe('limits at the wrong part', () => {
  it.each([
    ['6g', text('M10x1.5-6g', 'M10x1.5')],
    ['6H', text('M10x1.5', 'M10x1.5-6H')],
    ['6H', text('M10x1.5', 'M10x1.5-6H/6g')],
    ['d2', text('M10x1.5 d2 8.95', 'M10x1.5')],
  ])('%s is refused with the part to change', (written, description) => {
    const result = readAdjuster(description);
    expect(result).toMatchObject({ ok: false, code: 'limits-of-other-side' });
    expect(reasonIn(result)).toMatch(
      new RegExp(`^${written} is of a (nut|screw), and this thread of the (tapped block|stud) is`),
    );
  });

  it.each([
    ['coat 2 mm', 'a coat is from 0 to 500 µm'],
    ['count 0', 'at least one of a part'],
  ])('%s: %s', (phrase, says) => {
    expect(reasonIn(readAdjuster(text('M10x1.5', 'M10x1.5', `, ${phrase}`)))).toContain(says);
  });
});

describe('what chapters get', () => {
  it.each([
    ['classes', text('M10x1.5-5H', 'M10x1.5-4h')],
    ['a coat on both', text('M10x1.5-6H', 'M10x1.5-6g', ', coat 4 µm').replace('| carried', ', coat 2 µm | carried')],
    ['diameters', text('M10x1.5 D2 9.1 to 9.12', 'M10x1.5-6g')],
  ])('a thread whose limits give the play of the record: %s', (_, description) => {
    const a = read(description);
    const numbers = numbersOfAdjuster(a);
    const fit = valueIn(fitOfThread(valueIn(readThread(numbers.A ?? ''))));
    const play = valueIn(jointPlay(a.A));
    expect(fit.clearance.pitch.least).toBeCloseTo(play.clearance.least, 6);
    expect(fit.clearance.pitch.most).toBeCloseTo(play.clearance.most, 6);
    expect(numbers.pieces).toBeUndefined();
  });

  it('measured clearances where all four diameters were measured', () => {
    const numbers = numbersOfAdjuster(
      read(
        'base = tapped block M10x1.5 D2 9.1, 20 mm | turned = stud M10x1.5 d2 8.95 20 mm, M8x1.25 d2 7.1 20 mm | carried = cap M8x1.25 D2 7.3, thread 20 mm',
      ),
    );
    expect(numbers).toMatchObject({ pieces: 'as measured', c_mA: '0.15 mm', c_mC: '0.2 mm' });
  });

  it('the play of each thread in the figure of the adjuster', () => {
    const numbers = {
      threads: {},
      values: { n: 0 },
      choices: {},
      texts: { adjuster: text('M10x1.5-6H', 'M10x1.5-6g', ', coat 3 µm') },
    };
    const drawn = valueIn(still(adjusterFigure).draw(numbers, 'metric'));
    expect(drawn).toContain('play of thread A, 6H/6g, coat 3');
    expect(drawn).toContain('lost on reversal');
  });
});
