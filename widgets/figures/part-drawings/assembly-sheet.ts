/**
 * The sheet of the assembly: all parts cut where they stand when put together, with ball, springs and lock, each with its balloon and its row in the list of parts.
 *
 * Springs are drawn by a line (the simplified representation of ISO 2162-1), the post of a key or a post from outside, since a solid part is not cut along its axis (ISO 128-3);
 * both standards from memory. Where they stand is that of every other picture of the adjuster. A lock that is not stated is not drawn; the sheet says so.
 */
import { WORDS } from '#words/figures/part-drawings.ts';
import { type Adjuster, type Fitted, partsOf, standing } from '../../assembly/adjuster/adjuster.ts';
import { engagedAt } from '../../assembly/adjuster/joint.ts';
import { heightOf, type Part, type Role, type Step, type ThreadEnd } from '../../assembly/adjuster/part.ts';
import { countOf, type Item, itemsOf } from '../../assembly/adjuster/parts-list.ts';
import { FOOT_WALL, postOf } from '../../assembly/adjuster/post.ts';
import { chain, LETTERS, type Mark, type Spot, scaleWords, text, thin } from '../../assembly/files/paper.ts';
import { good, type Result, spokenNumber } from '../../engine/index.ts';
import { designationOfSide } from '../../input/designation-sides.ts';
import { numeral, show } from '../../input/format.ts';
import { guideOf, reachesOf, springsOf } from '../kit/adjuster-extras.ts';
import { upright } from './dimensions.ts';
import { halfWidth, throughOf } from './part-view.ts';
import { frameOf, type ListRow, PAPERS, roomOn } from './sheet-of-paper.ts';
import { type Asked, FIRST, nameOn, type PaperSheet, plainSize, scaleFor } from './sheets.ts';

/** In a joint the screw stands before its nut: the nut is drawn at the crests of the screw where that is, and as tapped beyond it. */
const asEngaged = (
  part: Part,
  joints: readonly { readonly end: ThreadEnd; readonly from: number; readonly to: number }[],
): Part => ({
  ...part,
  bores: part.bores.flatMap((bore): Step[] => {
    const joint = joints.find(({ end }) => end.thread === bore.thread && Math.abs(end.from - bore.from) < 1e-9);
    if (!bore.thread || !joint || !(joint.to > joint.from)) return [bore];
    const { thread: _, ...plain } = bore;
    return [
      ...(joint.from > bore.from + 1e-9 ? [{ ...bore, to: joint.from }] : []),
      { ...plain, from: joint.from, to: joint.to },
      ...(joint.to < bore.to - 1e-9 ? [{ ...bore, from: joint.to }] : []),
    ];
  }),
});

/** What of a ball is seen over the part that it is set in, below the top of it. */
const overRim = (
  { diameter, stands }: { readonly diameter: number; readonly stands: number },
  top: Spot,
  scale: number,
): Mark => {
  const r = diameter / 2;
  const rim = (180 / Math.PI) * Math.asin(Math.max(-1, Math.min(1, (r - stands) / r)));
  return { kind: 'arc', centre: [top[0], top[1] - r * scale], r: r * scale, from: rim, to: 180 - rim, wide: true };
};

/** Room left and right of what is drawn: for the height, and the balloon of a lock; for the other balloons. */
const LEFT = { plain: 30, guided: 46 };
const RIGHT = 34;
const BALLOON = 4.5;
const NEXT_BALLOON = 11;

const rowOf = (item: Item, { view }: Asked): readonly [name: string, material: string] => {
  const force = (newtons: number) => show(newtons, { shown: 'force', digits: 3 }, view);
  switch (item.kind) {
    case 'part': {
      const { role, kind, below, above, material } = item.part;
      const ends = [below, above].flatMap((e) => (e ? [spokenNumber(designationOfSide(e.thread, e.gender))] : []));
      return [[WORDS.part(role, kind), ...ends].join(', '), WORDS.material(material)];
    }
    case 'ball':
      return [`${WORDS.ball} ${WORDS.round(plainSize(item.tip.diameter, view))}`, ''];
    case 'springs': {
      const { between, force: pull, rate } = item.springs;
      const stated = [
        ...(pull === undefined ? [] : [force(pull)]),
        ...(rate === undefined ? [] : [show(rate, { shown: 'N/mm', digits: 3 }, view)]),
      ];
      return [WORDS.spring(between, stated), ''];
    }
    case 'lock':
      return [
        WORDS.lock(item.lock.kind, plainSize(item.lock.radius, view)) +
          (item.post ? `, ${WORDS.round(plainSize(2 * item.post.half, view))}` : ''),
        item.lock.steel ? WORDS.material('steel') : '',
      ];
    case 'arm':
    case 'foot':
      return [WORDS.other[item.kind], WORDS.material('plastic')];
  }
};

/** The post and the arm of the carried part on it, as far as no part hides them. */
const guideMarks = (a: Adjuster, place: (x: number, z: number) => Spot): Mark[] => {
  const post = postOf(a);
  const { base, carried } = a;
  if (!post || !carried) return [];
  const now = standing(a, 0);
  const near = -post.x - post.half;
  const over = Math.max(0, ...base.outer.filter((o) => halfWidth(o) > near).map((o) => o.to));
  const under = Math.min(...carried.outer.filter((o) => halfWidth(o) > near).map((o) => o.from));
  const top = post.arm ? post.top : Math.min(post.top, now.at.carried + under);
  const closed = (points: readonly Spot[]): Mark => ({ kind: 'line', points, wide: true, closed: true });
  const [left, right] = [post.x - post.half, post.x + post.half];
  return [
    closed([place(left, over), place(right, over), place(right, top), place(left, top)]),
    ...guideOf(a, now)
      .slice(1)
      .map((arm) => closed(arm.map(([x, z]) => place(x, z)))),
  ];
};

/** Where a balloon points on what it numbers, x and z in mm. */
const spotOf = (item: Item, a: Adjuster): readonly [x: number, z: number] | undefined => {
  const now = standing(a, 0);
  switch (item.kind) {
    case 'part': {
      // Into what only it fills: its widest step.
      const { outer, role } = item.part;
      const step = outer.reduce((best, o) => (halfWidth(o) > halfWidth(best) + 1e-9 ? o : best));
      return [0.92 * halfWidth(step), now.at[role] + (step.from + step.to) / 2];
    }
    case 'ball':
      return [0.25 * item.tip.diameter, now.height - 0.25 * item.tip.diameter];
    case 'springs': {
      const nearest = [...springsOf(a, now)].sort((p, q) => Math.max(...q.map(xOf)) - Math.max(...p.map(xOf)))[0];
      // Off the middle, where the parts have theirs.
      return nearest?.[Math.round(0.4 * (nearest.length - 1))];
    }
    case 'lock': {
      const post = postOf(a);
      return post && [post.x, (heightOf(a.base) + now.at.carried) / 2];
    }
    case 'arm': {
      const post = postOf(a);
      return post?.arm && [post.arm.from + 1, now.at.carried + (post.arm.low + post.arm.high) / 2];
    }
    case 'foot': {
      const post = postOf(a);
      return post?.foot && [post.x - post.half - FOOT_WALL / 2, post.foot.high / 2];
    }
  }
};
const xOf = ([x]: readonly [number, number]): number => x;

export const assemblySheet = (a: Adjuster, number: string, asked: Asked): Result<PaperSheet> => {
  const { paper, view, block } = asked;
  const [width, height] = PAPERS[paper];
  const parts = partsOf(a);
  const now = standing(a, 0);
  const items = itemsOf(a);
  const list = items.map((item, i): ListRow => {
    const [name, material] = rowOf(item, asked);
    return [String(i + 1), String(countOf(item)), name, material];
  });
  const room = roomOn(PAPERS[paper], list.length + 1);
  const guided = items.some((item) => item.kind === 'lock') && a.carried !== undefined;
  const reaches = reachesOf(a);
  const [left, right] = [guided ? reaches.left : reaches.right, reaches.right];
  const tops = parts.map((p) => now.at[p.role] + heightOf(p));
  const low = Math.min(0, ...parts.map((p) => now.at[p.role]));
  const top = Math.max(now.height, ...tops, guided ? (postOf(a)?.top ?? 0) : 0);
  const beside = guided ? LEFT.guided : LEFT.plain;
  const scale = scaleFor(
    (s) =>
      beside + (left + right) * s + RIGHT <= room.right - room.left && (top - low) * s + 34 <= room.top - room.bottom,
    WORDS.assembly,
    paper,
    top - low,
  );
  if (!scale.ok) return scale;
  const s = scale.value;
  const free = room.right - room.left - beside - (left + right) * s - RIGHT;
  const x = room.left + beside + left * s + free / 2;
  const y = room.bottom + 18 + (room.top - room.bottom - 30 - (top - low) * s) / 2 - low * s;
  const place = (r: number, z: number): Spot => [x + r * s, y + z * s];
  const engaged = (name: 'A' | 'C', { joint }: Fitted) => {
    const [lower, upper]: readonly [Role, Role] = name === 'A' ? ['base', 'turned'] : ['turned', 'carried'];
    const v = now.at[upper] - now.at[lower];
    const from = Math.max(joint.lower.from, joint.upper.from + v);
    const long = engagedAt(joint, v);
    return joint.lower.gender === 'internal'
      ? { role: lower, end: joint.lower, from, to: from + long }
      : { role: upper, end: joint.upper, from: from - v, to: from - v + long };
  };
  const nuts = [engaged('A', a.A), ...(a.C ? [engaged('C', a.C)] : [])];
  const inside = (z: number, except: Part): boolean =>
    parts.some((p) => p !== except && z > now.at[p.role] + 1e-9 && z < now.at[p.role] + heightOf(p) - 1e-9);
  const drawn = parts.flatMap((part, i) => {
    const up = now.at[part.role];
    return throughOf(
      asEngaged(
        part,
        nuts.filter((n) => n.role === part.role),
      ),
      { x, y: y + up * s, scale: s },
      i % 2 === 1,
      2.5 - 0.4 * i,
      (z) => inside(z + up, part),
    );
  });
  const ball = a.tip.kind === 'ball' ? [overRim(a.tip, place(0, now.height), s)] : [];
  const springs = springsOf(a, now).map((line): Mark => thin(...line.map(([r, z]) => place(r, z))));
  const balloons: Mark[] = [];
  const balloon = (i: number, spot: Spot, centre: Spot): void => {
    const way = Math.sign(centre[0] - spot[0]);
    balloons.push(
      thin(spot, [centre[0] - way * BALLOON, centre[1]]),
      { kind: 'arc', centre: spot, r: 0.5, from: 0, to: 360, wide: true },
      { kind: 'arc', centre, r: BALLOON, from: 0, to: 360, wide: false },
      text(String(i + 1), [centre[0], centre[1] - LETTERS / 2 + 0.4], 'middle'),
    );
  };
  let least = Number.NEGATIVE_INFINITY;
  const spots = items.flatMap((item, i) => {
    const at = spotOf(item, a);
    return at ? [{ item, i, spot: place(...at) }] : [];
  });
  for (const { item, i, spot } of spots.sort((p, q) => p.spot[1] - q.spot[1])) {
    if (item.kind === 'lock' || item.kind === 'arm' || item.kind === 'foot') {
      balloon(i, spot, [x - left * s - 10, spot[1]]);
      continue;
    }
    const at = Math.max(spot[1], least + NEXT_BALLOON);
    least = at;
    balloon(i, spot, [x + right * s + 24, at]);
  }
  const heightAt = x - left * s - (guided ? 16 : 4) - FIRST;
  const notes = [
    WORDS.stroke(show(a.stroke, { shown: 'motion', digits: 3 }, view), numeral(a.turns, 3)),
    ...(a.carried && a.lock.kind !== 'key' && a.lock.kind !== 'post' ? [WORDS.locked[a.lock.kind]] : []),
  ];
  const marks: Mark[] = [
    ...(guided ? guideMarks(a, place) : []),
    ...drawn,
    ...ball,
    ...springs,
    ...chain(place(0, low - 4 / s), place(0, top + 4 / s)),
    ...balloons,
    ...upright(WORDS.assumed(plainSize(now.height, view)), heightAt, y, y + now.height * s, x - 2),
    ...notes.map((words, i) => text(words, [room.left + 2, room.bottom - 6 - i * 5])),
    ...frameOf(
      paper,
      block,
      {
        name: nameOn({ of: a.name || WORDS.adjuster }, WORDS.assembly),
        material: '',
        scale: s,
        units: view === 'inch' ? 'in' : 'mm',
        paper,
        sheet: number,
      },
      list,
    ),
  ];
  return good({ marks, width, height, scale: scaleWords(s), stated: 0, assumed: 0, listed: list.length, doubtful: [] });
};
