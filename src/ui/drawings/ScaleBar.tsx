import { type LengthUnit, lengthWords } from '../../model/length-text';
import { BARS } from './scales';
import { CAPITAL, LETTER } from './sizes';

/** Height of the bar, mm on paper. */
const HIGH = 1.2;

/** A length drawn at the scale of the drawing, in light and dark steps, from a place on paper (mm). */
export function ScaleBar({ x, y, ratio, unit }: { x: number; y: number; ratio: number; unit: LengthUnit }) {
  const { step, steps } = BARS[unit];
  const wide = step / ratio;
  return (
    <g>
      {Array.from({ length: steps }, (_, i) => (
        <rect
          // biome-ignore lint/suspicious/noArrayIndexKey: steps have no names but their order
          key={i}
          className={`draw-bar ${i % 2 === 0 ? 'is-dark' : ''}`}
          x={x + i * wide}
          y={y}
          width={wide}
          height={HIGH}
        />
      ))}
      <text className="draw-words" x={x + steps * wide + 1.4} y={y + (HIGH + CAPITAL) / 2} fontSize={LETTER}>
        {lengthWords(step * steps, unit)}
      </text>
    </g>
  );
}
