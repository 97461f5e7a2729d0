import { type Result, success } from '../engine/result';
import { GRID_START_NM, GRID_STEP_NM } from '../engine/spectrum/grid';
import { emissionOnGrid } from '../engine/spectrum/resample-emission';
import type { Lamp, Project } from './project';
import { lightOfProject } from './project-lights';

/** A spectrum as a file gives it, with the name it has there. */
export interface NamedSpectrum {
  readonly name: string;
  readonly nm: readonly number[];
  readonly power: readonly number[];
}

/** Steps that differ by less are even: files round their wavelengths, nm. */
const EVEN_NM = 1e-3;

/** Longer spectra go onto the engine's grid first, so that a project file stays readable. */
const MOST_VALUES = 1000;

/**
 * A spectrum as a lamp of the project: with an id that is free and no word for a light; the given numbers where their
 * steps are even, else those of the engine's grid. A lamp the project has already is given back as it is. Refused as by
 * `emissionOnGrid`, whose notices go along.
 */
export function newLamp(
  project: Pick<Project, 'lamps'>,
  { name, nm, power }: NamedSpectrum,
  note: string,
): Result<Lamp> {
  const onGrid = emissionOnGrid({ nm, power });
  if (!onGrid.ok) return onGrid;
  const step_nm = Number(((nm.at(-1)! - nm[0]!) / (nm.length - 1)).toFixed(6));
  const isEven = nm.every((one, i) => Math.abs(one - (nm[0]! + i * step_nm)) < EVEN_NM);
  const samples =
    isEven && nm.length <= MOST_VALUES
      ? { start_nm: nm[0]!, step_nm, power }
      : { start_nm: GRID_START_NM, step_nm: GRID_STEP_NM, power: [...onGrid.value] };
  const known = project.lamps?.find((lamp) => lamp.label === name && isSame(lamp, samples));
  return success(known ?? { id: freeId(project, name), label: name, ...samples, note }, onGrid.notices);
}

const isSame = (lamp: Lamp, { start_nm, step_nm, power }: Pick<Lamp, 'start_nm' | 'step_nm' | 'power'>): boolean =>
  lamp.start_nm === start_nm &&
  lamp.step_nm === step_nm &&
  lamp.power.length === power.length &&
  lamp.power.every((value, i) => value === power[i]);

/** The name in small letters and hyphens, numbered where it is taken or means a light already. */
function freeId(project: Pick<Project, 'lamps'>, name: string): string {
  const plain = name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, 40)
    .replace(/^-|-$/g, '');
  const stem = `lamp-${plain || 'own'}`.replace(/^lamp-lamp\b/, 'lamp');
  for (let count = 1; ; count++) {
    const id = count === 1 ? stem : `${stem}-${count}`;
    const taken = project.lamps?.some((lamp) => lamp.id === id) || lightOfProject({}, id).ok;
    if (!taken) return id;
  }
}
