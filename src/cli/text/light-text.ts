import { surfaceName } from '../../engine/judge/surface-words';
import type { LightReport } from '../../kitchen/study/light-report';
import { fixed, labText, percent, temperatureText } from './figures';

/** Tint sources named per surface; the rest is too small to matter. */
const MOST_SOURCES = 3;
/** Smaller parts of a tint are not worth naming. */
const LEAST_SHARE = 0.02;

/** A light report in plain text: lux on every surface, its color in place, and which surfaces lend it their tint. */
export function lightText({ project, option, setting, surfaces }: LightReport): string {
  return [
    `${project}, option ${option}, setting ${setting.id} (${temperatureText(setting.cct_k, setting.duv)})`,
    '',
    ...surfaces.flatMap(({ surface, facing, lux_mean, lux_min, installed, from_light, from }) => {
      const mix = { name: 'the mix of lights', share: from_light };
      const tint = [mix, ...from.map(({ source, share }) => ({ name: surfaceName(source).toLowerCase(), share }))]
        .filter(({ share }) => share >= LEAST_SHARE)
        .sort((one, other) => other.share - one.share)
        .slice(0, MOST_SOURCES)
        .map(({ name, share }) => `${name} ${percent(share)}`);
      return [
        `${surfaceName(surface)} (${facing}): ${fixed(lux_mean, 0)} lx on average, ` +
          `about ${fixed(lux_min, 0)} lx where least lamp or sky light falls`,
        `    in place: ${labText(installed)}${tint.length > 0 ? `; tint from ${tint.join(', ')}` : ''}`,
      ];
    }),
  ].join('\n');
}
