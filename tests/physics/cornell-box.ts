import { cutRect, splitContacts } from '../../src/engine/light/split-contacts';
import type { LightRoom, Rect, Solid, Vec3 } from '../../src/engine/light/types';
import { roomOf } from './box-room';
import { CORNELL_BLOCKS_MM, CORNELL_LAMP_MM, CORNELL_SIZE_MM } from './cornell-box.data';

const [WHITE, GREEN, RED] = [0, 1, 2] as const;
export const LUMENS = 10_000;

// Ten times as large as the original, which light does not mind: lengths are those of a room, m.
const SCALE = 0.01;
const [W, D, H] = CORNELL_SIZE_MM.map((mm) => mm * SCALE) as [number, number, number];
export const CORNELL_SIZE = [W, D, H] as const;

/** A rectangle by its corner and two edges. */
const rect = (surface: number, origin: Vec3, u: Vec3, v: Vec3): Rect => ({ origin, u, v, surface });

const [X0, X1] = CORNELL_LAMP_MM.x.map((mm) => mm * SCALE) as [number, number];
const [Y0, Y1] = CORNELL_LAMP_MM.depth.map((mm) => mm * SCALE) as [number, number];

const ceilingPart = (surface: number, x0: number, x1: number, y0: number, y1: number): Rect =>
  rect(surface, [x0, y0, H], [0, y1 - y0, 0], [x1 - x0, 0, 0]);

const lampRect = ceilingPart(-1, X0, X1, Y0, Y1);

/** The walls, the lamp's face (black) and, if wanted, a black face where the box is open. */
function shell(closed: boolean): Rect[] {
  return [
    rect(WHITE, [0, 0, 0], [W, 0, 0], [0, D, 0]),
    rect(GREEN, [0, 0, 0], [0, D, 0], [0, 0, H]),
    rect(RED, [W, 0, 0], [0, 0, H], [0, D, 0]),
    rect(WHITE, [0, D, 0], [W, 0, 0], [0, 0, H]),
    ceilingPart(WHITE, 0, W, 0, Y0),
    ceilingPart(WHITE, 0, W, Y1, D),
    ceilingPart(WHITE, 0, X0, Y0, Y1),
    ceilingPart(WHITE, X1, W, Y0, Y1),
    lampRect,
    ...(closed ? [rect(-1, [0, 0, 0], [0, 0, H], [W, 0, 0])] : []),
  ];
}

/** The blocks turned parallel to the walls, in place: same centre, height and mean side. */
const SOLIDS: readonly Solid[] = CORNELL_BLOCKS_MM.map(({ corners, height }) => {
  const middle = (k: 0 | 1): number => (corners.reduce((sum, corner) => sum + corner[k], 0) / 4) * SCALE;
  const side = corners.reduce((sum, [x, y], i) => {
    const [nx, ny] = corners[(i + 1) % 4]!;
    return sum + Math.hypot(nx - x, ny - y) / 4;
  }, 0);
  const half = (side * SCALE) / 2;
  return {
    min: [middle(0) - half, middle(1) - half, 0],
    max: [middle(0) + half, middle(1) + half, height * SCALE],
  };
});

function faces({ min, max }: Solid): Rect[] {
  const [x, y, z]: Vec3[] = [
    [max[0] - min[0], 0, 0],
    [0, max[1] - min[1], 0],
    [0, 0, max[2] - min[2]],
  ];
  const top: Vec3 = [min[0], min[1], max[2]];
  return [
    rect(WHITE, top, x!, y!),
    rect(WHITE, min, z!, y!),
    rect(WHITE, [max[0], min[1], min[2]], y!, z!),
    rect(WHITE, min, x!, z!),
    rect(WHITE, [min[0], max[1], min[2]], z!, x!),
  ];
}

export interface CornellBox {
  readonly room: LightRoom;
  /** Its rectangles before the floor is cut at the blocks. */
  readonly whole: readonly Rect[];
  readonly lamp: Rect;
}

/** The box, empty or with blocks; `closed`: with a black face where it is open. */
export function cornellBox(withBlocks: boolean, closed = true): CornellBox {
  const solids = withBlocks ? SOLIDS : [];
  const whole = [...shell(closed), ...solids.flatMap(faces)];
  const coarse = splitContacts(whole, solids, cutRect);
  const lamps = [{ group: 0, lumens: LUMENS, rect: lampRect }];
  return { room: roomOf(coarse, { lamps }, ['white', 'green', 'red']), whole, lamp: lampRect };
}

export const SHORT_TOP: Vec3 = [
  (SOLIDS[0]!.min[0] + SOLIDS[0]!.max[0]) / 2,
  (SOLIDS[0]!.min[1] + SOLIDS[0]!.max[1]) / 2,
  SOLIDS[0]!.max[2],
];
