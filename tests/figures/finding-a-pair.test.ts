/** The map of pairs and the cost of rounding, drawn without a browser. */

import { parseHTML } from 'linkedom';
import { describe, expect, it } from 'vitest';
import type { Numbers } from '../../widgets/assembly/numbers.ts';
import {
  judge,
  METRIC_SERIES,
  megapascals,
  mm,
  newtons,
  type PairRow,
  type Thread,
  UNIFIED_SERIES,
} from '../../widgets/engine/index.ts';
import { pairMap } from '../../widgets/figures/pair-map/pair-map.ts';
import { roundingCost } from '../../widgets/figures/rounding-cost/rounding-cost.ts';
import { readThread } from '../../widgets/input/designation.ts';
import { CHAPTERS } from '../support/chapters.ts';
import { still } from '../support/figures.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const thread = (text: string) => valueIn(readThread(text));
const asked = (
  values: Numbers['values'] = {},
  choices: Numbers['choices'] = {},
  texts: NonNullable<Numbers['texts']> = {},
): Numbers => ({
  threads: {},
  values: {
    s_w: mm(0.001),
    k: 6,
    q_w: 0.15,
    t_l: 0,
    d_least: 0,
    d_most: 400,
    q_X: 1,
    S_w: 0,
    F: 0,
    sigma_a: 100,
    ...values,
  },
  choices: {
    drawer: 'both you own',
    hands: 'same hand',
    fitted: 'either way',
    against: 'gain',
    order: 'nearest motion',
    ...choices,
  },
  texts: { taps: 'M4x0.7, 8-36 UNF, M10, 3/8-16', series: 'all', dividers: '', ...texts },
});
const page = (html: string) => parseHTML(`<!doctype html><body>${html}</body>`).document;

describe('the chapter', () => {
  it('tells in its own words the number of threads and the gains at which the judgement changes', () => {
    const text = CHAPTERS.find(({ file }) => file.endsWith('11-finding-a-pair.md'))?.text ?? '';
    expect(/The standards have (\d+) threads/.exec(text)?.[1]).toBe(`${METRIC_SERIES.length + UNIFIED_SERIES.length}`);
    const [, sound, care] =
      /\*sound\* up to a gain of (\d+), \*with care\* up to (\d+), and \*delicate\* above/.exec(text) ?? [];
    const plain = { A: thread('M10'), C: thread('3/8-16'), arrangement: 'in line', wall: undefined, toBuy: [] };
    const own = (t: Thread) => ({ thread: t, series: 'own', owned: { right: true, left: true } }) as const;
    const grade = (gain: number) =>
      judge({ ...plain, gain } as unknown as PairRow, [own(plain.A), own(plain.C)], []).grade;
    expect([Number(sound), Number(sound) + 0.1, Number(care), Number(care) + 0.1].map(grade)).toEqual([
      'sound',
      'with care',
      'with care',
      'delicate',
    ]);
  });
});

const IN_WORDS: Readonly<Record<number, string>> = { 3: 'three', 5: 'five', 16: 'sixteen' };

describe('the shop of the chapter', () => {
  const text = CHAPTERS.find(({ file }) => file.endsWith('11-finding-a-pair.md'))?.text ?? '';
  const taps = /^taps = (.*)$/m.exec(text)?.[1] ?? '';
  const found = (values: Numbers['values'], drawer: string, dividers = '') => {
    const limits = { s_w: mm(0.001), q_w: 0.15, t_l: 0.4, d_least: 1.6, d_most: 40, ...values };
    const { rows } = still(pairMap).table(
      asked(limits, { drawer }, { taps, series: 'coarse, fine, UNC, UNF, UNEF', dividers }),
      'metric',
    );
    return rows.map((row) => `${row[0]} ${row[1]}`);
  };

  it('finds the pairs that its prose counts', () => {
    const told = (words: RegExp) => words.exec(text)?.[1];
    expect(told(/taps and dies for the (\w+) threads/)).toBe(IN_WORDS[taps.split(', ').length]);
    const own = found({}, 'both you own');
    expect(told(/taps and dies make (\w+) pairs/)).toBe(IN_WORDS[own.length]);
    expect(own).toEqual(['#8-32 UNC M5×0.8', '#10-32 UNF M5×0.8', 'M4×0.7 #8-36 UNF']);
    expect(told(/and (\w+) more appear/)).toBe(IN_WORDS[found({}, 'anywhere').length - own.length]);
    const twelve = found({ s_w: mm(0.0005) }, 'both you own', '12 points');
    expect(told(/With\ntwelve points the drawer has (\w+) pairs/)).toBe(IN_WORDS[twelve.length]);
  });
});

describe('pair-map', () => {
  it('links each row to the figures of the second chapter with its threads and arrangement', () => {
    const [link] = page(valueIn(still(pairMap).draw(asked(), 'metric'))).querySelectorAll('.pair-list a');
    const url = new URL(link?.getAttribute('href') ?? '', 'http://local/');
    expect(url.pathname).toBe('/two-screws.html');
    expect(Object.fromEntries(url.searchParams)).toEqual({
      'foot.A': 'M4×0.7',
      'foot.C': '#8-36 UNF',
      'foot.arrangement': 'in line',
    });
    expect(valueIn(readThread(url.searchParams.get('foot.C') ?? '')).P).toBeCloseTo(25.4 / 36, 12);
    const inch = valueIn(
      still(pairMap).draw(asked({ s_w: mm(0.25), k: 1 }, { fitted: 'nested', drawer: 'anywhere' }), 'inch'),
    );
    expect(inch).toContain('foot.arrangement=nested&#38;units=inch');
  });

  it('says the same in sentence, list and table', () => {
    expect(
      still(pairMap)
        .caption(asked(), 'metric')
        .replace(/\u00a0/g, ' '),
    ).toBe(
      '1 of 20\u202f342 pairs pass within 15 % of 6.000 µm a turn; first in the list is M4×0.7 with #8-36 UNF, 5.556 µm a turn (−7.4 %), gain 127, delicate.',
    );
    const { head, rows } = still(pairMap).table(asked(), 'metric');
    const row = Object.fromEntries(head.map((h, i) => [h, rows[0]?.[i]]));
    expect(row).toMatchObject({
      'net lead': '5.556\u00a0µm',
      'exactly, mm': '1/180',
      'per step': '0.9259\u00a0µm',
      'pitches rounded to 0.001 mm first': '6.000\u00a0µm',
      'error of that': '+8.0 %',
    });
  });

  it('says which demand leaves nothing, and shows what comes nearest', () => {
    const empty = asked({ s_w: mm(0.0002) }, { drawer: 'at least one you own' });
    expect(still(pairMap).caption(empty, 'metric')).toMatch(
      /^No pair passes\. The limit that excludes most is the wanted motion: 20\u202f342 of 20\u202f342 pairs\. The nearest pair outside it is M4×0\.7 with #8-36 UNF: 5\.556\u00a0µm a turn/,
    );
    expect(still(pairMap).caption(asked({ s_w: mm(0.0005) }), 'metric')).toContain(
      'The limit that excludes most is what you own: 20\u202f336',
    );
    expect(page(valueIn(still(pairMap).draw(empty, 'metric'))).querySelectorAll('.pair-list tbody tr')).toHaveLength(1);
  });

  /** Two micrometres a flat and two millimetres of stroke, which no pair has together. */
  const CONTRADICTORY = asked(
    { s_w: mm(0.002), S_w: mm(2), d_least: mm(4), d_most: mm(16), F: newtons(100), sigma_a: megapascals(100) },
    { drawer: 'anywhere' },
    { series: 'all' },
  );

  it('says why a step and a stroke cannot be had together, and what gives way', () => {
    const says = still(pairMap)
      .caption(CONTRADICTORY, 'metric')
      .replace(/\u00a0/g, ' ');
    expect(says).toContain('1000 steps, 167 turns at 6 steps per turn, with any pair');
    expect(says).toContain('M16×1 has the most turns: it would need 166.7 mm');
    expect(says).toContain('its usable length is 16.00 mm, 16.0 turns');
    expect(says).toContain('no pair has more stroke than 192.0 µm');
    expect(says).toContain('the wanted motion, to 25.20 µm a step (1/2-28 UNEF with 9/16-24 UNEF, stroke 2.041 mm)');
    expect(says).toContain('the divider, to 76 steps per turn (1/2-28 UNEF with 9/16-24 UNEF)');
    expect(says).toContain('M8×1.25 with 1/4-20 UNC: 20.00 µm a turn, 3.333 µm a step (+67 %)');
    expect(says).toContain('let the carried part turn with the turned part');
    expect(says).not.toContain('excludes most');
  });

  it('calls no pair of an empty answer sound: it is the nearest, so many per cent off', () => {
    const rows = [
      ...page(valueIn(still(pairMap).draw(CONTRADICTORY, 'metric'))).querySelectorAll('.pair-list tbody tr'),
    ];
    expect(rows.map((row) => row.querySelector('th')?.textContent)).toEqual([
      '1/2-28 UNEF with 9/16-24 UNEF',
      'M8×1.25 with 1/4-20 UNC',
    ]);
    expect(rows[0]?.querySelector('.verdict-cell')?.textContent).toMatch(/^nearest: \+1200 % off the wanted motion/);
    for (const row of still(pairMap).table(CONTRADICTORY, 'metric').rows) expect(row.at(-1)).toMatch(/^nearest: /);
  });

  it('searches with every divider at hand, and tells with which a row makes its step', () => {
    const numbers = {
      ...CONTRADICTORY,
      texts: { ...CONTRADICTORY.texts, dividers: 'square, twelve points, knob 100' },
    };
    expect(
      still(pairMap)
        .caption(numbers, 'metric')
        .replace(/\u00a0/g, ' '),
    ).toMatch(
      /pairs pass within 15 % of 2\.000 µm a step with 6, 4, 12 and 100 steps per turn; first in the list is .* a step at 100 in a turn/,
    );
    const { head, rows } = still(pairMap).table(numbers, 'metric');
    const at = (name: string) => Number.parseFloat(rows[0]?.[head.indexOf(name)] ?? '');
    expect(at('net lead') / at('steps per turn')).toBeCloseTo(at('per step'), 2);
    const drawn = page(valueIn(still(pairMap).draw(numbers, 'metric')));
    expect(drawn.querySelectorAll('.map .band')).toHaveLength(4);
    expect(drawn.querySelector('.pair-list td:nth-child(4)')?.textContent).toMatch(/at 100$/);
  });

  it('tells the usual divider that would do, where the reader has not named it', () => {
    expect(still(pairMap).caption(asked({ s_w: mm(0.0005) }, { drawer: 'both you own' }), 'metric')).toContain(
      'the divider, to 12 steps per turn (M4×0.7 with #8-36 UNF)',
    );
  });

  it('draws the least stroke as a line on the map against stroke', () => {
    const line = (S_w: number) =>
      page(
        valueIn(still(pairMap).draw(asked({ S_w: mm(S_w) }, { against: 'stroke', drawer: 'anywhere' }), 'metric')),
      ).querySelector('[data-stroke]');
    const height = (S_w: number) => Number(/M\d+ ([\d.]+)/.exec(line(S_w)?.getAttribute('d') ?? '')?.[1]);
    expect(line(0)).toBeNull();
    expect(height(0.1)).toBeLessThan(height(0.01));
  });

  it('draws whatever the reader may ask, with no number that is none', () => {
    for (const s_w of [1e-5, 0.001, 0.3, 20])
      for (const against of ['gain', 'stroke', 'size', 'the two leads'])
        for (const view of ['metric', 'inch', 'both'] as const) {
          const numbers = asked(
            { s_w: mm(s_w), q_w: 1 },
            { against, drawer: 'anywhere', hands: 'either' },
            { taps: '400 mm x 20 mm' },
          );
          const drawn = valueIn(still(pairMap).draw(numbers, view));
          expect(drawn, `${s_w} ${against} ${view}`).not.toMatch(/NaN|Infinity|undefined/);
        }
  });

  it('refuses bounds that exclude each other', () => {
    expect(reasonIn(still(pairMap).draw(asked({ d_least: mm(10), d_most: mm(5) }), 'metric'))).toContain(
      'exchange the two',
    );
  });

  it('escapes what the reader typed', () => {
    const hostile = asked({}, {}, { taps: '"><img src=x onerror=alert(1)>, M4' });
    expect(valueIn(still(pairMap).draw(hostile, 'metric'))).not.toContain('<img');
  });
});

describe('rounding-cost', () => {
  const numbers = (A: string, C: string): Numbers => ({
    threads: { A: thread(A), C: thread(C) },
    values: {},
    choices: {},
  });

  it('shows the leads over one denominator, and the error by decimals', () => {
    const drawn = page(valueIn(still(roundingCost).draw(numbers('M4x0.7', '8-36 UNF'), 'metric')));
    expect(drawn.querySelector('.in-fractions')?.textContent).toBe('Exactly: 127/180 − 126/180 = 1/180 mm');
    expect([...drawn.querySelectorAll('.cost-end')].map((e) => e.textContent)).toEqual([
      'stands still',
      '+80 %',
      '+8.0 %',
      '+0.80 %',
      '+0.080 %',
      '5.556\u00a0µm',
    ]);
    expect(
      still(roundingCost)
        .table(numbers('M10x1.5', '3/8-16'), 'metric')
        .rows.map((r) => r[3]),
    ).toEqual(['+14 %', '+2.9 %', '+0.57 %', 'nothing lost', 'nothing lost', 'none']);
  });

  it('writes unlike hands as a sum', () => {
    const drawn = valueIn(still(roundingCost).draw(numbers('M10x1.5 LH', '3/8-16'), 'metric'));
    expect(drawn).toContain('127/80 + 120/80 = 3 7/80 mm');
  });

  it('refuses equal leads', () => {
    expect(reasonIn(still(roundingCost).draw(numbers('M10x1.5', 'M12x1.5'), 'metric'))).toContain(
      'same lead to the last digit',
    );
  });
});
