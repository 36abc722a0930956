/**
 * The reader’s own jack on a bench, with a fault hidden in it by a seed: put together, loaded, turned, read and judged. What is noted stands in a plot
 * and in a list beside what a good jack shows; a wrong judgement is met by what was probably thought. What has been done is no state of the page.
 */
import { FAULT_WORDS, TAKEN_FOR } from '#words/bench.ts';
import { WORDS } from '#words/figures/fault-bench.ts';
import { partsStated } from '../../assembly/adjuster/stated.ts';
import { FAULTS, type Fault } from '../../assembly/bench/hidden-fault.ts';
import { keyLine } from '../../assembly/bench/key-line.ts';
import { turns as inTurns, mm } from '../../engine/index.ts';
import { escapeText } from '../../input/escape.ts';
import { numeral, show, type UnitView, withSign } from '../../input/format.ts';
import { writeReadingsTable } from '../../input/readings-table.ts';
import { stepSaid } from '../kit/build-steps.ts';
import { defineFigure } from '../kit/figure.ts';
import { knobSvg, mountKnob, updateKnob } from '../kit/knob.ts';
import { axisUnit, type Frame, legendKey, panelHtml, xAt, yAt } from '../kit/plots/frame.ts';
import { stepsOf } from '../kit/solid/assembling.ts';
import { type Canvas, canvasOn } from '../kit/solid/canvas.ts';
import { PAINTER } from '../kit/solid/drawing.ts';
import { px, withSizes } from '../kit/svg.ts';
import { BEGUN, type Check, type Desk, evidenceOf, type Note, type Told } from './desk.ts';
import { bodies, drawnStill, overlayHtml, PICTURE, poseOf, viewOf } from './picture.ts';
import { PER_TURN, readingAt, type State, stateOf } from './state.ts';

const motion = (x: number, view: UnitView) => show(x, { shown: 'motion', digits: 4 }, view);

/** Printed, and before a script wakes it: whole, as it stands before the first turn. */
const STANDS: Desk = { ...BEGUN, step: Number.POSITIVE_INFINITY, work: true };

const draw = (s: State, view: UnitView): string =>
  `<div class="fault-bench-view"><div class="solid-view" data-solid role="img" aria-label="${escapeText(WORDS.drawing(s.adjuster.name))}">` +
  `<svg class="solid-still" viewBox="0 0 ${PICTURE.width} ${PICTURE.height}" aria-hidden="true"><g data-still>${drawnStill(s, STANDS)}</g></svg>` +
  `<svg class="solid-overlay" viewBox="0 0 ${PICTURE.width} ${PICTURE.height}" aria-hidden="true"><g data-overlay>${overlayHtml(s, STANDS, view)}</g></svg></div>` +
  `<div class="fault-bench-head">${knobSvg(s.n, s.adjuster.divider, s.adjuster.steps, WORDS.knob, { from: 0, to: 1 })}</div><div class="fault-bench-desk" data-desk></div>` +
  `<div class="fault-bench-plot" data-plot></div>` +
  `<details class="fault-bench-seen" data-list hidden><summary data-count></summary><div data-seen></div></details>${toTick()}</div>`;

/** On paper the answer is ticked. */
const toTick = (): string =>
  `<p class="fault-bench-paper">${WORDS.diagnosis}: ${FAULTS.map((fault) => `☐ ${FAULT_WORDS[fault].says}`).join('; ')}.</p>`;

const button = (act: string, words: string, plain = false): string =>
  `<button type="button"${plain ? ' class="plain"' : ''} data-act="${act}" data-key="act-${act}">${escapeText(words)}</button>`;

const buildHtml = (s: State, { step }: Desk, view: UnitView): string => {
  const steps = stepsOf(s.adjuster);
  const one = steps[step - 1];
  const { name, text, count, caution } = one ? stepSaid(one, s.adjuster, view) : { name: '', text: '', count: '–' };
  const says = one
    ? `<b>${escapeText(WORDS.build.of(step, steps.length))} ${escapeText(name)}</b> ${escapeText(text)} ${escapeText(WORDS.build.count(count))}${caution === undefined ? '' : ` <strong class="card-caution">${escapeText(caution)}</strong>`}`
    : escapeText(WORDS.build.first(steps.length));
  return `<p role="status">${says}</p><p class="acts">${button('step', WORDS.build.on)}${button('all', WORDS.build.all, true)}</p>`;
};

/** Readings of which a line can be laid. */
const FEWEST = 4;

const deskHtml = (s: State, desk: Desk, view: UnitView): string => {
  if (desk.step < stepsOf(s.adjuster).length) return buildHtml(s, desk, view);
  const { said } = desk;
  const options = FAULTS.map(
    (fault) =>
      `<option value="${fault}"${said?.fault === fault ? ' selected' : ''}>${FAULT_WORDS[fault].says}</option>`,
  ).join('');
  return (
    `<p class="acts">${button('work', desk.work ? WORDS.work.off : WORDS.work.on)}${button('read', WORDS.read)}${button('read-all', WORDS.readAll)}${(['block', 'drift', 'line'] as const).map((check) => button(check, WORDS.checks[check], true)).join('')}` +
    `${desk.notes.length >= FEWEST ? button('take', WORDS.take, true) : ''}</p>` +
    `<p role="status" data-told>${toldOf(s, desk, view)}</p>` +
    `<p class="acts"><label>${WORDS.diagnosis} <select data-said data-key="said"><option value="">${WORDS.choose}</option>${options}</select></label>${button('say', WORDS.answer)}${button('next', WORDS.next, true)}</p>` +
    `<p role="status" data-verdict>${verdictOf(s, desk, view)}</p>`
  );
};

/** What was just read or looked at, beside the button that was pressed. */
const toldOf = (s: State, desk: Desk, view: UnitView): string => {
  const { told, work, direction, notes } = desk;
  if (told === undefined) return '';
  if (told === 'read-all') return escapeText(WORDS.told.turn(notes.filter((note) => note.work === work).length, work));
  if (told === 'read') {
    const { turns, height, side } = readingAt(work ? s.loaded : s.free, s.place, direction);
    const amount = (x: number) => withSign(motion(x, view));
    return escapeText(
      WORDS.told.reading(
        { at: WORDS.turns(numeral(turns)), direction: WORDS.directions[direction], work },
        { along: amount(height), across: amount(side) },
      ),
    );
  }
  const row = evidenceOf(s, desk, view).find(({ of }) => of === told);
  return row ? escapeText(WORDS.told.check(row)) : '';
};

const verdictOf = (s: State, { said, notes, work, taken }: Desk, view: UnitView): string => {
  if (taken > 0) return escapeText(WORDS.taken(taken));
  if (!said) return escapeText(notes.length === 0 && !work ? WORDS.build.done : WORDS.work.is(work));
  if (said.right) return escapeText(WORDS.right(keyLine(s.bench, view)));
  const is = s.bench.hidden.fault;
  return escapeText(
    WORDS.wrong(
      TAKEN_FOR[said.fault]?.[is] ?? `${FAULT_WORDS[said.fault].shows} ${WORDS.notHere}`,
      FAULT_WORDS[is].look,
    ),
  );
};

const plotHtml = (s: State, { notes }: Desk, view: UnitView): string => {
  const off = notes.map(({ work, direction, place }) => {
    const reading = readingAt(work ? s.loaded : s.free, place, direction);
    return reading.height - s.adjuster.Delta * reading.turns;
  });
  const [low, high] = [Math.min(-0.004, ...off), Math.max(0.004, ...off)];
  const room = 0.1 * (high - low);
  const frame: Frame = { x: [-0.06, 1.06], y: [low - room, high + room], unit: axisUnit(Math.max(high, -low), view) };
  const marks = notes.map(({ work, direction, place }, i) => {
    const [x, y] = [xAt(frame, place / PER_TURN), yAt(frame, off[i] as number)];
    const d = direction === 'up' ? `M${px(x)} ${px(y - 4)}l4 7h-8Z` : `M${px(x)} ${px(y + 4)}l4 -7h-8Z`;
    return `<path class="reading ${direction}${work ? '' : ' free'}" d="${d}"/>`;
  });
  const key = (sample: string, words: string) => legendKey(sample, words, 12);
  return (
    `<ul class="legend">${key('<path class="reading up" d="M17 2l4 7h-8Z"/>', WORDS.legend.up)}${key('<path class="reading down" d="M17 10l4 -7h-8Z"/>', WORDS.legend.down)}${key('<path class="reading up free" d="M17 2l4 7h-8Z"/>', WORDS.legend.off)}</ul>` +
    panelHtml(frame, WORDS.plot, 5, marks.join(''))
  );
};

/** What differs is marked once the fault is found: before, that is for the reader to see. */
const seenHtml = (s: State, desk: Desk, view: UnitView): string => {
  const rows = evidenceOf(s, desk, view);
  if (rows.length === 0) return '';
  const [seen, here, good, within] = WORDS.evidence.head;
  const found = desk.said?.right === true;
  return `<table class="fault-bench-table"><thead><tr><th scope="col">${seen}</th><th scope="col">${here}</th><th scope="col">${good}</th><th scope="col">${within}</th>${found ? '<td></td>' : ''}</tr></thead><tbody>${rows
    .map(
      (row) =>
        `<tr${found && row.differs ? ' class="differs"' : ''}><th scope="row">${escapeText(row.seen)}</th><td>${row.here}</td><td>${row.good}</td><td>${row.within}</td>${found ? `<td>${row.differs ? WORDS.evidence.differs : ''}</td>` : ''}</tr>`,
    )
    .join('')}</tbody></table>`;
};

interface Live {
  desk: Desk;
  /** The jack on the bench, by which a new one is known. */
  bench: State['bench'] | undefined;
  readonly canvas: Canvas;
}
const lives = new WeakMap<HTMLElement, Live>();

const fill = (stage: HTMLElement, part: string, html: string): void => {
  const place = stage.querySelector<HTMLElement>(part);
  if (!place || filled.get(place) === html) return;
  filled.set(place, html);
  const held = place.contains(document.activeElement) ? document.activeElement?.getAttribute('data-key') : undefined;
  place.innerHTML = html;
  // What was pressed may be gone; then the hand is at what comes next.
  if (held)
    (place.querySelector<HTMLElement>(`[data-key="${held}"]`) ?? place.querySelector('button'))?.focus({
      preventScroll: true,
    });
};
const filled = new WeakMap<Element, string>();

const follow = (stage: HTMLElement, s: State, view: UnitView): void => {
  const live = lives.get(stage);
  updateKnob(stage, s.n);
  if (!live) return;
  if (live.bench !== s.bench) {
    // The same hands put the next jack together.
    live.desk = { ...BEGUN, step: live.bench ? live.desk.step : 0, n: s.n };
    live.bench = s.bench;
  }
  const { desk } = live;
  if (s.n !== desk.n) {
    desk.direction = s.n > desk.n ? 'up' : 'down';
    desk.n = s.n;
    desk.told = undefined;
  }
  const pose = poseOf(s, desk);
  const over = () => fill(stage, '[data-overlay]', overlayHtml(s, desk, view));
  live.canvas.show({
    of: s.adjuster,
    bodies: (net) => bodies(s.adjuster, net),
    view: () => ({ view: viewOf(s, pose), moves: false, over }),
  });
  if (!live.canvas.drawn()) {
    fill(stage, '[data-still]', drawnStill(s, desk));
    over();
  }
  fill(stage, '[data-desk]', deskHtml(s, desk, view));
  fill(stage, '[data-plot]', desk.notes.length === 0 ? '' : withSizes(plotHtml(s, desk, view)));
  fill(stage, '[data-seen]', seenHtml(s, desk, view));
  const list = stage.querySelector<HTMLDetailsElement>('[data-list]');
  const count = evidenceOf(s, desk, view).length;
  if (list) list.hidden = count === 0;
  fill(stage, '[data-count]', WORDS.evidence.count(count));
};

const noted = (desk: Desk, notes: readonly Note[]): void => {
  const fresh = notes.filter(
    (x) => !desk.notes.some((y) => y.work === x.work && y.direction === x.direction && y.place === x.place),
  );
  desk.notes = [...desk.notes, ...fresh];
};
const oneTurn = (work: boolean): Note[] =>
  (['up', 'down'] as const).flatMap((direction) =>
    Array.from({ length: PER_TURN + 1 }, (_, place) => ({ work, direction, place })),
  );

/** The readings noted with the work as it is now, for the calibration. */
const takenOf = (s: State, { notes, work }: Desk) =>
  notes
    .filter((note) => note.work === work)
    .map(({ direction, place }) => {
      const { turns, height } = readingAt(work ? s.loaded : s.free, place, direction);
      return { turns: inTurns(turns), reading: mm(height), direction };
    });

const isFault = (text: string | undefined): text is Fault => FAULTS.some((fault) => fault === text);
const isCheck = (text: string | undefined): text is Check => text === 'block' || text === 'drift' || text === 'line';

const isTold = (text: string | undefined): text is Told => isCheck(text) || text === 'read' || text === 'read-all';

export const faultBench = defineFigure({
  name: 'fault-bench',
  title: WORDS.title,
  threads: ['A', 'C'],
  quantities: ['n_h', 'n_s'],
  texts: ['adjuster', 'runs'],
  chief: ['n_h', 'n_s'],
  groups: { threads: ['A', 'C', 'adjuster'], readings: ['runs'] },
  idle: ({ texts }) => (partsStated(texts.adjuster) === undefined ? [] : ['A', 'C']),
  state: stateOf,
  draw,
  caption: (s, view) => {
    // What is done at the bench is no state of the page, so the sentence says what holds whether the work is on or the jack in parts.
    const { turns } = readingAt(s.loaded, s.place, 'up');
    return WORDS.caption({
      seed: numeral(s.bench.seed),
      turns: WORDS.turns(numeral(turns)),
      nominal: motion(s.adjuster.Delta * turns, view),
    });
  },
  table: ({ loaded, free, checks }, view) => {
    const length = (x: number) => show(x, { shown: 'size', digits: 5 }, view);
    return {
      head: WORDS.head,
      rows: [
        ...loaded.map((row, i) => [
          numeral(row.turns),
          WORDS.directions[row.direction],
          motion(row.height, view),
          motion(row.side, view),
          motion(free[i]?.height ?? 0, view),
        ]),
        [WORDS.checks.block, length(checks.block.is), WORDS.reads, length(checks.block.reads), ''],
        [WORDS.checks.drift, '', motion(checks.drift, view), '', ''],
        [WORDS.checks.line, '', show(checks.line, { shown: 'degrees', digits: 2 }, view), '', ''],
      ],
    };
  },
  renderKey: (_, { threads, texts }) => [threads.A.designation, threads.C.designation, texts.adjuster],
  mount: (stage, context) => {
    const read = () => {
      const state = stateOf(context.numbers());
      return state.ok ? state.value : undefined;
    };
    const again = () => {
      const s = read();
      if (s) follow(stage, s, context.view());
    };
    const live: Live = { desk: { ...BEGUN }, bench: undefined, canvas: canvasOn(stage, PICTURE, again) };
    lives.set(stage, live);
    mountKnob(stage, {
      read: () => read()?.n ?? 0,
      write: (n) => context.set('n_h', Math.min(1, Math.max(0, n))),
      steps: () => PER_TURN,
    });
    stage.addEventListener('click', (event) => {
      const pressed = event.target instanceof Element ? event.target.closest<HTMLElement>('[data-act]') : null;
      const s = read();
      if (!pressed || !s) return;
      const { desk } = live;
      const { act } = pressed.dataset;
      if (act === 'step') desk.step++;
      if (act === 'all') desk.step = stepsOf(s.adjuster).length;
      if (act === 'work') desk.work = !desk.work;
      if (act === 'read') noted(desk, [{ work: desk.work, direction: desk.direction, place: s.place }]);
      if (act === 'read-all') noted(desk, oneTurn(desk.work));
      if (isCheck(act) && !desk.checks.includes(act)) desk.checks = [...desk.checks, act];
      if (act !== 'say' && act !== 'take') desk.told = isTold(act) ? act : undefined;
      if (act === 'take') {
        const rows = takenOf(s, desk);
        context.type('runs', writeReadingsTable(rows));
        desk.taken = rows.length;
      } else desk.taken = 0;
      if (act === 'say') {
        const answer = stage.querySelector<HTMLSelectElement>('[data-said]')?.value;
        if (isFault(answer)) desk.said = { fault: answer, right: answer === s.bench.hidden.fault };
      } else if (act !== 'step' && act !== 'all' && act !== 'take') desk.said = undefined;
      if (act === 'next') {
        context.set('n_h', 0);
        context.set('n_s', (s.bench.seed + 1) % 1e9);
      }
      again();
      const list = stage.querySelector<HTMLDetailsElement>('[data-list]');
      if (list && (act === 'read-all' || isCheck(act))) list.open = true;
    });
    again();
  },
  update: follow,
  worker: PAINTER,
});
