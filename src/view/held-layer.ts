/**
 * The layer of what is held in the room. Only the camera that looks at the room sees it: mirrors are not drawn anew when a card comes or
 * goes, and a picture to keep leaves it out.
 */
export const HELD_LAYER = 1;
