precision highp float;

precision highp samplerCube;

// A lamp face: its own light, straight on or aside, and what it returns of the room's.
uniform int sheenOn;
flat in vec3 vColor;
flat in float vNarrowing;
in vec3 vNormal;
in vec3 vWorld;
out vec4 fragColor;

#include "display"
#include "mirror"

// The light model takes lamp faces as black; switched off, a real one is a pale pane.
const float OPAL_REFLECTANCE = 0.6;

void main() {
  float cosine = max(dot(normalize(cameraPosition - vWorld), vNormal), 1e-3);
  vec3 color = vColor * pow(cosine, vNarrowing);
  if (sheenOn == 1) color += OPAL_REFLECTANCE * mirrorColor(vNormal, COARSEST_LEVEL);
  fragColor = displayed(color, color);
}
