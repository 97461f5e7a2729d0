import type { Kitchen, RunWall, Wall } from '../kitchen';

export const ACROSS = { left: 'right', right: 'left', back: 'back', front: 'front' } as const;
const ORDER: readonly RunWall[] = ['left', 'back', 'right'];

/** The kitchen with left and right exchanged. */
export function mirrorKitchen(kitchen: Kitchen): Kitchen {
  const { room, runs, island, sink, cooktop, openings, open_side, door } = kitchen;
  const at = (wall: Wall, place: number): number => (wall === 'back' || wall === 'front' ? room.width - place : place);
  const placed = <P extends { readonly run: RunWall; readonly center: number }>(one: P): P => ({
    ...one,
    run: ACROSS[one.run],
    center: at(one.run, one.center),
  });
  return {
    ...kitchen,
    runs: runs
      .map((run) => {
        const { wall, from, to, tall_from, tall_to } = run;
        if (wall !== 'back') return { ...run, wall: ACROSS[wall] };
        return { ...run, from: room.width - to, to: room.width - from, tall_from: tall_to, tall_to: tall_from };
      })
      .sort((a, b) => ORDER.indexOf(a.wall) - ORDER.indexOf(b.wall)),
    island: island && {
      ...island,
      x: room.width - island.x - island.width,
      joined: island.joined && ACROSS[island.joined],
      waterfall:
        island.waterfall === 'left' || island.waterfall === 'right' ? ACROSS[island.waterfall] : island.waterfall,
    },
    sink: placed(sink),
    cooktop: placed(cooktop),
    openings: openings.map((opening) => ({
      ...opening,
      wall: ACROSS[opening.wall],
      center: at(opening.wall, opening.center),
    })),
    open_side: open_side && {
      ...open_side,
      wall: ACROSS[open_side.wall],
      ...(open_side.wall === 'front' && { from: room.width - open_side.to, to: room.width - open_side.from }),
    },
    door: { ...door, from_right: room.width - door.from_right - door.width },
  };
}
