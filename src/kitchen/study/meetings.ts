import type { MeetsOthers } from '../../engine/judge/meets';
import type { Transport } from '../../engine/light/transport';
import { viewShares } from '../../engine/light/view-shares';
import type { SurfaceId } from '../../engine/surface';
import { presentSurfaces } from '../present-surfaces';
import { touchingSurfaces } from '../touching';
import type { Room } from '../types';
import type { RoomStudy } from './room-study';

/** A viewpoint shows a surface from this share of its picture on: as in the overviews that decide the balance (our judgment). */
const SHOWN = 0.01;
/** Rays of a close look: enough to tell a hundredth of the picture. */
const COLUMNS = 64;
const ROWS = 40;

export type Meetings = ReadonlyMap<SurfaceId, MeetsOthers>;

type Seen = Pick<RoomStudy, 'room' | 'overviews' | 'shares'> & { readonly transport: Pick<Transport, 'fineBvh'> };

const known = new WeakMap<Room, Meetings>();

/** Which surfaces touch, and which are seen together from some viewpoint; depends on the room alone, and is worked out once. */
export function meetingsOf(study: Seen): Meetings {
  const before = known.get(study.room);
  if (before) return before;
  const found = meetings(study.room, seenTogether(study));
  known.set(study.room, found);
  return found;
}

/** What each viewpoint shows; indices of surfaces. */
function seenTogether({ room, transport, overviews, shares }: Seen): ReadonlySet<number>[] {
  return room.viewpoints.map((viewpoint) => {
    const counted = shares[overviews.indexOf(viewpoint)];
    const seen = counted
      ? [...counted].map(([key, share]) => ({ surface: Number.parseInt(key, 10), share }))
      : viewShares(room.light, transport, viewpoint, COLUMNS, ROWS);
    const whole = new Map<number, number>();
    for (const { surface, share } of seen) whole.set(surface, (whole.get(surface) ?? 0) + share);
    return new Set([...whole].flatMap(([surface, share]) => (share >= SHOWN ? [surface] : [])));
  });
}

/** @param views per viewpoint the indices of the surfaces it shows */
function meetings(room: Room, views: readonly ReadonlySet<number>[]): Meetings {
  const { surfaces } = room;
  const present = presentSurfaces(room);
  const touching = touchingSurfaces(room);
  const hasFaces = new Set(room.light.fine.map(({ surface }) => surface));
  const carriersOf = (surface: SurfaceId): readonly SurfaceId[] =>
    touching.flatMap(([a, b]) => (a === surface ? [b] : b === surface ? [a] : []));
  // Rays meet no props: what is a prop alone is seen where one sees what it is fixed to.
  const shows = (view: ReadonlySet<number>, surface: SurfaceId): boolean => {
    const index = surfaces.indexOf(surface);
    if (hasFaces.has(index)) return view.has(index);
    return carriersOf(surface).some((carrier) => view.has(surfaces.indexOf(carrier)));
  };
  const seen = views.map((view) => present.filter((surface) => shows(view, surface)));
  const found = new Map<SurfaceId, Partial<Record<SurfaceId, 'adjacent' | 'together'>>>(
    present.map((surface) => [surface, {}]),
  );
  for (const view of seen) {
    for (const a of view) for (const b of view) if (a !== b) found.get(a)![b] = 'together';
  }
  for (const [a, b] of touching) {
    found.get(a)![b] = 'adjacent';
    found.get(b)![a] = 'adjacent';
  }
  return found;
}
