// The room as captured from its centre, corrected for parallax by the room's box.
uniform samplerCube mirrorCube;
uniform vec3 mirrorCenter;
uniform vec3 roomMin;
uniform vec3 roomMax;
uniform vec3 cameraPosition;

// The largest polished planes in sight have pictures of their own: normal and offset of each, 0 where there is none.
uniform vec4 planes[2];
uniform sampler2D planePicture0;
uniform sampler2D planePicture1;
uniform vec4 planeArea;
uniform float planeTexels;

// Texels of one cube face per radian, near the middle of the face.
const float TEXELS_PER_RADIAN = 128.0 / 1.5708;
const float COARSEST_LEVEL = 6.0;

/** Linear light captured in a direction from the centre of the room. */
vec3 mirrorColor(vec3 direction, float level) {
  vec3 root = textureLod(mirrorCube, direction, level).rgb;
  return BRIGHTEST_MIRRORED * root * root;
}

/** How far from `place` the room ends in a direction. */
float reachOf(vec3 place, vec3 direction) {
  vec3 far = max((roomMin - place) / direction, (roomMax - place) / direction);
  return max(min(far.x, min(far.y, far.z)), 0.02);
}

bool liesOn(vec4 plane, vec3 place, vec3 normal) {
  return dot(plane.xyz, normal) > 0.999 && abs(dot(plane.xyz, place) - plane.w) < 0.002;
}

vec3 planeColor(sampler2D picture, float level) {
  vec3 root = textureLod(picture, (gl_FragCoord.xy - planeArea.xy) * planeArea.zw, level).rgb;
  return BRIGHTEST_MIRRORED * root * root;
}

/** Light from `direction` seen at `place`, averaged over a cone of half-angle `cone` (rad) by choice of mip level. */
vec3 cubeLight(vec3 place, vec3 direction, float cone) {
  vec3 safe = direction + vec3(1e-5);
  float reach = reachOf(place, safe);
  vec3 fromCenter = place + safe * reach - mirrorCenter;
  // The same spot of the wall subtends another angle from the centre of the room than from here.
  float texels = 2.0 * cone * reach / length(fromCenter) * TEXELS_PER_RADIAN;
  float level = clamp(log2(max(texels, 1.0)), 0.0, COARSEST_LEVEL);
  return mirrorColor(fromCenter, level);
}

/** The same, on a plane with a picture of its own from that. */
vec3 mirroredLight(vec3 place, vec3 direction, vec3 normal, float cone) {
  bool onFirst = liesOn(planes[0], place, normal);
  if (!onFirst && !liesOn(planes[1], place, normal)) return cubeLight(place, direction, cone);
  float reach = reachOf(place, direction + vec3(1e-5));
  // What is mirrored stands behind the plane: the cone is that much narrower from the eye.
  float texels = 2.0 * cone * reach / (reach + distance(cameraPosition, place)) * planeTexels;
  // These pictures have one sample a texel: a little blur takes the steps off their edges.
  float level = clamp(log2(max(texels, 1.6)), 0.0, COARSEST_LEVEL);
  return onFirst ? planeColor(planePicture0, level) : planeColor(planePicture1, level);
}
