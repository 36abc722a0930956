/** Sheets of the lab: how to measure, the table to fill, the grid with the line that is expected, the checks; the rig’s readings; the key. */

import {
  CHECKS,
  DATE,
  DOWN_RUN,
  EXPECTED,
  expectedLine,
  FLAT_COLUMN,
  FLAT_STEP,
  FOUND_BY_FIT,
  HIDES,
  LAB_CAUTION,
  LAB_FACTS,
  LAB_KEY,
  LAB_PLOT,
  LAB_PROTOCOL,
  LAB_TABLE,
  labFor,
  labPair,
  PAIR_IS,
  pageOf,
  QUARTER_HEADS,
  QUARTERS_NAME,
  RESULTS,
  RIG_GIVEN,
  RIG_HEAD,
  RIG_QUARTERS,
  RIG_WAYS,
  rigChecks,
  rigFor,
  SIGN_OFF,
  STUDENT,
  UP_RUN,
  workedFor,
} from '#words/classroom.ts';
import { keyLine } from '../assembly/bench/key-line.ts';
import { spokenNumber } from '../engine/index.ts';
import { polyline, px } from '../figures/kit/svg.ts';
import { escapeText } from '../input/escape.ts';
import { fixed, type NumberFormat, numeral, show, type UnitView, withSign } from '../input/format.ts';
import { writeReadingsTable } from '../input/readings-table.ts';
import { wordsShown } from '../input/typed-words.ts';
import { FLATS, type Lab, PLACES } from './lab.ts';
import type { Heading } from './paper-html.ts';

const MOTION: NumberFormat = { shown: 'motion', digits: 4 };
const motion = (x: number, view: UnitView): string => show(x, MOTION, view);

const foot = ({ classCode, version }: Heading, page: number, pages: number): string =>
  `<p class="paper-foot">${escapeText(workedFor(classCode, version))} · ${pageOf(page, pages)}</p>`;

const rows = (list: readonly string[]): string => list.map((text) => `<li>${escapeText(text)}</li>`).join('');

/** Steps of 1, 2 or 5, so that at most ten of them reach over the range. */
const niceStep = (range: number): number => {
  const raw = range / 10;
  const power = 10 ** Math.floor(Math.log10(raw));
  return ([1, 2, 5, 10].find((m) => m * power >= raw * (1 - 1e-9)) ?? 10) * power;
};

const IN_UNIT = { metric: { name: 'µm', factor: 1e-3 }, inch: { name: 'thou', factor: 0.0254 } } as const;

/** A length in a column that has its unit at the head. */
const inColumn = (x: number, view: 'metric' | 'inch'): string =>
  fixed(x / IN_UNIT[view].factor, view === 'metric' ? 1 : 3);
/** A motion in the unit of the columns: a student in inches reads thou all through, not tenths of one. */
const sheetMotion = (x: number, view: 'metric' | 'inch', digits = 4): string =>
  view === 'metric'
    ? show(x, { shown: 'motion', digits }, view)
    : `${fixed(x / IN_UNIT.inch.factor, 3)} ${IN_UNIT.inch.name}`;
/** The same of the indicator at the side, which is read to a micrometre. */
const asideIn = (x: number, view: 'metric' | 'inch'): string =>
  fixed(x / IN_UNIT[view].factor, view === 'metric' ? 0 : 2);

/** Squared paper with the expected line on it; room above and below it for what is found. */
const gridSvg = ({ expected }: Lab, view: 'metric' | 'inch'): string => {
  const { name, factor } = IN_UNIT[view];
  const last = (expected.at(-1) ?? 0) / factor;
  const step = niceStep(Math.abs(last) * 1.2);
  const [low, high] = last > 0 ? [-1, Math.ceil(last / step) + 1] : [Math.floor(last / step) - 1, 1];
  const [left, top, width, height] = [52, 12, 560, 330];
  const x = (flat: number) => left + (flat / (PLACES - 1)) * width;
  const y = (steps: number) => top + ((high - steps) / (high - low)) * height;
  const fine: string[] = [];
  const bold: string[] = [];
  for (let i = 0; i <= (PLACES - 1) * 2; i++)
    (i % 2 === 0 ? bold : fine).push(`M${px(x(i / 2))} ${top}V${top + height}`);
  for (let i = low * 5; i <= high * 5; i++)
    (i % 5 === 0 ? bold : fine).push(`M${left} ${px(y(i / 5))}H${left + width}`);
  const names = Array.from({ length: high - low + 1 }, (_, i) => low + i)
    .map((i) => `<text x="${left - 6}" y="${px(y(i) + 4)}" text-anchor="end">${numeral(i * step)}</text>`)
    .join('');
  const flats = Array.from({ length: PLACES }, (_, i) => i)
    .map((i) => `<text x="${px(x(i))}" y="${top + height + 16}" text-anchor="middle">${i}</text>`)
    .join('');
  const line = polyline([
    [x(0), y(0)],
    [x(PLACES - 1), y(last / step)],
  ]);
  return (
    `<svg class="lab-grid" viewBox="0 0 640 380" role="img" aria-label="${escapeText(expectedLine(motion(expected.at(-1) ?? 0, view), PLACES - 1))}">` +
    `<path class="fine" d="${fine.join('')}"/><path class="bold" d="${bold.join('')}"/><path class="expected" d="${line}"/>${names}${flats}` +
    `<text x="${left + width}" y="${top + height + 32}" text-anchor="end">${FLAT_STEP}</text><text x="8" y="${top + height + 32}">${name}</text></svg>`
  );
};

/** A gauge block of 0.05 inch, in mm: near the metric one, so that the scatter of a reading is near it too. */
const INCH_BLOCK = 1.27;

const parted = (title: string, body: string): string => `<h3>${title}</h3>${body}`;
const toFill = (list: readonly string[]): string =>
  `<ul class="fill">${list.map((text) => `<li>${escapeText(text)} <span class="line"></span></li>`).join('')}</ul>`;

/** Sheets that are counted: each bears a head, its number and the foot. */
const sheetsOf = (
  title: string,
  bodies: readonly string[],
  heading: Heading,
  { dated, large }: { readonly dated: boolean; readonly large: boolean },
): string => {
  const head = (page: number) =>
    `<div class="page-head">${page === 0 ? `<h2>${escapeText(title)}</h2>` : `<p class="page-name">${escapeText(title)}</p>`}${dated ? `<p>${DATE} <span class="line"></span></p>` : ''}</div>`;
  return `<section class="paper lab"${large ? ' data-large' : ''}>${bodies
    .map((body, i) => `<div class="paper-page">${head(i)}${body}${foot(heading, i + 1, bodies.length)}</div>`)
    .join('')}</section>`;
};

/** How to measure and the table; the plot, the checks and the signatures. Two sheets, four in large print. */
export const labSheet = (lab: Lab, heading: Heading, view: 'metric' | 'inch', large = false): string => {
  const { student, pair, expected, flat } = lab;
  const table = expected
    .map((at, i) => `<tr><th scope="row">${i}</th><td>${inColumn(at, view)}</td>${'<td></td>'.repeat(4)}</tr>`)
    .join('');
  const how =
    `<p>${escapeText(labPair(pair.A.designation, pair.C.designation, sheetMotion(pair.Delta, view), withSign(sheetMotion(flat, view))))}</p>` +
    `${parted(LAB_PROTOCOL.title, `<ol>${rows(LAB_PROTOCOL.steps)}</ol>`)}`;
  const caution = `<p class="lab-caution">${escapeText(LAB_CAUTION)}</p>`;
  const readings = parted(
    LAB_TABLE,
    `<table class="lab-fill"><thead><tr><th scope="col">${FLAT_COLUMN}</th><th scope="col">${EXPECTED}, ${IN_UNIT[view].name}</th><th scope="col">${UP_RUN(1)}</th><th scope="col">${DOWN_RUN(1)}</th><th scope="col">${UP_RUN(2)}</th><th scope="col">${DOWN_RUN(2)}</th></tr></thead><tbody>${table}</tbody></table>`,
  );
  const plot = parted(LAB_PLOT, gridSvg(lab, view)) + parted(RESULTS.title, toFill(RESULTS.list));
  const signed =
    parted(CHECKS.title, `<ul class="ticks">${rows(CHECKS.list)}</ul>`) + parted(SIGN_OFF.title, toFill(SIGN_OFF.list));
  // In large print a sheet of German is fuller than one of English; each of these holds both.
  const bodies = large ? [how, caution + readings, plot, signed] : [how + caution + readings, plot + signed];
  return sheetsOf(labFor(student), bodies, heading, { dated: true, large });
};

/** What the instruments of the bench read, for who has no hardware: as many columns as runs, then one turn by quarters, then what is found without turning. */
export const rigSheet = (lab: Lab, heading: Heading, view: 'metric' | 'inch', large = false): string => {
  const { name } = IN_UNIT[view];
  const { readings, student, pair, quarters, checks } = lab;
  const column = (run: number, direction: 'up' | 'down') => {
    const part = readings.slice(run * 2 * PLACES, (run + 1) * 2 * PLACES).filter((r) => r.direction === direction);
    return direction === 'up' ? part : part.toReversed();
  };
  const columns = [column(0, 'up'), column(0, 'down'), column(1, 'up'), column(1, 'down')];
  const text = (x: number) => inColumn(x, view);
  const body = Array.from(
    { length: PLACES },
    (_, i) =>
      `<tr><th scope="row">${i}</th>${columns.map((c) => `<td>${text(c[i]?.reading ?? 0)}</td>`).join('')}</tr>`,
  ).join('');
  const last = quarters.on.length - 1;
  const quarterRows = quarters.on
    .slice(0, quarters.on.length / 2)
    .map(
      ({ turns, side }, i) =>
        `<tr><th scope="row">${numeral(turns, 2)}</th><td>${asideIn(side, view)}</td><td>${text(quarters.off[i]?.height ?? 0)}</td><td>${text(quarters.off[last - i]?.height ?? 0)}</td></tr>`,
    )
    .join('');
  // Inches have blocks of their own. What an indicator misses of a block is a share of it, so the reading grows with the block.
  const block = view === 'metric' ? checks.block.is : INCH_BLOCK;
  const size = (x: number) =>
    view === 'metric' ? show(x, { shown: 'size', digits: 5 }, view) : `${fixed(x / 25.4, 5)} in`;
  const found = rigChecks({
    is: size(block),
    reads: size((checks.block.reads * block) / checks.block.is),
    drift: sheetMotion(checks.drift, view, 2),
    line: show(checks.line, { shown: 'degrees', digits: 2 }, view),
  });
  const flats =
    `<p>${escapeText(`${PAIR_IS} ${spokenNumber(`${pair.A.designation} + ${pair.C.designation}`)}. ${RIG_HEAD(name)}`)}</p>` +
    `<table class="lab-fill"><thead><tr><th scope="col">${FLAT_COLUMN}</th><th scope="col">${UP_RUN(1)}</th><th scope="col">${DOWN_RUN(1)}</th><th scope="col">${UP_RUN(2)}</th><th scope="col">${DOWN_RUN(2)}</th></tr></thead><tbody>${body}</tbody></table><p>${RIG_WAYS}</p>`;
  const turned = parted(
    escapeText(QUARTERS_NAME(name)),
    `<p>${RIG_QUARTERS}</p><table class="lab-fill"><thead><tr>${QUARTER_HEADS.map((one) => `<th scope="col">${one}</th>`).join('')}</tr></thead><tbody>${quarterRows}</tbody></table>`,
  );
  const rest = `<ul>${rows(found)}</ul>${toFill(LAB_FACTS)}`;
  const bodies = large ? [flats, turned, rest] : [flats + turned + rest];
  return sheetsOf(rigFor(student), bodies, heading, { dated: false, large });
};

/** For the teacher: what each rig hides. */
export const labKey = (
  labs: readonly Lab[],
  heading: Heading,
  viewOf: (student: string) => 'metric' | 'inch',
): string => {
  const body = labs
    .map((lab) => {
      const view = viewOf(lab.student);
      return `<tr><th scope="row">${escapeText(lab.student)}</th><td>${escapeText(spokenNumber(`${lab.pair.A.designation} + ${lab.pair.C.designation}`))}</td><td>${escapeText(motion(lab.pair.Delta, view))}</td><td>${escapeText(motion(lab.truth, view))}</td><td>${lab.found === undefined ? '' : escapeText(motion(lab.found, view))}</td><td class="words">${escapeText(keyLine(lab.bench, view))}</td></tr>`;
    })
    .join('');
  return (
    `<section class="paper grid"><h2>${LAB_KEY}</h2><p class="paper-foot">${escapeText(workedFor(heading.classCode, heading.version))}</p>` +
    `<table><thead><tr><th scope="col">${STUDENT}</th>${[PAIR_IS, EXPECTED, RIG_GIVEN, FOUND_BY_FIT, HIDES].map((head) => `<th scope="col">${head}</th>`).join('')}</tr></thead><tbody>${body}</tbody></table></section>`
  );
};

/** The readings as the chapter on calibration takes them, in flats. */
export const readingsText = (lab: Lab): string =>
  writeReadingsTable(lab.readings, { positionUnit: 'steps', stepsPerTurn: FLATS }).replace(/^steps/, 'flats');

/** The same as rows of a table for the whole class: student, flat, reading, its unit as on the student’s rig, way. */
export const rigRows = (lab: Lab, view: 'metric' | 'inch'): readonly (readonly string[])[] => {
  const { name, factor } = IN_UNIT[view];
  return lab.readings.map(({ turns, reading, direction }) => [
    lab.student,
    String(Math.round(turns * FLATS)),
    (reading / factor).toFixed(view === 'metric' ? 1 : 3),
    name,
    wordsShown('runs', direction ?? ''),
  ]);
};
