/**
 * Predictions made on a picture: which way a part goes, which flank touches, where the hand of a dial will stand. What was predicted stays drawn
 * beside what is played.
 */
import {
  DIAL_ASKED,
  drawnFlank,
  drawnWay,
  FLANK_ASKED,
  predictedRight,
  predictedSlip,
  predictedWrong,
  WAY_ASKED,
} from '#words/client.ts';
import { FLANKS, flankAsked, WAYS, wayAsked } from '#words/papers.ts';
import { good, type Result, type SymbolFact } from '../../engine/index.ts';
import { LETTERS, signOf } from '../../exercises/offered.ts';
import { dialScale, dialSvg, updateDial } from '../../figures/kit/dial.ts';
import { px, withSizes } from '../../figures/kit/svg.ts';
import { formatOf, show, type UnitView } from '../../input/format.ts';
import { readNumber } from '../../input/quantity.ts';
import type { Prediction } from '../../page/model.ts';
import { make } from '../dom.ts';
import { barField } from './bar-prediction.ts';
import { curveField } from './curve-prediction.ts';
import { offeredField } from './offered-field.ts';
import type { PictureField } from './picture-field.ts';

/** The sign that stands for a choice. */
const SIGNS = [1, -1, 0];

const chosenField = (id: string, words: readonly string[], status: HTMLElement) => {
  const field = offeredField(id, status);
  field.place.hidden = false;
  field.put({ options: words.map((text) => ({ text, says: '' })), right: '?' });
  return field;
};

const bySign = (
  id: string,
  words: readonly string[],
  asked: string,
  status: HTMLElement,
  drawing: (made: number | undefined) => string,
): PictureField => {
  const field = chosenField(id, words, status);
  const legend = field.place.querySelector('legend');
  if (legend) legend.textContent = asked;
  const picture = make('div', { class: 'shown' });
  const draw = (made: number | undefined) => {
    picture.innerHTML = withSizes(drawing(made));
  };
  draw(undefined);
  return {
    control: field.place,
    picture,
    read: () => {
      const at = LETTERS.indexOf(field.value());
      return field.value() === '' ? undefined : good(SIGNS[at] ?? 0);
    },
    play: draw,
  };
};

/** Two blocks on a line where they stood: the reader's goes as was predicted, the engine's as it does. */
const wayDrawing = (answer: number, made: number | undefined): string => {
  const block = (x: number, sign: number, name: string, says: string) => {
    const rise = -32 * sign;
    return (
      `<g class="${name}"><path class="rest" d="M${x - 60} 70h120"/><g class="goes" style="--rise:${rise}px"><rect x="${x - 32}" y="58" width="64" height="24"/></g>` +
      `${sign === 0 ? '' : `<path class="way" d="M${x + 48} 70v${rise}m-5 ${7 * sign}l5 ${-7 * sign}l5 ${7 * sign}"/>`}<text x="${x}" y="134" text-anchor="middle">${says}</text></g>`
    );
  };
  const sides =
    made === undefined
      ? [block(200, 0, 'waits', '')]
      : [
          block(100, made, 'yours', drawnWay(WAYS[signOf(made)] ?? '', true)),
          block(300, Math.sign(answer), 'answer', drawnWay(WAYS[signOf(answer)] ?? '', false)),
        ];
  return `<svg class="way-picture" viewBox="0 0 400 144" role="img" aria-label="${WAY_ASKED}">${sides.join('')}</svg>`;
};

/** A ridge of the upper part in its groove, the base below: the flank that was marked is dashed, the one that touches is thick. */
const flankDrawing = (answer: number, made: number | undefined): string => {
  const shift = made === undefined ? 0 : 7 * Math.sign(answer);
  const lower = 'M150 105L250 79';
  const upper = 'M150 35L250 61';
  const side = (sign: number) => (sign > 0 ? lower : sign < 0 ? upper : '');
  const groove = 'M60 8H140V26L262 56V84L140 114V132H60';
  return (
    `<svg class="flank-picture" viewBox="0 0 400 144" role="img" aria-label="${FLANK_ASKED}"><path class="groove" d="M400 8H140L262 52V88L140 132H400Z"/><path class="base-line" d="M20 140H380"/>` +
    `<g class="goes" style="--rise:${shift}px"><path class="ridge" d="${groove}L60 8Z"/>` +
    `${made === undefined ? '' : `<path class="touches" d="${side(Math.sign(answer))}"/>`}</g>` +
    `${made === undefined ? '' : `<path class="yours-mark" d="${side(made)}"/><text x="394" y="30">${drawnFlank(FLANKS[signOf(made)] ?? '', true)}</text><text x="394" y="122">${drawnFlank(FLANKS[signOf(answer)] ?? '', false)}</text>`}</svg>`
  );
};

/** Far enough round for the slips too. */
const REACH = 250;

const dialField = (id: string, { answer }: Prediction): PictureField => {
  const scale = dialScale(answer, 'metric');
  const picture = make('div', { class: 'shown' });
  picture.innerHTML = dialSvg(0, scale, DIAL_ASKED, true);
  const mark = document.createElementNS('http://www.w3.org/2000/svg', 'path');
  mark.setAttribute('class', 'yours-hand');
  mark.setAttribute('d', 'M0 0V-66');
  picture.querySelector('svg')?.append(mark);
  const box = make('input', { id, type: 'text', inputmode: 'text', autocomplete: 'off', maxlength: '40', value: '0' });
  const slide = make('input', {
    type: 'range',
    min: String(-REACH),
    max: String(REACH),
    step: '0.5',
    value: '0',
    'aria-label': DIAL_ASKED,
  });
  const read = (): Result<number> => {
    const typed = readNumber(box.value);
    return typed.ok ? good(typed.value * scale.division) : typed;
  };
  const stand = () => {
    const typed = read();
    if (typed.ok) mark.setAttribute('transform', `rotate(${px((typed.value / scale.division) * 3.6)})`);
  };
  slide.addEventListener('input', () => {
    box.value = slide.value.replace('-', '−');
    stand();
  });
  box.addEventListener('input', () => {
    const typed = readNumber(box.value);
    if (typed.ok) slide.value = String(typed.value);
    stand();
  });
  return {
    control: make('div', {}, make('label', { for: id }, DIAL_ASKED), make('span', { class: 'field-box' }, box), slide),
    picture,
    read,
    play: () => {
      picture.classList.add('played');
      picture.querySelector('svg')?.setAttribute('aria-label', DIAL_ASKED);
      updateDial(picture, answer, scale);
    },
  };
};

/** `axes`: the printed axes of a curve. */
export const pictureField = (
  id: string,
  model: Prediction,
  fact: SymbolFact,
  status: HTMLElement,
  axes: HTMLElement | null,
  view: () => UnitView,
): PictureField =>
  model.curve && axes
    ? curveField(model.curve, axes, view)
    : model.on === 'bar'
      ? barField(id, model, fact, view)
      : offeredOrDial(id, model, status);

const offeredOrDial = (id: string, model: Prediction, status: HTMLElement): PictureField =>
  model.on === 'dial'
    ? dialField(id, model)
    : model.on === 'way'
      ? bySign(id, WAYS, WAY_ASKED, status, (made) => wayDrawing(model.answer, made))
      : bySign(id, FLANKS, FLANK_ASKED, status, (made) => flankDrawing(model.answer, made));

/** What is said of a choice by sign; a slip that comes to the same sign names what was probably thought. */
export const judgeSign = (made: number, model: Prediction, fact: SymbolFact, view: UnitView): string => {
  const words = model.on === 'flank' ? FLANKS : WAYS;
  const right = `${words[signOf(model.answer)] ?? ''} (${show(model.answer, formatOf(fact, model.digits), view)})`;
  const yours = words[signOf(made)] ?? '';
  if (signOf(made) === signOf(model.answer)) return predictedRight(right);
  const slip = model.slips.find((s) => signOf(s.value) === signOf(made));
  return slip
    ? predictedSlip(yours, right, slip.says)
    : `${predictedWrong(yours, right)} ${model.on === 'flank' ? flankAsked(fact.says) : wayAsked(fact.says)}`;
};
