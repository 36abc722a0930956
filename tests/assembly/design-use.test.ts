/**
 * A kept design on the other pages: what each figure says of it is what the sheet says of it. Worked without a browser: the numbers
 * of each page are put into a store as the page does it, and its figures are asked.
 */

import { beforeEach, describe, expect, it, vi } from 'vitest';
import { readAdjuster } from '../../widgets/assembly/adjuster/text.ts';
import { asDesign, fillsOf, inTodaysNames } from '../../widgets/assembly/design-use.ts';
import type { Input, NumberSet } from '../../widgets/assembly/numbers.ts';
import { fieldsFrom, noteOf, restsOn } from '../../widgets/client/design-note.ts';
import { applyDesign, numbersOf } from '../../widgets/client/designs.ts';
import { createStore, type Store } from '../../widgets/client/store.ts';
import { isSymbol, SYMBOLS, type SymbolName, symbolFact } from '../../widgets/engine/index.ts';
import { FIGURES } from '../../widgets/site/catalogue.ts';
import { reasonOf } from '../../widgets/words/reason.ts';
import { blocksOf, CHAPTERS, press } from '../support/chapters.ts';
import { still } from '../support/figures.ts';

beforeEach(() => {
  vi.stubGlobal('requestAnimationFrame', () => 0);
});

const PAGES = CHAPTERS.map(({ file, text }) => {
  const figures = blocksOf(text, 'figure').map(({ info }) => {
    const [, widget = '', set = ''] = /^figure ([\w-]+) (?:with )?([\w-]+)/.exec(info) ?? [];
    return { widget, set };
  });
  return { file: file.replace('chapters/', ''), sets: press(text, file).model.sets, figures };
});
/** A chapter by the name of its file, with its number or without. */
const pageOf = (name: string) => {
  const page = PAGES.find(({ file }) => file === name || file.replace(/^\d+-|\.md$/g, '') === name);
  if (!page) throw new Error(`no chapter ${name}`);
  return page;
};
const open = (sets: readonly NumberSet[]): Store => createStore(sets, () => undefined, 'metric');
const plainly = (text: string): string => text.replace(/[\u00a0\u202f]/g, ' ');

const quantity = (name: SymbolName, min?: number, max?: number): Input => {
  const fact = symbolFact(name);
  return { kind: 'quantity', name, label: fact.says, start: '', min: min ?? fact.min, max: max ?? fact.max };
};
const choice = (name: 'divider'): Input => ({ kind: 'choice', name, label: name, start: 'hexagon' });
const thread = (name: string): Input => ({ kind: 'thread', name, label: name, start: 'M8' });
const given = (numbers: Record<string, string>, ...inputs: Input[]): Record<string, string> =>
  Object.fromEntries([...fillsOf(numbers, { id: 's', inputs })].map(([name, { text }]) => [name, text]));

describe('a design fills', () => {
  it('steps in a turn from what the turn is divided by, and the divider from steps', () => {
    const k = quantity('k');
    for (const [divider, steps] of [
      ['hexagon', '6'],
      ['square', '4'],
      ['twelve points', '12'],
      ['knob', '50'],
    ] as const)
      expect(given({ divider, k_d: '50' }, k)).toEqual({ k: steps });
    const both = [choice('divider'), quantity('k_d', 2, 360)];
    expect(given(asDesign({ k: '6' }), ...both)).toEqual({ divider: 'hexagon' });
    expect(given(asDesign({ k: '35' }), ...both)).toEqual({ divider: 'knob', k_d: '35' });
    expect(asDesign({ k: '12' })).toEqual({ divider: 'twelve points' });
  });

  it('no knob at all where the page cannot take its divisions: 50 instead of 1000 would be another knob', () => {
    expect(given({ divider: 'knob', k_d: '1000' }, choice('divider'), quantity('k_d', 2, 360))).toEqual({});
    expect(given({ divider: 'hexagon', k_d: '1000' }, choice('divider'), quantity('k_d', 2, 360))).toEqual({
      divider: 'hexagon',
    });
    expect(given({ divider: 'knob' }, quantity('k'))).toEqual({});
  });

  it('the same from a design of the time when k stood for the divisions of a knob wherever a divider stood beside it', () => {
    const old = { A: 'M10', C: '3/8-16', divider: 'hexagon', k: '50', w: '0.3 mm', X_A: '10 mm', theta: '2°' };
    const fields = [
      quantity('k'),
      quantity('k_d'),
      quantity('S_w'),
      quantity('theta_h'),
      quantity('w'),
      quantity('theta'),
    ];
    expect(given(old, ...fields)).toEqual({ k: '6', k_d: '50', S_w: '0.3 mm', theta_h: '2°' });
    expect(given({ ...old, divider: 'knob' }, quantity('k'))).toEqual({ k: '50' });
    // One kept where the count was of steps has no divider.
    expect(given({ A: 'M10', C: '3/8-16', k: '12' }, quantity('k'), choice('divider'))).toEqual({
      k: '12',
      divider: 'twelve points',
    });
    // What has been kept since under the name of today stands.
    expect(given({ ...old, k_d: '35', divider: 'knob' }, quantity('k'))).toEqual({ k: '35' });
    // An angle turned, of the chapter on one screw, is none that a hand can set again.
    expect(given({ thread: '1/4-28', theta: '30°' }, quantity('theta_h'))).toEqual({});
  });

  it('turns of the stroke from the stroke and the net lead, as the sheet counts them', () => {
    // 0.35 mm at 87.5 µm a turn.
    const pair = { A: 'M10x1.5', C: '3/8-16 UNC' };
    expect(given({ ...pair, S_w: '0.35 mm' }, quantity('n_w'))).toEqual({ n_w: '4' });
    expect(given({ A: pair.C, C: pair.A, S_w: '0.35 mm' }, quantity('n_w'))).toEqual({ n_w: '4' });
    expect(given({ ...pair, S_w: '0.35 mm' }, quantity('n_w', -2, 2))).toEqual({});
    expect(given({ A: 'M8', C: 'M8', S_w: '0.35 mm' }, quantity('n_w'))).toEqual({});
    const kept = asDesign({ ...pair, n_w: '−4' });
    expect(kept).toMatchObject({ S_w: '350 µm', n_w: '−4' });
    expect(given({ ...kept, S_w: '0.175 mm' }, quantity('n_w'))).toEqual({ n_w: '−2' });
  });

  it('usable lengths from screw, nut and the engagement kept', () => {
    const built = { A: 'M8x1.25', C: '1/4-20 UNC', l_A: '20 mm', b_A: '16 mm', l_C: '20 mm', b_C: '16 mm', q_e: '1' };
    // 20 − 8 and 20 − 6.35.
    expect(given(built, quantity('X_A'), quantity('X_C'))).toEqual({ X_A: '12 mm', X_C: '13.65 mm' });
    expect(given({ ...built, l_A: '6 mm' }, quantity('X_A'))).toEqual({});
    expect(given({ A: 'M8', X_A: '9 mm' }, quantity('X_A'))).toEqual({ X_A: '9 mm' });
  });

  it('the load of an adjuster whose parts are asked for, with the weight on it as it stands, and no load of a thread or a plate', () => {
    const parts: Input = { kind: 'text', name: 'adjuster', label: 'parts', start: 'none' };
    const pull: Input = { kind: 'choice', name: 'pull', label: 'pull', start: 'presses down' };
    const F = quantity('F', 0, 50_000);
    const load = (numbers: Record<string, string>) => {
      const { F: of, pull: way } = given(numbers, parts, F, pull);
      return [of, way];
    };
    // 15 kg on three feet: a weight of 9.80665 N a kilogram (ISO 80000-4, standard acceleration, from memory) is 49.0 N on each.
    expect(load({ F_lo: '0 N', F_hi: '49 N' })).toEqual(['49 N', 'presses down']);
    expect(load({ F_hi: '40 N', W_c: '9 N', attitude: 'upright' })).toEqual(['49 N', 'presses down']);
    expect(load({ F_hi: '49 N', W_c: '9 N', attitude: 'on its side' })).toEqual(['49 N', 'presses down']);
    expect(load({ F_hi: '0 N', F_lo: '-30 N', W_c: '9 N', attitude: 'upside down' })).toEqual(['39 N', 'pulls up']);
    expect(load({ A: 'M8', F: '70 N' })).toEqual([undefined, undefined]);
    expect(given({ F_hi: '49 N' }, F, quantity('W'))).toEqual({});
    // What its field does not take is not put in.
    expect(given({ F_hi: '49 N' }, parts, quantity('F', 0, 20))).toEqual({});
  });

  it('no reading, place or count of turns of another example, and no thread of another part', () => {
    const readings = {
      z_1: '3 µm',
      n_1: '2',
      x_1: '4 mm',
      d_2: '9 mm',
      t: '3 h',
      F: '5 N',
      w: '3 µm',
      n: '2',
      theta: '3°',
    };
    const fields = (Object.keys(readings) as SymbolName[]).map((name) => quantity(name));
    expect(given(readings, ...fields)).toEqual({});
    expect(asDesign(readings)).toEqual({});
    expect(given({ thread: 'M6' }, thread('thread'))).toEqual({ thread: 'M6' });
    expect(given({ thread: 'M6' }, thread('thread'), thread('A'))).toEqual({});
    expect(asDesign({ thread: 'M6', A: 'M8' })).toEqual({ A: 'M8' });
  });

  it('nothing that a field would refuse', () => {
    expect(
      given({ A: 'banana', S_w: '−3 mm', divider: 'fork' }, thread('A'), quantity('S_w'), choice('divider')),
    ).toEqual({});
  });
});

describe('an address of old', () => {
  const sets: NumberSet[] = [
    { id: 'mine', inputs: [choice('divider'), quantity('k_d'), quantity('S_w'), quantity('theta_h')] },
    { id: 'plate', inputs: [quantity('k'), quantity('w')] },
  ];
  it('means what it meant when it was made', () => {
    const search = new URLSearchParams(
      inTodaysNames('?mine.k=35&mine.theta=2%C2%B0&mine.w=1+mm&plate.k=12&plate.w=3&units=inch', sets),
    );
    expect(Object.fromEntries(search)).toEqual({
      'mine.k_d': '35',
      'mine.theta_h': '2°',
      'mine.S_w': '1 mm',
      'plate.k': '12',
      'plate.w': '3',
      units: 'inch',
    });
  });
  it('stays as it is where it has the names of today, and those stand over old ones', () => {
    expect(inTodaysNames('?mine.k_d=35&x=%20', sets)).toBe('?mine.k_d=35&x=%20');
    expect(inTodaysNames('', sets)).toBe('');
    expect(inTodaysNames('?mine.k=35&mine.k_d=40', sets)).toBe('?mine.k_d=40');
  });
});

describe('one symbol', () => {
  /** What the label of a field says wherever a chapter has one of this name that a design carries. */
  const MEANS: Partial<Record<string, RegExp>> = {
    k: /steps per turn/,
    k_d: /divisions/,
    theta_h: /repeatable hand angle/,
    S_w: /stroke/,
    s_w: /wanted step/,
    s_h: /hand angle/,
    n_w: /stroke/,
    X_A: /usable length of thread A/,
    X_C: /usable length of thread C/,
    t_l: /least wall/,
    l: /length .*(path|base and work|carries the load)/,
    R: /radius of the ball/,
    r_h: /radius at which the hand pushes/,
    kappa: /stiffness of the lock/,
    F_0: /(force of the spring|preload|force) (at the start|when new)/,
    k_s: /rate of the spring/,
    W_c: /weight/,
    F_lo: /least load/,
    F_hi: /most load/,
    F_g: /left on every flank|to be left/,
    mu: /friction/,
    eps_A: /lead error of (?:the screw of )?thread A/,
    eps_C: /lead error of (?:the screw of )?thread C/,
    a_A: /thread A/,
    a_C: /thread C/,
    Delta_T: /warming|temperature|change of the room/,
  };

  it('has one meaning in all chapters, for every number that the design sheet has', () => {
    const sheet = new Set(
      pageOf('design-sheet').sets.flatMap((set) => set.inputs.map((input) => input.name as string)),
    );
    for (const name of ['k', 's_h', 'n_w']) sheet.add(name);
    const seen = new Set<string>();
    for (const { file, sets } of PAGES)
      for (const set of sets)
        for (const { name, kind, label } of set.inputs) {
          if (!sheet.has(name) || kind !== 'quantity') continue;
          seen.add(name);
          const means = MEANS[name];
          if (means !== undefined) expect(label, `${file}, ${set.id}.${name}`).toMatch(means);
        }
    for (const name of Object.keys(MEANS)) expect(seen).toContain(name);
  });

  it('has one name: no two of what a design carries are said alike', () => {
    const carried = Object.keys(MEANS).filter(isSymbol);
    const said = carried.map((name) => SYMBOLS[name].says);
    expect(new Set(said).size).toBe(carried.length);
  });
});

/** The shop's three, from the sheet: its two as they stand, and the Fine foot typed over the first. */
const STOCK: readonly {
  name: string;
  set: string;
  typed: Readonly<Record<string, string>>;
  net: number;
  steps: number;
}[] = [
  { name: 'Foot', set: 'mine', typed: {}, net: 87.5, steps: 6 },
  { name: 'Stop', set: 'other', typed: {}, net: 250, steps: 50 },
  {
    name: 'Fine foot',
    set: 'mine',
    typed: {
      A: 'M4x0.7',
      C: '8-36 UNF',
      divider: 'twelve points',
      S_w: '50 µm',
      X_A: '8 mm',
      X_C: '8 mm',
      s_w: '1 µm',
    },
    net: 1000 / 180,
    steps: 12,
  },
];

for (const { name, set, typed, net, steps } of STOCK)
  describe(`the ${name}, kept on the sheet and used in every chapter`, () => {
    const kept = (): { numbers: Readonly<Record<string, string>>; table: string[][] } => {
      const { sets } = pageOf('design-sheet');
      const sheet = open(sets);
      for (const [field, text] of Object.entries(typed)) {
        sheet.type(set, field, text);
        expect(sheet.field(set, field)?.reason).toBeUndefined();
      }
      const figure = FIGURES.get('design-sheet');
      const rows = figure ? still(figure).table(sheet.numbers(set), 'metric').rows : [];
      return { numbers: numbersOf(sheet, set), table: rows.map((row) => row.map(plainly)) };
    };
    const used = (numbers: Readonly<Record<string, string>>, start: string): Store => {
      const store = open(pageOf(start).sets);
      applyDesign(store, { name, numbers });
      return store;
    };
    /** What a figure of a chapter says and tables of it. */
    const told = (start: string, widget: string): { says: string; rows: string[][]; store: Store; set: string } => {
      const { numbers } = kept();
      const store = used(numbers, start);
      const figure = pageOf(start).figures.find((f) => f.widget === widget);
      const found = FIGURES.get(widget);
      if (!figure || !found) throw new Error(`no ${widget}`);
      const now = store.numbers(figure.set);
      const { rows } = still(found).table(now, 'metric');
      return {
        says: plainly(still(found).caption(now, 'metric')),
        rows: rows.map((r) => r.map(plainly)),
        store,
        set: figure.set,
      };
    };
    const micrometres = (text: string | undefined): number => {
      const [, number = '', unit] = /([−+]?[\d.]+) (µm|mm)/.exec(text ?? '') ?? [];
      return Number(number.replace('−', '-').replace('+', '')) * (unit === 'mm' ? 1000 : 1);
    };
    /** To one unit of the last digit printed: either side may have been rounded. */
    const withinDigit = (printed: string | undefined, value: number): void => {
      const [, decimals = '', unit] = /[\d]+(\.\d+)? (µm|mm)/.exec(printed ?? '') ?? [];
      const digit = 10 ** -Math.max(0, decimals.length - 1) * (unit === 'mm' ? 1000 : 1);
      expect(Math.abs(micrometres(printed) - value)).toBeLessThanOrEqual(digit);
    };
    const line = (of: string): string | undefined => kept().table.find((row) => row[1]?.startsWith(of))?.[2];

    it('is the design we take it for', () => {
      expect(Math.abs(micrometres(line('per turn')))).toBeCloseTo(net, 1);
      expect(kept().table.some((row) => row[1]?.includes(`(${steps} a turn)`))).toBe(true);
    });

    it('has the same net lead, steps in a turn, stroke wanted and turns for it in every set that asks', () => {
      const { numbers } = kept();
      let asked = 0;
      for (const { file, sets } of PAGES) {
        const store = used(numbers, file);
        for (const { id, inputs } of sets) {
          const { threads, values, choices } = store.numbers(id);
          const has = (field: string) => inputs.some((input) => input.name === field);
          if (has('A') && has('C')) expect([threads.A?.L, threads.C?.L], `${file}, ${id}`).toEqual(leadsOf(numbers));
          if (has('k')) expect(values.k, `${file}, ${id}`).toBe(steps);
          if (has('divider')) {
            expect(choices.divider).toBe(numbers.divider);
            expect(values.k_d).toBe(Number(numbers.k_d));
          }
          if (has('S_w')) expect(values.S_w, `${file}, ${id}`).toBeCloseTo(strokeOf(numbers), 9);
          if (has('n_w')) expect((values.n_w ?? 0) * net, `${file}, ${id}`).toBeCloseTo(1000 * strokeOf(numbers), 6);
          asked += ['A', 'k', 'divider', 'S_w', 'n_w'].filter(has).length;
        }
      }
      expect(asked).toBeGreaterThan(50);
    });

    it('moves by the step of the sheet in the chapters on flats, effort and warmth', () => {
      const step = micrometres(line('per '.concat(steps === 6 ? 'flat' : steps === 12 ? 'point' : 'division')));
      expect(step).toBeCloseTo(net / steps, 2);
      expect(told('per-flat', 'divided-turn').says).toMatch(
        new RegExp(`of ${steps} is ${step.toPrecision(4)} µm|of ${steps} is `),
      );
      expect(micrometres(/of \d+ is ([\d.]+ .m)/.exec(told('per-flat', 'divided-turn').says)?.[1])).toBeCloseTo(
        step,
        2,
      );
      withinDigit(/Compared with one \w+ of ([\d.]+ .m)/.exec(told('heat-and-creep', 'drift-bars').says)?.[1], step);
    });

    it('has the stroke of the sheet where lengths of thread are eaten', () => {
      const { says } = told('why-fine-means-short', 'thread-eaten');
      withinDigit(/turns and ([\d.]+ .m) of stroke/.exec(says)?.[1], micrometres(line('stroke')));
    });

    it('is looked for on the map by its own step: so many times the step wanted in a turn', () => {
      const { numbers } = kept();
      const store = used(numbers, 'finding-a-pair');
      const { values } = store.numbers('search');
      expect(values.k).toBe(steps);
      const wanted = micrometres(numbers.s_w) * steps;
      const { says } = told('finding-a-pair', 'pair-map');
      const said = /of ([\d.]+ .m) a turn/.exec(says)?.[1];
      if (said !== undefined) expect(micrometres(said)).toBeCloseTo(wanted, 1);
    });

    it('loses as many steps on reversal in the batch as turns times its steps', () => {
      const { store, set: id } = told('measured-parts', 'play-batch');
      expect(store.numbers(id).values.k).toBe(steps);
    });

    it('is ordered under the plate in its own steps: so much to move is so many of them', () => {
      const { rows } = told('three-feet', 'levelling-plate');
      const b = rows.find((row) => row[1] === 'foot 2');
      const [correction, count] = [micrometres(b?.[3]), Number(b?.[7]?.replace('−', '-').replace('+', ''))];
      expect(count).toBeCloseTo(
        (correction / net) * steps * Math.sign(micrometres(line('per turn'))),
        -Math.log10(Math.abs(count) / 80),
      );
    });

    it('is not judged by the readings of another piece: what was measured stands empty, what the reader typed stays', () => {
      const { says, store, set: id } = told('calibrate', 'calibration');
      expect(says).toMatch(/no readings yet/);
      expect(told('calibrate', 'certificate').says).toMatch(/nothing to sign/);
      for (const text of ['piece', 'gauge', 'method'] as const) expect(store.numbers(id).texts?.[text]).toBe('');
      store.type(id, 'runs', 'turns; reading (µm)\n0; 0\n1; 87\n2; 175\n3; 262');
      applyDesign(store, { name, numbers: kept().numbers });
      expect(store.numbers(id).texts?.runs).toContain('175');
    });

    it('leaves no figure without an answer or a reason', () => {
      const { numbers } = kept();
      for (const { file, figures } of PAGES) {
        const store = used(numbers, file);
        for (const { widget, set: id } of figures) {
          const figure = FIGURES.get(widget);
          const drawn = figure && still(figure).draw(store.numbers(id), 'metric');
          expect(drawn?.ok === true ? drawn.value : drawn ? reasonOf(drawn) : '', `${file}, ${widget}`).toMatch(/\S/);
          expect(drawn?.ok === true ? drawn.value : '').not.toMatch(/NaN|Infinity|undefined/);
        }
      }
    });
  });

const leadsOf = (numbers: Readonly<Record<string, string>>): (number | undefined)[] => {
  const store = open([{ id: 's', inputs: [thread('A'), thread('C')] }]);
  for (const name of ['A', 'C']) store.type('s', name, numbers[name] ?? '');
  const { threads } = store.numbers('s');
  return [threads.A?.L, threads.C?.L];
};
const strokeOf = (numbers: Readonly<Record<string, string>>): number => {
  const store = open([{ id: 's', inputs: [{ ...quantity('S_w'), start: numbers.S_w ?? '' } as Input] }]);
  return store.numbers('s').values.S_w ?? Number.NaN;
};

describe('a page with a design in use', () => {
  const inputs: readonly Input[] = [
    { ...thread('A'), label: 'thread A' },
    { ...thread('C'), label: 'thread C' },
    { ...quantity('k'), label: 'steps per turn', start: '6' } as Input,
    { ...quantity('l_A'), label: 'screw of thread A', start: '20 mm' } as Input,
    { ...quantity('n'), label: 'turns', start: '1' } as Input,
  ];
  const set: NumberSet = { id: 'foot', inputs };
  const design = { A: 'M10x1.5', C: '3/8-16 UNC', divider: 'twelve points' };

  it('says in words which of its numbers the design filled and which it did not', () => {
    const store = open([set]);
    applyDesign(store, { name: 'Rear', numbers: design });
    const from = fieldsFrom(design, set, inputs, store);
    expect(from).toEqual({
      design: ['thread A', 'thread C'],
      worked: ['steps per turn'],
      refused: [],
      chapter: ['screw of thread A', 'turns'],
      reader: [],
    });
    const note = noteOf('Rear', from);
    expect(note.summary).toBe('From your design “Rear”: 3 of these 5 numbers. The chapter’s own: 2.');
    expect(note.lists).toContain('Not from it, so the chapter’s own: screw of thread A; turns.');
  });

  it('follows what is changed on the page, by value and not by spelling', () => {
    const store = open([set]);
    applyDesign(store, { name: 'Rear', numbers: design });
    store.type('foot', 'A', 'M10');
    store.type('foot', 'n', '2');
    store.type('foot', 'C', 'M8x1.25');
    expect(fieldsFrom(design, set, inputs, store)).toMatchObject({
      design: ['thread A'],
      reader: ['thread C', 'turns'],
      chapter: ['screw of thread A'],
    });
    // What the design has and the field can't take is not said to be missing in it.
    const tight: NumberSet = { id: 'foot', inputs: [{ ...quantity('k', 2, 10), label: 'steps', start: '6' } as Input] };
    expect(fieldsFrom(design, tight, tight.inputs, open([tight]))).toMatchObject({ refused: ['steps'], chapter: [] });
    store.type('foot', 'A', 'rubbish');
    expect(fieldsFrom(design, set, inputs, store).design).toEqual([]);
  });

  it('counts what was typed beside what is the chapter’s own', () => {
    const store = open([set]);
    applyDesign(store, { name: 'Rear', numbers: design });
    store.type('foot', 'n', '2');
    expect(noteOf('Rear', fieldsFrom(design, set, inputs, store)).summary).toBe(
      'From your design “Rear”: 3 of these 5 numbers. The chapter’s own: 1. Changed here: 1.',
    );
  });
});

/** Parts as a maker types them: a key with its clearance, printed springs with what they lose, the step wanted. */
const RISER = [
  'base = coupling nut 3/8-16 UNC, 28.575 mm, hexagon 15.875 mm',
  'turned = adapter 3/8-16 UNC external 15 mm, M10x1.5 internal 15 mm blind, body 18 mm, hexagon 17 mm',
  'carried = socket screw M10x1.5, thread 20 mm, head 10 mm',
  'lock = key at 12 mm, clearance 0.1 mm, stiffness 8000 N·mm',
  'springs = 2 between base and carried, 26 N, at 15 mm, meander of 8 waves, legs 20 mm, connectors 4.2 mm, strip 2.7 mm, high 10 mm, length 40 mm, modulus 2077 MPa, loses 12 %',
  'divider = knob 60',
  'wanted = 1.5 µm',
].join('\n');

describe('what the rows of an adjuster state rules on every page that asks for it', () => {
  const numbers = { adjuster: RISER };
  const set = (page: string, widget: string) => {
    const store = open(pageOf(page).sets);
    applyDesign(store, { name: 'Riser', numbers });
    const figure = pageOf(page).figures.find((f) => f.widget === widget);
    const found = FIGURES.get(widget);
    if (!figure || !found) throw new Error(`no ${widget}`);
    return { store, id: figure.set, found };
  };
  const values = (page: string, widget: string) => {
    const { store, id } = set(page, widget);
    return store.numbers(id).values;
  };

  it('clearance, radius, stiffness and divider of the lock, all from the row', () => {
    expect(values('the-lock', 'lock-error')).toMatchObject({ g_k: 0.1, r_k: 12, kappa: 8000, k: 60 });
    const { store, id, found } = set('the-lock', 'lock-error');
    expect(plainly(still(found).caption(store.numbers(id), 'metric'))).toMatch(/allows 1\.99 µm.* divisions of /);
  });

  it('the plastic that the springs lose their force by; what they must keep is the chapter’s, so no tick', () => {
    const { store, id, found } = set('spring-strength', 'spring-days');
    expect(store.numbers(id).values.q_r).toBe(0.12);
    const inputs = store.sets.get(id)?.inputs ?? [];
    const from = fieldsFrom(numbers, store.sets.get(id) as NumberSet, inputs, store);
    const labels = inputs.filter(({ name }) => found.decidedBy.includes(name)).map(({ label }) => label);
    expect(restsOn(from, labels)).toEqual(['force that must be left']);
    store.type(id, 'F_p', '8 N');
    expect(restsOn(fieldsFrom(numbers, store.sets.get(id) as NumberSet, inputs, store), labels)).toEqual([]);
  });

  it('the hexagon that a clip goes on and the springs that hang in it, and no friction of steel for that of plastic', () => {
    const { store, id } = set('parts-that-hold', 'printed-parts');
    expect(store.numbers(id).values).toMatchObject({ w_n: 15.875, r_k: 15, t_f: 2.7, b_f: 10, E_f: 2077, mu_f: 0.3 });
    applyDesign(store, { name: 'Riser', numbers: { ...numbers, mu: '0.15' } });
    expect(store.numbers(id).values.mu_f).toBe(0.3);
  });

  it('the stroke of a spring, which is that between the stops', () => {
    const a = readAdjuster(RISER);
    expect(values('preload-and-lock', 'force-chain').n_w).toBeCloseTo(a.ok ? a.value.turns : Number.NaN, 6);
    expect(values('preload-and-lock', 'force-chain').n_w).not.toBe(6);
  });

  it('steps per turn for readings, and the step that is wanted on the sheet', () => {
    expect(values('calibrate', 'calibration').k).toBe(60);
    expect(values('design-sheet', 'design-sheet').s_w).toBeCloseTo(0.0015, 12);
  });
});
