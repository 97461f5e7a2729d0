import type { Rect, Solid, Vec3 } from '../../src/engine/light/types';
import { mulberry32 } from '../../src/engine/random';
import { buildRoom } from '../../src/kitchen/build-room';
import { buildCoarse } from '../../src/kitchen/coarse';
import { buildFine } from '../../src/kitchen/fine';
import { Assembly } from '../../src/kitchen/parts/assembly';
import { addOutside } from '../../src/kitchen/parts/shell';
import { planKitchen } from '../../src/kitchen/plan/plan-kitchen';
import type { Kitchen } from '../../src/model/kitchen';
import type { Row } from '../../src/model/layout/types';
import type { BeamRecord } from '../../src/model/project';
import { area, bounds, castRay, coplanarOverlaps, frontPoint, inside } from './geometry';

/** Everything that must hold for any kitchen that fits its room; sentences about what does not. */
export function brokenInvariants(kitchen: Kitchen, rays: number, beams: readonly BeamRecord[] = []): string[] {
  const plan = planKitchen(kitchen);
  const fine = buildFine(plan);
  const coarse = buildCoarse(plan);
  const room = buildRoom(kitchen, beams);
  const size: Vec3 = [plan.width, plan.depth, plan.height];
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
  broken.push(...leaks('fine', fine.rects, fine.solids, size, rays));
  broken.push(...leaks('coarse', coarse.rects, coarse.solids, size, rays));

  for (const { id, eye } of room.viewpoints) {
    const { min, max } = room.eyeLimits;
    expect(
      eye.every((c, k) => c >= min[k]! && c <= max[k]!),
      `${id}: outside the eye's limits`,
    );
    expect(!inside(eye, fine.solids), `${id}: inside a solid`);
  }
  const fronts = plan.depth - plan.baseDepth;
  const { island, wallUnits } = plan;
  broken.push(...gapsIn('back run', plan.back, plan.baseDepth, plan.back.to));
  broken.push(...gapsIn('short leg', plan.left, plan.left.end + plan.panel, fronts));
  for (const row of wallUnits.rows) broken.push(...gapsIn('wall units', row, row.from, row.to));
  broken.push(...gapsIn('island', island.row, island.body.x0 + island.panel, island.body.x1 - island.panel));
  return broken;
}

/** Solids of five-piece fronts reach to the panel: the frame stands 8 mm before it. */
const FRAME_DEPTH = 0.009;

/** Rays from free points must end on the front of something. */
function leaks(level: string, rects: readonly Rect[], solids: readonly Solid[], size: Vec3, rays: number): string[] {
  const random = mulberry32(7);
  const found: string[] = [];
  for (let n = 0; n < rays; ) {
    const from: Vec3 = [random() * size[0], random() * size[1], random() * size[2]];
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

/** Modules and fillers must follow one another from one end of the run to the other, modules in whole 50 mm. */
function gapsIn(name: string, row: Row, from: number, to: number): string[] {
  const spans = [...row.units, ...row.fillers].sort((a, b) => a.from - b.from);
  const found: string[] = [];
  let at = from;
  for (const span of spans) {
    if (Math.abs(span.from - at) > 1e-9) found.push(`${name}: gap at ${at}`);
    at = span.to;
  }
  if (Math.abs(at - to) > 1e-9) found.push(`${name}: ends at ${at}, not ${to}`);
  for (const unit of row.units) {
    const width = Math.round((unit.to - unit.from) * 1e6) / 1000;
    if (width % 50 !== 0 || width < 300 || width > 1000) found.push(`${name}: module of ${width} mm`);
  }
  for (const filler of row.fillers) {
    const width = (filler.to - filler.from) * 1000;
    if (width < 20 - 1e-6 || width > 320) found.push(`${name}: filler of ${width} mm`);
  }
  return found;
}

function named(rect: Rect): string {
  const { min, max } = bounds(rect);
  const mm = (p: Vec3): string => p.map((c) => Math.round(c * 1e4) / 10).join(' ');
  return `surface ${rect.surface} from ${mm(min)} to ${mm(max)}`;
}
