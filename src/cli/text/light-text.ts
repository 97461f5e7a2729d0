import { surfaceName } from '../../engine/judge/surface-words';
import type { LightReport, SurfaceInLight } from '../../kitchen/study/light-report';
import { fixed, labText, percent, temperatureText } from './figures';
import { sourceName } from './light-names';

/** Sources named per surface; the rest is too small to matter. */
const MOST_SOURCES = 4;
const MOST_TINTS = 3;
/** Smaller parts are not worth naming. */
const LEAST_SHARE = 0.02;

/** A light report in plain text: lux on every surface and where it comes from, its color in place, and whose color tints it. */
export function lightText({ project, option, setting, surfaces }: LightReport): string {
  return [
    `${project}, option ${option}, setting ${setting.id} (${temperatureText(setting.cct_k, setting.duv)})`,
    '',
    ...(surfaces.length === 0 ? ['No light reaches any surface in this setting.'] : surfaces.flatMap(surfaceLines)),
  ].join('\n');
}

function surfaceLines(found: SurfaceInLight): string[] {
  const { surface, facing, lux_mean, lux_min, installed, shift_de00, from, from_light, tint_from } = found;
  const sources = from
    .filter(({ share }) => share >= LEAST_SHARE)
    .slice(0, MOST_SOURCES)
    .map(({ source, kind, share }) => `${sourceName(source, kind)} ${percent(share)}`);
  const mix = { name: 'the mix of lights', share: from_light };
  const tint = [mix, ...tint_from.map(({ source, share }) => ({ name: surfaceName(source).toLowerCase(), share }))]
    .filter(({ share }) => share >= LEAST_SHARE)
    .sort((one, other) => other.share - one.share)
    .slice(0, MOST_TINTS)
    .map(({ name, share }) => `${name} ${percent(share)}`);
  return [
    `${surfaceName(surface)} (${facing}): ${fixed(lux_mean, 0)} lx on average, ${fixed(lux_min, 0)} lx at its darkest place`,
    `    light: ${sources.join(', ')}`,
    `    in place: ${labText(installed)}, ${fixed(shift_de00)} CIEDE2000 from the sample` +
      `${tint.length > 0 ? `; tint by the color of ${tint.join(', ')}` : ''}`,
  ];
}
