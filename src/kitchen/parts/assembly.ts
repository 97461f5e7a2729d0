import type { FineRect, Solid, Vec3 } from '../../engine/light/types';
import { SURFACES, type SurfaceId } from '../../engine/surface';
import { type Axis, axisOf, FACES, type Face, signOf } from './axes';
import { cutHoles, hollowAll } from './cut-holes';
import type { Coordinates } from './pattern-coordinates';
import type { Extent, Side } from './side';

/** What a face is finished with; `black` for openings and lamp faces. */
export interface Skin {
  readonly surface: SurfaceId | 'black';
  readonly coordinates: Coordinates;
  readonly piece?: number;
}

/**
 * What one pulls or turns: a round bar on two posts, a knob, a slim profile on a front's edge, a dial of an appliance.
 * Positions in m; a knob and a dial stand at `from`.
 */
export interface Bar {
  readonly kind: 'bar' | 'knob' | 'edge' | 'dial';
  readonly surface: SurfaceId;
  readonly from: Vec3;
  readonly to: Vec3;
  /** From the front outward: how far its axis (or its lip) stands off; `from` and `to` lie at its end. */
  readonly stand: Vec3;
  /** Of a profile: which way its lip hangs from the edge. */
  readonly lip?: Vec3;
}

/** The inner edge of a frame round a recessed panel: where its steps stand, from the panel's plane to the frame's. */
export interface Recess {
  readonly side: Side;
  readonly extent: Extent;
  readonly surface: SurfaceId;
  readonly coordinates: Coordinates;
}

/**
 * A part that is made to measure and ordered by itself, as one sees its face, m: fronts and fillers across and up, a panel as
 * deep as it is and up, what runs along a row (rail, shelf) along and across.
 */
export interface MadePart {
  readonly kind: 'door' | 'drawer' | 'panel' | 'filler' | 'face-frame' | 'rail' | 'shelf' | 'grip-rail';
  readonly surface: SurfaceId;
  readonly length: number;
  readonly width: number;
}

/** Fields are numbered apart from pieces, from here on, so that neither moves the other's numbers. */
const FIRST_FIELD = 100_000;

/** What is thinner than joinery is drawn, m: an upstand of no height is none. */
const LEAST_M = 1e-4;

/** Parts as they are put together: faces to be seen and the solids they belong to. */
export class Assembly {
  readonly rects: FineRect[] = [];
  readonly solids: Solid[] = [];
  readonly bars: Bar[] = [];
  readonly recesses: Recess[] = [];
  readonly made: MadePart[] = [];
  #pieces = 0;
  #fields = FIRST_FIELD;

  /** The next number for a door, drawer or slab of its own. */
  newPiece(): number {
    this.#pieces += 1;
    return this.#pieces;
  }

  /** The next number for a field that tiles, boards or slabs are laid in by themselves: a floor, a wall, a backsplash. */
  newField(): number {
    this.#fields += 1;
    return this.#fields;
  }

  solid(min: Vec3, max: Vec3): void {
    this.solids.push({ min, max });
  }

  /** A box with all faces but `without`; faces that touch other solids are dropped later. One of no thickness is left out. */
  box(skin: Skin, min: Vec3, max: Vec3, without: readonly Face[] = []): void {
    if (max.some((high, axis) => high - min[axis]! < LEAST_M)) return;
    this.solid(min, max);
    for (const face of FACES) if (!without.includes(face)) this.face(skin, min, max, face);
  }

  /** A box open where cavities from above reach into or through it, and at `holes`; their own linings are not made. */
  hollowBox(skin: Skin, min: Vec3, max: Vec3, cavities: readonly Solid[], holes: readonly Solid[] = []): void {
    for (const box of hollowAll({ min, max }, cavities)) this.solid(box.min, box.max);
    const through = cavities.map(
      ({ min: low, max: high }): Solid => ({ min: low, max: [high[0], high[1], high[2] + 0.01] }),
    );
    for (const face of FACES) this.face(skin, min, max, face, [...through, ...holes]);
  }

  /**
   * One face of the box min-max, seen from outside the box, less the places where `holes` pass through it. One of no area is
   * left out: no light would fall on it.
   */
  face(skin: Skin, min: Vec3, max: Vec3, face: Face, holes: readonly Solid[] = []): void {
    const rect = faceRect(skin, min, max, face);
    if (isEmpty(rect)) return;
    this.rects.push(...(holes.length > 0 ? cutHoles(rect, holes) : [rect]));
  }
}

const isEmpty = ({ u, v }: FineRect): boolean => Math.hypot(...u) < LEAST_M || Math.hypot(...v) < LEAST_M;

/** The face of a box as a rectangle whose front looks outward. */
export function faceRect(skin: Skin, min: Vec3, max: Vec3, face: Face): FineRect {
  const axis = axisOf(face);
  const sign = signOf(face);
  const b = ((axis + 1) % 3) as Axis;
  const c = ((axis + 2) % 3) as Axis;
  const origin: [number, number, number] = [min[0], min[1], min[2]];
  if (sign > 0) origin[axis] = max[axis];
  const edgeB = edge(b, max[b] - min[b]);
  const edgeC = edge(c, max[c] - min[c]);
  const [u, v] = sign > 0 ? [edgeB, edgeC] : [edgeC, edgeB];
  const at = (p: Vec3): readonly [number, number] => skin.coordinates(p, axis, sign);
  const [s0, t0] = at(origin);
  const [su, tu] = at(sum(origin, u));
  const [sv, tv] = at(sum(origin, v));
  return {
    origin,
    u,
    v,
    surface: skin.surface === 'black' ? -1 : SURFACES.indexOf(skin.surface),
    pattern: { s0, t0, su: su - s0, tu: tu - t0, sv: sv - s0, tv: tv - t0 },
    piece: skin.piece ?? 0,
  };
}

const edge = (axis: Axis, length: number): Vec3 => [
  axis === 0 ? length : 0,
  axis === 1 ? length : 0,
  axis === 2 ? length : 0,
];

const sum = (a: Vec3, b: Vec3): Vec3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
