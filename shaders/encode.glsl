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
