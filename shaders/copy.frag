precision highp float;
precision highp sampler2D;

// Pixel for pixel, bytes unchanged.
uniform sampler2D picture;
out vec4 fragColor;

void main() {
  fragColor = texelFetch(picture, ivec2(gl_FragCoord.xy), 0);
}
