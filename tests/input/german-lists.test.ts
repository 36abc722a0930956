/**
 * Lists in the German edition: what a chapter holds is shown in German words and read again to the same text, what is typed in German is kept in
 * the words of links and files, English words are read besides, and a refusal quotes German.
 */
import { beforeAll, describe, expect, it } from 'vitest';
import { CHAPTERS } from '../support/chapters.ts';
import { german } from '../support/german.ts';
import type * as InGerman from '../support/in-german.ts';

let de: typeof InGerman;
beforeAll(async () => {
  de = await german();
}, 120_000);

const ROWS =
  /^(taps|series|dividers|feet|readings|rounds|stands|runs|parts|prices|adjuster|settled|passport|title|hardware) = (.*?)(?: # .*)?$/gm;
/** Every list of every chapter, as it is declared there. */
const DECLARED = CHAPTERS.filter(({ file }) => !file.includes('/de/')).flatMap(({ file, text }) =>
  [...text.matchAll(ROWS)].map(([, name = '', list = '']) => ({ file, name, list })),
);
const STARTS: Readonly<Record<string, string>> = {
  adjuster: 'none',
  series: 'UNC',
  runs: 'none',
  feet: '1: 0, 0; 2: 240, 0; 3: 120, 180',
  readings: '40, 20: 0 µm; 200, 20: −84 µm; 40, 160: 94 µm',
  hardware: 'standard metric',
};
/** As the reader of the field would have it, or the refusal's sentence. */
const taken = (name: string, typed: string): unknown => {
  const line = de.readInputLine(`${name} = ${STARTS[name] ?? ''}`);
  if (!line.ok) return de.reasonOf(line);
  const read = de.readInput(line.value, de.wordsKept(name, typed), 'metric');
  return read.ok ? read.value : de.reasonOf(read);
};

const IN_GERMAN: readonly (readonly [string, string, string])[] = [
  [
    'adjuster',
    'Grundteil = Langmutter M10, 20 mm\nStellteil = Schraube M10 30 mm, Kopf 7 mm\nFedern = 2 bei 15 mm, 12 N, Reihe aus 3 Ringen, Radius 5,2 mm, Streifen 1,2 mm, hoch 10 mm, Länge 40 mm, E-Modul 2077 MPa, verliert 9 %',
    'base = coupling nut M10, 20 mm\nturned = screw M10 30 mm, head 7 mm\nsprings = 2 at 15 mm, 12 N, row of 3 rings, radius 5.2 mm, strip 1.2 mm, high 10 mm, length 40 mm, modulus 2077 MPa, loses 9 %',
  ],
  ['dividers', 'Zwölfkant, Vierkant, Drehknopf 50', 'twelve points, square, knob 50'],
  ['series', 'Regelgewinde, Feingewinde, UNF', 'coarse, fine, UNF'],
  ['taps', 'M10x1,5; M8 Feingewinde; M6 links', 'M10x1.5; M8 fine; M6 left hand'],
  ['stands', 'Fuß 1: 1,5 Umdrehungen', 'foot 1: 1.5 turns'],
  ['feet', 'Fuß 1: 0, 0\nFuß 2: 240,5, 0\nFuß 3: 120, 180,25', 'foot 1: 0, 0\nfoot 2: 240.5, 0\nfoot 3: 120, 180.25'],
  [
    'readings',
    '40,5, 20: −0,5 µm\n200, 20: −84 µm\n40, 160: 94,25 µm',
    '40.5, 20: −0.5 µm\n200, 20: −84 µm\n40, 160: 94.25 µm',
  ],
  ['rounds', '0,5; −1,5; 2; 3', '0.5; −1.5; 2; 3'],
  [
    'runs',
    'Umdrehungen; Ablesung (µm); Richtung\n0; -0,1; auf\n1; 88,9; ab',
    'turns; reading (µm); direction\n0; -0.1; up\n1; 88.9; down',
  ],
  ['prices', 'einfache Schraube: 1 × 46; Hebel: 1 × 9,50', 'plain screw: 1 × 46\nlever: 1 × 9.50'],
  [
    'passport',
    '1, 2026-03-02: Steigung 88,7 µm, Stelle 0,5 Umdrehungen, neues Fett an der Stelle',
    '1, 2026-03-02: lead 88.7 µm, place 0.5 turns, neues Fett an der Stelle',
  ],
  [
    'title',
    'Nummer = RS-01\nDatum = 2026-03-31\nÄnderung = Nummer 2',
    'number = RS-01\ndate = 2026-03-31\nrevision = Nummer 2',
  ],
  [
    'hardware',
    'Adapter M10x1,5 außen 20 mm, 3/8-16 UNC innen 20 mm Grundloch, Körper 24 mm, SW 17 mm, Preis 2,40, Anzahl 3\nNormteile metrisch, Preis 0,30',
    'adapter M10x1.5 external 20 mm, 3/8-16 UNC internal 20 mm blind, body 24 mm, hexagon 17 mm, price 2.40, count 3\nstandard metric, price 0.30',
  ],
  [
    'adjuster',
    'Grundteil = Langmutter 3/8-16 UNC, 28,575 mm\nStellteil = Adapter 3/8-16 UNC außen 15 mm, M10x1,5 innen 15 mm Sackloch, Körper 18 mm, Schlüsselweite 17 mm\nHubteil = Innensechskantschraube M10x1,5, Gewinde 20 mm, Kopf 10 mm, Messing\nSpitze = Kugel 8,334 mm in 8 mm Innensechskant, Überstand 4 mm, eingepresst mit 2000 N\nVerdrehsicherung = Passfeder bei 12 mm, Spiel 0,1 mm\nFedern = 2 zwischen Grundteil und Hubteil, 12 N, 0,6 N/mm, bei 15 mm\nTeilung = Drehknopf 60 Skalenteile\ngewünscht = 15 µm\nEingriff = 1 Durchmesser\nzusammengebaut = A 2 Umdrehungen heraus',
    'base = coupling nut 3/8-16 UNC, 28.575 mm\nturned = adapter 3/8-16 UNC external 15 mm, M10x1.5 internal 15 mm blind, body 18 mm, hexagon 17 mm\ncarried = socket screw M10x1.5, thread 20 mm, head 10 mm, brass\ntip = ball 8.334 mm in 8 mm hexagon, stands 4 mm, pressed with 2000 N\nlock = key at 12 mm, clearance 0.1 mm\nsprings = 2 between base and carried, 12 N, 0.6 N/mm, at 15 mm\ndivider = knob 60 divisions\nwanted = 15 µm\nkeep = 1 diameter\nassembled = A 2 turns out',
  ],
];

describe('a list of a chapter in the German edition', () => {
  it('is there to be asked', () => expect(DECLARED.length).toBeGreaterThan(25));

  it.each(DECLARED)('$name of $file is shown in German and read again to the same', ({ name, list }) => {
    const shown = de.wordsShown(name, list);
    expect(de.wordsKept(name, shown)).toBe(list);
    expect(shown).not.toMatch(
      /\b(nut|screw|stud|sleeve|cap|spindle|external|internal|blind|hexagon|price|count|ball|base|turned|carried|turns|reading|up|down|flats|lead|coarse|standard|wedge|lever)\b/,
    );
  });
});

describe('a list that is typed', () => {
  it.each(IN_GERMAN)('%s in German is kept in the words of links', (name, typed, kept) => {
    expect(taken(name, typed)).toBe(kept);
  });

  it.each(IN_GERMAN)('%s in English is read too, and shown in German', (name, _, kept) => {
    expect(taken(name, kept)).toBe(kept);
    expect(de.wordsKept(name, de.wordsShown(name, kept))).toBe(kept);
    if (name !== 'taps') expect(de.wordsShown(name, kept)).not.toBe(kept);
  });

  it.each([
    ['adjuster', 'Grundteil = Quader M10', /„Quader M10“ als Grundteil; .*: Gewindeblock, Langmutter, Schraube/],
    [
      'adjuster',
      'Grundteil = Mutter M10\nStellteil = Schraube M10 30 mm\nTeilung = Fünfkant',
      /„Fünfkant“ in der Zeile Teilung; schreibe es wie Sechskant, Vierkant, Zwölfkant oder Drehknopf 60/,
    ],
    [
      'adjuster',
      'Boden = Mutter M10',
      /„Boden = Mutter M10“; eine Zeile beginnt mit Grundteil, Stellteil, Hubteil, Verdrehsicherung/,
    ],
    ['adjuster', 'Grundteil = Mutter M10\nStellteil = Schraube M10 30 mm, Farbe 2', /„Farbe 2“ .*Körper, Kopf/],
    ['passport', '1: Steigung 88,7', /„1: Steigung 88,7“; schreibe eine wie 1, 2026-11-03: Steigung 88,7 µm/],
    ['title', 'Nr = 1', /„Nr = 1“ .* Nummer, Datum, Änderung, Allgemeintoleranz und gezeichnet/],
    ['series', 'Regelgewinde, Rohr', /„Rohr“ als Gewindereihe.*Regelgewinde, Feingewinde/],
    ['dividers', 'Fünfkant', /„fünfkant“ .*oder keine/i],
    ['runs', 'Umdrehungen; Ablesung (µm); Richtung\n0; 1; seitwärts', /„seitwärts“ ist nicht auf oder ab/],
    // Which commas part the numbers can’t be told: not guessed.
    ['readings', '40,5,20,5\n200, 20: 1\n40, 160: 2', /„40,5,20,5“; gib x, y und die Ablesung/],
  ])('%s that can’t be read is refused in German: %s', (name, typed, says) => {
    const said = taken(name, typed);
    expect(said).toMatch(says);
    expect(said).not.toMatch(/\b(base|turned|carried|nut|screw|hexagon|external|blind|lead|turns|reading)\b/);
  });

  it('of the sizes of an exercise is parted by semicolons, its commas being decimal marks', () => {
    const sizes = { input: { kind: 'thread', name: 'A' }, options: ['M10x1.5', 'M8x1.25'] } as const;
    expect(de.sizesShown(sizes.input, sizes.options.join(', '))).toBe('M10x1,5; M8x1,25');
    expect(de.sizesKept(sizes.input, 'M10x1,5; M8×1.25')).toBe('M10x1.5, M8×1.25');
    expect(de.sizesKept(sizes.input, 'M10x1,5, M8')).toBe('M10x1.5, M8');
    const choice = { kind: 'choice', name: 'divider' } as const;
    expect(de.sizesShown(choice, 'hexagon, knob')).toBe('Sechskant; Drehknopf');
    expect(de.sizesKept(choice, 'Sechskant; knob')).toBe('hexagon, knob');
  });

  it('of a class takes Zoll, and of a lab auf and ab', () => {
    const class_ = de.readRoster('Ada; Zoll\nBo; mm');
    expect(class_.ok && [...class_.value.units]).toEqual([
      ['Ada', 'inch'],
      ['Bo', 'mm'],
    ]);
    const table = de.typedTable('0; 0,0 µm; auf\n1; 14,6 µm; auf\n1; 15,9 µm; ab', 'thou');
    expect(table).toEqual({
      ok: true,
      value: 'flats; reading (µm); direction\n0; 0.0; up\n1; 14.6; up\n1; 15.9; down',
    });
  });
});
