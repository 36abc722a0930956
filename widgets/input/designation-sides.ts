/**
 * A designation names a fit: screw and nut of one thread. The end of a part is one side of it, and a joint is made of two such ends; these go
 * from the one to the other.
 */
import { classOfSide, type Limits, type MeasuredPitch, measuredName, mm, plain, type Thread } from '../engine/index.ts';
import { readThread } from './designation.ts';
import { takeMeasured, withMeasured } from './designation-measured.ts';

/** A designation without class and measured diameters: size, pitch, starts and hand. */
export const bareDesignation = ({ designation, toleranceClass, measured }: Thread): string => {
  const classless = toleranceClass === undefined ? designation : designation.replace(`-${toleranceClass}`, '');
  return measured === undefined ? classless : takeMeasured(classless).rest;
};

/** Class and measured diameter of one side, as they stand behind a bare designation. */
const sideWords = (
  thread: Thread,
  side: Limits['side'],
): { readonly cls: string | undefined; readonly size: string } => {
  const zone = side === 'external' ? thread.measured?.screw : thread.measured?.nut;
  return { cls: classOfSide(thread, side), size: zone === undefined ? '' : ` ${measuredName(side, zone)}` };
};

const spelt = (bare: string, classes: readonly (string | undefined)[], sizes: string): string => {
  const stated = classes.filter((cls) => cls !== undefined).join('/');
  return `${bare}${stated === '' ? '' : ` -${stated}`}${sizes}`;
};

/** The designation of one end: what it says of the other side is left out. */
export const designationOfSide = (thread: Thread, side: Limits['side']): string => {
  const { cls, size } = sideWords(thread, side);
  const words = spelt(bareDesignation(thread), [cls], size);
  // As it is written: class and starts have their places.
  const read = readThread(words);
  return read.ok ? read.value.designation : words;
};

/** One thread for a joint, from its nut and its screw: what each says of itself. */
export const threadOfJoint = (nut: Thread, screw: Thread): Thread => {
  const [inside, outside] = [sideWords(nut, 'internal'), sideWords(screw, 'external')];
  const read = readThread(spelt(bareDesignation(nut), [inside.cls, outside.cls], `${outside.size}${inside.size}`));
  return read.ok ? read.value : nut;
};

/** The same thread with another pitch, its starts and its hand kept. */
export const ofPitch = (thread: Thread, P: number): Thread =>
  P === thread.P
    ? thread
    : { ...thread, P: mm(P), L: mm(P * thread.N), ...(thread.tpi === undefined ? {} : { tpi: plain(25.4 / P) }) };

/** The same thread with these pitch diameters. */
export const asMeasured = (thread: Thread, measured: MeasuredPitch): Thread => {
  const bare = readThread(spelt(bareDesignation(thread), [thread.toleranceClass], ''));
  return withMeasured(bare.ok ? bare.value : thread, measured);
};
