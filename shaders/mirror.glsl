// The room as captured from its centre, corrected for parallax by the room's box.
uniform samplerCube mirrorCube;
uniform vec3 mirrorCenter;
uniform vec3 roomMin;
uniform vec3 roomMax;
uniform vec3 cameraPosition;

// Texels of one cube face per radian, near the middle of the face.
const float TEXELS_PER_RADIAN = 128.0 / 1.5708;
const float COARSEST_LEVEL = 6.0;

/** Linear light captured in a direction from the centre of the room. */
vec3 mirrorColor(vec3 direction, float level) {
  vec3 root = textureLod(mirrorCube, direction, level).rgb;
  return BRIGHTEST_MIRRORED * root * root;
}

/** Light from `direction` seen at `place`, averaged over a cone of half-angle `cone` (rad) by choice of mip level. */
vec3 mirroredLight(vec3 place, vec3 direction, float cone) {
  vec3 safe = direction + vec3(1e-5);
  vec3 far = max((roomMin - place) / safe, (roomMax - place) / safe);
  float reach = max(min(far.x, min(far.y, far.z)), 0.02);
  vec3 fromCenter = place + safe * reach - mirrorCenter;
  // The same spot of the wall subtends another angle from the centre of the room than from here.
  float texels = 2.0 * cone * reach / length(fromCenter) * TEXELS_PER_RADIAN;
  float level = clamp(log2(max(texels, 1.0)), 0.0, COARSEST_LEVEL);
  return mirrorColor(fromCenter, level);
}
