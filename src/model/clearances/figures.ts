// Recommendations, mm, from the trade table of kitchen sizes and clearances; North American planning guidelines unless said
// otherwise. Inches are the source's; millimetres as it rounds them.

/** Work aisle for one cook, from edge to edge: 42 in. */
export const WORK_AISLE = 1067;
/** Walkway: 36 in. */
export const WALKWAY = 914;
/** Behind seats, for somebody to walk past: 44 in. */
export const BEHIND_SEATS = 1118;
/** Width for each seat: 24 in. */
export const SEAT_WIDTH = 610;
/** Depth for knees at tables, counters and bars 30, 36 and 42 in high: 18, 15, 12 in; limits half way between the heights. */
export const KNEE_DEPTHS = [
  { below: 838, depth: 457 },
  { below: 991, depth: 381 },
  { below: Number.POSITIVE_INFINITY, depth: 305 },
] as const;
/** Counter to put things down beside a fridge: 15 in; beside a cooktop: 12 in and 15 in; beside a sink: 18 in and 24 in. From memory. */
export const LANDING = { fridge: 381, cooktop: [305, 381], sink: [457, 610] } as const;
/** A counter across from a fridge serves within 48 in. From memory. */
export const ACROSS = 1219;
/** Counter to prepare food beside the sink: 36 in wide, 24 in deep. */
export const PREP_WIDTH = 914;
/** Front of all counters together: 158 in. */
export const FRONTAGE = 4013;
/** Sum of the sides of the work triangle: 26 ft at most; each side 4 to 9 ft. */
export const TRIANGLE = { sum: 7925, leg: [1219, 2743] } as const;
/** Stone that nothing supports, 2 cm and 3 cm thick: 6 and 10 in at most, and never over a third of the depth (stone trade). */
export const STONE_OVERHANG = { thin: 152, thick: 254, thickFrom: 25, share: 1 / 3 } as const;
/** Highest accessible counter: 34 in (US). */
export const ACCESSIBLE_COUNTER = 864;
/** Clear in front of units: 1200 in accessible housing (from memory), 1500 in the wheelchair category (UK). */
export const ACCESSIBLE_PASSAGE = { 'over-65': 1200, wheelchair: 1500 } as const;
