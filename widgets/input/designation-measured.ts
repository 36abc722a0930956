/**
 * Pitch diameters as measured, behind a designation: `d2` of the screw and `D2` of the nut, the letters of ISO 965-1, each with one size or
 * with the smallest and the largest found: `M10×1.5 d2 8.95`, `M10×1.5 d2 8.862–8.994 D2 9.026–9.206`. Millimetres, unless `in` is written.
 */
import {
  bad,
  diameters,
  good,
  type Limits,
  type MeasuredPitch,
  type MeasuredZone,
  measuredName,
  mm,
  type Result,
  type Thread,
} from '../engine/index.ts';

declare module '../engine/kernel/result.ts' {
  interface Refusals {
    'pitch-diameter-twice': { readonly text: string; readonly letter: 'd2' | 'D2' };
    'pitch-diameter-far-off': {
      readonly text: string;
      readonly letter: 'd2' | 'D2';
      readonly size: number;
      readonly least: number;
      readonly most: number;
    };
  }
}

const SIZE = '(\\d{1,3}(?:[.,]\\d{1,6})?|[.,]\\d{1,6})';
const MEASURED = new RegExp(
  `[ ,]+([dD])[2₂][ =]*${SIZE}(?: ?(?:to|[-–—]) ?${SIZE})?(?: ?(mm|in|")(?![a-z]))?(?![\\w.,/]*\\d)`,
  'g',
);

interface Found {
  readonly side: Limits['side'];
  readonly zone: MeasuredZone;
}

/** The text without its measured diameters, and these. */
export const takeMeasured = (text: string): { readonly rest: string; readonly found: readonly Found[] } => {
  const found: Found[] = [];
  const rest = text.replace(MEASURED, (_, letter: string, one: string, other: string | undefined, unit?: string) => {
    const [a, b] = [one, other ?? one].map(
      (size) => Number(size.replace(',', '.')) * (unit === undefined || unit === 'mm' ? 1 : 25.4),
    ) as [number, number];
    // Six digits behind the point, as they are written.
    const [min, max] = [Math.min(a, b), Math.max(a, b)].map((x) => mm(Number(x.toFixed(6)))) as [
      MeasuredZone['min'],
      MeasuredZone['max'],
    ];
    found.push({ side: letter === 'd' ? 'external' : 'internal', zone: { min, max } });
    return '';
  });
  return { rest, found };
};

/** The thread with what was measured on it. Half a pitch from basic size there is no flank left to measure. */
export const measuredOf = (thread: Thread, found: readonly Found[], text: string): Result<Thread> => {
  const { d2 } = diameters(thread);
  const measured: { screw?: MeasuredZone; nut?: MeasuredZone } = {};
  for (const { side, zone } of found) {
    const [letter, key] = side === 'external' ? (['d2', 'screw'] as const) : (['D2', 'nut'] as const);
    if (measured[key]) return bad('pitch-diameter-twice', { text, letter });
    const [least, most] = [d2 - thread.P / 2, d2 + thread.P / 2];
    const off = [zone.min, zone.max].find((x) => !(x >= least && x <= most));
    if (off !== undefined) return bad('pitch-diameter-far-off', { text, letter, size: off, least, most });
    measured[key] = zone;
  }
  return good(withMeasured(thread, measured));
};

/** The same thread with these in place of what it had. */
export const withMeasured = (thread: Thread, measured: MeasuredPitch): Thread => {
  const written = [
    ...(measured.screw ? [measuredName('external', measured.screw)] : []),
    ...(measured.nut ? [measuredName('internal', measured.nut)] : []),
  ];
  const hand = thread.h === -1 ? ' LH' : '';
  const before = hand === '' ? thread.designation : thread.designation.slice(0, -hand.length);
  return { ...thread, measured, designation: `${before} ${written.join(' ')}${hand}` };
};
