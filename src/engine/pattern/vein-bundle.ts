import type { Frame } from './frame';
import { crackPath, type Path, STEP_MM, type StrokeStyle, strokeAlong } from './vein-paths';
import { addPatch, type Stroke } from './vein-strokes';
import { wander } from './wander';

/** What one set of veins is drawn into, and its measures. */
export interface VeinDrawing {
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

/** Softness is drawn coarsely: a narrower one would look like bristles, mm. */
const LEAST_FEATHER_MM = 9;

function addVein(drawing: VeinDrawing, path: Path, style: StrokeStyle): void {
  drawing.strokes.push(strokeAlong(path, style, drawing.random));
}

/** A lead vein, thinner ones braided around it, branches, and the haze. */
export function addBundle(drawing: VeinDrawing, lead: Path, band: number): void {
  const { spacing, haziness, random } = drawing;
  // Crisp stone has its vein colour in more lines, which lie farther apart.
  const crisp = 1 - haziness;
  const filaments = 2 + Math.floor(3 * random()) + Math.round(crisp);
  const stray = spacing * (0.05 + 0.09 * random()) * (1 + 1.3 * crisp);
  const thin = 2.4 - 1.4 * haziness;
  const softness = 0.36 + 0.64 * haziness;
  for (let k = 0; k < filaments; k++) {
    const main = k === 0;
    // Every other strand keeps close to one side of the lead, which so becomes a ragged band (strands that cross it again and again
    // would make a rope); the rest wander off and come back.
    const tight = k % 2 === 1;
    const side = random() < 0.5 ? -1 : 1;
    addVein(drawing, lead, {
      halfWidth: band * (main ? 0.075 - 0.042 * crisp : thin * (tight ? 0.04 : 0.016 + 0.026 * random())),
      opacity: main ? 0.95 : 0.35 + 0.2 * crisp + 0.45 * random(),
      beside: main ? 0 : side * (tight ? 0.16 * band : (0.3 + 0.7 * random()) * stray),
      stray: main ? stray * 0.15 : tight ? 0.1 * band : 0.8 * stray,
      feather: Math.max(LEAST_FEATHER_MM, band * (main ? 0.5 : 0.32) * softness),
      featherOpacity: (main ? 0.6 : 0.42) * softness,
      fadeStart: true,
    });
  }
  const branches = Math.round((lead.x.length * STEP_MM) / spacing / (2.8 + 1.4 * crisp));
  for (let b = 0; b < branches; b++) {
    const at = Math.floor((0.08 + 0.8 * random()) * lead.x.length);
    const turn = (random() < 0.5 ? -1 : 1) * (0.14 + 0.34 * random());
    const length = spacing * (0.6 + 2 * random());
    addVein(drawing, crackPath(lead.x[at]!, lead.y[at]!, lead.direction + turn, length, 1, random), {
      halfWidth: band * thin * 0.034,
      opacity: 0.25 + 0.5 * random(),
      beside: 0,
      stray: 0,
      feather: Math.max(LEAST_FEATHER_MM, band * 0.28 * softness),
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

/**
 * Secondary veins: faint long ones beside the bundles, and fewer short cracks across them; thin enough to be seen only from near.
 */
export function addHairlines(drawing: VeinDrawing, direction: number, length_mm: number): void {
  const { frame, spacing, band, haziness, random } = drawing;
  const thin = 2.4 - 1.4 * haziness;
  for (let drawn = 0; drawn < length_mm; ) {
    const across = random() < 0.18;
    const length = spacing * (across ? 0.4 + 0.9 * random() : 1.2 + 3.2 * random());
    const turned = across ? (random() < 0.5 ? 1 : -1) * (0.5 + 0.6 * random()) : 0.7 * (random() - 0.5);
    const x = random() * frame.width_mm;
    const y = random() * frame.height_mm;
    addVein(drawing, crackPath(x, y, direction + turned, length, across ? 1.1 : 0.8, random), {
      halfWidth: Math.max(0.3, band * thin * (across ? 0.011 : 0.014)),
      opacity: (across ? 0.1 : 0.14) + 0.2 * (1 - haziness) + 0.3 * random() * random(),
      beside: 0,
      stray: 0,
      feather: band * 0.1,
      featherOpacity: 0.35 * haziness,
      fadeStart: true,
    });
    drawn += length;
  }
}
