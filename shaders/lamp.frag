precision highp float;

precision highp samplerCube;

// An opal lamp face: its own light, and what it returns of the room's.
uniform int sheenOn;
flat in vec3 vColor;
in vec3 vNormal;
out vec4 fragColor;

#include "display"
#include "mirror"

// The light model takes lamp faces as black; switched off, a real one is a pale pane.
const float OPAL_REFLECTANCE = 0.6;

void main() {
  vec3 color = vColor;
  if (sheenOn == 1) color += OPAL_REFLECTANCE * mirrorColor(vNormal, COARSEST_LEVEL);
  fragColor = displayed(color);
}
