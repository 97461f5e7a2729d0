import type { SurfaceId } from '../../surface';
import { edgeSeverity, edgesBetween } from '../edges';
import { PAIR } from '../pair';
import { gravity } from '../pair-groups';
import { isNearWhite } from '../sample-color';
import { SEVERITY_RANK } from '../severity';
import type { InPlace, InPlaceFault } from './in-place';
import { type MaterialPoint, materialPoints } from './materials';
import { type HeldFinish, mainOf, type Relation, relationsOf } from './relations';
import type { Candidate, HeldSurface, RankStep, ShortlistGroup, ShortlistPlace } from './types';
import type { Wish } from './wish';
import { isMet, wishLevel } from './wishes';

/** An edge that people have to find, between the candidate and a settled surface. */
export interface CandidateEdge {
  readonly surface: SurfaceId;
  /** Points of light reflectance. */
  readonly points: number;
  /** 0 easy to see, 1 soft, 2 hard to see. */
  readonly level: number;
}

/** Everything that the order of a shortlist rests on, for one candidate. */
export interface Standing {
  readonly candidate: Candidate;
  readonly relations: readonly Relation[];
  /** What speaks against its pattern or wood. */
  readonly materials: readonly MaterialPoint[];
  /** The gravest of what turns it down, as a sample or else in its place; null where nothing does. */
  readonly rejectedBy: Relation | FaultInLight | null;
  /** What it shows in its place, setting by setting; none: it was judged as a sample. */
  readonly places: readonly InPlace[];
  readonly group: ShortlistGroup;
  /** Settled finishes it agrees with in the way that ranks it. */
  readonly agrees: Agreement;
  /** The settled finish whose lightness is nearest, main color to main color; null where nothing is settled. */
  readonly nearest: { readonly held: HeldFinish; readonly dL: number } | null;
  readonly edges: readonly CandidateEdge[];
  /** Wish by wish, in their order. */
  readonly met: readonly (boolean | null)[];
  /** By step, smaller is earlier; compared number by number. */
  readonly levels: { readonly [S in RankStep]: readonly number[] };
}

/** A fault in one light. */
export interface FaultInLight {
  readonly fault: InPlaceFault;
  readonly place: InPlace;
}

export interface Agreement {
  readonly kind: AgreementKind;
  readonly with: readonly Relation[];
  /** The same finish lies there already. */
  readonly same: readonly SurfaceId[];
}

export type AgreementKind = 'agrees' | 'echoes' | 'matches' | 'none';
const AGREEMENT: readonly AgreementKind[] = ['agrees', 'echoes', 'matches', 'none'];

/** How a candidate stands to what is settled, in its place. */
export function standingOf(
  candidate: Candidate,
  held: readonly HeldSurface[],
  finishes: readonly HeldFinish[],
  place: ShortlistPlace,
  around: readonly HeldSurface[],
): Standing {
  if (candidate.notMade !== null) return unfit(candidate);
  const { finish, colors } = candidate;
  const relations = relationsOf(finish.id, colors, finishes);
  const rejecting = relations.filter(({ bearing }) => bearing === 'rejects');
  const hasPart = relations.some(({ bearing }) => bearing === 'part');
  const hasMay = relations.some(({ bearing }) => bearing === 'may');
  const materials = materialPoints(candidate, held, place.surfaces);
  const edges = edgesTo(candidate, held, place.surfaces);
  const agrees = agreementOf(candidate, relations.filter(isNoNearWood(materials)), finishes, edges);
  const nearest = nearestOf(candidate, finishes);
  const wished = wishedOf(candidate, place.wishes, around);
  const [main] = [colors[mainOf(colors)]!];
  return {
    candidate,
    relations,
    materials,
    rejectedBy: rejecting.length === 0 ? null : rejecting.reduce((worst, r) => (weigh(r) > weigh(worst) ? r : worst)),
    places: [],
    group: hasPart ? 'part' : hasMay ? 'compare' : 'clear',
    agrees,
    nearest,
    edges,
    met: wished.met,
    levels: {
      clashes: [hasPart ? 1 : 0, hasMay ? 1 : 0, materials.length > 0 ? 1 : 0, candidate.isTooFlat ? 1 : 0],
      agreement: [AGREEMENT.indexOf(agrees.kind), -new Set(agrees.with.map(({ held }) => held)).size],
      contrast: [
        Math.max(0, ...edges.map(({ level }) => level)),
        nearest && Math.abs(nearest.dL) < PAIR.clearStep && agrees.kind === 'none' ? 1 : 0,
      ],
      wishes: wished.levels,
      color: [-main.lab.l, main.lab.b, main.lab.a],
    },
  };
}

/** Woods that nearly match echo each other only by numbers: that is no agreement. */
const isNoNearWood =
  (materials: readonly MaterialPoint[]) =>
  ({ held }: Relation): boolean =>
    !materials.some(({ kind, finishes }) => kind === 'wood' && finishes.includes(held.finish));

const wishedOf = (candidate: Candidate, wishes: readonly Wish[], around: readonly HeldSurface[]) => {
  const met = wishes.map((wish) => isMet(wish, candidate, around));
  return { met, levels: met.map(wishLevel) };
};

/** The same candidate under other wishes: nothing else of it depends on them. */
export function withWishes(standing: Standing, wishes: readonly Wish[], around: readonly HeldSurface[]): Standing {
  if (standing.candidate.notMade !== null) return standing;
  const { met, levels } = wishedOf(standing.candidate, wishes, around);
  return { ...standing, met, levels: { ...standing.levels, wishes: levels } };
}

/** What is not made for the place is held against nothing. */
const unfit = (candidate: Candidate): Standing => ({
  candidate,
  relations: [],
  materials: [],
  rejectedBy: null,
  places: [],
  group: 'clear',
  agrees: NOTHING,
  nearest: null,
  edges: [],
  met: [],
  levels: { clashes: [], agreement: [], contrast: [], wishes: [], color: [] },
});

const NOTHING: Agreement = { kind: 'none', with: [], same: [] };

/** The same candidate once it was judged in its place: what only may be there ranks it with what only may be as a sample. */
export function withPlaces(standing: Standing, places: readonly InPlace[]): Standing {
  if (places.length === 0 || standing.rejectedBy) return standing;
  const told = places.map((place) => ({
    ...place,
    faults: place.faults.filter((fault) => fault.isFirm || !isKnown(standing, fault)),
  }));
  const faults = told.flatMap((place) => place.faults.map((fault) => ({ fault, place })));
  const firm = faults
    .filter(({ fault }) => fault.isFirm)
    .reduce<FaultInLight | null>((worst, one) => (worst && graveness(worst) >= graveness(one) ? worst : one), null);
  const [part, may, ...rest] = standing.levels.clashes;
  return {
    ...standing,
    places: told,
    rejectedBy: firm,
    group: standing.group === 'clear' && faults.length > 0 ? 'compare' : standing.group,
    levels: { ...standing.levels, clashes: [part!, faults.length > 0 ? 1 : may!, ...rest] },
  };
}

const graveness = ({ fault }: FaultInLight): number => SEVERITY_RANK[fault.pair.tintOff.severity ?? 'note'];

/** What may be in place may be as a sample, too: that is said already. */
const isKnown = ({ relations }: Standing, { pair: { a, b } }: InPlaceFault): boolean =>
  relations.some(
    ({ own, other, bearing }) => bearing === 'may' && own.key === a.color.key && other.key === b.color.key,
  );

const weigh = ({ judgment }: Relation): number =>
  gravity(judgment) + (judgment.severity ? SEVERITY_RANK[judgment.severity] : 0);

/**
 * Whites that agree come before hues that echo, these before a match: the order in which the trade asks. The finish of the far side of
 * an edge that one has to find agrees with nothing: the two would run into each other. Our judgment.
 */
function agreementOf(
  { finish, colors }: Candidate,
  relations: readonly Relation[],
  finishes: readonly HeldFinish[],
  edges: readonly CandidateEdge[],
): Agreement {
  const merges = edges.filter(({ level }) => level === 2).map(({ surface }) => surface);
  const same = finishes
    .filter((one) => one.finish === finish.id)
    .flatMap(({ surfaces }) => surfaces)
    .filter((surface) => !merges.includes(surface));
  // The same white agrees with itself, any other color matches.
  const sameKind: AgreementKind = isNearWhite(colors[mainOf(colors)]!) ? 'agrees' : 'matches';
  for (const kind of AGREEMENT) {
    const found = relations.filter(({ bearing, held }) => bearing === kind && (held.rejects || kind === 'echoes'));
    if (kind !== 'none' && (found.length > 0 || (same.length > 0 && kind === sameKind)))
      return { kind, with: found, same };
  }
  return { kind: 'none', with: [], same };
}

function edgesTo(
  { finish, lrv }: Candidate,
  held: readonly HeldSurface[],
  surfaces: readonly SurfaceId[],
): CandidateEdge[] {
  return besideEdges(finish.id, held, surfaces).map((beside) => {
    const severity = edgeSeverity(beside.lrv, lrv);
    const level = severity === null ? 0 : severity === 'note' ? 1 : 2;
    return { surface: beside.surface, points: Math.abs(beside.lrv - lrv), level };
  });
}

const beyondEdges = new WeakMap<
  readonly HeldSurface[],
  { readonly surfaces: readonly SurfaceId[]; readonly beside: readonly HeldSurface[] }
>();

/** What lies beyond the edges of the place; the same for all candidates that lie nowhere yet. */
function besideEdges(
  finish: string,
  held: readonly HeldSurface[],
  surfaces: readonly SurfaceId[],
): readonly HeldSurface[] {
  const isElsewhere = held.some((one) => one.finish.id === finish);
  const before = beyondEdges.get(held);
  if (!isElsewhere && before?.surfaces === surfaces) return before.beside;
  const onSurface = new Map(held.map((one) => [one.surface, one]));
  const finishOf = (surface: SurfaceId) => (surfaces.includes(surface) ? finish : onSurface.get(surface)?.finish.id);
  const found = edgesBetween(finishOf, false).flatMap(({ edge }) => {
    const far = edge.find((surface) => !surfaces.includes(surface));
    const there = far && onSurface.get(far);
    return there && edge.some((surface) => surfaces.includes(surface)) ? [there] : [];
  });
  const beside = [...new Set(found)];
  if (!isElsewhere) beyondEdges.set(held, { surfaces, beside });
  return beside;
}

function nearestOf({ colors }: Candidate, finishes: readonly HeldFinish[]): Standing['nearest'] {
  const own = colors[mainOf(colors)]!;
  let nearest: Standing['nearest'] = null;
  for (const held of finishes) {
    if (!held.rejects) continue;
    const dL = own.lab.l - held.colors[held.main]!.lab.l;
    if (nearest === null || Math.abs(dL) < Math.abs(nearest.dL)) nearest = { held, dL };
  }
  return nearest;
}
