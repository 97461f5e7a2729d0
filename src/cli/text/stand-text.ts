import type { StandPlace } from '../../kitchen/study/stand-reading';
import type { StandReport } from '../../kitchen/study/stand-report';
import { fixed, labText, percent, temperatureText } from './figures';
import { sourceName } from './light-names';

const MOST_SOURCES = 4;
/** Smaller parts are not worth naming. */
const LEAST_SHARE = 0.02;

/** A sample flat against upright in plain text: light, colors, and where the light comes from. */
export function standText({ project, option, setting, stand }: StandReport): string {
  const head = `${project}, option ${option}, setting ${setting.id} (${temperatureText(setting.cct_k, setting.duv)})`;
  if (!stand) return `${head}\n\nNo light falls on the counter in this setting.`;
  const { finish, flat, upright, between_de00 } = stand;
  return [
    head,
    '',
    `${finish} as a sample on the counter: flat and upright are ${fixed(between_de00)} CIEDE2000 apart.`,
    ...placeLines('Flat', flat),
    ...placeLines('Upright, facing the room', upright),
  ].join('\n');
}

function placeLines(
  name: string,
  { lux, place_white_lab_d65, components, average_lab_d65, parts }: StandPlace,
): string[] {
  const sources = parts
    .filter(({ share }) => share >= LEAST_SHARE)
    .slice(0, MOST_SOURCES)
    .map(
      ({ from, share }) =>
        `${sourceName(from.kind === 'direct' ? from.group : from.surface, from.kind)} ${percent(share)}`,
    );
  const [, a, b] = place_white_lab_d65;
  return [
    `${name}: ${fixed(lux, 0)} lx; a white there reads a* ${fixed(a)}, b* ${fixed(b)}`,
    `    light: ${sources.join(', ')}`,
    ...components.map(
      ({ role, share, lab_d65, shift_de00 }) =>
        `    ${role} (${percent(share)}): ${labText(lab_d65)}, ${fixed(shift_de00)} CIEDE2000 from the sample in daylight`,
    ),
    ...(components.length > 1 ? [`    average: ${labText(average_lab_d65)}`] : []),
  ];
}
