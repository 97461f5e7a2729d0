precision highp float;

// 1 where a surface is to be outlined, 0 where another hides it.
uniform float marked;
out vec4 fragColor;

void main() {
  fragColor = vec4(marked, 0.0, 0.0, 1.0);
}
