import type { SurfaceId } from '../../engine/surface';
import type { Wall } from '../../model/kitchen';
import type { ElevationKind } from '../plan/elevation-piece';

/** What is drawn: the plan, a wall seen from within, an island from its seats and from where one works at it. */
export type DrawingId = 'plan' | Wall | 'island-seats' | 'island-units';

/** A place on a drawing, mm: x to the right, y up (on the plan towards the back wall). */
export type Point = readonly [x: number, y: number];

/** A rectangle of a drawing, mm; x, y its lower left corner. */
export interface Shape {
  readonly kind: ElevationKind | 'floor' | 'counter' | 'island';
  /** Null: nothing that takes a finish. */
  readonly surface: SurfaceId | null;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A line of a drawing, drawn over all shapes. `hidden`: lies behind or under what is drawn; `above`: hangs over it; `fine`: hardly more than a hint. */
export interface Line {
  readonly kind: 'edge' | 'handle' | 'tap' | 'bowl' | 'front' | 'over' | 'seat' | 'swing' | 'cross' | 'seam';
  /** What its tag stands for; null where it carries none. */
  readonly surface: SurfaceId | null;
  readonly points: readonly Point[];
  readonly look: 'plain' | 'bold' | 'hidden' | 'above' | 'fine';
}

/** The joints of tiles or boards within a rectangle. */
export interface Coursing {
  readonly surface: SurfaceId;
  readonly field: Pick<Shape, 'x' | 'y' | 'width' | 'height'>;
  readonly joints: readonly (readonly [Point, Point])[];
  /** The least distance between two joints, mm. */
  readonly pitch_mm: number;
  /** Where the laying starts and which way its pieces lie; null where nothing is known of it. */
  readonly start: { readonly at: Point; readonly direction_deg: number } | null;
}

/** A chain of dimensions on one side of a drawing, `row` 0 next to it: from mark to mark, mm along x or y from the drawing's origin. */
export interface Chain {
  readonly what: ChainKind;
  readonly side: 'below' | 'above' | 'left' | 'right';
  readonly row: 0 | 1;
  readonly marks: readonly number[];
}

export type ChainKind = 'units' | 'over' | 'openings' | 'heights' | 'whole' | 'run' | 'across';

/** A height over the floor, mm. */
export interface Level {
  readonly what: 'counter' | 'units-below' | 'units-above' | 'tall' | 'sill' | 'head' | 'ceiling';
  readonly y: number;
}

/** A gap in a wall on the plan, mm along it. */
export interface Gap {
  readonly wall: Wall;
  readonly kind: 'window' | 'glazed-door' | 'door' | 'open-side';
  readonly from: number;
  readonly to: number;
}

/** A drawing to scale with its dimensions, mm. */
export interface Drawing {
  readonly id: DrawingId;
  readonly width: number;
  readonly height: number;
  /** Back to front: later shapes lie before earlier ones. */
  readonly shapes: readonly Shape[];
  readonly lines: readonly Line[];
  readonly coursings: readonly Coursing[];
  readonly chains: readonly Chain[];
  readonly levels: readonly Level[];
  /** On the plan: what opens the walls, and the bearing that the back wall faces. */
  readonly room: { readonly gaps: readonly Gap[]; readonly bearing_deg: number } | null;
}
