import type { Solid } from '../../engine/light/types';
import type { Plan } from '../plan/types';
import type { Assembly, Skin } from './assembly';
import { profileDepth } from './counter-edge';
import { FRONT_GAP, FRONT_THICKNESS } from './front';
import { type Coordinates, inPlane } from './pattern-coordinates';
import { boxAt, type Extent, faceAt, type Side, wallSide } from './side';

// Measures of sinks, m. Common practice, no source.

/** One bowl: inner size, what the module leaves beside it, distance of its back edge from the wall. */
const BOWL = { length: 0.56, depth: 0.4, height: 0.19, beside: 0.1, fromWall: 0.12 };
/** Two bowls: the longest, what the module leaves beside them, the wall between. */
const TWO = { length: 0.4, beside: 0.09, between: 0.02 };
const RIM = { width: 0.018, height: 0.003 };
/** A wall between two bowls that hang below the counter ends this far under it. */
const LOW_WALL = 0.015;
/** A sink with a front of its own: height of the front, how far it stands before the fronts, its thickness. */
export const APRON = { height: 0.23, before: 0.02, thickness: 0.03 };

/** The wall that the sink's run stands against. */
export const sinkSide = (plan: Plan): Side => wallSide(plan, plan.sink.run);

export const sinkMiddle = ({ sink: { module } }: Plan): number => (module.from + module.to) / 2;

/** The bowls along their run, from their bottom to where they end above. */
export function bowlExtents(plan: Plan): readonly Extent[] {
  const { module, bowls, fit } = plan.sink;
  const middle = sinkMiddle(plan);
  const top = fit === 'inset' ? plan.counter.top : plan.counter.bottom;
  const front = plan.baseDepth + APRON.before - APRON.thickness;
  const d = [BOWL.fromWall, fit === 'apron' ? front : BOWL.fromWall + BOWL.depth] as const;
  const z = [top - BOWL.height, top] as const;
  const width = module.to - module.from;
  if (bowls === 1) {
    const half = Math.min(BOWL.length, width - BOWL.beside) / 2;
    return [{ a: [middle - half, middle + half], d, z }];
  }
  const half = TWO.between / 2;
  const length = Math.min(TWO.length, (width - TWO.beside - TWO.between) / 2);
  return [
    { a: [middle - half - length, middle - half], d, z },
    { a: [middle + half, middle + half + length], d, z },
  ];
}

/** What the sink leaves open of counter and carcass: its bowls up to the top of the counter, and the cut-out over them. */
export function sinkBowls(plan: Plan): readonly Solid[] {
  const side = sinkSide(plan);
  const { top } = plan.counter;
  const bowls = bowlExtents(plan).map((bowl) => solidOf(side, { ...bowl, z: [bowl.z[0], top] }));
  if (plan.sink.fit === 'inset') return bowls;
  const cut = cutOut(plan);
  const between = { a: cut.a, d: bowlExtents(plan)[0]!.d, z: [plan.counter.bottom - LOW_WALL, top] } as const;
  const walls = plan.sink.bowls === 2 ? [solidOf(side, between)] : [];
  return plan.sink.fit === 'apron' ? [...bowls, ...walls, solidOf(side, cut)] : [...bowls, ...walls];
}

/** The cut-out of the counter over a sink that hangs below it; open to the front before an apron. */
export function cutOut(plan: Plan): Extent {
  const bowls = bowlExtents(plan);
  const { d } = bowls[0]!;
  const front = plan.sink.fit === 'apron' ? Math.max(plan.counter.depth, plan.baseDepth + APRON.before) + 1e-3 : d[1];
  return {
    a: [bowls[0]!.a[0], bowls[bowls.length - 1]!.a[1]],
    d: [d[0], front],
    z: [plan.counter.bottom, plan.counter.top],
  };
}

/** Bowls with what joins them to the counter: a rim that lies on it, its polished cut edge, or an apron. */
export function addSink(parts: Assembly, plan: Plan): void {
  const side = sinkSide(plan);
  const bowls = bowlExtents(plan);
  const isLow = plan.sink.fit !== 'inset';
  bowls.forEach((bowl, i) => {
    const walls = { low: bowl.z[1], high: bowl.z[1] };
    if (isLow && i > 0) walls.low -= LOW_WALL;
    if (isLow && i < bowls.length - 1) walls.high -= LOW_WALL;
    addBowl(parts, side, bowl, walls);
  });
  if (plan.sink.fit === 'inset') addRim(parts, side, bowls, plan.counter.top);
  else {
    addLowWall(parts, side, bowls);
    addCutEdge(parts, plan, side);
  }
  if (plan.sink.fit === 'apron') addApron(parts, plan, side);
}

/** The five inner faces of a bowl, seen from inside it; its upright ends reach up to `walls`. */
function addBowl(
  parts: Assembly,
  side: Side,
  { a, d, z }: Extent,
  walls: { readonly low: number; readonly high: number },
): void {
  const skin = skinOf(parts);
  const face = (extent: Extent, local: 'a-' | 'a+' | 'd-' | 'd+'): void =>
    parts.face(skin, ...boxAt(side, extent), faceAt(side, local));
  parts.face(skin, ...boxAt(side, { a, d, z: [z[0], z[0]] }), 'z+');
  face({ a, d: [d[0], d[0]], z }, 'd+');
  face({ a, d: [d[1], d[1]], z }, 'd-');
  face({ a: [a[0], a[0]], d, z: [z[0], walls.low] }, 'a+');
  face({ a: [a[1], a[1]], d, z: [z[0], walls.high] }, 'a-');
}

/** A thin rim round the bowls and between them, lying on the counter. */
function addRim(parts: Assembly, side: Side, bowls: readonly Extent[], top: number): void {
  const skin = skinOf(parts);
  const z = [top, top + RIM.height] as const;
  const w = RIM.width;
  const [a0, a1] = [bowls[0]!.a[0], bowls[bowls.length - 1]!.a[1]];
  const [d0, d1] = bowls[0]!.d;
  const add = (a: Extent['a'], d: Extent['d']): void => parts.box(skin, ...boxAt(side, { a, d, z }));
  add([a0 - w, a0], [d0 - w, d1 + w]);
  add([a1, a1 + w], [d0 - w, d1 + w]);
  add([a0, a1], [d0 - w, d0]);
  add([a0, a1], [d1, d1 + w]);
  bowls.slice(1).forEach(({ a }, i) => {
    add([bowls[i]!.a[1], a[0]], [d0, d1]);
  });
}

/** The top of the wall between two bowls under the counter, and what stands of the bowls' long sides over it. */
function addLowWall(parts: Assembly, side: Side, bowls: readonly Extent[]): void {
  const skin = skinOf(parts);
  bowls.slice(1).forEach(({ a, d, z }, i) => {
    const between = [bowls[i]!.a[1], a[0]] as const;
    const low = z[1] - LOW_WALL;
    parts.face(skin, ...boxAt(side, { a: between, d, z: [low, low] }), 'z+');
    parts.face(skin, ...boxAt(side, { a: between, d: [d[0], d[0]], z: [low, z[1]] }), faceAt(side, 'd+'));
    parts.face(skin, ...boxAt(side, { a: between, d: [d[1], d[1]], z: [low, z[1]] }), faceAt(side, 'd-'));
  });
}

/** The polished edge of the counter round its cut-out: its pattern turns down from the top. */
function addCutEdge(parts: Assembly, plan: Plan, side: Side): void {
  const { a, d, z } = cutOut(plan);
  const skin: Skin = {
    surface: 'counter',
    coordinates: turnedIn(side.along, plan.counter.top),
    piece: parts.newPiece(),
  };
  const { depth, edge, thickness } = plan.counter;
  const front = plan.sink.fit === 'apron' ? depth - profileDepth(edge, thickness) : d[1];
  const within: Extent['d'] = [d[0], front];
  parts.face(skin, ...boxAt(side, { a, d: [d[0], d[0]], z }), faceAt(side, 'd+'));
  parts.face(skin, ...boxAt(side, { a: [a[0], a[0]], d: within, z }), faceAt(side, 'a+'));
  parts.face(skin, ...boxAt(side, { a: [a[1], a[1]], d: within, z }), faceAt(side, 'a-'));
  if (plan.sink.fit === 'undermount') parts.face(skin, ...boxAt(side, { a, d: [d[1], d[1]], z }), faceAt(side, 'd-'));
}

/** The front of the sink itself, over the whole module. */
export function apronExtent({ sink: { module }, counter, baseDepth }: Plan): Extent {
  return {
    a: [module.from + FRONT_GAP / 2, module.to - FRONT_GAP / 2],
    d: [baseDepth - FRONT_THICKNESS, baseDepth + APRON.before],
    z: [counter.bottom - APRON.height, counter.bottom],
  };
}

/** The apron, its bowls cut out of it. */
function addApron(parts: Assembly, plan: Plan, side: Side): void {
  parts.hollowBox(
    skinOf(parts),
    ...boxAt(side, apronExtent(plan)),
    bowlExtents(plan).map((bowl) => solidOf(side, { ...bowl, z: [bowl.z[0], plan.counter.top] })),
  );
}

const skinOf = (parts: Assembly): Skin => ({ surface: 'sink', coordinates: inPlane(), piece: parts.newPiece() });

/** A slab's pattern seen from above, turned down into a cut-out: `length` is the axis that s follows. */
function turnedIn(length: 0 | 1, top: number): Coordinates {
  const width = length === 0 ? 1 : 0;
  return (point, normal, sign) => {
    const turned = (axis: 0 | 1): number => point[axis] + (normal === axis ? sign * (top - point[2]) : 0);
    return [turned(length), turned(width)];
  };
}

function solidOf(side: Side, extent: Extent): Solid {
  const [min, max] = boxAt(side, extent);
  return { min, max };
}
