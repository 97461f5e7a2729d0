import { yFromLightness } from '../../color/lab';
import { lrvPerY } from '../../color/lrv';
import { mixedLab } from '../../color/mixed-lab';
import type { Lab } from '../../color/types';
import type { DecisionState, SurfaceId } from '../../surface';
import type { JudgeInput } from '../input';
import { inDecisionOrder } from '../judge';
import { type PlacedColor, placedColors } from '../pairs';
import type { SampleColor } from '../sample-color';
import { viewWeights } from '../view-weights';

/** The pattern a finish carries in itself, as far as relations need it. */
export interface PatternFact {
  readonly kind: string;
  /** Size of its figure, mm; null where it has none or it is not known, as in a picture. */
  readonly scale_mm: number | null;
}

/** A scheme to take relations from, or to check them in. */
export interface RelationScheme {
  /** Only sample colors, states and shares of the view are read; without views a typical kitchen stands in. */
  readonly input: JudgeInput;
  readonly patterns: ReadonlyMap<SurfaceId, PatternFact>;
}

interface SeenColor {
  readonly color: SampleColor;
  /** Share of its surface, all of it 1. */
  readonly weight: number;
  /** Light reflectance value per Y. */
  readonly lrvPerY: number;
}

/** A surface with its colors as samples. */
export interface SeenSurface {
  readonly surface: SurfaceId;
  readonly state: DecisionState;
  readonly finish: string;
  readonly colors: readonly SeenColor[];
  readonly pattern: PatternFact | null;
}

/** A scheme as relations see it: by its samples, and how much of each surface one sees. */
export interface SeenScheme {
  readonly surfaces: readonly SeenSurface[];
  /** Share of each overview, by surface. */
  readonly views: ReadonlyMap<SurfaceId, readonly number[]>;
  /** No view was given, and a typical one stands in. */
  readonly isTypicalView: boolean;
  readonly placed: readonly PlacedColor[];
}

export function seenScheme({ input: given, patterns }: RelationScheme): SeenScheme {
  const input = inDecisionOrder(given);
  const placed = placedColors(input);
  const views = viewWeights(input);
  return {
    surfaces: input.surfaces.map((judged) => {
      const { components } = judged.finish;
      const total = components.reduce((sum, one) => sum + one.share, 0);
      const own = placed.filter((one) => one.surface === judged);
      return {
        surface: judged.surface,
        state: judged.state,
        finish: judged.finish.id,
        colors: components.map((component, i) => ({
          color: own[i]!.color,
          weight: component.share / total,
          lrvPerY: lrvPerY(component.spectrum),
        })),
        pattern: patterns.get(judged.surface) ?? null,
      };
    }),
    views: new Map(input.surfaces.map(({ surface }, i) => [surface, views.map((view) => view.surfaces[i]!)])),
    isTypicalView: views.every(({ viewpoint }) => viewpoint === null),
    placed,
  };
}

/** The same scheme had its samples other colors, by key. */
export const recoloredScheme = (scheme: SeenScheme, samples: ReadonlyMap<string, SampleColor>): SeenScheme => ({
  ...scheme,
  surfaces: scheme.surfaces.map((surface) => ({
    ...surface,
    colors: surface.colors.map((seen) => {
      const drawn = samples.get(seen.color.key);
      return drawn ? { ...seen, color: { ...drawn, share: seen.color.share } } : seen;
    }),
  })),
});

/** The same scheme with other surfaces in place of those of the same name. */
export const replacedSurfaces = (scheme: SeenScheme, by: readonly SeenSurface[]): SeenScheme => ({
  ...scheme,
  surfaces: scheme.surfaces.map((seen) => by.find(({ surface }) => surface === seen.surface) ?? seen),
});

/** The color that covers most of a surface. */
export const mainColor = ({ colors }: SeenSurface): SampleColor =>
  colors.reduce((most, one) => (one.weight > most.weight ? one : most)).color;

const averages = new WeakMap<SeenSurface, Lab<'D65-2'>>();

/** Area mean of a surface, mixed in linear light, CIELAB D65. */
export function averageOf(surface: SeenSurface): Lab<'D65-2'> {
  const known = averages.get(surface);
  if (known) return known;
  const mean = mixedLab(
    surface.colors.map(({ color }) => color.lab),
    surface.colors.map(({ weight }) => weight),
  );
  averages.set(surface, mean);
  return mean;
}

/** Light reflectance value of a surface, 0-100, area mean. */
export const lrvOf = ({ colors }: SeenSurface): number =>
  colors.reduce((sum, { color, weight, lrvPerY: per }) => sum + weight * per * yFromLightness(color.lab.l), 0);

/** The surfaces of a list that are there. */
const seenOf = (scheme: SeenScheme, surfaces: readonly SurfaceId[]): readonly SeenSurface[] =>
  scheme.surfaces.filter(({ surface }) => surfaces.includes(surface));

/** One of each finish among the surfaces of a list: what has to be looked at. */
export function finishesOf(scheme: SeenScheme, surfaces: readonly SurfaceId[]): readonly SeenSurface[] {
  const known = new Set<string>();
  return seenOf(scheme, surfaces).filter(({ finish }) => !known.has(finish) && known.add(finish));
}
