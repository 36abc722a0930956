/** The passports of pieces as a log: what was measured on each on which day, how its lead has moved since the first time, and its threads’ lead beside it. One page on paper. */
import { WORDS } from '#words/figures/passport.ts';
import { type Adjuster, partsOf, standing } from '../../assembly/adjuster/adjuster.ts';
import { readAdjuster } from '../../assembly/adjuster/text.ts';
import { bad, good, leadOff, mm, type Result } from '../../engine/index.ts';
import { dayShown } from '../../input/day.ts';
import { escapeText } from '../../input/escape.ts';
import { numeral, show, type UnitView, withSign } from '../../input/format.ts';
import { type Entry, readPassports } from '../../input/passports.ts';
import { extentsOf } from '../kit/adjuster-extras.ts';
import { type Frame, frameIn, partsHtml, pictureOf } from '../kit/adjuster-picture.ts';
import { defineFigure, type NumbersOf } from '../kit/figure.ts';
import { amount, type Row as ReadRow, signedAmount } from '../kit/readout.ts';
import { hatchings } from '../kit/svg.ts';

type Given = NumbersOf<never, never, never, 'adjuster' | 'passport'>;

const WIDTH = 110;
const HEIGHT = 190;

interface Row extends Entry {
  /** Of its lead against that of the threads, as a share. */
  readonly off: number | undefined;
  /** Since the first lead of this piece. */
  readonly moved: number | undefined;
}

interface State {
  readonly adjuster: Adjuster;
  readonly frame: Frame;
  readonly pieces: readonly (readonly [piece: string, rows: readonly Row[]])[];
}

const stateOf = ({ texts }: Given): Result<State> => {
  const read = readAdjuster(texts.adjuster);
  if (!read.ok) return read;
  const entries = readPassports(texts.passport);
  if (!entries.ok) return entries;
  const nominal = Math.abs(read.value.Delta);
  const pieces = new Map<string, Row[]>();
  for (const entry of entries.value) {
    const rows = pieces.get(entry.piece) ?? [];
    const first = rows.find((r) => r.lead !== undefined)?.lead;
    const share = (from: number): number | undefined => {
      const off = entry.lead === undefined ? undefined : leadOff.of({ Delta_m: mm(entry.lead), Delta: mm(from) });
      return off?.ok ? off.value.eps : undefined;
    };
    rows.push({ ...entry, off: share(nominal), moved: first === undefined ? undefined : share(first) });
    pieces.set(entry.piece, rows);
  }
  const frame = frameIn(extentsOf(read.value), HEIGHT - 8, WIDTH / 2, WIDTH / 2 - 4);
  return frame.scale > 0 && Number.isFinite(frame.scale)
    ? good({ adjuster: read.value, pieces: [...pieces], frame: { ...frame, y: frame.y + 4 } })
    : bad('lengths-of-no-one-scale', {});
};

const motion = (z: number | undefined, view: UnitView, digits = 4): string =>
  z === undefined ? WORDS.none : show(z, { shown: 'motion', digits }, view);
const percent = (x: number | undefined): string =>
  x === undefined ? WORDS.none : `${withSign(numeral(100 * x, 3))} %`;

const withDoubt = (r: Row, name: 'lead' | 'wave' | 'hysteresis', view: UnitView, digits: number): string =>
  r.doubt[name] === undefined
    ? motion(r[name], view, digits)
    : `${motion(r[name], view, digits)} ± ${motion(r.doubt[name], view, 2)}`;

const cellsOf = (r: Row, view: UnitView): readonly string[] => [
  r.day,
  withDoubt(r, 'lead', view, 4),
  percent(r.off),
  percent(r.moved),
  withDoubt(r, 'wave', view, 3),
  withDoubt(r, 'hysteresis', view, 3),
  r.place === undefined ? WORDS.none : show(r.place, { shown: 'turns', digits: 3 }, view),
  motion(r.wear, view, 3),
  r.note === '' ? WORDS.none : r.note,
];

/** Empty rows to write on by hand. */
const BLANK = 3;

const draw = ({ adjuster, pieces, frame }: State, view: UnitView): string => {
  const head = `<thead><tr>${WORDS.head.map((h) => `<th scope="col">${h}</th>`).join('')}</tr></thead>`;
  const blank = `<tr class="passport-blank">${'<td></td>'.repeat(WORDS.head.length)}</tr>`.repeat(BLANK);
  const tables = pieces.map(
    ([piece, rows]) =>
      `<div class="table-scroll" tabindex="0" role="group" aria-label="${escapeText(WORDS.piece(piece))}"><table><caption>${escapeText(WORDS.piece(piece))}</caption>${head}<tbody>${rows
        .map(
          (r) =>
            `<tr>${cellsOf(r, view)
              .map(
                (c, i) =>
                  `<td data-head="${WORDS.head[i]}"${c === WORDS.none ? ' class="none"' : ''}>${escapeText(c)}</td>`,
              )
              .join('')}</tr>`,
        )
        .join('')}${blank}</tbody></table></div>`,
  );
  const name =
    adjuster.name === ''
      ? partsOf(adjuster)
          .map((p) => WORDS.kind(p.kind))
          .join(', ')
      : adjuster.name;
  return (
    `<div class="passport-view"><svg viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${WORDS.drawing}">${hatchings('passport')}${partsHtml(pictureOf(adjuster, standing(adjuster, 0), frame), 'passport')}</svg><div><p class="passport-title">${escapeText(WORDS.of(name, motion(Math.abs(adjuster.Delta), view)))}</p>` +
    `${tables.length > 0 ? tables.join('') : `<p class="refusal">${WORDS.empty}</p>`}<p class="acts"><button type="button" class="plain" data-act="today" data-key="passport-today">${WORDS.add}</button></p></div></div>`
  );
};

/** The last lead of the piece that is farthest off its threads. */
const worstOf = ({ pieces }: State): Row | undefined =>
  pieces
    .flatMap(([, rows]) => rows.filter((r) => r.lead !== undefined).slice(-1))
    .reduce<Row | undefined>(
      (best, r) => (best === undefined || Math.abs(r.off ?? 0) > Math.abs(best.off ?? 0) ? r : best),
      undefined,
    );

const rowsOfWorst = (s: State): readonly ReadRow[] => {
  const worst = worstOf(s);
  return worst?.lead === undefined || worst.off === undefined
    ? []
    : [
        amount('lead', WORDS.rows.lead(worst.piece), worst.lead, 'motion', 4),
        signedAmount('off', WORDS.rows.off(worst.piece), worst.off, 'percent', 3),
      ];
};

/** A row of a day for the last piece of the list. It has no lead yet: one that was not measured must not stand there as if it had been. */
export const withRow = (passport: string, entries: readonly Entry[], day: string): string =>
  `${passport}\n${entries.at(-1)?.piece ?? '1'}, ${day}:`.trim();

export const passportFigure = defineFigure({
  name: 'passport',
  title: WORDS.title,
  threads: [],
  quantities: [],
  texts: ['adjuster', 'passport'],
  setElsewhere: ['adjuster'],
  chief: ['passport'],
  state: stateOf,
  draw,
  mount: (stage, context) => {
    stage.addEventListener('click', (event) => {
      if (!(event.target instanceof Element && event.target.closest('[data-act]'))) return;
      const { passport } = context.numbers().texts;
      const entries = readPassports(passport);
      if (!entries.ok) return;
      context.type('passport', withRow(passport, entries.value, dayShown(new Date())));
    });
  },
  rows: rowsOfWorst,
  caption: (s, view) => {
    const worst = worstOf(s);
    return WORDS.caption(
      s.pieces.length,
      worst && { piece: worst.piece, lead: motion(worst.lead, view), off: percent(worst.off), day: worst.day },
    );
  },
  table: ({ pieces }, view) => ({
    head: [WORDS.pieceHead, ...WORDS.head],
    rows: [
      ...pieces.flatMap(([piece, rows]) => rows.map((r) => [piece, ...cellsOf(r, view)])),
      ...(pieces.length < 2 ? [[WORDS.next, ...WORDS.head.map(() => WORDS.none)]] : []),
    ],
  }),
});
