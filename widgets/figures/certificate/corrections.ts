/** The correction table of a certificate: a row for every step from home, both ways, each with its expanded uncertainty. */

import { WORDS } from '#words/figures/certificate.ts';
import type { Calibrated } from '../../assembly/calibration-of.ts';
import {
  type CorrectionStep,
  type CorrectionWay,
  correctedBy,
  correctionsBySteps,
  type Direction,
  UNITS,
  type Unit,
  waysTold,
} from '../../engine/index.ts';
import { dividerOf, stepName } from '../../input/dividers.ts';
import { fixed, numeral, type UnitView, unitText } from '../../input/format.ts';
import { reasonOf } from '../../words/reason.ts';
import { axisUnit, type Frame, legendItem, panelHtml, xAt, yAt } from '../kit/plots/frame.ts';
import { type Point, polyline } from '../kit/svg.ts';

/** Rows that are printed; beyond that every second, third … step, and the file holds all. */
const MOST_ROWS = 144;
/** Blocks side by side, each under its own head, and rows of one before a new band of blocks begins. */
const ABREAST = 3;
const TALLEST = 24;
const LEAST = 7;
const CURVE = 120;

export interface Corrections {
  readonly rows: readonly CorrectionStep[];
  readonly every: number;
}

/** Undefined where the set-up has no uncertainty; the lead was refused before it. */
export const correctionsOf = (c: Calibrated): Corrections | undefined => {
  const found = correctionsBySteps(c.calibration.model, c.stepsPerTurn, c.setUp, MOST_ROWS);
  return found.ok ? found.value : undefined;
};

/** A place, as many decimals as tell steps apart. */
const plainly = (v: number): string => numeral(Number(v.toFixed(4)));

const stepOf = (c: Calibrated): string => stepName(dividerOf(c.stepsPerTurn));

/** Units of the cells: one, or that of the shop with the other behind it. */
const unitsOf = (largest: number, view: UnitView): readonly Unit[] =>
  view === 'both' ? [axisUnit(largest, 'metric'), axisUnit(largest, 'inch')] : [axisUnit(largest, view)];

interface Column {
  readonly unit: Unit;
  readonly decimals: number;
}

/** Decimals of a column: two digits of the smallest uncertainty in it, and no more than a hundredth of a micrometre. */
const columnsOf = (rows: readonly CorrectionStep[], view: UnitView): readonly Column[] => {
  const ways = rows.flatMap((row) => [row.up, row.down]).filter((way) => way !== undefined);
  const least = Math.min(...ways.map((way) => way.U).filter((U) => U > 0));
  const largest = Math.max(1e-5, ...ways.map((way) => Math.max(way.U, Math.abs(way.correction))));
  return unitsOf(largest, view).map((unit) => {
    const size = UNITS[unit].factor;
    const finest = Math.round(Math.log10(size / 1e-5));
    const worth = Number.isFinite(least) ? 1 - Math.floor(Math.log10(least / size)) : finest;
    return { unit, decimals: Math.max(0, Math.min(finest, worth)) };
  });
};

const cellOf = (columns: readonly Column[], z: number, signed: boolean): string => {
  const [own = '', other] = columns.map(({ unit, decimals }) => {
    const size = z / UNITS[unit].factor;
    // Halves away from nought on both sides, as on paper; a nought has no sign.
    const rounded = (Math.sign(size) * Math.round(Math.abs(size) * 10 ** decimals * (1 + 1e-12))) / 10 ** decimals;
    return `${signed && rounded > 0 ? '+' : ''}${fixed(rounded === 0 ? 0 : rounded, decimals)}`;
  });
  return other === undefined ? own : `${own} (${other})`;
};

const unitName = (columns: readonly Column[]): string => {
  const [own = '', other] = columns.map(({ unit }) => unitText(unit));
  return other === undefined ? own : `${own} (${other})`;
};

const wayCells = (columns: readonly Column[], way: CorrectionWay | undefined): readonly [string, string] =>
  way === undefined ? ['–', '–'] : [cellOf(columns, way.correction, true), cellOf(columns, way.U, false)];

const blockHtml = (rows: readonly CorrectionStep[], columns: readonly Column[], step: string): string =>
  `<table class="correction"><thead><tr><th scope="col">${WORDS.correction.steps(step)}</th><th scope="col">${WORDS.correction.turns}</th><th scope="col">${WORDS.correction.up}</th><th scope="col">±&nbsp;U</th><th scope="col">${WORDS.correction.down}</th><th scope="col">±&nbsp;U</th></tr></thead><tbody>${rows
    .map(
      (row) =>
        `<tr><th scope="row">${plainly(row.steps)}</th><td>${plainly(row.turns)}</td>${[row.up, row.down]
          .flatMap((way) => wayCells(columns, way))
          .map((text) => `<td>${text}</td>`)
          .join('')}</tr>`,
    )
    .join('')}</tbody></table>`;

/** Why one of the two columns is empty. */
const untoldWay = ({ calibration: { model, hysteresis } }: Calibrated): string => {
  if (waysTold(model).length === 2) return '';
  const read = (['up', 'down'] as const).filter((way) => model.read[way] !== undefined);
  return read.length === 1
    ? WORDS.correction.oneWay[read[0] === 'up' ? 'up' : 'down']
    : WORDS.correction.untold(hysteresis.determined ? '' : reasonOf(hysteresis.why));
};

export const correctionsHtml = (c: Calibrated, { rows, every }: Corrections, view: UnitView): string => {
  const columns = columnsOf(rows, view);
  const step = stepOf(c);
  const height = Math.min(TALLEST, Math.max(LEAST, Math.ceil(rows.length / ABREAST)));
  const blocks: string[] = [];
  for (let i = 0; i < rows.length; i += height) blocks.push(blockHtml(rows.slice(i, i + height), columns, step));
  const says = [
    WORDS.correction.says(unitName(columns), numeral(c.calibration.model.home)),
    ...(every > 1 ? [WORDS.correction.thinned(numeral(every), step)] : []),
    untoldWay(c),
  ].filter((sentence) => sentence !== '');
  return `<p>${says.join(' ')}</p><div class="correction-blocks" tabindex="0" role="group" aria-label="${WORDS.correction.table}">${blocks.join('')}</div>`;
};

/** The table again, a line each, for readers of tables. */
export const correctionLines = ({ rows }: Corrections, view: UnitView): string[][] => {
  const columns = columnsOf(rows, view);
  const unit = unitName(columns);
  return rows.flatMap((row) =>
    (['up', 'down'] as const).flatMap((way) => {
      const here = row[way];
      if (here === undefined) return [];
      const [correction, U] = wayCells(columns, here);
      return [[WORDS.table.correctionAt(plainly(row.turns), way), `${correction} ± ${U} ${unit}`]];
    }),
  );
};

/** The correction over the turns, one curve for each way. */
export const curvesHtml = (c: Calibrated, view: UnitView): string => {
  const { model } = c.calibration;
  const curves = waysTold(model).flatMap(
    (way): { way: Direction; points: readonly (readonly [number, number])[] }[] => {
      const read = model.read[way];
      if (read === undefined) return [];
      const [from, to] = read;
      return [
        {
          way,
          points: Array.from({ length: CURVE + 1 }, (_, i) => {
            const n = from + ((to - from) * i) / CURVE;
            return [n, correctedBy(model, n, way).correction] as const;
          }),
        },
      ];
    },
  );
  const all = curves.flatMap(({ points }) => points);
  const heights = all.map(([, z]) => z);
  const [low, high] = [Math.min(0, ...heights), Math.max(0, ...heights)];
  const room = Math.max(0.08 * (high - low), 1e-5);
  const turns = all.map(([n]) => n);
  const [left, right] = [Math.min(...turns), Math.max(...turns)];
  const frame: Frame = {
    x: right > left ? [left, right] : [left - 1, left + 1],
    y: [low - room, high + room],
    unit: axisUnit(Math.max(high, -low), view),
  };
  const marks = curves
    .map(
      ({ way, points }) =>
        `<path class="curve model ${way}" d="${polyline(points.map(([n, z]): Point => [xAt(frame, n), yAt(frame, z)]))}"/>`,
    )
    .join('');
  return `${panelHtml(frame, WORDS.correction.curve, 6, marks)}<ul class="legend">${curves.map(({ way }) => legendItem(`model ${way}`, undefined, WORDS.correction[way])).join('')}</ul>`;
};
