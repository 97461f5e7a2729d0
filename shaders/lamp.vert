precision highp float;

uniform mat4 viewMatrix;
uniform mat4 projectionMatrix;
uniform vec3 lampColors[LAMPS];

in vec3 position;
in vec3 normal;
in float lamp;
in float narrowing;
in float openingX;
in float openingY;
in float openingRadius;
flat out vec3 vColor;
flat out float vNarrowing;
flat out vec3 vOpening;
out vec3 vNormal;
out vec3 vWorld;

void main() {
  vNormal = normal;
  vWorld = position;
  vColor = lampColors[int(lamp + 0.5)];
  vNarrowing = narrowing;
  vOpening = vec3(openingX, openingY, openingRadius);
  gl_Position = projectionMatrix * viewMatrix * vec4(position, 1.0);
}
