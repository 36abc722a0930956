/**
 * The certificate: one page that says what was measured, with what, when, how warm, and what came out. It reports the
 * calibration’s own results and has no numbers of its own.
 */

import { WORDS } from '#words/figures/certificate.ts';
import { SIGNING_PARTS } from '#words/figures/kit.ts';
import {
  type Calibrated,
  calibrated,
  calibrationOf,
  type Found,
  isLong,
  SET_UP,
  turnsRead,
  whenCalibrated,
} from '../../assembly/calibration-of.ts';
import { good, type Result } from '../../engine/index.ts';
import { dayShown } from '../../input/day.ts';
import { escapeText } from '../../input/escape.ts';
import { numeral, type UnitView } from '../../input/format.ts';
import { LONGEST_PASSPORTS, withMeasured } from '../../input/passports.ts';
import { reasonOf } from '../../words/reason.ts';
import {
  allowanceText,
  counted,
  findingsOf,
  largeBeside,
  leadText,
  motionText,
  signedMotion,
  verdictText,
} from '../kit/calibration-words.ts';
import { saveCorrections } from '../kit/correction-file.ts';
import { defineFigure, type FigureContext, type NumbersOf } from '../kit/figure.ts';
import { amount, signedAmount } from '../kit/readout.ts';
import { sheetPart } from '../kit/sheet.ts';
import { correctionLines, correctionsHtml, correctionsOf, curvesHtml } from './corrections.ts';

const QUANTITIES = ['k', 'eps_A', 'eps_C', ...SET_UP] as const;
const STATED = ['piece', 'dated', 'warmth', 'gauge', 'method'] as const;
const TEXTS = ['runs', 'adjuster', ...STATED] as const;
type Given = NumbersOf<'A' | 'C', (typeof QUANTITIES)[number], 'allowance', (typeof TEXTS)[number]>;

/** No readings, a long table at work, or what it came to with what the reader stated. */
type State = Exclude<Found, { at: 'end' }> | Done;
interface Done {
  readonly at: 'end';
  readonly c: Calibrated;
  readonly stated: Pick<Given, 'threads' | 'choices' | 'texts' | 'values'>;
}

const stateOf = (numbers: Given): Result<State> => {
  const found = calibrationOf(numbers);
  if (!found.ok) return found;
  if (found.value.at !== 'end') return good(found.value);
  return good({ at: 'end', c: found.value.calibrated, stated: numbers });
};

const orNot = (text: string): string => (text === '' ? `<i>${WORDS.notStated}</i>` : escapeText(text));

const givens = ({ c, stated: { texts, choices } }: Done, view: UnitView): [string, string][] => {
  const { rows } = c.calibration;
  const [low, high] = turnsRead(c.calibration);
  return [
    [WORDS.stated.piece, orNot(texts.piece)],
    ...(c.adjuster === undefined || c.adjuster.name === ''
      ? []
      : [[WORDS.adjuster, escapeText(c.adjuster.name)] as [string, string]]),
    [WORDS.threads, escapeText(WORDS.threadsText(c.threads.A.designation, c.threads.C?.designation))],
    ...travelOf(c, low, high, view),
    [WORDS.stated.dated, orNot(texts.dated)],
    [WORDS.stated.warmth, orNot(texts.warmth)],
    [WORDS.stated.gauge, orNot(texts.gauge)],
    [WORDS.stated.method, orNot(texts.method)],
    [WORDS.readings, WORDS.readingsText({ count: counted(rows.length), from: numeral(low), to: numeral(high) })],
    [WORDS.nominalLead, WORDS.perTurn(motionText(c.nominal, view))],
    [WORDS.leadErrors, WORDS.leadErrorsText[choices.allowance](allowanceText(c))],
  ];
};

/** What the parts say of the travel, and whether the readings stay within it. */
const travelOf = ({ adjuster }: Calibrated, low: number, high: number, view: UnitView): [string, string][] =>
  adjuster === undefined
    ? []
    : [
        [
          WORDS.travel,
          WORDS.travelText({
            turns: numeral(adjuster.turns, 3),
            stroke: motionText(adjuster.stroke, view),
            beyond: high - low > adjuster.turns + 1e-6,
          }),
        ],
      ];

/** The verdict on the lead, and with it what was found besides that is larger than what matters: a lead may agree on a jack that waves. */
const headOf = (c: Calibrated, view: UnitView): string => {
  const verdict = WORDS.verdicts[c.signed.verdict];
  const large = largeBeside(c, view);
  return large.length === 0 ? verdict : WORDS.andLarge(verdict, large, motionText(c.matters, view));
};

/** The whole ± and its parts, the largest first. */
const wholeOf = ({ c }: Done, view: UnitView): [string, string][] => [
  [WORDS.whole.name, WORDS.whole.value(motionText(c.signed.U, view, 2))],
  [
    WORDS.whole.largest,
    c.signed.parts
      .slice(0, 3)
      .map((part) => WORDS.whole.part(SIGNING_PARTS[part.name], motionText(part.U, view, 2)))
      .join('; '),
  ],
];

/** What is said of the lead, by the names of its lines. A long table is worked in slices, so nothing is asked of it. */
const amountsOf = (s: State) => {
  if (s.at !== 'end' || isLong(s.stated.texts.runs)) return [];
  const { nominal, signed } = s.c;
  return [
    amount('nominal', WORDS.nominalLead, nominal, 'motion', 4),
    amount('whole', WORDS.whole.name, signed.U, 'motion', 2),
    signedAmount('difference', WORDS.lessNominal, signed.difference, 'motion', 3),
  ];
};

const results = (s: Done, view: UnitView): [string, string][] => resultsOf(s.c, wholeOf(s, view), view);

const resultsOf = (c: Calibrated, whole: [string, string][], view: UnitView): [string, string][] => [
  [WORDS.measuredLead, leadText(c, view)],
  ...whole,
  [WORDS.lessNominal, signedMotion(c.signed.difference, view)],
  ...findingsOf(c, view).map((f): [string, string] => [f.name, f.value]),
];

const list = (s: Done, rows: readonly (readonly [string, string])[], safe: boolean): string => {
  const asked = amountsOf(s);
  const line = ([name, value]: readonly [string, string]) => {
    const html = safe ? value : escapeText(value);
    const key = asked.find((one) => one.name === name)?.key;
    return `<div><dt>${name}</dt><dd>${key === undefined ? html : `<span data-result="${key}">${html}</span>`}</dd></div>`;
  };
  return `<dl>${rows.map(line).join('')}</dl>`;
};

const draw = (s: State, view: UnitView): string => {
  if (s.at === 'none') return `<p class="line">${WORDS.noReadings}</p>`;
  if (s.at === 'work')
    return `<p class="line" role="status"><svg class="cal-clock" viewBox="0 0 20 20" aria-hidden="true"><circle cx="10" cy="10" r="8"/><path d="M10 5V10H14"/></svg> ${WORDS.working.note}</p>`;
  const { c } = s;
  const corrections = correctionsOf(c);
  return (
    `<div class="sheet certificate-page" role="group" aria-label="${WORDS.heading}"><header><p class="sheet-title">${WORDS.heading}</p><p class="sheet-verdict">${escapeText(headOf(s.c, view))}</p></header>` +
    `<div class="certificate-columns"><section>${sheetPart('found', WORDS.found, `${list(s, results(s, view), false)}<p>${escapeText(verdictText(s.c, view))}</p>`)}</section>` +
    `<section>${sheetPart('measured', WORDS.measured, list(s, givens(s, view), true))}</section></div>` +
    `<section class="correction-part">${sheetPart('correction', WORDS.correction.title, corrections === undefined ? '' : `<div class="correction-whole">${correctionsHtml(c, corrections, view)}<div class="certificate-curve">${curvesHtml(c, view)}</div></div>`)}</section>` +
    `<section class="sheet-notes"><p>${WORDS.notes}</p></section>` +
    `<p class="signed">${WORDS.signed.map((who) => `<span>${who}</span>`).join('')}</p></div>` +
    `<p class="acts"><button type="button" class="plain" data-act="passport" data-key="certificate-passport">${WORDS.passport.write}</button><button type="button" class="plain" data-act="corrections" data-key="certificate-corrections">${WORDS.correction.save}</button> <span role="status" data-part="said"></span></p>`
  );
};

/** The mark of a piece, as its passport is headed: what follows “no.”, else how its name begins. */
const markIn = (piece: string): string =>
  (/(?:\b(?:no|nr)\b\.?|№|#)\s*([\p{L}\d][\p{L}\d./-]{0,11})/iu.exec(piece)?.[1] ?? piece.split(/[,:]/, 1)[0] ?? '')
    .trim()
    .slice(0, 24);

/** Writes what was found into the passport of the piece, which is kept with the design in use; the answer is what was done, or why nothing was. */
const intoPassport = (
  context: Pick<
    FigureContext<'A' | 'C', (typeof QUANTITIES)[number], 'allowance', (typeof TEXTS)[number]>,
    'numbers' | 'design' | 'keepInDesign'
  >,
): string => {
  const numbers = context.numbers();
  const c = calibrated(numbers);
  if (!c) return WORDS.noReadings;
  const design = context.design();
  if (!design) return WORDS.passport.noDesign;
  const off = design.netLead === undefined ? 0 : Math.abs(design.netLead / c.nominal - 1);
  if (!(off < 1e-6)) return WORDS.passport.otherThreads(design.name);
  const piece = markIn(numbers.texts.piece);
  if (piece === '') return WORDS.passport.noMark;
  const undated = numbers.texts.dated === '';
  const { lead, periodic, hysteresis } = c.calibration;
  const wave = periodic.determined && periodic.significant ? 2 * periodic.amplitude : undefined;
  const written = withMeasured(design.passport, {
    piece,
    day: undated ? dayShown(new Date()) : numbers.texts.dated,
    lead: Math.abs(lead),
    wave,
    hysteresis: hysteresis.determined ? Math.abs(hysteresis.gap) : undefined,
    // Of the wave twice the standard error of its amplitude, from crest to trough.
    doubt: {
      lead: c.signed.U,
      ...(wave !== undefined && periodic.determined && { wave: 4 * periodic.error }),
      ...(hysteresis.determined && { hysteresis: hysteresis.interval.half }),
    },
  });
  if (!written.ok) return reasonOf(written);
  const { text, row } = written.value;
  if (text.length > LONGEST_PASSPORTS) return WORDS.passport.full;
  const fault = context.keepInDesign('passport', text);
  return fault === '' ? WORDS.passport.written(design.name, row, undated) : fault;
};

const plainly = (html: string): string =>
  html.replace(/<[^>]*>/g, '').replace(/&#(\d+);/g, (_, code) => String.fromCharCode(Number(code)));

export const certificateFigure = defineFigure({
  name: 'certificate',
  title: WORDS.title,
  threads: ['A', 'C'],
  quantities: QUANTITIES,
  choices: ['allowance'],
  texts: TEXTS,
  setElsewhere: ['A', 'C', 'adjuster', 'k', 'eps_A', 'eps_C', 'allowance', 'runs', ...SET_UP],
  chief: ['piece', 'dated'],
  groups: {
    circumstances: ['warmth', 'gauge', 'method'],
  },
  state: stateOf,
  draw,
  printed: amountsOf,
  caption: (s, view) => {
    if (s.at === 'none') return WORDS.noReadings;
    if (s.at === 'work') return WORDS.working.caption;
    const missing = STATED.filter((name) => s.stated.texts[name] === '').map((name) => WORDS.stated[name]);
    return WORDS.caption({ verdict: verdictText(s.c, view), missing });
  },
  table: (s, view) => {
    if (s.at !== 'end') return { head: WORDS.table.noneYet.head, rows: [[WORDS.table.noneYet.row]] };
    const corrections = correctionsOf(s.c);
    return {
      head: WORDS.table.head,
      rows: [
        ...givens(s, view).map(([name, value]) => [name, plainly(value)]),
        ...results(s, view).map(([name, value]) => [name, value]),
        ...(corrections === undefined ? [] : correctionLines(corrections, view)),
      ],
    };
  },
  renderKey: (s, { threads, choices, values, texts: { runs: _, ...stated } }) =>
    s.at !== 'end' ? s.name : [s.c.name, s.c.signed, threads, stated, choices, values],
  mount: (stage, context) => {
    whenCalibrated(stage, context.redraw);
    stage.addEventListener('click', ({ target }) => {
      const act = target instanceof Element && target.closest<HTMLElement>('[data-act]')?.dataset.act;
      const c = act === 'corrections' ? calibrated(context.numbers()) : undefined;
      if (c) saveCorrections(c);
      if (act !== 'passport') return;
      const said = stage.querySelector('[data-part=said]');
      if (said) said.textContent = intoPassport(context);
    });
  },
});
