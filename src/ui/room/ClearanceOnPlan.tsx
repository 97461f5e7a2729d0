import type { ClearanceHint, Stretch } from '../../model/clearances/types';
import { type LengthUnit, lengthText } from '../../model/length-text';

interface ClearanceOnPlanProps {
  readonly hint: ClearanceHint;
  readonly depth: number;
  readonly unit: LengthUnit;
  /** Height of the words, mm. */
  readonly letter: number;
}

/** Half a tick at the ends of a line, against the height of letters. */
const TICK = 0.45;

/** What a hint measured, drawn on the plan as bold dimensions. */
export function ClearanceOnPlan({ hint, depth, unit, letter }: ClearanceOnPlanProps) {
  return (
    <svg className="plan-clearance" overflow="visible" aria-hidden="true">
      {hint.at.map((stretch) => (
        <Line key={`${stretch.from} ${stretch.to}`} stretch={stretch} depth={depth} unit={unit} letter={letter} />
      ))}
    </svg>
  );
}

function Line({ stretch, depth, unit, letter }: { readonly stretch: Stretch } & Omit<ClearanceOnPlanProps, 'hint'>) {
  const [x1, y1] = [stretch.from[0], depth - stretch.from[1]];
  const [x2, y2] = [stretch.to[0], depth - stretch.to[1]];
  const length = Math.hypot(x2 - x1, y2 - y1);
  if (length < 1) return null;
  // Ticks stand across the line.
  const [acrossX, acrossY] = [((y2 - y1) / length) * TICK * letter, ((x1 - x2) / length) * TICK * letter];
  const tick = (x: number, y: number) => `M${x - acrossX} ${y - acrossY}L${x + acrossX} ${y + acrossY}`;
  return (
    <>
      <path d={`M${x1} ${y1}L${x2} ${y2}${tick(x1, y1)}${tick(x2, y2)}`} />
      <text
        className="plan-length"
        x={(x1 + x2) / 2}
        y={(y1 + y2) / 2}
        dy="0.36em"
        fontSize={1.1 * letter}
        textAnchor="middle"
      >
        {lengthText(length, unit)}
      </text>
    </>
  );
}
