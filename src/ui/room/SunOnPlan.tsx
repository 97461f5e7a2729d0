import type { SunPosition } from '../../engine/daylight/types';
import type { Kitchen } from '../../model/kitchen';
import { DAYLIGHT } from '../words/daylight';
import { type PlanXy, towards } from './compass';
import type { SunBeamOnPlan } from './sun-beams';

interface SunOnPlanProps {
  readonly room: Pick<Kitchen['room'], 'width' | 'depth'>;
  readonly bearing_deg: number;
  readonly sun: SunPosition;
  /** Whether the sun shines as a beam: the sky is clear. */
  readonly isBeam: boolean;
  /** Where it falls through the windows. */
  readonly beams: readonly SunBeamOnPlan[];
  readonly center: PlanXy;
  readonly radius: number;
  readonly size: number;
}

const RAYS = [0, 45, 90, 135, 180, 225, 270, 315];

/** Height of the label against `size`, and half its length against its height. */
const LETTER = 0.65;
const HALF_LABEL = 4.6;

/** In the middle of the patch, but whole within the room. */
function labelPlace(floor: SunBeamOnPlan['floor'], room: SunOnPlanProps['room'], height: number): PlanXy {
  const middle = (k: 0 | 1) => floor.reduce((sum, point) => sum + point[k], 0) / floor.length;
  const within = (value: number, margin: number, most: number) => Math.max(margin, Math.min(most - margin, value));
  return [within(middle(0), HALF_LABEL * height, room.width), within(middle(1) + height / 3, height, room.depth)];
}

const path = (points: readonly PlanXy[]): string => `M${points.map(([x, y]) => `${x} ${y}`).join('L')}`;

/** The sun outside the plan where it stands at the hour, and where it falls through the windows, as plain lines. */
export function SunOnPlan(props: SunOnPlanProps) {
  const { room, sun, isBeam, beams, radius, size } = props;
  const [cx, cy] = props.center;
  if (sun.elevation_deg <= 0) return null;
  const [dx, dy] = towards(sun.azimuth_deg, props.bearing_deg);
  const [x, y] = [cx + dx * radius, cy + dy * radius];
  const label = beams[0] && labelPlace(beams[0].floor, room, LETTER * size);
  return (
    <>
      {/* A drawing within the drawing cuts what falls beyond the walls. */}
      <svg
        x={0}
        y={0}
        width={room.width}
        height={room.depth}
        viewBox={`0 0 ${room.width} ${room.depth}`}
        overflow="hidden"
        aria-hidden="true"
      >
        {beams.map(({ id, glass, floor }) => (
          <g key={id} className="plan-beam">
            <path d={`${path([glass[0], floor[3]])}${path([glass[1], floor[2]])}`} />
            <path className="plan-beam-floor" d={`${path(floor)}Z`} />
          </g>
        ))}
        {label && (
          <text className="plan-beam-label" x={label[0]} y={label[1]} fontSize={LETTER * size} textAnchor="middle">
            {DAYLIGHT.sunOnFloor}
          </text>
        )}
      </svg>
      <g className={`plan-sun ${isBeam ? '' : 'is-hidden-by-cloud'}`} transform={`translate(${x} ${y})`}>
        <circle r={0.5 * size} />
        {RAYS.map((angle) => (
          <path key={angle} d={`M0 ${-0.68 * size}V${-size}`} transform={`rotate(${angle})`} />
        ))}
      </g>
    </>
  );
}
