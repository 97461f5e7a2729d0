import { differenceParts } from '../color/difference';
import { chromaOf } from '../color/lab';
import type { Lab } from '../color/types';
import { averageComponent } from '../finish/average';
import { lightShare } from '../light/light-mix';
import { undertoneOf } from '../naming/undertone';
import type { SurfaceId } from '../surface';
import type { Severity } from './assessment';
import type { InstalledReading, JudgedSurface, JudgeInput } from './input';
import { PAIR } from './pair';
import { surfacesTint, withoutTint } from './place-tint';
import { isFitting } from './sample-color';
import { mainReading } from './view-weights';

/** Chroma part of CIEDE2000 between sample and place: a published acceptable limit (1.8) and twice it (our judgment). */
export const BOUNCE = { visible: 3.6, note: PAIR.acceptable } as const;

/** A surface whose place lends it a tint that its sample does not have. */
export interface BounceTint {
  readonly surface: SurfaceId;
  readonly finish: string;
  readonly severity: Severity;
  readonly chromaPart: number;
  readonly sampleName: string;
  readonly installedName: string;
  /** a*, b* of a perfect white there, the mix of lights taken off. */
  readonly tint: readonly [a: number, b: number];
  /** True where a mix of lights was taken off. */
  readonly isMixed: boolean;
  /** The strongest of the other surfaces, with its share of what surfaces bring; null while unknown or one of many. */
  readonly source: { readonly surface: SurfaceId; readonly share: number } | null;
}

/** A finish all around deepens its own color, which is what one sees who chooses it: a note at most. Our judgment. */
function isOwnColor(s: JudgedSurface, reading: InstalledReading, { surfaces }: JudgeInput): boolean {
  const around = surfaces.filter((other) => !isFitting(other.surface));
  if (around.every(({ finish }) => finish.id === s.finish.id)) return true;
  const same = new Set<SurfaceId>(around.filter(({ finish }) => finish.id === s.finish.id).map((one) => one.surface));
  const shares = reading.tintFrom ?? [];
  const whole = shares.reduce((sum, { share }) => sum + share, 0);
  const own = shares.reduce((sum, { surface, share }) => sum + (same.has(surface) ? share : 0), 0);
  return whole > 0 && own > OWN_MIN * whole;
}

/** From this share of the tint on it is the finish's own. */
const OWN_MIN = 0.5;

/** Nobody judges a color by these: what their place lends them is a note at most. Our judgment. */
const LESSER: readonly SurfaceId[] = ['ceiling', 'plinth', 'frame'];

/** Below this share the strongest source is one of many: naming it would mislead. Our judgment. */
const SOURCE_MIN = 0.3;

/**
 * Tint by bounce on surfaces that are not full colors (U < 4), fittings or metal, read where they are seen most.
 * Visible from a chroma part of 3.6 if the ISCC-NBS name changes too, a note from 1.8; never grave.
 */
export function bounceTints(input: JudgeInput): BounceTint[] {
  return input.surfaces.flatMap((s) => {
    // Metals mirror more than they scatter: the diffuse reading says little of them.
    if (isFitting(s.surface) || s.finish.class === 'metal') return [];
    const reading = mainReading(s);
    const found = reading && bounceTint(s, reading);
    if (!found) return [];
    const isLess = LESSER.includes(s.surface) || isOwnColor(s, reading, input);
    return [isLess ? { ...found, severity: 'note' as const } : found];
  });
}

/**
 * How grave a tint is, for a finish of that sample color read as `average` in its place; null for none worth telling.
 * Both CIELAB D65, 2 degree.
 */
export const tintSeverity = (sample: Lab<'D65-2'>, average: Lab<'D65-2'>, reading: InstalledReading): Severity | null =>
  tintNumbers(sample, average, reading)?.severity ?? null;

type TintNumbers = Omit<BounceTint, 'surface' | 'finish' | 'source'>;

function tintNumbers(
  sample: Lab<'D65-2'>,
  whole: Lab<'D65-2'>,
  { placeWhite, lightWhite }: InstalledReading,
): TintNumbers | null {
  // The mix of lights is no surface's doing: it is taken off first.
  const { white, average, isMixed } = surfacesTint({ placeWhite, lightWhite, average: whole });
  const chromaPart = differenceParts(sample, average).chroma;
  if (chromaPart < BOUNCE.note) return null;
  // What stays when the tint of the place is taken off is the lamp's doing, not the bounce's.
  const rest = differenceParts(sample, withoutTint(whole, placeWhite)).chroma;
  const limit = chromaPart >= BOUNCE.visible ? BOUNCE.visible : BOUNCE.note;
  if (rest >= limit || chromaOf(white) === 0) return null;
  const undertone = undertoneOf(sample);
  if (undertone.strength >= PAIR.colorStrength) return null;
  const installedName = undertoneOf(average).name;
  const renamed = installedName !== undertone.name;
  return {
    severity: chromaPart >= BOUNCE.visible && renamed ? 'visible' : 'note',
    chromaPart,
    sampleName: undertone.name,
    installedName,
    tint: [white.a, white.b],
    isMixed,
  };
}

function bounceTint(s: JudgedSurface, reading: InstalledReading): BounceTint | null {
  const numbers = tintNumbers(averageComponent(s.finish.components).labD65, reading.average, reading);
  return (
    numbers && { ...numbers, surface: s.surface, finish: s.finish.id, source: strongestSource(s.surface, reading) }
  );
}

function strongestSource(surface: SurfaceId, reading: InstalledReading): BounceTint['source'] {
  // What a surface throws onto itself is no source one could name to people.
  const strongest = reading.tintFrom?.find((source) => source.surface !== surface) ?? null;
  const ofSurfaces = 1 - lightShare(reading.placeWhite, reading.lightWhite);
  const share = strongest && ofSurfaces > 0 ? Math.min(1, strongest.share / ofSurfaces) : 0;
  return strongest && share >= SOURCE_MIN ? { surface: strongest.surface, share } : null;
}
