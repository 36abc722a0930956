/**
 * The adjusters that chapters name: written once, in `chapters/adjusters.md`, and read from there by every chapter. A line `adjuster foot` in a
 * block stands for its threads, `adjuster foot: A fit, C fit` for these with the classes of their ends, `adjuster foot: A, C, l_A` for these of its
 * numbers, `adjuster = foot` for the whole description; `adjuster = none` is a field that may be left without parts.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Adjuster } from '../assembly/adjuster/adjuster.ts';
import { numbersOfAdjuster } from '../assembly/adjuster/as-numbers.ts';
import { readAdjuster } from '../assembly/adjuster/text.ts';
import { bad, good, type Result } from '../engine/index.ts';
import { bareDesignation } from '../input/designation-sides.ts';
import { NO_PARTS } from '../input/texts.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'adjuster-unknown': { readonly name: string; readonly known: readonly string[] };
    'adjuster-has-not': { readonly name: string; readonly number: string; readonly has: readonly string[] };
  }
}

/** Descriptions by name. */
export type Adjusters = ReadonlyMap<string, string>;
export const NO_ADJUSTERS: Adjusters = new Map();

const FILE = 'adjusters.md';

/** What the folder of chapters has of them; a folder without the file has none. */
export const adjustersIn = (folder: string): { readonly text: string; readonly adjusters: Adjusters } => {
  let text = '';
  try {
    text = readFileSync(join(folder, FILE), 'utf8');
  } catch {
    // A book may do without.
  }
  const blocks = text.matchAll(/^```adjuster ([a-z][a-z0-9-]*)\n([\s\S]*?)^```$/gm);
  return { text, adjusters: new Map([...blocks].map(([, name = '', body = '']) => [name, body.trim()])) };
};

const described = (name: string, adjusters: Adjusters): Result<string> => {
  const text = adjusters.get(name);
  return text === undefined ? bad('adjuster-unknown', { name, known: [...adjusters.keys()] }) : good(text);
};

const NAMES = /^adjuster ([a-z][a-z0-9-]*)(?:\s*:\s*([\w, ]+))?$/;

/** Whether a line stands for numbers of an adjuster. */
export const namesAdjuster = (line: string): boolean => NAMES.test(line);

/** The lines of numbers that a line which names an adjuster stands for; the line itself where it names none. */
export const withAdjuster = (line: string, adjusters: Adjusters): Result<readonly string[]> => {
  const whole = /^adjuster\s*=\s*([a-z][a-z0-9-]*)\s*$/.exec(line)?.[1];
  if (whole === NO_PARTS) return good([line]);
  if (whole !== undefined) {
    const text = described(whole, adjusters);
    return text.ok ? good([`adjuster = ${text.value.replaceAll('\n', ' | ')}`]) : text;
  }
  const [, name, list] = NAMES.exec(line) ?? [];
  if (name === undefined) return good([line]);
  const text = described(name, adjusters);
  if (!text.ok) return text;
  const read = readAdjuster(text.value);
  if (!read.ok) return read;
  const numbers = { ...numbersOfAdjuster(read.value), ...threadsOf(read.value) };
  const lines: string[] = [];
  for (const number of (list ?? 'A, C').split(',').map((n) => n.trim())) {
    const value = numbers[number];
    if (value === undefined) return bad('adjuster-has-not', { name, number, has: Object.keys(numbers) });
    // As an author types it; pages write it out.
    const [, thread] = /^([AC])(?: fit)?$/.exec(number) ?? [];
    lines.push(thread === undefined ? `${number} = ${value}` : `thread ${thread} = ${value.replaceAll('×', 'x')}`);
  }
  return good(lines);
};

/** Most chapters speak of a thread and not of its limits; the few that do ask for its fit. */
const threadsOf = ({ A, C }: Adjuster): Readonly<Record<string, string>> => ({
  A: bareDesignation(A.thread),
  'A fit': A.thread.designation,
  ...(C && { C: bareDesignation(C.thread), 'C fit': C.thread.designation }),
});
