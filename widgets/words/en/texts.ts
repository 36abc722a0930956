/** What a reader ought to know about a list that was taken: what of it was left out, and what was supposed. */
import { listed } from '../../engine/index.ts';

/** `wrong` are in quotes; `why` is the sentence that refuses the first of them. */
export const threadsLeftOut = (wrong: readonly string[], kept: number, why: string): string =>
  `Left out: ${wrong.join(', ')}; the other ${kept === 1 ? 'one is' : `${kept} are`} kept. ${why}`;
export const TOO_LONG_FOR_LINK =
  'Too long for the address: a link does not carry it, and brings it back only in this browser.';
export const withoutPrice = (names: readonly string[]): string => `Without a price: ${names.join(', ')}.`;
export const waysLeftOut = (unknown: readonly string[], ways: readonly string[]): string =>
  `Left out: ${unknown.join(', ')}; the ways are called ${ways.join(', ')}.`;
export const columnsLeftOut = (names: readonly string[]): string => `Left out: ${listed(names)}.`;
export const positionsSupposed = (unit: string): string =>
  `The header names no unit for the positions; ${unit} supposed.`;
export const readingsSupposed = (unit: string): string =>
  `The header names no unit for the readings; ${unit} supposed.`;
export const columnsSupposed = (position: string, reading: string): string =>
  `No header: positions in ${position} and readings in ${reading} supposed.`;

/** Of a load that was typed in another unit than newtons. */
export const weighs = (v: { readonly typed: string; readonly newtons: string; readonly mass: boolean }): string =>
  v.mass ? `${v.typed} is a mass; it weighs ${v.newtons}, by g = 9.80665 m/s².` : `${v.typed} is ${v.newtons}.`;
