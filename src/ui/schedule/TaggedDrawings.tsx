import { useMemo } from 'react';
import { surfaceName } from '../words/engine-words';
import { DRAWINGS } from '../words/schedule-drawings';
import { notDrawnText } from './not-drawn-text';
import type { ScheduleDoors } from './schedule-props';
import { TaggedElevation } from './TaggedElevation';
import { type TaggedWall, taggedWalls } from './tagged-walls';

/** Every wall, the island and the floor with the tags of the schedule. */
export function TaggedDrawings({ kitchen, schedule }: ScheduleDoors) {
  const walls = useMemo(() => taggedWalls(kitchen, schedule.rows), [kitchen, schedule]);
  return (
    <div className="drawings">
      <p className="small drawings-intro">
        {DRAWINGS.intro} {notDrawnText(walls, schedule.rows)}
      </p>
      {walls.map((wall) => (
        <figure key={wall.id} className="drawing">
          <figcaption>{nameOf(wall)}</figcaption>
          <TaggedElevation wall={wall} label={labelOf(wall)} />
        </figure>
      ))}
    </div>
  );
}

const nameOf = ({ id }: TaggedWall): string => (id === 'island' ? DRAWINGS.island : DRAWINGS.walls[id]);

/** What a drawing says, for those who do not see it: tags and what they stand for. */
const labelOf = (wall: TaggedWall): string =>
  `${nameOf(wall)}: ${wall.tags.map(({ tag, surface }) => `${tag} ${surfaceName(surface).toLowerCase()}`).join(', ')}`;
