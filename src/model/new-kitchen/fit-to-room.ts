import { checkKitchen } from '../check-kitchen';
import type { Kitchen, Run } from '../kitchen';
import { wallLength } from '../layout/run-ends';
import { fitDoor } from './fit-door';
import { fitOpenings } from './fit-openings';
import { layOut, lowered, usualWindow } from './lay-out';
import type { LayoutId } from './layout-drafts';
import { LAYOUTS } from './layout-drafts';
import { type Loss, lossesOf, type Refitted } from './losses';
import { fitFixtures, usualFixtures } from './usual-fixtures';

const TOUCH = 0.5;

/**
 * The kitchen in a room of another size (mm): runs that reach a wall go on reaching it, the rest keeps its distance from the
 * back wall; island, openings, door and lamps follow. What does not fit is laid out anew, moved to the nearest place that
 * fits, or left out, and told. Null when nothing fits.
 */
export function fitToRoom(kitchen: Kitchen, room: Kitchen['room']): Refitted | null {
  const moved = lowered(follow(kitchen, room));
  if (isSound(moved)) return { kitchen: moved, losses: [] };
  const bare = { ...moved, openings: [], fixtures: [] };
  for (const open_side of moved.open_side ? [moved.open_side, null] : [null]) {
    const withDoor = fitDoor({ ...bare, open_side });
    if (!isSound(withDoor)) continue;
    const found = furnished(withDoor, moved);
    return { kitchen: found, losses: lossesOf(moved, found) };
  }
  // The first that fits, its own layout before the simpler ones.
  const walls = kitchen.runs.map(({ wall }) => wall).join(' ');
  const own: LayoutId = kitchen.island
    ? kitchen.island.joined
      ? 'peninsula'
      : 'l-island'
    : walls === 'left right'
      ? 'galley'
      : kitchen.runs.length === 3
        ? 'u'
        : kitchen.runs.length === 2
          ? 'l'
          : 'one-wall';
  for (const layout of [own, ...LAYOUTS.filter((one) => one === 'l' || one === 'one-wall' || one === 'galley')]) {
    const found = refit(moved, layout);
    if (found) return { kitchen: found, losses: [anew(layout === own ? null : layout), ...lossesOf(moved, found)] };
  }
  return null;
}

const anew = (other: LayoutId | null): Loss => ({ part: 'layout', id: 'layout', fate: 'anew', other });

const isSound = (kitchen: Kitchen): boolean => checkKitchen(kitchen, '').length === 0;

/** The kitchen laid out anew in a layout, with its openings and lamps as far as they fit; null when it does not go in. */
export function refit(kitchen: Kitchen, layout: LayoutId): Kitchen | null {
  const bare =
    layOut(layout, kitchen) ?? layOut(layout, { ...kitchen, cooktop: { ...kitchen.cooktop, hood: 'canopy' } });
  return bare && furnished(bare, kitchen);
}

/** With the openings and lamps of another kitchen as far as they fit; one window and ceiling lamps at the least. */
function furnished(bare: Kitchen, from: Kitchen): Kitchen {
  const open = fitOpenings(bare, from.openings);
  const lit = open.openings.length > 0 || from.openings.length === 0 ? open : fitOpenings(bare, [usualWindow(bare)]);
  const withLamps = fitFixtures(lit, from.fixtures);
  return withLamps.fixtures.length > 0 || from.fixtures.length === 0
    ? withLamps
    : { ...lit, fixtures: usualFixtures(lit) };
}

/** Every length along a wall moved with it. */
function follow(kitchen: Kitchen, room: Kitchen['room']): Kitchen {
  const before = kitchen.room;
  const deeper = room.depth - before.depth;
  const wider = room.width - before.width;
  const along = (wall: 'left' | 'back' | 'right' | 'front') => (wall === 'left' || wall === 'right' ? deeper : 0);
  const scaled = (at: number, wall: 'back' | 'front'): number =>
    Math.round((at * room.width) / wallLength(kitchen, wall));
  const runs = kitchen.runs.map((run) => moveRun(kitchen, run, deeper, wider));
  const center = ({ run, center: at }: { readonly run: Run['wall']; readonly center: number }): number =>
    run === 'back' ? scaled(at, 'back') : at + along(run);
  const { island, open_side } = kitchen;
  const islandRight = island?.joined === 'right';
  return {
    ...kitchen,
    room,
    runs,
    sink: { ...kitchen.sink, center: Math.max(0, center(kitchen.sink)) },
    cooktop: { ...kitchen.cooktop, center: Math.max(0, center(kitchen.cooktop)) },
    island: island && {
      ...island,
      y: Math.max(0, island.y + deeper),
      x: islandRight
        ? Math.max(0, island.x + wider)
        : island.joined || wider >= 0
          ? island.x
          : Math.max(0, Math.round(island.x + wider / 2)),
    },
    openings: kitchen.openings.map((one) => ({
      ...one,
      center: Math.max(
        0,
        one.wall === 'back' || one.wall === 'front' ? scaled(one.center, one.wall) : one.center + along(one.wall),
      ),
    })),
    open_side: open_side && {
      ...open_side,
      height: Math.min(open_side.height, room.height),
    },
  };
}

/** Back runs keep their beginning, side runs their end; an end at a wall stays at it. */
function moveRun(kitchen: Kitchen, run: Run, deeper: number, wider: number): Run {
  const length = wallLength(kitchen, run.wall);
  const atEnd = run.to >= length - TOUCH;
  if (run.wall === 'back') return { ...run, to: atEnd ? length + wider : Math.min(run.to, length + wider) };
  const from = run.from <= TOUCH ? 0 : Math.max(0, run.from + deeper);
  // A run that would come too near to the door's wall reaches it, or keeps its beginning.
  return { ...run, from: from > 0 && from < 150 ? 150 : from, to: atEnd ? length + deeper : run.to + deeper };
}
