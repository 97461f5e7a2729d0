import { differenceCiede2000 } from '../../engine/color/difference';
import { averageComponent } from '../../engine/finish/component';
import { lightShare } from '../../engine/light/light-mix';
import { type Result, success } from '../../engine/result';
import type { Facing, SurfaceId } from '../../engine/surface';
import type { GroupId, Project } from '../../model/project';
import { type OptionStudy, studyOption } from './assess-option';
import { lightParts, sourceId } from './light-parts';
import { placeIrradiance } from './place-irradiance';
import { judgeInput } from './readings';
import { tintsOf } from './tints';

/** Light and color of every surface in place, for `upstand light`. Field names are the file format's. */
export interface LightReport {
  readonly project: string;
  readonly option: string;
  readonly setting: { readonly id: string; readonly cct_k: number | null; readonly duv: number | null };
  readonly surfaces: readonly SurfaceInLight[];
}

export interface SurfaceInLight {
  readonly surface: SurfaceId;
  readonly facing: Facing;
  readonly lux_mean: number;
  /** At its darkest place, bounced light included. */
  readonly lux_min: number;
  readonly installed: readonly [l: number, a: number, b: number];
  /** From the sample in daylight to that. */
  readonly shift_de00: number;
  /** Every part of the light, largest first; shares of the light sum to 1, those of the tint too where it has one. */
  readonly from: readonly {
    readonly source: GroupId | SurfaceId | 'stand';
    readonly kind: 'direct' | 'bounce';
    readonly share: number;
    readonly tint_share: number;
  }[];
  /** Share of the tint that the mix of lights brings; `tint_from` names the rest. */
  readonly from_light: number;
  /** Whose color makes the tint: what would go if a surface were gray (see `tintSources`). */
  readonly tint_from: readonly { readonly source: SurfaceId; readonly share: number }[];
  /** Mean irradiance, 380 to 780 nm in steps of 5 nm, W m-2 nm-1. */
  readonly spectrum: readonly number[];
}

/** Solves an option under a setting and reports the light on each surface that is lit. */
export function lightReport(project: Project, optionId: string, settingId: string): Result<LightReport> {
  const found = studyOption(project, optionId, settingId);
  if (!found.ok) return found;
  return success(lightOf(project, found.value));
}

/** The light on each surface that is lit, of an option that is solved. */
export function lightOf(project: Project, { study, solved, setting }: OptionStudy): LightReport {
  const input = judgeInput(project, study, solved, setting, tintsOf(study, solved, setting));
  return {
    project: input.project,
    option: input.option,
    setting: input.setting,
    surfaces: input.surfaces.flatMap(({ surface, finish, installed }) =>
      installed.map((reading): SurfaceInLight => {
        const { facing, average, tintFrom } = reading;
        const light = study.surfaceLights.find(
          (candidate) => study.room.surfaces[candidate.surface] === surface && candidate.facing === facing,
        )!;
        return {
          surface,
          facing,
          lux_mean: reading.illuminanceLx,
          lux_min: reading.luxMin,
          installed: [average.l, average.a, average.b],
          shift_de00: differenceCiede2000(averageComponent(finish.components).labD65, average),
          from: lightParts(light, study, solved, setting).map(({ from, share, tint_share }) => ({
            source: sourceId(from),
            kind: from.kind,
            share,
            tint_share,
          })),
          from_light: lightShare(reading.placeWhite, reading.lightWhite),
          tint_from: (tintFrom ?? []).map(({ surface: source, share }) => ({ source, share })),
          spectrum: [...placeIrradiance(light, solved, setting).irradiance],
        };
      }),
    ),
  };
}
