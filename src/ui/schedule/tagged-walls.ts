import type { SurfaceId } from '../../engine/surface';
import { drawElevation, drawIsland, type ElevationShape } from '../../kitchen/plan/elevation-drawing';
import type { ScheduleRow } from '../../kitchen/schedule/types';
import type { Kitchen, Wall } from '../../model/kitchen';

/** A tag where it stands on a drawing, mm. */
export interface PlacedTag {
  readonly tag: string;
  readonly surface: SurfaceId;
  readonly x: number;
  readonly z: number;
}

/** A drawing with its tags: x to the right, z up, mm. */
export interface TaggedWall {
  readonly id: Wall | 'island';
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly ElevationShape[];
  readonly tags: readonly PlacedTag[];
}

const WALLS: readonly Wall[] = ['back', 'left', 'right', 'front'];

/** Below and above a wall stand floor and ceiling as strips, mm, so that their tags have a place. */
export const STRIP_MM = 220;

/** The walls of a kitchen, and its island, with the tag of the schedule on every surface they show; floor and ceiling on the first. */
export function taggedWalls(kitchen: Kitchen, rows: readonly ScheduleRow[]): readonly TaggedWall[] {
  const tagOf = new Map(
    rows
      .filter(({ kind }) => kind !== 'grout' && kind !== 'extra')
      .flatMap(({ id, surfaces }) => surfaces.map((one) => [one, id])),
  );
  const island = drawIsland(kitchen);
  const drawn = WALLS.map((id) => {
    const { width_mm, height_mm, shapes } = drawElevation(kitchen, id);
    return { id, width: width_mm, height: height_mm, shapes };
  });
  const [first] = drawn;
  const flat = first
    ? (['floor', 'ceiling'] as const).flatMap((surface) => {
        const tag = tagOf.get(surface);
        const z = surface === 'floor' ? -STRIP_MM / 2 : first.height + STRIP_MM / 2;
        return tag === undefined ? [] : [{ tag, surface, x: first.width / 2, z }];
      })
    : [];
  return [
    ...drawn.map((wall, i) => ({ ...wall, tags: [...tagsOn(wall.shapes, tagOf), ...(i === 0 ? flat : [])] })),
    ...(island
      ? [
          {
            id: 'island' as const,
            width: island.width_mm,
            height: island.height_mm,
            shapes: island.shapes,
            tags: tagsOn(island.shapes, tagOf),
          },
        ]
      : []),
  ];
}

/** Items that stand on no drawing: what is small, hidden or between. */
export const notDrawn = (walls: readonly TaggedWall[], rows: readonly ScheduleRow[]): readonly ScheduleRow[] => {
  const drawn = new Set(walls.flatMap(({ tags }) => tags.map(({ tag }) => tag)));
  return rows.filter(({ id }) => !drawn.has(id));
};

/** One tag a surface, on the largest part of it that no later shape covers; every counter edge is long enough to carry one. */
function tagsOn(shapes: readonly ElevationShape[], tagOf: ReadonlyMap<SurfaceId, string>): readonly PlacedTag[] {
  const best = new Map<SurfaceId, { readonly area: number; readonly tag: PlacedTag }>();
  shapes.forEach((shape, i) => {
    const { surface } = shape;
    const tag = surface === null ? undefined : tagOf.get(surface);
    if (surface === null || tag === undefined) return;
    const place = openPlace(shape, shapes.slice(i + 1));
    if (!place || place.area <= (best.get(surface)?.area ?? 0)) return;
    best.set(surface, { area: place.area, tag: { tag, surface, x: place.x, z: place.z } });
  });
  // Two surfaces of one item side by side share a tag.
  const tags: PlacedTag[] = [];
  for (const { tag } of [...best.values()].sort((a, b) => b.area - a.area)) {
    if (!tags.some((one) => one.tag === tag.tag && distance(one, tag) < NEAR_MM)) tags.push(tag);
  }
  return tags;
}

/** Tags of one item nearer to each other than this say it once. */
const NEAR_MM = 600;

/** Parts of a shape are looked at on a grid so fine. */
const GRID = 9;

/** The middle of the largest grid cell block that nothing lies before; null where all is covered. */
function openPlace(
  { x, z, width, height }: ElevationShape,
  later: readonly ElevationShape[],
): { readonly x: number; readonly z: number; readonly area: number } | null {
  const covers = (px: number, pz: number) =>
    later.some((one) => px > one.x && px < one.x + one.width && pz > one.z && pz < one.z + one.height);
  const cells = Array.from({ length: GRID * GRID }, (_, i) => ({
    x: x + (width * ((i % GRID) + 0.5)) / GRID,
    z: z + (height * (Math.floor(i / GRID) + 0.5)) / GRID,
  })).filter((cell) => !covers(cell.x, cell.z));
  if (cells.length === 0) return null;
  const middle = { x: mean(cells.map((cell) => cell.x)), z: mean(cells.map((cell) => cell.z)) };
  const near = [...cells].sort((a, b) => distance(a, middle) - distance(b, middle))[0]!;
  return { ...near, area: (cells.length / GRID ** 2) * width * height };
}

const mean = (values: readonly number[]): number => values.reduce((sum, one) => sum + one, 0) / values.length;

const distance = (a: { x: number; z: number }, b: { x: number; z: number }): number => Math.hypot(a.x - b.x, a.z - b.z);
