/**
 * Where a teacher sets papers: chapters and counts, class code, roster; then sheets and key for print, and the question bank as
 * files. All of it is worked out in the browser. The roster is put into no link and stays with the tab.
 */

import {
  EMPTY_GRID_AS_CSV,
  GRID_AS_CSV,
  HALF_FOR_SLIP,
  KEY_ON_ONE,
  LARGE_PRINT,
  LOOK,
  PRINT_EMPTY_GRID,
  PRINT_GRID,
  PRINT_METHOD,
  ROOM_NAMES,
  SCORED_BY_HAND,
  setWithOther,
  VARIANTS,
} from '#words/classroom.ts';
import {
  AS_CSV,
  AS_NEWER_QTI,
  ASKED_AS,
  BANK_AS_QTI,
  CLASS_CODE,
  FIRST_SHEET,
  FORM_NAMES,
  fileHolds,
  howMany,
  LINK_FILLED_IN,
  LINK_TO_SET,
  PAPER,
  PRINT_KEY,
  PRINT_SHEETS,
  PRINTERS_SIZE,
  papersSet,
  papersSoFar,
  questionBank,
  ROSTER,
  SET_PAPERS,
} from '#words/client.ts';
import { zipped } from '../../assembly/files/zipped.ts';
import { runInSlices } from '../../assembly/run-in-slices.ts';
import { type Bad, bad, good, type Result } from '../../engine/index.ts';
import { gridCsv, gridSheet, type SetPaper } from '../../exercises/answer-grid.ts';
import type { BankChapter } from '../../exercises/bank.ts';
import { FORMS, type OwnUnits } from '../../exercises/forms.ts';
import { NO_OWN, withOwn } from '../../exercises/own.ts';
import { langOf } from '../../exercises/own-language.ts';
import {
  type Counts,
  choose,
  MOST_OF_A_CHAPTER,
  MOST_VARIANTS,
  type PaperOrder,
  paperParameters,
  readPaperLink,
  setBank,
  setPaper,
} from '../../exercises/paper.ts';
import { type Heading, keySheet, methodSheet, ROOMS, studentSheet } from '../../exercises/paper-html.ts';
import { bankCsv, type QtiVersion, qtiFiles } from '../../exercises/qti.ts';
import { readClassCode, readRoster } from '../../exercises/roster.ts';
import { saveFile } from '../../figures/kit/save.ts';
import type { ClassData } from '../../page/class-data.ts';
import { reasonOf } from '../../words/reason.ts';
import { all, make, setText, whenSent } from '../dom.ts';
import { keepForm } from './keep-form.ts';
import { mountLab } from './lab.ts';
import { mountMarking } from './marking.ts';
import { measureFor } from './measure.ts';
import { mountOwn } from './own.ts';
import { button, type ClassAbove, lineField, oneOf, printed } from './parts.ts';
import { mountPlan } from './plan.ts';
import { mountProject, mountSafety } from './sheets-to-sign.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    'papers-count-odd': { readonly chapter: string; readonly text: string; readonly most: number };
    'papers-none-asked': Readonly<Record<never, never>>;
    'papers-variants-odd': { readonly text: string; readonly most: number };
  }
}

/** How often papers that take long tell how many are set, ms: a reader who listens hears each of these. */
const TELL_EVERY = 500;

const readVariants = (text: string): Result<number> => {
  const n = /^\s*\d{1,3}\s*$/.test(text) ? Number(text) : Number.NaN;
  return n >= 1 && n <= MOST_VARIANTS ? good(n) : bad('papers-variants-odd', { text, most: MOST_VARIANTS });
};

/** As it opens, a paper asks one exercise of each of the first chapters, as a first lesson would; of all, it would fill a morning. */
const FIRST_CHAPTERS = 6;

const SIZES = [PRINTERS_SIZE, 'A4', 'Letter'] as const;

export const mountPapers = (
  place: HTMLElement,
  { bank: theirs, methods, course }: ClassData,
  until: AbortSignal,
): void => {
  let own = NO_OWN;
  let bank = theirs;
  const marksOf = (id: string) => own.marks[id] ?? 1;
  place.querySelector('[data-without-script]')?.remove();
  const count = ({ slug, title, exercises }: BankChapter, chapter: number) => {
    const field = make('input', {
      id: `papers-${slug}`,
      type: 'text',
      inputmode: 'numeric',
      autocomplete: 'off',
      maxlength: '20000',
      value: chapter < FIRST_CHAPTERS ? '1' : '0',
    });
    return { slug, title, lang: exercises[0] ? langOf(exercises[0]) : {}, field };
  };
  const counts = bank.chapters.map(count);
  const code = make('input', {
    id: 'papers-class',
    type: 'text',
    autocomplete: 'off',
    maxlength: '20000',
    value: 'demo',
  });
  const roster = make('textarea', { id: 'papers-roster', rows: '5', autocomplete: 'off', spellcheck: 'false' });
  const status = make('p', { class: 'verdict', role: 'status' });
  const preview = make('div', { class: 'papers-preview', role: 'region', 'aria-label': FIRST_SHEET, tabindex: '0' });
  const stacks = {
    sheets: printed('sheets'),
    grid: printed('grid'),
    empty: printed('empty-grid'),
    method: printed('method'),
    key: printed('key'),
  };
  const [sheets, keys, method, grid] = [stacks.sheets.place, stacks.key.place, stacks.method.place, stacks.grid.place];
  const emptyGrid = stacks.empty.place;
  const printing = make('div', { class: 'button-row', hidden: '' });
  const link = make('a', { href: '#' }, LINK_TO_SET);
  window.addEventListener('afterprint', () => delete document.body.dataset.print, { signal: until });
  let papers: SetPaper[] = [];
  /** Keys become a part of the page when they are printed: two hundred of them are as much again as all sheets. */
  let keyTexts: string[] = [];
  /** So do the grid and the sheet of how all is worked. */
  let writeRest = () => {};
  const printRest = (stack: { readonly print: () => void }) => () => {
    writeRest();
    stack.print();
  };
  const onOne = make('input', { type: 'checkbox', id: 'papers-key-columns' });
  const printKeys = () => {
    keys.innerHTML = keyTexts.join('');
    keys.toggleAttribute('data-columns', onOne.checked);
    stacks.key.print();
  };
  const csvOf = (filled: boolean) => () =>
    saveFile(gridCsv(papers, filled), filled ? 'answer-grid.csv' : 'empty-grid.csv', 'text/csv');
  printing.append(
    button(PRINT_SHEETS, stacks.sheets.print),
    button(PRINT_GRID, printRest(stacks.grid)),
    button(PRINT_EMPTY_GRID, () => {
      emptyGrid.innerHTML = gridSheet(papers, { classCode: code.value, version: bank.version }, false);
      stacks.empty.print();
    }),
    button(PRINT_METHOD, printRest(stacks.method)),
    button(PRINT_KEY, printKeys),
    button(GRID_AS_CSV, csvOf(true)),
    button(EMPTY_GRID_AS_CSV, csvOf(false)),
    make('div', { class: 'field choice' }, make('label', {}, onOne, KEY_ON_ONE)),
  );

  const sizes = oneOf('papers-size', PAPER, SIZES, PRINTERS_SIZE, (size) => size);
  sizes.place.addEventListener('change', () => {
    document.body.dataset.paper = sizes.chosen();
  });
  const looks = oneOf('papers-room', LOOK, ROOMS, 'some', (room) => ROOM_NAMES[room]);
  const large = make('input', { type: 'checkbox', id: 'papers-large' });
  looks.place.append(make('label', {}, large, LARGE_PRINT));
  const forms = oneOf('papers-form', ASKED_AS, FORMS, 'as-written', (form) => FORM_NAMES[form]);

  const say = (text: string, field?: HTMLElement) => {
    setText(status, text);
    for (const f of [...counts.map((c) => c.field), code, roster]) f.setAttribute('aria-invalid', String(f === field));
  };

  /** What the form asks for, or says in the status what is wrong with it. */
  const order = (): Result<PaperOrder> => {
    const asked = new Map<string, number>();
    const refuse = (why: Bad, field: HTMLElement): Result<PaperOrder> => {
      say(reasonOf(why), field);
      return why;
    };
    for (const { slug, title, field } of counts) {
      const n = field.value.trim() === '' ? 0 : Number(/^\s*\d{1,6}\s*$/.test(field.value) ? field.value : Number.NaN);
      if (!(n <= MOST_OF_A_CHAPTER))
        return refuse(bad('papers-count-odd', { chapter: title, text: field.value, most: MOST_OF_A_CHAPTER }), field);
      asked.set(slug, n);
    }
    const first = counts[0];
    if (first && [...asked.values()].every((n) => n === 0)) return refuse(bad('papers-none-asked', {}), first.field);
    const classCode = readClassCode(code.value);
    return classCode.ok
      ? good({ classCode: classCode.value, counts: asked, form: forms.chosen() })
      : refuse(classCode, code);
  };

  const showLink = (made: PaperOrder) => {
    const address = new URL(location.href);
    address.searchParams.delete('form');
    for (const [name, value] of Object.entries(paperParameters(made, bank.version)))
      address.searchParams.set(name, value);
    link.href = address.href;
  };

  /** The exercises as they are asked of who works in these units. */
  const placesOf = (asked: Counts, classCode: string) => {
    const known = new Map<OwnUnits | undefined, ReturnType<typeof choose>>();
    return (units: OwnUnits | undefined) => {
      const places = known.get(units) ?? choose(bank, asked, classCode, { form: forms.chosen(), units });
      known.set(units, places);
      return places;
    };
  };

  /** Stops the setting that is under way, if one is. */
  let stop = () => {};
  until.addEventListener('abort', () => stop());
  const set = () => {
    stop();
    // Not to be printed before the last one is there, and none of an earlier setting.
    printing.hidden = true;
    papers = [];
    keyTexts = [];
    for (const part of [sheets, keys, method, grid, emptyGrid, preview]) part.replaceChildren();
    const made = order();
    if (!made.ok) return;
    const class_ = readRoster(roster.value);
    if (!class_.ok) {
      say(reasonOf(class_), roster);
      return;
    }
    const { classCode, counts: asked } = made.value;
    const { students, units, notes } = class_.value;
    const heading: Heading = { classCode, version: bank.version };
    const placesFor = placesOf(asked, classCode);
    const places = placesFor(undefined);
    say('');
    showLink(made.value);
    preview.setAttribute('aria-busy', 'true');
    const room = looks.chosen();
    for (const part of [sheets, preview]) part.dataset.room = room;
    const allLarge = large.checked;
    const isLarge = (student: string) => allLarge || class_.value.large.has(student);
    const size = document.body.dataset.paper ?? '';
    /** One for either size of print that the class has. */
    const measures = [false, true].flatMap((big) => {
      const names = students.filter((student) => isLarge(student) === big);
      return names.length === 0 ? [] : [{ big, ...measureFor(size, room, big, marksOf, heading, names) }];
    });
    function* oneByOne(): Generator<number, void, void> {
      for (const [i, student] of students.entries()) {
        papers.push({ student, lines: setPaper(placesFor(units.get(student)), classCode, student, bank.version) });
        if (i % 20 === 19) yield 0;
      }
      for (const { big, learn } of measures) {
        const own = papers.filter(({ student }) => isLarge(student) === big);
        for (const _ of learn(own.flatMap(({ lines }) => lines))) yield 0;
      }
      for (const [i, { student, lines }] of papers.entries()) {
        const big = isLarge(student);
        const pages = measures.find((one) => one.big === big)?.pagesOf(lines) ?? [];
        const [sheet, key] = [
          studentSheet(lines, student, heading, { pages, marks: marksOf, large: big }),
          keySheet(lines, student, heading),
        ];
        sheets.insertAdjacentHTML('beforeend', sheet);
        keyTexts.push(key);
        if (i === 0) preview.innerHTML = sheet + key;
        yield i + 1;
      }
    }
    writeRest = () => {
      grid.innerHTML = gridSheet(papers, heading);
      method.innerHTML = methodSheet(places, papers[0]?.lines ?? [], heading, methods, marksOf);
    };
    const halt = () => {
      for (const { end } of measures) end();
      preview.setAttribute('aria-busy', 'false');
    };
    const done = () => {
      halt();
      printing.hidden = false;
      say([papersSet(students.length, places.length), ...notes].join(' '));
    };
    let told = performance.now();
    const stopSlices = runInSlices(oneByOne(), done, (count) => {
      if (performance.now() - told < TELL_EVERY) return;
      told = performance.now();
      say(papersSoFar(count, students.length));
    });
    stop = () => {
      stopSlices();
      halt();
    };
  };

  const variants = lineField('papers-variants', VARIANTS, '1');
  const half = make('input', { type: 'checkbox', id: 'papers-half' });
  const byHand = make('input', { type: 'checkbox', id: 'papers-by-hand' });
  const bankOf = (save: (lines: ReturnType<typeof setBank>) => void) => () => {
    const made = order();
    if (!made.ok) return;
    const variantsAsked = readVariants(variants.field.value);
    variants.field.setAttribute('aria-invalid', String(!variantsAsked.ok));
    if (!variantsAsked.ok) return say(reasonOf(variantsAsked));
    const lines = setBank(
      bank,
      made.value.counts,
      made.value.classCode,
      { form: forms.chosen(), judged: !byHand.checked },
      variantsAsked.value,
    );
    save(lines);
    say(fileHolds(lines.length));
  };
  const qti = (version: QtiVersion) =>
    bankOf((lines) =>
      saveFile(
        zipped(qtiFiles(lines, version, bank.version, { marks: marksOf, forSlip: half.checked ? 0.5 : 0 })),
        `question-bank-qti-${version}.zip`,
        'application/zip',
      ),
    );

  const version = make('p', { class: 'papers-bank' }, questionBank(bank.version));
  const field = (label: string, input: HTMLElement, lang: Readonly<Record<string, string>> = {}) =>
    make(
      'div',
      { class: 'field' },
      make('label', { for: input.id, ...lang }, label),
      make('span', { class: 'field-box' }, input),
    );
  const form = make(
    'form',
    { novalidate: '' },
    make(
      'fieldset',
      { class: 'papers-counts' },
      make('legend', {}, howMany(MOST_OF_A_CHAPTER)),
      ...counts.map(({ title, lang, field: input }) => field(title, input, lang)),
    ),
    field(CLASS_CODE, code),
    make('div', { class: 'field text' }, make('label', { for: roster.id }, ROSTER), roster),
    forms.place,
    looks.place,
    sizes.place,
    make('div', { class: 'button-row' }, make('button', { type: 'submit' }, SET_PAPERS)),
  );
  whenSent(form, set);
  place.append(
    version,
    form,
    status,
    printing,
    preview,
    variants.place,
    make(
      'fieldset',
      { class: 'field choice' },
      make('label', {}, half, HALF_FOR_SLIP),
      make('label', {}, byHand, SCORED_BY_HAND),
    ),
    make(
      'div',
      { class: 'button-row' },
      button(BANK_AS_QTI, qti('2.1')),
      button(AS_NEWER_QTI, qti('3.0')),
      button(
        AS_CSV,
        bankOf((lines) => saveFile(bankCsv(lines), 'question-bank.csv', 'text/csv')),
      ),
    ),
    make('p', {}, link),
  );

  /** Whether the address asks for papers, and whether this page could not set them. */
  let linked = false;
  let refused = false;
  const fillIn = () => {
    const asked = readPaperLink(location.search, bank);
    linked = asked !== undefined;
    refused = asked !== undefined && !asked.ok;
    if (asked?.ok) {
      code.value = asked.value.classCode;
      for (const { slug, field: input } of counts) input.value = String(asked.value.counts.get(slug) ?? 0);
      forms.choose(asked.value.form ?? 'as-written');
      say(LINK_FILLED_IN);
    } else if (asked) say(reasonOf(asked));
  };
  fillIn();
  const now = order();
  if (now.ok) showLink(now.value);

  const above: ClassAbove = {
    roster: () => readRoster(roster.value),
    heading: () => {
      const classCode = readClassCode(code.value);
      return classCode.ok ? good({ classCode: classCode.value, version: bank.version }) : classCode;
    },
    papers: () => {
      const [made, class_] = [order(), readRoster(roster.value)];
      if (!made.ok) return made;
      if (!class_.ok) return class_;
      const { classCode, counts: asked } = made.value;
      const placesFor = placesOf(asked, classCode);
      return good(
        class_.value.students.map((student) => ({
          student,
          lines: setPaper(placesFor(class_.value.units.get(student)), classCode, student, bank.version),
        })),
      );
    },
    marks: marksOf,
  };
  const parts = all(document, '[data-classwork]');
  for (const part of parts) {
    part.querySelector('[data-without-script]')?.remove();
    if (part.dataset.classwork === 'lab') mountLab(part, above);
    if (part.dataset.classwork === 'marking') mountMarking(part, above);
    if (part.dataset.classwork === 'plan') mountPlan(part, course);
    if (part.dataset.classwork === 'project') mountProject(part);
    if (part.dataset.classwork === 'safety') mountSafety(part);
    if (part.dataset.classwork === 'own')
      mountOwn(part, theirs, (next) => {
        own = next;
        bank = withOwn(theirs, own);
        setText(version, questionBank(bank.version));
        // A link to papers with changed exercises is made good by the file of the changes.
        if (refused) fillIn();
      });
  }
  // Own exercises have a file of their own.
  keepForm(
    [place, ...parts.filter(({ dataset }) => dataset.classwork !== 'own')],
    until,
    linked,
    () => bank.version,
    (was) => say(setWithOther(was, bank.version)),
  );
};
