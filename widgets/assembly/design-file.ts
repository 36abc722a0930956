/**
 * The reader's designs as a file, and what of such a file is taken.
 *
 *   { "format": "differential-screw-designs", "version": 3,
 *     "designs": [ { "name": "Foot", "numbers": { "A": "M10×1.5", "C": "3/8-16 UNC", "arrangement": "in line", "l_A": "20 mm" } } ] }
 *
 * Beside its numbers a design may have `readings`, by page the texts that were measured on its piece (readings.ts).
 *
 * A number is kept as text with its unit, under the name it has in the chapters: a thread's letter, a symbol of the
 * glossary, a choice or a list. It goes through the same readers as typing does, so a file can hold nothing that a
 * field would refuse. Unknown names are left out of what is read and counted, but stay in the file when it is written again; a
 * file of another kind or of a newer version is refused.
 */

import { designLeftOut, designsLeftOut, numberLeftOut, numbersLeftOut, usableLengthStated } from '#words/designs.ts';
import { type Bad, bad, type Good, good, isSymbol, type Result, symbolFact } from '../engine/index.ts';
import { isChoice } from '../input/choices.ts';
import { grouped, numeral } from '../input/format.ts';
import { isText } from '../input/texts.ts';
import { reasonOf } from '../words/reason.ts';
import { presentNumber } from './former-names.ts';
import { type Input, readField } from './numbers.ts';
import { pagesFrom, type Readings } from './readings.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    /** Lengths as the reader sees them. */
    'design-file-too-long': {
      readonly length: string;
      readonly of: 'characters' | 'bytes';
      readonly most: string;
    };
    'design-file-not-json': { readonly text: string };
    'design-file-of-other-kind': { readonly format: string };
    'design-file-version': { readonly version: string | undefined; readonly newest: number };
    'design-file-without-list': Readonly<Record<never, never>>;
    'design-file-too-many': { readonly designs: number; readonly most: number };
    'design-without-numbers': Readonly<Record<never, never>>;
    'design-without-name': Readonly<Record<never, never>>;
    'design-number-not-text': { readonly name: string };
    'design-number-unknown': { readonly name: string };
    'design-number-unread': { readonly name: string; readonly why: Bad };
  }
}

export const DESIGN_FORMAT = 'differential-screw-designs';
export const DESIGN_VERSION = 3;
export const MOST_DESIGNS = 200;
const LONGEST_NAME = 60;
/** No list a field takes is longer; a larger file is not one of designs. */
const LONGEST_FILE = 2_000_000;

export interface Design {
  readonly name: string;
  /** Texts by name, each good for the field of that name. */
  readonly numbers: Readonly<Record<string, string>>;
  /** What was measured on its piece, by page. */
  readonly readings?: Readonly<Record<string, Readings>>;
}

export interface ReadDesigns {
  readonly designs: readonly Design[];
  /** What was left out, in few sentences however much it is. */
  readonly notes: readonly string[];
}

/** A file with all that stands in it, also what a newer notebook put there and this one does not know. */
export interface DesignFile {
  readonly version: number;
  readonly designs: readonly unknown[];
}

/** Why a text is no file that can be worked on. */
type NoFile = Bad & {
  /** Whether it is whole and of this kind all the same, so that it must not be written over. */
  readonly whole: boolean;
};

export const NO_DESIGNS: DesignFile = { version: DESIGN_VERSION, designs: [] };

export const writeFile = (file: DesignFile): string =>
  `${JSON.stringify({ format: DESIGN_FORMAT, ...file, version: DESIGN_VERSION }, null, 2)}\n`;

export const writeDesigns = (designs: readonly Design[]): string => writeFile({ ...NO_DESIGNS, designs });

/** Why a file of this size is not looked into; undefined where it is. A character takes three bytes at most. */
export const tooLong = (count: number, of: 'characters' | 'bytes'): Bad | undefined => {
  const most = of === 'bytes' ? 3 * LONGEST_FILE : LONGEST_FILE;
  return count <= most ? undefined : bad('design-file-too-long', { length: grouped(count), of, most: grouped(most) });
};

export const openFile = (text: string): Good<DesignFile> | NoFile => {
  const no = (why: Bad, whole = false): NoFile => ({ ...why, whole });
  const long = tooLong(text.length, 'characters');
  if (long !== undefined) return no(long, true);
  let file: unknown;
  try {
    file = JSON.parse(text);
  } catch {
    return no(bad('design-file-not-json', { text }));
  }
  if (!isRecord(file) || file.format !== DESIGN_FORMAT)
    return no(bad('design-file-of-other-kind', { format: DESIGN_FORMAT }));
  const { version, designs } = file;
  if (!(typeof version === 'number' && version >= 1 && version <= DESIGN_VERSION))
    return no(bad('design-file-version', { version: versionNamed(version), newest: DESIGN_VERSION }), true);
  if (!Array.isArray(designs)) return no(bad('design-file-without-list', {}));
  if (!(designs.length <= MOST_DESIGNS))
    return no(bad('design-file-too-many', { designs: designs.length, most: MOST_DESIGNS }), true);
  return good({ ...file, version, designs });
};

/** The version as a file names it, cut short; undefined where it names none. */
const versionNamed = (version: unknown): string | undefined =>
  typeof version === 'string'
    ? version.slice(0, 20)
    : typeof version === 'number' && Number.isFinite(version)
      ? numeral(version).slice(0, 20)
      : undefined;

export const readDesigns = (text: string): Result<ReadDesigns> => {
  const file = openFile(text);
  return file.ok ? good(designsIn(file.value)) : file;
};

/** The designs of a file; of what is left out the first is named and the others are counted. */
export const designsIn = (file: DesignFile): ReadDesigns => {
  const designs: Design[] = [];
  const nameless: string[] = [];
  const left: { readonly of: string; readonly why: Bad }[] = [];
  for (const [i, entry] of file.designs.entries()) {
    const read = readDesign(entry);
    if (!read.ok) {
      nameless.push(designLeftOut(i + 1, reasonOf(read)));
      continue;
    }
    const { design } = read.value;
    designs.push(design);
    left.push(...read.value.left.map((why) => ({ of: design.name, why })));
  }
  const notes: string[] = [];
  if (nameless[0] !== undefined) notes.push(nameless[0]);
  if (nameless.length > 1) notes.push(designsLeftOut(nameless.length));
  const [first] = left;
  if (first)
    notes.push(
      left.length === 1
        ? numberLeftOut(first.of, reasonOf(first.why))
        : numbersLeftOut(left.length, first.of, reasonOf(first.why)),
    );
  return { designs, notes };
};

/** Puts designs into a file: numbers that are not given stay, and so does all that this notebook does not know. */
export const withDesigns = (file: DesignFile, designs: readonly Design[]): DesignFile => {
  const entries = [...file.designs];
  for (const { name, numbers } of designs) {
    const at = entries.findIndex((entry) => entryName(entry) === name);
    const entry = entries[at];
    if (isRecord(entry)) entries[at] = { ...entry, numbers: { ...(entry.numbers as object), ...numbers } };
    else entries.push({ name, numbers });
  }
  return { ...file, designs: entries };
};

/** The same file with the readings of each design beside its numbers, for who takes it along. */
export const withReadings = (
  file: DesignFile,
  readingsOf: (name: string) => Readonly<Record<string, Readings>>,
): DesignFile => ({
  ...file,
  designs: file.designs.map((entry) => {
    const name = entryName(entry);
    const readings = name === undefined ? {} : readingsOf(name);
    return isRecord(entry) && Object.keys(readings).length > 0 ? { ...entry, readings } : entry;
  }),
});

export const withoutDesign = (file: DesignFile, name: string): DesignFile => ({
  ...file,
  designs: file.designs.filter((entry) => entryName(entry) !== name),
});

/** The name of an entry that is a design; undefined for what is none. */
const entryName = (entry: unknown): string | undefined =>
  isRecord(entry) && isRecord(entry.numbers) ? nameOf(entry.name) : undefined;

const readDesign = (entry: unknown): Result<{ design: Design; left: Bad[] }> => {
  if (!isRecord(entry) || !isRecord(entry.numbers)) return bad('design-without-numbers', {});
  const name = nameOf(entry.name);
  if (name === '') return bad('design-without-name', {});
  const numbers: Record<string, string> = {};
  const left: Bad[] = [];
  for (const [written, kept] of Object.entries(entry.numbers)) {
    const [key, value] = typeof kept === 'string' ? presentNumber(written, kept) : [written, kept];
    const fault = typeof value === 'string' ? numberFault(key, value) : bad('design-number-not-text', { name: key });
    if (fault === undefined) numbers[key] = String(value);
    else left.push(fault);
  }
  const readings = pagesFrom(entry.readings);
  return good({ design: { name, numbers, ...(Object.keys(readings).length > 0 && { readings }) }, left });
};

/**
 * What a design states that its sheet no longer asks for, in one sentence; empty where there is nothing. Usable lengths were typed once;
 * now they follow from the lengths of screws and nuts.
 */
export const outOfUse = ({ numbers }: Design): string => {
  const named = (['A', 'C'] as const).filter((t) => `X_${t}` in numbers && !(`l_${t}` in numbers));
  return named.length === 0 ? '' : usableLengthStated(named);
};

/** A name as it is kept: one line, not too long; markup in it stays text. */
export const nameOf = (value: unknown): string =>
  typeof value === 'string' ? [...value.replace(/\s+/g, ' ').trim()].slice(0, LONGEST_NAME).join('') : '';

/** Why a text can't stand under this name, or undefined where it can: what a field of that name would say. */
const numberFault = (key: string, text: string): Bad | undefined => {
  const input = inputNamed(key);
  if (!input) return bad('design-number-unknown', { name: key });
  const read = readField(input, text, 'metric');
  return read.ok ? undefined : bad('design-number-unread', { name: key, why: read });
};

const inputNamed = (key: string): Input | undefined => {
  if (THREADS.includes(key)) return { kind: 'thread', name: key, label: key, start: '' };
  if (isChoice(key)) return { kind: 'choice', name: key, label: key, start: '' };
  if (isText(key)) return { kind: 'text', name: key, label: key, start: '' };
  if (!isSymbol(key)) return undefined;
  const { says, min, max } = symbolFact(key);
  return { kind: 'quantity', name: key, label: says, start: '', min, max };
};

/** What threads are called in the chapters. */
const THREADS: readonly string[] = ['A', 'C', 'thread'];

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
