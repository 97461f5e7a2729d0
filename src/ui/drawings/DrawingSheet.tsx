import type { LengthUnit } from '../../model/length-text';
import { ChainLines } from './ChainLines';
import { PAGE_WIDTH } from './choose-scale';
import { LevelMarks } from './LevelMarks';
import { RoomMarks } from './RoomMarks';
import { ScaleBar } from './ScaleBar';
import { ShapeLines } from './ShapeLines';
import { StartMarks } from './StartMarks';
import { BAR_ROOM, sizeOf } from './sheet-layout';
import { TagBoxes } from './TagBoxes';
import type { TaggedDrawing } from './tagged';
import './drawing.css';

interface DrawingSheetProps {
  readonly drawing: TaggedDrawing;
  readonly unit: LengthUnit;
  /** What it is called and, where nothing else says it, what it shows. */
  readonly label: string;
  /** Where it is said in words. */
  readonly describedBy?: string;
  /** As large as its scale says; else as wide as its place, but never so small that it cannot be read. */
  readonly isOnPaper?: boolean;
}

/** On a screen a millimeter of paper is at least so wide, CSS px: letters are then 11 px. */
const LEAST_PX = 3.6;

/** A drawing with dimensions and tags, drawn in millimeters of paper. */
export function DrawingSheet({
  drawing: { layout, tags, marks, starts },
  unit,
  label,
  describedBy,
  isOnPaper,
}: DrawingSheetProps) {
  const { margins, height, ratio } = layout;
  const [wide, high] = sizeOf(layout);
  const size = isOnPaper
    ? { width: `${wide}mm`, height: `${high}mm` }
    : { width: `${(100 * wide) / PAGE_WIDTH}%`, minWidth: `${Math.round(wide * LEAST_PX)}px` };
  return (
    <svg
      className="draw"
      viewBox={`${-margins.left} ${-margins.top} ${wide} ${high}`}
      style={size}
      role="img"
      aria-label={label}
      aria-describedby={describedBy}
    >
      <ShapeLines layout={layout} />
      <StartMarks starts={starts} />
      <RoomMarks layout={layout} marks={marks} />
      <ChainLines layout={layout} />
      <LevelMarks layout={layout} />
      <TagBoxes tags={tags} />
      <ScaleBar x={0} y={height + margins.bottom - BAR_ROOM + 3} ratio={ratio} unit={unit} />
    </svg>
  );
}
