precision highp float;

flat in vec3 vColor;
out vec4 fragColor;

#include "display"

void main() {
  fragColor = displayed(vColor);
}
