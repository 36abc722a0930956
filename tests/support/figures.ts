/** Numbers for widgets as a reader could have typed them, and small readers of the pictures that come out. */

import fc from 'fast-check';
import { parseHTML } from 'linkedom';
import { type Numbers, readInput } from '../../widgets/assembly/numbers.ts';
import {
  METRIC_SERIES,
  type Result,
  type SymbolName,
  symbolFact,
  type Thread,
  UNIFIED_SERIES,
} from '../../widgets/engine/index.ts';
import type { Figure, Table } from '../../widgets/figures/kit/figure.ts';
import { CHOICES, type ChoiceName } from '../../widgets/input/choices.ts';
import { readThread } from '../../widgets/input/designation.ts';
import { UNIT_VIEWS, type UnitView } from '../../widgets/input/format.ts';
import { TEXTS, type TextName } from '../../widgets/input/texts.ts';
import { adjustersIn } from '../../widgets/site/adjusters.ts';
import { readInputLine } from '../../widgets/site/grammar.ts';
import { reasonOf } from '../../widgets/words/reason.ts';
import { blocksOf, CHAPTERS, FOLDER } from './chapters.ts';
import { valueIn } from './results.ts';

export const thread = (text: string): Thread => valueIn(readThread(text));

/** Every standard thread, free ones, left-hand ones and ones of several starts: whatever the reader of designations takes. */
export const anyThread: fc.Arbitrary<Thread> = fc
  .tuple(
    fc.oneof(
      fc.constantFrom(...METRIC_SERIES, ...UNIFIED_SERIES).map((t) => t.designation),
      fc
        .tuple(fc.integer({ min: 3, max: 4000 }), fc.integer({ min: 5, max: 600 }))
        .map(([d, P]) => `${d / 10} mm x ${P / 100} mm`),
      fc.tuple(fc.integer({ min: 1, max: 64 }), fc.integer({ min: 4, max: 120 })).map(([d, tpi]) => `${d}/16-${tpi}`),
    ),
    fc.constantFrom('', '', '', ' 2 start', ' 3 start'),
    fc.constantFrom('', '', ' LH'),
  )
  .map((parts) => readThread(parts.join('')))
  .filter((read) => read.ok)
  .map(valueIn);

/** A value within a symbol's bounds, mostly near what people use, sometimes at a bound or nought. */
const anyValue = (name: SymbolName): fc.Arbitrary<number> => {
  const { min, max, whole } = symbolFact(name);
  const snap = (x: number) => Math.min(max, Math.max(min, whole ? Math.round(x) : x));
  return fc.oneof(
    fc.integer({ min: -400, max: 400 }).map((i) => snap(i / 100)),
    fc.integer({ min: 0, max: 1000 }).map((i) => snap(min + ((max - min) * i) / 1000)),
    fc.constantFrom(snap(0), min, max),
  );
};

const LISTS = [
  '',
  'M10',
  'M10, 3/8-16 UNC',
  'M4x0.7; 8-36 UNF; M6; 1/4-20',
  'M8x1.25\nM12x1.5 LH',
  'banana, M10',
  '<b>',
  // Places on a plan: feet, readings and later rounds
  '1: 0, 0; 2: 240, 0; 3: 120, 180',
  '-50, 3; 1 in, 0.5 in; 40 -900.25',
  '40, 20: 0; 200, 20: -84 µm; 200, 160: 14; 40, 160: 94',
  '0, 0: 5 mm; 100, 0: 5 mm; 0, 100: 5 mm; 100, 100: 5 mm',
  '0, 0: 90; 1000, 0: 1 thou; 0, 2000: -0.5 mm',
  '1; 2; 3; 4\n0; 0; 0; 0',
  '0.1; 0; -0.3',
];

/** What a list typed as text may be: what the chapters begin with, and whatever of the lists above it reads. */
const texts = (name: TextName): string[] => {
  const own = CHAPTERS.flatMap(({ text }) =>
    [...text.matchAll(new RegExp(`^${name} = (.*?)(?: # .*)?$`, 'gm'))].map((m) => m[1] ?? ''),
  );
  // Chapters name adjusters, whose descriptions stand in a file of their own.
  if (name === 'adjuster') return [...adjustersIn(FOLDER).adjusters.values()];
  // A list of parts has words of its own; two of these hold none.
  if (name === 'hardware')
    return [...own, 'standard metric | screw M10 | stud M6 20 mm, 1/4-28 UNF 20 mm', '<b>|banana M10', ''];
  return [...own, ...LISTS].filter((text) => TEXTS[name].read(text).ok);
};

/** The quantities that a chapter gives to the figure. */
const ownValues = (widget: Figure): Readonly<Record<string, number>> => {
  const lines = CHAPTERS.flatMap(({ text }) =>
    blocksOf(text, 'figure')
      .filter(({ info }) => info.startsWith(`figure ${widget.name} `))
      .flatMap(({ lines }) => lines),
  );
  const own: Record<string, number> = {};
  for (const line of lines) {
    const input = readInputLine(line);
    if (!input.ok || input.value.kind !== 'quantity') continue;
    const value = readInput(input.value, input.value.start, 'metric');
    if (value.ok && typeof value.value === 'number') own[input.value.name] = value.value;
  }
  return own;
};

/** Any numbers at all; and as often the chapter’s own with a few of them changed, since of fourteen at random few go together. */
export const anyNumbers = (widget: Figure): fc.Arbitrary<Numbers> =>
  fc
    .tuple(anyOf(widget), fc.boolean(), fc.array(fc.nat({ max: 6 }), { minLength: 40, maxLength: 40 }))
    .map(([numbers, near, kept]) => {
      if (!near) return numbers;
      const own = ownValues(widget);
      const values = Object.entries(numbers.values).map(([name, value], i) => [
        name,
        kept[i] === 0 ? value : (own[name] ?? value),
      ]);
      return { ...numbers, values: Object.fromEntries(values) };
    });

const anyOf = (widget: Figure): fc.Arbitrary<Numbers> =>
  fc.record({
    threads: fc.record(Object.fromEntries(widget.threads.map((name) => [name, anyThread]))),
    values: fc.record(Object.fromEntries(widget.quantities.map((name) => [name, anyValue(name as SymbolName)]))),
    choices: fc.record(
      Object.fromEntries(
        widget.choices.map((name) => [name, fc.constantFrom<string>(...CHOICES[name as ChoiceName].options)]),
      ),
    ),
    texts: fc.record(
      Object.fromEntries((widget.texts ?? []).map((name) => [name, fc.constantFrom(...texts(name as TextName))])),
    ),
  }) as fc.Arbitrary<Numbers>;

export const anyView = fc.constantFrom(...UNIT_VIEWS);

export const numbersOf = (
  threads: Record<string, string>,
  values: Partial<Record<SymbolName, number>> = {},
  choices: Partial<Record<ChoiceName, string>> = {},
): Numbers => ({
  threads: Object.fromEntries(Object.entries(threads).map(([name, text]) => [name, thread(text)])),
  values,
  choices,
  texts: {},
});

export const picture = (html: string): Document =>
  parseHTML(`<!doctype html><html><body>${html}</body></html>`).document;

/** The points of path data made of M, L and Z with absolute coordinates. */
export const pointsOf = (d: string | null | undefined): [x: number, y: number][] =>
  [...(d ?? '').matchAll(/[ML]\s*(-?[\d.]+)[ ,](-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);

export const attribute = (document: Document, selector: string, name: string): string => {
  const found = document.querySelector(selector)?.getAttribute(name);
  if (found === null || found === undefined) throw new Error(`no ${selector} with ${name}`);
  return found;
};

export const textOf = (document: Document, selector: string): string =>
  (document.querySelector(selector)?.textContent ?? `no ${selector}`).replace(/\u00a0/g, ' ');

/** The angle of a `rotate(…)` in degrees. */
export const turnOf = (transform: string): number => Number(/rotate\((-?[\d.]+)/.exec(transform)?.[1]);

/** A figure as it stands still at some numbers: what a page prints, picture and readings, and the words of a refusal where it can’t be drawn. */
export const still = ({ at }: Pick<Figure, 'at'>) => {
  return {
    draw: (numbers: Numbers, view: UnitView): Result<string> => {
      const drawn = at(numbers, view);
      return drawn.ok ? { ok: true, value: drawn.value.draw() + drawn.value.readings() } : drawn;
    },
    caption: (numbers: Numbers, view: UnitView): string => {
      const drawn = at(numbers, view);
      return drawn.ok ? drawn.value.caption() : reasonOf(drawn);
    },
    table: (numbers: Numbers, view: UnitView): Table => {
      const drawn = at(numbers, view);
      return drawn.ok ? drawn.value.table() : { head: [], rows: [] };
    },
    renderKey: (numbers: Numbers, view: UnitView): string | undefined => {
      const drawn = at(numbers, view);
      return drawn.ok ? drawn.value.renderKey : undefined;
    },
  };
};
