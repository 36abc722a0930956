/**
 * A coil of wire from the side, as lines (x, z): straight wire from the lower hold at z = 0 to the coils, the front half of every turn as wire, straight wire to the upper hold. What is
 * behind is left out. mm.
 */
import type { CoilForm } from '../../engine/index.ts';
import type { SeenLine } from './spring-seen.ts';

/** How long its coils are, stretched so far. */
export const coiledLength = ({ t, turns }: CoilForm, stretch: number): number => (turns + 1) * t + stretch;

export const coilLines = (form: CoilForm, stretch: number, between: number): readonly SeenLine[] => {
  const { D, t, turns } = form;
  const body = coiledLength(form, stretch);
  const low = (between - body) / 2;
  const pitch = (body - t) / turns;
  const front = Array.from({ length: Math.ceil(turns) }, (_, i): SeenLine => {
    const [from, to] = [low + i * pitch, low + (i + 0.5) * pitch];
    return [
      [-D / 2, from],
      [D / 2, to],
      [D / 2, to + t],
      [-D / 2, from + t],
      [-D / 2, from],
    ];
  });
  const straight = (from: number, to: number): SeenLine[] =>
    [-t / 2, t / 2].map((x) => [
      [x, from],
      [x, to],
    ]);
  return [...straight(0, low), ...front, ...straight(low + body, between)];
};
