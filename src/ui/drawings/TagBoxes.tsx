import type { PlacedTag } from './place-tags';
import { CAPITAL, LETTER, tagWide } from './sizes';

/** Tags in boxes; where they do not stand on what they are of, a line leads to it from there, with a dot at its end. */
export function TagBoxes({ tags }: { readonly tags: readonly PlacedTag[] }) {
  return (
    <>
      {tags.map(({ surface, leader }) => leader && <Leader key={surface} leader={leader} />)}
      {tags.map(({ surface, tags: own, box }) => (
        <g key={surface} data-surface={surface}>
          {own.map((tag, i) => {
            const x = box.x + own.slice(0, i).reduce((sum, one) => sum + tagWide(one), 0);
            const width = tagWide(tag);
            return (
              <g key={tag}>
                <rect className="draw-tag" x={x} y={box.y} width={width} height={box.height} rx={0.5} />
                <text
                  className="draw-words is-tag"
                  x={x + width / 2}
                  y={box.y + (box.height + CAPITAL) / 2}
                  fontSize={LETTER}
                  textAnchor="middle"
                >
                  {tag}
                </text>
              </g>
            );
          })}
        </g>
      ))}
    </>
  );
}

function Leader({ leader: [[x1, y1], [x2, y2]] }: { readonly leader: NonNullable<PlacedTag['leader']> }) {
  return (
    <>
      <path className="draw-leader-ground" d={`M${x1} ${y1}L${x2} ${y2}`} />
      <path className="draw-leader" d={`M${x1} ${y1}L${x2} ${y2}`} />
      <circle className="draw-dot" cx={x1} cy={y1} r={0.55} />
    </>
  );
}
