import { mhvcToLchab } from 'munsell/dist/src/convert';
import { lightnessFromY, yFromLightness } from '../color/lab';
import { munsellValueFromY, yFromMunsellValue } from './munsell-value';

// The Munsell renotation (Newhall, Nickerson and Judd, JOSA 33, 385, 1943) as a map between hue, value, chroma and CIELAB
// under illuminant C. The package gives the table's nodes; between them this file interpolates as the package does: along
// hue in C*ab and h_ab, along chroma and L* in a*, b*. Done here it has derivatives, and with them an exact inverse.

const HUES = 40;
/** The table's values. Below 0.2 it has nothing: its chromas and hues are held. */
const VALUES: readonly number[] = [0.2, 0.4, 0.6, 0.8, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10];
const LIGHTNESSES = Float64Array.from(VALUES, (value) => mhvcToLchab(0, value, 0)[0]);
/** The table's chromas are 2, 4 ... 50; beyond, C*ab goes in proportion. */
const CHROMAS = 25;

/** One value of the table: 40 hues at each chroma. */
interface Layer {
  readonly chroma: Float64Array;
  /** h_ab in radians. */
  readonly angle: Float64Array;
  /** Radians to the next hue; always above 0. */
  readonly turn: Float64Array;
}

const layers: (Layer | undefined)[] = [];

function layerAt(index: number): Layer {
  layers[index] ??= readLayer(VALUES[index]!);
  return layers[index];
}

function readLayer(value: number): Layer {
  const chroma = new Float64Array(CHROMAS * HUES);
  const angle = new Float64Array(CHROMAS * HUES);
  for (let i = 0; i < chroma.length; i++) {
    const [, cStar, hDeg] = mhvcToLchab(2.5 * (i % HUES), value, 2 * Math.floor(i / HUES) + 2);
    chroma[i] = cStar;
    angle[i] = (hDeg * Math.PI) / 180;
  }
  const turn = angle.map((here, i) => {
    const next = angle[i % HUES === HUES - 1 ? i - HUES + 1 : i + 1]!;
    return next > here ? next - here : next - here + 2 * Math.PI;
  });
  return { chroma, angle, turn };
}

/** The two layers about a lightness, and how much of the upper one. */
let lower = 0;
let upper = 0;
let share = 0;

function lookAbout(lightness: number): void {
  upper = 0;
  while (upper < LIGHTNESSES.length - 1 && LIGHTNESSES[upper]! < lightness) upper++;
  lower = Math.max(0, upper - 1);
  const from = LIGHTNESSES[lower]!;
  share = upper === lower ? 0 : Math.min(1, (lightness - from) / (LIGHTNESSES[upper]! - from));
}

// A place on the plane of one lightness, and its derivatives by hue (fortieths of the circle) and by half the chroma.
const place = new Float64Array(6);
const [A, B, A_BY_HUE, B_BY_HUE, A_BY_HALF, B_BY_HALF] = [0, 1, 2, 3, 4, 5] as const;

/** Sets `place` to where hue (fortieths) and half the chroma lie between the layers looked up. */
function locate(hue: number, half: number): void {
  place.fill(0);
  if (share < 1) addLayer(layerAt(lower), 1 - share, hue, half);
  if (share > 0) addLayer(layerAt(upper), share, hue, half);
}

function addLayer(layer: Layer, weight: number, hue: number, half: number): void {
  const h = Math.floor(hue);
  const f = hue - h;
  const c = Math.floor(half);
  if (c < 1) addArc(layer, 0, h, f, weight * half, weight);
  else if (c >= CHROMAS) addArc(layer, CHROMAS - 1, h, f, (weight * half) / CHROMAS, weight / CHROMAS);
  else {
    addArc(layer, c - 1, h, f, weight * (c + 1 - half), -weight);
    addArc(layer, c, h, f, weight * (half - c), weight);
  }
}

/** Adds a part of the arc between hues `h` and `h + 1` at one chroma of the table; `slope` is that part by half the chroma. */
function addArc(layer: Layer, c: number, h: number, f: number, part: number, slope: number): void {
  const here = c * HUES + h;
  const from = layer.chroma[here]!;
  const rise = layer.chroma[h === HUES - 1 ? here + 1 - HUES : here + 1]! - from;
  const turn = layer.turn[here]!;
  const radius = from + f * rise;
  const angle = layer.angle[here]! + f * turn;
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  place[A] = place[A]! + part * radius * cos;
  place[B] = place[B]! + part * radius * sin;
  place[A_BY_HUE] = place[A_BY_HUE]! + part * (rise * cos - radius * turn * sin);
  place[B_BY_HUE] = place[B_BY_HUE]! + part * (rise * sin + radius * turn * cos);
  place[A_BY_HALF] = place[A_BY_HALF]! + slope * radius * cos;
  place[B_BY_HALF] = place[B_BY_HALF]! + slope * radius * sin;
}

const onCircle = (hue: number): number => {
  const turned = hue - Math.floor(hue / HUES) * HUES;
  // A hue just below 0 rounds up to the full circle, or is too small to be turned at all.
  return turned >= 0 && turned < HUES ? turned : 0;
};

/** Writes L*, a*, b* under illuminant C of hue on the circle of 100, value 0-10 (held inside) and chroma (0 and up). */
export function renotationForward(hue100: number, value: number, chroma: number, lab: Float64Array): void {
  const l = lightnessFromY(yFromMunsellValue(value));
  lookAbout(l);
  // Black has no chroma.
  locate(onCircle(0.4 * hue100), value > 0 ? Math.max(0, chroma) / 2 : 0);
  lab[0] = l;
  lab[1] = place[A]!;
  lab[2] = place[B]!;
}

/** In CIELAB units, relative beyond 1; far below what a notation shows. */
const TOLERANCE = 1e-11;
const MAX_ITERATIONS = 80;
const MAX_HALVINGS = 40;

/**
 * Writes hue on the circle of 100, value 0-10 and chroma of L* (held inside 0-100), a*, b* under illuminant C into `out`
 * from `at` on. The map turns the same way everywhere, so every colour has exactly one answer; Newton's method finds it in
 * C*ab and h_ab, in which the map is nearly straight. A neutral gets hue 0. All numbers must be finite.
 */
export function renotationInverse(l: number, a: number, b: number, out: Float64Array, at = 0): void {
  const lightness = Math.min(100, Math.max(0, l));
  const radius = Math.hypot(a, b);
  // The hue circle begins near h_ab 0, and a step of chroma is about 5.5 in C*ab.
  let hue = onCircle((Math.atan2(b, a) * HUES) / (2 * Math.PI));
  let half = radius / 11;
  lookAbout(lightness);
  locate(hue, half);
  let miss = missOf(a, b);
  const enough = TOLERANCE * Math.max(1, radius);
  for (let iteration = 0; iteration < MAX_ITERATIONS && miss > enough; iteration++) {
    let [hueStep, halfStep] = newtonStep(radius, a, b);
    const [hueBefore, halfBefore, missBefore] = [hue, half, miss];
    for (let halving = 0; halving < MAX_HALVINGS; halving++) {
      hue = onCircle(hueBefore + hueStep);
      half = Math.max(halfBefore / 4, halfBefore + halfStep);
      locate(hue, half);
      miss = missOf(a, b);
      if (miss < missBefore) break;
      hueStep /= 2;
      halfStep /= 2;
    }
  }
  out[at] = radius === 0 ? 0 : 2.5 * hue;
  out[at + 1] = munsellValueFromY(yFromLightness(lightness));
  out[at + 2] = 2 * half;
}

/** Step of hue and of half the chroma from `place` towards a*, b*. */
function newtonStep(radius: number, a: number, b: number): [hueStep: number, halfStep: number] {
  const reached = Math.hypot(place[A]!, place[B]!);
  const cos = place[A]! / reached;
  const sin = place[B]! / reached;
  const outByHue = cos * place[A_BY_HUE]! + sin * place[B_BY_HUE]!;
  const outByHalf = cos * place[A_BY_HALF]! + sin * place[B_BY_HALF]!;
  const roundByHue = (cos * place[B_BY_HUE]! - sin * place[A_BY_HUE]!) / reached;
  const roundByHalf = (cos * place[B_BY_HALF]! - sin * place[A_BY_HALF]!) / reached;
  const out = radius - reached;
  const round = Math.atan2(cos * b - sin * a, cos * a + sin * b);
  const determinant = outByHue * roundByHalf - outByHalf * roundByHue;
  return [(out * roundByHalf - outByHalf * round) / determinant, (outByHue * round - out * roundByHue) / determinant];
}

const missOf = (a: number, b: number): number => Math.hypot(place[A]! - a, place[B]! - b);
