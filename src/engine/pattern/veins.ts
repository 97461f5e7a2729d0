import { mulberry32 } from '../random';
import type { Frame } from './frame';
import { enlarge, fractalNoise } from './noise';
import type { Sheet } from './sheet';
import { crackPath, type Path, STEP_MM, type StrokeStyle, strokeAlong } from './vein-paths';
import { addPatch, drawFeather, drawLine, lineArea, type Stroke } from './vein-strokes';
import { wander } from './wander';

/** Everything soft is drawn this many times coarser than the lines. */
const SOFT_SCALE = 4;

/** Part of the share that is soft in a hazy stone, and the densest haze. */
const SOFT_PART = 0.68;
const MOST_HAZE = 0.8;

/** What one set of veins is drawn into, and its measures. */
interface VeinDrawing {
  readonly frame: Frame;
  readonly softFrame: Frame;
  readonly lines: Float32Array;
  readonly feathers: Float32Array;
  readonly haze: Float32Array;
  /** Distance between bundles, and the mean width that the share leaves for one bundle, mm. */
  readonly spacing: number;
  readonly band: number;
  /** 0: crisp lines only; 1: half of the vein colour drifts around the lines. */
  readonly haziness: number;
  readonly strokes: Stroke[];
  readonly random: () => number;
}

/**
 * Veined stone: bundles of braided veins along `direction_deg`, about `spacing_mm` apart, with branches that leave and
 * die out, faint hairlines across, and a haze of vein colour drifting around the bundles where the veins take much area.
 */
export function veinSheet(
  frame: Frame,
  spacing_mm: number,
  direction_deg: number,
  shares: readonly number[],
  seed: number,
): Sheet {
  const presence = shares.map((share, k) => veinField(frame, spacing_mm, direction_deg, share, seed + 1000 * k));
  return { presence, edge: null, gain: new Float32Array(frame.width * frame.height).fill(1) };
}

function veinField(frame: Frame, spacing: number, direction_deg: number, share: number, seed: number): Float32Array {
  const { width, height } = frame;
  const random = mulberry32(seed ^ 0x0e175);
  const direction = (direction_deg * Math.PI) / 180;
  const softFrame: Frame = { ...frame, width: width / SOFT_SCALE, height: height / SOFT_SCALE };
  const softSize = softFrame.width * softFrame.height;
  const drawing: VeinDrawing = {
    frame,
    softFrame,
    lines: new Float32Array(width * height),
    feathers: new Float32Array(softSize),
    haze: new Float32Array(softSize),
    spacing,
    band: share * spacing,
    haziness: Math.min(1, Math.max(0, (share - 0.07) / 0.07)),
    strokes: [],
    random,
  };
  const wanted = (frame.width_mm * frame.height_mm) / spacing;
  const middles: number[] = [];
  for (let drawn = 0; drawn < wanted; ) {
    const length = Math.min(2200, spacing * (2.5 + 4.5 * random()));
    const astray = random() < 0.14 ? (random() < 0.5 ? 0.5 : -0.5) : 0;
    const heading = direction + 0.22 * (random() - 0.5) + astray;
    const [mx, my] = placeApart(middles, frame, direction, random);
    const lead = crackPath(
      mx - 0.5 * length * Math.cos(heading),
      my - 0.5 * length * Math.sin(heading),
      heading,
      length,
      1,
      random,
    );
    addBundle(drawing, lead, drawing.band * (0.45 + 1.1 * random()));
    drawn += length;
  }
  addHairlines(drawing, direction, (2.2 + 1.4 * (1 - drawing.haziness)) * wanted);

  const soft = softParts(drawing, share * SOFT_PART * drawing.haziness, seed);
  const size = width * height;
  const lines = drawing.lines;
  // Widths follow from the share: what the soft parts leave, a little more because lines cross; in hazy stone less, and
  // the fit of the share then widens what is soft.
  const left = Math.max(0.3 * share, share - soft.mean) / (1 - soft.mean);
  let area = 0;
  for (const stroke of drawing.strokes) area += lineArea(stroke);
  const scale = ((1.12 - 0.5 * drawing.haziness) * left * frame.width_mm * frame.height_mm) / area;
  for (const stroke of drawing.strokes) drawLine(lines, frame, stroke, scale);
  const under = enlarge(soft.field, softFrame.width, softFrame.height, width, height);
  for (let i = 0; i < size; i++) lines[i] = Math.min(1, under[i]! + lines[i]! * (1 - under[i]!));
  return lines;
}

/** Feathers and haze on the coarse field, the haze as dense as `wanted` (mean weight of both) asks for. */
function softParts(drawing: VeinDrawing, wanted: number, seed: number): { field: Float32Array; mean: number } {
  const { frame, softFrame, feathers, haze, spacing } = drawing;
  const texel = Math.sqrt((softFrame.width_mm / softFrame.width) * (softFrame.height_mm / softFrame.height));
  for (const stroke of drawing.strokes) if (stroke.feather_mm > 0.4 * texel) drawFeather(feathers, softFrame, stroke);
  const smoke = fractalNoise(
    softFrame.width,
    softFrame.height,
    frame.width_mm / (spacing * 0.55),
    frame.height_mm / (spacing * 0.55),
    5,
    seed + 211,
    0.56,
  );
  for (let i = 0; i < haze.length; i++) haze[i]! *= Math.max(0, 0.75 + 0.7 * smoke[i]!);
  const softAt = (i: number, density: number): number => {
    const cloud = MOST_HAZE * (1 - Math.exp(-density * haze[i]!));
    return Math.max(feathers[i]!, cloud + 0.5 * feathers[i]! * (1 - cloud));
  };
  let low = 0;
  let high = wanted > 0 ? 4 : 0;
  for (let step = 0; step < 8; step++) {
    const middle = (low + high) / 2;
    let sum = 0;
    let n = 0;
    for (let i = 0; i < haze.length; i += 7) {
      sum += softAt(i, middle);
      n++;
    }
    if (sum / n > wanted) high = middle;
    else low = middle;
  }
  let mean = 0;
  for (let i = 0; i < haze.length; i++) {
    haze[i] = softAt(i, (low + high) / 2);
    mean += haze[i]! / haze.length;
  }
  return { field: haze, mean };
}

/** The best of some seeded places for a bundle's middle: far from the others, across the veins above all. */
function placeApart(
  middles: number[],
  frame: Frame,
  direction: number,
  random: () => number,
): readonly [number, number] {
  const c = Math.cos(direction);
  const s = Math.sin(direction);
  let best = -1;
  let bestX = 0;
  let bestY = 0;
  for (let trial = 0; trial < 14; trial++) {
    const x = random() * frame.width_mm;
    const y = random() * frame.height_mm;
    let nearest = 1e9;
    for (let k = 0; k < middles.length; k += 2) {
      const dx = Math.abs(x - middles[k]!);
      const dy = Math.abs(y - middles[k + 1]!);
      const wx = (dx > frame.width_mm / 2 ? dx - frame.width_mm : dx) * Math.sign(x - middles[k]!);
      const wy = (dy > frame.height_mm / 2 ? dy - frame.height_mm : dy) * Math.sign(y - middles[k + 1]!);
      const along = wx * c + wy * s;
      const across = wy * c - wx * s;
      nearest = Math.min(nearest, Math.hypot(0.35 * along, across));
    }
    if (nearest > best) {
      best = nearest;
      bestX = x;
      bestY = y;
    }
  }
  middles.push(bestX, bestY);
  return [bestX, bestY];
}

function addVein(drawing: VeinDrawing, path: Path, style: StrokeStyle): void {
  drawing.strokes.push(strokeAlong(path, style, drawing.random));
}

/** A lead vein, thinner ones braided around it, branches, and the haze. */
function addBundle(drawing: VeinDrawing, lead: Path, band: number): void {
  const { spacing, haziness, random } = drawing;
  const filaments = 3 + Math.floor(4 * random());
  const stray = spacing * (0.05 + 0.09 * random());
  // Crisp stone has its vein colour in more and more even lines.
  const thin = 2.4 - 1.4 * haziness;
  const softness = 0.06 + 0.94 * haziness;
  for (let k = 0; k < filaments; k++) {
    const main = k === 0;
    // Every other strand keeps close to the lead, which so becomes a ragged band; the rest wander off and come back.
    const tight = k % 2 === 1;
    addVein(drawing, lead, {
      halfWidth: band * (main ? 0.075 : thin * (tight ? 0.045 : 0.032)),
      opacity: main ? 0.95 : 0.4 + 0.45 * random(),
      stray: main ? stray * 0.15 : tight ? 0.3 * band : stray,
      feather: band * (main ? 0.5 : 0.32) * softness,
      featherOpacity: (main ? 0.6 : 0.42) * softness,
      fadeStart: true,
    });
  }
  const branches = Math.round((lead.x.length * STEP_MM) / spacing / 1.2);
  for (let b = 0; b < branches; b++) {
    const at = Math.floor((0.08 + 0.8 * random()) * lead.x.length);
    const turn = (random() < 0.5 ? -1 : 1) * (0.3 + 0.55 * random());
    const length = spacing * (0.35 + 1.1 * random());
    addVein(drawing, crackPath(lead.x[at]!, lead.y[at]!, lead.direction + turn, length, 1.15, random), {
      halfWidth: band * thin * 0.034,
      opacity: 0.4 + 0.4 * random(),
      stray: 0,
      feather: band * 0.28 * softness,
      featherOpacity: 0.36 * softness,
      fadeStart: false,
    });
  }
  if (haziness > 0) driftAround(drawing, lead, band);
}

/** The haze of a bundle: patches along it, now on one side, now on the other, here dense and there missing. */
function driftAround(drawing: VeinDrawing, lead: Path, band: number): void {
  const { haze, softFrame, haziness, random } = drawing;
  const n = lead.x.length;
  const side = wander(n, 220 / STEP_MM, random);
  const density = wander(n, 160 / STEP_MM, random);
  const normalX = Math.sin(lead.direction);
  const normalY = Math.cos(lead.direction);
  const every = Math.max(1, Math.round((band * 0.25) / STEP_MM));
  for (let i = 0; i < n; i += every) {
    const f = i / (n - 1);
    const fade = Math.min(1, f / 0.2, (1 - f) / 0.25);
    const sigma = Math.max(5, band * (0.4 + 0.95 * random() * random()));
    const aside = band * (0.75 * side[i]! + 0.5 * (random() - 0.5));
    const amount = 0.26 * haziness * Math.max(0, 0.55 + 0.75 * density[i]!) * fade;
    addPatch(haze, softFrame, lead.x[i]! - aside * normalX, lead.y[i]! + aside * normalY, sigma, amount);
  }
}

/** Faint cracks in other directions, thin enough to be seen only from near. */
function addHairlines(drawing: VeinDrawing, direction: number, length_mm: number): void {
  const { frame, spacing, band, haziness, random } = drawing;
  const thin = 2.4 - 1.4 * haziness;
  for (let drawn = 0; drawn < length_mm; ) {
    const length = spacing * (0.4 + 1.6 * random() * random());
    const turned = random() < 0.5 ? 0.9 * (random() - 0.5) : (random() < 0.5 ? 1 : -1) * (0.5 + 0.7 * random());
    const x = random() * frame.width_mm;
    const y = random() * frame.height_mm;
    addVein(drawing, crackPath(x, y, direction + turned, length, 1.2, random), {
      halfWidth: Math.max(0.3, band * thin * 0.014),
      opacity: 0.12 + 0.3 * (1 - haziness) + 0.36 * random() * random(),
      stray: 0,
      feather: band * 0.1,
      featherOpacity: 0.35 * haziness,
      fadeStart: true,
    });
    drawn += length;
  }
}
