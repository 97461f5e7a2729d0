import { type TintSource, tintSources } from '../../engine/light/tint-source';
import type { TintFrom } from './readings';
import type { RoomStudy } from './room-study';
import { adoptedWhite, type SettingLight } from './setting-light';
import type { SolvedScheme } from './solved-scheme';

/** A source with a smaller share of a tint is not worth naming. */
const LEAST_SHARE = 0.02;

/** Works out where each surface's tint comes from, yielding after each surface tried; by surface-light index. */
export function* findTints(
  study: RoomStudy,
  solved: SolvedScheme,
  setting: SettingLight,
): Generator<number, readonly TintFrom[]> {
  const scheme = {
    reflectance: solved.scheme.reflectance,
    spectra: setting.spectra,
    levels: setting.levels,
    radiosity: solved.radiosity,
    adoptedWhite: adoptedWhite(setting, study.worktopDirect),
  };
  const sources = yield* tintSources(study.transport, scheme, study.surfaceLights);
  return sources.map((list) => named(study, list));
}

/** The same at once, for the command line and tests. */
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
