/** From the parts in a drawer to an adjuster: what can be built of them, what meets a wish, and the rows of the one that is chosen. */
import { WORDS } from '#words/figures/drawer.ts';
import { rowsOfStack, type Stack, type Stacks } from '../../assembly/drawer/stacks.ts';
import {
  type Answer,
  answerWish,
  bestEdge,
  type Choice,
  misses,
  type Wish,
  type WishName,
} from '../../assembly/drawer/wish.ts';
import { type Bad, good, quoted, type Result } from '../../engine/index.ts';
import { readDividers } from '../../input/dividers.ts';
import { escapeText } from '../../input/escape.ts';
import { fixed, grouped, numeral, show, type UnitView } from '../../input/format.ts';
import { wordsShown } from '../../input/typed-words.ts';
import { reasonOf } from '../../words/reason.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { px } from '../kit/svg.ts';
import { type Frame, frameOf, mapSvg, placeOf } from './map.ts';
import { searchNow, stacksOf, stopOrGoOn, tellWhenSearched } from './search.ts';

const QUANTITIES = ['s_w', 'S_w', 'H_w', 'p_m', 'q_e'] as const;
const TEXTS = ['hardware', 'dividers', 'adjuster'] as const;
type Given = NumbersOf<never, (typeof QUANTITIES)[number], 'best' | 'counted', (typeof TEXTS)[number]>;

const LISTED = 8;
/** Rows of a drawer that are told to be left out; of more only how many. */
const MOST_TOLD = 8;
const TABLED = 100;
const HEXAGON = 6;
/** A wish a flat or a turn asks nothing of the divider. */
const COUNTED = { 'a step': undefined, 'a flat': HEXAGON, 'a turn': 1 } as const;

interface State {
  readonly found: Stacks;
  readonly dividers: readonly number[];
  readonly wish: Wish;
  readonly answer: Answer;
  readonly edge: readonly Choice[];
  readonly frame: Frame;
  readonly kept: number;
  readonly counted: keyof typeof COUNTED;
}

const stateOf = ({ values, choices, texts }: Given): Result<State> => {
  const fixed = COUNTED[choices.counted];
  const others = fixed === undefined ? readDividers(texts.dividers) : good([fixed]);
  if (!others.ok) return others;
  const found = stacksOf(texts.hardware, values.q_e);
  if (!found.ok) return found;
  // Every head of the trade has its hexagon.
  const dividers = fixed === undefined ? [...new Set([HEXAGON, ...others.value])] : others.value;
  const wish: Wish = {
    step: values.s_w,
    stroke: values.S_w,
    height: values.H_w,
    price: values.p_m > 0 ? values.p_m : undefined,
  };
  const { stacks } = found.value;
  return good({
    found: found.value,
    dividers,
    wish,
    answer: answerWish(stacks, dividers, wish, choices.best),
    edge: bestEdge(stacks, dividers),
    frame: frameOf(stacks, dividers),
    kept: values.q_e,
    counted: choices.counted,
  });
};

const motion = (z: number, view: UnitView): string => show(z, { shown: 'motion', digits: 4 }, view);
const size = (x: number, view: UnitView): string => show(x, { shown: 'size', digits: 3 }, view);
const money = (price: number | undefined): string => (price === undefined ? WORDS.noPrice : fixed(price, 2));

const rowsOf = ({ answer }: State): readonly Choice[] => (answer.kind === 'found' ? answer.rows : answer.nearest);

const amountText = (wish: WishName, value: number, view: UnitView): string =>
  wish === 'price' ? money(value) : wish === 'height' ? size(value, view) : motion(value, view);

const coarseText = ({ coarse, leads }: Stack, view: UnitView): string =>
  coarse.index === undefined
    ? WORDS.plainScrew
    : WORDS.coarse(
        size(coarse.range, view),
        size(leads.A, view),
        coarse.gap > 0 ? motion(coarse.gap, view) : undefined,
      );

/** Whether the fine stroke bridges from one place of the lock to the next. */
const locksText = ({ coarse: { index, gap }, stroke }: Stack, view: UnitView): string =>
  index === undefined
    ? ''
    : WORDS.locks(motion(index, view), motion(stroke, view), gap > 0 ? motion(gap, view) : undefined);

const growthText = ({ growth }: Stack, view: UnitView): string =>
  growth === undefined ? WORDS.notKnown : motion(growth, view);

const named = ({ base, turned, carried }: Stack, how: (text: string) => string): string =>
  [base, turned, ...(carried ? [carried] : [])]
    .map(({ called, part, text }) => how(text.startsWith(called) ? text : called + text.slice(part.kind.length)))
    .join(WORDS.onTop);

const listRow = (c: Choice, rank: number, s: State, view: UnitView): string => {
  const [x, y] = placeOf(s.frame, c);
  const { stack } = c;
  const missing = misses(c, s.wish).map((wish) => WORDS.wishes[wish]);
  const cells = [
    WORDS.atSteps(motion(c.step, view), c.divisions),
    motion(stack.stroke, view),
    coarseText(stack, view),
    size(stack.height, view),
    growthText(stack, view),
    money(stack.price),
    ...(s.answer.kind === 'nothing' ? [missing.join(', ')] : []),
  ];
  return (
    `<tr data-row="${rank}" data-at="${px(x)} ${px(y)}"><th scope="row">${escapeText(named(stack, WORDS.short))} <button type="button" class="plain" data-take="${rank}" data-key="take-${rank}">${WORDS.take(rank + 1)}</button></th>` +
    `${cells.map((cell) => `<td>${escapeText(cell)}</td>`).join('')}</tr>`
  );
};

const draw = (s: State, view: UnitView): string => {
  const { answer, found, frame } = s;
  const nothing = answer.kind === 'nothing';
  // A row of no known kind is told last and of them only the first, since its sentence lists all kinds and would hide the others.
  const [unread, others] = [true, false].map((is) =>
    found.drawer.wrong.filter(({ code }) => (code === 'drawer-row-unread') === is),
  ) as [Bad[], Bad[]];
  const told = [...others.slice(0, MOST_TOLD), ...unread.slice(0, 1)];
  const wrong = [...new Set(told.map((why) => reasonOf(why)))];
  const alike = unread.map((why) => quoted((why as Bad<'drawer-row-unread'>).values.row));
  const further = [...new Set(alike)].slice(1);
  const left = others.length - (told.length - Math.min(unread.length, 1));
  return (
    `<div class="drawer-view">${searchButton()}` +
    `${mapSvg(frame, found.stacks, s.dividers, s.wish, nothing ? [] : answer.rows, s.edge, rowsOf(s)[0], view, WORDS.stepAxis[s.counted])}` +
    `<ul class="legend drawer-key"><li><svg viewBox="0 0 14 10" aria-hidden="true"><path class="drawer-all" d="M7 5h0"/></svg>${WORDS.key.all}</li>` +
    `<li><svg viewBox="0 0 14 10" aria-hidden="true"><path class="drawer-met" d="M7 5h0"/></svg>${WORDS.key.met}</li>` +
    `<li><svg viewBox="0 0 28 10" aria-hidden="true"><path class="drawer-edge" d="M1 8h13v-6h13"/></svg>${WORDS.key.edge}</li>` +
    `<li><svg viewBox="0 0 20 20" aria-hidden="true"><circle class="drawer-ring" cx="10" cy="10" r="8"/></svg>${WORDS.key.ring}</li></ul>` +
    `${wrong.length > 0 ? `<p class="figure-words drawer-left-out">${escapeText(WORDS.leftOut(wrong, further.slice(0, MOST_TOLD), left + Math.max(further.length - MOST_TOLD, 0)))}</p>` : ''}` +
    '</div>'
  );
};

/** Shown while a long search runs or after it was stopped; the picture is not drawn anew then, so it is there always. */
const searchButton = (): string =>
  `<p class="acts" data-search hidden><button type="button" class="plain" data-act="search" data-key="drawer-search">${WORDS.stopSearch}</button></p>`;

const showSearch = (stage: Element): void => {
  const [place, button] = [stage.querySelector<HTMLElement>('[data-search]'), stage.querySelector('[data-act=search]')];
  if (!place || !button) return;
  const now = searchNow();
  place.hidden = now === 'none';
  button.textContent = now === 'stopped' ? WORDS.searchAgain : WORDS.stopSearch;
};

const readings = (s: State, view: UnitView): string => {
  const { answer } = s;
  const rows = rowsOf(s).slice(0, LISTED);
  const nothing = answer.kind === 'nothing';
  const heading = nothing
    ? WORDS.nearestList
    : WORDS.metList(
        grouped(answer.rows.length),
        answer.rows.length > rows.length ? rows.length : undefined,
        s.dividers.length > 1,
      );
  return (
    `<div class="table-scroll drawer-list" tabindex="0" role="group" aria-label="${escapeText(heading)}"><table><caption>${escapeText(heading)}</caption><thead><tr>` +
    `${WORDS.listHead(nothing)
      .map((h) => `<th scope="col">${h}</th>`)
      .join('')}</tr></thead><tbody>${rows.map((c, i) => listRow(c, i, s, view)).join('')}</tbody></table></div>`
  );
};

const caption = (s: State, view: UnitView): string => {
  const { answer, found } = s;
  const counts = { stacks: grouped(found.stacks.length), parts: grouped(found.drawer.rows) };
  const facts = ({ stack, step, divisions }: Choice) => ({
    name: named(stack, WORDS.brief),
    step: motion(step, view),
    divisions,
    stroke: motion(stack.stroke, view),
    height: size(stack.height, view),
    coarse: coarseText(stack, view),
    locks: locksText(stack, view),
  });
  if (answer.kind === 'found') {
    const first = answer.rows[0] as Choice;
    return WORDS.found({ ...counts, met: grouped(answer.rows.length), first: facts(first) });
  }
  const { turns } = answer;
  return WORDS.nothing({
    ...counts,
    turns: turns && {
      stroke: motion(s.wish.stroke, view),
      step: motion(s.wish.step, view),
      steps: grouped(Math.round(turns.steps)),
      divisions: turns.divisions,
      asked: numeral(turns.asked, 3),
      there: numeral(turns.most.stack.turns, 3),
      thread: turns.most.stack.limiting,
      needed: size(turns.needed, view),
      usable: size(turns.usable, view),
    },
    ways: answer.ways.map((way) => ({
      wish: WORDS.wishes[way.wish],
      to: amountText(way.wish, way.to, view),
      name: named(way.choice.stack, WORDS.brief),
    })),
    nearest: facts(answer.nearest[0] as Choice),
  });
};

/** Beside the button, where the adjuster that it put together is to be seen: its figure may be far down the page. */
const sayWhere = (figure: Element, button: Element, rank: number): void => {
  figure.querySelector('.drawer-taken')?.remove();
  const set = figure.getAttribute('data-set') ?? '';
  const seen = document.querySelector(`figure[data-figure="adjuster"][data-set="${CSS.escape(set)}"]`);
  const says = document.createElement('p');
  says.className = 'drawer-taken';
  says.setAttribute('role', 'status');
  button.after(says);
  if (!seen) return;
  const link = document.createElement('a');
  link.href = `#${seen.id}`;
  link.textContent = seen.querySelector('.tag')?.textContent ?? seen.getAttribute('aria-label') ?? '';
  says.append(WORDS.taken(rank + 1), link);
};

/** The rows that no part of the drawer says: what locks and preloads stays. */
const keptRows = (adjuster: string): string[] =>
  adjuster
    .split(/\n|\|/)
    .map((row) => row.trim())
    .filter((row) => /^(?:lock|springs)\s*[=:]/i.test(row));

export const drawerFigure = defineFigure({
  name: 'drawer',
  title: WORDS.title,
  threads: [],
  quantities: QUANTITIES,
  choices: ['best', 'counted'],
  texts: TEXTS,
  // The field stands with the adjuster that the chosen rows are typed into.
  setElsewhere: ['adjuster'],
  chief: ['s_w', 'S_w'],
  groups: {
    drawer: ['hardware'],
    wanted: ['counted', 'H_w', 'p_m'],
    head: ['dividers'],
    lengths: ['q_e'],
    order: ['best'],
  },
  state: stateOf,
  draw,
  readings,
  numbersName: WORDS.numbers,
  caption,
  table: (s, view) => ({
    head: WORDS.head,
    rows: rowsOf(s)
      .slice(0, TABLED)
      .map(({ stack, step, divisions }) => [
        wordsShown('hardware', stack.base.text),
        wordsShown('hardware', stack.turned.text),
        stack.carried ? wordsShown('hardware', stack.carried.text) : WORDS.plainScrew,
        motion(step, view),
        `${divisions}`,
        motion(stack.stroke, view),
        numeral(stack.turns, 3),
        size(stack.coarse.range, view),
        stack.coarse.index === undefined ? WORDS.noPrice : motion(stack.coarse.index, view),
        motion(stack.coarse.gap, view),
        size(stack.height, view),
        growthText(stack, view),
        money(stack.price),
      ]),
  }),
  idle: ({ choices }) => (choices.counted === 'a step' ? [] : ['dividers']),
  // The adjuster beside it changes nothing here.
  renderKey: (_, { values, choices, texts: { hardware, dividers } }) => [values, choices, hardware, dividers],
  mount: (stage, context) => {
    const showButton = () => showSearch(stage);
    tellWhenSearched(() => {
      context.redraw();
      showButton();
    }, showButton);
    stage.addEventListener('click', (event) => {
      if (event.target instanceof Element && event.target.closest('[data-act=search]')) stopOrGoOn();
    });
    const point = (event: Event) => {
      const row = event.target instanceof Element ? event.target.closest('[data-at]') : null;
      const [x, y] = row?.getAttribute('data-at')?.split(' ') ?? [];
      const ring = stage.querySelector('.drawer-map [data-ring]');
      if (x === undefined || y === undefined || !ring) return;
      ring.setAttribute('cx', x);
      ring.setAttribute('cy', y);
    };
    // The list stands in the foot.
    const figure = stage.closest('figure') ?? stage;
    figure.addEventListener('pointerover', point);
    figure.addEventListener('focusin', point);
    figure.addEventListener('click', (event) => {
      const button = event.target instanceof Element ? event.target.closest('[data-take]') : null;
      const numbers = context.numbers();
      const state = stateOf(numbers);
      const choice = button && state.ok ? rowsOf(state.value)[Number(button.getAttribute('data-take'))] : undefined;
      if (!choice || !state.ok) return;
      // Wished a turn, it is turned by its hexagon.
      const divisions = choice.divisions === 1 ? HEXAGON : choice.divisions;
      const wanted = (state.value.wish.step * choice.divisions) / divisions;
      const rows = [
        rowsOfStack(choice.stack, divisions, state.value.kept, wanted),
        ...keptRows(numbers.texts.adjuster),
      ];
      context.type('adjuster', rows.join('\n'));
      if (button) sayWhere(figure, button, Number(button.getAttribute('data-take')));
    });
  },
});
