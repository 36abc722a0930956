/**
 * What is drawn over the solid: the path of the tip with the push and without, the straight line of the nominal motion, where the tip is now, and the push. Each
 * stands on the picture all the time and is only moved, so that a turn writes attributes and no more.
 */

import { WORDS } from '#words/figures/jack-solid.ts';
import { widestStep } from '../../assembly/adjuster/part.ts';
import { numeral, show, type UnitView } from '../../input/format.ts';
import { type Aim, onPicture } from '../kit/solid/view.ts';
import { arrowheads, type Point, polyline, px } from '../kit/svg.ts';
import { AXIS, drawnAt, type Place, type State } from './state.ts';

interface Mark {
  readonly key: string;
  /** Classes and what else of its element never changes. */
  readonly as: string;
  readonly put: Readonly<Record<string, string>>;
  /** Of letters only. */
  readonly text?: string;
}

/** How long the arrow is, and how far it ends off the part, mm as a share of the widest part. */
const ARROW = 2;
const OFF = 1.12;

export const marksOf = (s: State, aim: Aim, view: UnitView): readonly Mark[] => {
  const { path, over } = s;
  const on = (place: Place, turns: number): Point => onPicture(aim, drawnAt(s, place, turns));
  const run = (which: 'pushed' | 'quiet'): string =>
    path ? polyline(path[which].map((p, i) => on(p, path.turns[i] as number))) : '';
  const tip = onPicture(aim, [0, 0, s.standing.height]);
  const now = path && on(path.now, s.n);
  const [right, high] = path
    ? boxOf([...path.pushed, ...path.quiet].map((p, i) => on(p, path.turns[i % path.turns.length] as number)))
    : [0, 0];
  const push = pushOf(s, aim);
  const letters = ([x, y]: Point, anchor: 'start' | 'middle', dy: string) => ({
    x: px(x),
    y: px(y),
    'text-anchor': anchor,
    dy,
  });
  return [
    line('nominal', 'jack-solid-nominal', path ? polyline([tip, on(AXIS, 0), on(AXIS, over)]) : ''),
    line('quiet', 'jack-solid-quiet', s.push === 0 ? '' : run('quiet')),
    line('pushed', 'jack-solid-path', run('pushed')),
    line('leader', 'jack-solid-leader', now ? polyline([tip, now]) : ''),
    line('now', 'jack-solid-now', now ? `M${px(now[0])} ${px(now[1])}h0` : ''),
    line('push', 'arrow strong" marker-end="url(#jack-push)', push ? polyline(push) : ''),
    {
      key: 'force',
      as: 'clear',
      put: push ? letters(push[0], 'middle', '1.5em') : {},
      text: push ? WORDS.push(show(s.push, { shown: 'force', digits: 3 }, view)) : '',
    },
    ...(['across', 'along'] as const).map((way, i): Mark => {
      const place: Point = [Math.max(right, aim.frame.axis) + 14, high];
      return {
        key: way,
        as: 'clear',
        put: letters(place, 'start', `${px(0.7 + 1.3 * i)}em`),
        text: path ? WORDS.factor[way](numeral(path[way])) : '',
      };
    }),
  ];
};

const line = (key: string, as: string, d: string): Mark => ({ key, as, put: { d } });

/** The right end and the top of points. */
const boxOf = (points: readonly Point[]): Point => [
  Math.max(...points.map(([x]) => x)),
  Math.min(...points.map(([, y]) => y)),
];

/** The push acts along x, so its arrow comes from the other side. */
const pushOf = (s: State, aim: Aim): readonly [Point, Point] | undefined => {
  if (s.push === 0) return undefined;
  const r = widestStep(s.adjuster.carried ?? s.adjuster.turned).r;
  const z = s.pushedAt * s.standing.height;
  return [onPicture(aim, [-(OFF + ARROW) * r, 0, z]), onPicture(aim, [-OFF * r, 0, z])];
};

const attributes = (put: Mark['put']): string =>
  Object.entries(put)
    .map(([name, value]) => ` ${name}="${value}"`)
    .join('');

export const overlayHtml = (s: State, aim: Aim, view: UnitView): string =>
  arrowheads('jack-push', 'strong') +
  marksOf(s, aim, view)
    .map(({ key, as, put, text }) =>
      text === undefined
        ? `<path data-mark="${key}" class="${as}"${attributes(put)}/>`
        : `<text data-mark="${key}" class="${as}"${attributes(put)}>${text}</text>`,
    )
    .join('');

export const updateOverlay = (stage: HTMLElement, s: State, aim: Aim, view: UnitView): void => {
  for (const { key, put, text } of marksOf(s, aim, view)) {
    const element = stage.querySelector(`[data-mark="${key}"]`);
    if (!element) continue;
    for (const [name, value] of Object.entries(put))
      if (element.getAttribute(name) !== value) element.setAttribute(name, value);
    if (text !== undefined && element.textContent !== text) element.textContent = text;
  }
};
