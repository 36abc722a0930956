/**
 * Predict first: the reader commits to a number before the answer shows. Both stay drawn on one scale, and a known slip
 * is named. The answer can always be opened without predicting.
 */
import { outOfBounds, quoted, readQuantity, type SymbolName, symbolFact } from '../engine/index.ts';
import type { PageModel } from '../press/chapter.ts';
import { dressOf, numeral, show } from '../shared/format.ts';
import { fieldUnit } from '../shared/numbers.ts';
import { answerForm } from './answer-form.ts';
import { make, setText, whenSent } from './dom.ts';
import type { Store } from './store.ts';

/** Within this share of the answer a prediction counts as right: the point is the idea, not the last digit. */
const NEAR = 0.02;

export const wakePrediction = (
  place: HTMLElement,
  model: PageModel['predictions'][number],
  store: Store,
  index: number,
): void => {
  const attempt = place.querySelector('.attempt');
  const reveal = place.querySelector('details');
  if (!attempt || !reveal) return;
  const symbol = model.output as SymbolName;
  const fact = symbolFact(symbol);
  const { field, label, verdict, form } = answerForm(`prediction-${index}`, 'Set my prediction');
  const scale = make('div', { class: 'scale', hidden: '' });
  attempt.append(form, verdict, scale);

  const unit = () => fieldUnit(symbol, store.view());
  const caption = () =>
    setText(label, `Your prediction${unit() === '1' ? '' : ` (a bare number counts as ${unit()})`}`);
  caption();

  let made: number | undefined;
  const judge = () => {
    if (made === undefined) return;
    const dress = dressOf(fact, model.digits);
    const answer = show(model.answer, dress, store.view());
    const yours = show(made, dressOf(fact), store.view());
    const slip = model.slips.find(
      (s) => Math.abs(made ?? Number.NaN) > 0 && Math.abs(Math.abs(made ?? 0) / Math.abs(s.value) - 1) < NEAR,
    );
    const ratio = made / model.answer;
    if (model.answer === 0) setText(verdict, made === 0 ? `Yes: ${answer}.` : `You said ${yours}; it is ${answer}.`);
    else if (Math.abs(ratio - 1) < NEAR) setText(verdict, `Yes: ${answer}.`);
    else if (Math.abs(ratio + 1) < NEAR)
      setText(verdict, `Right amount, other way: you said ${yours}, it is ${answer}.`);
    else if (slip) setText(verdict, `You said ${yours}; it is ${answer}. ${slip.says}`);
    else if (made === 0) setText(verdict, `You said it does not move; it moves ${answer}.`);
    else {
      const times = Math.abs(ratio) > 1 ? Math.abs(ratio) : 1 / Math.abs(ratio);
      setText(
        verdict,
        `You said ${yours}; it is ${answer}, ${times < 1.5 ? 'not far off' : `${numeral(Number(times.toPrecision(2)))} times ${Math.abs(ratio) > 1 ? 'less' : 'more'}`}.`,
      );
    }
    scale.hidden = model.answer === 0;
    if (scale.hidden) return;
    scale.innerHTML = scaleSvg(made, model.answer, yours, answer);
  };

  whenSent(form, () => {
    const read = readQuantity(field.value, fact.unit, unit());
    const beyond = read.ok && outOfBounds(symbol, read.value.value)?.field !== undefined && !fact.whole;
    field.setAttribute('aria-invalid', String(!read.ok || beyond));
    if (!read.ok || beyond) {
      setText(
        verdict,
        read.ok
          ? `Read ${quoted(field.value)}, which is beyond any ${fact.says} here: type a smaller one.`
          : read.reason,
      );
      return;
    }
    made = read.value.value;
    judge();
    reveal.open = true;
  });
  store.onChange((_sets, view) => {
    if (!view) return;
    caption();
    judge();
  });
};

/** Prediction and answer on one scale by ratio, so that a slip of a thousand still fits the paper. */
const scaleSvg = (made: number, answer: number, yours: string, right: string): string => {
  const logs = [Math.abs(made) || Math.abs(answer) / 1e3, Math.abs(answer)].map(Math.log10);
  const [low, high] = [Math.floor(Math.min(...logs) - 0.15), Math.ceil(Math.max(...logs) + 0.15)];
  const x = (value: number) => 20 + (360 * (Math.log10(Math.abs(value) || 10 ** low) - low)) / (high - low);
  const anchor = (at: number) => (at < 90 ? 'start' : at > 310 ? 'end' : 'middle');
  const [a, b] = [x(made), x(answer)];
  const ticks = Array.from(
    { length: high - low + 1 },
    (_, i) => `<path class="tick" d="M${20 + (360 * i) / (high - low)} 34v8"/>`,
  ).join('');
  return (
    `<svg viewBox="0 0 400 78" role="img" aria-label="Your prediction ${yours} and the answer ${right} on a scale of ratios"><path class="axis" d="M20 38H380"/>${ticks}` +
    `<g class="yours"><path d="M${a} 38l-6 -10h12z"/><text x="${a}" y="18" text-anchor="${anchor(a)}">you: ${yours}</text></g>` +
    `<g class="answer"><circle cx="${b}" cy="38" r="5"/><text x="${b}" y="66" text-anchor="${anchor(b)}">engine: ${right}</text></g></svg>`
  );
};
