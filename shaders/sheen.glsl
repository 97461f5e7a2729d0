// Body and mirror of a finish, as src/engine/sheen/sheen.ts parts them (tests/view/sheen.test.ts compares the two).
// How much of the mirror is told apart from the body, 0-1.
uniform float mirrorPart;
// Albedo at the cosines (i / 16)^2: of a coat, R; of a metal, the share of white.
uniform float mirrorAlbedo[17];
// A metal's colour straight on.
uniform vec3 mirrorTint;
// Per component: its body's colour over the whole, mirror included.
uniform vec3 bodyGain[4];
// 1 where component 1, 2 or 3 is the grout between pieces: matt, it mirrors nothing.
uniform vec3 jointMask;

float lobeAlbedo(float cosine) {
  float at = 16.0 * sqrt(clamp(cosine, 0.0, 1.0));
  int i = min(int(at), 15);
  return mix(mirrorAlbedo[i], mirrorAlbedo[i + 1], at - float(i));
}

/** The body's colour and mirrored light together, seen at a cosine to the normal; a metal's pattern is in its mirror, too. */
vec3 bodyAndMirror(vec3 body, vec3 mirrored, float cosine, float gain) {
  float albedo = lobeAlbedo(cosine);
#if SHEEN == 2
  return (1.0 - mirrorPart) * body + mirrorPart * (albedo + (1.0 - albedo) * gain * mirrorTint) * mirrored;
#else
  return (1.0 - mirrorPart * albedo) * body + mirrorPart * albedo * mirrored;
#endif
}
