import { averageComponent } from '../../engine/finish/component';
import type { LaidFinish } from '../../engine/finish/types';
import { BAND_COUNT, bandMeansFromReflectance } from '../../engine/light/bands';
import { failure, type Result, success } from '../../engine/result';
import type { ReflectanceSpd } from '../../engine/spectrum/types';
import type { SurfaceId } from '../../engine/surface';
import { NO_FINISH } from '../../model/empty-surface';
import type { Finish, Placement, Project } from '../../model/project';
import { layFinish } from './lay-finish';
import { type KeyedPattern, patternSpecFor } from './pattern-spec';

/** One surface of a scheme with everything worked out that does not depend on light. */
export interface LaidSurface {
  /** 'stand': what the samples of a sample stand stand before. */
  readonly surface: SurfaceId | 'stand';
  readonly placement: Placement;
  readonly finish: LaidFinish;
  /** Area mean of the components, mixed in linear light. */
  readonly average: ReflectanceSpd;
  readonly pattern: KeyedPattern | null;
}

/** A metal with brush lines, which mirrors unlike along and across them. */
export const isBrushed = ({ finish, pattern }: LaidSurface): boolean =>
  finish.class === 'metal' && pattern?.spec.pattern.kind === 'brushed';

/** A scheme ready for light: its surfaces in the room's order, and their mean reflectance in bands. */
export interface LaidScheme {
  readonly option: string;
  readonly surfaces: readonly LaidSurface[];
  /** surfaces x BAND_COUNT */
  readonly reflectance: Float32Array;
}

/** Lays every finish of an option; the first that cannot be laid is the problem, with its place. */
export function layScheme(project: Project, optionId: string, order: readonly SurfaceId[]): Result<LaidScheme> {
  const option = project.options.find((candidate) => candidate.id === optionId);
  if (!option) {
    return failure({
      code: 'unknown-option',
      text: `There is no option ${optionId} in this project.`,
      at: { path: 'options' },
      remedy: `Choose one of: ${project.options.map(({ id }) => id).join(', ')}.`,
    });
  }
  const library = libraryOf(project);
  const surfaces: LaidSurface[] = [];
  const reflectance = new Float32Array(order.length * BAND_COUNT);
  for (const [index, surface] of order.entries()) {
    const placement = option.scheme[surface];
    const laid = layFinish(library, placement);
    if (!laid.ok) return failure({ ...laid.problem, at: { path: `options.${optionId}.scheme.${surface}` } });
    const average = averageComponent(laid.value.components).spectrum;
    reflectance.set(bandMeansFromReflectance(average), index * BAND_COUNT);
    const pattern = patternSpecFor(library.get(placement.finish)!, placement, laid.value);
    surfaces.push({ surface, placement, finish: laid.value, average, pattern });
  }
  return success({ option: optionId, surfaces, reflectance });
}

const libraries = new WeakMap<readonly Finish[], ReadonlyMap<string, Finish>>();

/** The library by id, with what stands in where nothing is chosen; one map per library array, which is immutable. */
export function libraryOf(project: Pick<Project, 'library'>): ReadonlyMap<string, Finish> {
  let map = libraries.get(project.library);
  if (!map) {
    map = new Map([NO_FINISH, ...project.library].map((finish) => [finish.id, finish]));
    libraries.set(project.library, map);
  }
  return map;
}
