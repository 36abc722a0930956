/**
 * Whoever reads the sentence and the table under a figure is told what the picture shows: points are read out of the drawing by
 * its own ticks, and bars by their lengths, and held against the numbers as they are printed.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Numbers } from '../../widgets/assembly/numbers.ts';
import type { SymbolName } from '../../widgets/engine/index.ts';
import type { Figure, Table } from '../../widgets/figures/kit/figure.ts';
import { CHOICES, type ChoiceName } from '../../widgets/input/choices.ts';
import type { UnitView } from '../../widgets/input/format.ts';
import { FIGURES } from '../../widgets/site/catalogue.ts';
import { howMany } from '../support/deep.ts';
import { startOf } from '../support/figure-numbers.ts';
import { attribute, picture, pointsOf, still, thread } from '../support/figures.ts';
import { drawnScales, heightOf, type Printed, panel, printed, type Scale } from '../support/read-picture.ts';
import { valueIn } from '../support/results.ts';

/** One thing read twice: from the drawing, with what its pixels leave open, and from the words. */
interface Twice {
  readonly what: string;
  readonly drawn: number;
  readonly open: number;
  readonly told: Printed;
}

interface Shown {
  readonly document: Document;
  readonly table: Table;
  readonly says: string;
}

/** Coordinates are rounded to hundredths of a pixel, each end of a scale as well. */
const OPEN = 0.03;

const cell = (row: readonly string[] | undefined, i: number): string => row?.[i] ?? '';
const path = (root: ParentNode, selector: string): string => root.querySelector(selector)?.getAttribute('d') ?? '';
const number = (e: Element | null | undefined, name: string): number => Number(e?.getAttribute(name));

/** A column of the table against a curve over the first column. */
const column = (
  { table }: Shown,
  i: number,
  d: string,
  { x, y }: { x: Scale; y: Scale },
  rows = table.rows,
  placeUnit = '1',
): Twice[] =>
  rows.flatMap((row) => {
    const n = printed(cell(row, 0), placeUnit);
    const place = placeOf(x, n.value);
    const points = pointsOf(d);
    if (points.length < 2) throw new Error(`no curve for ${table.head[i]}`);
    const [left, right] = [Math.min(...points.map((p) => p[0])), Math.max(...points.map((p) => p[0]))];
    // A table may go on beyond the picture, and a printed place a digit beyond the end of a curve.
    if (place < left - 1 || place > right + 1) return [];
    const at = (shift: number) => y.at(heightOf(d, Math.max(left, Math.min(right, place + shift))));
    // A whole number of turns is meant exactly; one with decimals was rounded.
    const rounded = cell(row, 0).includes('.') ? n.within / x.pixel : 0;
    const slack = Math.abs(at(rounded) - at(-rounded));
    return [
      {
        what: `${table.head[i]} at ${row[0]}`,
        drawn: at(0),
        open: OPEN * y.pixel + slack,
        told: printed(cell(row, i)),
      },
    ];
  });

const placeOf = (x: Scale, value: number): number => {
  const [zero, one] = [x.at(0), x.at(1)];
  return (value - zero) / (one - zero);
};

/** Lengths of bars against numbers: to one scale, which the longest gives. One that is too short to be seen has a least width. */
const toScale = (what: string, bars: readonly { readonly width: number; readonly told: Printed }[]): Twice[] => {
  const seen = bars.filter((b) => b.width > 1.6);
  const longest = seen.reduce((a, b) => (b.width > a.width ? b : a), { width: 0, told: { value: 0, within: 0 } });
  const rate = longest.told.value / longest.width;
  return seen.map((b, i) => ({
    what: `${what}, bar ${i + 1}`,
    drawn: b.width * rate,
    open: Math.abs(OPEN * rate) + (longest.told.within * b.width) / longest.width,
    told: b.told,
  }));
};

/** Numbers of a sentence, by a pattern whose groups hold them. */
const told = (says: string, pattern: RegExp): Printed[] =>
  (pattern.exec(says.replace(/\u00a0/g, ' ')) ?? []).slice(1).map((text) => printed(text));

const dot = (what: string, scale: { x: Scale; y: Scale }, e: Element | null, value: Printed | undefined): Twice[] =>
  e && value ? [{ what, drawn: scale.y.at(number(e, 'cy')), open: OPEN * scale.y.pixel, told: value }] : [];

const widths = (root: ParentNode, selector: string): number[] =>
  [...root.querySelectorAll(selector)].map((e) => number(e, 'width'));

const READ: Readonly<Record<string, (shown: Shown) => Twice[]>> = {
  'motion-plot': (s) => {
    const [wide, near] = [panel(s.document, 0), panel(s.document, 1)];
    const curve = (p: typeof wide, key: string) => path(p.box, `.chart .curve.${key} path`);
    const ends = told(s.says, /reaches (\S+ \S+), the carried part on it (\S+ \S+), and .* only (\S+ \S+); at/);
    const at4 = (p: typeof wide, key: string): number => p.y.at(heightOf(curve(p, key), placeOf(p.x, 4)));
    return [
      ...column(s, 1, curve(wide, 'relative'), wide),
      ...column(s, 2, curve(wide, 'turned'), wide),
      ...column(s, 3, curve(wide, 'carried'), wide),
      ...column(s, 3, curve(near, 'carried'), near),
      ...(['turned', 'relative'] as const).flatMap((key, i): Twice[] =>
        ends[i] ? [{ what: `sentence, ${key}`, drawn: at4(wide, key), open: OPEN * wide.y.pixel, told: ends[i] }] : [],
      ),
      ...(ends[2]
        ? [{ what: 'sentence, carried', drawn: at4(near, 'carried'), open: OPEN * near.y.pixel, told: ends[2] }]
        : []),
    ];
  },
  'lead-error': (s) => {
    const [off, rate] = [panel(s.document, 0), panel(s.document, 1)];
    const [turn] = told(s.says, /a turn moves (\S+ \S+) where/);
    const band = (key: string) => {
      // A bow tie: from the left its upper edge goes to the right, over nought.
      const [a, b] = pointsOf(path(off.box, `[data-shape="off-${key}"]`));
      return a && b ? `M${a[0]} ${a[1]}L${b[0]} ${b[1]}` : '';
    };
    const size = (rows: Twice[]) => rows.map((r) => ({ ...r, drawn: Math.abs(r.drawn) }));
    return [
      ...column(s, 3, path(off.box, '[data-shape="off-real"]'), off),
      ...size(column(s, 4, band('worst'), off)),
      ...size(column(s, 5, band('rss'), off)),
      ...(turn
        ? [
            {
              what: 'sentence, a turn',
              drawn: rate.y.at(pointsOf(path(rate.box, '[data-shape="rate-real"]'))[0]?.[1] ?? Number.NaN),
              open: OPEN * rate.y.pixel,
              told: { ...turn, value: Math.abs(turn.value) * Math.sign(printed(cell(s.table.rows.at(-1), 2)).value) },
            },
          ]
        : []),
    ];
  },
  'drunken-thread': (s) => {
    const [place, rate] = [panel(s.document, 0), panel(s.document, 1)];
    return [
      ...column(s, 3, path(place.box, '[data-shape="place-real"]'), place),
      ...column(s, 4, path(rate.box, '[data-shape="rate-real"]'), rate),
    ];
  },
  'friction-curve': (s) => {
    const p = panel(s.document, 0);
    const curve = (key: string) => path(p.box, `.chart .curve.${key} path`);
    const [pair, alone] = told(
      s.says,
      /Here, at \S+, the pair takes (\S+ \S+) and \S+(?: \S+)* alone (\S+ [^\s.]+)\.$/,
    );
    return [
      ...column(s, 1, curve('raise'), p),
      ...column(s, 2, curve('lower'), p),
      ...column(s, 3, curve('plain'), p),
      ...dot('sentence, the pair', p, p.box.querySelector('[data-mark=raise]'), pair),
      ...dot('sentence, thread C alone', p, p.box.querySelector('[data-mark=plain]'), alone),
    ];
  },
  'reversal-loop': (s) => {
    const p = panel(s.document, 0);
    return (['loose', 'loaded'] as const).flatMap((key, i) => {
      const d = path(p.box, `[data-loop="${key}"]`);
      // Out, back and out again: each way is a curve of its own.
      const points = pointsOf(d);
      const third = (points.length - 1) / 3;
      const ways = ['out', 'back', 'out again'];
      return ways.flatMap((way, k) => {
        const piece = points.slice(Math.floor(k * third), Math.ceil((k + 1) * third) + 1);
        const rows = s.table.rows.filter((r) => r[0] === way).map((r) => [cell(r, 1), cell(r, 2 + i)]);
        return column({ ...s, table: { head: ['', `${key}, ${way}`], rows } }, 1, asPath(piece), p);
      });
    });
  },
  'fault-bench': (s) => {
    // The hands of both indicators, each of its own round; the table says what they read with the work on, on the way up.
    const row = s.table.rows.find((one) => one[1] === 'up' && s.says.includes(`turned up by ${one[0]} turn`));
    const said = [printed(cell(row, 2)), printed(cell(row, 3))];
    return [...s.document.querySelectorAll('.fault-bench-hand')].map((hand, i) => {
      const [[x0, y0] = [0, 0], [x1, y1] = [0, 0]] = pointsOf(hand.getAttribute('d'));
      const round = i === 0 ? 0.1 : 1;
      const shown = (Math.atan2(x1 - x0, y0 - y1) / 2 / Math.PI) * round;
      const read = said[i] ?? NOTHING;
      const whole = Math.round((read.value - shown) / round) * round;
      return { what: i === 0 ? 'along' : 'across', drawn: shown + whole, open: (4 * OPEN * round) / 31, told: read };
    });
  },
  calibration: (s) => {
    const p = panel(s.document, 0);
    // The table gives the mean of each place and direction, from that of the first on the way up.
    const mean = (direction: string, n: number): number => {
      const here = tips(p.box).filter((t) => t.direction === direction && Math.abs(p.x.at(t.tip[0]) - n) < 0.02);
      return here.reduce((sum, t) => sum + p.y.at(t.tip[1]), 0) / here.length;
    };
    const first = mean('up', printed(cell(s.table.rows[0], 0), '1').value);
    return s.table.rows.map((row) => ({
      what: `${row[1]} at ${row[0]}`,
      drawn: mean(cell(row, 1), printed(cell(row, 0), '1').value) - first,
      open: 2 * OPEN * p.y.pixel,
      told: printed(cell(row, 4)),
    }));
  },
  certificate: (s) => {
    const p = panel(s.document, 0);
    return (['up', 'down'] as const).flatMap((way) => {
      const rows = s.table.rows
        .filter((r) => r[0]?.startsWith('correction at') && r[0].endsWith(way))
        .map((r) => [cell(r, 0).replace(/\D*([\d.]+).*/, '$1'), cell(r, 1).replace(/ ± \S+/, '')]);
      return column(
        { ...s, table: { head: ['', 'correction'], rows } },
        1,
        path(p.box, `.plot-marks .curve.${way}`),
        p,
      );
    });
  },
  'play-batch': (s) => {
    const bars = [...s.document.querySelectorAll('.bars rect')].map((e) => number(e, 'height'));
    const rows = s.table.rows.filter((r) => /^\d+$/.test(cell(r, 2)));
    return toScale(
      'share of the batch',
      bars.map((width, i) => ({ width, told: printed(cell(rows[i], 2)) })),
    );
  },
  'spring-days': (s) => {
    const svg = s.document.querySelector('.days-chart') ?? s.document;
    const { y } = drawnScales(svg as Element, 'N', ['y']);
    const [left] = told(s.says, /After [^,]+, (\S+ \S+) is left/);
    return dot('sentence, force left', { x: y, y }, svg.querySelector('[data-left]'), left);
  },
  'force-chain': (s) =>
    (['A', 'C'] as const).flatMap((name, i) => {
      const svg = s.document.querySelector(`.chain-chart.${name === 'A' ? 'turned' : 'carried'}`);
      if (!svg) return [];
      const scales = drawnScales(svg, 'N');
      return [
        ...column(s, 3 + 2 * i, path(svg, `[data-least="${name}"]`), scales),
        ...column(s, 4 + 2 * i, path(svg, `[data-most="${name}"]`), scales),
      ];
    }),
  'fit-section': (s) => {
    const svg = s.document.querySelector('svg.engagement');
    if (!svg) return [];
    const unit = /([^\s\d]+) at most$/.exec(svg.querySelector('.figure-note')?.textContent ?? '')?.[1] ?? 'mm';
    const ticks = [...svg.querySelectorAll('.tick-name')];
    const scales = drawnScales(
      picture(`<svg>${ticks.map((t) => t.outerHTML).join('')}</svg>`).querySelector('svg') as Element,
      unit,
    );
    // The floor is nought; the ticks beside it are rounded to three digits.
    const top = printed(ticks.find((t) => t.getAttribute('text-anchor') === 'end')?.textContent ?? '', unit);
    const rows = s.table.rows.filter((r) => /^[−\d]/.test(cell(r, 0)));
    const loose = (found: Twice[]) => found.map((f) => ({ ...f, open: f.open + 0.005 * top.value }));
    return loose([
      ...column(s, 1, path(svg, '.run.A .engaged'), scales, rows),
      ...column(s, 2, path(svg, '.run.C .engaged'), scales, rows),
    ]);
  },
  'flanks-under-load': (s) => {
    const svg = s.document.querySelector('[data-push]');
    if (!svg) return [];
    const d = path(svg, '.stairs');
    const steps = s.table.rows.filter((r) => r[0]?.startsWith('force'));
    const [all] = told(s.says, /the force moves it (\S+ [^\s,]+)/);
    const range = pointsOf(d).map((p) => p[1]);
    const ends = Math.max(...range) - Math.min(...range);
    const middle = (Math.max(...range) + Math.min(...range)) / 2;
    return toScale('height', [
      ...(all ? [{ width: ends, told: all }] : []),
      ...steps.flatMap((r, i) => {
        const y = pointsOf(d)[2 * i]?.[1] ?? middle;
        const height = printed(cell(r, 3));
        return [{ width: Math.abs(middle - y), told: { ...height, value: Math.abs(height.value) } }];
      }),
    ]);
  },
  drawer: (s) => {
    const svg = s.document.querySelector('svg.drawer-map');
    const ring = svg?.querySelector('[data-ring]');
    const first = s.table.rows[0];
    if (!svg || !ring || !first) return [];
    const log = (anchor: string, at: string, shift: number): number => {
      const [a, b] = [...svg.querySelectorAll(`.drawer-label[text-anchor="${anchor}"]`)]
        .filter((_, i, all) => i === 0 || i === all.length - 1)
        .map((t) => ({ place: number(t, at) - shift, value: Math.log(printed(t.textContent ?? '').value) }));
      const place = number(ring, at === 'x' ? 'cx' : 'cy');
      return a && b ? Math.exp(a.value + ((place - a.place) * (b.value - a.value)) / (b.place - a.place)) : Number.NaN;
    };
    return [
      { what: 'step', drawn: log('middle', 'x', 0), told: printed(cell(first, 3)) },
      { what: 'stroke', drawn: log('end', 'y', 4), told: printed(cell(first, 5)) },
    ].map((read) => ({ ...read, open: 0.002 * read.told.value }));
  },
  'beside-bought': (s) => {
    const carried = s.table.rows.filter((row) => /\s(?:N|lbf)$/.test(cell(row, 1)));
    const told = carried.map((row) => printed(cell(row, 1)));
    return toScale(
      'load carried',
      widths(s.document, '.bought-bars rect').map((width, i) => ({ width, told: told[i] ?? { value: 0, within: 0 } })),
    );
  },
  'pair-map': (s) => {
    const svg = s.document.querySelector('svg.map');
    const ring = svg?.querySelector('[data-ring]');
    const first = s.table.rows[0];
    const labels = [...(svg?.querySelectorAll('.map-label') ?? [])].filter(
      (t) => t.getAttribute('text-anchor') === 'end',
    );
    const gains = labels.filter((t) => /^[\d.]+$/.test(t.textContent ?? ''));
    const motions = [...(svg?.querySelectorAll('.map-label') ?? [])].filter(
      (t) => t.getAttribute('text-anchor') === 'middle',
    );
    // Of the four maps the first is read: motion sideways, gain upwards.
    const against = svg?.getAttribute('aria-label') ?? '';
    if (!ring || !first || !against.includes('gain against net lead')) return [];
    const log = (ticks: Element[], at: string, shift: number, place: number): number => {
      const [a, b] = [ticks[0], ticks.at(-1)].map((t) => ({
        place: number(t, at) - shift,
        value: Math.log(printed(t?.textContent ?? '').value),
      }));
      return a && b ? Math.exp(a.value + ((place - a.place) * (b.value - a.value)) / (b.place - a.place)) : Number.NaN;
    };
    const motion = printed(cell(first, 3));
    const gain = printed(cell(first, 7));
    // A hundredth of a pixel is so many parts in a thousand on these scales of tens.
    return [
      {
        what: 'motion of the first',
        drawn: log(motions, 'x', 0, number(ring, 'cx')),
        open: 2e-3 * Math.abs(motion.value),
        told: { ...motion, value: Math.abs(motion.value) },
      },
      { what: 'gain of the first', drawn: log(gains, 'y', 4, number(ring, 'cy')), open: 2e-3 * gain.value, told: gain },
    ];
  },
  'rounding-cost': (s) => {
    const bars = [...s.document.querySelectorAll('.cost-bar')];
    return toScale(
      'net lead',
      bars.flatMap((bar, i) =>
        bar.nextElementSibling?.classList.contains('torn')
          ? []
          : [{ width: number(bar, 'width'), told: positive(printed(cell(s.table.rows[i], 2))) }],
      ),
    );
  },
  'torque-bars': (s) => {
    const kinds = ['a-rub', 'a-slope', 'c-rub', 'c-slope', 'key', 'collar'];
    return toScale(
      'torque',
      [...s.document.querySelectorAll('.torque-bar')].flatMap((bar, i) =>
        [...bar.querySelectorAll('.piece')].map((piece) => ({
          width: number(piece, 'width'),
          told: positive(printed(cell(s.table.rows[i], 1 + kinds.findIndex((kind) => piece.classList.contains(kind))))),
        })),
      ),
    );
  },
  'hand-force': (s) => {
    const [, , jump] = widths(s.document, '.hand-bars .uses');
    const flat = printed(s.document.querySelector('.hand-bars .line b')?.textContent ?? '');
    return toScale('step', [
      { width: widths(s.document, '.hand-bars .uses')[0] ?? 0, told: flat },
      ...(jump === undefined ? [] : [{ width: jump, told: printed(cell(s.table.rows[0], 6)) }]),
    ]);
  },
  'pushed-jack': (s) => {
    const p = panel(s.document, 0);
    return column(s, 3, path(p.box, '[data-shape="pushed"]'), p);
  },
  'waves-in-nut': (s) => {
    const p = panel(s.document, 0);
    const [tip, shift] = ['tip', 'shift'].map((key) => number(s.document.querySelector(`[data-circle=${key}]`), 'r'));
    const [, far, near] = told(
      s.says,
      /with an amplitude of (\S+ \S+)\. .* at (\S+ \S+) from the axis .* at (\S+ \S+)\.$/,
    );
    return [
      ...column(s, 1, path(p.box, '[data-shape="stands"]'), p),
      ...(far && near
        ? toScale('circles', [
            { width: tip ?? 0, told: far },
            { width: shift ?? 0, told: near },
          ])
        : []),
    ];
  },
  'which-part': (s) => {
    const rows = s.table.rows.filter((r) => cell(r, 2) !== '' && cell(r, 2) !== 'nothing');
    const bars = [...s.document.querySelectorAll('.which-gain')].slice(0, rows.length);
    return toScale(
      'gains',
      rows.map((row, i) => ({ width: number(bars[i], 'width'), told: printed(cell(row, 2)) })),
    );
  },
  'lock-error': (s) => {
    const ruler = s.document.querySelector('.lock-ruler');
    const ticks = [...(ruler?.querySelectorAll('text') ?? [])];
    const [zero, last] = [ticks[0], ticks.at(-1)];
    const rate = printed(last?.textContent ?? '', '1').value / (number(last, 'x') - number(zero, 'x'));
    return (['slack', 'all'] as const).flatMap((key, i) => {
      const width = number(s.document.querySelector(`[data-bar=${key}]`), 'width');
      return width > 1.6
        ? [{ what: key, drawn: width * rate, open: OPEN * rate, told: printed(cell(s.table.rows[2 + i], 3), '1') }]
        : [];
    });
  },
  'drift-bars': (s) =>
    toScale(
      'motion',
      widths(s.document, '.drift.moves rect').map((width, i) => ({
        width,
        told: positive(printed(cell(s.table.rows[i], 1))),
      })),
    ),
  'thread-eaten': (s) =>
    toScale(
      'length',
      ['turned', 'carried'].flatMap((key, i) => [
        { width: widths(s.document, `.eaten.${key} .have`)[0] ?? 0, told: printed(cell(s.table.rows[i], 1)) },
        { width: widths(s.document, `.eaten.${key} .uses`)[0] ?? 0, told: printed(cell(s.table.rows[i], 2)) },
      ]),
    ),
  'settling-log': (s) => {
    const svg = s.document.querySelector('.log-chart') ?? s.document;
    const unit = s.table.rows.some((row) => /millionths/.test(cell(row, 2))) ? 'millionths' : 'µm';
    const { y } = drawnScales(svg as Element, unit, ['y']);
    return [...svg.querySelectorAll('.log-mark')].flatMap((mark, i) =>
      dot('at the mean temperature', { x: y, y }, mark, printed(cell(s.table.rows[i], 2))),
    );
  },
  'vee-coupling': (s) =>
    toScale(
      'force',
      widths(s.document, '.vee-bars .force').map((width, i) => ({
        width,
        told: positive(printed(cell(s.table.rows[i], 4))),
      })),
    ),
  'divided-turn': (s) => {
    const bar = pointsOf(attribute(s.document, '.bar', 'd').replace(/H([\d.]+)/, (_, x) => `L${x} 54`));
    const one = pointsOf(attribute(s.document, '.one', 'd').replace(/H([\d.]+)/, (_, x) => `L${x} 63`));
    const long = (points: [number, number][]) => (points[1]?.[0] ?? 0) - (points[0]?.[0] ?? 0);
    const [turn, step] = told(s.says, /: (\S+ \S+) a turn, one \S+ of \S+ is (\S+ \S+);/);
    return turn && step
      ? toScale('a turn and a step', [
          { width: long(bar), told: turn },
          { width: long(one), told: step },
        ])
      : [];
  },
  'levelling-plate': (s) => {
    // The plan has a bar for its scale; places are told from the first foot.
    const scale =
      number(s.document.querySelector('.bar'), 'd') ||
      pointsOf(attribute(s.document, '.bar', 'd').replace(/v5h([\d.]+)/, (_, l) => `L${l} 0`))[1]?.[0] ||
      1;
    const length = printed(s.document.querySelector('.bar-name')?.textContent ?? '');
    const place = (key: string) => {
      const [, x, y] =
        /translate\(([-\d.]+) ([-\d.]+)\)/.exec(attribute(s.document, `[data-handle="${key}"]`, 'transform')) ?? [];
      return [Number(x), -Number(y)] as const;
    };
    const feet = s.table.rows.filter((r) => r[0] === '1' && r[1]?.startsWith('foot')).slice(0, 3);
    const keys = feet.map((r) => cell(r, 1).replace('foot ', 'foot-'));
    const [x0, y0] = place(keys[0] ?? '');
    const words = feet.map((r) =>
      cell(r, 2)
        .split(', ')
        .map((part) => printed(part)),
    );
    return feet.slice(1).flatMap((r, i) => {
      const [x, y] = place(keys[i + 1] ?? '');
      const off = (at: number, from: number, k: 0 | 1): Twice => ({
        what: `${r[1]}, ${'xy'[k]}`,
        drawn: ((at - from) * length.value) / scale,
        open: (4 * OPEN * length.value) / scale,
        told: {
          value: (words[i + 1]?.[k]?.value ?? 0) - (words[0]?.[k]?.value ?? 0),
          within: (words[i + 1]?.[k]?.within ?? 0) + (words[0]?.[k]?.within ?? 0),
        },
      });
      return [off(x, x0, 0), off(y, y0, 1)];
    });
  },
};

const NOTHING: Printed = { value: Number.NaN, within: 0 };
const positive = (p: Printed): Printed => ({ ...p, value: Math.abs(p.value) });
const asPath = (points: readonly (readonly [number, number])[]): string =>
  points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x} ${y}`).join('');

/** The places that the small triangles of readings point at: up from the tip down, down from the tip up. */
const tips = (box: Element): { direction: 'up' | 'down'; tip: [number, number] }[] =>
  (['up', 'down'] as const).flatMap((direction) =>
    [...box.querySelectorAll(`.plot-marks .reading.${direction}`)].flatMap((e) =>
      pointsOf(e.getAttribute('d')).map(([x, y]) => ({
        direction,
        tip: [x, y + (direction === 'up' ? 4 : -4)] as [number, number],
      })),
    ),
  );

/** Drawings to scale, a sheet or a dial: nothing in them is read against an axis. */
const NO_PLOT = [
  'ramp',
  'section',
  'solid',
  'plate-on-feet',
  'jack-solid',
  'adjuster',
  'thread-limits',
  'ball-and-seat',
  'other-ways',
  'design-sheet',
  'bench-card',
  'printed-spring',
  'part-files',
  'ladder',
  'printed-parts',
  'ball-in-socket',
  'foot-on-plane',
  'part-drawings',
  'passport',
  'plate-modes',
  'coated-thread',
  'leads-in-nut',
];

const PAIRS = [
  ['M10x1.5', '3/8-16 UNC'],
  ['M12x1.5', 'M8x1.25'],
  ['M4x0.7', '8-36 UNF'],
  ['M10x1.5 LH', 'M8x1.25'],
  ['M16x2', 'M12x1.75'],
] as const;

/** What a reader might make of them: other pairs, quantities up and down, any of the choices, inch or metric. */
const varied = (widget: Figure): fc.Arbitrary<{ numbers: Numbers; view: UnitView }> => {
  const { numbers, inputs } = startOf(widget.name);
  const bounded = (name: string, factor: number): number => {
    const input = inputs.find((i) => i.name === name);
    const value = (numbers.values[name as SymbolName] ?? 0) * factor;
    return input?.kind === 'quantity' ? Math.max(input.min, Math.min(input.max, value)) : value;
  };
  const whole = new Set(['k', 'N_r', 'n_s', 'n_a']);
  return fc
    .record({
      pair: fc.constantFrom(...PAIRS),
      factors: fc.array(fc.constantFrom(0.5, 0.8, 1, 1, 1.3, 2), { minLength: 40, maxLength: 40 }),
      choices: fc.array(fc.nat(11), { minLength: 8, maxLength: 8 }),
      view: fc.constantFrom<UnitView>('metric', 'metric', 'inch'),
    })
    .map(({ pair, factors, choices, view }) => ({
      view,
      numbers: {
        ...numbers,
        threads: {
          ...numbers.threads,
          ...(widget.threads.includes('A') ? { A: thread(pair[0]), C: thread(pair[1]) } : {}),
        },
        values: Object.fromEntries(
          Object.entries(numbers.values).map(([name, value], i) => [
            name,
            whole.has(name) ? value : bounded(name, factors[i % factors.length] ?? 1),
          ]),
        ),
        choices: Object.fromEntries(
          Object.entries(numbers.choices).map(([name, value], i) => {
            const { options } = CHOICES[name as ChoiceName];
            return [name, (choices[i % choices.length] ?? 0) < 6 ? value : options[(choices[i] ?? 0) % options.length]];
          }),
        ) as Numbers['choices'],
      },
    }));
};

const CASES = howMany(2, 40);

describe('picture, sentence and table', () => {
  it('are read against each other in every widget that draws a plot', () => {
    expect(
      [...FIGURES.keys()].filter((name) => !READ[name] && !NO_PLOT.includes(name)),
      'without a reader of its picture: add one to READ, or the name to NO_PLOT where nothing is plotted',
    ).toEqual([]);
    for (const name of NO_PLOT)
      expect(
        picture(valueIn(still(FIGURES.get(name) as Figure).draw(startOf(name).numbers, 'metric'))).querySelector(
          '.chart',
        ),
      ).toBeNull();
  });

  for (const [name, read] of Object.entries(READ))
    it(`agree in ${name}`, () => {
      const widget = FIGURES.get(name) as Figure;
      const { numbers } = startOf(name);
      const cases = [
        { numbers, view: 'metric' as UnitView },
        { numbers, view: 'inch' as UnitView },
        ...fc.sample(varied(widget), { seed: 8, numRuns: CASES }),
      ];
      let looked = 0;
      for (const { numbers: given, view } of cases) {
        const drawn = still(widget).draw(given, view);
        if (!drawn.ok) continue;
        const shown = {
          document: picture(drawn.value),
          table: still(widget).table(given, view),
          says: still(widget).caption(given, view),
        };
        const found = read(shown);
        looked += found.length > 0 ? 1 : 0;
        for (const { what, drawn: at, open, told: words } of found)
          expect(
            Math.abs(at - words.value),
            `${what}: drawn ${at}, told ${words.value}; ${view} ${JSON.stringify([given.values, given.choices, given.threads.A?.designation, given.threads.C?.designation])}`,
          ).toBeLessThanOrEqual(open + words.within + 1e-12);
      }
      expect(looked, 'drawings that were read').toBeGreaterThanOrEqual(howMany(2, 4));
    });
});
