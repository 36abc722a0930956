/** The lab: sheets to measure by, rigs with hidden faults and their key; below it typed readings are judged. */
import {
  FIRST_LAB,
  LAB_PAIRS,
  labSet,
  OPEN_RIG,
  PRINT_LAB,
  PRINT_LAB_KEY,
  PRINT_RIGS,
  RIG_COLUMNS,
  RIGS_AS_CSV,
  SET_LAB,
} from '#words/classroom.ts';
import { spokenNumber } from '../../engine/index.ts';
import { csvRow } from '../../exercises/csv-row.ts';
import { type Lab, labOf, readLabPairs } from '../../exercises/lab.ts';
import { labKey, labSheet, readingsText, rigRows, rigSheet } from '../../exercises/lab-html.ts';
import { saveFile } from '../../figures/kit/save.ts';
import { make, whenSent } from '../dom.ts';
import { chapterHref, judgeReadings, tabLink } from './lab-judge.ts';
import { button, type ClassAbove, printed, status, textField, viewOf } from './parts.ts';

const PAIRS = 'M10x1.5 + 3/8-16\nM8x1.25 + 5/16-18\nM12x1.75 + 7/16-14';

export const mountLab = (place: HTMLElement, above: ClassAbove): void => {
  const pairs = textField('lab-pairs', LAB_PAIRS, spokenNumber(PAIRS), 4);
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
    const { students, units, large } = roster.value;
    labs = [];
    for (const student of students) {
      const lab = labOf(read.value, heading.value.classCode, student, heading.value.version);
      if (!lab.ok) return said.refuse(lab);
      labs.push(lab.value);
    }
    view = (student) => viewOf(units.get(student));
    sheets.place.innerHTML = labs
      .map((lab) => labSheet(lab, heading.value, view(lab.student), large.has(lab.student)))
      .join('');
    rigs.place.innerHTML = labs
      .map((lab) => rigSheet(lab, heading.value, view(lab.student), large.has(lab.student)))
      .join('');
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

  const judging = judgeReadings(above, pairs.field);
  place.append(form, said.line, acts, make('p', {}, link), preview, ...judging);
};
