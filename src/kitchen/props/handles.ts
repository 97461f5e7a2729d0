import type { PropMesh } from '../../engine/light/types';
import { SURFACES } from '../../engine/surface';
import type { Bar } from '../parts/assembly';
import { append, emptyMesh, normalized, plus, toProp } from './mesh';
import { tube } from './tube';

const BAR = { radius: 0.006, sides: 8 };
const POST = { radius: 0.0045, sides: 6, inset: 0.016 };

/** Bar handles, each on two posts: one mesh per finish. */
export function handleProps(bars: readonly Bar[]): PropMesh[] {
  const surfaces = [...new Set(bars.map((bar) => bar.surface))];
  return surfaces.map((surface) => {
    const mesh = emptyMesh();
    for (const bar of bars) if (bar.surface === surface) addBar(mesh, bar);
    return toProp(mesh, SURFACES.indexOf(surface), `${surface} handles`);
  });
}

function addBar(mesh: ReturnType<typeof emptyMesh>, { from, to, stand }: Bar): void {
  append(mesh, tube([from, to], [BAR.radius, BAR.radius], BAR.sides));
  const along = normalized(plus(to, from, -1));
  for (const end of [plus(from, along, POST.inset), plus(to, along, -POST.inset)]) {
    append(mesh, tube([plus(end, stand, -1), end], [POST.radius, POST.radius], POST.sides));
  }
}
