/** Sections of an adjuster at their true size, mm, each part a layer: where the parts stand when put together, with ball, springs and a lock that is stated; or one part in its own frame. */
import { type Adjuster, partsOf, standing } from '../../assembly/adjuster/adjuster.ts';
import type { Part } from '../../assembly/adjuster/part.ts';
import { crestsOf, sectionOf } from '../../assembly/adjuster/surface.ts';
import type { Outline } from '../../assembly/files/outline-files.ts';
import { guideOf, springsOf, tipOf } from '../kit/adjuster-extras.ts';

export const outlinesOf = (adjuster: Adjuster, only?: Part): Outline[] => {
  const now = standing(adjuster, 0);
  const crests = crestsOf(adjuster);
  const parts = partsOf(adjuster)
    .filter((part) => only === undefined || part === only)
    .flatMap((part) =>
      sectionOf(part, 0, { crests: crests[part.role] }).map((points) => ({
        layer: part.role,
        points: points.map(([r, z]) => [r, z + (only ? 0 : now.at[part.role])] as const),
        closed: true,
      })),
    );
  return only ? parts : [...parts, ...besides(adjuster)];
};

const besides = (a: Adjuster): Outline[] => {
  const now = standing(a, 0);
  const foot = now.height - a.tip.stands;
  const right = tipOf(a).map(([r, z]) => [r, foot + z] as const);
  const left = right.filter(([r]) => r > 0).map(([r, z]) => [-r, z] as const);
  const stated = a.lock.kind === 'key' || a.lock.kind === 'post';
  return [
    ...(right.length > 0 ? [{ layer: 'tip', points: [...right, ...left.reverse()], closed: true }] : []),
    ...(stated ? guideOf(a, now).map((points) => ({ layer: a.lock.kind, points, closed: true })) : []),
    ...springsOf(a, now).map((points) => ({ layer: 'springs', points, closed: false })),
  ];
};
