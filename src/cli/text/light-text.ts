import { surfaceName } from '../../engine/judge/surface-words';
import type { LightReport } from '../../kitchen/study/light-report';
import { fixed, labText, percent } from './figures';

/** A light report as a table in plain text: lux on every surface, its color in place, and where the light comes from. */
export function lightText(report: LightReport): string {
  return report.surfaces
    .flatMap(({ surface, facing, lux_mean, lux_min, installed, from }) => [
      `${surfaceName(surface)} (${facing}): ${fixed(lux_mean, 0)} lx on average, ${fixed(lux_min, 0)} lx at the darkest place`,
      `    in place ${labText(installed)}`,
      `    light from ${from.map(({ source, share }) => `${surfaceName(source).toLowerCase()} ${percent(share)}`).join(', ')}`,
    ])
    .join('\n');
}
