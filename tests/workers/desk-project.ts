import { expect } from 'vitest';
import type { Fixture } from '../../src/model/fixture';
import type { Project } from '../../src/model/project';
import { smallProject } from './small-project';

const strip: Fixture = {
  id: 'strip',
  kind: 'under-cabinet',
  group: 'under-cabinet',
  beam: { kind: 'wide' },
  run: 'front',
  width: 20,
  lumens_per_m: 600,
};
/** The small project with a strip under the cabinets, by day and in the evening. */
export const project: Project = {
  ...smallProject,
  kitchen: { ...smallProject.kitchen, fixtures: [...smallProject.kitchen.fixtures, strip] },
  settings: smallProject.settings.filter(({ id }) => id === 'day' || id === 'evening'),
};

/** The project with another finish on one surface of an option. */
export const laid = (surface: 'floor' | 'wall', finish: string, library = project.library): Project => ({
  ...project,
  library,
  options: project.options.map((option) =>
    option.id === 'our-floor'
      ? { ...option, scheme: { ...option.scheme, [surface]: { ...option.scheme[surface], finish } } }
      : option,
  ),
});

/**
 * The same with every number to 0.005: the gray room that tells a light's white is solved with all its lights at once to one
 * tolerance, and the desk's has daylight among them when the command line's has none.
 */
export const nearly = (value: unknown): unknown => {
  if (typeof value === 'number') return expect.closeTo(value, 2);
  if (Array.isArray(value)) return value.map(nearly);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, one]) => [name, nearly(one)]));
};
