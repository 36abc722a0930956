/** The words of the design sheet. */
export const WORDS = {
  title: 'Design sheet',
  caption: (v: {
    readonly A: string;
    readonly C: string;
    readonly perTurn: string;
    readonly perStep: string;
    readonly step: string;
    readonly verdict: string;
    readonly failed: string | undefined;
  }) =>
    `${v.A} with ${v.C}: ${v.perTurn} a turn, ${v.perStep} a ${v.step}. ${v.verdict}${v.failed === undefined ? '' : ` The first that failed: ${v.failed}`}`,
  head: ['group', 'quantity', 'value'],
  /** `name` is the reader's own, empty where there is none. */
  sheetTitle: (v: { readonly name: string; readonly A: string; readonly C: string; readonly called: string }) =>
    `${v.name === '' ? '' : `${v.name}: `}${v.A} with ${v.C}, ${v.called}`,
  /** An arrangement that has no name here, by its parts from the base up. */
  ofParts: (kinds: readonly string[]) => kinds.join(', '),
  fromParts: 'From the parts stated. Fields that these replace do not count, and are not shown.',
  /** Never “all”: the number of what was not judged stands beside. */
  verdict: (v: { readonly passed: number; readonly judged: number; readonly unjudged: number }) =>
    `${v.passed} of ${v.judged} judged passed; ${v.unjudged} not judged.`,
  fromTo: (from: string, to: string) => `${from} to ${to}`,
  steps: (count: string, step: string) => `${count} ${step}s`,

  groups: {
    motion: 'Motion',
    travel: 'Stroke',
    fit: 'Fit and play',
    preload: 'Preload',
    effort: 'Effort and lock',
    tip: 'Tip and heat',
  },
  budget: {
    title: 'Error budget',
    head: (step: string) => ['term', 'motion', `${step}s`, 'turns'],
    playCounts: 'Play counts, because the flanks are not pressed over the whole stroke.',
    growing: 'grows with the stroke',
    whole: 'all of it',
  },
  checks: { title: 'Checks', passed: 'passed', failed: 'failed' },
  unjudged: 'Not judged',
  cautions: {
    title: 'Cautions and assumptions',
    text: 'A fine jack is not lifting gear. Block heavy work, keep hands and body out from under it, and stay within the load stated by whoever supplied the hardware. Wear eye protection with springs and pressed balls. The shop’s rules, local codes and licensed practice come first.',
    assumptions: [
      'Net lead, stroke, play and effort: the relations of the chapters, with their sources there.',
      'Limits of size: ISO 965-1 and ASME B1.1 by the classes written, or the usual ones.',
      'Lead errors, friction, hand angle and lock stiffness are the numbers stated, not measured.',
      'Moduli, Poisson’s ratios and yield strengths of the materials are from memory; expansion as stated in the chapter on heat.',
    ],
  },
  parts: {
    title: 'Parts',
    head: ['part', 'count', 'price of one', 'together'],
    set: (count: number) => `a set of ${count} pieces`,
    noPrice: 'no price',
    together: 'together',
    togetherOf: (v: { readonly priced: number; readonly lines: number; readonly unpriced: number }) =>
      `together, ${v.priced} of ${v.lines} lines; ${v.unpriced} ${v.unpriced === 1 ? 'has' : 'have'} no price`,
  },

  drawing: {
    label: (called: string) =>
      `Section of the assembly, ${called}, to scale, in the middle of its stroke, with the lengths of its threads`,
    lengths: { b_A: 'nut A', l_A: 'screw A', b_C: 'nut C', l_C: 'screw C' },
    sizes: {
      'thread A': 'thread A',
      'thread C': 'thread C',
      height: 'height',
      body: 'body',
      head: 'head',
      hexagon: 'hexagon',
      width: 'width',
      diameter: 'diameter',
      plate: 'thickness of the plate',
      collar: 'collar',
      neck: 'neck',
      'body diameter': 'diameter of the body',
      'collar diameter': 'diameter of the collar',
      'neck diameter': 'diameter of the neck',
      bore: 'bore',
      relief: 'relief',
    },
    ofParts: (noLock: boolean) =>
      `To scale. What the parts state is dimensioned; what they do not state is drawn with a usual size.${noLock ? ' No lock is stated, so none is drawn.' : ''}`,
    overall: (height: string) => `(height ${height})`,
    /** Length of a thread in its nut, after its designation. */
    depth: (length: string) => `× ${length}`,
    block: {
      title: 'Title block',
      name: 'name',
      assembly: 'adjuster, assembly',
      number: 'number',
      date: 'date',
      material: 'material',
      tolerance: 'general tolerance',
      scale: 'scale on paper',
      units: 'units',
      unitsAre: (view: 'metric' | 'inch' | 'both') => (view === 'inch' ? 'inch' : 'mm'),
      projection: 'projection',
      firstAngle: 'first angle',
    },
    /** What is to scale and what is not; a tip has a ball and a cap. */
    plain: (tip: boolean) =>
      `To scale: threads and their lengths${tip ? ', ball' : ''}. Plain: head, ${tip ? 'cap and base' : 'nut and base'}${tip ? ', and how deep the ball sits' : ''}; their sizes are not stated, so no height in all is given. Left out: ${tip ? '' : 'ball, '}lock and springs.`,
  },
};
