/**
 * An adjuster in words, a part a line, and back:
 *
 *   adjuster riser
 *   base    = coupling nut 3/8-16 UNC, 28.575 mm
 *   turned  = adapter 3/8-16 UNC external 15 mm, M10x1.5 internal 15 mm blind, body 18 mm, hexagon 17 mm
 *   carried = socket screw M10x1.5, thread 20 mm, head 10 mm
 *   lock    = springs
 *   springs = 2 between base and carried, 8 N, 0.5 N/mm, at 15 mm
 *             or from their drawing, by its shape (spring-row.ts)
 *   tip     = ball 8.334 mm in 8 mm hexagon
 *   divider = hexagon
 *   wanted  = 15 µm
 *   keep    = 1 diameter
 *   assembled = both at mid-range
 *
 * A thread may say its class or its measured pitch diameter (`M10x1.5-6g`, `M10x1.5 d2 8.95`), a part its coat (`coat 5 µm`), material, price and
 * count. Rows may also be parted by bars, as a chapter or an address has them on one line. Base and turned part must be there.
 */
import { bad, good, outOfBounds, type Result } from '../../engine/index.ts';
import { CHOICES } from '../../input/choices.ts';
import { readThread } from '../../input/designation.ts';
import { measuredOf, takeMeasured } from '../../input/designation-measured.ts';
import { readNumber, readQuantity } from '../../input/quantity.ts';
import { LONGEST_ADJUSTER, NO_PARTS } from '../../input/texts.ts';
import { type Adjuster, assemble, type Description, type Lock, type Tip, type Where } from './adjuster.ts';
import { KINDS, partOf, type Stated, type StatedThread } from './kinds.ts';
import { DENSITIES, isOpenAbove, type MaterialName, type Part, type Role } from './part.ts';
import { readSprings } from './spring-row.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    'adjuster-row-unread': { readonly row: string; readonly keys: readonly string[] };
    'adjuster-row-twice': { readonly key: string };
    'adjuster-part-missing': { readonly role: 'base' | 'turned' };
    'part-kind-unread': { readonly role: Role; readonly text: string; readonly kinds: readonly string[] };
    'part-phrase-unread': { readonly role: Role; readonly phrase: string };
    'part-thread-unread': {
      readonly role: Role;
      readonly phrase: string;
      readonly because: import('../../engine/index.ts').Bad;
    };
    'part-length-unread': { readonly role: Role; readonly phrase: string };
    'part-word-unread': { readonly role: Role; readonly phrase: string; readonly materials: readonly string[] };
    'part-length-outside': { readonly role: Role; readonly phrase: string; readonly most: number };
    'part-coat-outside': { readonly role: Role; readonly phrase: string; readonly most: number };
    'part-count-outside': { readonly role: Role; readonly phrase: string };
    'row-phrase-unread': { readonly key: string; readonly phrase: string; readonly like: string };
    'springs-in-two-rows': { readonly phrase: string };
    'divisions-outside': { readonly text: string };
  }
}

const KEYS = ['base', 'turned', 'carried', 'lock', 'springs', 'tip', 'divider', 'wanted', 'keep', 'assembled'] as const;
type Key = (typeof KEYS)[number];

/** Rows of the text: one a line, or parted by bars. */
const rowsOf = (text: string): string[] =>
  text
    .split(/\n|\|/)
    .map((row) => row.replace(/\s+/g, ' ').trim())
    .filter((row) => row !== '' && !row.startsWith('#'));

/** The text in its one tidy form, rows one a line. */
export const tidyAdjuster = (text: string): string =>
  rowsOf(text)
    .map((row) => row.replace(/^(\w+) ?[=:] ?/, (_, key: string) => `${key.toLowerCase()} = `))
    .join('\n');

/** Characters of a name. */
const LONGEST_NAME = 40;
const NAME_ROW = new RegExp(`^adjuster (.{1,${LONGEST_NAME}})$`, 'i');

/** The text under this name, where it has none of its own; as it was where no parts are stated or there is no room. */
export const withName = (text: string, name: string): string => {
  const called = [...name.replace(/[|\s]+/g, ' ').trim()].slice(0, LONGEST_NAME).join('').slice(0, LONGEST_NAME).trim();
  if (text === NO_PARTS || called === '' || rowsOf(text).some((row) => NAME_ROW.test(row))) return text;
  const named = `adjuster ${called}\n${text}`;
  return named.length <= LONGEST_ADJUSTER ? named : text;
};

/** The text with this row of springs in place of the one it has. */
export const withSprings = (text: string, row: string): string => {
  // Springs that the row of the lock speaks of are those that go.
  const rows = tidyAdjuster(text)
    .split('\n')
    .map((line) => line.replace(/^lock = springs\b.*/i, 'lock = springs'));
  const at = rows.findIndex((line) => /^springs =/.test(line));
  return (at < 0 ? [...rows, row] : rows.map((line, i) => (i === at ? row : line))).join('\n');
};

interface Kept {
  readonly text: string;
  readonly result: Result<Adjuster>;
}
/** The last few texts read: fields, notes and figures of a page ask for the same ones again on every frame. */
const lastRead: Kept[] = [];
const REMEMBERED = 8;

export const readAdjuster = (text: string): Result<Adjuster> => {
  const known = lastRead.find((k) => k.text === text);
  if (known) return known.result;
  const described = describe(text);
  const result = described.ok ? assemble(described.value) : described;
  lastRead.unshift({ text, result });
  lastRead.length = Math.min(lastRead.length, REMEMBERED);
  return result;
};

const describe = (text: string): Result<Description> => {
  if (!(text.length <= LONGEST_ADJUSTER)) return bad('adjuster-too-long', { text, most: LONGEST_ADJUSTER });
  const rows = new Map<Key, string>();
  let name = '';
  for (const row of rowsOf(text)) {
    const [, called] = NAME_ROW.exec(row) ?? [];
    if (called !== undefined) {
      name = called;
      continue;
    }
    const [, typed = '', rest = ''] = /^(\w+) ?[=:] ?(.*)$/.exec(row) ?? [];
    const key = typed.toLowerCase();
    if (!isKey(key)) return bad('adjuster-row-unread', { row, keys: KEYS });
    if (rows.has(key)) return bad('adjuster-row-twice', { key }, key);
    rows.set(key, rest);
  }
  const parts: Partial<Record<Role, Part>> = {};
  for (const role of ['base', 'turned', 'carried'] as const) {
    const row = rows.get(role);
    if (row === undefined) {
      if (role !== 'carried') return bad('adjuster-part-missing', { role }, role);
      continue;
    }
    const part = readPart(role, row);
    if (!part.ok) return { ...part, field: role };
    parts[role] = part.value;
  }
  const rest = readRows(rows, parts);
  if (!rest.ok) return rest;
  return good({ name, base: parts.base as Part, turned: parts.turned as Part, carried: parts.carried, ...rest.value });
};

const isKey = (key: string): key is Key => (KEYS as readonly string[]).includes(key);

/** Longest first, so that a coupling nut is not a nut. */
const kindsOf = (role: Role): string[] => Object.keys(KINDS[role]).sort((a, b) => b.length - a.length);

const LENGTH = /(?:^| )([\d.,/ -]*\d ?(?:mm|millimet(?:re|er)s?|cm|µm|in(?:ch(?:es)?)?|thou|"|″))$/i;
/** A number with no unit or with one that is none of length: meant as a length, since a thread has a pitch behind its size. */
const MEANT_AS_LENGTH = /^[\d.,/ -]*\d ?[a-zµ]*$/i;
const WORDS_ALONE = /^[a-z][a-z -]*$/i;
const NAMED = /^(?:thread|body|head|neck|hexagon|width|height|price|count)\b/i;
const NAMED_SIZE = /^[a-z]+ .*\d/i;
const MOST_LENGTH = 1000;

/** Parts of which a bare length is the height; of the others it is the length of the thread before it. */
const HEIGHT_BARE: Readonly<Record<Role, readonly string[]>> = {
  base: ['tapped block', 'coupling nut', 'nut'],
  turned: ['coupling nut', 'double nut'],
  carried: ['cap', 'nut', 'coupling nut'],
};

/** Thicker than any plating; the symbol of a coat has the same bound. */
const THICKEST_COAT = 0.5;
const LIMITS_ALONE = /^(?:class )?(?:\d[a-z]){1,2}$|^d2[ =]/i;

/** Other names that the trade has for a part and its ends, by the ones of these rows; “to” stands between two threads. */
export const calledHere = (row: string): string =>
  row
    .replace(/^(?:hex(?:agon)? )?socket (?:head )?(?:cap )?(?:screw|bolt)\b|^cap (?:screw|bolt)\b/i, 'socket screw')
    .replace(/^flange bolt\b/i, 'flange screw')
    .replace(/^(?:hex(?:agon)? )?(?:head )?bolt\b|^hex(?:agon)? (?:head )?(?:cap )?screw\b/i, 'screw')
    .replace(/^(?:thread )?adaptor\b/i, 'adapter')
    .replace(/\bmale\b/gi, 'external')
    .replace(/\bfemale\b/gi, 'internal')
    .replace(/,? to (?=M\d|#|\d+(?:\/\d+)?-\d)/i, ', ');

/** A hexagon by the width across its flats. */
const acrossFlats = (phrase: string): string =>
  phrase
    .replace(/^(?:width )?across (?:the )?flats\b/i, 'hexagon')
    .replace(/^(.*\d.*?) (?:width )?across (?:the )?flats$/i, 'hexagon $1');

export const readPart = (role: Role, written: string): Result<Part> => {
  const row = calledHere(written);
  const kinds = kindsOf(role);
  const kind = kinds.find((k) => row.toLowerCase().startsWith(k));
  if (kind === undefined) return bad('part-kind-unread', { role, text: row, kinds });
  const phrases = row
    .slice(kind.length)
    .split(/,\s+|,$|,(?=[a-z#])|;/i)
    .map((p) => p.trim())
    .filter((p) => p !== '')
    .map(acrossFlats)
    .flatMap(parted);
  const threads: StatedThread[] = [];
  const sizes: Partial<
    Record<'height' | 'body' | 'head' | 'neck' | 'hexagon' | 'width' | 'price' | 'thread' | 'coat', number>
  > = {};
  let grounded: boolean | undefined;
  let blind = false;
  let material: MaterialName = 'steel';
  let count = 1;
  for (const [i, phrase] of phrases.entries()) {
    const word = phrase.toLowerCase();
    const [, sized, amount = ''] = /^(thread|body|head|neck|hexagon|width|height) (.+)$/i.exec(phrase) ?? [];
    const [, price] = /^price ([\d.,]+)$/i.exec(phrase) ?? [];
    const [, counted, off] = /^(?:count (\d{1,3})|(\d{1,3}) (?:off|×|x))$/i.exec(phrase) ?? [];
    const number = counted ?? off;
    const [, coat] = /^coat (.+)$/i.exec(phrase) ?? [];
    const last = threads.at(-1);
    if (i > 0 && sized !== undefined) {
      const length = lengthOf(role, amount);
      if (!length.ok) return length;
      sizes[sized.toLowerCase() as 'body'] = length.value;
    } else if (price !== undefined) {
      const read = readNumber(price);
      if (!read.ok) return bad('part-phrase-unread', { role, phrase });
      sizes.price = read.value;
    } else if (coat !== undefined) {
      const read = coat.length <= 30 ? readQuantity(coat, 'mm', 'µm') : undefined;
      const thickness = read?.ok ? read.value.value : Number.NaN;
      if (!(thickness >= 0 && thickness <= THICKEST_COAT))
        return bad('part-coat-outside', { role, phrase, most: THICKEST_COAT });
      sizes.coat = thickness;
    } else if (i > 0 && number !== undefined) {
      if (!(Number(number) >= 1)) return bad('part-count-outside', { role, phrase });
      count = Number(number);
    } else if (last && LIMITS_ALONE.test(phrase)) {
      // A class or a measured diameter behind a comma is of the thread before it.
      const again = readThread(`${last.thread.designation} ${phrase.replace(/^class /i, '')}`);
      if (!again.ok) return bad('part-thread-unread', { role, phrase, because: again });
      threads[threads.length - 1] = { ...last, thread: again.value };
    } else if (word === 'blind') blind = true;
    else if (word === 'through') blind = false;
    else if (word === 'on the ground') grounded = true;
    else if (word === 'off the ground') grounded = false;
    else if (Object.hasOwn(DENSITIES, word)) material = word as MaterialName;
    else if (i > 0 && isLength(phrase)) {
      const length = lengthOf(role, phrase);
      if (!length.ok) return length;
      if (HEIGHT_BARE[role].includes(kind)) sizes.height = length.value;
      else if (last && last.length === undefined) threads[threads.length - 1] = { ...last, length: length.value };
      else return bad('part-phrase-unread', { role, phrase });
    } else {
      const thread = readStatedThread(role, phrase);
      if (!thread.ok) {
        if (i > 0 && MEANT_AS_LENGTH.test(phrase)) return bad('part-length-unread', { role, phrase });
        if (NAMED.test(phrase)) return bad('part-phrase-unread', { role, phrase });
        if (WORDS_ALONE.test(phrase))
          return bad('part-word-unread', { role, phrase, materials: Object.keys(DENSITIES) });
        return NAMED_SIZE.test(phrase) ? bad('part-phrase-unread', { role, phrase }) : thread;
      }
      threads.push(thread.value);
    }
  }
  const { thread, ...others } = sizes;
  // `thread 20 mm` and `blind` as phrases of their own speak of the one thread there is, or of the upper one.
  const last = threads.at(-1);
  if (last) {
    if (thread !== undefined) threads[threads.length - 1] = { ...last, length: thread };
    if (blind) threads[threads.length - 1] = { ...(threads.at(-1) as StatedThread), blind: true };
  }
  const stated: Stated = {
    role,
    kind,
    threads,
    material,
    count,
    ...others,
    ...(grounded !== undefined && { grounded }),
  };
  return partOf(stated);
};

/** A comma before a digit is a decimal mark, but in `M10x1.5,20 mm`, which is no thread, it parts two phrases. */
const parted = (phrase: string): readonly string[] => {
  const at = phrase.lastIndexOf(',');
  const [before, after] = [phrase.slice(0, at), phrase.slice(at + 1)];
  return at > 0 && isLength(after) && readThread(before).ok && !readThread(phrase).ok ? [before, after] : [phrase];
};

const isLength = (text: string): boolean => LENGTH.test(text) && readQuantity(text, 'mm', 'mm').ok;

const lengthOf = (role: Role, text: string): Result<number> => {
  const read = text.length <= 30 ? readQuantity(text, 'mm', 'mm') : undefined;
  if (!read?.ok) return bad('part-phrase-unread', { role, phrase: text });
  return read.value.value > 0 && read.value.value <= MOST_LENGTH
    ? good(read.value.value)
    : bad('part-length-outside', { role, phrase: text, most: MOST_LENGTH });
};

/** A metric screw as it is ordered, its length bare behind the thread: M12 20, M12x20, M12x1.75x20 (ISO 4762 and ISO 4017 name them so, in mm). */
const METRIC_BY_LENGTH = /^(M(\d+(?:\.\d+)?)(?: ?[x×] ?\d+(?:\.\d+)?)?) ?[x× ] ?(\d+(?:\.\d+)?)$/i;
const readStatedThread = (role: Role, phrase: string): Result<StatedThread> => {
  // Measured diameters stand behind the thread, before or behind its length.
  const { rest, found } = takeMeasured(phrase);
  let text = rest;
  const take = (pattern: RegExp): string | undefined => {
    const found = pattern.exec(text);
    if (!found) return undefined;
    text = text.slice(0, found.index).trim();
    return found[1];
  };
  const ending = take(/ (blind|through)$/i)?.toLowerCase();
  // A free thread ends in a length of its own: 12 mm × 1.1 mm.
  const typed = readThread(text).ok ? undefined : take(/ (\d[\d.,/]* ?(?:mm|in|inch|"))$/i);
  const gender = take(/ (external|internal)$/i)?.toLowerCase();
  const [, ordered = '', d = '', behind = ''] = METRIC_BY_LENGTH.exec(text) ?? [];
  // No pitch of ISO 261 comes near half the diameter.
  const short = typed === undefined && !readThread(text).ok && Number(behind) > Number(d) / 2 ? behind : undefined;
  if (short !== undefined) text = ordered;
  const bare = readThread(text);
  const thread = bare.ok && found.length > 0 ? measuredOf(bare.value, found, phrase) : bare;
  if (!thread.ok) return bad('part-thread-unread', { role, phrase: text, because: thread });
  const stated = typed ?? (short === undefined ? undefined : `${short} mm`);
  const length = stated === undefined ? undefined : lengthOf(role, stated);
  if (length && !length.ok) return length;
  return good({
    thread: thread.value,
    gender: gender as StatedThread['gender'],
    length: length?.value,
    blind: ending === undefined ? undefined : ending === 'blind',
  });
};

type Rest = Omit<Description, 'name' | 'base' | 'turned' | 'carried'>;

const readRows = (rows: ReadonlyMap<Key, string>, parts: Partial<Record<Role, Part>>): Result<Rest> => {
  const inLock = springsIn(rows.get('lock'));
  if (inLock !== undefined && rows.has('springs')) return bad('springs-in-two-rows', { phrase: inLock }, 'lock');
  const springs = readSprings(rows.get('springs') ?? inLock);
  if (!springs.ok) return springs;
  const lock = readLock(rows.get('lock'), springs.value !== undefined);
  if (!lock.ok) return lock;
  const tip = readTip(rows.get('tip'), parts.carried ?? parts.turned);
  if (!tip.ok) return tip;
  const divider = readDivider(rows.get('divider'));
  if (!divider.ok) return divider;
  const wanted = readWanted(rows.get('wanted'));
  if (!wanted.ok) return wanted;
  const keep = readKeep(rows.get('keep'));
  if (!keep.ok) return keep;
  const assembled = readAssembled(rows.get('assembled'));
  if (!assembled.ok) return assembled;
  return good({
    lock: lock.value,
    springs: springs.value,
    tip: tip.value,
    ...divider.value,
    wantedStep: wanted.value,
    keptDiameters: keep.value,
    assembled: assembled.value,
  });
};

const unread = (key: Key, phrase: string, like: string) => bad('row-phrase-unread', { key, phrase, like }, key);
const mmIn = (text: string): number | undefined => {
  const read = readQuantity(text, 'mm', 'mm');
  return read.ok && read.value.value >= 0 && read.value.value <= MOST_LENGTH ? read.value.value : undefined;
};

const LIKE = {
  lock: 'springs; or key at 20 mm, clearance 0.1 mm, steel post 8 mm, modulus 2000 MPa; or key at 12 mm, stiffness 5000 N·mm; or none',
  tip: 'ball 6.35 mm in 6 mm hexagon, stands 3 mm, pressed with 2000 N; or round, flat, cone',
  divider: 'hexagon, square, twelve points or knob 60',
  wanted: '15 µm',
  keep: '1 diameter',
  assembled: 'both at mid-range, or A 2 turns out, C 1.5 turns out',
} as const;

/** `springs, 2 at 15 mm` on the row of the lock speaks of the springs. */
const springsIn = (row: string | undefined): string | undefined => /^springs,? (.+)$/i.exec(row ?? '')?.[1];

/** Left out, springs that are stated lock the carried part, and else a post is assumed. */
const readLock = (row: string | undefined, stated: boolean): Result<Lock> => {
  if (row === undefined) return good({ kind: stated ? 'springs' : 'assumed' });
  if (/^none$/i.test(row)) return good({ kind: 'none' });
  if (/^springs\b/i.test(row)) return good({ kind: 'springs' });
  const [, kind = '', radius, rest = ''] = /^(key|post),? at ([^,]+)((?:, [^,]+)*)$/i.exec(row) ?? [];
  const r = mmIn(radius ?? '');
  const said = new Map<string, string>();
  for (const phrase of rest.split(', ').slice(1)) {
    const [, name = '', amount = ''] = /^(clearance|steel post|post|modulus|stiffness) (.+)$/i.exec(phrase) ?? [];
    const key = name.toLowerCase();
    if (key === '' || said.has(key)) return unread('lock', phrase, LIKE.lock);
    said.set(key, amount);
  }
  if (said.has('post') && said.has('steel post')) return unread('lock', row, LIKE.lock);
  const clearance = mmIn(said.get('clearance') ?? '0 mm');
  const thick = said.get('steel post') ?? said.get('post');
  const D = thick === undefined ? undefined : mmIn(thick);
  const give = readQuantity(said.get('stiffness') ?? '', 'N·mm', 'N·mm');
  const modulus = readQuantity(said.get('modulus') ?? '', 'MPa', 'MPa');
  if (
    r === undefined ||
    clearance === undefined ||
    (thick !== undefined && !(D !== undefined && D > 0 && D / 2 < r)) ||
    (said.has('stiffness') && !(give.ok && !outOfBounds('kappa', give.value.value))) ||
    (said.has('modulus') && !(modulus.ok && !outOfBounds('E_f', modulus.value.value)))
  )
    return unread('lock', row, LIKE.lock);
  return good({
    kind: kind.toLowerCase() as 'key' | 'post',
    radius: r,
    clearance,
    ...(give.ok && { stiffness: give.value.value }),
    ...(D !== undefined && { thick: D }),
    ...(said.has('steel post') && { steel: true as const }),
    ...(modulus.ok && { modulus: modulus.value.value }),
  });
};

const ASSUMED = { assumed: true } as const;

/** The tip of a part that states none: round, or the rim of a part that is bored through. */
export const tipUnstated = (part: Part | undefined): Tip =>
  part && isOpenAbove(part)
    ? { kind: 'flat', stands: 0 }
    : { kind: 'round', stands: 0.25 * (part?.below?.thread.d ?? 0), assumed: true };

const readTip = (row: string | undefined, part: Part | undefined): Result<Tip> => {
  const d = part?.below?.thread.d ?? 0;
  if (row === undefined) return good(tipUnstated(part));
  const [, size, hexagon, stands, with_] =
    /^ball ([^,]+?)(?: in (.+?) hexagon)?(?:, stands ([^,]+))?(?:, pressed with (.+))?$/i.exec(row) ?? [];
  if (size !== undefined) {
    const [diameter, across] = [mmIn(size), hexagon === undefined ? undefined : mmIn(hexagon)];
    const p = stands === undefined ? (diameter ?? 0) / 2 : mmIn(stands);
    if (!diameter || (hexagon !== undefined && !across) || p === undefined || p > diameter)
      return unread('tip', row, LIKE.tip);
    const pressed = with_ === undefined ? undefined : readQuantity(with_, 'N', 'N');
    if (pressed && !(pressed.ok && pressed.value.value > 0)) return unread('tip', row, LIKE.tip);
    return good({
      kind: 'ball',
      diameter,
      hexagon: across,
      stands: p,
      ...(pressed?.ok && { pressed: pressed.value.value }),
      ...(stands === undefined && ASSUMED),
    });
  }
  const [, kind, out] = /^(round|flat|cone)(?:, stands (.+))?$/i.exec(row) ?? [];
  const p = out === undefined ? (kind === 'flat' ? 0 : 0.25 * d) : mmIn(out);
  return kind === undefined || p === undefined
    ? unread('tip', row, LIKE.tip)
    : good({ kind: kind.toLowerCase() as 'round', stands: p, ...(out === undefined && p > 0 && ASSUMED) });
};

const readDivider = (row = 'hexagon'): Result<Pick<Description, 'divider' | 'divisions'>> => {
  const word = row.toLowerCase();
  if (word === 'hexagon' || word === 'square' || word === 'twelve points')
    return good({ divider: word, divisions: undefined });
  const [, marks] = /^knob (?:of )?(\d{1,5})(?: divisions)?$/.exec(word) ?? [];
  if (marks === undefined) return unread('divider', row, LIKE.divider);
  const divisions = Number(marks);
  return divisions >= 2 && divisions <= 10_000
    ? good({ divider: 'knob', divisions })
    : bad('divisions-outside', { text: marks }, 'divider');
};

const readWanted = (row: string | undefined): Result<number | undefined> => {
  if (row === undefined) return good(undefined);
  const read = readQuantity(row, 'mm', 'µm');
  return read.ok && !outOfBounds('s_w', read.value.value) ? good(read.value.value) : unread('wanted', row, LIKE.wanted);
};

const readKeep = (row: string | undefined): Result<number> => {
  if (row === undefined) return good(1);
  const [, times] = /^([\d.,/]+) ?(?:d|diameters?)$/i.exec(row) ?? [];
  const number = times === undefined ? undefined : readNumber(times);
  if (number?.ok && !outOfBounds('q_e', number.value)) return good(number.value);
  return unread('keep', row, LIKE.keep);
};

const readAssembled = (row = 'both at mid-range'): Result<{ readonly A: Where; readonly C: Where }> => {
  const word = row.toLowerCase();
  const [mid, home, mixed] = CHOICES.assembly.options;
  if (word === mid.toLowerCase()) return good({ A: 'middle', C: 'middle' });
  if (word === home.toLowerCase()) return good({ A: 'home', C: 'home' });
  if (word === mixed.toLowerCase()) return good({ A: 'middle', C: 'home' });
  const [, a, c] = /^a (\S+) turns? out(?:, c (\S+) turns? out)?$/.exec(word) ?? [];
  const [A, C] = [a === undefined ? undefined : readNumber(a), c === undefined ? undefined : readNumber(c)];
  if (!A?.ok || (C && !C.ok)) return unread('assembled', row, LIKE.assembled);
  return good({ A: { turnsOut: A.value }, C: C?.ok ? { turnsOut: C.value } : 'middle' });
};
