/** Pages that are printed as they stand: the safety sheet to be signed, and the project with its pairs. */
import {
  DATE,
  FIND_PAIRS,
  NAME,
  NET_LEAD_HEAD,
  PAIR_HEADS,
  PAIRS_FOR_PROJECT,
  PRINT_PROJECT,
  PRINT_SAFETY,
  projectPairsSay,
  SAFETY,
  SIZES_SEARCHED,
  TAPS_NAMES,
  WANTED_LEAD,
  WHICH_TAPS,
} from '#words/classroom.ts';
import { spokenNumber } from '../../engine/index.ts';
import { farOff, projectPairs, TAPS } from '../../exercises/project-pairs.ts';
import { escapeText } from '../../input/escape.ts';
import { type NumberFormat, numeral, show } from '../../input/format.ts';
import { readQuantity } from '../../input/quantity.ts';
import { make, whenSent } from '../dom.ts';
import { button, lineField, oneOf, printed, status } from './parts.ts';

const list = (rows: readonly string[], kind: string): string =>
  `<ul class="${kind}">${rows.map((text) => `<li>${escapeText(text)}${kind === 'fill' ? ' <span class="line"></span>' : ''}</li>`).join('')}</ul>`;

const safetyHtml = (): string =>
  `<section class="paper safety"><div class="paper-page"><div class="page-head"><h2>${SAFETY.title}</h2></div><p><strong>${escapeText(SAFETY.first)}</strong></p>${SAFETY.groups
    .map(({ title, rules }) => `<h3>${escapeText(title)}</h3>${list(rules, 'ticks')}`)
    .join(
      '',
    )}<h3>${SAFETY.here}</h3>${list(SAFETY.blanks, 'fill')}<h3>${SAFETY.signed}</h3><p>${escapeText(SAFETY.says)}</p>${list(SAFETY.signatures, 'fill')}</div></section>`;

export const mountSafety = (place: HTMLElement): void => {
  const sheet = printed('safety');
  sheet.place.innerHTML = safetyHtml();
  const shown = make('div', { class: 'papers-preview', role: 'region', 'aria-label': SAFETY.title, tabindex: '0' });
  shown.innerHTML = safetyHtml();
  place.append(make('div', { class: 'button-row' }, button(PRINT_SAFETY, sheet.print)), shown);
};

/** What of the part is for the screen only: its own line, what is typed or pressed, and what is said of that. */
const ON_SCREEN = ':scope > summary, form, button, .verdict:not(.classwork > .verdict), .button-row, .inputs';

/** The project as the page tells it, under its heading, without what is only for the screen. */
const projectOnPaper = (part: Element): HTMLElement => {
  const whole = make('section', { class: 'paper shop-project' });
  whole.append(...[...part.childNodes].map((node) => node.cloneNode(true)));
  // A worked pair is that of its threads, which stand in its fields alone.
  for (const inputs of whole.querySelectorAll('.example .inputs')) {
    const held = [...inputs.querySelectorAll<HTMLInputElement>('input[type=text]')].map(({ value }) => value);
    if (held.length > 0) inputs.before(make('p', {}, held.join(' + ')));
  }
  for (const gone of whole.querySelectorAll(ON_SCREEN)) gone.remove();
  // Of what is worked on the page, the pairs that were found.
  for (const place of whole.querySelectorAll('.classwork')) place.replaceWith(...place.childNodes);
  for (const fold of whole.querySelectorAll('details')) fold.open = true;
  for (const named of whole.querySelectorAll('[id]')) named.removeAttribute('id');
  const blank = (words: string) => make('p', {}, `${words} `, make('span', { class: 'line' }));
  const heading = part.previousElementSibling?.textContent ?? '';
  whole.prepend(make('div', { class: 'page-head' }, make('h2', {}, heading), blank(NAME), blank(DATE)));
  return whole;
};

/** A quarter of a millimetre: what neighbouring sizes of one system of threads give. */
const FIRST_LEAD = '250 µm';
const MOTION: NumberFormat = { shown: 'motion', digits: 4 };

export const mountProject = (place: HTMLElement): void => {
  const wanted = lineField('project-lead', WANTED_LEAD, FIRST_LEAD);
  const taps = oneOf('project-taps', WHICH_TAPS, TAPS, 'metric', (name) => TAPS_NAMES[name]);
  const said = status();
  const shown = make('div', { class: 'table-scroll', tabindex: '0', role: 'region', 'aria-label': PAIRS_FOR_PROJECT });
  const find = () => {
    shown.replaceChildren();
    const lead = readQuantity(wanted.field.value, 'mm', 'µm');
    wanted.field.setAttribute('aria-invalid', String(!lead.ok));
    if (!lead.ok) return said.refuse(lead);
    const [motion, kind] = [Math.abs(lead.value.value), taps.chosen()];
    const pairs = projectPairs(motion, kind);
    if (!pairs.ok) return said.refuse(pairs);
    const off = farOff(pairs.value, motion);
    said.say(
      projectPairsSay(
        pairs.value.length,
        TAPS_NAMES[kind],
        SIZES_SEARCHED[kind],
        off === undefined ? undefined : numeral(100 * off, 2),
      ),
    );
    const rows = pairs.value.map(({ A, C, Delta, gain, stroke }) => [
      spokenNumber(`${A.designation} + ${C.designation}`),
      show(Delta, MOTION, 'both'),
      numeral(gain, 3),
      show(stroke, MOTION, 'both'),
    ]);
    shown.innerHTML = `<table><caption>${PAIRS_FOR_PROJECT}</caption><thead><tr>${[NET_LEAD_HEAD, ...PAIR_HEADS].map((head) => `<th scope="col">${head}</th>`).join('')}</tr></thead><tbody>${rows
      .map(
        ([name = '', ...cells]) =>
          `<tr><th scope="row">${escapeText(name)}</th>${cells.map((c) => `<td>${escapeText(c)}</td>`).join('')}</tr>`,
      )
      .join('')}</tbody></table>`;
  };
  const form = make(
    'form',
    { novalidate: '' },
    wanted.place,
    taps.place,
    make('div', { class: 'button-row' }, make('button', { type: 'submit' }, FIND_PAIRS)),
  );
  whenSent(form, find);
  const sheet = printed('project');
  const print = button(PRINT_PROJECT, () => {
    const part = place.closest('details.part');
    if (part) sheet.place.replaceChildren(projectOnPaper(part));
    sheet.print();
  });
  place.append(form, said.line, shown, make('div', { class: 'button-row' }, print));
  find();
};
