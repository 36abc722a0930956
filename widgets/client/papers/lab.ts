/** The lab: sheets to measure by, rigs with hidden faults and their key; typed readings are handed to the chapter on calibration. */
import {
  FIRST_LAB,
  JUDGE_READINGS,
  LAB_PAIRS,
  labSet,
  OPEN_RIG,
  PRINT_LAB,
  PRINT_LAB_KEY,
  PRINT_RIGS,
  RIGS_AS_CSV,
  SET_LAB,
  TYPED_PAIR,
  TYPED_READINGS,
} from '#words/classroom.ts';
import { csvRow } from '../../exercises/csv-row.ts';
import { type Lab, labOf, readLabPairs } from '../../exercises/lab.ts';
import { labKey, labSheet, readingsText, rigSheet } from '../../exercises/lab-html.ts';
import { saveFile } from '../../figures/kit/save.ts';
import { parseReadings } from '../../input/readings-table.ts';
import { make, whenSent } from '../dom.ts';
import { button, type ClassAbove, lineField, printed, status, textField, viewOf } from './parts.ts';

const PAIRS = 'M10x1.5 + 3/8-16\nM8x1.25 + 5/16-18\nM12x1.75 + 7/16-14';
const FIRST_PAIR = 'M10x1.5 + 3/8-16';

/** Where the chapter on calibration begins with this pair and these readings: numbers only, no name. */
const chapterHref = (A: string, C: string, readings: string): string =>
  `calibrate.html?${new URLSearchParams({ 'shop.A': A, 'shop.C': C, 'shop.k': '6', 'shop.runs': readings.split('\n').join(' | ') })}`;

export const mountLab = (place: HTMLElement, above: ClassAbove): void => {
  const pairs = textField('lab-pairs', LAB_PAIRS, PAIRS, 4);
  const said = status();
  const [sheets, rigs, key] = [printed('lab'), printed('rigs'), printed('lab-key')];
  const preview = make('div', { class: 'papers-preview', role: 'region', 'aria-label': FIRST_LAB, tabindex: '0' });
  const link = make('a', { href: '#' }, OPEN_RIG);
  let labs: Lab[] = [];
  const acts = make(
    'div',
    { class: 'button-row', hidden: '' },
    button(PRINT_LAB, sheets.print),
    button(PRINT_RIGS, rigs.print),
    button(PRINT_LAB_KEY, key.print),
    button(RIGS_AS_CSV, () =>
      saveFile(
        labs
          .flatMap((lab) =>
            readingsText(lab)
              .split('\n')
              .slice(1)
              .map((row) => `${csvRow([lab.student, ...row.split('; ')])}\r\n`),
          )
          .join(''),
        'rigs.csv',
        'text/csv',
      ),
    ),
  );
  const set = () => {
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
    const view = (student: string) => viewOf(units.get(student));
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
  link.hidden = true;

  const typed = textField('lab-typed', TYPED_READINGS, '', 6);
  const pair = lineField('lab-pair', TYPED_PAIR, FIRST_PAIR);
  const judged = status();
  const judge = make(
    'form',
    { novalidate: '' },
    pair.place,
    typed.place,
    make('div', { class: 'button-row' }, make('button', { type: 'submit' }, JUDGE_READINGS)),
  );
  whenSent(judge, () => {
    const read = readLabPairs(pair.field.value);
    pair.field.setAttribute('aria-invalid', String(!read.ok));
    if (!read.ok) return judged.refuse(read);
    const text = typed.field.value.trim();
    // Without a head the columns are those of the sheet.
    const table = /^[^\d\s+−-]/.test(text) ? text : `flats; reading (µm); direction\n${text}`;
    const readings = parseReadings(table, { stepsPerTurn: 6 });
    typed.field.setAttribute('aria-invalid', String(!readings.ok));
    if (!readings.ok) return judged.refuse(readings);
    const [one] = read.value;
    if (!one) return;
    const open = make('a', { href: chapterHref(one.A.designation, one.C.designation, table) });
    // A link that is clicked goes the same way in the folder and in the one file.
    place.append(open);
    open.click();
    open.remove();
  });
  place.append(form, said.line, acts, make('p', {}, link), preview, judge, judged.line);
};
