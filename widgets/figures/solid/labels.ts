/**
 * What is written beside the solid: names of the parts in a column, with leaders that end in dots, and what each has moved; between them the lenses
 * on its threads; and, where a load acts, the torque that thread C hands to the carried part and what holds it.
 */

import { WORDS } from '#words/figures/solid.ts';
import { partsOf } from '../../assembly/adjuster/adjuster.ts';
import type { Role } from '../../assembly/adjuster/part.ts';
import { widestStep } from '../../assembly/adjuster/part.ts';
import { postOf } from '../../assembly/adjuster/post.ts';
import { escapeText } from '../../input/escape.ts';
import { show, type UnitView } from '../../input/format.ts';
import { directionsOf, onPicture, PICTURE, spread } from '../kit/solid/view.ts';
import { arrowheads, hatchings, type Point, polyline, px } from '../kit/svg.ts';
import { LENS, type Lens, lensesOf, lensHtml, lensLeader, spotOf } from './lens.ts';
import type { Posed } from './pose.ts';
import type { State } from './state.ts';

export interface PartWords {
  readonly role: Role;
  readonly name: string;
  readonly motion: string;
}

/** Where the column begins, and what a label of two lines and a lens with its two take in it, in picture units, on the narrowest page. */
const COLUMN = 0.74 * PICTURE.width;
const LABEL = 52;
const LENS_HIGH = LENS.width + 58;

interface Place {
  readonly role: Role;
  readonly dot: Point;
  readonly y: number;
}

interface Column {
  readonly parts: readonly Place[];
  readonly lenses: readonly { readonly lens: Lens; readonly y: number }[];
}

const columnOf = (s: State, pose: Posed): Column => {
  const { right } = directionsOf(pose.aim);
  const parts = partsOf(s.adjuster);
  const dots = parts.map((part) => {
    const step = widestStep(part);
    const r = 0.86 * step.r;
    const z = pose.at[part.role] + (step.from + step.to) / 2;
    return onPicture(pose.aim, [right[0] * r, right[1] * r, z]);
  });
  const lenses = lensesOf(s, pose);
  const spots = lenses.map((lens) => spotOf(pose, lens));
  const heights = spread(
    [...dots, ...spots].map(([, y]) => y),
    [...parts.map(() => LABEL), ...lenses.map(() => LENS_HIGH)],
    0,
    PICTURE.height,
  );
  return {
    parts: parts.map(({ role }, i) => ({ role, dot: dots[i] as Point, y: heights[i] as number })),
    // Its two lines stand under it.
    lenses: lenses.map((lens, i) => ({
      lens,
      y: (heights[parts.length + i] as number) - (LENS_HIGH - LENS.width) / 2,
    })),
  };
};

/** What is drawn over the solid, in pieces, so that a turn writes only what it changes: a line, or lines and letters that move as one. */
type Piece = { readonly key: string } & (
  | { readonly line: string; readonly d: string }
  | { readonly html: string; readonly at: string }
);

const leaders = ({ parts }: Column): Piece[] =>
  parts.flatMap(({ role, dot: [x, y], y: to }): Piece[] => [
    { key: `dot-${role}`, line: 'solid-dot', d: `M${px(x)} ${px(y)}h0` },
    {
      key: role,
      line: 'solid-leader',
      d: `M${px(x)} ${px(y)}L${px(COLUMN - 14)} ${px(to)}H${px(COLUMN - 4)}`,
    },
  ]);

/** How far round the carried part the arrow of the torque on it goes, either side of its front, and how far off it stands. */
const ARC = Math.PI / 3.6;
const OFF = 1.14;

/** Under the two lines that say what holds the torque, on the narrowest page. */
const UNDER = [18, LABEL + 4];

/** On a strip of the page, head and all, so that it is seen on any part. */
const arrowHtml = (d: string): string =>
  `<path class="arrow solid-torque-ground" marker-end="url(#solid-ground)" d="${d}"/><path class="arrow strong solid-torque" marker-end="url(#solid-head)" d="${d}"/>`;

/** The torque on the carried part as an arrow round it, and the push of the post against its arm. */
const torqueHtml = (s: State, pose: Posed, view: UnitView): string => {
  const { adjuster: a, handed } = s;
  if (handed === undefined || !a.carried || !pose.whole || Math.abs(handed) < 1e-9) return '';
  const way = Math.sign(handed);
  const { near } = directionsOf(pose.aim);
  const front = Math.atan2(near[1], near[0]);
  const step = widestStep(a.carried);
  const z = pose.at.carried + step.from + 0.72 * (step.to - step.from);
  const r = OFF * step.r;
  const round = Array.from({ length: 13 }, (_, i): Point => {
    const t = front + way * ARC * (i / 6 - 1);
    return onPicture(pose.aim, [r * Math.cos(t), r * Math.sin(t), z]);
  });
  const post = postOf(a);
  const arm = post?.arm;
  // The arm is pushed towards the front by a torque that is anticlockwise, and the post pushes back.
  const [x, height] = [post?.x ?? 0, pose.at.carried + (arm ? (arm.low + arm.high) / 2 : 0)];
  const push =
    post && arm
      ? [18, 3.5].map((k) => onPicture(pose.aim, [x - 1.6 * post.half, -way * k * post.half, height]))
      : undefined;
  // From under its two lines to the tail of the arrow that they are of.
  const [tail = [0, 0]] = push ?? round;
  const leader = `<path class="solid-leader" d="M${UNDER.join(' ')}L${tail.map(px).join(' ')}"/>`;
  const torque = show(Math.abs(handed), { shown: 'N·mm', digits: 2 }, view);
  return `${leader}${[round, ...(push ? [push] : [])].map((points) => arrowHtml(polyline(points))).join('')}<text class="clear" x="4" y="0" dy="1.1em">${WORDS.torque.by(a.lock.kind)}</text><text class="clear" x="4" y="0" dy="2.3em">${torque}</text>`;
};

/** The push from the side at the tip, from the right as it is seen. */
const pushHtml = (s: State, pose: Posed): string => {
  if (s.push === 0 || !pose.whole) return '';
  const [x, y] = onPicture(pose.aim, [0, 0, s.standing.height - REACHED]);
  const along = polyline([
    [x + 64, y],
    [x + 14, y],
  ]);
  return arrowHtml(along);
};
/** How far under the top of the tip the push is drawn, mm. */
const REACHED = 2;

/** With every picture anew, since the page gives what is drawn first names of its own. */
const DEFS = arrowheads('solid-head', 'strong') + arrowheads('solid-ground', 'strong') + hatchings('solid-lens');

const piecesOf = (s: State, pose: Posed, column: Column, view: UnitView): readonly Piece[] => [
  ...leaders(column),
  ...column.lenses.flatMap(({ lens, y }): Piece[] => [
    { key: `to-${lens.name}`, line: 'solid-lens-leader', d: lensLeader(pose, lens, y) },
    { key: lens.name, html: lensHtml(pose, lens, view), at: `translate(${LENS.x} ${px(y)})` },
  ]),
  { key: 'torque', html: torqueHtml(s, pose, view), at: '' },
  { key: 'push', html: pushHtml(s, pose), at: '' },
];

const pieceHtml = (piece: Piece): string =>
  'd' in piece ? `<path class="${piece.line}" d="${piece.d}"/>` : `<g transform="${piece.at}">${piece.html}</g>`;

const labelOf = ({ parts }: Column, { role, name, motion }: PartWords): string =>
  `<p class="solid-label ${role}" data-label="${role}" style="${styleOf(parts.find((p) => p.role === role)?.y ?? 0)}">${escapeText(name)}<b data-motion="${role}">${escapeText(motion)}</b></p>`;

const styleOf = (y: number): string => `top:${px((100 * y) / PICTURE.height)}%`;

/** Lines and letters over the solid, and the names beside it. */
export const drawnOver = (
  s: State,
  pose: Posed,
  words: readonly PartWords[],
  view: UnitView,
): { readonly overlay: string; readonly labels: string } => {
  const column = columnOf(s, pose);
  return {
    overlay: DEFS + piecesOf(s, pose, column, view).map(pieceHtml).join(''),
    labels: words.map((word) => labelOf(column, word)).join(''),
  };
};

/** What this script has drawn into an overlay, piece by piece; what the page was printed with has other names for hatching and arrowheads. */
interface Over {
  readonly places: readonly Element[];
  readonly labels: ReadonlyMap<Role, readonly [label: Element | null, motion: Element | null]>;
  pieces: readonly Piece[];
}
const overs = new WeakMap<Element, Over>();

const overAnew = (stage: HTMLElement, overlay: Element, pieces: readonly Piece[]): Over => {
  overlay.innerHTML = `${DEFS}<g data-pieces>${pieces.map(pieceHtml).join('')}</g>`;
  const over: Over = {
    places: [...(overlay.querySelector('[data-pieces]')?.children ?? [])],
    labels: new Map(
      (['base', 'turned', 'carried'] as const).map((role) => [
        role,
        [stage.querySelector(`[data-label="${role}"]`), stage.querySelector(`[data-motion="${role}"]`)],
      ]),
    ),
    pieces,
  };
  overs.set(overlay, over);
  return over;
};

const rewrite = (place: Element | undefined, was: Piece, now: Piece): void => {
  const put = (name: string, before: string, after: string) => {
    if (before !== after) place?.setAttribute(name, after);
  };
  if ('d' in now && 'd' in was) put('d', was.d, now.d);
  if (!('html' in now && 'html' in was)) return;
  put('transform', was.at, now.at);
  if (place && was.html !== now.html) place.innerHTML = now.html;
};

export const updateLabels = (
  stage: HTMLElement,
  s: State,
  pose: Posed,
  words: readonly PartWords[],
  view: UnitView,
): void => {
  const overlay = stage.querySelector('[data-overlay]');
  if (!overlay) return;
  const column = columnOf(s, pose);
  const pieces = piecesOf(s, pose, column, view);
  const before = overs.get(overlay);
  const alike = before?.pieces.length === pieces.length && pieces.every((p, i) => p.key === before.pieces[i]?.key);
  const over = before && alike ? before : overAnew(stage, overlay, pieces);
  pieces.forEach((piece, i) => {
    rewrite(over.places[i], over.pieces[i] ?? piece, piece);
  });
  over.pieces = pieces;
  for (const { role, y } of column.parts) {
    const [label, motion] = over.labels.get(role) ?? [null, null];
    if (label && label.getAttribute('style') !== styleOf(y)) label.setAttribute('style', styleOf(y));
    const text = words.find((w) => w.role === role)?.motion ?? '';
    if (motion && motion.textContent !== text) motion.textContent = text;
  }
};
