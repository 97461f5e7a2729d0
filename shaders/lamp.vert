precision highp float;

uniform mat4 viewMatrix;
uniform mat4 projectionMatrix;
uniform vec3 lampColors[LAMPS];

in vec3 position;
in float lamp;
flat out vec3 vColor;

void main() {
  vColor = lampColors[int(lamp + 0.5)];
  gl_Position = projectionMatrix * viewMatrix * vec4(position, 1.0);
}
