/**
 * A dial of the notebook's own: a hundred divisions, one long hand, a small hand that counts rounds. It reads motion
 * the way an indicator on the carried part would; up is clockwise. Numbers stand outside the ring and the unit under the face, where no
 * hand covers them.
 */
import { WORDS } from '#words/figures/kit.ts';
import { escapeText } from '../../input/escape.ts';
import { numeral, type UnitView } from '../../input/format.ts';
import { px } from './svg.ts';

export interface DialScale {
  /** One division in mm, and how it is written on the face. */
  readonly division: number;
  readonly face: string;
}

/** The division that lets `perTurn` mm show as some marks and not as many rounds. */
export const dialScale = (perTurn: number, view: UnitView): DialScale => {
  const coarse = Math.abs(perTurn) >= 0.04;
  const { thou, tenth, micrometres, micrometre } = WORDS.dial.faces;
  if (view === 'inch') return coarse ? { division: 0.0254, face: thou } : { division: 0.00254, face: tenth };
  return coarse ? { division: 0.01, face: micrometres } : { division: 0.001, face: micrometre };
};

/** Where the small hand turns. */
const ROUNDS_AT = 26;
/** Of the small scale: beside a figure that counts the rounds in words it is small; where it must be read it is larger, with every other round written in it. */
const SMALL = { rim: 13, long: 4, short: 2, hand: 11 };
const READ = { rim: 20, long: 4, short: 2.5, hand: 17 };
const COUNTS_AT = 11.5;

/** `read`: the rounds are to be read off the drawing. */
export const dialSvg = (motion: number, scale: DialScale, label: string, read = false): string => {
  const small = read ? READ : SMALL;
  const ticks = Array.from({ length: 100 }, (_, i) => {
    const long = i % 10 === 0;
    return `<path class="${long ? 'tick long' : 'tick'}" d="M0 -${long ? 50 : i % 5 === 0 ? 54 : 57}V-62" transform="rotate(${px(i * 3.6)})"/>`;
  }).join('');
  const figures = Array.from({ length: 10 }, (_, i) => {
    const a = (2 * Math.PI * i) / 10;
    return `<text x="${px(72 * Math.sin(a))}" y="${px(-72 * Math.cos(a))}" dy="0.35em">${i * 10}</text>`;
  }).join('');
  const tenths = Array.from(
    { length: 10 },
    (_, i) =>
      `<path class="tick" d="M0 ${ROUNDS_AT - small.rim + (i === 0 ? small.long : small.short)}V${ROUNDS_AT - small.rim}" transform="rotate(${px(i * 36)} 0 ${ROUNDS_AT})"/>`,
  ).join('');
  const counts = Array.from({ length: read ? 5 : 0 }, (_, i) => {
    const a = (2 * Math.PI * i) / 5;
    return `<text class="count" x="${px(COUNTS_AT * Math.sin(a))}" y="${px(ROUNDS_AT - COUNTS_AT * Math.cos(a))}" dy="0.35em">${i * 2}</text>`;
  }).join('');
  return (
    `<svg class="dial" viewBox="-90 -90 180 204" role="img" aria-label="${escapeText(label)}"><circle class="rim" r="86"/><circle class="paper" r="82"/>${ticks}${figures}` +
    `<g class="rounds"><circle cy="${ROUNDS_AT}" r="${small.rim}"/>${tenths}${counts}<path data-rounds="" d="M0 ${ROUNDS_AT}v-${small.hand}" transform="rotate(${px(rounds(motion, scale))} 0 ${ROUNDS_AT})"/></g>` +
    `<text class="division" y="106">${scale.face}</text><path class="hand" data-hand="" d="M0 14V-60" transform="rotate(${px(hand(motion, scale))})"/><circle class="hub" r="5"/></svg>`
  );
};

const hand = (motion: number, scale: DialScale): number => (motion / scale.division) * 3.6;
const rounds = (motion: number, scale: DialScale): number => (motion / scale.division / 100) * 36;

export const updateDial = (stage: HTMLElement, motion: number, scale: DialScale): void => {
  stage.querySelector('[data-hand]')?.setAttribute('transform', `rotate(${px(hand(motion, scale))})`);
  stage
    .querySelector('[data-rounds]')
    ?.setAttribute('transform', `rotate(${px(rounds(motion, scale))} 0 ${ROUNDS_AT})`);
};

/** What the dial shows, in divisions, for the sentence beside it. */
export const dialReading = (motion: number, scale: DialScale): string =>
  WORDS.dial.reading(numeral(motion / scale.division, 3), scale.face);
