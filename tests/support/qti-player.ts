/** A player of QTI 3 that is not ours, on a blank page: what an item scores and says to a response. */
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { beyond, type Page } from './driven.ts';

const modules = resolve(import.meta.dirname, '../../node_modules');
const script = (path: string) => readFileSync(resolve(modules, path), 'utf8');

export interface Played {
  readonly score: number;
  readonly feedback: string;
}

interface Variable {
  readonly identifier: string;
  readonly value: unknown;
}

/** What runs in the page: for each response it loads the item with it as a state to restore, and has it scored. One at a time, since the player keeps one store. */
const play = `async (xml, values, cardinality) => {
  const id = /identifier="([^"]*)"/.exec(xml)[1];
  const once = (value) => new Promise((done, fail) => {
    const late = setTimeout(() => fail(new Error('the player said nothing of ' + id)), 20000);
    document.body.innerHTML = '<div id="app"></div>';
    const state = { identifier: id, guid: id, contextVariables: [], templateVariables: [], outcomeVariables: [], validationMessages: [],
      responseVariables: [{ identifier: 'RESPONSE', cardinality, value, state: null }] };
    let player;
    const view = new Vue({ render: (h) => h(qti3Player, { props: { suppressAlertMessages: true, suppressInvalidResponseMessages: true }, on: {
      notifyQti3PlayerReady: (p) => { player = p; p.loadItemFromXml(xml, { guid: id, status: 'interacting', state }); },
      notifyQti3ItemReady: () => player.scoreAttempt('scored'),
      notifyQti3ScoreAttemptCompleted: (data) => {
        clearTimeout(late);
        done(data.state.outcomeVariables.map(({ identifier, value }) => ({ identifier, value })));
        setTimeout(() => view.$destroy());
      },
    } }) }).$mount('#app');
  });
  const found = [];
  for (const value of values) found.push(await once(value));
  return found;
}`;

/** What an item scores and says to each of these responses. */
export type Play = (xml: string, values: readonly unknown[], cardinality?: string) => Promise<readonly Played[]>;

export const qtiPlayer = async (page: Page): Promise<Play> => {
  const raw = beyond(page);
  await raw.setContent('<!doctype html><title>player</title><body></body>');
  for (const path of ['vue/dist/vue.min.js', 'qti3-item-player/dist/qti3Player.umd.min.js'])
    await raw.addScriptTag({ content: script(path) });
  return async (xml, values, cardinality = 'single') => {
    const all = (await raw.evaluate(
      `(${play})(${JSON.stringify(xml)}, ${JSON.stringify(values)}, ${JSON.stringify(cardinality)})`,
    )) as Variable[][];
    return all.map((found) => {
      const of = (name: string) => found.find(({ identifier }) => identifier === name)?.value;
      return { score: Number(of('SCORE')), feedback: String(of('FEEDBACK') ?? '') };
    });
  };
};
