precision highp float;
precision highp sampler2D;

// A card held against a surface: linear sRGB in the light of the place, worked out by the engine.
uniform sampler2D paint;

in vec2 vUv;
out vec4 fragColor;

#include "display"

void main() {
  vec3 color = texture(paint, vUv).rgb;
  fragColor = displayed(color, color);
}
