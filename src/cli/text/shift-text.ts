import type { ComponentRecord } from '../../engine/judge/assessment';
import type {
  ColorUnderLight,
  FinishUnderLight,
  PairInLights,
  PairUnderLight,
} from '../../kitchen/study/finish-in-lights';
import { MATCH_WORDS, SHIFT_WORDS } from '../../kitchen/study/light-verdict-words';
import type { ShiftReport } from '../../kitchen/study/shift-report';
import { fixed, labText, percent, temperatureText, wrapped } from './figures';

/** A finish under each light in plain text: its color there, how far that is from daylight, and the pair if one was asked for. */
export function shiftText(report: ShiftReport): string {
  const { project, finish, label, average, components, lights, beside } = report;
  return [
    `${project}, ${finish}: ${label}`,
    ...sampleLines(average, components),
    '',
    'To an eye used to each light; range over the spectra that the color may have:',
    ...lights.flatMap((light) => lightLines(light, components.length > 1)),
    ...(beside ? ['', ...pairLines(beside)] : []),
  ].join('\n');
}

function sampleLines(average: ComponentRecord, components: readonly ComponentRecord[]): readonly string[] {
  const line = (part: ComponentRecord) => `${part.name}, ${labText(part.lab_d65)}, ${knownText(part)}`;
  const parts = components.map((part) => `    ${part.role} ${percent(part.share)}: ${line(part)}`);
  return [`  by day (D65): ${line(average)}`, ...(components.length > 1 ? parts : [])];
}

const knownText = ({ provenance, uncertainty_de00, spectrum_source }: ComponentRecord): string =>
  `${provenance}, known to about ${Number(uncertainty_de00.toFixed(2))} CIEDE2000, ` +
  (spectrum_source === 'measured'
    ? 'spectrum measured'
    : spectrum_source === 'mixed'
      ? 'spectra in part guessed'
      : 'spectrum guessed');

function lightLines({ name, cct_k, duv, average, components }: FinishUnderLight, hasParts: boolean): readonly string[] {
  return [
    `  ${name} (${temperatureText(cct_k, duv)})`,
    `      ${underText(average)}`,
    ...(hasParts ? components.map((part) => `        ${part.role}: ${underText(part)}`) : []),
  ];
}

const underText = ({ name, lab_d65, shift_de00, shift_from_to_de00, verdict }: ColorUnderLight): string =>
  `${name}, ${labText(lab_d65)}; shift ${fixed(shift_de00)}${rangeText(shift_from_to_de00)}: ${SHIFT_WORDS[verdict]}`;

/** " (1.9 to 4.7)", or nothing where all spectra agree. */
const rangeText = ([from, to]: readonly [number, number]): string =>
  to - from < 0.05 ? '' : ` (${fixed(from)} to ${fixed(to)})`;

function pairLines({ finish, label, compared, by_day, lights, sentence }: PairInLights): readonly string[] {
  const head = [`Beside ${finish}: ${label} (${compared[0]} beside ${compared[1]})`, wrapped(sentence, '  ')];
  // What does not match by day no light can part.
  if (by_day === 'apart') return head;
  return [
    ...head,
    ...lights.map(pairLine),
    ...(lights.some((light) => light.metamerism_index !== null)
      ? ['  M is the special metamerism index from D65 (CIE 15) of the spectra computed with.']
      : []),
  ];
}

const pairLine = ({ name, de00, de00_from_to, metamerism_index, verdict }: PairUnderLight): string =>
  `  ${name}: ${fixed(de00)}${rangeText(de00_from_to)} CIEDE2000 apart${indexText(metamerism_index)}: ${MATCH_WORDS[verdict]}`;

const indexText = (index: number | null): string => (index === null ? '' : `, M ${fixed(index, 2)}`);
