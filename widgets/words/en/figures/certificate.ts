/** The words of the certificate of a calibration. */

export const WORDS = {
  title: 'Certificate of the calibration',
  caption: (v: { readonly verdict: string; readonly missing: readonly string[] }) =>
    `${v.verdict} ${v.missing.length === 0 ? 'Everything asked for is stated.' : `Not stated yet: ${v.missing.join(', ')}.`}`,
  table: {
    head: ['line', 'value'],
    noneYet: { head: ['line'], row: 'none yet' },
    correctionAt: (turns: string, way: 'up' | 'down') => `correction at ${turns} turns, ${way}`,
  },
  noReadings: 'There is nothing to sign yet: the calibration above has no readings of your design.',
  working: {
    caption: 'Working through the readings; the certificate follows.',
    note: 'Working through the readings …',
  },

  heading: 'Calibration of a differential screw',
  verdicts: {
    agrees: 'Agrees with its nominal lead',
    differs: 'Does not agree with its nominal lead',
    'not to be told': 'Measured too roughly to say',
  },
  /** The head when the lead is one thing and what else was found is another. */
  andLarge: (verdict: string, large: readonly string[], matters: string) =>
    `${verdict}; but more than the ${matters} that matter: ${large.join(', ')}`,
  whole: {
    name: 'whole ± of it, 95 %',
    value: (U: string) => `${U} a turn`,
    largest: 'largest parts of it',
    part: (name: string, much: string) => `${name} ${much}`,
  },
  measured: 'Measured',
  found: 'Found',
  correction: {
    title: 'Correction, to be added to the nominal motion',
    table: 'Corrections',
    steps: (step: string) => `${step}s`,
    turns: 'turns',
    up: 'up',
    down: 'down',
    curve: 'Correction',
    says: (unit: string, home: string) =>
      `In ${unit}. By the fit, counted from home: turn ${home}, reached with the turns rising. Up is with the turns rising, down with the turns falling. U is the expanded uncertainty, 95 %.`,
    thinned: (every: string, step: string) => `Here stands one ${step} in ${every}; the file holds every ${step}.`,
    oneWay: {
      up: 'No reading was taken on the way down, so nothing stands there.',
      down: 'No reading was taken on the way up, so nothing stands there.',
    },
    untold: (why: string) => `For one way nothing stands, since the lost motion can’t be told: ${why}`,
    save: 'Save the correction table as CSV',
  },
  notes:
    'The ± beside the lead is that of the fit, 95 % by Student’s t. The whole ± adds what is stated of indicator, plunger, drift and repeat, by the law of propagation (JCGM 100), as bounds that do not depend on each other. It holds for this piece, over these turns, as it was on that day.',
  signed: ['measured by', 'checked by'],

  passport: {
    write: 'Write it into the passport of this piece',
    noDesign: 'A passport is kept with a design, and none is in use: keep your adjuster under My designs first.',
    noMark: 'The passport needs the mark of the piece: state the piece first, such as Foot no. 1.',
    otherThreads: (design: string) =>
      `The threads here are not those of the design in use, “${design}”: nothing was written.`,
    full: 'The passports of this design are full: save the design to a file, and take its oldest rows out.',
    written: (design: string, row: string, undated: boolean) =>
      `Written into the passports of “${design}”: ${row}.${undated ? ' The sheet states no date, so today’s was taken: state the date of the readings, and write again if that is another.' : ''}`,
  },
  /** What the reader states, and what is said where nothing is. */
  stated: { piece: 'piece', dated: 'date', warmth: 'temperature', gauge: 'indicator', method: 'method' },
  notStated: 'not stated',
  adjuster: 'adjuster',
  threads: 'threads',
  threadsText: (A: string, C: string | undefined) => (C === undefined ? `${A}, a plain screw` : `${A} with ${C}`),
  travel: 'travel of its parts',
  travelText: (v: { readonly turns: string; readonly stroke: string; readonly beyond: boolean }) =>
    `${v.turns} turns between the stops, ${v.stroke}${v.beyond ? '; the readings go over more turns than these parts have' : ''}`,
  readings: 'readings',
  readingsText: (v: { readonly count: string; readonly from: string; readonly to: string }) =>
    `${v.count}, from ${v.from} to ${v.to} turns`,
  nominalLead: 'nominal net lead',
  perTurn: (motion: string) => `${motion} a turn`,
  leadErrors: 'stated lead errors',
  leadErrorsText: {
    'root-sum-square': (share: string) => `${share} of the net lead, root-sum-square`,
    'at worst': (share: string) => `${share} of the net lead, at worst`,
  },
  measuredLead: 'measured net lead',
  lessNominal: 'minus the nominal',
};
