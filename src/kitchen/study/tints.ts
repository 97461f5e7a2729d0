import type { Lab } from '../../engine/color/types';
import type { TintScheme } from '../../engine/light/gray-surfaces';
import { lightWhites } from '../../engine/light/light-mix';
import { type TintSource, tintSources } from '../../engine/light/tint-source';
import type { SurfaceId } from '../../engine/surface';
import type { RoomStudy } from './room-study';
import { adoptedWhite, type SettingLight } from './setting-light';
import type { SolvedScheme } from './solved-scheme';

export type TintFrom = readonly { readonly surface: SurfaceId; readonly share: number }[];

/** A source with a smaller share of a tint is not worth naming. */
const LEAST_SHARE = 0.02;

/** Works out where each surface's tint comes from, yielding after each surface tried; by surface-light index. */
export function* findTints(
  study: RoomStudy,
  solved: SolvedScheme,
  setting: SettingLight,
): Generator<number, readonly TintFrom[]> {
  const sources = yield* tintSources(study.transport, tintScheme(study, solved, setting), study.surfaceLights);
  return sources.map((list) => named(study, list));
}

/** What a perfect white reads in each place by the lights alone, every surface gray; by surface-light index. */
export const lightWhitesOf = (study: RoomStudy, solved: SolvedScheme, setting: SettingLight): readonly Lab<'D65-2'>[] =>
  lightWhites(study.transport, tintScheme(study, solved, setting), study.surfaceLights);

const tintScheme = (study: RoomStudy, solved: SolvedScheme, setting: SettingLight): TintScheme => ({
  reflectance: solved.scheme.reflectance,
  spectra: setting.spectra,
  levels: setting.levels,
  radiosity: solved.radiosity,
  adoptedWhite: adoptedWhite(setting, study.worktopLight),
});

/** `findTints` at once, for the command line and tests. */
export function tintsOf(study: RoomStudy, solved: SolvedScheme, setting: SettingLight): readonly TintFrom[] {
  const steps = findTints(study, solved, setting);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

const named = (study: RoomStudy, sources: readonly TintSource[]): TintFrom =>
  sources
    .filter(({ share }) => share >= LEAST_SHARE)
    .map(({ surface, share }) => ({ surface: study.room.surfaces[surface]!, share }));
