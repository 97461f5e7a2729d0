precision highp float;

// A segment widened to a ribbon of constant width on screen.
uniform mat4 viewMatrix;
uniform mat4 projectionMatrix;
uniform vec3 cameraPosition;
uniform vec2 viewportPx;
uniform float halfWidthPx;

in vec3 start;
in vec3 end;
// Of the two faces that meet at a fold; 0 on a border.
in vec3 firstNormal;
in vec3 secondNormal;
in vec2 corner;

// Along and across the ribbon in pixels, times w, to be divided again: perspective must not bend the dashes.
out vec3 vRibbon;

const float NEAR = 0.03;

/** Moves towards the eye, so that the ribbon lies over its own face and keeps its place on screen. */
vec4 projected(vec3 place) {
  return projectionMatrix * viewMatrix * vec4(mix(place, cameraPosition, 0.004), 1.0);
}

/** A fold is contour where one of its faces is seen and the other is not. */
bool isContour() {
  vec3 toEye = cameraPosition - start;
  bool isBorder = dot(firstNormal, firstNormal) < 0.5;
  return isBorder || (dot(firstNormal, toEye) > 0.0) != (dot(secondNormal, toEye) > 0.0);
}

void main() {
  vec4 a = projected(start);
  vec4 b = projected(end);
  if ((a.w < NEAR && b.w < NEAR) || !isContour()) {
    vRibbon = vec3(0.0, 0.0, 1.0);
    gl_Position = vec4(2.0, 2.0, 2.0, 1.0);
    return;
  }
  if (a.w < NEAR) a = mix(a, b, (NEAR - a.w) / (b.w - a.w));
  if (b.w < NEAR) b = mix(b, a, (NEAR - b.w) / (a.w - b.w));
  vec2 aPx = 0.5 * viewportPx * a.xy / a.w;
  vec2 bPx = 0.5 * viewportPx * b.xy / b.w;
  float lengthPx = max(distance(aPx, bPx), 1e-4);
  vec2 along = (bPx - aPx) / lengthPx;
  vec2 across = vec2(-along.y, along.x);
  vec4 place = corner.x < 0.5 ? a : b;
  vec2 shiftPx = across * corner.y * halfWidthPx + along * (corner.x < 0.5 ? -1.0 : 1.0) * halfWidthPx;
  place.xy += shiftPx * 2.0 / viewportPx * place.w;
  float alongPx = corner.x < 0.5 ? -halfWidthPx : lengthPx + halfWidthPx;
  vRibbon = vec3(alongPx, corner.y * halfWidthPx, 1.0) * place.w;
  gl_Position = place;
}
