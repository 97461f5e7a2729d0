// DISPLAY: 0 = for what polished faces mirror: square roots of linear light; 1 = for the screen, in color; 2 = for the screen in any
// view mode and with marks. A shader each, because a processor that draws runs both sides of every branch.
#if DISPLAY == 2
// 1: places brighter than the screen's white are hatched.
uniform int marksClipped;
// Where the output lies in the whole picture, and one CSS pixel of it; device pixels.
uniform vec3 hatchPlace;

#include "view-mode"
#endif
#include "encode"

// A lamp face is a hundred times brighter than white paper; mirrored whole it would glitter on every edge.
const float BRIGHTEST_MIRRORED = 12.0;

/** What is brighter than display white clips at constant chromaticity and fades to white: half way two stops over. */
vec3 burntOut(vec3 color) {
  vec3 positive = max(color, 0.0);
  float over = max(positive.r, max(positive.g, positive.b)) - 1.0;
  if (over <= 0.0) return positive;
  return mix(positive / (1.0 + over), vec3(1.0), over / (over + 3.0));
}

float brightest(vec3 color) {
  return max(color.r, max(color.g, color.b));
}

#if DISPLAY == 2
/**
 * Black and white stripes over what the screen cannot show as bright as it is. Sparse ones over what the picture darkens so that
 * color and pattern stay; close ones over what still fades to white.
 */
vec3 hatched(vec3 encoded, bool fades) {
  vec2 place = (gl_FragCoord.xy + hatchPlace.xy) / hatchPlace.z;
  float along = mod(place.x + place.y, fades ? 6.0 : 15.0);
  if (along < 2.0) return vec3(0.0);
  return along < 4.0 ? vec3(1.0) : encoded;
}
#endif

/** `exposed`: the color before the picture darkens its place; `color`: after. */
vec4 displayed(vec3 color, vec3 exposed) {
#if DISPLAY == 0
  return vec4(sqrt(clamp(color / BRIGHTEST_MIRRORED, 0.0, 1.0)), 1.0);
#elif DISPLAY == 1
  return vec4(srgbEncoded(burntOut(color)), 1.0);
#else
  // A gray needs no fading: its one number clips.
  vec3 encoded = srgbEncoded(viewMode == 0 ? burntOut(color) : inViewMode(color));
  if (marksClipped == 1 && brightest(exposed) > 1.0) encoded = hatched(encoded, brightest(color) > 1.0);
  return vec4(encoded, 1.0);
#endif
}
