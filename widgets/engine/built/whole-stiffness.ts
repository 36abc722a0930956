/**
 * How stiff the whole jack is along its axis under its load, which part gives most, and how fast a mass of that weight swings on it.
 *
 * Twice: as a chain of thread A, the shank, thread C, the base on its ring and the ball on its seat (stiffness.ts), which names the softest; and from the solved jack, as the
 * load over what its tip goes down by, between a hundredth less and more of it, without friction and without the push. The two agree where all flanks and the
 * whole ring touch; where the jack leans on a few places the solved one is softer. Units: N/mm, Hz.
 */
import { ballOnFlat } from '../contact/contact.ts';
import { type Chain, loadFrequency, type StiffPart, seriesStiffness } from '../contact/stiffness.ts';
import { megapascals, mm, newtons, newtonsPerMillimetre } from '../kernel/quantity.ts';
import { good, type Result } from '../kernel/result.ts';
import { type Jack, runJack } from './jack.ts';

export type GivingPart = 'thread A' | 'shank' | 'thread C' | 'base' | 'ball';

export interface WholeStiffness {
  readonly chain: Chain;
  readonly softest: GivingPart;
  readonly solved: number;
  readonly frequency: number;
}

const STEP = 0.01;

/** Of a jack that its load presses down; one that is lifted or carries nothing has no answer. */
export const wholeStiffness = (jack: Jack): Result<WholeStiffness> | undefined => {
  const { A, C, ring, ball, shank, load } = jack;
  if (!(load > 1e-3)) return undefined;
  const touch = ball && ballOnFlat.of({ F: newtons(load), R: mm(ball.radius), E_s: megapascals(ball.modulus) });
  if (touch && !touch.ok) return touch;
  const named: readonly (readonly [GivingPart, number | undefined])[] = [
    ['thread A', A.stiffness],
    ['shank', shank && (shank.E * (Math.PI / 4) * shank.diameter ** 2) / shank.length],
    ['thread C', C.stiffness],
    ['base', ring?.stiffness],
    ['ball', touch?.value.k_c],
  ];
  const parts = named.flatMap(([name, stiffness]): StiffPart[] =>
    stiffness === undefined ? [] : [{ name, stiffness }],
  );
  const chain = seriesStiffness(parts);
  if (!chain.ok) return chain;
  const height = (share: number): Result<number> => {
    const still = { ...jack, push: 0, load: load * share, A: { ...A, mu: 0 }, C: { ...C, mu: 0 } };
    const run = runJack({ ...still, guide: jack.guide && { ...jack.guide, mu: 0 } }, [0]);
    return run.ok ? good(run.value[0]?.z ?? 0) : run;
  };
  const [low, high] = [height(1 + STEP), height(1 - STEP)];
  if (!low.ok) return low;
  if (!high.ok) return high;
  const solved = (2 * STEP * load) / (high.value - low.value);
  const swings = loadFrequency.of({ k_12: newtonsPerMillimetre(solved), W: newtons(load) });
  if (!swings.ok) return swings;
  return good({
    chain: chain.value,
    softest: named.find(([name]) => name === chain.value.softest)?.[0] ?? 'ball',
    solved,
    frequency: swings.value.f_n,
  });
};
