import { useState } from 'react';
import type { Problem } from '../../engine/result';
import type { PlanDrawing } from '../../kitchen/plan/plan-drawing';
import type { ClearanceHint } from '../../model/clearances/types';
import type { Kitchen, Wall } from '../../model/kitchen';
import type { Rows } from '../../model/layout/types';
import type { LengthUnit } from '../../model/length-text';
import { inUnit } from '../../model/unit-words';
import { Choices } from '../parts/Choices';
import { useSpoken } from '../parts/use-spoken';
import { KITCHEN } from '../words/kitchen';
import { reread } from '../words/spoken';
import { ClearanceOnPlan } from './ClearanceOnPlan';
import { DimensionLines } from './DimensionLines';
import { planDimensions, planMargins } from './dimensions';
import { ElevationView } from './ElevationView';
import { MoveHandles, type Projection } from './MoveHandles';
import { movableParts, placeWords } from './movable-parts';
import { type PlanEye, PlanView, WALL_MM } from './PlanView';

export type DrawingId = 'plan' | Wall;

interface KitchenDrawingProps {
  readonly kitchen: Kitchen;
  readonly rows: Rows;
  readonly drawing: PlanDrawing;
  readonly eye: PlanEye | null;
  readonly unit: LengthUnit;
  readonly shown: DrawingId;
  readonly onShow: (drawing: DrawingId) => void;
  /** The clearance that is drawn, if one is pointed at. */
  readonly pointed: ClearanceHint | null;
  readonly onKitchen: (kitchen: Kitchen, continues: boolean) => readonly Problem[];
  /** A part was picked: its field is wanted. */
  readonly onField: (path: string) => void;
}

/** Heights of letters and of what one takes hold of, against the longer side of what is drawn. */
const LETTER = 0.055;
const HOLD = 0.12;
const DRAWINGS = reread(() =>
  (['plan', 'left', 'back', 'right', 'front'] as const).map((id) => ({
    id,
    name: KITCHEN.drawings[id],
  })),
);

interface Moved {
  readonly part: string;
  /** What stopped it. */
  readonly problem: Problem | null;
  /** The drawing, and the room and runs it showed. */
  readonly where: string;
}

/** Plan and elevations to scale, with sizes; what can be moved is moved there. */
export function KitchenDrawing(props: KitchenDrawingProps) {
  const { kitchen, rows, drawing, unit, shown } = props;
  const [last, setLast] = useState<Moved | null>(null);
  const parts = useSpoken(() => movableParts(kitchen, rows), [kitchen, rows]);
  const { width, depth } = kitchen.room;
  const size = Math.max(width, depth);
  const letter = LETTER * size;
  // In another drawing, room or layout the last move is no news any more.
  const where = [shown, width, depth, ...kitchen.runs.map(({ wall }) => wall)].join(' ');
  const moved = last?.where === where ? last : null;
  const movedPart = parts.find(({ id }) => id === moved?.part);
  const move = {
    kitchen,
    unit,
    onKitchen: props.onKitchen,
    onMoved: (part: string, problem: Problem | null) => setLast({ part, problem, where }),
    onField: props.onField,
  };
  return (
    <div className="kitchen-drawing">
      <Choices label={KITCHEN.drawing} choices={DRAWINGS} chosen={shown} onChoose={props.onShow} />
      {shown === 'plan' ? (
        <PlanView
          label={KITCHEN.plan}
          drawing={drawing}
          openings={kitchen.openings}
          eye={props.eye}
          margin={planMargins(rows, letter, WALL_MM)}
        >
          <DimensionLines
            // What is pointed at takes the place of the sizes of the island.
            dimensions={planDimensions(props.pointed ? { ...kitchen, island: null } : kitchen, rows, letter, WALL_MM)}
            unit={unit}
            letter={letter}
            mayTurn={false}
          />
          {props.pointed && <ClearanceOnPlan hint={props.pointed} depth={depth} unit={unit} letter={letter} />}
          <MoveHandles {...move} parts={parts} projection={planProjection(depth)} hold={HOLD * size} />
        </PlanView>
      ) : (
        <ElevationView {...move} wall={shown} parts={parts} />
      )}
      <p className="small" role="status">
        {movedPart && `${movedPart.name}: ${placeWords(movedPart, unit)}. `}
        {moved?.problem && `${KITCHEN.limit} ${plain(moved.problem, unit)}`}
      </p>
      <p className="small quiet">{KITCHEN.moveHint}</p>
    </div>
  );
}

const planProjection = (depth: number): Projection => ({
  box: ({ footprint: { x, y } }) => ({ x: x[0], y: depth - y[1], width: x[1] - x[0], height: y[1] - y[0] }),
  toPlan: ([x, y]) => [x, depth - y],
});

/** What is wrong without the place in the document it is told for. */
const plain = ({ text, at }: Problem, unit: LengthUnit): string => {
  const head = `${at?.path}: `;
  return inUnit(at?.path && text.startsWith(head) ? text.slice(head.length) : text, unit);
};
