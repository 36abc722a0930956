/** A curve drawn by the reader over empty axes: each point is set by a tap, a pull or keys, then the engine's curve is laid over it. */
import { CURVE_KEY, CURVE_SET, curvePoint } from '#words/client.ts';
import { good } from '../../engine/index.ts';
import {
  CURVE_WIDTH,
  type Curve,
  curveIn,
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
import type { UnitView } from '../../input/format.ts';
import { make } from '../dom.ts';
import type { PictureField } from './picture-field.ts';

/** Shares of the axis that an arrow and a page key go. */
const STEP = 1 / 40;
const PAGE = 1 / 8;

/** `place` holds the printed axes, which the drawing takes over. */
export const curveField = (printed: Curve, place: HTMLElement, view: () => UnitView): PictureField => {
  let curve = curveIn(printed, view());
  // Until it is set, a point waits on the floor, or on the line of nought.
  const rest = Math.min(Math.max(0, Math.min(curve.up.from, curve.up.to)), Math.max(curve.up.from, curve.up.to));
  let made: number[] = curve.places.map(() => rest);
  let touched = false;
  let handles: SVGGElement[] = [];
  const write = () => {
    const { up, across, places } = curve;
    const points = places
      .map(
        (x, i) =>
          `<g class="point" data-point="${i}" role="slider" tabindex="0" aria-orientation="vertical" aria-valuemin="${up.from}" aria-valuemax="${up.to}" aria-label="${curvePoint(withAxisUnit(x, across))}"><circle class="hold" r="20"/><circle class="dot" r="5"/></g>`,
      )
      .join('');
    const svg = withSizes(
      curveSvg(
        curve,
        `<path class="answer-curve" data-answer d=""/><path class="yours-curve" data-yours d=""/>${points}`,
      ),
    );
    const before = place.querySelector('svg');
    if (before) before.outerHTML = svg;
    else place.innerHTML = svg;
    handles = [...place.querySelectorAll<SVGGElement>('[data-point]')];
  };
  const stand = () => {
    const { up, places } = curve;
    place.querySelector('[data-yours]')?.setAttribute(
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
    const { up } = curve;
    touched = true;
    made = made.with(i, Math.min(Math.max(up.from, up.to), Math.max(Math.min(up.from, up.to), y)));
    stand();
  };
  const at = (event: PointerEvent): { i: number; y: number } | undefined => {
    const box = place.querySelector('svg')?.getBoundingClientRect();
    if (!box) return undefined;
    const scale = CURVE_WIDTH / box.width;
    const x = (event.clientX - box.left) * scale;
    const far = curve.places.map((one) => Math.abs(curveX(curve, one) - x));
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
    const { up } = curve;
    const span = up.to - up.from;
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
  let played = false;
  const answer = () => place.querySelector('[data-answer]')?.setAttribute('d', curvePath(curve, curve.fine));
  write();
  stand();
  return {
    control: make('p', { class: 'how' }, CURVE_SET),
    picture: place,
    read: () => (touched ? good(0) : undefined),
    play: () => {
      played = true;
      answer();
      place.classList.add('played');
      if (!place.querySelector('.curve-key')) place.append(make('p', { class: 'curve-key' }, CURVE_KEY));
    },
    says: () => judgeCurve(curve, made).says,
    redraw: () => {
      const before = curve.up.to - curve.up.from;
      curve = curveIn(printed, view());
      const by = (curve.up.to - curve.up.from) / before;
      made = made.map((y) => y * by);
      write();
      stand();
      if (played) answer();
    },
  };
};
