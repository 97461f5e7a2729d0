import type { Warning } from '../../engine/judge/assessment';
import { judge } from '../../engine/judge/judge';
import { type Cause, causesOf, type NotAsThere } from '../../engine/judge/relations/causes';
import { checkInSteps } from '../../engine/judge/relations/check-relations';
import { drawnSchemes } from '../../engine/judge/relations/draw-schemes';
import { counted } from '../../engine/judge/relations/follows';
import { inPlace } from '../../engine/judge/relations/in-place';
import { relationsInSteps } from '../../engine/judge/relations/relations-of';
import { type RelationScheme, seenScheme } from '../../engine/judge/relations/seen-scheme';
import type { InPlace, LeftOut, RelationCheck } from '../../engine/judge/relations/types';
import { isRepairable } from '../../engine/judge/repairs/repairable';
import { failure, type Result, success } from '../../engine/result';
import type { SurfaceId } from '../../engine/surface';
import { type Command, optionById } from '../../model/commands';
import type { CopiedLook } from '../../model/look';
import type { Option, Project } from '../../model/project';
import { presentSurfaces } from '../present-surfaces';
import { judgeTried } from '../study/judge-tried';
import type { RoomStudy } from '../study/room-study';
import type { SettingLight } from '../study/setting-light';
import { type KeptSurface, type LaidLook, type LaidSurfaceOfLook, layLook } from './lay-look';
import { lookScheme } from './look-scheme';
import type { RelationRepair } from './relation-repair';
import { relationScheme } from './relation-scheme';
import { repairRelations } from './repair-relations';

/** A look, and the scheme to take its relations from where that is known better than the look tells. */
export interface GivenLook {
  readonly look: CopiedLook;
  /** As its own kitchen shows it. */
  readonly seen?: RelationScheme;
  /** The option of the same project that it is. */
  readonly option?: Option;
}

/** A relation that breaks as samples, and how it stands in place. */
export interface BrokenRelation extends RelationCheck {
  /** In the light of the setting; null where no reading says so, and for edges, which are of samples alone. */
  readonly in_place: InPlace | null;
}

export interface CarriedLook {
  readonly look: { readonly id: string; readonly name: string; readonly source: CopiedLook['source'] };
  readonly project: string;
  readonly option: string;
  readonly setting: string;
  /** Whether the look was laid on the option, or the option judged as it stands. */
  readonly as_is: boolean;
  /** Where the look's shares of the view come from. */
  readonly views: 'own' | 'typical';
  readonly holds: readonly RelationCheck[];
  readonly breaks: readonly BrokenRelation[];
  /** Why they break, one entry for each surface that is not as in the look; every one that breaks stands under one of them. */
  readonly causes: readonly Cause[];
  readonly cannot_tell: readonly RelationCheck[];
  /** How many of each count: a step that follows from others of its list does not. */
  readonly counts: { readonly holds: number; readonly breaks: number; readonly cannot_tell: number };
  /** What the look seems to have, but is not known well enough for. */
  readonly left_out: readonly LeftOut[];
  readonly laid: readonly LaidSurfaceOfLook[];
  readonly kept: readonly KeptSurface[];
  /** What the findings ask of the carried look in its setting. */
  readonly warnings: readonly Warning[];
  readonly repairs: readonly RelationRepair[];
  /** Lay the look on the option. */
  readonly commands: readonly Command[];
}

export interface CarryOptions {
  readonly asIs?: boolean;
}

/**
 * Carries a look over to an option in a room that is studied: lays it on what is not fixed or ordered (unless `asIs`), tells
 * which of its relations hold there and which break and by how much, and which one or two changes repair most of
 * them; each repair was run as samples and as installed in the setting. `study` must be under the setting's own outdoors.
 */
export function carryOver(...given: Parameters<typeof carryOverInSteps>): Result<CarriedLook> {
  const steps = carryOverInSteps(...given);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** The same in slices. */
export function* carryOverInSteps(
  given: GivenLook,
  project: Project,
  optionId: string,
  study: RoomStudy,
  setting: SettingLight,
  { asIs = false }: CarryOptions = {},
): Generator<undefined, Result<CarriedLook>> {
  const option = optionById(project, optionId);
  if (!option)
    return failure({ code: 'unknown-option', text: `There is no option "${optionId}".`, remedy: 'Name another.' });
  const scheme = lookScheme(given.look);
  if (!scheme.ok) return scheme;
  const laid = asIs ? null : layLook(scheme.value, project, option, given.option);
  if (laid && !laid.ok) return laid;
  const there = laid?.value.project ?? project;
  const input = judgeTried(there, optionId, study, setting);
  if (!input.ok) return input;
  yield;
  const seen = given.seen ?? scheme.value;
  const { relations, left_out } = yield* relationsInSteps(seen);
  yield;
  const here = seenScheme(relationScheme(there, input.value));
  const drawn = drawnSchemes(here);
  yield;
  const checks = yield* checkInSteps(relations, here, drawn);
  const standing = (stands: RelationCheck['stands']) => checks.filter((check) => check.stands === stands);
  const [holds, cannot_tell] = [standing('holds'), standing('cannot-tell')];
  const places = inPlace(standing('breaks'), here);
  const breaks = standing('breaks').map((check) => ({ ...check, in_place: places.get(check.relation.id) ?? null }));
  const causes = causesOf(seenScheme(seen), here, breaks, whyOf(laid?.ok ? laid.value : null, option));
  yield;
  const { warnings } = judge(input.value);
  yield;
  const present = presentSurfaces(study.room);
  const { id, name, source } = given.look;
  const repairing = { project: there, option: optionId, scheme: here, drawn, checks, warnings, study, setting };
  const repairs = breaks.length > 0 ? yield* repairRelations(repairing) : [];
  return success({
    look: { id, name, source },
    project: project.id,
    option: optionId,
    setting: setting.id,
    as_is: asIs,
    views: given.seen && given.seen.input.overviews.length > 0 ? 'own' : 'typical',
    holds,
    breaks,
    causes,
    cannot_tell,
    counts: {
      holds: countOf(holds),
      breaks: causes.reduce((sum, { count }) => sum + count, 0),
      cannot_tell: countOf(cannot_tell),
    },
    left_out,
    laid: (laid?.value.laid ?? []).filter(({ surface }) => present.includes(surface)),
    kept: (laid?.value.kept ?? []).filter(({ surface }) => present.includes(surface)),
    warnings: warnings.filter(isRepairable),
    repairs,
    commands: laid?.value.commands ?? [],
  });
}

const countOf = (checks: readonly RelationCheck[]): number => counted(checks, ({ relation }) => relation).length;

/** Why a surface of the option is not as in the look. */
const whyOf =
  (laid: LaidLook | null, { scheme }: Option) =>
  (surface: SurfaceId): NotAsThere => {
    if (scheme[surface].state === 'fixed' || scheme[surface].state === 'ordered') return 'stays';
    const how = laid?.laid.find((one) => one.surface === surface)?.how;
    return how === 'none' ? 'left' : how === 'nearest' ? 'stand-in' : 'other';
  };
