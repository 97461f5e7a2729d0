precision highp float;
precision highp samplerCube;

// What is seen through a pane: a CIE sky over level ground with a hazy line of roofs and trees between, or a wall across the way.
uniform vec3 zenith;
uniform vec3 ground;
uniform vec3 facing;
// ISO 15469: a, b of the gradation (z: 1 = the traditional overcast sky instead), c, d, e of the indicatrix.
uniform vec3 gradation;
uniform vec3 indicatrix;
uniform vec3 towardsSun;
// 1: the sun shines.
uniform float sunOn;
// Share of the light that blinds let through; it is in the colors already.
uniform float blind;
// An eye that looks out adapts to that: the picture shows it darker by one factor (src/kitchen/study/local-exposure.ts).
uniform float darkenedBy;
// 1: the wall across the way is of bricks.
uniform float bricks;

in vec3 vWorld;
in vec3 vNormal;
in float vWallTangent;
flat in float vRoller;
out vec4 fragColor;

#include "display"
#if SHEEN > 0
#include "mirror"
#else
uniform vec3 cameraPosition;
#endif

/** A skyline of elevation (rad) by azimuth: three octaves of rounded steps, so that roofs and crowns both come to mind. */
float skylineElevation(float azimuth) {
  float crowns = 0.5 + 0.5 * sin(azimuth * 11.0 + 2.0 * sin(azimuth * 4.0));
  float fine = abs(sin(azimuth * 47.0 + 1.3 * sin(azimuth * 13.0)));
  float roofs = smoothstep(0.35, 0.4, abs(fract(azimuth * 2.3) - 0.5));
  return 0.02 + 0.045 * crowns + 0.008 * fine + 0.05 * roofs;
}

float phi(float sine) {
  if (gradation.z > 0.5) return (1.0 + 2.0 * sine) / 3.0;
  return 1.0 + gradation.x * exp(gradation.y / max(sine, 0.01));
}

float f(float cosine) {
  float chi = acos(clamp(cosine, -1.0, 1.0));
  return 1.0 + indicatrix.x * (exp(indicatrix.y * chi) - exp(indicatrix.y * 1.5707963)) + indicatrix.z * cosine * cosine;
}

/** The sky in a direction above the horizon. */
vec3 skyColor(vec3 direction) {
  float sine = max(direction.z, 0.0);
  return zenith * (phi(sine) / phi(1.0)) * (f(dot(direction, towardsSun)) / f(towardsSun.z));
}

/** Bricks laid in courses on a wall some 6 m away, as a factor of mean 1; even for a material without courses. */
float coursed(vec3 direction, float straight) {
  if (bricks < 0.5) return 1.0;
  vec2 along = vec2(dot(direction, vec3(-vNormal.y, vNormal.x, 0.0)), direction.z) / straight / vec2(0.036, 0.0125);
  along.x += 0.5 * mod(floor(along.y), 2.0);
  vec2 width = fwidth(along) + 1e-4;
  vec2 edge = abs(fract(along) - 0.5);
  float joint = max(smoothstep(0.5 - 0.04 - width.x, 0.5 - 0.04 + width.x, edge.x),
                    smoothstep(0.5 - 0.11 - width.y, 0.5 - 0.11 + width.y, edge.y));
  float tone = fract(sin(dot(floor(along), vec2(12.9898, 78.233))) * 43758.5453);
  // Joints fade where they are finer than a pixel.
  float seen = clamp(0.7 - max(width.x, width.y), 0.0, 0.5) * 2.0;
  return 1.0 + seen * (0.7 * (joint - 0.28) + 0.5 * (tone - 0.5) * (1.0 - joint));
}

vec3 outdoors(vec3 direction) {
  float sine = direction.z;
  vec3 level = normalize(vec3(direction.xy, 0.02));
  vec3 horizon = skyColor(level);
  vec3 sky = skyColor(direction);
  if (sunOn > 0.5) {
    // The disc, 16 minutes of arc, and the glare round it that an eye adds.
    float cosine = dot(direction, towardsSun);
    sky += vec3(60.0 * darkenedBy) * (smoothstep(0.99998, 0.99999, cosine) + 0.06 * smoothstep(0.9985, 1.0, cosine));
  }
  float skyline = skylineElevation(atan(direction.y, direction.x));
  vec3 land = mix(horizon, ground, smoothstep(0.0, -0.35, sine) * 0.6 + 0.4);
  // Trees and houses: about as bright as the ground, with some haze before them.
  vec3 silhouette = mix(horizon, ground * 0.7, 0.88 - 1.2 * max(sine, 0.0));
  vec3 below = mix(land, silhouette, smoothstep(-0.012, 0.0, sine));
  vec3 open = mix(below, sky, smoothstep(skyline - 0.006, skyline + 0.006, sine));
  if (vWallTangent <= 0.0) return open;
  // The wall runs on to both sides and stands on the ground; its foot lies as far below the horizon as an eye stands above it.
  float straight = max(dot(direction, -vNormal), 1e-3);
  float top = vWallTangent * straight;
  vec3 wall = mix(ground, facing * coursed(direction, straight), smoothstep(-0.32, -0.28, sine / straight));
  return mix(wall, sky, smoothstep(top - 0.004, top + 0.004, sine));
}

void main() {
  vec3 direction = normalize(vWorld - cameraPosition);
  vec3 color = outdoors(direction);
  if (vRoller > 0.5) color /= max(blind, 0.02);
#if DISPLAY > 0
  else if (blind < 0.999) {
    // Slats at 25 mm let this share of what is outside be seen; from behind they are lit by the sky.
    float slat = smoothstep(blind - 0.06, blind + 0.02, fract(vWorld.z / 0.025));
    vec3 behind = 0.25 * skyColor(normalize(vec3(-vNormal.xy, 0.5)));
    color = mix(color, behind, slat) / max(blind, 0.02);
  }
#endif
  vec3 exposed = color;
#if DISPLAY > 0
  color /= darkenedBy;
#if SHEEN > 0
  vec3 normal = normalize(vNormal);
  float cosine = max(dot(normal, -direction), 0.0);
  // Two faces of clear glass.
  float reflectance = min(1.0, 2.0 * (0.04 + 0.96 * pow(1.0 - cosine, 5.0)));
  color = color * (1.0 - reflectance) + reflectance * mirroredLight(vWorld, reflect(direction, normal), normal, 0.0);
#endif
#endif
  fragColor = displayed(color, exposed);
}
