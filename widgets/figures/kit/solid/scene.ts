/**
 * Draws the bodies by WebGL 2 into a canvas, once a call: nothing runs while nothing moves. The library (ogl) holds context, programs,
 * buffers and targets; where a body stands is one matrix.
 */
import { Geometry, Mesh, type OGLRenderingContext, Program, Renderer, RenderTarget } from 'ogl';
import type { Faceted } from './facets.ts';

import { BODY_FRAGMENT, BODY_VERTEX, LINES_FRAGMENT, LINES_VERTEX } from './shaders.ts';
import type { Net, Shot } from './shot.ts';
import { directionsOf, type Frame } from './view.ts';

/** A canvas of the page, or one that was handed to a worker. */
export type Surface = HTMLCanvasElement | OffscreenCanvas;

export interface Scene {
  readonly render: (shot: Shot) => void;
  readonly setBodies: (net: Net, bodies: readonly Faceted[]) => void;
  /** Comes back when all is drawn that was asked for: for a worker, which has nothing else to do. */
  readonly finish: () => void;
}

/** Depth is written in this many mm either side of the middle. */
const DEEP = 300;
/** Undefined where the browser has no WebGL 2. */
export const makeScene = (
  canvas: Surface,
  { width, height }: Pick<Frame, 'width' | 'height'>,
  onLost: () => void,
  onBack: () => void,
): Scene | undefined => {
  // Asked first, since the library falls back to an older WebGL that lacks what the programs need.
  const how = { alpha: true, antialias: false, depth: false, premultipliedAlpha: true };
  if (!canvas.getContext('webgl2', how)) return undefined;
  // The library names only the canvas of a page.
  const renderer = new Renderer({ ...how, canvas: canvas as HTMLCanvasElement });
  // The library gives it a size on the page, which is that of its place.
  if ('style' in canvas) canvas.removeAttribute('style');
  const { gl } = renderer;
  const parts = partsOf(gl);
  const nets: Record<Net, readonly Mesh[]> = { fine: [], coarse: [] };
  let target: RenderTarget | undefined;
  canvas.addEventListener('webglcontextlost', (event) => {
    event.preventDefault();
    onLost();
  });
  canvas.addEventListener('webglcontextrestored', onBack);
  return {
    setBodies: (net, bodies) => {
      for (const { geometry } of nets[net]) geometry.remove();
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
      nets[net] = bodies.map(
        (facets) => new Mesh(gl, { program: parts.body, geometry: geometryOf(facets), frustumCulled: false }),
      );
    },
    render: (shot) => {
      const sharpness = shot.unit * shot.fineness;
      const [w, h] = [width, height].map((x) => Math.max(1, Math.round(x * sharpness))) as [number, number];
      if (canvas.width !== w || canvas.height !== h || !target) {
        renderer.width = canvas.width = w;
        renderer.height = canvas.height = h;
        if (target) target.setSize(w, h);
        else target = new RenderTarget(gl, { width: w, height: h, color: 2, minFilter: gl.NEAREST });
      }
      paint(renderer, parts, nets[shot.net], target, shot, { w, h });
    },
    finish: () => gl.finish(),
  };
};

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
  meshes: readonly Mesh[],
  target: RenderTarget,
  { aim, cut, ink, accent, unit, fineness, bodies }: Shot,
  { w, h }: { w: number; h: number },
) => {
  const { gl } = renderer;
  const { right, up, near } = directionsOf(aim);
  const put = (values: Readonly<Record<string, unknown>>, into = program) => {
    for (const [name, value] of Object.entries(values)) (into.uniforms[name] as { value: unknown }).value = value;
  };
  const open = (cut * Math.PI) / 180;
  put({
    right,
    up,
    near,
    frame: [(2 * aim.scale) / aim.frame.width, (2 * aim.scale) / aim.frame.height, 1 / DEEP, aim.middle],
    shift: [(2 * aim.frame.axis) / aim.frame.width - 1, 0],
    scale: aim.scale * unit,
    soft: 0.5 / fineness,
    depthScale: 1 / (2 * DEEP) / 0.5,
    accent,
    second: [Math.sin(open), Math.cos(open)],
  });
  renderer.bindFramebuffer(target);
  renderer.setViewport(w, h);
  renderer.setDepthMask(true);
  renderer.enable(gl.DEPTH_TEST);
  gl.clearColor(0, 0, 0, 0);
  gl.clear(gl.COLOR_BUFFER_BIT | gl.DEPTH_BUFFER_BIT);
  for (const { of, place, colour, cut: opened, scribed, litA, litC, id, hatching } of bodies) {
    put({
      place,
      colour,
      hatch: ink,
      wedge: [0, -1, opened ? open : 0],
      scribed,
      litA,
      litC,
      id,
      hatching,
    });
    meshes[of]?.draw();
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
      ink,
    },
    lines,
  );
  gl.clear(gl.COLOR_BUFFER_BIT);
  lines.use();
  sheet.draw({ program: lines });
};
