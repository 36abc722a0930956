/**
 * Calibration: readings of an indicator against turns, the straight line through them, what is left off it, and in words
 * what that says of the net lead, of lost motion and of the thread; then the correction, on a dial and as a table.
 */

import { unitQuestionText } from '#words/calibration.ts';
import { WORDS } from '#words/figures/calibration.ts';
import { DECIMAL_MARK, SEPARATOR } from '#words/language.ts';
import {
  type Calibrated,
  calibrated,
  calibrationOf,
  type Found,
  isLong,
  SET_UP,
  whenCalibrated,
} from '../../assembly/calibration-of.ts';
import {
  type Corrected,
  calibrationTable,
  correctionAt,
  good,
  mm,
  type Result,
  stepsMeant,
  unitQuestions,
  unitRemedies,
} from '../../engine/index.ts';
import { escapeText } from '../../input/escape.ts';
import { numeral, type UnitView } from '../../input/format.ts';
import { toCsv, writeReadingsTable } from '../../input/readings-table.ts';
import { reasonOf } from '../../words/reason.ts';
import { correctionText, counted, findingsOf, leadText, motionText, verdictText } from '../kit/calibration-words.ts';
import { saveCorrections } from '../kit/correction-file.ts';
import { dialReading, dialScale, dialSvg, updateDial } from '../kit/dial.ts';
import { defineFigure, type FigureContext, type NumbersOf, type Table } from '../kit/figure.ts';
import { legendKey } from '../kit/plots/frame.ts';
import { type Amount, amount, isAmount, type Row, readoutHtml, signedAmount } from '../kit/readout.ts';
import { saveFile } from '../kit/save.ts';
import { mountSliders, type Slider, sliderHtml, updateSlider } from '../kit/slider.ts';
import { cloudOf, plotsHtml } from './plots.ts';
import { readTextFile } from './read-file.ts';

const QUANTITIES = ['k', 'eps_A', 'eps_C', 'n', ...SET_UP] as const;
type Quantity = (typeof QUANTITIES)[number];
type Given = NumbersOf<'A' | 'C', Quantity, 'allowance', 'runs' | 'adjuster'>;
type Context = FigureContext<'A' | 'C', Quantity, 'allowance', 'runs' | 'adjuster'>;

/** No readings, a long table at work, or what it came to with the dial set to some turns. */
type State = Exclude<Found, { at: 'end' }> | Done;
interface Done {
  readonly at: 'end';
  readonly c: Calibrated;
  readonly n: number;
  /** The correction at these turns, or that nothing is known there. */
  readonly here: Result<Corrected>;
  /** A long table is worked in slices, so nothing is asked of it. */
  readonly asked: boolean;
}

const MOST_TABLE_ROWS = 400;

const stateOf = (numbers: Given): Result<State> => {
  const found = calibrationOf(numbers);
  if (!found.ok) return found;
  if (found.value.at !== 'end') return good(found.value);
  const { calibrated: c } = found.value;
  const { n } = numbers.values;
  return good({
    at: 'end',
    c,
    n,
    here: correctionAt(c.calibration.model, n),
    asked: !isLong(numbers.texts.runs),
  });
};

const legend = (): string => {
  const item = (sample: string, words: string) => legendKey(sample, words, 12);
  return `<ul class="legend">${item('<path class="reading up" d="M17 2l4 7h-8Z"/>', WORDS.legend.up)}${item('<path class="reading down" d="M17 10l4 -7h-8Z"/>', WORDS.legend.down)}${item('<path class="curve fit" d="M1 6H33"/>', WORDS.legend.line)}${item('<path class="curve model up" d="M1 6H33"/>', WORDS.legend.modelUp)}${item('<path class="curve model down" d="M1 6H33"/>', WORDS.legend.modelDown)}</ul>`;
};

const fileHtml = (): string =>
  `<p class="cal-file"><label>${WORDS.openFile} <input type="file" data-file data-key="file" accept=".csv,.txt,.tsv,.dat,text/*"></label> <span role="status" data-file-note></span></p>`;

const draw = (s: State, view: UnitView): string => {
  if (s.at === 'none') return `${fileHtml()}<p class="line">${WORDS.noReadings}</p>`;
  if (s.at === 'work')
    return `${fileHtml()}<p class="line cal-working" role="status"><svg class="cal-clock" viewBox="0 0 20 20" aria-hidden="true"><circle cx="10" cy="10" r="8"/><path d="M10 5V10H14"/></svg> ${WORDS.working.note(counted(s.characters))}</p>`;
  const { c } = s;
  const cloud = cloudOf(c.calibration, view);
  const { rows } = c.calibration;
  const all = rows.length;
  return (
    `${fileHtml()}${legend()}<div class="cal-plots">${plotsHtml(cloud)}</div>` +
    (cloud.drawn < all ? `<p class="line cal-thinned">${WORDS.thinned(counted(cloud.drawn), counted(all))}</p>` : '') +
    askHtml(c)
  );
};

const VERDICT_CLASS = { agrees: 'agrees', differs: 'differs', 'not to be told': 'untold' } as const;

/** What stands in the foot; its dial is moved in place, under the hand. */
const readings = (s: State, view: UnitView): string => {
  if (s.at !== 'end') return '';
  const { c } = s;
  return (
    `<div class="cal-words"><p class="cal-verdict ${VERDICT_CLASS[c.signed.verdict]}"><b>${WORDS.verdict[c.signed.verdict]}</b> ${escapeText(verdictText(c, view))}</p>` +
    `<ul>${findingsOf(c, view)
      .map((f) => `<li class="${f.determined ? 'told' : 'untold'}">${escapeText(f.says)}</li>`)
      .join('')}</ul></div>` +
    `<div class="cal-dial"><div data-dial>${dialHtml(s, view)}</div>` +
    `<p class="acts"><button type="button" data-act="corrections" data-key="act-corrections">${WORDS.saveCorrections}</button><button type="button" class="plain" data-act="residuals" data-key="act-residuals">${WORDS.saveResiduals}</button></p></div>`
  );
};

/** The question a slope far off asks, and what may be answered. */
const askHtml = (c: Calibrated): string => {
  const { lead } = c.calibration;
  const { table } = c;
  const questions = unitQuestions(lead, c.nominal);
  const steps = questions.some(({ kind }) => kind === 'unit')
    ? undefined
    : stepsMeant(lead, c.nominal, table, c.stepsPerTurn);
  if (questions.length === 0 && steps === undefined) return '';
  const remedies = unitRemedies(lead, c.nominal, table, c.stepsPerTurn);
  const buttons = remedies.map(
    ({ readingUnit, positionUnit }) =>
      `<button type="button" data-act="as" data-reading="${readingUnit}" data-position="${positionUnit}" data-key="as-${readingUnit}-${positionUnit}">${
        readingUnit === table.readingUnit ? WORDS.ask.positions(positionUnit) : WORDS.ask.readings(readingUnit)
      }</button>`,
  );
  if (steps !== undefined)
    buttons.push(
      `<button type="button" data-act="steps" data-steps="${steps}" data-key="ask-steps">${WORDS.ask.stepsYes(steps)}</button>`,
    );
  if (questions.some(({ kind }) => kind === 'sense'))
    buttons.push(`<button type="button" data-act="turn" data-key="ask-turn">${WORDS.ask.turn}</button>`);
  const asked = [
    ...questions.map(unitQuestionText),
    ...(steps === undefined
      ? []
      : [WORDS.ask.steps(numeral(Math.abs(lead / c.nominal), 3), numeral(c.stepsPerTurn), numeral(steps))]),
  ];
  return `<div class="cal-ask" role="group" aria-label="${WORDS.ask.label}"><p>${asked.map(escapeText).join(' ')}</p><p class="acts">${buttons.join('')}</p></div>`;
};

const sliderOf = (c: Calibrated): Slider<'n'> => {
  const { read } = c.calibration.model;
  const [min, max] = read.up ?? read.down ?? [0, 0];
  return { name: 'n', label: WORDS.slider, min, max, step: 1 / 24 };
};

const turnsAt = ({ c, n }: Done): number => {
  const { min, max } = sliderOf(c);
  return Math.max(min, Math.min(max, n));
};

/** The hand stands at zero where no correction is known, which the readout says. */
const travelOf = ({ here }: Done): number => (here.ok ? here.value.travel : 0);

/** Digits down to a hundredth of a micrometre. */
const digitsOf = (z: number): number => Math.max(1, Math.floor(Math.log10(Math.max(Math.abs(z), 1e-5) / 1e-5)) + 1);

const readout = ({ here, asked }: Done, view: UnitView): Row[] => {
  if (!here.ok) return [['refused', WORDS.readout.refused, reasonOf(here)]];
  const { nominal, correction, travel } = here.value;
  if (!asked)
    return [
      ['nominal', WORDS.readout.nominal, motionText(nominal, view)],
      ['correction', WORDS.readout.correction, correctionText(correction, view)],
      ['travel', WORDS.readout.travel, motionText(travel, view)],
    ];
  return [
    amount('nominal', WORDS.readout.nominal, nominal, 'motion', 4),
    signedAmount('correction', WORDS.readout.correction, correction, 'motion', digitsOf(correction)),
    amount('travel', WORDS.readout.travel, travel, 'motion', 4),
  ];
};

/** What the readings and the set-up make of the lead. */
const rows = (s: State): readonly Row[] =>
  s.at !== 'end' || !s.asked
    ? []
    : [
        amount('lead', WORDS.rows.lead, s.c.calibration.lead, 'motion', 4),
        amount('whole', WORDS.rows.whole, s.c.signed.U, 'motion', 2),
        signedAmount('difference', WORDS.rows.difference, s.c.signed.difference, 'motion', 3),
      ];

const printed = (s: State, view: UnitView): readonly Amount[] =>
  s.at !== 'end' ? [] : readout(s, view).filter(isAmount);

const dialHtml = (s: Done, view: UnitView): string => {
  const n = turnsAt(s);
  const scale = dialScale(s.c.nominal, view);
  return (
    `${dialSvg(travelOf(s), scale, WORDS.dial)}<div>${sliderHtml(sliderOf(s.c), n, numeral(n))}` +
    `<div data-dial-reads>${readoutHtml(readout(s, view), view)}</div></div>`
  );
};

const caption = (s: State, view: UnitView): string => {
  if (s.at === 'none') return WORDS.noReadings;
  if (s.at === 'work') return WORDS.working.caption(counted(s.characters));
  const { c, n, here } = s;
  return WORDS.caption({
    readings: counted(c.calibration.rows.length),
    lead: leadText(c, view),
    verdict: c.signed.verdict,
    U: motionText(c.signed.U, view, 2),
    nominal: motionText(c.nominal, view),
    here: here.ok
      ? {
          turns: numeral(n),
          correction: correctionText(here.value.correction, view),
          dial: dialReading(here.value.travel, dialScale(c.nominal, view)),
        }
      : reasonOf(here),
  });
};

const table = (s: State, view: UnitView): Table => {
  if (s.at !== 'end') return { head: WORDS.table.noneYet.head, rows: [[WORDS.table.noneYet.row]] };
  const { places } = s.c.calibration;
  const shown = places.slice(0, MOST_TABLE_ROWS);
  const left = places.length - shown.length;
  return {
    head: WORDS.table.head,
    rows: [
      ...shown.map((row) => [
        numeral(row.turns),
        WORDS.table.directions[row.direction],
        counted(row.readings),
        motionText(row.nominal, view),
        motionText(row.measured, view),
        correctionText(row.correction, view),
      ]),
      ...(left > 0 ? [[WORDS.table.more(counted(left)), '', '', '', '', '']] : []),
    ],
  };
};

const update = (stage: HTMLElement, s: State, view: UnitView): void => {
  if (s.at !== 'end') return;
  const figure = figureOf(stage);
  const n = turnsAt(s);
  updateDial(figure, travelOf(s), dialScale(s.c.nominal, view));
  updateSlider(figure, sliderOf(s.c), n, numeral(n));
  // Whole, since a refusal has fewer lines; its ± and what makes it a button were added on the page.
  const place = figure.querySelector<HTMLElement>('[data-dial-reads]');
  const html = readoutHtml(readout(s, view), view);
  if (!place || place.dataset.said === html) return;
  place.dataset.said = html;
  place.innerHTML = html;
};

const CSV = 'text/csv;charset=utf-8';
const STYLE = { separator: SEPARATOR, decimalMark: DECIMAL_MARK } as const;

const act = (button: HTMLElement, context: Context): void => {
  const c = calibrated(context.numbers());
  if (!c) return;
  if (button.dataset.act === 'corrections') saveCorrections(c);
  else if (button.dataset.act === 'residuals') {
    const { header, rows } = calibrationTable(c.calibration);
    saveFile(toCsv(header, rows, STYLE), WORDS.files.residuals, CSV);
  } else if (button.dataset.act === 'steps') context.set('k', Number(button.dataset.steps));
  else if (button.dataset.act === 'turn') {
    const { table, stepsPerTurn } = c;
    const turned = table.rows.map((row) => ({ ...row, reading: mm(-row.reading) }));
    context.type('runs', writeReadingsTable(turned, { ...table, stepsPerTurn }));
  } else {
    // The numbers as they were typed, under the other unit.
    const { table, stepsPerTurn } = c;
    const { reading, position } = button.dataset;
    const other = unitRemedies(c.calibration.lead, c.nominal, table, stepsPerTurn).find(
      ({ readingUnit, positionUnit }) => readingUnit === reading && positionUnit === position,
    );
    if (other === undefined) return;
    const text = writeReadingsTable(table.rows, { ...table, stepsPerTurn });
    const [, ...lines] = text.split('\n');
    const [header = ''] = writeReadingsTable([], other).split('\n');
    context.type('runs', [header, ...lines].join('\n'));
  }
};

/** The dial stands in the foot of the figure. */
const figureOf = (stage: HTMLElement): HTMLElement => stage.closest('figure') ?? stage;

const mount = (stage: HTMLElement, context: Context): void => {
  const figure = figureOf(stage);
  whenCalibrated(stage, context.redraw);
  mountSliders(figure, {
    sliders: () => {
      const c = calibrated(context.numbers());
      return c ? [sliderOf(c)] : [];
    },
    read: (name) => context.numbers().values[name],
    write: context.set,
  });
  figure.addEventListener('click', (event) => {
    const button = event.target instanceof Element ? event.target.closest<HTMLElement>('[data-act]') : null;
    if (button) act(button, context);
  });
  stage.addEventListener('change', async (event) => {
    const input = event.target instanceof HTMLInputElement && event.target.type === 'file' ? event.target : undefined;
    const file = input?.files?.[0];
    if (!input || !file) return;
    const text = await readTextFile(file);
    // The same file may be opened again after it was mended.
    input.value = '';
    const note = stage.querySelector('[data-file-note]');
    if (note) note.textContent = text.ok ? '' : reasonOf(text);
    if (text.ok) context.type('runs', text.value);
  });
};

export const calibrationFigure = defineFigure({
  name: 'calibration',
  title: WORDS.title,
  threads: ['A', 'C'],
  quantities: QUANTITIES,
  choices: ['allowance'],
  texts: ['runs', 'adjuster'],
  chief: ['runs'],
  groups: {
    threads: ['A', 'C', 'k', 'adjuster'],
    errors: ['eps_A', 'eps_C', 'allowance'],
    setup: [...SET_UP],
    dial: ['n'],
  },
  state: stateOf,
  draw,
  caption,
  rows,
  printed,
  readings,
  steadyReadings: true,
  numbersName: WORDS.numbers,
  table,
  renderKey: (s) => (s.at !== 'end' ? s.name : [s.c.name, s.c.signed]),
  mount,
  update,
});
