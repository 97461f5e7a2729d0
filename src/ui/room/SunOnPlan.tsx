import type { SunPosition } from '../../engine/daylight/types';
import type { Kitchen } from '../../model/project';
import { type PlanXy, towards } from './compass';
import { sunBeams } from './sun-beams';

interface SunOnPlanProps {
  readonly kitchen: Pick<Kitchen, 'room' | 'openings' | 'site'>;
  readonly sun: SunPosition;
  /** Whether the sun shines as a beam: the sky is clear. */
  readonly isBeam: boolean;
  readonly center: PlanXy;
  readonly radius: number;
  readonly size: number;
}

const RAYS = [0, 45, 90, 135, 180, 225, 270, 315];

const path = (points: readonly PlanXy[]): string => `M${points.map(([x, y]) => `${x} ${y}`).join('L')}`;

/** The sun outside the plan where it stands at the hour, and where it falls through the windows, as plain lines. */
export function SunOnPlan({ kitchen, sun, isBeam, center: [cx, cy], radius, size }: SunOnPlanProps) {
  const { room, openings, site } = kitchen;
  if (sun.elevation_deg <= 0) return null;
  const [dx, dy] = towards(sun.azimuth_deg, site.bearing_deg);
  const [x, y] = [cx + dx * radius, cy + dy * radius];
  const beams = isBeam ? sunBeams(openings, room, site.bearing_deg, sun) : [];
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
