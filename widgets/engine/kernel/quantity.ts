/**
 * Quantities and the units they are read and shown in.
 *
 * Inside the engine a length is millimetres, an angle radians, a rotation turns, a force newtons, a torque newton
 * millimetres, a stress megapascals, a duration hours; each is a branded number, so a plain number or another
 * brand is refused by the compiler. Every other unit lives at the edge as a `Measure`, an object that arithmetic
 * does not accept: a thou can't be added to a millimetre unnoticed, it has to pass through `toBase`.
 *
 * Exact factors: 1 in = 25.4 mm (international inch, 1959; NIST SP 811, appendix B.8), 1 turn = 2π rad.
 */
declare const brand: unique symbol;
export type Branded<U extends string> = number & { readonly [brand]: U };

export type Millimetres = Branded<'mm'>;
export type Radians = Branded<'rad'>;
export type Turns = Branded<'turn'>;
export type Newtons = Branded<'N'>;
export type NewtonMillimetres = Branded<'N·mm'>;
export type Megapascals = Branded<'MPa'>;
export type NewtonsPerMillimetre = Branded<'N/mm'>;
/** A difference of temperature, never a reading of a thermometer. */
export type Kelvins = Branded<'K'>;
export type PerKelvin = Branded<'1/K'>;
export type Hours = Branded<'h'>;
export type Hertz = Branded<'Hz'>;
/** A pure number: a ratio, a share, a count of things. */
export type Plain = Branded<'1'>;

export const mm = (x: number): Millimetres => x as Millimetres;
export const rad = (x: number): Radians => x as Radians;
export const turns = (x: number): Turns => x as Turns;
export const newtons = (x: number): Newtons => x as Newtons;
export const newtonMillimetres = (x: number): NewtonMillimetres => x as NewtonMillimetres;
export const megapascals = (x: number): Megapascals => x as Megapascals;
export const newtonsPerMillimetre = (x: number): NewtonsPerMillimetre => x as NewtonsPerMillimetre;
export const kelvins = (x: number): Kelvins => x as Kelvins;
export const perKelvin = (x: number): PerKelvin => x as PerKelvin;
export const hours = (x: number): Hours => x as Hours;
export const hertz = (x: number): Hertz => x as Hertz;
export const plain = (x: number): Plain => x as Plain;

/** The base units of the engine; every relation states its inputs and outputs in these. */
export interface BaseUnits {
  mm: Millimetres;
  rad: Radians;
  turn: Turns;
  N: Newtons;
  N·mm: NewtonMillimetres;
  MPa: Megapascals;
  'N/mm': NewtonsPerMillimetre;
  K: Kelvins;
  '1/K': PerKelvin;
  h: Hours;
  Hz: Hertz;
  '1': Plain;
}
export type BaseUnit = keyof BaseUnits;

export interface UnitFact {
  readonly base: BaseUnit;
  /** How many base units one of this unit is. */
  readonly factor: number;
  /** Spellings a reader may type, in any language of the notebook; the first is the one printed. */
  readonly spellings: readonly string[];
}

const INCH = 25.4;
/** Standard acceleration of free fall, m/s² (CGPM 1901), and the pound in kilograms (1959), both exact. */
const G = 9.80665;
const POUND = 0.45359237;

export const UNITS = {
  mm: {
    base: 'mm',
    factor: 1,
    spellings: ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters', 'Millimeter'],
  },
  µm: {
    base: 'mm',
    factor: 1e-3,
    spellings: [
      'µm',
      'um',
      'micron',
      'microns',
      'micrometre',
      'micrometres',
      'micrometer',
      'micrometers',
      'Mikrometer',
    ],
  },
  in: { base: 'mm', factor: INCH, spellings: ['in', 'inch', 'inches', '"', '″', '”', 'Zoll'] },
  thou: { base: 'mm', factor: INCH / 1e3, spellings: ['thou', 'mil', 'mils', 'thousandths', 'Tausendstel'] },
  tenths: { base: 'mm', factor: INCH / 1e4, spellings: ['tenths', 'tenth', 'Zehntel', 'Zehntel-Thou'] },
  millionths: { base: 'mm', factor: INCH / 1e6, spellings: ['millionths', 'millionth', 'µin', 'uin', 'Millionstel'] },
  '°': { base: 'rad', factor: Math.PI / 180, spellings: ['°', 'deg', 'degree', 'degrees', 'Grad'] },
  rad: { base: 'rad', factor: 1, spellings: ['rad', 'radian', 'radians'] },
  turns: { base: 'turn', factor: 1, spellings: ['turns', 'turn', 'rev', 'revs', 'Umdrehungen', 'Umdrehung', 'Umdr.'] },
  N: { base: 'N', factor: 1, spellings: ['N', 'newton', 'newtons'] },
  // Masses, read as what they weigh, and the units of weight: a load is known by one of these more often than by newtons.
  kg: { base: 'N', factor: G, spellings: ['kg', 'kilogram', 'kilograms', 'kilogramme', 'kilogrammes', 'Kilogramm'] },
  lb: { base: 'N', factor: G * POUND, spellings: ['lb', 'lbs', 'pound', 'pounds'] },
  kgf: { base: 'N', factor: G, spellings: ['kgf', 'kp', 'kilopond'] },
  lbf: { base: 'N', factor: G * POUND, spellings: ['lbf'] },
  N·mm: { base: 'N·mm', factor: 1, spellings: ['N·mm', 'N mm', 'Nmm'] },
  N·m: { base: 'N·mm', factor: 1e3, spellings: ['N·m', 'N m', 'Nm'] },
  MPa: { base: 'MPa', factor: 1, spellings: ['MPa', 'N/mm²', 'N/mm2'] },
  GPa: { base: 'MPa', factor: 1e3, spellings: ['GPa'] },
  'N/mm': { base: 'N/mm', factor: 1, spellings: ['N/mm'] },
  'N/µm': { base: 'N/mm', factor: 1e3, spellings: ['N/µm', 'N/um'] },
  K: { base: 'K', factor: 1, spellings: ['K', 'kelvin', 'kelvins'] },
  '1/K': { base: '1/K', factor: 1, spellings: ['1/K', '/K'] },
  'ppm/K': { base: '1/K', factor: 1e-6, spellings: ['ppm/K', '10⁻⁶/K', 'µm/m·K'] },
  h: { base: 'h', factor: 1, spellings: ['h', 'hour', 'hours', 'Stunde', 'Stunden', 'Std.'] },
  s: { base: 'h', factor: 1 / 3600, spellings: ['s', 'second', 'seconds', 'Sekunde', 'Sekunden'] },
  min: { base: 'h', factor: 1 / 60, spellings: ['min', 'minute', 'minutes', 'Minute', 'Minuten'] },
  d: { base: 'h', factor: 24, spellings: ['d', 'day', 'days', 'Tag', 'Tage'] },
  Hz: { base: 'Hz', factor: 1, spellings: ['Hz', 'hertz'] },
  '%': { base: '1', factor: 0.01, spellings: ['%', 'percent', 'Prozent'] },
  '1': { base: '1', factor: 1, spellings: [''] },
} as const satisfies Record<string, UnitFact>;
export type Unit = keyof typeof UNITS;

/** A value with its unit, as it stands at the edge of the engine. */
export interface Measure {
  readonly amount: number;
  readonly unit: Unit;
}

export const toBase = (m: Measure): number => m.amount * UNITS[m.unit].factor;
export const fromBase = (value: number, unit: Unit): Measure => ({ amount: value / UNITS[unit].factor, unit });
