import { lightShare } from '../../engine/light/light-mix';
import { type Result, success } from '../../engine/result';
import type { Facing, SurfaceId } from '../../engine/surface';
import type { Project } from '../../model/project';
import { studyOption } from './assess-option';
import { judgeInput } from './readings';
import { tintsOf } from './tints';

/** Light and color of every surface in place, for `upstand light`. Field names are the file format's. */
export interface LightReport {
  readonly project: string;
  readonly option: string;
  readonly setting: { readonly id: string; readonly cct_k: number | null; readonly duv: number | null };
  readonly surfaces: readonly {
    readonly surface: SurfaceId;
    readonly facing: Facing;
    readonly lux_mean: number;
    readonly lux_min: number;
    readonly installed: readonly [l: number, a: number, b: number];
    /** Share of the tint that the mix of lights brings; `from` names the rest. */
    readonly from_light: number;
    readonly from: readonly { readonly source: SurfaceId; readonly share: number }[];
  }[];
}

/** `lux_min` is the least direct light of the surface plus its mean indirect light. */
export function lightReport(project: Project, optionId: string, settingId: string): Result<LightReport> {
  const found = studyOption(project, optionId, settingId);
  if (!found.ok) return found;
  const { study, solved, setting } = found.value;
  const input = judgeInput(project, study, solved, setting, tintsOf(study, solved, setting));
  return success({
    project: input.project,
    option: input.option,
    setting: input.setting,
    surfaces: input.surfaces.flatMap(({ surface, installed }) =>
      installed.map(({ facing, illuminanceLx, average, placeWhite, lightWhite, tintFrom }) => {
        const light = study.surfaceLights.find(
          (candidate) => study.room.surfaces[candidate.surface] === surface && candidate.facing === facing,
        )!;
        const below = setting.levels.map((level, g) => level * (light.direct[g]! - light.directMin[g]!));
        return {
          surface,
          facing,
          lux_mean: illuminanceLx,
          lux_min: illuminanceLx - below.reduce((sum, lx) => sum + lx, 0),
          installed: [average.l, average.a, average.b] as const,
          from_light: lightShare(placeWhite, lightWhite),
          from: (tintFrom ?? []).map(({ surface: source, share }) => ({ source, share })),
        };
      }),
    ),
  });
}
