precision highp float;

// Interior surfaces and props: everything that has a finish. Coordinates are metres, z up.
uniform mat4 viewMatrix;
uniform mat4 projectionMatrix;

in vec3 position;

#ifdef PROP
in vec4 daylight;
in vec4 lamps;
in vec3 indirect;
out vec4 vDaylight;
out vec4 vLamps;
out vec3 vIndirect;
#else
in vec2 directUv;
in vec2 nodeUv;
// Centroid: a multisampled edge pixel must not read past the rectangle's own block of the atlas.
centroid out vec2 vDirectUv;
centroid out vec2 vNodeUv;
#endif

#ifdef PATTERNED
uniform vec2 patternPeriod;
in vec2 patternMetres;
out vec2 vPattern;
#endif

#if SHEEN > 0
// w: 0 on faces too narrow to mirror anything (gaps, grooves, ledges), else 1.
in vec4 normal;
out vec4 vNormal;
out vec3 vWorld;
#endif

void main() {
#ifdef PROP
  vDaylight = daylight;
  vLamps = lamps;
  vIndirect = indirect;
#else
  vDirectUv = directUv;
  vNodeUv = nodeUv;
#endif
#ifdef PATTERNED
  vPattern = patternMetres / patternPeriod;
#endif
#if SHEEN > 0
  vNormal = normal;
  vWorld = position;
#endif
  gl_Position = projectionMatrix * viewMatrix * vec4(position, 1.0);
}
