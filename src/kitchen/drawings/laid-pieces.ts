import { laidSize } from '../../engine/pattern/pieces';
import type { SurfaceId } from '../../engine/surface';
import type { ScheduleRow } from '../schedule/types';

/** How tiles or boards lie on a surface, mm. */
export interface LaidPieces {
  readonly layout: NonNullable<ScheduleRow['layout']>;
  /** Along the row and from row to row, without the joint; of a hexagon from flat to flat. */
  readonly piece: readonly [number, number];
  readonly joint: number;
  readonly turn_deg: number;
  readonly start: 'centered' | 'corner';
}

/** What is laid in pieces, by surface, as the schedule has it. */
export const laidPieces = (rows: readonly ScheduleRow[]): ReadonlyMap<SurfaceId, LaidPieces> =>
  new Map(
    rows.flatMap(({ kind, surfaces, layout, size_mm, joint_mm, direction_deg, start }) => {
      if ((kind !== 'tiles' && kind !== 'boards') || layout === null || layout === 'plain' || size_mm === null)
        return [];
      const laid: LaidPieces = {
        layout,
        piece: laidSize(size_mm, layout),
        joint: joint_mm ?? 0,
        turn_deg: layout === 'stack-upright' ? 90 : (direction_deg ?? 0),
        start: start ?? 'centered',
      };
      return surfaces.map((surface) => [surface, laid] as const);
    }),
  );
