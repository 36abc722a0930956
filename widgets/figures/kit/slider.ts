/**
 * A slider of the notebook's own: dragged or tapped along its rail, or worked by arrow keys (one step), Page Up and Page
 * Down (ten) and Home and End. It stands beside the number field of the same quantity and never instead of it.
 */
import { WORDS } from '#words/figures/kit.ts';
import { escapeText } from '../../input/escape.ts';
import { mountPull } from './pull.ts';
import { px } from './svg.ts';

export interface Slider<Q extends string = string> {
  /** The quantity it sets. */
  readonly name: Q;
  readonly label: string;
  /** In base units. */
  readonly min: number;
  readonly max: number;
  readonly step: number;
}

const shareOf = (s: Slider, value: number): number => Math.max(0, Math.min(1, (value - s.min) / (s.max - s.min)));

/** Where nought lies on the rail, if it is inside it: a mark to come back to. */
const noughtMark = (s: Slider): string =>
  s.min < 0 && s.max > 0 ? `<i class="slider-nought" style="left:${px(100 * shareOf(s, 0))}%"></i>` : '';

/** `text` is the value as it is said and shown. */
export const sliderHtml = (s: Slider, value: number, text: string): string =>
  `<div class="slider" data-sym="${s.name}"><p class="slider-name" aria-hidden="true">${escapeText(WORDS.slider.name(s.label))} <b data-slider-text="${s.name}">${escapeText(text)}</b></p>` +
  `<div class="slider-rail" role="slider" tabindex="0" data-slider="${s.name}" data-key="slider-${s.name}" aria-label="${escapeText(s.label)}" aria-orientation="horizontal" aria-valuemin="${s.min}" aria-valuemax="${s.max}" aria-valuenow="${Math.max(s.min, Math.min(s.max, value))}" aria-valuetext="${escapeText(text)}">` +
  `${noughtMark(s)}<i class="slider-thumb" style="left:${px(100 * shareOf(s, value))}%"></i></div></div>`;

export const updateSlider = (stage: HTMLElement, s: Slider, value: number, text: string): void => {
  const rail = stage.querySelector(`[data-slider="${s.name}"]`);
  const thumb = `left:${px(100 * shareOf(s, value))}%`;
  // A style that is written anew is worked out anew, also where it is the same.
  if (
    rail?.getAttribute('aria-valuetext') === text &&
    rail.querySelector('.slider-thumb')?.getAttribute('style') === thumb
  )
    return;
  rail?.setAttribute('aria-valuenow', String(Math.max(s.min, Math.min(s.max, value))));
  rail?.setAttribute('aria-valuetext', text);
  rail?.querySelector('.slider-thumb')?.setAttribute('style', thumb);
  const words = stage.querySelector(`[data-slider-text="${s.name}"]`);
  if (words && words.textContent !== text) words.textContent = text;
};

const KEYS: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowUp: 1,
  ArrowLeft: -1,
  ArrowDown: -1,
  PageUp: 10,
  PageDown: -10,
};

export const mountSliders = <Q extends string>(
  stage: HTMLElement,
  options: {
    readonly sliders: () => readonly Slider<Q>[];
    readonly read: (name: Q) => number;
    readonly write: (name: Q, value: number) => void;
  },
): void => {
  const at = (event: Event): Slider<Q> | undefined => {
    const rail = event.target instanceof Element ? event.target.closest('[data-slider]') : null;
    return options.sliders().find((s) => s.name === rail?.getAttribute('data-slider'));
  };
  const put = (s: Slider<Q>, value: number) => options.write(s.name, Math.max(s.min, Math.min(s.max, value)));
  const onStep = (s: Slider, value: number) => Math.round(value / s.step) * s.step;

  mountPull(stage, (event) => {
    const name = at(event)?.name;
    if (name === undefined) return undefined;
    const rail = () => stage.querySelector<HTMLElement>(`[data-slider="${name}"]`);
    const was = options.read(name);
    return {
      control: rail(),
      move: ({ clientX }) => {
        const s = options.sliders().find((x) => x.name === name);
        const box = rail()?.getBoundingClientRect();
        if (!s || !box || box.width === 0) return;
        put(s, onStep(s, s.min + ((clientX - box.left) / box.width) * (s.max - s.min)));
      },
      undo: () => {
        if (options.read(name) !== was) options.write(name, was);
      },
    };
  });

  stage.addEventListener('keydown', (event) => {
    const s = at(event);
    if (!s || event.ctrlKey || event.altKey || event.metaKey) return;
    const steps = KEYS[event.key];
    if (steps !== undefined) put(s, onStep(s, options.read(s.name)) + steps * s.step);
    else if (event.key === 'Home') put(s, s.min);
    else if (event.key === 'End') put(s, s.max);
    else return;
    event.preventDefault();
  });
};
