/**
 * A plate on three feet, seen from above: where it was read and stands, which way it leans, and what to turn at each foot
 * so that it comes level. “Turn them” goes through a round as feet would that do not quite move as designated.
 */

import { WORDS } from '#words/figures/levelling-plate.ts';
import { at, good, type Levelling, type Place, type Result, type Tilt } from '../../engine/index.ts';
import { dayShown } from '../../input/day.ts';
import { escapeText } from '../../input/escape.ts';
import { numeral, show, type UnitView, withSign } from '../../input/format.ts';
import { writeFeet, writeReadings, writeRounds } from '../../input/levelling-table.ts';
import { LONGEST_PASSPORTS, withMeasured } from '../../input/passports.ts';
import { reasonOf } from '../../words/reason.ts';
import { defineFigure, type FigureContext, type Table } from '../kit/figure.ts';
import { orderText, roomSentence, roomText } from '../kit/levelling/order.ts';
import {
  endOf,
  type MeasuredFoot,
  MOST_ROUNDS,
  type PlateState,
  plateOf,
  QUANTITIES,
  type Round,
  TEXTS,
  turned,
  uphillEighth,
} from '../kit/levelling/rounds.ts';
import { mountPull } from '../kit/pull.ts';
import { amount, type Row, signedAmount } from '../kit/readout.ts';
import { arrowheads, px } from '../kit/svg.ts';
import { labelStyle } from './labels.ts';
import {
  type Frame,
  frameOf,
  groundSvg,
  type Handle,
  HEIGHT,
  handleSvg,
  handlesOf,
  lineStep,
  pixelOf,
  placeAt,
  placedHandles,
  placeText,
  WIDTH,
} from './plan.ts';

type Context = FigureContext<'A' | 'C', (typeof QUANTITIES)[number], 'kept', (typeof TEXTS)[number]>;

const motion = (z: number, view: UnitView): string => withSign(show(z, { shown: 'motion', digits: 3 }, view));
/** A micrometre per metre is a millionth of an inch per inch: the same number either way. */
const tiltText = ({ micrometresPerMetre, arcSeconds }: Tilt, view: UnitView): string =>
  `${numeral(micrometresPerMetre, 3)}\u00a0${view === 'inch' ? 'µin/in' : 'µm/m'} (${numeral(arcSeconds, 3)}″)`;
/** Plus is clockwise, as everywhere. */
const counted = (count: number): string => (Math.abs(count) < 5e-4 ? '0' : withSign(numeral(count, 3)));
const newtons = (load: number): string => show(load, { shown: 'force', digits: 3 }, 'metric');

const draw = (s: PlateState, view: UnitView): string => {
  const frame = frameOf(s);
  return (
    `<div class="plan-view"><svg class="plate-plan" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="group" aria-label="${WORDS.plan}"><g data-ground>${groundSvg(s, frame, view)}</g>${placedHandles(
      s,
      frame,
      view,
    )
      .map((handle) => handleSvg(frame, handle, view))
      .join('')}</svg>` +
    `<p class="line picked" data-part="picked" role="status"></p>` +
    `<ul class="keys"><li><svg viewBox="0 0 30 12" aria-hidden="true"><path class="level" d="M1 6H29"/></svg>${WORDS.equallyHigh}<span data-part="step">${stepText(s, frame, view)}</span></li>` +
    `<li><svg viewBox="0 0 30 12" aria-hidden="true">${arrowheads('plate-key')}<path class="arrow strong rise" marker-end="url(#plate-key)" d="M1 6H28"/></svg>${WORDS.wayItRises}</li></ul></div>` +
    `<div class="plan-side"><div data-part="now">${nowHtml(s, view)}</div>` +
    `<p class="acts"><button type="button" data-act="turn" data-key="act-turn">${WORDS.turnThem}</button><button type="button" class="plain" data-act="back" data-key="act-back">${WORDS.roundBack}</button><button type="button" class="plain" data-act="places" data-key="act-places">${WORDS.places.write}</button></p><p class="line" role="status" data-part="said"></p></div>`
  );
};

const stepText = (s: PlateState, frame: Frame, view: UnitView): string =>
  WORDS.lineEvery(show(lineStep(s, frame, view), { shown: 'motion' }, view === 'both' ? 'metric' : view));

const bold = (text: string): string => `<b>${text}</b>`;
const headHtml = (head: readonly string[]): string => head.map((name) => `<th scope="col">${name}</th>`).join('');

/** What to turn now. */
const nowHtml = (s: PlateState, view: UnitView): string => {
  const { moves, residualTilt, tilt } = s.now.levelling;
  const rows = moves.map(
    (move, i) =>
      `<tr><th scope="row">${move.name}</th><td>${motion(move.correction, view)}</td><td>${counted(move.turns)}</td><td>${roomText(s.now, i)}</td><td>${counted(move.steps)}</td><td class="turn">${orderText(s.now, i, s.k)}</td></tr>`,
  );
  const end = endOf(s);
  const then =
    end !== undefined
      ? WORDS.done[end]
      : s.now.order.kind === 'too far'
        ? ''
        : WORDS.shouldBeLeft(bold(tiltText(residualTilt, view)), s.k);
  return (
    `<p class="line">${WORDS.leans(s.rounds.length, bold(tiltText(tilt, view)))}</p>` +
    `<div class="table-scroll" tabindex="0" role="group" aria-label="${WORDS.whatToTurn}"><table class="turn-table"><thead><tr>${headHtml(WORDS.turnHead(s.k))}</tr></thead><tbody>${rows.join('')}</tbody></table></div>` +
    roomHtml(s, view) +
    `<p class="line">${then} ${WORDS.plusIsClockwise}${s.fromParts ? ` ${WORDS.fromParts(numeral(s.most, 3))}` : ''}${s.measured.length > 0 ? ` ${WORDS.measured(s.measured.map((m) => WORDS.measuredFoot(m.name, measuredText(m, view), m.day)))}` : ''}${s.placed.length > 0 ? ` ${WORDS.placed(s.placed.map((p) => WORDS.placedFoot(p.name, withSign(show(p.turns, { shown: 'turns', digits: 3 }, view)), p.day)))}` : ''}</p>` +
    (s.loads.ok ? '' : `<p class="line lifts">${weightText(s)}</p>`)
  );
};

const roomHtml = (s: PlateState, view: UnitView): string => {
  const sentence = roomSentence(s, view);
  return sentence === ''
    ? ''
    : `<p class="line${s.now.order.kind === 'too far' ? ' no-room' : ''}" data-part="room">${escapeText(sentence)}</p>`;
};

/** What to turn and what should be left then, in one sentence; empty where the threads do not reach. */
const ordersText = (s: PlateState, residual: string): string => {
  const end = endOf(s);
  if (end !== undefined) return WORDS.done[end];
  if (s.now.order.kind === 'too far') return '';
  return WORDS.orders(
    s.now.levelling.moves.map(({ name }, i) => ({ name, order: orderText(s.now, i, s.k) })),
    residual,
  );
};

const weightText = (s: PlateState): string =>
  s.loads.ok
    ? WORDS.carries(s.loads.value.map(({ name, load }) => ({ name, load: newtons(load) })))
    : escapeText(reasonOf(s.loads));

/** Of the round that is drawn. */
const rows = (s: PlateState): readonly Row[] => [
  amount('tilt', WORDS.rows.tilt, s.now.levelling.tilt.micrometresPerMetre, 'plain', 3),
  ...s.now.levelling.moves.map((move) =>
    signedAmount(`turns-${move.name}`, WORDS.rows.turns(move.name), move.turns, 'turns', 3),
  ),
  ...(s.loads.ok
    ? s.loads.value.map(({ name, load }) => amount(`load-${name}`, WORDS.rows.carries(name), load, 'force', 3))
    : []),
];

/** Round by round: how it comes level. */
const roundsHtml = (s: PlateState, view: UnitView): string =>
  `<div class="table-scroll" tabindex="0" role="group" aria-label="${WORDS.roundByRound}"><table class="rounds-table"><thead><tr>${headHtml(WORDS.roundsHead)}</tr></thead><tbody>${s.rounds
    .map(
      ({ levelling, order }, i) =>
        `<tr><th scope="row">${i + 1}</th><td>${tiltText(levelling.tilt, view)}<svg class="tilt-bar" viewBox="0 0 100 6" preserveAspectRatio="none" aria-hidden="true"><path d="M0 3H${px(100 * share(levelling, s.first))}"/></svg></td><td>${order.kind === 'too far' ? WORDS.notWithin : levelling.moves.map((move) => signed(move.wholeSteps)).join(', ')}</td></tr>`,
    )
    .join('')}</tbody></table></div>`;

const share = (levelling: Levelling, first: Round): number => {
  const before = first.levelling.tilt.slope;
  return before > 0 ? Math.min(1, levelling.tilt.slope / before) : 0;
};

const signed = (steps: number): string => withSign(numeral(steps));

const caption = (s: PlateState, view: UnitView): string => {
  const { plane, tilt, residualTilt } = s.now.levelling;
  const worst = Math.max(...plane.residuals.map(Math.abs));
  const flat =
    plane.freedom > 0
      ? { readings: s.now.readings.length, within: show(worst, { shown: 'motion', digits: 2 }, view) }
      : undefined;
  const short = s.now.checks.map(({ name, extra }) => ({ name, extra: motion(extra, view) }));
  return [
    WORDS.leaning({ round: s.rounds.length, tilt: tiltText(tilt, view), eighth: uphillEighth(tilt.uphill), flat }),
    roomSentence(s, view),
    ordersText(s, tiltText(residualTilt, view)),
    short.length === 0 ? '' : WORDS.movedLess(short),
    s.loads.ok ? WORDS.noFootLifts : reasonOf(s.loads),
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
};

const table = (s: PlateState, view: UnitView): Table => {
  const loads = s.loads.ok ? s.loads.value : [];
  return {
    head: WORDS.head(s.k),
    rows: s.rounds.flatMap((round, i) => [
      ...round.readings.map((point, j) => [
        String(i + 1),
        WORDS.readingRow(WORDS.readingName(j)),
        placeText(point, view),
        motion(point.z, view),
        motion(at(round.levelling.plane.residuals, j), view),
        '',
        '',
        '',
        '',
        '',
      ]),
      ...round.levelling.moves.map((move, j) => [
        String(i + 1),
        WORDS.footRow(move.name),
        placeText(at(s.feet, j), view),
        motion(move.correction, view),
        round.order.kind === 'too far' ? '' : motion(move.left, view),
        counted(move.turns),
        roomText(round, j),
        counted(move.steps),
        orderText(round, j, s.k),
        loads[j] === undefined ? '' : newtons(loads[j].load),
      ]),
    ]),
  };
};

/** The lead of a passport, with its ± where it has one. */
const measuredText = ({ Delta, half }: MeasuredFoot, view: UnitView): string =>
  size(Math.abs(Delta), 4, view) + (half === undefined ? '' : ` ± ${size(half, 2, view)}`);
const size = (z: number, digits: number, view: UnitView): string => show(z, { shown: 'motion', digits }, view);

/** The mark that was tapped and waits to be told where to go: what dragging does, for who cannot drag. */
const picked = new WeakMap<Element, string>();

/** Frames held still while a point is dragged: a drawing that grew under the pointer would run away with it. */
const held = new WeakMap<Element, Frame>();

const update = (stage: HTMLElement, s: PlateState, view: UnitView): void => {
  const frame = held.get(stage) ?? frameOf(s);
  const fill = (part: string, html: string) => {
    const place = stage.querySelector(part);
    if (place && place.innerHTML !== html) place.innerHTML = html;
  };
  fill('[data-ground]', groundSvg(s, frame, view));
  for (const handle of placedHandles(s, frame, view)) {
    const g = stage.querySelector(`[data-handle="${handle.key}"]`);
    if (!g) continue;
    const [x, y] = pixelOf(frame, handle.place);
    g.setAttribute('transform', `translate(${px(x)} ${px(y)})`);
    g.setAttribute('aria-valuenow', px(handle.place.x));
    g.setAttribute('aria-valuetext', placeText(handle.place, view));
    g.setAttribute('aria-label', handle.says);
    g.classList.toggle('is-picked', handle.key === picked.get(stage));
    fill(`[data-handle="${handle.key}"] [data-mark]`, handle.mark);
    fill(`[data-handle="${handle.key}"] [data-under]`, escapeText(handle.label));
    const words = g.querySelector('[data-under]');
    words?.setAttribute('style', labelStyle(handle.words));
    words?.setAttribute('text-anchor', handle.words.anchor);
  }
  const waiting = handlesOf(s, view).find((handle) => handle.key === picked.get(stage));
  fill('[data-part="picked"]', waiting ? WORDS.picked(escapeText(waiting.says)) : '');
  fill('[data-part="step"]', stepText(s, frame, view));
  fill('[data-part="now"]', nowHtml(s, view));
  const able = (act: string, yes: boolean) =>
    stage.querySelector(`[data-act="${act}"]`)?.setAttribute('aria-disabled', String(!yes));
  able('turn', endOf(s) === undefined && s.now.order.kind !== 'too far' && s.rounds.length < MOST_ROUNDS);
  able('back', s.rounds.length > 1);
  able('places', s.rounds.length > 1);
};

/** Puts one point of the plan at a place, to a whole millimetre where it was dragged. */
const move = (context: Context, key: string, to: (from: Place) => Place): void => {
  const numbers = context.numbers();
  const state = plateOf(numbers);
  const handle = state.ok ? handlesOf(state.value, context.view()).find((h) => h.key === key) : undefined;
  if (!state.ok || !handle) return;
  const place = to(handle.place);
  const kept = { x: tidy(place.x), y: tidy(place.y) };
  if (handle.kind === 'weight') {
    context.set('x_g', kept.x);
    context.set('y_g', kept.y);
  } else if (handle.kind === 'foot')
    context.type(
      'feet',
      writeFeet(state.value.feet.map((foot, i) => (i === handle.index ? { ...foot, ...kept } : foot))),
    );
  else {
    // The other rows stay as they were typed, in whatever unit.
    const rows = numbers.texts.readings.split('\n');
    const reading = state.value.first.readings[handle.index];
    if (reading === undefined) return;
    rows[handle.index] = writeReadings([{ ...reading, ...kept }]);
    context.type('readings', rows.join('\n'));
  }
};

/** Puts the points of this kind back where they are now. */
const asItIs = (context: Context, kind: Handle['kind']): (() => void) => {
  const { values, texts } = context.numbers();
  return () => {
    if (kind === 'weight') for (const name of ['x_g', 'y_g'] as const) context.set(name, values[name]);
    else {
      const list = kind === 'foot' ? 'feet' : 'readings';
      context.type(list, texts[list]);
    }
  };
};

/** Within what a plan can be, and free of the dust of binary fractions. */
const tidy = (v: number): number => Number(Math.max(-1e4, Math.min(1e4, v)).toFixed(3));

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

const mount = (stage: HTMLElement, context: Context): void => {
  const handleAt = (event: Event): string | undefined =>
    (event.target instanceof Element ? event.target.closest('[data-handle]') : null)?.getAttribute('data-handle') ??
    undefined;

  const within = (v: number, low: number, high: number) => Math.round(Math.max(low, Math.min(high, v)));
  const inside = ({ x, y }: Place, { left, right, bottom, top }: Frame): Place => ({
    x: within(x, left, right),
    y: within(y, bottom, top),
  });
  const pointed = (event: MouseEvent, frame: Frame): Place | undefined => {
    const box = stage.querySelector('.plate-plan')?.getBoundingClientRect();
    if (!box || box.width === 0) return undefined;
    const zoom = WIDTH / box.width;
    return placeAt(frame, [(event.clientX - box.left) * zoom, (event.clientY - box.top) * zoom]);
  };
  mountPull(stage, (event) => {
    const key = handleAt(event);
    const state = plateOf(context.numbers());
    if (key === undefined || !state.ok) return undefined;
    const frame = frameOf(state.value);
    const from = pointed(event, frame);
    const handle = handlesOf(state.value, context.view()).find((h) => h.key === key);
    if (!from || !handle) return undefined;
    const putBack = asItIs(context, handle.kind);
    const again = picked.get(stage) === key;
    held.set(stage, frame);
    return {
      control: stage.querySelector<SVGElement>(`[data-handle="${key}"]`),
      anyWay: true,
      tap: () => {
        if (again) picked.delete(stage);
        else picked.set(stage, key);
      },
      move: (event) => {
        const to = pointed(event, frame);
        picked.delete(stage);
        if (to)
          move(context, key, () =>
            inside({ x: to.x + handle.place.x - from.x, y: to.y + handle.place.y - from.y }, frame),
          );
      },
      undo: putBack,
      end: () => {
        held.delete(stage);
        context.redraw();
      },
    };
  });

  stage.addEventListener('keydown', (event) => {
    const key = handleAt(event);
    if (event.key === 'Escape' && picked.delete(stage)) context.redraw();
    const step = ARROWS[event.key];
    if (key === undefined || step === undefined || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    const size = event.shiftKey ? 10 : 1;
    move(context, key, ({ x, y }) => ({ x: x + size * step[0], y: y + size * step[1] }));
  });

  stage.addEventListener('click', (event) => {
    const key = picked.get(stage);
    const state = plateOf(context.numbers());
    if (key === undefined || !state.ok || handleAt(event) !== undefined) return;
    if (!(event.target instanceof Element && event.target.closest('.plate-plan'))) return;
    const frame = frameOf(state.value);
    const to = pointed(event, frame);
    if (!to) return;
    picked.delete(stage);
    move(context, key, () => inside(to, frame));
    context.redraw();
  });

  stage.addEventListener('click', (event) => {
    const button = event.target instanceof Element ? event.target.closest('[data-act]') : null;
    if (!button || button.getAttribute('aria-disabled') === 'true') return;
    const numbers = context.numbers();
    const state = plateOf(numbers);
    if (!state.ok) return;
    const rows = numbers.texts.rounds.split('\n').filter((row) => row !== '');
    if (button.getAttribute('data-act') === 'back') {
      context.type('rounds', rows.slice(0, -1).join('\n'));
      return;
    }
    if (button.getAttribute('data-act') === 'places') {
      const said = stage.querySelector('[data-part=said]');
      const written = withPlaces(state.value, numbers.texts.passport, dayShown(new Date()));
      const fits = written.ok && written.value.length <= LONGEST_PASSPORTS;
      if (fits) {
        // The rounds are in the places now, so they begin again, from the readings that were taken last.
        context.type('passport', written.value);
        context.type('readings', writeReadings(state.value.now.readings));
        context.type('rounds', '');
      }
      if (said) said.textContent = fits ? WORDS.places.written : written.ok ? WORDS.places.full : reasonOf(written);
      return;
    }
    const next = turned(state.value, numbers.values.eps);
    if (!next.ok) return;
    context.type('rounds', [...rows, writeRounds([next.value.map((point) => point.z)])].join('\n'));
  });
};

/** The passports with the place at which each foot stands now, in turns from the middle of its stroke: where its passport left it, and every round since. */
export const withPlaces = (s: PlateState, passports: string, day: string): Result<string> => {
  let text = passports;
  for (const [i, { name }] of s.feet.entries()) {
    const place = Number(at(s.now.stands, i).toFixed(4));
    const before = s.placed.find((p) => p.name === name)?.day ?? day;
    // The last day rules, so a passport that is dated ahead of the calendar keeps its day.
    const written = withMeasured(text, { piece: name, day: before > day ? before : day, place });
    if (!written.ok) return written;
    text = written.value.text;
  }
  return good(text);
};

export const levellingPlate = defineFigure({
  name: 'levelling-plate',
  title: WORDS.title,
  threads: ['A', 'C'],
  quantities: QUANTITIES,
  choices: ['kept'],
  texts: TEXTS,
  chief: ['kept'],
  groups: {
    readings: ['readings'],
    rounds: ['rounds', 'eps'],
    feet: ['feet', 'stands'],
    threads: ['A', 'C', 'X_A', 'X_C', 'adjuster', 'k', 'passport'],
    weight: ['W', 'x_g', 'y_g'],
  },
  state: plateOf,
  draw,
  caption,
  rows,
  readings: (s, view) =>
    `${roundsHtml(s, view)}${s.loads.ok ? `<p class="line" data-part="loads">${weightText(s)}</p>` : ''}`,
  table,
  renderKey: (s) => s.now.readings.length,
  mount,
  update,
});
