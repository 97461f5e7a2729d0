precision highp float;

uniform mat4 viewMatrix;
uniform mat4 projectionMatrix;
uniform vec3 lampColors[LAMPS];

in vec3 position;
in vec3 normal;
in float lamp;
flat out vec3 vColor;
out vec3 vNormal;

void main() {
  vNormal = normal;
  vColor = lampColors[int(lamp + 0.5)];
  gl_Position = projectionMatrix * viewMatrix * vec4(position, 1.0);
}
