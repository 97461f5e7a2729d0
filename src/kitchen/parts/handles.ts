import type { Vec3 } from '../../engine/light/types';
import type { Plan } from '../plan/types';
import type { Assembly, Bar } from './assembly';
import { FRONT_THICKNESS, type FrontPlace, type FrontZone } from './front';
import { grained } from './pattern-coordinates';
import { boxAt, pointAt, type Side } from './side';

// Measures of handles, m. Common practice, no source.

/** Bar: distance of its axis from the front's edge and from the front, lengths on doors and drawers. */
const BAR = { inset: 0.032, stand: 0.03, door: 0.16, wide: 0.32 };
/** Knob: its axis from the upright edge (the middle of a stile) and from the front's end, how far it stands out. */
const KNOB = { inset: 0.032, fromEnd: 0.075, stand: 0.027 };
/** Profile on an edge: how far it stands out, its lip, its length as a share of the front up to the longest. */
const EDGE = { stand: 0.013, lip: 0.014, share: 0.6, longest: 0.4 };
/** A drawer lower than this has its handle in the middle. */
const LOW_DRAWER = 0.2;
const WIDE_FRONT = 0.55;
/** A door higher than this is a tall one. */
const TALL = 1;
/** A door lower than this share of its width is a flap: it is lifted in its middle. */
const FLAP = 0.6;

/** Fronts without handles end this far below the counter or the next drawer; fingers reach in over their edge, m. */
export const GRIP_GAP = 0.02;
const GRIP_RAIL = 0.002;

/** The handle of a front: near the `low` or `high` end of a door's width, or in the `middle` of a drawer. None without handles. */
export function addPull(
  parts: Assembly,
  plan: Plan,
  zone: FrontZone,
  front: FrontPlace,
  at: 'low' | 'high' | 'middle',
): void {
  const { handle } = plan.fronts;
  if (handle === 'none') return;
  const pull = { bar: barOn, knob: knobOn, edge: edgeOn }[handle];
  const isFlap = front.z[1] - front.z[0] < FLAP * (front.a[1] - front.a[0]);
  parts.bars.push(pull(zone, front, isFlap ? 'middle' : at));
}

/** The rail that closes the gap over a front without a handle, on the carcass. */
export function addGripRail(parts: Assembly, { side, back }: FrontZone, a: FrontPlace['a'], z: number): void {
  const piece = parts.newPiece();
  parts.made.push({ kind: 'grip-rail', surface: 'hardware', length: a[1] - a[0], width: GRIP_GAP });
  const extent = { a, d: [back, back + GRIP_RAIL], z: [z, z + GRIP_GAP] } as const;
  parts.box({ surface: 'hardware', coordinates: grained(side.along, piece), piece }, ...boxAt(side, extent));
}

type At = 'low' | 'high' | 'middle';

function barOn(zone: FrontZone, { a, z }: FrontPlace, at: At): Bar {
  const d = zone.back + FRONT_THICKNESS + BAR.stand;
  const bar = (from: readonly [number, number], to: readonly [number, number]): Bar => ({
    kind: 'bar',
    surface: 'hardware',
    from: pointAt(zone.side, from[0], d, from[1]),
    to: pointAt(zone.side, to[0], d, to[1]),
    stand: outward(zone.side, BAR.stand),
  });
  const high = z[1] - z[0];
  if (at === 'middle') {
    const middle = (a[0] + a[1]) / 2;
    const half = Math.min(a[1] - a[0] > WIDE_FRONT ? BAR.wide : BAR.door, 0.8 * (a[1] - a[0])) / 2;
    const level = pullLevel(zone, z, BAR.inset);
    return bar([middle - half, level], [middle + half, level]);
  }
  const long = Math.min(high > TALL ? BAR.wide : BAR.door, high - 2 * BAR.inset);
  const x = at === 'low' ? a[0] + BAR.inset : a[1] - BAR.inset;
  const start = zone.handleEnd === 'top' ? z[1] - BAR.inset - long : z[0] + BAR.inset;
  return bar([x, start], [x, start + long]);
}

/** Height of a pull in the middle of a drawer or flap: near the end it opens at, or half way up a low one. */
function pullLevel({ handleEnd }: FrontZone, [low, high]: FrontPlace['z'], inset: number): number {
  if (high - low <= LOW_DRAWER) return (low + high) / 2;
  return handleEnd === 'top' ? high - inset : low + inset;
}

function knobOn(zone: FrontZone, { a, z }: FrontPlace, at: At): Bar {
  const high = z[1] - z[0];
  const fromEnd = Math.min(KNOB.fromEnd, high / 2);
  const x = at === 'middle' ? (a[0] + a[1]) / 2 : at === 'low' ? a[0] + KNOB.inset : a[1] - KNOB.inset;
  const level =
    at === 'middle' ? pullLevel(zone, z, KNOB.inset) : zone.handleEnd === 'top' ? z[1] - fromEnd : z[0] + fromEnd;
  const place = pointAt(zone.side, x, zone.back + FRONT_THICKNESS + KNOB.stand, level);
  return { kind: 'knob', surface: 'hardware', from: place, to: place, stand: outward(zone.side, KNOB.stand) };
}

/** Along the end that the hand takes, in its middle; on a tall door along its free edge. */
function edgeOn(zone: FrontZone, { a, z }: FrontPlace, at: At): Bar {
  const d = zone.back + FRONT_THICKNESS + EDGE.stand;
  const common = { kind: 'edge', surface: 'hardware', stand: outward(zone.side, EDGE.stand) } as const;
  if (at !== 'middle' && z[1] - z[0] > TALL) {
    const x = at === 'low' ? a[0] : a[1];
    const start = zone.handleEnd === 'top' ? z[1] - KNOB.fromEnd - EDGE.longest : z[0] + KNOB.fromEnd;
    return {
      ...common,
      from: pointAt(zone.side, x, d, start),
      to: pointAt(zone.side, x, d, start + EDGE.longest),
      lip: along(zone.side, at === 'low' ? EDGE.lip : -EDGE.lip),
    };
  }
  const isTop = zone.handleEnd === 'top';
  const level = isTop ? z[1] : z[0];
  const middle = (a[0] + a[1]) / 2;
  const half = Math.min(EDGE.share * (a[1] - a[0]), EDGE.longest) / 2;
  return {
    ...common,
    from: pointAt(zone.side, middle - half, d, level),
    to: pointAt(zone.side, middle + half, d, level),
    lip: [0, 0, isTop ? -EDGE.lip : EDGE.lip],
  };
}

export const outward = ({ along: axis, outward: sign }: Side, length: number): Vec3 =>
  axis === 0 ? [0, sign * length, 0] : [sign * length, 0, 0];

const along = (side: Side, length: number): Vec3 => (side.along === 0 ? [length, 0, 0] : [0, length, 0]);
