precision highp float;

precision highp samplerCube;

// A lamp face: its own light, straight on or aside, and what it returns of the room's.
// Of a round shade: the even part of its light, and how fast the rest falls off (src/engine/photometry/shade-falloff.ts).
uniform vec2 shadeFalloff;
flat in vec3 vColor;
flat in float vNarrowing;
// Middle and radius of a shade's opening, m; 0 = a flat face.
flat in vec3 vOpening;
in vec3 vNormal;
in vec3 vWorld;
out vec4 fragColor;

#include "display"
#if SHEEN > 0
#include "mirror"
#else
uniform vec3 cameraPosition;
#endif

// The light model takes lamp faces as black; switched off, a real one is a pale pane.
const float OPAL_REFLECTANCE = 0.6;

void main() {
  float cosine = max(dot(normalize(cameraPosition - vWorld), vNormal), 1e-3);
  vec3 mean = vColor * pow(cosine, vNarrowing);
  vec3 color = mean;
  if (vOpening.z > 0.0) {
    vec2 from = (vWorld.xy - vOpening.xy) / vOpening.z;
    float share = 1.0 + shadeFalloff.y * dot(from, from);
    color *= shadeFalloff.x + (1.0 - shadeFalloff.x) * (1.0 + shadeFalloff.y) / (share * share);
  }
#if SHEEN > 0
  color += OPAL_REFLECTANCE * mirrorColor(vNormal, COARSEST_LEVEL);
#endif
  // As an eye that looks at it: a lamp brighter than display white shows as that in the mean, so that its form stays to be seen.
  vec3 exposed = color;
#if DISPLAY > 0
  color /= max(1.0, brightest(mean));
#endif
  fragColor = displayed(color, exposed);
}
