precision highp float;

// Black dashes over white: seen on any finish, and without a hue.
uniform float halfWidthPx;

in vec3 vRibbon;
out vec4 fragColor;

void main() {
  vec2 px = vRibbon.xy / vRibbon.z;
  float dash = step(mod(px.x, halfWidthPx * 7.0), halfWidthPx * 4.0);
  float core = 1.0 - smoothstep(0.35 * halfWidthPx, 0.35 * halfWidthPx + 1.0, abs(px.y));
  fragColor = vec4(vec3(1.0 - dash * core), 1.0);
}
