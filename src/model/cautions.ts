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
  | { readonly code: 'glass' | 'acid' }
  /** Old paint may be disturbed; `built`: year of the house, null where it is not known. */
  | { readonly code: 'lead'; readonly region: Region; readonly built: number | null }
  | { readonly code: 'slip'; readonly polished: boolean }
  /** Dark polished counters that mirror windows on these walls to those who stand before them. */
  | { readonly code: 'glare'; readonly surfaces: readonly SurfaceId[]; readonly walls: readonly Wall[] }
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
/**
 * Year from which paint on the walls of a house holds no added lead any more: US 16 CFR 1303 (40 CFR 745 counts homes before 1978);
 * for the United Kingdom and Europe the rules that follow Directive 89/677/EEC, from memory.
 */
export const LEAD_UNTIL: { readonly [R in Region]: number } = { us: 1978, uk: 1992, eu: 1992 };
/** Tops of this thickness are heavy, mm (common practice, no source); stone weighs about 2.7 kg/m2 per mm (from memory). */
const HEAVY_MM = 30;
const KG_M2_PER_MM = 2.7;

const COUNTERS: readonly SurfaceId[] = ['counter', 'island-counter'];
/** What is cut to fit on site or nearly so. */
const CUT: readonly SurfaceId[] = [...COUNTERS, 'upstand', 'backsplash', 'floor'];
/** What is sanded before it is painted over. */
const PAINTED: readonly SurfaceId[] = ['wall', 'ceiling', 'frame', 'base-fronts', 'wall-fronts', 'tall-fronts'];

/** Windows that a counter mirrors to those who look over it, by their walls. */
export type MirroredWindows = ReadonlyMap<SurfaceId, readonly Wall[]>;

/**
 * What to heed before ordering, from what is laid and what the room holds. The standing lines are not among them. What rests on how light
 * finishes are waits for the assessment.
 */
export function cautionsFor(
  project: Project,
  option: Option,
  assessment: Assessment | null,
  mirrored: MirroredWindows,
): readonly Caution[] {
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
    ...glare(laid, assessment, mirrored),
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

/**
 * Old paint is disturbed where a house that is no new one is painted over: its year says that it is old, or, where that is not known,
 * something in it stays.
 */
function lead(project: Project, option: Option, laid: Laid): Caution[] {
  const { region } = project.kitchen;
  const built = project.year_built ?? null;
  const isOld =
    built === null ? Object.values(option.scheme).some(({ state }) => state === 'fixed') : built < LEAD_UNTIL[region];
  const isPainted = PAINTED.some(
    (surface) => laid(surface)?.class === 'paint' && option.scheme[surface].state !== 'fixed',
  );
  return isOld && isPainted ? [{ code: 'lead', region, built }] : [];
}

/** Only what is polished and dark shows a window more than itself, and only where the window is mirrored to somebody. */
function glare(laid: Laid, assessment: Assessment | null, mirrored: MirroredWindows): Caution[] {
  const surfaces = COUNTERS.filter((surface) => {
    const lrv = assessment?.surfaces.find((one) => one.surface === surface)?.average.lrv ?? null;
    const isPolished = (laid(surface)?.gloss_gu ?? 0) >= POLISHED_GU;
    return isPolished && lrv !== null && lrv < DARK_LRV && (mirrored.get(surface) ?? []).length > 0;
  });
  if (surfaces.length === 0) return [];
  return [{ code: 'glare', surfaces, walls: [...new Set(surfaces.flatMap((surface) => mirrored.get(surface)!))] }];
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
    const isMeant = finishOf(edge[0]) === finishOf(edge[1]);
    if (severity === null || ((severity === 'note' || isMeant) && !isForUser)) continue;
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
