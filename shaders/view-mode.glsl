// 0: color; 1: the gray of the same luminance; 2: lightness in ten steps. After src/view/view-mode.ts.
uniform int viewMode;

/**
 * Linear sRGB as the mode shows it: Y of IEC 61966-2-1 as a neutral; or CIE 1976 L* in steps of ten, each shown by its middle.
 */
vec3 inViewMode(vec3 color) {
  if (viewMode == 0) return color;
  float y = clamp(dot(color, vec3(0.2126, 0.7152, 0.0722)), 0.0, 1.0);
  if (viewMode == 1) return vec3(y);
  float lightness = y > 216.0 / 24389.0 ? 116.0 * pow(y, 1.0 / 3.0) - 16.0 : 24389.0 / 27.0 * y;
  float middle = 10.0 * min(floor(lightness / 10.0), 9.0) + 5.0;
  float root = (middle + 16.0) / 116.0;
  return vec3(middle > 8.0 ? root * root * root : middle * 27.0 / 24389.0);
}
