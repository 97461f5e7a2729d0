import { lightFromWords } from '../engine/lamp/light-words';
import { failure, type Result } from '../engine/result';
import { emissionOnGrid } from '../engine/spectrum/resample-emission';
import type { EmissionSpd } from '../engine/spectrum/types';
import type { Lamp, Project } from './project';

/** Resampled once for each lamp: documents are immutable, so the record itself is the key. */
const known = new WeakMap<Lamp, Result<EmissionSpd>>();

/**
 * The spectrum of a light as settings name it: the id of a lamp of the project, else words for a light (`lightFromWords`).
 * Relative power; the array may be shared: do not write to it. A light of neither kind is refused with what there is.
 */
export function lightOfProject(project: Pick<Project, 'lamps'>, light: string): Result<EmissionSpd> {
  const lamps = project.lamps ?? [];
  const own = lamps.find(({ id }) => id === light);
  if (own) return spectrumOfLamp(own);
  const found = lightFromWords(light);
  if (found.ok || lamps.length === 0) return found;
  const remedy = `${found.problem.remedy} The project's own lamps are ${lamps.map(({ id }) => id).join(', ')}.`;
  return failure({ ...found.problem, remedy });
}

/** The spectrum of a lamp of the project on the engine's grid, or why it cannot serve as a light. */
export function spectrumOfLamp(lamp: Lamp): Result<EmissionSpd> {
  const before = known.get(lamp);
  if (before) return before;
  const nm = lamp.power.map((_, i) => lamp.start_nm + i * lamp.step_nm);
  const made = emissionOnGrid({ nm, power: lamp.power });
  known.set(lamp, made);
  return made;
}
