/**
 * What is written beside the solid: names of the parts in a column, with leaders that end in dots, and what each has moved; between them the lenses
 * on its threads; and, where a load acts, the torque that thread C hands to the carried part and what holds it.
 */
import { WORDS } from '#words/figures/solid.ts';
import { partsOf } from '../../assembly/adjuster/adjuster.ts';
import type { Role } from '../../assembly/adjuster/part.ts';
import { escapeText } from '../../input/escape.ts';
import { show, type UnitView } from '../../input/format.ts';
import { postOf, widestStep } from '../kit/adjuster-extras.ts';
import { directionsOf, onPicture, PICTURE, spread } from '../kit/solid/view.ts';
import { arrowheads, hatchings, type Point, polyline, px } from '../kit/svg.ts';
import { LENS, type Lens, lensesOf, lensHtml, spotOf } from './lens.ts';
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

const leaders = ({ parts }: Column): string =>
  parts
    .map(
      ({ dot: [x, y], y: to }) =>
        `<circle class="solid-dot" cx="${px(x)}" cy="${px(y)}" r="3"/><path class="solid-leader" d="M${px(x)} ${px(y)}L${px(COLUMN - 14)} ${px(to)}H${px(COLUMN - 4)}"/>`,
    )
    .join('');

/** How far round the carried part the arrow of the torque on it goes, either side of its front, and how far off it stands. */
const ARC = Math.PI / 3.6;
const OFF = 1.14;

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
  const arrow = (points: readonly Point[]) =>
    `<path class="arrow solid-torque-ground" d="${polyline(points)}"/><path class="arrow strong solid-torque" marker-end="url(#solid-head)" d="${polyline(points)}"/>`;
  const post = postOf(a);
  const arm = post?.arm;
  // The arm is pushed towards the front by a torque that is anticlockwise, and the post pushes back.
  const [x, height] = [post?.x ?? 0, pose.at.carried + (arm ? (arm.low + arm.high) / 2 : 0)];
  const push =
    post && arm
      ? arrow([14, 2].map((k) => onPicture(pose.aim, [x - 1.6 * post.half, -way * k * post.half, height])))
      : '';
  const torque = show(Math.abs(handed), { shown: 'N·mm', digits: 2 }, view);
  return `${arrow(round)}${push}<text class="clear" x="4" y="0" dy="1.1em">${WORDS.torque.by(a.lock.kind)}</text><text class="clear" x="4" y="0" dy="2.3em">${torque}</text>`;
};

/** With every picture anew, since the page gives what is drawn first names of its own. */
const DEFS = arrowheads('solid-head') + hatchings('solid-lens');

/** All lines and letters over the solid. */
export const overlayHtml = (s: State, pose: Posed, view: UnitView): string => {
  const column = columnOf(s, pose);
  return (
    DEFS +
    leaders(column) +
    column.lenses.map(({ lens, y }) => lensHtml(pose, lens, y, view)).join('') +
    torqueHtml(s, pose, view)
  );
};

const drawnOver = new WeakMap<Element, string>();

const styleOf = (y: number): string => `top:${px((100 * y) / PICTURE.height)}%`;

export const labelsHtml = (s: State, pose: Posed, words: readonly PartWords[]): string => {
  const { parts } = columnOf(s, pose);
  return words
    .map(
      ({ role, name, motion }) =>
        `<p class="solid-label ${role}" data-label="${role}" style="${styleOf(parts.find((p) => p.role === role)?.y ?? 0)}">${escapeText(name)}<b data-motion="${role}">${escapeText(motion)}</b></p>`,
    )
    .join('');
};

export const updateLabels = (
  stage: HTMLElement,
  s: State,
  pose: Posed,
  words: readonly PartWords[],
  view: UnitView,
): void => {
  const overlay = stage.querySelector('[data-overlay]');
  const html = overlayHtml(s, pose, view);
  if (overlay && drawnOver.get(overlay) !== html) {
    drawnOver.set(overlay, html);
    overlay.innerHTML = html;
  }
  for (const { role, y } of columnOf(s, pose).parts) {
    stage.querySelector(`[data-label="${role}"]`)?.setAttribute('style', styleOf(y));
    const place = stage.querySelector(`[data-motion="${role}"]`);
    const motion = words.find((w) => w.role === role)?.motion ?? '';
    if (place && place.textContent !== motion) place.textContent = motion;
  }
};
