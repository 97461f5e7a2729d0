import type { PropMesh } from '../../engine/light/types';
import { SURFACES } from '../../engine/surface';
import type { Bar } from '../parts/assembly';
import { box } from './box';
import { append, emptyMesh, type Mesh, normalized, plus, toProp } from './mesh';
import { tube } from './tube';

const BAR = { radius: 0.006, sides: 8 };
const POST = { radius: 0.0045, sides: 6, inset: 0.016 };
/** A knob from its foot outward: share of its stand, radius in m. */
const KNOB: readonly (readonly [number, number])[] = [
  [0, 0.009],
  [0.12, 0.0065],
  [0.45, 0.0065],
  [0.62, 0.0145],
  [0.82, 0.0155],
  [0.96, 0.0135],
  [1, 0.009],
];
const KNOB_SIDES = 12;
/** A dial of an appliance, in the same way. */
const DIAL: readonly (readonly [number, number])[] = [
  [0, 0.02],
  [0.86, 0.0188],
  [1, 0.0168],
];
const DIAL_SIDES = 16;
/** A profile on an edge: thickness of its sheet, how far it reaches over the edge, m. */
const EDGE = { thickness: 0.0015, over: 0.012 };

/** What one pulls and turns: one mesh per finish. */
export function handleProps(bars: readonly Bar[]): PropMesh[] {
  const surfaces = [...new Set(bars.map((bar) => bar.surface))];
  return surfaces.map((surface) => {
    const mesh = emptyMesh();
    for (const bar of bars) if (bar.surface === surface) MAKERS[bar.kind](mesh, bar);
    return toProp(mesh, SURFACES.indexOf(surface), `${surface} handles`);
  });
}

const MAKERS: { readonly [K in Bar['kind']]: (mesh: Mesh, bar: Bar) => void } = {
  bar: addBar,
  knob: (mesh, bar) => addTurned(mesh, bar, KNOB, KNOB_SIDES),
  dial: (mesh, bar) => addTurned(mesh, bar, DIAL, DIAL_SIDES),
  edge: addEdge,
};

function addBar(mesh: Mesh, { from, to, stand }: Bar): void {
  append(mesh, tube([from, to], [BAR.radius, BAR.radius], BAR.sides));
  const along = normalized(plus(to, from, -1));
  for (const end of [plus(from, along, POST.inset), plus(to, along, -POST.inset)]) {
    append(mesh, tube([plus(end, stand, -1), end], [POST.radius, POST.radius], POST.sides));
  }
}

function addTurned(mesh: Mesh, { from, stand }: Bar, profile: typeof KNOB, sides: number): void {
  const foot = plus(from, stand, -1);
  append(
    mesh,
    tube(
      profile.map(([share]) => plus(foot, stand, share)),
      profile.map(([, radius]) => radius),
      sides,
    ),
  );
}

/** A sheet in the joint over the edge, and its lip before the front. */
function addEdge(mesh: Mesh, { from, to, stand, lip = [0, 0, 0] }: Bar): void {
  const out = normalized(stand);
  const in_ = normalized(lip);
  const sheet = plus(plus(from, stand, -1), out, -EDGE.over);
  append(mesh, box(sheet, plus(to, in_, -EDGE.thickness)));
  const inner = plus(from, out, -EDGE.thickness);
  append(mesh, box(inner, plus(to, lip)));
}
