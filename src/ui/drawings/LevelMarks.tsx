import { LEVEL_MARK, LEVEL_WORDS, type SheetLayout } from './sheet-layout';
import { CAPITAL, LETTER } from './sizes';

/** Heights over the floor beside a drawing: a mark at each, and its words. */
export function LevelMarks({ layout: { levels, width } }: { readonly layout: SheetLayout }) {
  return (
    <g>
      {levels.map(({ level, text, y, at }) => (
        <g key={level.what + level.y}>
          <path
            className="draw-fine"
            d={`M${width + 0.4} ${y}L${width + LEVEL_MARK} ${y}L${width + LEVEL_WORDS - 0.5} ${at}`}
          />
          <text className="draw-words" x={width + LEVEL_WORDS} y={at + CAPITAL / 2} fontSize={LETTER}>
            {text}
          </text>
        </g>
      ))}
    </g>
  );
}
