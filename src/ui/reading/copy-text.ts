import type { AssessedSurface, ComponentRecord, InstalledRecord } from '../../engine/judge/assessment';
import type { FinishInLights, FinishUnderLight } from '../../kitchen/study/finish-in-lights';
import { SHIFT_WORDS } from '../../kitchen/study/light-verdict-words';
import { shownName } from '../words/built-in';
import { READING_TEXT as TEXT } from '../words/copy';
import { surfaceName } from '../words/engine-words';
import { PROVENANCE_WORDS, ROLE_WORDS } from '../words/finishes';
import { brief, decimal, integer, labText, percent } from '../words/numbers';
import { FACING_WORDS, IN_LIGHTS, SPECTRUM_WORDS } from '../words/reading';
import { retold } from '../words/spoken';
import { onScreenText } from './on-screen-text';
import type { PointView } from './point-view';
import { seenPlaces } from './seen-places';
import { tintSentence } from './tint-source';

export interface CopyContext {
  readonly project: string;
  readonly option: string;
  /** Its name and lamps. */
  readonly setting: string;
  /** Correlated color temperature of all its light together, K; null when it has none. */
  readonly cct_k: number | null;
}

/** All numbers of a reading with the conditions they hold under, as plain text for pasting elsewhere. */
export function readingText(
  surface: AssessedSurface,
  context: CopyContext,
  point: PointView | null,
  inLights: FinishInLights | null = null,
): string {
  const lines = [
    `${surfaceName(surface.surface)}: ${shownName(surface.label)}`,
    TEXT.of(context.project, context.option),
    '',
    TEXT.sampleHead,
    ...[surface.average, ...surface.components].map(sampleLine),
    '',
    TEXT.installedHead(context.setting, context.cct_k === null ? null : `${Math.round(context.cct_k)}`),
    ...seenPlaces(surface).map(installedLine),
    ...(inLights ? ['', TEXT.lightsHead, ...inLights.lights.map(lightLine)] : []),
    ...(inLights?.beside ? [line(TEXT.besideHead(inLights.beside.label), retold(inLights.beside.sentence))] : []),
    ...(point ? ['', pointLine(point)] : []),
  ];
  return lines.join('\n');
}

const line = (head: string, ...parts: readonly string[]): string => `${head}: ${parts.join('; ')}`;

const sampleLine = (part: ComponentRecord): string =>
  line(
    TEXT.part(ROLE_WORDS[part.role], percent(part.share)),
    TEXT.lab(labText(part.lab_d65)),
    TEXT.lrv(decimal(part.lrv)),
    TEXT.munsell(part.munsell),
    retold(part.name),
    TEXT.known(PROVENANCE_WORDS[part.provenance], brief(part.uncertainty_de00), SPECTRUM_WORDS[part.spectrum_source]),
  );

const lightLine = ({ name, cct_k, average }: FinishUnderLight): string => {
  const [from, to] = average.shift_from_to_de00;
  return line(
    `${name}, ${IN_LIGHTS.kelvin(cct_k)}`,
    TEXT.lab(labText(average.lab_d65)),
    retold(average.name),
    TEXT.shiftRange(decimal(average.shift_de00), IN_LIGHTS.range(decimal(from), decimal(to))),
    SHIFT_WORDS[average.verdict],
  );
};

const installedLine = (place: InstalledRecord): string =>
  `${line(
    FACING_WORDS[place.facing],
    TEXT.lab(labText(place.lab_d65)),
    retold(place.name),
    TEXT.lx(integer(place.illuminance_lx)),
    TEXT.lightness(decimal(place.lightness_in_room)),
    TEXT.shift(decimal(place.shift_de00)),
    TEXT.white(labText(place.place_white_lab_d65)),
  )}. ${tintSentence(place)}`;

const pointLine = (point: PointView): string =>
  line(
    TEXT.point(ROLE_WORDS[point.component]),
    TEXT.lab(labText(point.lab_d65)),
    TEXT.lx(integer(point.lux)),
    TEXT.white(labText(point.place_white_lab_d65)),
    TEXT.onScreen(onScreenText(point)),
  );
