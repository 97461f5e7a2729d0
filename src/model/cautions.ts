import type { FinishClass } from '../engine/finish/types';
import type { Assessment } from '../engine/judge/assessment';
import { bowmanSapolinski, edgeSeverity, edgesBetween } from '../engine/judge/edges';
import type { SurfaceId } from '../engine/surface';
import type { Region, Wall } from './kitchen';
import type { Finish, Option, Project } from './project';

/** Something to heed before ordering. It is shown because of what it names; none of it says that anything complies. */
export type Caution =
  /** Cutting these gives off silica dust; `engineered`: one is of engineered stone. */
  | { readonly code: 'dust'; readonly surfaces: readonly SurfaceId[]; readonly engineered: boolean }
  | {
      readonly code: 'heat';
      readonly fuel: 'induction' | 'gas';
      readonly region: Region;
      readonly hasUnitsAbove: boolean;
    }
  | { readonly code: 'glass' | 'acid' | 'lead-us' | 'lead' }
  | { readonly code: 'slip'; readonly polished: boolean }
  /** A polished counter mirrors windows on these walls; `dark`: it shows them strongly. */
  | { readonly code: 'glare'; readonly walls: readonly Wall[]; readonly dark: boolean }
  | { readonly code: 'load'; readonly thickness_mm: number; readonly weight_kg_m2: number; readonly region: Region }
  /** Which surfaces meet, and by how much LRV and Bowman-Sapolinski contrast they differ. */
  | {
      readonly code: 'low-vision';
      readonly surfaces: readonly [readonly SurfaceId[], readonly SurfaceId[]];
      readonly stepLrv: number;
      readonly contrast: number;
      readonly isForUser: boolean;
    };

/** Classes that give off silica dust when cut. */
const DUSTY: readonly FinishClass[] = ['stone', 'engineered', 'porcelain'];
/** Floors that can be slippery when wet. */
const HARD: readonly FinishClass[] = ['stone', 'engineered', 'porcelain', 'glazed', 'glass'];
/** From here on a surface counts as polished (MPI gloss levels: G6 starts at 70 units at 60 degrees). */
const POLISHED_GU = 70;
/** Below this LRV a polished top shows what it mirrors more than itself. Our judgment. */
const DARK_LRV = 20;
/** Tops of this thickness are heavy, mm (common practice, no source); stone weighs about 2.7 kg/m2 per mm (from memory). */
const HEAVY_MM = 30;
const KG_M2_PER_MM = 2.7;

const COUNTERS: readonly SurfaceId[] = ['counter', 'island-counter'];
/** What is cut to fit on site or nearly so. */
const CUT: readonly SurfaceId[] = [...COUNTERS, 'upstand', 'backsplash', 'floor'];
/** What is sanded before it is painted over. */
const PAINTED: readonly SurfaceId[] = ['wall', 'ceiling', 'frame', 'base-fronts', 'wall-fronts', 'tall-fronts'];

/** What to heed before ordering, from what is laid and what the room holds. The standing lines are not among them. */
export function cautionsFor(project: Project, option: Option, assessment: Assessment | null): readonly Caution[] {
  const { kitchen } = project;
  const laid = (surface: SurfaceId): Finish | undefined =>
    surface.startsWith('island') && !kitchen.island
      ? undefined
      : project.library.find((finish) => finish.id === option.scheme[surface].finish);
  return [
    ...dust(laid),
    { code: 'heat', fuel: kitchen.cooktop.kind, region: kitchen.region, hasUnitsAbove: hasUnitsAbove(project) },
    ...glassBehindCooktop(project, laid),
    ...acid(laid),
    ...slip(laid('floor')),
    ...lead(project, option, laid),
    ...glare(project, laid, assessment),
    ...load(project, laid),
    ...weakEdges(project, option, assessment),
  ];
}

type Laid = (surface: SurfaceId) => Finish | undefined;

const cooktopRun = ({ kitchen }: Project) => kitchen.runs.find(({ wall }) => wall === kitchen.cooktop.run);

/** Something that may burn or suffer hangs over the cooktop. */
const hasUnitsAbove = (project: Project): boolean =>
  project.kitchen.cooktop.hood !== 'none' || (cooktopRun(project)?.over ?? 'none') !== 'none';

function dust(laid: Laid): Caution[] {
  const surfaces = CUT.filter((surface) => DUSTY.includes(laid(surface)?.class ?? 'paint'));
  if (surfaces.length === 0) return [];
  return [{ code: 'dust', surfaces, engineered: surfaces.some((surface) => laid(surface)?.class === 'engineered') }];
}

function glassBehindCooktop(project: Project, laid: Laid): Caution[] {
  const splash = cooktopRun(project)?.splash ?? 'upstand';
  return splash !== 'upstand' && laid('backsplash')?.class === 'glass' ? [{ code: 'glass' }] : [];
}

/** Veined or plain natural stone may be marble or limestone, which acid marks; speckled stone is granite-like and is not. */
function acid(laid: Laid): Caution[] {
  const may = COUNTERS.some((surface) => {
    const finish = laid(surface);
    return finish?.class === 'stone' && !finish.components.some(({ role }) => role === 'fleck' || role === 'grain');
  });
  return may ? [{ code: 'acid' }] : [];
}

const slip = (floor: Finish | undefined): Caution[] =>
  floor && HARD.includes(floor.class) ? [{ code: 'slip', polished: floor.gloss_gu >= POLISHED_GU }] : [];

/** Old paint is disturbed where something stays, so the house is no new one, and something else is painted over. */
function lead(project: Project, option: Option, laid: Laid): Caution[] {
  const stays = Object.values(option.scheme).some(({ state }) => state === 'fixed');
  const isPainted = PAINTED.some(
    (surface) => laid(surface)?.class === 'paint' && option.scheme[surface].state !== 'fixed',
  );
  if (!stays || !isPainted) return [];
  return [{ code: project.kitchen.region === 'us' ? 'lead-us' : 'lead' }];
}

function glare({ kitchen }: Project, laid: Laid, assessment: Assessment | null): Caution[] {
  const polished = COUNTERS.filter((surface) => (laid(surface)?.gloss_gu ?? 0) >= POLISHED_GU);
  const walls = [...new Set(kitchen.openings.map(({ wall }) => wall))];
  if (polished.length === 0 || walls.length === 0) return [];
  const dark = assessment?.surfaces.some((s) => polished.includes(s.surface) && s.average.lrv < DARK_LRV) ?? false;
  return [{ code: 'glare', walls, dark }];
}

/** A mitred edge is folded and makes a thin top look thick. */
function load({ kitchen }: Project, laid: Laid): Caution[] {
  const { thickness, edge } = kitchen.counter;
  if (thickness < HEAVY_MM || edge === 'mitred') return [];
  if (!COUNTERS.some((surface) => DUSTY.includes(laid(surface)?.class ?? 'paint'))) return [];
  const weight_kg_m2 = KG_M2_PER_MM * thickness;
  return [{ code: 'load', thickness_mm: thickness, weight_kg_m2, region: kitchen.region }];
}

/** Edges that differ by too little for people who see badly: 20 LRV, and 30 where one of them uses the kitchen. */
function weakEdges(project: Project, option: Option, assessment: Assessment | null): readonly Caution[] {
  if (!assessment) return [];
  const isForUser = project.users?.includes('low-vision') ?? false;
  const there = new Map(assessment.surfaces.map((one) => [one.surface, one.average.lrv]));
  const finishOf = (surface: SurfaceId) => (there.has(surface) ? option.scheme[surface].finish : undefined);
  // The same two finishes are one caution, wherever they meet.
  const found = new Map<string, { one: Set<SurfaceId>; other: Set<SurfaceId>; lrv: readonly [number, number] }>();
  for (const { edge } of edgesBetween(finishOf, true)) {
    const lrv = [there.get(edge[0])!, there.get(edge[1])!] as const;
    const severity = edgeSeverity(...lrv);
    if (severity === null || (severity === 'note' && !isForUser)) continue;
    const key = JSON.stringify(edge.map(finishOf));
    const known = found.get(key) ?? { one: new Set(), other: new Set(), lrv };
    known.one.add(edge[0]);
    known.other.add(edge[1]);
    found.set(key, known);
  }
  return [...found.values()].map(({ one, other, lrv }) => ({
    code: 'low-vision',
    surfaces: [[...one], [...other]],
    stepLrv: Math.abs(lrv[0] - lrv[1]),
    contrast: bowmanSapolinski(...lrv),
    isForUser,
  }));
}
