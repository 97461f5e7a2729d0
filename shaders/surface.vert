precision highp float;

// Interior surfaces and props: everything that has a finish. Coordinates are metres, z up.
uniform mat4 viewMatrix;
uniform mat4 projectionMatrix;

in vec3 position;

#ifdef PROP
in vec4 daylight;
in vec4 lamps;
// Of the finish's components.
in vec3 indirect0;
out vec4 vDaylight;
out vec4 vLamps;
out vec3 vIndirect0;
#if COMPONENTS > 1
in vec3 indirect1;
out vec3 vIndirect1;
#endif
#if COMPONENTS > 2
in vec3 indirect2;
out vec3 vIndirect2;
#endif
#if COMPONENTS > 3
in vec3 indirect3;
out vec3 vIndirect3;
#endif
#else
in vec2 directUv;
in vec2 nodeUv;
// Centroid: a multisampled edge pixel must not read past the rectangle's own block of the atlas.
centroid out vec2 vDirectUv;
centroid out vec2 vNodeUv;
#endif

#ifdef PATTERNED
// Cosine and sine of the pattern's turn.
uniform vec2 patternTurn;
uniform vec2 pieceShifts[16];
in vec2 patternMetres;
// Which of the surface's pieces, counted from 0.
in float piece;
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
  vIndirect0 = indirect0;
#if COMPONENTS > 1
  vIndirect1 = indirect1;
#endif
#if COMPONENTS > 2
  vIndirect2 = indirect2;
#endif
#if COMPONENTS > 3
  vIndirect3 = indirect3;
#endif
#else
  vDirectUv = directUv;
  vNodeUv = nodeUv;
#endif
#ifdef PATTERNED
  vec2 place = patternMetres + pieceShifts[int(piece + 0.5) % 16];
  vPattern = vec2(patternTurn.x * place.x + patternTurn.y * place.y, patternTurn.x * place.y - patternTurn.y * place.x);
#endif
#if SHEEN > 0
  vNormal = normal;
  vWorld = position;
#endif
  gl_Position = projectionMatrix * viewMatrix * vec4(position, 1.0);
}
