/** Pages that ask for threads and lengths, and are given parts instead: levelling, calibration, certificate and sheet answer from the record. */
import { describe, expect, it } from 'vitest';
import { type Adjuster, standing } from '../../widgets/assembly/adjuster/adjuster.ts';
import { jointPlay } from '../../widgets/assembly/adjuster/play.ts';
import { readAdjuster } from '../../widgets/assembly/adjuster/text.ts';
import { calibrationOf } from '../../widgets/assembly/calibration-of.ts';
import { readDesigns, writeDesigns } from '../../widgets/assembly/design-file.ts';
import { offersOf } from '../../widgets/assembly/design-use.ts';
import type { NumberSet, Numbers } from '../../widgets/assembly/numbers.ts';
import { gather, readInput } from '../../widgets/assembly/numbers.ts';
import { certificateFigure } from '../../widgets/figures/certificate/certificate.ts';
import { designSheet } from '../../widgets/figures/design-sheet/design-sheet.ts';
import type { SheetNumbers } from '../../widgets/figures/design-sheet/sheet-numbers.ts';
import { workSheet } from '../../widgets/figures/design-sheet/work.ts';
import { plateOf } from '../../widgets/figures/kit/levelling/rounds.ts';
import { CHAPTERS, press } from '../support/chapters.ts';
import { picture, still } from '../support/figures.ts';
import { reasonIn, valueIn } from '../support/results.ts';

const read = (text: string): Adjuster => valueIn(readAdjuster(text));

/** Put together off the middle, with a knob: no sum of usable lengths and flats gives its turns and steps. */
const OFF_MIDDLE =
  'base = tapped block M10x1.5-6H, 20 mm, price 3.20 | turned = stud M10x1.5-6g 20 mm, 3/8-16 UNC-2A 20 mm, coat 3 µm, price 2.40 | carried = cap 3/8-16 UNC-2B, thread 20 mm, count 2 | tip = ball 8 mm | springs = 2 between base and carried, 12 N, 0.6 N/mm, at 15 mm | divider = knob 50 | assembled = A 2 turns out, C 1.5 turns out';
const DOUBLE =
  'base = stud M12x1.75 30 mm | turned = double nut M12x1.75 18 mm, M10x1.5 15 mm, height 60 mm | carried = screw M10x1.5, thread 30 mm';
const INVERTED =
  'base = screw M10x1.5, thread 20 mm | turned = adapter M10x1.5 internal 15 mm, M8x1.25 external 15 mm, body 20 mm | carried = nut M8x1.25, 12 mm';
const PLAIN = 'base = nut M12x1, 20 mm | turned = screw M12x1, 40 mm';

/** The chapter’s own numbers of the set that these names stand in, with the parts in their field. */
const SETS = CHAPTERS.flatMap(({ file, text }) => press(text, file).model.sets);
const setWith = (...names: readonly string[]): NumberSet => {
  const set = SETS.find(({ inputs }) => names.every((name) => inputs.some((input) => input.name === name)));
  if (!set) throw new Error(`no set asks for ${names.join(', ')}`);
  return set;
};
const given = <T>(set: NumberSet, adjuster: string): T =>
  gather(
    set,
    new Map(
      set.inputs.map((input) => [
        input.name,
        valueIn(readInput(input, input.name === 'adjuster' ? adjuster : input.start, 'metric')),
      ]),
    ),
  ) as Numbers as T;

describe('levelling with stated parts', () => {
  const plate = (adjuster: string) => plateOf(given(setWith('feet', 'adjuster'), adjuster));

  it('has their net lead, their steps and the turns between their stops', () => {
    const a = read(OFF_MIDDLE);
    const s = valueIn(plate(OFF_MIDDLE));
    expect(s).toMatchObject({ Delta: a.Delta, k: 50, most: a.turns, fromParts: true });
    expect(s.most).toBeLessThan(valueIn(plate('none')).most);
  });

  it.each([DOUBLE, INVERTED, PLAIN])('works with %s', (text) => {
    const a = read(text);
    expect(valueIn(plate(text))).toMatchObject({ Delta: a.Delta, most: a.turns, k: a.steps });
  });

  it('takes threads and usable lengths where no parts are stated', () => {
    expect(valueIn(plate('none'))).toMatchObject({ fromParts: false, k: 6 });
  });
});

describe('calibration and certificate with stated parts', () => {
  const set = setWith('runs', 'piece', 'adjuster');
  const certificate = (text: string) =>
    picture(valueIn(still(certificateFigure).draw(given<Numbers>(set, text), 'metric'))).querySelector('.sheet')
      ?.textContent ?? '';

  it('compare with the net lead of the parts', () => {
    const found = valueIn(calibrationOf(given(set, PLAIN)));
    expect(found).toMatchObject({ at: 'end', calibrated: { nominal: -1 } });
    expect(certificate(PLAIN)).toContain('M12×1, a plain screw');
  });

  it('say the turns and the stroke of the parts, and where the readings go beyond', () => {
    const a = read(DOUBLE);
    expect(certificate(DOUBLE)).toContain(`${a.turns.toPrecision(3)} turns between the stops`);
    const short = OFF_MIDDLE.replace('A 2 turns out, C 1.5 turns out', 'A 0.5 turns out, C 0.5 turns out').replaceAll(
      ' 20 mm',
      ' 11 mm',
    );
    expect(read(short).turns).toBeLessThan(2);
    expect(certificate(short)).toContain('more turns than these parts have');
    expect(certificate('none')).not.toContain('between the stops');
  });
});

describe('the sheet of stated parts', () => {
  const set = setWith('parts', 'adjuster');
  const sheet = (text: string) => workSheet(given(set, text));

  it('has the motion, the travel, the play and the parts of the record', () => {
    const a = read(OFF_MIDDLE);
    const s = valueIn(sheet(OFF_MIDDLE));
    expect(s.fit.ok && s.fit.value.adjuster).toEqual(a);
    expect(s.perStep).toBeCloseTo(Math.abs(a.Delta) / 50, 12);
    const line = (name: RegExp) => s.groups.flatMap((g) => g.lines).find((l) => name.test(l.name));
    expect(line(/^stroke/)).toMatchObject({ value: { amount: a.stroke } });
    expect(line(/^play of thread A/)).toMatchObject({ to: { amount: valueIn(valueIn(jointPlay(a.A)).most) } });
    // The springs have 12 N at assembly; where the stroke begins they are shorter by what the carried part has still to rise.
    const force = line(/^force of the spring/);
    expect(force && 'value' in force && force.value.amount).toBeCloseTo(12 + 0.6 * a.Delta * a.anticlockwise.n, 6);
  });

  it('names what the base stands on as not judged where a screw comes out below it, and nowhere else', () => {
    const on = (base: string) => {
      const text = `base = nut 3/8-16 UNC, 8 mm${base} | turned = adapter 3/8-16 UNC external 14 mm, M10x1.5 internal 15 mm blind, body 18 mm | carried = socket screw M10, thread 20 mm | keep = 0.8 diameters`;
      return valueIn(sheet(text)).unjudged.find(({ name }) => name === 'what the base stands on');
    };
    // Home, the screw of 14 mm goes through the nut of 8 mm and 6 mm further.
    expect(on('')?.why('metric')).toMatch(/reaches 6\.000\smm below it/);
    expect(on(', on the ground')).toBeUndefined();
    expect(valueIn(sheet('none')).unjudged.some(({ name }) => name === 'what the base stands on')).toBe(false);
  });

  it('counts the clearance of a key that is stated, and says that it is not judged where none is', () => {
    const key = valueIn(sheet(`${OFF_MIDDLE} | lock = key at 12 mm, clearance 0.1 mm`));
    const term = key.budget.fixed.find(({ name }) => /clearance of the key/.test(name));
    // Thread C, 3/8-16: 1.5875 mm × 0.1 mm over 2π × 12 mm.
    expect(term?.size).toBeCloseTo(0.0021055, 6);
    expect(key.unjudged.some(({ name }) => /clearance of the key/.test(name))).toBe(false);
    const assumed = OFF_MIDDLE.replace(/ \| springs = [^|]*/, '');
    expect(valueIn(sheet(assumed)).unjudged.some(({ name }) => /clearance of the key/.test(name))).toBe(true);
  });

  it('judges the preload after a year where the springs say what they lose, and names it as not judged where they do not', () => {
    const yearOn = (text: string) => {
      const { checks, unjudged, groups } = valueIn(sheet(text));
      return {
        checks: checks.filter((c) => c.says('metric').startsWith('After a year')),
        unjudged: unjudged.filter(({ name }) => name === 'preload after a year'),
        force: groups.flatMap((g) => g.lines).find((l) => l.name.startsWith('force of the spring after a year')),
        new: groups.flatMap((g) => g.lines).find((l) => l.name === 'force of the spring at the start of the stroke'),
      };
    };
    const silent = yearOn(OFF_MIDDLE);
    expect(silent.checks).toEqual([]);
    expect(silent.unjudged[0]?.why('metric')).toContain('write it there, as in “loses 8 %”');
    const losing = (share: number) => yearOn(OFF_MIDDLE.replace('at 15 mm', `at 15 mm, loses ${share} %`));
    const little = losing(1);
    expect(little.unjudged).toEqual([]);
    expect(little.checks.map((c) => c.passed)).toEqual([true, true]);
    // Read a minute after the stretch: 525 600 minutes are 5.7207 tenfold times, of which each takes 1 %.
    const start = little.new && 'value' in little.new ? little.new.value.amount : Number.NaN;
    const left =
      little.force && 'value' in little.force ? [little.force.value.amount, little.force.to?.amount ?? 0] : [];
    expect(Math.min(...left.map((f) => Math.abs(f - start * (1 - 0.01 * Math.log10(525_601)))))).toBeLessThan(1e-6);
    // Of 18 % for each, more than all is gone.
    for (const share of [18, 40])
      expect(
        losing(share).checks.some((c) => !c.passed),
        `${share} %`,
      ).toBe(true);
  });

  it('grows with warmth by the parts, whatever length and material the fields state', () => {
    const a = read(OFF_MIDDLE);
    const warm = (text: string) => valueIn(sheet(text)).budget.fixed.find((t) => t.name === 'warmth')?.size;
    // All steel: 11.5e-6 a kelvin (as the chapter on heat states it) of the whole height, 2 K.
    expect(warm(OFF_MIDDLE)).toBeCloseTo(11.5e-6 * standing(a, 0).height * 2, 9);
    const plastic = OFF_MIDDLE.replace('price 3.20', 'plastic');
    expect(
      valueIn(sheet(plastic)).checks.some((c) => !c.passed && /which creeps under load/.test(c.says('metric'))),
    ).toBe(true);
  });

  it('says how high it is closed, in the middle of the stroke and open, and holds it against the height at most', () => {
    // A turn moves the carried part by the net lead: the two ends stand the stroke apart.
    const { groups, checks, fit } = valueIn(sheet(OFF_MIDDLE));
    const lines = new Map(groups.flatMap((g) => g.lines).map((l) => [l.name, 'value' in l ? l.value.amount : NaN]));
    const [closed = NaN, middle = NaN, open = NaN] = [
      'closed height',
      'height in the middle of the stroke',
      'open height',
    ].map((name) => lines.get(name));
    expect(open - closed).toBeCloseTo(valueIn(fit).adjuster.stroke, 9);
    expect(middle).toBeCloseTo((open + closed) / 2, 9);
    const judged = (most: number) => {
      const numbers = given<SheetNumbers>(set, OFF_MIDDLE);
      const low = { ...numbers, values: { ...numbers.values, H_w: most } };
      return valueIn(workSheet(low)).checks.find((c) => /of its stroke it is/.test(c.says('metric')))?.passed;
    };
    expect([judged(middle + 0.001), judged(middle - 0.001)]).toEqual([true, false]);
    expect(checks.some((c) => /of its stroke it is/.test(c.says('metric')))).toBe(true);
    const drawing = picture(valueIn(still(designSheet).draw(given<Numbers>(set, OFF_MIDDLE), 'metric')));
    expect(drawing.querySelector('.sheet-drawing')?.textContent).toMatch(/\(height \d/);
  });

  it('asks for no field that the parts rule over', () => {
    const numbers = given<SheetNumbers>(set, OFF_MIDDLE);
    const idle = designSheet.idle(numbers as Numbers);
    expect(idle).toEqual(
      expect.arrayContaining(['A', 'C', 'l_A', 'divider', 'k_d', 'R', 'F_0', 'k_s', 'kappa', 'l', 'path', 'parts']),
    );
    const shown = JSON.stringify(valueIn(still(designSheet).draw(numbers as Numbers, 'metric')));
    const others = {
      ...numbers,
      threads: { A: numbers.threads.C, C: numbers.threads.A },
      values: {
        ...numbers.values,
        ...Object.fromEntries(idle.filter((name) => name in numbers.values).map((name) => [name, 7])),
      },
      choices: { ...numbers.choices, path: 'printed PLA', divider: 'hexagon', arrangement: 'nested' },
      texts: { ...numbers.texts, parts: 'ball: 1 × 9' },
    };
    expect(JSON.stringify(valueIn(still(designSheet).draw(others as Numbers, 'metric')))).toBe(shown);
    expect(designSheet.idle(given<Numbers>(set, 'none'))).not.toContain('A');
  });

  it('takes the wind-up of a post and its arm from their drawing, never from a number beside the rows', () => {
    const windUp = (row: string) => {
      const s = valueIn(sheet(`${OFF_MIDDLE} | lock = key at 20 mm, clearance 0.1 mm${row}`));
      return {
        term: s.budget.fixed.find(({ name }) => /wind-up of the lock/.test(name))?.size,
        unjudged: s.unjudged.find(({ name }) => /wind-up of the lock/.test(name))?.why('metric'),
        rigid: s.groups.flatMap((g) => g.lines).some((l) => /^stiffness of the lock/.test(l.name)),
      };
    };
    expect(windUp('')).toMatchObject({ term: undefined, rigid: false });
    expect(windUp('').unjudged).toContain('not known');
    const printed = windUp(', post 5 mm, modulus 2000 MPa');
    const steel = windUp(', steel post 5 mm, modulus 2000 MPa');
    expect(printed.unjudged).toBeUndefined();
    expect(printed.rigid).toBe(true);
    expect((printed.term ?? 0) / (steel.term ?? 1)).toBeGreaterThan(20);
  });

  it('lists the parts with their counts and prices, in place of the typed list', () => {
    const list = valueIn(sheet(OFF_MIDDLE)).parts;
    expect(list?.parts.map((p) => [p.count, p.price])).toEqual([
      [1, 3.2],
      [1, 2.4],
      [2, undefined],
      [1, undefined],
      [2, undefined],
    ]);
    expect(list?.total).toBeCloseTo(5.6, 9);
    expect(list?.parts[0]?.name).toBe('tapped block M10×1.5-6H');
  });

  it.each([
    ['double nut', DOUBLE],
    ['adapter, inverted', INVERTED],
  ])('is worked and drawn for an arrangement without a name: %s', (_, text) => {
    const a = read(text);
    const s = valueIn(sheet(text));
    expect(s.called).toContain(a.turned.kind);
    const html = valueIn(still(designSheet).draw(given<Numbers>(set, text), 'metric'));
    expect(html).not.toMatch(/NaN|Infinity|undefined/);
    expect(picture(html).querySelector('.sheet-drawing [data-path="turned"]')).toBeTruthy();
    expect(picture(html).querySelector('.sheet-source')?.textContent).toContain('do not count');
  });

  it('says in a sentence that a plain screw has no second thread for it', () => {
    expect(reasonIn(sheet(PLAIN))).toMatch(/^This sheet is for two threads in series, and the screw described .*\.$/);
  });
});

describe('a design in use', () => {
  it.each([OFF_MIDDLE, DOUBLE, PLAIN])('fills the field of parts wherever a page has one: %s', (text) => {
    for (const set of SETS)
      if (set.inputs.some((input) => input.name === 'adjuster'))
        expect(offersOf({ adjuster: text }, set).get('adjuster'), set.id).toMatchObject({ text, taken: true });
  });

  it('without parts empties that field, so that no parts of an earlier design rule over its threads', () => {
    const offers = offersOf({ A: 'M8×1.25', C: '5/16-18 UNC' }, setWith('parts', 'adjuster'));
    expect(offers.get('adjuster')).toMatchObject({ text: 'none', taken: true });
    expect(offers.get('A')?.text).toBe('M8×1.25');
  });

  it('goes through a file with the field left empty', () => {
    const kept = [{ name: 'Foot', numbers: { A: 'M8×1.25', C: '5/16-18 UNC', adjuster: 'none' } }];
    expect(valueIn(readDesigns(writeDesigns(kept)))).toEqual({ designs: kept, notes: [] });
  });

  it('of a plain screw leaves the two threads of a page as they are', () => {
    const offers = offersOf({ adjuster: PLAIN, C: 'M6×1' }, setWith('parts', 'adjuster'));
    expect([offers.has('A'), offers.has('C'), offers.has('l_A')]).toEqual([false, false, false]);
  });
});
