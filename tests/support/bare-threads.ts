/** Threads built by hand, so that tests of limits do not rest on the reader of designations. */
import { mm, type Thread } from '../../widgets/engine/index.ts';

const bare = (designation: string, kind: Thread['kind'], d: number, P: number): Thread => ({
  designation,
  kind,
  d: mm(d),
  P: mm(P),
  N: 1,
  L: mm(P),
  h: 1,
  notes: [],
});

export const metric = (d: number, P: number): Thread => bare(`M${d}×${P}`, 'metric', d, P);

/** D in inches; the designation ends with its series, for example `3/8-16 UNC`. */
export const unified = (designation: string, D: number, tpi: number): Thread => ({
  ...bare(designation, 'unified', D * 25.4, 25.4 / tpi),
  tpi,
});

export const free = (d: number, P: number): Thread => bare(`${d} mm × ${P} mm`, 'free', d, P);
