/** Wakes a page: reads its model and its address, then hands every marked place to the part that knows it. */
import { SCRIPT_MISSING } from '#words/client.ts';
import { inTodaysNames } from '../assembly/design-use.ts';
import { readingFields } from '../assembly/readings.ts';
import { CLASS_GLOBAL, type ClassData } from '../page/class-data.ts';
import type { PageModel } from '../page/model.ts';
import { openStore, withoutField, withoutUnits } from './address.ts';
import { mountBackAgain } from './back-again.ts';
import { mountDesignNote } from './design-note.ts';
import { mountDesigns } from './designs.ts';
import { all, make, setText } from './dom.ts';
import { mountExample, mountQuantities } from './examples.ts';
import type * as FigurePage from './figure-page/figure-page.ts';
import { mountFolds } from './folds.ts';
import type * as Ideas from './ideas/ideas.ts';
import { mountFollowing } from './in-sight.ts';
import { mountInputs } from './inputs.ts';
import { keepAddress, openedWith } from './keep-address.ts';
import { comeBack, mountLeaving, newlyOpened } from './left-here.ts';
import { loadFigure, loadModule, runScript } from './load-figures.ts';
import { mountOneStops } from './one-stop.ts';
import type * as Papers from './papers/papers.ts';
import { mountPartFolds, whenOpened } from './part-folds.ts';
import { mountPointing } from './pointing.ts';
import type * as Practice from './practice/practice.ts';
import { mountPrediction } from './predictions.ts';
import { mountPrinting } from './printing.ts';
import type * as KeptReadings from './readings/readings.ts';
import { mountScrollers } from './scrollers.ts';
import { mountSearch } from './search.ts';
import { mountShowing } from './showing.ts';
import { mountStayPut } from './stay-put.ts';
import type { Store } from './store.ts';
import { mountSymbolCards } from './symbol-card.ts';
import { mountTools } from './tools.ts';
import { mountWaking } from './waking.ts';
import { mountWay } from './way.ts';

/** Wakes the page for as long as it stands: what it hears beyond its own body it hears until then. */
const wake = (until: AbortSignal) => {
  const data = document.getElementById('page-model')?.textContent;
  if (!data) return;
  const model = JSON.parse(data) as PageModel;
  const search = inTodaysNames(openedWith(), model.sets);
  const store = openStore(model.sets, search);
  const left = comeBack(store, search);
  const root = document.body;

  const voice = make('p', { class: 'voice', 'aria-live': 'polite' });
  root.append(voice);
  const announce = (text: string) => {
    voice.textContent = text;
  };

  for (const place of all(root, '[data-tools]')) {
    mountTools(place, store, left, until);
    mountDesigns(place, store, newlyOpened() ? search : '', until);
    if (place.dataset.search) mountSearch(place, place.dataset.search);
    for (const missed of [withoutField(search, store.sets), withoutUnits(search, store.sets)])
      if (missed !== '') place.append(make('p', { class: 'field-note', role: 'status' }, missed));
  }
  for (const place of all(root, '[data-inputs]')) mountInputs(place, store);
  for (const place of all(root, '.example > [data-inputs]')) mountDesignNote(place, [place], store, until);
  for (const example of model.examples)
    for (const place of all(root, `[data-example="${example.id}"]`))
      mountExample(place, example.set, example.steps, store, model, announce);
  for (const place of all(root, '[data-predict]')) {
    const index = Number(place.dataset.predict);
    const prediction = model.predictions[index];
    if (prediction) mountPrediction(place, prediction, store, index);
  }
  const { classData, exercises } = model;
  const fading = all(root, '.example[data-blank]');
  if (exercises.length + fading.length > 0)
    void loadModule('practice').then((part) => {
      if (!part) return;
      const { mountExercises, mountFading } = part as typeof Practice;
      mountExercises(root, exercises, store, until);
      for (const place of fading) {
        const example = model.examples.find(({ id }) => id === place.dataset.example);
        if (example) mountFading(place, example.set, example.steps, store);
      }
    });
  if (classData !== undefined) mountClass(root, classData, store, until);
  const [tests, classes] = [all(root, '[data-ideas]'), all(root, '[data-ideas-class]')];
  if (tests.length + classes.length > 0)
    void loadModule('ideas').then((part) => {
      if (!part) return;
      for (const place of tests) (part as typeof Ideas).mountIdeas(place);
      for (const place of classes) (part as typeof Ideas).mountIdeasClass(place);
    });
  mountFollowing(store, until);
  mountQuantities(root, model.live, store);
  mountPointing(root);
  mountScrollers(root, store);
  mountStayPut(root, store);
  for (const place of all(root, '.foot-line'))
    mountDesignNote(place, all(place.closest('figure') ?? place, '[data-inputs]'), store, until);
  mountShowing(root, until);
  const waking = mountWaking(store, until);
  for (const figure of all(root, '[data-figure]')) {
    const folds = mountFolds(figure, store, announce, until);
    waking.add(figure, async () => {
      const part = await loadModule('figure-page');
      const drawn = part && (await loadFigure(figure.dataset.figure ?? ''));
      if (part && drawn) {
        const { mountFigure } = part as typeof FigurePage;
        return mountFigure(figure, drawn, store, folds, model, announce, until);
      }
      figure.classList.add('stale');
      setText(figure.querySelector('[data-refusal]'), SCRIPT_MISSING);
    });
  }

  keepAddress(store, until);
  mountLeaving(store, until);
  mountBackAgain(until);
  const readings = readingFields(store.sets.values()).map(({ id, name }) => store.field(id, name));
  if (readings.length > 0)
    void loadModule('readings').then((part) => {
      if (!part) return;
      const { mountReadings } = part as typeof KeptReadings;
      mountReadings(root, store, readings, search, until);
    });

  mountSymbolCards(root, model, store, announce, until);
  mountWay(root, until);
  mountPartFolds(root, until);
  mountOneStops(root, until);
  mountPrinting(root, waking.wakeChanged, until);
  document.documentElement.dataset.awake = 'true';
};

/** The bank of exercises and what works on it are fetched once a part that needs them is opened. */
const mountClass = (root: HTMLElement, file: string, store: Store, until: AbortSignal) => {
  let asked = false;
  const run = async () => {
    if (asked) return;
    asked = true;
    // Worked steps of items from other chapters are written with the words that the script of papers has.
    const [papers, practice, there] = await Promise.all([
      loadModule('papers'),
      loadModule('practice'),
      runScript(file),
    ]);
    const data = (window as unknown as Record<string, ClassData | undefined>)[CLASS_GLOBAL];
    if (!(papers && practice && there && data)) {
      asked = false;
      return;
    }
    for (const place of all(root, '[data-review]')) (practice as typeof Practice).mountReview(place, data.bank, store);
    for (const place of all(root, '[data-papers]')) (papers as typeof Papers).mountPapers(place, data, until);
  };
  const papers = root.querySelector('[data-papers]');
  // A link to papers fills their form in.
  if (papers && /[?&](?:ask|bank)=/.test(location.search)) papers.closest('details')?.setAttribute('open', '');
  for (const place of all(root, '[data-review], [data-papers], [data-classwork]')) whenOpened(place, () => void run());
};

let stands = new AbortController();
wake(stands.signal);

// In the dev server a saved chapter takes the place of the page that is open, whose script need not load again.
import.meta.hot?.on('notebook:saved', async () => {
  const page = new DOMParser().parseFromString(await (await fetch(location.href)).text(), 'text/html');
  stands.abort();
  stands = new AbortController();
  document.title = page.title;
  document.body.replaceWith(page.body);
  wake(stands.signal);
});

// Read once, read anywhere: only where the notebook is hosted, and only a convenience.
if (
  !import.meta.env.DEV &&
  /^https?:$/.test(location.protocol) &&
  'serviceWorker' in navigator &&
  !document.getElementById('notebook-pages')
)
  navigator.serviceWorker.register('offline.js').catch(() => {});
