import { failure, type Problem, type Result, success } from '../result';
import { daylightSpd, lightById, planckSpd } from '../spectrum/lights';
import type { EmissionSpd } from '../spectrum/types';
import { blendLights } from './blend';
import { type LightKind, lightParts } from './light-parts';
import { phosphorLedSpd } from './phosphor-led';

/** Where CIE daylight is defined, and black bodies that are lights at all, K. */
const DAYLIGHT_K = { from: 4000, to: 25000 };
const PLANCK_K = { from: 1000, to: 25000 };

const MOST_KEPT = 128;
const kept = new Map<string, Result<EmissionSpd>>();

/**
 * A light by its words: a CIE light (`D65`, `LED-B3`), `planck:2856`, `daylight:5600` (CIE daylight of that colour
 * temperature), `led:2700,90` (`phosphorLedSpd`; without the second number Ra 80), or a blend in relative lux,
 * `0.6 led:2700,90 + 0.4 FL11`. The scale of the spectrum is arbitrary (`perLux` sets it). Answers are kept, so the
 * array is shared: do not write to it.
 * Refused, with what to write instead: words that name no light, numbers out of range, blends without light.
 */
export function lightFromWords(words: string): Result<EmissionSpd> {
  const known = kept.get(words);
  if (known) return known;
  const made = makeLight(words);
  // Oldest first: a Map keeps the order of insertion.
  if (kept.size >= MOST_KEPT) kept.delete(kept.keys().next().value!);
  kept.set(words, made);
  return made;
}

/** A plain name for a light in words: "LED 2700 K, Ra 90", "CIE D65", "60% ... + 40% ..."; unknown words stay as they are. */
export function lightName(words: string): string {
  const parts = lightParts(words);
  if (!parts.ok) return words.trim();
  const sum = parts.value.reduce((total, { level }) => total + level, 0);
  const [only, ...more] = parts.value;
  if (more.length === 0) return kindName(only!.light);
  if (!(sum > 0)) return words.trim();
  return parts.value.map(({ level, light }) => `${Math.round((100 * level) / sum)}% ${kindName(light)}`).join(' + ');
}

function makeLight(words: string): Result<EmissionSpd> {
  const parts = lightParts(words);
  if (!parts.ok) return parts;
  const lights: { spd: EmissionSpd; level: number }[] = [];
  for (const { level, light } of parts.value) {
    const spd = lightOfKind(light);
    if (!spd.ok) return spd;
    lights.push({ spd: spd.value, level });
  }
  const [only, ...more] = lights;
  return more.length === 0 && only!.level === 1 ? success(only!.spd) : blendLights(lights);
}

function lightOfKind(light: LightKind): Result<EmissionSpd> {
  switch (light.kind) {
    case 'cie':
      return success(lightById(light.id)!);
    case 'led':
      return phosphorLedSpd(light);
    case 'planck':
      return within(light.cct_k, PLANCK_K) ? success(planckSpd(light.cct_k)) : failure(rangeProblem(light, PLANCK_K));
    case 'daylight':
      return within(light.cct_k, DAYLIGHT_K)
        ? success(daylightSpd(light.cct_k))
        : failure(rangeProblem(light, DAYLIGHT_K));
  }
}

const within = (cct_k: number, { from, to }: { from: number; to: number }): boolean => cct_k >= from && cct_k <= to;

const rangeProblem = (
  { kind, cct_k }: { readonly kind: string; readonly cct_k: number },
  { from, to }: { from: number; to: number },
): Problem => ({
  code: 'light-temperature',
  text: `${kind}:${cct_k} is outside ${from}-${to} K.`,
  remedy: `Write ${kind}: and a color temperature from ${from} to ${to} K.`,
});

function kindName(light: LightKind): string {
  switch (light.kind) {
    case 'cie':
      return `CIE ${light.id}`;
    case 'led':
      return `LED ${light.cct_k} K, Ra ${light.ra}`;
    case 'planck':
      return `Black body ${light.cct_k} K`;
    case 'daylight':
      return `Daylight ${light.cct_k} K`;
  }
}
