import { type PointerEvent, useRef } from 'react';
import type { PlanPoint } from '../../model/fixture';
import { useDrag } from '../picture/use-drag';

interface LampHandlesProps {
  readonly places: readonly PlanPoint[];
  readonly width: number;
  readonly depth: number;
  readonly hold: number;
  readonly onMove: (index: number, place: PlanPoint, continues: boolean) => void;
}

/** The lamps that have places of their own, to be dragged on the plan; by keys they are moved in their fields. */
export function LampHandles({ places, width, depth, hold, onMove }: LampHandlesProps) {
  const held = useRef<number | null>(null);
  const { continues, ends } = useDrag();
  const follow = (event: PointerEvent<SVGGElement>) => {
    const matrix = event.currentTarget.ownerSVGElement?.getScreenCTM();
    if (held.current === null || !matrix) return;
    const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
    const within = (value: number, most: number) => Math.min(most, Math.max(0, value));
    onMove(held.current, [within(x, width), depth - within(y, depth)], continues());
  };
  const letGo = () => {
    held.current = null;
    ends.onPointerUp();
  };
  return (
    <g onPointerMove={follow} onPointerUp={letGo} onPointerCancel={letGo}>
      {places.map(([x, y], i) => (
        <g
          // biome-ignore lint/suspicious/noArrayIndexKey: a lamp is its place in the list
          key={i}
          className="plan-lamp-hold"
          onPointerDown={(event) => {
            event.currentTarget.setPointerCapture(event.pointerId);
            held.current = i;
          }}
        >
          <circle cx={x} cy={depth - y} r={hold} />
          <text x={x} y={depth - y} dy="0.35em" fontSize={1.1 * hold} textAnchor="middle">
            {i + 1}
          </text>
        </g>
      ))}
    </g>
  );
}
