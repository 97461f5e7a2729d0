import { CAPITAL, digitsWide, LETTER, tagWide } from './sizes';

interface WordsProps {
  readonly text: string;
  /** Their middle on paper, mm. */
  readonly x: number;
  readonly y: number;
  readonly isUpright?: boolean;
  readonly isTag?: boolean;
}

/** Free of lines round words, mm. */
const CLEAR = 0.25;

/** Words on a ground of their own, so that no line behind them is read as a part of them. */
export function Words({ text, x, y, isUpright, isTag }: WordsProps) {
  const wide = (isTag ? tagWide(text) : digitsWide(text)) + 2 * CLEAR;
  const high = CAPITAL + 2 * CLEAR;
  return (
    <g transform={isUpright ? `rotate(-90 ${x} ${y})` : undefined}>
      <rect
        className={isTag ? 'draw-ground is-within' : 'draw-ground'}
        x={x - wide / 2}
        y={y - high / 2}
        width={wide}
        height={high}
      />
      <text
        className={isTag ? 'draw-words is-tag' : 'draw-words'}
        x={x}
        y={y + CAPITAL / 2}
        fontSize={LETTER}
        textAnchor="middle"
      >
        {text}
      </text>
    </g>
  );
}
