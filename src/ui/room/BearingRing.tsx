import { type PointerEvent, useRef } from 'react';
import { useDrag } from '../picture/use-drag';
import { DAYLIGHT } from '../words/daylight';
import { bearingOfNorth, type PlanXy, towards, wrapDegrees } from './compass';

interface BearingRingProps {
  readonly center: PlanXy;
  readonly radius: number;
  /** Radius of what one takes hold of. */
  readonly hold: number;
  readonly bearing_deg: number;
  readonly onBearing: (bearing_deg: number, continues: boolean) => void;
}

const STEP_DEG = 1;
const LARGE_STEP_DEG = 15;

/** The ring round the plan with north on it: dragged or moved by arrow keys, it turns the house. */
export function BearingRing({ center: [cx, cy], radius, hold, bearing_deg, onBearing }: BearingRingProps) {
  const held = useRef(false);
  const { continues, ends } = useDrag();
  const [nx, ny] = towards(0, bearing_deg);
  const [x, y] = [cx + nx * radius, cy + ny * radius];
  const follow = (event: PointerEvent<SVGGElement>) => {
    if (!held.current) return;
    const matrix = event.currentTarget.ownerSVGElement?.getScreenCTM();
    if (!matrix) return;
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
    const next = bearingOfNorth([at.x - cx, at.y - cy]);
    if (next !== bearing_deg) onBearing(next, continues());
  };
  const letGo = () => {
    held.current = false;
    ends.onPointerUp();
  };
  const step = (key: string, isLarge: boolean): number | null => {
    const by = isLarge ? LARGE_STEP_DEG : STEP_DEG;
    if (key === 'ArrowRight' || key === 'ArrowUp') return wrapDegrees(bearing_deg + by);
    if (key === 'ArrowLeft' || key === 'ArrowDown') return wrapDegrees(bearing_deg - by);
    if (key === 'PageUp') return wrapDegrees(bearing_deg + LARGE_STEP_DEG);
    if (key === 'PageDown') return wrapDegrees(bearing_deg - LARGE_STEP_DEG);
    if (key === 'Home') return 0;
    return key === 'End' ? 359 : null;
  };
  return (
    <>
      <circle className="plan-ring" cx={cx} cy={cy} r={radius} />
      <g
        className="plan-north"
        role="slider"
        tabIndex={0}
        aria-label={DAYLIGHT.bearing}
        aria-valuemin={0}
        aria-valuemax={359}
        aria-valuenow={Math.round(bearing_deg) % 360}
        aria-valuetext={DAYLIGHT.faces(bearing_deg)}
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId);
          held.current = true;
        }}
        onPointerMove={follow}
        onPointerUp={letGo}
        onPointerCancel={letGo}
        onKeyUp={ends.onKeyUp}
        onBlur={ends.onBlur}
        onKeyDown={(event) => {
          const next = step(event.key, event.shiftKey);
          if (next === null || event.altKey || event.ctrlKey || event.metaKey) return;
          event.preventDefault();
          onBearing(next, continues());
        }}
      >
        <circle className="plan-hold" cx={x} cy={y} r={hold} />
        <path
          className="plan-arrow"
          d={`M0 ${-0.95 * hold}L${0.34 * hold} ${-0.45 * hold}H${-0.34 * hold}Z`}
          transform={`translate(${x} ${y}) rotate(${-bearing_deg})`}
        />
        <text className="plan-letter" x={x} y={y} dy="0.5em" fontSize={0.85 * hold} textAnchor="middle">
          {DAYLIGHT.north}
        </text>
      </g>
    </>
  );
}
