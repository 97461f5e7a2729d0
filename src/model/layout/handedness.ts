import type { Kitchen, RunWall, TallKind } from '../kitchen';
import { mirrorKitchen } from './mirror-kitchen';

/** Numbers nearer to each other than this are the same, mm. */
const NEAR = 1e-6;

/**
 * Whether rows of this kitchen are filled as those of its mirror image, and mirrored. Of a kitchen and its image one is, unless they are
 * the same: modules are fitted from one end, and must stand in both alike.
 */
export function isFilledMirrored(kitchen: Kitchen): boolean {
  const here = featuresOf(kitchen);
  const there = featuresOf(mirrorKitchen(kitchen));
  for (let i = 0; i < Math.max(here.length, there.length); i++) {
    const [a, b] = [here[i] ?? 0, there[i] ?? 0];
    if (Math.abs(a - b) > NEAR) return a > b;
  }
  return false;
}

const KINDS: readonly TallKind[] = ['larder', 'oven', 'fridge'];

/** All that may tell a kitchen from its mirror image and has a say in how its rows are filled; tall units and corners first. */
function featuresOf({ room, runs, island, sink, cooktop, openings }: Kitchen): readonly number[] {
  const on = (wall: RunWall) => runs.find((run) => run.wall === wall);
  const [left, back, right] = [on('left'), on('back'), on('right')];
  const tall = (kinds: readonly TallKind[] = []): number =>
    kinds.reduce((sum, kind) => 4 * sum + 1 + KINDS.indexOf(kind), 0);
  const side = (run: typeof left): readonly number[] => [
    tall(run?.tall_from) + tall(run?.tall_to),
    run?.from ?? 0,
    run?.to ?? 0,
    ['units', 'shelf', 'none'].indexOf(run?.over ?? ''),
  ];
  const place = ({ run, center }: { readonly run: RunWall; readonly center: number }): number =>
    run === 'left' ? 0 : run === 'right' ? room.width : center;
  return [
    tall(back?.tall_from) - tall(back?.tall_to),
    Number(right !== undefined) - Number(left !== undefined),
    tall(right?.tall_from) + tall(right?.tall_to) - tall(left?.tall_from) - tall(left?.tall_to),
    back?.from ?? 0,
    place(sink),
    place(cooktop),
    ...(island ? [island.joined === 'left' ? 0 : island.joined === 'right' ? 2 : 1, island.x] : []),
    ...(island ? [['left', 'none', 'both', 'right'].indexOf(island.waterfall)] : []),
    ...side(left),
    ...side(right),
    ...[...openings]
      .filter(({ wall }) => wall !== 'front')
      .map(({ wall, center, width, sill, height }) => [
        ['left', 'back', 'right'].indexOf(wall),
        center,
        width,
        sill,
        height,
      ])
      .sort((a, b) => a.map((one, i) => one - b[i]!).find((off) => Math.abs(off) > NEAR) ?? 0)
      .flat(),
  ];
}
