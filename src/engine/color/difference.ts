import type { Lab, Matrix3, White } from './types';

const RADIANS = Math.PI / 180;
const CHROMA_25_TO_7 = 25 ** 7;

/**
 * CIEDE2000 colour difference with kL = kC = kH = 1 (ISO/CIE 11664-6:2022; Sharma, Wu and Dalal 2005).
 * Both colours against the same white; the formula was fitted to pairs under D65. Symmetrical.
 */
export function differenceCiede2000<W extends White>(first: Lab<W>, second: Lab<W>): number {
  const meanChroma = (lengthOf(first.a, first.b) + lengthOf(second.a, second.b)) / 2;
  const stretch = redGreenStretch(meanChroma);
  const a1 = first.a * stretch;
  const a2 = second.a * stretch;
  const c1 = lengthOf(a1, first.b);
  const c2 = lengthOf(a2, second.b);
  const h1 = hueDegrees(a1, first.b);
  const h2 = hueDegrees(a2, second.b);

  const achromatic = c1 * c2 === 0;
  let turn = achromatic ? 0 : h2 - h1;
  if (turn > 180) turn -= 360;
  else if (turn < -180) turn += 360;
  const dHue = 2 * Math.sqrt(c1 * c2) * Math.sin((turn / 2) * RADIANS);
  const dChroma = c2 - c1;

  const c = (c1 + c2) / 2;
  let h = h1 + h2;
  if (!achromatic) {
    if (Math.abs(h1 - h2) > 180) h += h < 360 ? 360 : -360;
    h /= 2;
  }

  const lightness = lightnessTerm(first.l, second.l);
  const chroma = dChroma / chromaWeight(c);
  const hue = dHue / hueWeight(c, h);
  return Math.sqrt(lightness * lightness + chroma * chroma + hue * hue + rotationTerm(c, h) * chroma * hue);
}

/**
 * CIEDE2000 for small differences at one colour: dE00^2 = d' G d with d in L*, a*, b* and G the matrix returned, symmetric,
 * row major, lightness apart from the rest (Pant and Farup 2012, Color Res. Appl. 37, 429, give such metrics).
 * Continuous at the neutral axis, where hue has no direction but chroma and hue weigh the same.
 */
export function localMetricCiede2000(lab: Lab<White>): Matrix3 {
  // Both colours of a pair are stretched by their mean chroma, so that the stretch itself adds no slope.
  const stretch = redGreenStretch(Math.hypot(lab.a, lab.b));
  const a = lab.a * stretch;
  const c = Math.hypot(a, lab.b);
  const [cos, sin] = c === 0 ? [1, 0] : [a / c, lab.b / c];
  const h = hueDegrees(a, lab.b);
  const [sC, sH] = [chromaWeight(c), hueWeight(c, h)];
  const [chroma, hue, mixed] = [1 / sC ** 2, 1 / sH ** 2, rotationTerm(c, h) / (2 * sC * sH)];

  const aa = stretch * stretch * (chroma * cos * cos + hue * sin * sin - 2 * mixed * cos * sin);
  const ab = stretch * ((chroma - hue) * cos * sin + mixed * (cos * cos - sin * sin));
  const bb = chroma * sin * sin + hue * cos * cos + 2 * mixed * cos * sin;
  return [1 / lightnessWeight(lab.l) ** 2, 0, 0, 0, aa, ab, 0, ab, bb];
}

/** A CIEDE2000 difference and what it is made of. */
export interface DifferenceParts {
  readonly de00: number;
  /** |dL'/SL|. */
  readonly lightness: number;
  /** Everything but lightness: chroma, hue and their rotation term, so that de00^2 = lightness^2 + chroma^2. */
  readonly chroma: number;
}

/** CIEDE2000 split into its lightness part and the rest; both in CIEDE2000 units. */
export function differenceParts<W extends White>(first: Lab<W>, second: Lab<W>): DifferenceParts {
  const de00 = differenceCiede2000(first, second);
  const lightness = Math.abs(lightnessTerm(first.l, second.l));
  return { de00, lightness, chroma: Math.sqrt(Math.max(0, de00 * de00 - lightness * lightness)) };
}

const lightnessTerm = (l1: number, l2: number): number => (l2 - l1) / lightnessWeight((l1 + l2) / 2);

/** SL of mean lightness. */
function lightnessWeight(l: number): number {
  const fromMiddle = (l - 50) ** 2;
  return 1 + (0.015 * fromMiddle) / Math.sqrt(20 + fromMiddle);
}

/** SC of mean chroma C'. */
const chromaWeight = (c: number): number => 1 + 0.045 * c;

/** SH of mean chroma C' and mean hue, degrees. */
function hueWeight(c: number, h: number): number {
  const t =
    1 -
    0.17 * Math.cos((h - 30) * RADIANS) +
    0.24 * Math.cos(2 * h * RADIANS) +
    0.32 * Math.cos((3 * h + 6) * RADIANS) -
    0.2 * Math.cos((4 * h - 63) * RADIANS);
  return 1 + 0.015 * c * t;
}

/** RT: chroma and hue errors of a blue go together. */
function rotationTerm(c: number, h: number): number {
  return -2 * Math.sqrt(saturation(c)) * Math.sin(60 * Math.exp(-(((h - 275) / 25) ** 2)) * RADIANS);
}

/** 1 + G of mean chroma C*ab: the factor of a* that makes near-neutrals count more. */
const redGreenStretch = (meanChroma: number): number => 1.5 - 0.5 * Math.sqrt(saturation(meanChroma));

/** Several times as fast as `Math.hypot`, whose care for enormous numbers no colour needs. */
const lengthOf = (a: number, b: number): number => Math.sqrt(a * a + b * b);

function saturation(chroma: number): number {
  const cubed = chroma * chroma * chroma;
  const power = cubed * cubed * chroma;
  return power / (power + CHROMA_25_TO_7);
}

function hueDegrees(a: number, b: number): number {
  if (a === 0 && b === 0) return 0;
  const deg = Math.atan2(b, a) / RADIANS;
  return deg < 0 ? deg + 360 : deg;
}
