/** Names of the parts in a column beside them, with leaders that end in dots, and what each has moved. */
import { partsOf } from '../../assembly/adjuster/adjuster.ts';
import type { Role } from '../../assembly/adjuster/part.ts';
import { escapeText } from '../../input/escape.ts';
import { widestStep } from '../kit/adjuster-extras.ts';
import { type Point, px } from '../kit/svg.ts';
import type { Posed } from './pose.ts';
import type { State } from './state.ts';
import { directionsOf, onPicture, PICTURE, spread } from './view.ts';

export interface PartWords {
  readonly role: Role;
  readonly name: string;
  readonly motion: string;
}

/** Where the column begins, and how far apart two labels of two lines stand at the least, in picture units. */
const COLUMN = 0.74 * PICTURE.width;
const APART = 74;

interface Place {
  readonly role: Role;
  readonly dot: Point;
  readonly y: number;
}

const placesOf = (s: State, pose: Posed): readonly Place[] => {
  const { right } = directionsOf(pose.aim);
  const dots = partsOf(s.adjuster).map((part) => {
    const step = widestStep(part);
    const r = 0.86 * step.r;
    const z = pose.at[part.role] + (step.from + step.to) / 2;
    return onPicture(pose.aim, [right[0] * r, right[1] * r, z]);
  });
  const heights = spread(
    dots.map(([, y]) => y),
    APART,
    APART / 2,
    PICTURE.height - APART / 2,
  );
  return partsOf(s.adjuster).map(({ role }, i) => ({ role, dot: dots[i] as Point, y: heights[i] as number }));
};

const circle = ([x, y]: Point): string => `M${px(x - 3)} ${px(y)}a3 3 0 1 0 6 0a3 3 0 1 0 -6 0`;

export const leaders = (s: State, pose: Posed): string =>
  placesOf(s, pose)
    .map(({ dot, y }) => `${circle(dot)}M${px(dot[0])} ${px(dot[1])}L${px(COLUMN - 14)} ${px(y)}H${px(COLUMN - 4)}`)
    .join('');

const styleOf = (y: number): string => `top:${px((100 * y) / PICTURE.height)}%`;

export const labelsHtml = (s: State, pose: Posed, words: readonly PartWords[]): string => {
  const places = placesOf(s, pose);
  return words
    .map(
      ({ role, name, motion }) =>
        `<p class="solid-label ${role}" data-label="${role}" style="${styleOf(places.find((p) => p.role === role)?.y ?? 0)}">${escapeText(name)}<b data-motion="${role}">${escapeText(motion)}</b></p>`,
    )
    .join('');
};

export const updateLabels = (stage: HTMLElement, s: State, pose: Posed, words: readonly PartWords[]): void => {
  stage.querySelector('[data-leaders]')?.setAttribute('d', leaders(s, pose));
  for (const { role, y } of placesOf(s, pose)) {
    stage.querySelector(`[data-label="${role}"]`)?.setAttribute('style', styleOf(y));
    const place = stage.querySelector(`[data-motion="${role}"]`);
    const motion = words.find((w) => w.role === role)?.motion ?? '';
    if (place && place.textContent !== motion) place.textContent = motion;
  }
};
