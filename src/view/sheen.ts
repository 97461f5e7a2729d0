import { albedoRow } from '../engine/sheen/albedo';
import { baseReflectance, sheenOfFinish } from '../engine/sheen/sheen';
import type { SurfaceLook } from '../kitchen/look';

type Rgb = readonly [number, number, number];

/** What the picture needs of a finish that mirrors: the uniforms of sheen.glsl and the cone of mirror.glsl, by their names. */
export interface SheenUniforms {
  readonly mirrorPart: number;
  readonly mirrorAlbedo: Float32Array;
  readonly mirrorTint: Rgb;
  /** r, g, b of four components. */
  readonly bodyGain: Float32Array;
  /** 1 where component 1, 2 or 3 is the grout between pieces, which mirrors nothing. */
  readonly jointMask: Rgb;
  /** Half angle of what is mirrored together, rad: half of the lobe's light comes from within. */
  readonly cone: number;
  /** Along the brush lines and across them, of a brushed metal (brushed.glsl); null of anything else. */
  readonly brushWidths: readonly [number, number] | null;
}

const COMPONENTS = 4;
/** A channel that a finish hardly has stays as it is. */
const LEAST_CHANNEL = 1e-4;

/**
 * The sheen of a surface as it looks; null for a matt one. Its colours beside white stand for spectra, channel by channel: exact for
 * grays, and for others as far as the light's tint at the place is that of the setting.
 */
export function sheenOfLook({
  glossGu,
  metal,
  brushed,
  joint,
  flat,
}: Pick<SurfaceLook, 'glossGu' | 'metal' | 'brushed' | 'joint' | 'flat'>): SheenUniforms | null {
  const base = flat[0] ?? [0, 0, 0];
  const sheen = sheenOfFinish(glossGu, Math.min(1, Math.max(0, luminance(base))), metal, brushed);
  if (!sheen) return null;
  const bodyGain = new Float32Array(3 * COMPONENTS).fill(1);
  if (!metal) {
    flat.slice(0, COMPONENTS).forEach((color, component) => {
      if (component === joint) return;
      color.forEach((channel, k) => {
        if (channel > LEAST_CHANNEL) bodyGain[3 * component + k] = baseReflectance(sheen, channel) / channel;
      });
    });
  }
  return {
    mirrorPart: sheen.part,
    mirrorAlbedo: albedoRow(sheen.alpha, metal),
    mirrorTint: metal ? (base.map((channel) => baseReflectance(sheen, channel)) as unknown as Rgb) : [0, 0, 0],
    bodyGain,
    jointMask: [joint === 1 ? 1 : 0, joint === 2 ? 1 : 0, joint === 3 ? 1 : 0],
    cone: 2 * Math.atan(sheen.alpha),
    brushWidths: sheen.widths ?? null,
  };
}

/** Of linear sRGB, IEC 61966-2-1. */
const luminance = ([r, g, b]: Rgb): number => 0.2126 * r + 0.7152 * g + 0.0722 * b;
