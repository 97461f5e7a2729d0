import type { SurfaceId } from '../../engine/surface';
import type { Drawing, Shape } from '../../kitchen/drawings/types';
import type { ScheduleRow } from '../../kitchen/schedule/types';
import type { Box, Place } from './boxes';
import type { SheetLayout } from './sheet-layout';

/** A shape on paper, and what lies before it. */
export interface PaperShape {
  readonly box: Box;
  /** A side or a strip: what it belongs to carries the tag rather. */
  readonly isMinor: boolean;
  readonly later: readonly Box[];
}

/** A surface of a drawing that wants its tags: those of what lies on it and of what fills its joints. */
export interface TagDemand {
  readonly surface: SurfaceId;
  readonly tags: readonly string[];
  readonly shapes: readonly PaperShape[];
  /** Lines that stand for it, where it has no shape or too small ones. */
  readonly lines: readonly (readonly Place[])[];
}

/** A drawing's places on paper: y from its top. */
export const paperOf =
  ({ ratio, height }: Pick<SheetLayout, 'ratio' | 'height'>) =>
  ([x, y]: readonly [number, number]): Place => [x / ratio, height - y / ratio];

export const paperBox = (
  { ratio, height }: Pick<SheetLayout, 'ratio' | 'height'>,
  shape: { readonly x: number; readonly y: number; readonly width: number; readonly height: number },
): Box => ({
  x: shape.x / ratio,
  y: height - (shape.y + shape.height) / ratio,
  width: shape.width / ratio,
  height: shape.height / ratio,
});

/** Which tags stand for a surface, those of its grout last. */
export function tagsOf(rows: readonly ScheduleRow[]): ReadonlyMap<SurfaceId, readonly string[]> {
  const tags = new Map<SurfaceId, string[]>();
  const ordered = [...rows].sort((a, b) => Number(a.kind === 'grout') - Number(b.kind === 'grout'));
  for (const { id, surfaces } of ordered) for (const one of surfaces) tags.set(one, [...(tags.get(one) ?? []), id]);
  return tags;
}

const MINOR: ReadonlySet<Shape['kind']> = new Set(['side', 'panel', 'filler', 'shelf']);

/** What wants tags on a drawing, the largest first. */
export function tagDemands(layout: SheetLayout, tags: ReadonlyMap<SurfaceId, readonly string[]>): readonly TagDemand[] {
  const { shapes, lines }: Drawing = layout.drawing;
  const boxes = shapes.map((shape) => paperBox(layout, shape));
  const toPaper = paperOf(layout);
  return [...tags]
    .flatMap(([surface, own]): TagDemand[] => {
      const found = shapes.flatMap((shape, i): PaperShape[] =>
        shape.surface === surface
          ? [{ box: boxes[i]!, isMinor: MINOR.has(shape.kind), later: boxes.slice(i + 1) }]
          : [],
      );
      const drawn = lines.filter((line) => line.surface === surface).map(({ points }) => points.map(toPaper));
      return found.length + drawn.length > 0 ? [{ surface, tags: own, shapes: found, lines: drawn }] : [];
    })
    .sort((a, b) => areaOf(b) - areaOf(a));
}

const areaOf = ({ shapes }: TagDemand): number => shapes.reduce((sum, { box }) => sum + box.width * box.height, 0);
