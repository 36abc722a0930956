/**
 * Limits of size of a screw and a nut by their classes: two profiles at their limits to scale, a lens on the clearance between the
 * flanks, and the limits in a table that says where each came from.
 */

import { WORDS } from '#words/figures/thread-limits.ts';
import { escapeText } from '../../input/escape.ts';
import { numeral, type UnitView } from '../../input/format.ts';
import { defineFigure } from '../kit/figure.ts';
import { amount, type Row, rowTexts } from '../kit/readout.ts';
import { picture } from './picture.ts';
import { cells, digitsOf, gap, limit, rowsOf, type State, stateOf } from './state.ts';

const draw = (s: State): string => {
  const { whole, lens, magnified } = picture(s);
  return `<div class="limits-pictures">${whole}<div>${lens}<p class="lens-words">${WORDS.lensWords(magnified)}</p></div></div>`;
};

const readings = (s: State, view: UnitView): string => {
  const rows = rowsOf(s, view)
    .map((row) => {
      const [first, ...rest] = cells(row);
      return `<tr><th scope="row">${first}</th>${rest.map((c) => `<td>${escapeText(c)}</td>`).join('')}</tr>`;
    })
    .join('');
  const notes = s.notes.map((n) => `<li>${escapeText(n)}</li>`).join('');
  return (
    `<div class="table-scroll" tabindex="0" role="group" aria-label="${WORDS.limits}"><table class="limits-table"><thead><tr>${WORDS.head.map((h) => `<th scope="col">${h}</th>`).join('')}</tr></thead><tbody>${rows}</tbody></table></div>` +
    (notes === '' ? '' : `<ul class="limits-notes">${notes}</ul>`)
  );
};

const readout = (s: State, view: UnitView): Row[] => {
  const { pitch, major, minor, overlap } = s.clearance;
  return [
    amount('pitchLeast', WORDS.readout.pitchLeast, pitch.least, 'motion'),
    amount('pitchMost', WORDS.readout.pitchMost, pitch.most, 'motion'),
    amount('major', WORDS.readout.major, major.least, 'motion'),
    amount('minor', WORDS.readout.minor, minor.least, 'motion'),
    [WORDS.readout.overlap, WORDS.range(gap(overlap.least, view), gap(overlap.most, view))],
    {
      ...amount('hole', WORDS.readout.hole(percent(s.hole.share)), s.hole.size, 'size', digitsOf(s.hole.size)),
      sold: 'drills',
    },
    [WORDS.readout.lies, WORDS.lies(s.hole.lies)],
    [WORDS.readout.drills, s.hole.drills.map((d) => WORDS.drill(d.name, percent(d.share))).join(', ') || WORDS.noDrill],
  ];
};

const percent = (share: number): string => `${numeral(100 * share, 3)}\u00a0%`;

const caption = (s: State, view: UnitView): string => {
  const { screw, nut, clearance } = s;
  const range = (z: { min: number; max: number }) => WORDS.range(limit(z.min, view), limit(z.max, view));
  return WORDS.caption({
    screwClass: screw.cls,
    nutClass: nut.cls,
    screwPitch: range(screw.pitch),
    nutPitch: range(nut.pitch),
    clearance: WORDS.range(gap(clearance.pitch.least, view), gap(clearance.pitch.most, view)),
    fit: clearance.fit,
    standard: screw.standard,
    measured: screw.pitch.basis === 'measured' || nut.pitch.basis === 'measured',
    byFormula: rowsOf(s, view)
      .filter((row) => row.byFormula)
      .map((row) => row.diameter),
  });
};

export const threadLimits = defineFigure({
  name: 'thread-limits',
  title: WORDS.title,
  threads: ['thread'],
  quantities: ['q_t'],
  chief: ['thread', 'q_t'],
  state: stateOf,
  draw,
  caption,
  rows: readout,
  readings,
  table: (s, view) => ({
    head: WORDS.head,
    rows: [
      ...rowsOf(s, view).map(cells),
      ...readout(s, view).map((row) => [...rowTexts(row, view), '', '', WORDS.fromAbove]),
    ],
  }),
});
