import { mulberry32 } from '../random';
import { type Frame, texelSize } from './frame';
import { fractalNoise } from './noise';
import type { Sheet } from './sheet';

/** Mean length and width of a ray fleck on the flat-cut face of beech, mm (typical values, from memory). */
const LENGTH_MM = 3.8;
const WIDTH_MM = 0.65;

/** Fine-grained wood marked by its rays (beech): short dark spindles along the grain over an almost even ground. */
export function rayFleckSheet(frame: Frame, shares: readonly number[], seed: number): Sheet {
  const { width, height } = frame;
  const [ds, dt] = texelSize(frame);
  const random = mulberry32(seed ^ 0x5ec7);
  const density = fractalNoise(width, height, frame.width_mm / 260, frame.height_mm / 34, 3, seed + 7);
  const stripe = fractalNoise(width, height, frame.width_mm / 700, frame.height_mm / 26, 3, seed + 8, 0.6);
  const fibre = fractalNoise(width, height, frame.width_mm / 45, frame.height_mm / 2.4, 2, seed + 9, 0.7);
  const presence: Float32Array[] = [];
  for (const share of shares) {
    const field = new Float32Array(width * height);
    // Spindles fall at random and may overlap: a share p needs -ln(1 - p) of the area thrown, at a mean weight of 0.75.
    const spindle = 0.6 * LENGTH_MM * WIDTH_MM * 0.75;
    const count = Math.round((-Math.log(1 - Math.min(share, 0.8)) * frame.width_mm * frame.height_mm) / spindle);
    for (let n = 0; n < count; n++) {
      const cx = random() * width;
      const cy = random() * height;
      const here = density[Math.floor(cy) * width + Math.floor(cx)]!;
      if (random() > 0.62 + 0.22 * here) continue;
      const size = 0.55 + 0.9 * random();
      const a = (LENGTH_MM * size) / 2;
      const b = (WIDTH_MM * (0.6 + 0.4 * size)) / 2;
      const tilt = 0.1 * (random() - 0.5);
      const dark = 0.5 + 0.5 * random();
      const halfX = Math.ceil(a / ds) + 1;
      const halfY = Math.ceil(b / dt) + 1;
      const x0 = Math.floor(cx);
      const y0 = Math.floor(cy);
      const first = (((x0 - halfX) % width) + width) % width;
      for (let dy = -halfY; dy <= halfY; dy++) {
        const row = ((((y0 + dy) % height) + height) % height) * width;
        const py = (y0 + dy + 0.5 - cy) * dt;
        let column = first - 1;
        for (let dx = -halfX; dx <= halfX; dx++) {
          column = column + 1 === width ? 0 : column + 1;
          const px = (x0 + dx + 0.5 - cx) * ds;
          const along = Math.abs(px) / a;
          if (along >= 1) continue;
          const reach = b * (1 - along * along);
          const cover = Math.min(1, (reach - Math.abs(py - tilt * px)) / dt + 0.5);
          if (cover <= 0) continue;
          const i = row + column;
          if (cover * dark > field[i]!) field[i] = cover * dark;
        }
      }
    }
    presence.push(field);
  }
  const gain = new Float32Array(width * height);
  for (let i = 0; i < gain.length; i++) gain[i] = 1 + 0.018 * stripe[i]! + 0.016 * fibre[i]!;
  return { presence, edge: null, gain };
}
