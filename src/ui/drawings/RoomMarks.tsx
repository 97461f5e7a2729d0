import type { Gap } from '../../kitchen/drawings/types';
import { towards } from '../room/compass';
import { DRAWINGS } from '../words/schedule-drawings';
import type { Box } from './boxes';
import { MARK, type PlacedMark } from './plan-marks';
import type { SheetLayout } from './sheet-layout';
import { CAPITAL, LETTER, WALL } from './sizes';

/** Of the plan: walls with what opens them, the letters of the elevations, north. */
export function RoomMarks({ layout, marks }: { readonly layout: SheetLayout; readonly marks: readonly PlacedMark[] }) {
  const { width, height, drawing, margins } = layout;
  const { room } = drawing;
  if (!room) return null;
  return (
    <>
      <path
        className="draw-room-wall"
        fillRule="evenodd"
        d={`M${-WALL} ${-WALL}H${width + WALL}V${height + WALL}H${-WALL}ZM0 0H${width}V${height}H0Z`}
      />
      {room.gaps.map((gap) => (
        <GapInWall key={`${gap.wall} ${gap.from}`} gap={gap} layout={layout} />
      ))}
      {marks.map((mark) => (
        <WallMark key={mark.letter} mark={mark} />
      ))}
      <North x={-margins.left + 4.9} y={-margins.top + 4.9} bearing_deg={room.bearing_deg} />
    </>
  );
}

function GapInWall({ gap: { wall, kind, from, to }, layout }: { readonly gap: Gap; readonly layout: SheetLayout }) {
  const { ratio, width, height } = layout;
  const [a, b] = [from / ratio, to / ratio];
  const isAcross = wall === 'back' || wall === 'front';
  const at = wall === 'back' || wall === 'left' ? -WALL : wall === 'front' ? height : width;
  const box: Box = isAcross
    ? { x: a, y: at, width: b - a, height: WALL }
    : { x: at, y: height - b, width: WALL, height: b - a };
  const middle = isAcross
    ? `M${box.x} ${at + WALL / 2}H${box.x + box.width}`
    : `M${at + WALL / 2} ${box.y}V${box.y + box.height}`;
  return (
    <g>
      <rect className="draw-gap" {...box} />
      {(kind === 'window' || kind === 'glazed-door') && <path className="draw-fine" d={middle} />}
    </g>
  );
}

function WallMark({ mark: { letter, at, way } }: { readonly mark: PlacedMark }) {
  const [x, y] = at;
  const turned = way[1] < 0 ? 0 : way[0] > 0 ? 90 : way[1] > 0 ? 180 : 270;
  const r = MARK.radius;
  return (
    <g transform={`translate(${x} ${y})`}>
      <path className="draw-mark-point" transform={`rotate(${turned})`} d={`M${-r} 0L0 ${-MARK.point}L${r} 0Z`} />
      <circle className="draw-mark" r={r} />
      <text className="draw-words is-tag" y={CAPITAL / 2} fontSize={LETTER} textAnchor="middle">
        {letter}
      </text>
    </g>
  );
}

function North({ x, y, bearing_deg }: { readonly x: number; readonly y: number; readonly bearing_deg: number }) {
  const [dx, dy] = towards(0, bearing_deg);
  const angle = (Math.atan2(dx, -dy) * 180) / Math.PI;
  return (
    <g transform={`translate(${x} ${y})`}>
      <path className="draw-north" transform={`rotate(${angle})`} d="M0 3.2V-1.6M-1 0L0 -1.9L1 0" />
      <text className="draw-words" x={3.5 * dx} y={3.5 * dy + CAPITAL / 2} fontSize={LETTER} textAnchor="middle">
        {DRAWINGS.north}
      </text>
    </g>
  );
}
