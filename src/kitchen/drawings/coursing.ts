import { HEXAGON_ROW } from '../../engine/pattern/pieces';
import type { SurfaceId } from '../../engine/surface';
import { centred } from '../study/lay-pattern';
import { clipped } from './clip-segment';
import type { LaidPieces } from './laid-pieces';
import type { Coursing, Point } from './types';

type Field = Coursing['field'];
type Segment = readonly [Point, Point];

/** Finer joints are not drawn: they would be one gray, mm. */
const LEAST_PITCH_MM = 20;

/** The part of a row by which each next row of a layout is moved, in turn; null for boards, whose ends fall as they come. */
const OFFSETS: { readonly [L in LaidPieces['layout']]?: readonly number[] | null } = {
  stack: [0],
  'stack-upright': [0],
  'running-bond': [0, 1 / 2],
  'third-offset': [0, 1 / 3, 2 / 3],
  planks: null,
};

/**
 * The joints of a field whose laying is that of `whole` (the field itself, or the one it is a part of): rows start on the foot of an upright
 * field, on both sides of the middle of a floor, or whole in the lower left corner.
 */
export function coursingOf(
  surface: SurfaceId,
  laid: LaidPieces,
  field: Field,
  isUpright: boolean,
  whole: Field = field,
): Coursing {
  const { layout, piece, joint, turn_deg, start } = laid;
  const module = [piece[0] + joint, piece[1] + joint] as const;
  const at = originOf(laid, module, whole, isUpright);
  const pitch_mm = Math.min(...module);
  const turn = (turn_deg * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const toDrawing = ([s, t]: Point): Point => [at[0] + cos * s - sin * t, at[1] + sin * s + cos * t];
  const fromDrawing = ([x, y]: Point): Point => {
    const [dx, dy] = [x - at[0], y - at[1]];
    return [cos * dx + sin * dy, cos * dy - sin * dx];
  };
  const corners = cornersOf(field).map(fromDrawing);
  const box = {
    s: [Math.min(...corners.map(([s]) => s)), Math.max(...corners.map(([s]) => s))] as const,
    t: [Math.min(...corners.map(([, t]) => t)), Math.max(...corners.map(([, t]) => t))] as const,
  };
  const joints = pitch_mm < LEAST_PITCH_MM ? [] : segmentsOf(layout, module, box);
  return {
    surface,
    field,
    pitch_mm,
    joints: joints.flatMap(([p, q]) => clipped([toDrawing(p), toDrawing(q)], field)),
    start: {
      at: startMark(whole, start, isUpright),
      direction_deg: turn_deg,
    },
  };
}

const cornersOf = ({ x, y, width, height }: Field): readonly Point[] => [
  [x, y],
  [x + width, y],
  [x, y + height],
  [x + width, y + height],
];

/** Where joints cross, or where a piece begins: the zero of the laying. */
function originOf(
  { layout, start, turn_deg }: LaidPieces,
  [long, short]: readonly [number, number],
  { x, y, width, height }: Field,
  isUpright: boolean,
): Point {
  if (start === 'corner') return [x, y];
  if (turn_deg === 45 || layout === 'herringbone' || layout === 'hexagon')
    return [x + width / 2, isUpright ? y : y + height / 2];
  const [alongX, alongY] = turn_deg === 90 ? [short, long] : [long, short];
  return [x - centred(0, width, alongX), isUpright ? y : y - centred(0, height, alongY)];
}

/** Where one begins to lay: the corner, or the middle; upright on the foot. */
const startMark = ({ x, y, width, height }: Field, start: LaidPieces['start'], isUpright: boolean): Point =>
  start === 'corner' ? [x, y] : [x + width / 2, isUpright ? y : y + height / 2];

interface Box {
  readonly s: readonly [number, number];
  readonly t: readonly [number, number];
}

function segmentsOf(layout: LaidPieces['layout'], module: readonly [number, number], box: Box): readonly Segment[] {
  if (layout === 'herringbone') return herringbone(module, box);
  if (layout === 'hexagon') return hexagons(module[0], box);
  return rows(module, OFFSETS[layout] ?? null, box);
}

function rows([long, short]: readonly [number, number], offsets: readonly number[] | null, { s, t }: Box): Segment[] {
  const segments: Segment[] = [];
  for (let j = Math.floor(t[0] / short); j <= t[1] / short; j++) {
    const low = j * short;
    segments.push([
      [s[0], low],
      [s[1], low],
    ]);
    if (!offsets) continue;
    const moved = offsets[((j % offsets.length) + offsets.length) % offsets.length]! * long;
    for (let i = Math.floor((s[0] - moved) / long); moved + i * long <= s[1]; i++) {
      const at = moved + i * long;
      segments.push([
        [at, low],
        [at, low + short],
      ]);
    }
  }
  return segments;
}

/** Level pieces stand at k (W, W) + m (L, -L), an upright one at the end of each: the edges of both. */
function herringbone([l, w]: readonly [number, number], { s, t }: Box): Segment[] {
  const segments: Segment[] = [];
  const reach = Math.ceil((s[1] - s[0] + t[1] - t[0]) / Math.min(l, w)) + 2;
  for (let m = -reach; m <= reach; m++) {
    for (let k = -reach; k <= reach; k++) {
      const [x, y] = [k * w + m * l, k * w - m * l];
      if (x > s[1] || x + l + w < s[0] || y > t[1] || y + l + w < t[0]) continue;
      segments.push(
        [
          [x, y],
          [x + l, y],
        ],
        [
          [x, y],
          [x, y + w],
        ],
        [
          [x + l, y + w - l],
          [x + l, y + w],
        ],
      );
      segments.push([
        [x + l, y + w - l],
        [x + l + w, y + w - l],
      ]);
    }
  }
  return segments;
}

/** Middles of row j at j rows up, half a piece aside in every second: three edges each, the others are their neighbors'. */
function hexagons(flat: number, { s, t }: Box): Segment[] {
  const segments: Segment[] = [];
  const row = flat * HEXAGON_ROW;
  const side = flat / Math.sqrt(3);
  for (let j = Math.floor(t[0] / row) - 1; j <= t[1] / row + 1; j++) {
    const moved = (j & 1) === 0 ? 0 : flat / 2;
    for (let i = Math.floor((s[0] - moved) / flat) - 1; moved + i * flat <= s[1] + flat; i++) {
      const [x, y] = [moved + i * flat, j * row];
      const [top, left, foot]: readonly Point[] = [
        [x, y + side],
        [x - flat / 2, y + side / 2],
        [x - flat / 2, y - side / 2],
      ];
      segments.push([top!, left!], [left!, foot!], [foot!, [x, y - side]]);
    }
  }
  return segments;
}
