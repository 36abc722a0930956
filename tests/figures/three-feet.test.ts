/** The plate on three feet and the three vees: what is drawn, said and tabled is what the engine says. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { WORDS } from '#words/figures/levelling-plate.ts';
import type { Numbers } from '../../widgets/assembly/numbers.ts';
import { contactForces, couplingAt, levelPlate, type Point, type Thread } from '../../widgets/engine/index.ts';
import { turnText } from '../../widgets/figures/kit/levelling/order.ts';
import { endOf, type Given, plateOf, turned, uphillEighth } from '../../widgets/figures/kit/levelling/rounds.ts';
import { bodiesOf } from '../../widgets/figures/kit/solid/bodies.ts';
import { roundStep } from '../../widgets/figures/kit/ticks.ts';
import { levellingPlate, withPlaces } from '../../widgets/figures/levelling-plate/levelling-plate.ts';
import { frameOf, pixelOf, placeAt } from '../../widgets/figures/levelling-plate/plan.ts';
import { type StandingFoot, stateOf } from '../../widgets/figures/plate-on-feet/state.ts';
import { veeCoupling } from '../../widgets/figures/vee-coupling/vee-coupling.ts';
import { readFeet, readReadings } from '../../widgets/input/levelling-table.ts';
import { attribute, numbersOf, picture, pointsOf, still, textOf, thread } from '../support/figures.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const FEET = '1: 0, 0\n2: 240, 0\n3: 120, 180';
const READINGS = '40, 20: 0\n200, 20: -84\n200, 160: 14\n40, 160: 94';
const pairOf = (A: string, C: string): Readonly<Record<'A' | 'C', Thread>> => ({ A: thread(A), C: thread(C) });
const plate = (
  texts: Partial<Record<'feet' | 'readings' | 'rounds' | 'stands' | 'adjuster' | 'passport', string>> = {},
  values: Numbers['values'] = {},
  kept = 'foot 1',
) =>
  ({
    ...numbersOf(
      { A: 'M10x1.5', C: '3/8-16 UNC' },
      { k: 6, X_A: 10, X_C: 10.475, eps: 0, W: 60, x_g: 130, y_g: 70, ...values },
      {
        kept,
      } as never,
    ),
    texts: { feet: FEET, readings: READINGS, rounds: '', stands: '', adjuster: 'none', passport: '', ...texts },
  }) as Numbers & Parameters<typeof plateOf>[0];
const plainly = (text: string): string => text.replace(/\u00a0/g, ' ');
const shift = (transform: string): [number, number] => {
  const [, x, y] = /translate\((-?[\d.]+) (-?[\d.]+)\)/.exec(transform) ?? [];
  return [Number(x), Number(y)];
};
const rowsOf = (document: Document, table: string): string[][] =>
  [...document.querySelectorAll(`${table} tbody tr`)].map((tr) =>
    [...tr.children].map((cell) => plainly(cell.textContent ?? '').trim()),
  );

describe('levelling-plate', () => {
  it('turns a foot that has a passport by the lead measured last, the others by their threads, and says so', () => {
    const of = (passport: string) => valueIn(plateOf(plate({ passport })));
    const [bare, own] = [of(''), of('2, 2026-03-02: lead 95 µm | 2, 2026-09-01: lead 70 µm')];
    expect(own.feet.map((foot) => Math.round(1e7 * foot.Delta))).toEqual([875_000, 700_000, 875_000]);
    const [was, is] = [bare, own].map((s) => s.first.levelling.moves[1]?.turns ?? Number.NaN) as [number, number];
    // The same correction, by a lead that is four fifths of that of the threads.
    expect(is / was).toBeCloseTo(87.5 / 70, 9);
    const says = (passport: string) =>
      plainly(valueIn(still(levellingPlate).draw(plate({ passport }), 'metric')).replace(/<[^>]*>/g, ''));
    expect(says('2, 2026-09-01: lead 70 µm')).toMatch(/measured: foot 2 70\.00 µm \(2026-09-01\)/);
    expect(says('')).not.toContain('measured:');
    expect(reasonIn(plateOf(plate({ passport: '2, 2026-09-01: lead 8.8 µm' })))).toContain('another piece');
  });

  it('counts a foot from where its passport left it, whatever the field of stands says, and says so', () => {
    const of = (passport: string, stands = '') => valueIn(plateOf(plate({ passport, stands })));
    const rooms = (s: ReturnType<typeof of>) => s.first.stands;
    const placed = '2, 2026-03-02: place 3 turns | 2, 2026-09-01: lead 87 µm, place 2.5 turns';
    expect(rooms(of(placed, '1: 1; 2: -1; 3: 0'))).toEqual([1, 2.5, 0]);
    expect(rooms(of('', '1: 1; 2: -1; 3: 0'))).toEqual([1, -1, 0]);
    const document = picture(valueIn(still(levellingPlate).draw(plate({ passport: placed }), 'metric')));
    // Thread C gives 6.60 turns, 3.30 either way: 2.5 of them are used.
    expect(rowsOf(document, '.turn-table')[1]?.[3]).toBe('−5.80 to +0.799');
    const said = valueIn(still(levellingPlate).draw(plate({ passport: placed }), 'metric')).replace(/<[^>]*>/g, '');
    expect(plainly(said)).toMatch(/passport left it: foot 2 \+2\.50 turns \(2026-09-01\)/);
    // Past the end of its thread it can't stand.
    expect(reasonIn(plateOf(plate({ passport: '2, 2026-09-01: place 9 turns' })))).toContain('2');
  });

  it('asks of each foot what levelPlate works out, in turns, in flats and in whole flats with their sense', () => {
    const document = picture(valueIn(still(levellingPlate).draw(plate(), 'metric')));
    // Thread C gives 10.475/1.5875 = 6.60 turns, 3.30 either way. −0.5125 µm/mm along x, 0.6857 along y: B lacks 123 µm = 8.434 flats, C 61.5 − 123.43 = −61.93 µm = −4.247.
    expect(rowsOf(document, '.turn-table')).toEqual([
      ['1', '0 µm', '0', '−3.30 to +3.30', '0', 'leave it'],
      ['2', '+123 µm', '+1.41', '−3.30 to +3.30', '+8.43', '8 flats clockwise'],
      ['3', '−61.9 µm', '−0.708', '−3.30 to +3.30', '−4.25', '4 flats anticlockwise'],
    ]);
    // √(0.5125² + 0.6857²) = 0.8561 µm/mm; 1 µm/m = 0.20626″.
    expect(rowsOf(document, '.rounds-table')).toEqual([['1', '856 µm/m (177″)', '0, +8, −4']]);
    expect(textOf(document, '[data-part=loads]')).toMatch(
      /foot 1 carries 15\.8 N, foot 2 carries 20\.8 N, foot 3 carries 23\.3 N\.$/,
    );
  });

  it('says the residual tilt of whole flats in µm/m and seconds of arc, as the engine has it', () => {
    const s = valueIn(plateOf(plate()));
    const { micrometresPerMetre, arcSeconds } = s.now.levelling.residualTilt;
    // Left over: B 123 − 8·87.5/6 = 6.33 µm, C −61.93 + 4·87.5/6 = −3.60 µm.
    const q = 6.3333 / 240;
    const r = (-3.5952 - q * 120) / 180;
    expect(micrometresPerMetre).toBeCloseTo(1000 * Math.hypot(q, r), 1);
    expect(arcSeconds).toBeCloseTo(micrometresPerMetre * 0.206265, 3);
    expect(plainly(still(levellingPlate).caption(plate(), 'metric'))).toBe(
      'Round 1: the plate has a tilt of 856 µm/m (177″), rising to the top left, with the 4 readings within 1.0 µm of one plane. ' +
        'Foot 1: leave it; foot 2: 8 flats clockwise; foot 3: 4 flats anticlockwise; then 45.9 µm/m (9.47″) should be left. No foot lifts.',
    );
  });

  it('keeps the foot or the mean that is chosen', () => {
    const signs = (kept: Given['choices']['kept']) => {
      const { moves } = valueIn(plateOf(plate({}, {}, kept))).now.levelling;
      return moves.map((m) => Math.round(m.correction * 1e4) / 10);
    };
    expect(signs('foot 2')).toEqual([-123, 0, -184.9]);
    expect(signs('foot 3')).toEqual([61.9, 184.9, 0]);
    expect(signs('mean height').reduce((a, b) => a + b, 0)).toBeCloseTo(0, 0);
  });

  it('turns the other way with the threads changed over, and counts a knob in divisions', () => {
    const other = { ...plate(), threads: pairOf('3/8-16 UNC', 'M10x1.5') };
    const document = picture(valueIn(still(levellingPlate).draw(other, 'metric')));
    expect(rowsOf(document, '.turn-table').map((row) => row[5])).toEqual([
      'leave it',
      '8 flats anticlockwise',
      '4 flats clockwise',
    ]);
    const knob = picture(valueIn(still(levellingPlate).draw(plate({}, { k: 35 }), 'metric')));
    expect(rowsOf(knob, '.turn-table')[1]?.[5]).toBe('49 divisions clockwise');
    expect([turnText(1, 6), turnText(-1, 12), turnText(0, 6)]).toEqual([
      '1 flat clockwise',
      '1 point anticlockwise',
      'leave it',
    ]);
  });

  it('comes level in one round with true feet, in two with feet 10 % short, and stops going to and fro', () => {
    const go = (eps: number): [(readonly number[])[], string | undefined] => {
      const rounds: string[] = [];
      let s = valueIn(plateOf(plate()));
      for (let i = 0; i < 6 && endOf(s) === undefined; i++) {
        rounds.push(
          valueIn(turned(s, eps))
            .map((p) => p.z * 1000)
            .join('; '),
        );
        s = valueIn(plateOf(plate({ rounds: rounds.join('\n') })));
      }
      return [s.rounds.map((r) => r.levelling.moves.map((m) => m.wholeSteps)), endOf(s)];
    };
    expect(go(0)).toEqual([
      [
        [0, 8, -4],
        [0, 0, 0],
      ],
      'level',
    ]);
    // 8.434 − 8 · 0.9 = 1.234 and −4.247 + 4 · 0.9 = −0.647, then 0.334 and 0.253 of a flat.
    expect(go(-0.1)).toEqual([
      [
        [0, 8, -4],
        [0, 1, -1],
        [0, 0, 0],
      ],
      'level',
    ]);
    // 8.434 − 8 · 1.12 = −0.526 flats, then −0.526 + 1.12 = 0.594: each asks for one flat, to and fro.
    expect(go(0.12)).toEqual([
      [
        [0, 8, -4],
        [0, -1, 0],
        [0, 1, 0],
      ],
      'to and fro',
    ]);
  });

  it('tells what each foot did since the round before', () => {
    const first = valueIn(plateOf(plate()));
    const after = valueIn(turned(first, 0.08));
    const said = plainly(
      still(levellingPlate).caption(plate({ rounds: after.map((p) => p.z * 1000).join('; ') }), 'metric'),
    );
    // 8 % of 116.67 µm up at B and of 58.33 µm down at C.
    expect(said).toMatch(/Moved minus asked, since the round before: foot 1 .*, foot 2 \+9\.33 µm, foot 3 −4\.67 µm\./);
  });

  it('draws the plan to scale, y up the page, with every mark where its point is', () => {
    const document = picture(valueIn(still(levellingPlate).draw(plate(), 'metric')));
    const [ax, ay] = shift(attribute(document, '[data-handle=foot-1]', 'transform'));
    const [bx, by] = shift(attribute(document, '[data-handle=foot-2]', 'transform'));
    const [cx, cy] = shift(attribute(document, '[data-handle=foot-3]', 'transform'));
    const scale = (bx - ax) / 240;
    expect(by).toBe(ay);
    expect((cx - ax) / scale).toBeCloseTo(120, 1);
    expect((ay - cy) / scale).toBeCloseTo(180, 1);
    const [rx, ry] = shift(attribute(document, '[data-handle=reading-2]', 'transform'));
    expect([(rx - ax) / scale, (ay - ry) / scale]).toEqual([expect.closeTo(200, 1), expect.closeTo(160, 1)]);
    const s = valueIn(plateOf(plate()));
    const frame = frameOf(s);
    for (const place of [...s.feet, ...s.now.readings]) {
      const back = placeAt(frame, pixelOf(frame, place));
      expect([back.x, back.y]).toEqual([expect.closeTo(place.x, 9), expect.closeTo(place.y, 9)]);
    }
  });

  it('draws each level line where the plane has the height it names', () => {
    const numbers = plate();
    const document = picture(valueIn(still(levellingPlate).draw(numbers, 'metric')));
    const s = valueIn(plateOf(numbers));
    const { p, q, r } = s.now.levelling.plane;
    const frame = frameOf(s);
    const lines = [...document.querySelectorAll('.plate-plan .level')];
    const names = [...document.querySelectorAll('.level-name')].map((e) => plainly(e.textContent ?? ''));
    expect(lines.length).toBeGreaterThan(4);
    lines.forEach((line, i) => {
      const wanted = Number(names[i]?.replace('−', '-').replace(' µm', '')) / 1000;
      for (const pixel of pointsOf(line.getAttribute('d'))) {
        const { x, y } = placeAt(frame, pixel);
        expect(p + q * x + r * y).toBeCloseTo(wanted, 4);
      }
      expect(line.classList.contains('below')).toBe(wanted < 0);
    });
  });

  it('points the arrow the way the plate rises and shortens it as the plate comes level', () => {
    const arrow = (numbers: Numbers) =>
      picture(valueIn(still(levellingPlate).draw(numbers, 'metric'))).querySelector('[data-ground] .rise');
    const steep = arrow(plate());
    const { uphill } = valueIn(plateOf(plate())).now.levelling.tilt;
    expect(Number(/rotate\((-?[\d.]+)/.exec(steep?.getAttribute('transform') ?? '')?.[1])).toBeCloseTo(
      (-uphill * 180) / Math.PI,
      1,
    );
    const tip = (e: Element | null | undefined) => Math.max(...pointsOf(e?.getAttribute('d')).map(([x]) => x));
    expect(tip(arrow(plate({ rounds: '0; -42; 7; 47' })))).toBeLessThan(0.6 * tip(steep));
    expect(arrow(plate({ rounds: '3; 3; 3; 3' }))?.tagName.toLowerCase()).toBe('circle');
    const eighth = (degrees: number) => uphillEighth((degrees * Math.PI) / 180);
    expect([0, 90, 135, 180, -180, -45].map(eighth)).toEqual([0, 2, 3, 4, 4, 7]);
    expect(WORDS.leaning({ round: 1, tilt: '', eighth: eighth(135), flat: undefined })).toContain('to the top left');
  });

  it('puts an arrow round a foot only where it is turned, clockwise over the top for clockwise', () => {
    const document = picture(valueIn(still(levellingPlate).draw(plate(), 'metric')));
    const sense = (foot: string) => attribute(document, `[data-handle=foot-${foot}] .sense`, 'd');
    expect(sense('1')).toBe('');
    expect(sense('2')).toMatch(/^M-.*A20 20 0 0 1 /);
    expect(sense('3')).toMatch(/^M[\d.].*A20 20 0 0 0 -/);
  });

  it('tables every round’s readings and feet with the engine’s numbers', () => {
    const table = still(levellingPlate).table(plate({ rounds: '1; 2; 3; 4' }), 'metric');
    expect(table.rows).toHaveLength(2 * 7);
    for (const row of table.rows) expect(row).toHaveLength(table.head.length);
    const points = valueIn(readReadings(READINGS));
    const { plane } = valueIn(
      levelPlate({
        feet: valueIn(readFeet(FEET)).map((f) => ({ ...f, Delta: 0.0875, k: 6 })),
        readings: points,
        keep: { kind: 'mean' },
      }),
    );
    points.forEach((_: Point, i) => {
      const shown = Number.parseFloat((table.rows[i]?.[4] ?? '').replace('−', '-'));
      expect(shown / 1000).toBeCloseTo(plane.residuals[i] ?? Number.NaN, 5);
    });
  });

  it('says which foot lifts, in words and not in place of the picture', () => {
    const numbers = plate({}, { x_g: 120, y_g: -18 });
    expect(plainly(still(levellingPlate).caption(numbers, 'metric'))).toMatch(
      /foot 3 would lift, since −6 N would be needed there/,
    );
    expect(textOf(picture(valueIn(still(levellingPlate).draw(numbers, 'metric'))), '.lifts')).toMatch(
      /^With the weight at/,
    );
  });

  const refused: readonly (readonly [Numbers, RegExp])[] = [
    [plate({ feet: '0, 0; 1, 0; 2, 0' }), /^The 3 feet stand in a line/],
    [plate({ readings: '0, 0: 1; 9, 0: 2' }), /^Read 2 readings; a plane needs three/],
    [plate({ rounds: '1; 2' }), /^Round 2 has 2 readings for 4 places; give one for each place/],
    [plate({ readings: '0, 0: 0; 9, 0: 2 mm; 0, 9: 0' }), /^The readings give a tilt of 222 mm per metre/],
    [{ ...plate(), threads: pairOf('M8', 'M8') }, /^Foot 1 has a net lead of 0 mm a turn/],
  ];
  for (const [numbers, reason] of refused)
    it(`refuses with ${reason.source.slice(1, 50)}`, () => {
      expect(reasonIn(still(levellingPlate).draw(numbers, 'metric'))).toMatch(reason);
      expect(still(levellingPlate).caption(numbers, 'metric')).toMatch(reason);
      expect(still(levellingPlate).table(numbers, 'metric').rows).toEqual([]);
    });

  it('has no NaN or Infinity for a level plate, a plate tilted along one axis, and one far from the origin', () => {
    for (const readings of [
      '0, 0: 5; 9, 0: 5; 0, 9: 5',
      '0, 0: 0; 9, 0: 9; 0, 9: 0',
      '9000, -9000: 1; 9009, -9000: 2; 9000, -8990: 4',
    ])
      for (const view of ['metric', 'inch', 'both'] as const) {
        const drawn = valueIn(still(levellingPlate).draw(plate({ readings }), view));
        expect(drawn).not.toMatch(/NaN|Infinity|undefined/);
        expect(still(levellingPlate).caption(plate({ readings }), view)).not.toMatch(/NaN|Infinity|undefined|\?/);
      }
  });
});

describe('the places of feet that were levelled', () => {
  const PASSPORT = '2, 2026-03-02: lead 87 µm, place 1 turns, new grease';
  /** Two rounds on the page: one read, one turned. */
  const levelled = plate({ passport: PASSPORT, rounds: '0; -1; 0; 1' });

  it('go into the passports, so that the next levelling counts from there', () => {
    const state = valueIn(plateOf(levelled));
    const stood = state.now.stands;
    // Foot 2 began where its passport left it, the others in the middle; each has gone by its flats since.
    const flats = state.first.levelling.moves.map((m) => m.wholeSteps);
    expect(flats.some((m) => m !== 0)).toBe(true);
    stood.forEach((n, i) => {
      expect(n).toBeCloseTo((i === 1 ? 1 : 0) + (flats[i] ?? 0) / 6, 12);
    });
    const passport = valueIn(withPlaces(state, PASSPORT, '2026-11-27'));
    const next = valueIn(plateOf(plate({ passport, readings: READINGS })));
    expect(next.placed.map((p) => [p.name, p.day])).toEqual(['1', '2', '3'].map((name) => [name, '2026-11-27']));
    next.first.stands.forEach((n, i) => {
      expect(n).toBeCloseTo(stood[i] ?? Number.NaN, 4);
    });
    // What stood there stays: the lead of that day, and the note.
    expect(passport.split('\n')[0]).toBe(PASSPORT);
    expect(next.feet[1]?.Delta).toBeCloseTo(0.087, 9);
  });

  it('keep the day of a passport that is dated ahead of the calendar, or it would go on ruling', () => {
    const passport = valueIn(withPlaces(valueIn(plateOf(levelled)), PASSPORT, '2026-01-01'));
    expect(passport.split('\n')).toHaveLength(3);
    expect(passport.split('\n')[0]).toMatch(/^2, 2026-03-02: lead 87 µm, place -?[\d.]+ turns, new grease$/);
    expect(passport.split('\n')[0]).not.toContain('place 1 turns');
  });
});

describe('the words on the plan', () => {
  interface Box {
    readonly words: string;
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  }
  /** Boxes of all words on the plan where a pixel is so many of its units; 6.8 px a letter and 14 a line are what 13 px letters of the label face need. */
  const boxesOf = (document: Document, scale: number): Box[] => {
    const box = (words: string, x: number, middle: number, anchor: string): Box => {
      const width = 6.8 * words.length * scale;
      const left = anchor === 'middle' ? x - width / 2 : anchor === 'end' ? x - width : x;
      return { words, left, right: left + width, top: middle - 7 * scale, bottom: middle + 7 * scale };
    };
    const names = [...document.querySelectorAll('.level-name')].map((e) =>
      box(
        plainly(e.textContent ?? ''),
        Number(e.getAttribute('x')),
        Number(e.getAttribute('y')) - 4,
        e.getAttribute('text-anchor') ?? '',
      ),
    );
    const marks = [...document.querySelectorAll('.handle')].flatMap((handle) => {
      const [x, y] = shift(handle.getAttribute('transform') ?? '');
      const number = plainly(handle.querySelector('.number')?.textContent ?? '');
      const under = handle.querySelector('[data-under]');
      const [, across, below] =
        /--across:(-?[\d.]+)px;--under:(-?[\d.]+)px/.exec(under?.getAttribute('style') ?? '') ?? [];
      return [
        ...(number === '' ? [] : [box(number, x, y, 'middle')]),
        box(
          plainly(under?.textContent ?? ''),
          x + Number(across) * scale,
          y + Number(below) * scale,
          under?.getAttribute('text-anchor') ?? '',
        ),
      ];
    });
    return [...names, ...marks];
  };

  it.each([
    ['of the chapter', {}, {}],
    ['with an indicator over each foot', { readings: '0, 0: 0; 240, 0: -84; 120, 180: 94' }, {}],
    ['with readings close by the feet', { readings: '10, 5: 0; 232, 8: -84.55; 118, 170: 114.6; 40, 160: 94' }, {}],
    [
      'of a small plate',
      { feet: '1: 0, 0; 2: 100, 0; 3: 50, 80', readings: '10, 5: 0; 90, 5: -84; 50, 70: 14' },
      { x_g: 50, y_g: 30 },
    ],
    [
      'with the weight near a foot and a reading',
      { feet: '1: -60, -40; 2: 60, -40; 3: 0, 70', readings: '-50, -50: 0; 50, -50: 120.5; 0, 80: -33.3' },
      { x_g: -50, y_g: -20 },
    ],
    ['that rises along y', { readings: '40, 20: 0; 200, 20: 2; 200, 160: 900; 40, 160: 902' }, {}],
    ['that rises along x', { readings: '40, 20: 0; 200, 20: 900; 200, 160: 902; 40, 160: 2' }, {}],
    [
      'of a long plate',
      { feet: '1: 0, 0; 2: 900, 0; 3: 450, 90', readings: '20, 20: 0; 880, 20: -84; 450, 80: 14' },
      { x_g: 450, y_g: 30 },
    ],
  ] as const)('stand free of each other on a plan %s, on a wide window and on a phone', (_, texts, values) => {
    for (const view of ['metric', 'inch'] as const)
      for (const scale of [1, 1.8]) {
        const document = picture(valueIn(still(levellingPlate).draw(plate(texts, values), view)));
        const boxes = boxesOf(document, scale);
        for (const [i, a] of boxes.entries()) {
          expect(
            [a.left < 0, a.right > 640, a.top < 0, a.bottom > 460],
            `${a.words} within the plan, ${scale}`,
          ).toEqual([false, false, false, false]);
          for (const b of boxes.slice(i + 1))
            expect(
              Math.min(a.right, b.right) - Math.max(a.left, b.left) > 1 &&
                Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 1,
              `${a.words} on ${b.words}, ${view}, ${scale}`,
            ).toBe(false);
        }
      }
  });

  it('have the letter of a reading before its height where a foot covers the mark', () => {
    const document = picture(
      valueIn(still(levellingPlate).draw(plate({ readings: '0, 0: 0; 240, 0: -84; 20, 180: 94' }), 'metric')),
    );
    expect(plainly(textOf(document, '[data-handle=reading-0] [data-under]'))).toBe('a: 0 µm');
    expect(textOf(document, '[data-handle=reading-0] [data-mark]')).toBe('');
    expect(plainly(textOf(document, '[data-handle=reading-2] [data-under]'))).toBe('94.0 µm');
    expect(textOf(document, '[data-handle=reading-2] [data-mark]')).toBe('c');
  });
});

describe('levelling-plate within the turns that its feet have', () => {
  /** Leads of 1.25 mm and 1.27 mm: 20 µm a turn. Screws of 20 mm keep a diameter: 12 mm and 13.65 mm to use, 12/1.25 = 9.6 turns. */
  const fine = (texts: Parameters<typeof plate>[0], kept = 'foot 1'): ReturnType<typeof plate> => ({
    ...plate({ feet: '1: 0, 0\n2: 160, 0\n3: 80, 140', ...texts }, { X_A: 12, X_C: 13.65, x_g: 80, y_g: 50 }, kept),
    threads: { A: thread('M8x1.25'), C: thread('1/4-20 UNC') },
  });
  const STEEP = '20, 20: 0; 140, 20: -620; 80, 120: 410';
  const turnsOf = (numbers: Numbers) =>
    rowsOf(picture(valueIn(still(levellingPlate).draw(numbers, 'metric'))), '.turn-table').map((row) => row[5]);

  it('orders no foot 41 turns that has 9.6: it says how many are missing and what to do, wherever it speaks', () => {
    const numbers = fine({ readings: STEEP });
    // −620/120 µm a mm along x: B lacks 826.7 µm = 41.33 turns = 248 flats, C −594.7 µm = −29.73 turns; 71.07 against one another.
    const document = picture(valueIn(still(levellingPlate).draw(numbers, 'metric')));
    expect(rowsOf(document, '.turn-table')).toEqual([
      ['1', '0 µm', '0', '−4.80 to +4.80', '0', 'wait'],
      ['2', '+827 µm', '+41.3', '−4.80 to +4.80', '+248', 'too far'],
      ['3', '−595 µm', '−29.7', '−4.80 to +4.80', '−178', 'too far'],
    ]);
    const said = plainly(still(levellingPlate).caption(numbers, 'metric'));
    expect(said).toMatch(/foot 2 must rise 1\.42 mm against foot 3, which is 71\.1 turns; .* 9\.[36]\d turns\./);
    expect(said).toMatch(/Turn no foot yet\. Bring the plate roughly level first/);
    expect(said).not.toMatch(/clockwise;|should be left/);
    expect(textOf(document, '[data-part=room]')).toContain('Turn no foot yet');
    expect(['1', '2', '3'].map((foot) => textOf(document, `[data-handle=foot-${foot}] [data-under]`))).toEqual([
      'wait',
      'too far',
      'too far',
    ]);
    expect(attribute(document, '[data-handle=foot-2] .sense', 'd')).toBe('');
    expect(rowsOf(document, '.rounds-table')[0]?.[2]).toBe('not within the threads');
    const feet = still(levellingPlate)
      .table(numbers, 'metric')
      .rows.filter((row) => row[1]?.startsWith('foot'));
    expect(feet.map((row) => row[8])).toEqual(['wait', 'too far', 'too far']);
    expect(endOf(valueIn(plateOf(numbers)))).toBeUndefined();
    expect(valueIn(turned(valueIn(plateOf(numbers)), 0)).map((p) => Math.round(p.z * 1e6))).toEqual([
      0, -620_000, 410_000,
    ]);
  });

  it('shares the turning by the height of the plate where one foot alone would run out', () => {
    // Along the front edge 1 µm a mm down to the right: B lacks 160 µm = 8 turns with 4.8 there; C half as much.
    const numbers = fine({ readings: '0, 0: 0; 160, 0: -160; 80, 140: -80' });
    expect(turnsOf(numbers)).toEqual(['24 flats anticlockwise', '24 flats clockwise', 'leave it']);
    const said = plainly(still(levellingPlate).caption(numbers, 'metric'));
    expect(said).toContain('With foot 1 left as it is, foot 2 would run out of thread.');
    expect(said).toContain('the whole plate is also lowered by 80.0 µm');
    const s = valueIn(plateOf(numbers));
    expect(s.now.levelling.residualTilt.micrometresPerMetre).toBeCloseTo(0, 6);
  });

  it('counts where each foot stands, and what the rounds before have turned', () => {
    const readings = '0, 0: 0; 160, 0: -80; 80, 140: 0';
    expect(turnsOf(fine({ readings }))).toEqual(['leave it', '24 flats clockwise', 'leave it']);
    // B stands 4 turns up of 4.8: it has 4 flats left clockwise, so the others come down.
    const high = fine({ readings, stands: 'B: 4' });
    expect(turnsOf(high)[1]).not.toMatch(/^2[0-9] flats clockwise/);
    for (const [i, move] of valueIn(plateOf(high)).now.levelling.moves.entries()) {
      const room = valueIn(plateOf(high)).now.rooms[i];
      expect(move.wholeSteps / 6).toBeLessThanOrEqual(room?.clockwise ?? 0);
      expect(-move.wholeSteps / 6).toBeLessThanOrEqual(room?.anticlockwise ?? 0);
    }
    const second = valueIn(plateOf(fine({ readings, rounds: '0; -2; 0' })));
    expect(second.rounds[1]?.rooms[1]).toEqual({
      clockwise: expect.closeTo(0.8, 9),
      anticlockwise: expect.closeTo(8.8, 9),
    });
  });

  it('refuses a foot said to stand outside its own travel', () => {
    expect(
      plainly(reasonIn(still(levellingPlate).draw(fine({ readings: STEEP, stands: '1: 0; 2: 6' }), 'metric'))),
    ).toBe(
      'Foot 2 stands 6 turns from the middle of its stroke, and its threads give 4.8 turns either way: put it back within them, or give it longer threads.',
    );
  });

  it('leaves nothing where nothing is left, not a micrometre of twelve noughts', () => {
    // 826.67 µm is 248 flats of 20/6 µm each, so with longer threads whole flats do it.
    const long = fine({ readings: '0, 0: 0; 120, 0: -620; 0, 100: 0' });
    const rows = still(levellingPlate).table(
      { ...long, values: { ...long.values, X_A: 200, X_C: 200 } },
      'metric',
    ).rows;
    const b = rows.find((row) => row[1] === 'foot 2');
    expect(b?.slice(3, 9).map((text) => plainly(text))).toEqual([
      '+827 µm',
      '0 µm',
      '+41.3',
      '−78.7 to +78.7',
      '+248',
      '248 flats clockwise',
    ]);
  });
});

describe('roundStep', () => {
  it('is the least of 1, 2, 5 times a power of ten that is no smaller', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (wanted) => {
        const step = roundStep(wanted);
        expect(step).toBeGreaterThanOrEqual(wanted * (1 - 1e-8));
        expect(step).toBeLessThanOrEqual(wanted * 2.5 * (1 + 1e-8));
      }),
    );
    expect([3, 20, 0.6, 49].map(roundStep)).toEqual([5, 20, 1, 50]);
  });
});

describe('vee-coupling', () => {
  const vees = (values: Numbers['values'] = {}, grooves = 'to the middle'): Numbers => ({
    ...numbersOf({}, { W: 60, x_g: 120, y_g: 60, beta_v: Math.PI / 4, F_l: 0, theta_l: 0, h_l: 20, ...values }, {
      grooves,
    } as never),
    texts: { feet: FEET },
  });
  const forces = (numbers: Numbers) =>
    still(veeCoupling)
      .table(numbers, 'metric')
      .rows.map((row) => Number.parseFloat((row[4] ?? '').replace('−', '-')));

  it('lets the weight in the middle press all six alike: 60/(6 sin 45°) = 14.14 N', () => {
    expect(forces(vees())).toEqual([14.1, 14.1, 14.1, 14.1, 14.1, 14.1]);
    expect(plainly(still(veeCoupling).caption(vees(), 'metric'))).toMatch(/^All six flanks push, so the part is held/);
  });

  it('shows the engine’s forces under a side force, and names the flank that opens', () => {
    const values = { F_l: 60, theta_l: Math.PI / 6 };
    const contacts = valueIn(
      contactForces(couplingAt(valueIn(readFeet(FEET)), Math.PI / 4, 'to the middle'), [
        { force: [0, 0, -60], at: [120, 60, 0] },
        { force: [60 * Math.cos(Math.PI / 6), 60 * Math.sin(Math.PI / 6), 0], at: [120, 60, 20] },
      ]),
    );
    const found = forces(vees(values));
    contacts.forEach((c, i) => {
      expect(Math.abs((found[i] ?? 0) / c.force - 1)).toBeLessThan(0.01);
    });
    const document = picture(valueIn(still(veeCoupling).draw(vees(values), 'metric')));
    const open = contacts.filter((c) => c.force < 0).length;
    expect(open).toBeGreaterThan(0);
    expect(document.querySelectorAll('.vee-bars .open').length).toBe(open);
    expect(document.querySelectorAll('.vees .push.open').length).toBe(open);
    expect(plainly(still(veeCoupling).caption(vees(values), 'metric'))).toMatch(
      /^Flank [1-3][ab] would have to pull .* N: it opens/,
    );
  });

  it('draws bars in proportion from one zero line, minus to the left', () => {
    const numbers = vees({ F_l: 60, theta_l: Math.PI / 6 });
    const document = picture(valueIn(still(veeCoupling).draw(numbers, 'metric')));
    const zero =
      pointsOf(attribute(document, '.vee-bars .zero', 'd'))[0]?.[0] ??
      Number(/^M([\d.]+)/.exec(attribute(document, '.vee-bars .zero', 'd'))?.[1]);
    const found = forces(numbers);
    const bars = [...document.querySelectorAll('.vee-bars .force')].map((e) => ({
      x: Number(e.getAttribute('x')),
      width: Number(e.getAttribute('width')),
    }));
    const scale = Math.max(...bars.map((b) => b.width)) / Math.max(...found.map(Math.abs));
    bars.forEach((bar, i) => {
      const force = found[i] ?? 0;
      expect(bar.width).toBeCloseTo(Math.abs(force) * scale, -0.5);
      if (force < 0) expect(bar.x + bar.width).toBeCloseTo(zero, 1);
      else expect(bar.x).toBeCloseTo(zero, 1);
    });
  });

  it('draws grooves that leave it loose without forces, and refuses a part without weight and a flat vee', () => {
    for (const grooves of ['all one way', 'round the middle']) {
      const document = picture(valueIn(still(veeCoupling).draw(vees({}, grooves), 'metric')));
      expect(document.querySelectorAll('.vees .groove').length).toBe(3);
      expect(document.querySelectorAll('.vees .push, .vee-bars').length).toBe(0);
      expect(still(veeCoupling).caption(vees({}, grooves), 'metric')).toMatch(/^The part can still move a little/);
      expect(
        still(veeCoupling)
          .table(vees({}, grooves), 'metric')
          .rows.map((row) => row[5]),
      ).toEqual(Array(6).fill('loose'));
    }
    expect(reasonIn(still(veeCoupling).draw(vees({ beta_v: 0 }), 'metric'))).toMatch(
      /^The vee at ball 1 has a half-angle of 0°/,
    );
    expect(reasonIn(still(veeCoupling).draw(vees({ W: 0 }), 'metric'))).toMatch(/^The part has no weight here/);
  });

  it('stands the flank that pushes left of its groove at the right of it', () => {
    // Foot 3: the groove runs straight up the page, so its left flank pushes to the left and its arrow comes from the right.
    const document = picture(valueIn(still(veeCoupling).draw(vees(), 'metric')));
    const name = [...document.querySelectorAll('.push-name')].find((e) => e.textContent === '3a');
    expect(Number(name?.getAttribute('x'))).toBeGreaterThan(20);
    // Before the turn of its groove the right is below the middle line: y down the page.
    const [, , , , left, right] = [...document.querySelectorAll('.vees .push')].map((e) =>
      Number(/^M0 (-?[\d.]+)/.exec(e.getAttribute('d') ?? '')?.[1]),
    );
    expect(left).toBeGreaterThan(20);
    expect(right).toBeLessThan(-20);
  });
});

describe('three under a plate', () => {
  const seen = (rounds = '', kept = 'foot 1') => valueIn(stateOf(plate({ rounds }, {}, kept)));
  it('stands on its tips: the plate as drawn passes through the top of each foot', () => {
    for (const kept of ['foot 1', 'foot 3', 'mean height']) {
      const s = seen('', kept);
      for (const { x, y, lift } of s.feet) expect(s.middle + s.tilt[0] * x + s.tilt[1] * y).toBeCloseTo(lift, 9);
    }
  });

  it('draws every height by one factor, from the foot that stays', () => {
    const s = seen();
    const [a, b, c] = s.feet as readonly [StandingFoot, StandingFoot, StandingFoot];
    expect(a.height).toBe(0);
    // Readings of the chapter: over B the plate is 123 µm too low, over C 61.9 µm too high (the plan says so too).
    expect(b.height).toBeCloseTo(-0.123, 3);
    expect(c.height).toBeCloseTo(0.0619, 4);
    expect(b.lift - a.lift).toBeCloseTo(s.times * b.height, 9);
    expect(c.lift - a.lift).toBeCloseTo(s.times * c.height, 9);
    expect(Math.min(a.lift, b.lift, c.lift)).toBeCloseTo(0, 9);
  });

  it('turns each head by what the rounds before have turned', () => {
    const s = seen('0; 0; 0; 0');
    const asked = s.plate.first.levelling.moves.map((m) => m.wholeSteps / s.plate.k);
    s.feet.forEach((foot, i) => {
      expect(foot.turns).toBeCloseTo(asked[i] as number, 9);
    });
  });

  it('takes no more calls and triangles than one adjuster may', () => {
    const one = bodiesOf(seen().adjuster, 24).filter((b) => b.name !== 'spring');
    expect(3 * one.length + 2).toBeLessThanOrEqual(20);
    expect(3 * one.reduce((sum, b) => sum + b.facets.positions.length / 9, 0)).toBeLessThan(100_000);
  });
});
