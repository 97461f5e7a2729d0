import type { Vec3, Viewpoint } from '../engine/light/types';
import { nextRoomOf } from './parts/next-room';
import { pointAt, wallSide } from './parts/side';
import type { Plan } from './plan/types';
import type { Room } from './types';
import { atTable, type Corner, cornerOf, longestCounter, middleOfUnits, nearestFree } from './view-places';

/** The eye keeps this far from walls, floor and ceiling, m. */
const MARGIN = 0.15;
const STANDING = 1.6;
const SEATED = 1.2;
/** How far in front of the counter one stands to work, m. */
const STEP_BACK = 0.6;

/** A close look leaves this much between the eye and the counter below it, m. */
const OVER_COUNTER = 0.2;
/** From the wall one looks out of into the kitchen, in the next room, m. */
const IN_NEXT_ROOM = 0.5;
/** In a doorway one keeps this far from its jambs, and from counters that reach before it, m. */
const FROM_JAMB = 0.15;
const FROM_COUNTER = 0.35;

/** The box that the eye may move in: the room, and where it is open to the next one that room, too. */
export function eyeLimits(plan: Plan): Room['eyeLimits'] {
  const min: [number, number, number] = [MARGIN, MARGIN, MARGIN];
  const max: [number, number, number] = [plan.width - MARGIN, plan.depth - MARGIN, plan.height - MARGIN];
  const next = nextRoomOf(plan);
  if (next) {
    const { side, room } = next;
    const far = side.wall + side.outward * (room.d[0] + MARGIN);
    const axis = side.along === 0 ? 1 : 0;
    if (side.outward > 0) min[axis] = far;
    else max[axis] = far;
  }
  return { min, max };
}

/** Places people look from when they judge a kitchen. */
export function viewpoints(plan: Plan): Viewpoint[] {
  const corner = cornerOf(plan);
  return [
    fromDoorway(plan),
    atCounter(plan, corner),
    lookingDown(plan),
    seated(plan),
    close(plan, corner),
    ...atSink(plan, corner),
    ...fromNextRoom(plan),
  ].map((view) => ({ ...view, eye: within(eyeLimits(plan), view.eye) }));
}

const within = ({ min, max }: Room['eyeLimits'], eye: Vec3): Vec3 => {
  const clamped = (k: 0 | 1 | 2): number => Math.min(max[k], Math.max(min[k], eye[k]));
  return [clamped(0), clamped(1), clamped(2)];
};

/** Looks across the room, to the side that more of the kitchen is on. */
function fromDoorway(plan: Plan): Viewpoint {
  const { width, depth } = plan;
  const eye: Vec3 = [inDoorway(plan), MARGIN + 0.02, STANDING];
  const aside = 0.446 * width;
  const [middle] = middleOfUnits(plan);
  const aims = [eye[0] - aside, eye[0], eye[0] + aside].filter((x) => x > 0 && x < width);
  const towards = aims.reduce((best, aim) => (Math.abs(aim - middle) < Math.abs(best - middle) ? aim : best));
  const x = alongWall(plan, eye, 0.75 * depth) ?? towards;
  return {
    id: 'doorway',
    name: 'From the doorway',
    eye,
    target: [x, 0.75 * depth, 0.75],
    fov_deg: 60,
    overview: true,
  };
}

/** Where one looks, at a depth of the room, to have all of a kitchen along the back wall before one's eyes; null for others. */
function alongWall(
  { runs, island, counter, depth }: Plan,
  [x, y]: readonly [x: number, y: number, ...rest: readonly number[]],
  at: number,
): number | null {
  const [run] = runs;
  if (runs.length > 1 || island || run?.wall !== 'back') return null;
  const ends = [run.counter, run.base, ...run.tall];
  const away = depth - counter.depth - y;
  const angle = (a: number): number => Math.atan2(a - x, away);
  const middle = (angle(Math.min(...ends.map(({ from }) => from))) + angle(Math.max(...ends.map(({ to }) => to)))) / 2;
  return x + (at - y) * Math.tan(middle);
}

/** Where one stands in the doorway: in its middle, or as far aside from counters that reach before it as the jambs allow. */
function inDoorway({ width, door, counter, runs }: Plan): number {
  const reach = (wall: 'left' | 'right'): number => (runs.some((run) => run.wall === wall) ? counter.depth : 0);
  const least = reach('left') > 0 ? reach('left') + FROM_COUNTER : 0;
  const most = reach('right') > 0 ? width - reach('right') - FROM_COUNTER : width;
  const clear = Math.max(least, Math.min(most, (door.from + door.to) / 2));
  return Math.max(door.from + FROM_JAMB, Math.min(door.to - FROM_JAMB, clear));
}

/** Towards the corner, from before the counter of the back wall; or along the longest counter. */
function atCounter(plan: Plan, corner: Corner | null): Viewpoint {
  const { counter, depth } = plan;
  const view = { id: 'at-counter', name: 'Standing at the counter', fov_deg: 62, overview: false } as const;
  if (corner) {
    const x = nearestFree(plan, counter.depth + 1.33, corner);
    return {
      ...view,
      eye: [corner.x(x), depth - counter.depth - STEP_BACK, STANDING],
      target: [corner.x(0.4), depth - 0.35, counter.top + 0.05],
    };
  }
  const { run, from, to } = longestCounter(plan);
  const side = wallSide(plan, run.wall);
  const aside = Math.min(0.8, 0.25 * (to - from));
  const middle = (from + to) / 2;
  return {
    ...view,
    eye: pointAt(side, middle + aside, beforeCounter(plan, STEP_BACK), STANDING),
    target: pointAt(side, middle - aside, 0.35, counter.top + 0.05),
  };
}

/** At the cooktop, on the longer stretch of counter beside it. */
function lookingDown(plan: Plan): Viewpoint {
  const { counter, cooktop } = plan;
  const { from, to } = cooktop.module;
  const side = wallSide(plan, cooktop.run);
  const { counter: slab } = plan.runs.find((run) => run.wall === cooktop.run)!;
  const isLow = from - slab.from >= slab.to - to;
  const way = isLow ? -1 : 1;
  const edge = isLow ? from : to;
  const onSlab = (a: number): number => Math.min(slab.to - 0.1, Math.max(slab.from + 0.1, a));
  return {
    id: 'looking-down',
    name: 'Looking down on it',
    eye: pointAt(side, onSlab((from + to) / 2 + 0.5 * way), beforeCounter(plan, 0.55), 1.75),
    target: pointAt(side, onSlab(edge + 0.3 * way), 0.35, counter.top - 0.05),
    fov_deg: 60,
    overview: false,
  };
}

/** At a table one looks across the room: a narrower picture than close at a counter. */
const AT_TABLE_DEG = 55;

/** Beside the seats of the island, on the side with more room; without seats at the edge of a table. */
function seated(plan: Plan): Viewpoint {
  const { island, depth, width, counter } = plan;
  const view = { id: 'seated', fov_deg: 62, overview: true } as const;
  if (!island || island.stools.length === 0) {
    const { eye, target: middle } = atTable(plan);
    const target = [alongWall(plan, eye, middle[1]) ?? middle[0], middle[1]] as const;
    return {
      ...view,
      name: 'Seated at a table',
      eye: [...eye, SEATED],
      target: [...target, 0.7],
      fov_deg: AT_TABLE_DEG,
    };
  }
  const { x0, x1, y0 } = island.counter;
  const runDepth = (wall: 'left' | 'right'): number => (plan.runs.some((run) => run.wall === wall) ? counter.depth : 0);
  const left = island.joined === 'left' ? 0 : x0 - runDepth('left');
  const right = island.joined === 'right' ? 0 : width - x1 - runDepth('right');
  const way = left >= right ? -1 : 1;
  const end = left >= right ? x0 : x1;
  return {
    ...view,
    name: `Seated at the ${island.joined ? 'peninsula' : 'island'}`,
    eye: [end + 0.15 * way, Math.max(MARGIN + 0.02, y0 - 0.75), SEATED],
    target: [end + 0.65 * way, depth - 0.4, 0.6],
  };
}

/** Over the counter in a corner, or over a free part of the longest counter. */
function close(plan: Plan, corner: Corner | null): Viewpoint {
  const { depth, counter } = plan;
  const z = Math.max(1.35, counter.top + OVER_COUNTER);
  const view = { id: 'corner', fov_deg: 62, overview: false } as const;
  if (corner) {
    return {
      ...view,
      name: 'Close on the corner',
      eye: [corner.x(0.6), depth - 0.6, z],
      target: [corner.x(0.12), depth - 0.05, counter.top + 0.04],
    };
  }
  const { run, free } = longestCounter(plan);
  const side = wallSide(plan, run.wall);
  const middle = (free.from + free.to) / 2;
  const aside = Math.max(0, Math.min(0.3, (free.to - free.from) / 2 - 0.1));
  return {
    ...view,
    name: 'Close at the counter',
    eye: pointAt(side, middle + aside, 0.6, z),
    target: pointAt(side, middle - aside / 2, 0.05, counter.top + 0.04),
  };
}

/** Where the sink is on a run that the other views from the counter do not look at. */
function atSink(plan: Plan, corner: Corner | null): Viewpoint[] {
  const { sink, counter } = plan;
  const seen = corner ? ['back', corner.wall] : [longestCounter(plan).run.wall];
  if (seen.includes(sink.run)) return [];
  const side = wallSide(plan, sink.run);
  const middle = (sink.module.from + sink.module.to) / 2;
  return [
    {
      id: 'at-sink',
      name: 'At the sink',
      eye: pointAt(side, middle, beforeCounter(plan, 0.4), STANDING),
      target: pointAt(side, middle, 0.3, counter.top),
      fov_deg: 62,
      overview: false,
    },
  ];
}

function fromNextRoom(plan: Plan): Viewpoint[] {
  const next = nextRoomOf(plan);
  if (!next) return [];
  const { side, passage, room } = next;
  const d = Math.max(room.d[0] + MARGIN + 0.05, passage.d[0] - IN_NEXT_ROOM);
  const middle = (passage.a[0] + passage.a[1]) / 2;
  const [x, y] = middleOfUnits(plan);
  // So far aside that one looks through the middle of the passage.
  const [along, away] = side.along === 0 ? [x, y] : [y, x];
  const deep = side.outward * (away - side.wall);
  const aside = middle + ((middle - along) * -d) / Math.max(deep, -d);
  const a = Math.min(room.a[1] - MARGIN, Math.max(room.a[0] + MARGIN, aside));
  return [
    {
      id: 'next-room',
      name: 'From the next room',
      eye: pointAt(side, a, d, STANDING),
      target: [x, y, 0.9],
      fov_deg: 55,
      overview: false,
    },
  ];
}

/** How far from the wall one stands before a counter: in a narrow aisle nearer than one would like. */
function beforeCounter({ counter, width, depth, runs, island }: Plan, step: number): number {
  const hasOther = runs.some(({ wall }) => wall === 'left') && runs.some(({ wall }) => wall === 'right');
  const aisle = hasOther ? width - 2 * counter.depth : Math.min(width, depth) - counter.depth;
  return counter.depth + (island ? step : Math.max(0.2, Math.min(step, aisle - 0.3)));
}
