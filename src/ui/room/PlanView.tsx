import type { ReactNode } from 'react';
import type { PlanDrawing } from '../../kitchen/plan/plan-drawing';
import type { Opening } from '../../model/kitchen';
import { openingEnds } from './sun-beams';

/** From where one looks and to where, on the plan from the front left corner, mm. */
export interface PlanEye {
  readonly eye: readonly [x: number, y: number];
  readonly target: readonly [x: number, y: number];
}

export interface PlanMargins {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

interface PlanViewProps {
  readonly label: string;
  readonly drawing: PlanDrawing;
  readonly openings: readonly Opening[];
  readonly eye: PlanEye | null;
  /** Free space round the room, the same on all sides or each its own, mm. */
  readonly margin: number | PlanMargins;
  readonly chosenWindow?: string | null;
  readonly onWindow?: (id: string) => void;
  readonly chosenFixture?: string | null;
  /** What is drawn over the plan, in its mm from the back left corner. */
  readonly children?: ReactNode;
}

/** Thickness walls are drawn with, mm. */
export const WALL_MM = 110;
const EYE = 150;

/** The kitchen from above, back wall at the top: units, windows, lamps and the place one looks from. */
export function PlanView(props: PlanViewProps) {
  const { drawing, openings, eye, margin, chosenWindow, onWindow } = props;
  const { width_mm: width, depth_mm: depth, door } = drawing;
  const room = { width, depth };
  const { left, top, right, bottom } =
    typeof margin === 'number' ? { left: margin, top: margin, right: margin, bottom: margin } : margin;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing that holds controls is a group of them
    <svg
      className="plan"
      role="group"
      aria-label={props.label}
      viewBox={`${-left} ${-top} ${left + width + right} ${top + depth + bottom}`}
    >
      <path
        className="plan-wall"
        fillRule="evenodd"
        d={`M${-WALL_MM} ${-WALL_MM}H${width + WALL_MM}V${depth + WALL_MM}H${-WALL_MM}ZM0 0H${width}V${depth}H0Z`}
      />
      <rect className="plan-floor" width={width} height={depth} />
      {drawing.shapes.map((shape) => (
        <rect
          key={`${shape.kind}-${shape.x}-${shape.y}`}
          className={`plan-shape plan-${shape.kind}`}
          x={shape.x}
          y={depth - shape.y - shape.depth}
          width={shape.width}
          height={shape.depth}
        />
      ))}
      <rect className="plan-door" x={door.from} y={depth} width={door.to - door.from} height={WALL_MM} />
      <path className="plan-swing" d={swingPath(door, depth)} />
      {drawing.openSide && <OpenSideOnPlan side={drawing.openSide} width={width} depth={depth} />}
      {openings.map((opening) => {
        const [[x1, y1], [x2, y2]] = openingEnds(opening, room);
        const isUpright = opening.wall === 'left' || opening.wall === 'right';
        const out = opening.wall === 'left' || opening.wall === 'back' ? -WALL_MM : 0;
        const box = {
          x: Math.min(x1, x2) + (isUpright ? out : 0),
          y: Math.min(y1, y2) + (isUpright ? 0 : out),
          width: isUpright ? WALL_MM : Math.abs(x2 - x1),
          height: isUpright ? Math.abs(y2 - y1) : WALL_MM,
        };
        return (
          // biome-ignore lint/a11y/noStaticElementInteractions: a second way for the hand; the list of windows is the first
          <g
            key={opening.id}
            className={`plan-window ${opening.id === chosenWindow ? 'is-chosen' : ''}`}
            onClick={onWindow && (() => onWindow(opening.id))}
          >
            <rect className="plan-window-pane" {...box} />
            {onWindow && <rect className="plan-window-hit" {...widened(box, isUpright)} />}
          </g>
        );
      })}
      {drawing.lamps.map((lamp, i) => (
        <rect
          // biome-ignore lint/suspicious/noArrayIndexKey: lamps of one kind have no names, and keep their order
          key={`${lamp.fixture}-${i}`}
          className={`plan-lamp ${lamp.fixture === props.chosenFixture ? 'is-chosen' : ''}`}
          x={lamp.x - lamp.width / 2}
          y={depth - lamp.y - lamp.depth / 2}
          width={lamp.width}
          height={lamp.depth}
          rx={isRound(lamp.kind) ? lamp.width / 2 : 0}
        />
      ))}
      {eye && <Eye eye={eye} depth={depth} />}
      {props.children}
    </svg>
  );
}

/** The door open, and the way of its free edge to where it shuts; below the door's wall lies the next room. */
function swingPath({ from, to, swing }: PlanDrawing['door'], depth: number): string {
  const [[hingeX, hingeY], [openX, openY]] = [swing.hinge, swing.open];
  const shutX = hingeX === to ? from : to;
  const radius = to - from;
  return `M${hingeX} ${depth - hingeY}L${openX} ${depth - openY}A${radius} ${radius} 0 0 ${hingeX === to ? 0 : 1} ${shutX} ${depth - hingeY}`;
}

interface OpenSideOnPlanProps {
  readonly side: NonNullable<PlanDrawing['openSide']>;
  readonly width: number;
  readonly depth: number;
}

/** The gap in the wall through which the next room is seen. */
function OpenSideOnPlan({ side: { wall, from, to }, width, depth }: OpenSideOnPlanProps) {
  const box =
    wall === 'front'
      ? { x: from, y: depth, width: to - from, height: WALL_MM }
      : { x: wall === 'left' ? -WALL_MM : width, y: depth - to, width: WALL_MM, height: to - from };
  return <rect className="plan-open-side" {...box} />;
}

const isRound = (kind: PlanDrawing['lamps'][number]['kind']): boolean =>
  kind === 'downlight' || kind === 'pendant' || kind === 'hood';

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** What a finger hits: the pane and what lies before it. */
const widened = ({ x, y, width, height }: Box, isUpright: boolean): Box =>
  isUpright ? { x: x - 250, y, width: width + 500, height } : { x, y: y - 250, width, height: height + 500 };

function Eye({ eye: { eye, target }, depth }: { readonly eye: PlanEye; readonly depth: number }) {
  const angle = (Math.atan2(target[0] - eye[0], target[1] - eye[1]) * 180) / Math.PI;
  return (
    <g className="plan-eye" transform={`translate(${eye[0]} ${depth - eye[1]}) rotate(${angle})`}>
      <path d={`M${-EYE} ${-1.6 * EYE}L0 0L${EYE} ${-1.6 * EYE}`} />
      <circle r={0.45 * EYE} />
    </g>
  );
}
