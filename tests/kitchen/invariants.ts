import type { Rect, Solid, Vec3 } from '../../src/engine/light/types';
import { mulberry32 } from '../../src/engine/random';
import { buildRoom } from '../../src/kitchen/build-room';
import { buildCoarse } from '../../src/kitchen/coarse';
import { buildFine } from '../../src/kitchen/fine';
import { Assembly } from '../../src/kitchen/parts/assembly';
import { nextRoomOf } from '../../src/kitchen/parts/next-room';
import { addOutside } from '../../src/kitchen/parts/shell';
import { solidAt } from '../../src/kitchen/parts/side';
import { planKitchen } from '../../src/kitchen/plan/plan-kitchen';
import type { Plan, PlannedIsland } from '../../src/kitchen/plan/types';
import type { Kitchen } from '../../src/model/kitchen';
import type { Row, RunRows } from '../../src/model/layout/types';
import type { BeamRecord } from '../../src/model/project';
import { area, bounds, castRay, coplanarOverlaps, frontPoint, inside } from './geometry';

/** Everything that must hold for any kitchen that fits its room; sentences about what does not. */
export function brokenInvariants(kitchen: Kitchen, rays: number, beams: readonly BeamRecord[] = []): string[] {
  const plan = planKitchen(kitchen);
  const fine = buildFine(plan);
  const coarse = buildCoarse(plan);
  const room = buildRoom(kitchen, beams);
  const shell = new Assembly();
  addOutside(shell, plan);
  const outside = shell.solids;
  const broken: string[] = [];
  const expect = (holds: boolean, text: string): void => {
    if (!holds) broken.push(text);
  };

  for (const [level, rects] of [
    ['fine', fine.rects],
    ['coarse', coarse.rects],
  ] as const) {
    for (const rect of rects) {
      expect(area(rect) > 1e-8, `${level}: empty ${named(rect)}`);
      expect(!inside(frontPoint(rect, 6e-4), outside), `${level}: faces outward ${named(rect)}`);
    }
    for (const [i, j] of coplanarOverlaps(rects)) {
      expect(false, `${level}: ${named(rects[i]!)} over ${named(rects[j]!)}`);
    }
  }
  for (const rect of fine.rects) {
    expect(!inside(frontPoint(rect, 6e-4), fine.solids), `hidden: ${named(rect)}`);
  }
  const free = freeBoxes(plan);
  broken.push(...leaks('fine', fine.rects, fine.solids, free, rays));
  broken.push(...leaks('coarse', coarse.rects, coarse.solids, free, rays));

  const { min, max } = room.eyeLimits;
  for (const { id, eye } of room.viewpoints) {
    expect(
      eye.every((c, k) => c >= min[k]! && c <= max[k]!),
      `${id}: outside the eye's limits`,
    );
    expect(!inside(eye, fine.solids), `${id}: inside a solid`);
  }
  for (const run of plan.runs) {
    broken.push(...gapsIn(`${run.wall} run`, kitchen, run.base, ...frontsOf(plan, run)));
    for (const row of run.over) broken.push(...gapsIn(`${run.wall} wall units`, kitchen, row, row.from, row.to));
  }
  const { island } = plan;
  if (island) broken.push(...gapsIn('island', kitchen, island.row, ...islandFronts(plan, island)));
  return broken;
}

/** Where modules and fillers of a run stand: in a corner it owns from the fronts of the other run on. */
function frontsOf(plan: Plan, { base, ends, wall }: RunRows): [number, number] {
  const length = wall === 'back' ? plan.width : plan.depth;
  return [
    ends.from === 'owns-corner' ? plan.baseDepth : base.from,
    ends.to === 'owns-corner' ? length - plan.baseDepth : base.to,
  ];
}

/** Between the end panels; at a wall from the fronts of the run that ends there on. */
function islandFronts(plan: Plan, { joined, body, panel }: PlannedIsland): [number, number] {
  const taken = plan.runs.some((run) => run.wall === joined && run.ends.from === 'meets') ? plan.baseDepth : 0;
  return [joined === 'left' ? taken : body.x0 + panel, joined === 'right' ? plan.width - taken : body.x1 - panel];
}

/** Solids of five-piece fronts reach to the panel: the frame stands 8 mm before it. */
const FRAME_DEPTH = 0.009;

/** The room, and the next one where there is one. */
function freeBoxes(plan: Plan): Solid[] {
  const room: Solid = { min: [0, 0, 0], max: [plan.width, plan.depth, plan.height] };
  const next = nextRoomOf(plan);
  return next ? [room, solidAt(next.side, next.room)] : [room];
}

/** Rays from free points must end on the front of something. */
function leaks(
  level: string,
  rects: readonly Rect[],
  solids: readonly Solid[],
  free: readonly Solid[],
  rays: number,
): string[] {
  const random = mulberry32(7);
  const found: string[] = [];
  for (let n = 0; n < rays; ) {
    const { min, max } = free[Math.floor(random() * free.length)]!;
    const from = min.map((c, k) => c + random() * (max[k]! - c)) as unknown as Vec3;
    if (inside(from, solids, -FRAME_DEPTH)) continue;
    n++;
    const z = 2 * random() - 1;
    const angle = 2 * Math.PI * random();
    const r = Math.sqrt(1 - z * z);
    const direction: Vec3 = [r * Math.cos(angle), r * Math.sin(angle), z];
    const hit = castRay(rects, from, direction);
    if (!hit) found.push(`${level}: a ray from ${from} towards ${direction} escapes`);
    else if (!hit.front) found.push(`${level}: a ray from ${from} sees the back of ${named(rects[hit.index]!)}`);
  }
  return found;
}

/** Modules and fillers must follow one another from one end of the run to the other, modules in steps of 50 mm or 3 in. */
function gapsIn(name: string, { region }: Kitchen, row: Row, from: number, to: number): string[] {
  const spans = [...row.units, ...row.fillers].sort((a, b) => a.from - b.from);
  const found: string[] = [];
  let at = from;
  for (const span of spans) {
    if (Math.abs(span.from - at) > 1e-9) found.push(`${name}: gap at ${at}`);
    at = span.to;
  }
  if (Math.abs(at - to) > 1e-9) found.push(`${name}: ends at ${at}, not ${to}`);
  for (const unit of row.units) {
    const width = (unit.to - unit.from) * 1000;
    const steps = width / (region === 'us' ? 76.2 : 50);
    if (Math.abs(steps - Math.round(steps)) > 1e-6 || steps < 3 - 1e-6 || width > 1220) {
      found.push(`${name}: module of ${width} mm`);
    }
  }
  for (const filler of row.fillers) {
    const width = (filler.to - filler.from) * 1000;
    if (width < 1 - 1e-6 || width > 350) found.push(`${name}: filler of ${width} mm`);
  }
  return found;
}

function named(rect: Rect): string {
  const { min, max } = bounds(rect);
  const mm = (p: Vec3): string => p.map((c) => Math.round(c * 1e4) / 10).join(' ');
  return `surface ${rect.surface} from ${mm(min)} to ${mm(max)}`;
}
