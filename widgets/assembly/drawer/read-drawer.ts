/**
 * A drawer of parts, one a row, in the words of a part of an adjuster but without its place:
 *
 *   coupling nut 3/8-16 UNC, 28.575 mm, hexagon 14.3 mm, price 1.20, count 4
 *   adapter M10x1.5 external 20 mm, 3/8-16 UNC internal 20 mm blind
 *   standard metric
 *
 * Where a part may stand follows from its kind and its ends; an adapter and a stud may stand either way up. `standard metric`, `standard adapters` and
 * `standard inch` put in the standard hardware, `standard inch, price 0.30` at that price each. A row without a count is of parts one can buy: there are enough. A row that can't be
 * read is left out and told.
 */
import { type Bad, bad, good, type Result } from '../../engine/index.ts';
import { LONGEST_DRAWER } from '../../input/texts.ts';
import { KINDS } from '../adjuster/kinds.ts';
import type { Part, Role, ThreadEnd } from '../adjuster/part.ts';
import { calledHere, readPart } from '../adjuster/text.ts';
import { STANDARD_PARTS } from './standard-parts.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    'drawer-of-too-many-rows': { readonly rows: number; readonly most: number };
    'drawer-empty': Record<never, never>;
    'drawer-row-unread': { readonly row: string; readonly kinds: readonly string[] };
    'drawer-row-wrong': { readonly row: string; readonly because: Bad };
  }
}

/** A part of the drawer in one of the places where it may stand. */
export interface Placed {
  /** The row it comes from, counted from nought. */
  readonly row: number;
  /** How many of that row there are; without bound where it is not said. */
  readonly count: number;
  readonly part: Part;
  /** As the row calls it: a socket screw that stands on its head is a screw of an adjuster. */
  readonly called: string;
  /** What the row of an adjuster says of it there. */
  readonly text: string;
}

export interface Drawer {
  readonly rows: number;
  readonly placed: Readonly<Record<Role, readonly Placed[]>>;
  readonly wrong: readonly Bad[];
}

const MOST_ROWS = 600;
const ROLES = ['base', 'turned', 'carried'] as const;
const KINDS_KNOWN = [...new Set(ROLES.flatMap((role) => Object.keys(KINDS[role])))].sort((a, b) => b.length - a.length);

/** Heads that a row of an adjuster has no word for in that place: each is a screw there. */
const STANDS_AS: Readonly<Partial<Record<Role, readonly string[]>>> = {
  base: ['socket screw', 'flange screw'],
  turned: ['socket screw', 'flange screw'],
};
/** Turned parts that may stand on either end. */
const EITHER_WAY_UP = ['adapter', 'stud', 'coupling nut', 'double nut'];

const kindOf = (row: string): string | undefined => KINDS_KNOWN.find((k) => row.toLowerCase().startsWith(k));

const COUNT = /(?:^|,)\s*(?:count (\d{1,6})|(\d{1,6}) (?:off|×|x))\s*(?=,|$)/i;

const rowsOf = (text: string): string[] =>
  text
    .split(/\n|\|/)
    .map((row) => calledHere(row.replace(/\s+/g, ' ').trim()))
    .filter((row) => row !== '' && !row.startsWith('#'))
    .flatMap((row) => {
      const [, standard, price = ''] = /^standard (metric|inch|adapters)(, price [\d.,]+)?$/i.exec(row) ?? [];
      return standard === undefined
        ? [row]
        : STANDARD_PARTS[standard.toLowerCase() as keyof typeof STANDARD_PARTS].map((part) => `${part}${price}`);
    });

type PlacedParts = readonly (readonly [Role, Part, string])[];
/** What a row gives, by its words: rows are read again whenever another one changes. */
const known = new Map<string, Result<PlacedParts>>();
const REMEMBERED = 4 * MOST_ROWS;

const placesOf = (row: string): Result<PlacedParts> => {
  const before = known.get(row);
  if (before) return before;
  const read = readPlaces(row);
  if (known.size >= REMEMBERED) known.clear();
  known.set(row, read);
  return read;
};

const readPlaces = (row: string): Result<PlacedParts> => {
  const kind = kindOf(row);
  if (kind === undefined) return bad('drawer-row-unread', { row, kinds: KINDS_KNOWN });
  const places: [Role, Part, string][] = [];
  let why: Bad | undefined;
  for (const role of ROLES)
    for (const text of textsFor(role, kind, row)) {
      const part = readPart(role, text);
      if (part.ok) places.push([role, part.value, text]);
      // Of several refusals the first that speaks of the part itself: that it does not belong there, or has a thread too many, is no fault.
      else if (why === undefined || why.code === 'part-wants-threads') why = part;
    }
  return places.length > 0 || why === undefined
    ? good(places)
    : bad('drawer-row-wrong', { row, because: ofNoPlace(why) });
};

/** A drawer has no base: what is wrong with a thread is told without the place that was tried first. */
const ofNoPlace = (why: Bad): Bad =>
  why.code === 'part-thread-unread' ? (why as Bad<'part-thread-unread'>).values.because : why;

/** How a row reads in a place: as it is, as a screw, upside down; none where its kind does not stand there. */
const textsFor = (role: Role, kind: string, row: string): string[] => {
  const rest = row.slice(kind.length);
  if (STANDS_AS[role]?.includes(kind)) {
    // Head down, the head is what it stands on.
    const head = role === 'base' ? rest.replace(/\bhead\b/i, 'height') : rest;
    return [`screw${head}`];
  }
  if (!Object.hasOwn(KINDS[role], kind)) return [];
  if (role !== 'turned' || !EITHER_WAY_UP.includes(kind)) return [row];
  const [first, second, ...others] = rest.split(/,\s+/);
  // A word of its own, such as “blind”, speaks of the upper thread, and would speak of the other one.
  if (second === undefined || others.some((phrase) => /^(?:blind|through|thread )/i.test(phrase.trim()))) return [row];
  return [row, `${kind} ${[second, (first ?? '').trim(), ...others].join(', ')}`];
};

/** Reads row by row, so that a long drawer can be read in slices. */
export function* readDrawer(text: string): Generator<void, Result<Drawer>, void> {
  const rows = rowsOf(text);
  if (!(rows.length <= MOST_ROWS && text.length <= LONGEST_DRAWER))
    return bad('drawer-of-too-many-rows', { rows: rows.length, most: MOST_ROWS });
  if (rows.length === 0) return bad('drawer-empty', {});
  const placed: Record<Role, Placed[]> = { base: [], turned: [], carried: [] };
  const wrong: Bad[] = [];
  for (const [i, typed] of rows.entries()) {
    const [, counted, off] = COUNT.exec(typed) ?? [];
    const number = counted ?? off;
    const read = placesOf(typed.replace(COUNT, '').trim());
    if (!read.ok) wrong.push(read);
    // None of it is left.
    else if (number === undefined || Number(number) > 0)
      for (const [role, part, words] of read.value)
        placed[role].push({
          row: i,
          count: number === undefined ? Number.POSITIVE_INFINITY : Number(number),
          part,
          called: kindOf(typed) ?? part.kind,
          text: words,
        });
    yield;
  }
  const first = wrong[0];
  if (first !== undefined && wrong.length === rows.length) return first;
  return good({ rows: rows.length, placed, wrong });
}

/** Two ends make a joint where one is a screw and the other a nut of the same thread. */
export const threadKey = ({ thread: { d, P, N, h }, gender }: ThreadEnd, of: 'own' | 'mate'): string => {
  const wanted = (gender === 'external') === (of === 'own') ? 'external' : 'internal';
  return `${d.toFixed(5)} ${P.toFixed(7)} ${N} ${h} ${wanted}`;
};
