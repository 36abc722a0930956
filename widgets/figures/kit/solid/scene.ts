/**
 * Draws the bodies by WebGL 2 into a canvas, once a call: nothing runs while nothing moves. The library (ogl) holds context, programs,
 * buffers and targets; where a body stands is one matrix.
 */
import { Geometry, Mesh, type OGLRenderingContext, Program, Renderer, RenderTarget } from 'ogl';
import type { Role } from '../../../assembly/adjuster/part.ts';
import type { Body } from './bodies.ts';
import type { Faceted } from './facets.ts';
import { BODY_FRAGMENT, BODY_VERTEX, LINES_FRAGMENT, LINES_VERTEX } from './shaders.ts';
import { SCRIBED } from './still.ts';
import { type Aim, directionsOf } from './view.ts';

export type Colour = readonly [number, number, number];

export interface Colours {
  readonly parts: Readonly<Record<Role, Colour>>;
  readonly ink: Colour;
  readonly accent: Colour;
}

/** A flank that carries: +1 where it looks up, −1 where it looks down, 0 for none; between two heights. */
export interface Lit {
  readonly side: number;
  readonly from: number;
  readonly to: number;
  /** 0 all round, 1 not on the right of the picture, 2 there the other flank. */
  readonly aside?: number;
}

export interface Stand {
  readonly lift: number;
  readonly turns: number;
  readonly stretch?: number;
  /** Where its axis stands, mm. */
  readonly x?: number;
  readonly y?: number;
  /** Rise along x and along y. */
  readonly tilt?: readonly [number, number];
}

export interface View {
  readonly aim: Aim;
  /** Opening of the cut, degrees: 0 is whole, 180 the front half gone. */
  readonly cut: number;
  /** Height over the bottom of the base, mm, and turns clockwise. */
  readonly place: (body: Body) => Stand;
  /** Whether the scribed line is on the parts yet. */
  readonly marked: boolean;
  /** Which of its flanks carry. */
  readonly lit: (body: Body) => { readonly A: Lit; readonly C: Lit };
  readonly shown: (body: Body) => boolean;
}

/** Two nets of the same bodies. */
export type Net = 'fine' | 'coarse';

export interface Fineness {
  readonly net: Net;
  /** CSS pixels to a unit of the picture, and pixels of the buffer to a CSS pixel. */
  readonly unit: number;
  readonly fineness: number;
}

export interface Scene {
  readonly canvas: HTMLCanvasElement;
  readonly render: (view: View, colours: Colours, how: Fineness) => void;
  readonly setBodies: (net: Net, bodies: readonly Body[]) => void;
}

/** Depth is written in this many mm either side of the middle. */
const DEEP = 300;
const BODY_IDS = ['base', 'turned', 'carried', 'tip', 'post', 'arm', 'spring', 'plate'] as const;

const columnMajor = ({ lift, turns, stretch = 1, x = 0, y = 0, tilt = [0, 0] }: Stand): number[] => {
  // Clockwise seen from above.
  const [s, c] = [Math.sin(-2 * Math.PI * turns), Math.cos(-2 * Math.PI * turns)];
  return [c, s, tilt[0], 0, -s, c, tilt[1], 0, 0, 0, stretch, 0, x, y, lift, 1];
};

/** Undefined where the browser has no WebGL 2. */
export const makeScene = (
  size: { readonly width: number; readonly height: number },
  onLost: () => void,
  onBack: () => void,
): Scene | undefined => {
  const canvas = document.createElement('canvas');
  // Asked first, since the library falls back to an older WebGL that lacks what the programs need.
  if (!canvas.getContext('webgl2', { alpha: true, antialias: false, depth: false, premultipliedAlpha: true }))
    return undefined;
  const renderer = new Renderer({ canvas, alpha: true, depth: false, antialias: false, premultipliedAlpha: true });
  // The library gives it a size on the page, which is that of its place.
  canvas.removeAttribute('style');
  const { gl } = renderer;
  const parts = partsOf(gl);
  const nets: Record<Net, readonly Drawn[]> = { fine: [], coarse: [] };
  let target: RenderTarget | undefined;
  canvas.addEventListener('webglcontextlost', (event) => {
    event.preventDefault();
    onLost();
  });
  canvas.addEventListener('webglcontextrestored', onBack);
  return {
    canvas,
    setBodies: (net, bodies) => {
      for (const { mesh } of nets[net]) mesh.geometry.remove();
      // Several of one body share its net.
      const made = new Map<Faceted, Geometry>();
      const geometryOf = (facets: Faceted): Geometry => {
        const geometry =
          made.get(facets) ??
          new Geometry(gl, {
            position: { size: 3, data: facets.positions },
            normal: { size: 3, data: facets.normals },
            thread: { size: 1, data: facets.threads },
            index: { data: facets.index },
          });
        made.set(facets, geometry);
        return geometry;
      };
      nets[net] = bodies.map((body) => ({
        body,
        mesh: new Mesh(gl, { program: parts.body, geometry: geometryOf(body.facets), frustumCulled: false }),
      }));
    },
    render: (view, colours, { net, unit, fineness }) => {
      const sharpness = unit * fineness;
      const [w, h] = [size.width, size.height].map((x) => Math.max(1, Math.round(x * sharpness))) as [number, number];
      if (canvas.width !== w || canvas.height !== h || !target) {
        renderer.width = canvas.width = w;
        renderer.height = canvas.height = h;
        if (target) target.setSize(w, h);
        else target = new RenderTarget(gl, { width: w, height: h, color: 2, minFilter: gl.NEAREST });
      }
      paint(renderer, parts, nets[net], target, view, colours, { w, h, unit, fineness });
    },
  };
};

interface Drawn {
  readonly body: Body;
  readonly mesh: Mesh;
}

const partsOf = (gl: OGLRenderingContext) => ({
  body: new Program(gl, {
    vertex: BODY_VERTEX,
    fragment: BODY_FRAGMENT,
    cullFace: false,
    uniforms: Object.fromEntries(
      [
        'place',
        'right',
        'up',
        'near',
        'frame',
        'shift',
        'colour',
        'hatch',
        'accent',
        'wedge',
        'second',
        'litA',
        'litC',
        'id',
        'hatching',
        'scale',
        'soft',
        'depthScale',
        'scribed',
      ].map((name) => [name, { value: 0 as unknown }]),
    ),
  }),
  lines: new Program(gl, {
    vertex: LINES_VERTEX,
    fragment: LINES_FRAGMENT,
    depthTest: false,
    depthWrite: false,
    cullFace: false,
    uniforms: Object.fromEntries(
      ['paint', 'what', 'pixel', 'fine', 'bold', 'ways', 'ink'].map((name) => [name, { value: 0 as unknown }]),
    ),
  }),
  sheet: new Geometry(gl, { position: { size: 2, data: new Float32Array([-1, -1, 3, -1, -1, 3]) } }),
});

const paint = (
  renderer: Renderer,
  { body: program, lines, sheet }: ReturnType<typeof partsOf>,
  meshes: readonly Drawn[],
  target: RenderTarget,
  view: View,
  colours: Colours,
  { w, h, unit, fineness }: { w: number; h: number; unit: number; fineness: number },
) => {
  const { gl } = renderer;
  const { aim } = view;
  const { right, up, near } = directionsOf(aim);
  const put = (values: Readonly<Record<string, unknown>>, into = program) => {
    for (const [name, value] of Object.entries(values)) (into.uniforms[name] as { value: unknown }).value = value;
  };
  const open = (view.cut * Math.PI) / 180;
  put({
    right,
    up,
    near,
    frame: [(2 * aim.scale) / aim.frame.width, (2 * aim.scale) / aim.frame.height, 1 / DEEP, aim.middle],
    shift: [(2 * aim.frame.axis) / aim.frame.width - 1, 0],
    scale: aim.scale * unit,
    soft: 0.5 / fineness,
    depthScale: 1 / (2 * DEEP) / 0.5,
    accent: colours.accent,
    second: [Math.sin(open), Math.cos(open)],
  });
  renderer.bindFramebuffer(target);
  renderer.setViewport(w, h);
  renderer.setDepthMask(true);
  renderer.enable(gl.DEPTH_TEST);
  gl.clearColor(0, 0, 0, 0);
  gl.clear(gl.COLOR_BUFFER_BIT | gl.DEPTH_BUFFER_BIT);
  for (const { body, mesh } of meshes) {
    if (!view.shown(body)) continue;
    const lit = view.lit(body);
    const onPart = body.name === body.with;
    const colour = body.name === 'post' || body.name === 'spring' ? colours.parts.base : colours.parts[body.with];
    put({
      place: columnMajor(view.place(body)),
      colour,
      hatch: colours.ink,
      wedge: [0, -1, body.cut ? open : 0],
      scribed:
        view.marked && body.name !== 'spring' && body.name !== 'plate'
          ? [Math.cos(SCRIBED), Math.sin(SCRIBED)]
          : [0, 0],
      litA: onPart ? [lit.A.side, lit.A.from, lit.A.to, lit.A.aside ?? 0] : [0, 0, 0, 0],
      litC: onPart ? [lit.C.side, lit.C.from, lit.C.to, lit.C.aside ?? 0] : [0, 0, 0, 0],
      id: BODY_IDS.indexOf(body.name) + BODY_IDS.length * (body.copy ?? 0),
      hatching: body.with === 'base' ? 1 : -1,
    });
    mesh.draw();
  }
  renderer.bindFramebuffer();
  renderer.setViewport(w, h);
  put(
    {
      paint: target.textures[0],
      what: target.textures[1],
      pixel: [1 / w, 1 / h],
      fine: Math.max(0.5, 0.45 * fineness),
      bold: Math.max(0.75, 0.9 * fineness),
      ways: fineness < 1.5 ? 2 : 4,
      ink: colours.ink,
    },
    lines,
  );
  gl.clear(gl.COLOR_BUFFER_BIT);
  lines.use();
  sheet.draw({ program: lines });
};
