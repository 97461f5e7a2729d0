// 1: encode for the display; 0: for the cube that polished faces mirror, square roots of linear light.
uniform int encode;

// A lamp face is a hundred times brighter than white paper; mirrored whole it would glitter on every edge.
const float BRIGHTEST_MIRRORED = 12.0;

/** What is brighter than display white clips at constant chromaticity and fades to white: half way two stops over. */
vec3 burntOut(vec3 color) {
  vec3 positive = max(color, 0.0);
  float over = max(positive.r, max(positive.g, positive.b)) - 1.0;
  if (over <= 0.0) return positive;
  return mix(positive / (1.0 + over), vec3(1.0), over / (over + 3.0));
}

/**
 * sRGB transfer function, IEC 61966-2-1, for 0-1. The power 1/2.4 is fitted by square roots to 0.012 of a code value,
 * which costs much less than pow where the graphics card is a processor.
 */
vec3 srgbEncoded(vec3 linear) {
  vec3 root2 = sqrt(linear);
  vec3 root4 = sqrt(root2);
  vec3 root8 = sqrt(root4);
  vec3 curve = 0.6423665 * root2 + 0.7121094 * root4 - 0.3368695 * root8 - 0.0175633 * linear;
  return mix(12.92 * linear, curve, step(0.0031308, linear));
}

vec4 displayed(vec3 color) {
  if (encode == 0) return vec4(sqrt(clamp(color / BRIGHTEST_MIRRORED, 0.0, 1.0)), 1.0);
  return vec4(srgbEncoded(burntOut(color)), 1.0);
}
