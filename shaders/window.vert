precision highp float;

uniform mat4 viewMatrix;
uniform mat4 projectionMatrix;

in vec3 position;
in vec3 normal;
// Tangent of the elevation of a wall across the way; 0 = none.
in float wallTangent;
out vec3 vWorld;
out vec3 vNormal;
out float vWallTangent;

void main() {
  vWorld = position;
  vNormal = normal;
  vWallTangent = wallTangent;
  gl_Position = projectionMatrix * viewMatrix * vec4(position, 1.0);
}
