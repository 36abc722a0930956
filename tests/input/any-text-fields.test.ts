/**
 * A hundred thousand texts to each reader at the page's edge: fields, addresses, files of designs, rosters and answers. It gives a
 * value or one clear sentence, never throws, and what it takes it takes again from its own writing.
 */
import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { readDesigns, writeDesigns } from '../../widgets/assembly/design-file.ts';
import { type NumberSet, readInput, writeQuantity } from '../../widgets/assembly/numbers.ts';
import { addressOf, openStore } from '../../widgets/client/address.ts';
import { SYMBOLS, type SymbolName, symbolFact } from '../../widgets/engine/index.ts';
import { readPaperLink } from '../../widgets/exercises/paper.ts';
import { LONGEST_NAME, readClassCode, readRoster } from '../../widgets/exercises/roster.ts';
import { UNIT_VIEWS } from '../../widgets/input/format.ts';
import { longestOf, TEXTS, type TextName } from '../../widgets/input/texts.ts';
import { allFinite, anyText, isSentence, MANY, readOrSaid } from '../support/any-text.ts';
import { BANK } from '../support/bank.ts';
import { reasonIn } from '../support/results.ts';

// A hundred thousand cases take seconds, and many where the processor is shared.
vi.setConfig({ testTimeout: 120_000 });

const sound = (holds: boolean, text: unknown, value?: unknown): void => {
  if (!holds) throw new Error(`${JSON.stringify(text)} gives ${JSON.stringify(value)}`);
};

const NAMES = Object.keys(TEXTS) as TextName[];
const LISTS = [
  'M10, 3/8-16 UNC',
  'coarse, UNF',
  'hexagon, knob 50, 12 points',
  'A: 0, 0; B: 240, 0; C: 120, 180',
  '40, 20: 0; 200, 20: -84 µm; 200, 160: 14',
  '1; 2; 3\n0; 0; 0',
  'A: 0; B: 1.5 turns; C: -2',
  '1: 0; 3: 1.5 turns',
  'turns; reading (µm)|0; 0|1; 87.5',
  '2026-03-31',
  '20.5 °C',
  '69 °F',
  'foot no. 3',
  'stud M10: 2 × 1.20; ball: 0.35',
  'wedge: 2 × 9; lever',
];
const PIECES = ['; ', ', ', '\n', '|', ': ', ' × ', 'M8', '12', '-31', ' °C', 'up'];

describe('any text in a field', () => {
  it('that takes a list gets the list tidied, which reads back as itself, with a note or none', () => {
    fc.assert(
      fc.property(anyText(LISTS, PIECES), fc.constantFrom(...NAMES), (text, name) => {
        const taken = readOrSaid(TEXTS[name].read(text), [name, text]);
        if (taken === undefined) return;
        const again = TEXTS[name].read(taken);
        sound(again.ok && again.value === taken, [name, text], again);
        const note = TEXTS[name].note(taken);
        sound(!/NaN|undefined|\[object/.test(note.replace(/“.*”/gs, '')), [name, text], note);
      }),
      MANY,
    );
  });

  it('that takes a list is refused where it is longer than what is kept of it, though all the rest were blanks', () => {
    for (const name of NAMES.filter((n) => longestOf(n) < 1e5)) {
      const good = LISTS.find((text) => TEXTS[name].read(text).ok) ?? '';
      expect(TEXTS[name].read(good).ok, name).toBe(true);
      expect(isSentence(reasonIn(TEXTS[name].read(good.padEnd(longestOf(name) + 1)))), name).toBe(true);
    }
  });

  it('that takes a quantity gets one within its bounds, in any view, and what is written of it reads back', () => {
    const symbols = Object.keys(SYMBOLS) as SymbolName[];
    fc.assert(
      fc.property(
        fc.constantFrom(...symbols),
        fc.constantFrom(...UNIT_VIEWS),
        fc.integer({ min: 0, max: 1e6 }).map((i) => i / 1e6),
        fc.constantFrom(0, 1, 2),
        (name, view, share, way) => {
          const { says, min, max, whole, shown } = symbolFact(name);
          const least = min > 0 ? min : 1e-9 * max;
          const exact =
            shown === 'sense'
              ? max
              : way === 0
                ? min + (max - min) * share
                : way === 1
                  ? least * (max / least) ** share
                  : 0;
          const value = Math.min(max, Math.max(min, whole ? Math.round(exact) : exact));
          const input = { kind: 'quantity', name, label: says, start: '', min, max } as const;
          const text = writeQuantity(name, value, view);
          const read = readInput(input, text, view);
          sound(
            read.ok && typeof read.value === 'number' && Math.abs(read.value - value) <= 1e-8 * Math.abs(value),
            text,
            read,
          );
        },
      ),
      MANY,
    );
  });
});

const SETS: readonly NumberSet[] = [
  {
    id: 'foot',
    inputs: [
      { kind: 'thread', name: 'A', label: 'thread A', start: 'M10x1.5' },
      { kind: 'quantity', name: 'n', label: 'turns', start: '1', min: -4, max: 4 },
      { kind: 'quantity', name: 'w', label: 'stroke wanted', start: '400 µm', min: 0.01, max: 20 },
      { kind: 'choice', name: 'lock', label: 'lock', start: 'holds' },
      { kind: 'text', name: 'parts', label: 'parts', start: '' },
      { kind: 'text', name: 'dated', label: 'date', start: '' },
    ],
  },
];

describe('any address', () => {
  const short = anyText(
    ['M8x1.25', 'M10×1.5 LH', '−2', '12 mm', '1 in', 'gives', 'stud: 3 × 2', '2026-03-31', 'inch', 'x'.repeat(70)],
    ['%', '%E2%88', '+', '&', '=', '#', '?', 'foot.n=', 'units=both'],
  );
  const padded = fc
    .tuple(short, fc.constantFrom(' '.repeat(60), ' '.repeat(700), '9'.repeat(70), 'M8,'.repeat(900)), short)
    .map((parts) => parts.join(''));
  const typed = fc.oneof({ weight: 30, arbitrary: short }, { weight: 1, arbitrary: padded });
  const key = fc.constantFrom(
    'foot.A',
    'foot.n',
    'foot.lock',
    'foot.parts',
    'foot.dated',
    'foot.w',
    'foot.w.inch',
    'foot.w.metric',
    'foot.A.metric',
    'units',
    'foot.__proto__',
    'course',
    '__proto__.A',
  );

  it('gives every field a good value and a reason beside a bad text, and its own writing gives the same page again, cut off or not', () => {
    vi.stubGlobal('requestAnimationFrame', () => 0);
    // What is not there at all is answered by a throw, which costs more than the reading.
    vi.stubGlobal('localStorage', { getItem: () => null });
    const open = (search: string) => {
      const store = openStore(SETS, search);
      return {
        store,
        fields: (SETS[0]?.inputs ?? []).map(({ name }) => {
          const field = store.field('foot', name);
          sound(field !== undefined && allFinite(field.value), search, field);
          sound(field?.reason === undefined || isSentence(field.reason), search, field?.reason);
          // What is left of a text that was cut is counted anew.
          const reason = field?.reason?.replace(/\(\d{4,} characters\)/, '(cut)');
          return [field?.value, field?.text, reason, store.view()] as const;
        }),
      };
    };
    fc.assert(
      fc.property(
        fc.array(fc.tuple(key, typed, fc.boolean()), { minLength: 1, maxLength: 2 }),
        fc.nat(80),
        (pairs, cut) => {
          const search = pairs
            .map(([k, v, raw]) => `${k}=${raw ? v : encodeURIComponent(v.replace(/\p{Cs}/gu, ''))}`)
            .join('&');
          const here = open(search);
          const out = addressOf(here.store, search);
          if (out !== search) {
            const there = open(out);
            sound(JSON.stringify(there.fields) === JSON.stringify(here.fields), search, [out, there.fields]);
          }
          if (cut < 20 && out.length > cut) open(out.slice(0, cut));
        },
      ),
      MANY,
    );
    vi.unstubAllGlobals();
  });

  it('of papers asks for a set or says why not', () => {
    const [chapter] = BANK.chapters;
    const search = anyText(
      [`class=7B&ask=${chapter?.slug}:2&bank=${BANK.version}`, `bank=${BANK.version}`, 'ask=x:1', 'class=a'],
      ['&', '=', ':', ',', '%', 'ask=', 'bank=', 'class=', '11', '-1'],
    );
    let good = 0;
    fc.assert(
      fc.property(search, (text) => {
        const order = readPaperLink(text, BANK);
        const read = order && readOrSaid(order, text);
        if (!read) return;
        good++;
        sound(read.classCode !== '' && [...read.counts.values()].every((n) => n >= 0 && n <= 10), text, read);
      }),
      MANY,
    );
    expect(good).toBeGreaterThan(MANY.numRuns * 0.01);
  });
});

describe('any file of designs', () => {
  const whole = writeDesigns([
    {
      name: 'Foot',
      numbers: { A: 'M10×1.5', C: '3/8-16 UNC', arrangement: 'in line', X_A: '10 mm', taps: 'M4, 8-36' },
    },
    { name: 'Stop', numbers: { thread: 'M8', n: '−2.5', mu: '0.15', t: '2 h' } },
  ]);
  const packed = JSON.stringify(JSON.parse(whole));

  it('gives designs whose every number a field takes, written and read again as the same, or one sentence', () => {
    let good = 0;
    fc.assert(
      fc.property(
        fc.oneof(
          {
            weight: 4,
            arbitrary: anyText([packed, whole], ['"', '{', '}', '[', ']', ',', ':', '"A"', 'null', '1', '"version":1']),
          },
          // Anywhere in it, and cut off anywhere.
          fc
            .tuple(fc.nat(packed.length), fc.constantFrom('', ' ', '9', 'x', '\\u0000'))
            .map(([at, put]) => packed.slice(0, at) + put + packed.slice(at + 1)),
          fc.nat(packed.length).map((at) => packed.slice(0, at)),
        ),
        (text) => {
          const read = readOrSaid(readDesigns(text), text);
          if (!read) return;
          good++;
          sound(
            read.notes.every((note) => note.length < 2000 && note.endsWith('.')),
            text,
            read.notes,
          );
          const again = readOrSaid(readDesigns(writeDesigns(read.designs)), text);
          sound(JSON.stringify(again) === JSON.stringify({ designs: read.designs, notes: [] }), text, again);
        },
      ),
      MANY,
    );
    expect(good).toBeGreaterThan(MANY.numRuns * 0.02);
  });
});

describe('any roster', () => {
  it('gives students no two of whom look the same, none too long, or one sentence', () => {
    const text = anyText(
      ['Ada\nGrace\nAda', 'Zoë Ž.\r\nZoe\u0308 Z.', '=cmd()\n+1\n@x'],
      ['\n', '\r', '\t', 'Ada', '\u200d', ' (2)'],
    );
    fc.assert(
      fc.property(text, (typed) => {
        const read = readOrSaid(readRoster(typed), typed);
        if (read) {
          sound(new Set(read.students).size === read.students.length, typed, read);
          sound(
            read.students.every((s) => s.trim() === s && s !== '' && [...s].length <= LONGEST_NAME + 8),
            typed,
            read,
          );
        }
        const code = readOrSaid(readClassCode(typed), typed);
        sound(code === undefined || (readClassCode(code).ok && code !== ''), typed, code);
      }),
      MANY,
    );
  });
});
