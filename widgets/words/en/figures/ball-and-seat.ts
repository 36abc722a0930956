/** The words of the ball in its seat. */
export const WORDS = {
  title: 'A ball in its seat',
  label: (rests: string) => `A ball resting ${rests}, with the forces at its contacts`,
  notElastic: 'not elastic',
  rows: {
    forceOnRing: 'force on the ring',
    forceOnOne: 'force on the contact',
    forceOnEach: 'force on each contact',
    halfWidthOfRing: 'half width of the ring',
    halfWidthOfPatch: 'half width of the contact',
    peak: 'peak pressure',
    sinks: 'sinks by',
    sinksEstimate: 'sinks by, an estimate',
    stiffness: 'stiffness along the load, for each newton more',
    yields: 'begins to yield at',
  },
  caption: (v: {
    readonly radius: string;
    readonly force: string;
    readonly rests: string;
    readonly seat: string;
    readonly yields: string;
    /** Undefined past first yield. */
    readonly elastic: { readonly sink: string; readonly estimate: boolean; readonly peak: string } | undefined;
  }) => {
    const where = `A hardened ball of ${v.radius} radius under ${v.force}, ${v.rests} of ${v.seat}`;
    return v.elastic
      ? `${where}, sinks by ${v.elastic.sink}${v.elastic.estimate ? ' (an estimate)' : ''} at a peak pressure of ${v.elastic.peak}; it would begin to yield at ${v.yields}.`
      : `${where}, is past first yield, which came at ${v.yields}, so the elastic numbers no longer hold.`;
  },
  head: ['the ball rests', 'sinks by', 'peak pressure', 'begins to yield at'],
};
