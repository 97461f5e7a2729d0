import { differenceCiede2000 } from '../../engine/color/difference';
import { xyzD65FromLinearSrgb } from '../../engine/color/display';
import { labD65FromXyzD65 } from '../../engine/color/lab';
import { decodeSrgb, encodeSrgb } from '../../engine/color/srgb-transfer';
import type { SurfaceId } from '../../engine/surface';
import type { CopiedLook, LookColor, LookSurface } from '../../model/look';
import type { POINTS } from '../words/look';

/** A decoded picture: sRGB, four bytes a pixel, rows from the top. */
export interface PicturePixels {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8ClampedArray;
}

export type PointSurface = keyof typeof POINTS.surfaces;

export interface PicturePoint {
  readonly id: number;
  /** Pixels from the left and the top. */
  readonly x: number;
  readonly y: number;
  readonly surface: PointSurface;
  readonly part: 'flat' | 'vein';
}

export interface PointColor {
  /** Mean in linear light, written as a screen color. */
  readonly hex: string;
  /** Root mean square CIEDE2000 distance of the pixels from that mean. */
  readonly spreadDe00: number;
  /** Too many pixels are at the end of the scale. */
  readonly isClipped: boolean;
}

/** Radius of the disc a point averages, pixels: grain and noise go, a tile's own color stays. Our judgment. */
export const RADIUS_PX = 6;

/** Code values from which a channel says nothing more, and the share of such pixels that spoils a point. Our judgment. */
const BURNT = 254;
const BLACK = 3;
const SPOILED = 0.1;

/** Color around a point, averaged over a disc in linear light. */
export function colorAt({ width, height, rgba }: PicturePixels, x: number, y: number): PointColor {
  const sum = [0, 0, 0];
  const pixels: (readonly [number, number, number])[] = [];
  let spoiled = 0;
  for (let dy = -RADIUS_PX; dy <= RADIUS_PX; dy++) {
    for (let dx = -RADIUS_PX; dx <= RADIUS_PX; dx++) {
      const [px, py] = [Math.round(x) + dx, Math.round(y) + dy];
      if (dx * dx + dy * dy > RADIUS_PX * RADIUS_PX || px < 0 || py < 0 || px >= width || py >= height) continue;
      const at = 4 * (py * width + px);
      const rgb = [rgba[at]!, rgba[at + 1]!, rgba[at + 2]!] as const;
      if (Math.max(...rgb) >= BURNT || Math.max(...rgb) <= BLACK) spoiled++;
      rgb.forEach((code, k) => {
        sum[k] = sum[k]! + decodeSrgb(code / 255);
      });
      pixels.push(rgb);
    }
  }
  const mean = sum.map((total) => Math.round(255 * encodeSrgb(total / pixels.length))) as [number, number, number];
  const lab = labOfSrgb(mean);
  const squares = pixels.reduce((total, rgb) => total + differenceCiede2000(labOfSrgb(rgb), lab) ** 2, 0);
  return {
    hex: hexOf(mean),
    spreadDe00: Math.sqrt(squares / pixels.length),
    isClipped: spoiled / pixels.length > SPOILED,
  };
}

const labOfSrgb = ([r, g, b]: readonly [number, number, number]) =>
  labD65FromXyzD65(xyzD65FromLinearSrgb({ r: decodeSrgb(r / 255), g: decodeSrgb(g / 255), b: decodeSrgb(b / 255) }));

const hexOf = (rgb: readonly number[]): string => `#${rgb.map((code) => code.toString(16).padStart(2, '0')).join('')}`;

/** Share of a surface that a vein is taken to cover: points do not say. Our judgment. */
const VEIN_SHARE = 0.15;

/** The look that points make; those where nothing can be read are left out. */
export function lookOfPoints(
  points: readonly PicturePoint[],
  colorOf: (point: PicturePoint) => PointColor,
  named: Pick<CopiedLook, 'id' | 'name'>,
): CopiedLook {
  const readable = points.filter((point) => !colorOf(point).isClipped);
  const surfaces = [...new Set(readable.map(({ surface }) => surface))].map((surface): LookSurface => {
    const own = readable.filter((point) => point.surface === surface);
    const meanOf = (part: PicturePoint['part']) =>
      meanHex(own.filter((one) => one.part === part).map((one) => colorOf(one).hex));
    const [flat, vein] = [meanOf('flat'), meanOf('vein')];
    if (flat !== null && vein !== null) {
      const colors = [photographed('base', 1 - VEIN_SHARE, flat), photographed('vein', VEIN_SHARE, vein)];
      return { surface: surface as SurfaceId, colors, pattern: 'veined' };
    }
    return { surface: surface as SurfaceId, colors: [photographed('base', 1, (flat ?? vein)!)] };
  });
  return { ...named, source: 'picture', surfaces };
}

const photographed = (role: LookColor['role'], share: number, hex: string): LookColor => ({
  role,
  share,
  color: { kind: 'hex', hex },
  provenance: 'photo',
});

/** Mean of several screen colors in linear light; null of none. */
function meanHex(list: readonly string[]): string | null {
  if (list.length === 0) return null;
  const mean = [1, 3, 5].map((at) => {
    const sum = list.reduce((total, hex) => total + decodeSrgb(Number.parseInt(hex.slice(at, at + 2), 16) / 255), 0);
    return Math.round(255 * encodeSrgb(sum / list.length));
  });
  return hexOf(mean);
}
