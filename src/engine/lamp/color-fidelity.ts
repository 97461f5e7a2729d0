import { ciecam02FromXyz } from '../appearance/ciecam02';
import { type Ucs, ucsDifference, ucsFromCam } from '../appearance/ucs';
import { viewingConditions } from '../appearance/viewing-conditions';
import { cctDuv } from '../color/correlated-temperature';
import { whiteOf, xyzFromEmission, xyzFromReflectance } from '../color/xyz';
import { DAYLIGHT_MAX_K, daylightSpd } from '../spectrum/daylight';
import { emissionSpd } from '../spectrum/grid';
import { observer2, observer10 } from '../spectrum/observers';
import { planckSpd } from '../spectrum/planck';
import type { EmissionSpd, ReflectanceSpd } from '../spectrum/types';

/** Colour fidelity of a light (CIE 224:2017) and its gamut (ANSI/IES TM-30-20). */
export interface ColorFidelity {
  /** Fidelity index, 0-100: how little the samples change against the reference light. */
  readonly rf: number;
  /** Gamut index: above 100 the samples are more colourful than under the reference. Null where a bin has no sample. */
  readonly rg: number | null;
  /** Fidelity of each sample, in their order. */
  readonly rfi: readonly number[];
  /** The 16 sectors of hue, from 0 degrees on: what a colour vector graphic shows. */
  readonly bins: readonly HueBin[];
}

/** The samples of one hue sector of 22.5 degrees, by their hue under the reference: their means in CAM02-UCS. */
export interface HueBin {
  readonly hue_deg: number;
  readonly count: number;
  /** Null where the sector holds no sample. */
  readonly reference: ChromaPlace | null;
  readonly light: ChromaPlace | null;
}

interface ChromaPlace {
  readonly a: number;
  readonly b: number;
}

const PLANCK_TO_K = 4000;
const DAYLIGHT_FROM_K = 5000;
const BIN_COUNT = 16;
/** Scaling factor of CIE 224:2017 (and of TM-30 since 2018). */
const SCALE = 6.73;

/**
 * Rf and Rg of a light (CIE 224:2017; ANSI/IES TM-30-20): CIECAM02-UCS, 10 degree observer, colour temperature by the 2
 * degree observer. They are the published indices only with the 99 colour evaluation samples of CIE 224, which this
 * product does not carry (their terms do not let it): the caller brings them. Other samples give figures of the same
 * kind, not Rf and Rg.
 * Null where there is no reference light (no colour temperature, or above 25000 K), and without samples.
 */
export function colorFidelity(spd: EmissionSpd, samples: readonly ReflectanceSpd[]): ColorFidelity | null {
  const temperature = cctDuv(whiteOf(spd, observer2));
  if (!temperature || temperature.cct_k > DAYLIGHT_MAX_K || samples.length === 0) return null;
  const light = placesUnder(spd, samples);
  const reference = placesUnder(fidelityReference(temperature.cct_k), samples);
  const differences = light.map((place, i) => ucsDifference(place, reference[i]!));
  const bins = hueBins(light, reference);
  return {
    rf: fidelity(differences.reduce((sum, difference) => sum + difference, 0) / differences.length),
    rg: gamut(bins),
    rfi: differences.map(fidelity),
    bins,
  };
}

/**
 * Reference light of CIE 224:2017: black body up to 4000 K, CIE daylight from 5000 K, between them both in proportion, at
 * equal Y of the 10 degree observer. Above 25000 K it throws.
 */
export function fidelityReference(cct_k: number): EmissionSpd {
  if (cct_k <= PLANCK_TO_K) return planckSpd(cct_k);
  if (cct_k >= DAYLIGHT_FROM_K) return daylightSpd(cct_k);
  const share = (cct_k - PLANCK_TO_K) / (DAYLIGHT_FROM_K - PLANCK_TO_K);
  const [planck, daylight] = [planckSpd(cct_k), daylightSpd(cct_k)];
  const planckUnit = (1 - share) / xyzFromEmission(planck, observer10).y;
  const daylightUnit = share / xyzFromEmission(daylight, observer10).y;
  return emissionSpd(planck.map((power, i) => planckUnit * power + daylightUnit * daylight[i]!));
}

function placesUnder(light: EmissionSpd, samples: readonly ReflectanceSpd[]): Ucs[] {
  const white = whiteOf<'setting-10'>(light, observer10);
  // CIE 224: adapting luminance 100 cd/m2, background 20, average surround, complete adaptation.
  const conditions = viewingConditions({ white, la_cd_m2: 100, yb: 20, degree: 1 });
  return samples.map((rho) =>
    ucsFromCam(ciecam02FromXyz(xyzFromReflectance<'setting-10'>(rho, light, observer10), conditions)),
  );
}

/** From a colour difference to an index that does not fall below 0. */
const fidelity = (difference: number): number => 10 * Math.log1p(Math.exp((100 - SCALE * difference) / 10));

function hueBins(light: readonly Ucs[], reference: readonly Ucs[]): HueBin[] {
  const width_deg = 360 / BIN_COUNT;
  const members: number[][] = Array.from({ length: BIN_COUNT }, () => []);
  reference.forEach(({ a, b }, i) => {
    const hue_deg = ((Math.atan2(b, a) * 180) / Math.PI + 360) % 360;
    members[Math.floor(hue_deg / width_deg)]!.push(i);
  });
  return members.map((indices, bin) => ({
    hue_deg: (bin + 0.5) * width_deg,
    count: indices.length,
    reference: mean(indices.map((i) => reference[i]!)),
    light: mean(indices.map((i) => light[i]!)),
  }));
}

function mean(places: readonly ChromaPlace[]): ChromaPlace | null {
  if (places.length === 0) return null;
  const sum = places.reduce((total, { a, b }) => ({ a: total.a + a, b: total.b + b }), { a: 0, b: 0 });
  return { a: sum.a / places.length, b: sum.b / places.length };
}

/** Area of the polygon through the bins' means, in percent of that under the reference. */
function gamut(bins: readonly HueBin[]): number | null {
  const light = bins.flatMap((bin) => bin.light ?? []);
  const reference = bins.flatMap((bin) => bin.reference ?? []);
  return light.length < BIN_COUNT ? null : (100 * area(light)) / area(reference);
}

function area(corners: readonly ChromaPlace[]): number {
  return corners.reduce((sum, { a, b }, i) => {
    const next = corners[(i + 1) % corners.length]!;
    return sum + (a * next.b - next.a * b) / 2;
  }, 0);
}
