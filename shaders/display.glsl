// 1: encode for the display; 0: keep linear (when the room is captured for its own reflections).
uniform int encode;

vec3 clippedAtConstantChromaticity(vec3 color) {
  vec3 positive = max(color, 0.0);
  return positive / max(1.0, max(positive.r, max(positive.g, positive.b)));
}

/** sRGB transfer function, IEC 61966-2-1. */
vec3 srgbEncoded(vec3 linear) {
  return mix(12.92 * linear, 1.055 * pow(linear, vec3(1.0 / 2.4)) - 0.055, step(0.0031308, linear));
}

vec4 displayed(vec3 color) {
  if (encode == 0) return vec4(min(max(color, 0.0), 60000.0), 1.0);
  return vec4(srgbEncoded(clippedAtConstantChromaticity(color)), 1.0);
}
