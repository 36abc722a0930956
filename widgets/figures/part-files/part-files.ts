/** Files of an adjuster from the same solids and sections as its drawing: each part to print, all of them to draw with. */
import { WORDS } from '#words/figures/part-files.ts';
import { type Adjuster, partsOf, standing } from '../../assembly/adjuster/adjuster.ts';
import { heightOf, type Part, reach } from '../../assembly/adjuster/part.ts';
import { type Mesh, meshOf } from '../../assembly/adjuster/solid.ts';
import { crestsOf, sectionOf } from '../../assembly/adjuster/surface.ts';
import { readAdjuster } from '../../assembly/adjuster/text.ts';
import { fileName } from '../../assembly/files/file-name.ts';
import { dxfOf, svgOf } from '../../assembly/files/outline-files.ts';
import { stlOf } from '../../assembly/files/stl.ts';
import { threeMfOf } from '../../assembly/files/three-mf.ts';
import { boxOf, type Print, printsOf } from '../../assembly/print/own-prints.ts';
import { plateMesh, plateOutlines } from '../../assembly/print/plate.ts';
import { bad, good, type Result } from '../../engine/index.ts';
import { escapeText } from '../../input/escape.ts';
import { grouped, show, type UnitView } from '../../input/format.ts';
import { reasonOf } from '../../words/reason.ts';
import { extentsOf } from '../kit/adjuster-extras.ts';
import { type Frame, frameIn, partsHtml, pictureOf } from '../kit/adjuster-picture.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { saveFile } from '../kit/save.ts';
import { savePart } from '../kit/save-part.ts';
import { hatchings } from '../kit/svg.ts';
import { outlinesOf } from './outlines.ts';

const WIDTH = 240;
const HEIGHT = 330;

interface State {
  readonly adjuster: Adjuster;
  readonly frame: Frame;
}

const stateOf = ({ texts }: NumbersOf<never, never, never, 'adjuster'>): Result<State> => {
  const read = readAdjuster(texts.adjuster);
  if (!read.ok) return read;
  const frame = frameIn(extentsOf(read.value), HEIGHT - 16, WIDTH / 2, WIDTH / 2 - 6);
  return frame.scale > 0 && Number.isFinite(frame.scale)
    ? good({ adjuster: read.value, frame: { ...frame, y: frame.y + 8 } })
    : bad('lengths-of-no-one-scale', {});
};

const meshes = new WeakMap<Part, Mesh>();
/** Of the net of a part; the last ones are kept, since picture and table ask for the same. */
const netOf = (part: Part, adjuster: Adjuster): Mesh => {
  const known = meshes.get(part);
  if (known) return known;
  const mesh = meshOf(part, { crests: crestsOf(adjuster)[part.role] });
  meshes.set(part, mesh);
  return mesh;
};

const widest = (part: Part): number => 2 * Math.max(...part.outer.map(reach));
const size = (x: number, view: UnitView): string => show(x, { shown: 'size', digits: 4 }, view);
const triangles = (part: Part, { adjuster }: State): number => netOf(part, adjuster).triangles.length / 3;

const DRAWINGS = ['dxf', 'svg'] as const;
const KINDS = ['3mf', 'stl', ...DRAWINGS] as const;
const buttons = (of: string, kinds: readonly string[], words: string): string =>
  kinds
    .map(
      (kind) =>
        `<button type="button" class="plain" data-save="${kind}" data-of="${of}" data-key="save-${of}-${kind}" aria-label="${escapeText(WORDS.save(words, kind))}">${kind.toUpperCase()}</button>`,
    )
    .join(' ');

const draw = (s: State, view: UnitView): string => {
  const { adjuster, frame } = s;
  const rows = partsOf(adjuster).map((part) => {
    const words = WORDS.part(part.role, part.kind);
    return `<tr><th scope="row">${escapeText(words)}</th><td>${escapeText(WORDS.by(size(heightOf(part), view), size(widest(part), view)))}</td><td>${buttons(part.role, KINDS, words)}</td></tr>`;
  });
  const others = printsOf(adjuster).map((print) => {
    if (!print.ok) return `<tr><td colspan="3">${escapeText(reasonOf(print))}</td></tr>`;
    const { name, count, steel } = print.value;
    const words = steel ? WORDS.steelPost : WORDS.print[name];
    return `<tr><th scope="row">${escapeText(WORDS.counted(words, count))}</th><td>${escapeText(
      boxOf(print.value)
        .map((x) => size(x, view))
        .join(' × '),
    )}</td><td>${buttons(name, steel ? DRAWINGS : KINDS, words)}</td></tr>`;
  });
  return (
    `<div class="part-files-view"><svg viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${WORDS.drawing}">${hatchings('part-files')}${partsHtml(pictureOf(adjuster, standing(adjuster, 0), frame), 'part-files')}<path class="axis" d="M${WIDTH / 2} 2V${HEIGHT - 2}"/></svg>` +
    `<div><div class="table-scroll" tabindex="0" role="group" aria-label="${WORDS.title}"><table><thead><tr>${WORDS.listHead.map((h) => `<th scope="col">${h}</th>`).join('')}</tr></thead><tbody>${[...rows, ...others].join('')}` +
    `<tr><th scope="row">${WORDS.all}</th><td>${WORDS.together}</td><td>${buttons('all', DRAWINGS, WORDS.all)}</td></tr></tbody></table></div><p class="figure-words">${WORDS.note}</p></div></div>`
  );
};

const save = (kind: string, of: string, { adjuster }: State): void => {
  const print = printsOf(adjuster).find((p) => p.ok && p.value.name === of);
  if (print?.ok) {
    savePrint(kind, print.value, adjuster);
    return;
  }
  const part = partsOf(adjuster).find((p) => p.role === of);
  const name = fileName(
    [adjuster.name === '' ? WORDS.adjuster : adjuster.name, part ? part.role : WORDS.section],
    kind,
  );
  const title = adjuster.name || WORDS.adjuster;
  if (kind === 'dxf') saveFile(dxfOf(outlinesOf(adjuster, part), WORDS.check), name, 'image/vnd.dxf');
  else if (kind === 'svg') saveFile(svgOf(outlinesOf(adjuster, part), title, WORDS.check), name, 'image/svg+xml');
  else if (part) {
    const mesh = netOf(part, adjuster);
    if (kind === 'stl') saveFile(stlOf(mesh), name, 'model/stl');
    else saveFile(threeMfOf([{ name: WORDS.part(part.role, part.kind), mesh }]), name, 'model/3mf');
  }
};

const savePrint = (kind: string, { name, shape }: Print, adjuster: Adjuster): void => {
  const words = WORDS.print[name];
  savePart(
    kind,
    {
      name: words,
      called: [adjuster.name === '' ? WORDS.adjuster : adjuster.name, words],
      mesh: () => ('plate' in shape ? plateMesh(shape.plate) : meshOf(shape.part, NO_THREAD)),
      outlines: () =>
        'plate' in shape
          ? plateOutlines(shape.plate, name)
          : sectionOf(shape.part, 0, NO_THREAD).map((points) => ({ layer: name, points, closed: true })),
    },
    WORDS.check,
  );
};
const NO_THREAD = { crests: { below: 0, above: 0 } };

export const partFiles = defineFigure({
  name: 'part-files',
  title: WORDS.title,
  threads: [],
  quantities: [],
  texts: ['adjuster'],
  chief: ['adjuster'],
  state: stateOf,
  draw,
  caption: (s, view) => {
    const parts = partsOf(s.adjuster);
    const highest = parts.reduce((a, b) => (heightOf(b) > heightOf(a) ? b : a));
    return WORDS.caption(parts.length, WORDS.part(highest.role, highest.kind), size(heightOf(highest), view));
  },
  table: (s, view) => ({
    head: WORDS.head,
    rows: partsOf(s.adjuster).map((part) => [
      WORDS.part(part.role, part.kind),
      size(heightOf(part), view),
      size(widest(part), view),
      grouped(triangles(part, s)),
    ]),
  }),
  mount: (stage, context) => {
    stage.addEventListener('click', (event) => {
      const button = event.target instanceof Element ? event.target.closest('[data-save]') : null;
      const state = stateOf(context.numbers());
      if (button && state.ok)
        save(button.getAttribute('data-save') ?? '', button.getAttribute('data-of') ?? '', state.value);
    });
  },
});
