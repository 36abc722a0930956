/** Wörter der Platte auf ihren drei Füßen. */
import type * as En from '../../en/figures/plate-on-feet.ts';
import type { Same } from '../../same.ts';

type Foot = Parameters<typeof En.WORDS.caption>[0]['feet'][number];
const WAY = { high: 'hoch', low: 'tief' } as const;
const stands = ({ name, height, way }: Foot): string =>
  way === 'level' ? `über Fuß ${name} ist sie eben` : `über Fuß ${name} ist sie ${height} zu ${WAY[way]}`;

export const WORDS: Same<typeof En.WORDS> = {
  title: 'Die Platte auf ihren drei Füßen',
  drawing: 'Drei Stellelemente unter einer Platte, von der Seite und ein wenig von oben',
  sliders: { round: 'herumsehen', above: 'von oben sehen' },
  degrees: (count) => `${count}°`,
  foot: (name, height) => `${name}: ${height}`,
  magnified: (times, closer) =>
    `Höhen der Platte sind ${times}-mal größer gezeichnet${closer === '1' ? '' : `, die Füße stehen ${closer}-mal näher beieinander`}. Die Stellelemente und die Drehung ihrer Köpfe sind wahr.`,
  caption: (v) =>
    `Runde ${v.round}: ${v.feet.map(stands).join(', ')}. ${v.done ?? `Jetzt ${v.feet.map(({ name, order }) => `${name}: ${order}`).join(', ')}.`}`,
  rows: {
    height: (foot) => `Platte über Fuß ${foot}`,
    turns: (foot) => `Fuß ${foot} von der Mitte`,
  },
  head: ['Fuß', 'Platte darüber', 'Umdrehungen von der Mitte', 'zu drehen'],
};
