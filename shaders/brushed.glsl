// What a brushed metal mirrors, in eight lookups. The twin of src/engine/sheen/brush-taps.ts.
// Widths of the slopes along the brush lines and across them.
uniform vec2 brushWidths;

// Slopes differ from line to line, so that what lines mirror differs more than their reflectance. Our judgment; the mean stays.
const float STREAKS = 3.0;

float streaked(float gain) {
  return 1.0 + STREAKS * (gain - 1.0);
}

/** Along the brush lines: where the pattern's t stays as it is. */
vec3 brushLine(vec3 place, vec2 onPattern, vec3 normal) {
  vec3 line = dFdx(place) * dFdy(onPattern.y) - dFdy(place) * dFdx(onPattern.y);
  line -= dot(line, normal) * normal;
  // Faces without a place on the pattern are brushed upright.
  if (dot(line, line) <= 0.0) line = abs(normal.z) < 0.9 ? vec3(0.0, 0.0, 1.0) : vec3(1.0, 0.0, 0.0);
  return normalize(line);
}

/** Smith's Lambda towards a direction by its part along the lines, across and along the normal. */
float brushHides(vec3 local) {
  vec2 wide = brushWidths * local.xy / local.z;
  return 0.5 * (sqrt(1.0 + dot(wide, wide)) - 1.0);
}

vec3 brushedLight(vec3 place, vec3 toEye, vec3 normal, vec3 line) {
  vec3 across = cross(normal, line);
  vec3 eye = vec3(dot(toEye, line), dot(toEye, across), max(dot(toEye, normal), 1e-3));
  float wide = brushWidths.y;
  vec2 turned = normalize(vec2(eye.z, wide * eye.y));
  float part = 0.125 * (1.0 + turned.x);
  float s = (turned.y > 0.0 ? -1.0 : -turned.x) - 0.5 * part;
  float eyeSees = 1.0 + brushHides(eye);
  vec3 sum = vec3(0.0);
  float whole = 0.0;
  for (int i = 0; i < 8; i++) {
    s += part;
    float c = sqrt(1.0 - s * s);
    float cosine = c * turned.x - s * turned.y;
    float slope = wide * (s * turned.x + c * turned.y) / cosine;
    float length2 = 1.0 + slope * slope;
    float twice = 2.0 * (eye.z + slope * eye.y) / length2;
    vec3 local = vec3(-eye.x, twice * slope - eye.y, twice - eye.z);
    if (local.z <= 0.0) continue;
    float spread = max(2.0 * brushWidths.x / cosine, wide * part / (c * cosine * cosine * length2));
    float weight = eyeSees / (eyeSees + brushHides(local));
    sum += weight * cubeLight(place, local.x * line + local.y * across + local.z * normal, spread);
    whole += weight;
  }
  return whole > 0.0 ? sum / whole : vec3(0.0);
}
