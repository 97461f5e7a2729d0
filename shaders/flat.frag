precision highp float;

// One color, encoded for the display already; the view mode may turn it to gray.
uniform vec3 color;
out vec4 fragColor;

#include "encode"
#include "view-mode"

void main() {
  vec3 linear = mix(color / 12.92, pow((color + 0.055) / 1.055, vec3(2.4)), step(0.04045, color));
  fragColor = vec4(viewMode == 0 ? color : srgbEncoded(inViewMode(linear)), 1.0);
}
