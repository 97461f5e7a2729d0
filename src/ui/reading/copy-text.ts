import type { AssessedSurface } from '../../engine/judge/assessment';
import { surfaceName } from '../../engine/judge/surface-words';
import { PROVENANCE_WORDS, ROLE_WORDS } from '../words/finishes';
import { decimal, integer, labText, percent, rgbText } from '../words/numbers';
import { FACING_WORDS } from '../words/reading';
import type { PointView } from './point-view';
import { tintSentence } from './tint-source';

export interface CopyContext {
  readonly project: string;
  readonly option: string;
  readonly setting: string;
  readonly cct_k: number | null;
}

/** All numbers of a reading with the conditions they hold under, as plain text for pasting elsewhere. */
export function readingText(surface: AssessedSurface, context: CopyContext, point: PointView | null): string {
  const lamp = context.cct_k === null ? '' : `, ${integer(context.cct_k)} K`;
  const lines = [
    `${surfaceName(surface.surface)}: ${surface.label}`,
    `Project ${context.project}, option ${context.option}`,
    '',
    'As a sample (CIELAB under D65, 2 degree observer; LRV is CIE Y under D65, 10 degree observer)',
    ...[surface.average, ...surface.components].map(
      (part) =>
        `${ROLE_WORDS[part.role]} (${percent(part.share)}): Lab ${labText(part.lab_d65)}; LRV ${decimal(part.lrv)}; ` +
        `Munsell ${part.munsell}; ${part.name}; ${PROVENANCE_WORDS[part.provenance]}, ` +
        `1 sigma about ${decimal(part.uncertainty_de00)} dE00`,
    ),
    '',
    `As installed (setting ${context.setting}${lamp}; divided by the light at the place, adapted to D65 by CAT16, D = 1)`,
    ...surface.installed.map(
      (place) =>
        `${FACING_WORDS[place.facing]}: Lab ${labText(place.lab_d65)}; ${place.name}; ` +
        `${integer(place.illuminance_lx)} lx; lightness in the room L* ${decimal(place.lightness_in_room)}; ` +
        `shift ${decimal(place.shift_de00)} dE00 (CIEDE2000); white there Lab ${labText(place.place_white_lab_d65)}. ` +
        tintSentence(place),
    ),
    ...(point ? ['', pointLine(point)] : []),
  ];
  return lines.join('\n');
}

const pointLine = (point: PointView): string =>
  `At the point chosen (${point.component}): Lab ${labText(point.lab_d65)}; ${integer(point.lux)} lx; ` +
  `white there Lab ${labText(point.place_white_lab_d65)}; on screen without sheen ${rgbText(point.srgb8)}`;
