/**
 * Calibration: readings of an indicator against turns, the straight line through them, what is left off it, and in words
 * what that says of the net lead, of lost motion and of the thread; then the correction, on a dial and as a table.
 */

import { type Calibrated, calibrated, calibrationOf, whenCalibrated } from '../../assembly/calibration-of.ts';
import type { Numbers } from '../../assembly/numbers.ts';
import {
  calibrationTable,
  correctionAt,
  correctionsIn,
  correctionTable,
  good,
  type PositionUnit,
  type Result,
  type Unit,
  unitQuestions,
  unitRemedies,
} from '../../engine/index.ts';
import { escapeText } from '../../input/escape.ts';
import { numeral, type UnitView } from '../../input/format.ts';
import { toCsv, writeReadingsTable } from '../../input/readings-table.ts';
import { correctionText, counted, findingsOf, leadText, motionText, verdictText } from '../kit/calibration-words.ts';
import { dialReading, dialScale, dialSvg, updateDial } from '../kit/dial.ts';
import { legendKey } from '../kit/plots/frame.ts';
import { type LiveFigure, readoutHtml } from '../kit/readout.ts';
import { saveFile } from '../kit/save.ts';
import { mountSliders, type Slider, sliderHtml, updateSlider } from '../kit/slider.ts';
import type { FigureContext, Table, Widget } from '../kit/widget.ts';
import { cloudOf, plotsHtml } from './plots.ts';
import { readTextFile } from './read-file.ts';

const MOST_TABLE_ROWS = 400;

const legend = (): string => {
  const item = (sample: string, words: string) => legendKey(sample, words, 12);
  return `<ul class="legend">${item('<path class="reading up" d="M17 2l4 7h-8Z"/>', 'read on the way up')}${item('<path class="reading down" d="M17 10l4 -7h-8Z"/>', 'read on the way down')}${item('<path class="curve fit" d="M1 6H33"/>', 'straight line through all')}${item('<path class="curve model up" d="M1 6H33"/>', 'fitted with gap and once-per-turn part, up')}${item('<path class="curve model down" d="M1 6H33"/>', 'the same, down')}</ul>`;
};

const fileHtml = (): string =>
  '<p class="cal-file"><label>Open a file of readings <input type="file" data-file data-key="file" accept=".csv,.txt,.tsv,.dat,text/*"></label> <span role="status" data-file-note></span></p>';

const draw = (numbers: Numbers, view: UnitView): Result<string> => {
  const found = calibrationOf(numbers);
  if (found.at === 'work')
    return good(
      `${fileHtml()}<p class="line cal-working" role="status"><svg class="cal-clock" viewBox="0 0 20 20" aria-hidden="true"><circle cx="10" cy="10" r="8"/><path d="M10 5V10H14"/></svg> Working through ${counted(found.characters)} characters of readings …</p>`,
    );
  if (!found.result.ok) return found.result;
  const c = found.result.value;
  const cloud = cloudOf(c.calibration, view);
  const { rows } = c.calibration;
  const all = rows.length;
  return good(
    `${fileHtml()}${legend()}<div class="cal-plots">${plotsHtml(cloud)}</div>` +
      (cloud.drawn < all
        ? `<p class="line cal-thinned">${counted(cloud.drawn)} of ${counted(all)} readings are drawn, the extremes of each stretch; all are in the fit.</p>`
        : '') +
      `<div class="cal-words"><p class="cal-verdict ${c.agreement.agrees ? 'agrees' : 'differs'}"><b>${c.agreement.agrees ? 'Agrees' : 'Does not agree'}.</b> ${escapeText(verdictText(c, view))}</p>${askHtml(c)}` +
      `<ul>${findingsOf(c, view)
        .map((f) => `<li class="${f.determined ? 'told' : 'untold'}">${escapeText(f.says)}</li>`)
        .join('')}</ul></div>` +
      `<div class="cal-dial"><div data-dial>${dialHtml(c, numbers, view)}</div>` +
      `<p class="acts"><button type="button" data-act="corrections" data-key="act-corrections">Save the correction table as CSV</button><button type="button" class="plain" data-act="residuals" data-key="act-residuals">Save readings with residuals</button></p></div>`,
  );
};

/** The question a slope far off asks, and what may be answered. */
const askHtml = (c: Calibrated): string => {
  const { lead } = c.calibration;
  const questions = unitQuestions(lead, c.nominal);
  if (questions.length === 0) return '';
  const { table } = c;
  const remedies = unitRemedies(lead, c.nominal, table, c.stepsPerTurn);
  const buttons = remedies.map(
    ({ readingUnit, positionUnit }) =>
      `<button type="button" data-act="as" data-reading="${readingUnit}" data-position="${positionUnit}" data-key="as-${readingUnit}-${positionUnit}">${
        readingUnit === table.readingUnit
          ? `Yes: positions were in ${positionUnit === 'steps' ? 'flats' : positionUnit}`
          : `Yes: readings were in ${readingUnit}`
      }</button>`,
  );
  return `<div class="cal-ask" role="group" aria-label="A question about the units"><p>${questions.map(escapeText).join(' ')}</p><p class="acts">${buttons.join('')}</p></div>`;
};

const sliderOf = (c: Calibrated): Slider => {
  const up = correctionsIn(c.calibration.corrections, 'up');
  const rows = up.length > 0 ? up : c.calibration.corrections;
  const [min, max] = [rows[0]?.turns ?? 0, rows.at(-1)?.turns ?? 1];
  return { name: 'n', label: 'turns, on the way up', min, max, step: 1 / 24 };
};

const turnsAt = (c: Calibrated, numbers: Numbers): number => {
  const { min, max } = sliderOf(c);
  return Math.max(min, Math.min(max, numbers.values.n ?? min));
};

const correctedHere = (c: Calibrated, numbers: Numbers) =>
  correctionAt(c.calibration.corrections, numbers.values.n ?? 0);

const travelOf = (c: Calibrated, numbers: Numbers): number => {
  const here = correctedHere(c, numbers);
  return here.ok ? here.value.travel : 0;
};

const readout = (c: Calibrated, numbers: Numbers, view: UnitView): LiveFigure[] => {
  const here = correctedHere(c, numbers);
  if (!here.ok) return [['refused', 'no correction', here.reason]];
  const { nominal, correction, travel } = here.value;
  return [
    ['nominal', 'travel by the nominal lead', motionText(nominal, view)],
    ['correction', 'correction', correctionText(correction, view)],
    ['travel', 'true travel, on the dial', motionText(travel, view)],
  ];
};

const dialHtml = (c: Calibrated, numbers: Numbers, view: UnitView): string => {
  const n = turnsAt(c, numbers);
  const scale = dialScale(c.nominal, view);
  return (
    `${dialSvg(travelOf(c, numbers), scale, 'Dial: true travel at these turns')}<div>${sliderHtml(sliderOf(c), n, numeral(n))}` +
    `${readoutHtml(readout(c, numbers, view))}</div>`
  );
};

const says = (numbers: Numbers, view: UnitView): string => {
  const found = calibrationOf(numbers);
  if (found.at === 'work') return `Working through ${counted(found.characters)} characters of readings.`;
  if (!found.result.ok) return found.result.reason;
  const c = found.result.value;
  const here = correctedHere(c, numbers);
  const dial = here.ok
    ? ` At ${numeral(numbers.values.n ?? 0)} turns the correction is ${correctionText(here.value.correction, view)}; the dial stands at ${dialReading(here.value.travel, dialScale(c.nominal, view))}.`
    : ` ${here.reason}`;
  return `${counted(c.calibration.rows.length)} readings give a net lead of ${leadText(c, view)}, which ${c.agreement.agrees ? 'agrees' : 'does not agree'} with the nominal ${motionText(c.nominal, view)}.${dial}`;
};

const tableOf = (numbers: Numbers, view: UnitView): Table => {
  const found = calibrationOf(numbers);
  if (found.at === 'work' || !found.result.ok) return { head: ['turns'], rows: [['none yet']] };
  const { corrections } = found.result.value.calibration;
  const shown = corrections.slice(0, MOST_TABLE_ROWS);
  const left = corrections.length - shown.length;
  return {
    head: ['turns', 'direction', 'readings', 'nominal travel', 'measured travel', 'correction'],
    rows: [
      ...shown.map((row) => [
        numeral(row.turns),
        row.direction,
        counted(row.readings),
        motionText(row.nominal, view),
        motionText(row.measured, view),
        correctionText(row.correction, view),
      ]),
      ...(left > 0
        ? [[`and ${counted(left)} more places, which “Save the correction table” holds`, '', '', '', '', '']]
        : []),
    ],
  };
};

const outlineOf = (numbers: Numbers, view: UnitView): string => {
  const found = calibrationOf(numbers);
  if (found.at === 'work') return `work ${found.serial}`;
  if (!found.result.ok) return found.result.reason;
  const { serial, agreement } = found.result.value;
  return JSON.stringify([serial, agreement, view]);
};

const update = (stage: HTMLElement, numbers: Numbers, view: UnitView): void => {
  const c = calibrated(numbers);
  if (!c) return;
  const n = turnsAt(c, numbers);
  updateDial(stage, travelOf(c, numbers), dialScale(c.nominal, view));
  updateSlider(stage, sliderOf(c), n, numeral(n));
  // Whole, since a refusal has fewer lines.
  const place = stage.querySelector('.readout');
  const html = readoutHtml(readout(c, numbers, view));
  if (place && place.outerHTML !== html) place.outerHTML = html;
};

const CSV = 'text/csv;charset=utf-8';

const act = (button: HTMLElement, context: FigureContext): void => {
  const c = calibrated(context.numbers());
  if (!c) return;
  if (button.dataset.act === 'corrections') {
    const { header, rows } = correctionTable(c.calibration);
    saveFile(toCsv(header, rows), 'correction-table.csv', CSV);
  } else if (button.dataset.act === 'residuals') {
    const { header, rows } = calibrationTable(c.calibration);
    saveFile(toCsv(header, rows), 'readings-with-residuals.csv', CSV);
  } else {
    // The numbers as they were typed, under the other unit.
    const { table, stepsPerTurn } = c;
    const text = writeReadingsTable(table.rows, { ...table, stepsPerTurn });
    const [, ...lines] = text.split('\n');
    const [header = ''] = writeReadingsTable([], {
      readingUnit: button.dataset.reading as Unit,
      positionUnit: button.dataset.position as PositionUnit,
    }).split('\n');
    context.type('runs', [header, ...lines].join('\n'));
  }
};

const mount = (stage: HTMLElement, context: FigureContext): void => {
  whenCalibrated(stage, context.redraw);
  mountSliders(stage, {
    sliders: () => {
      const c = calibrated(context.numbers());
      return c ? [sliderOf(c)] : [];
    },
    read: () => context.numbers().values.n ?? 0,
    write: (_name, value) => context.set('n', value),
  });
  stage.addEventListener('click', (event) => {
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
    if (note) note.textContent = text.ok ? '' : text.reason;
    if (text.ok) context.type('runs', text.value);
  });
};

export const calibrationFigure: Widget = {
  name: 'calibration',
  title: 'Readings of an indicator against turns, fitted',
  threads: ['A', 'C'],
  quantities: ['k', 'eps_A', 'eps_C', 'n'],
  choices: ['allowance'],
  texts: ['runs'],
  draw,
  says,
  table: tableOf,
  outline: outlineOf,
  mount,
  update,
};
