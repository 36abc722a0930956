/** Passports of pieces: rows as they are typed, in any order, and what of them levelling takes. */

import { describe, expect, it, vi } from 'vitest';
import { withRow } from '../../widgets/figures/passport/passport.ts';
import { dayIn, dayShown } from '../../widgets/input/day.ts';
import { lastOf, readPassports, withMeasured } from '../../widgets/input/passports.ts';
import { reasonIn, valueIn } from '../support/results.ts';

describe('a passport', () => {
  it('is read a day a row, in any order and unit, and what is no number is a note', () => {
    const entries = valueIn(
      readPassports(
        'B, 2026-9-1: lead 3.4 thou, place -1.5 turns, new grease | A, 2026-03-02: lead 88.7, wave 0.4 µm; wear 0,6 µm, dropped once',
      ),
    );
    expect(entries.map((e) => [e.piece, e.day])).toEqual([
      ['A', '2026-03-02'],
      ['B', '2026-09-01'],
    ]);
    expect(entries[0]).toMatchObject({ lead: 0.0887, wave: 0.0004, wear: 0.0006, note: 'dropped once' });
    expect(entries[1]?.lead).toBeCloseTo(3.4 * 0.0254, 12);
    expect(entries[1]?.place).toBe(-1.5);
  });

  it('gives the last lead and place of a piece by its day, whatever the order of the rows; a row without one does not count', () => {
    const entries = valueIn(
      readPassports('A, 2026-09-14: lead 88.5 µm\nA, 2026-12-01: new grease\na, 2026-03-02: lead 88.7 µm'),
    );
    expect(lastOf('lead', entries, 'A')).toMatchObject({ value: 0.0885, day: '2026-09-14' });
    expect(lastOf('lead', entries, 'C')).toBeUndefined();
    expect(lastOf('place', entries, 'A')).toBeUndefined();
    expect(lastOf('lead', valueIn(readPassports('')), 'A')).toBeUndefined();
    const moved = valueIn(readPassports('a, 2026-10-01: place -1.5 turns | A, 2026-09-14: place 0 turns'));
    expect(lastOf('place', moved, 'A')).toMatchObject({ value: -1.5, day: '2026-10-01' });
  });

  it('gets a row of a new day without a lead, so that none stands there that was not measured', () => {
    const before = 'A, 2026-09-14: lead 88.5 µm';
    const entries = valueIn(readPassports(withRow(before, valueIn(readPassports(before)), '2026-10-01')));
    expect(entries.map(({ piece, day, lead }) => [piece, day, lead])).toEqual([
      ['A', '2026-09-14', 0.0885],
      ['A', '2026-10-01', undefined],
    ]);
    expect(withRow('', [], '2026-10-01')).toBe('1, 2026-10-01:');
  });

  it('is dated by the reader’s own calendar, on the evening before Greenwich too', () => {
    vi.stubEnv('TZ', 'America/Chicago');
    try {
      expect(dayShown(new Date(Date.UTC(2026, 0, 4, 1)))).toBe('2026-01-03');
      expect(dayShown(new Date(Date.UTC(2026, 0, 4, 6)))).toBe('2026-01-04');
    } finally {
      vi.unstubAllEnvs();
    }
  });

  it('takes a day as ISO 8601 writes it, or with dots day first; a date that could be read two ways is none', () => {
    for (const [text, day] of [
      ['2026-11-03', '2026-11-03'],
      ['2026-9-1', '2026-09-01'],
      ['27.11.2026', '2026-11-27'],
      ['3. 11. 2026', '2026-11-03'],
      // 2000 was a leap year, 1900 was none.
      ['29.2.2000', '2000-02-29'],
      ['29.2.1900', undefined],
      ['11.27.2026', undefined],
      ['3/11/2026', undefined],
      ['27.11.26', undefined],
      ['27-11-2026', undefined],
    ] as const)
      expect(dayIn(text), text).toBe(day);
    expect(valueIn(readPassports('1, 27.11.2026: lead 88.7 µm'))[0]).toMatchObject({ day: '2026-11-27', lead: 0.0887 });
    expect(reasonIn(readPassports('1, 11/27/2026: lead 88.7 µm'))).toMatch(/year, month and day, like 2026-11-03, or/);
  });

  it('refuses by row and names what is wrong', () => {
    expect(reasonIn(readPassports('A, 2026-02-30: lead 88 µm'))).toContain('2026-02-30');
    expect(reasonIn(readPassports('A: lead 88 µm'))).toContain('Row 1');
    expect(reasonIn(readPassports('A, 2026-01-01: lead 88 kg'))).toContain('lead');
    expect(reasonIn(readPassports('A, 2026-01-01: lead 0 µm'))).toContain('above 0');
    expect(reasonIn(readPassports(Array(300).fill('A, 2026-01-01: x').join('|')))).toContain('300');
  });

  it('has a ± behind what was measured, in the unit behind it, and gives it on', () => {
    const [a, b] = valueIn(
      readPassports(
        '1, 2026-11-03: lead 88.72 ± 0.45 µm, hysteresis 1.5±0.1 µm | 2, 2026-11-03: lead 3.4 thou ± 0.02 thou',
      ),
    );
    expect(
      [a?.lead, a?.hysteresis, a?.doubt.lead, a?.doubt.hysteresis].map((x) => (1000 * (x ?? 0)).toPrecision(6)),
    ).toEqual(['88.7200', '1.50000', '0.450000', '0.100000']);
    expect(a && lastOf('lead', [a], '1')?.half).toBeCloseTo(0.00045, 12);
    expect(b?.doubt.lead).toBeCloseTo(0.000508, 12);
    for (const wrong of ['lead 88 ± µm', 'lead 88 ± -1 µm', 'lead 88 ± 1 kg', 'wear 1 ± 1 µm', 'lead ± 1 µm'])
      expect(reasonIn(readPassports(`1, 2026-11-03: ${wrong}`)), wrong).toMatch(/^Row 1 of the passports/);
  });

  it('takes what was measured into the row of its piece and day, which keeps the rest, else into a new one; each is read again as it was', () => {
    const measured = {
      piece: '1',
      day: '2026-11-27',
      lead: 0.088716,
      wave: 0.0009,
      hysteresis: undefined,
      doubt: { lead: 0.00045 },
    };
    const row = '1, 2026-11-27: lead 88.72 ± 0.45 µm, wave 0.9 µm';
    expect(valueIn(withMeasured('', measured))).toEqual({ text: row, row });
    const before =
      '2, 2026-11-27: lead 88 µm\n1, 2026-11-27: lead 80 µm, hysteresis 2 µm, place 1.5 turns, wear 0.6 µm, new grease';
    const { text } = valueIn(withMeasured(before, measured));
    expect(text.split('\n')[0]).toBe('2, 2026-11-27: lead 88 µm');
    expect(valueIn(readPassports(text))[0]).toMatchObject({
      lead: expect.closeTo(0.08872, 9),
      hysteresis: undefined,
      place: 1.5,
      wear: 0.0006,
      note: 'new grease',
    });
    expect(valueIn(withMeasured(text, measured)).text).toBe(text);
    expect(reasonIn(withMeasured('rubbish', measured))).toContain('Row 1');
    expect(reasonIn(withMeasured('', { ...measured, piece: 'a,b:' }))).toContain('Row 1');
  });
});
