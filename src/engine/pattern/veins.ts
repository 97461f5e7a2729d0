import { mulberry32 } from '../random';
import type { Frame } from './frame';
import { enlarge, fractalNoise } from './noise';
import type { Sheet } from './sheet';
import { addBundle, addHairlines, type VeinDrawing } from './vein-bundle';
import { softParts } from './vein-haze';
import { crackPath } from './vein-paths';
import { drawLine, lineArea } from './vein-strokes';

/** Everything soft is drawn this many times coarser than the lines. */
const SOFT_SCALE = 4;

/** Veins closer than this would be a web of hairlines; they are drawn this far apart. */
const MIN_SPACING_MM = 50;

/** Part of the share that is soft in a hazy stone. */
const SOFT_PART = 0.68;

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

function veinField(frame: Frame, spacing_mm: number, direction_deg: number, share: number, seed: number): Float32Array {
  const { width, height } = frame;
  if (share <= 0) return new Float32Array(width * height);
  const spacing = Math.max(MIN_SPACING_MM, spacing_mm);
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
    haziness: Math.min(1, Math.max(0, (share - 0.075) / 0.055)),
    strokes: [],
    random,
  };
  // Crisp stones have their vein colour in more and thinner lines: nothing of it lies in the haze.
  const wanted = ((1.8 - 0.8 * drawing.haziness) * frame.width_mm * frame.height_mm) / spacing;
  const middles: number[] = [];
  for (let drawn = 0; drawn < wanted; ) {
    const length = Math.min(2600, spacing * (3.5 + 5.5 * random()));
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
    // Thin veins are all thin; where haze takes part, some bundles are broad.
    addBundle(
      drawing,
      lead,
      drawing.band * (1 - (0.2 + 0.35 * drawing.haziness) + (0.4 + 0.7 * drawing.haziness) * random()),
    );
    drawn += length;
  }
  addHairlines(drawing, direction, (2.2 + 0.2 * (1 - drawing.haziness)) * wanted);

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
  // Vein filling is mineral, not ink: its density varies over a few millimetres and it frays where it is thin.
  const filling = fractalNoise(width, height, frame.width_mm / 70, frame.height_mm / 70, 4, seed + 31, 0.7);
  for (let i = 0; i < size; i++) {
    if (lines[i]! > 0) lines[i]! *= Math.max(0.15, Math.min(1, 0.82 + 0.2 * filling[i]!));
    lines[i] = Math.min(1, under[i]! + lines[i]! * (1 - under[i]!));
  }
  return lines;
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
