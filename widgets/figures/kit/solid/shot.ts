/** One picture of a solid as plain numbers, so that it can be drawn beside the page: what the figure shows, worked out for each body. */
import type { Role } from '../../../assembly/adjuster/part.ts';
import type { Body } from './bodies.ts';
import { SCRIBED } from './still.ts';
import type { Aim } from './view.ts';

export type Colour = readonly [number, number, number];

export interface Colours {
  readonly parts: Readonly<Record<Role, Colour>>;
  readonly ink: Colour;
  readonly accent: Colour;
}

/** A flank that carries: +1 where it looks up, −1 where it looks down, 0 for none; between two heights. */
export interface Lit {
  readonly side: number;
  readonly from: number;
  readonly to: number;
  /** 0 all round, 1 not on the right of the picture, 2 there the other flank. */
  readonly aside?: number;
}

export interface Stand {
  readonly lift: number;
  readonly turns: number;
  readonly stretch?: number;
  /** Where its axis stands, mm. */
  readonly x?: number;
  readonly y?: number;
  /** Rise along x and along y. */
  readonly tilt?: readonly [number, number];
}

export interface View {
  readonly aim: Aim;
  /** Opening of the cut, degrees: 0 is whole, 180 the front half gone. */
  readonly cut: number;
  /** Height over the bottom of the base, mm, and turns clockwise. */
  readonly place: (body: Body) => Stand;
  /** Whether the scribed line is on the parts yet. */
  readonly marked: boolean;
  /** Which of its flanks carry. */
  readonly lit: (body: Body) => { readonly A: Lit; readonly C: Lit };
  readonly shown: (body: Body) => boolean;
}

/** Two nets of the same bodies. */
export type Net = 'fine' | 'coarse';

export interface Fineness {
  readonly net: Net;
  /** CSS pixels to a unit of the picture, and pixels of the buffer to a CSS pixel. */
  readonly unit: number;
  readonly fineness: number;
}

/** A body as it stands: where, in what colour, and what is on it. */
export interface Standing {
  /** Which of the bodies it is. */
  readonly of: number;
  /** A matrix, column by column. */
  readonly place: readonly number[];
  readonly colour: Colour;
  readonly cut: boolean;
  /** Direction from its axis in which the line is scribed; (0, 0) for none. */
  readonly scribed: readonly number[];
  readonly litA: readonly number[];
  readonly litC: readonly number[];
  /** Another for every body, by which one is told from the next. */
  readonly id: number;
  /** Which way its cut faces are hatched. */
  readonly hatching: number;
}

export interface Shot extends Fineness {
  readonly aim: Aim;
  readonly cut: number;
  readonly ink: Colour;
  readonly accent: Colour;
  readonly bodies: readonly Standing[];
}

const BODY_IDS = ['base', 'turned', 'carried', 'tip', 'post', 'arm', 'spring', 'plate'] as const;

const columnMajor = ({ lift, turns, stretch = 1, x = 0, y = 0, tilt = [0, 0] }: Stand): number[] => {
  // Clockwise seen from above.
  const [s, c] = [Math.sin(-2 * Math.PI * turns), Math.cos(-2 * Math.PI * turns)];
  return [c, s, tilt[0], 0, -s, c, tilt[1], 0, 0, 0, stretch, 0, x, y, lift, 1];
};

const LINE = [Math.cos(SCRIBED), Math.sin(SCRIBED)] as const;
const NO_LINE = [0, 0] as const;
const NOT_LIT = [0, 0, 0, 0] as const;
const litAs = ({ side, from, to, aside = 0 }: Lit): readonly number[] => [side, from, to, aside];

export const shotOf = (view: View, colours: Colours, bodies: readonly Body[], how: Fineness): Shot => ({
  ...how,
  aim: view.aim,
  cut: view.cut,
  ink: colours.ink,
  accent: colours.accent,
  bodies: bodies.flatMap((body, of): Standing[] => {
    if (!view.shown(body)) return [];
    const { name } = body;
    const lit = name === body.with ? view.lit(body) : undefined;
    return [
      {
        of,
        place: columnMajor(view.place(body)),
        colour: name === 'post' || name === 'spring' ? colours.parts.base : colours.parts[body.with],
        cut: body.cut,
        scribed: view.marked && name !== 'spring' && name !== 'plate' ? LINE : NO_LINE,
        litA: lit ? litAs(lit.A) : NOT_LIT,
        litC: lit ? litAs(lit.C) : NOT_LIT,
        id: BODY_IDS.indexOf(name) + BODY_IDS.length * (body.copy ?? 0),
        hatching: body.with === 'base' ? 1 : -1,
      },
    ];
  }),
});
