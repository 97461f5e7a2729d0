import type { PropMesh } from '../../engine/light/types';
import { SURFACES } from '../../engine/surface';
import { shelfBoards } from '../parts/shelves';
import { boxAt, type Extent } from '../parts/side';
import type { Plan } from '../plan/types';
import { box } from './box';
import { append, emptyMesh, toProp } from './mesh';

/** Brackets: from a board's ends, farthest apart, width, thickness, height on the wall, m. Common practice, no source. */
const BRACKET = { fromEnd: 0.12, apart: 0.9, width: 0.025, thickness: 0.012, height: 0.13, clear: 5e-4 };

/** Brackets under open shelves. None without shelves. */
export function bracketProps(plan: Plan): PropMesh[] {
  const boards = shelfBoards(plan);
  if (boards.length === 0) return [];
  const mesh = emptyMesh();
  const { width, thickness, height, clear } = BRACKET;
  for (const { side, extent } of boards) {
    const under = extent.z[0] - clear;
    for (const middle of bracketPlaces(extent)) {
      const a = [middle - width / 2, middle + width / 2] as const;
      append(mesh, box(...boxAt(side, { a, d: [clear, thickness], z: [under - height, under] })));
      append(mesh, box(...boxAt(side, { a, d: [thickness, extent.d[1] - 0.03], z: [under - thickness / 2, under] })));
    }
  }
  return [toProp(mesh, SURFACES.indexOf('hardware'), 'shelf brackets')];
}

/** Where brackets stand under a board, along its wall, m. */
export function bracketPlaces({ a }: Extent): readonly number[] {
  const [from, to] = [a[0] + BRACKET.fromEnd, a[1] - BRACKET.fromEnd];
  const count = Math.max(1, Math.ceil((to - from) / BRACKET.apart));
  return Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);
}
