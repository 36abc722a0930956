/**
 * The two programs of the solid. The first paints every body into three pictures: its colour, what it is (normal, body,
 * depth). The second draws lines where these change: thick round a body, thin where its surface turns. So outlines have one
 * width from every side, cut faces are outlined too, and nothing but the picture decides where a line is.
 *
 * A cut is a wedge about the axis, between two half planes. Bodies are closed, so where the far side of a wall is seen from inside, one looks through its
 * cut face: it is painted flat and hatched, in the plane of the cut.
 */

export const BODY_VERTEX = /* glsl */ `#version 300 es
in vec3 position;
in vec3 normal;
in float thread;
uniform mat4 place;
uniform vec3 right, up, near;
uniform vec4 frame; // scale x, scale y, scale of depth, middle
uniform vec2 shift;
out vec3 own, world, turned;
out vec3 ownNormal;
flat out float joint;
void main() {
  vec4 p = place * vec4(position, 1.0);
  own = position;
  ownNormal = normal;
  world = p.xyz;
  turned = mat3(place) * normal;
  joint = thread;
  vec3 q = p.xyz - vec3(0.0, 0.0, frame.w);
  // Where a screw and its nut touch, the far side of the nut is a hair nearer: it is seen through the face of its cut. Not told by
  // the fragment, which would then be painted before it is known to be hidden.
  float hair = dot(turned, near) < 0.0 ? 8e-4 : 0.0;
  gl_Position = vec4(dot(q, right) * frame.x + shift.x, dot(q, up) * frame.y + shift.y, -dot(q, near) * frame.z - hair, 1.0);
}`;

export const BODY_FRAGMENT = /* glsl */ `#version 300 es
precision highp float;
in vec3 own, world, turned;
in vec3 ownNormal;
flat in float joint;
uniform vec3 near, right, up;
uniform vec3 colour, hatch, accent;
uniform vec3 wedge; // first normal x, y of the two planes and the opening; 0 is no cut
uniform vec2 second;
uniform vec4 litA, litC; // side of the flank that carries, from, to; on the right of the picture 1 none, 2 the other
uniform float id, hatching, depthScale;
uniform float scale, soft; // CSS pixels to a mm; half a pixel of the picture in CSS pixels
uniform vec2 scribed;
layout(location = 0) out vec4 paint;
layout(location = 1) out vec4 what;

// In CSS pixels.
float band(float x, float period, float width) {
  float d = abs(fract(x / period) - 0.5) * period;
  return 1.0 - smoothstep(width * 0.5 - soft, width * 0.5 + soft, d);
}

void main() {
  bool isCut = wedge.z > 0.0;
  vec2 first = wedge.xy;
  float g1 = dot(first, world.xy), g2 = dot(second, world.xy);
  if (isCut && g1 > 0.0 && g2 > 0.0) discard;
  vec3 n = normalize(turned);
  vec3 c = colour;
  float cap = 0.0;
  float shade;
  if (isCut && !gl_FrontFacing) {
    // From here towards the reader until the wedge begins.
    float a1 = dot(first, near.xy), a2 = dot(second, near.xy);
    float s1 = g1 < 0.0 ? -g1 / a1 : 0.0, s2 = g2 < 0.0 ? -g2 / a2 : 0.0;
    bool byFirst = s1 >= s2;
    vec3 q = world + max(s1, s2) * near;
    vec2 m = byFirst ? first : second;
    n = vec3(m, 0.0);
    float along = dot(q.xy, vec2(-m.y, m.x));
    c = mix(colour, hatch, 0.85 * band((along + hatching * q.z) * 0.7071 * scale, 4.5, 0.9));
    cap = byFirst ? 1.0 : 2.0;
    shade = 1.0;
  } else {
    if (!gl_FrontFacing) n = -n;
    vec3 light = normalize(-0.55 * right + 0.62 * up + 0.6 * near);
    shade = 0.66 + 0.4 * max(dot(n, light), 0.0);
    vec4 lit = joint > 1.5 ? litC : litA;
    float side = lit.w < 0.5 || dot(world.xy, right.xy) < 0.0 ? lit.x : lit.w < 1.5 ? 0.0 : -lit.x;
    if (joint > 0.5 && side != 0.0 && ownNormal.z * side > 0.3 && world.z > lit.y && world.z < lit.z) {
      float turn = atan(own.y, own.x);
      c = mix(accent, vec3(1.0), 0.55 * step(0.5, fract(turn * 11.46)));
      shade = 1.0;
    }
    if (joint < 0.5 && dot(own.xy, scribed) > 0.0 && abs(dot(own.xy, vec2(-scribed.y, scribed.x))) < 0.9 / scale) {
      // Scratched through to bright metal on a dark part, marked on a light one.
      c = dot(colour, vec3(0.3, 0.6, 0.1)) > 0.5 ? accent : vec3(1.0, 0.98, 0.92);
      shade = 1.0;
    }
  }
  paint = vec4(c * shade, 1.0);
  what = vec4(n.xy * 0.5 + 0.5, (id * 3.0 + cap + 1.0) / 255.0, 0.5 + dot(world, near) * depthScale);
}`;

export const LINES_VERTEX = /* glsl */ `#version 300 es
in vec2 position;
out vec2 at;
void main() {
  at = position * 0.5 + 0.5;
  gl_Position = vec4(position, 0.0, 1.0);
}`;

export const LINES_FRAGMENT = /* glsl */ `#version 300 es
precision highp float;
in vec2 at;
uniform sampler2D paint, what;
uniform vec2 pixel; // one over the size of the picture
uniform float fine, bold; // half widths of lines, in pixels of it
uniform float ways; // 4 directions in which a line is looked for, 2 while it moves
uniform vec3 ink;
out vec4 shown;

vec4 look(vec2 d) { return texture(what, at + d * pixel); }
float differs(vec4 a, vec4 b) {
  return max(step(0.002, abs(a.z - b.z)), 0.0);
}
float turns(vec4 a, vec4 b) {
  vec2 d = a.xy - b.xy;
  return max(smoothstep(0.012, 0.05, dot(d, d)), step(0.02, abs(a.w - b.w)));
}

void main() {
  vec4 here = look(vec2(0.0));
  // Most of the picture is page.
  if (here.z + look(vec2(bold, 0.0)).z + look(vec2(-bold, 0.0)).z + look(vec2(0.0, bold)).z + look(vec2(0.0, -bold)).z == 0.0) {
    shown = vec4(0.0);
    return;
  }
  float thick = 0.0, thin = 0.0;
  for (int i = 0; i < 4; i++) {
    if (float(i) >= ways) break;
    vec2 d = i == 0 ? vec2(1.0, 0.0) : i == 1 ? vec2(0.0, 1.0) : i == 2 ? vec2(0.7071, 0.7071) : vec2(0.7071, -0.7071);
    thick = max(thick, max(differs(here, look(d * bold)), differs(here, look(-d * bold))));
    thin = max(thin, turns(look(d * fine), look(-d * fine)));
  }
  vec4 p = texture(paint, at);
  float line = max(thick, thin * 0.75 * step(0.001, here.z));
  float solid = max(p.a, thick);
  shown = vec4(mix(p.rgb, ink, line) * solid, solid);
}`;
