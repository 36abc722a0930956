/**
 * The reader's designs as a file, and what of such a file is taken.
 *
 *   { "format": "differential-screw-designs", "version": 1,
 *     "designs": [ { "name": "Foot", "numbers": { "A": "M10×1.5", "C": "3/8-16 UNC", "arrangement": "in line", "l_A": "20 mm" } } ] }
 *
 * A number is kept as text with its unit, under the name it has in the chapters: a thread's letter, a symbol of the
 * glossary, a choice or a list. It goes through the same readers as typing does, so a file can hold nothing that a
 * field would refuse. Unknown names are left out and counted; a file of another kind or of a newer version is refused.
 */
import { bad, good, isSymbol, quoted, type Result, symbolFact } from '../engine/index.ts';
import { isChoice } from '../input/choices.ts';
import { numeral } from '../input/format.ts';
import { isText } from '../input/texts.ts';
import { presentNumber } from './former-names.ts';
import { type Input, readInput } from './numbers.ts';

export const DESIGN_FORMAT = 'differential-screw-designs';
export const DESIGN_VERSION = 1;
export const MOST_DESIGNS = 200;
const LONGEST_NAME = 60;
/** No list a field takes is longer; a larger file is not one of designs. */
const LONGEST_FILE = 2_000_000;

export interface Design {
  readonly name: string;
  /** Texts by name, each good for the field of that name. */
  readonly numbers: Readonly<Record<string, string>>;
}

export interface ReadDesigns {
  readonly designs: readonly Design[];
  /** What was left out, in sentences. */
  readonly notes: readonly string[];
}

export const writeDesigns = (designs: readonly Design[]): string =>
  `${JSON.stringify({ format: DESIGN_FORMAT, version: DESIGN_VERSION, designs }, null, 2)}\n`;

export const readDesigns = (text: string): Result<ReadDesigns> => {
  if (!(text.length <= LONGEST_FILE))
    return bad(
      `The file has ${text.length} characters; a file of designs has at most ${LONGEST_FILE}. Choose the file that was exported here.`,
    );
  let file: unknown;
  try {
    file = JSON.parse(text);
  } catch {
    return bad(
      `Read ${quoted(text)}, which is not JSON or is cut off; choose a file that was exported here and is whole.`,
    );
  }
  if (!isRecord(file) || file.format !== DESIGN_FORMAT)
    return bad(
      `This is JSON of another kind; a file of designs says "format": "${DESIGN_FORMAT}". Choose one that was exported here.`,
    );
  if (!(typeof file.version === 'number' && file.version >= 1 && file.version <= DESIGN_VERSION))
    return bad(
      `The file says ${Number.isFinite(file.version) || typeof file.version === 'string' ? `version ${(typeof file.version === 'number' ? numeral(file.version) : String(file.version)).slice(0, 20)}` : 'no version'}; this notebook reads versions up to ${DESIGN_VERSION}. Open it in the newer notebook and export it from there, or update this one.`,
    );
  if (!Array.isArray(file.designs)) return bad('The file holds no list of designs; choose one that was exported here.');
  if (!(file.designs.length <= MOST_DESIGNS))
    return bad(`The file holds ${file.designs.length} designs; at most ${MOST_DESIGNS} are kept. Take some out.`);
  const designs: Design[] = [];
  const notes: string[] = [];
  for (const [i, entry] of file.designs.entries()) {
    const read = readDesign(entry, i + 1);
    if (!read.ok) {
      notes.push(read.reason);
      continue;
    }
    designs.push(read.value.design);
    if (read.value.left.length > 0)
      notes.push(
        `Of “${read.value.design.name}” ${read.value.left.length === 1 ? 'one number was' : `${read.value.left.length} numbers were`} left out: ${read.value.left.join(' ')}`,
      );
  }
  return good({ designs, notes });
};

const readDesign = (entry: unknown, place: number): Result<{ design: Design; left: string[] }> => {
  if (!isRecord(entry) || !isRecord(entry.numbers)) return bad(`Design ${place} was left out: it has no numbers.`);
  const name = nameOf(entry.name);
  if (name === '') return bad(`Design ${place} was left out: it has no name.`);
  const numbers: Record<string, string> = {};
  const left: string[] = [];
  for (const [written, kept] of Object.entries(entry.numbers)) {
    const [key, value] = typeof kept === 'string' ? presentNumber(written, kept) : [written, kept];
    const fault =
      typeof value === 'string' ? numberFault(key, value) : `${key}: a number is kept as text with its unit.`;
    if (fault === undefined) numbers[key] = String(value);
    else left.push(fault);
  }
  return good({ design: { name, numbers }, left });
};

/**
 * What a design states that its sheet no longer asks for, in one sentence; empty where there is nothing. Usable lengths were typed once;
 * now they follow from the lengths of screws and nuts.
 */
export const outOfUse = ({ numbers }: Design): string => {
  const named = (['A', 'C'] as const).filter((t) => `X_${t}` in numbers && !(`l_${t}` in numbers));
  return named.length === 0
    ? ''
    : `It states ${named.map((t) => `X_${t}`).join(' and ')}, usable length of thread, which the design sheet works out and does not take: type the lengths of ${named.length === 1 ? `screw and nut of thread ${named[0]}` : 'both screws and nuts'} there and keep the design again.`;
};

/** A name as it is kept: one line, not too long; markup in it stays text. */
export const nameOf = (value: unknown): string =>
  typeof value === 'string' ? [...value.replace(/\s+/g, ' ').trim()].slice(0, LONGEST_NAME).join('') : '';

/** Why a text can't stand under this name, or undefined where it can: what a field of that name would say. */
const numberFault = (key: string, text: string): string | undefined => {
  const input = inputNamed(key);
  if (!input) return `${quoted(key)} is not a number of this notebook.`;
  const read = readInput(input, text, 'metric');
  return read.ok ? undefined : `${key}: ${read.reason}`;
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
