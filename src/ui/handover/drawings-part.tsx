import type { Schedule } from '../../kitchen/schedule/types';
import type { Kitchen } from '../../model/kitchen';
import { notDrawnText } from '../schedule/not-drawn-text';
import { TaggedElevation } from '../schedule/TaggedElevation';
import { taggedWalls } from '../schedule/tagged-walls';
import { ORDERING } from '../words/ordering-pages';
import { DRAWINGS } from '../words/schedule-drawings';
import type { FlowPart } from './blocks';

/** The walls with the schedule's tags on what they stand for; a wall without a tag is left out. */
export function drawingsPart(kitchen: Kitchen, { rows }: Schedule): FlowPart {
  const walls = taggedWalls(kitchen, rows);
  return {
    id: 'drawings',
    title: ORDERING.drawings,
    blocks: [
      {
        kind: 'flow',
        key: 'intro',
        keeps: true,
        node: (
          <p>
            {ORDERING.drawingsIntro} {notDrawnText(walls, rows)}
          </p>
        ),
      },
      ...pairs(walls.filter(({ tags }) => tags.length > 0)).map((pair) => ({
        kind: 'flow' as const,
        key: pair.map(({ id }) => id).join(' '),
        node: (
          <div className="printed-drawings">
            {pair.map((wall) => {
              const name = wall.id === 'island' ? DRAWINGS.island : DRAWINGS.walls[wall.id];
              return (
                <figure key={wall.id} className="printed-drawing">
                  <figcaption>{name}</figcaption>
                  <TaggedElevation wall={wall} label={name} />
                </figure>
              );
            })}
          </div>
        ),
      })),
    ],
  };
}

/** Two beside each other. */
const pairs = <T,>(list: readonly T[]): readonly (readonly T[])[] =>
  list.flatMap((_, i) => (i % 2 === 0 ? [list.slice(i, i + 2)] : []));
