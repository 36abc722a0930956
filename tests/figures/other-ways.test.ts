/**
 * The figure of the five ways, held against the engine by the coordinates in its drawings and by every number it writes:
 * one scale for all, the balls at the places of the ball lift, prices missing and said so.
 */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Numbers, readInput } from '../../widgets/assembly/numbers.ts';
import {
  ballLift,
  climbingTorque,
  diameters,
  frictionAngle,
  leadAngle,
  mm,
  newtons,
  pairEffort,
  plain,
  plainEffort,
  rad,
  wedgePush,
} from '../../widgets/engine/index.ts';
import { TEXTS } from '../../widgets/input/texts.ts';
import { FIGURES } from '../../widgets/site/catalogue.ts';
import { reasonOf } from '../../widgets/words/reason.ts';
import { numbersOf, picture, pointsOf, still, textOf, thread } from '../support/figures.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const found = FIGURES.get('other-ways');
if (!found) throw new Error('no widget other-ways');
const ways = found;
const NAMES = ['plain screw', 'wedge', 'lever', 'squeezed balls', 'differential screw'] as const;
type Name = (typeof NAMES)[number];

const PRICES = 'plain screw: 1 × 46; wedge: 1 × 18; lever: 1 × 9.50; differential screw: 1 × 11.20';
const asked = (values = {}, prices = PRICES, threads = {}): Numbers => ({
  ...numbersOf(
    { B: '1/4-100', thread: 'M6x1', A: 'M10x1.5', C: '3/8-16 UNC', ...threads },
    {
      s_h: mm(0.0004),
      theta_h: rad((1.5 * Math.PI) / 180),
      S_w: mm(0.5),
      H_w: mm(40),
      F: newtons(50),
      mu: plain(0.15),
      c: mm(0.1),
      t_b: mm(8),
      b_l: mm(5),
      R_t: mm(5),
      ...values,
    },
  ),
  texts: { prices },
});

const drawing = (numbers: Numbers) => picture(valueIn(still(ways).draw(numbers, 'metric')));
const says = (numbers: Numbers) =>
  still(ways)
    .caption(numbers, 'metric')
    .replace(/\u00a0/g, ' ');
const row = (numbers: Numbers, name: Name): Record<string, string> => {
  const { head, rows } = still(ways).table(numbers, 'metric');
  const cells = rows.find(([way]) => way === name) ?? [];
  return Object.fromEntries(head.map((h, i) => [h, (cells[i] ?? '').replace(/\u00a0/g, ' ')]));
};
const card = (document: Document, name: Name): Element => {
  const place = document.querySelector(`[data-way="${name}"]`);
  if (!place) throw new Error(name);
  return place;
};
const svg = (document: Document, name: Name): Element => {
  const place = [...document.querySelectorAll('svg.way')].find((e) => e.getAttribute('aria-label')?.startsWith(name));
  if (!place) throw new Error(name);
  return place;
};
/** Units of the picture per millimetre, by the bar of 10 mm beneath it. */
const scaleOf = (place: Element): number =>
  Number(/h([\d.]+)/.exec(place.querySelector('.measure')?.getAttribute('d') ?? '')?.[1]) / 10;
const floorOf = (place: Element): number =>
  Number(/M0 ([\d.]+)H/.exec(place.querySelector('.ground')?.getAttribute('d') ?? '')?.[1]);
const extent = (place: Element, selector: string) => {
  const points = [...place.querySelectorAll(selector)].flatMap((e) => pointsOf(e.getAttribute('d')));
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
};

describe('other-ways', () => {
  it('gives each way of the chapter its resolution, effort, height and price', () => {
    const of = (head: string) => NAMES.map((name) => row(asked(), name)[head]);
    expect(of('for the hand angle')).toEqual(['1.06 µm', '0.400 µm', '0.400 µm', '3.49 µm', '0.365 µm']);
    expect(of('effort')).toEqual(['28.9 N·mm', '13.1 N·mm', '3.02 N·mm', '26.4 N·mm', '76.8 N·mm']);
    // 0.1 mm × tan 30°: once, twice for a pair, 0.096 of it and so on through a step-down.
    expect(of('play, felt when push changes to pull')).toEqual(['57.7 µm', '5.54 µm', '5.54 µm', '48.4 µm', '115 µm']);
    expect(of('height')).toEqual(['8.50 mm', '6.00 mm', '13.2 mm', '18.2 mm', '25.1 mm']);
    expect(of('price')).toEqual(['46', '18', '9.50', 'no price given', '11.20']);
    expect(of('stroke')).toEqual(Array.from(NAMES, () => '500 µm'));
  });

  it('takes its efforts from the threads as typed', () => {
    const [drive, fine, A, C] = ['M6x1', '1/4-100', 'M10x1.5', '3/8-16'].map(thread);
    if (!drive || !fine || !A || !C) throw new Error('threads');
    const rub = (t: typeof A) => ({ h: t.h, L: t.L, d2: diameters(t).d2, mu: 0.15 });
    const { d2 } = diameters(drive);
    const { lambda } = valueIn(leadAngle.of({ L: drive.L, d_2: d2 }));
    const { rho } = valueIn(frictionAngle.of({ mu: plain(0.15), beta_f: rad(Math.PI / 6) }));
    const push = valueIn(wedgePush.of({ F: newtons(50), phi_w: rad(Math.atan(0.096)), mu: plain(0.15) })).F_d;
    const torques: Partial<Record<Name, number>> = {
      'plain screw': valueIn(plainEffort(rub(fine), 50)).against,
      wedge: valueIn(climbingTorque.of({ F: push, d_2: d2, rho, lambda })).M_up,
      lever: valueIn(climbingTorque.of({ F: newtons(4.8), d_2: d2, rho, lambda })).M_up,
      'differential screw': valueIn(pairEffort({ A: rub(A), C: rub(C), load: 50 })).against.torque,
    };
    for (const [name, torque] of Object.entries(torques))
      expect(row(asked(), name as Name).effort, name).toBe(`${torque.toPrecision(3)} N·mm`);
  });

  it('draws all five to one scale, on one base, under one roof', () => {
    const document = drawing(asked());
    const scales = NAMES.map((name) => scaleOf(svg(document, name)));
    for (const scale of scales) expect(scale).toBeCloseTo(scales[0] ?? Number.NaN, 1);
    for (const name of NAMES) {
      const place = svg(document, name);
      const roof = Number(/M0 ([\d.]+)H/.exec(place.querySelector('.roof')?.getAttribute('d') ?? '')?.[1]);
      expect(Math.abs(floorOf(place) - roof - 40 * scaleOf(place)), name).toBeLessThan(0.1);
      // The width that the page gives it is that of its picture, so that the scale holds on the page as well.
      const [, , width] = (place.getAttribute('viewBox') ?? '').split(' ').map(Number);
      const share = Number(/--w: ([\d.]+)/.exec(place.parentElement?.getAttribute('style') ?? '')?.[1]);
      expect((width ?? 0) / share, name).toBeCloseTo(scaleOf(place), 1);
    }
  });

  it('draws what the numbers say: heights of pair and drive screw, arms, slope', () => {
    const document = drawing(asked());
    const s = scaleOf(svg(document, 'lever'));
    const pair = extent(svg(document, 'differential screw'), '.part.carried');
    expect((floorOf(svg(document, 'differential screw')) - pair.top) / s).toBeCloseTo(25.071, 1);
    const lever = svg(document, 'lever');
    const screw = extent(lever, '.part.turned');
    expect((floorOf(lever) - screw.top) / s).toBeCloseTo(13.208, 1);
    const pivot = extent(lever, '.part.base');
    const long = (screw.left + screw.right) / 2 - (pivot.left + pivot.right) / 2;
    expect(long / s).toBeCloseTo(52.083, 1);
    const mark = Number(/M([\d.]+)/.exec(lever.querySelector('.tip')?.getAttribute('d') ?? '')?.[1]);
    expect((mark - (pivot.left + pivot.right) / 2) / s).toBeCloseTo(5, 1);
    const slope = [...svg(document, 'wedge').querySelectorAll('.part.turned')]
      .map((e) => pointsOf(e.getAttribute('d')))
      .find((p) => (p[0]?.[1] ?? 0) !== (p[3]?.[1] ?? 0) && Math.abs((p[2]?.[1] ?? 0) - (p[3]?.[1] ?? 0)) > 0.5);
    const [, , high = [0, 0], low = [0, 0]] = slope ?? [];
    expect((low[1] - high[1]) / (high[0] - low[0])).toBeCloseTo(0.096, 2);
  });

  it('puts the balls where the ball lift has them, halfway down their stroke', () => {
    for (const R of [2, 5, 12]) {
      const place = svg(drawing(asked({ R_t: mm(R) })), 'squeezed balls');
      const s = scaleOf(place);
      const circles = [...place.querySelectorAll('circle')].map((c) => ({
        x: Number(c.getAttribute('cx')) / s,
        y: Number(c.getAttribute('cy')) / s,
        r: Number(c.getAttribute('r')) / s,
        role: c.getAttribute('class'),
      }));
      expect(circles.length).toBe(4);
      for (const c of circles) expect(c.r).toBeCloseTo(R, 1);
      const xs = circles.filter((c) => c.role?.includes('turned')).map((c) => c.x);
      // Two of the three stand in the plane of the picture, their full distance apart.
      const apart = Math.max(...xs) - Math.min(...xs);
      const top = circles.find((c) => c.role?.includes('carried'));
      const { h_t } = valueIn(ballLift.of({ r_t: mm(R), R_t: mm(R), s_t: mm(apart) }));
      expect((circles[0]?.y ?? 0) - (top?.y ?? 0), `R ${R}`).toBeCloseTo(h_t, 1);
      expect(h_t).toBeCloseTo(2 * R * Math.sqrt(2 / 3) - 0.25, 1);
    }
  });

  it('says which do it, which is lightest, stiffest, lowest and cheapest', () => {
    expect(says(asked())).toBe(
      '0.4 µm for 1.5° of the hand and 500 µm of stroke within 40 mm of height: the wedge, lever and differential screw do it; lightest to turn is the lever with 3.02 N·mm, stiffest the wedge, lowest the wedge with 6.00 mm, cheapest of those priced the lever at 9.50. No price is given for the squeezed balls; the rest holds.',
    );
    expect(says(asked({ H_w: mm(5) }))).toContain('None of the five gives 0.4 µm');
    expect(says(asked({ H_w: mm(10) }))).toContain('Of the five, only the wedge gives 0.4 µm');
    expect(says(asked({ s_h: mm(0.002) }))).toContain('the plain screw, wedge, lever and differential screw do it');
  });

  it('says that a price is missing, leaves the rest standing, and never takes it as nought', () => {
    const without = asked({}, '');
    expect(NAMES.map((name) => row(without, name).price)).toEqual(Array.from(NAMES, () => 'no price given'));
    expect(says(without)).toContain('No price is given for any of them; the rest holds.');
    expect(says(without)).not.toContain('cheapest');
    for (const name of NAMES) {
      const { price: _, ...rest } = row(without, name);
      const { price: __, ...before } = row(asked(), name);
      expect(rest).toEqual(before);
    }
    expect(textOf(drawing(without), 'body').match(/no price given/g)?.length).toBe(5);
    const free = asked({}, 'lever: 0; wedge: 4');
    expect(row(free, 'lever').price).toBe('0');
    expect(says(free)).toContain('cheapest of those priced the lever at 0.');
    // A way with a row that has no price is not the cheaper for it.
    expect(row(asked({}, 'wedge: 4; wedge'), 'wedge').price).toBe('no price given');
  });

  it('names a row that is none of the five, and refuses what is no price, each in its sentence', () => {
    expect(TEXTS.prices.note('wedge: 4; gear: 1 × 5')).toBe(
      'Left out: “gear”; the ways are called plain screw, wedge, lever, squeezed balls, differential screw.',
    );
    expect(TEXTS.prices.note(PRICES)).toBe('');
    const input = { kind: 'text', name: 'prices', label: 'prices', start: '' } as const;
    expect(reasonIn(readInput(input, 'wedge: cheap', 'metric'))).toContain('“wedge”: ');
    expect(valueIn(readInput(input, ' wedge:  1 × 4 ;lever: 2', 'metric'))).toBe('wedge: 1 × 4\nlever: 2');
  });

  it('marks by word and sign what fails, never by colour alone', () => {
    const document = drawing(asked({ H_w: mm(20) }));
    const text = (name: Name) => (card(document, name).textContent ?? '').replace(/\u00a0/g, ' ');
    expect(text('plain screw')).toContain('✗ too coarse: 0.400 µm was wanted');
    expect(text('differential screw')).toContain('✗ too high: 20.0 mm is free');
    expect(text('lever')).toContain('✓ does all that is wanted');
    expect(textOf(drawing(asked({ S_w: mm(20) })), '[data-way="squeezed balls"]')).toContain('✗ too short');
  });

  it('takes a step that is over the wish by less than a hand is known, and says so; stroke and height have no such band', () => {
    // 1/4-100 moves 0.254 mm · 1.5/360 = 1.058 µm for the angle of the hand.
    const verdict = (values: object) => row(asked({ S_w: mm(0.5), ...values }), 'plain screw').verdict;
    expect(verdict({ s_h: mm(0.0011) })).toBe('does all that is wanted');
    expect(verdict({ s_h: mm(0.00105) })).toBe('does all that is wanted, its step to within 5 %');
    expect(verdict({ s_h: mm(0.001) })).toBe('too coarse: 1.00 µm was wanted');
    expect(says(asked({ s_h: mm(0.00105) }))).toContain('plain screw');
    const low = row(asked({ s_h: mm(0.0011), H_w: mm(8) }), 'plain screw');
    expect(low.verdict).toMatch(/^too high/);
  });

  it('cuts off a lever out of all proportion and says so, rather than shrink the rest', () => {
    const document = drawing(asked({ s_h: mm(0.00002) }));
    expect(textOf(document, '.line-up')).toContain('lever (larger than the picture: cut off)');
    expect(scaleOf(svg(document, 'plain screw'))).toBeGreaterThan(1);
    expect(row(asked({ s_h: mm(0.00002) }), 'lever')['length across']).toBe('1040 mm');
  });

  it('lets the others stand where the wedge jams', () => {
    const jammed = asked({ mu: plain(1), s_h: mm(0.01) });
    expect(row(jammed, 'wedge').effort).toBe('can’t be turned');
    expect(row(jammed, 'wedge').verdict).toContain('the wedge jams');
    expect(row(jammed, 'lever').effort).toMatch(/N·mm$/);
  });

  it('refuses pairs without a fine motion, no load and nonsense wishes', () => {
    expect(reasonIn(still(ways).draw(asked({}, PRICES, { C: 'M8x1.5' }), 'metric'))).toContain(
      'The two leads of the pair are equal',
    );
    expect(reasonIn(still(ways).draw(asked({}, PRICES, { A: 'M10x1.5 LH' }), 'metric'))).toContain(
      'give both the same hand',
    );
    expect(reasonIn(still(ways).draw(asked({ F: newtons(0) }), 'metric'))).toContain('no effort to compare');
    expect(reasonIn(still(ways).draw(asked({ S_w: mm(0) }), 'metric'))).toContain('Stroke: read 0 mm');
  });

  it('has whole pictures for any wish within the fields of the chapter', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -5, max: -1.3, noNaN: true }),
        fc.double({ min: 0.1, max: 30, noNaN: true }),
        fc.double({ min: -3, max: 1.3, noNaN: true }),
        fc.double({ min: 0.5, max: 50, noNaN: true }),
        (s_w, degrees, S, R) => {
          const numbers = asked({
            s_h: mm(10 ** s_w),
            theta_h: rad((degrees * Math.PI) / 180),
            S_w: mm(10 ** S),
            R_t: mm(R),
          });
          const drawn = still(ways).draw(numbers, 'both');
          if (!drawn.ok) throw new Error(reasonOf(drawn));
          expect(drawn.value).not.toMatch(/NaN|Infinity|undefined/);
          expect(picture(drawn.value).querySelectorAll('svg.way').length).toBe(5);
        },
      ),
      { numRuns: 60 },
    );
  });
});
