/**
 * Readings of a jack, up and back again, with one fault in them or none: what a lab table shows of each. The size of a fault is a share of the
 * net lead, far over the scatter of the readings, so that one verdict alone fits. Invented readings, from a seed.
 */
import { FAULTS, type Fault, READING, TABLE_DECIDES, TABLE_NAME, TABLE_SHOWS, TURNS } from '#words/papers.ts';
import { type RandomState, spokenNumber, uniform } from '../engine/index.ts';
import { numeral } from '../input/format.ts';
import { LETTERS, type Offered } from './offered.ts';
import { pick, stateOf } from './seed.ts';

export const FAULT_NAMES = Object.keys(FAULTS) as Fault[];

/** Up by quarters of a turn, back by halves. */
const UP = [0, 0.25, 0.5, 0.75, 1, 1.25, 1.5, 1.75, 2];
const BACK = [1.5, 1, 0.5, 0];
const PLACES = [...UP, ...BACK];

/** Scatter of a reading, as a share of the net lead, either way. */
const SCATTER = 0.004;

const between = (state: RandomState, low: number, high: number): number => low + (high - low) * uniform(state);
const eitherWay = (state: RandomState): number => (uniform(state) < 0.5 ? -1 : 1);

/** What the fault adds to each reading, as a share of the net lead. */
const addedBy = (fault: Fault, state: RandomState): readonly number[] => {
  const size = eitherWay(state);
  switch (fault) {
    case 'sound':
      return PLACES.map(() => 0);
    case 'lead': {
      const off = size * between(state, 0.05, 0.09);
      return PLACES.map((n) => off * n);
    }
    case 'wave': {
      const [high, phase] = [between(state, 0.07, 0.12), uniform(state)];
      const sine = (n: number) => Math.sin(2 * Math.PI * (n + phase));
      return PLACES.map((n) => high * (sine(n) - sine(0)));
    }
    case 'lost': {
      const lost = between(state, 0.1, 0.2);
      return PLACES.map((_, i) => (i < UP.length ? 0 : lost));
    }
    case 'drift': {
      const each = size * between(state, 0.018, 0.03);
      return PLACES.map((_, i) => each * i);
    }
    case 'misread': {
      const at = 1 + pick(state, UP.length - 1);
      const off = size * between(state, 0.25, 0.4);
      return PLACES.map((_, i) => (i === at ? off : 0));
    }
  }
};

/** Turns and readings in micrometres, row by row. */
const readingsOf = (Delta: number, fault: Fault, words: readonly string[]): readonly (readonly [number, number])[] => {
  const state = stateOf(['table', ...words]);
  const added = addedBy(fault, state);
  return PLACES.map((n, i) => {
    const scatter = i === 0 ? 0 : between(state, -SCATTER, SCATTER);
    return [n, 1000 * Delta * (n + (added[i] ?? 0) + scatter)];
  });
};

const written = (micrometres: number): string =>
  spokenNumber((Math.round(micrometres * 10) / 10 || 0).toFixed(1).replace('-', '−'));

/** The table as HTML, in two columns of rows so that it is no taller than a phone. */
export const tableOf = (Delta: number, fault: Fault, words: readonly string[]): string => {
  const rows = readingsOf(Delta, fault, words)
    .map(([n, reading]) => `<tr><th scope="row">${n}</th><td>${written(reading)}</td></tr>`)
    .join('');
  return `<table class="lab-table"><caption>${TABLE_NAME}</caption><thead><tr><th scope="col">${TURNS}</th><th scope="col">${READING}</th></tr></thead><tbody>${rows}</tbody></table>`;
};

/** The readings that settle which fault it is, in a sentence. */
export const tableDecided = (Delta: number, fault: Fault, words: readonly string[]): string => {
  const readings = readingsOf(Delta, fault, words).map(([n, reading]) => ({
    n,
    reading,
    off: reading - 1000 * Delta * n,
  }));
  const at = (i: number) => readings[i] ?? { n: 0, reading: 0, off: 0 };
  const said = (x: number) => `${written(x)}\u00a0µm`;
  const sizes = (of: readonly { readonly off: number }[]) => of.map(({ off }) => Math.abs(off));
  const [top, one, last] = [at(UP.length - 1), at(UP.indexOf(1)), at(PLACES.length - 1)];
  const [up, back] = [readings.slice(0, UP.length), readings.slice(UP.length)];
  switch (fault) {
    case 'sound':
      return TABLE_DECIDES.sound({
        reads: said(top.reading),
        should: said(top.reading - top.off),
        back: said(last.reading),
      });
    case 'lead':
      return TABLE_DECIDES.lead({ off: said(top.off), half: said(one.off), back: said(last.reading) });
    case 'wave': {
      const i = [1, 2, 3].reduce((best, j) => (Math.abs(at(j).off) > Math.abs(at(best).off) ? j : best), 1);
      return TABLE_DECIDES.wave({
        turns: numeral(at(i).n, 2),
        off: said(at(i).off),
        later: said(at(i + UP.indexOf(1)).off),
        whole: said(one.off),
      });
    }
    case 'lost':
      return TABLE_DECIDES.lost({
        up: said(Math.max(...sizes(up))),
        least: said(Math.min(...sizes(back))),
        most: said(Math.max(...sizes(back))),
      });
    case 'drift':
      return TABLE_DECIDES.drift({ top: said(top.off), last: said(last.off) });
    case 'misread': {
      const worst = up.reduce((most, one) => (Math.abs(one.off) > Math.abs(most.off) ? one : most));
      return TABLE_DECIDES.misread({
        turns: numeral(worst.n, 3),
        off: said(worst.off),
        others: said(Math.max(...sizes(readings.filter((one) => one !== worst)))),
      });
    }
  }
};

export const verdictsOf = (among: readonly Fault[], fault: Fault): Offered => ({
  options: among.map((one) => ({ text: FAULTS[one], says: one === fault ? '' : TABLE_SHOWS[one] })),
  right: LETTERS[among.indexOf(fault)] ?? '',
});
