import { relationsOf } from '../engine/judge/relations/relations-of';
import type { LookRelations } from '../engine/judge/relations/types';
import { type Result, success } from '../engine/result';
import { type CarriedLook, carryOverInSteps, type GivenLook } from '../kitchen/carry/carry-over';
import { lookOfOption } from '../kitchen/carry/look-of-option';
import { lookScheme } from '../kitchen/carry/look-scheme';
import { relationScheme } from '../kitchen/carry/relation-scheme';
import { judgeTried } from '../kitchen/study/judge-tried';
import { optionById } from '../model/commands';
import type { CopiedLook } from '../model/look';
import type { Job } from './job';
import type { CarryAsked } from './questions';

/** What was asked last: whoever asks for another look waits for that one only. */
let latest: CarryAsked | null = null;

/**
 * A look carried over in the room and the light on screen, in slices; why not, where a color cannot be laid. Null once something newer
 * is shown or asked.
 */
export function* carryLook(asked: CarryAsked, job: Job): Generator<undefined, Result<CarriedLook> | null> {
  const { look, option, asIs } = asked;
  latest = asked;
  const given = typeof look === 'string' ? ofOption(look, job) : success({ look });
  if (!given.ok) return given;
  yield;
  const { show, room, setting } = job;
  const steps = carryOverInSteps(given.value, show.project, option, room.study, setting, { asIs });
  for (;;) {
    if (job.stale() || latest !== asked) return null;
    const step = steps.next();
    if (step.done) return step.value;
    yield;
  }
}

function ofOption(id: string, { show, room, setting }: Job): Result<GivenLook> {
  const { project } = show;
  const look = lookOfOption(project, id);
  if (!look.ok) return look;
  const input = judgeTried(project, id, room.study, setting);
  if (!input.ok) return input;
  return success({ look: look.value, option: optionById(project, id)!, seen: relationScheme(project, input.value) });
}

export function relateLook(look: CopiedLook): LookRelations | null {
  const scheme = lookScheme(look);
  return scheme.ok ? relationsOf(scheme.value) : null;
}
