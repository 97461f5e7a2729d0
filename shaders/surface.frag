precision highp float;
precision highp sampler2D;
precision highp sampler2DArray;
precision highp samplerCube;

// Colour of a finish in place: sum over components of weight * gain * (indirect + sum over groups direct * group colour).
// All inputs are exposed linear sRGB or lx; no light or colour logic beyond this sum, display encoding and mirrored light.
uniform vec3 groupColors[16];

#ifdef PROP
in vec4 vDirect;
in vec3 vIndirect;
#else
uniform sampler2D directAtlas;
uniform sampler2DArray nodeAtlas;
centroid in vec2 vDirectUv;
centroid in vec2 vNodeUv;
#endif

#ifdef PATTERNED
uniform sampler2D pattern;
in vec2 vPattern;
#endif

#if SHEEN > 0
uniform int sheenOn;
uniform float cone;
uniform float roughness;
uniform float strength;
uniform vec3 mirrorTint;
in vec4 vNormal;
in vec3 vWorld;
#endif

out vec4 fragColor;

#include "display"
#if SHEEN > 0
#include "mirror"
#endif

vec3 litComponent(int component, vec4 direct) {
#ifdef PROP
  vec3 color = vIndirect;
#else
  vec3 color = textureLod(nodeAtlas, vec3(vNodeUv, float(component)), 0.0).rgb;
#endif
  color += groupColors[component * 4] * direct.r;
#if GROUPS > 1
  color += groupColors[component * 4 + 1] * direct.g;
#endif
#if GROUPS > 2
  color += groupColors[component * 4 + 2] * direct.b;
#endif
#if GROUPS > 3
  color += groupColors[component * 4 + 3] * direct.a;
#endif
  return color;
}

void main() {
#ifdef PROP
  vec4 direct = vDirect;
#else
  vec4 direct = textureLod(directAtlas, vDirectUv, 0.0);
#endif

#ifdef PATTERNED
  vec4 weights = texture(pattern, vPattern);
  float base = 1.0 - weights.r;
#if COMPONENTS > 2
  base -= weights.g;
#endif
#if COMPONENTS > 3
  base -= weights.b;
#endif
  vec3 color = base * litComponent(0, direct);
  // Most pixels of a veined or jointed face show one component: the others cost nothing there.
  if (weights.r > 0.0) color += weights.r * litComponent(1, direct);
#if COMPONENTS > 2
  if (weights.g > 0.0) color += weights.g * litComponent(2, direct);
#endif
#if COMPONENTS > 3
  if (weights.b > 0.0) color += weights.b * litComponent(3, direct);
#endif
  // Byte 128 is gain 1.
  color *= weights.a * (255.0 / 128.0);
#else
  vec3 color = litComponent(0, direct);
#endif

#if SHEEN > 0
  if (sheenOn == 1 && vNormal.w > 0.5) {
    vec3 normal = normalize(vNormal.xyz);
    vec3 toEye = normalize(cameraPosition - vWorld);
    float cosine = max(dot(normal, toEye), 0.0);
#ifdef PROP
    // A curved face mirrors more of the room in one pixel.
    float width = cone + 0.5 * length(fwidth(vNormal.xyz));
#else
    float width = cone;
#endif
    vec3 mirrored = mirroredLight(vWorld, reflect(-toEye, normal), width);
    float grazing = 1.0 - cosine;
    float rise = grazing * grazing * grazing * grazing * grazing;
#if SHEEN == 2
    // Metal: mirrors in its own colour; the diffuse part stands for brushing and wear.
    color = 0.35 * color + 0.65 * mirrored * (mirrorTint + (1.0 - mirrorTint) * rise);
#else
    // Schlick's approximation at F0 = 0.04 (index 1.5); a rough face does not reach a full mirror at grazing view.
    float smoothness = (1.0 - roughness) * (1.0 - roughness);
    color += strength * mirrored * (0.04 + max(smoothness - 0.04, 0.0) * rise);
#endif
  }
#endif

  fragColor = displayed(color);
}
