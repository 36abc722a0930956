/**
 * The solid on its stage: its canvas outlives the pictures drawn under it, and one frame is asked for when something has changed. It is drawn coarsely
 * while it moves slowly, and once finely when it rests.
 */
import type { Adjuster } from '../../assembly/adjuster/adjuster.ts';
import { type Role, reach } from '../../assembly/adjuster/part.ts';
import { springEnds, widestStep } from '../kit/adjuster-extras.ts';
import { bodiesOf } from './bodies.ts';
import { coloursOf } from './colours.ts';
import { BEGIN, between, type Pose, type Posed } from './pose.ts';
import { type Colours, type Lit, makeScene, type Scene, type View } from './scene.ts';
import type { State } from './state.ts';
import { onPicture, PICTURE } from './view.ts';

export interface Live {
  pose: Pose;
  readonly show: (s: State, pose: Posed) => void;
  /** Whether the solid stands there, and the line drawing does not. */
  readonly drawn: () => boolean;
  readonly isOnHead: (event: PointerEvent, s: State) => boolean;
}

/** Buffer pixels to a picture unit: fine at rest; while it moves, as fine as the machine can. */
const FINE = 2;
const COARSEST = 0.75;
/** Where a frame comes later than this after it was asked for, ms, the next is coarser. */
const SLOW = 40;
const RESTS = 160;
/** How long a step takes to be seen, ms. */
const PASSES = 500;
const lessMotion = (): boolean => window.matchMedia('(prefers-reduced-motion: reduce)').matches;

export const liveOn = (stage: HTMLElement, again: () => void): Live => {
  /** The reader’s own few colours are for lines: there the line drawing stands. */
  const forced = window.matchMedia('(forced-colors: active)');
  let scene: Scene | undefined;
  let lost = false;
  let shown: { readonly s: State; readonly pose: Posed } | undefined;
  let made: Adjuster | undefined;
  let frame = 0;
  let rest = 0;
  let sharpness = FINE;
  let asked = 0;
  /** Read from the styles once, and again when these change. */
  let colours: Colours | undefined;
  /** A step is seen to be done, unless the reader wants less motion. */
  let passing: { readonly from: Posed; readonly since: number } | undefined;
  let stepShown: number | undefined;

  const drawn = () => scene !== undefined && !lost && !forced.matches;
  const put = () => {
    const place = stage.querySelector<HTMLElement>('[data-solid]');
    if (!scene || !place) return;
    if (scene.canvas.parentElement !== place) place.prepend(scene.canvas);
    place.classList.toggle('is-live', drawn());
  };
  const paint = (fineness: number) => {
    if (!scene || !shown || !drawn()) return;
    put();
    const { s, pose } = shown;
    if (made !== s.adjuster) {
      made = s.adjuster;
      scene.setBodies(bodiesOf(s.adjuster));
    }
    const t = passing ? Math.min(1, (performance.now() - passing.since) / PASSES) : 1;
    const now = passing && t < 1 ? between(passing.from, pose, t * t * (3 - 2 * t)) : pose;
    if (t >= 1) passing = undefined;
    colours ??= coloursOf(scene.canvas);
    scene.render(viewOf(s, now), colours, fineness * Math.min(1, window.devicePixelRatio || 1));
  };
  const ask = () => {
    if (!scene) return;
    window.clearTimeout(rest);
    if (frame === 0) {
      asked = performance.now();
      frame = requestAnimationFrame(() => {
        frame = 0;
        if (performance.now() - asked > SLOW) sharpness = Math.max(COARSEST, sharpness / 1.4);
        paint(sharpness);
        if (passing) ask();
      });
    }
    rest = window.setTimeout(() => paint(FINE), RESTS);
  };
  // What belonged to a lost context is of no use to the next: a new canvas is made for it.
  const begin = () => {
    scene?.canvas.remove();
    made = undefined;
    scene = makeScene(
      () => {
        lost = true;
        put();
        again();
      },
      () => {
        lost = false;
        begin();
        again();
      },
    );
    scene?.canvas.setAttribute('aria-hidden', 'true');
    scene?.size(PICTURE.width, PICTURE.height);
  };
  begin();
  for (const change of [forced, window.matchMedia('(prefers-color-scheme: dark)')])
    change.addEventListener('change', () => {
      colours = undefined;
      put();
      again();
    });
  const live: Live = {
    pose: BEGIN,
    show: (s, pose) => {
      if (shown && stepShown !== live.pose.step && shown.s.adjuster === s.adjuster && !lessMotion())
        passing = { from: shown.pose, since: performance.now() };
      stepShown = live.pose.step;
      shown = { s, pose };
      put();
      ask();
    },
    drawn,
    isOnHead: (event, s) => {
      const place = stage.querySelector('[data-solid]')?.getBoundingClientRect();
      if (!place || !shown) return false;
      const unit = PICTURE.width / place.width;
      const [x, y] = [(event.clientX - place.left) * unit, (event.clientY - place.top) * unit];
      const { pose } = shown;
      const step = widestStep(s.adjuster.turned);
      const [cx, top] = onPicture(pose.aim, [0, 0, pose.at.turned + step.to]);
      const [, bottom] = onPicture(pose.aim, [0, 0, pose.at.turned + step.from]);
      const slack = 12;
      return Math.abs(x - cx) < reach(step) * pose.aim.scale + slack && y > top - slack && y < bottom + slack;
    },
  };
  return live;
};

const NONE: Lit = { side: 0, from: 0, to: 0 };

/** Which flanks of a part are lit: those that carry, where the two threads are engaged. */
export const litOf = (s: State, pose: Posed, role: Role): { A: Lit; C: Lit } => {
  const one = (thread: 'A' | 'C'): Lit => {
    const fitted = s.adjuster[thread];
    const flank = s.carrying.flank[thread];
    if (!fitted || !flank) return NONE;
    const lowerRole: Role = thread === 'A' ? 'base' : 'turned';
    const upperRole: Role = thread === 'A' ? 'turned' : 'carried';
    if (role !== lowerRole && role !== upperRole) return NONE;
    const { lower, upper } = fitted.joint;
    const [a, b] = [s.standing.at[lowerRole], s.standing.at[upperRole]];
    const from = Math.max(lower.from + a, upper.from + b);
    const to = Math.min(lower.to + a, upper.to + b);
    const shift = pose.at[role] - s.standing.at[role];
    // The pressed flank of the upper part looks down at the base; that of the lower part looks up.
    const side = (flank === 'pressed' ? -1 : 1) * (role === upperRole ? 1 : -1);
    return { side, from: from + shift, to: to + shift };
  };
  return { A: one('A'), C: one('C') };
};

const viewOf = (s: State, pose: Posed): View => {
  const springs = springEnds(s.adjuster, pose);
  return {
    aim: pose.aim,
    cut: pose.cut,
    marked: pose.marked,
    place: (body) => {
      if (body.name === 'post') return { lift: 0, turns: 0 };
      if (body.name === 'spring' && springs)
        return { lift: springs.foot, turns: 0, stretch: Math.max(0.5, springs.head - springs.foot) };
      return { lift: pose.at[body.with] + (body.name === 'tip' ? pose.tipLift : 0), turns: pose.turns[body.with] };
    },
    lit: (role) => litOf(s, pose, role),
    // With the lock off the post and its arm hold nothing.
    shown: ({ name }) => (name === 'post' || name === 'arm' ? pose.locked : name === 'spring' ? pose.sprung : true),
  };
};
