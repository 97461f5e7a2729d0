import type { PhotometricWeb } from './types';

/**
 * The web of the same lamp turned over about its length (horizontal angle 0 stays): what went up goes down. For a face that
 * looks up, or a lamp that was measured with all its light above 90 degrees.
 */
export function turnedOver({ vertical_deg, horizontal_deg, candela }: PhotometricWeb): PhotometricWeb {
  const rows = vertical_deg.length;
  const columns = horizontal_deg.length;
  // A half or a quarter says the same of both sides, so only a full circle runs the other way.
  const isFull = horizontal_deg[columns - 1] === 360;
  const turned = new Float64Array(candela.length);
  for (let j = 0; j < columns; j++) {
    const from = isFull ? columns - 1 - j : j;
    for (let i = 0; i < rows; i++) turned[j * rows + i] = candela[from * rows + rows - 1 - i]!;
  }
  return {
    vertical_deg: vertical_deg.map((_, i) => 180 - vertical_deg[rows - 1 - i]!),
    horizontal_deg: isFull ? horizontal_deg.map((_, j) => 360 - horizontal_deg[columns - 1 - j]!) : horizontal_deg,
    candela: turned,
  };
}
