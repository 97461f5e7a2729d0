precision highp float;

uniform mat4 viewMatrix;
uniform mat4 projectionMatrix;
uniform vec3 lampColors[LAMPS];

in vec3 position;
in vec3 normal;
in float lamp;
in float narrowing;
flat out vec3 vColor;
flat out float vNarrowing;
out vec3 vNormal;
out vec3 vWorld;

void main() {
  vNormal = normal;
  vWorld = position;
  vColor = lampColors[int(lamp + 0.5)];
  vNarrowing = narrowing;
  gl_Position = projectionMatrix * viewMatrix * vec4(position, 1.0);
}
