/**
 * Limits of size of a screw and a nut by their classes: two profiles at their limits to scale, a lens on the clearance between the
 * flanks, and the limits in a table that says where each came from.
 */

import { escapeText } from '../../input/escape.ts';
import { numeral, type UnitView } from '../../input/format.ts';
import { defineFigure } from '../kit/figure.ts';
import { type FixedFigure, readoutHtml } from '../kit/readout.ts';
import { picture } from './picture.ts';
import { cells, gap, HEAD, limit, rowsOf, type State, stateOf } from './state.ts';

const FIT = {
  clear: 'any such nut goes on any such screw',
  'may bind': 'whether a nut goes on depends on the pieces',
  'never goes': 'no such nut goes on such a screw',
} as const;

const draw = (s: State, view: UnitView): string => {
  const { whole, lens, magnified } = picture(s);
  const rows = rowsOf(s, view)
    .map((row) => {
      const [first, ...rest] = cells(row);
      return `<tr><th scope="row">${first}</th>${rest.map((c) => `<td>${escapeText(c)}</td>`).join('')}</tr>`;
    })
    .join('');
  const notes = s.notes.map((n) => `<li>${escapeText(n)}</li>`).join('');
  return (
    `<div class="limits-pictures">${whole}<div>${lens}<p class="lens-words">One flank at the pitch line, ${magnified} times larger again; distances here are on the radius.</p></div></div>` +
    readoutHtml(readout(s, view)) +
    `<div class="table-scroll" tabindex="0" role="group" aria-label="Limits of size"><table class="limits-table"><thead><tr>${HEAD.map((h) => `<th scope="col">${h}</th>`).join('')}</tr></thead><tbody>${rows}</tbody></table></div>` +
    (notes === '' ? '' : `<ul class="limits-notes">${notes}</ul>`)
  );
};

const readout = (s: State, view: UnitView): FixedFigure[] => {
  const { pitch, major, minor, overlap } = s.clearance;
  return [
    ['clearance at the pitch diameter, least', gap(pitch.least, view)],
    ['clearance at the pitch diameter, most', gap(pitch.most, view)],
    ['over the crest of the screw, at least', gap(major.least, view)],
    ['under the crest of the nut, at least', gap(minor.least, view)],
    ['depth of thread shared, on the radius', `${gap(overlap.least, view)} to ${gap(overlap.most, view)}`],
    [
      `hole for ${percent(s.hole.share)} of thread`,
      `${limit(s.hole.size, view)}, ${s.hole.lies} the nut’s minor limits`,
    ],
    [
      'nearest drills',
      s.hole.drills.map((d) => `${d.name} (${percent(d.share)})`).join(', ') || 'none within 2\u00a0%',
    ],
  ];
};

const percent = (share: number): string => `${numeral(100 * share, 3)}\u00a0%`;

const caption = (s: State, view: UnitView): string => {
  const { screw, nut, clearance } = s;
  const range = (z: { min: number; max: number }) => `${limit(z.min, view)} to ${limit(z.max, view)}`;
  const formula = rowsOf(s, view).filter((r) => r.basis.startsWith('formula'));
  const from =
    formula.length === 0
      ? `Every limit is the published one of ${screw.standard}.`
      : formula.length === 6
        ? `Every limit is by the formulas and the rounding of ${screw.standard}.`
        : `By formula and rounding: ${formula.map((r) => r.diameter).join('; ')}; the rest from the published tables.`;
  return `Class ${screw.cls} in class ${nut.cls}: pitch diameter of the screw ${range(screw.pitch)}, of the nut ${range(nut.pitch)}, so ${gap(clearance.pitch.least, view)} to ${gap(clearance.pitch.most, view)} of clearance on the diameter; ${FIT[clearance.fit]}. ${from}`;
};

export const threadLimits = defineFigure({
  name: 'thread-limits',
  title: 'Limits of size of a screw and a nut',
  threads: ['thread'],
  quantities: ['q_t'],
  state: stateOf,
  draw,
  caption,
  table: (s, view) => ({
    head: HEAD,
    rows: [
      ...rowsOf(s, view).map(cells),
      ...readout(s, view).map(([name, value]) => [name, value, '', '', 'from the limits above']),
    ],
  }),
});
