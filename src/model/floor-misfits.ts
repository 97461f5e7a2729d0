import type { Kitchen } from './kitchen';
import { type Block, kitchenBlocks } from './layout/blocks';
import { formCorner, meetsPeninsula } from './layout/run-ends';
import type { Rows } from './layout/types';
import type { Check, Range } from './misfit';

/** Below this nobody passes between two rows of units, mm. Planners ask for 900 to 1200 (common practice). */
const LEAST_PASSAGE = 600;

/** A run or the island on the floor. */
interface Body {
  readonly path: string;
  readonly name: string;
  readonly wall: 'left' | 'back' | 'right' | null;
  readonly x: Range;
  readonly y: Range;
}

/** What stands in one another, or too near to pass between. */
export function floorChecks(kitchen: Kitchen, rows: Rows): Check[] {
  const bodies = rows.runs.map((run, i): Body => {
    const blocks = kitchenBlocks(kitchen, { runs: [run], island: null }).filter(
      ({ kind }) => kind === 'counter' || kind === 'tall',
    );
    return { path: `runs[${i}]`, name: `the run on the ${run.wall} wall`, wall: run.wall, ...around(blocks) };
  });
  return [
    ...bodies.flatMap((body, i) => bodies.slice(0, i).flatMap((other) => runPair(kitchen, other, body))),
    ...acrossChecks(kitchen, bodies),
    ...islandChecks(kitchen, bodies),
  ];
}

function around(blocks: readonly Pick<Block, 'x' | 'y'>[]): Pick<Body, 'x' | 'y'> {
  const over = (read: (block: Pick<Block, 'x' | 'y'>) => Range): Range => [
    Math.min(...blocks.map((block) => read(block)[0])),
    Math.max(...blocks.map((block) => read(block)[1])),
  ];
  return { x: over(({ x }) => x), y: over(({ y }) => y) };
}

/** Free floor between two ranges, negative where they share some. */
const gapOf = (a: Range, b: Range): number => Math.max(a[0], b[0]) - Math.min(a[1], b[1]);

function runPair(kitchen: Kitchen, a: Body, b: Body): Check[] {
  const isCorner = (side: Body['wall']): boolean => (side === 'left' || side === 'right') && formCorner(kitchen, side);
  if ((a.wall === 'back' || b.wall === 'back') && (isCorner(a.wall) || isCorner(b.wall))) return [];
  const [gapX, gapY] = [gapOf(a.x, b.x), gapOf(a.y, b.y)];
  const gap = Math.max(gapX, gapY);
  if (gap <= 0) {
    const text = `${capital(b.name)} and ${a.name} stand in one another.`;
    return [[`${b.path}.from`, false, text, 'Let both reach the corner, or end one of them before the other.']];
  }
  const isFacing = gapX <= 0 || gapY <= 0;
  return [
    [
      `${b.path}.from`,
      !isFacing || gap >= LEAST_PASSAGE,
      `Only ${Math.round(gap)} mm are left to pass between ${a.name} and ${b.name}.`,
      `Leave ${LEAST_PASSAGE} mm or more.`,
    ],
  ];
}

/** Before every run, up to the wall across, one has to stand and pass. */
function acrossChecks({ room }: Kitchen, bodies: readonly Body[]): Check[] {
  return bodies.map(({ wall, x, y, name }): Check => {
    const free = wall === 'back' ? y[0] : wall === 'left' ? room.width - x[1] : x[0];
    return [
      wall === 'back' ? 'room.depth' : 'room.width',
      free >= LEAST_PASSAGE,
      `Only ${Math.round(free)} mm are left before ${name}.`,
      'Make the room larger or the counter less deep.',
    ];
  });
}

function islandChecks(kitchen: Kitchen, bodies: readonly Body[]): Check[] {
  const { island, room } = kitchen;
  if (!island) return [];
  const { joined } = island;
  const x: Range = [island.x, island.x + island.width];
  const y: Range = [island.y, island.y + island.depth];
  const name = joined ? 'the peninsula' : 'the island';
  const passage = (path: string, gap: number): Check => [
    path,
    gap >= LEAST_PASSAGE,
    gap < 0
      ? `${capital(name)} reaches into the units or the wall beside it.`
      : `Only ${Math.round(gap)} mm are left to pass beside ${name}.`,
    'Move it or make it smaller.',
  ];
  return [
    ...(joined === 'left' ? [] : [passage('island.x', x[0])]),
    ...(joined === 'right' ? [] : [passage(joined === 'left' ? 'island.width' : 'island.x', room.width - x[1])]),
    passage('island.y', y[0]),
    passage('island.y', room.depth - y[1]),
    ...bodies.flatMap((body): Check[] => {
      if (body.wall === joined && meetsPeninsula(kitchen)) return [];
      const [gapX, gapY] = [gapOf(x, body.x), gapOf(y, body.y)];
      if (gapX > 0 && gapY > 0) return [];
      return [passage(gapY > gapX ? 'island.y' : 'island.x', Math.max(gapX, gapY))];
    }),
  ];
}

const capital = (words: string): string => `${words[0]!.toUpperCase()}${words.slice(1)}`;
