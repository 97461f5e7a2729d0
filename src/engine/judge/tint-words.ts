/** Hue angles up to which a tinted white has that name, degrees. Our judgment. */
const NAMES: readonly (readonly [until: number, word: string])[] = [
  [20, 'pinkish'],
  [60, 'orange-pink'],
  [85, 'yellowish-orange'],
  [110, 'yellowish'],
  [140, 'greenish-yellow'],
  [200, 'greenish'],
  [240, 'bluish-green'],
  [290, 'bluish'],
  [340, 'violet'],
  [361, 'pinkish'],
];

/** The direction of a tint from its a*, b*, or null when a white would still look white (chroma under 1). */
export function tintWord(a: number, b: number): string | null {
  const chroma = Math.hypot(a, b);
  if (chroma < 1) return null;
  const hue = ((Math.atan2(b, a) * 180) / Math.PI + 360) % 360;
  const word = NAMES.find(([until]) => hue < until)?.[1] ?? 'pinkish';
  return chroma < 3 ? `faintly ${word}` : chroma < 8 ? word : `strongly ${word}`;
}
