export type Axis = 0 | 1 | 2;
export type Sign = 1 | -1;

/** A side of a box, by its outward normal. */
export type Face = 'x-' | 'x+' | 'y-' | 'y+' | 'z-' | 'z+';

export const FACES: readonly Face[] = ['x-', 'x+', 'y-', 'y+', 'z-', 'z+'];

export const axisOf = (face: Face): Axis => 'xyz'.indexOf(face[0]!) as Axis;

export const signOf = (face: Face): Sign => (face[1] === '+' ? 1 : -1);
