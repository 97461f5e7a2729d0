import { relationsOf } from '../engine/judge/relations/relations-of';
import type { LookRelations } from '../engine/judge/relations/types';
import { type CarriedLook, carryOverInSteps, type GivenLook } from '../kitchen/carry/carry-over';
import { lookOfOption } from '../kitchen/carry/look-of-option';
import { lookScheme } from '../kitchen/carry/look-scheme';
import { relationScheme } from '../kitchen/carry/relation-scheme';
import { judgeTried } from '../kitchen/study/judge-tried';
import { optionById } from '../model/commands';
import type { CopiedLook } from '../model/look';
import type { Job } from './job';
import type { CarryAsked } from './questions';

/** A look carried over in the room and the light on screen, in slices; null where a color cannot be laid. */
export function* carryLook({ look, option, asIs }: CarryAsked, job: Job): Generator<undefined, CarriedLook | null> {
  const given = typeof look === 'string' ? ofOption(look, job) : { look };
  if (!given) return null;
  yield;
  const { show, room, setting } = job;
  const carried = yield* carryOverInSteps(given, show.project, option, room.study, setting, { asIs });
  return carried.ok ? carried.value : null;
}

function ofOption(id: string, { show, room, setting }: Job): GivenLook | null {
  const { project } = show;
  const option = optionById(project, id);
  const look = lookOfOption(project, id);
  const input = judgeTried(project, id, room.study, setting);
  if (!option || !look.ok || !input.ok) return null;
  return { look: look.value, option, seen: relationScheme(project, input.value) };
}

export function relateLook(look: CopiedLook): LookRelations | null {
  const scheme = lookScheme(look);
  return scheme.ok ? relationsOf(scheme.value) : null;
}
