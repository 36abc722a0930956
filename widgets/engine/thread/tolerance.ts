/**
 * Limits of size of any thread by its class, and what is left between a screw and a nut.
 *
 * ISO 965-1 and ASME B1.1 join here (tolerance-iso.ts, tolerance-unified.ts): with basic sizes d, d2 = d − 3√3/8 P and d1 = d − 5√3/8 P,
 *   screw  d_max = d + es, d_min = d_max − T_d; d2_max = d2 + es, d2_min = d2_max − T_d2; minor max = d1 + es
 *   nut    D2_min = d2 + EI, D2_max = D2_min + T_D2; D1_min = d1 + EI, D1_max = D1_min + T_D1; major min = d + EI
 * (es = −allowance for a Unified screw). A class sets no lower limit to the minor diameter of a screw and no upper limit to the major
 * diameter of a nut: those are the roots, the tool makes them, so they have one limit here. Lengths mm.
 * A metric size is rounded to 0.001 mm and a Unified one to 0.0001 in before limits are built on it, as the tables do.
 */
import { type Millimetres, mm } from '../kernel/quantity.ts';
import { bad, good, type Result } from '../kernel/result.ts';
import { unifiedSeries } from './series.ts';
import { diameters, type Thread } from './thread.ts';
import {
  type Basis,
  type IsoClass,
  isoDeviation,
  isoTolerance,
  outsideIso,
  readIsoClass,
  type Sourced,
} from './tolerance-iso.ts';
import {
  FINEST_TABULATED,
  isUnifiedClass,
  seriesInName,
  type UnifiedClass,
  unifiedLimits,
} from './tolerance-unified.ts';

declare module '../kernel/result.ts' {
  interface Refusals {
    'limits-without-core': { readonly designation: string };
    'unified-class-on-metric': { readonly cls: UnifiedClass; readonly designation: string };
    'unified-class-unread': { readonly read: string };
    'fit-of-unlike-pitches': { readonly screw: PitchAndLead; readonly nut: PitchAndLead };
    'fit-of-unlike-hands': { readonly screw: string; readonly nut: string };
  }
}

type PitchAndLead = Pick<Thread, 'designation' | 'P' | 'L'>;

/** What a reader ought to know of limits: which of them rest on memory, and where a rule was carried past its standard. */
export type LimitsRemark =
  | 'position-f-from-memory'
  | 'no-standard-series'
  | 'several-starts'
  | 'no-series-named'
  | 'finer-than-tables';

/** A diameter with both limits. `basis` is 'table' where the published table gave it, 'formula' where formula and rounding did. */
export interface Zone {
  readonly min: Millimetres;
  readonly max: Millimetres;
  readonly tolerance: Millimetres;
  readonly basis: Basis;
}

interface Common {
  readonly thread: Thread;
  /** The class in its standard spelling. */
  readonly cls: string;
  readonly standard: 'ISO 965-1' | 'ASME B1.1';
  readonly pitch: Zone;
  /** Signed distance of the zone of the pitch diameter from basic size: es of a screw, negative or nought; EI of a nut. */
  readonly deviation: Millimetres;
  readonly remarks: readonly LimitsRemark[];
}

export interface ExternalLimits extends Common {
  readonly side: 'external';
  readonly major: Zone;
  /** Only the upper limit is set: above it the root would foul the nut. */
  readonly minor: { readonly max: Millimetres; readonly basis: Basis };
  /**
   * The rounded root, for walls and strength; not a limit of the class. Nought where a coarse thread leaves nothing.
   * `design`: as drawn, with the largest screw (ISO 68-1 with radius H/6; UNR maximum).
   * `least`: how deep it may reach with the smallest screw and the least root allowed.
   */
  readonly root: { readonly design: Millimetres; readonly least: Millimetres };
}

export interface InternalLimits extends Common {
  readonly side: 'internal';
  readonly minor: Zone;
  /** Only the lower limit is set: below it the root would foul the screw. */
  readonly major: { readonly min: Millimetres; readonly basis: Basis };
}

export type Limits = ExternalLimits | InternalLimits;

/**
 * Limits of size of a thread by class: `6g`, `5g6g`, `6H` for metric threads, `2A`, `3B` for Unified ones; a thread of neither kind takes either.
 * Gives a reason for a class that does not exist there.
 */
export const limitsOfSize = (thread: Thread, cls: string): Result<Limits> => {
  const { designation } = thread;
  if (!(diameters(thread).d3 > 0)) return bad('limits-without-core', { designation });
  const unified = cls.trim().toUpperCase();
  if (isUnifiedClass(unified))
    return thread.kind === 'metric'
      ? bad('unified-class-on-metric', { cls: unified, designation })
      : ofUnified(thread, unified);
  if (thread.kind === 'unified') return bad('unified-class-unread', { read: cls });
  const read = readIsoClass(cls);
  return read.ok ? ofIso(thread, read.value) : read;
};

const ofIso = (thread: Thread, cls: IsoClass): Result<Limits> => {
  const { d, P } = thread;
  const outside = outsideIso(d, P);
  if (outside !== undefined) return outside;
  const external = cls.side === 'external';
  const pitchDeviation = isoDeviation(cls.pitch.position, P);
  if (!pitchDeviation.ok) return pitchDeviation;
  const crestDeviation = isoDeviation(cls.crest.position, P);
  if (!crestDeviation.ok) return crestDeviation;
  const pitchTolerance = isoTolerance(external ? 'd2' : 'D2', cls.pitch.grade, d, P);
  if (!pitchTolerance.ok) return pitchTolerance;
  const crestTolerance = isoTolerance(external ? 'd' : 'D1', cls.crest.grade, d, P);
  if (!crestTolerance.ok) return crestTolerance;

  const whole = (x: number) => Math.round(1000 * x);
  const { d1, d2, d3 } = diameters(thread);
  const basic = { d: whole(d), d2: whole(d2), d1: whole(d1) };
  const es = pitchDeviation.value;
  const µm = (x: number) => mm(x / 1000);
  const zone = (size: number, deviation: Sourced, tolerance: Sourced): Zone => {
    const near = size + deviation.µm;
    return {
      min: µm(external ? near - tolerance.µm : near),
      max: µm(external ? near : near + tolerance.µm),
      tolerance: µm(tolerance.µm),
      basis: deviation.basis === 'table' && tolerance.basis === 'table' ? 'table' : 'formula',
    };
  };
  const [p, c] = [`${cls.pitch.grade}${cls.pitch.position}`, `${cls.crest.grade}${cls.crest.position}`];
  const pitch = zone(basic.d2, es, pitchTolerance.value);
  const fromMemory = P >= 0.5 && (cls.pitch.position === 'f' || cls.crest.position === 'f');
  const common = {
    thread,
    cls: p === c ? p : p + c,
    standard: 'ISO 965-1',
    pitch,
    deviation: µm(es.µm),
    remarks: [...(fromMemory ? (['position-f-from-memory'] as const) : []), ...remarksOn(thread)],
  } as const;
  return good(
    external
      ? {
          ...common,
          side: 'external',
          major: zone(basic.d, crestDeviation.value, crestTolerance.value),
          minor: { max: µm(basic.d1 + es.µm), basis: es.basis },
          // ISO 68-1 design root with radius H/6; least: root radius 0.125 P, Machinery's Handbook, 27th ed., p. 1794 (d2 min − 0.616025 P).
          root: {
            design: µm(Math.max(0, whole(d3) + es.µm)),
            least: µm(Math.max(0, whole(pitch.min - 0.616025 * P))),
          },
        }
      : {
          ...common,
          side: 'internal',
          minor: zone(basic.d1, crestDeviation.value, crestTolerance.value),
          major: { min: µm(basic.d + es.µm), basis: es.basis },
        },
  );
};

const ofUnified = (thread: Thread, cls: UnifiedClass): Result<Limits> => {
  const D = thread.d / 25.4;
  const tpi = thread.tpi ?? 25.4 / thread.P;
  const series = seriesInName(thread.designation) ?? (thread.kind === 'unified' ? unifiedSeries(D, tpi) : undefined);
  const limits = unifiedLimits({ D, tpi, series }, cls);
  if (!limits.ok) return limits;
  const { allowance, crest, pitch } = limits.value;
  const inches = (tenths: number) => mm((tenths * 25.4) / 1e4);
  const zone = (z: typeof crest): Zone => ({
    min: inches(z.min),
    max: inches(z.max),
    tolerance: inches(z.tolerance),
    basis: z.basis,
  });
  const basic = (x: number) => Math.round(1e4 * x);
  const common = {
    thread,
    cls,
    standard: 'ASME B1.1',
    pitch: zone(pitch),
    deviation: inches(allowance.tenths === 0 ? 0 : -allowance.tenths),
    remarks: [
      ...(series === undefined ? (['no-series-named'] as const) : []),
      ...(tpi > FINEST_TABULATED ? (['finer-than-tables'] as const) : []),
      ...remarksOn(thread),
    ],
  } as const;
  return good(
    cls.endsWith('A')
      ? {
          ...common,
          side: 'external',
          major: zone(crest),
          minor: { max: inches(basic(D - 1.08253175 / tpi) - allowance.tenths), basis: allowance.basis },
          // UNR maximum: major max − 11/8 H, as tabulated; least: d2 min − 0.649519 P, a flat of P/8 at the root.
          root: {
            design: inches(Math.max(0, basic(crest.max / 1e4 - 1.19078493 / tpi))),
            least: inches(Math.max(0, basic(pitch.min / 1e4 - 0.64951905 / tpi))),
          },
        }
      : { ...common, side: 'internal', minor: zone(crest), major: { min: inches(basic(D)), basis: 'formula' } },
  );
};

/** What holds whichever standard the limits are of. */
const remarksOn = (thread: Thread): readonly LimitsRemark[] => [
  ...(thread.kind === 'free' ? (['no-standard-series'] as const) : []),
  ...(thread.N > 1 ? (['several-starts'] as const) : []),
];

/** What is left between a screw and a nut. Diametral, mm; negative is interference. */
export interface PairClearance {
  /** D2 − d2: least with the largest screw in the smallest nut. */
  readonly pitch: { readonly least: Millimetres; readonly most: Millimetres };
  /** At the crest of the screw: D min − d max. The most is open, as no class limits the root of the nut. */
  readonly major: { readonly least: Millimetres };
  /** At the crest of the nut: D1 min − minor max of the screw. The most is open. */
  readonly minor: { readonly least: Millimetres };
  /** How much of the crests overlap, radial: (d − D1)/2. Nought or less means that the flanks may not meet. */
  readonly overlap: { readonly least: Millimetres; readonly most: Millimetres };
  /** Of the pitch diameters: `clear` always goes, `may bind` depends on the pieces, `never goes` interferes whatever the pieces. */
  readonly fit: 'clear' | 'may bind' | 'never goes';
}

/** Clearances of a screw in a nut of the same pitch, lead and hand. */
export const clearanceOfPair = (external: ExternalLimits, internal: InternalLimits): Result<PairClearance> => {
  const [screw, nut] = [external.thread, internal.thread];
  if (!(Math.abs(screw.P - nut.P) < 1e-6 && Math.abs(screw.L - nut.L) < 1e-6))
    return bad('fit-of-unlike-pitches', { screw, nut });
  if (screw.h !== nut.h) return bad('fit-of-unlike-hands', { screw: screw.designation, nut: nut.designation });
  const minus = (a: number, b: number) => mm(Number((a - b).toFixed(9)));
  const pitch = {
    least: minus(internal.pitch.min, external.pitch.max),
    most: minus(internal.pitch.max, external.pitch.min),
  };
  return good({
    pitch,
    major: { least: minus(internal.major.min, external.major.max) },
    minor: { least: minus(internal.minor.min, external.minor.max) },
    overlap: {
      least: minus(external.major.min / 2, internal.minor.max / 2),
      most: minus(external.major.max / 2, internal.minor.min / 2),
    },
    fit: pitch.least >= 0 ? 'clear' : pitch.most >= 0 ? 'may bind' : 'never goes',
  });
};
