import { surfaceName } from '../../engine/judge/surface-words';
import type { LightReport } from '../../kitchen/study/light-report';
import { fixed, labText, percent, temperatureText } from './figures';

/** Tint sources named per surface; the rest is too small to matter. */
const MOST_SOURCES = 3;

/** A light report in plain text: lux on every surface, its color in place, and which surfaces lend it their tint. */
export function lightText({ project, option, setting, surfaces }: LightReport): string {
  return [
    `${project}, option ${option}, setting ${setting.id} (${temperatureText(setting.cct_k, setting.duv)})`,
    '',
    ...surfaces.flatMap(({ surface, facing, lux_mean, lux_min, installed, from }) => {
      const tint = from
        .slice(0, MOST_SOURCES)
        .map((one) => `${surfaceName(one.source).toLowerCase()} ${percent(one.share)}`);
      return [
        `${surfaceName(surface)} (${facing}): ${fixed(lux_mean, 0)} lx on average, ${fixed(lux_min, 0)} lx at the darkest place`,
        `    in place: ${labText(installed)}${tint.length > 0 ? `; tint from ${tint.join(', ')}` : ''}`,
      ];
    }),
  ].join('\n');
}
