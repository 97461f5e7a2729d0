import type { SurfaceId } from '../surface';
import type { InstalledReading, JudgedSurface, JudgeInput } from './input';

/** What one overview viewpoint sees: per surface and reading, shares of what is judged, summing to 1. */
export interface ViewWeights {
  /** Viewpoint id; null for the typical view used while nothing has been seen yet. */
  readonly viewpoint: string | null;
  /** In the order of the input's surfaces. */
  readonly surfaces: readonly number[];
}

/**
 * Area shares of the surfaces, one entry per overview viewpoint. A viewpoint's shares are scaled to sum 1 over the judged
 * surfaces, so openings do not count. An overview has floor, fronts, counter and wall in one view, as far as the scheme
 * has them; views that miss one are close-ups and count only while there is nothing better. Without any view a typical
 * kitchen overview stands in.
 */
export function viewWeights(input: JudgeInput): ViewWeights[] {
  const seen: ViewWeights[] = [];
  input.overviews.forEach((viewpoint, v) => {
    const shares = input.surfaces.map((s) => s.installed.reduce((sum, r) => sum + (r.viewShares[v] ?? 0), 0));
    const total = shares.reduce((sum, x) => sum + x, 0);
    if (total > 0) seen.push({ viewpoint, surfaces: shares.map((x) => x / total) });
  });
  if (seen.length === 0) return [typicalView(input.surfaces)];
  const overviews = seen.filter((view) => OVERVIEW.every((group) => shows(input.surfaces, view, group)));
  return overviews.length > 0 ? overviews : seen;
}

/** What an overview shows: one of each group, at least a hundredth of the view. */
const OVERVIEW: readonly (readonly SurfaceId[])[] = [
  ['floor'],
  ['base-fronts', 'wall-fronts', 'tall-fronts', 'island-fronts'],
  ['counter', 'island-counter'],
  ['wall'],
];
const SHOWN = 0.01;

function shows(surfaces: readonly JudgedSurface[], view: ViewWeights, group: readonly SurfaceId[]): boolean {
  const members = surfaces.flatMap((s, i) => (group.includes(s.surface) ? [view.surfaces[i]!] : []));
  return members.length === 0 || members.reduce((sum, x) => sum + x, 0) >= SHOWN;
}

/** Mean over the viewpoints; sums to 1. */
export const meanWeights = (views: readonly ViewWeights[]): number[] =>
  views[0]!.surfaces.map((_, i) => views.reduce((sum, v) => sum + v.surfaces[i]!, 0) / views.length);

/** Mean share of the overview views that one reading covers, 0-1. */
export const meanViewShare = (reading: InstalledReading): number =>
  reading.viewShares.length === 0 ? 0 : reading.viewShares.reduce((sum, x) => sum + x, 0) / reading.viewShares.length;

/** The reading of a surface that is seen most; null before the light is known. */
export function mainReading(surface: JudgedSurface): InstalledReading | null {
  let main: InstalledReading | null = null;
  for (const reading of surface.installed) {
    if (main === null || meanViewShare(reading) > meanViewShare(main)) main = reading;
  }
  return main;
}

/** Percent of a kitchen overview, computed once in a 4 x 3 x 2.5 m room with an island; split within fronts by our judgment. */
const TYPICAL_PERCENT: Partial<Record<SurfaceId, number>> = {
  'base-fronts': 15,
  'wall-fronts': 10,
  'tall-fronts': 10,
  'island-fronts': 14,
  wall: 20,
  backsplash: 10,
  floor: 9,
  counter: 7,
  'island-counter': 4,
  hardware: 1,
};

/** How much of a typical overview some surfaces fill, 0-1. */
export const typicalShare = (surfaces: readonly SurfaceId[]): number =>
  surfaces.reduce((sum, surface) => sum + (TYPICAL_PERCENT[surface] ?? 0), 0) / 100;

function typicalView(surfaces: readonly JudgedSurface[]): ViewWeights {
  const percent = surfaces.map((s) => TYPICAL_PERCENT[s.surface] ?? 0);
  const total = percent.reduce((sum, x) => sum + x, 0);
  // Nothing a kitchen is usually seen by: count every surface alike.
  const shares = total > 0 ? percent.map((x) => x / total) : surfaces.map(() => 1 / surfaces.length);
  return { viewpoint: null, surfaces: shares };
}
