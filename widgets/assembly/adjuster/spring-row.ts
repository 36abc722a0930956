/**
 * The row of an adjuster’s springs, read and written. Springs have a force and a rate, or a drawing from which the rate follows:
 *
 *   2 between base and carried, 8 N, 0.5 N/mm, at 15 mm, loses 9 %
 *   2 at 15 mm, 12 N, meander of 8 waves, legs 20 mm, connectors 4.2 mm, strip 2.7 mm, high 10 mm, length 40 mm, modulus 2077 MPa
 *   … row of 3 rings, radius 5.2 mm, strip …; row of 2 ovals, radius 4 mm, straights 9 mm, strip …; strap, span 27 mm, strip … (it has no length)
 *   … coil of 5.25 turns, wire 0.8 mm, diameter 6.4 mm, length 40 mm, modulus 81370 MPa (mean diameter, shear modulus)
 *
 * A row that is written reads back as the very numbers that stand in it.
 */
import { bad, good, type Result, type SpringForm } from '../../engine/index.ts';
import { readNumber, readQuantity } from '../../input/quantity.ts';
import type { Springs } from './adjuster.ts';
import { type DrawnSpring, drawnLock, drawnRate } from './drawn-springs.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    'springs-drawing-lacks': { readonly lacks: readonly string[] };
    /** A size of another shape. */
    'springs-size-of-none': { readonly shape: string; readonly size: string; readonly takes: readonly string[] };
    'springs-rate-and-drawing': { readonly phrase: string };
  }
}

const LIKE = '2 between base and carried, 8 N, 0.5 N/mm, at 15 mm, loses 9 %';
const MOST_LENGTH = 1000;

const unread = (phrase: string) => bad('row-phrase-unread', { key: 'springs', phrase, like: LIKE }, 'springs');
const mmIn = (text: string): number | undefined => {
  const read = readQuantity(text, 'mm', 'mm');
  return read.ok && read.value.value >= 0 && read.value.value <= MOST_LENGTH ? read.value.value : undefined;
};

type SizeName =
  | 'legs'
  | 'connectors'
  | 'radius'
  | 'straights'
  | 'span'
  | 'wire'
  | 'diameter'
  | 'strip'
  | 'high'
  | 'length';
type Sizes = Partial<Record<SizeName, number>>;
const SIZED = /^(legs|connectors|radius|straights|span|wire|diameter|strip|high|length) (.+)$/i;

/** The shape and how often it repeats, as the row calls it. */
interface Called {
  readonly shape: SpringForm['shape'];
  readonly count: number;
}

const calledIn = (text: string): Called | undefined => {
  const [, waves] = /^meander(?: of)? (\d{1,2})(?: half)? waves$/i.exec(text) ?? [];
  if (waves !== undefined) return { shape: 'meander', count: Number(waves) };
  const [, cells, kind] = /^row of (\d{1,2}) (ring|oval)s?$/i.exec(text) ?? [];
  if (cells !== undefined) return { shape: kind?.toLowerCase() === 'oval' ? 'oval' : 'ring', count: Number(cells) };
  if (/^strap$/i.test(text)) return { shape: 'strap', count: 1 };
  const [, turns] = /^coil of ([\d.,]{1,12}) turns$/i.exec(text) ?? [];
  const number = turns === undefined ? undefined : readNumber(turns);
  return number?.ok ? { shape: 'coil', count: number.value } : undefined;
};

/** What each shape is made of, besides its count and its modulus. */
const NEEDS: Readonly<Record<SpringForm['shape'], readonly SizeName[]>> = {
  meander: ['legs', 'connectors', 'strip', 'high', 'length'],
  ring: ['radius', 'strip', 'high', 'length'],
  oval: ['radius', 'straights', 'strip', 'high', 'length'],
  strap: ['span', 'strip', 'high'],
  coil: ['wire', 'diameter', 'length'],
};
const NAMED: Readonly<Record<SpringForm['shape'], string>> = {
  meander: 'meander of 8 waves',
  ring: 'row of 3 rings',
  oval: 'row of 3 ovals',
  strap: 'strap',
  coil: 'coil of 5 turns',
};

const formOf = ({ shape, count }: Called, s: Record<SizeName, number>): SpringForm => {
  switch (shape) {
    case 'meander':
      return { shape, m: count, L: s.legs, p: s.connectors, stub: s.connectors / 2, t: s.strip };
    case 'strap':
      return { shape, l: s.span, t: s.strip };
    case 'coil':
      return { shape, turns: count, D: s.diameter, t: s.wire };
    default:
      return { shape, cells: count, R: s.radius, h: shape === 'oval' ? s.straights / 2 : 0, t: s.strip };
  }
};

/** Which shape sizes without its name are of. */
const guessed = (sizes: Sizes): SpringForm['shape'] =>
  sizes.wire !== undefined || sizes.diameter !== undefined
    ? 'coil'
    : sizes.span !== undefined
      ? 'strap'
      : sizes.radius !== undefined
        ? sizes.straights === undefined
          ? 'ring'
          : 'oval'
        : 'meander';

export const readSprings = (row: string | undefined): Result<Springs | undefined> => {
  if (row === undefined || /^none$/i.test(row)) return good(undefined);
  let count = 1;
  let between: Springs['between'] = 'base and carried';
  let radius: number | undefined;
  let [force, rate]: [number | undefined, number | undefined] = [undefined, undefined];
  let called: Called | undefined;
  let [modulus, loss]: [number | undefined, number | undefined] = [undefined, undefined];
  let rated = '';
  const sizes: Sizes = {};
  const many = /^(\d{1,2})(?: |$|,)/.exec(row);
  if (many) count = Number(many[1]);
  for (const phrase of row.slice(many?.[0].length ?? 0).split(/, ?(?![\d]*$)/)) {
    const text = phrase.trim();
    if (text === '') continue;
    const [, parts] = /^between (base and carried|base and turned|turned and carried)$/i.exec(text) ?? [];
    const [, away] = /^at (.+)$/i.exec(text) ?? [];
    const shape = calledIn(text);
    const [, sized = '', amount = ''] = SIZED.exec(text) ?? [];
    const [, lost] = /^loses (.+)$/i.exec(text) ?? [];
    const share = readQuantity(lost ?? '', '1', '%');
    const [, elastic] = /^modulus (.+)$/i.exec(text) ?? [];
    const pascals = readQuantity(elastic ?? '', 'MPa', 'MPa');
    const newtons = readQuantity(text.replace(/ at assembly$/i, ''), 'N', 'N');
    const stiffness = readQuantity(text, 'N/mm', 'N/mm');
    if (parts !== undefined) between = parts.toLowerCase() as Springs['between'];
    else if (shape !== undefined && called === undefined) called = shape;
    else if (sized !== '' && mmIn(amount)) sizes[sized.toLowerCase() as SizeName] = mmIn(amount) as number;
    else if (elastic !== undefined && pascals.ok && pascals.value.value > 0) modulus = pascals.value.value;
    else if (lost !== undefined && share.ok && share.value.value >= 0 && share.value.value < 1)
      loss = share.value.value;
    else if (away !== undefined && mmIn(away) !== undefined) radius = mmIn(away) as number;
    else if (/ ?N\/mm$/.test(text) && stiffness.ok && stiffness.value.value >= 0) {
      rate = stiffness.value.value;
      rated = text;
    } else if (/ ?N(?: at assembly)?$/.test(text) && newtons.ok && newtons.value.value >= 0)
      force = newtons.value.value;
    // A number at the head of the row was taken for the count; it may belong to this phrase, so the reader is shown all of it.
    else return unread(many && row.startsWith(`${many[0].trimEnd()} ${text}`) ? row : text);
  }
  if (!(count >= 1)) return unread(row);
  if (called === undefined && modulus === undefined && Object.keys(sizes).length === 0)
    return good({ count, between, radius, force, rate, loss });
  const shape = called?.shape ?? guessed(sizes);
  const lacks = [
    ...(called === undefined || !(called.count > 0) ? [NAMED[shape]] : []),
    ...NEEDS[shape].filter((name) => sizes[name] === undefined),
    ...(modulus === undefined ? ['modulus'] : []),
  ];
  if (called === undefined || modulus === undefined || lacks.length > 0)
    return bad('springs-drawing-lacks', { lacks }, 'springs');
  const other = Object.keys(sizes).find((name) => !NEEDS[shape].includes(name as SizeName));
  if (other !== undefined)
    return bad('springs-size-of-none', { shape: NAMED[shape], size: other, takes: NEEDS[shape] }, 'springs');
  if (rated !== '') return bad('springs-rate-and-drawing', { phrase: rated }, 'springs');
  const form = formOf(called, sizes as Record<SizeName, number>);
  const drawn: DrawnSpring = { form, high: sizes.high ?? 0, length: sizes.length ?? 0, modulus };
  const one = drawnRate(drawn);
  if (!one.ok) return one;
  const across = drawnLock(drawn, { count, radius: radius ?? 1, pull: 0 });
  return across.ok ? good({ count, between, radius, force, rate: count * one.value, loss, drawn }) : across;
};

const digits = (x: number): string => String(Number(x.toPrecision(9)));
const mmOf = (x: number): string => `${digits(x)} mm`;

const formText = (f: SpringForm): string => {
  switch (f.shape) {
    case 'meander':
      return `meander of ${f.m} waves, legs ${mmOf(f.L)}, connectors ${mmOf(f.p)}`;
    case 'strap':
      return `strap, span ${mmOf(f.l)}`;
    case 'coil':
      return `coil of ${digits(f.turns)} turns, wire ${mmOf(f.t)}, diameter ${mmOf(f.D)}`;
    case 'ring':
      return `row of ${f.cells} ring${f.cells === 1 ? '' : 's'}, radius ${mmOf(f.R)}`;
    case 'oval':
      return `row of ${f.cells} oval${f.cells === 1 ? '' : 's'}, radius ${mmOf(f.R)}, straights ${mmOf(2 * f.h)}`;
  }
};

/** The row of the text for springs of this drawing. */
export const writeDrawnSprings = (
  { form, high, length, modulus }: DrawnSpring,
  of: {
    readonly count: number;
    readonly between?: Springs['between'];
    readonly radius: number;
    readonly force: number;
    readonly loss: number | undefined;
  },
): string =>
  [
    `springs = ${of.count} between ${of.between ?? 'base and carried'}`,
    `${digits(of.force)} N`,
    `at ${mmOf(of.radius)}`,
    formText(form),
    ...(form.shape === 'coil' ? [] : [`strip ${mmOf(form.t)}`, `high ${mmOf(high)}`]),
    ...(form.shape === 'strap' ? [] : [`length ${mmOf(length)}`]),
    `modulus ${digits(modulus)} MPa`,
    ...(of.loss === undefined ? [] : [`loses ${digits(100 * of.loss)} %`]),
  ].join(', ');
