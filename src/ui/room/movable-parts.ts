import type { Problem } from '../../engine/result';
import { checkKitchen } from '../../model/check-kitchen';
import type { Kitchen, Opening, OpenSide, RunWall, Wall } from '../../model/kitchen';
import type { Rows } from '../../model/layout/types';
import { type LengthUnit, lengthWords, MM_PER_INCH } from '../../model/length-text';
import { endWords, KITCHEN } from '../words/kitchen';

/** A point on the plan from the front left corner, mm: x along the door's wall, y towards the back wall. */
type Point = readonly [x: number, y: number];
type Range = readonly [low: number, high: number];

/** Something that can be moved on the plan and in elevations. */
export interface MovablePart {
  readonly id: string;
  readonly name: string;
  /** The field that holds its place. */
  readonly path: string;
  /** On which wall it stands; null: free in the room. */
  readonly wall: Wall | null;
  readonly ways: 'x' | 'y' | 'xy';
  /** What is moved: its place in the ways it may go. */
  readonly place: Point;
  readonly footprint: { readonly x: Range; readonly y: Range };
  /** Heights it takes in an elevation, mm. */
  readonly heights: Range;
  readonly moved: (place: Point) => Kitchen;
}

/** Half of what one takes hold of at a sink, a cooktop and the end of a run; how far holds reach into a wall, mm. */
const HALF_SINK = 260;
const HALF_END = 60;
const WALL = 110;
const HAND = 120;

const isUpright = (wall: Wall): boolean => wall === 'left' || wall === 'right';

/** All that can be moved in a kitchen. `rows`: its planned rows. */
export function movableParts(kitchen: Kitchen, rows: Rows): readonly MovablePart[] {
  return [...islandParts(kitchen), ...runParts(kitchen, rows), ...applianceParts(kitchen), ...wallParts(kitchen)];
}

/** Where a part is, in words. */
export function placeWords({ wall, place, ways }: MovablePart, unit: LengthUnit): string {
  const [x, y] = [lengthWords(place[0], unit), lengthWords(place[1], unit)];
  if (ways === 'xy') return KITCHEN.atXy(x, y);
  return KITCHEN.along(ways === 'x' ? x : y, wall ?? (ways === 'x' ? 'back' : 'left'));
}

/** The smallest step of a drag or an arrow key, and the large one with Shift, mm. */
export const moveSteps = (unit: LengthUnit): readonly [small: number, large: number] =>
  unit === 'mm' ? [10, 100] : [MM_PER_INCH / 2, 4 * MM_PER_INCH];

/**
 * The kitchen with a part moved to a place, or as far towards it as everything fits; with what stopped it. The kitchen given
 * where it cannot move at all.
 */
export function movedAsFar(kitchen: Kitchen, part: MovablePart, to: Point, unit: LengthUnit): Moved {
  const [step] = moveSteps(unit);
  const wanted: Point = [round(to[0], step), round(to[1], step)];
  const [problem] = checkKitchen(part.moved(wanted), 'kitchen');
  if (!problem) return { kitchen: part.moved(wanted), problem: null };
  const [dx, dy] = [wanted[0] - part.place[0], wanted[1] - part.place[1]];
  let [reached, missed] = [0, Math.ceil(Math.max(Math.abs(dx), Math.abs(dy)) / step)];
  const steps = missed;
  const at = (count: number): Point => [
    round(part.place[0] + (dx * count) / steps, step),
    round(part.place[1] + (dy * count) / steps, step),
  ];
  while (missed - reached > 1) {
    const middle = (reached + missed) >> 1;
    if (checkKitchen(part.moved(at(middle)), 'kitchen').length === 0) reached = middle;
    else missed = middle;
  }
  return { kitchen: reached === 0 ? kitchen : part.moved(at(reached)), problem };
}

interface Moved {
  readonly kitchen: Kitchen;
  readonly problem: Problem | null;
}

/** To the nearest step, kept to a tenth of a millimeter. */
const round = (mm: number, step: number): number => Math.round(Math.round(mm / step) * step * 10) / 10;

function islandParts(kitchen: Kitchen): readonly MovablePart[] {
  const { island } = kitchen;
  if (!island) return [];
  const { x, y, width, depth, joined } = island;
  return [
    {
      id: 'island',
      name: joined ? KITCHEN.peninsulaName : KITCHEN.islandName,
      path: joined ? 'island.y' : 'island.x',
      wall: null,
      ways: joined ? 'y' : 'xy',
      place: [x, y],
      footprint: { x: [x, x + width], y: [y, y + depth] },
      heights: [0, 0],
      moved: ([toX, toY]) => ({ ...kitchen, island: { ...island, x: joined ? x : toX, y: toY } }),
    },
  ];
}

function runParts(kitchen: Kitchen, rows: Rows): readonly MovablePart[] {
  const top = counterTop(kitchen);
  return kitchen.runs.flatMap((run, i) => {
    const ends = rows.runs.find(({ wall }) => wall === run.wall)?.ends;
    return (['from', 'to'] as const)
      .filter((end) => ends && ends[end] !== 'owns-corner' && ends[end] !== 'meets')
      .map((end): MovablePart => {
        const at = run[end];
        const inward: Range = end === 'from' ? [at, at + 2 * HALF_END] : [at - 2 * HALF_END, at];
        return {
          id: `run-${run.wall}-${end}`,
          name: KITCHEN.runEnd(run.wall, endWords(run.wall, end)),
          path: `runs[${i}].${end}`,
          ...alongWall(kitchen, run.wall, at, inward, [0, kitchen.counter.depth]),
          heights: [0, top],
          moved: (place) => ({
            ...kitchen,
            runs: kitchen.runs.map((one) => (one === run ? { ...run, [end]: ofWall(run.wall, place) } : one)),
          }),
        };
      });
  });
}

function applianceParts(kitchen: Kitchen): readonly MovablePart[] {
  const top = counterTop(kitchen);
  const part = (
    id: 'sink' | 'cooktop',
    name: string,
    { run, center }: { readonly run: RunWall; readonly center: number },
    half: number,
  ): MovablePart => ({
    id,
    name,
    path: `${id}.center`,
    ...alongWall(kitchen, run, center, [center - half, center + half], [0, kitchen.counter.depth]),
    heights: [kitchen.base.plinth_height, top],
    moved: (place) => ({ ...kitchen, [id]: { ...kitchen[id], center: ofWall(run, place) } }),
  });
  return [
    part('sink', KITCHEN.sinkName, kitchen.sink, HALF_SINK),
    part('cooktop', KITCHEN.cooktopName, kitchen.cooktop, kitchen.cooktop.width / 2),
  ];
}

function wallParts(kitchen: Kitchen): readonly MovablePart[] {
  const { door, open_side, openings, room } = kitchen;
  const doorCenter = room.width - door.from_right - door.width / 2;
  return [
    ...openings.map((opening, i) => openingPart(kitchen, opening, i)),
    {
      id: 'door',
      name: KITCHEN.doorName,
      path: 'door.from_right',
      ...alongWall(kitchen, 'front', doorCenter, around(doorCenter, door.width), [-WALL, HAND]),
      heights: [0, door.height],
      moved: ([x]) => ({ ...kitchen, door: { ...door, from_right: room.width - x - door.width / 2 } }),
    },
    ...(open_side ? openSideParts(kitchen, open_side) : []),
  ];
}

/** Numbered as in the list of openings, whatever their kind. */
const openingPart = (kitchen: Kitchen, opening: Opening, i: number): MovablePart => ({
  id: `opening-${opening.id}`,
  name: KITCHEN.windowName(opening.kind, i + 1),
  path: `openings[${i}].center`,
  ...alongWall(kitchen, opening.wall, opening.center, around(opening.center, opening.width), [-WALL, HAND]),
  heights: [opening.sill, opening.sill + opening.height],
  moved: (place) => ({
    ...kitchen,
    openings: kitchen.openings.map((one) =>
      one === opening ? { ...opening, center: ofWall(opening.wall, place) } : one,
    ),
  }),
});

const openSideParts = (kitchen: Kitchen, side: OpenSide): readonly MovablePart[] =>
  (['from', 'to'] as const).map((end) => ({
    id: `open-side-${end}`,
    name: KITCHEN.openName(endWords(side.wall, end)),
    path: `open_side.${end}`,
    ...alongWall(kitchen, side.wall, side[end], around(side[end], 2 * HALF_END), [-WALL, HAND]),
    heights: [0, side.height],
    moved: (place) => ({ ...kitchen, open_side: { ...side, [end]: ofWall(side.wall, place) } }),
  }));

const around = (center: number, width: number): Range => [center - width / 2, center + width / 2];

/** What lies along a wall between two marks and reaches from it into the room between two distances. */
function alongWall(
  { room }: Kitchen,
  wall: Wall,
  at: number,
  span: Range,
  [near, far]: Range,
): Pick<MovablePart, 'wall' | 'ways' | 'place' | 'footprint'> {
  const away: Range =
    wall === 'left' || wall === 'front'
      ? [near, far]
      : wall === 'right'
        ? [room.width - far, room.width - near]
        : [room.depth - far, room.depth - near];
  const across = wall === 'right' ? room.width : wall === 'back' ? room.depth : 0;
  return isUpright(wall)
    ? { wall, ways: 'y', place: [across, at], footprint: { x: away, y: span } }
    : { wall, ways: 'x', place: [at, across], footprint: { x: span, y: away } };
}

const ofWall = (wall: Wall, [x, y]: Point): number => (isUpright(wall) ? y : x);

const counterTop = ({ base, counter }: Kitchen): number => base.plinth_height + base.carcass_height + counter.thickness;
