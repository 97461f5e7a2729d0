import { differenceCiede2000 } from '../../engine/color/difference';
import { averageComponent } from '../../engine/finish/average';
import type { LaidFinish } from '../../engine/finish/types';
import { type Result, success } from '../../engine/result';
import { SURFACES, type SurfaceId } from '../../engine/surface';
import { applyCommand } from '../../model/apply-command';
import { type Command, optionById } from '../../model/commands';
import { isLaidAlike } from '../../model/families';
import { candidatesFor, isTooFlatFor } from '../../model/finish-candidates';
import { followerOf } from '../../model/lay-finish';
import { layingFor } from '../../model/laying';
import type { LookSurface } from '../../model/look';
import type { Finish, Option, Placement, Project } from '../../model/project';
import { layFinish } from '../study/lay-finish';
import { libraryOf } from '../study/scheme';
import type { LookScheme } from './look-scheme';

/**
 * What is farther from the look's color than this is no stand-in for it, CIEDE2000: about as far as a picture's color is known. Our
 * judgment, no source.
 */
export const STAND_IN_DE00 = 10;

/** A finish of the look's own class, or with a pattern as the look has, may be this much farther off. Our judgment. */
const KIN_SLACK_DE00 = 2;

/**
 * What became of one surface of the look. `same`: the finish itself; `nearest`: the nearest usual one of the library; `none`: nothing
 * near enough (`STAND_IN_DE00`), so what lay there stays, and relations are judged with that.
 */
export type LaidSurfaceOfLook = {
  readonly surface: SurfaceId;
  readonly finish: string;
  readonly label: string;
} & (
  | { readonly how: 'same'; readonly de00: 0 }
  /** How far the finish is from the look's color, CIEDE2000 of the area means. */
  | { readonly how: 'nearest'; readonly de00: number }
  /** The nearest all the same, and how far that is; null where nothing is usual there. */
  | { readonly how: 'none'; readonly de00: number | null; readonly nearest: string | null }
);

export interface KeptSurface {
  readonly surface: SurfaceId;
  readonly why: 'fixed' | 'ordered' | 'not-in-look';
  readonly label: string;
}

export interface LaidLook {
  readonly project: Project;
  readonly laid: readonly LaidSurfaceOfLook[];
  readonly kept: readonly KeptSurface[];
  /** Commands that lay it on the option, in a project that has the same option. */
  readonly commands: readonly Command[];
}

/** Lays a look on all of an option that is not fixed or ordered. `from`: the option it is, for the way things are laid. */
export function layLook(look: LookScheme, project: Project, option: Option, from?: Option): Result<LaidLook> {
  const library = libraryOf(project);
  const laid: LaidSurfaceOfLook[] = [];
  const kept: KeptSurface[] = [];
  const scheme: Partial<Record<SurfaceId, Placement>> = {};
  for (const surface of SURFACES) {
    const before = option.scheme[surface];
    const labelBefore = library.get(before.finish)?.label ?? before.finish;
    const wanted = look.of.get(surface);
    const wantedLaid = look.laid.get(surface);
    if (before.state === 'fixed' || before.state === 'ordered') {
      kept.push({ surface, why: before.state, label: labelBefore });
      continue;
    }
    if (!wanted || !wantedLaid) {
      kept.push({ surface, why: 'not-in-look', label: labelBefore });
      continue;
    }
    const found = finishFor(surface, wanted, wantedLaid, library, project.library);
    if (!found || found.de00 > STAND_IN_DE00) {
      const { de00 = null, finish = null } = found ?? {};
      laid.push({
        surface,
        how: 'none',
        finish: before.finish,
        label: labelBefore,
        de00,
        nearest: finish?.label ?? null,
      });
      continue;
    }
    const { finish, how } = found;
    const told = { surface, finish: finish.id, label: finish.label };
    laid.push(how === 'same' ? { ...told, how, de00: 0 } : { ...told, how, de00: found.de00 });
    const laidAs =
      how === 'same' && from?.scheme[surface].finish === finish.id
        ? from.scheme[surface].laying
        : layingFor(finish, surface, project.library, before.laying);
    // What lies there as the look has it already is no change.
    const isThere = finish.id === before.finish && (!from || isLaidAlike({ ...before, laying: laidAs }, before));
    if (!isThere) scheme[surface] = { ...before, finish: finish.id, laying: laidAs };
  }
  const commands = Object.keys(scheme).length > 0 ? laying(option, scheme, look) : [];
  const done = applyCommand(project, { kind: 'together', label: '', commands });
  if (!done.ok) return done;
  const { scheme: after } = optionById(done.value, option.id)!;
  // What the look does not name, but is of the same material as something it does, goes along, as by hand.
  const followed = (surface: SurfaceId) => after[surface].finish !== option.scheme[surface].finish;
  const along = kept.flatMap(({ surface, why }) => {
    const leader = laid.find((one) => followerOf(one.surface) === surface);
    return why === 'not-in-look' && leader && followed(surface) ? [{ ...leader, surface }] : [];
  });
  const stays = kept.filter(({ surface }) => along.every((one) => one.surface !== surface));
  return success({ project: done.value, laid: [...laid, ...along], kept: stays, commands });
}

/**
 * What follows another surface moves with it, so what the look names is laid after it: as the look has it, or, where that is nowhere
 * near, as it was.
 */
const laying = (
  option: Option,
  scheme: Partial<Record<SurfaceId, Placement>>,
  { of }: LookScheme,
): readonly Command[] =>
  SURFACES.flatMap((surface): Command[] => {
    const { state } = option.scheme[surface];
    const mayFollow = SURFACES.some((one) => followerOf(one) === surface) && (state === 'open' || state === 'decided');
    const wanted = scheme[surface] ?? (mayFollow && of.has(surface) ? option.scheme[surface] : undefined);
    if (!wanted) return [];
    return [{ kind: 'lay-finish', option: option.id, surface, finish: wanted.finish, laying: wanted.laying }];
  });

function finishFor(
  surface: SurfaceId,
  wanted: LookSurface,
  wantedLaid: LaidFinish,
  library: ReadonlyMap<string, Finish>,
  list: readonly Finish[],
): { readonly finish: Finish; readonly how: 'same' | 'nearest'; readonly de00: number } | null {
  const own = wanted.finish === undefined ? undefined : library.get(wanted.finish);
  if (own && isSame(own, wanted)) return { finish: own, how: 'same', de00: 0 };
  const hasPattern = wantedLaid.components.filter(({ role }) => role !== 'grout').length > 1;
  const ranked = candidatesFor(list, surface).flatMap((finish) => {
    const away = distance(finish, wantedLaid, library);
    if (away === null) return [];
    const isKin =
      finish.class === wanted.class || (wanted.class === undefined && finish.components.length > 1 === hasPattern);
    return [{ finish, de00: away.average, by: Math.max(away.average, away.main) + (isKin ? 0 : KIN_SLACK_DE00) }];
  });
  ranked.sort((a, b) => a.by - b.by || (a.finish.id < b.finish.id ? -1 : 1));
  const usual = ranked.find(({ finish, de00 }) => de00 <= STAND_IN_DE00 && !isTooFlatFor(finish, surface));
  const nearest = usual ?? ranked[0];
  return nearest ? { finish: nearest.finish, how: 'nearest', de00: nearest.de00 } : null;
}

/** A library of another project may have another finish by that id. */
const isSame = (own: Finish, wanted: LookSurface): boolean =>
  (wanted.class === undefined || own.class === wanted.class) &&
  own.components.every(({ color }, i) => JSON.stringify(color) === JSON.stringify(wanted.colors[i]?.color));

function distance(
  finish: Finish,
  wanted: LaidFinish,
  library: ReadonlyMap<string, Finish>,
): { readonly average: number; readonly main: number } | null {
  const laid = layFinish(library, { finish: finish.id, state: 'open', laying: { layout: 'plain' } });
  if (!laid.ok) return null;
  const average = differenceCiede2000(
    averageComponent(laid.value.components).labD65,
    averageComponent(wanted.components).labD65,
  );
  return { average, main: differenceCiede2000(mainLab(laid.value), mainLab(wanted)) };
}

const mainLab = ({ components }: LaidFinish) =>
  components.reduce((most, one) => (one.share > most.share ? one : most)).labD65;
