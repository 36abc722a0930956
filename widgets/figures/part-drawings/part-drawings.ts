/** Drawings of the parts and of the assembly as a shop reads them, at their true size on the sheet that was chosen; each sheet as SVG and DXF. */
import { WORDS } from '#words/figures/part-drawings.ts';
import { type Adjuster, partsOf } from '../../assembly/adjuster/adjuster.ts';
import { readAdjuster } from '../../assembly/adjuster/text.ts';
import { fileName } from '../../assembly/files/file-name.ts';
import { paperDxf, paperSvg } from '../../assembly/files/paper.ts';
import { bad, good, type Result, spokenNumber } from '../../engine/index.ts';
import { CHOICES } from '../../input/choices.ts';
import { escapeText } from '../../input/escape.ts';
import { show, type UnitView } from '../../input/format.ts';
import { readTitleBlock } from '../../input/title-block.ts';
import { reasonOf } from '../../words/reason.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { saveFile } from '../kit/save.ts';
import { onSave } from '../kit/save-part.ts';
import { assemblySheet } from './assembly-sheet.ts';
import { otherSheets } from './print-sheet.ts';
import { type Asked, type PaperSheet, partSheet } from './sheets.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    'no-such-sheet': { readonly sheet: string };
  }
}

type Given = NumbersOf<never, never, 'paper' | 'sheet', 'adjuster' | 'title'>;

interface Drawn {
  readonly name: string;
  readonly sheet: Result<PaperSheet>;
}

interface State {
  readonly adjuster: Adjuster;
  readonly asked: Asked;
  readonly called: string;
  readonly sheet: PaperSheet;
  readonly all: readonly Drawn[];
}

/** The sheets that an adjuster has, by their choice, in their order. */
const sheetsOf = (a: Adjuster): readonly string[] => [
  'assembly',
  ...partsOf(a).map((p) => (p.role === 'base' ? 'base' : `${p.role} part`)),
  ...otherSheets(a).map((o) => o.name),
];

const stateOf = ({ texts, choices }: Given, view: UnitView): Result<State> => {
  const read = readAdjuster(texts.adjuster);
  if (!read.ok) return read;
  const block = readTitleBlock(texts.title);
  if (!block.ok) return block;
  const a = read.value;
  const asked: Asked = { paper: choices.paper, block: block.value, view, of: a.name };
  const parts = partsOf(a);
  const others = otherSheets(a);
  const count = parts.length + 1 + others.length;
  const all: readonly Drawn[] = [
    { name: WORDS.assembly, sheet: assemblySheet(a, WORDS.sheet(1, count), asked) },
    ...parts.map((part, i) => ({
      name: WORDS.part(part.role, part.kind),
      sheet: partSheet(part, WORDS.sheet(i + 2, count), asked),
    })),
    ...others.map(({ name, sheet }, i) => ({
      name: WORDS.other[name],
      sheet: sheet(WORDS.sheet(i + 2 + parts.length, count), asked),
    })),
  ];
  const chosen = all[sheetsOf(a).indexOf(choices.sheet)];
  if (!chosen) return bad('no-such-sheet', { sheet: choices.sheet });
  if (!chosen.sheet.ok) return chosen.sheet;
  return good({ adjuster: a, asked, called: chosen.name, sheet: chosen.sheet.value, all });
};

const size = (x: number, view: UnitView): string => show(x, { shown: 'size', digits: 2 }, view);

const svg = ({ sheet, called, adjuster }: State): string =>
  paperSvg(sheet.marks, sheet.width, sheet.height, `${adjuster.name || WORDS.adjuster}, ${called}`);

const draw = (s: State): string =>
  `<div class="part-drawings-view"><div class="paper-scroll" tabindex="0" role="group" aria-label="${WORDS.scroller}">${svg(s)}</div>` +
  `<p class="acts">${WORDS.files} ${(['svg', 'dxf'] as const).map((kind) => `<button type="button" class="plain" data-save="${kind}" data-key="save-sheet-${kind}" aria-label="${escapeText(WORDS.save(kind))}">${kind.toUpperCase()}</button>`).join(' ')}</p></div>`;

/** Where a sheet is wider than its place, its edge is empty: the reader meets the drawing in its middle first. */
const showMiddle = (stage: Element): void => {
  const place = stage.querySelector('.paper-scroll');
  if (!place) return;
  place.scrollLeft = (place.scrollWidth - place.clientWidth) / 2;
  place.scrollTop = (place.scrollWidth - place.clientWidth) / 6;
};

export const partDrawings = defineFigure({
  name: 'part-drawings',
  title: WORDS.title,
  threads: [],
  quantities: [],
  choices: ['paper', 'sheet'],
  texts: ['adjuster', 'title'],
  setElsewhere: ['adjuster'],
  chief: ['sheet', 'paper', 'title'],
  absent: ({ texts }) => {
    const read = readAdjuster(texts.adjuster);
    if (!read.ok) return { sheet: [] };
    const there = sheetsOf(read.value);
    return { sheet: CHOICES.sheet.options.filter((option) => !there.includes(option)) };
  },
  state: stateOf,
  draw,
  caption: ({ called, asked, sheet }, view) =>
    WORDS.caption({
      what: called.charAt(0).toUpperCase() + called.slice(1),
      paper: asked.paper,
      scale: sheet.scale,
      stated: sheet.stated,
      assumed: sheet.assumed,
      listed: sheet.listed,
      doubtful: sheet.doubtful.map(({ thread, runOut, usual, wall, leastWall }) => ({
        thread: spokenNumber(thread),
        runOut: runOut < usual - 1e-9 ? [size(runOut, view), size(usual, view)] : undefined,
        wall: wall < leastWall - 1e-9 ? [size(wall, view), size(leastWall, view)] : undefined,
      })),
    }),
  table: ({ all }) => ({
    head: WORDS.head,
    rows: all.map(({ name, sheet }, i) => [
      String(i + 1),
      name,
      sheet.ok ? sheet.value.scale : '',
      sheet.ok ? String(sheet.value.stated + sheet.value.assumed) : reasonOf(sheet),
    ]),
  }),
  mount: (stage, context) => {
    showMiddle(stage);
    onSave(stage, (kind) => {
      const state = stateOf(context.numbers(), context.view());
      if (!state.ok) return;
      const { adjuster, called, sheet } = state.value;
      const name = fileName([adjuster.name || WORDS.adjuster, called], kind);
      if (kind === 'svg') saveFile(svg(state.value), name, 'image/svg+xml');
      else if (kind === 'dxf') saveFile(paperDxf(sheet.marks), name, 'image/vnd.dxf');
    });
  },
});
