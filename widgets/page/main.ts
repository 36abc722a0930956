/** Wakes a page: reads its model and its address, then hands every marked place to the part that knows it. */
import 'katex/dist/katex.css';
import './styles/notebook.css';
import { LIGHT } from '../light.ts';
import type { wakePapers as WakePapersHere } from '../papers/papers.ts';
import type { PageModel } from '../press/chapter.ts';
import { addressOf, firstView, hasNumbers, rememberView, typedInAddress } from './address.ts';
import { applyDesign, wakeDesigns } from './designs.ts';
import { all, make } from './dom.ts';
import { wakeExample, wakeQuantities } from './examples.ts';
import { wakeExercises, wakeReview } from './exercises.ts';
import { wakeFigure, wakePointing } from './figures.ts';
import { wakeInputs } from './inputs.ts';
import { loadFigure, loadModule } from './load-figures.ts';
import { wakePrediction } from './predictions.ts';
import { wakeProjector } from './projector.ts';
import { wakeScrollers } from './scrollers.ts';
import { designInUse } from './shelf.ts';
import { createStore } from './store.ts';
import { wakeTools } from './tools.ts';

const wake = () => {
  const data = document.getElementById('page-model')?.textContent;
  if (!data) return;
  const model = JSON.parse(data) as PageModel;
  const typed = typedInAddress(location.search);
  const store = createStore(model.sets, typed, firstView(location.search));
  const mine = designInUse();
  // A link's own numbers stand over those of the design in use.
  if (mine && !hasNumbers(location.search)) applyDesign(store, mine);
  const root = document.body;

  const voice = make('p', { class: 'voice', 'aria-live': 'polite' });
  root.append(voice);
  const announce = (text: string) => {
    voice.textContent = text;
  };

  for (const place of all(root, '[data-tools]')) {
    wakeTools(place, store);
    wakeDesigns(place, store);
  }
  for (const place of all(root, '[data-inputs]')) wakeInputs(place, store);
  for (const example of model.examples)
    for (const place of all(root, `[data-example="${example.id}"]`))
      wakeExample(place, example.set, example.steps, store);
  for (const place of all(root, '[data-predict]')) {
    const index = Number(place.dataset.predict);
    const prediction = model.predictions[index];
    if (prediction) wakePrediction(place, prediction, store, index);
  }
  wakeExercises(root, model.exercises, store);
  const { bank } = model;
  if (bank) {
    for (const place of all(root, '[data-review]')) wakeReview(place, bank, store);
    for (const place of all(root, '[data-papers]'))
      void loadModule('papers').then((part) => {
        const wakePapers = part?.wakePapers as typeof WakePapersHere | undefined;
        wakePapers?.(place, bank);
      });
  }
  wakeQuantities(root, model.live, store);
  wakePointing(root);
  wakeScrollers(root);
  wakeProjector(root);
  for (const figure of all(root, '[data-figure]')) {
    const light = LIGHT.find((w) => w.name === figure.dataset.figure);
    if (light) wakeFigure(figure, light, store, announce);
    else
      whenSeen(figure, async () => {
        const widget = await loadFigure(figure.dataset.figure ?? '');
        if (widget) wakeFigure(figure, widget, store, announce);
      });
  }

  let pending = 0;
  store.onChange((_sets, view) => {
    if (view) rememberView(store.view());
    window.clearTimeout(pending);
    pending = window.setTimeout(() => {
      const search = addressOf(store, location.search);
      history.replaceState(history.state, '', `${search === '' ? location.pathname : `?${search}`}${location.hash}`);
    }, 250);
  });

  window.addEventListener('beforeprint', () => {
    for (const details of document.querySelectorAll('details')) details.open = true;
  });
  document.documentElement.dataset.awake = 'true';
};

/** Runs once, when the element first comes near the window. */
const whenSeen = (element: Element, run: () => void) => {
  const watch = new IntersectionObserver(
    ([entry]) => {
      if (!entry?.isIntersecting) return;
      watch.disconnect();
      run();
    },
    { rootMargin: '300px' },
  );
  watch.observe(element);
};

wake();

// Read once, read anywhere: only where the notebook is hosted, and only a convenience.
if (
  !import.meta.env.DEV &&
  /^https?:$/.test(location.protocol) &&
  'serviceWorker' in navigator &&
  !document.getElementById('notebook-pages')
)
  navigator.serviceWorker.register('offline.js').catch(() => {});
