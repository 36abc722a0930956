/** A curve drawn by the reader over empty axes: each point is set by a tap, a pull or keys, then the engine's curve is laid over it. */
import { CURVE_KEY, CURVE_SET, curvePoint } from '#words/client.ts';
import { good } from '../../engine/index.ts';
import {
  CURVE_WIDTH,
  type Curve,
  curvePath,
  curveSvg,
  curveX,
  curveY,
  judgeCurve,
  valueAt,
  withAxisUnit,
} from '../../exercises/curve.ts';
import { mountPull } from '../../figures/kit/pull.ts';
import { px, withSizes } from '../../figures/kit/svg.ts';
import { make } from '../dom.ts';
import type { PictureField } from './picture-field.ts';

/** Shares of the axis that an arrow and a page key go. */
const STEP = 1 / 40;
const PAGE = 1 / 8;

/** `place` holds the printed axes, which the drawing takes over. */
export const curveField = (curve: Curve, place: HTMLElement): PictureField => {
  const { up, across, places } = curve;
  const span = up.to - up.from;
  // Until it is set, a point waits on the floor, or on the line of nought.
  const rest = Math.min(Math.max(0, Math.min(up.from, up.to)), Math.max(up.from, up.to));
  let made: number[] = places.map(() => rest);
  let touched = false;
  const points = places
    .map(
      (x, i) =>
        `<g class="point" data-point="${i}" role="slider" tabindex="0" aria-orientation="vertical" aria-valuemin="${up.from}" aria-valuemax="${up.to}" aria-label="${curvePoint(withAxisUnit(x, across))}"><circle class="hold" r="20"/><circle class="dot" r="5"/></g>`,
    )
    .join('');
  place.innerHTML = withSizes(
    curveSvg(
      curve,
      `<path class="answer-curve" data-answer d=""/><path class="yours-curve" data-yours d=""/>${points}`,
    ),
  );
  const handles = [...place.querySelectorAll<SVGGElement>('[data-point]')];
  const line = place.querySelector('[data-yours]');
  const stand = () => {
    line?.setAttribute(
      'd',
      curvePath(
        curve,
        made.map((y, i) => [places[i] ?? 0, y]),
      ),
    );
    for (const [i, handle] of handles.entries()) {
      const y = made[i] ?? 0;
      handle.setAttribute('transform', `translate(${px(curveX(curve, places[i] ?? 0))} ${px(curveY(curve, y))})`);
      handle.setAttribute('aria-valuenow', String(Number(y.toPrecision(4))));
      handle.setAttribute('aria-valuetext', withAxisUnit(y, up));
    }
  };
  const set = (i: number, y: number) => {
    touched = true;
    made = made.with(i, Math.min(Math.max(up.from, up.to), Math.max(Math.min(up.from, up.to), y)));
    stand();
  };
  const at = (event: PointerEvent): { i: number; y: number } | undefined => {
    const box = place.querySelector('svg')?.getBoundingClientRect();
    if (!box) return undefined;
    const scale = CURVE_WIDTH / box.width;
    const x = (event.clientX - box.left) * scale;
    const far = places.map((one) => Math.abs(curveX(curve, one) - x));
    return { i: far.indexOf(Math.min(...far)), y: valueAt(curve, (event.clientY - box.top) * scale) };
  };
  mountPull(place, (event) => {
    const from = at(event);
    if (!from) return undefined;
    const before = made;
    return {
      control: handles[from.i] ?? null,
      move: (to) => {
        const here = at(to);
        if (here) set(here.i, here.y);
      },
      undo: () => {
        made = before;
        stand();
      },
      anyWay: true,
    };
  });
  place.addEventListener('keydown', (event) => {
    const i = handles.indexOf(event.target as SVGGElement);
    if (i < 0 || event.ctrlKey || event.metaKey || event.altKey) return;
    const y = made[i] ?? 0;
    const to = {
      ArrowUp: y + span * STEP,
      ArrowRight: y + span * STEP,
      ArrowDown: y - span * STEP,
      ArrowLeft: y - span * STEP,
      PageUp: y + span * PAGE,
      PageDown: y - span * PAGE,
      Home: up.from,
      End: up.to,
    }[event.key];
    if (to === undefined) return;
    event.preventDefault();
    set(i, to);
  });
  stand();
  return {
    control: make('p', { class: 'how' }, CURVE_SET),
    picture: place,
    read: () => (touched ? good(0) : undefined),
    play: () => {
      place.querySelector('[data-answer]')?.setAttribute('d', curvePath(curve, curve.fine));
      place.classList.add('played');
      if (!place.querySelector('.curve-key')) place.append(make('p', { class: 'curve-key' }, CURVE_KEY));
    },
    says: () => judgeCurve(curve, made).says,
  };
};
