/** A bar set beside one that is known, then the engine's beside both. */
import { BAR_ASKED, barAnswer, barYours } from '#words/client.ts';
import { good, type Result, type SymbolFact } from '../../engine/index.ts';
import { px, withSizes } from '../../figures/kit/svg.ts';
import { escapeText } from '../../input/escape.ts';
import { formatOf, show, type UnitView } from '../../input/format.ts';
import { readNumber } from '../../input/quantity.ts';
import type { Prediction } from '../../page/model.ts';
import { make } from '../dom.ts';
import type { PictureField } from './picture-field.ts';

const FLOOR = 176;
const TOP = 14;
/** How far the axis goes at the least, in heights of the known bar. */
const LEAST = 2.5;
const MARGIN = 1.25;

export const barField = (id: string, model: Prediction, fact: SymbolFact, view: () => UnitView): PictureField => {
  const { answer, slips, digits } = model;
  const { value: known, says } = model.beside ?? { value: 1, says: '' };
  const reach = Math.max(LEAST, ...[answer, ...slips.map((s) => s.value)].map((x) => (MARGIN * Math.abs(x)) / known));
  // A bar may be far taller than the known one; a slider that ends at a round number tells nothing of the answer.
  const end = 100 * [LEAST, 5, 10, 25, 50, 100].reduce((to, one) => (to >= Math.min(reach, 100) ? to : one), 0);
  const picture = make('div', { class: 'shown' });
  const box = make('input', {
    id,
    type: 'text',
    inputmode: 'decimal',
    autocomplete: 'off',
    maxlength: '40',
    value: '100',
  });
  const slide = make('input', {
    type: 'range',
    min: '0',
    max: String(end),
    step: String(end / 500),
    value: '100',
    'aria-label': BAR_ASKED(says),
  });
  const read = (): Result<number> => {
    const typed = readNumber(box.value);
    // A bar is set by eye: three digits are plenty.
    return typed.ok ? good(Number(((typed.value / 100) * known).toPrecision(3))) : typed;
  };
  let played = false;
  const amount = (x: number, more?: number) => escapeText(show(x, formatOf(fact, more), view()));
  const draw = () => {
    const typed = read();
    const made = typed.ok ? typed.value : 0;
    const high = (x: number) => Math.min(FLOOR - TOP, ((FLOOR - TOP) * Math.max(0, x) * 100) / known / end);
    const bar = (x: number, name: string, value: number, words: string, below: string) =>
      `<g class="${name}"><rect x="${x - 34}" y="${px(FLOOR - high(value))}" width="68" height="${px(high(value))}"/>` +
      `<text x="${x}" y="${FLOOR + 20}" text-anchor="middle">${escapeText(words)}</text><text x="${x}" y="${FLOOR + 40}" text-anchor="middle">${below}</text></g>`;
    picture.innerHTML = withSizes(
      `<svg class="bar-picture" viewBox="0 0 400 222" role="img" aria-label="${escapeText(BAR_ASKED(says))}"><path class="base-line" d="M14 ${FLOOR}H386"/>` +
        `${bar(72, 'known', known, says, amount(known, 3))}${bar(200, 'yours', made, barYours, typed.ok ? amount(made, 3) : '')}${played ? bar(328, 'answer', Math.abs(answer), barAnswer, amount(answer, digits)) : ''}</svg>`,
    );
  };
  slide.addEventListener('input', () => {
    box.value = String(Number(Number(slide.value).toPrecision(4)));
    draw();
  });
  box.addEventListener('input', () => {
    const typed = readNumber(box.value);
    if (typed.ok) slide.value = String(typed.value);
    draw();
  });
  draw();
  return {
    control: make(
      'div',
      {},
      make('label', { for: id }, BAR_ASKED(says)),
      make('span', { class: 'field-box' }, box),
      slide,
    ),
    picture,
    read,
    play: () => {
      played = true;
      draw();
    },
    redraw: draw,
  };
};
