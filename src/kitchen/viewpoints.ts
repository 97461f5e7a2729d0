import type { Vec3, Viewpoint } from '../engine/light/types';
import type { Plan } from './plan/types';
import type { Room } from './types';

/** The eye keeps this far from walls, floor and ceiling, m. */
const MARGIN = 0.15;
const STANDING = 1.6;
const SEATED = 1.2;
/** How far in front of the counter one stands to work, m. */
const STEP_BACK = 0.6;

/** A close look leaves this much between the eye and the counter below it, m. */
const OVER_COUNTER = 0.2;

/** The box inside the room that the eye may move in. */
export const eyeLimits = ({ width, depth, height }: Plan): Room['eyeLimits'] => ({
  min: [MARGIN, MARGIN, MARGIN],
  max: [width - MARGIN, depth - MARGIN, height - MARGIN],
});

/** Five places people look from when they judge a kitchen. */
export function viewpoints(plan: Plan): Viewpoint[] {
  const { width, depth, counter, island, door } = plan;
  const counterFront = depth - counter.depth;
  const cooktop = (plan.back.cooktop.from + plan.back.cooktop.to) / 2;
  const atDoor: Vec3 = [(door.from + door.to) / 2, MARGIN + 0.02, STANDING];
  return [
    {
      id: 'doorway',
      name: 'From the doorway',
      eye: atDoor,
      target: [atDoor[0] - 0.446 * width, 0.75 * depth, 0.75],
      fov_deg: 60,
      overview: true,
    },
    {
      id: 'at-counter',
      name: 'Standing at the counter',
      eye: [counter.depth + 1.33, counterFront - STEP_BACK, STANDING],
      target: [0.4, depth - 0.35, counter.top + 0.05],
      fov_deg: 62,
      overview: false,
    },
    {
      id: 'looking-down',
      name: 'Looking down on it',
      eye: [cooktop - 0.5, counterFront - 0.55, 1.75],
      target: [plan.back.cooktop.from - 0.3, depth - 0.35, counter.top - 0.05],
      fov_deg: 60,
      overview: false,
    },
    {
      id: 'seated',
      name: 'Seated at the island',
      eye: [island.counter.x0 - 0.15, Math.max(MARGIN + 0.02, island.counter.y0 - 0.75), SEATED],
      target: [island.counter.x0 - 0.65, depth - 0.4, 0.6],
      fov_deg: 62,
      overview: true,
    },
    {
      id: 'corner',
      name: 'Close on the corner',
      eye: [0.6, depth - 0.6, Math.max(1.35, counter.top + OVER_COUNTER)],
      target: [0.12, depth - 0.05, counter.top + 0.04],
      fov_deg: 62,
      overview: false,
    },
  ];
}
