import { around, type Box, cross, grown, holds, meets, middleOf, overlap, type Place } from './boxes';
import { TAG_HEIGHT, tagWide } from './sizes';
import type { TagDemand } from './tag-demands';

/** Tags on paper, mm: their box, and from where on what they stand for a line leads to it; null where they stand on it. */
export interface PlacedTag {
  readonly surface: TagDemand['surface'];
  readonly tags: readonly string[];
  readonly box: Box;
  readonly leader: readonly [from: Place, to: Place] | null;
}

/** What tags keep clear of. */
export interface Around {
  /** Tags stay within it. */
  readonly within: Box;
  /** Not to be covered: handles, taps, marks. */
  readonly kept: readonly Box[];
  /** Better not covered: edges of what is drawn. */
  readonly edges: readonly Box[];
}

const CLEAR = 0.6;
/** Steps in which places are looked for on a shape, mm; how many at most along a side. */
const STEP = 1.6;
const MOST = 40;
/** Ways and lengths of leaders that are tried, mm. */
const WAYS: readonly Place[] = Array.from({ length: 24 }, (_, i) => {
  const angle = (Math.PI * i) / 12;
  return [Math.cos(angle), Math.sin(angle)];
});
const LENGTHS = [4, 5.5, 7, 9, 12, 16, 21, 28, 38];
/** What it costs, in mm of leader, that a box lies over an edge, and a leader over a box that is better not covered. */
const OVER_EDGE = 4;
const OVER_KEPT = 8;
/** And that tags stand on a side or a strip. */
const MINOR = 20;
/** Tags of the same item nearer to each other than this say it once, mm. */
const NEAR = 20;

/** One place for each demand: on what it stands for where there is room, else led to it. No tag lies over another, and none is left out. */
export function placeTags(demands: readonly TagDemand[], around: Around): readonly PlacedTag[] {
  const placed: PlacedTag[] = [];
  const waiting: TagDemand[] = [];
  for (const demand of demands) {
    const box = ownPlace(demand, placed, around);
    if (!box) waiting.push(demand);
    else if (!isSaid(demand, box, placed))
      placed.push({ surface: demand.surface, tags: demand.tags, box, leader: null });
  }
  for (const demand of waiting) {
    const led = ledPlace(demand, placed, around);
    if (led) placed.push({ surface: demand.surface, tags: demand.tags, ...led });
  }
  return placed;
}

/** Two surfaces of one item side by side share a tag. */
const isSaid = ({ tags }: TagDemand, box: Box, placed: readonly PlacedTag[]): boolean =>
  placed.some((one) => one.tags.join() === tags.join() && distance(middleOf(one.box), middleOf(box)) < NEAR);

const wideOf = ({ tags }: TagDemand): number => tags.reduce((sum, tag) => sum + tagWide(tag), 0);

const distance = (a: Place, b: Place): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** The place nearest to the middle of a shape where the tags lie on it alone; the larger shapes first. */
function ownPlace(demand: TagDemand, placed: readonly PlacedTag[], { within, kept, edges }: Around): Box | null {
  const width = wideOf(demand);
  const taken = [...placed.map(({ box }) => grown(box, CLEAR)), ...kept];
  let best: { readonly box: Box; readonly cost: number } | null = null;
  for (const { box: shape, later, isMinor } of [...demand.shapes]
    .sort((a, b) => sizeOf(b.box) - sizeOf(a.box))
    .slice(0, 12)) {
    const room = { width: shape.width - width - 2 * CLEAR, height: shape.height - TAG_HEIGHT - 2 * CLEAR + 0.5 };
    if (room.width < 0 || room.height < 0) continue;
    const before = later.filter((one) => overlap(one, shape));
    for (const x of stepsOf(room.width)) {
      for (const y of stepsOf(room.height)) {
        const box = { x: shape.x + CLEAR + x, y: shape.y + CLEAR - 0.25 + y, width, height: TAG_HEIGHT };
        const isCovered = before.some((one) => overlap(one, grown(box, 0.4))) || taken.some((one) => overlap(one, box));
        if (isCovered || !holds(within, box)) continue;
        const over = edges.filter((edge) => overlap(edge, box)).length;
        // Of two places alike the one on the larger shape, then the one on the left.
        const cost =
          distance(middleOf(box), middleOf(shape)) + over * OVER_EDGE - 0.02 * sizeOf(shape) + (isMinor ? MINOR : 0);
        if (!best || cost < best.cost - 1e-6) best = { box, cost };
      }
    }
  }
  return best?.box ?? null;
}

const sizeOf = ({ width, height }: Box): number => Math.min(width * height, 400);

function stepsOf(length: number): readonly number[] {
  const count = Math.max(1, Math.min(MOST, Math.floor(length / STEP)));
  return Array.from({ length: count + 1 }, (_, i) => (length * i) / count);
}

/** The shortest leader to a place that is free, best where nothing is drawn. */
function ledPlace(
  demand: TagDemand,
  placed: readonly PlacedTag[],
  { within, kept, edges }: Around,
): Pick<PlacedTag, 'box' | 'leader'> | null {
  const width = wideOf(demand);
  const tags = placed.map(({ box }) => grown(box, CLEAR));
  const leaders = placed.flatMap(({ leader }) => (leader ? [leader] : []));
  let best: { readonly found: Pick<PlacedTag, 'box' | 'leader'>; readonly cost: number } | null = null;
  const anchors = anchorsOf(demand, within, kept).filter((from) => !tags.some((box) => meets([from, from], box)));
  // The shorter ones first: no longer one is better than the best there is.
  for (const length of LENGTHS) {
    if (best && length >= best.cost) break;
    for (const from of anchors) {
      for (const [dx, dy] of WAYS) {
        const to: Place = [from[0] + dx * length, from[1] + dy * length];
        const box = around([to[0] + dx * (width / 2), to[1] + dy * (TAG_HEIGHT / 2)], width, TAG_HEIGHT);
        const leader = [from, nearest(box, from)] as const;
        const isFree =
          holds(within, box) &&
          !tags.some((one) => overlap(one, box) || meets(leader, one)) &&
          !kept.some((one) => overlap(one, box)) &&
          !leaders.some((one) => cross(one, leader) || meets(one, grown(box, CLEAR)));
        if (!isFree) continue;
        const crossed = kept.filter((one) => meets(leader, one) && !meets([from, from], grown(one, 0.4))).length;
        const over = edges.filter((edge) => overlap(edge, box)).length;
        const cost = length + over * OVER_EDGE + crossed * OVER_KEPT;
        if (!best || cost < best.cost - 1e-6) best = { found: { box, leader }, cost };
      }
    }
  }
  return best?.found ?? null;
}

/** The place of a box that is nearest to another place. */
const nearest = ({ x, y, width, height }: Box, [px, py]: Place): Place => [
  Math.min(Math.max(px, x), x + width),
  Math.min(Math.max(py, y), y + height),
];

/** Places on what a tag stands for that nothing lies before, not too near to its edges. */
function anchorsOf({ shapes, lines }: TagDemand, within: Box, kept: readonly Box[]): readonly Place[] {
  const places = [
    ...[...shapes]
      .sort((a, b) => b.box.width * b.box.height - a.box.width * a.box.height)
      .slice(0, 6)
      .flatMap(({ box, later }) =>
        [0.5, 0.3, 0.7, 0.15, 0.85, 0.05, 0.95].flatMap((u) =>
          [0.5, 0.2, 0.8].flatMap((v): Place[] => {
            const place: Place = [box.x + u * box.width, box.y + v * box.height];
            return [...later, ...kept].some((one) => meets([place, place], one)) ? [] : [place];
          }),
        ),
      ),
    ...lines.flatMap((line) => anchorsOn(line)),
  ];
  return places.filter((place) => meets([place, place], grown(within, 0.5))).slice(0, 60);
}

/** The middle of each side of a line, and places between on a long one. */
function anchorsOn(line: readonly Place[]): readonly Place[] {
  if (line.length > 8) return [line[0]!, line[Math.floor(line.length / 2)]!];
  return line.slice(1).flatMap((end, i) => {
    const start = line[i]!;
    const shares = distance(start, end) > 30 ? [0.5, 0.1, 0.25, 0.75, 0.9] : [0.5];
    return shares.map(
      (share): Place => [start[0] + share * (end[0] - start[0]), start[1] + share * (end[1] - start[1])],
    );
  });
}
