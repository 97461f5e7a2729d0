import { blockX, blockY } from './patch';
import { fitPlane, medianOf, type Plane, robustDeviation } from './robust';
import type { CardLight, Patch, PicturePoint } from './types';

/** What the card tells: the light, and how good a witness the card is. */
export interface CardReading {
  readonly light: CardLight;
  /** Share of the card's blocks, 0-1, that differ from the rest of it by more than a sixth of the light: print, a finger, the edge. */
  readonly oddShare: number;
  /** Standard deviation of one block about the plane, as a share of the light. */
  readonly noise: number;
  /** Planes through the natural logarithms of X, Y, Z over the card. */
  readonly planes: readonly Plane[];
}

/** Blocks on a card: enough for a plane, each large enough to be quiet. */
export const CARD_BLOCKS = 1024;

/** A block this far from the card's plane, as a natural logarithm, is not card. Our judgment. */
const ODD = 0.15;

/** A slope counts where it changes the light at the sample by this many of its standard errors, and by this much. Our judgment. */
const SURE_ERRORS = 4;
const LEAST_CHANGE = 0.02;
/** A card tells the slope for places no further away than this many times its own half size. Our judgment. */
const MOST_REACH = 6;
/** No light is taken to change by more than this between card and sample, as a natural logarithm. Our judgment. */
const MOST_CHANGE = 0.5;
/** Below this a logarithm says nothing: less than one code of black. */
const LEAST_LIGHT = 1e-4;

/**
 * The light from a card of luminance factor `cardY` (0-1), neutral, seen in one place or in two. One place gives the white; how
 * luminance changes across it is carried on to the sample (middle at `towards`) where that is sure. Two places give
 * white and slope of each of X, Y, Z between them. Null where a place holds no light at all.
 */
export function cardLight(cards: readonly Patch[], cardY: number, towards: PicturePoint): CardReading | null {
  const blocks = cards.flatMap(blocksOf);
  if (!blocks.some(({ logs }) => logs[1]! > Math.log(2 * LEAST_LIGHT))) return null;
  // Each place has the same say, however many blocks it has.
  const center = {
    x: mean(cards.map((card) => mean(blocksOf(card).map(({ x }) => x)))),
    y: mean(cards.map((card) => mean(blocksOf(card).map(({ y }) => y)))),
  };
  const kept = withoutOdd(blocks, center);
  const planes = planesOf(kept, center);
  const oddShare = 1 - kept.length / blocks.length;
  const slopes =
    cards.length > 1
      ? planes.map(({ alongX, alongY }) => [alongX, alongY] as const)
      : sureSlopes(planes[1]!, kept, center, towards);
  const levels = planes.map(({ level }) => Math.exp(level) / cardY);
  return {
    light: { white: { x: levels[0]!, y: levels[1]!, z: levels[2]! }, slopes, center },
    oddShare,
    noise: planes[1]!.deviation,
    planes,
  };
}

interface Block {
  readonly x: number;
  readonly y: number;
  readonly logs: readonly number[];
}

function blocksOf(card: Patch): Block[] {
  const blocks: Block[] = [];
  for (let at = 0; at < card.inside.length; at++) {
    if (!card.inside[at]) continue;
    const logs = [0, 1, 2].map((c) => Math.log(Math.max(LEAST_LIGHT, card.xyz[3 * at + c]!)));
    blocks.push({ x: blockX(card, at), y: blockY(card, at), logs });
  }
  return blocks;
}

/** The blocks that lie near one plane; the plane is first that of the median, so that a finger on the card does not tilt it. */
function withoutOdd(blocks: readonly Block[], center: PicturePoint): readonly Block[] {
  const median = medianOf(blocks.map(({ logs }) => logs[1]!));
  const spread = Math.max(ODD, 3 * robustDeviation(blocks.map(({ logs }) => logs[1]!)));
  let kept = blocks.filter(({ logs }) => Math.abs(logs[1]! - median) <= spread);
  for (let round = 0; round < 3; round++) {
    const { level, alongX, alongY, deviation } = planesOf(kept, center)[1]!;
    const limit = Math.max(ODD, 4 * deviation);
    kept = blocks.filter(
      ({ x, y, logs }) => Math.abs(logs[1]! - level - alongX * (x - center.x) - alongY * (y - center.y)) <= limit,
    );
    if (kept.length === 0) return blocks;
  }
  return kept;
}

function planesOf(blocks: readonly Block[], center: PicturePoint): readonly Plane[] {
  const dx = Float64Array.from(blocks, ({ x }) => x - center.x);
  const dy = Float64Array.from(blocks, ({ y }) => y - center.y);
  return [0, 1, 2].map((c) =>
    fitPlane(
      dx,
      dy,
      Float64Array.from(blocks, ({ logs }) => logs[c]!),
    ),
  );
}

const NO_SLOPE = [0, 0] as const;

/** The slope of luminance for all three, where it is sure that it matters at the sample; else none. */
function sureSlopes(plane: Plane, blocks: readonly Block[], center: PicturePoint, towards: PicturePoint) {
  const [dx, dy] = [towards.x - center.x, towards.y - center.y];
  const change = plane.alongX * dx + plane.alongY * dy;
  const [xx, xy, yy] = plane.slopeCovariance;
  const error = Math.sqrt(Math.max(0, dx * dx * xx + 2 * dx * dy * xy + dy * dy * yy));
  const half = Math.sqrt(mean(blocks.map(({ x, y }) => (x - center.x) ** 2 + (y - center.y) ** 2)));
  const isSure = Math.abs(change) >= Math.max(LEAST_CHANGE, SURE_ERRORS * error) && Math.abs(change) <= MOST_CHANGE;
  const isNear = Math.hypot(dx, dy) <= MOST_REACH * half;
  const slope = isSure && isNear ? ([plane.alongX, plane.alongY] as const) : NO_SLOPE;
  return [slope, slope, slope];
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
