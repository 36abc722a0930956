/** Three balls evenly on a circle about the origin at height nought, grooves towards the middle: the usual coupling. */
import type { BallInVee } from '../../widgets/engine/index.ts';

export const evenCoupling = (radius: number, halfAngle: number): readonly BallInVee[] =>
  ['A', 'B', 'C'].map((name, i) => {
    const direction = (2 * Math.PI * i) / 3;
    return { name, centre: [radius * Math.cos(direction), radius * Math.sin(direction), 0], direction, halfAngle };
  });
