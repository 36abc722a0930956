/**
 * Predict first: the reader commits to a number before the answer shows. Both stay drawn on one scale, and a known slip
 * is named. The answer can always be opened without predicting.
 */

import { beyondAny, NOTHING_CHOSEN, NOTHING_DRAWN, SET_PREDICTION, yourPrediction } from '#words/client.ts';
import { fieldUnit } from '../assembly/numbers.ts';
import { quoted, type SymbolName, symbolFact } from '../engine/index.ts';
import { inCounts } from '../exercises/as-counted.ts';
import { unitText } from '../input/format.ts';
import { readQuantity } from '../input/quantity.ts';
import type { Prediction } from '../page/model.ts';
import { reasonOf } from '../words/reason.ts';
import { answerForm } from './answer-form.ts';
import { make, setText, whenSent } from './dom.ts';
import { hasPredicted, recordPrediction } from './journey.ts';
import { loadModule } from './load-figures.ts';
import type * as Practice from './practice/practice.ts';
import { judgePrediction } from './prediction-words.ts';
import type { Store } from './store.ts';

type Pictures = Pick<typeof Practice, 'judgeSign' | 'pictureField'>;

/** A prediction on a picture waits for the script of pictures; without it the question stands as it is printed. */
export const mountPrediction = (place: HTMLElement, model: Prediction, store: Store, index: number): void => {
  uncoverWhenMade(store, index);
  if (model.on === undefined) mount(place, model, store, index, undefined);
  else
    void loadModule('practice').then((part) => {
      if (part) mount(place, model, store, index, part as Pictures);
    });
};

/** The figure under it that says the answer is uncovered once this was predicted, here or on an earlier visit, or the figure is worked. */
const uncoverWhenMade = (store: Store, index: number): void => {
  const figure = document.querySelector<HTMLElement>(`[data-waits="${index}"]`);
  if (!figure) return;
  if (hasPredicted(document.body.dataset.page ?? '', index)) delete figure.dataset.waits;
  const set = figure.dataset.set ?? '';
  // To go through its fields is not yet to change one.
  const numbers = () => JSON.stringify(store.numbers(set));
  const opened = numbers();
  store.onChange((sets) => {
    if (figure.dataset.waits !== undefined && sets.has(set) && numbers() !== opened) delete figure.dataset.waits;
  });
};

const mount = (
  place: HTMLElement,
  model: Prediction,
  store: Store,
  index: number,
  pictures: Pictures | undefined,
): void => {
  const attempt = place.querySelector('.attempt');
  const reveal = place.querySelector('details');
  if (!attempt || !reveal) return;
  const symbol = model.output as SymbolName;
  const fact = symbolFact(symbol);
  const { field, label, verdict, form } = answerForm(`prediction-${index}`, SET_PREDICTION);
  const scale = make('div', { class: 'scale', hidden: '' });
  const axes = place.querySelector<HTMLElement>('[data-axes]');
  const drawn = pictures?.pictureField(`prediction-on-${index}`, model, fact, verdict, axes, () => store.view());
  if (drawn) {
    form.prepend(drawn.control);
    label.hidden = field.hidden = true;
    if (drawn.picture !== axes) attempt.append(drawn.picture);
  }
  attempt.append(form, verdict, scale);

  const unit = () => fieldUnit(symbol, store.view());
  const caption = () => setText(label, yourPrediction(unitText(unit())));
  caption();

  let made: number | undefined;
  const judge = () => {
    if (made === undefined) return;
    if (drawn?.says) {
      setText(verdict, drawn.says());
      return;
    }
    if (pictures && (model.on === 'way' || model.on === 'flank')) {
      setText(verdict, pictures.judgeSign(made, model, fact, store.view()));
      return;
    }
    const judged = judgePrediction(made, model, fact, store.view());
    setText(verdict, judged.verdict);
    // The dial shows both already.
    scale.hidden = judged.scale === undefined || drawn !== undefined;
    if (judged.scale !== undefined) scale.innerHTML = judged.scale;
  };

  const kept = (value: number) => {
    made = value;
    judge();
    recordPrediction(document.body.dataset.page ?? '', index);
    delete document.querySelector<HTMLElement>(`[data-waits="${index}"]`)?.dataset.waits;
    reveal.open = true;
  };
  whenSent(form, () => {
    if (drawn) {
      const chosen = drawn.read();
      if (!chosen?.ok) {
        setText(verdict, chosen ? reasonOf(chosen) : model.curve ? NOTHING_DRAWN : NOTHING_CHOSEN);
        return;
      }
      drawn.play(chosen.value);
      kept(chosen.value);
      return;
    }
    const counted = { unit: unit(), of: model.output, steps: model.turn?.steps, motion: model.turn?.motion };
    const read = readQuantity(inCounts(field.value, counted), fact.unit, unit());
    const beyond = read.ok && !(read.value.value >= fact.min && read.value.value <= fact.max);
    field.setAttribute('aria-invalid', String(!read.ok || beyond));
    if (!read.ok || beyond) {
      setText(
        verdict,
        read.ok ? beyondAny(quoted(field.value), fact.says, read.value.value > fact.max) : reasonOf(read),
      );
      return;
    }
    kept(read.value.value);
  });
  store.onChange((_sets, view) => {
    if (!view) return;
    caption();
    drawn?.redraw?.();
    judge();
  });
};
