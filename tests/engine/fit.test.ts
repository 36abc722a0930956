/** The fit a designation stands for: classes written, half written and left out, and the clearance of its pieces. */

import { describe, expect, it } from 'vitest';
import { clearanceOfPieces, fitOfThread, limitsOfSize } from '../../widgets/engine/index.ts';
import { readThread } from '../../widgets/input/designation.ts';
import limits from '../reference/thread-limits.json' with { type: 'json' };
import { reasonIn, valueIn } from '../support/results.ts';

const fitOf = (text: string) => valueIn(fitOfThread(valueIn(readThread(text))));

describe('fitOfThread', () => {
  it('takes both classes from the designation, whichever stands first', () => {
    for (const text of ['M10x1.5-6H/6g', 'M10x1.5-6g/6H'])
      expect(fitOf(text)).toMatchObject({ classes: '6H/6g', assumed: false });
    expect(fitOf('3/8-16 UNC-3B/3A')).toMatchObject({ classes: '3B/3A', assumed: false });
  });

  it('takes the everyday class for a side that is left out', () => {
    expect(fitOf('M10x1.5-4h')).toMatchObject({ classes: '6H/4h', assumed: true });
    expect(fitOf('M10x1.5-5H')).toMatchObject({ classes: '5H/6g', assumed: true });
    expect(fitOf('M10x1.5')).toMatchObject({ classes: '6H/6g', assumed: true });
    expect(fitOf('8-36 UNF')).toMatchObject({ classes: '2B/2A', assumed: true });
    expect(fitOf('3/8-16-3A')).toMatchObject({ classes: '2B/3A', assumed: true });
  });

  it('takes another for a side whose everyday class is blank for so small or so fine a thread', () => {
    for (const [text, classes] of [
      ['M1.6', '6H/6g'],
      ['M2x0.25', '5H/6g'],
      ['M1.6x0.2', '4H/6g'],
      ['M1.4x0.3', '5H/6h'],
      ['M1x0.25', '5H/6h'],
      ['M1x0.2', '4H/6h'],
    ] as const)
      expect(fitOf(text), text).toMatchObject({ classes, assumed: true });
  });

  it('gives the limits of the published tables, as limitsOfSize does', () => {
    // Published limits from memory, see the file.
    for (const [text, row] of [
      ['M10x1.5', limits.iso.rows['M10x1.5']],
      ['M4x0.7-6H/6g', limits.iso.rows['M4x0.7']],
    ] as const) {
      const { screw, nut } = fitOf(text);
      expect([screw.pitch.min, screw.pitch.max], text).toEqual([row.d2min, row.d2max]);
      expect([nut.pitch.min, nut.pitch.max], text).toEqual([row.D2min, row.D2max]);
    }
    const { screw } = fitOf('M10x1.5-6H/6g');
    expect(screw).toEqual(valueIn(limitsOfSize(valueIn(readThread('M10x1.5-6H/6g')), '6g')));
  });

  it('says why a thread has no limits', () =>
    expect(reasonIn(fitOfThread(valueIn(readThread('M0.5x0.125'))))).toContain(
      'ISO 965-1 gives tolerances over 0.99 mm',
    ));
});

describe('clearanceOfPieces', () => {
  it('runs from allowance to allowance and both tolerances, with the middle half way', () => {
    const foot = fitOf('M10x1.5');
    const at = (pieces: 'tightest' | 'middling' | 'loosest') => clearanceOfPieces(foot, pieces);
    expect(at('tightest')).toBeCloseTo(0.032, 9);
    expect(at('loosest')).toBeCloseTo(0.344, 9);
    expect(at('middling')).toBeCloseTo(0.188, 9);
  });
});
