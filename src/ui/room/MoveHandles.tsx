import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import type { Problem } from '../../engine/result';
import type { Kitchen } from '../../model/kitchen';
import type { LengthUnit } from '../../model/length-text';
import { useDrag } from '../picture/use-drag';
import { KITCHEN } from '../words/kitchen';
import { type MovablePart, movedAsFar, moveSteps, placeWords } from './movable-parts';

type Point = readonly [x: number, y: number];

/** How a drawing shows the plan's mm: both ways between them and those of the drawing. */
export interface Projection {
  readonly box: (part: MovablePart) => Box;
  /** Where on the plan a point of the drawing lies; what the drawing does not show stays as `place` has it. */
  readonly toPlan: (point: Point, place: Point) => Point;
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

interface MoveHandlesProps {
  readonly kitchen: Kitchen;
  readonly parts: readonly MovablePart[];
  readonly projection: Projection;
  readonly unit: LengthUnit;
  /** Least width and height of what one takes hold of, mm of the drawing. */
  readonly hold: number;
  readonly onKitchen: (kitchen: Kitchen, continues: boolean) => readonly Problem[];
  /** A part of that id was moved; `problem`: what stopped it. */
  readonly onMoved: (part: string, problem: Problem | null) => void;
  /** Its fields are wanted. */
  readonly onField: (path: string) => void;
}

const ARROWS: Readonly<Record<string, Point>> = {
  ArrowRight: [1, 0],
  ArrowLeft: [-1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** The parts of a drawing that can be moved: dragged, or moved by arrow keys when they have the focus. */
export function MoveHandles(props: MoveHandlesProps) {
  const { kitchen, parts, projection, unit, hold } = props;
  const held = useRef<{ readonly id: string; readonly off: Point } | null>(null);
  const { continues, ends } = useDrag();
  const move = (part: MovablePart, to: Point) => {
    const { kitchen: next, problem } = movedAsFar(kitchen, part, to, unit);
    const refused = next === kitchen ? [] : props.onKitchen(next, continues());
    props.onMoved(part.id, refused[0] ?? problem);
  };
  const letGo = () => {
    held.current = null;
    ends.onPointerUp();
  };
  const follow = (event: PointerEvent<SVGGElement>) => {
    const part = parts.find(({ id }) => id === held.current?.id);
    const at = part && pointOf(event);
    if (!part || !at || !held.current) return;
    const [x, y] = projection.toPlan(at, part.place);
    const [offX, offY] = held.current.off;
    const to: Point = [part.ways === 'y' ? part.place[0] : x - offX, part.ways === 'x' ? part.place[1] : y - offY];
    const [step] = moveSteps(unit);
    if (Math.abs(to[0] - part.place[0]) >= step / 2 || Math.abs(to[1] - part.place[1]) >= step / 2) move(part, to);
  };
  const onKeyDown = (event: KeyboardEvent, part: MovablePart) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    if (event.key === 'Enter') {
      event.preventDefault();
      return props.onField(part.path);
    }
    const arrow = ARROWS[event.key];
    if (!arrow) return;
    event.preventDefault();
    const [small, large] = moveSteps(unit);
    const by = event.shiftKey ? large : small;
    const { x, y } = projection.box(part);
    const [fromX, fromY] = projection.toPlan([x, y], part.place);
    const [toX, toY] = projection.toPlan([x + arrow[0], y + arrow[1]], part.place);
    let [wayX, wayY] = [toX - fromX, toY - fromY];
    // Where it goes one way only, the other pair of keys goes there, too: up and right are more.
    if (part.ways === 'x' && wayX === 0) wayX = -arrow[1];
    if (part.ways === 'y' && wayY === 0) wayY = arrow[0] - arrow[1];
    move(part, [
      part.place[0] + (part.ways === 'y' ? 0 : wayX * by),
      part.place[1] + (part.ways === 'x' ? 0 : wayY * by),
    ]);
  };
  return (
    <g onPointerMove={follow} onPointerUp={letGo} onPointerCancel={letGo}>
      {parts.map((part) => {
        const box = projection.box(part);
        return (
          // biome-ignore lint/a11y/noStaticElementInteractions: it is a button or a slider, as its role says
          <g
            key={part.id}
            className="plan-move"
            data-part={part.id}
            tabIndex={0}
            role={part.ways === 'xy' ? 'button' : 'slider'}
            {...spoken(kitchen, part, unit)}
            onPointerDown={(event) => {
              const at = pointOf(event);
              if (!at) return;
              event.currentTarget.setPointerCapture(event.pointerId);
              const [x, y] = projection.toPlan(at, part.place);
              held.current = { id: part.id, off: [x - part.place[0], y - part.place[1]] };
            }}
            onDoubleClick={() => props.onField(part.path)}
            onKeyDown={(event) => onKeyDown(event, part)}
            onKeyUp={ends.onKeyUp}
            onBlur={ends.onBlur}
          >
            <rect className="plan-move-hit" {...atLeast(box, hold)} />
            <rect className="plan-move-box" {...box} />
            <circle className="plan-move-dot" cx={box.x + box.width / 2} cy={box.y + box.height / 2} r={hold / 6} />
          </g>
        );
      })}
    </g>
  );
}

/** One way: a slider along its wall. Two ways: a button that tells its place. */
function spoken({ room }: Kitchen, part: MovablePart, unit: LengthUnit) {
  const words = placeWords(part, unit);
  if (part.ways === 'xy') return { 'aria-label': `${part.name}, ${words}`, 'aria-roledescription': KITCHEN.movable };
  const isX = part.ways === 'x';
  return {
    'aria-label': part.name,
    'aria-valuemin': 0,
    'aria-valuemax': isX ? room.width : room.depth,
    'aria-valuenow': part.place[isX ? 0 : 1],
    'aria-valuetext': words,
    'aria-orientation': isX ? ('horizontal' as const) : ('vertical' as const),
  };
}

function pointOf(event: PointerEvent<SVGGElement>): Point | null {
  const matrix = event.currentTarget.ownerSVGElement?.getScreenCTM();
  if (!matrix) return null;
  const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
  return [x, y];
}

/** The same box, no smaller than a hand can hit. */
function atLeast({ x, y, width, height }: Box, least: number): Box {
  const [moreX, moreY] = [Math.max(0, least - width) / 2, Math.max(0, least - height) / 2];
  return { x: x - moreX, y: y - moreY, width: width + 2 * moreX, height: height + 2 * moreY };
}
