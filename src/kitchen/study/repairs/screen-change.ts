import { averageComponent } from '../../../engine/finish/average';
import type { Assessment } from '../../../engine/judge/assessment';
import type { JudgedSurface, JudgeInput } from '../../../engine/judge/input';
import { judge } from '../../../engine/judge/judge';
import { layFinish } from '../lay-finish';
import { type PlaceColors, placeColors } from '../place-colors';
import type { RoomStudy } from '../room-study';
import { libraryOf } from '../scheme';
import { adoptedWhite, type SettingLight } from '../setting-light';
import type { SolvedScheme } from '../solved-scheme';
import { surfaceIrradiance } from '../surface-irradiance';
import type { LibraryChange } from './library-changes';

/** What reads the places of a scheme, by surface and facing. */
export type PlaceReaders = ReadonlyMap<string, PlaceColors>;

/** Readers of every lit place in the light of a solved scheme. */
export function placeReaders(study: RoomStudy, solved: SolvedScheme, setting: SettingLight): PlaceReaders {
  const white = adoptedWhite(setting, study.worktopLight);
  const lights = surfaceIrradiance(study, solved, setting);
  return new Map(
    study.surfaceLights.flatMap(({ surface, facing }, i) => {
      const { irradiance, lux } = lights[i]!;
      return lux > 0 ? [[`${study.room.surfaces[surface]}:${facing}`, placeColors(irradiance, white)] as const] : [];
    }),
  );
}

/**
 * Findings after a change, nearly: samples as they would be, and in place what the new finish reads in the light there is, without
 * what it would make of that light. Takes a tenth of the time of a trial, which has to follow.
 */
export function screenChange(
  input: JudgeInput,
  places: PlaceReaders,
  { project, option, surfaces }: Pick<LibraryChange, 'project' | 'option' | 'surfaces'>,
): Assessment {
  const library = libraryOf(project);
  const changed = input.surfaces.map((judged): JudgedSurface => {
    const laid = surfaces.includes(judged.surface) ? layFinish(library, option.scheme[judged.surface]) : null;
    if (!laid?.ok) return judged;
    const { components } = laid.value;
    const average = averageComponent(components).spectrum;
    const installed = judged.installed.map(({ variants: _, ...reading }) => {
      const read = places.get(`${judged.surface}:${reading.facing}`);
      return read
        ? { ...reading, components: components.map(({ spectrum }) => read(spectrum)), average: read(average) }
        : reading;
    });
    return { ...judged, finish: laid.value, installed };
  });
  return judge({ ...input, surfaces: changed });
}
