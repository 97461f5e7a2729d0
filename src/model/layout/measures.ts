// Measures of parts that the record leaves to the trade, mm. Common practice, no source.

/** Height of the hood over the counter (an electric cooktop; the maker's rules win), its canopy and its chimney. */
export const HOOD = {
  clearance: 650,
  canopy: { depth: 480, height: 60 },
  chimney: { width: 300, depth: 270 },
} as const;

/** Strip under the wall units that hides the lamp; `back` of its rear face from the fronts' face. */
export const RAIL = { thickness: 18, height: 30, back: 41 } as const;

export const FRONT_THICKNESS = 20;

/** Casing round the door of the room. */
export const CASING = 70;

/** Fixed frame of a window with its mullions; casements; nosing of the sill with its ears beside the opening. */
export const FRAME = { width: 45, depth: 50 } as const;
export const SASH = { width: 50, depth: 62 } as const;
export const NOSING = { depth: 30, ear: 30, thickness: 22 } as const;

/** Leaves of a glazed door: stiles and upper rail, lower rail, threshold. */
export const DOOR_LEAF = { stile: 90, bottom_rail: 180, depth: 62, threshold: 20 } as const;

/** Height of a pendant's shade over its lower diameter. */
export const SHADE_HEIGHT = 0.6;
/** Radius of its opening over half of that diameter. */
export const SHADE_RIM = 0.985;

/** Clear strip beside an inner corner, so that drawers pass the handles of the other leg; beside a wall that is never quite straight. */
export const CORNER_FILLER = 50;
export const WALL_FILLER = 20;
/** A filler wider than this looks like a mistake. */
export const WIDEST_FILLER = 150;

/** End and side panels; a panel may be packed out to the widest to take up what modules leave. */
export const PANEL = 20;
export const WIDEST_PANEL = 50;

/** Open shelves, two boards one over the other: depth, thickness, distance, clear of what is beside them. */
export const SHELF = { depth: 260, thickness: 24, apart: 340, beside: 20 } as const;
