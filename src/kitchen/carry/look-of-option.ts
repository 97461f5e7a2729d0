import type { LaidFinish } from '../../engine/finish/types';
import { failure, type Result, success } from '../../engine/result';
import { SURFACES } from '../../engine/surface';
import { optionById } from '../../model/commands';
import { isEmpty } from '../../model/empty-surface';
import { figureSizeMm } from '../../model/figure-size';
import type { CopiedLook, LookColor, LookSurface } from '../../model/look';
import type { Finish, Placement, Project } from '../../model/project';
import { layFinish } from '../study/lay-finish';
import { libraryOf } from '../study/scheme';

/** The look of an option, to be carried over: what lies on each surface that has a finish, grout included. */
export function lookOfOption(project: Project, optionId: string): Result<CopiedLook> {
  const option = optionById(project, optionId);
  if (!option) {
    return failure({
      code: 'unknown-option',
      text: `There is no option "${optionId}" in this project.`,
      at: { path: 'options' },
      remedy: `Name one of: ${project.options.map(({ id }) => id).join(', ')}.`,
    });
  }
  const library = libraryOf(project);
  const surfaces: LookSurface[] = [];
  for (const surface of SURFACES) {
    const placement = option.scheme[surface];
    if (isEmpty(placement)) continue;
    const laid = layFinish(library, placement);
    if (!laid.ok) return failure({ ...laid.problem, at: { path: `options.${optionId}.scheme.${surface}` } });
    const finish = library.get(placement.finish)!;
    const scale = figureSizeMm(finish);
    surfaces.push({
      surface,
      finish: finish.id,
      class: finish.class,
      gloss_gu: finish.gloss_gu,
      pattern: finish.pattern.kind,
      ...(scale !== null && { pattern_mm: scale }),
      colors: colorsOf(laid.value, finish, library, placement),
    });
  }
  return success({ id: option.id, name: option.name, source: 'scheme', surfaces });
}

function colorsOf(
  laid: LaidFinish,
  finish: Finish,
  library: ReadonlyMap<string, Finish>,
  { laying }: Placement,
): LookColor[] {
  const grout = laying.grout === undefined ? undefined : library.get(laying.grout);
  return laid.components.map(({ role, share, provenance }, i) => {
    const own = finish.components[i] ?? grout?.components[0];
    return { role, share, color: own!.color, provenance };
  });
}
