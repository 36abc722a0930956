/**
 * Three balls in three vees, seen from above: the six contacts, each with the force it needs. A flank can push and not
 * pull, so a force below nought is a flank that opens; it is drawn to the other side of nought, hollow, and named.
 */

import { WORDS } from '#words/figures/vee-coupling.ts';
import {
  at,
  bad,
  type Contact,
  contactForces,
  couplingAt,
  good,
  type Load,
  openFlanks,
  type Place,
  type Result,
} from '../../engine/index.ts';
import { show, type UnitView } from '../../input/format.ts';
import { type NamedPlace, readFeet } from '../../input/levelling-table.ts';
import { reasonOf } from '../../words/reason.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { amount, following } from '../kit/readout.ts';
import { arrowheads, px } from '../kit/svg.ts';

declare module '../../engine/kernel/result.ts' {
  interface Refusals {
    'part-without-weight': Readonly<Record<never, never>>;
  }
}

const QUANTITIES = ['W', 'x_g', 'y_g', 'beta_v', 'F_l', 'theta_l', 'h_l'] as const;
type Given = NumbersOf<never, (typeof QUANTITIES)[number], 'grooves', 'feet'>;

const SIZE = 320;
const MARGIN = 62;

interface Flank extends Contact {
  /** As the plan and the bars call it: A1, A2, B1 … */
  readonly name: string;
  readonly open: boolean;
}

interface State {
  readonly places: readonly NamedPlace[];
  readonly directions: readonly number[];
  readonly flanks: readonly Flank[];
  readonly open: readonly Flank[];
  /** Why there are no forces: the grooves leave the part loose. */
  readonly loose: string | undefined;
  readonly centre: Place;
  readonly side: { readonly force: number; readonly direction: number };
}

const stateOf = ({ values, choices, texts }: Given): Result<State> => {
  const places = readFeet(texts.feet);
  if (!places.ok) return places;
  const { W, beta_v, F_l: force, theta_l: direction, h_l } = values;
  const centre = { x: values.x_g, y: values.y_g };
  if (!(W > 0)) return bad('part-without-weight', {});
  const balls = couplingAt(places.value, beta_v, choices.grooves);
  const loads: Load[] = [
    { force: [0, 0, -W], at: [centre.x, centre.y, 0] },
    {
      force: [force * Math.cos(direction), force * Math.sin(direction), 0],
      at: [centre.x, centre.y, h_l],
    },
  ];
  const contacts = contactForces(balls, loads);
  // Grooves that leave it loose are worth seeing; anything else that has no forces is not.
  if (!contacts.ok && contacts.code !== 'coupling-loose') return contacts;
  const found = contacts.ok ? contacts.value : [];
  const opening = openFlanks(found);
  const flanks = found.map((contact) => ({
    ...contact,
    name: `${contact.ball}${WORDS.flanks[contact.flank]}`,
    open: opening.includes(contact),
  }));
  return good({
    places: places.value,
    directions: balls.map((ball) => ball.direction),
    flanks,
    open: flanks.filter((flank) => flank.open),
    loose: contacts.ok ? undefined : reasonOf(contacts),
    centre,
    side: { force, direction },
  });
};

const newtons = (force: number): string => show(force, { shown: 'force', digits: 3 }, 'metric');

const verdict = ({ force, open }: Flank): string =>
  open ? WORDS.opens(newtons(Math.abs(force))) : WORDS.pushes(newtons(force));

const told = ({ name, force }: Flank) => ({ name, force: newtons(force) });

const draw = (s: State): string =>
  `<svg class="vees" viewBox="0 0 ${SIZE} ${SIZE}" role="img" aria-label="${WORDS.plan}">${planSvg(s)}</svg>` +
  (s.loose === undefined
    ? `<ul class="vee-bars">${s.flanks.map((flank) => barHtml(flank, s)).join('')}</ul>`
    : `<p class="lifts">${WORDS.loose}</p>`);

const planSvg = (s: State): string => {
  const all = [...s.places, s.centre];
  const [xs, ys] = [all.map((p) => p.x), all.map((p) => p.y)];
  const [left, right, bottom, top] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const scale = (SIZE - 2 * MARGIN) / Math.max(right - left, top - bottom, 1);
  const put = ({ x, y }: Place) => ({
    x: SIZE / 2 + (x - (left + right) / 2) * scale,
    y: SIZE / 2 - (y - (bottom + top) / 2) * scale,
  });
  const most = Math.max(...s.flanks.map((flank) => Math.abs(flank.force)));
  const balls = s.places.map((place, i) => {
    const { x, y } = put(place);
    const degrees = (-at(s.directions, i) * 180) / Math.PI;
    const pushes = s.flanks
      .filter((flank) => flank.ball === place.name)
      .map((flank) => pushSvg(flank, most))
      .join('');
    // The groove along x, then turned: its flanks are the two edges, the root its middle line.
    return (
      `<g transform="translate(${px(x)} ${px(y)})"><g transform="rotate(${px(degrees)})"><path class="groove" d="M-30 -11H30M-30 11H30"/><path class="root" d="M-30 0H30"/><circle class="ball" r="13"/>${pushes}</g>` +
      `<text class="number" y="5" text-anchor="middle">${place.name}</text>${s.flanks
        .filter((flank) => flank.ball === place.name)
        .map((flank) => pushName(flank, degrees))
        .join('')}</g>`
    );
  });
  const g = put(s.centre);
  const force =
    s.side.force > 0
      ? `<path class="arrow strong" transform="translate(${px(g.x)} ${px(g.y)}) rotate(${px((-s.side.direction * 180) / Math.PI)})" d="M9 0H42" marker-end="url(#vee-head)"/>`
      : '';
  // The plate lies over the grooves: its outline, round all that it stands on.
  const edge = 57;
  const [a, b] = [put({ x: left, y: top }), put({ x: right, y: bottom })];
  const plate = `<rect class="plate" x="${px(a.x - edge)}" y="${px(a.y - edge)}" width="${px(b.x - a.x + 2 * edge)}" height="${px(b.y - a.y + 2 * edge)}" rx="6"/>`;
  return `${arrowheads('vee-head', 'strong')}${plate}${balls.join('')}<g class="weight" transform="translate(${px(g.x)} ${px(g.y)})"><circle class="mark" r="8"/><path class="quarters" d="M0 0V-8A8 8 0 0 1 8 0ZM0 0V8A8 8 0 0 1 -8 0Z"/></g>${force}`;
};

/** The push of a flank on its ball, drawn from the side it comes from; the one that pushes left stands on the right. */
const pushSvg = (flank: Flank, most: number): string => {
  const side = flank.flank === 'left' ? 1 : -1;
  const length = 8 + (22 * Math.abs(flank.force)) / most;
  return flank.open
    ? `<path class="push open" d="M0 ${side * 15}V${px(side * (15 + Math.max(16, length)))}"/>`
    : `<path class="arrow strong push" d="M0 ${px(side * (18 + length))}V${side * 14}" marker-end="url(#vee-head)"/>`;
};

const pushName = (flank: Flank, degrees: number): string => {
  const side = flank.flank === 'left' ? 1 : -1;
  const a = (degrees * Math.PI) / 180;
  // Beside the tail of its arrow, upright however the groove lies.
  const [along, across] = [16, side * 36];
  return `<text class="push-name" x="${px(along * Math.cos(a) - across * Math.sin(a))}" y="${px(along * Math.sin(a) + across * Math.cos(a) + 4)}" text-anchor="middle">${flank.name}</text>`;
};

const barHtml = (flank: Flank, s: State): string => {
  const forces = s.flanks.map((f) => f.force);
  const low = Math.min(0, ...forces);
  const high = Math.max(0, ...forces);
  const x = (force: number) => (300 * (force - low)) / (high - low || 1);
  const [a, b] = [x(Math.min(0, flank.force)), x(Math.max(0, flank.force))];
  return (
    `<li class="${flank.open ? 'open' : 'pressed'}"><p class="line"><b>${flank.name}</b> ${verdict(flank)}</p><svg viewBox="0 0 302 14" preserveAspectRatio="none" aria-hidden="true">` +
    `<rect class="force" x="${px(a + 1)}" y="2" width="${px(Math.max(1, b - a))}" height="10"/><path class="zero" d="M${px(x(0) + 1)} 0V14"/></svg></li>`
  );
};

export const veeCoupling = defineFigure({
  name: 'vee-coupling',
  title: WORDS.title,
  threads: [],
  quantities: QUANTITIES,
  choices: ['grooves'],
  texts: ['feet'],
  chief: ['F_l', 'theta_l', 'grooves'],
  groups: { side: ['h_l'], vees: ['beta_v'], weight: ['W', 'x_g', 'y_g'], feet: ['feet'] },
  idle: ({ values }) => (values.F_l === 0 ? ['theta_l', 'h_l'] : []),
  state: stateOf,
  draw,
  rows: ({ flanks }) =>
    flanks.map(({ name, force }) => following(amount(name, WORDS.forceOn(name), force, 'force', 3), 'vee-force')),
  caption: ({ flanks, open, loose }) => {
    if (loose !== undefined) return loose;
    const sorted = [...flanks].sort((a, b) => a.force - b.force);
    const [least, most] = [at(sorted, 0), at(sorted, sorted.length - 1)];
    return open.length === 0
      ? WORDS.held(told(least), told(most))
      : WORDS.leaves(open.map(({ name, force }) => ({ name, force: newtons(Math.abs(force)) })));
  },
  table: (s, view: UnitView) => {
    const size = (v: number) => show(v, { shown: 'size' }, view);
    return {
      head: WORDS.head,
      rows: s.places.flatMap((place, i) =>
        (['left', 'right'] as const).map((side) => {
          const flank = s.flanks.find((f) => f.ball === place.name && f.flank === side);
          return [
            `${place.name}${WORDS.flanks[side]}`,
            WORDS.place(size(place.x), size(place.y)),
            show(at(s.directions, i), { shown: 'degrees', digits: 4 }, view),
            WORDS.sides[side],
            flank ? newtons(flank.force) : '',
            flank ? (flank.open ? WORDS.standing.opens : WORDS.standing.pressed) : WORDS.standing.loose,
          ];
        }),
      ),
    };
  },
});
