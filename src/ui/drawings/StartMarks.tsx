import type { PlacedStart } from './start-places';
import { Words } from './Words';

const RADIUS = 1.3;
const HEAD = 1.6;

/** Where tiles or boards begin, and which way their rows run. */
export function StartMarks({ starts }: { readonly starts: readonly PlacedStart[] }) {
  return (
    <>
      {starts.map(({ tag, at: [x, y], end: [x2, y2], words }) => {
        const angle = (Math.atan2(y2 - y, x2 - x) * 180) / Math.PI;
        const long = Math.hypot(x2 - x, y2 - y);
        return (
          <g key={tag}>
            <g transform={`translate(${x} ${y}) rotate(${angle})`}>
              <circle className="draw-start-ground" r={RADIUS + 0.5} />
              <path
                className="draw-start"
                d={`M${RADIUS} 0H${long}M${long - HEAD} ${-HEAD / 2}L${long} 0L${long - HEAD} ${HEAD / 2}`}
              />
              <circle className="draw-start" r={RADIUS} />
              <path
                className="draw-start"
                transform={`rotate(${-angle})`}
                d={`M${-RADIUS} 0H${RADIUS}M0 ${-RADIUS}V${RADIUS}`}
              />
            </g>
            <Words text={tag} x={words[0]} y={words[1]} isTag />
          </g>
        );
      })}
    </>
  );
}
