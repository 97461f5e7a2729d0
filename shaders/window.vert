precision highp float;

uniform mat4 viewMatrix;
uniform mat4 projectionMatrix;

in vec3 position;
in vec3 normal;
// Tangent of the elevation of a wall across the way; 0 = none.
in float wallTangent;
// 1: a roller blind hangs before it, which is drawn on its own.
in float roller;
out vec3 vWorld;
out vec3 vNormal;
out float vWallTangent;
flat out float vRoller;

void main() {
  vWorld = position;
  vNormal = normal;
  vWallTangent = wallTangent;
  vRoller = roller;
  gl_Position = projectionMatrix * viewMatrix * vec4(position, 1.0);
}
