import { STRIP_MM, type TaggedWall } from './tagged-walls';
import './tagged-elevation.css';

/** Height of letters by the width of the drawing, and the box round a tag in heights of letters. */
const LETTER_SHARE = 0.028;
const BOX = [3, 1.5] as const;

/** A wall in lines with the schedule's tags on what they stand for. */
export function TaggedElevation({ wall, label }: { readonly wall: TaggedWall; readonly label: string }) {
  const { width, height, shapes, tags } = wall;
  const top = height + STRIP_MM;
  const letter = LETTER_SHARE * width;
  const box = [BOX[0] * letter, BOX[1] * letter] as const;
  return (
    <svg
      className="tagged"
      viewBox={`-40 -40 ${width + 80} ${height + 2 * STRIP_MM + 80}`}
      role="img"
      aria-label={label}
    >
      {shapes.map((shape, i) => (
        <rect
          // biome-ignore lint/suspicious/noArrayIndexKey: shapes have no names, and keep their order
          key={i}
          className={`tagged-shape ${shape.surface === null ? 'is-open' : ''}`}
          x={shape.x}
          y={top - shape.z - shape.height}
          width={shape.width}
          height={shape.height}
        />
      ))}
      {tags.map(({ tag, surface, x, z }) => {
        const at = Math.min(Math.max(x, box[0] / 2), width - box[0] / 2);
        return (
          <g key={surface}>
            <rect
              className="tagged-box"
              x={at - box[0] / 2}
              y={top - z - box[1] / 2}
              width={box[0]}
              height={box[1]}
              rx={letter / 6}
            />
            <text className="tagged-words" x={at} y={top - z + letter * 0.36} fontSize={letter} textAnchor="middle">
              {tag}
            </text>
          </g>
        );
      })}
    </svg>
  );
}
