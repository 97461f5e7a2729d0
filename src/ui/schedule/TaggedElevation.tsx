import { STRIP_MM, type TaggedWall } from './tagged-walls';
import './tagged-elevation.css';

/** Letters of tags, mm of the drawing, and the box round each. */
const LETTER_MM = 110;
const BOX_MM = [330, 160] as const;

/** A wall in lines with the schedule's tags on what they stand for. */
export function TaggedElevation({ wall, label }: { readonly wall: TaggedWall; readonly label: string }) {
  const { width, height, shapes, tags } = wall;
  const top = height + STRIP_MM;
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
        const at = Math.min(Math.max(x, BOX_MM[0] / 2), width - BOX_MM[0] / 2);
        return (
          <g key={surface}>
            <rect
              className="tagged-box"
              x={at - BOX_MM[0] / 2}
              y={top - z - BOX_MM[1] / 2}
              width={BOX_MM[0]}
              height={BOX_MM[1]}
              rx={20}
            />
            <text
              className="tagged-words"
              x={at}
              y={top - z + LETTER_MM * 0.36}
              fontSize={LETTER_MM}
              textAnchor="middle"
            >
              {tag}
            </text>
          </g>
        );
      })}
    </svg>
  );
}
