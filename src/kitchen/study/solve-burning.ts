import { isSameSpectrum } from '../../engine/light/light-mix';
import { GROUPS } from '../../model/project';
import type { RoomBasis } from './room-study';
import type { LaidScheme } from './scheme';
import type { SettingLight } from './setting-light';
import { beginScheme, type SolvedScheme, solveDirect } from './solved-scheme';

/** Lights of one spectrum that burn, and what they send straight to each patch together, lx. */
interface Burning {
  readonly group: number;
  readonly direct: Float32Array;
}

const burningOf = new WeakMap<SettingLight, WeakMap<RoomBasis['transport'], readonly Burning[]>>();

/**
 * A scheme solved for what burns in a setting and nothing else, for a judgment that is made once: lights of one spectrum are solved
 * together, as light adds up, and those that send nothing (the sun of an overcast sky) not at all. The first of such a set of
 * groups holds the solution of all, per unit of its own level; within the tolerance of the solver the same light as group by group.
 */
export function solveBurning(basis: RoomBasis, scheme: LaidScheme, setting: SettingLight): SolvedScheme {
  const solved = beginScheme(scheme, GROUPS.length);
  for (const { group, direct } of burningIn(basis, setting)) {
    solved.radiosity[group] = solveDirect(basis, scheme, direct);
  }
  return solved;
}

function burningIn({ transport }: RoomBasis, setting: SettingLight): readonly Burning[] {
  const known = burningOf.get(setting) ?? new WeakMap<RoomBasis['transport'], readonly Burning[]>();
  burningOf.set(setting, known);
  const burning = known.get(transport) ?? addUp(transport.direct, setting);
  known.set(transport, burning);
  return burning;
}

function addUp(directOf: readonly Float32Array[], { levels, spectra }: SettingLight): Burning[] {
  const burning: Burning[] = [];
  levels.forEach((level, group) => {
    const direct = directOf[group]!;
    if (level <= 0 || direct.every((lx) => lx === 0)) return;
    const alike = burning.find((one) => isSameSpectrum(spectra[one.group]!, spectra[group]!));
    if (!alike) burning.push({ group, direct: Float32Array.from(direct) });
    else for (let i = 0; i < direct.length; i++) alike.direct[i]! += (level / levels[alike.group]!) * direct[i]!;
  });
  return burning;
}
