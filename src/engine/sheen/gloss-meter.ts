import { INDEX_OF_GLOSS_STANDARD } from '../finish/specular';
import type { Vec3 } from '../light/types';
import { fresnelUnpolarized } from './fresnel';
import { facetDensity, seenByBoth, unit, type Widths } from './ggx';

/** ISO 2813:2014, 60 degree geometry: half angles in the plane of measurement and across it, rad. */
const HALF_SOURCE: readonly [number, number] = [halfAngle(0.75), halfAngle(2.5)];
const HALF_RECEPTOR: readonly [number, number] = [halfAngle(4.4), halfAngle(11.7)];

function halfAngle(whole_deg: number): number {
  return (whole_deg * Math.PI) / 360;
}

/** Reflectance of the gloss standard at 60 degrees: 0.1001. */
export const GLASS_AT_60 = fresnelUnpolarized(INDEX_OF_GLOSS_STANDARD, 0.5);

const SOURCE_STEPS = [3, 5] as const;
const RECEPTOR_STEPS = [64, 96] as const;

/**
 * Gloss units at 60 degrees that a glossmeter reads of a rough dielectric, by its mirror-like lobe alone: flux of the GGX lobe
 * from the source's image into the receptor over that of the smooth gloss standard (ISO 2813:2014). `widths` of the slopes in the
 * plane of measurement and across it, 0-1, 0 = smooth.
 */
export function glossMeterReading(widths: Widths, index: number): number {
  if (Math.min(...widths) <= 0) return (100 * fresnelUnpolarized(index, 0.5)) / GLASS_AT_60;
  let flux = 0;
  let sent = 0;
  for (let i = 0; i < SOURCE_STEPS[0]; i++) {
    for (let j = 0; j < SOURCE_STEPS[1]; j++) {
      const inPlane = HALF_SOURCE[0] * ((2 * i + 1) / SOURCE_STEPS[0] - 1);
      const across = HALF_SOURCE[1] * ((2 * j + 1) / SOURCE_STEPS[1] - 1);
      flux += fluxIntoReceptor(widths, index, inPlane, across);
      sent++;
    }
  }
  return (100 * flux) / sent / GLASS_AT_60;
}

/** Share of a beam that reaches the receptor; the beam's mirror image stands at these angles from the receptor's middle. */
function fluxIntoReceptor(widths: Widths, index: number, inPlane: number, across: number): number {
  const mirror = directionAt(inPlane, across);
  const toSource: Vec3 = [-mirror[0], -mirror[1], mirror[2]];
  // Nodes crowd about the mirror image as the lobe does: angle = 2 alpha sinh(t) from it.
  const a = nodesAbout(inPlane, HALF_RECEPTOR[0], 2 * widths[0], RECEPTOR_STEPS[0]);
  const b = nodesAbout(across, HALF_RECEPTOR[1], 2 * widths[1], RECEPTOR_STEPS[1]);
  let flux = 0;
  for (const [p, dp] of a) {
    for (const [q, dq] of b) {
      const out = directionAt(p, q);
      const half: Vec3 = [toSource[0] + out[0], toSource[1] + out[1], toSource[2] + out[2]];
      const length = Math.hypot(...half);
      // Reflected radiance per irradiance times the cosine out: F D G2 / (4 cos in).
      flux +=
        (fresnelUnpolarized(index, length / 2) *
          facetDensity(widths, unit(half)) *
          seenByBoth(widths, toSource, out) *
          solidAngle(p, q) *
          dp *
          dq) /
        (4 * toSource[2]);
    }
  }
  return flux;
}

/** Unit vector at angles in and across the plane of measurement from 60 degrees, as a flat receptor counts them. */
function directionAt(inPlane: number, across: number): Vec3 {
  const sin = Math.sqrt(3) / 2;
  const t = Math.tan(inPlane);
  const s = Math.tan(across);
  const length = Math.sqrt(1 + t * t + s * s);
  return [(sin + 0.5 * t) / length, s / length, (0.5 - sin * t) / length];
}

/** Solid angle per rad^2 of those angles. */
function solidAngle(inPlane: number, across: number): number {
  const t2 = Math.tan(inPlane) ** 2;
  const s2 = Math.tan(across) ** 2;
  return ((1 + t2) * (1 + s2)) / (1 + t2 + s2) ** 1.5;
}

/** Midpoints and widths of cells from -half to half. */
function nodesAbout(center: number, half: number, scale: number, count: number): [number, number][] {
  const from = Math.asinh((-half - center) / scale);
  const to = Math.asinh((half - center) / scale);
  const step = (to - from) / count;
  return Array.from({ length: count }, (_, i) => {
    const t = from + (i + 0.5) * step;
    return [center + scale * Math.sinh(t), scale * Math.cosh(t) * step];
  });
}
