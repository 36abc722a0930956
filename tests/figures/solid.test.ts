/** The solid: how it is looked at, its nets as the picture has them, its silhouette against the section, and the flanks it lights. */
import { describe, expect, it } from 'vitest';
import { type Adjuster, partsOf, standing } from '../../widgets/assembly/adjuster/adjuster.ts';
import { asideOf, carryingOf } from '../../widgets/assembly/adjuster/carrying.ts';
import { heightOf, massOf, reach } from '../../widgets/assembly/adjuster/part.ts';
import { meshOf, meshVolume } from '../../widgets/assembly/adjuster/solid.ts';
import { springEnds } from '../../widgets/assembly/adjuster/spring-place.ts';
import { crestsOf, sectionOf } from '../../widgets/assembly/adjuster/surface.ts';
import { readAdjuster } from '../../widgets/assembly/adjuster/text.ts';
import { heldAfter, stepsOf } from '../../widgets/figures/kit/solid/assembling.ts';
import { type Body, bodiesOf } from '../../widgets/figures/kit/solid/bodies.ts';
import { stillOf } from '../../widgets/figures/kit/solid/still.ts';
import { aimAt, directionsOf, dot, onPicture, PICTURE, spread } from '../../widgets/figures/kit/solid/view.ts';
import { litOf } from '../../widgets/figures/solid/live.ts';
import { BEGIN, posed } from '../../widgets/figures/solid/pose.ts';
import type { State } from '../../widgets/figures/solid/state.ts';
import { reasonOf } from '../../widgets/words/reason.ts';
import { pointsOf } from '../support/figures.ts';
import { seeded } from '../support/seeded.ts';

const read = (text: string): Adjuster => {
  const result = readAdjuster(text);
  if (!result.ok) throw new Error(reasonOf(result));
  return result.value;
};
const FOOT = read(
  'base = tapped block M10x1.5, 20 mm | turned = stud M10x1.5 20 mm, 3/8-16 UNC 20 mm | carried = cap 3/8-16 UNC, thread 20 mm | tip = ball 6.35 mm',
);
const RISER = read(
  'base = coupling nut 3/8-16 UNC, 28.575 mm | turned = adapter 3/8-16 UNC external 15 mm, M10x1.5 internal 15 mm blind, body 18 mm, hexagon 17 mm | carried = socket screw M10x1.5, thread 20 mm, head 10 mm | tip = ball 8.334 mm in 8 mm hexagon, stands 4 mm | springs = 2 between base and carried, 12 N, 0.6 N/mm, at 15 mm',
);
const STOP = read(
  'base = tapped block M12x1.5, 16 mm | turned = sleeve M12x1.5 external 20 mm, M8x1.25 internal 12 mm | carried = spindle M8x1.25, thread 24 mm | tip = cone',
);
const PLAIN = read('base = tapped block M10x1.5, 20 mm | turned = screw M10x1.5 20 mm, head 6 mm | tip = flat');
const ALL = { FOOT, RISER, STOP, PLAIN };

const at = (adjuster: Adjuster, n: number, load = 0): State => ({
  adjuster,
  standing: standing(adjuster, n),
  locked: true,
  carrying: carryingOf(adjuster, n, load),
  push: 0,
  aside: { A: 'all round', C: 'all round' },
  handed: undefined,
  springsHold: undefined,
  play: { A: 0.1, C: adjuster.C && 0.1 },
  lens: true,
  asked: n,
});

describe('the view', () => {
  it.each([
    [0, 0],
    [15, 20],
    [-130, 60],
    [170, -45],
  ])('is a turn of the room, from %d° round and %d° above', (round, above) => {
    const { right, up, near } = directionsOf({ round, above });
    for (const v of [right, up, near]) expect(Math.hypot(...v)).toBeCloseTo(1, 12);
    expect(dot(right, up)).toBeCloseTo(0, 12);
    const across = [
      right[1] * up[2] - right[2] * up[1],
      right[2] * up[0] - right[0] * up[2],
      right[0] * up[1] - right[1] * up[0],
    ];
    for (let k = 0; k < 3; k++) expect(across[k]).toBeCloseTo(near[k] as number, 12);
  });

  it('shows from the front what a section shows: x to the right, height up', () => {
    const aim = aimAt({ round: 0, above: 0 }, 0, 40, 10);
    const [x, y] = onPicture(aim, [3, 8, 25]);
    expect(x).toBeCloseTo(PICTURE.axis + 3 * aim.scale, 9);
    expect(y).toBeCloseTo(PICTURE.height / 2 - 5 * aim.scale, 9);
  });

  it('keeps every part on the picture, however it is held, at both stops and pulled apart', () => {
    for (const a of Object.values(ALL))
      for (const n of [a.anticlockwise.n, a.clockwise.n])
        for (const held of [
          BEGIN,
          { ...BEGIN, above: 80 },
          { ...BEGIN, round: -90, above: -60 },
          { ...BEGIN, apart: 1 },
        ]) {
          const pose = posed(at(a, n), held);
          for (const part of partsOf(a))
            for (const step of part.outer)
              for (const z of [step.from, step.to])
                for (const [x, y] of [0, 1, 2, 3].map((q) => {
                  const r = step.thread ? step.r : reach(step);
                  return onPicture(pose.aim, [
                    r * Math.cos((q * Math.PI) / 2),
                    r * Math.sin((q * Math.PI) / 2),
                    z + pose.at[part.role],
                  ]);
                })) {
                  expect(x).toBeGreaterThan(0);
                  expect(y).toBeGreaterThan(0);
                  expect(x).toBeLessThan(PICTURE.width);
                  expect(y).toBeLessThan(PICTURE.height);
                }
        }
  });
});

describe('the line drawing from below', () => {
  const order = (above: number) => {
    const pose = posed(at(RISER, 0), { ...BEGIN, above });
    return stillOf(RISER, { at: pose.at }, pose.aim, pose.turns).filter(({ top }) => top !== '');
  };

  it('paints what is nearer last: the carried part seen from above, the base seen from below', () => {
    const parts = (above: number) =>
      order(above)
        .map(({ role }) => role)
        .filter((r, i, all) => r !== all[i - 1]);
    const upwards = parts(30);
    expect(upwards.indexOf('base')).toBeLessThan(upwards.indexOf('turned'));
    expect(upwards.at(-1)).toBe('carried');
    expect(parts(-30).at(-1)).toBe('base');
    expect(parts(-30)).toEqual([...upwards].reverse());
  });

  it('shows from below the lower end of each step, where it shows the upper one from above', () => {
    const middles = (above: number) => order(above).map(({ top }) => middleOf(top));
    const [above, below] = [middles(30), middles(-30).reverse()];
    // Both on the picture, y down: an end that is lower on the part lies lower on the picture.
    above.forEach((y, i) => {
      expect(below[i]).toBeGreaterThan(y);
    });
  });
});

/** Of a path, the mean height of its points. */
const middleOf = (path: string): number => {
  const ys = [...path.matchAll(/-?[\d.]+[ ,](-?[\d.]+)/g)].map(([, y]) => Number(y));
  return ys.reduce((a, b) => a + b, 0) / ys.length;
};

describe('labels in a column', () => {
  it('never come closer than they may, keep their order, and move no more than they must', () => {
    const { uniform: random } = seeded(11);
    for (let i = 0; i < 200; i++) {
      const wanted = Array.from({ length: 1 + Math.floor(random() * 5) }, () => random() * 500);
      const sizes = wanted.map(() => 30 + random() * 60);
      const placed = spread(wanted, sizes, 20, 500);
      const order = wanted
        .map((y, k) => ({ y, at: placed[k] as number, half: (sizes[k] as number) / 2 }))
        .sort((p, q) => p.y - q.y);
      order.forEach(({ at, half }, k) => {
        const above = order[k - 1];
        expect(at - half).toBeGreaterThan((above ? above.at + above.half : 20) - 1e-9);
        expect(at + half).toBeLessThan(500 + 1e-9);
      });
    }
    expect(spread([100, 300], [60, 90], 20, 500)).toEqual([100, 300]);
  });
});

/** Nine numbers a triangle. */
const cornersOf = ({ facets: { positions, index } }: Body): Float64Array =>
  Float64Array.from(
    { length: 3 * index.length },
    (_, i) => positions[3 * (index[Math.floor(i / 3)] as number) + (i % 3)] as number,
  );

const volumeOf = (body: Body): number => {
  const positions = cornersOf(body);
  let sum = 0;
  const p = (i: number) => positions[i] as number;
  for (let i = 0; i < positions.length; i += 9)
    sum +=
      p(i) * (p(i + 4) * p(i + 8) - p(i + 5) * p(i + 7)) -
      p(i + 1) * (p(i + 3) * p(i + 8) - p(i + 5) * p(i + 6)) +
      p(i + 2) * (p(i + 3) * p(i + 7) - p(i + 4) * p(i + 6));
  return sum / 6;
};

describe.each(Object.entries(ALL))('the bodies of the %s', (_, a) => {
  const bodies = bodiesOf(a);
  it('are the solids of its parts, whole: no triangle that matters is left out', () => {
    const crests = crestsOf(a);
    for (const part of partsOf(a)) {
      const body = bodies.find((b) => b.name === part.role) as Body;
      expect(volumeOf(body)).toBeCloseTo(meshVolume(meshOf(part, { crests: crests[part.role] })), 1);
    }
  });

  it('are closed and seen from outside: faces add up to nothing, and every body has a volume', () => {
    for (const body of bodies) {
      const positions = cornersOf(body);
      const sum = [0, 0, 0];
      let area = 0;
      for (let i = 0; i < positions.length; i += 9) {
        const p = (k: number) => positions[i + k] as number;
        const [u, v] = [
          [p(3) - p(0), p(4) - p(1), p(5) - p(2)],
          [p(6) - p(0), p(7) - p(1), p(8) - p(2)],
        ] as [number[], number[]];
        const n = [0, 1, 2].map(
          (k) =>
            (u[(k + 1) % 3] as number) * (v[(k + 2) % 3] as number) -
            (u[(k + 2) % 3] as number) * (v[(k + 1) % 3] as number),
        );
        area += Math.hypot(...n);
        n.forEach((x, k) => {
          sum[k] = (sum[k] as number) + x;
        });
      }
      expect(Math.hypot(...sum) / area).toBeLessThan(1e-5);
      expect(volumeOf(body)).toBeGreaterThan(0);
    }
  });

  it('have no corner without a normal, and stay within what a slow machine draws', () => {
    let worst = 0;
    for (const { facets } of bodies)
      for (let i = 0; i < facets.normals.length; i += 3)
        worst = Math.max(worst, Math.abs(Math.hypot(...facets.normals.subarray(i, i + 3)) - 1));
    expect(worst).toBeLessThan(1e-4);
    expect(bodies.reduce((sum, b) => sum + b.facets.index.length / 3, 0)).toBeLessThan(100_000);
    // A corner that triangles share is worked once a frame: there are hardly more corners than triangles.
    const corners = bodies.reduce((sum, b) => sum + b.facets.positions.length / 3, 0);
    expect(corners).toBeLessThan(bodies.reduce((sum, b) => sum + b.facets.index.length / 3, 0) * 1.3);
    expect(bodies.length).toBeLessThan(20);
  });

  it('have the silhouette of the section', () => {
    const crests = crestsOf(a);
    for (const part of partsOf(a)) {
      const body = bodies.find((b) => b.name === part.role) as Body;
      const outlines = sectionOf(part, 0, { crests: crests[part.role] });
      const positions = cornersOf(body);
      const slices = 40;
      for (let i = 0; i < slices; i++) {
        const z = (heightOf(part) * (i + 0.5)) / slices;
        // Farthest right at this height: of the net over all its triangles that reach it, of the section over its edges.
        let net = 0;
        for (let k = 0; k < positions.length; k += 9)
          for (let e = 0; e < 3; e++) {
            const [p, q] = [k + 3 * e, k + 3 * ((e + 1) % 3)];
            net = Math.max(net, across(positions[p], positions[p + 2], positions[q], positions[q + 2], z));
          }
        let cut = 0;
        for (const outline of outlines)
          outline.forEach(([x, y], j) => {
            const [x2, y2] = outline[(j + 1) % outline.length] as readonly [number, number];
            cut = Math.max(cut, across(x, y, x2, y2, z));
          });
        // Seen from the side a hexagon shows its corners, and a ridge leans over its groove by a few hundredths.
        const prism = part.outer.find((s) => z > s.from && z < s.to)?.shape === 'round' ? 1 : 2 / Math.sqrt(3);
        expect(net).toBeGreaterThan(cut - 0.03);
        expect(net).toBeLessThan(cut * (prism === 1 ? 1 : Math.SQRT2) + 0.06);
      }
    }
  });
});

/** x where a line crosses a height; 0 where it does not. */
const across = (x1 = 0, z1 = 0, x2 = 0, z2 = 0, z: number): number =>
  (z1 - z) * (z2 - z) > 0 || z1 === z2 ? 0 : x1 + ((x2 - x1) * (z - z1)) / (z2 - z1);

describe('flanks that carry', () => {
  const G = 9.80665e-3;
  it('under a load on the tip both are pressed, by the load and the weights above them', () => {
    const { force, flank } = carryingOf(FOOT, 0, 20);
    expect(force.C).toBeCloseTo(20 + G * massOf(FOOT.carried ?? FOOT.turned), 9);
    expect(force.A).toBeCloseTo(force.C + G * massOf(FOOT.turned), 9);
    expect(flank).toEqual({ A: 'pressed', C: 'pressed' });
  });

  it('springs between base and carried part press both, by what is left of them after n turns', () => {
    // 12 N at n = 0, and 0.6 N/mm times −87.5 µm a turn.
    const { force } = carryingOf(RISER, 1, 0);
    expect(force.C).toBeCloseTo(12 - 0.6 * 0.0875 + G * massOf(RISER.carried ?? RISER.turned), 9);
  });

  it('a pull at the tip turns the flanks over, and a plain screw has but one', () => {
    expect(carryingOf(FOOT, 0, -50).flank).toEqual({ A: 'pulled', C: 'pulled' });
    expect(carryingOf(PLAIN, 0, 5).flank).toEqual({ A: 'pressed', C: undefined });
  });

  it.each([20, -50])(
    'a push from the side lifts each at what the balance of moments gives, and tips it later, under %d N',
    (load) => {
      const now = standing(FOOT, 0);
      const carrying = carryingOf(FOOT, 0, load);
      // Pitch diameters of ISO 724 and ASME B1.1, mm. The cap is a nut on its screw, the stud a screw in its nut.
      for (const [name, d2, top, slope] of [
        ['A', 9.026, 20, -1],
        ['C', 8.494, now.at.carried + now.engaged.C, 1],
      ] as const) {
        const [F, l] = [Math.abs(carrying.force[name]), now.engaged[name]];
        const y = now.height - top + l / 2;
        const lifts = (F * l) / (Math.sqrt(3) * (2 * l + 12 * Math.abs(y + (slope * Math.sqrt(3) * d2) / 2)));
        const tips = (F * (d2 / 2 + l / (2 * Math.sqrt(3)))) / y;
        const after = (push: number) => asideOf(FOOT, now, carrying, push, name);
        expect([0.999 * lifts, 1.001 * lifts, 0.999 * tips, 1.001 * tips].map(after)).toEqual([
          'all round',
          'lifted',
          'lifted',
          'tipped',
        ]);
      }
      // Nothing presses a thread without a load on it.
      expect(asideOf(PLAIN, standing(PLAIN, 0), carryingOf(PLAIN, 0, 5), 1, 'C')).toBeUndefined();
    },
  );

  it('are lit over just the length that is engaged, and on facing sides of the two parts', () => {
    for (const a of Object.values(ALL))
      for (const n of [a.anticlockwise.n / 2, 0, a.clockwise.n / 2]) {
        const s = at(a, n, 20);
        const pose = posed(s, BEGIN);
        const [lower, upper] = [litOf(s, pose, 'base').A, litOf(s, pose, 'turned').A];
        expect(lower.to - lower.from).toBeCloseTo(s.standing.engaged.A, 9);
        expect(upper.from).toBeCloseTo(lower.from, 9);
        // Pressed together: the upper part rests with a side that looks down on one that looks up.
        expect([upper.side, lower.side]).toEqual([-1, 1]);
      }
  });
});

describe('putting it together', () => {
  it('begins with the parts apart and ends as it stands, with the counts of the order of work between', () => {
    for (const a of Object.values(ALL)) {
      const steps = stepsOf(a);
      const start = standing(a, 0);
      const last = heldAfter(a, steps, steps.length);
      expect(last.at.turned).toBeCloseTo(start.at.turned, 9);
      if (a.carried) expect(last.at.carried).toBeCloseTo(start.at.carried, 9);
      for (const turns of Object.values(last.turns)) expect(turns).toBeCloseTo(0, 9);
      const first = heldAfter(a, steps, 0);
      expect(first.at.turned).toBeGreaterThan(start.at.turned + start.engaged.A);
      expect([first.locked, first.marked, first.sprung]).toEqual([false, false, false]);
    }
  });

  it('screws A home clockwise for a right-hand thread, and backs it out by the turns of its mark', () => {
    const steps = stepsOf(FOOT);
    const home = steps.findIndex((s) => s.do === 'home' && s.joint === 'A') + 1;
    const out = steps.findIndex((s) => s.do === 'back' && s.joint === 'A') + 1;
    // Home is clockwise of where it is left, and deeper by as many leads.
    const [at, then] = [heldAfter(FOOT, steps, home), heldAfter(FOOT, steps, out)];
    expect(at.turns.turned - then.turns.turned).toBeCloseTo(FOOT.A.mark, 9);
    expect(then.at.turned - at.at.turned).toBeCloseTo(FOOT.A.mark * FOOT.A.thread.L, 9);
  });

  it('keeps screw and nut in mesh: the turned part rises by its lead for each turn out', () => {
    const left = read(
      'base = tapped block M10x1.5 LH, 20 mm | turned = stud M10x1.5 LH 20 mm, M8x1.25 20 mm | carried = cap M8x1.25, thread 20 mm',
    );
    const steps = stepsOf(left);
    const home = steps.findIndex((s) => s.do === 'home' && s.joint === 'A') + 1;
    // A left-hand thread goes home anticlockwise.
    expect(heldAfter(left, steps, home).turns.turned).toBeCloseTo(-left.A.mark, 9);
  });
});

describe('the line drawing', () => {
  const GUIDED = read(
    'base = coupling nut 3/8-16 UNC, 28.575 mm | turned = adapter 3/8-16 UNC external 15 mm, M10x1.5 internal 15 mm blind, body 18 mm, hexagon 17 mm | carried = socket screw M10x1.5, thread 20 mm, head 10 mm | lock = key at 22 mm, clearance 0.1 mm | springs = 3 at 17 mm, 12 N, 0.6 N/mm',
  );
  it('has every spring, stretched from hold to hold, from the step on in which they are put in', () => {
    const still = (sprung: boolean) => {
      const pose = posed(at(GUIDED, 0), BEGIN);
      return stillOf(GUIDED, { at: pose.at }, pose.aim, pose.turns, { guided: false, sprung });
    };
    const wires = still(true).filter(({ shape }) => shape === '');
    expect(wires).toHaveLength(3);
    expect(still(true)).toHaveLength(still(false).length + 3);
    const pose = posed(at(GUIDED, 0), BEGIN);
    const ends = springEnds(GUIDED, { at: pose.at });
    if (!ends) throw new Error('no springs');
    for (const { lines } of wires) {
      expect(lines).not.toMatch(/NaN|Infinity/);
      const ys = pointsOf(lines).map(([, y]) => y);
      const long = (ends.head - ends.foot) * pose.aim.scale * Math.cos((BEGIN.above * Math.PI) / 180);
      // The coil tilts with the view: it is a little longer than its length from hold to hold.
      expect(Math.max(...ys) - Math.min(...ys)).toBeGreaterThan(0.9 * long);
      expect(Math.max(...ys) - Math.min(...ys)).toBeLessThan(1.4 * long);
    }
  });
  it('has the plate that holds a post beside a base which does not reach under it', () => {
    const pose = posed(at(GUIDED, 0), BEGIN);
    const none = stillOf(GUIDED, { at: pose.at }, pose.aim, pose.turns, { guided: false, sprung: false });
    const all = stillOf(GUIDED, { at: pose.at }, pose.aim, pose.turns, { guided: true, sprung: false });
    // Plate, post, arm, and the post again over the arm.
    expect(all).toHaveLength(none.length + 4);
  });
  it('paints what can be seen and nothing that stands inside another part', () => {
    const s = at(FOOT, 0);
    const pose = posed(s, BEGIN);
    const pieces = stillOf(FOOT, { at: pose.at }, pose.aim, pose.turns);
    // Of the stud only the hexagon and what of its threads stands free.
    expect(pieces.map((p) => p.role)).toContain('turned');
    for (const { shape } of pieces) expect(shape).not.toMatch(/NaN|Infinity/);
    const apart = posed(s, { ...BEGIN, apart: 1 });
    expect(stillOf(FOOT, { at: apart.at }, apart.aim, apart.turns).length).toBeGreaterThan(pieces.length - 1);
  });
});
