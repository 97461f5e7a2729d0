import type { RunWall, Wall } from '../../model/kitchen';
import type { QuantityAssumptions } from '../../model/quantity/assumptions';
import type { Assembly } from '../parts/assembly';
import { laidFields } from '../parts/backsplash';
import { cooktopExtent } from '../parts/cooktop';
import { wallSide } from '../parts/side';
import { wallLength } from '../plan/run-ends';
import type { Plan } from '../plan/types';
import type { Drawn } from './drawn';
import { grouped, toMm } from './measured-parts';
import { areaOf, covered, type PlaneField } from './plane-area';
import type { Deduction, MeasuredPart, SurfaceTakeoff } from './types';

type Rules = Pick<QuantityAssumptions, 'least_opening_m2' | 'paint_behind_units'>;
type Cover = PlaneField & { readonly kind: Deduction['kind'] };

const WALLS: readonly Wall[] = ['left', 'back', 'right', 'front'];
/** What several hide counts for the first of them. */
const ORDER: readonly Deduction['kind'][] = [
  'open-side',
  'door',
  'window',
  'glazed-door',
  'splash',
  'tall-units',
  'units',
  'island',
  'hood',
];

/**
 * Walls of the room, to be painted: less openings larger than the least, the open side, upstand and backsplash, and what units
 * stand or hang against. Reveals are not added, skirting, casings and shelves not taken off; the next room is not counted.
 */
export function measureWalls(drawn: Drawn, rules: Rules): SurfaceTakeoff {
  const { plan } = drawn;
  const sums = new Map<Deduction['kind'], number>();
  for (const wall of WALLS) {
    const behind = rules.paint_behind_units ? [] : hiddenAt(drawn, wall);
    const openings = openingsOf(plan, wall).filter(
      (field) => field.kind === 'open-side' || areaOf(field) > rules.least_opening_m2,
    );
    // Whole fields, and what the thickness of those across covers in a corner.
    const splash = plan.runs
      .filter((run) => run.wall === wall)
      .flatMap((run) => laidFields(plan, run))
      .map(({ a, z }): Cover => ({ kind: 'splash', a, z }));
    splash.push(...against(plan, wall, 'splash', drawn.splash));
    addTo(sums, [wallField(plan, wall)], [...openings, ...splash, ...behind]);
  }
  const fields = WALLS.map((wall) => wallField(plan, wall));
  return surfaceOf('wall', fields, sums);
}

/**
 * Fields of tile, less what of openings and hood cuts them by more than the least, and what wall units hang against. Null without any.
 */
export function measureBacksplash(drawn: Drawn, rules: Rules): SurfaceTakeoff | null {
  const { plan } = drawn;
  const sums = new Map<Deduction['kind'], number>();
  const fields: PlaneField[] = [];
  const parts: MeasuredPart[] = [];
  for (const run of plan.runs) {
    if (run.splash.kind === 'upstand') continue;
    const own = laidFields(plan, run);
    const cut = (cover: PlaneField): number => own.reduce((sum, field) => sum + covered(field, [cover]), 0);
    const hidden = hiddenAt(drawn, run.wall);
    const hood = hidden.filter(({ kind }) => kind === 'hood');
    const hoodCut = own.reduce((sum, field) => sum + covered(field, hood), 0);
    addTo(sums, own, [
      ...openingsOf(plan, run.wall).filter((field) => cut(field) > rules.least_opening_m2),
      ...hidden.filter(({ kind }) => kind !== 'hood'),
      ...(hoodCut > rules.least_opening_m2 ? hood : []),
    ]);
    fields.push(...own);
    parts.push(...own.map((field) => alongWall(plan, run.wall, 'field', field)));
  }
  return fields.length > 0 ? { ...surfaceOf('backsplash', fields, sums), parts } : null;
}

/** Strips of counter material along the walls. Null without any. */
export function measureUpstand({ plan }: Drawn): SurfaceTakeoff | null {
  const runs = plan.runs.filter(({ splash }) => splash.kind === 'upstand');
  const strips = runs.flatMap((run) => laidFields(plan, run).map((field) => ({ ...field, wall: run.wall })));
  if (strips.length === 0) return null;
  const area = strips.reduce((sum, field) => sum + areaOf(field), 0);
  const length_m = strips.reduce((sum, { a }) => sum + a[1] - a[0], 0);
  const parts = strips.map((field) => alongWall(plan, field.wall, 'strip', field));
  return { surface: 'upstand', area_m2: area, gross_m2: area, deductions: [], parts, length_m };
}

/** A field as a part that runs along its wall; behind the cooktop heat and grease work on a seam. */
function alongWall(plan: Plan, wall: RunWall, kind: 'field' | 'strip', { a, z }: PlaneField): MeasuredPart {
  const behind = wall === plan.cooktop.run ? cooktopExtent(plan).a : null;
  const isBehind = kind === 'field' && behind && behind[0] < a[1] && behind[1] > a[0];
  return {
    kind,
    length_mm: toMm(a[1] - a[0]),
    width_mm: toMm(z[1] - z[0]),
    count: 1,
    along: { line: wall, from_mm: toMm(a[0]) },
    ...(isBehind && { avoid: [{ what: 'cooktop', span_mm: [toMm(behind[0] - a[0]), toMm(behind[1] - a[0])] }] }),
  };
}

/** Adds what covers hide of fields, by kind. */
function addTo(sums: Map<Deduction['kind'], number>, fields: readonly PlaneField[], covers: readonly Cover[]): void {
  for (const field of fields) {
    const taken: Cover[] = [];
    let before = 0;
    for (const kind of ORDER) {
      taken.push(...covers.filter((cover) => cover.kind === kind));
      const now = covered(field, taken);
      if (now - before > 1e-9) sums.set(kind, (sums.get(kind) ?? 0) + now - before);
      before = now;
    }
  }
}

function surfaceOf(
  surface: 'wall' | 'backsplash',
  fields: readonly PlaneField[],
  sums: ReadonlyMap<Deduction['kind'], number>,
): SurfaceTakeoff {
  const gross = fields.reduce((sum, field) => sum + areaOf(field), 0);
  const off = [...sums.values()].reduce((sum, area) => sum + area, 0);
  return {
    surface,
    area_m2: Math.max(0, gross - off),
    gross_m2: gross,
    deductions: [...sums].map(([kind, area_m2]) => ({ kind, area_m2 })),
    parts: grouped(fields.map(({ a, z }) => ({ kind: 'field', length: a[1] - a[0], width: z[1] - z[0] }))),
  };
}

const wallField = (plan: Plan, wall: Wall): PlaneField => ({ a: [0, wallLength(plan, wall)], z: [0, plan.height] });

/** Openings of a wall, the door of the room among them. */
function openingsOf({ openings, openSide, door, height }: Plan, wall: Wall): Cover[] {
  const covers = openings
    .filter((opening) => opening.wall === wall)
    .map(({ kind, from, to, sill, head }): Cover => ({ kind, a: [from, to], z: [sill, head] }));
  if (wall === 'front') covers.push({ kind: 'door', a: [door.from, door.to], z: [0, door.height] });
  if (openSide?.wall === wall) {
    covers.push({ kind: 'open-side', a: [openSide.from, openSide.to], z: [0, Math.min(openSide.height, height)] });
  }
  return covers;
}

/** A solid this near to a wall stands against it, m. */
const NEAR = 1e-6;

/** What stands or hangs against a wall, as drawn. */
const hiddenAt = ({ plan, units, tall, hood, island }: Drawn, wall: Wall): Cover[] => [
  ...against(plan, wall, 'units', units),
  ...against(plan, wall, 'tall-units', tall),
  ...against(plan, wall, 'hood', hood),
  ...against(plan, wall, 'island', island),
];

function against(plan: Plan, wall: Wall, kind: Cover['kind'], { solids }: Assembly): Cover[] {
  const side = wallSide(plan, wall);
  const across = side.along === 0 ? 1 : 0;
  return solids
    .filter(({ min, max }) => Math.abs((side.outward > 0 ? min : max)[across] - side.wall) < NEAR)
    .map(({ min, max }) => ({ kind, a: [min[side.along], max[side.along]], z: [min[2], max[2]] }));
}
