import { mulberry32 } from '../random';
import { type Frame, texelSize } from './frame';
import { enlarge, fractalNoise } from './noise';
import type { Sheet } from './sheet';
import { crackPath, type Path, STEP_MM, strokeAlong } from './vein-paths';
import { addPatch, drawStroke } from './vein-strokes';
import { wander } from './wander';

/** The haze is drawn this many times coarser than the veins. */
const HAZE_SCALE = 8;

/**
 * Veined stone: bundles of braided veins along `direction_deg`, about `spacing_mm` apart, with branches that leave and
 * die out, faint hairlines across, and a haze of vein colour drifting around the bundles.
 */
export function veinSheet(
  frame: Frame,
  spacing_mm: number,
  direction_deg: number,
  shares: readonly number[],
  seed: number,
): Sheet {
  const presence = shares.map((share, k) => veinField(frame, spacing_mm, direction_deg, share, seed + 1000 * k));
  const { width, height } = frame;
  const drift = fractalNoise(width, height, frame.width_mm / 300, frame.height_mm / 300, 4, seed + 201);
  const gain = new Float32Array(width * height);
  for (let i = 0; i < gain.length; i++) gain[i] = 1 + 0.01 * drift[i]!;
  return { presence, edge: null, gain };
}

function veinField(frame: Frame, spacing: number, direction_deg: number, share: number, seed: number): Float32Array {
  const { width, height } = frame;
  const random = mulberry32(seed ^ 0x0e175);
  const direction = (direction_deg * Math.PI) / 180;
  const area = frame.width_mm * frame.height_mm;
  const out = new Float32Array(width * height);
  const coarse: Frame = {
    ...frame,
    width: Math.max(32, width / HAZE_SCALE),
    height: Math.max(32, height / HAZE_SCALE),
  };
  const haze = new Float32Array(coarse.width * coarse.height);

  // Half of the share is lines, the rest haze; a bundle's lines together are about share x spacing wide.
  const band = share * spacing;
  let drawn = 0;
  const wanted = area / spacing;
  while (drawn < wanted) {
    const length = Math.min(2200, spacing * (2.5 + 4.5 * random()));
    const lead = crackPath(
      random() * frame.width_mm,
      random() * frame.height_mm,
      direction + 0.22 * (random() - 0.5) + (random() < 0.14 ? (random() < 0.5 ? 0.5 : -0.5) : 0),
      length,
      1,
      random,
    );
    const weight = 0.45 + 1.1 * random();
    drawBundle(out, haze, frame, coarse, lead, band * weight, spacing, random);
    drawn += length;
  }
  drawHairlines(out, frame, direction, area / spacing, spacing, band, random);

  const smoke = fractalNoise(
    width,
    height,
    frame.width_mm / (spacing * 0.55),
    frame.height_mm / (spacing * 0.55),
    5,
    seed + 211,
    0.56,
  );
  const soft = enlarge(haze, coarse.width, coarse.height, width, height);
  for (let i = 0; i < out.length; i++) {
    const cloud = 0.62 * (1 - Math.exp(-soft[i]! * Math.max(0, 0.75 + 0.7 * smoke[i]!)));
    out[i] = Math.min(1, out[i]! + (1 - out[i]!) * cloud);
  }
  return out;
}

function drawBundle(
  out: Float32Array,
  haze: Float32Array,
  frame: Frame,
  coarse: Frame,
  lead: Path,
  band: number,
  spacing: number,
  random: () => number,
): void {
  const filaments = 2 + Math.floor(3.5 * random());
  const stray = spacing * (0.05 + 0.09 * random());
  for (let k = 0; k < filaments; k++) {
    const main = k === 0;
    drawStroke(
      out,
      frame,
      strokeAlong(
        lead,
        {
          halfWidth: band * (main ? 0.07 : 0.03),
          opacity: main ? 0.92 : 0.4 + 0.45 * random(),
          stray: main ? stray * 0.15 : stray,
          feather: band * (main ? 0.3 : 0.18),
          featherOpacity: main ? 0.5 : 0.34,
          fadeStart: true,
        },
        random,
      ),
    );
  }
  const branches = Math.round((lead.x.length * STEP_MM) / spacing / 1.2);
  for (let b = 0; b < branches; b++) {
    const at = Math.floor((0.08 + 0.8 * random()) * lead.x.length);
    const side = random() < 0.5 ? -1 : 1;
    const path = crackPath(
      lead.x[at]!,
      lead.y[at]!,
      lead.direction + side * (0.3 + 0.55 * random()),
      spacing * (0.35 + 1.1 * random()),
      1.15,
      random,
    );
    drawStroke(
      out,
      frame,
      strokeAlong(
        path,
        {
          halfWidth: band * 0.028,
          opacity: 0.35 + 0.4 * random(),
          stray: 0,
          feather: band * 0.16,
          featherOpacity: 0.3,
          fadeStart: false,
        },
        random,
      ),
    );
  }
  driftAround(haze, coarse, lead, band, random);
}

/** The haze of a bundle: patches along it, now on one side, now on the other, here dense and there missing. */
function driftAround(haze: Float32Array, coarse: Frame, lead: Path, band: number, random: () => number): void {
  const n = lead.x.length;
  const side = wander(n, 220 / STEP_MM, random);
  const density = wander(n, 160 / STEP_MM, random);
  const normalX = Math.sin(lead.direction);
  const normalY = Math.cos(lead.direction);
  const every = Math.max(1, Math.round((band * 0.25) / STEP_MM));
  for (let i = 0; i < n; i += every) {
    const f = i / (n - 1);
    const fade = Math.min(1, f / 0.2, (1 - f) / 0.25);
    const sigma = Math.max(4, band * (0.3 + 0.75 * random() * random()));
    const aside = band * (0.75 * side[i]! + 0.5 * (random() - 0.5));
    const amount = 0.16 * Math.max(0, 0.55 + 0.75 * density[i]!) * fade;
    addPatch(haze, coarse, lead.x[i]! - aside * normalX, lead.y[i]! + aside * normalY, sigma, amount);
  }
}

/** Faint cracks in other directions, thin enough to be seen only from near. */
function drawHairlines(
  out: Float32Array,
  frame: Frame,
  direction: number,
  length_mm: number,
  spacing: number,
  band: number,
  random: () => number,
): void {
  const [ds] = texelSize(frame);
  let drawn = 0;
  while (drawn < 2.2 * length_mm) {
    const length = spacing * (0.4 + 1.6 * random() * random());
    const turned = random() < 0.5 ? 0.9 * (random() - 0.5) : (random() < 0.5 ? 1 : -1) * (0.5 + 0.7 * random());
    const path = crackPath(
      random() * frame.width_mm,
      random() * frame.height_mm,
      direction + turned,
      length,
      1.2,
      random,
    );
    drawStroke(
      out,
      frame,
      strokeAlong(
        path,
        {
          halfWidth: Math.max(0.25 * ds, band * 0.012),
          opacity: 0.1 + 0.3 * random() * random(),
          stray: 0,
          feather: band * 0.08,
          featherOpacity: 0.3,
          fadeStart: true,
        },
        random,
      ),
    );
    drawn += length;
  }
}
