import type { SurfaceId } from '../../engine/surface';
import { FRONT_THICKNESS as THICKNESS_MM } from '../../model/layout/measures';
import type { Assembly, MadePart, Skin } from './assembly';
import { grained } from './pattern-coordinates';
import { boxAt, type Extent, faceAt, type Side } from './side';

/** Joint between fronts, and from a front to the edge of its module on both sides together (600 -> 597), m. */
export const FRONT_GAP = 0.003;
export const FRONT_THICKNESS = THICKNESS_MM / 1000;
/** Five-piece: width of stiles and rails, and how far the panel lies back, m. */
const FRAME = 0.064;
const PANEL_RECESS = 0.008;
/** Below this a panel between two rails would be a slot: such fronts are made as slabs. */
const LEAST_PANEL = 0.06;

/** A field that fronts stand in, along the side and in height, m. */
export interface FrontPlace {
  readonly a: readonly [number, number];
  readonly z: readonly [number, number];
}

/** Where the fronts of a row stand. */
export interface FrontZone {
  readonly side: Side;
  /** Distance of the carcass face from the wall, m. */
  readonly back: number;
  /** Carcass bottom and top, m. */
  readonly z: readonly [number, number];
  readonly surface: SurfaceId;
  /** End of a door where its handle sits: top for base units, bottom for wall units. */
  readonly handleEnd: 'top' | 'bottom';
}

export interface Front extends FrontPlace {
  /** Distance of the carcass face from the wall. */
  readonly back: number;
  readonly surface: SurfaceId;
  readonly fivePiece: boolean;
  /** What it is made as; not given for the faces of appliances and for the door of the room. */
  readonly made?: MadePart['kind'];
  /** Width of stiles and rails, m; 64 mm unless given. */
  readonly frame?: number;
  /** Axis that the grain or the brush lines follow; upright unless given. */
  readonly grain?: 0 | 1 | 2;
  /** Fronts with the same number are cut from one sheet: their grain runs on. */
  readonly sheet: number;
}

/** A door or drawer front standing on the carcass face: slab, or frame with a recessed panel. Its back is not seen. */
export function addFront(parts: Assembly, side: Side, front: Front): void {
  const skin: Skin = {
    surface: front.surface,
    coordinates: grained(front.grain ?? 2, front.sheet),
    piece: parts.newPiece(),
  };
  if (front.made) {
    const [length, width] = [front.a[1] - front.a[0], front.z[1] - front.z[0]];
    parts.made.push({ kind: front.made, surface: front.surface, length, width });
  }
  const face = front.back + FRONT_THICKNESS;
  const whole: Extent = { a: front.a, d: [front.back, face], z: front.z };
  for (const edge of ['a-', 'a+'] as const) parts.face(skin, ...boxAt(side, whole), faceAt(side, edge));
  for (const edge of ['z-', 'z+'] as const) parts.face(skin, ...boxAt(side, whole), edge);
  const frame = front.frame ?? FRAME;
  if (front.fivePiece && Math.min(front.a[1] - front.a[0], front.z[1] - front.z[0]) >= 2 * frame + LEAST_PANEL) {
    addFrameAndPanel(parts, side, front, frame, skin);
    parts.solid(...boxAt(side, { ...whole, d: [front.back, face - PANEL_RECESS] }));
  } else {
    parts.face(skin, ...boxAt(side, whole), faceAt(side, 'd+'));
    parts.solid(...boxAt(side, whole));
  }
}

/** Parts of a frame are cut from places of the sheet this far from the panel's, in numbers of sheets. */
const STILES = [10007, 20011] as const;
const RAILS = [30011, 40009] as const;

/**
 * Two stiles over the whole height, two rails between them, the panel, and the four edges that step down to it. Each is a piece of wood
 * of its own: grain goes along a rail, as along a stile.
 */
function addFrameAndPanel(parts: Assembly, side: Side, front: Front, frame: number, skin: Skin): void {
  const { a, z, back, surface } = front;
  const face = back + FRONT_THICKNESS;
  const panel = face - PANEL_RECESS;
  const inner: Extent = { a: [a[0] + frame, a[1] - frame], d: [panel, face], z: [z[0] + frame, z[1] - frame] };
  parts.recesses.push({ side, extent: inner, surface, coordinates: skin.coordinates });
  const out = faceAt(side, 'd+');
  const [left, right] = STILES.map((n) => ({ ...skin, coordinates: grained(2, front.sheet + n) })) as [Skin, Skin];
  const [low, high] = RAILS.map((n) => ({ ...skin, coordinates: grained(side.along, front.sheet + n) })) as [
    Skin,
    Skin,
  ];
  const show = (part: Skin, extent: Extent): void => parts.face(part, ...boxAt(side, extent), out);
  show(left, { a: [a[0], inner.a[0]], d: inner.d, z });
  show(right, { a: [inner.a[1], a[1]], d: inner.d, z });
  show(low, { a: inner.a, d: inner.d, z: [z[0], inner.z[0]] });
  show(high, { a: inner.a, d: inner.d, z: [inner.z[1], z[1]] });
  show(skin, { a: inner.a, d: [back, panel], z: inner.z });
  const step = (extent: Extent, local: 'a-' | 'a+'): void =>
    parts.face(skin, ...boxAt(side, extent), faceAt(side, local));
  step({ ...inner, a: [inner.a[0], inner.a[0]] }, 'a+');
  step({ ...inner, a: [inner.a[1], inner.a[1]] }, 'a-');
  parts.face(skin, ...boxAt(side, { ...inner, z: [inner.z[0], inner.z[0]] }), 'z+');
  parts.face(skin, ...boxAt(side, { ...inner, z: [inner.z[1], inner.z[1]] }), 'z-');
}
