precision highp float;
precision highp sampler2D;

// A line round what the mask marks: black dashes on white, seen on any finish and without a hue. Gaps in the mask narrower
// than twice the inner radius (between doors, in grooves) are closed, so that only the outer contour is drawn.
uniform sampler2D mask;
/** Left, bottom, right and top of this half of the picture, pixels. */
uniform vec4 area;
/** Where the output lies in the whole picture, pixels. */
uniform vec2 place;
uniform float pixelRatio;

out vec4 fragColor;

const int DIRECTIONS = 16;
const float TURN = 6.2831853;
/** Four levels up, one texel sums up 16 x 16 pixels. */
const float COARSE_LEVEL = 4.0;

bool isMarked(vec2 pixel) {
  return texelFetch(mask, ivec2(clamp(pixel, area.xy, area.zw - 1.0)), 0).r > 0.5;
}

bool marksWithin(float radius) {
  for (int i = 0; i < DIRECTIONS; i++) {
    float angle = TURN * float(i) / float(DIRECTIONS);
    if (isMarked(gl_FragCoord.xy + radius * pixelRatio * vec2(cos(angle), sin(angle)))) return true;
  }
  return false;
}

void main() {
  // Far from any contour, which is nearly everywhere, one look is enough.
  float around = textureLod(mask, gl_FragCoord.xy / vec2(textureSize(mask, 0)), COARSE_LEVEL).r;
  if (around <= 0.0 || around >= 1.0) discard;
  if (isMarked(gl_FragCoord.xy) || marksWithin(1.0) || marksWithin(2.0) || !marksWithin(6.0)) discard;
  bool inCore = !marksWithin(3.0) && marksWithin(5.0);
  bool inDash = mod(gl_FragCoord.x + place.x + gl_FragCoord.y + place.y, 16.0 * pixelRatio) < 9.0 * pixelRatio;
  fragColor = vec4(vec3(inCore && inDash ? 0.0 : 1.0), 1.0);
}
