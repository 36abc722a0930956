/**
 * The figures of the chapter on effort, held against the engine by the coordinates in their pictures: bars that add up
 * to the torque, curves that start at the frictionless limit, a jump that is the engine’s. And the printed frictions.
 */
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Numbers } from '../../widgets/assembly/numbers.ts';
import { diameters, evenFriction, pairEffort, plainEffort } from '../../widgets/engine/index.ts';
import type { Figure } from '../../widgets/figures/kit/figure.ts';
import { FIGURES } from '../../widgets/site/catalogue.ts';
import friction from '../reference/friction.json' with { type: 'json' };
import { anyThread, attribute, numbersOf, picture, pointsOf, still, textOf } from '../support/figures.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const widget = (name: string): Figure => {
  const found = FIGURES.get(name);
  if (!found) throw new Error(`no widget ${name}`);
  return found;
};
const plain = (text: string): string => text.replace(/\u00a0/g, ' ');

const stop = (values = {}, choices = {}, threads = {}): Numbers =>
  numbersOf(
    { A: 'M12x1.5', C: 'M8x1.25', ...threads },
    {
      F: 200,
      mu: 0.15,
      d_b: 6,
      mu_g: 0,
      r_k: 8,
      mu_s: 0.2,
      r_h: 20,
      theta_h: (1.5 * Math.PI) / 180,
      kappa_d: 5000,
      k_d: 50,
      ...values,
    },
    { rubs: 'nothing', divider: 'hexagon', ...choices },
  );

/** The engine’s own answer for the threads of these numbers. */
const engine = ({ threads: { A, C }, values: { F = 0, mu = 0 } }: Numbers, at = mu) => {
  if (!A || !C) throw new Error('no pair');
  const thread = (t: typeof A) => ({ h: t.h, L: t.L, d2: diameters(t).d2, mu: at });
  return { pair: pairEffort({ A: thread(A), C: thread(C), load: F }), plain: plainEffort(thread(C), F), thread };
};

describe('torque-bars', () => {
  const bars = widget('torque-bars');
  const drawing = (numbers: Numbers) => picture(valueIn(still(bars).draw(numbers, 'metric')));
  const says = (numbers: Numbers) => plain(still(bars).caption(numbers, 'metric'));
  const pieces = (svg: Element) =>
    [...svg.querySelectorAll('.piece')].map((e) => ({
      kind: e.getAttribute('class')?.replace('piece ', ''),
      x: Number(e.getAttribute('x')),
      width: Number(e.getAttribute('width')),
      back: e.getAttribute('y') === '25',
    }));
  const markAt = (svg: Element | undefined, selector: string) =>
    pointsOf(svg?.querySelector(selector)?.getAttribute('d'))[0]?.[0] ?? Number.NaN;

  it('gives the Stop of the scenario its torques: 324 N·mm up, 308 N·mm down, 166 N·mm for M8 alone, 2.45 %', () => {
    const text = says(stop());
    expect(text).toContain('takes 324.4 N·mm, 1.96 times the torque of M8×1.25 alone');
    expect(text).toContain('The efficiency is 2.45 %, that of M8×1.25 alone 24.0 %');
    expect(text).toContain('It holds by itself: lowering takes 308.0 N·mm');
    const lines = [...drawing(stop()).querySelectorAll('.line')].map((e) => plain(e.textContent ?? ''));
    expect(lines).toEqual([
      'M12×1.5 with M8×1.25, load raised, anticlockwise: 324.4 N·mm',
      'M12×1.5 with M8×1.25, load lowered, clockwise: 308.0 N·mm',
      'M8×1.25 alone, load raised: 165.9 N·mm',
      'M8×1.25 alone, load lowered: 83.91 N·mm',
    ]);
  });

  it('draws every bar to one scale: what adds less what is given back ends at the engine’s torque', () => {
    fc.assert(
      fc.property(anyThread, anyThread, fc.integer({ min: 0, max: 60 }), (A, C, hundredths) => {
        const numbers = { ...stop({ mu: hundredths / 100 }), threads: { A, C } };
        const drawn = still(bars).draw(numbers, 'metric');
        const { pair, plain: one } = engine(numbers);
        if (!drawn.ok || !pair.ok || !one.ok) return;
        const svgs = [...picture(drawn.value).querySelectorAll('.torque-bar')];
        const torques = [pair.value.against.torque, pair.value.along.torque, one.value.against, one.value.along];
        const zero = markAt(svgs[0], '.zero');
        // The scale from the frictionless mark would be coarse; from the largest total it is fine.
        const largest = torques.indexOf(Math.max(...torques.map(Math.abs)));
        if (largest < 0) return;
        const scale = (markAt(svgs[largest], '.total') - zero) / (torques[largest] ?? 1);
        for (const [i, svg] of svgs.entries()) {
          expect(Math.abs(markAt(svg, '.total') - zero - (torques[i] ?? 0) * scale)).toBeLessThan(0.05);
          // Every piece is at least drawn, so a sliver may be wider than its torque.
          const run = pieces(svg).filter((p) => p.width > 0.8);
          const last = run.filter((p) => !p.back).at(-1);
          const backs = run.filter((p) => p.back);
          const end = backs.length > 0 ? backs.at(-1)?.x : (last?.x ?? zero) + (last?.width ?? 0);
          if (run.length === pieces(svg).length)
            expect(Math.abs((end ?? Number.NaN) - markAt(svg, '.total'))).toBeLessThan(0.05);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('has no friction pieces at no friction, and ends at F·Δ/2π', () => {
    const document = drawing(stop({ mu: 0 }));
    const kinds = [...document.querySelectorAll('.torque-bar')].flatMap((svg) => pieces(svg).map((p) => p.kind));
    expect(kinds).not.toContain('a-rub');
    expect(kinds).not.toContain('c-rub');
    expect(document.querySelector('.line b')?.textContent?.replace(/\u00a0/g, ' ')).toBe('7.958 N·mm');
    // 200 N × 0.25 mm / 2π
    expect((200 * 0.25) / (2 * Math.PI)).toBeCloseTo(7.958, 3);
    expect(says(stop({ mu: 0 }))).toContain('The efficiency is 100 %');
    expect(says(stop({ mu: 0 }))).toContain('M8×1.25 alone takes 5.00 times as much');
    expect(says(stop({ mu: 0 }))).toContain('It runs back by itself: under the load it turns with 7.958 N·mm');
  });

  it('charges a tip to the plain screw only, a collar to both', () => {
    const lines = (rubs: string) =>
      [...drawing(stop({}, { rubs })).querySelectorAll('.line b')].map((e) => Number.parseFloat(e.textContent ?? ''));
    // 0.15 × 200 N × 3 mm
    const rub = 90;
    const [raise = 0, , alone = 0] = lines('nothing');
    expect(lines('the tip')[0]).toBe(raise);
    expect(lines('the tip')[2]).toBeCloseTo(alone + rub, 1);
    expect(lines('a collar')[0]).toBeCloseTo(raise + rub, 1);
    expect(lines('a collar')[2]).toBeCloseTo(alone + rub, 1);
  });

  it('tells friction from slope by hatching and names every piece in words', () => {
    const document = drawing(stop());
    expect(document.querySelectorAll('pattern').length).toBe(2);
    expect(textOf(document, '.split')).toBe(
      '192.8 N·mm friction in thread A + 47.75 N·mm slope of thread A + 123.7 N·mm friction in thread C − 39.79 N·mm slope of thread C',
    );
  });

  it('refuses friction above one, no load and equal leads, each in its sentence', () => {
    expect(reasonIn(still(bars).draw(stop({ mu: 1.2 }), 'metric'))).toContain('read 1.2; give a value from 0 to 1.');
    expect(reasonIn(still(bars).draw(stop({ F: 0 }), 'metric'))).toContain('no effort to share out');
    expect(reasonIn(still(bars).draw(stop({}, {}, { C: 'M10x1.5' }), 'metric'))).toContain('leads are equal');
  });
});

describe('friction-curve', () => {
  const curve = widget('friction-curve');
  const drawing = (numbers: Numbers) => picture(valueIn(still(curve).draw(numbers, 'metric')));
  const place = (document: Document, selector: string): [number, number] => [
    Number(attribute(document, selector, 'cx')),
    Number(attribute(document, selector, 'cy')),
  ];

  it('puts marks and limits at the engine’s torques, to one scale', () => {
    const numbers = stop();
    const document = drawing(numbers);
    const now = engine(numbers);
    const free = engine(numbers, 0);
    const rows: [string, number][] = [
      ['[data-mark=raise]', valueIn(now.pair).against.torque],
      ['[data-mark=lower]', valueIn(now.pair).along.torque],
      ['[data-mark=plain]', valueIn(now.plain).against],
      ['[data-plane] .limit.raise', (200 * 0.25) / (2 * Math.PI)],
      ['[data-plane] .limit.plain', (200 * 1.25) / (2 * Math.PI)],
    ];
    expect(valueIn(free.pair).against.torque).toBeCloseTo((200 * 0.25) / (2 * Math.PI), 9);
    const [first, second] = [rows[0], rows[3]];
    if (!first || !second) throw new Error('rows');
    const y = (selector: string) => place(document, selector)[1];
    const scale = (y(first[0]) - y(second[0])) / (first[1] - second[1]);
    for (const [selector, torque] of rows)
      expect(Math.abs(y(selector) - y(first[0]) - (torque - first[1]) * scale), selector).toBeLessThan(0.05);
  });

  it('rings the friction at which pair and plain screw cost the same, where there is one', () => {
    const numbers = stop();
    const { thread } = engine(numbers);
    const { A, C } = numbers.threads;
    if (!A || !C) throw new Error('no pair');
    const { mu } = valueIn(evenFriction(thread(A), thread(C), thread(C)));
    const document = drawing(numbers);
    const [x0] = place(document, '[data-plane] .limit.raise');
    const [x] = place(document, '[data-mark=raise]');
    expect(place(document, '[data-plane] .even')[0]).toBeCloseTo(x0 + ((x - x0) * (mu ?? 0)) / 0.15, 1);
    expect(drawing(stop({}, {}, { A: 'M12x1.5 LH' })).querySelector('.even')).toBeNull();
    expect(still(curve).caption(stop({}, {}, { A: 'M12x1.5 LH' }), 'metric')).toContain(
      'the pair needs more torque at every friction',
    );
  });

  it('reaches to 0.4, and to one where the reader’s friction lies beyond', () => {
    const x = (mu: number) =>
      Number(/translate\(([\d.]+)/.exec(attribute(drawing(stop({ mu })), '[data-handle]', 'transform'))?.[1]);
    expect(x(0.4)).toBeCloseTo(x(1), 6);
    expect(x(0.2)).toBeCloseTo((x(0) + x(0.4)) / 2, 1);
    expect(x(0.5)).toBeCloseTo((x(0) + x(1)) / 2, 1);
  });

  it('keeps its outline while friction moves within the picture, so that only the marks move', () => {
    expect(still(curve).renderKey(stop({ mu: 0.1 }), 'metric')).toBe(
      still(curve).renderKey(stop({ mu: 0.3 }), 'metric'),
    );
    expect(still(curve).renderKey(stop({ mu: 0.1 }), 'metric')).not.toBe(
      still(curve).renderKey(stop({ mu: 0.5 }), 'metric'),
    );
    expect(still(curve).renderKey(stop({ F: 100 }), 'metric')).not.toBe(still(curve).renderKey(stop(), 'metric'));
  });
});

describe('hand-force', () => {
  const hand = widget('hand-force');
  const says = (numbers: Numbers) => plain(still(hand).caption(numbers, 'metric'));
  const drawing = (numbers: Numbers) => picture(valueIn(still(hand).draw(numbers, 'metric')));

  it('divides the torque by the radius', () => {
    // 324.43 N·mm over 20 mm, 430.05 N·mm to start, 308.04 N·mm down
    expect(says(stop())).toContain('raising takes 16.22 N, 21.50 N to start; lowering takes 15.40 N');
    expect(says(stop({ r_h: 100 }))).toContain('raising takes 3.244 N');
  });

  it('lets the larger of hand angle and jump rule', () => {
    // jump 2 × (430.05 − 324.43)/5000 rad of 0.25 mm a turn; hand 1.5° of it
    expect(says(stop())).toContain('The jump is larger, so a step is 1.68 µm and not the 1.04 µm');
    expect(says(stop({ kappa_d: 50000 }))).toContain('The jump of 0.168 µm is smaller, so the hand decides: 1.04 µm');
    expect(says(stop({ mu_s: 0.15 }))).toContain('Nothing sticks, so the hand alone decides: 1.04 µm');
  });

  it('draws flat, hand and jump to one scale and counts them in flats', () => {
    const document = drawing(stop());
    const [flat = 0, byHand = 0, jump = 0] = [...document.querySelectorAll('.hand-bars .uses')].map((e) =>
      Number(e.getAttribute('width')),
    );
    expect(byHand / flat).toBeCloseTo(1.5 / 60, 3);
    expect(jump / byHand).toBeCloseTo(1.681 / 1.0417, 2);
    expect(textOf(document, '.hand-bars')).toContain('0.040 of a flat');
    expect(textOf(drawing(stop({}, { divider: 'knob' })), '.hand-bars')).toContain('of a division');
  });

  it('draws the push round the way that raises: up on the right for anticlockwise', () => {
    const force = (numbers: Numbers) => attribute(drawing(numbers), '.force', 'd');
    expect(force(stop())).toContain('V-64');
    expect(force(stop({}, {}, { A: 'M8x1.25', C: 'M12x1.5' }))).toContain('V64');
  });

  it('refuses a friction of rest below that of sliding, with what would do', () => {
    expect(reasonIn(still(hand).draw(stop({ mu_s: 0.1 }), 'metric'))).toBe(
      'The coefficient of friction at rest is 0.1, below the 0.15 of sliding, so nothing sticks: give at least 0.15.',
    );
    expect(reasonIn(still(hand).draw(stop({ mu: 1.5, mu_s: 1.6 }), 'metric'))).toContain('from 0 to 1.');
  });
});

describe('the printed frictions of the chapter', () => {
  const chapter = readFileSync(resolve(import.meta.dirname, '../../chapters/29-how-much-friction.md'), 'utf8');
  const printed = new Map(friction.rows.map((r) => [r.id, r.printed as Readonly<Record<string, unknown>>]));
  const row = (start: string): string[] =>
    (chapter.split('\n').find((line) => line.startsWith(`| ${start} |`)) ?? '').split('|').map((cell) => cell.trim());
  const of = (id: string, name: string): string => {
    const value = printed.get(id)?.[name];
    return Array.isArray(value) ? value.join(' to ') : String(value);
  };
  // surfaces as printed in the chapter; reference row; value at rest; value sliding
  const ROWS = [
    ['steel on steel, dry', 'h1-friction-steel', 'LBL_table_dry_static', 'LBL_table_dry_sliding'],
    ['steel on steel, clean and dry', 'h1-friction-steel', 'clean_dry_static_film_table', ''],
    ['steel on steel, oxide film', 'h1-friction-steel', 'oxide_film_static', ''],
    ['steel on steel, after Gieck', 'h1-friction-steel', 'Gieck_static', 'Gieck_sliding'],
    ['steel on steel, after Davis', 'h1-friction-steel', 'Davis_static', 'Davis_sliding'],
    ['steel on steel, lubricated', 'h1-friction-steel', 'lubricated_table', ''],
    ['brass on steel, dry', 'h3-friction-brass-steel', 'dry_static', 'dry_sliding'],
    ['brass on steel, greased', 'h3-friction-brass-steel', 'grease_static', ''],
    ['brass on steel, castor oil', 'h3-friction-brass-steel', 'castor_oil', ''],
    ['PTFE on steel', 'h2-friction-ptfe', 'static', 'sliding'],
    ['PTFE on steel, as a range', 'h2-friction-ptfe', 'other_table_range', ''],
  ] as const;
  for (const [surfaces, id, rest, sliding] of ROWS)
    it(`has ${surfaces} as its source has it`, () => {
      const [, , atRest, inMotion] = row(surfaces);
      expect(atRest).toBe(of(id, rest));
      expect(inMotion).toBe(sliding === '' ? '' : of(id, sliding));
    });
});
