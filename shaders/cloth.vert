precision highp float;

uniform mat4 viewMatrix;
uniform mat4 projectionMatrix;
uniform vec3 clothColors[BLINDS];
// Share of the window that the cloths cover; 0: they are rolled up.
uniform float covered;

in vec3 position;
in vec3 normal;
in float cloth;
// Height of its upper edge; how far it hangs let down and rolled up: m.
in float top;
in float whole;
in float rolled;
flat out vec3 vColor;
out vec3 vNormal;
out vec3 vWorld;
// Above its lower edge, m.
out float vHem;

void main() {
  float drop = covered > 0.0 ? max(covered * whole, rolled) : 0.0;
  bool isUpper = position.z > top - 1e-3;
  vWorld = vec3(position.xy, isUpper ? top : top - drop);
  vHem = isUpper ? drop : 0.0;
  vNormal = normal;
  vColor = clothColors[int(cloth + 0.5)];
  gl_Position = projectionMatrix * viewMatrix * vec4(vWorld, 1.0);
}
