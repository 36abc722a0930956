/** The lab: sheets to measure by, rigs with hidden faults and their key; typed readings are judged here, and open in the chapter on calibration. */
import {
  FIRST_LAB,
  JUDGE_READINGS,
  LAB_PAIRS,
  labSet,
  OPEN_READINGS,
  OPEN_RIG,
  PRINT_LAB,
  PRINT_LAB_KEY,
  PRINT_RIGS,
  READINGS_IN,
  RIG_COLUMNS,
  RIGS_AS_CSV,
  readingsJudged,
  SET_LAB,
  TYPED_PAIR,
  TYPED_READINGS,
} from '#words/classroom.ts';
import { csvRow } from '../../exercises/csv-row.ts';
import { type Lab, labOf, readLabPairs } from '../../exercises/lab.ts';
import { labKey, labSheet, readingsText, rigRows, rigSheet } from '../../exercises/lab-html.ts';
import { judgeTable, labVerdict, READ_IN, typedTable } from '../../exercises/lab-typed.ts';
import { saveFile } from '../../figures/kit/save.ts';
import { type NumberFormat, show } from '../../input/format.ts';
import { make, whenSent } from '../dom.ts';
import { button, type ClassAbove, lineField, oneOf, printed, status, textField, viewOf } from './parts.ts';

const PAIRS = 'M10x1.5 + 3/8-16\nM8x1.25 + 5/16-18\nM12x1.75 + 7/16-14';
const FIRST_PAIR = 'M10x1.5 + 3/8-16';

/** Where the chapter on calibration begins with this pair and these readings: numbers only, no name. */
const chapterHref = (A: string, C: string, readings: string): string =>
  `calibrate.html?${new URLSearchParams({ 'shop.A': A, 'shop.C': C, 'shop.k': '6', 'shop.runs': readings.split('\n').join(' | ') })}#figure-calibration`;
/** In a tab of its own: what is typed on this page is neither stored nor to be lost. */
const tabLink = (text: string) => make('a', { href: '#', target: '_blank', rel: 'noopener', hidden: '' }, text);

const MOTION: NumberFormat = { shown: 'motion', digits: 4 };

export const mountLab = (place: HTMLElement, above: ClassAbove): void => {
  const pairs = textField('lab-pairs', LAB_PAIRS, PAIRS, 4);
  const said = status();
  const [sheets, rigs, key] = [printed('lab'), printed('rigs'), printed('lab-key')];
  const preview = make('div', { class: 'papers-preview', role: 'region', 'aria-label': FIRST_LAB, tabindex: '0' });
  const link = tabLink(OPEN_RIG);
  let labs: Lab[] = [];
  /** Each student’s as set, whatever the roster says by now. */
  let view: (student: string) => 'metric' | 'inch' = () => 'metric';
  const acts = make(
    'div',
    { class: 'button-row', hidden: '' },
    button(PRINT_LAB, sheets.print),
    button(PRINT_RIGS, rigs.print),
    button(PRINT_LAB_KEY, key.print),
    button(RIGS_AS_CSV, () => {
      const rows = [RIG_COLUMNS, ...labs.flatMap((lab) => rigRows(lab, view(lab.student)))];
      saveFile(`${rows.map(csvRow).join('\r\n')}\r\n`, 'rigs.csv', 'text/csv');
    }),
  );
  const set = () => {
    acts.hidden = link.hidden = true;
    for (const part of [sheets.place, rigs.place, key.place, preview]) part.replaceChildren();
    const read = readLabPairs(pairs.field.value);
    pairs.field.setAttribute('aria-invalid', String(!read.ok));
    if (!read.ok) return said.refuse(read);
    const [roster, heading] = [above.roster(), above.heading()];
    if (!roster.ok) return said.refuse(roster);
    if (!heading.ok) return said.refuse(heading);
    const { students, units } = roster.value;
    labs = [];
    for (const student of students) {
      const lab = labOf(read.value, heading.value.classCode, student, heading.value.version);
      if (!lab.ok) return said.refuse(lab);
      labs.push(lab.value);
    }
    view = (student) => viewOf(units.get(student));
    sheets.place.innerHTML = labs.map((lab) => labSheet(lab, heading.value, view(lab.student))).join('');
    rigs.place.innerHTML = labs.map((lab) => rigSheet(lab, heading.value, view(lab.student))).join('');
    key.place.innerHTML = labKey(labs, heading.value, view);
    const [first] = labs;
    if (first) {
      preview.innerHTML =
        labSheet(first, heading.value, view(first.student)) +
        rigSheet(first, heading.value, view(first.student)) +
        labKey(labs.slice(0, 1), heading.value, view);
      link.href = chapterHref(first.pair.A.designation, first.pair.C.designation, readingsText(first));
    }
    acts.hidden = link.hidden = false;
    said.say(labSet(labs.length));
  };
  const form = make(
    'form',
    { novalidate: '' },
    pairs.place,
    make('div', { class: 'button-row' }, make('button', { type: 'submit' }, SET_LAB)),
  );
  whenSent(form, set);

  const typed = textField('lab-typed', TYPED_READINGS, '', 6);
  const pair = lineField('lab-pair', TYPED_PAIR, FIRST_PAIR);
  const readIn = oneOf('lab-unit', READINGS_IN, READ_IN, 'µm', (unit) => unit);
  const judged = status();
  const opened = tabLink(OPEN_READINGS);
  const judge = make(
    'form',
    { novalidate: '' },
    pair.place,
    typed.place,
    readIn.place,
    make('div', { class: 'button-row' }, make('button', { type: 'submit' }, JUDGE_READINGS)),
  );
  whenSent(judge, () => {
    opened.hidden = true;
    const read = readLabPairs(pair.field.value);
    pair.field.setAttribute('aria-invalid', String(!read.ok));
    if (!read.ok) return judged.refuse(read);
    const [one] = read.value;
    if (!one) return;
    const table = typedTable(typed.field.value, readIn.chosen());
    typed.field.setAttribute('aria-invalid', String(!table.ok));
    if (!table.ok) return judged.refuse(table);
    const fit = judgeTable(table.value, one.Delta);
    typed.field.setAttribute('aria-invalid', String(!fit.ok));
    if (!fit.ok) return judged.refuse(fit);
    const { lead, leadInterval, hysteresis, periodic } = fit.value;
    const written = (x: number, digits = 4) => show(x, { ...MOTION, digits }, 'both');
    judged.say(
      readingsJudged({
        lead: written(lead),
        half: written(leadInterval.half, 2),
        design: written(one.Delta),
        ...labVerdict(fit.value, one.Delta),
        // Less than its own uncertainty is no lost motion that the readings show.
        lost:
          hysteresis.determined && Math.abs(hysteresis.gap) > hysteresis.interval.half
            ? written(hysteresis.lostMotion, 3)
            : undefined,
        wave: periodic.determined && periodic.significant ? written(periodic.amplitude, 2) : undefined,
      }),
    );
    opened.href = chapterHref(one.A.designation, one.C.designation, table.value);
    opened.hidden = false;
  });
  place.append(form, said.line, acts, make('p', {}, link), preview, judge, judged.line, make('p', {}, opened));
};
