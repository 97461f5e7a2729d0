precision highp float;
precision highp samplerCube;

// The cloth of a roller blind: daylight that comes through it, and what it returns of the room's.
flat in vec3 vColor;
in vec3 vNormal;
in vec3 vWorld;
in float vHem;
out vec4 fragColor;

#include "display"
#if SHEEN > 0
#include "mirror"
#endif

const float CLOTH_REFLECTANCE = 0.6;
// Its bottom bar, wound round with cloth, m.
const float BAR = 0.022;

/** Threads 2 mm apart, level and upright, as a factor of mean 1; even where they are finer than a pixel. */
float woven() {
  vec2 at = vec2(vWorld.x + vWorld.y, vWorld.z) / 0.002;
  vec2 wave = sin(6.2831853 * at) * clamp(1.0 - 1.5 * fwidth(at), 0.0, 1.0);
  return 1.0 + 0.04 * (wave.x + wave.y);
}

// As an eye that looks at it, like a lamp, but a little below display white, so that one sees cloth.
const float BRIGHTEST_SHOWN = 0.8;

void main() {
#if SHEEN > 0
  vec3 room = CLOTH_REFLECTANCE * mirrorColor(vNormal, COARSEST_LEVEL);
#else
  vec3 room = vec3(0.0);
#endif
  vec3 color = (vHem < BAR ? 0.2 : woven()) * vColor + room;
  vec3 exposed = color;
#if DISPLAY > 0
  color *= BRIGHTEST_SHOWN / max(BRIGHTEST_SHOWN, brightest(vColor + room));
#endif
  fragColor = displayed(color, exposed);
}
