import type { SurfaceId } from '../../surface';
import type { SeenScheme, SeenSurface } from './seen-scheme';

/** Surfaces that are one place to the eye: of one family, in one finish. */
export interface LookPlace {
  readonly surfaces: readonly SurfaceId[];
  /** Any of them: all have the same finish. */
  readonly seen: SeenSurface;
  /** Large enough to count in lightness and pattern. */
  readonly isLarge: boolean;
}

/**
 * The places a look is read by, in decision order. Ceilings hang in other light than what they are held against; sinks,
 * faucets, appliances and trim are small and seldom chosen for a look. Our judgment.
 */
const FAMILIES: readonly { readonly surfaces: readonly SurfaceId[]; readonly isLarge: boolean }[] = [
  { surfaces: ['counter', 'island-counter'], isLarge: true },
  { surfaces: ['floor'], isLarge: true },
  { surfaces: ['base-fronts', 'wall-fronts', 'tall-fronts', 'island-fronts'], isLarge: true },
  { surfaces: ['backsplash'], isLarge: true },
  { surfaces: ['wall'], isLarge: true },
  { surfaces: ['hardware'], isLarge: false },
];

export function placesOf(scheme: SeenScheme): readonly LookPlace[] {
  return FAMILIES.flatMap(({ surfaces, isLarge }) => {
    const byFinish = new Map<string, SeenSurface[]>();
    for (const seen of scheme.surfaces) {
      if (!surfaces.includes(seen.surface)) continue;
      byFinish.set(seen.finish, [...(byFinish.get(seen.finish) ?? []), seen]);
    }
    return [...byFinish.values()].map((list) => ({
      surfaces: list.map(({ surface }) => surface),
      seen: list[0]!,
      isLarge,
    }));
  });
}

/** Every two of a list, once, in its order. */
export function pairsAmong<T>(list: readonly T[]): readonly (readonly [T, T])[] {
  return list.flatMap((one, i) => list.slice(i + 1).map((other) => [one, other] as const));
}

/** The surfaces of a family, as a picture's point on one of them stands for all that it does not show apart. */
export const familyInLook = (surface: SurfaceId): readonly SurfaceId[] =>
  FAMILIES.find(({ surfaces }) => surfaces.includes(surface))?.surfaces ?? [surface];
