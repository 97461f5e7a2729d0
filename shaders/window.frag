precision highp float;
precision highp samplerCube;

// What is seen through a pane: a CIE overcast sky over level ground, with a hazy line of roofs and trees between.
uniform vec3 zenith;
uniform vec3 ground;
uniform int sheenOn;

in vec3 vWorld;
in vec3 vNormal;
out vec4 fragColor;

#include "display"
#include "mirror"

/** A skyline of elevation (rad) by azimuth: three octaves of rounded steps, so that roofs and crowns both come to mind. */
float skylineElevation(float azimuth) {
  float crowns = 0.5 + 0.5 * sin(azimuth * 11.0 + 2.0 * sin(azimuth * 4.0));
  float fine = abs(sin(azimuth * 47.0 + 1.3 * sin(azimuth * 13.0)));
  float roofs = smoothstep(0.35, 0.4, abs(fract(azimuth * 2.3) - 0.5));
  return 0.02 + 0.045 * crowns + 0.008 * fine + 0.05 * roofs;
}

/** Outdoors is far brighter than a room: values above white keep their order here instead of burning out. */
vec3 shouldered(vec3 color) {
  float peak = max(color.r, max(color.g, color.b));
  if (peak <= 0.0) return vec3(0.0);
  float shown = peak <= 1.0 ? 0.72 * peak : 0.72 + 0.28 * min(1.0, log(peak) / log(80.0));
  return color * (shown / peak);
}

vec3 outdoors(vec3 direction) {
  float sine = direction.z;
  // CIE overcast sky (ISO 15469, Moon and Spencer): L = Lz (1 + 2 sin(elevation)) / 3.
  vec3 sky = zenith * ((1.0 + 2.0 * max(sine, 0.0)) / 3.0);
  vec3 horizon = zenith / 3.0;
  float skyline = skylineElevation(atan(direction.y, direction.x));
  vec3 land = mix(horizon, ground, smoothstep(0.0, -0.35, sine) * 0.75 + 0.25);
  vec3 silhouette = mix(horizon, ground, 0.62 - 2.2 * max(sine, 0.0));
  vec3 below = mix(land, silhouette, smoothstep(-0.012, 0.0, sine));
  return mix(below, sky, smoothstep(skyline - 0.006, skyline + 0.006, sine));
}

void main() {
  vec3 direction = normalize(vWorld - cameraPosition);
  vec3 color = outdoors(direction);
  if (encode == 1) {
    color = shouldered(color);
    if (sheenOn == 1) {
      vec3 normal = normalize(vNormal);
      float cosine = max(dot(normal, -direction), 0.0);
      // Two faces of clear glass.
      float reflectance = min(1.0, 2.0 * (0.04 + 0.96 * pow(1.0 - cosine, 5.0)));
      color = color * (1.0 - reflectance) + reflectance * mirroredLight(vWorld, reflect(direction, normal), 0.0);
    }
  }
  fragColor = displayed(color);
}
