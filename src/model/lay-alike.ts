import type { Result } from '../engine/result';
import type { SurfaceId } from '../engine/surface';
import { applyCommand } from './apply-command';
import { familyOf, isLaidAlike } from './families';
import { layOnSurfaces } from './lay-on-surfaces';
import type { Option, Project } from './project';

/** A surface with those of its family that are laid like it: what changes when one lays something else there. */
export const laidAlike = ({ scheme }: Option, surface: SurfaceId): readonly SurfaceId[] =>
  familyOf(surface).filter((one) => isLaidAlike(scheme[one], scheme[surface]));

/** The project with another finish on some surfaces of an option; what is of the same material goes along, as by hand. */
export const withFinishOn = (
  project: Project,
  option: Option,
  surfaces: readonly SurfaceId[],
  finish: string,
): Result<Project> =>
  applyCommand(project, {
    kind: 'together',
    label: '',
    commands: layOnSurfaces(option, surfaces, finish),
  });
