/**
 * Pairs per second of the search for a pair, and of the same search written over a general units library. Times are medians; the slow one runs
 * on every n-th pair and is scaled.
 */
import { add, larger, subtract, unit } from 'mathjs';
import { runnerImport } from 'vite';

const median = (xs) => [...xs].sort((a, b) => a - b)[Math.floor(xs.length / 2)] ?? Number.NaN;
const time = (work) => {
  const from = performance.now();
  work();
  return performance.now() - from;
};
const repeat = (times, work) => Array.from({ length: times }, () => time(work));
const perSecond = (count, ms) => Math.round((1000 * count) / ms).toLocaleString('en-GB');

const RUNS = 25;
/** The slow search takes one first thread in this many. */
const EVERY = 16;

export const title = 'Search for a pair';

export const bench = async (line) => {
  const { module: engine } = await runnerImport(`${import.meta.dirname}/../../widgets/engine/index.ts`, {
    configFile: false,
    logLevel: 'error',
  });
  const catalogue = engine.catalogueOf();
  const wish = {
    motion: 0.25,
    band: 0.1,
    dividers: [1],
    hands: 'either',
    arrangement: 'nested',
    leastWall: 0.5,
    smallest: 0,
    largest: 400,
    series: engine.SERIES_NAMES,
    owned: 'none',
    usable: 1,
    leastStroke: 0.1,
    load: 500,
    stress: 100,
  };
  const search = (changes = {}) => {
    const answer = engine.searchPairs(catalogue, { ...wish, ...changes });
    if (!answer.ok) throw new Error(answer.reason);
    return answer.value;
  };
  const { pairs } = search();
  const whole = (changes) => {
    search(changes);
    return median(repeat(RUNS, () => search(changes)));
  };
  line('threads, and pairs of them that move', `${catalogue.candidates.length}, ${pairs.toLocaleString('en-GB')}`);
  line('limits of every thread, ms', median(repeat(RUNS, () => engine.catalogueOf())).toFixed(2));
  const ours = whole();
  line('whole search, nested, every filter, ms', ours.toFixed(2));
  line(
    'whole search, either arrangement, everything passes, ms',
    whole({ arrangement: 'either', band: 100, leastStroke: 0, load: 0 }).toFixed(2),
  );
  line('whole search with four dividers, ms', whole({ motion: 0.02, dividers: [4, 6, 12, 50] }).toFixed(2));
  line('an empty answer, with counts and nearest pair, ms', whole({ motion: 1e-4 }).toFixed(2));
  line('pairs per second', perSecond(pairs, ours));

  const { work, looked } = overUnits(catalogue, wish);
  work();
  const slow = median(repeat(5, work));
  line(
    `the same over a units library, one pair in ${Math.round(pairs / looked)}: pairs per second`,
    perSecond(looked, slow),
  );
  line('ratio', (pairs / ours / (looked / slow)).toFixed(0));
};

/** The same filters with every length, force and stress a unit of the library; prepared columns as in ours. */
const overUnits = (catalogue, wish) => {
  const mm = (x) => unit(x, 'mm');
  const list = catalogue.candidates.map(({ thread }, i) => ({
    lead: mm(thread.L),
    d: mm(thread.d),
    core: mm(catalogue.core[i]),
    root: mm(catalogue.root[i]),
    bore: mm(catalogue.bore[i]),
  }));
  const low = mm(wish.motion * (1 - wish.band));
  const high = mm(wish.motion * (1 + wish.band));
  const wall = mm(wish.leastWall);
  const stroke = mm(wish.leastStroke);
  const load = unit(wish.load, 'N');
  const stress = unit(wish.stress, 'N/mm^2');
  const nought = mm(0);
  const square = (x) => x.multiply(x);
  let looked = 0;
  for (let i = 0; i < list.length; i += EVERY) looked += 2 * (list.length - i);
  const passes = (a, b, unlike) => {
    const net = unlike ? add(a.lead, b.lead) : subtract(b.lead, a.lead);
    if (!(larger(net, nought) && !larger(low, net) && !larger(net, high))) return false;
    const turns = Math.min(a.d.divide(a.lead), b.d.divide(b.lead)) * wish.usable;
    if (larger(stroke, net.multiply(turns))) return false;
    const [outer, inner] = larger(a.d, b.d) ? [a, b] : [b, a];
    const left = subtract(outer.root, inner.bore).multiply(0.5);
    if (!(larger(left, nought) && !larger(wall, left))) return false;
    const sleeve = subtract(square(outer.core), square(inner.bore));
    const area = larger(sleeve, square(inner.core)) ? square(inner.core) : sleeve;
    return !larger(load, stress.multiply(area).multiply(Math.PI / 4));
  };
  return {
    looked,
    work: () => {
      let count = 0;
      for (let i = 0; i < list.length; i += EVERY)
        for (let j = i; j < list.length; j++)
          for (const unlike of [false, true]) if (passes(list[i], list[j], unlike)) count++;
      return count;
    },
  };
};
