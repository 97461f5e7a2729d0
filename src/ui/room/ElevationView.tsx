import { useMemo } from 'react';
import type { Problem } from '../../engine/result';
import { drawElevation } from '../../kitchen/plan/elevation-drawing';
import type { Kitchen, Wall } from '../../model/kitchen';
import type { LengthUnit } from '../../model/length-text';
import { KITCHEN } from '../words/kitchen';
import { DimensionLines } from './DimensionLines';
import { elevationDimensions } from './elevation-dimensions';
import { fieldOfShape } from './field-of-shape';
import { MoveHandles, type Projection } from './MoveHandles';
import type { MovablePart } from './movable-parts';
import { wallAxis } from './wall-axis';

interface ElevationViewProps {
  readonly kitchen: Kitchen;
  readonly wall: Wall;
  readonly unit: LengthUnit;
  /** What can be moved in the kitchen; shown is what stands on this wall. */
  readonly parts: readonly MovablePart[];
  readonly onKitchen: (kitchen: Kitchen, continues: boolean) => readonly Problem[];
  readonly onMoved: (part: string, problem: Problem | null) => void;
  readonly onField: (path: string) => void;
}

/** Heights of letters and of what one takes hold of, against the longer side of the wall. */
const LETTER = 0.045;
const HOLD = 0.11;

/** A wall seen from within, to scale, with its sizes; a click on a part goes to its field. */
export function ElevationView(props: ElevationViewProps) {
  const { kitchen, wall, unit } = props;
  const drawing = useMemo(() => drawElevation(kitchen, wall), [kitchen, wall]);
  const { width_mm: width, height_mm: height } = drawing;
  const size = Math.max(width, height);
  const letter = LETTER * size;
  const { dimensions, margins } = elevationDimensions(drawing, unit, letter);
  const { left, right, top, bottom } = margins;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing that holds controls is a group of them
    <svg
      className="plan"
      role="group"
      aria-label={KITCHEN.elevation(wall)}
      viewBox={`${-left} ${-top} ${left + width + right} ${top + height + bottom}`}
    >
      {drawing.shapes.map((shape, i) => {
        const field = fieldOfShape(kitchen, wall, shape);
        return (
          // biome-ignore lint/a11y/noStaticElementInteractions: a second way for the hand; the fields are the first
          <rect
            // biome-ignore lint/suspicious/noArrayIndexKey: shapes have no names, and keep their order
            key={i}
            className={`elevation-shape elevation-${shape.surface === null ? 'bare' : shape.kind}`}
            x={shape.x}
            y={height - shape.z - shape.height}
            width={shape.width}
            height={shape.height}
            onClick={() => field && props.onField(field)}
          />
        );
      })}
      <DimensionLines dimensions={dimensions} unit={unit} letter={letter} mayTurn={true} />
      <MoveHandles
        kitchen={kitchen}
        parts={props.parts.filter((part) => part.wall === wall)}
        projection={projection(kitchen, wall)}
        unit={unit}
        hold={HOLD * size}
        onKitchen={props.onKitchen}
        onMoved={props.onMoved}
        onField={props.onField}
      />
    </svg>
  );
}

function projection(kitchen: Kitchen, wall: Wall): Projection {
  const { turn } = wallAxis(kitchen, wall);
  const isUpright = wall === 'left' || wall === 'right';
  return {
    box: ({ footprint, heights: [low, high] }) => {
      const [a, b] = (isUpright ? footprint.y : footprint.x).map(turn) as [number, number];
      return { x: Math.min(a, b), y: kitchen.room.height - high, width: Math.abs(b - a), height: high - low };
    },
    toPlan: ([x], place) => (isUpright ? [place[0], turn(x)] : [turn(x), place[1]]),
  };
}
