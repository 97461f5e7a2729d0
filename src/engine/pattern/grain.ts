import { mulberry32 } from '../random';
import { type Frame, texelSize } from './frame';
import { fractalNoise } from './noise';
import type { PieceGrid } from './pieces';
import type { Sheet } from './sheet';
import type { GrainFigure } from './types';

/** How one board or veneer leaf was cut: where the pith lay, how the stem bent, and how wide its growth rings are. */
interface Cut {
  /** Depth of the cut below the pith, mm, and its change along the piece, per mm. */
  readonly depth: number;
  readonly taper: number;
  /** How far the stem's bends lift the cut, mm, and where along it. */
  readonly bend: number;
  readonly bendPhase: number;
  /** Sideways place of the pith from the piece's middle, mm, and its swing. */
  readonly side: number;
  readonly sway: number;
  readonly swayPhase: number;
  readonly ring: number;
  readonly firstRing: number;
  readonly mirrored: boolean;
  readonly shiftX: number;
  readonly shiftY: number;
}

const RING_TONES = 512;

/** Darkness over a year's growth: early wood darkens slowly towards the late wood, which ends sharply with the year. */
const YEAR_STEPS = 256;
const YEAR = Float32Array.from({ length: YEAR_STEPS }, (_, i) => {
  const f = (i + 0.5) / YEAR_STEPS;
  return f < 0.8 ? (f / 0.8) ** 3.2 : (1 - f) / 0.2;
});

/** Rings this many texels apart or more are drawn in full; below half of it only their mean tone is left. */
const TEXELS_PER_RING = 4.5;

/** Leaves of veneer on a sheet: this many across the period. */
const LEAVES = 6;

/**
 * Wood with its grain along s. Growth rings are cones round a bent stem; a flat cut through them gives arched figure
 * where it passes near the pith and straight figure beside it. Over the rings lie fibres and broad stripes.
 */
export function grainSheet(frame: Frame, figure: GrainFigure, own: number, seed: number): Sheet {
  const { width, height } = frame;
  const [ds, dt] = texelSize(frame);
  const boards = frame.pieces?.shape === 'rectangle';
  const rows = boards ? frame.pieces! : veneerLeaves(frame);
  const [ms, mt] = rows.module_mm;
  const random = mulberry32(seed ^ 0x3a1e);
  const cuts: Cut[] = [];
  for (let p = 0; p < rows.columns * rows.rows; p++) {
    cuts.push(boards ? cutBoard(ms, mt, width, height, random) : cutLeaf(cuts.at(-1), mt, width, height, random));
  }
  const ringTone = new Float32Array(RING_TONES);
  for (let i = 0; i < RING_TONES; i++) ringTone[i] = 0.45 + 0.55 * random();

  const fibre = fractalNoise(width, height, frame.width_mm / 240, frame.height_mm / 5, 3, seed + 3, 0.75);
  const stripe = fractalNoise(width, height, frame.width_mm / 1100, frame.height_mm / 38, 3, seed + 4, 0.6);
  const open = figure === 'pores';
  const pores = fractalNoise(width, height, frame.width_mm / (open ? 26 : 22), frame.height_mm / 2.2, 1, seed + 6);
  const warp = fractalNoise(width, height, frame.width_mm / 420, frame.height_mm / 45, 2, seed + 5, 0.5);

  const field = new Float32Array(width * height);
  const gain = new Float32Array(width * height);
  const depth = new Float32Array(width);
  const middle = new Float32Array(width);
  const pieceAt = new Int32Array(width);
  const turn = (2 * Math.PI) / (boards ? 1300 : frame.width_mm);
  let row = -1;
  for (let y = 0; y < height; y++) {
    const t = (y + 0.5) * dt;
    const r = Math.min(rows.rows - 1, Math.floor(t / mt));
    if (r !== row) {
      row = r;
      for (let x = 0; x < width; x++) {
        const q = ((x + 0.5) * ds) / ms;
        const k = Math.floor(q);
        const p = r * rows.columns + (((k % rows.columns) + rows.columns) % rows.columns);
        const c = cuts[p]!;
        const l = boards ? (q - k) * ms : (x + 0.5) * ds;
        const half = boards ? l - ms / 2 : 0;
        depth[x] = c.depth + c.taper * half + c.bend * bendAt(turn * l + c.bendPhase, c.bendPhase, boards);
        middle[x] = c.side + c.sway * (Math.sin(turn * l + c.swayPhase) + 0.3 * Math.sin(3 * turn * l + c.bendPhase));
        pieceAt[x] = p;
      }
    }
    const v = t - (r + 0.5) * mt;
    for (let x = 0; x < width; x++) {
      const i = y * width + x;
      const c = cuts[pieceAt[x]!]!;
      const sx = (x + c.shiftX) % width;
      const j = ((y + c.shiftY) % height) * width + sx;
      const dy = (c.mirrored ? -v : v) - middle[x]!;
      const rho = Math.sqrt(dy * dy + depth[x]! * depth[x]! + 4);
      const phase = rho / c.ring + 0.42 * warp[j]! + 0.05 * fibre[j]!;
      const k = Math.floor(phase);
      const f = phase - k;
      // Rings finer than the texture can hold fade to their mean, all along a ring: tips of arches without their sides are no figure.
      const fine = (TEXELS_PER_RING * Math.abs(dy) * dt) / (rho * c.ring);
      const seen = fine < 1 ? 1 : Math.max(0, 2 - fine);
      const rings = 0.3 + (YEAR[(f * YEAR_STEPS) | 0]! - 0.3) * seen * ringTone[(k + c.firstRing) & (RING_TONES - 1)]!;
      // Ring-porous woods have their large pores where a year begins; others have them everywhere, and finer.
      const early = open ? Math.max(0, 1 - f / 0.45) * seen + 0.35 * (1 - seen) + 0.12 : 0.3;
      const pore = pores[j]! > 0.55 ? early * Math.min(1, pores[j]! - 0.55) : 0;
      field[i] = 1.25 * rings + 0.17 * fibre[j]! + 0.24 * stripe[j]! + (open ? 0.6 * pore : 0);
      gain[i] = 1 - 0.05 * (rings - 0.3) + 0.024 * fibre[j]! - 0.018 * stripe[j]! - 0.13 * pore;
    }
  }
  const presence: Float32Array[] = [field];
  for (let k = 1; k < own; k++) {
    presence.push(fractalNoise(width, height, frame.width_mm / 60, frame.height_mm / 3, 2, seed + 900 + k, 0.7));
  }
  return { presence, edge: 0.75, gain };
}

/**
 * How a stem's bends lift the cut, about -1 to 1. Boards bend to and fro; a sheet of veneer, which has to close, rises over most of its
 * length and comes back over the rest, so that its arches point one way.
 */
function bendAt(angle: number, phase: number, boards: boolean): number {
  if (boards) return Math.sin(angle) + 0.16 * Math.sin(3 * angle + 1.3 * phase);
  return Math.sin(angle + 0.55 * Math.sin(angle)) + 0.07 * Math.sin(5 * angle + phase);
}

/** A board: flat-cut near the pith, with arches that all point one way as the stem tapers, or cut beside it and straight. */
function cutBoard(along_mm: number, across_mm: number, width: number, height: number, random: () => number): Cut {
  const arched = random() < 0.55;
  const sideSign = random() < 0.5 ? -1 : 1;
  const taper = (random() < 0.5 ? -1 : 1) * (arched ? 0.014 + 0.022 * random() : 0.008 * random());
  return {
    // The far end lies deepest; the near one stays clear of the pith.
    depth: across_mm * (arched ? 0.14 + 0.24 * random() : 0.2 + 0.5 * random()) + (Math.abs(taper) * along_mm) / 2,
    taper,
    bend: across_mm * (arched ? 0.03 : 0.016) * (0.4 + random()),
    bendPhase: 2 * Math.PI * random(),
    side: arched ? (random() - 0.5) * across_mm * 0.55 : sideSign * across_mm * (0.75 + 0.9 * random()),
    sway: across_mm * (0.02 + 0.05 * random()),
    swayPhase: 2 * Math.PI * random(),
    ring: (arched ? 4.8 : 3.6) + 3 * random(),
    firstRing: Math.floor(random() * RING_TONES),
    mirrored: random() < 0.5,
    shiftX: Math.floor(random() * width),
    shiftY: Math.floor(random() * height),
  };
}

/** A leaf of veneer: the first of a flitch, or the next one, turned over like a page and a little further out of the stem. */
function cutLeaf(before: Cut | undefined, across_mm: number, width: number, height: number, random: () => number): Cut {
  if (before) {
    return {
      ...before,
      depth: before.depth + 2.2,
      side: before.side + 0.06 * across_mm * (random() - 0.5),
      bendPhase: before.bendPhase + 0.16 * (random() - 0.5),
      mirrored: !before.mirrored,
      shiftX: Math.floor(random() * width),
      shiftY: Math.floor(random() * height),
    };
  }
  const bend = 15 + 6 * random();
  return {
    depth: bend + across_mm * (0.03 + 0.06 * random()),
    taper: 0,
    bend,
    bendPhase: 2 * Math.PI * random(),
    side: (random() - 0.5) * across_mm * 0.5,
    sway: across_mm * (0.02 + 0.04 * random()),
    swayPhase: 2 * Math.PI * random(),
    ring: 4.4 + 2 * random(),
    firstRing: Math.floor(random() * RING_TONES),
    mirrored: false,
    shiftX: Math.floor(random() * width),
    shiftY: Math.floor(random() * height),
  };
}

/** A veneered sheet: leaves side by side, as long as the sheet. */
export function veneerLeaves(frame: Frame): PieceGrid {
  return {
    shape: 'rectangle',
    columns: 1,
    rows: LEAVES,
    module_mm: [frame.width_mm, frame.height_mm / LEAVES],
    joint_mm: 0,
  };
}
