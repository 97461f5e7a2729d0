precision highp float;
precision highp sampler2D;
precision highp sampler2DArray;
precision highp samplerCube;

// Colour of a finish in place: sum over components of weight * gain * (indirect + sum over groups direct * group colour).
// All inputs are exposed linear sRGB or lx; no light or colour logic beyond this sum, display encoding and mirrored light.
uniform vec3 groupColors[32];
// Daylight and lamps: four light groups each; a layer without light is not read.
// A perfect white per lx of each group.
uniform vec3 groupWhites[8];
uniform int daylightOn;
uniform int lampsOn;

#ifdef PROP
in vec4 vDaylight;
in vec4 vLamps;
in vec3 vIndirect0;
#if COMPONENTS > 1
in vec3 vIndirect1;
#endif
#if COMPONENTS > 2
in vec3 vIndirect2;
#endif
#if COMPONENTS > 3
in vec3 vIndirect3;
#endif
#else
uniform sampler2D daylightAtlas;
uniform sampler2D lampsAtlas;
uniform sampler2DArray nodeAtlas;
centroid in vec2 vDirectUv;
centroid in vec2 vNodeUv;
#endif

#ifdef PATTERNED
uniform sampler2D pattern;
uniform vec2 patternPeriod;
// On the pattern as it is turned, m.
in vec2 vPattern;
#ifdef PIECES
#include "pieces"
#endif
#endif

#if SHEEN > 0
uniform float cone;
in vec4 vNormal;
in vec3 vWorld;
#endif

out vec4 fragColor;

#include "display"
#if SHEEN > 0
#include "mirror"
#include "sheen"
#endif
#ifdef BRUSHED
#include "brushed"
#endif

#if SHEEN > 0
bool mirrors() {
  return vNormal.w > 0.5;
}
#endif

vec3 layerColor(int first, vec4 direct) {
  return groupColors[first] * direct.r + groupColors[first + 1] * direct.g + groupColors[first + 2] * direct.b +
         groupColors[first + 3] * direct.a;
}

vec3 whiteOf(int first, vec4 direct) {
  return groupWhites[first] * direct.r + groupWhites[first + 1] * direct.g + groupWhites[first + 2] * direct.b +
         groupWhites[first + 3] * direct.a;
}

vec3 indirectOf(int component) {
#ifdef PROP
#if COMPONENTS > 1
  if (component == 1) return vIndirect1;
#endif
#if COMPONENTS > 2
  if (component == 2) return vIndirect2;
#endif
#if COMPONENTS > 3
  if (component == 3) return vIndirect3;
#endif
  return vIndirect0;
#else
  return textureLod(nodeAtlas, vec3(vNodeUv, float(component)), 0.0).rgb;
#endif
}

vec3 litComponent(int component, vec4 daylight, vec4 lamps) {
  vec3 color = indirectOf(component);
  if (daylightOn == 1) color += layerColor(component * 8, daylight);
  if (lampsOn == 1) color += layerColor(component * 8 + 4, lamps);
#if SHEEN == 1
  if (mirrors()) color *= bodyGain[component];
#endif
  return color;
}

float localExposure(vec4 daylight, vec4 lamps) {
  vec3 white = vec3(0.0);
  if (daylightOn == 1) white += whiteOf(0, daylight);
  if (lampsOn == 1) white += whiteOf(4, lamps);
  float over = max(white.r, max(white.g, white.b));
  return over > 1.0 ? pow(over, DARKENING_POWER) : 1.0;
}

void main() {
  float gain = 1.0;
  float joint = 0.0;
#ifdef PROP
  vec4 daylight = vDaylight;
  vec4 lamps = vLamps;
#else
  vec4 daylight = daylightOn == 1 ? textureLod(daylightAtlas, vDirectUv, 0.0) : vec4(0.0);
  vec4 lamps = lampsOn == 1 ? textureLod(lampsAtlas, vDirectUv, 0.0) : vec4(0.0);
#endif

#ifdef PATTERNED
#ifdef PIECES
  vec4 weights = piecesAt(pattern, vPattern, patternPeriod);
#else
  vec4 weights = texture(pattern, vPattern / patternPeriod);
#endif
  float base = 1.0 - weights.r;
#if COMPONENTS > 2
  base -= weights.g;
#endif
#if COMPONENTS > 3
  base -= weights.b;
#endif
  vec3 color = base * litComponent(0, daylight, lamps);
  // Most pixels of a veined or jointed face show one component: the others cost nothing there.
  if (weights.r > 0.0) color += weights.r * litComponent(1, daylight, lamps);
#if COMPONENTS > 2
  if (weights.g > 0.0) color += weights.g * litComponent(2, daylight, lamps);
#endif
#if COMPONENTS > 3
  if (weights.b > 0.0) color += weights.b * litComponent(3, daylight, lamps);
#endif
  // Byte 128 is gain 1.
  gain = weights.a * (255.0 / 128.0);
  color *= gain;
#if SHEEN > 0
  joint = dot(weights.rgb, jointMask);
#endif
#else
  vec3 color = litComponent(0, daylight, lamps);
#endif

#ifdef BRUSHED
  vec3 line = brushLine(vWorld, vPattern, vNormal.xyz);
#endif
#if SHEEN > 0
  if (mirrors()) {
    vec3 normal = normalize(vNormal.xyz);
    vec3 toEye = normalize(cameraPosition - vWorld);
#ifdef PROP
    // A curved face mirrors more of the room in one pixel; a bar of a few pixels all of it, or lamps in it would string beads along it.
    float turn = length(fwidth(vNormal.xyz));
    float width = cone + turn * (0.5 + 2.0 * smoothstep(0.2, 0.6, turn));
#else
    float width = cone;
#endif
#ifdef BRUSHED
    vec3 mirrored = brushedLight(vWorld, toEye, normal, line);
    gain = streaked(gain);
#elif !defined(ON_PLANES)
    vec3 mirrored = cubeLight(vWorld, reflect(-toEye, normal), width);
#else
    vec3 mirrored = mirroredLight(vWorld, reflect(-toEye, normal), normal, width);
#endif
    vec3 shiny = bodyAndMirror(color, mirrored, max(dot(normal, toEye), 0.0), gain);
    color = mix(shiny, color, joint);
  }
#endif

  // Where a white would burn out, the place is shown darker (see local-exposure.ts).
  vec3 exposed = color;
#if DISPLAY > 0
  color /= localExposure(daylight, lamps);
#endif
  fragColor = displayed(color, exposed);
}
