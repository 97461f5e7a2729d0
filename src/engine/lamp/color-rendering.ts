import { chromaticityFromXyz, uv1960FromXy } from '../color/chromaticity';
import { cctDuv } from '../color/correlated-temperature';
import type { White, Xyz } from '../color/types';
import { whiteOf, xyzFromReflectance } from '../color/xyz';
import { DAYLIGHT_MAX_K, daylightSpd } from '../spectrum/daylight';
import { reflectanceSpd } from '../spectrum/grid';
import { observer2 } from '../spectrum/observers';
import { planckSpd } from '../spectrum/planck';
import type { EmissionSpd } from '../spectrum/types';
import { TEST_COLOR_SAMPLES } from './test-color-samples.data';

/** Colour rendering of a light by CIE 13.3-1995. */
export interface ColorRendering {
  /** General index, the mean of R1-R8. */
  readonly ra: number;
  /** Special indices R1-R14: 100 is no shift; a strong shift is negative and stays so. */
  readonly r: readonly number[];
  /** Temperature of the reference light: black body below 5000 K, CIE daylight from there on. */
  readonly referenceCct_k: number;
  /** Distance of the light from its reference in CIE 1960 u, v. */
  readonly uvDistance: number;
  /** The light is further from its reference than 5.4e-3, where the indices lose their meaning (CIE 13.3). */
  readonly isOutsideTolerance: boolean;
}

/** 5000 K less what `cctDuv` may be off: a lamp of exactly 5000 K gets daylight, as CIE 13.3 says. */
const DAYLIGHT_FROM_K = 5000 - 0.01;
const UV_TOLERANCE = 5.4e-3;

const SAMPLES = TEST_COLOR_SAMPLES.map(reflectanceSpd);

/** A light and the test colours under it: CIE 1960 u, v, and Y with 100 for the perfect diffuser. */
export interface RenderedSamples {
  readonly white: Place;
  readonly samples: readonly Place[];
}

interface Place {
  readonly u: number;
  readonly v: number;
  readonly y: number;
}

/** The CCT of CIE daylight of 25000 K comes out a little higher. */
const BLUEST_K = DAYLIGHT_MAX_K + 100;

/**
 * Colour rendering indices of a light (CIE 13.3-1995; 2 degree observer, 5 nm sums).
 * Null where there is no reference light: the light has no correlated colour temperature (`cctDuv`: black, or too far
 * from the Planckian locus), or one above 25000 K, where CIE daylight ends.
 */
export function colorRendering(spd: EmissionSpd): ColorRendering | null {
  const temperature = cctDuv(whiteOf(spd, observer2));
  if (!temperature || temperature.cct_k > BLUEST_K) return null;
  const light = renderedSamples(spd);
  const reference = renderedSamples(renderingReference(Math.min(DAYLIGHT_MAX_K, temperature.cct_k)));
  const r = specialIndices(light, reference);
  const uvDistance = Math.hypot(light.white.u - reference.white.u, light.white.v - reference.white.v);
  return {
    ra: generalIndex(r),
    r,
    referenceCct_k: temperature.cct_k,
    uvDistance,
    isOutsideTolerance: uvDistance > UV_TOLERANCE,
  };
}

/** Reference light of CIE 13.3: black body below 5000 K, CIE daylight from there to 25000 K; beyond, it throws. */
export const renderingReference = (cct_k: number): EmissionSpd =>
  cct_k < DAYLIGHT_FROM_K ? planckSpd(cct_k) : daylightSpd(cct_k);

/** The test colour samples under a light with visible power, 2 degree observer. */
export const renderedSamples = (light: EmissionSpd): RenderedSamples => ({
  white: placeOf(whiteOf(light, observer2)),
  samples: SAMPLES.map((rho) => placeOf(xyzFromReflectance(rho, light, observer2))),
});

/** R1-R14 of a light against its reference (CIE 13.3-1995, 5.4-5.8). */
export function specialIndices(light: RenderedSamples, reference: RenderedSamples): number[] {
  const [cLight, dLight] = coneShares(light.white);
  const [cReference, dReference] = coneShares(reference.white);
  return light.samples.map((sample, i) => {
    const [cSample, dSample] = coneShares(sample);
    const c = (cReference / cLight) * cSample;
    const d = (dReference / dLight) * dSample;
    const scale = 1 / (16.518 + 1.481 * c - d);
    const adapted: Place = { u: (10.872 + 0.404 * c - 4 * d) * scale, v: 5.52 * scale, y: sample.y };
    return 100 - 4.6 * differenceUvw(adapted, reference.samples[i]!, reference.white);
  });
}

/** Ra from R1-R14. */
export const generalIndex = (r: readonly number[]): number => r.slice(0, 8).reduce((sum, index) => sum + index, 0) / 8;

function placeOf(xyz: Xyz<White>): Place {
  return { ...uv1960FromXy(chromaticityFromXyz(xyz)), y: xyz.y };
}

/** c and d of the von Kries adaptation that CIE 13.3 prescribes. */
const coneShares = ({ u, v }: Place): readonly [number, number] => [
  (4 - u - 10 * v) / v,
  (1.708 * v + 0.404 - 1.481 * u) / v,
];

/** Difference in the CIE 1964 uniform space U*V*W*. */
function differenceUvw(first: Place, second: Place, white: Place): number {
  const w1 = 25 * Math.cbrt(first.y) - 17;
  const w2 = 25 * Math.cbrt(second.y) - 17;
  const du = 13 * (w1 * (first.u - white.u) - w2 * (second.u - white.u));
  const dv = 13 * (w1 * (first.v - white.v) - w2 * (second.v - white.v));
  return Math.hypot(du, dv, w1 - w2);
}
