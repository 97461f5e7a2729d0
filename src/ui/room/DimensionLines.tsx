import type { LengthUnit } from '../../model/length-text';
import { type Dimension, type DimensionWords, dimensionWords, GAP } from './dimensions';

interface DimensionLinesProps {
  readonly dimensions: readonly Dimension[];
  readonly unit: LengthUnit;
  /** Height of the words, mm of the drawing. */
  readonly letter: number;
  /** Whether words may turn across their line where there is room beyond it; else they are left out there. */
  readonly mayTurn: boolean;
  readonly className?: string;
}

/** Half a tick against the height of letters. */
const TICK = 0.3;

/** Dimension lines with ticks and lengths. */
export function DimensionLines({ dimensions, unit, letter, mayTurn, className }: DimensionLinesProps) {
  return (
    // The same lengths stand in the fields, in words.
    <svg className={`plan-dimensions ${className ?? ''}`} overflow="visible" aria-hidden="true">
      {dimensions.map((dimension) => {
        const [x1, y1] = dimension.from;
        const [x2, y2] = dimension.to;
        const tick = TICK * letter;
        const words = dimensionWords(dimension, unit, letter);
        return (
          <g key={`${x1},${y1},${x2},${y2}`}>
            <path d={`M${x1} ${y1}L${x2} ${y2}${tickAt(x1, y1, tick)}${tickAt(x2, y2, tick)}`} />
            {words && (mayTurn || !words.isTurned) && <Length dimension={dimension} words={words} letter={letter} />}
          </g>
        );
      })}
    </svg>
  );
}

/** An oblique tick, as drawings in this trade have it. */
const tickAt = (x: number, y: number, tick: number): string => `M${x - tick} ${y + tick}L${x + tick} ${y - tick}`;

interface LengthProps {
  readonly dimension: Dimension;
  readonly words: DimensionWords;
  readonly letter: number;
}

function Length({ dimension: { from, to, side }, words: { text, isTurned, depth_mm }, letter }: LengthProps) {
  const isAlongX = from[1] === to[1];
  // The middle between the foot of the words and their farther end.
  const away = (depth_mm + GAP * letter) / 2;
  const off = side === 'before' ? -away : away;
  const x = (from[0] + to[0]) / 2 + (isAlongX ? 0 : off);
  const y = (from[1] + to[1]) / 2 + (isAlongX ? off : 0);
  return (
    <text
      className="plan-length"
      x={x}
      y={y}
      dy="0.36em"
      fontSize={letter}
      textAnchor="middle"
      transform={isAlongX === isTurned ? `rotate(-90 ${x} ${y})` : undefined}
    >
      {text}
    </text>
  );
}
