import { mulberry32 } from '../random';
import { type Frame, texelSize } from './frame';
import { fractalNoise } from './noise';
import type { Sheet } from './sheet';
import { wander } from './wander';

/** Threads of one direction: which thread each texel lies on, where across it (-1 to 1), and each thread's tone. */
interface Threads {
  readonly index: Int32Array;
  readonly across: Float32Array;
  readonly tone: Float32Array;
}

/** A plain-weave print: threads over and under, `size_mm` from one to the next, each with its own tone and thick places. */
export function threadSheet(frame: Frame, size_mm: number, own: number, seed: number): Sheet {
  const { width, height } = frame;
  const [ds, dt] = texelSize(frame);
  const random = mulberry32(seed ^ 0x7412ead);
  const warp = layThreads(width, frame.width_mm, ds, size_mm, random);
  const weft = layThreads(height, frame.height_mm, dt, size_mm, random);
  // Thick and thin places run along each thread: noise that is long one way only.
  const slubS = fractalNoise(
    width,
    height,
    frame.width_mm / (size_mm * 22),
    frame.height_mm / (size_mm * 1.4),
    2,
    seed + 31,
  );
  const slubT = fractalNoise(
    width,
    height,
    frame.width_mm / (size_mm * 1.4),
    frame.height_mm / (size_mm * 22),
    2,
    seed + 32,
  );
  const field = new Float32Array(width * height);
  const gain = new Float32Array(width * height);
  for (let y = 0; y < height; y++) {
    const j = weft.index[y]!;
    const v = weft.across[y]!;
    for (let x = 0; x < width; x++) {
      const i = warp.index[x]!;
      const u = warp.across[x]!;
      const k = y * width + x;
      const warpOnTop = ((i + j) & 1) === 0;
      const slub = warpOnTop ? slubT[k]! : slubS[k]!;
      const tone = warpOnTop ? warp.tone[i]! : weft.tone[j]!;
      const acrossThread = warpOnTop ? u : v;
      const alongThread = warpOnTop ? v : u;
      // A thread is round across and dips under its neighbours at either end of each float.
      const crown = 1 - 0.75 * acrossThread * acrossThread - 0.3 * alongThread * alongThread;
      field[k] = tone + 0.45 * slub + 0.15 * crown + (warpOnTop ? 0.15 : -0.15);
      gain[k] = 1 + 0.13 * (crown - 0.65) + 0.012 * slub + 0.02 * tone;
    }
  }
  const presence: Float32Array[] = [field];
  for (let k = 1; k < own; k++) presence.push(fractalNoise(width, height, 40, 40, 3, seed + 700 + k));
  return { presence, edge: 1, gain };
}

function layThreads(
  texels: number,
  length_mm: number,
  texel_mm: number,
  pitch_mm: number,
  random: () => number,
): Threads {
  const count = 2 * Math.max(2, Math.round(length_mm / pitch_mm / 2));
  const pitch = length_mm / count;
  const shift = wander(count, 3, random);
  const edge = (k: number): number => (k + (k % count === 0 ? 0 : 0.22 * shift[k % count]!)) * pitch;
  const index = new Int32Array(texels);
  const across = new Float32Array(texels);
  let k = 0;
  for (let x = 0; x < texels; x++) {
    const at = (x + 0.5) * texel_mm;
    while (k < count - 1 && at >= edge(k + 1)) k++;
    index[x] = k;
    across[x] = Math.max(-1, Math.min(1, (2 * (at - edge(k))) / (edge(k + 1) - edge(k)) - 1));
  }
  const raw = new Float32Array(count);
  for (let i = 0; i < count; i++) raw[i] = random() + random() + random() - 1.5;
  // Each tone is taken against its neighbourhood, so that no broad bands betray the repeat from afar.
  const tone = new Float32Array(count);
  const reach = Math.min(4, Math.floor((count - 1) / 2));
  for (let i = 0; i < count; i++) {
    let around = 0;
    for (let n = -reach; n <= reach; n++) around += raw[(((i + n) % count) + count) % count]!;
    tone[i] = raw[i]! - around / (2 * reach + 1);
  }
  return { index, across, tone };
}
