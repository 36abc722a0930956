/**
 * A million assemblies of two threads, drawn and summed up, beside the same in Debian's python3-numpy, where that is
 * installed: uniform and normal draws, 5 %, 50 % and 95 % points. Both are timed inside their own process.
 */
import { execFileSync } from 'node:child_process';
import { resolve } from 'node:path';
import { runnerImport } from 'vite';

const ROUNDS = 9;
const COUNT = 1_000_000;
const median = (xs) => [...xs].sort((a, b) => a - b)[Math.floor(xs.length / 2)];

// Pitch-diameter limits of M10×1.5 6H/6g and 3/8-16 2B/2A, mm.
const THREADS = [
  { d2min: 8.862, d2max: 8.994, D2min: 9.026, D2max: 9.206 },
  { d2min: 8.34898, d2max: 8.46074, D2min: 8.49376, D2max: 8.63854 },
];

const PYTHON = `
import json, sys, time
import numpy
threads, count, rounds = json.loads(sys.argv[1]), int(sys.argv[2]), int(sys.argv[3])
tan30 = numpy.tan(numpy.pi / 6)
rng = numpy.random.default_rng(2026)
def batch(law):
    play = numpy.zeros(count)
    together = numpy.ones(count, dtype=bool)
    for t in threads:
        def draw(low, high):
            if law == 'uniform':
                return rng.uniform(low, high, count)
            return rng.normal((low + high) / 2, (high - low) / 6 / 1.33, count)
        j = (draw(t['D2min'], t['D2max']) - draw(t['d2min'], t['d2max'])) * tan30
        together &= j >= 0
        play += j
    play = play[together]
    numpy.histogram(play, bins=60)
    return numpy.quantile(play, [0.05, 0.5, 0.95]).tolist()
out = {'version': numpy.__version__}
for law in ['uniform', 'normal']:
    times = []
    for _ in range(rounds):
        start = time.perf_counter()
        quantiles = batch(law)
        times.append((time.perf_counter() - start) * 1000)
    out[law] = {'times': times, 'quantiles': quantiles}
print(json.dumps(out))
`;

export const title = 'A batch of assemblies';

export async function bench(line) {
  const root = resolve(import.meta.dirname, '../..');
  const { playBatch, playBatchRun } = (
    await runnerImport(resolve(root, 'widgets/engine/play/play-batch.ts'), { configFile: false, logLevel: 'error' })
  ).module;
  const ours = {};
  for (const law of [{ kind: 'uniform' }, { kind: 'normal', Cp: 1.33, clipped: false }]) {
    const run = () => playBatch({ threads: THREADS, count: COUNT, seed: 2026, law });
    run();
    const times = [];
    let last;
    for (let i = 0; i < ROUNDS; i++) {
      const from = performance.now();
      last = run();
      times.push(performance.now() - from);
    }
    ours[law.kind] = { time: median(times), quantiles: last.value.drawn.quantiles.map((q) => q.play) };
    line(`a million assemblies, ${law.kind}, engine, ms`, ours[law.kind].time.toFixed(1));
  }
  line('ten million normal, step between two pauses, ms (median / 99 %)', stepTimes(playBatchRun));
  const theirs = numpys('/usr/bin/python3') ?? numpys('python3');
  if (theirs === undefined) {
    line('numpy beside it', 'left out: Debian’s python3-numpy is not installed here');
    return;
  }
  for (const law of ['uniform', 'normal']) {
    const time = median(theirs[law].times);
    line(`a million assemblies, ${law}, numpy ${theirs.version}, ms`, time.toFixed(1));
    line(`  ratio engine to numpy, ${law} (below 1 is quicker)`, (ours[law].time / time).toFixed(2));
    const off = Math.max(...ours[law].quantiles.map((q, i) => Math.abs(q - theirs[law].quantiles[i]) * 1000));
    line(`  largest difference of the 5, 50 and 95 % points, ${law}, µm`, off.toFixed(3));
  }
}

/** What one slice on the page may add to a frame. */
function stepTimes(playBatchRun) {
  const law = { kind: 'normal', Cp: 1.33, clipped: false };
  const run = playBatchRun({ threads: THREADS, count: 10 * COUNT, seed: 2026, law }).value;
  const times = [];
  for (let done = false; !done; ) {
    const from = performance.now();
    done = run.next().done;
    times.push(performance.now() - from);
  }
  times.sort((a, b) => a - b);
  return `${median(times).toFixed(1)} / ${(times[Math.floor(0.99 * times.length)] ?? Number.NaN).toFixed(1)}`;
}

/** The same in numpy, where this Python has it. */
function numpys(python) {
  try {
    const words = ['-c', PYTHON, JSON.stringify(THREADS), String(COUNT), String(ROUNDS)];
    return JSON.parse(execFileSync(python, words, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] }));
  } catch {
    return undefined;
  }
}
