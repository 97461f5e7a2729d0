import type { Shot } from './page';

export type Rgb = readonly [number, number, number];

/** Surroundings of a point that have to be even, in pixels to each side. */
const REACH = 3;

/** Whether the picture is even about a point, to so many code values. */
export function isEven(picture: Shot, x: number, y: number, most = 2): boolean {
  const center = pixelAt(picture, x, y);
  for (let dy = -REACH; dy <= REACH; dy++) {
    for (let dx = -REACH; dx <= REACH; dx++) {
      const near = pixelAt(picture, x + dx, y + dy);
      if (near.some((value, channel) => Math.abs(value - center[channel]!) > most)) return false;
    }
  }
  return true;
}

/** The color of a pixel, sRGB bytes. */
export function pixelAt({ width, bytes }: Shot, x: number, y: number): Rgb {
  const at = 4 * (y * width + x);
  return [bytes[at]!, bytes[at + 1]!, bytes[at + 2]!];
}
