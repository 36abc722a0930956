/**
 * The turned part seen from above, and how it is turned: dragged round, by wheel over it, by arrow keys (one step; with
 * Shift one turn) and Home. Clockwise is positive. A slider to assistive technology.
 */
import { WORDS } from '#words/figures/kit.ts';
import type { Divider } from '../../input/dividers.ts';
import { nextStep } from '../../input/next-step.ts';
import { notchCounter } from './notches.ts';
import { mountPull } from './pull.ts';
import { px } from './svg.ts';

const R = 62;

/** As far as any figure turns. */
const ANY = { from: -600, to: 600 } as const;

/** The knob at n turns; `steps` marks stand round it. It goes from stop to stop where there are any. */
export const knobSvg = (
  n: number,
  divider: Divider,
  steps: number,
  label: string,
  range: { readonly from: number; readonly to: number } = ANY,
): string =>
  `<svg class="knob" viewBox="-90 -90 180 180" data-knob data-key="knob" role="slider" tabindex="0" aria-orientation="vertical" aria-label="${label}" aria-valuemin="${px(range.from)}" aria-valuemax="${px(range.to)}" aria-valuenow="${px(n)}" aria-valuetext="${knobText(n)}">` +
  `<circle class="dish" r="84"/>${marks(steps)}<path class="index" d="M0 -66l-6 -13h12z"/>` +
  `<g data-turn transform="rotate(${px(n * 360)})"><path class="face" d="${facePath(divider)}"/><path class="pointer" d="M0 -8V-${R - 12}"/><circle class="hub" r="9"/></g>` +
  `<path class="arc" data-arc d="${arcPath(n)}"/></svg>`;

const marks = (steps: number): string => {
  const shown = steps <= 72 ? steps : 0;
  return Array.from({ length: shown }, (_, i) => {
    const a = (2 * Math.PI * i) / shown;
    const inner = i % (shown % 5 === 0 && shown > 12 ? 5 : 1) === 0 ? 74 : 78;
    return `<path class="mark" d="M${px(inner * Math.sin(a))} ${px(-inner * Math.cos(a))}L${px(83 * Math.sin(a))} ${px(-83 * Math.cos(a))}"/>`;
  }).join('');
};

const facePath = (divider: Divider): string => {
  if (divider === 'knob') return `M0 -${R}A${R} ${R} 0 1 1 0 ${R}A${R} ${R} 0 1 1 0 -${R}Z`;
  const corners = divider === 'square' ? 4 : divider === 'hexagon' ? 6 : 12;
  // Twelve points are two hexagons: between its points the outline falls back to their crossing.
  const points: string[] = [];
  const turn = Math.PI / corners;
  for (let i = 0; i < corners; i++) {
    const a = (2 * Math.PI * i) / corners + (divider === 'twelve points' ? 0 : turn);
    points.push(`${px(R * Math.sin(a))} ${px(-R * Math.cos(a))}`);
    if (divider === 'twelve points') {
      const inner = R * (Math.cos(Math.PI / 6) / Math.cos(Math.PI / 12));
      points.push(`${px(inner * Math.sin(a + turn))} ${px(-inner * Math.cos(a + turn))}`);
    }
  }
  return `M${points.join('L')}Z`;
};

/** The part of a turn gone through since the last whole turn, as an arc outside the face. */
const arcPath = (n: number): string => {
  const share = n - Math.trunc(n);
  if (Math.abs(share) < 1e-6) return '';
  const a = 2 * Math.PI * share;
  return `M0 -70A70 70 0 ${Math.abs(share) > 0.5 ? 1 : 0} ${share > 0 ? 1 : 0} ${px(70 * Math.sin(a))} ${px(-70 * Math.cos(a))}`;
};

const knobText = (n: number): string => {
  const count = Number(Math.abs(n).toFixed(3));
  return count === 0 ? WORDS.knob.notTurned : WORDS.knob.turned({ count, clockwise: n > 0 });
};

export const updateKnob = (stage: HTMLElement, n: number): void => {
  const knob = stage.querySelector('[data-knob]');
  knob?.querySelector('[data-turn]')?.setAttribute('transform', `rotate(${px(n * 360)})`);
  knob?.querySelector('[data-arc]')?.setAttribute('d', arcPath(n));
  knob?.setAttribute('aria-valuenow', px(n));
  knob?.setAttribute('aria-valuetext', knobText(n));
};

/** Lets the reader turn what is read and written, in turns, by the knob on this stage. */
export const mountKnob = (
  stage: HTMLElement,
  options: { read: () => number; write: (n: number) => void; steps: () => number },
): void => {
  const angle = (knob: Element, event: PointerEvent): number => {
    const box = knob.getBoundingClientRect();
    return (
      Math.atan2(event.clientX - box.left - box.width / 2, -(event.clientY - box.top - box.height / 2)) / (2 * Math.PI)
    );
  };
  const knobAt = (event: Event): Element | null =>
    event.target instanceof Element ? event.target.closest('[data-knob]') : null;

  mountPull(stage, (event) => {
    const taken = knobAt(event);
    if (!taken) return undefined;
    const was = options.read();
    let last = angle(taken, event);
    // Turns are gathered here while dragging, so that a rounded field does not lose them.
    let gathered = was;
    return {
      control: taken as SVGElement,
      anyWay: true,
      tap: () => {},
      move: (event) => {
        const knob = stage.querySelector('[data-knob]');
        if (!knob) return;
        const now = angle(knob, event);
        let moved = now - last;
        moved -= Math.round(moved);
        last = now;
        gathered += moved;
        options.write(gathered);
        gathered = Math.abs(options.read() - gathered) > 1e-3 ? options.read() : gathered;
      },
      undo: () => {
        if (options.read() !== was) options.write(was);
      },
    };
  });

  const notches = notchCounter();
  stage.addEventListener(
    'wheel',
    (event) => {
      if (!knobAt(event) || event.ctrlKey) return;
      event.preventDefault();
      const notch = notches(event);
      if (notch !== 0) options.write(nextStep(options.read(), 1 / options.steps(), notch));
    },
    { passive: false },
  );

  stage.addEventListener('keydown', (event) => {
    if (!knobAt(event) || event.ctrlKey || event.altKey || event.metaKey) return;
    const sign =
      event.key === 'ArrowUp' || event.key === 'ArrowRight'
        ? 1
        : event.key === 'ArrowDown' || event.key === 'ArrowLeft'
          ? -1
          : 0;
    if (sign !== 0)
      options.write(event.shiftKey ? options.read() + sign : nextStep(options.read(), 1 / options.steps(), sign));
    else if (event.key === 'PageUp' || event.key === 'PageDown')
      options.write(options.read() + (event.key === 'PageUp' ? 1 : -1));
    else if (event.key === 'Home') options.write(0);
    else return;
    event.preventDefault();
  });
};
