import type { Warning } from '../../engine/judge/assessment';
import { judge } from '../../engine/judge/judge';
import { checkRelations } from '../../engine/judge/relations/check-relations';
import { relationsOf } from '../../engine/judge/relations/relations-of';
import type { RelationScheme } from '../../engine/judge/relations/seen-scheme';
import type { LeftOut, RelationCheck } from '../../engine/judge/relations/types';
import { isRepairable } from '../../engine/judge/repairs/repairable';
import { failure, type Result, success } from '../../engine/result';
import { type Command, optionById } from '../../model/commands';
import type { CopiedLook } from '../../model/look';
import type { Option, Project } from '../../model/project';
import { presentSurfaces } from '../present-surfaces';
import { judgeTried } from '../study/judge-tried';
import type { RoomStudy } from '../study/room-study';
import type { SettingLight } from '../study/setting-light';
import { type KeptSurface, type LaidSurfaceOfLook, layLook } from './lay-look';
import { lookScheme } from './look-scheme';
import { relationScheme } from './relation-scheme';
import { type RelationRepair, repairRelations } from './repair-relations';

/** A look, and the scheme to take its relations from where that is known better than the look tells. */
export interface GivenLook {
  readonly look: CopiedLook;
  /** As its own kitchen shows it. */
  readonly seen?: RelationScheme;
  /** The option of the same project that it is. */
  readonly option?: Option;
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
  readonly breaks: readonly RelationCheck[];
  readonly cannot_tell: readonly RelationCheck[];
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
  const { relations, left_out } = relationsOf(given.seen ?? scheme.value);
  const checks = checkRelations(relations, relationScheme(there, input.value));
  yield;
  const standing = (stands: RelationCheck['stands']) => checks.filter((check) => check.stands === stands);
  const breaks = standing('breaks');
  const { warnings } = judge(input.value);
  const present = presentSurfaces(study.room);
  const { id, name, source } = given.look;
  const repairs =
    breaks.length > 0
      ? yield* repairRelations({
          project: there,
          option: optionId,
          input: input.value,
          checks,
          warnings,
          study,
          setting,
        })
      : [];
  return success({
    look: { id, name, source },
    project: project.id,
    option: optionId,
    setting: setting.id,
    as_is: asIs,
    views: given.seen && given.seen.input.overviews.length > 0 ? 'own' : 'typical',
    holds: standing('holds'),
    breaks,
    cannot_tell: standing('cannot-tell'),
    left_out,
    laid: (laid?.value.laid ?? []).filter(({ surface }) => present.includes(surface)),
    kept: (laid?.value.kept ?? []).filter(({ surface }) => present.includes(surface)),
    warnings: warnings.filter(isRepairable),
    repairs,
    commands: laid?.value.commands ?? [],
  });
}
