/** Calibration and certificate: what is drawn, said and tabled is what the engine says. */

import { describe, expect, it } from 'vitest';
import { calibrationOf } from '../../widgets/assembly/calibration-of.ts';
import type { Numbers } from '../../widgets/assembly/numbers.ts';
import { type Calibration, calibrate } from '../../widgets/engine/index.ts';
import { calibrationFigure } from '../../widgets/figures/calibration/calibration.ts';
import { COLUMNS, cloudOf, extremes } from '../../widgets/figures/calibration/plots.ts';
import { certificateFigure } from '../../widgets/figures/certificate/certificate.ts';
import { digitsFor } from '../../widgets/figures/kit/calibration-words.ts';
import { correctionCsv } from '../../widgets/figures/kit/correction-file.ts';
import { xAt, yAt } from '../../widgets/figures/kit/plots/frame.ts';
import { parseReadings } from '../../widgets/input/readings-table.ts';
import { isCarried, longestOf, TEXTS } from '../../widgets/input/texts.ts';
import { blocksOf, CHAPTERS } from '../support/chapters.ts';
import { numbersOf, picture, pointsOf, still, textOf } from '../support/figures.ts';
import { reasonIn, valueIn } from '../support/results.ts';

/** The shop's readings as the chapter has them. */
const SHOP = (() => {
  const chapter = CHAPTERS.find(({ file }) => file.endsWith('39-calibrate.md'))?.text ?? '';
  const lines = blocksOf(chapter, 'figure').flatMap((b) => b.lines);
  const line = lines.find((l) => l.startsWith('runs = ')) ?? '';
  return valueIn(TEXTS.runs.read(line.replace(/^runs = /, '').replace(/ # .*$/, '')));
})();

/** What a certificate says besides the readings, none of it stated. */
const UNSTATED = { piece: '', dated: '', warmth: '', gauge: '', method: '' };

/** A set-up that adds nothing, and a difference that any ± here is below. */
const EXACT_SET_UP = { q_g: 0, theta_i: 0, a_o: 0, theta_c: 0, e_d: 0, e_rp: 0, e_mt: 0.003 };

const shop = (
  runs: string,
  values: Numbers['values'] = {},
  texts: Numbers['texts'] = {},
  allowance = 'at worst',
): Numbers => ({
  ...numbersOf(
    { A: 'M10x1.5', C: '3/8-16 UNC' },
    { k: 6, eps_A: 0.001, eps_C: 0.001, n: 0.75, ...EXACT_SET_UP, ...values },
    {
      allowance,
    } as never,
  ),
  texts: { runs, adjuster: 'none', ...UNSTATED, ...texts },
});
const engine = (runs = SHOP): Calibration => valueIn(calibrate(valueIn(parseReadings(runs)).rows, { nominal: 0.0875 }));
const drawn = (numbers: Numbers, view: 'metric' | 'inch' = 'metric'): Document => {
  const html = valueIn(still(calibrationFigure).draw(numbers, view));
  expect(html).not.toMatch(/NaN|Infinity|undefined/);
  return picture(html);
};
const verdict = (document: Document): string => textOf(document, '.cal-verdict');

describe('calibration', () => {
  it('says the lead, its uncertainty and the stated errors as the engine has them', () => {
    const c = engine();
    // 1.5 × 0.001 + 1.5875 × 0.001 = 3.0875 µm of stated lead error, added at worst.
    expect(verdict(drawn(shop(SHOP)))).toBe(
      'Agrees. The measured net lead is 88.716 µm ± 0.091 µm a turn with all of the set-up, 1.22 µm above the nominal 87.50 µm: it agrees within that ± and the stated lead error of 3.09 µm.',
    );
    expect((c.lead * 1e3).toFixed(3)).toBe('88.716');
    expect((c.leadInterval.half * 1e3).toFixed(3)).toBe('0.089');
    // √(1.5² + 1.5875²) µm by root-sum-square.
    expect(verdict(drawn(shop(SHOP, {}, {}, 'root-sum-square')))).toMatch(/ the stated lead error of 2\.18 µm\.$/);
    expect(verdict(drawn(shop(SHOP, { eps_A: 0.0003, eps_C: 0.0003 })))).toMatch(
      /^Does not agree\..*does not agree within .* 0\.926 µm/,
    );
    expect(verdict(drawn(shop(SHOP), 'inch'))).toMatch(
      /^Agrees\. The measured net lead is 3\.4928 thou ± 3\.6 millionths a turn/,
    );
  });

  it('counts the set-up: an indicator that may be off by much can’t tell, and one that may be off a little widens the ±', () => {
    expect(verdict(drawn(shop(SHOP, { q_g: 0.05 })))).toMatch(/^Can’t be told\..*the scale of the indicator/);
    expect(verdict(drawn(shop(SHOP, { q_g: 0.01 })))).toMatch(/^Agrees\..*88\.7 µm ± 1\.0 µm/);
  });

  it('draws every reading of a short table at its place, and what it is off the line', () => {
    const c = engine();
    const document = drawn(shop(SHOP));
    const { frames } = cloudOf(c, 'metric');
    const marks = (i: number, direction: string) =>
      pointsOf(document.querySelectorAll('.plot-marks')[i]?.querySelector(`.reading.${direction}`)?.getAttribute('d'));
    for (const direction of ['up', 'down'] as const) {
      const rows = c.rows.filter((r) => r.direction === direction);
      const tip = direction === 'up' ? -4 : 4;
      for (const [i, frame, z] of [
        [0, frames.readings, (r: (typeof rows)[number]) => r.reading],
        [1, frames.residuals, (r: (typeof rows)[number]) => r.reading - c.line.intercept - c.line.slope * r.turns],
      ] as const) {
        const points = marks(i, direction);
        expect(points.length).toBe(rows.length);
        for (const [j, row] of rows.entries()) {
          expect(Math.abs((points[j]?.[0] ?? 0) - xAt(frame, row.turns))).toBeLessThan(0.02);
          expect(Math.abs((points[j]?.[1] ?? 0) - tip - yAt(frame, z(row)))).toBeLessThan(0.02);
        }
      }
    }
  });

  it('puts gap, wander, repeatability and scatter into words with the engine’s numbers, or says why it can’t', () => {
    const list = [...drawn(shop(SHOP)).querySelectorAll('.cal-words li')].map((li) =>
      (li.textContent ?? '').replace(/\u00a0/g, ' '),
    );
    const c = engine();
    expect(c.hysteresis.determined && (c.hysteresis.gap * 1e3).toFixed(2)).toBe('1.56');
    expect(list[0]).toBe('Hysteresis between up and down is 1.56 µm ± 0.11 µm, which is 0.018 turns lost on reversal.');
    expect(c.periodic.determined && (c.periodic.amplitude * 1e3).toFixed(2)).toBe('1.66');
    expect(list[1]).toBe(
      'The periodic error, once per turn, is 1.66 µm to either side, furthest up at 0.071 of a turn.',
    );
    expect(list[2]).toMatch(/standard deviation of 0\.190 µm; the two readings furthest apart differ by 0\.700 µm\.$/);
    expect(list[3]).toMatch(/scatter that is left is 0\.189 µm, standard deviation, with 47 degrees of freedom\.$/);
    const few = [...drawn(shop('0 0\n1 88\n2 175\n3 264')).querySelectorAll('.cal-words li.untold')];
    expect(few.map((li) => li.textContent?.slice(0, 30))).toEqual([
      'Hysteresis cannot be found: th',
      'The periodic error cannot be f',
      'Repeatability cannot be found:',
    ]);
  });

  it('tables the corrections and sets the dial to the corrected travel', () => {
    const c = engine();
    const { rows } = still(calibrationFigure).table(shop(SHOP), 'metric');
    expect(rows.length).toBe(c.places.length);
    expect(rows[6]?.map((cell) => cell.replace(/\u00a0/g, ' '))).toEqual([
      '1',
      'up',
      '2',
      '87.50 µm',
      '88.85 µm',
      '+1.22 µm',
    ]);
    // By the line and the wave of the fit, which the places read are within 0.2 µm of: nominal 65.625, less 1.30.
    expect(textOf(drawn(shop(SHOP)), '[data-read=travel]')).toBe('64.32 µm');
    expect(textOf(drawn(shop(SHOP)), '[data-read=correction]')).toBe('−1.30 µm');
    expect(
      still(calibrationFigure)
        .caption(shop(SHOP), 'metric')
        .replace(/\u00a0/g, ' '),
    ).toMatch(
      /^52 readings give a net lead of 88\.716 µm ± 0\.089 µm a turn, with the set-up ± 0\.091 µm\. It agrees with the nominal 87\.50 µm\. At 0\.75 turns the correction is −1\.3 µm; the dial stands at 6\.43 divisions of 10 µm\.$/,
    );
  });

  it('has no correction beyond the readings, and says so', () => {
    expect(still(calibrationFigure).caption(shop(SHOP, { n: 5 }), 'metric')).toMatch(
      /5 turns lie outside the readings, which go from 0 to 2; nothing is known there/,
    );
    expect(textOf(drawn(shop(SHOP, { n: 5 })), '[data-read=refused]')).toMatch(/^5 turns lie outside the readings/);
  });

  it('refuses two readings, constant readings and a pair without net lead, in a sentence', () => {
    const refusal = (numbers: Numbers) => reasonIn(still(calibrationFigure).draw(numbers, 'metric'));
    expect(refusal(shop('0 0\n1 88'))).toMatch(/^Read 2 readings; a line takes two and its uncertainty one more/);
    expect(refusal(shop('0 5\n1 5\n2 5\n3 5'))).toMatch(
      /^All 4 readings are 0\.005, so nothing moved or nothing was read/,
    );
    expect(refusal(shop('1 5\n1 6\n1 7'))).toMatch(/^All 3 readings stand at 1; a slope needs readings at two places/);
    expect(refusal({ ...shop(SHOP), threads: numbersOf({ A: 'M10x1.5', C: 'M10x1.5' }).threads })).toMatch(
      /one and the same lead/,
    );
  });

  it('asks when the slope is off by a unit, with a button for each answer; never otherwise', () => {
    const asked = (text: string): [string, string[]] => {
      const document = drawn(shop(text));
      return [
        document.querySelector('.cal-ask p')?.textContent ?? '',
        [...document.querySelectorAll('.cal-ask button')].map((b) => b.textContent ?? ''),
      ];
    };
    expect(asked(SHOP)).toEqual(['', []]);
    const [inMm, mmButtons] = asked('turns; reading (µm)\n0; 0\n1; 0.0886\n2; 0.1771\n3; 0.2660');
    expect(inMm).toMatch(/about a thousandth: were readings in mm imported as µm\?$/);
    expect(mmButtons).toEqual(['Yes: readings were in mm']);
    const [inThou, thouButtons] = asked('turns; reading (µm)\n0; 0\n1; 3.49\n2; 6.97\n3; 10.47');
    expect(inThou).toMatch(/about 1\/25\.4: were readings in thou imported as µm/);
    expect(thouButtons).toEqual(['Yes: readings were in thou']);
    const [asTurns, flatButtons] = asked('turns; reading (µm)\n0; 0\n6; 88.6\n12; 177.1\n18; 266');
    expect(asTurns).toMatch(/about a sixth: were flats imported as whole turns\?$/);
    expect(flatButtons).toEqual(['Yes: positions were in flats']);
    const [other, none] = asked('turns; reading (µm)\n0; 0\n1; -88.6\n2; -177.1\n3; -266');
    expect(other).toMatch(/opposite sign/);
    expect(none).toEqual(['Yes: turn the sign of the readings']);
    // Marks of a knob of sixty, read as flats of a hexagon.
    const [marks, knob] = asked('flats; reading (µm)\n0; 0\n60; 88.6\n120; 177.1\n180; 266');
    expect(marks).toMatch(/are the steps per turn 60, and not 6 as stated\?$/);
    expect(knob).toEqual(['Yes: 60 steps per turn']);
  });

  it('draws few points of many readings, the extremes of each stretch among them', () => {
    const turns = Array.from({ length: 10_000 }, (_, i) => i / 100);
    const read = turns.map((_, i) => Math.sin(i) + (i === 4321 ? 50 : 0) - (i === 9000 ? 50 : 0));
    const kept = extremes(turns, read, [0, 100], COLUMNS);
    expect(kept.length).toBeGreaterThan(COLUMNS);
    expect(kept.length).toBeLessThanOrEqual(2 * COLUMNS);
    expect(kept).toContain(4321);
    expect(kept).toContain(9000);
    expect(kept).toEqual(kept.toSorted((a, b) => a - b));
    const few = turns.slice(0, 50);
    expect(extremes(few, read, [0, 100], COLUMNS)).toEqual([...few.keys()]);
    const text = [
      'turns; reading (µm)',
      ...Array.from({ length: 20_000 }, (_, i) => `${i / 1000}; ${(i * 0.0887 + Math.sin(i)).toFixed(3)}`),
    ].join('\n');
    const html = valueIn(still(calibrationFigure).draw(shop(text), 'metric'));
    expect(html.length).toBeLessThan(80_000);
    expect(html).toMatch(/\d+ of 20000 readings are drawn, the extremes of each stretch; all are in the fit\./);
    const { rows } = still(calibrationFigure).table(shop(text), 'metric');
    expect(rows.length).toBe(401);
    expect(rows.at(-1)?.[0]).toMatch(/^and 19600 more places/);
  });
});

describe('the field of readings', () => {
  it('takes rows parted by bars on one line, and lines as they are', () => {
    expect(valueIn(TEXTS.runs.read('0 1 | 1 2 | 2 3'))).toBe('0 1\n1 2\n2 3');
    expect(valueIn(TEXTS.runs.read('turns\treading (mm)\n0\t1\n1\t2'))).toBe('turns\treading (mm)\n0\t1\n1\t2');
  });

  it('says what was supposed, and what a link does not carry', () => {
    expect(TEXTS.runs.note('0 1\n1 2')).toBe('No header: positions in turns and readings in µm supposed.');
    const long = ['turns; reading (µm)', ...Array.from({ length: 400 }, (_, i) => `${i}; ${i}`)].join('\n');
    expect(TEXTS.runs.note(long)).toBe(
      'Too long for the address: a link does not carry it, and brings it back only in this browser.',
    );
    expect(isCarried(SHOP)).toBe(true);
    expect(longestOf('runs')).toBeGreaterThan(5e6);
    expect(longestOf('taps')).toBeLessThan(1000);
  });

  const refused: readonly (readonly [string, RegExp])[] = [
    ['0; 1,5\n1; 2.5', /^Line 1 has a decimal comma \(“1,5”\) and line 2 a decimal point/],
    ['turns; reading (µm)\n0; 1\n1; soft\n2; 3', /^Line 3: the reading “soft” is not a number; correct or remove it/],
    ['PK\u0003\u0004 whatever', /^This looks like a spreadsheet or another packed file/],
    ['{"a": 1}', /^This looks like a JSON file/],
    ['', /^Nothing was pasted/],
  ];
  for (const [text, reason] of refused)
    it(`refuses ${JSON.stringify(text.slice(0, 30))}`, () => {
      expect(reasonIn(TEXTS.runs.read(text))).toMatch(reason);
    });
});

describe('date and temperature', () => {
  it('takes a day of the calendar and nothing else', () => {
    expect(valueIn(TEXTS.dated.read('2026-3-1'))).toBe('2026-03-01');
    expect(valueIn(TEXTS.dated.read('2024-02-29'))).toBe('2024-02-29');
    expect(valueIn(TEXTS.dated.read(' '))).toBe('');
    for (const text of ['2026-02-29', '31.4.2026', '3/31/2026', '2026-13-01', '2026-04-31', 'today', '1900-02-29'])
      expect(reasonIn(TEXTS.dated.read(text))).toMatch(
        /which is no day; write year, month and day, like 2026-03-31, or day, month and year with dots, like 31\.3\.2026\.$/,
      );
  });

  it('takes °C and °F within what a shop can be', () => {
    expect(valueIn(TEXTS.warmth.read('20,5'))).toBe('20.5 °C');
    expect(valueIn(TEXTS.warmth.read('-5 C'))).toBe('−5 °C');
    expect(valueIn(TEXTS.warmth.read('69°f'))).toBe('69 °F');
    for (const text of ['warm', '200', '293 K', '-30 °C', '200 °F'])
      expect(reasonIn(TEXTS.warmth.read(text))).toMatch(/give the temperature of the part from −20 °C to 60 °C/);
  });
});

describe('certificate', () => {
  const said = (texts: Numbers['texts'] = {}) => shop(SHOP, {}, texts);
  it('carries what the reader stated and what the calibration found, and says what is missing', () => {
    const document = picture(
      valueIn(
        still(certificateFigure).draw(said({ piece: 'Foot <7>', dated: '2026-03-31', warmth: '20.5 °C' }), 'metric'),
      ),
    );
    const text = textOf(document, '.certificate-page').replace(/\s+/g, ' ');
    expect(text).toContain('Foot <7>');
    expect(text).toContain('2026-03-31');
    expect(text).toContain('20.5 °C');
    expect(text).toContain('88.716 µm ± 0.089 µm a turn');
    expect(textOf(document, '.sheet-verdict')).toBe('Agrees with its nominal lead');
    // Thirteen flats from home to two turns, each with its turns and both ways with their ±.
    const rows = [...document.querySelectorAll('.correction tbody tr')].map((row) =>
      [...row.children].map((cell) => cell.textContent ?? ''),
    );
    expect(rows.map(([flats]) => flats)).toEqual(Array.from({ length: 13 }, (_, i) => String(i)));
    expect(rows.every((row) => row.length === 6)).toBe(true);
    // Up and down differ by the hysteresis that the sheet states.
    expect(text).toContain('hysteresis1.56 µm');
    const number = (cell: string | undefined) => Number(cell?.replace('−', '-'));
    for (const row of rows) expect(number(row[4]) - number(row[2])).toBeCloseTo(1.56, 1);
    expect(rows[0]?.slice(2, 4)).toEqual(['0.00', '0.00']);
    expect(still(certificateFigure).caption(said({ dated: '2026-03-31' }), 'metric')).toMatch(
      /Not stated yet: piece, temperature, indicator, method\.$/,
    );
  });
});

describe('the correction table of a certificate', () => {
  const blocks = (runs: string, values: Numbers['values'] = {}) => {
    const document = picture(valueIn(still(certificateFigure).draw(shop(runs, values), 'metric')));
    const tables = [...document.querySelectorAll('table.correction')];
    return {
      text: textOf(document, '.correction-whole').replace(/\s+/g, ' '),
      heads: tables.map((table) => table.querySelector('thead')?.textContent ?? ''),
      rows: tables.map((table) => table.querySelectorAll('tbody tr').length),
    };
  };
  const straight = (count: number, way = '') => {
    const lines = Array.from(
      { length: count + 1 },
      (_, i) => `${i}; ${(14.6 * i + ((i * 7) % 5) / 10).toFixed(1)}${way}`,
    );
    return ['flats; reading (µm); direction', ...lines].join('\n');
  };

  it('repeats its head over every block of rows, and goes by the step of the head', () => {
    const foot = blocks(SHOP);
    expect(foot.rows).toEqual([7, 6]);
    const long = blocks(straight(120, '; up'));
    expect(long.rows).toEqual([24, 24, 24, 24, 24, 1]);
    expect(new Set([...foot.heads, ...long.heads])).toEqual(new Set(['flatsturnsup±\u00a0Udown±\u00a0U']));
    expect(blocks(SHOP, { k: 12 }).heads[0]).toMatch(/^points/);
    expect(blocks(SHOP, { k: 50 }).heads[0]).toMatch(/^divisions/);
  });

  it('says that rows are left out, that a way was not read, and what it is counted from', () => {
    expect(blocks(SHOP).text).toContain('counted from home: turn 0, reached with the turns rising');
    expect(blocks(straight(600, '; up')).text).toMatch(/Here stands one flat in 5; the file holds every flat\./);
    expect(blocks(straight(12, '; up')).text).toContain('No reading was taken on the way down');
  });

  it('is written to the file whole', () => {
    const found = valueIn(calibrationOf(shop(straight(600, '; up')) as never));
    if (found.at !== 'end') throw new Error('no calibration');
    const lines = correctionCsv(found.calibrated).trim().split(/\r?\n/);
    expect(lines).toHaveLength(602);
    expect(lines[0]).toMatch(/^steps from home,turns,nominal \(µm\),correction up/);
    expect(lines[7]).toMatch(/^6,1,87\.5,/);
  });
});

describe('the whole ± of a certificate', () => {
  const caption = (values: Numbers['values']) => still(certificateFigure).caption(shop(SHOP, values), 'metric');

  it('is that of the fit where the set-up adds nothing', () => {
    expect(caption({})).toMatch(/88\.716\sµm ± 0\.09[01]\sµm a turn with all of the set-up/);
  });

  it('is ruled by the indicator where that is poor, and then nothing is said to agree', () => {
    // 88.716 µm × 5 %, rectangular: 2 × 4.436/√3 = 5.1 µm, more than the 3 µm that matter.
    expect(caption({ q_g: 0.05 })).toMatch(/can’t be told: the whole ± is 5\.1\sµm a turn/);
    expect(caption({ q_g: 0.05 })).toContain('Its largest part is the scale of the indicator');
    expect(caption({ q_g: 0.05, e_mt: 0.006 })).toContain('it agrees within that ±');
  });

  it('does not excuse a lead that is off by more than all of it', () => {
    expect(caption({ eps_A: 0, eps_C: 0 })).toContain('it does not agree');
  });
});

describe('digitsFor', () => {
  it('keeps two digits of the uncertainty', () => {
    expect(digitsFor(88.7163, 0.089)).toBe(5);
    expect(digitsFor(88.7, 3)).toBe(3);
    expect(digitsFor(0.5, 20)).toBe(2);
    expect(digitsFor(88.7, 0)).toBe(6);
  });

  it('does not call a jack good that waves or loses motion, though its lead agrees', () => {
    const rows = (wave: number, gap: number) => {
      const lines = ['turns; reading (µm); direction'];
      for (let i = 0; i <= 24; i++) {
        const n = (i <= 12 ? i : 24 - i) / 6;
        const z = 87.5 * n + wave * Math.sin(2 * Math.PI * n) + (i <= 12 ? 0 : gap) + ((i * 7) % 5) / 50;
        lines.push(`${n.toFixed(5)}; ${z.toFixed(3)}; ${i <= 12 ? 'up' : 'down'}`);
      }
      return lines.join('\n');
    };
    const head = (wave: number, gap: number) => {
      const html = valueIn(still(certificateFigure).draw(shop(rows(wave, gap)), 'metric'));
      return textOf(picture(html), '.sheet-verdict').replace(/\s/g, ' ');
    };
    // More than the 3 µm that matter, and less.
    expect(head(6.4, 203)).toMatch(
      /^Agrees with its nominal lead; but more than the 3\.000 µm that matter: hysteresis 203 µm, periodic error ±6\.4\d µm$/,
    );
    expect(head(0.5, 203)).toMatch(/that matter: hysteresis 203 µm$/);
    expect(head(0.5, 1)).toBe('Agrees with its nominal lead');
  });
});
