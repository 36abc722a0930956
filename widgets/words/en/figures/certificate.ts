/** The words of the certificate of a calibration. */
export const WORDS = {
  title: 'Certificate of the calibration',
  caption: (v: { readonly verdict: string; readonly missing: readonly string[] }) =>
    `${v.verdict} ${v.missing.length === 0 ? 'Everything asked for is stated.' : `Not stated yet: ${v.missing.join(', ')}.`}`,
  table: {
    head: ['line', 'value'],
    noneYet: { head: ['line'], row: 'none yet' },
    correctionAt: (turns: string) => `correction at ${turns} turns`,
  },
  working: {
    caption: 'Working through the readings; the certificate follows.',
    note: 'Working through the readings …',
  },

  heading: 'Calibration of a differential screw',
  agrees: 'Agrees with its nominal lead',
  agreesNot: 'Does not agree with its nominal lead',
  measured: 'Measured',
  found: 'Found',
  correction: {
    title: 'Correction, to be added to the nominal motion',
    table: 'Corrections',
    turns: 'turns',
    row: 'correction',
    curve: { up: 'Correction, on the way up', down: 'Correction, on the way down' },
  },
  notes:
    'The uncertainty is that of the fit, 95 % by Student’s t, from the scatter of these readings alone. It does not include the error of the indicator, cosine and Abbe errors, or temperature. It holds for this piece, over these turns, as it was on that day.',
  signed: ['measured by', 'checked by'],

  /** What the reader states, and what is said where nothing is. */
  stated: { piece: 'piece', dated: 'date', warmth: 'temperature', gauge: 'indicator', method: 'method' },
  notStated: 'not stated',
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
