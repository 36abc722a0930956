/** Typed readings of the lab: those of one student, or of a whole class, judged against each one’s own pair. They open in the chapter on calibration. */
import {
  AS_ON_SHEET,
  CLASS_READINGS,
  CLASS_READINGS_CSV,
  CLASS_READINGS_HEADS,
  classJudged,
  JUDGE_READINGS,
  LAB_VERDICTS,
  OPEN_READINGS,
  PAIR_IS,
  READINGS_IN,
  READINGS_SAY,
  readingsJudged,
  STUDENT,
  TYPED_PAIR,
  TYPED_READINGS,
} from '#words/classroom.ts';
import type { Pair } from '../../assembly/pair-of.ts';
import { good, type Result, spokenNumber } from '../../engine/index.ts';
import { csvRow } from '../../exercises/csv-row.ts';
import { labPairOf, readLabPairs } from '../../exercises/lab.ts';
import { readingsByStudent } from '../../exercises/lab-class.ts';
import { judgeTable, labVerdict, READ_IN, type ReadIn, typedTable } from '../../exercises/lab-typed.ts';
import { looselyWritten } from '../../exercises/loosely.ts';
import { saveFile } from '../../figures/kit/save.ts';
import { type NumberFormat, show } from '../../input/format.ts';
import { reasonOf } from '../../words/reason.ts';
import { make, whenSent } from '../dom.ts';
import { button, type ClassAbove, lineField, oneOf, status, tableOf, textField, viewOf } from './parts.ts';

const FIRST_PAIR = 'M10x1.5 + 3/8-16';
const MOTION: NumberFormat = { shown: 'motion', digits: 4 };

/** Where the chapter on calibration begins with this pair and these readings: numbers only, no name. */
export const chapterHref = (A: string, C: string, readings: string): string =>
  `calibrate.html?${new URLSearchParams({ 'shop.A': A, 'shop.C': C, 'shop.k': '6', 'shop.runs': readings.split('\n').join(' | ') })}#figure-calibration`;

/** In a tab of its own: what is typed on this page is neither stored nor to be lost. */
export const tabLink = (text: string) => make('a', { href: '#', target: '_blank', rel: 'noopener', hidden: '' }, text);

/** What the readings of one student come to, in words and in columns of numbers, µm. */
interface Judged {
  readonly table: string;
  readonly says: string;
  readonly cells: readonly string[];
}

const judged = (text: string, bare: ReadIn, { Delta }: Pair): Result<Judged> => {
  const table = typedTable(text, bare);
  if (!table.ok) return table;
  const fit = judgeTable(table.value, Delta);
  if (!fit.ok) return fit;
  const { lead, leadInterval, hysteresis, periodic } = fit.value;
  const written = (x: number, digits = 4) => show(x, { ...MOTION, digits }, 'both');
  // Less than its own uncertainty is no lost motion that the readings show.
  const lost = hysteresis.determined && Math.abs(hysteresis.gap) > hysteresis.interval.half;
  const found = labVerdict(fit.value, Delta);
  const says = readingsJudged({
    lead: written(lead),
    half: written(leadInterval.half, 2),
    design: written(Delta),
    ...found,
    lost: lost ? written(hysteresis.lostMotion, 3) : undefined,
    wave: periodic.determined && periodic.significant ? written(periodic.amplitude, 2) : undefined,
  });
  const micrometres = (mm: number) => (1000 * mm).toFixed(2);
  return good({
    table: table.value,
    says,
    cells: [
      micrometres(lead),
      micrometres(leadInterval.half),
      micrometres(Delta),
      LAB_VERDICTS[found.verdict],
      lost ? micrometres(hysteresis.lostMotion) : '',
      says,
    ],
  });
};

const nameOf = ({ A, C }: Pair): string => spokenNumber(`${A.designation} + ${C.designation}`);

/** `pairs` are those of the class, as they are typed above. */
export const judgeReadings = (above: ClassAbove, pairs: HTMLTextAreaElement): readonly HTMLElement[] => {
  const typed = textField('lab-typed', TYPED_READINGS, '', 6);
  const whose = lineField('lab-pair', TYPED_PAIR, spokenNumber(FIRST_PAIR));
  const readIn = oneOf('lab-unit', READINGS_IN, ['sheet', ...READ_IN], 'sheet', (unit) =>
    unit === 'sheet' ? AS_ON_SHEET : unit,
  );
  const said = status();
  const opened = tabLink(OPEN_READINGS);
  const found = make('div');
  const unitFor = (student: string | undefined): ReadIn => {
    const chosen = readIn.chosen();
    if (chosen !== 'sheet') return chosen;
    const roster = above.roster();
    const units = student !== undefined && roster.ok ? roster.value.units.get(student) : undefined;
    return viewOf(units) === 'inch' ? 'thou' : 'µm';
  };
  /** The pair that a student has in the lab of this class. */
  const pairOf = (student: string): Result<Pair> => {
    const [all, heading] = [readLabPairs(pairs.value), above.heading()];
    if (!all.ok) return all;
    return heading.ok ? labPairOf(all.value, heading.value.classCode, student, heading.value.version) : heading;
  };
  const students = (): readonly string[] => {
    const roster = above.roster();
    return roster.ok ? roster.value.students : [];
  };

  const ofClass = (typedBy: NonNullable<ReturnType<typeof readingsByStudent>>) => {
    const rows = typedBy.students.map(({ student, text }) => {
      const pair = pairOf(student);
      const read = pair.ok ? judged(text, unitFor(student), pair.value) : pair;
      return { student, pair: pair.ok ? nameOf(pair.value) : '', read };
    });
    const good = rows.filter(({ read }) => read.ok).length;
    const missing = students().filter((one) => !rows.some(({ student }) => student === one));
    said.say(classJudged(good, rows.length - good, typedBy.unknown, missing));
    const saysOf = (read: Result<Judged>) => (read.ok ? read.value.says : reasonOf(read));
    found.append(
      tableOf(
        CLASS_READINGS,
        [STUDENT, PAIR_IS, READINGS_SAY],
        rows.map(({ student, pair, read }) => [student, pair, saysOf(read)]),
      ),
      make(
        'div',
        { class: 'button-row' },
        button(CLASS_READINGS_CSV, () => {
          const lines = rows.map(({ student, pair, read }) =>
            csvRow([student, pair, ...(read.ok ? read.value.cells : ['', '', '', '', '', reasonOf(read)])]),
          );
          saveFile(`${[csvRow(CLASS_READINGS_HEADS), ...lines].join('\r\n')}\r\n`, 'lab-results.csv', 'text/csv');
        }),
      ),
    );
  };

  const form = make(
    'form',
    { novalidate: '' },
    whose.place,
    typed.place,
    readIn.place,
    make('div', { class: 'button-row' }, make('button', { type: 'submit' }, JUDGE_READINGS)),
  );
  whenSent(form, () => {
    opened.hidden = true;
    found.replaceChildren();
    for (const { field } of [whose, typed]) field.setAttribute('aria-invalid', 'false');
    const typedBy = readingsByStudent(typed.field.value, students());
    if (typedBy) return ofClass(typedBy);
    const wanted = looselyWritten(whose.field.value);
    const student = students().find((one) => looselyWritten(one) === wanted);
    const read = readLabPairs(whose.field.value);
    const pair = student === undefined ? read : pairOf(student);
    if (!pair.ok) {
      whose.field.setAttribute('aria-invalid', 'true');
      return said.refuse(pair);
    }
    const [one] = [pair.value].flat();
    if (!one) return;
    const fit = judged(typed.field.value, unitFor(student), one);
    if (!fit.ok) {
      typed.field.setAttribute('aria-invalid', 'true');
      return said.refuse(fit);
    }
    said.say(student === undefined ? fit.value.says : `${student}, ${nameOf(one)}. ${fit.value.says}`);
    opened.href = chapterHref(one.A.designation, one.C.designation, fit.value.table);
    opened.hidden = false;
  });
  return [form, said.line, make('p', {}, opened), found];
};
